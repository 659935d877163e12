"""Acid: how starter populations grow, rest, die and make lactate.

Forms: CTMI (Rosso et al. 1993) and CPM (Rosso et al. 1995) for temperature and pH, Baranyi & Roberts 1994 for the
lag, Luedeking & Piret for acid by growing and resting cells. Figures and their sources are rows of constants.toml.
"""

from __future__ import annotations

import numpy as np

from designer.make.law import law

LN_10 = 2.302585092994046


@law
def ctmi_rosso_1993(temp: float, low: float, best: float, high: float) -> float:
    """Share of the optimum growth rate at a temperature [1]; zero outside low..high [°C]."""
    if temp <= low or temp >= high:
        return 0.0
    above = (temp - high) * (temp - low) ** 2
    below = (best - low) * ((best - low) * (temp - best) - (best - high) * (best + low - 2.0 * temp))
    return above / below


@law
def cpm_rosso_1995(ph: float, low: float, best: float, high: float) -> float:
    """Share of the optimum growth rate at a pH [1]; zero outside low..high."""
    if ph <= low or ph >= high:
        return 0.0
    span = (ph - low) * (ph - high)
    return span / (span - (ph - best) ** 2)


@law
def salt_share(salt_in_moisture_pct: float, most: float) -> float:
    """Share of the growth rate left at a salt in moisture [%] (design form, reaches zero at `most`)."""
    ratio = salt_in_moisture_pct / most
    return max(0.0, 1.0 - ratio * ratio)


@law
def death_per_min(temp: float, d_ref_min: float, t_ref: float, z: float) -> float:
    """First-order death rate [1/min] from a decimal reduction time at t_ref [°C] and a z value [K]."""
    return LN_10 / d_ref_min * np.exp(LN_10 * (temp - t_ref) / z)


@law
def awake_at_start(lag_h: float, mu_per_h: float) -> float:
    """Baranyi's Q/(1+Q) at the start, for a lag at the optimum: ln(1 + 1/Q0)/mu = lag, so the share is exp(-mu lag)."""
    return 2.718281828459045 ** (-mu_per_h * lag_h)
