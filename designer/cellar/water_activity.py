"""Water activity of cheese from its salt: which formula holds where, each after its authors."""

from __future__ import annotations

SALT_G_MOL = 58.44


def molality(salt_in_moisture_pct: float) -> float:
    """NaCl [mol/kg water] of a salt in moisture [g/100 g water]."""
    return 10.0 * salt_in_moisture_pct / SALT_G_MOL


def water_activity_marcos_1981(salt_in_moisture_pct: float) -> float:
    """1 - 0.033 m; most cheese above about 40 % moisture, S/M up to 11 (Marcos et al. 1981, J. Dairy Sci. 64:622)."""
    return 1.0 - 0.033 * molality(salt_in_moisture_pct)


def water_activity_esteban_1990(salt_in_moisture_pct: float, ph: float) -> float:
    """0.9719 - 0.0044 x + 0.0041 pH; fresh cheese, curd and whey cheese of cow, ewe, goat (J. Dairy Res. 1990)."""
    return 0.9719 - 0.0044 * salt_in_moisture_pct + 0.0041 * ph


def water_activity_ruegg_1981(npn: float, salt: float, ash: float, ph: float) -> float:
    """Ripened cheese, all in g per 100 g water: 0.945 - 0.0056 NPN - 0.0059 NaCl - 0.0019 (ash - NaCl) + 0.0105 pH.

    Ruegg & Blanc 1981, J. Dairy Sci. 64:1063; coefficients from memory (high).
    """
    return 0.945 - 0.0056 * npn - 0.0059 * salt - 0.0019 * (ash - salt) + 0.0105 * ph
