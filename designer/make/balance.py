"""Composition and yield by arithmetic: derived figures, mass balances, published yield formulas.

Definitions are those of the trade's texts; every formula names its author. Percent are % w/w,
yields kg per 100 kg milk.
"""

from __future__ import annotations

SODIUM_TO_SALT = 2.5421
"""g NaCl per g sodium (58.44 / 22.99)."""

WHEY_MOISTURE_VAN_SLYKE = 93.00
MILK_MOISTURE_VAN_SLYKE = 87.28
"""Season averages of 48 New York factories, Thom & Fisk 1918, Tables VI-VIII (after Van Slyke 1894) [%]."""


def fdm_pct(fat_pct: float, moisture_pct: float) -> float:
    """Fat in dry matter [%], 100 F / (100 - M)."""
    return 100.0 * fat_pct / (100.0 - moisture_pct)


def mnfs_pct(moisture_pct: float, fat_pct: float) -> float:
    """Moisture in non-fat substance [%], 100 M / (100 - F); the same as MFFB, HFD and wff."""
    return 100.0 * moisture_pct / (100.0 - fat_pct)


def salt_in_moisture_pct(salt_pct: float, moisture_pct: float) -> float:
    """Salt in moisture [%], 100 S / M: g NaCl per 100 g water (some books divide by M + S instead)."""
    return 100.0 * salt_pct / moisture_pct


def salt_of_sodium_pct(sodium_mg_100g: float) -> float:
    """NaCl [%] that a sodium content [mg/100 g] stands for."""
    return sodium_mg_100g * SODIUM_TO_SALT / 1000.0


def fat_pct_of_fdm(fdm: float, moisture_pct: float) -> float:
    """Fat [%] of a cheese of that FDM [%] and moisture [%]."""
    return fdm * (100.0 - moisture_pct) / 100.0


def yield_van_slyke_price(
    fat_pct: float,
    casein_pct: float,
    moisture_pct: float,
    fat_kept: float = 0.93,
    casein_lost_pct: float = 0.1,
    other_solids: float = 1.09,
) -> float:
    """Cheese [kg/100 kg milk] after Van Slyke & Price: (0.93 F + C - 0.1) 1.09 / (1 - W).

    fat_pct and casein_pct of the milk, moisture_pct of the cheese. Made for Cheddar; falls short at high moisture.
    """
    return (fat_kept * fat_pct + casein_pct - casein_lost_pct) * other_solids / (1.0 - moisture_pct / 100.0)


def yield_components_emmons_1990(
    fat_pct: float,
    casein_pct: float,
    moisture_pct: float,
    salt_pct: float,
    *,
    fat_kept: float = 0.93,
    casein_kept: float = 0.96,
    whey_solids: float = 0.03,
    milk_salts: float = 0.092,
) -> float:
    """Cheese [kg/100 kg milk] by components: (RF F + RC C (1 + k)) / (1 - w (1 + sigma) - s).

    Form after Emmons et al. 1990, J. Dairy Sci. 73:1365 (abstract); k (milk salts per casein, 0.092) from memory
    (medium); sigma `whey_solids` [kg per kg water in the cheese], 0.03-0.035 gives Van Slyke's 1.09 for Cheddar.
    """
    water = moisture_pct / 100.0
    insoluble = fat_kept * fat_pct + casein_kept * casein_pct * (1.0 + milk_salts)
    return insoluble / (1.0 - water * (1.0 + whey_solids) - salt_pct / 100.0)


def yield_adjusted_moisture(actual: float, moisture_pct: float, reference_pct: float) -> float:
    """Yield as if the cheese had the reference moisture, Y (100 - M) / (100 - Mref)."""
    return actual * (100.0 - moisture_pct) / (100.0 - reference_pct)


def yield_adjusted_hill(
    actual: float, moisture_pct: float, salt_pct: float, moisture_ref_pct: float, salt_ref_pct: float
) -> float:
    """Yield at reference moisture and salt, product form as Hill (University of Guelph) prints it."""
    by_moisture = yield_adjusted_moisture(actual, moisture_pct, moisture_ref_pct)
    return by_moisture * (100.0 - salt_pct) / (100.0 - salt_ref_pct)


def yield_adjusted_sum(
    actual: float, moisture_pct: float, salt_pct: float, moisture_ref_pct: float, salt_ref_pct: float
) -> float:
    """Yield at reference moisture and salt, the commoner form Y (100 - M - S) / (100 - Mref - Sref)."""
    return actual * (100.0 - moisture_pct - salt_pct) / (100.0 - moisture_ref_pct - salt_ref_pct)


def recovery_pct(yield_kg_100kg: float, cheese_pct: float, milk_pct: float) -> float:
    """Share of a milk component that is found in the cheese [%]."""
    return yield_kg_100kg * cheese_pct / milk_pct


def curd_by_lever_kg(
    curd_moisture_pct: float,
    milk_moisture_pct: float = MILK_MOISTURE_VAN_SLYKE,
    whey_moisture_pct: float = WHEY_MOISTURE_VAN_SLYKE,
    milk_kg: float = 100.0,
) -> float:
    """Curd [kg] of a moisture, from the lever rule M (w - x0) / (w - x); before salt or wash water."""
    return milk_kg * (whey_moisture_pct - milk_moisture_pct) / (whey_moisture_pct - curd_moisture_pct)


def moisture_by_lever_pct(
    whey_kg: float,
    milk_moisture_pct: float = MILK_MOISTURE_VAN_SLYKE,
    whey_moisture_pct: float = WHEY_MOISTURE_VAN_SLYKE,
    milk_kg: float = 100.0,
) -> float:
    """Curd moisture [%] after `whey_kg` of whey has left; the lever rule the other way round."""
    return whey_moisture_pct - milk_kg * (whey_moisture_pct - milk_moisture_pct) / (milk_kg - whey_kg)


def yield_by_component(milk_pct: float, whey_pct: float, cheese_pct: float) -> float:
    """Cheese [kg/100 kg milk] that one component's balance over milk, whey and cheese asks for."""
    return 100.0 * (milk_pct - whey_pct) / (cheese_pct - whey_pct)


def edge_ratio(curd_kg: float, milk_kg: float = 100.0) -> float:
    """How much of its edge a grain of curd has kept when `curd_kg` is left of `milk_kg`."""
    return float((curd_kg / milk_kg) ** (1.0 / 3.0))


def water_left_kg(moisture_pct: float, insoluble_kg: float, soluble_kg: float, water_kg: float) -> float:
    """Water [kg] still in curd of a moisture when solubles leave with the water in proportion.

    insoluble_kg: fat, casein and bound ash in the curd; soluble_kg and water_kg: in the milk it came from.
    """
    x = moisture_pct / 100.0
    return x * insoluble_kg / (1.0 - x - x * soluble_kg / water_kg)


def weight_loss_pct(moisture_before_pct: float, moisture_after_pct: float) -> float:
    """Loss of weight [%] of a uniform cheese that dries from one moisture to another."""
    return 100.0 * (1.0 - (100.0 - moisture_before_pct) / (100.0 - moisture_after_pct))


def wash_factor(serum_kg: float, whey_off_kg: float, water_on_kg: float) -> float:
    """Share of its lactose the serum keeps when whey is drawn and water mixed in, (S - R) / (S - R + A)."""
    left = serum_kg - whey_off_kg
    return left / (left + water_on_kg)
