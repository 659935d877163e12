"""Another amount of milk in the window, with real events: typed, previewed line by line, kept, undone."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton, QTreeWidgetItemIterator
from pytestqt.qtbot import QtBot

from designer.recipe.milk import blend
from designer.recipe.scaling import Line
from widgets.variants.scale_page import LARGE, LINE, OWN, ScalePage
from widgets.window import Window


@pytest.fixture
def page(qtbot: QtBot, window: Window) -> ScalePage:
    """The page, opened from the Milk place by its button."""
    window.go("milk")
    button = next(b for b in window.opened["milk"].findChildren(QPushButton) if b.text() == "Another amount…")
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    made = window.opened["scale"]
    assert isinstance(made, ScalePage)
    return made


def retype(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    """Type in place of what stands there, and leave with Enter."""
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def lines(page: ScalePage) -> Iterator[Line]:
    """The lines shown."""
    found = QTreeWidgetItemIterator(page.table)
    while found.value() is not None:
        line = found.value().data(0, LINE)
        if line is not None:
            yield line
        found += 1


def litres(window: Window) -> float:
    milk = blend(window.session.recipe)
    return milk.mass_kg / milk.density_kg_l


def test_every_line_says_its_rule_and_nothing_changes_before_it_is_kept(
    qtbot: QtBot, page: ScalePage, window: Window
) -> None:
    before = window.session.recipe
    retype(qtbot, page.amount, "300 L")
    shown = list(lines(page))
    assert page.scaled is not None
    assert shown
    assert set(shown) == set(page.scaled.lines)
    assert {line.rule for line in shown} >= {"by milk", "unchanged", "to be checked"}
    assert window.session.recipe is before


def test_it_is_kept_as_one_step_of_undo(qtbot: QtBot, page: ScalePage, window: Window) -> None:
    before = window.session.recipe
    retype(qtbot, page.amount, "300 L")
    qtbot.mouseClick(page.apply, Qt.MouseButton.LeftButton)
    assert litres(window) == pytest.approx(300.0)
    assert window.session.stack.count() == 1
    assert "300 L" in window.actions_["undo"].text()
    assert not page.apply.isEnabled(), "it is so already"
    window.actions_["undo"].trigger()
    assert window.session.recipe == before


def test_a_gallon_is_asked_about_with_both_amounts(qtbot: QtBot, page: ScalePage) -> None:
    retype(qtbot, page.amount, "20 gal")
    assert page.scaled is None
    assert page.wrong.isVisible()
    assert [one.text() for one in page.asked.buttons] == ["20 US gal = 75.708 L", "20 imp gal = 90.922 L"]
    qtbot.mouseClick(page.asked.buttons[1], Qt.MouseButton.LeftButton)
    assert page.amount.text() == "20 imp gal"
    assert page.scaled is not None
    assert not page.wrong.isVisible()


@pytest.mark.parametrize("text", ["lots", "5 kg", "0 L", "1e9 L"])
def test_what_cannot_be_is_said_beside_the_field(qtbot: QtBot, page: ScalePage, text: str) -> None:
    retype(qtbot, page.amount, text)
    assert page.wrong.isVisible()
    assert not page.apply.isEnabled()


def test_larger_cheeses_or_forms_of_ones_own(qtbot: QtBot, page: ScalePage, window: Window) -> None:
    form = window.session.recipe.form
    assert form is not None
    retype(qtbot, page.amount, "400 L")
    qtbot.mouseClick(page.forms.button(LARGE), Qt.MouseButton.LeftButton)
    assert page.scaled is not None
    large = page.scaled.recipe.form
    assert large is not None
    assert large.count == form.count
    assert large.height_mm > form.height_mm
    retype(qtbot, page.count, "3")
    retype(qtbot, page.across, "400 mm")
    assert page.forms.checkedId() == OWN
    own = page.scaled.recipe.form
    assert own is not None
    assert (own.count, own.diameter_mm) == (3, 400.0)
    retype(qtbot, page.across, "4 m")
    assert "20 mm" in page.wrong.text()


def test_the_vats_power_decides_how_long_warming_takes(qtbot: QtBot, page: ScalePage) -> None:
    retype(qtbot, page.amount, "1000 L")
    assert not any(line.rule == "by the vat's power" and line.changed for line in lines(page))
    retype(qtbot, page.power, "6 kW")
    assert any(line.rule == "by the vat's power" and line.changed for line in lines(page))


def test_too_small_to_measure_says_how_to_dilute(qtbot: QtBot, page: ScalePage) -> None:
    retype(qtbot, page.amount, "2 L")
    assert any("let 1 mL down to 10 mL" in line.why for line in lines(page))


def test_names_of_the_lines_have_the_room_there_is(qtbot: QtBot, page: ScalePage) -> None:
    for width in (1000, 1800):
        page.resize(width, 700)
        QApplication.processEvents()
        asked, table = page.table.sizeHintForColumn(0), page.table
        assert table.columnWidth(0) >= min(asked, round(0.38 * table.viewport().width()))
        assert table.columnWidth(0) <= 0.6 * table.viewport().width()
