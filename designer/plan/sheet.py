"""A Sheet: what goes on paper, told without a printer, a font or a window.

Lengths are millimetres, type sizes points, nothing is grey. Blocks say what they hold; `widgets/paper` measures the
words, breaks pages between rows and draws. The rules of the form (blanks at least 9 mm high, body type at least
12 pt, 15 mm margins, the punch-hole margin left free) live here as numbers, so that a plan can't forget them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, TypeAlias

BODY_PT = 12.0
SMALL_PT = 10.0
STAGE_PT = 16.0
BLANK_MM = 9.0
MARGIN_MM = 15.0
PUNCH_MM = 20.0
"""Left margin: filing holes reach 15 mm in, so 20 mm keeps print and pen clear of them."""


@dataclass(frozen=True, slots=True)
class Paper:
    """A paper size in portrait; `width_mm` and `height_mm` are the whole leaf."""

    name: str
    width_mm: float
    height_mm: float

    @property
    def inner_width_mm(self) -> float:
        """Width between the punch-hole margin and the right margin."""
        return self.width_mm - PUNCH_MM - MARGIN_MM

    @property
    def inner_height_mm(self) -> float:
        """Height between the margins (the foot of the page is inside it)."""
        return self.height_mm - 2.0 * MARGIN_MM


A4 = Paper("A4", 210.0, 297.0)
LETTER = Paper("Letter", 215.9, 279.4)
PAPERS: dict[str, Paper] = {"a4": A4, "letter": LETTER}


@dataclass(frozen=True, slots=True)
class Line:
    """A line of printed words; it wraps where the column ends. `after` follows in plain type, beside it if it fits."""

    text: str
    size_pt: float = BODY_PT
    bold: bool = False
    after: str = ""


@dataclass(frozen=True, slots=True)
class Blank:
    """Room to write in, at least `BLANK_MM` high, with a word printed small in its corner when there is one."""

    label: str = ""


@dataclass(frozen=True, slots=True)
class Ticks:
    """Boxes to tick, each with its word; in one row where they fit, else wrapped."""

    labels: tuple[str, ...]


Cell: TypeAlias = tuple["Line | Blank | Ticks", ...]


@dataclass(frozen=True, slots=True)
class Column:
    """A column of a table: its head and its share of the width [mm on A4; scaled to the paper]."""

    head: str
    width_mm: float


@dataclass(frozen=True, slots=True)
class Table:
    """Rows of cells under column heads. Rows never break over a page; the heads are printed again on the next one.

    `read_only`: rows are as high as their words; else there is room to write in each.
    """

    columns: tuple[Column, ...]
    rows: tuple[tuple[Cell, ...], ...]
    read_only: bool = False

    def __post_init__(self) -> None:
        for cells in self.rows:
            if len(cells) != len(self.columns):
                raise ValueError(f"a row of {len(cells)} cells under {len(self.columns)} columns")


@dataclass(frozen=True, slots=True)
class Field:
    """A label with its printed value, or with room to write where `value` is empty. `share` is of the row's width."""

    label: str
    value: str = ""
    share: float = 1.0


@dataclass(frozen=True, slots=True)
class Fields:
    """Rows of fields."""

    rows: tuple[tuple[Field, ...], ...]


@dataclass(frozen=True, slots=True)
class Words:
    """Lines of words; each may carry a number or sign hung out in front of it."""

    lines: tuple[Line, ...]
    hang: str = ""


@dataclass(frozen=True, slots=True)
class Ruled:
    """Lines to write on, 9 mm apart; with `fill` as many as the rest of the page holds."""

    lines: int = 3
    fill: bool = False


Point: TypeAlias = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Polyline:
    """A line through points, black. `dash` is (on, off, ...) in mm; empty is solid."""

    points: tuple[Point, ...]
    width_mm: float = 0.5
    dash: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Area:
    """A closed shape: white, black, or hatched (never grey). `hatch_mm` is the distance between hatch lines."""

    points: tuple[Point, ...]
    ink: Literal["white", "black", "hatch"] = "white"
    hatch_mm: float = 2.0
    outline_mm: float = 0.0


@dataclass(frozen=True, slots=True)
class Label:
    """Words in a drawing. `x`, `y` is the anchor: `x` by `align`, `y` the middle of the line's height."""

    text: str
    x: float
    y: float
    size_pt: float = BODY_PT
    bold: bool = False
    align: Literal["left", "centre", "right"] = "left"
    clear: bool = False
    """Wipe what lies under the words, so that a grid line doesn't run through them."""
    upright: bool = False
    """Turned a quarter to the left, for the name of an axis."""


@dataclass(frozen=True, slots=True)
class Drawing:
    """A drawing in mm, origin top left; items are drawn in order. It may be stretched in height to `tallest_mm`,
    and squeezed to `shortest_mm` where that saves a page."""

    width_mm: float
    height_mm: float
    items: tuple[Polyline | Area | Label, ...]
    tallest_mm: float = 0.0
    shortest_mm: float = 0.0


Block: TypeAlias = Table | Fields | Words | Ticks | Ruled | Drawing


@dataclass(frozen=True, slots=True)
class Section:
    """A titled part of the sheet. `keep`: don't break it over a page; `early`: may move up into room left on a page;
    `spare`: left out where it would need a page of its own."""

    title: str
    blocks: tuple[Block, ...]
    keep: bool = True
    early: bool = False
    spare: bool = False
    remark: str = ""
    """Said beside the title, in plain type."""


@dataclass(frozen=True, slots=True)
class Strip:
    """The label strip to cut off at the foot of the last page."""

    title: str
    rows: tuple[tuple[Field, ...], ...]


@dataclass(frozen=True, slots=True)
class Sheet:
    """Everything on paper for one make. `foot` stands on every page before "page n of m"."""

    paper: Paper
    title: str
    subtitle: str
    sections: tuple[Section, ...]
    foot: str
    strip: Strip | None = None

    def words(self) -> list[str]:
        """Every printed word group in reading order: for tests, for a screen reader, for a search."""
        out = [self.title, self.subtitle]
        for section in self.sections:
            out += [section.title, section.remark]
            for block in section.blocks:
                out += _block_words(block)
        if self.strip is not None:
            out += [self.strip.title, *_field_words(self.strip.rows)]
        return [text for text in [*out, self.foot] if text]


def _block_words(block: Block) -> list[str]:
    match block:
        case Table():
            heads = [column.head for column in block.columns]
            items = [item for cells in block.rows for cell in cells for item in cell]
            return heads + [text for item in items for text in _item_words(item)]
        case Fields():
            return _field_words(block.rows)
        case Words():
            return [line.text for line in block.lines]
        case Ticks():
            return list(block.labels)
        case Drawing():
            return [item.text for item in block.items if isinstance(item, Label)]
        case Ruled():
            return []


def _field_words(rows: Sequence[Sequence[Field]]) -> list[str]:
    return [f"{field.label} {field.value}".strip() for row in rows for field in row]


def _item_words(item: Line | Blank | Ticks) -> list[str]:
    match item:
        case Line():
            return [f"{item.text} {item.after}".strip()]
        case Blank():
            return [item.label] if item.label else []
        case Ticks():
            return list(item.labels)
