"""Builds the Sheet of a make from its Forecast: what is pinned to the wall, written on with wet hands, and filed.

Page one is the day: head, weigh-out, the stages at the vat. Then what comes after the vat, the curve, what to do when
late or early, deviations, cautions, and a strip to cut off for the wheels.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from designer.forecast import Caution, Forecast
from designer.forecast import forecast as run_forecast
from designer.judge.moments import moments
from designer.language import listed, mark, say, word
from designer.plan.advice import late_or_early
from designer.plan.clock import Clock
from designer.plan.curve import Bracket, make_curve
from designer.plan.place import first_out_of_the_vat
from designer.plan.sheet import (
    A4,
    Blank,
    Cell,
    Column,
    Field,
    Fields,
    Line,
    Paper,
    Ruled,
    Section,
    Sheet,
    Strip,
    Table,
    Ticks,
    Words,
)
from designer.plan.steps import Hand, Target, next_day_row, stage_table
from designer.plan.weigh_out import Weighed, degrees, mass, volume, weigh_out_section, weighed
from designer.recipe.document import Branch, Recipe
from designer.recipe.edit import edit
from designer.recipe.field import choice
from designer.recipe.milk import blend
from designer.recipe.schedule import Milk
from designer.units import System, show
from styles.reader import Style

READY = (mark("all sanitised"), mark("pH meter calibrated"), mark("thermometer checked"), mark("milk free of medicine"))
HEATS = {
    "raw": mark("raw"),
    "thermised": mark("thermised"),
    "pasteurised": mark("pasteurised"),
    "high_heat": mark("heated high"),
}


@dataclass(frozen=True, slots=True)
class Print:
    """How the plan is wanted: paper, units of measure, and the words of its foot."""

    paper: Paper = A4
    system: System = "metric"
    model: str = ""
    date: str = ""


def make_plan(forecast: Forecast, style: Style | None = None, want: Print = Print()) -> Sheet:
    """The Sheet of a forecast. `style` gives the ranges aimed at; without it the forecast's own spread stands there."""
    recipe = forecast.recipe
    clock = Clock(recipe.start_clock_min)
    milk = blend(recipe)
    targets = _targets(forecast, style)
    lanes = [_lane(recipe, forecast, clock, milk, want, targets)]
    for branch, result in zip(recipe.branches, forecast.branches, strict=False):
        lanes.append(_lane(branch, result, clock, milk, want, ()))
    hand = lanes[0][0]
    away = first_out_of_the_vat(recipe)
    sections = [
        _head(recipe, want),
        weigh_out_section([item for _, own in lanes for item in own]),
        _stages(
            say("At the vat"), hand, 0, away, remark=say("Clock as planned. Write down what is read when a stage ends.")
        ),
        _stages(say("After the vat"), hand, away, len(recipe.stages), next_day=next_day_row(hand, milk.mass_kg)),
        *(_branch(own) for own, _ in lanes[1:]),
        _amounts([item for _, own in lanes for item in own]),
        _advice(forecast, clock, style, want),
        _deviations(),
        _cautions(forecast),
        _curve(forecast, clock, style, want),
        Section(say("Notes"), (Ruled(2, fill=True),), spare=True),
    ]
    return Sheet(
        paper=want.paper,
        title=recipe.name,
        subtitle=_subtitle(recipe, style, milk.mass_kg, milk.mass_kg / milk.density_kg_l, want.system),
        sections=tuple(section for section in sections if section is not None),
        foot=_foot(recipe, want),
        strip=_strip(recipe, style),
    )


def plan_version(recipe: Recipe) -> str:
    """Eight signs that change with anything in the recipe: ties a filled-in sheet to its plan."""
    return hashlib.sha256(recipe.model_dump_json().encode()).hexdigest()[:8]


def _subtitle(recipe: Recipe, style: Style | None, mass_kg: float, litres: float, system: System) -> str:
    milks = listed(dict.fromkeys(choice(source.species) for source in recipe.milks))
    heat = ", ".join(dict.fromkeys(word(HEATS[source.heat]) for source in recipe.milks))
    words = [
        style.title if style is not None else "",
        say(
            "{litres} ({mass_kg}) of {milks} milk, {heat}",
            litres=volume(litres, system),
            mass_kg=mass(mass_kg, system),
            milks=milks,
            heat=heat,
        ),
        recipe.place,
        recipe.maker,
    ]
    return " · ".join(one for one in words if one)


def _head(recipe: Recipe, want: Print) -> Section:
    degree = degrees(want.system)
    rows: list[tuple[Field, ...]] = [
        (Field(say("batch"), share=1.0), Field(say("date"), want.date, 1.2), Field(say("maker"), share=1.6)),
        (
            Field(say("room {degree} / % RH", degree=degree)),
            Field(say("milk pH")),
            Field(say("milk {degree}", degree=degree)),
        ),
    ]
    heated = [source for source in recipe.milks if source.heat_c is not None and source.heat_min is not None]
    for source in heated[:1]:
        assert source.heat_c is not None
        assert source.heat_min is not None
        hold = say(
            "{heat_c} for {heat_min}",
            heat_c=show(source.heat_c, "temperature", system=want.system),
            heat_min=show(source.heat_min, "duration"),
        )
        airspace = Field(say("airspace {degree}", degree=degree))
        rows.append((Field(say("heat"), hold, 1.6), Field(say("held from")), Field(say("to"), share=0.7), airspace))
    return Section("", (Fields(tuple(rows)), Ticks(tuple(word(one) for one in READY))))


def _stages(
    title: str, hand: Hand, first: int, last: int, *, next_day: tuple[Cell, ...] | None = None, remark: str = ""
) -> Section | None:
    if first >= last and next_day is None:
        return None
    return Section(title, (stage_table(hand, first, last, next_day),), keep=False, remark=remark)


def _goes_in(
    recipe: Recipe | Branch, items: Sequence[Weighed], clock: Clock, forecast: Forecast
) -> Mapping[str, Sequence[str]]:
    """Stage id -> a box to tick for each thing that goes in there, with its clock where it isn't the stage's start."""
    starts = {stage.id: stage.start_min for stage in forecast.stages}
    first = next((stage.id for stage in recipe.stages if stage.kind == "ripen"), recipe.stages[0].id)
    given = {each.id: (each.at or first, each.after_min) for each in recipe.starters}
    given |= {each.id: (each.at, each.after_min) for each in recipe.additions}
    out: dict[str, list[str]] = {}
    brines = {stage.id for stage in recipe.stages if stage.kind in ("brine", "hold_brine")}  # not added: gone into
    for item in items:
        if item.id in brines:
            continue
        at, after_min = given.get(item.id, (item.id, 0.0))
        when = f"{clock.read(starts[at] + after_min)}  " if after_min > 0.0 and at in starts else ""
        out.setdefault(at, []).append(f"{when}{item.brief}")
    return out


def _targets(forecast: Forecast, style: Style | None) -> tuple[Target, ...]:
    if style is None:
        return ()
    at = moments(forecast)
    found: dict[tuple[str, str], Target] = {}
    for gate in style.gates:  # of several sources the first named is printed
        if gate.at in at and gate.curve in ("ph", "ph_whey"):
            found.setdefault((gate.curve, gate.at), Target(gate.curve, at[gate.at], gate.low, gate.high))
    return tuple(found.values())


def _curve(forecast: Forecast, clock: Clock, style: Style | None, want: Print) -> Section:
    brackets = [
        Bracket(
            target.minute,
            target.low if target.low is not None else 4.0,
            target.high if target.high is not None else 7.0,
        )
        for target in _targets(forecast, style)
        if target.curve == "ph"
    ]
    curve = make_curve(
        forecast,
        clock,
        width_mm=want.paper.inner_width_mm,
        brackets=brackets,
        system=want.system,
    )
    return Section(say("The make drawn"), (curve,), early=True, remark=say("Plot what you read: a cross each."))


def _lane(
    lane: Recipe | Branch,
    forecast: Forecast,
    clock: Clock,
    milk: Milk,
    want: Print,
    targets: tuple[Target, ...],
) -> tuple[Hand, tuple[Weighed, ...]]:
    """What the rows of a make, or of a branch of it, need; and what it needs weighed out."""
    items = weighed(lane, forecast, milk, want.system)
    return Hand(forecast, lane, clock, want.system, _goes_in(lane, items, clock, forecast), targets), items


def _branch(hand: Hand) -> Section | None:
    """The table of a branch, its stages numbered for themselves."""
    branch = hand.lane
    assert isinstance(branch, Branch)
    title = say(
        "{name}: {share_pct:g} % of the {of}",
        name=branch.name or branch.id,
        share_pct=branch.share_pct,
        of=choice(branch.of),
    )
    return _stages(title, hand, 0, len(branch.stages))


def _amounts(items: Sequence[Weighed]) -> Section | None:
    notes = [Words((Line(item.note),), hang="–") for item in items if item.note]
    return Section(say("On the amounts"), tuple(notes), early=True) if notes else None


def _advice(forecast: Forecast, clock: Clock, style: Style | None, want: Print) -> Section | None:
    highs = (
        [window.high for window in style.windows_of("cook_c") if window.high is not None] if style is not None else []
    )
    lines = late_or_early(
        forecast, clock, want.system, edit=edit, run=run_forecast, cook_high_c=max(highs) if highs else None
    )
    if not lines:
        return None
    remark = say("Once the whey is off, little can be put right.")
    return Section(
        say("Late or early?"), tuple(Words((Line(line),), hang="–") for line in lines), early=True, remark=remark
    )


def _deviations() -> Section:
    columns = (Column("", 62.0), Column("", 62.0), Column("", 39.0), Column("", 12.0))
    row: tuple[Cell, ...] = (
        (Blank(say("what went wrong")),),
        (Blank(say("what was done")),),
        (Ticks((say("hold"), say("release"))),),
        (Blank(say("by")),),
    )
    return Section(say("Deviations"), (Table(columns, (row, row)),))


def _cautions(forecast: Forecast) -> Section | None:
    """Every caution with its source; the gravest first."""
    order = {"stop": 0, "watch": 1, "note": 2}
    cautions = sorted(forecast.cautions, key=lambda caution: order.get(caution.level, 3))
    if not cautions:
        return None
    names = {stage.id: f"{number} {stage.title}" for number, stage in enumerate(forecast.recipe.stages, start=1)}
    return Section(say("Cautions"), tuple(_caution(caution, names) for caution in cautions), keep=False, early=True)


def _caution(caution: Caution, names: Mapping[str, str]) -> Words:
    sign = {"stop": say("STOP"), "watch": "!"}.get(caution.level, "–")
    place = f"{names[caution.stage]}: " if caution.stage in names else ""
    source = f" ({caution.source})" if caution.source else ""
    return Words((Line(f"{place}{caution.text}{source}"),), hang=sign)


def _strip(recipe: Recipe, style: Style | None) -> Strip:
    raw = any(source.heat in ("raw", "thermised") for source in recipe.milks)
    days = [
        rules.min_age_days
        for rules in (style.rules if style is not None else ())
        if rules.min_age_days is not None and (rules.age_if == "always" or (rules.age_if == "raw" and raw))
    ]
    heat = listed(dict.fromkeys(word(HEATS[source.heat]) for source in recipe.milks))
    sale = say("not for sale before (day {days:g})", days=max(days)) if days else say("not for sale before")
    return Strip(
        say("Cut off and keep with the wheels"),
        (
            (Field(say("batch")), Field(say("date")), Field("", recipe.name, 1.6)),
            (Field(say("milk"), heat), Field(sale, share=2.6)),
        ),
    )


def _foot(recipe: Recipe, want: Print) -> str:
    words = [
        "Curdwright",
        say("plan {plan_version}", plan_version=plan_version(recipe)),
        say("model {model}", model=want.model) if want.model else "",
    ]
    return " · ".join(one for one in words if one)
