"""What safety, knit and texture read of a forecast, as bare shapes: this chapter stands below the forecast itself."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Protocol

import numpy as np
from numpy.typing import NDArray

Series = NDArray[np.float64]


class Figure(Protocol):
    """One outcome with its 80 % band (`low` = `high` = `value` where no band was asked for)."""

    @property
    def value(self) -> float: ...
    @property
    def low(self) -> float: ...
    @property
    def high(self) -> float: ...


class Curves(Protocol):
    """Every state over time: `time_min` and `stage` of each point, and a column by its name, all of shape (n,)."""

    @property
    def time_min(self) -> Series: ...
    @property
    def stage(self) -> NDArray[np.int32]: ...
    def __getitem__(self, name: str) -> Series: ...


class StageDone(Protocol):
    """What one stage did."""

    @property
    def id(self) -> str: ...
    @property
    def name(self) -> str: ...
    @property
    def kind(self) -> str: ...
    @property
    def start_min(self) -> float: ...
    @property
    def end_min(self) -> float: ...
    @property
    def reached(self) -> bool: ...
    @property
    def values(self) -> Mapping[str, float]: ...
