"""Press arithmetic: pressure on the cheese, the load that gives it, and what to hang on a lever.

p = F / A; a stack of cheeses feels the same force in each, cheeses side by side share it. The lever's own arm and the
follower press too, so what hangs is what is still missing.
"""

from __future__ import annotations

from math import pi

from designer.language import say

GRAVITY_M_S2 = 9.81


def round_area_m2(diameter_mm: float) -> float:
    """Face of a round cheese or follower [m²]."""
    return pi * (diameter_mm / 1000.0) ** 2 / 4.0


def pressure_kpa(force_kg: float, area_m2: float, side_by_side: int = 1) -> float:
    """Pressure on each cheese [kPa] under a force [kg on the follower], shared by cheeses that lie side by side."""
    return force_kg * GRAVITY_M_S2 / (area_m2 * side_by_side) / 1000.0


def force_kg(kpa: float, area_m2: float, side_by_side: int = 1) -> float:
    """Force on the follower [kg] that gives each cheese a pressure [kPa]."""
    return kpa * 1000.0 * area_m2 * side_by_side / GRAVITY_M_S2


def hang_kg(force: float, ratio: float, arm_kg: float = 0.0) -> float:
    """Weight to hang on a lever [kg] so that the follower feels `force` [kg], `arm_kg` of it from the arm itself.

    Any unit of mass will do, if it is the same in all. ValueError where the arm alone is too heavy.
    """
    if arm_kg > force:
        raise ValueError(
            say("the arm alone presses with {arm_kg:g}, more than the {force:g} wanted", arm_kg=arm_kg, force=force)
        )
    return (force - arm_kg) / ratio


def times_cheese_weight_kpa(times: float, height_mm: float, density_kg_m3: float = 1080.0) -> float:
    """Pressure [kPa] of a load said as so many times the weight of a cheese of that height; its area cancels."""
    return times * density_kg_m3 * GRAVITY_M_S2 * height_mm / 1000.0 / 1000.0
