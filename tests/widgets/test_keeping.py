"""Work is never lost: files changed outside, protected, on a full disk, in two windows; quitting; recovery compared."""

from __future__ import annotations

import errno
import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt, QTimer
from PySide6.QtWidgets import QMessageBox
from pytestqt.qtbot import QtBot

from designer.recipe import edit as edits
from designer.recipe import versions
from designer.recipe.document import Recipe
from designer.recipe.file import read, write, writes
from tests.widgets.conftest import gone
from widgets import recovery
from widgets.hold import Hold
from widgets.journal import Journal, leftovers
from widgets.window import Window


def longer(recipe: Recipe, minutes: float) -> Recipe:
    return edits.edit_end(recipe, "ripen", length_min=minutes)


def box_of(window: Window) -> QMessageBox:
    """The dialog that is open."""
    return next(box for box in window.findChildren(QMessageBox) if box.isVisible())


def answer(qtbot: QtBot, window: Window, words: str) -> None:
    """Press the button that says so."""
    box = box_of(window)
    button = next(one for one in box.buttons() if words in one.text().replace("&", ""))
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def answer_next(qtbot: QtBot, window: Window, words: str) -> list[str]:
    """Press the button that says so in the dialog that comes up next and waits; what it told."""
    told: list[str] = []

    def press() -> None:
        box = box_of(window)
        told.extend((box.text(), box.informativeText()))
        answer(qtbot, window, words)

    QTimer.singleShot(0, window, press)
    return told


@pytest.fixture
def saved(window: Window, tmp_path: Path) -> Path:
    """The window's recipe, saved to a file."""
    path = tmp_path / "mine.toml"
    assert window.files.save_to(path)
    return path


@pytest.fixture
def second(qtbot: QtBot, window: Window, tmp_path: Path) -> Iterator[Window]:
    """Another window of the same user."""
    made = Window(window.session.recipe, config=tmp_path / "config", data=tmp_path / "data")
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.session.stack.setClean()
    made.close()
    made.deleteLater()
    gone()


def changed_by_another(path: Path, minutes: float = 44.0) -> Recipe:
    """Another program writes the file."""
    other = longer(read(path), minutes)
    write(other, path)
    return other


def test_a_file_changed_outside_is_told_and_can_be_taken_with_undo(qtbot: QtBot, window: Window, saved: Path) -> None:
    mine = window.session.recipe
    other = changed_by_another(saved)
    qtbot.waitUntil(lambda: any(box.isVisible() for box in window.findChildren(QMessageBox)))
    assert "changed by another" in box_of(window).text()
    assert "44 min" in box_of(window).informativeText()
    assert window.session.modified
    answer(qtbot, window, "Take what stands")
    assert window.session.recipe == other
    assert not window.session.modified
    window.session.stack.undo()
    assert window.session.recipe == mine
    assert window.session.modified


def test_a_file_made_unreadable_outside_is_told_and_what_is_here_stays(
    qtbot: QtBot, window: Window, saved: Path
) -> None:
    mine = window.session.recipe
    saved.write_text("torn [", encoding="utf-8")
    qtbot.waitUntil(lambda: any(box.isVisible() for box in window.findChildren(QMessageBox)))
    assert "TOML" in box_of(window).informativeText()
    answer(qtbot, window, "Keep")
    assert window.session.recipe == mine
    assert window.session.modified
    answer_next(qtbot, window, "Write over")
    assert window.files.save()
    assert read(saved) == mine


def test_a_file_that_is_gone_counts_as_unsaved(qtbot: QtBot, window: Window, saved: Path) -> None:
    saved.unlink()
    qtbot.waitUntil(lambda: window.session.modified)
    assert window.files.save()
    assert read(saved) == window.session.recipe


def test_what_changed_outside_is_never_written_over_unasked(qtbot: QtBot, window: Window, saved: Path) -> None:
    window.session.commit(longer(window.session.recipe, 75.0), "length")
    other = changed_by_another(saved)
    told = answer_next(qtbot, window, "Cancel")
    assert not window.files.save()
    assert "changed by another" in told[0]
    assert "44" in told[1]
    assert read(saved) == other
    assert window.session.modified
    answer_next(qtbot, window, "Write over")
    assert window.files.save()
    assert read(saved) == window.session.recipe
    assert other in [versions.recipe_of(one) for one in versions.versions(saved)]


def test_two_windows_on_one_file_are_told_and_ask(qtbot: QtBot, window: Window, second: Window, saved: Path) -> None:
    assert second.files.open(saved)
    assert "open in another window" in box_of(second).text()
    box_of(second).close()
    window.session.commit(longer(window.session.recipe, 75.0), "length")
    second.session.commit(longer(second.session.recipe, 80.0), "length")
    first = window.session.recipe
    assert window.files.save()
    answer_next(qtbot, second, "Cancel")
    assert not second.files.save()
    assert read(saved) == first


def test_saving_over_the_file_of_another_window_asks(qtbot: QtBot, window: Window, second: Window, saved: Path) -> None:
    kept = read(saved)
    second.session.commit(longer(second.session.recipe, 80.0), "length")
    told = answer_next(qtbot, second, "Cancel")
    assert not second.files.save_to(saved)
    assert "open in another window" in told[0]
    assert read(saved) == kept


def test_a_closed_window_gives_the_file_back(window: Window, second: Window, saved: Path) -> None:
    window.session.stack.setClean()
    window.close()
    assert second.files.open(saved)
    assert not any(box.isVisible() for box in second.findChildren(QMessageBox))


def test_a_protected_file_is_not_written_over(qtbot: QtBot, window: Window, saved: Path, tmp_path: Path) -> None:
    before = saved.read_bytes()
    saved.chmod(0o444)
    window.session.commit(longer(window.session.recipe, 75.0), "length")
    assert not window.files.save()
    assert "protected" in box_of(window).text()
    assert "Nothing is lost" in box_of(window).informativeText()
    box_of(window).close()
    assert saved.read_bytes() == before
    assert window.session.modified
    assert window.files.save_to(tmp_path / "another.toml")
    saved.chmod(0o644)


@pytest.mark.parametrize("error", [errno.ENOSPC, errno.EROFS, errno.EDQUOT])
def test_a_full_disk_leaves_the_old_file_and_the_work(
    window: Window, saved: Path, monkeypatch: pytest.MonkeyPatch, error: int
) -> None:
    before = sorted((one.name, one.read_bytes()) for one in saved.parent.glob("*.toml"))
    window.session.commit(longer(window.session.recipe, 75.0), "length")

    def full(handle: int) -> None:
        raise OSError(error, os.strerror(error))

    with monkeypatch.context() as patch:
        patch.setattr(os, "fsync", full)
        assert not window.files.save()
    assert os.strerror(error) in box_of(window).text()
    box_of(window).close()
    assert sorted((one.name, one.read_bytes()) for one in saved.parent.glob("*.toml")) == before
    assert list(saved.parent.glob(".*.new")) == []
    assert window.session.modified
    assert window.files.save()
    assert read(saved) == window.session.recipe


def test_a_journal_that_fails_is_said_and_the_word_goes_when_it_is_written_again(
    window: Window, tmp_path: Path
) -> None:
    folder = window.journal.folder
    window.journal.clear()
    (tmp_path / "data").mkdir(exist_ok=True)
    if folder.is_dir():
        folder.rmdir()
    folder.write_text("", encoding="utf-8")
    window.session.commit(longer(window.session.recipe, 75.0), "length")
    assert "recovery copy" in window.tools.trouble.text()
    folder.unlink()
    window.session.commit(longer(window.session.recipe, 76.0), "length")
    assert window.tools.trouble.text() == ""
    assert len(list(folder.glob("*.json"))) == 1


@pytest.mark.parametrize(("words", "closes"), [("Cancel", False), ("Discard", True), ("Save", True)])
def test_quitting_with_unsaved_work_asks(
    qtbot: QtBot, second: Window, tmp_path: Path, words: str, closes: bool
) -> None:
    path = tmp_path / "other.toml"
    assert second.files.save_to(path)
    second.session.commit(longer(second.session.recipe, 75.0), "length")
    answer_next(qtbot, second, words)
    assert second.close() is closes
    assert (read(path) == second.session.recipe) is (words == "Save")
    assert (leftovers(second.journal.folder) == []) is True
    assert second.journal.file.exists() is not closes


def test_discarding_for_a_file_that_cannot_be_read_loses_nothing(window: Window, tmp_path: Path) -> None:
    window.session.commit(longer(window.session.recipe, 75.0), "length")
    assert not window.files.open(tmp_path / "none.toml")
    box_of(window).close()
    assert window.journal.file.exists()
    assert window.session.modified


def test_undoing_to_what_is_saved_leaves_no_journal(window: Window, saved: Path) -> None:
    window.session.commit(longer(window.session.recipe, 75.0), "length")
    assert window.journal.file.exists()
    window.session.stack.undo()
    assert not window.session.modified
    assert not window.journal.file.exists()


def left_behind(path: Path, work: Recipe, folder: Path, base: str) -> list[Path]:
    """A journal as a killed window leaves it."""
    journal = Journal(folder)
    assert journal.write(writes(work, base), work.name, path, base) == ""
    journal.let_go()
    return [journal.file]


def test_recovered_work_is_set_beside_the_saved_file(qtbot: QtBot, window: Window, saved: Path, tmp_path: Path) -> None:
    base, was = saved.read_text(encoding="utf-8"), read(saved)
    work = longer(was, 95.0)
    left_behind(saved, work, tmp_path / "old", base)
    recovery.offer(window, leftovers(tmp_path / "old"))
    told = box_of(window).informativeText()
    assert "60 min" in told or "1 h" in told
    assert "95 min" in told or "1 h 35" in told
    answer(qtbot, window, "Take it up and compare")
    assert window.session.recipe == work
    assert window.stack.currentWidget() is window.opened["compare"]
    window.session.stack.undo()
    assert window.session.recipe == was
    assert not window.session.modified


def test_recovered_work_never_writes_over_what_was_saved_since(
    qtbot: QtBot, window: Window, saved: Path, tmp_path: Path
) -> None:
    base = saved.read_text(encoding="utf-8")
    left_behind(saved, longer(read(saved), 95.0), tmp_path / "old", base)
    other = longer(read(saved), 44.0)
    window.session.commit(other, "length")
    assert window.files.save()
    recovery.offer(window, leftovers(tmp_path / "old"))
    assert "changed since" in box_of(window).informativeText()
    answer(qtbot, window, "Take it up")
    answer_next(qtbot, window, "Cancel")
    assert not window.files.save()
    assert read(saved) == other


def test_each_leftover_is_asked_about_and_what_is_saved_is_forgotten(
    qtbot: QtBot, window: Window, saved: Path, tmp_path: Path
) -> None:
    folder = tmp_path / "old"
    was, base = read(saved), saved.read_text(encoding="utf-8")
    same = left_behind(saved, was, folder, base)[0]
    for minutes in (70.0, 71.0):
        left_behind(saved, longer(was, minutes), folder, base)
    recovery.offer(window, leftovers(folder))
    answer(qtbot, window, "Forget it")
    answer(qtbot, window, "later")
    assert not any(box.isVisible() for box in window.findChildren(QMessageBox))
    assert not same.exists()
    assert len(leftovers(folder)) == 1


def test_work_whose_file_is_gone_is_taken_up_as_unsaved(
    qtbot: QtBot, window: Window, saved: Path, tmp_path: Path
) -> None:
    work = longer(read(saved), 95.0)
    left_behind(tmp_path / "gone.toml", work, tmp_path / "old", saved.read_text(encoding="utf-8"))
    recovery.offer(window, leftovers(tmp_path / "old"))
    assert "gone" in box_of(window).informativeText()
    answer(qtbot, window, "Take it up")
    assert window.session.recipe == work
    assert window.session.path is None
    assert window.session.modified


def test_a_lock_has_one_holder_and_goes_on_to_the_next(tmp_path: Path) -> None:
    first, other = Hold(tmp_path / "a.lock"), Hold(tmp_path / "a.lock")
    assert first.take()
    assert not other.take()
    first.drop()
    assert other.take()
    assert not first.take()
    other.drop()
    assert not (tmp_path / "a.lock").exists()
