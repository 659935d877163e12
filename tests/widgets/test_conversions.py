"""Conversions in the fields of the window, with real events: typed in another unit, told in others, asked about."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from designer.recipe.edit import edit_form, insert, new_stage
from tests.widgets.test_form import choose, line_of, milk_of, retype
from widgets.form.editors import TextEditor
from widgets.form.part_form import PartForm
from widgets.window import Window


def editor(form: PartForm, name: str) -> TextEditor:
    found = form.editors[name]
    assert isinstance(found, TextEditor)
    return found


def test_a_load_typed_as_a_pressure(qtbot: QtBot, window: Window) -> None:
    window.session.commit(
        edit_form(window.session.recipe, diameter_mm=145.0, lever=4.0, follower_diameter_mm=None), "x"
    )
    choose(window, "press")
    form = window.stage_form._forms["step2"]
    retype(qtbot, line_of(form, "load_kg"), "5 psi")
    assert window.session.recipe.stage("press").steps[2].load_kg == pytest.approx(14.5, abs=0.12)  # type: ignore[union-attr]
    assert editor(form, "load_kg").told.isVisible()
    assert editor(form, "load_kg").told.text() == "= 34.5 kPa, 5.0 psi"
    assert not editor(form, "load_kg").doubt.isVisible()
    retype(qtbot, line_of(form, "load_kg"), "45 psi")
    assert editor(form, "load_kg").doubt.isVisible(), "130 kg on a lever of 4 are usual; 45 psi on the cheese are not"
    assert "far above what is usual on a hand press" in editor(form, "load_kg").doubt.text()


def test_a_cut_by_its_name_and_its_surface(qtbot: QtBot, window: Window) -> None:
    choose(window, "cut")
    form = window.stage_form._own
    retype(qtbot, line_of(form, "cut_mm"), "pea")
    assert window.session.recipe.stage("cut").cut_mm == 8.0  # type: ignore[union-attr]
    assert "7500 cm²" in editor(form, "cut_mm").told.text()
    retype(qtbot, line_of(form, "cut_mm"), "pebble")
    assert "no size of curd" in editor(form, "cut_mm").wrong.text()


def test_a_brine_every_way(qtbot: QtBot, window: Window) -> None:
    recipe = window.session.recipe
    window.session.commit(insert(recipe, new_stage(recipe, "brine", id="bath"), after_id="press"), "brine")
    choose(window, "bath")
    form = window.stage_form._own
    for text in ("19.1 Be", "2 lb to 8 lb"):
        retype(qtbot, line_of(form, "strength_pct"), text)
        assert window.session.recipe.stage("bath").strength_pct == pytest.approx(20.0, abs=0.1)  # type: ignore[union-attr]
    assert "76 % of saturation" in editor(form, "strength_pct").told.text()


def test_a_dose_of_rennet_by_the_litre(qtbot: QtBot, window: Window) -> None:
    choose(window, "set")
    form = window.stage_form._forms["given0"]
    retype(qtbot, line_of(form, "volume_l"), "40 IMCU/L")
    assert editor(form, "volume_l").told.text() == "40.0 IMCU/L of milk; may be typed so"
    assert line_of(form, "volume_l").text().endswith("mL")
    retype(qtbot, line_of(form, "volume_l"), "400 IMCU/L")
    assert "IMCU per litre of milk" in editor(form, "volume_l").doubt.text()
    retype(qtbot, line_of(form, "strength_imcu_ml"), "1:15000")
    assert "200 to 225" in editor(form, "strength_imcu_ml").told.text()


def test_a_gallon_is_asked_about_with_a_button_each(qtbot: QtBot, window: Window) -> None:
    form = milk_of(window)._cards["morning"].form
    field = editor(form, "volume_l")
    before = window.session.recipe
    retype(qtbot, field.line, "20 gal")
    assert window.session.recipe is before
    assert [one.text() for one in field.ways.buttons] == ["20 US gal = 75.708 L", "20 imp gal = 90.922 L"]
    qtbot.mouseClick(field.ways.buttons[1], Qt.MouseButton.LeftButton)
    assert window.session.recipe.milks[0].volume_l == pytest.approx(90.9218)
    assert not field.ways.buttons
    assert not field.wrong.isVisible()
    assert field.told.text().startswith("= 9")
    retype(qtbot, field.line, "1,234 L")
    assert [one.text() for one in field.ways.buttons] == ["1234 L = 1234 L", "1.234 L = 1.234 L"]
    qtbot.keyClick(field.line, Qt.Key.Key_Escape)
    assert not field.ways.buttons


def test_milk_by_its_weight(qtbot: QtBot, window: Window) -> None:
    form = milk_of(window)._cards["morning"].form
    retype(qtbot, line_of(form, "volume_l"), "103 kg")
    assert window.session.recipe.milks[0].volume_l == pytest.approx(100.0, abs=0.5)
    assert "kg/L" in editor(form, "volume_l").told.text()


def test_a_titration_in_the_field(qtbot: QtBot, window: Window) -> None:
    choose(window, "warm")
    form = window.stage_form
    form._by.setCurrentIndex(form._by.findData("acidity"))
    form._by.activated.emit(form._by.currentIndex())
    if "value" in form._end.editors:
        retype(qtbot, line_of(form._end, "value"), "1.8 mL on 9 mL")
        assert window.session.recipe.stage("warm").end.value == pytest.approx(0.18, abs=0.001)
