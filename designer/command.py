"""What the commands share: how they are asked, reading and forecasting a recipe, and writing pages as a PDF."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from designer.bootstrap import QT_PACKAGES
from designer.language import say, several

if TYPE_CHECKING:
    from designer.forecast import Forecast
    from designer.plan.make_plan import Print
    from designer.plan.sheet import Sheet
    from designer.recipe.document import Recipe
    from styles.reader import Style

MEMBERS = 128
"""Draws behind the ranges."""
Recipe_ = Annotated[Path, typer.Argument(metavar="RECIPE", help="Recipe file (TOML).", show_default=False)]
Json = Annotated[bool, typer.Option("--json", help="Print JSON for a machine.")]
Members = Annotated[int, typer.Option(min=0, max=2000, help="Draws behind the ranges; 0 leaves them out.")]
Units = Annotated[Literal["metric", "us", "imperial"], typer.Option(help="Units of measure.")]
Start = Annotated[str, typer.Option(metavar="HH:MM", help="Milk in the vat at; else as the recipe says.")]
StyleKey = Annotated[str, typer.Option("--style", metavar="KEY", help="Style; else the one the recipe names.")]
Pdf = Annotated[Path | None, typer.Option("--out", "-o", metavar="PDF", help="Where to; else beside you.")]
PaperSize = Annotated[Literal["a4", "letter"], typer.Option(help="Paper size.")]


class CommandError(Exception):
    """Something the command can't do: a sentence for the maker."""


def qt_missing(why: ImportError) -> str:
    """The sentence where Qt can't be loaded."""
    return say(
        "The plan is drawn with Qt, and Qt's libraries are not all there ({why}). "
        "On Debian: apt-get install {packages}",
        why=why,
        packages=" ".join(QT_PACKAGES),
    )


def model_version() -> str:
    """Version of the program and short hash of the model, so that a sheet and a record tell which model spoke."""
    from designer.make.kernel import source_key

    return f"{program_version()}-{source_key()[:8]}"


def program_version() -> str:
    """The version of the program."""
    try:
        return version("curdwright")
    except PackageNotFoundError:
        return "unpacked"


def read_recipe(path: Path, start: str = "") -> Recipe:
    """The recipe of a file, at a start clock where one is said; house styles beside it become known."""
    from designer.recipe.edit import edit_recipe
    from designer.recipe.file import read
    from designer.units import parse
    from styles.reader import adopt

    recipe = read(path)
    adopt(path.resolve().parent)
    return edit_recipe(recipe, start_clock_min=parse(start, "clock").value) if start else recipe


def forecast_of(recipe: Recipe, members: int) -> Forecast:
    """The forecast of a recipe; the first one ever prepares the model."""
    from platformdirs import user_cache_path

    from designer.forecast import forecast as run
    from designer.make import kernel

    if not kernel.is_warm():
        if not (user_cache_path("curdwright") / f"march-{kernel.source_key()}").exists():
            print(say("Preparing the model, once ..."), file=sys.stderr)
        kernel.warm_up()
    return run(recipe, members=members)


def style_asked(recipe: Recipe, key: str) -> Style:
    """The style by its key, shipped or beside the recipe, or by the path of its file; else the recipe's own."""
    from styles.reader import house_keys, keys, read, style

    if not (key or recipe.style):
        known = ", ".join((*house_keys(), *keys()))
        raise CommandError(say("The recipe names no style; add --style with one of: {known}.", known=known))
    if key.endswith(".toml"):
        return read(Path(key))
    return style(key or recipe.style)


def printed(
    sheet: Callable[[Print], Sheet], path: Path, paper: str, units: Literal["metric", "us", "imperial"], date: str = ""
) -> str:
    """Write a sheet as a PDF; what was written where, as a sentence."""
    from designer.plan.make_plan import Print
    from designer.plan.sheet import PAPERS

    pages = write_pdf(sheet(Print(PAPERS[paper], units, model_version(), date)), path)
    return several(pages, "1 page written to {path}", "{count} pages written to {path}", path=path.resolve())


def write_pdf(sheet: Sheet, path: Path) -> int:
    """The sheet as a PDF by way of Qt, without a display; the number of pages."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    try:
        from widgets.paper.command import write_plan
    except ImportError as error:
        raise CommandError(qt_missing(error)) from error
    try:
        return int(write_plan(sheet, path))
    except OSError as error:
        raise CommandError(say("The plan could not be written to {path}: {error}.", path=path, error=error)) from error


def pdf_name(path: Path) -> Path:
    """The path, if it is a PDF's: nobody should lose a recipe to a slip of the keyboard."""
    if path.suffix.lower() != ".pdf":
        raise CommandError(say("The plan is a PDF; give it a name that ends in .pdf, not “{name}”.", name=path.name))
    return path
