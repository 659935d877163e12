"""Labels that wrap: no line ends between a figure and its unit, and a label still tells what was put there."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QLabel, QWidget
from pytestqt.qtbot import QtBot

from widgets.together import JOINED, NO_BREAK, Wrapped, together


@pytest.mark.parametrize(
    ("text", "held"),
    [
        ("2.7 points under the limit of 39 %", "2.7_points under the limit of 39_%"),
        ("heat to 38,5 °C in 35 min", "heat to 38,5_°C in 35_min"),
        ("at pH 6.10, after 2 h 30", "at pH_6.10, after 2_h_30"),
        ("20 mL in 2 US gal", "20_mL in 2_US_gal"),
        ("5 minutes past 3 dreams", "5 minutes past 3 dreams"),
    ],
)
def test_figures_keep_their_units(text: str, held: str) -> None:
    assert together(text).replace(NO_BREAK, "_") == held


def test_a_label_tells_what_was_put_there(qtbot: QtBot) -> None:
    whole = QWidget()
    qtbot.addWidget(whole)
    one, other = Wrapped("close to 39 %", whole), Wrapped(whole)
    other.setText("close to 39 %")
    for label in (one, other):
        assert label.parent() is whole
        assert label.wordWrap()
        assert label.text() == "close to 39 %"
        assert QLabel.text(label) == f"close to 39{NO_BREAK}%"


def test_a_label_never_ends_a_line_at_the_stroke_of_a_unit(qtbot: QtBot) -> None:
    label = Wrapped("1.159 kg/L and 40 IMCU/L at 0.2 °C/min, g/mL; and/or a/b")
    qtbot.addWidget(label)
    assert label.text() == "1.159 kg/L and 40 IMCU/L at 0.2 °C/min, g/mL; and/or a/b"
    assert QLabel.text(label).count("/" + JOINED) == 4
    narrow, wide = QLabel("1.159 kg/L"), Wrapped("1.159 kg/L")
    qtbot.addWidget(narrow)
    qtbot.addWidget(wide)
    assert wide.sizeHint().width() == narrow.sizeHint().width(), "the joiner is not seen"
