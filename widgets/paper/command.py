"""A plan as a PDF for the command line: Qt is begun off screen for it, if it has not begun yet."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QApplication

from designer.language import spoken
from designer.plan.sheet import Sheet
from widgets import language
from widgets.paper.draw import write_pdf

_application: QApplication | None = None


def write_plan(sheet: Sheet, path: Path) -> int:
    """Write the sheet to `path`; the number of pages. Raises OSError with a reason."""
    global _application
    if QApplication.instance() is None:
        _application = QApplication(["curdwright"])
        language.install(_application, spoken().key)
    return write_pdf(sheet, path)
