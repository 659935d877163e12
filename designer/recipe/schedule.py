"""A Schedule: what the maker means, as arrays for one make.

The kernel knows no stage kinds, only the columns below. A stage kind's `rows()` fills them; new physics is a new
column here plus a law in `make`. Everything is per kilogram of the milk in the vat, so a Schedule does not care
whether the vat holds 8 L or 300 L (except through the geometry of the forms).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from operator import itemgetter
from typing import Any

import numpy as np
from numpy.typing import NDArray

# How a stage ends (column `end_by`). "By feel" is a time end: the planned length stands.
END_TIME, END_TEMPERATURE, END_PH, END_ACIDITY, END_FLOC_MULTIPLE, END_FIRMNESS, END_WHEY_OFF = range(7)
# Of what an end is read (column `end_of`).
OF_MILK, OF_WHEY, OF_CURD, OF_CHEESE = range(4)
# How temperature moves in a row (column `t_law`).
T_HOLD, T_RAMP, T_FOLLOW = range(3)
# Which gel forms (column `gel`): nothing sets, rennet, acid with a little rennet, acid and heat.
GEL_NONE, GEL_RENNET, GEL_LACTIC, GEL_ACID_HEAT = range(4)
# Where the curd is (column `place`); chooses handling, heat and how whey leaves.
PLACE_MILK, PLACE_UNDER_WHEY, PLACE_DRAINED, PLACE_MOULD, PLACE_PRESS, PLACE_BRINE, PLACE_AIR = range(7)
# Coagulant kinds (column `coagulant`).
COAGULANT_CALF, COAGULANT_CHYMOSIN, COAGULANT_MICROBIAL, COAGULANT_CAMEL, COAGULANT_PLANT = range(5)
# Starter populations (the three `inoculum_*` columns).
POPULATIONS = ("meso", "strep", "rods")

# name -> (dtype, value where a stage says nothing, meaning)
COLUMNS: Mapping[str, tuple[str, float, str]] = {
    "stage": ("i4", 0, "index of the stage in the recipe"),
    "minutes": ("f8", 0.0, "planned length [min]; for a state end its `latest`, where none sooner is known"),
    "end_by": ("i4", END_TIME, "END_*"),
    "end_of": ("i4", OF_CURD, "OF_*: what the end is read on"),
    "end_value": ("f8", 0.0, "°C, pH, % lactic acid, multiple, Pa or kg whey off per kg milk, by end_by"),
    "earliest_min": ("f8", 0.0, "a state end is not looked for before this [min]"),
    "every_min": ("f8", 1.0, "how far apart its points are kept [min]"),
    "t_law": ("i4", T_HOLD, "T_*"),
    "t_end_c": ("f8", np.nan, "T_RAMP: temperature reached [°C]; T_HOLD: jump here at the start (nan: stay)"),
    "ramp_min": ("f8", 0.0, "T_RAMP: minutes from the start of the row to t_end_c; held afterwards"),
    "slope_c_min": ("f8", 0.0, "filled by the march: heating of a T_RAMP row [°C/min]"),
    "follow_c": ("f8", 20.0, "T_FOLLOW: temperature of room, cellar or brine [°C]"),
    "va_mm": ("f8", 60.0, "T_FOLLOW: volume over cooling surface of what cools [mm]"),
    "vat_loss": (
        "f8",
        0.0,
        "T_HOLD: share of its distance to follow_c that a full vat loses [1/min]; 0: it is kept warm",
    ),
    "place": ("i4", PLACE_MILK, "PLACE_*"),
    "disturbed": ("f8", 0.0, "0 at rest, 1 gently stirred, up to 2 briskly stirred or worked dry"),
    "cut_mm": ("f8", 0.0, "> 0: the curd is cut (or milled) to this edge at the start of the row [mm]"),
    "whey_off": ("f8", 0.0, "share of the free whey taken off evenly through the row"),
    "whey_kept": ("f8", 0.0, "PLACE_DRAINED and later: share of new whey that stays on the curd"),
    "water_on": ("f8", 0.0, "wash water added evenly through the row [kg per kg milk]"),
    "water_c": ("f8", 20.0, "its temperature [°C]"),
    "salt_per_curd": ("f8", 0.0, "dry salt strewn at the start of the row [kg per kg curd then]"),
    "salt_per_milk": ("f8", 0.0, "salt stirred into milk or curd [kg per kg milk]"),
    "brine_pct": ("f8", 0.0, "PLACE_BRINE, stretch: strength [% w/w]"),
    "load_kpa": ("f8", 0.0, "pressure on the cheese [kPa]"),
    "height_mm": ("f8", 100.0, "height of one cheese or of the curd bed [mm]"),
    "radius_mm": ("f8", 100.0, "radius of one cheese (block: of equal cross-section) [mm]"),
    "gel": ("i4", GEL_NONE, "GEL_*"),
    "rennet_imcu_l": ("f8", 0.0, "coagulant added at the start of the row [IMCU per L milk]"),
    "coagulant": ("i4", COAGULANT_CALF, "COAGULANT_*"),
    "cacl2_g_kg": ("f8", 0.0, "calcium chloride added at the start, dry [g per kg milk]"),
    "acid_mol_kg": ("f8", 0.0, "H+ of added acid [mol per kg milk]"),
    "inoculum_meso": ("f8", 0.0, "cells added at the start of the row [1e9 per mL milk]"),
    "inoculum_strep": ("f8", 0.0, "the same, thermophilic cocci"),
    "inoculum_rods": ("f8", 0.0, "the same, thermophilic rods"),
    "inoculum_lactate": ("f8", 0.0, "lactic acid that comes with a liquid starter [mol per kg milk]"),
    "lag_h": ("f8", 0.5, "lag of these cells at their optimum [h]"),
    "stretch": ("f8", 0.0, "1: curd is worked in hot water of follow_c"),
    "curd_per_water": ("f8", 0.0, "stretch: curd in the hot water [kg per kg]; 0: so much that it stays as hot"),
    "bath_start_c": ("f8", 0.0, "filled by the march: curd temperature where the row begins [°C]"),
    "evaporation": ("f8", 0.0, "drying from the surface: room deficit, 1 - RH (0: none)"),
}

_SILENT: dict[str, float] = {name: default for name, (_, default, _) in COLUMNS.items()}
ROW = np.dtype([(name, kind) for name, (kind, _, _) in COLUMNS.items()])


def row(**columns: float) -> dict[str, float]:
    """One Schedule row as a plain mapping; a name that is no column raises KeyError at once."""
    if not columns.keys() <= COLUMNS.keys():
        raise KeyError(f"no Schedule column {min(columns.keys() - COLUMNS.keys())!r}")
    return _SILENT | columns


ADDED = (
    "rennet_imcu_l",
    "cacl2_g_kg",
    "acid_mol_kg",
    "salt_per_milk",
    "inoculum_meso",
    "inoculum_strep",
    "inoculum_rods",
    "inoculum_lactate",
)
AT_START = ("cut_mm", "salt_per_curd", *ADDED)
"""Columns that act at the start of a row only; a row that is split keeps them in its first part."""
WHEY_OFF_MOST = 0.985
"""A share of whey taken evenly through a row can't be all of it; the rest runs off in the next row."""
CREAM_FAT = 0.40
"""Fat in the cream that a branch takes [kg/kg]: separated cream, common practice."""


def split(row: Mapping[str, float], after_min: float) -> tuple[dict[str, float], dict[str, float]]:
    """A row as two that do the same: what acts at the start stays in the first, the rest is shared by time.

    `after_min` lies inside the row. A ramp goes on at the same pace; a state end stays open in both parts.
    """
    first, rest = dict(row), dict(row)
    share = after_min / row["minutes"]
    first["minutes"], rest["minutes"] = after_min, row["minutes"] - after_min
    rest["earliest_min"] = max(0.0, row["earliest_min"] - after_min)
    rest |= dict.fromkeys(AT_START, 0.0)
    first["water_on"], rest["water_on"] = row["water_on"] * share, row["water_on"] * (1.0 - share)
    kept = 1.0 - min(row["whey_off"], WHEY_OFF_MOST)
    first["whey_off"], rest["whey_off"] = 1.0 - kept**share, 1.0 - kept ** (1.0 - share)
    rest["ramp_min"] = max(0.0, row["ramp_min"] - after_min)
    if row["t_law"] == T_HOLD or (row["t_law"] == T_RAMP and rest["ramp_min"] <= 1e-9):
        rest |= {"t_law": T_HOLD, "t_end_c": np.nan, "ramp_min": 0.0}
    return first, rest


_IN_ORDER = itemgetter(*COLUMNS)


def as_mappings(rows: NDArray[Any]) -> list[dict[str, float]]:
    """The other way round: structured rows as plain mappings."""
    return [dict(zip(COLUMNS, one, strict=True)) for one in rows.tolist()]


def as_rows(mappings: Sequence[Mapping[str, float]]) -> NDArray[Any]:
    """Rows as one structured array, dtype `ROW`, shape (n,)."""
    return np.array([_IN_ORDER(mapping) for mapping in mappings], dtype=ROW)


@dataclass(frozen=True, slots=True)
class Milk:
    """Milk in the vat after blending, per kilogram; what the march starts from.

    Mass fractions [g/kg] unless said; `ph` is the pH at 20 °C; `heat_denatured` is the share of whey protein
    denatured by heat (0 raw, about 0.05 pasteurised, 1 boiled); `age_cold_h` hours kept cold.
    """

    mass_kg: float
    density_kg_l: float
    fat: float
    casein: float
    whey_protein: float
    lactose: float
    ash: float
    ph: float
    species: str
    calcium: float
    heat_denatured: float = 0.05
    age_cold_h: float = 0.0
    temperature_c: float = 20.0
    shares: tuple[tuple[str, float], ...] = ()
    """Species and their shares by mass, where there is more than one; `species` is that of the greater part."""

    @property
    def protein(self) -> float:
        """Casein and whey protein [g/kg]."""
        return self.casein + self.whey_protein


@dataclass(frozen=True, slots=True)
class Lane:
    """One run of stages: the main make, or a branch that begins from the state after `after_stage`."""

    rows: NDArray[Any]
    stage_ids: tuple[str, ...]
    branch_id: str | None = None
    after_stage: str | None = None
    share: float = 1.0
    of: str = "curd"


@dataclass(frozen=True, slots=True)
class Schedule:
    """A recipe as arrays: the milk and the lanes (the main make first)."""

    milk: Milk
    lanes: tuple[Lane, ...]
    clock_start_min: int | None
    starter_min: float
    pieces: int = 1
    room_c: float = 20.0
