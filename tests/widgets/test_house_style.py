"""The house style in the window, with real events: made, typed, taken out, undone by itself, chosen, judged by."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from designer.judge.style_rows import rows
from designer.recipe.document import Recipe
from designer.recipe.edit import edit_recipe
from styles import reader
from widgets.form.editors import ChoiceEditor
from widgets.judging import known_style
from widgets.outcomes.check_place import CheckPlace
from widgets.start.place import StartPlace
from widgets.variants.style_page import StylePage
from widgets.variants.style_table import HIGH, LOW, SOURCE
from widgets.window import Window

CUT = next(row for row in rows(reader.style("cheddar")) if row.key == "cut_mm").path


@pytest.fixture
def saved(window: Window, tmp_path: Path) -> Iterator[Path]:
    """The recipe saved in a folder of its own."""
    folder = tmp_path / "dairy"
    folder.mkdir()
    assert window.files.save_to(folder / "round.toml")
    yield folder
    reader.adopt(Path(__file__).parent)
    known_style.cache_clear()


@pytest.fixture
def page(window: Window, saved: Path) -> StylePage:
    """The page, opened by its action."""
    window.actions_["house"].trigger()
    made = window.opened["house"]
    assert isinstance(made, StylePage)
    return made


@pytest.fixture
def own(qtbot: QtBot, page: StylePage) -> StylePage:
    """A house style made from the recipe's own style, by keys."""
    assert page.maker.begin_from.currentText() == "Cheddar"
    qtbot.keyClicks(page.maker.name, "Hill Round")
    qtbot.keyClick(page.maker.name, Qt.Key.Key_Return)
    assert page.document.style is not None
    return page


def test_the_start_page_begins_with_a_style_of_ones_own(
    qtbot: QtBot, own: StylePage, window: Window, saved: Path
) -> None:
    window.go("start")
    start = window.opened["start"]
    assert isinstance(start, StartPlace)
    first = start.from_style.list.item(0)
    assert "Hill Round" in first.text()
    met = MetOf(edit_recipe(window.session.recipe, style=str(first.data(Qt.ItemDataRole.UserRole)), name="Next"))
    start._take(met)  # type: ignore[arg-type]
    assert window.session.path is None
    known = known_style(window.session.recipe.style)
    assert known is not None, "it is found though the recipe has no file yet"
    assert window.files._folder == saved


@dataclass(frozen=True)
class MetOf:
    """What working out a first recipe gives, as far as the page reads it."""

    recipe: Recipe
    notes: tuple[str, ...] = ()
    reached: bool = True
    missed: tuple[str, ...] = ()
    sentence: str = ""


def type_end(qtbot: QtBot, page: StylePage, path: tuple[str, str, str], column: int, text: str) -> None:
    """Go to an end by keys, open it with Enter, type, leave with Enter."""
    table = page.table
    table.go_to(path)
    table.setCurrentCell(table.currentRow(), column)
    qtbot.keyClick(table, Qt.Key.Key_Return)
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit)
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)
    QApplication.processEvents()


def test_an_unsaved_recipe_has_no_place_for_one_and_says_so(window: Window) -> None:
    window.actions_["house"].trigger()
    page = window.opened["house"]
    assert isinstance(page, StylePage)
    assert page.save.isVisible()
    assert not page.maker.isVisible()


def test_made_from_a_style_it_lies_beside_the_recipe(own: StylePage, saved: Path) -> None:
    assert reader.read(saved / "hill-round.style.toml") == own.document.style
    assert "hill-round.style.toml" in own.sentence.text()


def test_made_from_the_forecast(qtbot: QtBot, page: StylePage, window: Window) -> None:
    page.maker.begin_from.setCurrentIndex(0)
    qtbot.keyClicks(page.maker.name, "As Made")
    qtbot.mouseClick(page.maker.make, Qt.MouseButton.LeftButton)
    made = page.document.style
    assert made is not None
    (cut,) = made.windows_of("cut_mm")
    assert cut.low is not None
    assert cut.low < 10.0
    assert cut.source.startswith("forecast of")


def test_a_name_that_is_taken_is_said_beside_its_field(qtbot: QtBot, page: StylePage) -> None:
    qtbot.keyClicks(page.maker.name, "Gouda")
    qtbot.keyClick(page.maker.name, Qt.Key.Key_Return)
    assert page.maker.wrong.isVisible()
    assert "give yours another" in page.maker.wrong.text()
    assert page.document.style is None


def test_an_end_is_typed_with_its_unit_and_kept_at_once(qtbot: QtBot, own: StylePage, saved: Path) -> None:
    type_end(qtbot, own, CUT, LOW, "1/4 in")
    window_ = reader.read(saved / "hill-round.style.toml").windows_of("cut_mm")[0]
    assert window_.low == pytest.approx(6.35)
    assert window_.source == "the maker's own"
    assert own.table.item(own.table.currentRow(), SOURCE).text() == "the maker's own"


def test_what_cannot_be_read_stands_with_the_reason_beside_it(qtbot: QtBot, own: StylePage) -> None:
    path = CUT
    type_end(qtbot, own, path, LOW, "5 kg")
    assert own.stack.count() == 0
    line = own.table.currentRow()
    assert own.table.item(line, LOW).text() == "5 kg"
    assert "length is asked for" in own.table.item(line, SOURCE).text()
    qtbot.keyClick(own.table, Qt.Key.Key_Escape)
    assert own.table.complaint_of(path) == ""
    type_end(qtbot, own, path, LOW, "500 mm")
    assert "backwards" in own.table.item(own.table.currentRow(), SOURCE).text()
    type_end(qtbot, own, path, HIGH, "600 mm")
    assert own.table.complaint_of(path) == ""
    assert own.stack.count() == 1


def test_undo_on_this_page_is_the_styles_and_elsewhere_the_recipes(
    qtbot: QtBot, own: StylePage, window: Window
) -> None:
    before = own.document.style
    type_end(qtbot, own, ("gate", "ph", "h24"), HIGH, "5.4")
    assert own.document.style != before
    assert "pH" in window.actions_["undo"].text()
    window.actions_["undo"].trigger()
    assert own.document.style == before
    window.go("design")
    assert not window.actions_["undo"].isEnabled()
    window.go("house")
    window.actions_["redo"].trigger()
    assert own.document.style != before


def test_rows_come_by_menu_and_go_by_key(qtbot: QtBot, own: StylePage) -> None:
    menu = own.adding["limit"]
    menu.aboutToShow.emit()
    next(action for action in menu.actions() if action.text() == "Moisture").trigger()
    row = own.table.current_row()
    assert row is not None
    assert row.path == ("limit", "moisture_pct", "")
    qtbot.keyClick(own.table, Qt.Key.Key_Delete)
    assert own.document.style is not None
    assert not any(rules.key == "own" for rules in own.document.style.rules)


def test_a_law_is_not_typed_over(qtbot: QtBot, own: StylePage) -> None:
    law = next(row for row in own.table.by_line.values() if row.part == "law")
    own.table.go_to(law.path)
    qtbot.keyClick(own.table, Qt.Key.Key_Delete)
    qtbot.keyClicks(own.table, "5")
    assert own.stack.count() == 0
    assert "stays as it is" in own.hint.text()


def test_the_recipe_is_checked_against_it_and_the_lists_hold_it(qtbot: QtBot, own: StylePage, window: Window) -> None:
    qtbot.mouseClick(own.use, Qt.MouseButton.LeftButton)
    assert window.session.recipe.style == "hill-round"
    assert window.session.verdict is not None
    assert window.session.verdict.name == "Hill Round"
    assert not own.use.isVisible()
    window.go("milk")
    editor = window.opened["milk"]._cards["recipe"].form.editors["style"]  # type: ignore[attr-defined]
    assert isinstance(editor, ChoiceEditor)
    assert editor.box.currentText() == "Hill Round (own)"
    before = len(window.session.verdict.rows)
    window.go("house")
    menu = own.adding["limit"]
    menu.aboutToShow.emit()
    menu.actions()[0].trigger()
    assert len(window.session.verdict.rows) == before + 1, "a new limit is judged by at once"


def test_rule_sets_are_chosen_and_remembered(qtbot: QtBot, window: Window) -> None:
    window.go("check")
    place = window.opened["check"]
    assert isinstance(place, CheckPlace)
    sets = place.rule_sets
    assert window.session.verdict is not None
    assert {key for key, one in sets.buttons.items() if one.isChecked()} == set(window.session.verdict.rules)
    qtbot.mouseClick(sets.buttons["us"], Qt.MouseButton.LeftButton)
    assert "us" not in window.session.verdict.rules
    assert "class" in window.session.verdict.rules
    assert not any(row.rules == "us" for row in window.session.verdict.rows)
    assert window.preferences.rules_of("cheddar") == window.session.verdict.rules
    qtbot.mouseClick(sets.usual, Qt.MouseButton.LeftButton)
    assert sets.buttons["us"].isChecked()
    assert window.preferences.rules_of("cheddar") is None


def test_escape_leads_back_to_the_check(qtbot: QtBot, own: StylePage, window: Window) -> None:
    own.table.setFocus()
    qtbot.keyClick(own.table, Qt.Key.Key_Escape)
    assert window.stack.currentWidget() is window.opened["check"]


def test_a_style_that_cannot_be_read_says_why(own: StylePage, window: Window, saved: Path) -> None:
    own.use.click()
    assert window.files.save()
    (saved / "hill-round.style.toml").write_text("format = 1", encoding="utf-8")
    assert window.files.open(saved / "round.toml")
    window.go("check")
    place = window.opened["check"]
    assert isinstance(place, CheckPlace)
    assert "hill-round.style.toml" in place._sentence.text()
