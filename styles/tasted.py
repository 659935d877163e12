"""A house style from batches that were tasted and liked: the ranges of what was measured in them.

Where a figure was measured in none of them, its range is that of what had been forecast, and says so.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from statistics import fmean
from typing import TypeVar

from designer.language import say, several
from styles.house import GATE_NEAR, OWN, RANGE_NEAR, Figures, around, begun, rounded, settled
from styles.reader import Gate, Style, StyleError, Typical, Window
from styles.settings import COMPOSITION, CURVES, MOMENTS, SETTINGS

K = TypeVar("K")
FEW = 3
"""Fewer batches say nothing of how far they spread."""
CAME_OF_IT = frozenset(("floc_min", "set_min", "cut_to_drain_min"))
"""Settings of a style that a recipe asks for by another name, so that a forecast knows them and nobody set them."""


@dataclass(frozen=True, slots=True)
class Tasted:
    """One batch that was tasted: what was measured in it, and what had been forecast for it."""

    measured: Figures
    forecast: Figures


def from_batches(
    name: str, batches: Sequence[Tasted], *, like: Style | None = None, milk: Sequence[str] = (), limits: bool = False
) -> Style:
    """One's own from batches that were liked: for each figure the range of what was measured in them.

    Where a figure was measured in none, the range of what was forecast, and its source says so. A window is never
    narrower than what still counts as near: few batches know little. StyleError for none.
    """
    if not batches:
        raise StyleError(say("A style from batches needs at least one batch with figures."))
    count = len(batches)
    composition = _seen([one.measured.composition for one in batches], [one.forecast.composition for one in batches])
    settings = _seen([one.measured.settings for one in batches], [one.forecast.settings for one in batches], meant=True)
    curves = _seen([one.measured.curves for one in batches], [one.forecast.curves for one in batches])
    gates = tuple(
        Gate(curve, at, *one.range(GATE_NEAR[curve]), one.source(count), one.have)
        for (curve, at), one in curves.items()
        if curve in CURVES and at in MOMENTS
    )
    windows = [
        Window(key, *one.range(RANGE_NEAR[key]), one.source(count), one.have)
        for key, one in composition.items()
        if key in COMPOSITION and key in RANGE_NEAR
    ]
    gated = {MOMENTS[gate.at].setting for gate in gates if gate.curve == "ph"}
    windows += [
        Window(key, *one.range(SETTINGS[key].near), one.source(count), one.have)
        for key, one in settings.items()
        if key in SETTINGS and key not in gated
    ]
    typical = {key: rounded(fmean(one.values)) for key, one in composition.items() if key in COMPOSITION}
    middle = (Typical(name, typical, say("mean of what was liked"), OWN),) if typical else ()
    said = several(count, "Made from 1 batch that was liked.", "Made from {count} batches that were liked.")
    if count < FEW:
        said += " " + say("Too few to say how far they spread: the ranges are only what counts as near.")
    return settled(begun(name, like, milk, middle, windows, gates, said, limits=limits))


@dataclass(frozen=True, slots=True)
class _Seen:
    """What was seen of one figure: measured, meant in the recipe, or only forecast."""

    values: tuple[float, ...]
    how: str

    @property
    def have(self) -> str:
        return "derived" if self.how == "forecast" else OWN

    def source(self, count: int) -> str:
        """Where a range is from, with how many batches it was seen in."""
        number = len(self.values)
        if self.how == "measured":
            return say("measured in {number} of {count} liked batches", number=number, count=count)
        if self.how == "meant":
            return say("in the recipes of {number} of {count} liked batches", number=number, count=count)
        return say("forecast for {number} of {count} liked batches, not measured", number=number, count=count)

    def range(self, near: float) -> tuple[float, float]:
        """From the least to the most, at least `near` to both sides of their middle."""
        low, high = min(self.values), max(self.values)
        middle, half = 0.5 * (low + high), max(0.5 * (high - low), near)
        return around(middle, half)


def _seen(
    measured: Sequence[Mapping[K, float]], forecast: Sequence[Mapping[K, float]], *, meant: bool = False
) -> dict[K, _Seen]:
    """Every figure of the batches, measured where it was in any; settings are `meant` where they are not of the gel."""
    found = {}
    for key in dict.fromkeys(key for part in (*forecast, *measured) for key in part):
        values = tuple(part[key] for part in measured if key in part)
        if values:
            found[key] = _Seen(values, "measured")
        else:
            outcome = not meant or str(key) in CAME_OF_IT or str(key).startswith("ph_")
            values = tuple(part[key] for part in forecast if key in part)
            found[key] = _Seen(values, "forecast" if outcome else "meant")
    return found
