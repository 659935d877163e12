"""Margins, ranges and chances in a maker's words: "0.8 points under the limit of 39 %", "9 in 10"."""

from __future__ import annotations

from collections.abc import Iterable

from designer.language import either, number, points, say, word
from designer.quantities import QUANTITIES

LABELS = {
    "dry_matter_g_piece": ("Dry matter of one cheese", "g", 0),
    "salt_in_dry_matter_pct": ("Salt in dry matter", "%", 2),
    "ash_pct": ("Ash", "%", 1),
    "calcium_mg_100g": ("Calcium", "mg per 100 g", 0),
    "ph_ripe": ("pH when ripe", "", 2),
}


def label_of(key: str) -> tuple[str, str, int]:
    """Label, unit and decimals of a figure a style speaks of."""
    if key in LABELS:
        label, unit, decimals = LABELS[key]
        return word(label, "quantity"), word(unit, "unit"), decimals
    quantity = QUANTITIES[key]
    return quantity.label, quantity.unit, quantity.decimals


def margin_words(value: float, low: float | None, high: float | None, unit: str, decimals: int) -> str:
    """The margin to the nearer end of a limit: "0.8 points under the limit of 39 %"."""
    if low is not None and (high is None or value - low <= high - value):
        away, least = distance(value - low, unit, decimals), shown(low, unit)
        if value >= low:
            return say("{away} over the least, {least}", away=away, least=least)
        return say("{away} under the least, {least}", away=away, least=least)
    assert high is not None
    away, limit = distance(high - value, unit, decimals), shown(high, unit)
    if value <= high:
        return say("{away} under the limit of {limit}", away=away, limit=limit)
    return say("{away} over the limit of {limit}", away=away, limit=limit)


def usual_words(value: float, low: float | None, high: float | None, unit: str, decimals: int) -> str:
    """Where a value lies against its usual range: "inside the usual 8 to 18 min", "2 min over the usual ..."."""
    if low is None:
        usual = say("up to {high}", high=shown(high, unit))
    elif high is None:
        usual = say("from {low}", low=shown(low, unit))
    else:
        usual = shown(low, unit) if low == high else say("{low:g} to {high}", low=low, high=shown(high, unit))
    if low is not None and value < low:
        return say("{distance} under the usual {usual}", distance=distance(low - value, unit, decimals), usual=usual)
    if high is not None and value > high:
        return say("{distance} over the usual {usual}", distance=distance(value - high, unit, decimals), usual=usual)
    return say("inside the usual {usual}", usual=usual)


def distance(amount: float, unit: str, decimals: int) -> str:
    """How far, without sign; one decimal more where it would read as nothing."""
    amount = abs(amount)
    if amount and round(amount, decimals) == 0:
        decimals += 1
    if unit.startswith("%"):
        return f"{number(amount, f'.{decimals}f')} {points(round(amount, decimals))}"
    return f"{number(amount, f'.{decimals}f')} {unit}".rstrip()


def shown(value: float | None, unit: str) -> str:
    """A bound of a range with its unit."""
    assert value is not None
    return f"{number(value)} {unit}".rstrip()


def in_ten(chance: float) -> str:
    """A chance in words: "9 in 10"; never certain, never impossible."""
    if chance >= 0.95:
        return say("more than 9 in 10")
    if chance < 0.05:
        return say("fewer than 1 in 10")
    return say("{chance} in 10", chance=round(10.0 * chance))


def chance_words(chance: float) -> str:
    """How likely a forecast lies inside: "likely inside: 9 in 10", "likely outside: 7 in 10", "even odds"."""
    if chance >= 0.55:
        return say("likely inside: {in_ten}", in_ten=in_ten(chance))
    return say("likely outside: {in_ten}", in_ten=in_ten(1.0 - chance)) if chance <= 0.45 else say("even odds")


def milks(species: Iterable[str]) -> str:
    """Species as "cow's or goat's"."""
    return either(word(f"{one}'s", "milk") for one in sorted(species))


def lowered(label: str) -> str:
    """A label inside a sentence: its first letter small, unless it is a sign like pH or MNFS."""
    return label[:1].lower() + label[1:] if label[1:2].islower() else label
