"""The members of a band: the same make with its uncertain inputs drawn from fixed quasi-random numbers.

The draws never change, so a band does not flicker while a handle moves.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass, replace
from functools import cache
from importlib.resources import files
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.start import first_state, parameters
from designer.recipe.schedule import T_FOLLOW, Milk

SEED = 20
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


@cache
def draws(members: int) -> NDArray[np.float64]:
    """Standard normal quasi-random draws, shape (members, uncertain inputs); Sobol points with a fixed scramble."""
    from scipy.special import ndtri
    from scipy.stats import qmc

    points = qmc.Sobol(len(uncertainties()), scramble=True, rng=SEED).random_base2(int(np.ceil(np.log2(members))))
    return np.asarray(ndtri(points[:members]))


def drawn(milk: Milk, rows: NDArray[Any], members: int) -> tuple[list[NDArray[Any]], NDArray[np.float64], NDArray[Any]]:
    """Rows, first states (members, SIZE) and parameters (members,) for `march_many`."""
    table = draws(members)
    column = {row.name: table[:, index] for index, row in enumerate(uncertainties())}
    p = parameters(milk, members)
    milks = [milk] * members
    warmer = np.zeros(members)
    for row in uncertainties():
        shift = row.sd * column[row.name]
        if row.on == "temperature":
            warmer = shift
        elif row.on in OF_MILK:
            milks = [
                replace(one, **{row.on: getattr(one, row.on) * float(np.exp(by))})
                for one, by in zip(milks, shift, strict=True)
            ]
        elif row.acts == "times":
            p[row.on] *= np.exp(shift)
        else:
            p[row.on] += shift
    p["casein_kept"] = np.minimum(p["casein_kept"], 0.995)
    y0 = np.empty((members, len(first_state(milk, p[0]))))
    all_rows = []
    for member, one in enumerate(milks):
        own = parameters(one)[0]
        for name in ("casein_milk", "water_milk", "colloidal_per_casein", "bound_whey_protein"):
            p[name][member] = own[name]
        y0[member] = first_state(one, p[member])
        changed = rows.copy()
        changed["t_end_c"] += warmer[member]
        set_end = changed["t_law"] != T_FOLLOW
        changed["end_value"] += np.where(set_end & (changed["end_by"] == 1), warmer[member], 0.0)
        all_rows.append(changed)
    return all_rows, y0, p
