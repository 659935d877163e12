"""One rule set's limits against figures of a cheese, forecast or analysed; with members, how sure that is."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.judge.verdict import CLASS, LIMIT, MET, NEAR, NOT_MET, QUALITY, Row
from designer.judge.words import chance_words, label_of, lowered, margin_words
from designer.language import say, word
from styles.reader import Limit, Rules

Members = Mapping[str, NDArray[np.float64]]
"""Outcome key -> one value per member of a forecast's spread, shape (members,)."""

NEAR_POINTS: Mapping[str, float] = {"salt_pct": 0.1, "salt_in_moisture_pct": 0.2, "salt_in_dry_matter_pct": 0.2}
NEAR_ELSE = 0.5
"""How close to a limit still counts as near where the forecast has no members."""

SURE = 0.8
"""Share of the members inside from which a limit counts as met and not as near."""

NOT_BINDING: Mapping[str, str] = {"class": CLASS, "quality window": QUALITY}


def judge(
    rule_set: Rules, values: Mapping[str, float], members: Members | None = None, unknown: list[str] | None = None
) -> Iterator[Row]:
    """One row per limit of a rule set, for plain figures by key (of a forecast, or of an analysed cheese).

    A limit on something not among the figures gives no row but a sentence added to `unknown`.
    """
    for limit in rule_set.limits:
        try:
            value = float(figure(limit.quantity, values.__getitem__))
            low = limit.low_at(figure("fdm_pct", values.__getitem__)) if limit.bands else limit.low
        except KeyError:
            if unknown is not None:
                what = lowered(label_of(limit.quantity)[0])
                unknown.append(say("{title} limits {what}, which is not known here.", title=title(rule_set), what=what))
            continue
        yield _row(rule_set, limit, value, low, members or {})


def share_inside_all(rule_sets: Iterable[Rules], members: Members) -> float | None:
    """Share of the members inside every binding limit at once; None if no limit speaks of a figure with members."""
    every: NDArray[np.bool_] | None = None
    for rule_set in rule_sets:
        if rule_set.kind in NOT_BINDING:
            continue
        for limit in rule_set.limits:
            inside = members_inside(limit, members)
            if inside is not None:
                every = inside if every is None else every & inside
    return None if every is None else float(np.count_nonzero(every)) / every.size


def members_inside(limit: Limit, members: Members) -> NDArray[np.bool_] | None:
    """Which members lie inside a limit, shape (members,); None if they do not know its figure."""
    try:
        values = figure(limit.quantity, members.__getitem__)
        if limit.bands:
            starts, least = np.array(limit.bands).T
            band = np.searchsorted(starts, members["fdm_pct"], side="right") - 1
            return np.asarray((band >= 0) & (values >= least[np.maximum(band, 0)]))
    except KeyError:
        return None
    inside = np.ones(values.shape, dtype=np.bool_)
    if limit.low is not None:
        inside &= values > limit.low if limit.low_strict else values >= limit.low
    if limit.high is not None:
        inside &= values < limit.high if limit.high_strict else values <= limit.high
    return inside


def figure(quantity: str, of: Callable[[str], Any]) -> Any:
    """A figure of the cheese, also those worked out from others; works on floats and on members alike.

    `of` gives an outcome by its key and raises KeyError if there is none.
    """
    match quantity:
        case "dry_matter_pct":
            return 100.0 - of("moisture_pct")
        case "salt_in_dry_matter_pct":
            return 100.0 * of("salt_pct") / (100.0 - of("moisture_pct"))
        case "dry_matter_g_piece":
            return 10.0 * of("cheese_kg") * (100.0 - of("moisture_pct")) / of("pieces")
    return of(quantity)


def margin_of(value: float, low: float | None, high: float | None) -> float:
    """Distance to the nearer end, negative outside; a range open at both ends is infinitely wide."""
    above = float("inf") if low is None else value - low
    below = float("inf") if high is None else high - value
    return min(above, below)


def title(rule_set: Rules) -> str:
    """How a rule set is named in a sentence."""
    return f"{word(rule_set.name, 'rules')} ({rule_set.rule})"


def _row(rule_set: Rules, limit: Limit, value: float, low: float | None, members: Members) -> Row:
    label, unit, decimals = label_of(limit.quantity)
    below_all = bool(limit.bands) and low is None
    margin = float("-inf") if below_all else margin_of(value, low, limit.high)
    inside = _inside(value, low, limit) and not below_all
    those_inside = members_inside(limit, members)
    chance = None if those_inside is None else float(np.count_nonzero(those_inside)) / those_inside.size
    if not inside:
        state = NOT_MET
    elif chance is not None:
        state = MET if chance >= SURE else NEAR
    else:
        state = MET if margin >= NEAR_POINTS.get(limit.quantity, NEAR_ELSE) else NEAR
    if below_all:
        sentence = say("no such cheese below {bands:g} % fat in dry matter", bands=limit.bands[0][0])
    else:
        sentence = margin_words(value, low, limit.high, unit, decimals) + (say(" at this fat") if limit.bands else "")
    if chance is not None:
        sentence += f", {chance_words(chance)}"
    return Row(
        section=NOT_BINDING.get(limit.kind, LIMIT),
        rules=rule_set.key,
        quantity=limit.quantity,
        label=label,
        value=value,
        low=low,
        high=limit.high,
        unit=unit,
        state=state,
        margin=None if below_all else margin,
        sentence=sentence,
        source=limit.source,
        have=limit.have,
        rule=f"{word(rule_set.name, 'rules')}, {limit.rule}",
        note=word(limit.note, "note"),
        chance=chance,
    )


def _inside(value: float, low: float | None, limit: Limit) -> bool:
    above = low is None or (value > low if limit.low_strict else value >= low)
    below = limit.high is None or (value < limit.high if limit.high_strict else value <= limit.high)
    return above and below
