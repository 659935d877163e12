"""What the maker sees when the program itself goes wrong: a sentence, never a traceback; details go to a log file."""

from __future__ import annotations

import sys
import traceback
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QMessageBox, QWidget


class Mishap:
    """Takes the place of `sys.excepthook` for a window; one dialog at a time, every fault in the log."""

    def __init__(self, window: QWidget, log: Path) -> None:
        self._window, self._log = window, log
        self._box: QMessageBox | None = None

    def __call__(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """Log a fault and say so."""
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        where = self._write("".join(traceback.format_exception(kind, error, trace)))
        if self._box is not None and self._box.isVisible():
            return
        text = QCoreApplication.translate(
            "Mishap", "Something in the program went wrong. Your work is kept: every edit is in the recovery copy."
        )
        self._box = QMessageBox(QMessageBox.Icon.Warning, "Curdwright", text, parent=self._window)
        self._box.setInformativeText(where)
        self._box.open()

    def _write(self, details: str) -> str:
        """The details in the log; where they are, in words."""
        try:
            self._log.parent.mkdir(parents=True, exist_ok=True)
            with self._log.open("a", encoding="utf-8") as out:
                out.write(details + "\n")
        except OSError:
            sys.stderr.write(details)
            return QCoreApplication.translate("Mishap", "The details could not be written to a file.")
        return QCoreApplication.translate("Mishap", "The details are in {0}.").format(self._log)


def watch(window: QWidget, log: Path) -> Mishap:
    """From now on, what goes wrong is told by the window."""
    made = Mishap(window, log)
    sys.excepthook = made
    return made
