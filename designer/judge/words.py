"""Margins, ranges and chances in a maker's words: "0.8 points under the limit of 39 %", "9 in 10"."""

from __future__ import annotations

from collections.abc import Iterable

from designer.quantities import QUANTITIES

_LABELS = {
    "dry_matter_g_piece": ("Dry matter of one cheese", "g", 0),
    "salt_in_dry_matter_pct": ("Salt in dry matter", "%", 2),
    "ash_pct": ("Ash", "%", 1),
    "calcium_mg_100g": ("Calcium", "mg per 100 g", 0),
    "ph_ripe": ("pH when ripe", "", 2),
}


def label_of(key: str) -> tuple[str, str, int]:
    """Label, unit and decimals of a figure a style speaks of."""
    if key in _LABELS:
        return _LABELS[key]
    quantity = QUANTITIES[key]
    return quantity.label, quantity.unit, quantity.decimals


def margin_words(value: float, low: float | None, high: float | None, unit: str, decimals: int) -> str:
    """The margin to the nearer end of a limit: "0.8 points under the limit of 39 %"."""
    if low is not None and (high is None or value - low <= high - value):
        side = "over" if value >= low else "under"
        return f"{distance(value - low, unit, decimals)} {side} the least, {shown(low, unit)}"
    assert high is not None
    side = "under" if value <= high else "over"
    return f"{distance(high - value, unit, decimals)} {side} the limit of {shown(high, unit)}"


def usual_words(value: float, low: float | None, high: float | None, unit: str, decimals: int) -> str:
    """Where a value lies against its usual range: "inside the usual 8 to 18 min", "2 min over the usual ..."."""
    if low is None:
        usual = f"up to {shown(high, unit)}"
    elif high is None:
        usual = f"from {shown(low, unit)}"
    else:
        usual = shown(low, unit) if low == high else f"{low:g} to {shown(high, unit)}"
    if low is not None and value < low:
        return f"{distance(low - value, unit, decimals)} under the usual {usual}"
    if high is not None and value > high:
        return f"{distance(value - high, unit, decimals)} over the usual {usual}"
    return f"inside the usual {usual}"


def distance(amount: float, unit: str, decimals: int) -> str:
    """How far, without sign; one decimal more where it would read as nothing."""
    amount = abs(amount)
    if amount and round(amount, decimals) == 0:
        decimals += 1
    if unit.startswith("%"):
        return f"{amount:.{decimals}f} points"
    return f"{amount:.{decimals}f} {unit}".rstrip()


def shown(value: float | None, unit: str) -> str:
    """A bound of a range with its unit."""
    return f"{value:g} {unit}".rstrip()


def in_ten(chance: float) -> str:
    """A chance in words: "9 in 10"; never certain, never impossible."""
    if chance >= 0.95:
        return "more than 9 in 10"
    if chance < 0.05:
        return "fewer than 1 in 10"
    return f"{round(10.0 * chance)} in 10"


def chance_words(chance: float) -> str:
    """How likely a forecast lies inside: "likely inside: 9 in 10", "likely outside: 7 in 10", "even odds"."""
    if chance >= 0.55:
        return f"likely inside: {in_ten(chance)}"
    return f"likely outside: {in_ten(1.0 - chance)}" if chance <= 0.45 else "even odds"


def milks(species: Iterable[str]) -> str:
    """Species as "cow's or goat's"."""
    return " or ".join(f"{one}'s" for one in sorted(species))
