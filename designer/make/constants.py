"""The constants table as one structured record, so that code names a row and never a number."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.language import number, say, word

CONTEXT = "constant"
SOURCE_CONTEXT = "source"
HOW_WE_HAVE_IT = ("published", "derived", "common practice", "engineering default", "calibrated")


@dataclass(frozen=True, slots=True)
class Constant:
    """One row of constants.toml; `value` is a number or a tuple of numbers in `unit`.

    `name` is what the laws call it, `words` what a maker would.
    """

    name: str
    words: str
    value: float | tuple[float, ...]
    unit: str
    source: str
    have: str
    low: float | None = None
    high: float | None = None
    note: str = ""

    @property
    def label(self) -> str:
        """What a maker would call it, in the language spoken."""
        return word(self.words, CONTEXT)

    @property
    def told_source(self) -> str:
        """Where it is from: a citation as it is printed, what we say of it in the language spoken."""
        return word(self.source, SOURCE_CONTEXT)

    @property
    def unit_words(self) -> str:
        """Its unit in the language spoken; nothing for a plain number."""
        return "" if self.unit == "1" else word(self.unit, "unit")

    @property
    def shown(self) -> str:
        """Its value or values, with the unit."""
        values = self.value if isinstance(self.value, tuple) else (self.value,)
        return f"{', '.join(number(one) for one in values)} {self.unit_words}".rstrip()

    @property
    def shown_with_range(self) -> str:
        """The same, with the range it may honestly have."""
        if self.low is None or self.high is None:
            return self.shown
        return self.shown + say(" (may lie from {low} to {high})", low=number(self.low), high=number(self.high))


def read(text: str) -> dict[str, Constant]:
    """Rows of a constants table. Raises ValueError naming the row that is incomplete or has an unknown key."""
    out = {}
    for name, raw in tomllib.loads(text).items():
        fields = dict(raw)
        value = fields.pop("value")
        fields["value"] = tuple(value) if isinstance(value, list) else float(value)
        try:
            row = Constant(name, **fields)
        except TypeError as fault:
            raise ValueError(f"constant {name!r}: {fault}") from None
        if not row.have.startswith(HOW_WE_HAVE_IT + ("from memory (",)):
            raise ValueError(f"constant {name!r}: how we have it reads {row.have!r}")
        out[name] = row
    return out


@cache
def table() -> dict[str, Constant]:
    """The shipped table, read once."""
    return read(files("designer.make").joinpath("constants.toml").read_text("utf-8"))


def listed(name: str) -> NDArray[np.float64]:
    """A row that holds several numbers (buffer groups), shape (n,)."""
    return np.asarray(table()[name].value, dtype=float)


@cache
def record_dtype() -> np.dtype[Any]:
    """dtype of the record: one float a scalar row, in the order of the table."""
    return np.dtype([(row.name, "f8") for row in table().values() if isinstance(row.value, float)])


def record(members: int = 1) -> NDArray[Any]:
    """`members` copies of the shipped constants, shape (members,), dtype `record_dtype()`; free to change."""
    return np.array([_values()] * members, dtype=record_dtype())


@cache
def _values() -> tuple[float, ...]:
    return tuple(row.value for row in table().values() if isinstance(row.value, float))
