"""Holds a forecast against a style: limits of its rule sets, quality windows, make windows, gates on the curve.

Runs in every frame of a drag, so it does arithmetic and short sentences only.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, Any

from designer.judge.limits import (
    NEAR_ELSE,
    NEAR_POINTS,
    NOT_BINDING,
    Members,
    judge,
    margin_of,
    share_inside_all,
    title,
)
from designer.judge.moments import moments, own_stages, settings
from designer.judge.verdict import AGE, CLASS, CURVE, LIMIT, MAKE, MET, MILK, NEAR, NOT_MET, Row, Verdict, worst
from designer.judge.words import chance_words, label_of, milks, usual_words
from designer.language import either, headed, joined, say, word
from designer.recipe.field import choice
from styles.house import GATE_NEAR
from styles.reader import Gate, Rules, Style, Window, style
from styles.settings import MOMENTS, SETTINGS

if TYPE_CHECKING:
    from designer.forecast import Forecast
    from designer.recipe.document import Recipe


_RAW = frozenset(("raw", "thermised"))
_DECIMALS = {"duration": 0, "multiple": 1, "temperature": 1, "length": 1, "rate_temperature": 2}


def check(forecast: Forecast, of: Style | str, *, rules: Sequence[str] | None = None) -> Verdict:
    """The verdict on a forecast for a style.

    `rules` names the rule sets to judge by their keys; None takes those that bind any maker of the style. Rules made
    for another milk are left out, with the reason among the conditions, unless they were named. StyleError if the
    style or a rule set is unknown.
    """
    one = style(of) if isinstance(of, str) else of
    when = moments(forecast)
    found = settings(forecast, when)
    values = {key: outcome.value for key, outcome in forecast.outcomes.items()}
    if forecast.recipe.form is not None:
        values["pieces"] = float(forecast.recipe.form.count)
    members: Members = forecast.bands.samples if forecast.bands is not None else {}
    rows: list[Row] = []
    conditions: list[str] = []
    judged: list[Rules] = []
    for rule_set in _chosen(one, rules):
        strangers = _strangers(forecast, rule_set)
        if strangers and rules is None:
            whose = milks(rule_set.milk)
            conditions.append(
                say(
                    "{title} speaks of {whose} milk, not of {strangers}; it is not judged.",
                    title=title(rule_set),
                    whose=whose,
                    strangers=strangers,
                )
            )
            continue
        judged.append(rule_set)
        rows.extend(_milk_rows(forecast, rule_set, strangers))
        rows.extend(_age_rows(forecast, rule_set, found, conditions))
        rows.extend(judge(rule_set, values, members, conditions))
    rows.extend(_make_rows(one, values, found))
    rows.extend(_room_rows(one, forecast))
    rows.extend(_gate_rows(one, forecast, when))
    chance = share_inside_all(judged, members) if members else None
    return _verdict(one, tuple(rows), tuple(judged), tuple(conditions), chance)


def _chosen(one: Style, rules: Sequence[str] | None) -> tuple[Rules, ...]:
    if rules is None:
        return tuple(rule_set for rule_set in one.rules if rule_set.judged)
    return tuple(one.rule_set(key) for key in rules)


def decimals_of(quantity: str) -> int:
    """Decimals with which a row's figure is told, in its sentence and beside it."""
    key = quantity.partition("@")[0]
    setting = SETTINGS.get(key)
    return label_of(key)[2] if setting is None else _DECIMALS.get(setting.kind, 1)


def _make_rows(one: Style, values: Mapping[str, float], found: Mapping[str, float]) -> Iterator[Row]:
    """Settings and outcomes against the style's usual ranges; of several sources, the one that fits best speaks."""
    for key, windows in _grouped(one.windows, lambda window: window.key):
        setting = SETTINGS.get(key)
        if setting is None:
            label, unit, decimals = label_of(key)
            value, near = values.get(key), NEAR_POINTS.get(key, NEAR_ELSE)
        elif key.startswith("ph_"):
            continue  # said by the gate it comes from
        else:
            value, label, unit, near = found.get(key), setting.label, setting.unit, setting.near
            decimals = decimals_of(key)
        if value is not None:
            window = max(windows, key=lambda w: margin_of(value, w.low, w.high))
            yield _usual_row(MAKE, key, label, unit, decimals, value, window, near, None)


def _room_rows(one: Style, forecast: Forecast) -> Iterator[Row]:
    """Rooms of the recipe against the style's rooms: of several rooms, the one that fits best speaks."""
    for stage in own_stages(forecast):
        if stage.kind != "room":
            continue
        for key, value in (("room_c", stage.room_c), ("room_rh_pct", stage.humidity_pct)):
            ranges = [(room, room.temp_c if key == "room_c" else room.rh_pct) for room in one.room]
            windows = [
                Window(key, *span, room.source, room.have, room.name) for room, span in ranges if span is not None
            ]
            if value is None or not windows:
                continue
            window = max(windows, key=lambda w: margin_of(value, w.low, w.high))
            unit, label, near = SETTINGS[key].unit, headed(stage.title, SETTINGS[key].label), SETTINGS[key].near
            yield _usual_row(MAKE, f"{key}@{stage.id}", label, unit, 1, value, window, near, None)


def _gate_rows(one: Style, forecast: Forecast, when: Mapping[str, float]) -> Iterator[Row]:
    """Curves where they pass the style's gates."""
    for (curve, at), gates in _grouped(one.gates, lambda gate: (gate.curve, gate.at)):
        if at not in when or curve not in forecast.trace.columns:
            continue
        value = forecast.trace.at(curve, when[at])
        if value != value:  # not a number: no curd yet, or no whey any more
            continue
        gate = max(gates, key=lambda g: margin_of(value, g.low, g.high))
        label, unit, decimals = label_of(curve)
        words = f"{label} {MOMENTS[at].label}"
        yield _usual_row(CURVE, f"{curve}@{at}", words, unit, decimals, value, gate, GATE_NEAR[curve], when[at])


def _usual_row(
    section: str,
    key: str,
    label: str,
    unit: str,
    decimals: int,
    value: float,
    window: Window | Gate,
    near: float,
    minute: float | None,
) -> Row:
    read = round(value, decimals)  # a usual range is no sharper than the figure one reads
    margin = margin_of(read, window.low, window.high)
    return Row(
        section=section,
        rules="",
        quantity=key,
        label=label,
        value=value,
        low=window.low,
        high=window.high,
        unit=unit,
        state=MET if margin >= 0.0 else NEAR if margin >= -near else NOT_MET,
        margin=margin,
        sentence=usual_words(read, window.low, window.high, unit, decimals),
        source=window.source,
        have=window.have,
        note=word(window.note, "note"),
        minute=minute,
    )


def _milk_rows(forecast: Forecast, rule_set: Rules, strangers: str) -> Iterator[Row]:
    """What the rules allow in the vat: species, heat treatment."""
    if strangers:
        words = say(
            "made from {milks} milk; this recipe has {strangers}", milks=milks(rule_set.milk), strangers=strangers
        )
        yield _fact(MILK, rule_set, "milk", say("Milk"), NOT_MET, words)
    heats = {milk.heat for milk in forecast.recipe.milks}
    if rule_set.heat and not heats <= rule_set.heat:
        asked, here = (either(sorted(choice(heat) for heat in some)) for some in (rule_set.heat, heats - rule_set.heat))
        yield _fact(
            MILK,
            rule_set,
            "heat",
            say("Heat treatment"),
            NOT_MET,
            say("the milk must be {asked}; it is {here}", asked=asked, here=here),
        )


def least_age_days(recipe: Recipe, of: Style) -> float:
    """How old the rules that bind any maker ask the cheese to be [days]; 0 where none does."""
    raw = any(milk.heat in _RAW for milk in recipe.milks)
    asked = [one for one in of.rules if one.judged and one.age_if != "usual" and (one.age_if != "raw" or raw)]
    return max((one.min_age_days for one in asked if one.min_age_days is not None), default=0.0)


def _age_rows(forecast: Forecast, rule_set: Rules, found: Mapping[str, float], conditions: list[str]) -> Iterator[Row]:
    """The least age, where it applies: a row if the recipe says how long it ages, a condition if not."""
    least = rule_set.min_age_days
    if least is None or (rule_set.age_if == "raw" and not any(milk.heat in _RAW for milk in forecast.recipe.milks)):
        return
    if rule_set.age_if == "usual":
        conditions.append(
            say("{title}: usually ripened for {least:g} days or more.", title=title(rule_set), least=least)
        )
        return
    why = say(" because the milk is not pasteurised (60 days is not a kill step)") if rule_set.age_if == "raw" else ""
    if "age_days" not in found:
        conditions.append(
            say("{title}: must be {least:g} days old before sale{why}.", title=title(rule_set), least=least, why=why)
        )
        return
    margin = found["age_days"] - least
    short = say("{margin:.0f} days short of the {least:g} it must be kept{why}", margin=-margin, least=least, why=why)
    words = (
        short
        if margin < 0.0
        else say("{age_days:.0f} days; must be kept {least:g}{why}", age_days=found["age_days"], least=least, why=why)
    )
    state = NOT_MET if margin < 0.0 else MET
    yield _fact(AGE, rule_set, "age_days", say("Age"), state, words, found["age_days"], least, margin)


def _fact(
    section: str,
    rule_set: Rules,
    quantity: str,
    label: str,
    state: str,
    sentence: str,
    value: float | None = None,
    low: float | None = None,
    margin: float | None = None,
) -> Row:
    return Row(
        section=section,
        rules=rule_set.key,
        quantity=quantity,
        label=label,
        value=value,
        low=low,
        high=None,
        unit=say("days") if value is not None else "",
        state=state,
        margin=margin,
        sentence=sentence,
        source=rule_set.source,
        have=rule_set.have,
        rule=f"{word(rule_set.name, 'rules')}, {rule_set.rule}",
        note=word(rule_set.note, "note"),
    )


def _verdict(
    one: Style, rows: tuple[Row, ...], judged: tuple[Rules, ...], conditions: tuple[str, ...], chance: float | None
) -> Verdict:
    binding = tuple(row for row in rows if row.section in (LIMIT, MILK, AGE))
    binding = binding or tuple(row for row in rows if row.section == CLASS)
    sentence = _sentence(one, binding, judged, chance)
    keys = tuple(rule_set.key for rule_set in judged)
    return Verdict(one.key, one.title, worst(binding), sentence, rows, keys, conditions, chance)


def _sentence(one: Style, binding: tuple[Row, ...], judged: tuple[Rules, ...], chance: float | None) -> str:
    """The verdict in one or two sentences; a forecast is likely inside, never more."""
    outside = [row for row in binding if row.state == NOT_MET]
    if not binding:
        return say("No limit of {name} applies to this recipe.", name=one.title)
    if outside:
        more = say(" (and {outside} more)", outside=len(outside) - 1) if len(outside) > 1 else ""
        return say(
            "Does not meet {rule}: {label}, {sentence}{more}.",
            rule=outside[0].rule,
            label=outside[0].label,
            sentence=outside[0].sentence,
            more=more,
        )
    close = min((row for row in binding if row.section != AGE), key=lambda row: row.margin or 0.0, default=binding[0])
    names = joined(word(rule_set.name, "rules") for rule_set in judged if rule_set.kind not in NOT_BINDING)
    margin = close.sentence
    if close.chance is not None:
        margin = margin.removesuffix(f", {chance_words(close.chance)}")
    sure = chance if chance is not None and len(binding) > 1 else close.chance
    return say(
        "The forecast lies inside the limits of {names}{sure}. Closest: {label}, {margin}. "
        "Only an analysis of the cheese can show it.",
        names=names or say("its class"),
        sure=f" ({chance_words(sure)})" if sure is not None else "",
        label=close.label,
        margin=margin,
    )


def _strangers(forecast: Forecast, rule_set: Rules) -> str:
    """The species of this recipe that the rules do not speak of, as "goat's", "" if there are none."""
    return milks({milk.species for milk in forecast.recipe.milks} - rule_set.milk) if rule_set.milk else ""


def _grouped(items: Sequence[Any], key: Callable[[Any], Any]) -> Iterator[tuple[Any, list[Any]]]:
    groups: dict[Any, list[Any]] = {}
    for item in items:
        groups.setdefault(key(item), []).append(item)
    yield from groups.items()
