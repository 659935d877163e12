"""Lays a Sheet out: breaks it into pages, uses the room that is left, and puts the foot and the label strip."""

from __future__ import annotations

from collections import deque

from PySide6.QtCore import QCoreApplication

from designer.plan.sheet import MARGIN_MM, PUNCH_MM, Section, Sheet
from widgets.paper import ink
from widgets.paper.marks import Page
from widgets.paper.pieces import Piece, gap, section_pieces, strip_piece

FOOT_PT = 9.0
FOOT_MM = 5.5
SECTION_GAP_MM = 3.0
TITLE_PT = 20.0
SUBTITLE_PT = 12.0


def layout(sheet: Sheet) -> tuple[Page, ...]:
    """The pages of a sheet as marks in mm. A section that must stay whole moves on; a later one may fill the room."""
    width = sheet.paper.inner_width_mm
    room = sheet.paper.inner_height_mm - FOOT_MM
    strip = strip_piece(sheet.strip, width) if sheet.strip is not None else None
    strip_mm = strip.height + SECTION_GAP_MM if strip is not None else 0.0
    leaves = _break(sheet, width, room, strip_mm)
    if len(tight := _break(sheet, width, room, strip_mm, squeezed=True)) < len(leaves):
        leaves = tight
    pages = []
    for number, leaf in enumerate(leaves, start=1):
        last = number == len(leaves)
        free = room - (strip.height + SECTION_GAP_MM if last and strip is not None else 0.0)
        _stretch(leaf, free)
        page = Page()
        y = MARGIN_MM
        for piece in leaf:
            piece.draw(page, PUNCH_MM, y, piece.height)
            y += piece.height
        if last and strip is not None:
            strip.draw(page, PUNCH_MM, MARGIN_MM + room - strip.height, strip.height)
        _foot(page, sheet, number, len(leaves))
        pages.append(page)
    return tuple(pages)


def _break(sheet: Sheet, width: float, room: float, strip_mm: float, squeezed: bool = False) -> list[list[Piece]]:
    """Pieces page by page."""
    leaves: list[list[Piece]] = [[_head(sheet, width)]]
    queue = deque((section, section_pieces(section, width)) for section in sheet.sections)
    left_out: list[list[Piece]] = []
    for piece in (piece for _, pieces in queue for piece in pieces if squeezed):
        piece.height, piece.stretch = piece.height - piece.squeeze, piece.stretch + piece.squeeze
    while queue:
        section, pieces = queue.popleft()
        used = _height(leaves[-1])
        whole = SECTION_GAP_MM + _height(pieces)
        if section.spare and used + whole + (strip_mm if not queue else 0.0) > room:
            left_out.append(pieces)
            continue
        if section.keep and used + whole > room and leaves[-1]:
            early = next((other for other in queue if _may_come(other, room - used)), None)
            if early is not None:
                queue.remove(early)
                queue.appendleft((section, pieces))
                leaves[-1] += [gap(SECTION_GAP_MM), *early[1]]
                continue
            leaves.append([])
        _place(leaves, pieces, room)
    if strip_mm and _height(leaves[-1]) + strip_mm > room:
        leaves.append([])
        for pieces in left_out:
            _place(leaves, pieces, room)
    return leaves


def _may_come(other: tuple[Section, list[Piece]], free: float) -> bool:
    section, pieces = other
    return section.early and SECTION_GAP_MM + _height(pieces) <= free


def _place(leaves: list[list[Piece]], pieces: list[Piece], room: float) -> None:
    """Pieces one after another, on to a new page where the next would not fit with all that must stay with it."""
    if leaves[-1]:
        leaves[-1].append(gap(SECTION_GAP_MM))
    for index, piece in enumerate(pieces):
        need = piece.height
        follow = index
        while pieces[follow].with_next and follow + 1 < len(pieces):
            follow += 1
            need += pieces[follow].height
        if _height(leaves[-1]) + need > room and any(not one.head_only for one in leaves[-1]):
            leaves.append([piece.head] if piece.head is not None else [])
        leaves[-1].append(piece)


def _stretch(leaf: list[Piece], room: float) -> None:
    """Share out what is left of a page: first to drawings and rows as far as they wish, then to writing lines."""
    left = room - _height(leaf)
    wish = sum(piece.stretch for piece in leaf)
    if left > 0 and wish > 0:
        share = min(1.0, left / wish)
        for piece in leaf:
            piece.height += piece.stretch * share
    fill = next((piece for piece in leaf if piece.fills), None)
    if fill is not None:
        fill.height += max(0.0, room - _height(leaf))


def _head(sheet: Sheet, width: float) -> Piece:
    titles = ink.wrap(sheet.title, TITLE_PT, True, width)
    under = ink.wrap(sheet.subtitle, SUBTITLE_PT, False, width)
    title_mm, line_mm = ink.line_mm(TITLE_PT), ink.line_mm(SUBTITLE_PT)
    height = len(titles) * title_mm + len(under) * line_mm + 1.5

    def draw(page: Page, x: float, y: float, _: float) -> None:
        for text in titles:
            page.words(text, x, y, TITLE_PT, True)
            y += title_mm
        for text in under:
            page.words(text, x, y, SUBTITLE_PT)
            y += line_mm
        page.line(x, y + 1.0, x + width, y + 1.0, 0.8)

    return Piece(height, draw)


def _foot(page: Page, sheet: Sheet, number: int, count: int) -> None:
    base = sheet.paper.height_mm - MARGIN_MM - ink.line_mm(FOOT_PT)
    right = PUNCH_MM + sheet.paper.inner_width_mm
    where = QCoreApplication.translate("Paper", "page {0} of {1}").format(number, count)
    if number < count:
        where += QCoreApplication.translate("Paper", "  (goes on)")
    page.words(sheet.foot, PUNCH_MM, base, FOOT_PT)
    page.words(where, right - ink.width_mm(where, FOOT_PT, True), base, FOOT_PT, True)
    page.line(PUNCH_MM, base - 0.6, right, base - 0.6, 0.3)


def _height(pieces: list[Piece]) -> float:
    return sum(piece.height for piece in pieces)
