"""Which way each setting moves the cheese, all else equal and stages ended by time, and the exceptions with reason.

Sources of the directions: Thom & Fisk 1918 ss. 91, 215 (Cheddar lists), Marshall 1982, Huber et al. 2001, Hill
(University of Guelph); the ranges are those over which the direction is claimed.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.make.state import FILM
from tests.make.families import cheddar, end, gouda, last, marched, milk

Rows = Callable[..., list[dict[str, float]]]


@dataclass(frozen=True)
class Direction:
    """More of `setting` within low..high moves `outcome` by `sign`; `by` is the smallest step asked."""

    setting: str
    low: float
    high: float
    outcome: str
    sign: int
    make: Rows = cheddar
    by: float = 0.04


DIRECTIONS = (
    Direction("cut_mm", 5, 15, "moisture_pct", +1),
    Direction("cook_c", 33, 41, "moisture_pct", -1),
    Direction("hold_min", 10, 60, "moisture_pct", -1),
    Direction("stirred", 0.0, 1.0, "moisture_pct", -1),
    Direction("salt", 0.01, 0.035, "moisture_pct", -1),
    Direction("salt", 0.01, 0.035, "salt_pct", +1),
    Direction("salt", 0.015, 0.035, "ph", +1),
    Direction("inoculum", 0.005, 0.03, "ph", -1),
    Direction("rennet", 25, 70, "floc_min", -1),
    Direction("cook_c", 33, 39, "yield_kg_per_100kg", -1),
    Direction("hold_min", 10, 90, "calcium_mg_per_g_protein", -1),
    Direction("water", 0.05, 0.35, "lactose_pct", -1, gouda),
    Direction("water", 0.05, 0.35, "ph", +1, gouda),
    Direction("brine_h", 6, 72, "salt_pct", +1, gouda),
    Direction("brine_h", 6, 72, "moisture_pct", -1, gouda),
    Direction("brine_pct", 10, 20, "salt_pct", +1, gouda),
    Direction("height_mm", 60, 140, "salt_pct", -1, gouda),
    Direction("water_c", 35, 65, "moisture_pct", -1, gouda),
)


@pytest.mark.parametrize("way", DIRECTIONS, ids=lambda way: f"{way.setting}-{way.outcome}")
@given(share=st.floats(0.0, 0.9))
def test_direction(way: Direction, share: float) -> None:
    span = way.high - way.low
    less = way.low + share * span
    more = less + max(way.by, (1.0 - share) * 0.5) * span
    before = end(way.make(**{way.setting: less}))[way.outcome]
    after = end(way.make(**{way.setting: min(more, way.high)}))[way.outcome]
    assert way.sign * (after - before) > 0.0


MILK = (
    ("fat", 30.0, 45.0, "moisture_pct", -1),
    ("fat", 30.0, 45.0, "fdm_pct", +1),
    ("fat", 30.0, 45.0, "mnfs_pct", +1),
    ("casein", 23.0, 30.0, "yield_kg_per_100kg", +1),
    ("lactose", 42.0, 50.0, "lactose_pct", +1),
    ("heat_denatured", 0.05, 0.6, "moisture_pct", +1),
)


@pytest.mark.parametrize(("field", "low", "high", "outcome", "sign"), MILK)
def test_milk(field: str, low: float, high: float, outcome: str, sign: int) -> None:
    values = [end(cheddar(), milk(**{field: low + k * (high - low) / 4}))[outcome] for k in range(5)]
    assert all(sign * (b - a) > 0.0 for a, b in pairwise(values))


@dataclass(frozen=True)
class Turn:
    """Where the usual direction turns, with the reason shown to the maker."""

    name: str
    reason: str
    check: Callable[[], bool]


def _outcome(outcome: str, make: Rows = cheddar, **change: Any) -> float:
    return end(make(**change))[outcome]


EXCEPTIONS = (
    Turn(
        "warmer than the starter's optimum slows acid",
        "mesophiles grow best near 33 °C and stop near 42 °C",
        lambda: _outcome("ph", cook_c=41.5, hold_min=90) > _outcome("ph", cook_c=37.0, hold_min=90),
    ),
    Turn(
        "curd held until it is sour hardly dries further",
        "acid curd keeps more water in the end: what the longer hold drives out, the lower pH holds back",
        lambda: abs(_outcome("moisture_pct", hold_min=90) - _outcome("moisture_pct", hold_min=60)) < 0.1,
    ),
    Turn(
        "above 50 °C cooking hardly dries further",
        "Huber et al. 2001: no further increase above 50 °C",
        lambda: _moisture_change(51.0, 54.0) < _moisture_change(38.0, 41.0),
    ),
    Turn(
        "heating too fast early keeps whey in",
        "a film closes on the grain (Thom & Fisk 1918 s. 197): less dry than the same heat given sooner would make it",
        lambda: _film(8.0) > _film(40.0) + 0.02,
    ),
    Turn(
        "pressing hard from the start keeps whey in against pressing the same load later",
        "the rind closes first (Geurts 1978)",
        lambda: _skin(hard_first=True) > _skin(hard_first=False),
    ),
    Turn(
        "stronger brine than about 20 % takes up hardly more salt",
        "the surface dries and closes (Melilli et al., Ragusano)",
        lambda: (
            _outcome("salt_pct", gouda, brine_pct=26.0) - _outcome("salt_pct", gouda, brine_pct=22.0)
            < 0.5 * (_outcome("salt_pct", gouda, brine_pct=20.0) - _outcome("salt_pct", gouda, brine_pct=16.0))
        ),
    ),
)  # fmt: skip


def _moisture_change(low: float, high: float) -> float:
    """How much drier the curd is at whey-off for a hotter cook [points]."""
    return _outcome("moisture_pct", cook_c=low, hold_min=10) - _outcome("moisture_pct", cook_c=high, hold_min=10)


def _film(ramp_min: float) -> float:

    return float(last(marched(cheddar(ramp_min=ramp_min)))[FILM])


def _skin(*, hard_first: bool) -> float:
    """Moisture after an hour hard and four hours light, or the other way round."""
    rows = cheddar()
    hard, light = rows[8] | {"minutes": 120.0, "load_kpa": 120.0}, rows[8] | {"minutes": 120.0, "load_kpa": 5.0}
    warm = {"follow_c": 34.0}
    order = [hard, light] if hard_first else [light, hard]
    return end([*rows[:8], *(one | warm for one in order)])["moisture_pct"]


@pytest.mark.parametrize("exception", EXCEPTIONS, ids=lambda one: one.name)
def test_exception(exception: Turn) -> None:
    assert exception.check(), exception.reason
