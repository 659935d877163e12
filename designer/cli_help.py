"""The help of the command line in the language spoken: Typer has read it in English before any language is chosen."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from designer.language import word

CONTEXT = "help"


def texts(command: Any) -> Iterator[str]:
    """Every text of help of a command and of those under it."""
    yield command.help or ""
    yield from (one.help or "" for one in command.params if hasattr(one, "help"))
    yield from (one.metavar or "" for one in command.params)
    for under in getattr(command, "commands", {}).values():
        yield from texts(under)


def tell(command: Any) -> Any:
    """The command with its help in the language spoken."""
    command.help = word(command.help or "", CONTEXT) or None
    for one in command.params:
        if getattr(one, "help", None):
            one.help = word(one.help, CONTEXT)
        if one.metavar:
            one.metavar = word(one.metavar, CONTEXT)
    for under in getattr(command, "commands", {}).values():
        tell(under)
    return command


def language_of(given: Sequence[str]) -> str:
    """The language asked for among arguments, before they are read; English where none is."""
    for place, one in enumerate(given):
        if one == "--language" and place + 1 < len(given):
            return given[place + 1]
        if one.startswith("--language="):
            return one.partition("=")[2]
    return "en"
