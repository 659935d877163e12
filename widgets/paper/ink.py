"""Type and measure for paper: fonts at a fixed 720 units an inch, so a page breaks alike on every printer."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import lru_cache

from PySide6.QtGui import QFont, QFontInfo, QFontMetricsF

from widgets.together import NO_BREAK, together

UNITS_PER_INCH = 720.0
UNITS_PER_MM = UNITS_PER_INCH / 25.4
MM_PER_PT = 25.4 / 72.0
LEADING = 1.16
# First the faces that read well at arm's length and are narrow; DejaVu comes with every fontconfig.
FAMILIES = ("Source Sans 3", "Noto Sans", "DejaVu Sans Condensed", "Liberation Sans", "Arial", "DejaVu Sans")


@lru_cache(maxsize=64)
def font(size_pt: float, bold: bool = False) -> QFont:
    """The face of the plan at `size_pt`, its pixel size in paper units (10 a point)."""
    face = QFont()
    face.setFamilies(list(FAMILIES))
    face.setPixelSize(round(size_pt * UNITS_PER_INCH / 72.0))
    face.setBold(bold)
    face.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    face.setStyleStrategy(QFont.StyleStrategy.PreferOutline)
    face.setFeature(QFont.Tag("liga"), 0)  # "floc" must stay four letters for whoever searches the PDF
    if QFontInfo(face).family() == "DejaVu Sans":
        face.setStretch(90)  # its condensed cut, drawn so where that is not installed
    return face


@lru_cache(maxsize=64)
def _metrics(size_pt: float, bold: bool) -> QFontMetricsF:
    return QFontMetricsF(font(size_pt, bold))


@lru_cache(maxsize=4096)
def width_mm(text: str, size_pt: float, bold: bool = False) -> float:
    """Width of a text set on one line [mm]."""
    return _metrics(size_pt, bold).horizontalAdvance(text) / UNITS_PER_MM


def line_mm(size_pt: float) -> float:
    """Height of one line with its leading [mm]."""
    return size_pt * MM_PER_PT * LEADING


def ascent_mm(size_pt: float) -> float:
    """From the top of a line to its baseline [mm]; the same for every face, so that faces don't move the page."""
    return size_pt * MM_PER_PT * 0.95


def _words(text: str, size_pt: float, bold: bool, room_mm: float) -> Iterator[str]:
    """What stands on one line whole: words, and figures with their units where there is room for both."""
    for held in re.split(r"[ \t\n]+", together(text.strip())):
        words = held.split(NO_BREAK)
        whole = " ".join(words)
        yield from (whole,) if width_mm(whole, size_pt, bold) <= room_mm else words


def wrap(text: str, size_pt: float, bold: bool, room_mm: float) -> list[str]:
    """A text broken at spaces to lines no wider than `room_mm`, never between a number and its unit; a word wider than
    that is broken inside."""
    lines: list[str] = []
    line = ""
    for word in _words(text, size_pt, bold, room_mm):
        trial = f"{line} {word}" if line else word
        if width_mm(trial, size_pt, bold) <= room_mm:
            line = trial
            continue
        if line:
            lines.append(line)
        while len(word) > 1 and width_mm(word, size_pt, bold) > room_mm:
            cut = next((n for n in range(len(word) - 1, 1, -1) if width_mm(word[:n], size_pt, bold) <= room_mm), 1)
            lines.append(word[:cut])
            word = word[cut:]
        line = word
    return [*lines, line] if line or not lines else lines
