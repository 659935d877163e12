"""The commands `lesson`, `vats` and `explain`: teaching from the command line."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated

import typer

from designer.command import (
    CommandError,
    Json,
    PaperSize,
    Pdf,
    Recipe_,
    Start,
    StyleKey,
    Units,
    forecast_of,
    pdf_name,
    printed,
    read_recipe,
    style_asked,
)
from designer.language import say

Litres = Annotated[str, typer.Option("--milk", metavar="VOLUME", help="Milk in each vat.")]
Changes = Annotated[
    list[str] | None,
    typer.Option(
        "--change", metavar="ID.FIELD=VALUE", help="A vat with this changed; “ID.FIELD” alone: low, usual, high."
    ),
]


def lesson(
    recipe: Recipe_,
    out: Pdf = None,
    targets: Annotated[
        bool, typer.Option("--targets/--no-targets", help="Print the targets, or leave them open.")
    ] = True,
    paper: PaperSize = "a4",
    units: Units = "metric",
    start: Start = "",
) -> None:
    """Write a sheet for learners as a PDF, with the targets or without them."""
    from designer.plan.lesson_sheet import lesson_sheet

    path = pdf_name(out if out is not None else Path(f"{recipe.stem}-lesson.pdf"))
    made = forecast_of(read_recipe(recipe, start), 0)
    print(printed(lambda want: lesson_sheet(made, want, targets=targets), path, paper, units))


def vats(
    recipe: Recipe_,
    change: Changes = None,
    milk: Litres = "10 L",
    out: Pdf = None,
    style: StyleKey = "",
    paper: PaperSize = "a4",
    units: Units = "metric",
    as_json: Json = False,
) -> None:
    """Several small vats side by side, each changing one thing: what comes of each."""
    from designer.judge.vats import MOST, changed, low_usual_high, setting_of, small
    from designer.plan.variants import print_vats, vats_json
    from designer.units import parse

    if not change:
        raise CommandError(say("Say what changes: --change ID.FIELD=VALUE, for example --change cut.cut_mm=6mm."))
    path = None if out is None else pdf_name(out)
    read = read_recipe(recipe)
    base = small(read, parse(milk, "volume", gallon=None if units == "metric" else units).value)
    known = style_asked(read, style) if style or read.style else None
    found = [base]
    for text in change:
        name, _, value = (part.strip() for part in text.partition("="))
        where, _, field = name.partition(".")
        if value:
            kind = setting_of(base.recipe, (where, field)).kind
            found.append(changed(base, (where, field), parse(value, kind).value))
        else:
            found += [changed(base, (where, field), one) for one in low_usual_high(base, (where, field), known)]
    if len(found) > MOST:
        raise CommandError(say("{count} vats; at the most {most} can be told apart.", count=len(found), most=MOST))
    made = [forecast_of(one.recipe, 0) for one in found]
    if as_json:
        from designer.plan.as_json import dumps

        print(dumps(vats_json(found, made)))
    else:
        print_vats(found, made, units)
    if path is not None:
        from designer.plan.vats_sheet import vats_sheet

        print(printed(lambda want: vats_sheet(found, made, want), path, paper, units), file=sys.stderr)


def explain(
    key: Annotated[str, typer.Argument(metavar="[TOPIC]", help="Which topic; without it: the list.")] = "",
) -> None:
    """Explain an outcome, a setting or a law at three depths: a sentence, a paragraph, the law with its source."""
    from designer.judge.depths import row_words, topic, topics

    if not key:
        for one in topics():
            print(f"{one.key:26} {one.title}")
        return
    try:
        found = topic(key)
    except KeyError:
        raise CommandError(say("There is no topic “{key}”; `explain` alone lists them.", key=key)) from None
    print(f"{found.title}\n\n{found.child}\n\n{found.maker}\n")
    for text in (*found.statements(), *map(row_words, found.constants())):
        print(f"- {text}")
