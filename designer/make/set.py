"""Setting: how long rennet takes to flocculate, how the gel firms, when acid alone makes a gel.

Forms: Holter 1932 / Foltmann 1959 for the dose, Castillo et al. 2003 for the enzyme's temperature, the classic
activity table of calf rennet for the rest, Scott Blair & Burnett 1959 for firming. Valid 18-45 °C.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.law import arrhenius, law, power
from designer.recipe.schedule import COAGULANT_CAMEL, COAGULANT_MICROBIAL, COAGULANT_PLANT

# Calf rennet on fresh cow milk, activity relative to 100 at 41 °C (Mayer/Fleischmann table, from memory, medium).
ACTIVITY_C = np.array(
    [15, 18, 20, 25, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 50.0]
)
ACTIVITY = np.array(
    [4, 12, 18, 44, 71, 74, 77, 80, 83, 86, 89, 92, 94, 96, 98, 100, 98, 96, 93, 89, 84, 78, 70, 60, 50.0]
)
SET_C_LOW, SET_C_HIGH = 18.0, 45.0
CURDLED_LEAST = 0.02
"""Something always clings to the cloth; the laws divide by it."""
MILK_WHEY_SHARE = 0.27
"""Whey protein of all protein in the milk that has most of it, goats'."""


def relative_time_arrhenius(temp_c: float, ea_j_mol: float = 67e3) -> float:
    """Clotting time relative to 32 °C by Arrhenius [1]; Castillo et al. 2003 give 63-72 kJ/mol for 20-40 °C."""
    return float(arrhenius(32.0, ea_j_mol, temp_c))


def relative_time_table(temp_c: float) -> float:
    """Clotting time relative to 32 °C from the activity table [1], 15-50 °C."""
    return float(77.0 / np.interp(temp_c, ACTIVITY_C, ACTIVITY))


def _relative_times() -> NDArray[np.float64]:
    """One value a degree, 15-50 °C: geometric mean of both between 25 and 38 °C, blended into the table outside."""
    degrees = np.arange(15.0, 51.0)
    weight = 0.5 * np.interp(degrees, [22, 25, 38, 41], [0, 1, 1, 0])
    logs = [
        (1 - w) * np.log(relative_time_table(t)) + w * np.log(relative_time_arrhenius(t))
        for t, w in zip(degrees, weight, strict=True)
    ]
    return np.exp(np.array(logs))


RELATIVE_TIME = _relative_times()


@law
def set_temperature_factor(temp_c: float) -> float:
    """Clotting time relative to 32 °C [1]; held at the ends of 15-50 °C."""
    place = min(max(temp_c - 15.0, 0.0), 34.999)
    index = int(place)
    return RELATIVE_TIME[index] + (place - index) * (RELATIVE_TIME[index + 1] - RELATIVE_TIME[index])


@law
def heat_factor(ph: float, p: Any) -> float:
    """Clotting time of heated milk against unheated [1]; the harm fades below pH 6.2 (Lucey, Gorry & Fox 1993)."""
    harm = 1.0 / (1.0 + np.exp((p.floc_heat_ph - ph) / p.floc_heat_ph_width))
    return 1.0 + p.floc_heat * p.heat_denatured * harm


@law
def floc_minutes_foltmann_1959(imcu_l: float, temp_c: float, ph: float, cacl2_g_kg: float, kind: int, p: Any) -> float:
    """Minutes from rennet to visible flocculation, t = A + K/E with factors for temperature, pH, calcium and milk.

    imcu_l [IMCU/L milk] > 0; cacl2_g_kg added, dry; kind COAGULANT_*; p.floc_milk holds species and cold history.
    """
    slope = p.floc_ph_slope
    if kind == COAGULANT_MICROBIAL:
        slope *= p.floc_slope_microbial
    elif kind == COAGULANT_CAMEL:
        slope *= p.floc_slope_camel
    elif kind == COAGULANT_PLANT:
        slope *= p.floc_slope_plant
    factor = set_temperature_factor(temp_c) * p.floc_milk * heat_factor(ph, p)
    factor *= np.exp(slope * (ph - p.floc_ph_reference) - p.floc_ca_slope * cacl2_g_kg)
    return p.floc_lag_min + p.floc_k / imcu_l * factor


@law
def firmness_scott_blair_1959(clot: float, casein: float, kind: int, p: Any) -> float:
    """Gel firmness G' [Pa] at `clot` flocculation times after rennet; casein [kg/kg]. Zero before flocculation."""
    if clot <= 1.0:
        return 0.0
    tau = p.firming_tau
    if kind == COAGULANT_PLANT:
        tau *= p.firming_tau_plant
    elif kind == COAGULANT_MICROBIAL:
        tau *= p.firming_tau_microbial
    limit = p.firm_limit_pa * power(casein / 0.026, p.firm_casein_power)
    return limit * np.exp(-tau / (clot - 1.0))


@law
def acid_gelation_ph(temp_c: float, p: Any) -> float:
    """pH at which acid alone gels the milk: earlier when warm, earlier when whey protein sits on the micelles."""
    return p.acid_gel_ph + p.acid_gel_ph_warm * (temp_c - 20.0) + p.acid_gel_ph_heat * p.heat_denatured


@law
def heat_curdled(ph: float, temp_c: float, p: Any) -> float:
    """Share of hot milk or whey that acid has curdled [1]: all of it well below the gelation pH, none above.

    Whey, with no casein to hold its unfolded protein apart, flocculates much sweeter and less sharply than milk.
    """
    denatured = max(p.heat_denatured, unfolded(temp_c, p))
    at = p.acid_gel_ph + p.acid_gel_ph_warm * (temp_c - 20.0) + p.acid_gel_ph_heat * denatured
    of_whey = max(0.0, (p.whey_share - MILK_WHEY_SHARE) / (1.0 - MILK_WHEY_SHARE))
    at += p.heat_curd_whey * of_whey
    width = p.heat_curd_ph_width + (p.heat_curd_whey_width - p.heat_curd_ph_width) * of_whey
    return CURDLED_LEAST + (1.0 - CURDLED_LEAST) / (1.0 + np.exp((ph - at) / width))


@law
def unfolded(temp_c: float, p: Any) -> float:
    """Share of the whey protein that heat has unfolded within minutes [1]."""
    return 1.0 / (1.0 + np.exp((p.heat_curd_t_half_c - temp_c) / p.heat_curd_t_width_c))


@law
def firmness_acid(ph: float, temp_c: float, casein: float, p: Any) -> float:
    """Firmness of an acid gel [Pa]: a step at its gelation pH (engineering form), firmer from heated milk."""
    limit = p.acid_gel_pa * power(casein / 0.026, p.firm_casein_power) * (1.0 + p.acid_gel_pa_heat * p.heat_denatured)
    return limit / (1.0 + np.exp((ph - acid_gelation_ph(temp_c, p)) / p.acid_gel_width))
