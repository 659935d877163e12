"""Several small vats side by side on paper: what is changed in each, what comes of it, and room for what was found."""

from __future__ import annotations

from collections.abc import Sequence

from designer.forecast import Forecast
from designer.judge.compare import KEYS, part_words
from designer.judge.vats import Vat
from designer.language import say
from designer.plan.compare_sheet import foot
from designer.plan.make_plan import Print
from designer.plan.over_each_other import over_each_other
from designer.plan.sheet import SMALL_PT, Blank, Cell, Column, Line, Section, Sheet, Table
from designer.plan.variants import brief
from designer.quantities import QUANTITIES
from designer.recipe.milk import blend
from designer.units import show

LABEL_MM, WIDE_MM = 46.0, 130.0


def vats_sheet(vats: Sequence[Vat], made: Sequence[Forecast], want: Print) -> Sheet:
    """The Sheet of some vats with their forecasts; the first is the one the others are held against."""
    milk = blend(vats[0].recipe)
    litres = show(milk.mass_kg / milk.density_kg_l, "volume", system=want.system)
    names = [f"{letter}  {vat.name(want.system)}" for letter, vat in zip("ABCDE", vats, strict=False)]
    drawing = over_each_other(made, names, width_mm=want.paper.inner_width_mm, system=want.system)
    return Sheet(
        paper=want.paper,
        title=say("{name}: {count} vats side by side", name=vats[0].recipe.name, count=len(vats)),
        subtitle=say("{litres} of milk in each; each changes one thing", litres=litres),
        sections=(
            Section(say("What comes of it"), (_outcomes(vats, made, want),), remark=say("In brackets: against A.")),
            Section(say("Over each other"), (drawing,)),
            Section(say("What was found"), (_found(vats, want),), keep=False),
        ),
        foot=foot(want),
    )


def _heads(vats: Sequence[Vat], want: Print) -> tuple[Column, ...]:
    wide = WIDE_MM / len(vats)
    return tuple(Column(f"{letter}  {vat.name(want.system)}", wide) for letter, vat in zip("ABCDE", vats, strict=False))


def _outcomes(vats: Sequence[Vat], made: Sequence[Forecast], want: Print) -> Table:
    rows: list[tuple[Cell, ...]] = []
    for key in KEYS:
        if all(key in one.outcomes for one in made):
            values = [one.outcomes[key].value for one in made]
            rows.append(
                ((Line(QUANTITIES[key].label, SMALL_PT),), *(_value(key, value, values[0]) for value in values))
            )
    return Table((Column("", LABEL_MM), *_heads(vats, want)), tuple(rows), read_only=True)


def _value(key: str, value: float, first: float) -> Cell:
    by = part_words(key, value - first)
    told = (Line(brief(key, value), SMALL_PT),)
    return (*told, Line(f"({by})", SMALL_PT)) if by else told


def _found(vats: Sequence[Vat], want: Print) -> Table:
    """Blanks for readings, vat by vat."""
    texts = (say("floc seen at"), say("pH at draining"), say("pH at 24 h"), say("weight"), say("body and taste"))
    open_: tuple[Cell, ...] = ((Blank(),),) * len(vats)
    rows: list[tuple[Cell, ...]] = [((Line(text, SMALL_PT),), *open_) for text in texts]
    return Table((Column("", LABEL_MM), *_heads(vats, want)), tuple(rows))
