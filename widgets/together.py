"""What stays on one line: a figure and its unit. For labels that wrap, and for the lines of a page."""

from __future__ import annotations

import re
from typing import Final

from PySide6.QtWidgets import QLabel, QWidget

NO_BREAK: Final = "\u00a0"
JOINED: Final = "\u2060"
"""no width and no break: after the stroke of a unit, as in kg/L"""
# A number, or a sign before it, and the space behind it where a unit or another figure follows.
_UNIT: Final = r"%|°[CF]?|kg|g|mg|lb|oz|L|mL|US|imp|min|h|d|j|wk|sem|mm|cm|in|kPa|psi|points?|pH|IMCU"
_TOGETHER: Final = re.compile(
    rf"(?<=[\d×±~≤≥]) (?=(?:{_UNIT}|[×±]|\d)(?![a-zA-Z]))|(?<=pH) (?=\d)|(?<=\d h) (?=\d)"
    r"|(?<=US) (?=gal|fl)|(?<=imp) (?=gal|fl)"
)


_STROKE: Final = re.compile(r"(?:(?<=\bkg)|(?<=\bg)|(?<=IMCU))/(?=m?L\b)|(?<=°[CF])/(?=min\b)")


def together(text: str) -> str:
    """The text with no-break spaces between figures and their units."""
    return _TOGETHER.sub(NO_BREAK, text)


class Wrapped(QLabel):
    """A label whose lines end between words, never between a figure and its unit; `text` gives what was put there."""

    def __init__(self, text: str | QWidget | None = None, parent: QWidget | None = None) -> None:
        """As a QLabel: a text, what it stands in, or both."""
        words, parent = (text, parent) if isinstance(text, str) else ("", text or parent)
        super().__init__(parent)
        self._said = ""
        self.setWordWrap(True)
        self.setText(words)

    def setText(self, text: str) -> None:
        """Put a text there."""
        self._said = text
        super().setText(_STROKE.sub("/" + JOINED, together(text)))

    def text(self) -> str:
        """What was put there."""
        return self._said
