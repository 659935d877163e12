"""Icons drawn for this program: small SVG line drawings that take the ink of the palette, and the program's own."""

from __future__ import annotations

from functools import lru_cache
from typing import Final

from PySide6.QtCore import QByteArray, QRectF, QSize, Qt
from PySide6.QtGui import QIcon, QPainter, QPixmap
from PySide6.QtSvg import QSvgRenderer

# Each on a 24 by 24 grid, stroke 1.7, round ends; INK and FILL are replaced by colours of the palette.
_DRAWN: Final[dict[str, str]] = {
    "open": '<path d="M3.5 18.5v-12h5.4l2 2.4h9.6v9.6z"/><path d="M3.5 12h17" opacity=".5"/>',
    "save": '<path d="M12 3.8v10.4M8 10.6l4 4 4-4"/><path d="M4 15.5v4.3h16v-4.3"/>',
    "undo": '<path d="M8 5 3.8 9.2 8 13.4"/><path d="M4.2 9.2h9.6a5.2 5.2 0 0 1 0 10.4H9"/>',
    "redo": '<path d="m16 5 4.2 4.2L16 13.4"/><path d="M19.8 9.2h-9.6a5.2 5.2 0 0 0 0 10.4H15"/>',
    "day": '<path d="M4 19.5h16M6 19.5v-9h4v-3h5v5h3v7" /><path d="M3 4.5h18" opacity=".45"/>',
    "whole": '<path d="M3.5 12h17M6.8 8.5 3.5 12l3.3 3.5M17.2 8.5l3.3 3.5-3.3 3.5"/>',
    "zoom_in": '<circle cx="10.5" cy="10.5" r="6"/><path d="m15.2 15.2 5 5M10.5 8v5M8 10.5h5"/>',
    "zoom_out": '<circle cx="10.5" cy="10.5" r="6"/><path d="m15.2 15.2 5 5M8 10.5h5"/>',
    "print": '<path d="M7 8.5V4h10v4.5M7 16.5H4v-8h16v8h-3"/><path d="M7 14h10v6H7z"/>',
    "later": '<path d="M4 6v12M9 6v12"/><path d="M12 12h8M16.8 8.8 20 12l-3.2 3.2"/>',
    "keep": '<path d="M4 6v12M20 6v12M12 8v8"/><path d="M14.5 12h3M9.5 12h-3" />',
    "start": '<path d="M4 11.2 12 4.5l8 6.7v8.6H4z" FILLED/><path d="M9.8 19.8v-5.4h4.4v5.4"/>',
    "milk": '<path d="M8.5 3.5h7M9.5 3.5v4L7 11.5v8.6h10v-8.6l-2.5-4v-4"/>'
    '<path d="M7.2 13.4c3-1.6 6.4 1.6 9.6 0" FILLED/>',
    "design": '<path d="M3 20h18"/><path d="M3.5 12.5h5l4.5-6h7.5V20h-17z" FILLED/>',
    "check": '<path d="M4 5.5h9M4 12h6M4 18.5h6"/><path d="m12.5 14.8 3.3 3.5 5-7.6"/>',
    "compare": '<path d="M3.5 19c7 0 7-13 17-13"/><path d="M3.5 7.5c8 0 8 10 17 10" stroke-dasharray="3 3.2"/>',
    "plan": '<path d="M5.5 3.5h9.2l3.8 3.8v13.2h-13z"/><path d="M8.5 10h7M8.5 13.5h7M8.5 17h4.5"/>',
    "cut": '<path d="M4 4v16M9.3 4v16M14.7 4v16M20 4v16M4 9.3h16M4 14.7h16" />',
    "plus": '<path d="M12 5v14M5 12h14"/>',
    "warn": '<path d="M12 4 2.8 19.5h18.4z"/><path d="M12 10v4.5M12 17v.4"/>',
}

# The program's own: a make drawn as a rising line, whey over curd below it, and the wheel it becomes.
PROGRAM: Final = """<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64">
<rect width="64" height="64" rx="14" fill="#1C5D63"/>
<path d="M9 52V27h15l9-11h9v36z" fill="#CFE3D6"/>
<path d="M9 52V27h11c5 8 9 12 14 14 3 1.200 5 1.600 8 1.800V52z" fill="#EBCB7F"/>
<path d="M42 52V33.500c0-2 1.600-3.500 3.500-3.500H52c2 0 3.500 1.500 3.500 3.500V52z" fill="#DDAB48"/>
<path d="M42 36.500h13.500" stroke="#9A6A16" stroke-width="2"/>
<path d="M9 27h15l9-11h9l3.500 14H55" fill="none" stroke="#F4F0E6" stroke-width="3.400" stroke-linejoin="round"
 stroke-linecap="round"/>
</svg>"""


def svg(name: str, ink: str, fill: str) -> str:
    """The SVG of a drawing in an ink; areas take `fill`."""
    body = _DRAWN[name].replace("FILLED", f'fill="{fill}"')
    return (
        '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 24" fill="none" '
        f'stroke="{ink}" stroke-width="1.7" stroke-linecap="round" stroke-linejoin="round">{body}</svg>'
    )


def _put(icon: QIcon, text: str, sizes: tuple[int, ...], mode: QIcon.Mode = QIcon.Mode.Normal) -> None:
    """Give an icon the drawing in each size."""
    drawing = QSvgRenderer(QByteArray(text.encode()))
    for size in sizes:
        made = QPixmap(QSize(size, size))
        made.fill(Qt.GlobalColor.transparent)
        painter = QPainter(made)
        drawing.render(painter, QRectF(0, 0, size, size))
        painter.end()
        icon.addPixmap(made, mode)


SIZES = (20, 24, 40, 48)


@lru_cache(maxsize=256)
def icon(name: str, ink: str, fill: str = "none", faint: str = "") -> QIcon:
    """A drawing as an icon in 20, 24, 40 and 48 pixels; `faint` is the ink where it is disabled."""
    made = QIcon()
    _put(made, svg(name, ink, fill), SIZES)
    if faint:
        _put(made, svg(name, faint, fill), SIZES, QIcon.Mode.Disabled)
    return made


def program_icon() -> QIcon:
    """The icon of the program."""
    made = QIcon()
    _put(made, PROGRAM, (16, 24, 32, 48, 64, 128, 256))
    return made
