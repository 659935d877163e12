"""A comparison on paper: both cheeses, their curves over each other, and what each difference is worth."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from designer.forecast import Forecast
from designer.judge.compare import KEYS, Comparison, Difference, part_words
from designer.language import joined, mark, say, word
from designer.plan.make_plan import Print
from designer.plan.over_each_other import over_each_other
from designer.plan.sheet import SMALL_PT, Cell, Column, Line, Section, Sheet, Table, Words
from designer.plan.variants import change, shown
from designer.quantities import QUANTITIES
from designer.recipe.milk import blend
from designer.units import show

HEADS: dict[str, tuple[str, float]] = {
    "moisture_pct": (mark("Moisture points"), 18.5),
    "ph_24h": (mark("pH at 24 h"), 13.5),
    "fdm_pct": (mark("FDM points"), 14.0),
    "salt_in_moisture_pct": (mark("S/M points"), 14.0),
    "calcium_mg_per_g_protein": (mark("Calcium mg/g"), 16.5),
    "yield_kg_per_100kg": (mark("Yield kg/100 kg"), 15.5),
    "finish_min": (mark("Finish h:min"), 15.5),
}
"""Heads of the columns of parts, and how wide they are [mm]."""
WHAT_MM = 67.5


def compare_sheet(
    found: Comparison, made: tuple[Forecast, Forecast], names: tuple[str, str], title: str, want: Print
) -> Sheet:
    """The Sheet of a comparison; `made` are the forecasts of both sides, `names` what they are called in it."""
    drawing = over_each_other(made, names, width_mm=want.paper.inner_width_mm, system=want.system)
    sections = [
        Section(say("Both cheeses"), (_outcomes(found, names), Words((Line(_bodies(found, names)),)))),
        Section(say("Over each other"), (drawing,), remark=say("From milk in the vat.")),
        *_differences(found),
        _alike(found, want),
    ]
    return Sheet(
        paper=want.paper,
        title=title,
        subtitle=_subtitle(found),
        sections=tuple(one for one in sections if one is not None),
        foot=" · ".join(
            word
            for word in ("Curdwright", say("model {version}", version=want.model) if want.model else "", want.date)
            if word
        ),
    )


def foot(want: Print) -> str:
    """What stands at the foot of a sheet that is read, not filled in."""
    words = ("Curdwright", say("model {version}", version=want.model) if want.model else "", want.date)
    return " · ".join(word for word in words if word)


def _subtitle(found: Comparison) -> str:
    kg = [blend(recipe).mass_kg for recipe in (found.left, found.right)]
    if found.per_100kg:
        return say("{left} of milk against {right}; doses read per 100 kg of milk", left=_kg(kg[0]), right=_kg(kg[1]))
    return say("{mass} of milk in both", mass=_kg(kg[0]))


def _kg(mass_kg: float) -> str:
    return show(float(f"{mass_kg:.3g}"), "mass")


def _bodies(found: Comparison, names: tuple[str, str]) -> str:
    bodies = found.bodies()
    if bodies[0] == bodies[1]:
        return say("Texture of both: {body}.", body=bodies[0])
    return say(
        "Texture: {left} ({left_name}); {right} ({right_name}).",
        left=bodies[0], left_name=names[0], right=bodies[1], right_name=names[1],
    )  # fmt: skip


def _line(text: str, *, bold: bool = False) -> Cell:
    return (Line(text, SMALL_PT, bold),)


def _outcomes(found: Comparison, names: tuple[str, str]) -> Table:
    columns = (Column("", 56.0), Column(names[0], 40.0), Column(names[1], 40.0), Column(say("difference"), 32.0))
    rows = []
    for key in KEYS:
        if key in found.rest:
            values = found.left_values[key], found.right_values[key]
            said = (*(shown(key, value) for value in values), change(key, values))
            rows.append((_line(QUANTITIES[key].label), *(_line(text) for text in said)))
    return Table(columns, tuple(rows), read_only=True)


def _differences(found: Comparison) -> list[Section]:
    ranked = found.ranked()
    if not ranked:
        return [
            Section(
                say("What each difference is worth"), (Words((Line(say("Both makes do the same in every stage.")),)),)
            )
        ]
    keys = [key for key in KEYS if key in found.rest]
    columns = (Column("", WHAT_MM), *(Column(word(HEADS[key][0]), HEADS[key][1]) for key in keys))
    felt = [one for one in ranked if any(part_words(key, one.worth.get(key, 0.0)) for key in keys)]
    rows = [_worth(one, keys) for one in felt]
    whole = {key: found.right_values[key] - found.left_values[key] for key in keys}
    if any(part_words(key, found.rest[key]) for key in keys):
        rows.append(
            (_line(say("what no difference can say")), *(_line(part_words(key, found.rest[key])) for key in keys))
        )
    rows.append((_line(say("in all"), bold=True), *(_line(part_words(key, whole[key]), bold=True) for key in keys)))
    remark = say("The greatest first; the parts add up.")
    table = Table(columns, tuple(rows), read_only=True)
    out = [Section(say("What each difference is worth"), (table,), keep=False, remark=remark)]
    unfelt = [step.sentence for one in ranked if one not in felt for step in one.steps]
    if unfelt:
        text = joined(unfelt) + "."
        out.append(
            Section(say("Different, but not felt in these figures"), (Words((Line(text, SMALL_PT),)),), keep=False)
        )
    return out


def _worth(one: Difference, keys: Sequence[str]) -> tuple[Cell, ...]:
    words = tuple(Line(step.sentence, SMALL_PT) for step in one.steps)
    return (words, *(_line(part_words(key, one.worth.get(key, 0.0))) for key in keys))


def _alike(found: Comparison, want: Print) -> Section | None:
    lines = []
    for folded, run in groupby(found.lines, key=lambda line: line.folded):
        stages = [one for line in run if (one := line.pair.left or line.pair.right) is not None]
        if folded:
            lines.append(", ".join(f"{one.title} ({one.end_line(want.system)})" for one in stages))
    if not lines:
        return None
    return Section(say("Alike in both"), tuple(Words((Line(text, SMALL_PT),), hang="–") for text in lines), keep=False)
