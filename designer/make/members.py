"""The members of a band: the same make with its uncertain inputs drawn from fixed quasi-random numbers.

The draws never change, so a band does not flicker while a handle moves.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import draws
from designer.make.records import beside
from designer.make.start import first_state, parameters, set_native_ph
from designer.make.state import CASEIN, CURD, FAT, HEXOSE, HEXOSE_KG, WATER
from designer.recipe.schedule import END_TEMPERATURE, T_FOLLOW, Milk

OF_MILK = ("fat", "casein", "lactose")


@dataclass(frozen=True, slots=True)
class Uncertain:
    """One row of uncertainty.toml: what a draw acts on and how far one standard deviation reaches."""

    name: str
    on: str
    acts: str
    sd: float
    unit: str
    source: str
    have: str


@cache
def uncertainties() -> tuple[Uncertain, ...]:
    """The shipped table of uncertain inputs, in order."""
    text = files("designer.make").joinpath("uncertainty.toml").read_text("utf-8")
    return tuple(Uncertain(name, **row) for name, row in tomllib.loads(text).items())


def _shifts(members: int) -> dict[str, NDArray[np.float64]]:
    """What every member's uncertain inputs are off by, each (members,)."""
    table = draws.normal(members)
    return {row.name: row.sd * table[:, index] for index, row in enumerate(uncertainties())}


def drawn(milk: Milk, rows: NDArray[Any], members: int) -> tuple[NDArray[Any], NDArray[np.float64], NDArray[Any]]:
    """Rows (members, n), first states (members, SIZE) and parameters (members,) of every member."""
    shift = _shifts(members)
    p = parameters(milk, members)
    share = {name: np.full(members, getattr(milk, name) / 1000.0) for name in OF_MILK}
    for row in uncertainties():
        if row.on == "temperature":
            continue
        if row.on in OF_MILK:
            share[row.on] *= np.exp(shift[row.name])
        elif row.acts == "times":
            p[row.on] *= np.exp(shift[row.name])
        else:
            p[row.on] += shift[row.name]
    set_native_ph(p, p["ph_native"])
    p["casein_kept"] = np.minimum(p["casein_kept"], 0.995)
    y0 = np.tile(first_state(milk, p[0]), (members, 1))
    y0[:, CURD + FAT], y0[:, CURD + CASEIN] = share["fat"], share["casein"]
    y0[:, CURD + HEXOSE] = share["lactose"] / HEXOSE_KG
    y0[:, CURD + WATER] -= sum(share[name] - getattr(milk, name) / 1000.0 for name in OF_MILK)
    p["water_milk"], p["casein_milk"] = y0[:, CURD + WATER], share["casein"]
    p["colloidal_per_casein"] *= milk.casein / 1000.0 / share["casein"]
    return warmed(rows, members), y0, p


def warmed(rows: NDArray[Any], members: int) -> NDArray[Any]:
    """The rows (n,) of a lane for every member, shape (members, n), as its thermometer was off all day."""
    shift = _shifts(members)
    off = [shift[row.name] for row in uncertainties() if row.on == "temperature"]
    warmer = np.sum(off, axis=0)[:, None] if off else np.zeros((members, 1))
    out = beside(members, rows)
    out["t_end_c"] += warmer
    read = (rows["t_law"] != T_FOLLOW) & (rows["end_by"] == END_TEMPERATURE)
    out["end_value"] += np.where(read, warmer, 0.0)
    return out
