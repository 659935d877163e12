"""The shape of a verdict: rows of met, near, not met, each with its margin in words. A forecast is never certified."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

MET, NEAR, NOT_MET = "met", "near", "not met"
RANK = {MET: 0, NEAR: 1, NOT_MET: 2}
"""How bad a state is."""

# Sections a row may stand in.
LIMIT, CLASS, QUALITY, MAKE, CURVE, MILK, AGE = "limit", "class", "quality", "make", "curve", "milk", "age"


class Row(NamedTuple):
    """One judgement. `margin` is the distance to the nearer end of the range, negative outside, in `unit`.

    `chance` is the share of the members that lie inside (None without members); `minute` is set for a gate.
    """

    section: str
    rules: str
    quantity: str
    label: str
    value: float | None
    low: float | None
    high: float | None
    unit: str
    state: str
    margin: float | None
    sentence: str
    source: str
    have: str
    rule: str = ""
    note: str = ""
    chance: float | None = None
    minute: float | None = None


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a forecast means for a style. `state` speaks of the limits of the rule sets judged, and of nothing else."""

    style: str
    name: str
    state: str
    sentence: str
    rows: tuple[Row, ...]
    rules: tuple[str, ...]
    conditions: tuple[str, ...]
    """What those rules ask that no forecast can show: age, ripening, phosphatase; and what does not apply, and why."""
    chance: float | None = None

    def section(self, *names: str) -> tuple[Row, ...]:
        """The rows of these sections, in order."""
        return tuple(row for row in self.rows if row.section in names)

    @property
    def limits(self) -> tuple[Row, ...]:
        """Rows that the state speaks of: limits, milk and age."""
        return self.section(LIMIT, MILK, AGE)


def worst(rows: tuple[Row, ...]) -> str:
    """The worst state of the rows; met where there are none."""
    return max((row.state for row in rows), key=RANK.__getitem__, default=MET)
