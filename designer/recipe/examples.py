"""The example recipes of the made-up dairy that come with the program."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path

FIRST = "thistlecombe-cheddar"
"""What opens when no recipe is named."""


def folder() -> Path:
    """Where they stand."""
    return Path(str(files("example_recipes")))


def examples() -> list[Path]:
    """Their files, by name."""
    return sorted(folder().glob("*.toml"))


def example(name: str = FIRST) -> Path:
    """The file of one."""
    return folder() / f"{name}.toml"


def is_example(path: Path) -> bool:
    """True for a recipe that belongs to the program: it is opened as a copy without a file."""
    return any(path.resolve() == one.resolve() for one in examples())
