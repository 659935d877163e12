"""The row that wraps: one line where there is room, more where there is not, and nothing over the edge."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from widgets.flow import Flow


@pytest.fixture
def row(qtbot: QtBot) -> QWidget:
    whole = QWidget()
    qtbot.addWidget(whole)
    flow = Flow(whole)
    for number in range(6):
        button = QPushButton(f"button {number}")
        button.setFixedSize(100, 30)
        flow.addWidget(button)
    whole.show()
    return whole


@pytest.mark.parametrize(("width", "lines"), [(700, 1), (330, 2), (220, 3), (100, 6)])
def test_it_wraps_where_there_is_no_room(row: QWidget, width: int, lines: int) -> None:
    flow = row.layout()
    assert flow is not None
    row.resize(width, 300)
    flow.activate()
    buttons = row.findChildren(QPushButton)
    assert len({one.y() for one in buttons}) == lines
    assert all(one.geometry().right() < width for one in buttons)
    assert flow.heightForWidth(width) == lines * 30 + (lines - 1) * 6


def test_order_and_taking_out(row: QWidget) -> None:
    flow = row.layout()
    assert isinstance(flow, Flow)
    first = QPushButton("first")
    flow.insertWidget(0, first)
    item = flow.itemAt(0)
    assert item is not None
    assert item.widget() is first
    flow.removeWidget(first)
    assert flow.count() == 6
    assert flow.itemAt(6) is None
    assert flow.takeAt(9) is None
