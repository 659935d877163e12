"""Blocks measured: each becomes pieces of known height that know how to draw themselves at a place."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from designer.plan.sheet import (
    BLANK_MM,
    BODY_PT,
    SMALL_PT,
    Area,
    Blank,
    Block,
    Cell,
    Drawing,
    Field,
    Fields,
    Label,
    Line,
    Point,
    Polyline,
    Ruled,
    Section,
    Strip,
    Table,
    Ticks,
    Words,
)
from widgets.paper import ink, marks
from widgets.paper.marks import TICK_MM, Page

HEAD_PT = 10.0
TITLE_PT = 14.0
PAD_X, PAD_Y = 1.2, 0.7
RULE_MM, FRAME_MM = 0.3, 0.6
FIELD_GAP_MM = 3.0
TICK_GAP_MM = 1.2
TICK_ROW_MM = ink.line_mm(BODY_PT) + 0.7

Draw = Callable[[Page, float, float, float], None]
"""(page, x, y, height): draw with the top left corner there, `height` being what the piece was stretched to."""


@dataclass(slots=True)
class Piece:
    """A part of a page that is not broken. `with_next`: doesn't stand alone at the foot of a page."""

    height: float
    draw: Draw
    stretch: float = 0.0
    squeeze: float = 0.0
    with_next: bool = False
    head: Piece | None = None
    """What is printed again above this piece when it begins a page (the heads of its table)."""
    head_only: bool = False
    fills: bool = False


def section_pieces(section: Section, width: float) -> list[Piece]:
    """A section as pieces: its title, then its blocks."""
    pieces = [_title(section, width)] if section.title else []
    for block in section.blocks:
        pieces += block_pieces(block, width)
    return pieces


def block_pieces(block: Block, width: float) -> list[Piece]:
    """Any block as pieces across `width` mm."""
    match block:
        case Table():
            return _table(block, width)
        case Fields():
            return [_fields(row, width) for row in block.rows]
        case Words():
            return _words(block, width)
        case Ticks():
            return [_ticks(block, width)]
        case Ruled():
            return _ruled(block, width)
        case Drawing():
            return [_drawing(block, width)]


def gap(height: float) -> Piece:
    """Empty room between sections."""
    return Piece(height, lambda page, x, y, tall: None)


def _title(section: Section, width: float) -> Piece:
    indent = ink.width_mm(section.title, TITLE_PT, True) + 4.0
    beside = indent < width * 0.6
    room = width - indent if beside else width
    remarks = ink.wrap(section.remark, BODY_PT, False, room) if section.remark else []
    title_mm, line_mm = ink.line_mm(TITLE_PT), ink.line_mm(BODY_PT)
    below = 0 if beside else 1
    height = max(title_mm, (title_mm - line_mm) + (len(remarks) + below) * line_mm) + 1.2

    def draw(page: Page, x: float, y: float, _: float) -> None:
        page.words(section.title, x, y, TITLE_PT, True)
        for index, text in enumerate(remarks):
            top = y + (title_mm - line_mm) * 0.8 + (index + below) * line_mm
            page.words(text, x + (indent if beside else 0.0), top, BODY_PT)

    return Piece(height, draw, with_next=True)


def _words(block: Words, width: float) -> list[Piece]:
    hang = max(ink.width_mm(block.hang, BODY_PT, True) + 2.0, 5.0) if block.hang else 0.0
    pieces = []
    for index, line in enumerate(block.lines):
        wrapped = ink.wrap(line.text, line.size_pt, line.bold, width - hang)
        step = ink.line_mm(line.size_pt)

        def draw(
            page: Page, x: float, y: float, _: float, line: Line = line, wrapped: list[str] = wrapped,
            step: float = step, first: bool = index == 0,
        ) -> None:  # fmt: skip
            if first and block.hang:
                page.words(block.hang, x, y, line.size_pt, True)
            for number, text in enumerate(wrapped):
                page.words(text, x + hang, y + number * step, line.size_pt, line.bold)

        pieces.append(Piece(len(wrapped) * step + 0.8, draw))
    return pieces


def _ticks(block: Ticks, width: float) -> Piece:
    rows = _tick_rows(block.labels, width)

    def draw(page: Page, x: float, y: float, _: float) -> None:
        for number, row in enumerate(rows):
            for tick in row:
                tick.draw(page, x, y + 0.6 + number * TICK_ROW_MM)

    return Piece(len(rows) * TICK_ROW_MM + 0.6, draw)


@dataclass(frozen=True, slots=True)
class _Tick:
    """A box with its words, or (without `box`) the rest of words too long for one line."""

    offset: float
    label: str
    box: bool = True

    def draw(self, page: Page, x: float, top: float) -> None:
        left = x + self.offset
        if self.box:
            page.tick(left, top, BODY_PT)
            left += TICK_MM + TICK_GAP_MM
        page.words(self.label, left, top, BODY_PT)


def _tick_rows(labels: tuple[str, ...], width: float) -> list[list[_Tick]]:
    """Boxes with their words in as many rows as the width asks."""
    rows: list[list[_Tick]] = []
    used = 0.0
    hang = TICK_MM + TICK_GAP_MM
    for label in labels:
        first, *rest = ink.wrap(label, BODY_PT, False, width - hang)
        need = TICK_MM + (TICK_GAP_MM + ink.width_mm(first, BODY_PT) if first else 0.0)
        if not rows or used + need > width + 1e-6:
            rows.append([])
            used = 0.0
        rows[-1].append(_Tick(used, first))
        used += need + (3.0 if label else 1.6)
        for text in rest:
            rows.append([_Tick(hang, text, box=False)])
            used = width
    return rows


def _ruled(block: Ruled, width: float) -> list[Piece]:
    def one(page: Page, x: float, y: float, tall: float) -> None:
        count = max(1, int(tall / BLANK_MM + 1e-6))
        for number in range(1, count + 1):
            page.line(x, y + number * BLANK_MM, x + width, y + number * BLANK_MM)
        page.room(x, y, width, count * BLANK_MM)

    if block.fill:
        return [Piece(block.lines * BLANK_MM, one, fills=True)]
    return [Piece(BLANK_MM, one) for _ in range(block.lines)]


# Fields


def _fields(row: tuple[Field, ...], width: float) -> Piece:
    spans = _spans([field.share for field in row], width - FIELD_GAP_MM * (len(row) - 1))
    size = BODY_PT
    height = max([BLANK_MM if not field.value else ink.line_mm(size) + 1.0 for field in row])

    def draw(page: Page, x: float, y: float, tall: float) -> None:
        left = x
        for field, span in zip(row, spans, strict=True):
            base = y + tall - ink.line_mm(size) - 0.4
            page.words(field.label, left, base, size)
            start = left + (ink.width_mm(field.label, size) + 2.0 if field.label else 0.0)
            if field.value:
                page.words(field.value, start, base, size, True)
            else:
                page.line(start, y + tall - 0.6, left + span, y + tall - 0.6, 0.4)
                page.room(start, y, left + span - start, tall)
            left += span + FIELD_GAP_MM

    return Piece(height, draw, stretch=1.0)


def strip_piece(strip: Strip, width: float) -> Piece:
    """The label strip: a cut line with its words above, then the fields in a frame."""
    rows = [_fields(row, width - 6.0) for row in strip.rows]
    step = ink.line_mm(BODY_PT)
    inner = sum(row.height for row in rows)

    def draw(page: Page, x: float, y: float, _: float) -> None:
        page.marks.append(marks.Stroke(((x, y + step + 0.8), (x + width, y + step + 0.8)), 0.4, (3.0, 2.0)))
        page.words(strip.title, x, y, BODY_PT)
        top = y + step + 3.0
        page.box(x, top, width, inner + 3.0, FRAME_MM)
        at = top + 0.6
        for row in rows:
            row.draw(page, x + 3.0, at, row.height)
            at += row.height

    return Piece(step + 3.0 + inner + 3.0 + FRAME_MM, draw)


# Tables


def _table(table: Table, width: float) -> list[Piece]:
    spans = _spans([column.width_mm for column in table.columns], width)
    head = _table_head(table, spans) if any(column.head for column in table.columns) else None
    least = 0.0 if table.read_only else BLANK_MM
    rows = [_table_row(cells, spans, head, least) for cells in table.rows]
    return [*([head] if head is not None else []), *rows]


def _table_head(table: Table, spans: list[float]) -> Piece:
    wrapped = [
        ink.wrap(column.head, HEAD_PT, True, span - 2 * PAD_X)
        for column, span in zip(table.columns, spans, strict=True)
    ]
    step = ink.line_mm(HEAD_PT)
    deepest = max(len(lines) for lines in wrapped)
    height = deepest * step + 1.4

    def draw(page: Page, x: float, y: float, _: float) -> None:
        left = x
        for lines, span in zip(wrapped, spans, strict=True):
            for number, text in enumerate(lines):
                page.words(text, left + PAD_X, y + (deepest - len(lines) + number) * step + 0.4, HEAD_PT, True)
            left += span
        page.line(x, y + height, x + sum(spans), y + height, FRAME_MM)

    return Piece(height, draw, with_next=True, head_only=True)


def _table_row(cells: tuple[Cell, ...], spans: list[float], head: Piece | None, least: float = BLANK_MM) -> Piece:
    sized = [_Sized(cell, span - 2 * PAD_X) for cell, span in zip(cells, spans, strict=True)]
    height = max([least, *(one.height for one in sized)]) + 2 * PAD_Y

    def draw(page: Page, x: float, y: float, tall: float) -> None:
        left = x
        for number, (one, span) in enumerate(zip(sized, spans, strict=True)):
            if number:
                page.line(left, y, left, y + tall, RULE_MM)
            one.draw(page, left + PAD_X, y + PAD_Y, tall - 2 * PAD_Y)
            left += span
        page.line(x, y + tall, left, y + tall, RULE_MM)

    return Piece(height, draw, stretch=2.0 if least else 0.0, head=head)


@dataclass(frozen=True, slots=True)
class _Set:
    """One set line of a cell: its words, and what follows them on the line in plain body type."""

    text: str
    size_pt: float
    bold: bool
    after: str = ""

    def draw(self, page: Page, x: float, top: float) -> None:
        page.words(self.text, x, top, self.size_pt, self.bold)
        if self.after:
            down = ink.ascent_mm(self.size_pt) - ink.ascent_mm(BODY_PT)
            page.words(self.after, x + ink.width_mm(self.text, self.size_pt, self.bold) + 1.6, top + down, BODY_PT)


def _set_line(line: Line, width: float) -> list[_Set]:
    """A line wrapped; what follows it goes on its last line where it fits, else below."""
    *texts, last = [_Set(text, line.size_pt, line.bold) for text in ink.wrap(line.text, line.size_pt, line.bold, width)]
    if not line.after:
        return [*texts, last]
    room = width - ink.width_mm(last.text, last.size_pt, last.bold) - 1.6
    if ink.width_mm(line.after, BODY_PT) <= room:
        return [*texts, _Set(last.text, last.size_pt, last.bold, line.after)]
    return [*texts, last, *(_Set(text, BODY_PT, False) for text in ink.wrap(line.after, BODY_PT, False, width))]


class _Sized:
    """A cell measured for a width: words above, a blank filling the rest, boxes to tick below or beside the blank."""

    def __init__(self, cell: Cell, width: float) -> None:
        self.width = width
        self.blank = next((item for item in cell if isinstance(item, Blank)), None)
        self.lines = [one for line in cell if isinstance(line, Line) for one in _set_line(line, width)]
        self.ticks = tuple(label for item in cell if isinstance(item, Ticks) for label in item.labels)
        self.beside = self.blank is not None and bool(self.ticks) and not self.lines
        self.tick_rows = [] if self.beside else _tick_rows(self.ticks, width)
        self.height = sum(ink.line_mm(line.size_pt) for line in self.lines) + len(self.tick_rows) * TICK_ROW_MM
        if self.blank is not None:
            self.height += max(BLANK_MM, len(self.ticks) * ink.line_mm(SMALL_PT) if self.beside else 0.0)

    def draw(self, page: Page, x: float, y: float, tall: float) -> None:
        top = y
        for line in self.lines:
            line.draw(page, x, top)
            top += ink.line_mm(line.size_pt)
        for row in self.tick_rows:
            for tick in row:
                tick.draw(page, x, top + 0.2)
            top += TICK_ROW_MM
        if self.blank is None:
            return
        taken = self._beside(page, x, top, y + tall - top) if self.beside else 0.0
        if self.blank.label:
            page.words(self.blank.label, x, top, SMALL_PT)
        page.room(x, top, self.width - taken, y + tall - top)

    def _beside(self, page: Page, x: float, top: float, tall: float) -> float:
        """Boxes stacked at the right of the blank; the width they take."""
        side, step = 3.0, ink.line_mm(SMALL_PT)
        taken = side + 0.8 + max(ink.width_mm(label, SMALL_PT) for label in self.ticks)
        down = (tall - len(self.ticks) * step) / 2
        for number, label in enumerate(self.ticks):
            at = top + down + number * step
            page.tick(x + self.width - taken, at, SMALL_PT, side)
            page.words(label, x + self.width - taken + side + 0.8, at, SMALL_PT)
        return taken


# Drawings


def _drawing(drawing: Drawing, width: float) -> Piece:
    side = width / drawing.width_mm

    def draw(page: Page, x: float, y: float, tall: float) -> None:
        down = tall / drawing.height_mm

        def put(points: tuple[Point, ...]) -> tuple[Point, ...]:
            return tuple((x + px * side, y + py * down) for px, py in points)

        for item in drawing.items:
            match item:
                case Polyline():
                    page.marks.append(marks.Stroke(put(item.points), item.width_mm, item.dash))
                case Area():
                    _area(page, item, put(item.points))
                case Label():
                    _label(page, item, x + item.x * side, y + item.y * down)

    squeeze = drawing.height_mm - drawing.shortest_mm if drawing.shortest_mm else 0.0
    return Piece(drawing.height_mm, draw, stretch=max(0.0, drawing.tallest_mm - drawing.height_mm), squeeze=squeeze)


def _area(page: Page, area: Area, points: tuple[Point, ...]) -> None:
    if area.ink == "hatch":
        page.marks.append(marks.Hatch(points, area.hatch_mm))
    else:
        page.marks.append(marks.Shape(points, black=area.ink == "black"))
    if area.outline_mm:
        page.marks.append(marks.Stroke((*points, points[0]), area.outline_mm))


def _label(page: Page, label: Label, x: float, y: float) -> None:
    span = ink.width_mm(label.text, label.size_pt, label.bold)
    back = {"left": 0.0, "centre": span / 2, "right": span}[label.align]
    rise = ink.ascent_mm(label.size_pt) - ink.line_mm(label.size_pt) / 2
    if label.upright:
        page.marks.append(marks.Words(label.text, x + rise, y + back, label.size_pt, label.bold, True))
        return
    left = x - back
    if label.clear:
        half = ink.line_mm(label.size_pt) * 0.42
        corners = ((left - 0.6, y - half), (left + span + 0.6, y - half), (left + span + 0.6, y + half))
        page.marks.append(marks.Shape((*corners, (left - 0.6, y + half))))
    page.marks.append(marks.Words(label.text, left, y + rise, label.size_pt, label.bold))


def _spans(shares: list[float], width: float) -> list[float]:
    whole = sum(shares)
    return [width * share / whole for share in shares]
