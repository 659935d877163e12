"""Salt into the cheese: brine by Fick in a finite wheel (Crank; Geurts et al. 1974), dry salt by retention."""

from __future__ import annotations

from typing import Any

import numpy as np

from designer.make.law import arrhenius, law

BESSEL_ZEROS = np.array([2.404826, 5.520078, 8.653728])


@law
def salt_diffusivity_cm2_d(moisture_pct: float, temp_c: float, p: Any) -> float:
    """Pseudo-diffusion of salt in cheese [cm²/d], Floury et al. 2010 by moisture, 0.08-0.40, with Ea 28 kJ/mol."""
    d = p.brine_d_12c + p.brine_d_moisture * (moisture_pct - 35.0)
    d = min(0.40, max(0.08, d))
    return d * arrhenius(temp_c, p.brine_ea, 12.0)


@law
def surface_salt(brine_pct: float, p: Any) -> float:
    """Salt the cheese surface sees [kg/kg water]: brine strength, levelling off above brine_linear_to."""
    brine = brine_pct / max(1e-9, 100.0 - brine_pct)
    over = np.log1p(np.exp((brine - p.brine_linear_to) / 0.02)) * 0.02
    return brine - 0.85 * over


@law
def filled(theta: float, height_cm: float, radius_cm: float) -> float:
    """Share of full uptake E of a finite wheel after theta = D t [cm²]: 1 - (1 - E_slab)(1 - E_cylinder)."""
    return 1.0 - (1.0 - _slab(theta / height_cm**2)) * (1.0 - _cylinder(theta / radius_cm**2))


@law
def brine_uptake(
    salt_per_water: float, outside: float, theta: float, height_cm: float, radius_cm: float, p: Any
) -> float:
    """d(salt)/dtheta of a cheese in brine [kg per kg of its water and cm²]; negative where the brine is the weaker.

    Driven by what the brine's surface holds beyond the cheese, both in kg salt per kg water. A cheese that came with
    c0 has, by the series, c = c0 + zone (outside - c0) E; so (outside - c) / (1 - zone E) is the step it began with,
    whatever it began with, and c never passes `outside`. A cheese moved to another brine goes on from its profile.
    """
    step = 0.01 * theta
    below, above = filled(theta - step, height_cm, radius_cm), filled(theta + step, height_cm, radius_cm)
    slope = (above - below) / (2.0 * step)
    began = (outside - salt_per_water) / (1.0 - p.brine_zone * 0.5 * (below + above))
    return p.brine_zone * began * slope


@law
def _slab(tau: float) -> float:
    if tau < 0.05:
        return 4.0 * np.sqrt(tau / np.pi)
    out = 1.0
    for n in range(4):
        odd = 2.0 * n + 1.0
        out -= 8.0 / (odd * odd * np.pi**2) * np.exp(-odd * odd * np.pi**2 * tau)
    return out


@law
def _cylinder(tau: float) -> float:
    if tau < 0.03:
        return 4.0 * np.sqrt(tau / np.pi) - tau - tau**1.5 / (3.0 * np.sqrt(np.pi))
    out = 1.0
    for n in range(3):
        out -= 4.0 / BESSEL_ZEROS[n] ** 2 * np.exp(-(BESSEL_ZEROS[n] ** 2) * tau)
    # The higher terms of the series are worth what is left at tau 0.03.
    return out - 0.0006 * np.exp(-40.0 * tau)
