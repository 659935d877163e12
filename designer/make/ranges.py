"""Rules kept as data: figures that lie in ranges, with soft ends, and how far a rule carries then.

Used by texture and by the coat advice; ranges read as in the style files ("< 4.95", "5.2 to 5.4").
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

import numpy as np

from designer.language import number, word
from styles.reader import parse_range

Ranges = Mapping[str, tuple[float | None, float | None]]
SHARP = 3.0
"""How steeply a range ends: a width inside it, 95 % of the effect is there."""


@dataclass(frozen=True, slots=True)
class Measure:
    """A figure that rules rest on; `width` softens the ends of its ranges."""

    label: str
    unit: str
    decimals: int
    width: float

    def shown(self, value: float) -> str:
        """Label, value and unit: "pH 5.16", "calcium 584 mmol per kg solids-not-fat"."""
        unit = word(self.unit, "unit")
        return f"{word(self.label, 'quantity')} {number(value, f'.{self.decimals}f')} {unit}".rstrip()


def measures(groups: Mapping[str, Mapping[str, Any]]) -> dict[str, Measure]:
    """Measures of the `figure` tables of a rule file."""
    return {key: Measure(**fields) for key, fields in groups.items()}


def ranges(when: Mapping[str, str], known: Mapping[str, Measure], place: str) -> Ranges:
    """The `when` of a rule as numbers; ValueError names the place of an unknown figure, or says what is no range."""
    unknown = when.keys() - known.keys()
    if unknown:
        raise ValueError(f"{place}: no figure is called {', '.join(sorted(unknown))}")
    return {key: parse_range(text)[:2] for key, text in when.items()}


def carries(when: Ranges, strength: float, figures: Mapping[str, Any], known: Mapping[str, Measure]) -> Any:
    """How far a rule carries, 0 to its strength; 0 where it asks for a figure that is not known. Numbers or arrays."""
    if not when.keys() <= figures.keys():
        return 0.0
    degree: Any = strength
    for key, (low, high) in when.items():
        if low is not None:
            degree = degree * _inside((figures[key] - low) / known[key].width)
        if high is not None:
            degree = degree * _inside((high - figures[key]) / known[key].width)
    return degree


def _inside(widths: Any) -> Any:
    return 1.0 / (1.0 + np.exp(-np.clip(SHARP * widths, -40.0, 40.0)))


def together(degrees: list[Any]) -> Any:
    """Rules that say the same add up without passing 1."""
    left: Any = 1.0
    for degree in degrees:
        left = left * (1.0 - degree)
    return 1.0 - left
