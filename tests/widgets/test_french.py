"""The window in French: no English left on the main places, figures with a comma, and nothing cut off."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QTableView,
    QTreeView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from designer.judge.compare import compare
from designer.language import ENGLISH, speak
from designer.plan.make_plan import make_plan
from designer.recipe.document import Recipe
from designer.recipe.edit import edit_addition
from designer.recipe.per_milk import for_milk
from designer.translations.gather import FOLDER, translations
from widgets import language
from widgets.compare.worth_table import WorthTable
from widgets.form.stage_form import StageForm
from widgets.outcomes.check_place import ICON_PX, STANDS, CheckPlace
from widgets.paper.draw import write_pdf
from widgets.window import Window

FRENCH = translations(FOLDER / "fr.ts")
SAME_IN_BOTH = frozenset(text for (_, text), said in FRENCH.items() if text == said)
ENGLISH_ONLY = frozenset(
    plain for _, text in FRENCH if (plain := text.replace("&", "")) not in SAME_IN_BOTH
) - frozenset(said.replace("&", "") for said in FRENCH.values())
"""Texts that are never said in French."""


@pytest.fixture
def spoken(qtbot: QtBot) -> Iterator[None]:
    """French, put away again at the end."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    language.install(app, "fr")
    yield
    language.install(app, "en")
    speak(ENGLISH)


@pytest.fixture
def french(spoken: None, window: Window) -> Window:
    """The window in French."""
    return window


def texts(of: QWidget) -> Iterator[str]:
    """Every text that stands in a widget and what is in it, lists and tables included."""
    for one in (of, *of.findChildren(QWidget)):
        yield from (one.toolTip(), one.accessibleName(), one.statusTip())
        if isinstance(one, QLabel | QAbstractButton):
            yield one.text()
        if isinstance(one, QLineEdit):
            yield one.placeholderText()
        if isinstance(one, QComboBox):
            yield from (one.itemText(index) for index in range(one.count()))
        if isinstance(one, QAbstractItemView) and (model := one.model()) is not None:
            columns = model.columnCount() if isinstance(one, QTreeView | QTableView) else 1
            for column in range(columns):
                yield str(model.headerData(column, Qt.Orientation.Horizontal) or "")
                yield from (str(model.index(row, column).data() or "") for row in range(model.rowCount()))


@pytest.mark.parametrize("place", ["start", "milk", "design", "check", "compare", "plan", "scale", "other_milk"])
def test_no_english_is_left_on_a_place(french: Window, place: str) -> None:
    french.go(place)
    QApplication.processEvents()
    own = {stage.title for stage in french.session.recipe.stages}  # as the maker wrote it
    assert {text for text in texts(french) if text.replace("&", "") in ENGLISH_ONLY} - own == set()


def test_no_english_is_left_in_the_menus(french: Window) -> None:
    said = {action.text().replace("&", "") for action in french.actions_.by_key.values()}
    assert said & ENGLISH_ONLY == set()
    assert french.actions_["undo"].text().replace("&", "") == "Annuler"


def test_a_temperature_is_typed_and_said_back_with_a_comma(qtbot: QtBot, french: Window) -> None:
    french.go("design")
    french.session.choose("warm")
    QApplication.processEvents()
    form = french.stage_form
    assert isinstance(form, StageForm)
    field = form._own.editors["temperature_c"].findChild(QLineEdit)
    assert field is not None
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, "38,5 °C")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert french.session.recipe.stage("warm").temperature_c == pytest.approx(38.5)  # type: ignore[union-attr]
    assert field.text() == "38,5 °C"


def test_what_doses_are_said_of_is_not_said_in_every_line(spoken: None, qtbot: QtBot, recipe: Recipe) -> None:
    """The sentence over the table says that doses are of 100 kg of milk."""
    more = edit_addition(for_milk(recipe, 0.5), "rennet", volume_l=0.0125)
    found = compare(recipe, more, measure=lambda one: {})
    assert any("100 kg" in one.sentence for one in found.differences)
    table = WorthTable()
    qtbot.addWidget(table)
    table.fill(found)
    lines = [item.text(0) for item in table.items()]
    assert lines
    assert [text for text in lines if "100 kg" in text] == []


def test_the_file_stays_as_it_is_written(french: Window, tmp_path: Path) -> None:
    path = tmp_path / "own.toml"
    assert french.files.save_to(path)
    text = path.read_text("utf-8")
    assert 'fat = "3.7 %"' in text
    assert "caill" not in text


@pytest.mark.parametrize("place", ["milk", "check", "design"])
def test_nothing_is_cut_off_at_1366_by_768(french: Window, place: str) -> None:
    french.go(place)
    QApplication.processEvents()
    cut = {
        one.text(): (one.width(), one.sizeHint().width())
        for one in french.findChildren(QAbstractButton)
        if one.isVisible() and one.text() and one.width() < one.sizeHint().width() - 1
    }
    assert cut == {}


def test_the_check_never_scrolls_sideways_and_its_sentences_are_whole(french: Window) -> None:
    french.go("check")
    QApplication.processEvents()
    place = french.opened["check"]
    assert isinstance(place, CheckPlace)
    tree = place.tree
    assert tree.horizontalScrollBar().maximum() == 0
    lines = QFontMetricsF(tree.font()).height()
    rows = [tree.topLevelItem(top).child(at) for top in range(3) for at in range(tree.topLevelItem(top).childCount())]
    assert rows
    for row in rows:
        box = tree.visualItemRect(row)
        said = QFontMetricsF(tree.font()).horizontalAdvance(row.text(STANDS))
        assert said < tree.columnWidth(STANDS) - ICON_PX or box.height() >= 2 * lines


def test_the_plan_is_printed_in_french(french: Window, tmp_path: Path) -> None:
    path = tmp_path / "fiche.pdf"
    pages = write_pdf(make_plan(french.session.forecast), path)
    words = " ".join(" ".join(page.extract_text().split()) for page in PdfReader(path).pages)
    for said in ("À la cuve", "Après la cuve", "décaillage", "égouttage", "à peser avant", f"page 1 sur {pages}"):
        assert said.lower() in words.lower()
    assert "Late or early" not in words
