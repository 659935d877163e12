"""The pictures for the command line: Qt is begun off screen for them, if it has not begun yet."""

from __future__ import annotations

import sys
from collections.abc import Collection
from pathlib import Path

from PySide6.QtCore import QMessageLogContext, QtMsgType, qInstallMessageHandler
from PySide6.QtWidgets import QApplication

from designer.language import spoken
from widgets import language
from widgets.tour.pictures import SIZES, THEMES, Shown, pictures

_application: QApplication | None = None


def write_pictures(
    out: Path,
    recipe: Path,
    *,
    only: Collection[str] = (),
    themes: Collection[str] = (),
    sizes: Collection[tuple[int, int]] = (),
    shown: Shown,
) -> int:
    """Write the pictures to the folder `out`; how many. Raises OSError, RecipeError."""
    global _application
    qInstallMessageHandler(_said)
    if QApplication.instance() is None:
        _application = QApplication(["curdwright"])
        language.install(_application, spoken().key)  # as the command line was asked
    return len(pictures(out, recipe, only=only, themes=themes or THEMES, sizes=sizes or SIZES, shown=shown))


def _said(kind: QtMsgType, where: QMessageLogContext, text: str) -> None:
    """What Qt has to say, but that a dialog off screen has no size hints to pass on."""
    if not text.startswith("This plugin does not support"):
        print(text, file=sys.stderr)
