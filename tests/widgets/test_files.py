"""Open, save and recover: same document, comments kept, nothing lost, every failure a sentence."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from PySide6.QtWidgets import QMessageBox
from pytestqt.qtbot import QtBot

from designer.recipe import edit as edits
from designer.recipe.examples import examples, is_example
from designer.recipe.file import read, writes
from tests.widgets.conftest import CHEDDAR
from widgets import recovery
from widgets.files import read as read_both
from widgets.journal import Journal, leftovers
from widgets.preferences import Preferences
from widgets.window import Window


def told(window: Window) -> str:
    """The sentence of the dialog that is open, which is then closed."""
    box = next(box for box in window.findChildren(QMessageBox) if box.isVisible())
    text = box.text()
    box.close()
    return text


def test_save_then_load_is_the_same_document(window: Window, tmp_path: Path) -> None:
    path = tmp_path / "mine.toml"
    window.session.load(*_loaded(CHEDDAR, None))
    window.session.commit(edits.edit_end(window.session.recipe, "ripen", length_min=75.0), "length")
    assert window.files.save_to(path)
    assert not window.session.modified
    assert read(path) == window.session.recipe
    text = path.read_text(encoding="utf-8")
    assert "# Thistlecombe Dairy is made up" in text
    assert 'length = "1.25 h"' in text or 'length = "75 min"' in text or 'length = "1 h 15 min"' in text


def _loaded(path: Path, own: Path | None) -> tuple[object, Path | None, str]:
    recipe, text = read_both(path)
    return recipe, own, text


def test_undo_survives_a_save(window: Window, tmp_path: Path) -> None:
    first = window.session.recipe
    window.session.commit(edits.edit_end(first, "ripen", length_min=75.0), "length")
    window.files.save_to(tmp_path / "mine.toml")
    window.session.stack.undo()
    assert window.session.recipe == first
    assert window.session.modified
    assert window.isWindowModified()


def test_opening_takes_the_place_of_what_was_there(window: Window) -> None:
    other = next(path for path in examples() if "gouda" in path.name)
    assert window.files.open(other)
    assert window.session.recipe == read(other)
    assert window.session.path is None
    assert window.session.stack.count() == 0
    assert window.session.recipe.name in window.windowTitle()
    assert window.curve.frame.blocks[0].id == window.session.recipe.stages[0].id


@pytest.mark.parametrize(
    ("text", "word"),
    [("", "empty"), ("format = 9\nname = 'x'", "format"), ("nonsense [", "TOML"), ("format = 1\nnmae = 'x'", "nmae")],
)
def test_a_bad_file_is_a_sentence_and_changes_nothing(window: Window, tmp_path: Path, text: str, word: str) -> None:
    kept = window.session.recipe
    path = tmp_path / "bad.toml"
    path.write_text(text, encoding="utf-8")
    assert not window.files.open(path)
    sentence = told(window)
    assert word in sentence
    assert "Traceback" not in sentence
    assert window.session.recipe is kept


def test_a_folder_and_a_missing_file_are_sentences(window: Window, tmp_path: Path) -> None:
    for path in (tmp_path, tmp_path / "none.toml"):
        assert not window.files.open(path)
        assert told(window)


def test_saving_where_one_may_not_is_a_sentence(window: Window, tmp_path: Path) -> None:
    assert not window.files.save_to(tmp_path / "no such folder" / "a.toml")
    assert "written" in told(window)


def test_the_programs_own_examples_are_opened_as_copies() -> None:
    assert all(is_example(path) for path in examples())
    assert len(examples()) >= 1


def test_every_kept_edit_is_in_the_journal(window: Window, tmp_path: Path) -> None:
    folder = tmp_path / "data" / "recovery"
    window.session.commit(edits.edit_end(window.session.recipe, "ripen", length_min=80.0), "length")
    held = json.loads(next(folder.glob("*.json")).read_text(encoding="utf-8"))
    assert held["name"] == window.session.recipe.name
    assert leftovers(folder) == []
    window.files.save_to(tmp_path / "mine.toml")
    assert list(folder.glob("*.json")) == []


def test_work_of_a_killed_window_is_offered_and_taken_up(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    path = tmp_path / "mine.toml"
    window.files.save_to(path)
    changed = edits.edit_end(window.session.recipe, "ripen", length_min=95.0)
    folder = tmp_path / "elsewhere"
    journal = Journal(folder)
    assert journal.write(writes(changed), "Mine", path) == ""
    assert leftovers(folder) == []
    journal.let_go()
    left = leftovers(folder)
    assert len(left) == 1
    recovery.offer(window, left)
    box = next(box for box in window.findChildren(QMessageBox) if box.isVisible())
    assert "Mine" in box.text()
    next(button for button in box.buttons() if "Take" in button.text()).click()
    assert window.session.recipe == changed
    assert window.session.modified
    assert window.session.path == path
    assert leftovers(folder) == []


def test_a_torn_journal_is_passed_over(tmp_path: Path) -> None:
    (tmp_path / "a.json").write_text("{", encoding="utf-8")
    (tmp_path / "b.json").write_text("[]", encoding="utf-8")
    assert leftovers(tmp_path) == []
    assert leftovers(tmp_path / "none") == []


def test_a_journal_that_cannot_be_written_says_so(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("", encoding="utf-8")
    assert "recovery" in Journal(tmp_path / "file").write("", "x", None)


def test_preferences_are_remembered(qtbot: QtBot, tmp_path: Path) -> None:
    first = Preferences(tmp_path / "p.ini")
    first.system, first.scheme, first.keep_end = "us", "dark", True
    first.remember(CHEDDAR)
    second = Preferences(tmp_path / "p.ini")
    assert (second.system, second.scheme, second.keep_end) == ("us", "dark", True)
    assert second.recent == [CHEDDAR.resolve()]
    second.remember(CHEDDAR)
    assert len(second.recent) == 1
