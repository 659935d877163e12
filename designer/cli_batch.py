"""The command `batches`: what was made, measured and tasted, and a house style of what was liked."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated

import typer

from designer.command import CommandError, Json, read_recipe, style_asked
from designer.language import say


def batches(
    recipe: Annotated[Path | None, typer.Argument(metavar="[RECIPE]", help="Only batches of this recipe.")] = None,
    name: Annotated[
        str, typer.Option("--house-style", metavar="NAME", help="A house style of the batches that were liked.")
    ] = "",
    out: Annotated[Path | None, typer.Option("--out", "-o", metavar="FILE", help="Write the style here.")] = None,
    ledger: Annotated[Path | None, typer.Option(metavar="FILE", help="Another ledger than your own.")] = None,
    invented: Annotated[bool, typer.Option("--invented", help="The invented batches of the example dairy.")] = False,
    readings: Annotated[
        bool, typer.Option("--readings", help="Each reading, when and with what it was taken.")
    ] = False,
    as_json: Json = False,
) -> None:
    """The made batches: what was measured and tasted, and a house style of those that were liked."""
    from designer.batch.invented import invented as made_up
    from designer.batch.ledger import FILE, Ledger
    from designer.batch.liked import liked, style_of
    from designer.batch.record import Batch
    from designer.plan.ledger_list import batch_json, print_batches, print_readings
    from styles import house

    if out is not None and out.exists():
        raise CommandError(say("{out} is there already; name a new file for the style.", out=out))
    only = read_recipe(recipe) if recipe is not None else None
    path = ledger if ledger is not None else _data() / FILE
    found: tuple[Batch, ...] = ()
    if invented or path.exists():
        opened = made_up() if invented else Ledger(path)
        found = opened.batches()
        opened.close()
    elif ledger is not None:
        raise CommandError(say("There is no ledger {ledger}.", ledger=ledger))
    kept = [one for one in found if only is None or one.as_made.recipe == only.name]
    if not name:
        if as_json:
            from designer.plan.as_json import dumps

            print(dumps([batch_json(one) for one in kept]))
        else:
            print_batches(kept)
            if readings and kept:
                print_readings(kept)
        return
    like = style_asked(only, "") if only is not None and only.style else None
    text = house.writes(made := style_of(name, liked(kept), like))
    if out is None:
        print(text, end="")
    else:
        house.write(made, out)
        print(say("Written to {path}", path=out.resolve()), file=sys.stderr)


def _data() -> Path:
    from platformdirs import user_data_path

    return user_data_path("curdwright", appauthor=False)
