"""The command `curdwright tour`: every place and dialog of the window as pictures, for the README and to look at."""

from __future__ import annotations

import os
from pathlib import Path
from typing import Annotated

import typer

from designer.command import CommandError
from designer.language import say


def tour(
    out: Annotated[Path, typer.Argument(metavar="OUT_DIR", help="Folder for the pictures.", show_default=False)],
    recipe: Annotated[Path | None, typer.Option(metavar="RECIPE", help="Recipe shown; else an example.")] = None,
    only: Annotated[list[str] | None, typer.Option(metavar="NAME", help="Only this place or picture.")] = None,
    theme: Annotated[list[str] | None, typer.Option(metavar="THEME", help="light, dark or contrast; else all.")] = None,
    size: Annotated[list[str] | None, typer.Option(metavar="WxH", help="As “1366x768”; else two sizes.")] = None,
) -> None:
    """Make a picture of every place and dialog of the window, in each theme and in two sizes."""
    from designer.command import CommandError, qt_missing
    from designer.make import kernel
    from designer.recipe.examples import example

    sizes = [_size(text) for text in size or ()]
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    try:
        from widgets.tour.command import write_pictures
    except ImportError as error:
        raise CommandError(qt_missing(error)) from error
    kernel.warm_up()

    def shown(done: int, of: int, path: Path) -> None:
        print(f"{done:3d} of {of}  {path.name}", flush=True)

    try:
        count = write_pictures(out, recipe or example(), only=only or (), themes=theme or (), sizes=sizes, shown=shown)
    except (OSError, ValueError) as error:
        raise CommandError(say("The pictures could not be made: {error}.", error=error)) from error
    print(f"{count} pictures written to {out.resolve()}")


def _size(text: str) -> tuple[int, int]:
    """ "1366x768" as two numbers."""
    wide, _, high = text.lower().partition("x")
    if not (wide.isdigit() and high.isdigit() and 200 <= int(wide) <= 8000 and 200 <= int(high) <= 8000):
        raise CommandError(say("“{text}” is no size; write it as 1366x768, each from 200 to 8000.", text=text))
    return int(wide), int(high)
