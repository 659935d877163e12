"""Joins make (and later cellar and cost) into one Forecast: every state over time plus outcomes, read-only."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.recipe.document import Recipe

Series = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Outcome:
    """One figure of the cheese. `low`..`high` is the 80 % band (equal to `value` where no band was asked for).

    `outside` is a sentence when the law behind it left its validity range, else "".
    """

    key: str
    value: float
    low: float
    high: float
    outside: str = ""


@dataclass(frozen=True, slots=True)
class StageForecast:
    """What one stage does. Times count from milk in the vat; `reached` is False when a state end ran to `latest`."""

    id: str
    name: str
    kind: str
    start_min: float
    end_min: float
    end_low_min: float
    end_high_min: float
    reached: bool
    values: Mapping[str, float]
    """State at the end: temperature_c, ph, ph_whey, curd_moisture_pct, whey_kg_per_100kg (run off so far), ..."""


@dataclass(frozen=True, slots=True)
class Trace:
    """Every state over time: `time_min` strictly rising but for equal pairs at stage edges, each column shape (n,)."""

    time_min: Series
    stage: NDArray[np.int32]
    columns: Mapping[str, Series]

    def __getitem__(self, name: str) -> Series:
        return self.columns[name]

    def at(self, name: str, minute: float) -> float:
        """The column read at a minute, by straight line between points."""
        return float(np.interp(minute, self.time_min, self.columns[name]))


@dataclass(frozen=True, slots=True)
class Caution:
    """A caution of the make. `level`: "note" | "watch" | "stop". `stage` is a stage id or ""."""

    code: str
    level: str
    text: str
    source: str
    stage: str = ""


@dataclass(frozen=True, slots=True)
class Bands:
    """80 % bands on the nominal clock: per column (low, high), each the length of the trace."""

    low: Mapping[str, Series]
    high: Mapping[str, Series]
    samples: Mapping[str, Series] = field(default_factory=dict)
    """Outcome key -> value per member, so that a verdict can say "n in 10"."""


@dataclass(frozen=True, slots=True)
class Forecast:
    """All that the model says of one recipe; lanes beside the main one are the branches, in order."""

    recipe: Recipe
    stages: tuple[StageForecast, ...]
    trace: Trace
    outcomes: Mapping[str, Outcome]
    cautions: tuple[Caution, ...]
    bands: Bands | None = None
    branches: tuple["Forecast", ...] = ()
    branch_id: str | None = None
    notes: tuple[str, ...] = ()
    detail: Mapping[str, Any] = field(default_factory=dict)
