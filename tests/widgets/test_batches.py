"""Made batches with real events: noted, measured, tasted, corrected, undone without erasing, made a house style of."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, time
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from designer.batch.record import Batch, Reading
from styles import reader
from widgets.batch.desk import LedgerDesk
from widgets.batch.page import BatchesPage
from widgets.batch.readings import MEASURED, WHEN, WITH
from widgets.batch.tasting_form import TastingForm
from widgets.judging import known_style
from widgets.session import Session
from widgets.variants.style_maker import LIKED
from widgets.variants.style_page import StylePage
from widgets.window import Window


@pytest.fixture
def desk(session: Session, tmp_path: Path) -> Iterator[LedgerDesk]:
    made = LedgerDesk(tmp_path / "data" / "batches.sqlite", session)
    yield made
    made.close()


@pytest.fixture
def page(qtbot: QtBot, session: Session, desk: LedgerDesk) -> BatchesPage:
    """The page by itself, with one batch noted by its button."""
    made = BatchesPage(session, desk)
    qtbot.addWidget(made)
    made.resize(1200, 680)
    with qtbot.waitExposed(made):
        made.show()
    made.opened()
    assert made.empty.isVisible()
    qtbot.mouseClick(made.note, Qt.MouseButton.LeftButton)
    return made


def write(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)


def type_reading(qtbot: QtBot, page: BatchesPage, key: tuple[str, str], text: str, column: int = MEASURED) -> None:
    """Go to a reading, open it with Enter, type, leave with Enter."""
    table = page.readings
    table.setFocus()
    table.setCurrentCell(table.keys.index(key), column)
    qtbot.keyClick(table, Qt.Key.Key_Return)
    line = QApplication.focusWidget()
    assert isinstance(line, QLineEdit)
    write(qtbot, line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)
    QApplication.processEvents()


def taste(qtbot: QtBot, form: TastingForm, day: str, mark: str) -> None:
    write(qtbot, form.day, day)
    write(qtbot, form.mark, mark)
    qtbot.keyClick(form.mark, Qt.Key.Key_Return)


def values(batch: Batch) -> dict[tuple[str, str], float]:
    return {key: one.value for key, one in batch.readings.items()}


def test_when_and_with_what_it_was_measured(qtbot: QtBot, page: BatchesPage, desk: LedgerDesk) -> None:
    mill, drain = ("ph", "mill"), ("ph", "drain")
    type_reading(qtbot, page, drain, "6.12")
    (one,) = desk.batches()
    assert isinstance(one.readings[drain].taken, datetime), "of now, on the day of the make"
    type_reading(qtbot, page, drain, "11:20", WHEN)
    type_reading(qtbot, page, drain, "pH meter", WITH)
    type_reading(qtbot, page, mill, "5.41")
    (one,) = desk.batches()
    assert one.readings[drain] == Reading(6.12, datetime.combine(one.told.made, time(11, 20)), "pH meter")
    assert one.readings[mill].instrument == "pH meter", "as the last"
    type_reading(qtbot, page, mill, "soon", WHEN)
    assert "no moment" in page.hint.text()
    type_reading(qtbot, page, mill, " ", WHEN)
    assert desk.batches()[0].readings[mill] == Reading(5.41, None, "pH meter")
    page.stack.undo()
    page.stack.undo()
    assert mill not in desk.batches()[0].readings


def test_noted_measured_corrected_and_undone(qtbot: QtBot, page: BatchesPage, desk: LedgerDesk) -> None:
    (one,) = desk.batches()
    assert (one.told.made, one.as_made.recipe) == (date.today(), page.session.recipe.name)
    write(qtbot, page.day, "2024-05-07")
    qtbot.keyClick(page.day, Qt.Key.Key_Return)
    type_reading(qtbot, page, ("moisture_pct", ""), "36,4 %")
    type_reading(qtbot, page, ("moisture_pct", ""), "36.9")
    type_reading(qtbot, page, ("ph", "mill"), "5.41")
    (one,) = desk.batches()
    assert one.told.made == date(2024, 5, 7)
    assert values(one) == {("moisture_pct", ""): 36.9, ("ph", "mill"): 5.41}
    assert desk.past(one, ("moisture_pct", "")) == (36.4,)
    item = page.readings.item(page.readings.keys.index(("moisture_pct", "")), MEASURED)
    assert "36.4" in item.toolTip()
    type_reading(qtbot, page, ("ph", "mill"), "15")
    assert "can't be 15" in page.hint.text()
    page.stack.undo()
    page.stack.undo()
    assert values(desk.batches()[0]) == {("moisture_pct", ""): 36.4}
    page.stack.redo()
    assert desk.past(one, ("moisture_pct", "")) == (36.4, 36.9, 36.4)


def test_tasted_with_the_styles_words_and_corrected(qtbot: QtBot, page: BatchesPage, desk: LedgerDesk) -> None:
    qtbot.mouseClick(page.taste, Qt.MouseButton.LeftButton)
    form = page.form
    assert form.words["body"].chips[0].text() == "firm"
    qtbot.mouseClick(form.words["body"].chips[0], Qt.MouseButton.LeftButton)
    write(qtbot, form.words["flavour"].others, "hay, clean")
    qtbot.mouseClick(form.again, Qt.MouseButton.LeftButton)
    taste(qtbot, form, "soon", "8")
    assert "no day" in form.wrong.text()
    taste(qtbot, form, "2020-01-01", "8")
    assert "before it was made" in form.wrong.text()
    taste(qtbot, form, date.today().isoformat(), "11")
    assert "0 to 10" in form.wrong.text()
    taste(qtbot, form, date.today().isoformat(), "8,5")
    (one,) = desk.batches()
    assert one.liked
    assert one.last is not None
    assert (one.last.mark, one.last.body, one.last.flavour) == (8.5, ("firm",), ("hay", "clean"))
    assert page.list.topLevelItem(0).text(3) == "8.5, again"
    (number,) = one.tastings
    page.tastings.correct.emit(number)
    assert form.words["body"].chips[0].isChecked()
    qtbot.mouseClick(form.never, Qt.MouseButton.LeftButton)
    qtbot.mouseClick(form.keep, Qt.MouseButton.LeftButton)
    (one,) = desk.batches()
    assert (len(one.tastings), one.liked) == (1, False)
    page.stack.undo()
    assert desk.batches()[0].liked
    qtbot.keyClick(page.list, Qt.Key.Key_Down)
    qtbot.mouseClick(page.strike, Qt.MouseButton.LeftButton)
    assert desk.batches() == ()
    page.stack.undo()
    assert len(desk.batches()) == 1


def test_a_house_style_of_the_invented_batches(qtbot: QtBot, window: Window, tmp_path: Path) -> None:
    """The example dairy's batches are of its Cheddar: renamed so, a recipe finds them, and none is kept."""
    assert window.files.save_to(tmp_path / "round.toml")
    window.actions_["batches"].trigger()
    page = window.opened["batches"]
    assert isinstance(page, BatchesPage)
    assert not page.house.isVisible()
    qtbot.mouseClick(page.look, Qt.MouseButton.LeftButton)
    assert "made up" in page.sentence.text()
    if not page.list.topLevelItemCount():
        qtbot.mouseClick(page.all, Qt.MouseButton.LeftButton)
    assert page.list.topLevelItemCount() == 5
    chosen = page.list.topLevelItem(0).text(1)
    assert chosen == "Thistlecombe Cheddar"
    window.session.commit(window.session.recipe.model_copy(update={"name": chosen}), "name")
    page.refresh()
    qtbot.mouseClick(page.house, Qt.MouseButton.LeftButton)
    house = window.opened["house"]
    assert isinstance(house, StylePage)
    assert house.maker.begin_from.currentData() == LIKED
    assert "liked: 4" in house.maker.says.text()
    house.maker.limits.setChecked(True)
    qtbot.keyClicks(house.maker.name, "Dairy Own")
    qtbot.keyClick(house.maker.name, Qt.Key.Key_Return)
    made = house.document.style
    assert made is not None
    assert made.windows_of("moisture_pct")[0].source == "measured in 4 of 4 liked batches"
    assert any(one.kind == "legal limit" for one in made.rules)
    assert made.milk == ("cow",)
    assert not (tmp_path / "data" / "batches.sqlite").exists()
    reader.adopt(Path(__file__).parent)
    known_style.cache_clear()
