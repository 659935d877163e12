"""Where a vat parts: shares of cream, whey and curd leave the main make for a make of their own. Balances only.

States stay per kilogram of what a lane holds; its weight says how many kilograms of the first milk that is, so that
lanes add up. Whey that goes its own way still counts as run off in the make it came from; `taken` keeps the sum right.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.language import say
from designer.make.path import phase_mass
from designer.make.records import joined
from designer.make.state import (
    ACID_IN,
    AWAKE,
    CASEIN,
    CELLS,
    COLLOIDAL,
    CURD,
    DRY_SALT,
    EVAPORATED,
    FAT,
    GONE,
    GRAIN,
    OUTER,
    PHASE,
    SALT_IN,
    SERUM,
    WATER,
    WATER_IN,
    WHEY,
    WHEY_PROTEIN,
    T,
)
from designer.recipe.schedule import CREAM_FAT

State = NDArray[np.float64]
NOTHING_KG = 1e-3
LEAST_CASEIN = 1e-6
"""The laws divide by casein; whey without any borrows this much of its own protein."""
POPULATION = slice(CELLS, CELLS + 3)
AWAKE_ONES = slice(AWAKE, AWAKE + 3)


class PartingError(ValueError):
    """There is nothing of that kind to part with at that point; the end of a sentence."""


@dataclass(frozen=True, slots=True)
class Parting:
    """A share that leaves after a row of the main make. `of`: cream, whey or curd; shares are of what is there then."""

    row: int
    of: str
    share: float


@dataclass(frozen=True, slots=True)
class Start:
    """Where a branch begins: y (ZONES, SIZE), its parameters, and kilograms of first milk behind one of its own.

    `taken` (12,) is the part of the run-off in y that went to other branches; `milk` (SIZE,) is what its recoveries
    count from.
    """

    y: State
    p: Any
    weight: float
    taken: State
    milk: State


@dataclass(frozen=True, slots=True)
class Parted:
    """What is left of the main make, and where its branches begin, in the order asked. `milk` (SIZE,) is what its
    recoveries count from: the milk as it was, or as the cream left it."""

    y: State
    p: Any
    weight: float
    taken: State
    starts: tuple[Start, ...]
    milk: State


def part(y: State, p: Any, milk: State, weight: float, taken: State, partings: Sequence[Parting]) -> Parted:
    """Part the state y (ZONES, SIZE) of the main make: cream first, then whey, then curd with all that is with it.

    `milk` (SIZE,) is what recoveries count from so far. Nothing that comes back shares its memory with what is given.
    Raises PartingError.
    """
    p, milk = joined([p])[0], milk.copy()
    starts: dict[int, Start] = {}
    cream = [k for k, one in enumerate(partings) if one.of == "cream"]
    if cream:
        for k in cream:
            part_y, part_p, kg = cream_of(y, p)
            starts[k] = Start(part_y, part_p, weight * partings[k].share * kg, np.zeros(PHASE), part_y[0])
        y, p, left = without_cream(y, p, sum(partings[k].share for k in cream))
        weight, milk = weight * left, y[0].copy()
    whey = [k for k, one in enumerate(partings) if one.of == "whey"]
    if whey:
        source, in_vat = _whey(y, p, taken)
        for k in whey:
            part_y, part_p, kg = whey_of(y, p, source)
            starts[k] = Start(part_y, part_p, weight * partings[k].share * kg, np.zeros(PHASE), part_y[0])
        share = sum(partings[k].share for k in whey)
        taken = taken + share * source
        if in_vat:
            y = _drawn(y, share)
    kept = 1.0
    for k, one in enumerate(partings):
        if one.of == "curd":
            starts[k] = Start(y.copy(), p, weight * one.share, taken, milk)
            kept -= one.share
    in_order = tuple(starts[k] for k in range(len(partings)))
    return Parted(y, p, weight * max(kept, 0.0), taken, in_order, milk)


def _mean(y: State) -> State:
    """The whole cheese of zones (ZONES, SIZE)."""
    return np.asarray(y[0] if np.isnan(y[OUTER, T]) else y.mean(axis=0))


def _zoned(y: State) -> State:
    return np.vstack([y, np.full_like(y, np.nan)])


def _whey(y: State, p: Any, taken: State) -> tuple[State, bool]:
    """The whey to be had, its components (12,), and whether it still stands over the curd.

    What has run off and is not taken yet; where nothing has run off, what is free in the vat.
    """
    whole = _mean(y)
    collected = whole.copy()
    collected[GONE : GONE + PHASE] -= taken
    for phase, in_vat in ((GONE, False), (WHEY, True)):
        if float(phase_mass(collected, phase, p)) >= NOTHING_KG:
            return np.array(collected[phase : phase + PHASE]), in_vat
    raise PartingError(say("there is no whey there yet"))


def _drawn(y: State, share: float) -> State:
    """The state after a share of the free whey was drawn off."""
    out = y.copy()
    out[:, GONE : GONE + PHASE] += share * out[:, WHEY : WHEY + PHASE]
    out[:, WHEY : WHEY + PHASE] *= 1.0 - share
    return out


def _fresh(p: Any, y: State) -> Any:
    """Parameters of a milk-like liquid y (SIZE,) that is the whole of a lane."""
    p = joined([p])[0]
    p["casein_milk"] = y[CURD + CASEIN] + 0.85 * y[CURD + WHEY_PROTEIN]
    p["water_milk"] = y[CURD + WATER]
    p["whey_share"] = y[CURD + WHEY_PROTEIN] / (y[CURD + CASEIN] + y[CURD + WHEY_PROTEIN])
    p["bound_whey_protein"] = 0.0
    p["colloidal_per_casein"] = y[COLLOIDAL] / y[CURD + CASEIN]
    return p


def _with_cells(out: State, source: State, share: float) -> None:
    """Starter cells of a liquid `out` that comes from `source`: the share of theirs that its serum carries.

    They are as wide awake there, so the liquid goes on souring at its own pace.
    """
    out[POPULATION] = share * source[POPULATION] * out[CURD + SERUM]
    out[AWAKE_ONES] = source[AWAKE_ONES]


def whey_of(y: State, p: Any, source: State) -> tuple[State, Any, float]:
    """One kilogram of whey with the components `source` (12,): state, parameters, kilograms of it there are.

    Most cells stay in the curd (`cells_in_whey` of them go where the serum goes); those in the whey sour it on.
    """
    whole = _mean(y)
    out = np.zeros(y.shape[1])
    out[T] = whole[T]
    out[CURD : CURD + PHASE] = source
    kg = float(phase_mass(out, CURD, p))
    out[CURD : CURD + PHASE] /= kg
    short = max(0.0, LEAST_CASEIN - float(out[CURD + CASEIN]))
    out[CURD + CASEIN] += short
    out[CURD + WHEY_PROTEIN] -= short
    _with_cells(out, whole, float(p["cells_in_whey"]))
    return _zoned(out), _fresh(p, out), kg


def _milk(y: State) -> State:
    if y[0, GRAIN] > 0.0:
        raise PartingError(say("cream is taken from the milk, before it is cut"))
    return np.asarray(y[0])


def _creamed(y: State, p: Any, share: float) -> tuple[float, float, float]:
    """Fat, cream and the share of the serum that goes with it, when a share of the fat leaves [kg, kg, 1]."""
    fat = float(y[CURD + FAT]) * share
    cream = fat / CREAM_FAT
    return fat, cream, (cream - fat) / (float(phase_mass(y, CURD, p)) - float(y[CURD + FAT]))


def cream_of(y: State, p: Any) -> tuple[State, Any, float]:
    """One kilogram of cream of 40 % fat: state, parameters, kilograms of it there are."""
    milk = _milk(y)
    _, kg, serum = _creamed(milk, p, 1.0)
    if kg < NOTHING_KG:
        raise PartingError(say("there is no cream in this milk"))
    out = np.zeros_like(milk)
    out[T] = milk[T]
    out[CURD : CURD + PHASE] = milk[CURD : CURD + PHASE] * serum / kg
    out[CURD + FAT] = CREAM_FAT
    out[COLLOIDAL] = milk[COLLOIDAL] * serum / kg
    _with_cells(out, milk, 1.0)
    return _zoned(out), _fresh(p, out), kg


def without_cream(y: State, p: Any, share: float) -> tuple[State, Any, float]:
    """What is left when a share of the cream is taken: state and parameters per kilogram left, and that weight."""
    milk = _milk(y)
    fat, cream, serum = _creamed(milk, p, share)
    weight = 1.0 - cream
    left = milk.copy()
    left[CURD : CURD + PHASE] *= (1.0 - serum) / weight
    left[CURD + FAT] = (milk[CURD + FAT] - fat) / weight
    left[COLLOIDAL] *= (1.0 - serum) / weight
    left[POPULATION] *= (1.0 - serum) / weight
    for ledger in (DRY_SALT, EVAPORATED, SALT_IN, WATER_IN, ACID_IN):
        left[ledger] /= weight
    p = joined([p])[0]
    p["casein_milk"] *= (1.0 - serum) / weight
    p["bound_whey_protein"] *= (1.0 - serum) / weight
    p["water_milk"] = left[CURD + WATER]
    return _zoned(left), p, weight
