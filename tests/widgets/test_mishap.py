"""A fault of the program is a sentence for the maker and a traceback in the log."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QMessageBox, QWidget
from pytestqt.qtbot import QtBot

from widgets import mishap


def test_a_fault_is_told_and_logged(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "excepthook", sys.excepthook)
    window = QWidget()
    qtbot.addWidget(window)
    log = tmp_path / "logs" / "window.log"
    hook = mishap.watch(window, log)
    assert sys.excepthook is hook
    for _ in range(2):
        try:
            raise ZeroDivisionError("by hand")
        except ZeroDivisionError as error:
            hook(type(error), error, error.__traceback__)
    boxes = [box for box in window.findChildren(QMessageBox) if box.isVisible()]
    assert len(boxes) == 1
    assert "Traceback" not in boxes[0].text()
    assert str(log) in boxes[0].informativeText()
    assert log.read_text(encoding="utf-8").count("ZeroDivisionError: by hand") == 2
    boxes[0].close()


def test_a_log_that_cannot_be_written_is_said(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "excepthook", sys.excepthook)
    window = QWidget()
    qtbot.addWidget(window)
    (tmp_path / "file").write_text("", encoding="utf-8")
    hook = mishap.watch(window, tmp_path / "file" / "window.log")
    hook(ValueError, ValueError("x"), None)
    assert "ValueError: x" in capsys.readouterr().err
    box = next(box for box in window.findChildren(QMessageBox) if box.isVisible())
    assert "could not" in box.informativeText()
    box.close()
