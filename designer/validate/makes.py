"""Published makes: each a recipe in `makes/` and a table in `figures/` of what was published of it.

A recipe there is the make as its source prints it; what the source leaves out is filled and listed as missing. The
figures keep the words of the source apart from ours: class, source, how we have it, and the weight lost since.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

from designer.recipe.document import Recipe
from designer.recipe.file import reads as reads_recipe

CLASSES = ("measured", "procedure", "joined")
"""measured: milk or course, and outcome, of the same makes; procedure: printed by the source as what its procedure
gives; joined: make from one source, figure from another."""

STAGE_QUANTITIES = ("ph", "ph_whey", "curd_moisture_pct")
"""Quantities read at a moment of the make; all others are of the cheese as it enters its room."""

_MAKE_KEYS = {"id", "family", "source", "have", "missing", "figures"}
_FIGURE_KEYS = {"quantity", "at", "after_min", "minute", "value", "closes", "class", "loss", "source", "have", "note"}


@dataclass(frozen=True, slots=True)
class Figure:
    """One published figure of a make, in the unit of its quantity; `low` and `high` differ where a range is printed.

    It stands `after_min` after the end of stage `at`, or at a `minute` from the milk; without either it is the
    finished cheese's. `loss_pct` is the weight lost as water between the forecast's end and the analysis. `closes` is
    what mass balance leaves open of it, where not all of a printed range can hold (see `validate.closing`).
    """

    make: str
    quantity: str
    low: float
    high: float
    kind: str
    source: str
    have: str
    at: str = ""
    after_min: float = 0.0
    minute: float | None = None
    loss_pct: float = 0.0
    note: str = ""
    closes: tuple[float, float] | None = None

    @property
    def value(self) -> float:
        """The figure, or the middle of the range printed, so far as it closes."""
        low, high = self.low, self.high
        if self.closes is not None:
            low, high = max(low, self.closes[0]), min(high, self.closes[1])
        return 0.5 * (low + high)

    @property
    def place(self) -> str:
        """Where it stands, in a few words."""
        if self.minute is not None:
            return f"at {self.minute / 60.0:g} h"
        if self.at:
            return f"{self.at} + {self.after_min:g} min" if self.after_min else f"end of {self.at}"
        return f"after {self.loss_pct:g} % loss" if self.loss_pct else "cheese"

    @property
    def printed(self) -> str:
        """The figure as the source prints it."""
        if self.low == self.high:
            return f"{self.low:g}"
        return f"{self.low:g} to {self.high:g}" if self.low < 0.0 else f"{self.low:g}-{self.high:g}"


@dataclass(frozen=True, slots=True)
class Make:
    """One published make: the recipe, the family whose makes are left out together, and its figures."""

    id: str
    family: str
    source: str
    have: str
    missing: tuple[str, ...]
    recipe: Recipe
    figures: tuple[Figure, ...]


@cache
def makes() -> tuple[Make, ...]:
    """All published makes, in the order of the tables.

    ValueError names the table and the make of an entry that is not complete; RecipeError a recipe that can't be read.
    """
    here = files("designer.validate")
    tables = sorted((entry.name, entry.read_text("utf-8")) for entry in here.joinpath("figures").iterdir())
    return tuple(
        _make(entry, name, reads_recipe(here.joinpath("makes", f"{entry['id']}.toml").read_text("utf-8")))
        for name, text in tables
        for entry in entries(text, name)
    )


def entries(text: str, name: str) -> Iterator[Mapping[str, Any]]:
    """The makes of one table as plain data, checked for keys; ValueError names the table and the make."""
    for entry in tomllib.loads(text).get("make", []):
        place = f"{name}, “{entry.get('id', '?')}”"
        _whole(place, entry, _MAKE_KEYS, _MAKE_KEYS)
        for figure in entry["figures"]:
            _whole(place, figure, _FIGURE_KEYS, {"quantity", "value", "class"})
            if figure["class"] not in CLASSES:
                raise ValueError(f"{place}: class “{figure['class']}” is none of {', '.join(CLASSES)}")
            if figure["quantity"] in STAGE_QUANTITIES and not ({"at", "minute"} & figure.keys()):
                raise ValueError(f"{place}: {figure['quantity']} needs the stage or the minute it stands at")
        yield entry


def _whole(place: str, entry: Mapping[str, Any], known: set[str], needed: set[str]) -> None:
    unknown, missing = entry.keys() - known, needed - entry.keys()
    if unknown or missing:
        raise ValueError(f"{place}: unknown {sorted(unknown)}, missing {sorted(missing)}")


def _make(entry: Mapping[str, Any], table: str, recipe: Recipe) -> Make:
    stages = {stage.id for stage in recipe.stages}
    for figure in entry["figures"]:
        if figure.get("at", "") and figure["at"] not in stages:
            raise ValueError(f"{table}, “{entry['id']}”: the recipe has no stage “{figure['at']}”")
    return Make(
        entry["id"], entry["family"], entry["source"], entry["have"], tuple(entry["missing"]), recipe,
        tuple(read_figure(entry, figure) for figure in entry["figures"]),
    )  # fmt: skip


def read_figure(entry: Mapping[str, Any], figure: Mapping[str, Any]) -> Figure:
    """One row of `figures` of a make as plain data. ValueError where nothing of a printed range closes."""
    value = figure["value"]
    low, high = value if isinstance(value, list) else (value, value)
    closes = figure.get("closes")
    if closes is not None and (closes[0] > high or closes[1] < low):
        raise ValueError(f"{entry['id']}: no part of the printed {figure['quantity']} closes")
    return Figure(
        make=entry["id"],
        quantity=figure["quantity"],
        low=float(low),
        high=float(high),
        kind=figure["class"],
        source=figure.get("source", entry["source"]),
        have=figure.get("have", entry["have"]),
        at=figure.get("at", ""),
        after_min=float(figure.get("after_min", 0.0)),
        minute=float(figure["minute"]) if "minute" in figure else None,
        loss_pct=float(figure.get("loss", 0.0)),
        note=figure.get("note", ""),
        closes=None if closes is None else (float(closes[0]), float(closes[1])),
    )
