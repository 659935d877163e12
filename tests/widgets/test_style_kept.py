"""A house style is as safe as a recipe: undone past a kill, kept on a full disk, never written over."""

from __future__ import annotations

import errno
import os
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QMessageBox
from pytestqt.qtbot import QtBot

from styles import house, reader
from styles.reader import HOUSE, Style
from tests.widgets.conftest import gone
from tests.widgets.style_worker import KEY, document
from tests.widgets.test_killed import worked_and_killed
from widgets.judging import adopt_beside
from widgets.variants.style_document import StyleDocument
from widgets.variants.style_page import StylePage
from widgets.window import Window

FILE = f"{KEY}{HOUSE}"


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Path]:
    """A folder with two house styles."""
    folder = tmp_path / "home"
    folder.mkdir()
    for key, like in ((KEY, "cheddar"), ("low-wheel", "gouda")):
        house.write(replace(reader.style(like), key=key, name=key, notes=""), folder / f"{key}{HOUSE}")
    yield folder
    adopt_beside(None)


def noted(made: StyleDocument, notes: str) -> None:
    assert made.style is not None
    made.commit(replace(made.style, notes=notes), "remarks")


def in_file(home: Path, file: str = FILE) -> Style:
    return reader.read(home / file)


def test_undo_leads_back_through_the_styles_of_the_folder(qtbot: QtBot, home: Path) -> None:
    made = document(home)
    noted(made, "one")
    made.open("low-wheel")
    noted(made, "two")
    made.stack.undo()
    made.stack.undo()
    assert made.style == in_file(home)
    assert in_file(home).notes == in_file(home, f"low-wheel{HOUSE}").notes == ""
    made.stop()
    assert not list((home / "recovery").rglob("*.json"))


def test_killed_in_the_middle_of_a_house_style(qtbot: QtBot, home: Path) -> None:
    before = in_file(home)
    for reports in (3, 8):
        said, told = worked_and_killed(home, reports, "tests.widgets.style_worker")
        kept = max(count for _, count in said)
        assert kept, told
        assert int(in_file(home).notes) in (kept, kept + 1), "the file is whole and holds what was called kept"
    made = document(home)
    made.stack.undo()
    assert made.style == before, "undo leads back past both kills"
    assert in_file(home) == before
    made.stop()


def test_on_a_full_disk_the_work_is_kept_and_taken_up_again(
    qtbot: QtBot, home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    made = document(home)
    before = (home / FILE).read_bytes()

    def full(handle: int) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    with monkeypatch.context() as patch, qtbot.waitSignal(made.problem) as told:
        patch.setattr(os, "fsync", full)
        noted(made, "one")
    assert os.strerror(errno.ENOSPC) in told.args[0]
    assert (home / FILE).read_bytes() == before
    assert made.style is not None
    assert made.style.notes == "one"
    made.stop()
    again = document(home)
    assert in_file(home).notes == "one"
    again.stack.undo()
    assert in_file(home).notes == ""
    again.stop()


def test_what_another_wrote_is_taken_up_and_undone(qtbot: QtBot, home: Path) -> None:
    made = document(home)
    noted(made, "mine")
    house.write(replace(in_file(home), notes="theirs"), home / FILE)
    with qtbot.waitSignal(made.changed):
        made.look()
    assert made.style is not None
    assert made.style.notes == "theirs"
    made.stack.undo()
    assert in_file(home).notes == "mine"
    made.stop()


def test_what_cannot_be_read_is_not_written_over(qtbot: QtBot, home: Path) -> None:
    made = document(home)
    (home / FILE).write_text("torn [", encoding="utf-8")
    with qtbot.waitSignal(made.problem) as told:
        noted(made, "mine")
    assert "not written over" in told.args[0]
    assert (home / FILE).read_text(encoding="utf-8") == "torn ["
    (home / FILE).unlink()
    noted(made, "mine again")
    assert in_file(home).notes == "mine again"
    made.stop()


def page_of(window: Window, home: Path) -> StylePage:
    path = home / "round.toml"
    assert window.files.open(path) if path.exists() else window.files.save_to(path)
    window.actions_["house"].trigger()
    page = window.opened["house"]
    assert isinstance(page, StylePage)
    page._open(KEY)
    page._show()
    return page


def remark(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def test_in_the_window_work_its_file_has_not_is_asked_about(
    qtbot: QtBot, window: Window, home: Path, tmp_path: Path
) -> None:
    page = page_of(window, home)
    remark(qtbot, page.notes, "mine")
    assert in_file(home).notes == "mine"
    page.document._keeping._journals[home / FILE].let_go()  # as the system does when the process ends
    house.write(replace(in_file(home), notes="theirs"), home / FILE)
    second = Window(window.session.recipe, config=tmp_path / "config", data=tmp_path / "data")
    with qtbot.waitExposed(second):
        second.show()
    other = page_of(second, home)
    box = next(one for one in second.findChildren(QMessageBox) if one.isVisible() and "last time" in one.text())
    qtbot.mouseClick(next(one for one in box.buttons() if "Take it up" in one.text()), Qt.MouseButton.LeftButton)
    assert other.notes.text() == in_file(home).notes == "mine"
    second.actions_["undo"].trigger()
    assert in_file(home).notes == "theirs"
    for one in second.findChildren(QMessageBox):
        one.close()
    second.session.stack.setClean()
    second.close()
    second.deleteLater()
    gone()
