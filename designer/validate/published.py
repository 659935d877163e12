"""Published check data: figures from outside, each with its source, and the law of ours that must reproduce it.

The data are TOML tables in `data/`, so that a maker can read them; the report and the tests both come here.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

from designer.validate.laws import law

CLASSES = ("printed", "measured", "joined", "derived")
"""printed: a figure printed in the source; measured/joined: of a make; derived: arithmetic on printed figures."""

_KEYS = frozenset(
    ("case", "law", "quantity", "unit", "class", "source", "have", "tolerance", "given", "columns", "rows", "note")
)


@dataclass(frozen=True, slots=True)
class Published:
    """One outside figure. `label` sets it apart under its title; `given` are the law's arguments.

    |ours - value| must stay within `tolerance`.
    """

    title: str
    label: str
    law: str
    quantity: str
    unit: str
    kind: str
    given: Mapping[str, float]
    value: float
    tolerance: float
    source: str
    have: str
    note: str = ""

    @property
    def case(self) -> str:
        """Title and what sets this figure apart from the others under it."""
        return f"{self.title}: {self.label}" if self.label else self.title


@dataclass(frozen=True, slots=True)
class Compared:
    """A published figure beside ours; `error` is ours less theirs, in the unit of the figure."""

    published: Published
    ours: float

    @property
    def error(self) -> float:
        """Ours less the published value."""
        return self.ours - self.published.value

    @property
    def within(self) -> bool:
        """True where the difference stays within the tolerance stated beside the figure."""
        return abs(self.error) <= self.published.tolerance + 1e-12


def compare(row: Published) -> Compared:
    """The law worked out for one published row."""
    return Compared(row, float(law(row.law)(**row.given)))


def report() -> tuple[Compared, ...]:
    """Every published row beside ours, in the order of the files."""
    return tuple(compare(row) for row in published())


@cache
def published() -> tuple[Published, ...]:
    """All rows of `data/`; ValueError names the file and the place of a row that is not complete."""
    folder = files("designer.validate").joinpath("data")
    texts = sorted((entry.name, entry.read_text("utf-8")) for entry in folder.iterdir() if entry.name.endswith(".toml"))
    return tuple(row for name, text in texts for row in reads(text, name))


def reads(text: str, name: str) -> Iterator[Published]:
    """Rows of one data file: groups that share law, source and tolerance, with a table of rows under named columns."""
    for group in tomllib.loads(text).get("group", []):
        place = f"{name}, “{group.get('case', '?')}”"
        unknown = group.keys() - _KEYS
        missing = {"case", "law", "quantity", "class", "source", "have", "tolerance", "columns", "rows"} - group.keys()
        if unknown or missing:
            raise ValueError(f"{place}: unknown {sorted(unknown)}, missing {sorted(missing)}")
        if group["class"] not in CLASSES:
            raise ValueError(f"{place}: class “{group['class']}” is none of {', '.join(CLASSES)}")
        for values in group["rows"]:
            if len(values) != len(group["columns"]):
                raise ValueError(f"{place}: row {values} does not fit the columns {group['columns']}")
            yield _row(group, dict(zip(group["columns"], values, strict=True)))


def _row(group: Mapping[str, Any], cells: dict[str, Any]) -> Published:
    value = cells.pop("published")
    label = cells.pop("case", "") or ", ".join(f"{key} {cell:g}" for key, cell in cells.items())
    return Published(
        title=group["case"],
        label=label,
        law=group["law"],
        quantity=group["quantity"],
        unit=group.get("unit", ""),
        kind=group["class"],
        given={**group.get("given", {}), **cells},
        value=float(value),
        tolerance=float(group["tolerance"]),
        source=group["source"],
        have=group["have"],
        note=group.get("note", ""),
    )
