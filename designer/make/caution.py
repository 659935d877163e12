"""A caution, and the table it is worded from: limits and sentences of safety.toml with their sources."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

from designer.language import fill

LEVELS = ("stop", "watch", "note")


@dataclass(frozen=True, slots=True)
class Caution:
    """A caution of the make. `level`: "note" | "watch" | "stop". `stage` is a stage id or ""."""

    code: str
    level: str
    text: str
    source: str
    stage: str = ""


@dataclass(frozen=True, slots=True)
class Family:
    """The acid limits of one family of makes; None where it has none of that kind. pH, % acid, hours, °C, % salt."""

    key: str
    name: str
    source: str
    have: str
    ph_6h_watch: float | None = None
    ph_6h_stop: float | None = None
    ph_mill_watch: float | None = None
    ph_mill_stop: float | None = None
    mill_stop_pct: float | None = None
    drawn_stop_pct: float | None = None
    warm_h_watch: float | None = None
    warm_h_stop: float | None = None
    ph_until: float | None = None
    cooked_from_c: float | None = None
    salted_from_pct: float | None = None

    @property
    def sourced(self) -> str:
        """Source and how we have it, as cautions print it."""
        return f"{self.source} ({self.have})"


@dataclass(frozen=True, slots=True)
class Limit:
    """A single limit with its unit and source."""

    value: float
    unit: str
    source: str
    have: str


@cache
def table() -> Mapping[str, Any]:
    """safety.toml as it stands, read once."""
    return tomllib.loads(files("designer.make").joinpath("safety.toml").read_text("utf-8"))


@cache
def family(key: str) -> Family:
    """A family by its key; KeyError if there is none."""
    return Family(key, **table()["family"][key])


@cache
def limit(key: str) -> Limit:
    """A single limit by its key; KeyError if there is none."""
    return Limit(**table()["limit"][key])


def say(row: str, stage: str = "", **figures: object) -> Caution:
    """The caution of a row of safety.toml with its figures filled in; `source` among them fills the row's source."""
    words = table()["say"][row]
    text, source = fill(words["text"], "caution", **figures), words["source"].format(**figures)
    return Caution(words["code"], words["level"], text, source, stage)


def gravest_first(found: list[Caution]) -> tuple[Caution, ...]:
    """Sorted by level, otherwise in the order found."""
    return tuple(sorted(found, key=lambda caution: LEVELS.index(caution.level)))
