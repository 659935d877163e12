"""The command `compare`: two makes beside each other, in words, as JSON and on paper."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from designer.command import (
    CommandError,
    Json,
    PaperSize,
    Recipe_,
    Units,
    forecast_of,
    pdf_name,
    printed,
    read_recipe,
    style_asked,
)
from designer.language import say

if TYPE_CHECKING:
    from designer.judge.beside import Beside
    from designer.recipe.document import Recipe


def compare(
    left: Recipe_,
    right: Annotated[Path | None, typer.Argument(metavar="[OTHER]", help="The other recipe.")] = None,
    style: Annotated[
        str, typer.Option("--style", metavar="KEY", help="Instead: the middle of a style's windows.")
    ] = "",
    kept: Annotated[
        list[int] | None,
        typer.Option(
            "--version", metavar="N", help="Instead: a version this recipe kept; given twice, one with the other."
        ),
    ] = None,
    lane: Annotated[
        list[str] | None,
        typer.Option(
            "--lane", metavar="BRANCH", help="Instead: a branch of this vat; given twice, one with the other."
        ),
    ] = None,
    out: Annotated[Path | None, typer.Option("--out", "-o", metavar="PDF", help="Write it as a PDF as well.")] = None,
    paper: PaperSize = "a4",
    units: Units = "metric",
    as_json: Json = False,
) -> None:
    """Two makes beside each other by what their stages do, with what each difference is worth."""
    from designer.judge.beside import title
    from designer.judge.compare import compare as compared
    from designer.plan.variants import comparison_json, print_comparison

    given = [right is not None, bool(style), bool(kept), bool(lane)]
    if sum(given) != 1 or max(len(lane or ()), len(kept or ())) > 2:
        raise CommandError(
            say("Name the other recipe, --style, --version or --lane (these two at most twice); one of the four.")
        )
    path = None if out is None else pdf_name(out)
    first = read_recipe(left)
    beside = _beside(first, left, right, style, kept or [], lane or [])
    sides = beside.sides(first)
    made = forecast_of(sides[0], 0), forecast_of(sides[1], 0)
    found = compared(*sides, system=units, made=made)
    if as_json:
        from designer.plan.as_json import dumps

        print(dumps(comparison_json(found)))
    else:
        print_comparison(found)
    if path is not None:
        from designer.plan.compare_sheet import compare_sheet

        names, head = beside.names(first), title(beside, first)
        said = printed(lambda want: compare_sheet(found, made, names, head, want), path, paper, units)
        print(said, file=sys.stderr)


def _beside(first: Recipe, left: Path, right: Path | None, style: str, kept: list[int], lane: list[str]) -> Beside:
    """What the recipe read from `left` is compared with; one of the rest says it."""
    from designer.judge.beside import Another, Lanes, Middle, Pair
    from designer.recipe import versions

    if right is not None:
        return Another(read_recipe(right))
    if kept:
        old = [versions.recipe_of(versions.version(left, number)) for number in kept]
        called = [say("version {number}", number=number) for number in kept]
        return Another(old[0], called[0]) if len(old) == 1 else Pair(old[0], old[1], (called[0], called[1]))
    if lane:
        return Lanes(lane[0] if len(lane) == 2 else None, lane[-1])
    return Middle(style_asked(first, style))
