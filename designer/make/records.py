"""Rows and parameters moved as bytes: numpy copies records field by field, which takes longer than the march."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray


def joined(records: Sequence[Any]) -> NDArray[Any]:
    """Rows, arrays of rows, or parameter records of one dtype as one array (n,)."""
    return np.frombuffer(b"".join(one.tobytes() for one in records), dtype=records[0].dtype).copy()


def beside(m: int, *blocks: NDArray[Any]) -> NDArray[Any]:
    """Rows of m makes, (m, all), one block after the other: of (m, n) their own, or (n,) the same for all."""
    out = np.empty((m, sum(block.shape[-1] for block in blocks)), dtype=blocks[0].dtype)
    raw, at = as_bytes(out), 0
    for block in blocks:
        raw[:, at : at + block.shape[-1]] = as_bytes(block)
        at += block.shape[-1]
    return out


def as_bytes(rows: NDArray[Any]) -> NDArray[np.uint8]:
    """Records as their bytes, shape (..., bytes of one)."""
    return rows.view(np.uint8).reshape(*rows.shape, rows.dtype.itemsize)
