"""A plan as a PDF for the command line: Qt is begun off screen for it, if it has not begun yet."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtGui import QGuiApplication

from designer.plan.sheet import Sheet
from widgets.paper.draw import write_pdf

_application: QGuiApplication | None = None


def write_plan(sheet: Sheet, path: Path) -> int:
    """Write the sheet to `path`; the number of pages. Raises OSError with a reason."""
    global _application
    if QGuiApplication.instance() is None:
        _application = QGuiApplication(["curdwright"])
    return write_pdf(sheet, path)
