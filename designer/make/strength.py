"""Coagulant strength and dose: Soxhlet, Berridge, IMCU, and what a bottle gives; with the acidity units of a titration.

Definitions from memory (high) unless said; conversions between strength units are common practice and never exact.
"""

from __future__ import annotations

from designer.language import say

MILK_KG_PER_L = 1.03
LACTIC_G_MOL = 90.08


def clotting_minutes_soxhlet(strength: float, ml_per_l: float, minutes: float = 40.0) -> float:
    """Minutes to clot fresh milk at 35 °C by rennet of strength 1:`strength`, dosed in mL per L.

    Soxhlet: volumes of milk that one volume clots at 35 °C in 40 min (the trade also uses 45).
    """
    return minutes * 1000.0 / (strength * ml_per_l)


def clotting_seconds_berridge(units_per_ml: float) -> float:
    """Seconds to clot standard milk at 30 °C with so many rennin units per mL milk (1 RU clots 10 mL in 100 s)."""
    return 10.0 / units_per_ml


def dose_imcu(volume_ml: float, strength_imcu_ml: float, milk: float) -> float:
    """Dose [IMCU per kg or per L], by what `milk` is given in."""
    return volume_ml * strength_imcu_ml / milk


def rennet_ml(dose_imcu_l: float, milk_l: float, strength_imcu_ml: float) -> float:
    """Rennet to measure out [mL] (or g of powder, if the strength is per gram)."""
    return dose_imcu_l * milk_l / strength_imcu_ml


def strength_left(strength: float, months: float, loss_per_month: float) -> float:
    """Strength of a coagulant after so many months in the cold, a share of it lost each month."""
    return strength * (1.0 - loss_per_month) ** months


def rennet_again_ml(
    volume_ml: float, strength_imcu_ml: float, milk_l: float, other_strength_imcu_ml: float, other_milk_l: float
) -> float:
    """A dose known for one bottle and vat, for another bottle and vat [mL], at the same IMCU per litre."""
    return rennet_ml(dose_imcu(volume_ml, strength_imcu_ml, milk_l), other_milk_l, other_strength_imcu_ml)


def imcu_of_soxhlet(strength: float) -> tuple[float, float]:
    """IMCU per mL or g that a strength 1:`strength` may stand for, from and to.

    0.0133-0.0150 IMCU/mL each, from 1:10 000 at about 140 and 1:15 000 at 200-225 IMCU/mL; from memory (medium). The
    two tests differ, so a range is all there is: the bottle's own IMCU is worth more.
    """
    return 0.0133 * strength, 0.0150 * strength


def calcium_chloride_g(share_pct: float, milk_kg: float, solution_pct: float = 100.0) -> float:
    """Calcium chloride [g]: `share_pct` of the milk, as dry salt or as a solution of `solution_pct` % w/w."""
    return share_pct / 100.0 * milk_kg * 1000.0 / (solution_pct / 100.0)


def cells_per_ml(grams: float, cfu_per_g: float, milk_l: float) -> float:
    """Starter cells per mL of milk that a pack brings."""
    return grams * cfu_per_g / (milk_l * 1000.0)


def culture_g(units: float, pack_g: float, pack_units: float) -> float:
    """Culture to weigh [g] for so many activity units, from a pack that weighs `pack_g` and holds `pack_units`."""
    return units * pack_g / pack_units


def pack_serves_l(pack_units: float, units_per_100l: float) -> float:
    """Milk that a pack serves [L]."""
    return 100.0 * pack_units / units_per_100l


def culture_g_for_cells(cells: float, milk_l: float, cfu_per_g: float) -> float:
    """Culture to weigh [g] so that each mL of milk gets `cells`, from a pack of that potency."""
    return cells * milk_l * 1000.0 / cfu_per_g


def lactic_pct_of_soxhlet_henkel(degrees: float) -> float:
    """Titratable acidity [% lactic acid] of degrees Soxhlet-Henkel (N/4 per 100 mL): 0.0225 % each."""
    return 0.0225 * degrees


def lactic_pct_of_dornic(degrees: float) -> float:
    """Titratable acidity [% lactic acid] of degrees Dornic (N/9 per 100 mL): 0.01 % each."""
    return 0.01 * degrees


def lactic_pct_of_thoerner(degrees: float) -> float:
    """Titratable acidity [% lactic acid] of degrees Thörner (N/10 per 100 mL): 0.009 % each."""
    return 0.009 * degrees


def lactic_pct_of_titration(naoh_ml: float, sample_ml: float, normality: float = 0.1) -> float:
    """Titratable acidity [% lactic acid] of a titration to pH 8.3 (a gram taken as a millilitre)."""
    return naoh_ml * normality * LACTIC_G_MOL / (10.0 * sample_ml)


def reading_changed(naoh_ml: float, sample_ml: float, new_sample_ml: float, normality: float = 0.1) -> str:
    """What to say when the sample volume is changed under a burette reading that stays; "" where nothing changes."""
    if new_sample_ml == sample_ml:
        return ""
    before, now = (lactic_pct_of_titration(naoh_ml, sample, normality) for sample in (sample_ml, new_sample_ml))
    return say(
        "With a sample of {new_sample_ml:g} mL instead of {sample_ml:g} mL the same {naoh_ml:g} "
        "mL mean {now:.3f} %, not {before:.3f} %: read the burette again, or put the sample back.",
        new_sample_ml=new_sample_ml,
        sample_ml=sample_ml,
        naoh_ml=naoh_ml,
        now=now,
        before=before,
    )


def lactic_mmol_l(dornic: float) -> float:
    """Lactic acid [mmol/L] of degrees Dornic (0.1 g/L each)."""
    return 100.0 * dornic / LACTIC_G_MOL
