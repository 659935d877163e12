"""Measures chosen for each group of quantities, language and decimal mark: shown, kept, and put into every part."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit
from pytestqt.qtbot import QtBot

from designer.unit_kinds import choose, measure
from designer.units import gallon_of, show
from widgets.preferences import Preferences
from widgets.window import Window


@pytest.fixture(autouse=True)
def metric() -> Iterator[None]:
    """Nothing chosen stays behind."""
    yield
    choose({})


def test_own_measures_are_looked_up_by_group() -> None:
    choose({"temperature": "us", "volume": "imperial"})
    assert show(31.0, "temperature", system="own") == "87.8 °F"
    assert show(1.0, "temperature_difference", system="own") == "1.8 °F"
    assert show(4.54609, "volume", system="own") == "1 imp gal"
    assert show(2.5, "mass", system="own") == "2.5 kg"
    assert measure("own", "pressure") == "metric"
    assert gallon_of("own") == "imperial"
    assert gallon_of("metric") is None


def test_fahrenheit_beside_litres(qtbot: QtBot, window: Window) -> None:
    window.actions_["temperature_us"].trigger()
    QApplication.processEvents()
    assert window.preferences.system == "own"
    assert window.actions_["own"].isChecked()
    window.session.choose("warm")
    QApplication.processEvents()
    field = window.stage_form._own.editors["temperature_c"].findChild(QLineEdit)
    assert field is not None
    assert field.text().endswith("°F")
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, "100 °F")
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert window.session.recipe.stage("warm").temperature_c == pytest.approx(37.7778, abs=1e-3)  # type: ignore[union-attr]
    window.go("milk")
    assert any(one.text() == "100 L" for one in window.opened["milk"].findChildren(QLineEdit))
    kept = Preferences(window.preferences.file)
    assert kept.measures["temperature"] == "us"
    assert kept.measures["volume"] == "metric"
    window.actions_["volume_imperial"].trigger()
    assert any(one.text().endswith("imp gal") for one in window.opened["milk"].findChildren(QLineEdit))
    window.actions_["metric"].trigger()
    assert any(one.text() == "100 L" for one in window.opened["milk"].findChildren(QLineEdit))


def test_a_language_is_kept_for_the_next_start(window: Window) -> None:
    assert window.actions_["language_system"].isChecked()
    window.actions_["language_fr"].trigger()
    window.actions_["mark_comma"].trigger()
    kept = Preferences(window.preferences.file)
    assert (kept.language, kept.mark) == ("fr", "comma")
    assert "next start" in window.status.text()
