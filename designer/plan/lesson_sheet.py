"""A sheet for learners: the make with its targets, or without them, so that they are guessed first and read later."""

from __future__ import annotations

from collections.abc import Iterator

from designer.forecast import Caution, Forecast, StageForecast
from designer.judge.compare import KEYS
from designer.judge.depths import topic
from designer.language import mark, say, word
from designer.plan.clock import Clock
from designer.plan.compare_sheet import foot
from designer.plan.make_plan import Print
from designer.plan.over_each_other import over_each_other
from designer.plan.sheet import SMALL_PT, Blank, Cell, Column, Field, Fields, Line, Ruled, Section, Sheet, Table, Words
from designer.plan.variants import shown
from designer.plan.weigh_out import degrees
from designer.quantities import QUANTITIES
from designer.units import convert

QUESTIONS = (
    mark("In which stage does the curd lose most whey? How would you see it?"),
    mark("Where does the acid come fastest, and what stops it in the end?"),
    mark("Change one setting for a moister cheese. What else would change with it?"),
)


def lesson_sheet(forecast: Forecast, want: Print, *, targets: bool) -> Sheet:
    """The Sheet of a lesson. Without `targets` ends, temperatures, pH and outcomes are left open for a guess; what is
    printed for safety's sake is printed on both."""
    recipe = forecast.recipe
    drawing = over_each_other(
        (forecast,), (say("planned"),), width_mm=want.paper.inner_width_mm, system=want.system, empty=not targets
    )
    remark = say("Plot what you read.") if targets else say("Draw what you expect; then plot what you read.")
    questions = [Words((Line(word(text)),), hang=f"{at}") for at, text in enumerate(QUESTIONS, start=1)]
    sections = [
        Section(
            "", (Fields(((Field(say("name")), Field(say("group"), share=0.7), Field(say("date"), want.date, 0.7)),)),)
        ),
        Section(say("Stages"), (_stages(forecast, want, targets),), keep=False, remark=_stages_remark(targets)),
        Section(say("What comes of it"), (_outcomes(forecast, targets),)),
        Section(say("The make drawn"), (drawing,), remark=remark, early=True),
        Section(say("Think first"), tuple(block for text in questions for block in (text, Ruled(2)))),
        Section(say("In a sentence each"), tuple(_sentences(forecast)), keep=False),
        _cautions(forecast),
    ]
    return Sheet(
        paper=want.paper,
        title=recipe.name,
        subtitle=say("Sheet for learners, with targets") if targets else say("Sheet for learners, without targets"),
        sections=tuple(one for one in sections if one is not None),
        foot=foot(want),
    )


def _stages_remark(targets: bool) -> str:
    return say("Write down what you read at the end of each.") if targets else say("Guess first, then read.")


def _stages(forecast: Forecast, want: Print, targets: bool) -> Table:
    degree = degrees(want.system)
    columns = (
        Column(say("stage"), 56.0),
        Column(say("ends at") if targets else say("ends at, guess"), 22.0),
        Column(degree if targets else say("{degree}, guess", degree=degree), 17.0),
        Column("pH" if targets else say("pH, guess"), 17.0),
        Column(say("ended"), 20.0),
        Column(say("{degree}, read", degree=degree), 20.0),
        Column(say("pH, read"), 20.0),
    )
    clock = Clock(forecast.recipe.start_clock_min)
    rows = []
    for number, (stage, done) in enumerate(zip(forecast.recipe.stages, forecast.stages, strict=False), start=1):
        title = f"{number}  {stage.title[:1].upper()}{stage.title[1:]}"
        does = stage.plan_line(want.system)
        what: Cell = (Line(title, bold=True), *((Line(does, SMALL_PT),) if does else ()))
        planned = _planned(done, clock, degree) if targets else ((Blank(),),) * 3
        rows.append((what, *planned, (Blank(),), (Blank(),), (Blank(),)))
    return Table(columns, tuple(rows))


def _planned(done: StageForecast, clock: Clock, degree: str) -> tuple[Cell, ...]:
    temperature = convert(done.values["temperature_c"], "temperature", degree)
    figures = (
        clock.read(done.end_min),
        say("{value:.1f}", value=temperature),
        say("{value:.2f}", value=done.values["ph"]),
    )
    return tuple((Line(text),) for text in figures)


def _outcomes(forecast: Forecast, targets: bool) -> Table:
    columns = (
        Column("", 60.0), Column(say("my guess"), 38.0), Column(say("forecast"), 40.0), Column(say("measured"), 36.0)
    )  # fmt: skip
    rows: list[tuple[Cell, ...]] = []
    for key in KEYS:
        if key in forecast.outcomes:
            value = shown(key, forecast.outcomes[key].value)
            told: Cell = (Line(value),) if targets else (Blank(),)
            rows.append(((Line(QUANTITIES[key].label),), (Blank(),), told, (Blank(),)))
    return Table(columns, tuple(rows))


def _sentences(forecast: Forecast) -> Iterator[Words]:
    for key in KEYS:
        if key in forecast.outcomes:
            yield Words((Line(topic(key).child),), hang="–")


def _cautions(forecast: Forecast) -> Section | None:
    grave = [one for one in forecast.cautions if one.level in ("stop", "watch")]
    if not grave:
        return None
    return Section(say("Cautions"), tuple(_caution(one) for one in grave), keep=False, early=True)


def _caution(one: Caution) -> Words:
    source = f" ({one.source})" if one.source else ""
    return Words((Line(f"{one.text}{source}"),), hang="!")
