"""Brine as a solution: density, strength in every unit a maker meets, topping up. (Uptake by cheese: uptake.py.)

Density after a handbook table (Polish physico-chemical handbook, 1974): value at 20 °C and a coefficient per kelvin.
The table's own "15 °C" column is not used: as reprinted it holds the 10 °C values.
"""

from __future__ import annotations

import numpy as np

from designer.language import say

STRENGTH_PCT = np.array([0, 1, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26.0])
DENSITY_20C = np.array(
    [
        998.2,
        1005.3,
        1012.2,
        1026.8,
        1041.3,
        1055.9,
        1070.7,
        1085.7,
        1100.9,
        1116.2,
        1131.9,
        1147.8,
        1164.0,
        1180.4,
        1197.2,
    ]
)
PER_KELVIN = np.array([0.20, 0.22, 0.24, 0.28, 0.31, 0.34, 0.37, 0.39, 0.42, 0.44, 0.47, 0.49, 0.51, 0.53, 0.55])

SATURATED_PCT = 26.4
WATER_15C = 999.1
BAUME = 145.0


def density_handbook_1974(strength_pct: float, temp_c: float = 20.0) -> float:
    """Density of brine [kg/m³], 0-26.4 % w/w, 0-30 °C: rho(t) = rho20 + A (20 - t), by straight line between rows."""
    _checked(strength_pct)
    at_20 = np.interp(strength_pct, STRENGTH_PCT, DENSITY_20C)
    if strength_pct > STRENGTH_PCT[-1]:
        at_20 += (strength_pct - STRENGTH_PCT[-1]) * (DENSITY_20C[-1] - DENSITY_20C[-2]) / 2.0
    return float(at_20 + np.interp(strength_pct, STRENGTH_PCT, PER_KELVIN) * (20.0 - temp_c))


def strength_of_density(density_kg_m3: float, temp_c: float = 20.0) -> float:
    """Strength [% w/w] of a brine of that density [kg/m³]; ValueError outside water..saturated."""
    weak, strong = density_handbook_1974(0.0, temp_c), density_handbook_1974(SATURATED_PCT, temp_c)
    if not weak - 1e-9 <= density_kg_m3 <= strong + 1e-9:
        raise ValueError(
            say(
                "A brine at {temp_c:g} °C weighs between {weak:.0f} and {strong:.0f} kg per m³.",
                temp_c=temp_c,
                weak=weak,
                strong=strong,
            )
        )
    low, high = 0.0, SATURATED_PCT
    for _ in range(60):
        middle = (low + high) / 2.0
        low, high = (middle, high) if density_handbook_1974(middle, temp_c) < density_kg_m3 else (low, middle)
    return (low + high) / 2.0


def grams_per_litre(strength_pct: float, temp_c: float = 15.0) -> float:
    """Salt in a litre of brine [g/L] ("% w/v" is a tenth of it)."""
    return strength_pct / 100.0 * density_handbook_1974(strength_pct, temp_c)


def strength_of_grams_per_litre(grams: float, temp_c: float = 15.0) -> float:
    """Strength [% w/w] of a brine that holds `grams` of salt in a litre."""
    strength = grams / 10.0
    for _ in range(60):
        strength = 100.0 * grams / density_handbook_1974(min(strength, SATURATED_PCT), temp_c)
    return _checked(strength)


def salt_per_water(strength_pct: float) -> float:
    """Salt per 100 g of water [g]."""
    return 100.0 * _checked(strength_pct) / (100.0 - strength_pct)


def strength_of_salt_per_water(grams: float) -> float:
    """Strength [% w/w] of `grams` of salt stirred into 100 g of water."""
    return _checked(100.0 * grams / (100.0 + grams))


def specific_gravity_15(strength_pct: float) -> float:
    """Specific gravity 15 °C / 15 °C."""
    return density_handbook_1974(strength_pct, 15.0) / WATER_15C


def baume(strength_pct: float) -> float:
    """Degrees Baumé of a brine at 15 °C, from s.g. = 145 / (145 - °Bé) (the usual definition; Gerlach has 146.78)."""
    return BAUME - BAUME / specific_gravity_15(strength_pct)


def strength_of_baume(degrees: float) -> float:
    """Strength [% w/w] of a brine that reads so many degrees Baumé at 15 °C."""
    return strength_of_density(BAUME / (BAUME - degrees) * WATER_15C, 15.0)


def saturation_pct(strength_pct: float) -> float:
    """Share of a saturated brine [%], the salometer degree; saturated is 26.4 % w/w."""
    return 100.0 * _checked(strength_pct) / SATURATED_PCT


def strength_of_saturation(saturation: float) -> float:
    """Strength [% w/w] of a brine at a share of saturation [%]."""
    return _checked(saturation * SATURATED_PCT / 100.0)


def top_up_kg(brine_kg: float, strength_pct: float, wanted_pct: float) -> float:
    """Dry salt [kg] that brings a brine to the strength wanted; ValueError if it is stronger already."""
    if wanted_pct < strength_pct:
        raise ValueError(
            say(
                "The brine is at {strength_pct:g} % already; to weaken it to {wanted_pct:g} % add water.",
                strength_pct=strength_pct,
                wanted_pct=wanted_pct,
            )
        )
    return brine_kg * (wanted_pct - strength_pct) / (100.0 - _checked(wanted_pct))


def weaken_kg(brine_kg: float, strength_pct: float, wanted_pct: float) -> float:
    """Water [kg] that brings a brine down to the strength wanted; ValueError if it is weaker already."""
    if wanted_pct > strength_pct:
        raise ValueError(
            say(
                "The brine is at {strength_pct:g} %; to strengthen it to {wanted_pct:g} % add salt.",
                strength_pct=strength_pct,
                wanted_pct=wanted_pct,
            )
        )
    return brine_kg * (_checked(strength_pct) / wanted_pct - 1.0)


def salt_for_water_kg(strength_pct: float, water_kg: float) -> float:
    """Salt [kg] to stir into so much water for a brine of that strength; more than strength times water."""
    return water_kg * _checked(strength_pct) / (100.0 - strength_pct)


def strength_of_salt_and_water(salt_kg: float, water_kg: float) -> float:
    """Strength [% w/w] of salt stirred into water: 20 kg to 100 kg is 16.7 %, not 20 %."""
    return _checked(100.0 * salt_kg / (salt_kg + water_kg))


def after_cheese(brine_kg: float, strength_pct: float, salt_taken_kg: float, water_given_kg: float) -> float:
    """Strength [% w/w] of a brine when cheeses have taken salt from it and given water to it."""
    salt = brine_kg * _checked(strength_pct) / 100.0 - salt_taken_kg
    if salt < 0.0:
        raise ValueError(say("the cheeses can't take more salt than the brine holds"))
    return 100.0 * salt / (brine_kg - salt_taken_kg + water_given_kg)


def in_words(strength_pct: float, *, undissolved: bool = False, temp_c: float = 15.0) -> str:
    """A brine every way it is said. "Saturated" is said of 26.4 % alone, or where salt lies undissolved in it."""
    if undissolved or strength_pct >= SATURATED_PCT - 0.05:
        return say("saturated, {saturated_pct} % w/w", saturated_pct=SATURATED_PCT)
    return say(
        "{strength_pct:.1f} % w/w, {grams_per_litre:.1f} % w/v, {salt_per_water:.1f} g per 100 g "
        "water, {density_handbook_1974:.3f} kg/L at {temp_c:g} °C, {baume:.1f} °Bé, "
        "{saturation_pct:.0f} % of saturation",
        strength_pct=strength_pct,
        grams_per_litre=grams_per_litre(strength_pct, temp_c) / 10.0,
        salt_per_water=salt_per_water(strength_pct),
        density_handbook_1974=density_handbook_1974(strength_pct, temp_c) / 1000.0,
        temp_c=temp_c,
        baume=baume(strength_pct),
        saturation_pct=saturation_pct(strength_pct),
    )


def _checked(strength_pct: float) -> float:
    """The strength itself, or ValueError: more than saturated is a mix-up of units."""
    if not 0.0 <= strength_pct <= SATURATED_PCT + 1e-9:
        raise ValueError(
            say(
                "{strength_pct:g} % by weight is no brine: a saturated one holds {saturated_pct} % (that "
                "is 35.9 g of salt per 100 g of water, the other way to say it).",
                strength_pct=strength_pct,
                saturated_pct=SATURATED_PCT,
            )
        )
    return strength_pct
