"""The example recipes of the made-up dairy that come with the program."""

from __future__ import annotations

import tomllib
from functools import lru_cache
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


@lru_cache(maxsize=64)
def title(path: Path) -> str:
    """What the recipe of such a file calls itself: read without the rest of it, for a menu."""
    return str(tomllib.loads(path.read_text(encoding="utf-8"))["name"])


def example(name: str = FIRST) -> Path:
    """The file of one."""
    return folder() / f"{name}.toml"


def is_example(path: Path) -> bool:
    """True for a recipe that belongs to the program: it is opened as a copy without a file."""
    return any(path.resolve() == one.resolve() for one in examples())
