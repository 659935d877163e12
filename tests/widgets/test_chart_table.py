"""Every chart as a table: the same figures as the curves, following edits, walked by keys, copied for a spreadsheet."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from designer.recipe import edit as edits
from designer.recipe.examples import examples
from widgets.chart_figures import CURVES, NOTHING, moments
from widgets.chart_table import ChartTable
from widgets.compare.place import ComparePlace
from widgets.window import Window
from widgets.wording import stage_name

LONG_MS = 120_000


@pytest.fixture
def table(qtbot: QtBot, window: Window) -> ChartTable:
    """The table of the window's make curve, opened by its key."""
    qtbot.keyClick(window.curve, Qt.Key.Key_T, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(window.table.isVisible)
    return window.table


def cells(table: ChartTable, column: int) -> list[str]:
    return [table.model.index(row, column).data() for row in range(table.model.rowCount())]


def test_it_holds_every_curve_with_its_band(window: Window, table: ChartTable) -> None:
    heads = [table.model.headerData(at, Qt.Orientation.Horizontal) for at in range(table.model.columnCount())]
    assert len(heads) == 3 + 2 * len(CURVES)
    assert "temperature, °C" in heads
    stages = window.session.forecast.stages
    assert list(dict.fromkeys(cells(table, 0))) == list(dict.fromkeys(stage_name(s.name, s.kind) for s in stages))
    last = table.model.rowCount() - 1
    shown = float(table.model.index(last, 5).data())
    assert shown == pytest.approx(float(window.session.forecast.trace["ph"][-1]), abs=0.006)


def test_whey_has_a_ph_only_while_it_stands_beside_curd(table: ChartTable) -> None:
    column = next(at for at in range(table.model.columnCount())
                  if table.model.headerData(at, Qt.Orientation.Horizontal) == "pH of whey")  # fmt: skip
    told = dict(zip(cells(table, 0), cells(table, column), strict=True))
    assert told["ripen"] == told["set"] == told["press"] == NOTHING
    assert float(told["cook"]) > 5.0


def test_it_follows_edits_but_not_while_closed(qtbot: QtBot, window: Window, table: ChartTable) -> None:
    window.session.commit(edits.edit(window.session.recipe, "warm", temperature_c=36.0), "cook")
    qtbot.waitUntil(lambda: "36.0" in cells(table, 3))
    table.close()
    window.session.commit(edits.edit(window.session.recipe, "warm", temperature_c=35.0), "cook")
    QApplication.processEvents()
    assert "36.0" in cells(table, 3)
    table.tell()
    assert "36.0" not in cells(table, 3)


def test_bands_come_in(qtbot: QtBot, window: Window, table: ChartTable) -> None:
    qtbot.waitUntil(lambda: any(" – " in text for text in cells(table, 6)), timeout=LONG_MS)


def test_arrows_walk_and_copy_takes_what_is_selected(qtbot: QtBot, table: ChartTable) -> None:
    view = table.view
    assert view.currentIndex().row() == 0
    qtbot.keyClick(view, Qt.Key.Key_Down)
    qtbot.keyClick(view, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClick(view, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    qtbot.mouseClick(table.copy_button, Qt.MouseButton.LeftButton)
    lines = QGuiApplication.clipboard().text().splitlines()
    assert len(lines) == 3
    assert lines[0] == "\t".join(table.model.grid.heads[:2])
    assert lines[1] == "\t".join(table.model.index(1, at).data() for at in (0, 1))


def test_all_is_copied_where_nothing_is_selected(qtbot: QtBot, table: ChartTable) -> None:
    table.view.clearSelection()
    qtbot.keyClick(table.view, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: len(QGuiApplication.clipboard().text().splitlines()) == table.model.rowCount() + 1)


def test_compare_is_told_beside_each_other(qtbot: QtBot, window: Window, table: ChartTable) -> None:
    window.go("compare")
    place = window.opened["compare"]
    assert isinstance(place, ComparePlace)
    place.open_file(next(path for path in examples() if "gouda" in path.stem))
    qtbot.waitUntil(lambda: len(place.curves.makes) == 2, timeout=LONG_MS)
    qtbot.waitUntil(lambda: table.model.columnCount() == 7)
    assert place.curves.names[1] in table.model.grid.heads[2]
    window.go("design")
    qtbot.waitUntil(lambda: table.model.columnCount() == 3 + 2 * len(CURVES))


def test_us_units(window: Window, table: ChartTable) -> None:
    window._set_system("us")
    table.refresh()
    assert "temperature, °F" in table.model.grid.heads
    assert float(cells(table, 3)[0]) > 80.0


def test_moments_are_the_edges_and_round_times_between() -> None:
    assert moments([0.0, 20.0], [20.0, 50.0]) == [
        (0, 0.0), (0, 5.0), (0, 10.0), (0, 15.0), (0, 20.0),
        (1, 20.0), (1, 25.0), (1, 30.0), (1, 35.0), (1, 40.0), (1, 45.0), (1, 50.0),
    ]  # fmt: skip
    assert len(moments([0.0], [20_000.0])) < 20
