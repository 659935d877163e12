"""Which law of ours answers which published figure: a name in the data -> a function of named numbers."""

from __future__ import annotations

from collections.abc import Callable
from types import ModuleType
from typing import Any

from designer.cellar import air, water_activity
from designer.make import acid, balance, salt, strength, thermal
from designer.make import set as setting
from designer.make.heat_treatment import pair_met
from designer.make.start import parameters
from designer.recipe import standardise
from designer.recipe.schedule import COAGULANT_CALF, Milk

Law = Callable[..., float]
FRESH = Milk(1.0, 1.03, 37.0, 26.0, 6.5, 47.0, 7.2, 6.65, "cow", 1.2, heat_denatured=0.0, age_cold_h=0.0)


def _floc(imcu_l: float, temp_c: float = 32.0, ph: float = 6.55, **constants: float) -> float:
    """Flocculation time [min] by the make's own law, with constants of the case where the case states them."""
    milk = parameters(FRESH)[0]
    for name, value in constants.items():
        milk[name] = value
    row: Any = _Named(milk)
    return float(setting.floc_minutes_foltmann_1959(imcu_l, temp_c, ph, 0.0, COAGULANT_CALF, row))


class _Named:
    """A record whose fields are attributes, as the compiled march sees them."""

    def __init__(self, record_row: Any) -> None:
        for name in record_row.dtype.names:
            setattr(self, name, float(record_row[name]))


def _relative_floc(ph: float) -> float:
    return (_floc(40.0, ph=ph, floc_lag_min=0.0)) / _floc(40.0, floc_lag_min=0.0)


def _q10(ea_kj_mol: float) -> float:
    return setting.relative_time_arrhenius(25.0, ea_kj_mol * 1e3) / setting.relative_time_arrhenius(
        35.0, ea_kj_mol * 1e3
    )


def _ctmi_rate(temp_c: float, low: float, best: float, high: float, rate: float) -> float:
    return float(rate * acid.ctmi_rosso_1993(temp_c, low, best, high))


def _cpm(ph: float, low: float, best: float, high: float) -> float:
    return float(acid.cpm_rosso_1995(ph, low, best, high))


def _lever_whey(curd_moisture_pct: float) -> float:
    return 100.0 - balance.curd_by_lever_kg(curd_moisture_pct)


def _edge_at(curd_moisture_pct: float) -> float:
    return balance.edge_ratio(balance.curd_by_lever_kg(curd_moisture_pct))


def _vat_constant(mass_kg: float, u_w_m2_k: float, area_m2: float, capacity_kj_kg_k: float) -> float:
    return thermal.vat_time_constant_min(mass_kg, capacity_kj_kg_k, u_w_m2_k, area_m2)


def _block_cooling(
    a_m: float, b_m: float, c_m: float, diffusivity: float, start: float, end: float, face: float
) -> float:
    constant, factor = thermal.block_cooling((a_m, b_m, c_m), diffusivity)
    return thermal.centre_cooling_h(constant, factor, start, end, face)


def _cylinder_cooling(
    diameter_m: float, height_m: float, diffusivity: float, start: float, end: float, face: float
) -> float:
    constant, factor = thermal.cylinder_cooling(diameter_m, height_m, diffusivity)
    return thermal.centre_cooling_h(constant, factor, start, end, face)


def _pair(temp_c: float, seconds: float, fat_pct: float = 4.0) -> float:
    """The temperature of the listed pair a hold meets [°C], 0 where it meets none."""
    pair = pair_met(temp_c, seconds, fat_pct)
    return pair.temp_c if pair else 0.0


def _ontario(temp_c: float, seconds: float, fat_pct: float = 4.0) -> float:
    pair = pair_met(temp_c, seconds, fat_pct, "Ontario")
    return pair.temp_c if pair else 0.0


def _aw_of_salt(salt_pct: float, moisture_pct: float) -> float:
    return water_activity.water_activity_marcos_1981(balance.salt_in_moisture_pct(salt_pct, moisture_pct))


def _aw_of_molality(mol_kg: float) -> float:
    return water_activity.water_activity_marcos_1981(mol_kg * water_activity.SALT_G_MOL / 10.0)


def _dornic_of_sh(degrees: float) -> float:
    return strength.lactic_pct_of_soxhlet_henkel(degrees) / strength.lactic_pct_of_dornic(1.0)


def _thoerner_of_sh(degrees: float) -> float:
    return strength.lactic_pct_of_soxhlet_henkel(degrees) / strength.lactic_pct_of_thoerner(1.0)


def _humidity_g_kg(temp_c: float, rh: float) -> float:
    return 1000.0 * air.humidity_ratio(temp_c, rh)


def _yield_by_balance(insoluble_kg: float, soluble_kg: float, water_kg: float, moisture_pct: float) -> float:
    water = balance.water_left_kg(moisture_pct, insoluble_kg, soluble_kg, water_kg)
    return insoluble_kg + water * (1.0 + soluble_kg / water_kg)


PLACES: tuple[ModuleType, ...] = (balance, salt, strength, setting, thermal, air, water_activity, standardise)
OURS: dict[str, Law] = {
    "floc_minutes": _floc,
    "relative_floc_of_ph": _relative_floc,
    "q10_of_activation_energy": _q10,
    "growth_rate_ctmi": _ctmi_rate,
    "cpm_rosso_1995": _cpm,
    "whey_by_lever_kg": _lever_whey,
    "edge_at_moisture": _edge_at,
    "vat_time_constant": _vat_constant,
    "block_cooling_h": _block_cooling,
    "cylinder_cooling_h": _cylinder_cooling,
    "listed_pair_c": _pair,
    "listed_pair_ontario_c": _ontario,
    "water_activity_of_salt": _aw_of_salt,
    "water_activity_of_molality": _aw_of_molality,
    "dornic_of_soxhlet_henkel": _dornic_of_sh,
    "thoerner_of_soxhlet_henkel": _thoerner_of_sh,
    "humidity_ratio_g_kg": _humidity_g_kg,
    "yield_by_balance": _yield_by_balance,
}
"""Laws whose published figures ask for another shape of argument than the law itself has."""


def law(name: str) -> Law:
    """The law of that name: one of OURS, or a function of the chapters in PLACES; KeyError if there is none."""
    if name in OURS:
        return OURS[name]
    for place in PLACES:
        found: Law | None = getattr(place, name, None)
        if callable(found):
            return found
    raise KeyError(f"no law {name!r}")
