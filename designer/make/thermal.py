"""Heat: what milk, whey and curd hold, how long a vat takes, what wash water does, how fast a pressed cheese cools.

Formulas: heat capacity by components (Kessler 1981) or the dairy form (both as taught in Indian agricultural
universities' course on food engineering); the rest is a lumped body, a mixing balance and the conduction series.
"""

from __future__ import annotations

from math import exp, log, pi

from designer.recipe.pressing import pressure_kpa, round_area_m2

WATER_KJ_KG_K = 4.18


def heat_capacity_kessler_1981(water: float, carbohydrate: float, protein: float, fat: float, ash: float) -> float:
    """Heat capacity [kJ/kg/K] from mass fractions."""
    return 4.18 * water + 1.4 * carbohydrate + 1.6 * protein + 1.7 * fat + 0.8 * ash


def heat_capacity_dairy(water: float, solids_not_fat: float, fat: float) -> float:
    """Heat capacity [kJ/kg/K] from mass fractions, the shorter dairy form."""
    return (0.5 * fat + 0.3 * solids_not_fat + water) * WATER_KJ_KG_K


def heat_needed_kj(mass_kg: float, capacity_kj_kg_k: float, start_c: float, end_c: float) -> float:
    """Heat [kJ] to bring a mass from one temperature to another, before losses."""
    return mass_kg * capacity_kj_kg_k * (end_c - start_c)


def vat_time_constant_min(mass_kg: float, capacity_kj_kg_k: float, u_w_m2_k: float, area_m2: float) -> float:
    """Time constant [min] of a stirred vat against its jacket, m cp / (U A)."""
    return mass_kg * capacity_kj_kg_k * 1000.0 / (u_w_m2_k * area_m2) / 60.0


def vat_minutes(time_constant_min: float, start_c: float, end_c: float, jacket_c: float) -> float:
    """Minutes to bring a stirred vat to a temperature with the jacket held at `jacket_c`."""
    return time_constant_min * log((jacket_c - start_c) / (jacket_c - end_c))


def jacket_needed_c(time_constant_min: float, start_c: float, end_c: float, minutes: float) -> float:
    """Jacket temperature [°C] that brings a stirred vat there in exactly so many minutes."""
    left = exp(-minutes / time_constant_min)
    return (end_c - start_c * left) / (1.0 - left)


def mixed_c(mass_kg: float, capacity_kj_kg_k: float, temp_c: float, water_kg: float, water_c: float) -> float:
    """Temperature [°C] of curd and whey after wash water is mixed in, no losses."""
    ours = mass_kg * capacity_kj_kg_k
    waters = water_kg * WATER_KJ_KG_K
    return (ours * temp_c + waters * water_c) / (ours + waters)


def mass_cooled_kg(capacity_kj_kg_k: float, from_c: float, to_c: float, water_kg: float, water_c: float) -> float:
    """Mass of curd and whey [kg] that so much water brings from one temperature to another."""
    return water_kg * WATER_KJ_KG_K * (to_c - water_c) / (capacity_kj_kg_k * (from_c - to_c))


def block_cooling(sides_m: tuple[float, float, float], diffusivity_m2_s: float) -> tuple[float, float]:
    """First term of a block's cooling with its surface held: (time constant [h], factor at the centre)."""
    rate = pi**2 * diffusivity_m2_s * sum(1.0 / side**2 for side in sides_m)
    return 1.0 / rate / 3600.0, (4.0 / pi) ** 3


def cylinder_cooling(diameter_m: float, height_m: float, diffusivity_m2_s: float) -> tuple[float, float]:
    """First term of a cylinder's cooling with its surface held: (time constant [h], factor at the centre)."""
    rate = diffusivity_m2_s * ((2.405 / (diameter_m / 2.0)) ** 2 + (pi / height_m) ** 2)
    return 1.0 / rate / 3600.0, 1.602 * 1.273


def centre_cooling_h(time_constant_h: float, factor: float, start_c: float, end_c: float, surface_c: float) -> float:
    """Hours until the centre reaches a temperature, from the first term of the series."""
    return time_constant_h * log(factor * (start_c - surface_c) / (end_c - surface_c))


def press_kpa(load_kg: float, lever: float, diameter_mm: float) -> float:
    """Pressure [kPa] on one round cheese under a load and a lever; stacked cheeses see the same force."""
    return pressure_kpa(load_kg * lever, round_area_m2(diameter_mm))
