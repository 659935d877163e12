"""Where a march starts: the parameters of one milk beside the constants, and the first state."""

from __future__ import annotations

from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.buffer import CASEIN_H, GRID, SERUM_H
from designer.make.constants import record, record_dtype
from designer.make.state import (
    ASH,
    CALCIUM,
    CASEIN,
    COLLOIDAL,
    CURD,
    FAT,
    HEXOSE,
    HEXOSE_KG,
    SERUM,
    SIZE,
    WATER,
    WHEY_PROTEIN,
    T,
)
from designer.recipe.schedule import Milk

MILK_FIELDS = (
    "ph_native",
    "casein_h_native",
    "serum_h_native",
    "casein_milk",
    "water_milk",
    "bound_whey_protein",
    "colloidal_per_casein",
    "floc_milk",
    "heat_denatured",
    "activity",
    "whey_share",
)


@cache
def parameter_dtype() -> np.dtype[Any]:
    """dtype of a parameter record: every scalar constant, then what depends on the milk."""
    return np.dtype(record_dtype().descr + [(name, "f8") for name in MILK_FIELDS])


def parameters(milk: Milk, members: int = 1) -> NDArray[Any]:
    """Parameter records for one milk, shape (members,); free to change before a march.

    ph_native and with it casein_h_native, serum_h_native as in `set_native_ph`; casein_milk, water_milk,
    bound_whey_protein [kg/kg milk]; colloidal_per_casein [kg Ca/kg]; floc_milk and activity [1] multiply the clotting
    time and the growth rates; heat_denatured [1] as in Milk; whey_share [1] of whey protein in all protein.
    """
    constants = record()[0]
    out = np.zeros(members, dtype=parameter_dtype())
    flat = out.view(np.float64).reshape(members, -1)
    flat[:, : -len(MILK_FIELDS)] = constants.tolist()
    casein = milk.casein / 1000.0
    set_native_ph(out, milk.ph)
    out["casein_milk"] = casein
    out["water_milk"] = water(milk)
    out["bound_whey_protein"] = milk.heat_denatured * milk.whey_protein / 1000.0
    out["colloidal_per_casein"] = constants["calcium_colloidal"] * milk.calcium / 1000.0 / casein
    cold = milk.age_cold_h / (milk.age_cold_h + constants["floc_cold_half_h"])
    shares = milk.shares or ((milk.species, 1.0),)
    floc = sum(share * constants[f"floc_{species}"] for species, share in shares)
    out["floc_milk"] = floc * (1.0 + constants["floc_cold"] * cold)
    out["heat_denatured"] = milk.heat_denatured
    out["activity"] = 1.0
    out["whey_share"] = milk.whey_protein / (milk.casein + milk.whey_protein)
    return out


def set_native_ph(p: NDArray[Any], ph: float | NDArray[np.float64]) -> None:
    """The pH (members,) that acid balances count from, with what the buffers hold there [mol H+ per unit]."""
    p["ph_native"] = ph
    p["casein_h_native"], p["serum_h_native"] = np.interp(ph, GRID, CASEIN_H), np.interp(ph, GRID, SERUM_H)


def water(milk: Milk) -> float:
    """Water of the milk [kg/kg], the rest of its solids."""
    return 1.0 - (milk.fat + milk.casein + milk.whey_protein + milk.lactose + milk.ash) / 1000.0


def first_state(milk: Milk, p: Any) -> NDArray[np.float64]:
    """The state of milk just in the vat, shape (SIZE,)."""
    y = np.zeros(SIZE)
    calcium = milk.calcium / 1000.0
    y[T] = milk.temperature_c
    y[COLLOIDAL] = p["calcium_colloidal"] * calcium
    y[CURD + WATER] = water(milk)
    y[CURD + HEXOSE] = milk.lactose / 1000.0 / HEXOSE_KG
    y[CURD + FAT] = milk.fat / 1000.0
    y[CURD + CASEIN] = milk.casein / 1000.0
    y[CURD + WHEY_PROTEIN] = milk.whey_protein / 1000.0
    y[CURD + SERUM] = 1.0
    y[CURD + CALCIUM] = calcium - y[COLLOIDAL]
    y[CURD + ASH] = milk.ash / 1000.0 - p["ash_per_calcium"] * y[COLLOIDAL]
    return y
