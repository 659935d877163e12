"""Rows and parameters moved as bytes: numpy copies records field by field, which takes longer than the march."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray


def plain(records: NDArray[Any]) -> NDArray[np.void]:
    """The same records without names for their parts, so that they move as they are; shares their memory."""
    return records.view(np.dtype((np.void, records.dtype.itemsize)))


def copied(records: NDArray[Any]) -> NDArray[Any]:
    """A copy of records."""
    return plain(records).copy().view(records.dtype)


def joined(records: Sequence[Any]) -> NDArray[Any]:
    """Rows, arrays of rows, or parameter records of one dtype as one array (n,)."""
    return np.frombuffer(bytearray().join(one.tobytes() for one in records), dtype=records[0].dtype)


def beside(m: int, *blocks: NDArray[Any]) -> NDArray[Any]:
    """Rows of m makes, (m, all), one block after the other: of (m, n) their own, or (n,) the same for all."""
    out = np.empty((m, sum(block.shape[-1] for block in blocks)), dtype=blocks[0].dtype)
    raw, at = plain(out), 0
    for block in blocks:
        raw[:, at : at + block.shape[-1]] = plain(block)
        at += block.shape[-1]
    return out
