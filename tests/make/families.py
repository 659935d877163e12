"""Small makes, written as Schedule rows, on which the laws are tried: no recipe, no file."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make import kernel
from designer.make.kernel import Path
from designer.make.march import OUT_EXTRA
from designer.make.outcomes import composition as compositions
from designer.make.start import first_state, parameters
from designer.recipe.schedule import (
    GEL_ACID_HEAT,
    GEL_LACTIC,
    GEL_RENNET,
    PLACE_BRINE,
    PLACE_DRAINED,
    PLACE_MOULD,
    PLACE_PRESS,
    PLACE_UNDER_WHEY,
    T_FOLLOW,
    T_RAMP,
    Milk,
    as_rows,
    row,
)

COW = Milk(100.0, 1.03, 37.0, 25.0, 6.6, 47.5, 7.3, 6.62, "cow", 1.2, 0.05, 12.0, 31.0)
OUTSIDE = {"t_law": T_FOLLOW, "follow_c": 24.0, "va_mm": 70.0}


def cheddar(**change: float) -> list[dict[str, float]]:
    """A drained, salted, pressed make. `change`: cut_mm, cook_c, hold_min, salt, inoculum, load_kpa, rennet."""
    get = change.get
    return [
        row(stage=0, minutes=60, t_end_c=31.0, inoculum_meso=get("inoculum", 0.01), inoculum_lactate=0.0008),
        row(stage=1, minutes=get("set_min", 40), rennet_imcu_l=get("rennet", 40.0), gel=GEL_RENNET),
        row(stage=2, minutes=15, place=PLACE_UNDER_WHEY, cut_mm=get("cut_mm", 9.5), disturbed=0.2),
        row(
            stage=3, minutes=get("ramp_min", 35), place=PLACE_UNDER_WHEY, disturbed=1, t_law=T_RAMP,
            t_end_c=get("cook_c", 38.5), ramp_min=get("ramp_min", 35),
        ),
        row(stage=4, minutes=get("hold_min", 45), place=PLACE_UNDER_WHEY, disturbed=get("stirred", 1.0)),
        row(stage=5, minutes=15, place=PLACE_DRAINED, disturbed=0.3, whey_off=1.0, **OUTSIDE),
        row(stage=6, minutes=90, place=PLACE_DRAINED, **OUTSIDE),
        row(stage=7, minutes=20, place=PLACE_DRAINED, disturbed=1, salt_per_curd=get("salt", 0.026), **OUTSIDE),
        row(stage=8, minutes=900, place=PLACE_PRESS, load_kpa=get("load_kpa", 70.0), every_min=5, **OUTSIDE),
    ]  # fmt: skip


def gouda(**change: float) -> list[dict[str, float]]:
    """A washed, pressed, brined make. `change`: water, water_c, brine_h, brine_pct."""
    get = change.get
    return [
        row(stage=0, minutes=30, t_end_c=31.0, inoculum_meso=0.0075, inoculum_lactate=0.0005),
        row(stage=1, minutes=40, rennet_imcu_l=40.0, gel=GEL_RENNET),
        row(stage=2, minutes=12, place=PLACE_UNDER_WHEY, cut_mm=8.0, disturbed=0.3),
        row(stage=3, minutes=25, place=PLACE_UNDER_WHEY, disturbed=1),
        row(stage=4, minutes=8, place=PLACE_UNDER_WHEY, disturbed=0.3, whey_off=0.4),
        row(
            stage=5, minutes=18, place=PLACE_UNDER_WHEY, disturbed=1, water_on=get("water", 0.22),
            water_c=get("water_c", 60.0),
        ),
        row(stage=6, minutes=20, place=PLACE_UNDER_WHEY, disturbed=1),
        row(stage=7, minutes=15, place=PLACE_DRAINED, whey_off=1.0, **OUTSIDE),
        row(stage=8, minutes=60, place=PLACE_PRESS, load_kpa=30.0, every_min=5, **OUTSIDE),
        row(stage=9, minutes=300, place=PLACE_PRESS, load_kpa=100.0, every_min=5, **OUTSIDE),
        row(
            stage=10, minutes=60 * get("brine_h", 36), place=PLACE_BRINE, brine_pct=get("brine_pct", 20.0),
            every_min=5,
            t_law=T_FOLLOW, follow_c=12.0, va_mm=35.0, height_mm=get("height_mm", 90.0), radius_mm=120.0,
        ),
    ]  # fmt: skip


def camembert() -> list[dict[str, float]]:
    """A ladled make without a cook, acid to the end."""
    mould = {"t_law": T_FOLLOW, "follow_c": 22.0, "va_mm": 25.0, "every_min": 5}
    return [
        row(stage=0, minutes=60, t_end_c=32.0, inoculum_meso=0.03, inoculum_lactate=0.002),
        row(stage=1, minutes=45, rennet_imcu_l=50.0, gel=GEL_RENNET),
        row(stage=2, minutes=40, place=PLACE_UNDER_WHEY, cut_mm=15.0),
        row(stage=3, minutes=15, place=PLACE_MOULD, whey_off=1.0, **mould),
        row(stage=4, minutes=900, place=PLACE_MOULD, **mould),
    ]


def lactic() -> list[dict[str, float]]:
    """Soured overnight to an acid gel, ladled, drained in its forms."""
    mould = {"t_law": T_FOLLOW, "follow_c": 19.0, "va_mm": 15.0, "height_mm": 60.0, "every_min": 5}
    return [
        row(minutes=1080, t_end_c=21.0, inoculum_meso=0.02, inoculum_lactate=0.001, gel=GEL_LACTIC, rennet_imcu_l=2.0,
            every_min=5),
        row(stage=1, minutes=60, place=PLACE_MOULD, whey_off=1.0, cut_mm=30.0, **mould),
        row(stage=2, minutes=900, place=PLACE_MOULD, **mould),
    ]  # fmt: skip


def hot_acid() -> list[dict[str, float]]:
    """Curdled hot by acid, drained and pressed a little."""
    mould = {"t_law": T_FOLLOW, "follow_c": 22.0, "va_mm": 20.0, "height_mm": 60.0, "every_min": 5}
    return [
        row(minutes=40, t_law=T_RAMP, t_end_c=85.0, ramp_min=40.0),
        row(stage=1, minutes=10, acid_mol_kg=0.03, gel=GEL_ACID_HEAT),
        row(stage=2, minutes=20, place=PLACE_UNDER_WHEY, cut_mm=8.0),
        row(stage=3, minutes=60, place=PLACE_MOULD, whey_off=1.0, **mould),
        row(stage=4, minutes=120, place=PLACE_PRESS, load_kpa=3.0, **mould),
    ]


def stretched() -> list[dict[str, float]]:
    """Ripened as a pile, stretched in hot water, cooled in water, brined."""
    ball = {"t_law": T_FOLLOW, "va_mm": 20.0, "height_mm": 90.0, "radius_mm": 95.0, "every_min": 5}
    return [
        row(minutes=30, t_law=T_RAMP, t_end_c=36.5, ramp_min=30.0, inoculum_strep=0.01, inoculum_rods=0.005,
            inoculum_lactate=0.001),
        row(stage=1, minutes=30, rennet_imcu_l=39.0, gel=GEL_RENNET),
        row(stage=2, minutes=15, place=PLACE_UNDER_WHEY, cut_mm=12.0, disturbed=0.3),
        row(stage=3, minutes=40, place=PLACE_UNDER_WHEY, disturbed=1, t_law=T_RAMP, t_end_c=41.0, ramp_min=30.0),
        row(stage=4, minutes=15, place=PLACE_DRAINED, whey_off=1.0),
        row(stage=5, minutes=120, place=PLACE_DRAINED),
        row(stage=6, minutes=6, place=PLACE_DRAINED, disturbed=1, stretch=1.0, t_law=T_FOLLOW, follow_c=75.0,
            va_mm=5.0),
        row(stage=7, minutes=30, place=PLACE_MOULD, whey_off=1.0, **(ball | {"follow_c": 12.0})),
        row(stage=8, minutes=240, place=PLACE_BRINE, brine_pct=20.0, **(ball | {"follow_c": 8.0})),
    ]  # fmt: skip


MAKES = {
    "cheddar": cheddar(),
    "gouda": gouda(),
    "camembert": camembert(),
    "lactic": lactic(),
    "hot_acid": hot_acid(),
    "stretched": stretched(),
}


def marched(rows: list[dict[str, float]], milk: Milk = COW, *, twin: bool | None = None, **constants: float) -> Path:
    """A make marched with the compiled kernel (or its twin)."""
    p = parameters(milk)
    for name, value in constants.items():
        p[name] = value
    if twin is None:
        ready()
    prepared = kernel.prepare(as_rows(rows))
    return kernel.march(prepared, first_state(milk, p[0]), p[0], twin=twin)


def composition(y: NDArray[np.float64]) -> dict[str, float]:
    """Composition of one state (SIZE,)."""
    return {key: float(value) for key, value in compositions(y, parameters(COW)[0]).items()}


def ready() -> None:
    """Compile once a test run."""
    if not kernel.is_warm():
        kernel.warm_up()


def last(path: Path) -> NDArray[np.float64]:
    """The final state, shape (SIZE,)."""
    return np.asarray(path.out[-1, OUT_EXTRA:])


def end(rows: list[dict[str, float]], milk: Milk = COW, **constants: float) -> dict[str, float]:
    """Composition and pH at the end of a make."""
    path = marched(rows, milk, **constants)
    return composition(last(path)) | {"ph": float(path.out[-1, 2]), "floc_min": path.floc_min}


def milk(**change: Any) -> Milk:
    """Cow milk with changes."""
    return replace(COW, **change)
