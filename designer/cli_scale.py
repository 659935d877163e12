"""The command `scale`: a recipe for another amount of milk, told line by line and written to a file of its own."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated, Literal

import typer

from designer.command import CommandError, Json, Recipe_, Units, forecast_of, read_recipe
from designer.language import say


def scale(
    recipe: Recipe_,
    to: Annotated[str, typer.Option("--to", metavar="VOLUME", help="Milk in all, for example “300 L”.")],
    forms: Annotated[
        Literal["many", "large"], typer.Option(help="More of the same form, or as many larger ones.")
    ] = "many",
    power: Annotated[str, typer.Option(metavar="KW", help="Heating power of the vat, for example “12 kW”.")] = "",
    out: Annotated[Path | None, typer.Option("--out", "-o", metavar="FILE", help="Write the new recipe here.")] = None,
    units: Units = "metric",
    as_json: Json = False,
) -> None:
    """A recipe for another amount of milk, with the rule behind every line; nothing is silently multiplied."""
    from designer.plan.variants import print_scaled, scaled_json
    from designer.recipe.document import Vat
    from designer.recipe.file import read_text, write
    from designer.recipe.scale import scale as scaled_to
    from designer.units import parse

    read = read_recipe(recipe)
    litres = parse(to, "volume", gallon=None if units == "metric" else units).value
    vat = Vat(power_kw=parse(power, "power").value) if power else None
    scaled = scaled_to(read, litres, forms=forms, vat=vat, system=units)
    if out is not None and out.exists():
        raise CommandError(say("{out} is there already; name a new file for the recipe.", out=out))
    before, after = forecast_of(read, 0), forecast_of(scaled.recipe, 0)
    if as_json:
        from designer.plan.as_json import dumps

        print(dumps(scaled_json(scaled, before, after)))
    else:
        print_scaled(scaled, before, after)
    if out is not None:
        write(scaled.recipe, out, read_text(recipe))
        print("\n" + say("Written to {path}", path=out.resolve()), file=sys.stderr)
