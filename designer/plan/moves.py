"""What moves an outcome, the strongest setting first, a natural step both ways: on a terminal and as JSON."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from typing import Any

from rich.console import Console
from rich.table import Table

from designer.judge.levers import Lever, Spread
from designer.judge.turns import turns_among, turns_at
from designer.language import headed, number, points, say, word
from designer.plan import as_json
from designer.quantities import QUANTITIES
from designer.recipe.document import Recipe
from designer.units import System, show

Spreads = Mapping[tuple[str, str], Spread]
UNIT = {"yield_kg_per_100kg": "kg"}


def effect_words(key: str, effect: float, *, bare: bool = False) -> str:
    """What a step does to an outcome, with its sign, one figure finer than the outcome; nothing where it can't be."""
    if math.isnan(effect):
        return ""
    quantity, sign = QUANTITIES[key], "+" if effect >= 0.0 else "−"
    if quantity.kind == "duration":
        return sign + show(abs(effect), "duration")
    unit = "" if bare else points(effect) if quantity.unit.startswith("%") else UNIT.get(key, quantity.unit)
    return f"{sign}{number(abs(effect), f'.{min(quantity.decimals + 1, 3)}f')} {unit}".rstrip()


def moves_json(recipe: Recipe, key: str, ranked: Sequence[Lever], spreads: Spreads) -> dict[str, Any]:
    """{"outcome", "label", "unit", "settings": [{"id", "field", "title", "value", "step", "up", "down", ...}]}.

    `up` and `down` are the changes of the outcome by a step more and a step less of the setting, null where it is at
    its end; `up_low` ... `down_high` their 80 % bands, null where they were not worked out. `turns` says where its
    usual direction turns: [{"text", "source", "have"}].
    """
    return {
        "outcome": key,
        "label": QUANTITIES[key].label,
        "unit": QUANTITIES[key].unit,
        "settings": [_setting(recipe, key, one, spreads.get(one.setting.path)) for one in ranked],
    }


def _setting(recipe: Recipe, key: str, one: Lever, spread: Spread | None) -> dict[str, Any]:
    setting = one.setting
    row: dict[str, Any] = {
        "id": setting.where, "field": setting.field, "title": setting.title, "kind": setting.kind,
        "value": as_json.number(setting.value), "step": as_json.number(setting.step),
        "up": as_json.number(one.up), "down": as_json.number(one.down),
    }  # fmt: skip
    for way in ("up", "down"):
        low, high = getattr(spread, way) if spread is not None else (math.nan, math.nan)
        row |= {f"{way}_low": as_json.number(low), f"{way}_high": as_json.number(high)}
    turns = turns_at(recipe, setting, outcome=key)
    return row | {"turns": [{"text": turn.text, "source": turn.source, "have": turn.have} for turn in turns]}


def print_moves(recipe: Recipe, key: str, ranked: Sequence[Lever], spreads: Spreads, system: System) -> None:
    """One line a setting: what it is now, and what a step more and a step less do; then where a direction turns."""
    console = Console(highlight=False)
    console.print(say("What moves it: {label}", label=QUANTITIES[key].label), style="bold")
    if not ranked:
        console.print(say("Nothing in this recipe moves it."))
        return
    table = Table(box=None, pad_edge=False)
    for head in (say("Setting"), say("Now"), say("A step more"), "", say("A step less"), ""):
        table.add_column(head, overflow="fold")
    for one in ranked:
        setting, spread = one.setting, spreads.get(one.setting.path)
        cells = [setting.title, setting.shown(system=system)]
        for sign, effect, band in ((1.0, one.up, spread and spread.up), (-1.0, one.down, spread and spread.down)):
            there = not math.isnan(effect)
            cells.append(setting.shown_change(sign * setting.step, system) if there else say("at its end"))
            cells.append(effect_words(key, effect) + (_band(key, band) if band and there else ""))
        table.add_row(*cells)
    console.print(table)
    if spreads:
        console.print(say("In brackets: where 8 in 10 makes lie."), style="dim")
    for setting, turn in turns_among(recipe, (one.setting for one in ranked), key):
        console.print(headed(setting.title, turn.text))
        console.print(f"  {turn.source} ({word(turn.have, 'have')})", style="dim")


def _band(key: str, band: tuple[float, float]) -> str:
    if math.isnan(band[0]):
        return ""
    low, high = (effect_words(key, end, bare=True) for end in band)
    return "\n" + say("({low} to {high})", low=low, high=high)
