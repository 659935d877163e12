"""Moist air of a room: saturation pressure, humidity ratio, dew point, vapour-pressure deficit.

Formulas of the ASHRAE Handbook, Fundamentals, ch. 1 (Hyland & Wexler 1983); tests hold them to the library psychrolib.
"""

from __future__ import annotations

from math import exp, log

from designer.language import say

PRESSURE_PA = 101325.0
WATER_TO_AIR = 0.621945
ZERO_C = 273.15
TRIPLE_C = 0.01


def saturation_pressure_hyland_1983(temp_c: float) -> float:
    """Saturation vapour pressure [Pa], over ice below 0.01 °C; -100 to 200 °C."""
    k = temp_c + ZERO_C
    if temp_c <= TRIPLE_C:
        return exp(
            -5.6745359e3 / k + 6.3925247 - 9.677843e-3 * k + 6.2215701e-7 * k**2 + 2.0747825e-9 * k**3
            - 9.484024e-13 * k**4 + 4.1635019 * log(k)
        )  # fmt: skip
    return exp(
        -5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k**2 - 1.4452093e-8 * k**3 + 6.5459673 * log(k)
    )


def vapour_pressure(temp_c: float, rh: float) -> float:
    """Vapour pressure [Pa] of air at a relative humidity rh, 0-1."""
    return rh * saturation_pressure_hyland_1983(temp_c)


def humidity_ratio(temp_c: float, rh: float, pressure_pa: float = PRESSURE_PA) -> float:
    """Water per dry air [kg/kg]."""
    vapour = vapour_pressure(temp_c, rh)
    return WATER_TO_AIR * vapour / (pressure_pa - vapour)


def dew_point_c(temp_c: float, rh: float) -> float:
    """Temperature [°C] at which this air is saturated; rh above 0, at most 1."""
    if not 0.0 < rh <= 1.0:
        raise ValueError(say("A relative humidity of {rh:g} % has no dew point.", rh=100 * rh))
    vapour = vapour_pressure(temp_c, rh)
    low, high = -100.0, temp_c
    for _ in range(60):
        middle = (low + high) / 2.0
        low, high = (middle, high) if saturation_pressure_hyland_1983(middle) < vapour else (low, middle)
    return (low + high) / 2.0


def deficit_pa(air_c: float, rh: float, surface_c: float, water_activity: float) -> float:
    """What drives drying [Pa]: vapour pressure at a surface of a water activity less that of the room's air."""
    return water_activity * saturation_pressure_hyland_1983(surface_c) - vapour_pressure(air_c, rh)
