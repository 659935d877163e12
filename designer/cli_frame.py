"""What the command line says around our own texts ("Usage", what is missing), in the language spoken.

Typer says these in English: each is known by its form and told in our words. Where Typer changes a form it is passed on
as it is, so nothing is lost but its translation.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator, Mapping
from functools import cache
from typing import Any, Final

from designer.language import fill, mark, say, word

FRAMES: Final[Mapping[str, str]] = {
    "Arguments": mark("Arguments", "help"),
    "Options": mark("Options", "help"),
    "Commands": mark("Commands", "help"),
    "Show this message and exit.": mark("Show this help and end.", "help"),
    "[OPTIONS]": mark("[OPTIONS]", "help"),
    "COMMAND [ARGS]...": mark("COMMAND ...", "help"),
    "required": mark("needed", "help"),
    "default: {value}": mark("else {value}", "help"),
    "<path>": mark("<path>", "help"),
    "<text>": mark("<text>", "help"),
    "<int>": mark("<whole number>", "help"),
    "<int range>": mark("<whole number>", "help"),
    "<integer>": mark("<whole number>", "help"),
    "<float>": mark("<number>", "help"),
    "<float range>": mark("<number>", "help"),
    "Missing argument {name}.": mark("{name} is missing.", "help"),
    "Missing option {name}.": mark("{name} is missing.", "help"),
    "Missing command.": mark("A command is missing.", "help"),
    "No such command {name}.": mark("There is no command {name}.", "help"),
    "No such command {name}. Did you mean {near}?": mark("There is no command {name}. Did you mean {near}?", "help"),
    "No such option: {name}": mark("There is no option {name}.", "help"),
    "No such option: {name} (Possible options: {near})": mark(
        "There is no option {name}. Did you mean {near}?", "help"
    ),
    "No such option: {name} Did you mean {near}?": mark("There is no option {name}. Did you mean {near}?", "help"),
    "Option {name} requires an argument.": mark("{name} takes a value after it.", "help"),
    "Option {name} does not take a value.": mark("{name} takes no value.", "help"),
    "Got unexpected extra argument(s) ({name})": mark("This is one too many: {name}.", "help"),
    "Got unexpected extra argument ({name})": mark("This is one too many: {name}.", "help"),
    "Invalid value for {name}: {said}": mark("{name}: {said}", "help"),
    "Invalid value: {said}": mark("{said}", "help"),
    "Value error, {said}": mark("{said}", "help"),
    "{value} is not one of {near}.": mark("{value} is not one of {near}.", "help"),
    "Input should be a valid integer, unable to parse string as an integer": mark("it takes a whole number.", "help"),
    "{value} is not a valid int.": mark("it takes a whole number.", "help"),
    "{value} is not a valid integer.": mark("it takes a whole number.", "help"),
    "Input should be a valid number, unable to parse string as a number": mark("it takes a number.", "help"),
    "{value} is not a valid float.": mark("it takes a number.", "help"),
    "Input should be less than or equal to {value}": mark("at most {value}.", "help"),
    "Input should be greater than or equal to {value}": mark("at least {value}.", "help"),
    "{low}<=x<={high}": mark("{low} to {high}", "help"),
    "{value} is not in the range {range}.": mark("{value} is not within {range}.", "help"),
}
"""What Typer says -> what we say. What holds another sentence (`said`) is tried first, then the longer form."""


@cache
def _forms() -> tuple[tuple[re.Pattern[str], str], ...]:
    found = sorted(FRAMES.items(), key=lambda pair: ("{said}" not in pair[0], -len(re.sub(r"\{\w+\}", "", pair[0]))))
    return tuple((re.compile(_pattern(form), re.DOTALL), ours) for form, ours in found)


def _pattern(form: str) -> str:
    return re.sub(r"\\\{(\w+)\\\}", r"(?P<\1>.+?)", re.escape(form))


def told(text: str) -> str:
    """One of the texts of Typer in our words and the language spoken; any other as it is."""
    for form, ours in _forms():
        found = form.fullmatch(text)
        if found is not None:
            fields = found.groupdict()
            if "said" in fields:
                fields["said"] = told(fields["said"])
            return fill(ours, "help", **fields) if fields else word(ours, "help")
    return text


def _told_within(text: str) -> str:
    """The marks for kinds of value and for options within a line of usage or of help."""
    return re.sub(r"<[a-z ]+>|\[OPTIONS\]|COMMAND \[ARGS\]\.\.\.", lambda found: told(found[0]), text)


def _told_extras(text: str) -> str:
    """A text of help whose last part, in brackets, says what is needed or taken else."""
    plain, bracket, extras = text.rpartition("[")
    if not bracket or not extras.endswith("]"):
        return told(text)
    return f"{plain}[{'; '.join(told(one) for one in extras[:-1].split('; '))}]"


def framed(command: Any) -> Any:
    """The command, and those under it, with a help that is told by us."""
    base = command.context_class
    shown = base.formatter_class

    def write_usage(self: Any, prog: str, args: str = "", prefix: str | None = None) -> None:
        shown.write_usage(self, prog, _told_within(args), say("Usage: ") if prefix is None else prefix)

    def write_heading(self: Any, heading: str) -> None:
        shown.write_heading(self, told(heading))

    def write_dl(self: Any, rows: Any, *args: Any, **more: Any) -> None:
        shown.write_dl(self, [(_told_within(left), _told_extras(right)) for left, right in rows], *args, **more)

    form = type("Form", (shown,), {"write_usage": write_usage, "write_heading": write_heading, "write_dl": write_dl})
    context = type("Context", (base,), {"formatter_class": form})
    for one in _every(command):
        one.context_class = context
    return command


def _every(command: Any) -> Iterator[Any]:
    yield command
    for under in getattr(command, "commands", {}).values():
        yield from _every(under)


def misused(error: Exception) -> bool:
    """True for what Typer raises where the command line itself is wrong."""
    return hasattr(error, "format_message") and hasattr(error, "exit_code")


def say_misused(error: Any) -> str:
    """How it is meant to be used, on standard error; the sentence about what is wrong."""
    context = getattr(error, "ctx", None)
    if context is not None:
        print(context.get_usage(), file=sys.stderr)
        print(say("“{command} --help” tells more.", command=context.command_path) + "\n", file=sys.stderr)
    return told(error.format_message())
