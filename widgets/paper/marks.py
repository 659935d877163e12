"""What a page is made of once it is laid out: words, strokes and shapes at places in mm from the leaf's corner."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TypeAlias

from designer.plan.sheet import Point
from widgets.paper import ink


@dataclass(frozen=True, slots=True)
class Words:
    """One line of words; (`x`, `y`) is the start of its baseline, `upright` turns it a quarter left about there."""

    text: str
    x: float
    y: float
    size_pt: float
    bold: bool = False
    upright: bool = False

    @property
    def width(self) -> float:
        """Set width [mm]."""
        return ink.width_mm(self.text, self.size_pt, self.bold)


@dataclass(frozen=True, slots=True)
class Stroke:
    """A black line."""

    points: tuple[Point, ...]
    width_mm: float = 0.35
    dash: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Shape:
    """A closed black or white shape."""

    points: tuple[Point, ...]
    black: bool = False


@dataclass(frozen=True, slots=True)
class Hatch:
    """A closed shape filled with slanting lines."""

    points: tuple[Point, ...]
    gap_mm: float


@dataclass(frozen=True, slots=True)
class Room:
    """A place kept free for the pen; nothing is painted, it is there to be found (and tested)."""

    x: float
    y: float
    width: float
    height: float


Mark: TypeAlias = Words | Stroke | Shape | Hatch | Room

TICK_MM = 3.6


@dataclass(slots=True)
class Page:
    """One page being filled."""

    marks: list[Mark] = field(default_factory=list)

    def words(self, text: str, x: float, top: float, size_pt: float, bold: bool = False) -> None:
        """Words with the top of their line at `top`."""
        if text:
            self.marks.append(Words(text, x, top + ink.ascent_mm(size_pt), size_pt, bold))

    def line(self, x1: float, y1: float, x2: float, y2: float, width_mm: float = 0.35) -> None:
        """A straight line."""
        self.marks.append(Stroke(((x1, y1), (x2, y2)), width_mm))

    def box(self, x: float, y: float, width: float, height: float, line_mm: float = 0.35) -> None:
        """An empty frame."""
        corners = ((x, y), (x + width, y), (x + width, y + height), (x, y + height), (x, y))
        self.marks.append(Stroke(corners, line_mm))

    def tick(self, x: float, top: float, size_pt: float, side_mm: float = TICK_MM) -> None:
        """A box to tick, standing on the baseline of a line of words whose top is at `top`."""
        self.box(x, top + ink.ascent_mm(size_pt) - side_mm + 0.3, side_mm, side_mm, 0.4)

    def room(self, x: float, y: float, width: float, height: float) -> None:
        """Keep a place for the pen."""
        self.marks.append(Room(x, y, width, height))
