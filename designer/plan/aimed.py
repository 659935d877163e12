"""What is wanted as text, and what aim found, on a terminal and as JSON: `curdwright aim`."""

from __future__ import annotations

import math
import re
from collections.abc import Sequence
from typing import Any

from rich.console import Console
from rich.text import Text

from designer.forecast import Forecast
from designer.judge.aim import Aimed, AimError, Change, Wanted, at
from designer.judge.meet import Met
from designer.judge.movable import movables
from designer.language import headed, say
from designer.plan.as_json import number
from designer.plan.variants import outcomes_table
from designer.quantities import OUTCOMES, QUANTITIES
from designer.recipe.document import Recipe
from designer.units import System, UnitError, parse

_WANTED = re.compile(r"\s*([a-z0-9_]+)\s*(<=|>=|=)\s*(.+?)\s*(?:\.\.\s*(.+?)\s*)?")
_TAILS = ("", "_pct", "_min", "_kg", "_kg_per_100kg", "_mg_per_g_protein")


def wanted(text: str) -> Wanted:
    """ "moisture=38", "ph_24h=5.1..5.2", "salt_in_moisture>=4.5", "finish <= 12 h" as an outcome wanted. AimError."""
    match = _WANTED.fullmatch(text)
    if match is None:
        raise AimError(
            say("“{said}” can't be read; write for example moisture=38, ph_24h=5.1..5.2 or finish<=12 h.", said=text)
        )
    key = outcome(match[1])
    value = _number(key, match[3])
    if match[4] is not None:
        if match[2] != "=":
            raise AimError(
                say(
                    "“{said}” can't be read; a range is written {match}={match2}..{match3}.",
                    said=text,
                    match=match[1],
                    match2=match[3],
                    match3=match[4],
                )
            )
        return Wanted(key, value, _number(key, match[4]))
    if match[2] == "=":
        return at(key, value)
    return Wanted(key, None, value) if match[2] == "<=" else Wanted(key, value, None)


def outcome(text: str) -> str:
    """The key of an outcome as written, with or without its unit: "moisture", "ph_24h". AimError if there is none."""
    key = next((text + tail for tail in _TAILS if text + tail in QUANTITIES), None)
    if key is None:
        known = ", ".join(sorted(OUTCOMES))
        raise AimError(say("“{match}” is no outcome; there are: {known}.", match=text, known=known))
    return key


def _number(key: str, text: str) -> float:
    try:
        plain = float(text.replace(",", "."))
    except ValueError:
        plain = math.nan
    if math.isfinite(plain):
        return plain
    try:
        return parse(text, QUANTITIES[key].kind).value
    except UnitError as error:
        raise AimError(headed(QUANTITIES[key].label, str(error))) from None


def branch(recipe: Recipe, text: str) -> str | None:
    """A branch as written: its id or name; "" is the main make. AimError if there is none."""
    if not text:
        return None
    found = next((one.id for one in recipe.branches if text in (one.id, one.name)), None)
    if found is None:
        known = ", ".join(one.id for one in recipe.branches) or say("none")
        raise AimError(say("There is no branch “{said}”; there are: {known}.", said=text, known=known))
    return found


def lock(recipe: Recipe, text: str, of: str | None = None) -> tuple[str, str] | str:
    """A lock as written: the id of a stage or dose, or id.field for one of its settings. AimError if it is neither.

    `of` is the branch whose outcomes are wanted.
    """
    every = [one.path for one in movables(recipe, of)]
    if any(where == text for where, _ in every if where):
        return text
    for path in every:
        if ".".join(path) == text:
            return path
    raise AimError(
        say(
            "There is nothing to lock called “{said}”; write the id of a stage or dose, or for "
            "example warm.temperature_c.",
            said=text,
        )
    )


def aimed_json(found: Aimed) -> dict[str, Any]:
    """{"reached", "size", "sentence", "changes", "worse", "in_the_way", "outcomes": {key: {"before", "after"}}}."""
    return {
        "reached": found.reached,
        "size": number(found.size),
        "sentence": found.sentence,
        "changes": [_change(one) for one in found.changes],
        "worse": list(found.worse),
        "in_the_way": [
            {"sentence": one.sentence, "settings": [list(path) for path in one.settings]} for one in found.in_the_way
        ],
        "outcomes": _outcomes(found.lane_before, found.lane),
    }


def met_json(found: Met) -> dict[str, Any]:
    """{"reached", "sentence", "changes", "missed", "worse", "milk", "notes", "outcomes": {key: {...}}}."""
    return {
        "reached": found.reached,
        "sentence": found.sentence,
        "changes": [_change(one) for one in found.changes],
        "missed": list(found.missed),
        "worse": list(found.worse),
        "milk": [one.sentence for one in found.milk],
        "notes": list(found.notes),
        "outcomes": _outcomes(found.before, found.made),
    }


def _change(one: Change) -> dict[str, Any]:
    return {
        "part": one.setting.where,
        "field": one.setting.field,
        "title": one.setting.title,
        "before": number(one.setting.value),
        "after": number(one.to),
        "steps": number(one.steps),
    }


def _outcomes(before: Forecast, after: Forecast) -> dict[str, Any]:
    return {
        key: {"before": number(one.value), "after": number(after.outcomes[key].value)}
        for key, one in before.outcomes.items()
        if key in after.outcomes
    }


def print_aimed(found: Aimed, system: System = "metric", wanted: Sequence[str] = ()) -> None:
    """The changes, the outcomes before and after (those `wanted` among them), what gets worse or is in the way."""
    console = Console(highlight=False)
    console.print(Text(say("Reached.") if found.reached else say("Not reached; this is the nearest.")))
    _print(console, found.changes, found.lane_before, found.lane, system, wanted)
    _listed(console, say("Gets worse"), found.worse)
    _listed(console, say("In the way"), [one.sentence for one in found.in_the_way])


def print_met(found: Met, system: System = "metric") -> None:
    """The same for a recipe brought to a style."""
    console = Console(highlight=False)
    console.print(Text(say("The forecast lies inside the limits.") if found.reached else say("Limits are not met.")))
    _print(console, found.changes, found.before, found.made, system)
    _listed(console, say("Still outside"), found.missed)
    _listed(console, say("Gets worse"), found.worse)
    _listed(console, say("The milk"), [one.sentence for one in found.milk])
    offered = [offer.sentence for offer in found.milk]
    _listed(console, say("Notes"), [one for one in found.notes if not any(one.endswith(said) for said in offered)])


def _print(
    console: Console, changes: Sequence[Change], before: Forecast, after: Forecast, system: System,
    also: Sequence[str] = (),
) -> None:  # fmt: skip
    for one in changes:
        console.print(Text(f"  {one.sentence(system)}"))
    if not changes:
        console.print(Text(say("  nothing changed")))
    console.print()
    console.print(outcomes_table(before, after, say("before"), say("after"), also))


def _listed(console: Console, head: str, lines: Sequence[str]) -> None:
    if lines:
        console.print(Text(f"\n{head}", style="bold"))
        for line in lines:
            console.print(Text(f"  {line}"))
