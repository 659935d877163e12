"""Scaling and comparing as tables on a terminal and as JSON: what `curdwright scale` and `compare` print."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from rich.console import Console
from rich.table import Table

from designer.forecast import Forecast
from designer.judge.compare import KEYS, Comparison, Difference, part_words
from designer.judge.vats import Vat
from designer.language import headed, joined, say, word
from designer.language import number as told_number
from designer.plan.as_json import number
from designer.quantities import QUANTITIES
from designer.recipe.scaling import Rule, Scaled
from designer.units import System, show

BESIDE = (
    "moisture_pct",
    "fdm_pct",
    "salt_in_moisture_pct",
    "ph_24h",
    "calcium_mg_per_g_protein",
    "yield_kg_per_100kg",
    "cheese_kg",
    "finish_min",
)
"""Outcomes that two makes are set beside each other by."""
RULES: tuple[Rule, ...] = (
    "by milk",
    "by area",
    "by thickness squared",
    "by the vat's power",
    "to be checked",
    "unchanged",
)


def scaled_json(scaled: Scaled, before: Forecast, after: Forecast) -> dict[str, Any]:
    """{"factor", "lines": [{"part", "of", "what", "before", "after", "rule", "why"}], "outcomes": {key: {...}}}."""
    lines = [
        {
            "part": line.part,
            "of": line.of,
            "what": line.what,
            "before": line.before,
            "after": line.after,
            "rule": line.rule,
            "why": line.why,
        }
        for line in scaled.lines
    ]
    return {"factor": number(scaled.factor), "lines": lines, "outcomes": _beside(before, after)}


def _beside(before: Forecast, after: Forecast) -> Mapping[str, Any]:
    return {
        key: {"before": number(before.outcomes[key].value), "after": number(after.outcomes[key].value)}
        for key in BESIDE
        if key in before.outcomes and key in after.outcomes
    }


def print_scaled(scaled: Scaled, before: Forecast, after: Forecast) -> None:
    """Rule by rule what becomes of every line; then what cheese comes of both."""
    console = Console(highlight=False)
    console.print(
        say("{factor} times the milk. Every line says by which rule it goes.", factor=show(scaled.factor, "ratio"))
    )
    for rule in RULES:
        lines = scaled.by(rule)
        if not lines:
            continue
        console.print(say("\n[bold]{rule}[/bold]", rule=word(rule, "rule").capitalize()))
        if rule == "unchanged":
            console.print(_plain(joined(headed(line.of, f"{line.what} {line.before}") for line in lines)))
            continue
        for line in lines:
            figure = f"{line.before} → {line.after}" if line.changed else line.before
            console.print(_plain(headed(line.of, f"{line.what} {figure} ({line.why})")))
    console.print()
    console.print(outcomes_table(before, after, say("before"), say("after")))


def comparison_json(found: Comparison) -> dict[str, Any]:
    """{"left", "right", "per_100kg", "texture": {"left", "right"}, "rows": [{"role", "left", "right", "folded"}],
    "differences": [{"sentence", "consequences", "row", "steps", "worth": {outcome: part}}], "outcomes": {key: {"left",
    "right", "rest"}}}.

    For every outcome right - left is the sum of the parts and the rest. Differences stand with the greatest first.
    """
    return {
        "left": found.left.name,
        "right": found.right.name,
        "per_100kg": found.per_100kg,
        "texture": dict(zip(("left", "right"), found.bodies(), strict=True)),
        "rows": [
            {
                "role": line.pair.role,
                "left": None if line.pair.left is None else line.pair.left.id,
                "right": None if line.pair.right is None else line.pair.right.id,
                "folded": line.folded,
            }
            for line in found.lines
        ],
        "differences": [_difference_json(one) for one in found.ranked()],
        "outcomes": {
            key: {
                "left": number(found.left_values[key]),
                "right": number(found.right_values[key]),
                "rest": number(rest),
            }
            for key, rest in found.rest.items()
        },
    }


def _difference_json(one: Difference) -> dict[str, Any]:
    return {
        "sentence": one.sentence,
        "consequences": one.consequences,
        "row": one.row if one.row >= 0 else None,
        "steps": [
            {"what": step.what, "part": step.part, "of": step.of, "label": step.label, "left": step.left,
             "right": step.right}
            for step in one.steps
        ],
        "worth": {key: number(part) for key, part in one.worth.items()},
    }  # fmt: skip


def print_comparison(found: Comparison) -> None:
    """Stages beside each other with the like folded, what each difference is worth, and both cheeses."""
    console = Console(highlight=False)
    console.print(
        say(
            "[bold]{name}[/bold] against [bold]{name2}[/bold]",
            name=_plain(found.left.name),
            name2=_plain(found.right.name),
        )
    )
    if found.per_100kg:
        console.print(say("The milks differ in amount, so doses read per 100 kg of milk."))
    console.print()
    console.print(_rows(found))
    console.print(say("\n[bold]What each difference is worth[/bold], the greatest first"))
    for one in found.ranked():
        console.print(_plain(headed(one.sentence, f"{one.consequences}.")))
    if not found.differences:
        console.print(say("The two makes do the same."))
    console.print()
    console.print(_sums(found))
    bodies = found.bodies()
    console.print(
        say("Texture: {bodies} → {bodies2}.", bodies=bodies[0], bodies2=bodies[1])
        if bodies[0] != bodies[1]
        else say("Texture of both: {bodies}.", bodies=bodies[0])
    )


def _rows(found: Comparison) -> Table:
    table = Table(box=None, pad_edge=False)
    for name in ("", found.left.name, found.right.name):
        table.add_column(_plain(name))
    alike: list[str] = []

    def fold() -> None:
        if alike:
            table.add_row(say("alike"), _plain(", ".join(alike)), "")
            alike.clear()

    for line in found.lines:
        if line.folded and line.pair.left is not None:
            alike.append(line.pair.left.title)
            continue
        fold()
        titles = (say("none") if one is None else one.title for one in (line.pair.left, line.pair.right))
        table.add_row(_plain(word(line.pair.role, "stage")), *map(_plain, titles))
    fold()
    return table


def _sums(found: Comparison) -> Table:
    """Both makes' outcomes, and that the parts add up to what lies between them."""
    table = Table(box=None, pad_edge=False)
    table.add_column(say("outcome"))
    for name in (found.left.name, found.right.name, say("difference"), say("sum of parts")):
        table.add_column(_plain(name), justify="right")
    for key in KEYS:
        if key in found.rest:
            values = found.left_values[key], found.right_values[key]
            parts = sum(one.worth.get(key, 0.0) for one in found.differences)
            said = (*(shown(key, value) for value in values), change(key, values), change(key, (0.0, parts)))
            table.add_row(QUANTITIES[key].label, *said)
    return table


def outcomes_table(left: Forecast, right: Forecast, left_name: str, right_name: str, also: Sequence[str] = ()) -> Table:
    """Two forecasts side by side, by the outcomes that makes are set beside each other by and those of `also`."""
    table = Table(box=None, pad_edge=False)
    table.add_column(say("outcome"))
    for name in (left_name, right_name, say("difference")):
        table.add_column(_plain(name), justify="right")
    for key in dict.fromkeys((*also, *BESIDE)):
        if key in left.outcomes and key in right.outcomes:
            values = left.outcomes[key].value, right.outcomes[key].value
            table.add_row(QUANTITIES[key].label, *(shown(key, value) for value in values), change(key, values))
    return table


def vats_json(vats: Sequence[Vat], made: Sequence[Forecast]) -> list[dict[str, Any]]:
    """[{"name", "setting", "value", "outcomes": {key: value}}], the unchanged vat first."""
    return [
        {
            "name": vat.name(),
            "setting": None if vat.setting is None else ".".join(vat.setting.path),
            "value": None if vat.setting is None else number(vat.value),
            "outcomes": {key: number(one.outcomes[key].value) for key in KEYS if key in one.outcomes},
        }
        for vat, one in zip(vats, made, strict=True)
    ]


def print_vats(vats: Sequence[Vat], made: Sequence[Forecast], system: System) -> None:
    """What comes of each vat, and how far that is from the first."""
    table = Table(box=None, pad_edge=False)
    table.add_column(say("outcome"))
    for vat in vats:
        table.add_column(_plain(vat.name(system)), justify="right")
    for key in KEYS:
        if all(key in one.outcomes for one in made):
            values = [one.outcomes[key].value for one in made]
            told = [f"{brief(key, value)}  {part_words(key, value - values[0])}".rstrip() for value in values]
            table.add_row(QUANTITIES[key].label, *told)
    Console(highlight=False).print(table)


def shown(key: str, value: float) -> str:
    """An outcome with its unit."""
    quantity = QUANTITIES[key]
    if quantity.kind == "duration":
        return show(value, "duration")
    return f"{told_number(value, f'.{quantity.decimals}f')} {quantity.unit}".rstrip()


def brief(key: str, value: float) -> str:
    """An outcome with its unit, without what the unit is of: for narrow columns."""
    text = shown(key, value)
    return text.split(" per ")[0]


def change(key: str, values: tuple[float, float]) -> str:
    """The difference of two outcomes, with its sign."""
    amount = values[1] - values[0]
    sign = "+" if amount >= 0.0 else "−"
    quantity = QUANTITIES[key]
    if quantity.kind == "duration":
        return f"{sign}{show(abs(amount), 'duration')}"
    return f"{sign}{told_number(abs(amount), f'.{quantity.decimals}f')}"


def _plain(text: str) -> str:
    """Text that the console takes as it is."""
    return text.replace("[", "\\[")
