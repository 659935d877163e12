"""The command line: `curdwright open | forecast | check | moves | aim | compare | plan | scale | tour | validate |
schema`.

`batches` lists what was made. To teach: `lesson | vats | explain`. Everything but `open`, `tour` and what writes a PDF
works without Qt. Exit code 0: done; 1: does not meet; 2: can't be read or written; 3: a fault of our own. Whatever
goes wrong is a sentence on standard error, never a traceback.
"""

from __future__ import annotations

import gc
import os
import sys
import traceback
from collections.abc import Sequence
from pathlib import Path
from typing import Annotated

import typer
from typer.main import get_command

from designer.cli_batch import batches
from designer.cli_compare import compare
from designer.cli_frame import framed, misused, say_misused
from designer.cli_help import language_of, tell
from designer.cli_moves import moves
from designer.cli_scale import scale
from designer.cli_teach import explain, lesson, vats
from designer.command import (
    MEMBERS,
    CommandError,
    Json,
    Members,
    PaperSize,
    Pdf,
    Recipe_,
    Start,
    StyleKey,
    Units,
    forecast_of,
    model_version,
    pdf_name,
    printed,
    program_version,
    qt_missing,
    read_recipe,
    style_asked,
    write_pdf,
)
from designer.language import LanguageError, say, several, speak, spoken
from designer.language import read as read_language
from designer.tour import tour
from designer.units import UnitError
from styles.reader import StyleError

DONE, DOES_NOT_MEET, CANNOT_READ, FAULT = 0, 1, 2, 3
VALIDATE_MEMBERS = 32
NO_SCREEN = frozenset(("offscreen", "minimal", "minimalegl"))


app = typer.Typer(
    name="curdwright",
    help="Design a cheese make: forecast a recipe, hold it against its style, print its plan.",
    add_completion=False,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; the exit code. Without arguments it opens the window on its start page."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a console without "≥" prints "?", and goes on
    given = list(sys.argv[1:] if argv is None else argv)
    if len(given) == 1 and given[0].endswith(".toml"):
        given.insert(0, "open")
    before = spoken()
    try:
        return _run(given)
    finally:
        speak(before)


def _run(given: list[str]) -> int:
    try:
        speak(read_language(language_of(given)))
        code = framed(tell(get_command(app)))(given, prog_name="curdwright", standalone_mode=False)
    except SystemExit as end:
        return end.code if isinstance(end.code, int) else DONE
    except typer.Abort:
        return CANNOT_READ
    except (CommandError, LanguageError, StyleError, UnitError) as error:
        return _said(str(error), CANNOT_READ)
    except Exception as error:  # noqa: BLE001 - the last door: whatever comes through becomes a sentence
        from designer.batch.record import BatchError
        from designer.recipe.error import RecipeError

        if isinstance(error, RecipeError | BatchError):
            return _said(str(error), CANNOT_READ)
        if misused(error):
            return _said(say_misused(error), CANNOT_READ)
        return _said(_fault(error), FAULT)
    return code if isinstance(code, int) else DONE


def _said(sentence: str, code: int) -> int:
    print(f"curdwright: {sentence}", file=sys.stderr)
    return code


def _fault(error: Exception) -> str:
    """The sentence for a fault of our own; what a programmer needs is kept in a file."""
    from platformdirs import user_log_path

    kept = user_log_path("curdwright", ensure_exists=True) / "fault.txt"
    kept.write_text("".join(traceback.format_exception(error)), encoding="utf-8")
    return say(
        "Something in Curdwright itself is wrong ({name}). Please report it with the file {kept}.",
        name=type(error).__name__,
        kept=kept,
    )


@app.callback(invoke_without_command=True)
def _begin(
    context: typer.Context,
    tell_version: Annotated[bool, typer.Option("--version", help="Print the version and end.")] = False,
    language: Annotated[str, typer.Option(metavar="KEY", help="Language of what is said: en or fr.")] = "en",
) -> None:
    speak(read_language(language))
    if tell_version:
        print(f"Curdwright {program_version()}")
        raise typer.Exit(DONE)
    if context.invoked_subcommand is None:
        _open(None)


@app.command("open")
def open_(
    recipe: Annotated[Path | None, typer.Argument(metavar="[RECIPE]", help="Recipe file; else the start page.")] = None,
) -> None:
    """Open the window on a recipe; without a display: forecast it, check it and write its plan."""
    _open(recipe)


@app.command()
def forecast(
    recipe: Recipe_,
    as_json: Json = False,
    members: Members = MEMBERS,
    units: Units = "metric",
    start: Start = "",
) -> None:
    """Forecast a recipe: when each stage ends, what the curves do, what cheese comes of it."""
    made = forecast_of(read_recipe(recipe, start), members)
    if as_json:
        from designer.plan.as_json import dumps, forecast_json

        print(dumps(forecast_json(made)))
        return
    from designer.plan import tables

    tables.print_forecast(made, units)


@app.command()
def check(
    recipe: Recipe_,
    style: StyleKey = "",
    rules: Annotated[list[str] | None, typer.Option(metavar="KEY", help="Judge by these rule sets only.")] = None,
    as_json: Json = False,
    members: Members = MEMBERS,
) -> None:
    """Hold the forecast against a style; exit code 1 where it does not meet a limit."""
    from designer.judge.check import check as judge
    from designer.judge.verdict import NOT_MET

    read = read_recipe(recipe)
    verdict = judge(forecast_of(read, members), style_asked(read, style), rules=rules or None)
    if as_json:
        from designer.plan.as_json import dumps, verdict_json

        print(dumps(verdict_json(verdict)))
    else:
        from designer.plan import tables

        tables.print_verdict(verdict)
    if verdict.state == NOT_MET:
        raise typer.Exit(DOES_NOT_MEET)


@app.command()
def plan(
    recipe: Recipe_,
    out: Pdf = None,
    paper: PaperSize = "a4",
    units: Units = "metric",
    start: Start = "",
    date: Annotated[str, typer.Option(help="Date of the make, printed in the head.")] = "",
    style: StyleKey = "",
    members: Members = MEMBERS,
) -> None:
    """Write the plan of the make as a PDF: weigh-out, stages with clock and targets, the curve, cautions."""
    from designer.plan.make_plan import make_plan

    path = pdf_name(out if out is not None else Path(f"{recipe.stem}-plan.pdf"))
    read = read_recipe(recipe, start)
    one = style_asked(read, style) if style or read.style else None
    made = forecast_of(read, members)
    print(printed(lambda want: make_plan(made, one, want), path, paper, units, date))


for command in (moves, compare, batches, lesson, vats, explain, scale):
    app.command()(command)


@app.command()
def aim(
    recipe: Recipe_,
    want: Annotated[
        list[str] | None, typer.Option(metavar="WANTED", help="As “moisture=38”, “ph_24h=5.1..5.2”, “finish<=12 h”.")
    ] = None,
    lock: Annotated[
        list[str] | None, typer.Option(metavar="ID", help="What must stay: a stage, a dose, or ID.FIELD.")
    ] = None,
    branch: Annotated[str, typer.Option(metavar="ID", help="The branch whose outcomes are wanted.")] = "",
    meet: Annotated[bool, typer.Option("--meet", help="Bring it inside the limits and ranges of its style.")] = False,
    first: Annotated[str, typer.Option(metavar="STYLE", help="A first recipe for its milk in another style.")] = "",
    style: StyleKey = "",
    out: Annotated[Path | None, typer.Option("--out", "-o", metavar="FILE", help="Write the new recipe here.")] = None,
    units: Units = "metric",
    as_json: Json = False,
) -> None:
    """The smallest natural change that brings outcomes where they are wanted; exit code 1 where it can't be reached."""
    from designer.judge.aim import Aimed, AimError
    from designer.judge.aim import aim as aim_at
    from designer.judge.first_recipe import first_recipe
    from designer.judge.meet import Met
    from designer.judge.meet import meet as meet_style
    from designer.make import kernel
    from designer.plan import aimed
    from designer.plan.as_json import dumps
    from designer.recipe.file import read_text, write

    if sum((bool(want), meet, bool(first))) != 1:
        raise CommandError(say("Say what is wanted in one way: --want, --meet or --first."))
    if out is not None and out.exists():
        raise CommandError(say("{out} is there already; name a new file for the recipe.", out=out))
    read = read_recipe(recipe)
    found: Aimed | Met
    try:
        lane = aimed.branch(read, branch)
        if lane is not None and not want:
            raise CommandError(say("Of a branch only outcomes can be wanted: --branch goes with --want."))
        locks = [aimed.lock(read, text, lane) for text in lock or ()]
        wants = [aimed.wanted(text) for text in want or ()]
        kernel.warm_up()
        if first:
            found = first_recipe(read.milks, first)
        elif meet:
            found = meet_style(read, style_asked(read, style), locks=locks)
        else:
            found = aim_at(read, wants, branch=lane, locks=locks, style=style or None)
    except AimError as error:
        raise CommandError(str(error)) from None
    if isinstance(found, Met):
        print(dumps(aimed.met_json(found))) if as_json else aimed.print_met(found, units)
    else:
        keys = [one.key for one in wants]
        print(dumps(aimed.aimed_json(found))) if as_json else aimed.print_aimed(found, units, keys)
    if out is not None:
        write(found.recipe, out, None if first else read_text(recipe))
        print("\n" + say("Written to {path}", path=out.resolve()), file=sys.stderr)
    if not found.reached:
        raise typer.Exit(DOES_NOT_MEET)


@app.command()
def validate(
    summary: Annotated[
        bool, typer.Option("--summary", help="Only mean errors, bands and effects of the makes.")
    ] = False,
    as_json: Json = False,
) -> None:
    """Published figures beside ours: laws, then whole makes. Exit code 1 where a law misses its tolerance."""
    from designer.make import kernel
    from designer.plan import made
    from designer.plan.as_json import compared_json, dumps
    from designer.validate import report
    from designer.validate.effects import effects
    from designer.validate.published import report as laws

    kernel.warm_up()
    compared = laws()
    rows = report.rows(VALIDATE_MEMBERS)
    means, covered = report.means(rows), report.coverage(rows)
    if as_json and summary:
        print(dumps(made.summary_json(means, covered, effects())))
    elif as_json:
        print(dumps(compared_json(compared) + [made.row_json(row) for row in rows]))
    else:
        from designer.plan import validated

        if not summary:
            validated.print_laws(compared)
            validated.print_makes(rows)
        validated.print_summary(means, covered, effects())
    if not all(one.within for one in compared):
        raise typer.Exit(DOES_NOT_MEET)


app.command()(tour)


@app.command()
def schema() -> None:
    """Print the JSON Schema of a recipe file, for editors."""
    from designer.plan.as_json import dumps
    from designer.recipe.describing import json_schema

    print(dumps(json_schema()))


def _open(path: Path | None) -> None:
    from designer.bootstrap import has_display, prepare_display
    from designer.recipe.examples import example

    platform = os.environ.get("QT_QPA_PLATFORM", "").partition(":")[0]
    recipe = path if path is not None else example()
    if (has_display() or platform) and platform not in NO_SCREEN:
        read_recipe(recipe)  # a file that can't be read is said here, before a window comes up empty
        prepare_display()
        gc.disable()  # nothing becomes garbage while the window is put together; it looks for it again afterwards
        try:
            from widgets.launch import open_window
        except ImportError as error:
            if error.name and not error.name.startswith("PySide6"):
                raise
            print(say("No window: {why}", why=qt_missing(error)), file=sys.stderr)
        else:
            raise typer.Exit(open_window(path))
    _without_a_window(recipe)


def _without_a_window(path: Path) -> None:
    """What can be done without a display: forecast, check, and the plan as a PDF in the user's documents."""
    from platformdirs import user_documents_path

    from designer.plan import tables
    from designer.plan.make_plan import Print, make_plan

    recipe = read_recipe(path)
    made = forecast_of(recipe, MEMBERS)
    print(say("There is no display here, so this is the forecast, the check and the plan.") + "\n")
    tables.print_forecast(made, "metric")
    style = style_asked(recipe, "") if recipe.style else None
    if style is not None:
        from designer.judge.check import check as judge

        print()
        tables.print_verdict(judge(made, style))
    target = user_documents_path() / "Curdwright" / f"{path.stem}-plan.pdf"
    try:
        target.parent.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise CommandError(
            say("The plan could not be written to {target}: {error}.", target=target, error=error)
        ) from error
    pages = write_pdf(make_plan(made, style, Print(model=model_version())), target)
    print(
        "\n"
        + several(pages, "Plan of the make: 1 page in {path}", "Plan of the make: {count} pages in {path}", path=target)
    )
