"""From a marched path to what a maker reads: trace columns, the composition of the cheese, its outcomes."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import knit
from designer.make.kernel import Path
from designer.make.march import NATURAL_ACIDITY_PCT, OUT_EXTRA
from designer.make.state import (
    ASH,
    CALCIUM,
    CALCIUM_KG,
    CASEIN,
    CELLS,
    COLLOIDAL,
    CURD,
    DRY_SALT,
    EVAPORATED,
    FAT,
    GALACTOSE,
    GALACTOSE_KG,
    GONE,
    HEXOSE,
    HEXOSE_KG,
    LACTATE,
    LACTATE_KG,
    SALT,
    WATER,
    WHEY,
    WHEY_PROTEIN,
    T,
)
from designer.recipe.schedule import GEL_ACID_HEAT, PLACE_DRAINED

Series = NDArray[np.float64]


def phase_mass(y: Series, phase: int, p: Any) -> Series:
    """Mass of curd, whey or run-off [kg per kg milk] for states y, shape (..., SIZE) -> (...)."""
    mass = sum(y[..., phase + i] for i in (WATER, FAT, CASEIN, WHEY_PROTEIN, ASH, SALT))
    mass = mass + HEXOSE_KG * y[..., phase + HEXOSE] + GALACTOSE_KG * y[..., phase + GALACTOSE]
    mass = mass + LACTATE_KG * y[..., phase + LACTATE]
    if phase == CURD:
        mass = mass + p["ash_per_calcium"] * y[..., COLLOIDAL]
    return np.asarray(mass)


def columns(path: Path, rows: NDArray[Any], p: Any, names: Collection[str] | None = None) -> dict[str, Series]:
    """Trace columns for one path (all, or those named), each shape (n,); see designer.forecast.Trace for the clock."""
    y = path.out[:, OUT_EXTRA:]
    curd = phase_mass(y, CURD, p)
    per_water = p["water_milk"] / y[:, CURD + WATER]
    out = {
        "temperature_c": y[:, T],
        "ph": path.out[:, 2],
        "ph_whey": path.out[:, 3],
        "firmness_pa": path.out[:, 4],
        "temperature_core_c": path.out[:, 5],
        "temperature_edge_c": path.out[:, 6],
        "ph_core": path.out[:, 7],
        "ph_edge": path.out[:, 8],
        "moisture_core_pct": 100.0 * path.out[:, 9],
        "moisture_edge_pct": 100.0 * path.out[:, 10],
        "curd_moisture_pct": 100.0 * y[:, CURD + WATER] / curd,
        "curd_kg_per_100kg": 100.0 * curd,
        "whey_in_vat_kg_per_100kg": 100.0 * phase_mass(y, WHEY, p),
        "whey_kg_per_100kg": 100.0 * phase_mass(y, GONE, p),
        "salt_pct": 100.0 * y[:, CURD + SALT] / curd,
        "lactose_pct": 100.0 * (HEXOSE_KG * y[:, CURD + HEXOSE] + GALACTOSE_KG * y[:, CURD + GALACTOSE]) / curd,
        "lactate_pct": 100.0 * LACTATE_KG * y[:, CURD + LACTATE] / curd,
        "r": y[:, CURD + WATER] / y[:, CURD + CASEIN],
        "load_kpa": rows["load_kpa"][path.out[:, 1].astype(int)],
        "meso": y[:, CELLS] * per_water,
        "strep": y[:, CELLS + 1] * per_water,
        "rods": y[:, CELLS + 2] * per_water,
    }
    return {name: np.ascontiguousarray(series) for name, series in out.items() if names is None or name in names}


def composition(y: Series, p: Any) -> dict[str, float]:
    """Composition of the curd or cheese in state y (SIZE,), in per cent unless the name says otherwise."""
    mass = float(phase_mass(y, CURD, p))
    protein = float(y[CURD + CASEIN] + y[CURD + WHEY_PROTEIN])
    calcium = float(y[COLLOIDAL] + y[CURD + CALCIUM])
    moisture, fat = 100.0 * float(y[CURD + WATER]) / mass, 100.0 * float(y[CURD + FAT]) / mass
    salt = 100.0 * float(y[CURD + SALT]) / mass
    return {
        "moisture_pct": moisture,
        "dry_matter_pct": 100.0 - moisture,
        "fat_pct": fat,
        "protein_pct": 100.0 * protein / mass,
        "fdm_pct": 100.0 * fat / (100.0 - moisture),
        "mnfs_pct": 100.0 * moisture / (100.0 - fat),
        "salt_pct": salt,
        "salt_in_moisture_pct": 100.0 * salt / moisture,
        "lactose_pct": 100.0 * float(HEXOSE_KG * y[CURD + HEXOSE] + GALACTOSE_KG * y[CURD + GALACTOSE]) / mass,
        "lactate_pct": 100.0 * LACTATE_KG * float(y[CURD + LACTATE]) / mass,
        "calcium_mg_per_g_protein": 1000.0 * calcium / protein,
        "calcium_mmol_per_kg": 1000.0 * calcium / CALCIUM_KG / mass,
        "yield_kg_per_100kg": 100.0 * mass,
    }


def at_minute(path: Path, minute: float) -> Series:
    """The state just at a minute, after all that has happened by then, shape (SIZE,)."""
    index = int(np.searchsorted(path.out[:, 0], minute + 1e-9, side="right")) - 1
    return np.asarray(path.out[index, OUT_EXTRA:])


def ph_24h(path: Path, starter_min: float) -> float:
    """pH of the cheese 24 h after the starter (at the end of the march where that is earlier)."""
    return float(np.interp(starter_min + 1440.0, path.out[:, 0], path.out[:, 2]))


def outcomes(
    path: Path, rows: NDArray[Any], p: Any, *, end_row: int, starter_min: float, mill_row: int | None, milk_kg: float
) -> Mapping[str, float]:
    """All outcomes of one path. `end_row` is the last row before the first room; `mill_row` begins milling or salting.

    What did not happen (no rennet, no draining, no milling) has no key.
    """
    y_end = at_minute_of_row(path, end_row)
    milk = path.out[0, OUT_EXTRA:]
    values = composition(y_end, p)
    values["fat_recovery_pct"] = 100.0 * float(y_end[CURD + FAT] / max(1e-12, milk[CURD + FAT]))
    if not (rows["gel"] == GEL_ACID_HEAT).any():  # there whey protein counts as casein
        values["casein_recovery_pct"] = 100.0 * float(y_end[CURD + CASEIN] / milk[CURD + CASEIN])
    values["whey_kg_per_100kg"] = 100.0 * float(phase_mass(y_end, GONE, p))
    values["cheese_kg"] = values["yield_kg_per_100kg"] / 100.0 * milk_kg
    values["ph_24h"] = ph_24h(path, starter_min)
    values["ph_end"] = _ph_at_end(path, end_row)
    values["finish_min"] = float(path.ends[end_row, 1])
    values["weight_loss_pct"] = 100.0 * float(y_end[EVAPORATED]) / (values["yield_kg_per_100kg"] / 100.0)
    end_index = int(np.flatnonzero(path.out[:, 1] <= end_row)[-1])
    values["ph_core"], values["ph_edge"] = (float(one) for one in path.out[end_index, 7:9])
    values["moisture_core_pct"], values["moisture_edge_pct"] = (100.0 * float(one) for one in path.out[end_index, 9:11])
    ph6 = float(np.interp(starter_min + 360.0, path.out[:, 0], path.out[:, 2]))
    values["ph_6h"] = ph6
    values["dry_salt_left_pct"] = 100.0 * float(y_end[DRY_SALT]) / (values["yield_kg_per_100kg"] / 100.0)
    if path.floc_min >= 0.0:
        values["floc_min"] = path.floc_min
    if path.cut_min >= path.rennet_min >= 0.0:
        values["cut_min"] = path.cut_min - path.rennet_min
    drained = np.flatnonzero(rows["place"] >= PLACE_DRAINED)
    if drained.size:
        start = path.ends[drained[0], 0]
        index = int(np.searchsorted(path.out[:, 0], start - 1e-9))
        values["ph_drain"] = float(path.out[index, 2])
        values["ph_whey_drain"] = float(path.out[index, 3])
        values["drain_moisture_pct"] = composition(path.out[index, OUT_EXTRA:], p)["moisture_pct"]
    if mill_row is not None:
        index = int(np.searchsorted(path.out[:, 0], path.ends[mill_row, 0] - 1e-9))
        values["ph_mill"] = float(path.out[index, 2])
    drawn = np.flatnonzero(rows["whey_off"] > 0.0)
    if drawn.size:
        y = path.out[int(np.searchsorted(path.out[:, 0], path.ends[drawn[0], 0] - 1e-9)), OUT_EXTRA:]
        if y[WHEY + WATER] > 1e-5:
            lactic = 100.0 * LACTATE_KG * float(y[WHEY + LACTATE] / y[WHEY + WATER])
            values["acidity_drawn_pct"] = NATURAL_ACIDITY_PCT[1] + lactic
    joined = joining(path, rows[: end_row + 1], p)
    if joined is not None:
        values["knit"] = knit.score(joined, p)
    return values


def joining(path: Path, rows: NDArray[Any], p: Any) -> knit.Joining | None:
    """What the pieces of curd are like when they meet in form or press; None where there are none. See `make.knit`."""
    points = path.out[path.out[:, 1] < len(rows)]
    row = points[:, 1].astype(int)

    def water_and_salt(index: int) -> tuple[float, float]:
        y = points[index, OUT_EXTRA:]
        return 100.0 * float(y[CURD + WATER] / phase_mass(y, CURD, p)), 100.0 * float(y[CURD + SALT] / y[CURD + WATER])

    return knit.joining(
        rows, points[:, 0], rows["place"][row], rows["load_kpa"][row], points[:, OUT_EXTRA + T], points[:, 2],
        water_and_salt, p,
    )  # fmt: skip


def at_minute_of_row(path: Path, row: int) -> Series:
    """The state when a row ends, shape (SIZE,)."""
    index = int(np.flatnonzero(path.out[:, 1] <= row)[-1])
    return np.asarray(path.out[index, OUT_EXTRA:])


def _ph_at_end(path: Path, row: int) -> float:
    return float(path.out[int(np.flatnonzero(path.out[:, 1] <= row)[-1]), 2])
