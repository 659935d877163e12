"""The generated forms: what is typed is read by units, errors stand beside the field, steps and choices work."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from designer.recipe.field import field_meta, field_metas
from designer.recipe.stages.cook import Cook
from designer.recipe.stages.kinds import KINDS
from designer.units import UnitError
from widgets.form.editors import ChoiceEditor, TextEditor, explained, title
from widgets.form.milk_place import MilkPlace
from widgets.form.part_form import SHOWN_SHAPES, PartForm
from widgets.window import Window


def retype(qtbot: QtBot, line: QLineEdit, text: str) -> None:
    """Type in place of what stands there, and leave with Enter."""
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, text)
    qtbot.keyClick(line, Qt.Key.Key_Return)


def choose(window: Window, stage: str) -> None:
    """Select a stage and let its form be laid out."""
    window.session.choose(stage)
    QApplication.processEvents()


def line_of(form: PartForm, name: str) -> QLineEdit:
    editor = form.editors[name]
    assert isinstance(editor, TextEditor)
    return editor.line


@pytest.mark.parametrize(
    ("text", "expected"),
    [("39,5 kg", None), ("39,5", 39.5), ("39,5 °C", 39.5), ("102 F", 38.89), ("40 °C", 40.0), ("38.5 C", 38.5)],
)
def test_temperatures_are_understood_and_said_back(
    qtbot: QtBot, window: Window, text: str, expected: float | None
) -> None:
    choose(window, "warm")
    line = line_of(window.stage_form._own, "temperature_c")
    retype(qtbot, line, text)
    value = window.session.recipe.stage("warm").temperature_c  # type: ignore[union-attr]
    if expected is None:
        assert value == 39.0
        assert window.stage_form._own.editors["temperature_c"].wrong.isVisible()
    else:
        assert value == pytest.approx(expected, abs=0.01)
        assert line.text().endswith("°C")


@pytest.mark.parametrize(
    ("stage", "field", "text", "value", "said"),
    [
        ("warm", "temperature_c", "38,5", 38.5, "38.5 °C"),
        ("warm", "temperature_c", "37", 37.0, "37 °C"),
        ("cut", "cut_mm", "9 1/2", 9.5, "9.5 mm"),
    ],
)
def test_a_bare_figure_is_taken_in_the_unit_that_stands_there(
    qtbot: QtBot, window: Window, stage: str, field: str, text: str, value: float, said: str
) -> None:
    choose(window, stage)
    line = line_of(window.stage_form._own, field)
    retype(qtbot, line, text)
    assert getattr(window.session.recipe.stage(stage), field) == pytest.approx(value)
    assert line.text() == said


def test_a_bare_figure_where_hours_stand_is_not_guessed(qtbot: QtBot) -> None:
    meta = field_meta(Cook, "ramp_min")
    editor = TextEditor(meta, "metric")
    qtbot.addWidget(editor)
    editor.put(20.0)
    assert editor.read("25") == pytest.approx(25.0)
    editor.put(90.0)
    with pytest.raises(UnitError, match="no unit"):
        editor.read("25")


@pytest.mark.parametrize("text", ["banana", "500 °C", "2+2 °C", "", "5 kg"])
def test_what_cannot_be_read_is_said_beside_the_field(qtbot: QtBot, window: Window, text: str) -> None:
    choose(window, "cut")
    form = window.stage_form._own
    before = line_of(form, "cut_mm").text()
    retype(qtbot, line_of(form, "cut_mm"), text or "x")
    assert form.editors["cut_mm"].wrong.isVisible()
    assert len(form.editors["cut_mm"].wrong.text()) > 10
    assert window.session.stack.count() == 0
    qtbot.keyClick(line_of(form, "cut_mm"), Qt.Key.Key_Escape)
    assert not form.editors["cut_mm"].wrong.isVisible()
    assert line_of(form, "cut_mm").text() == before


def test_inches_are_understood(qtbot: QtBot, window: Window) -> None:
    choose(window, "cut")
    retype(qtbot, line_of(window.stage_form._own, "cut_mm"), "1/2 in")
    assert window.session.recipe.stage("cut").cut_mm == pytest.approx(12.7)  # type: ignore[union-attr]


def test_up_and_down_step_and_merge(qtbot: QtBot, window: Window) -> None:
    choose(window, "salt")
    line = line_of(window.stage_form._own, "salt_pct")
    before = window.session.recipe.stage("salt").salt_pct  # type: ignore[union-attr]
    line.setFocus()
    for _ in range(3):
        qtbot.keyClick(line, Qt.Key.Key_Up)
    assert window.session.recipe.stage("salt").salt_pct == pytest.approx(before + 0.3)  # type: ignore[union-attr]
    assert window.session.stack.count() == 1


def test_the_end_can_be_changed_to_a_state_and_back(window: Window) -> None:
    choose(window, "warm")
    form = window.stage_form
    form._by.setCurrentIndex(form._by.findData("ph"))
    form._by.activated.emit(form._by.currentIndex())
    end = window.session.recipe.stage("warm").end
    assert end.by == "ph"
    assert end.of == "curd"
    assert end.latest_min is not None
    assert set(form._end.editors) == {"value", "of", "earliest_min", "latest_min"}
    assert window.session.forecast.stages[4].end_min - window.session.forecast.stages[4].start_min == pytest.approx(
        35, abs=15
    )
    form._by.setCurrentIndex(form._by.findData("time"))
    form._by.activated.emit(form._by.currentIndex())
    assert window.session.recipe.stage("warm").end.by == "time"


def test_press_steps_can_be_typed(qtbot: QtBot, window: Window) -> None:
    choose(window, "press")
    retype(qtbot, line_of(window.stage_form._forms["step2"], "load_kg"), "50 kg")
    assert window.session.recipe.stage("press").steps[2].load_kg == 50.0  # type: ignore[union-attr]


def test_what_goes_in_at_a_stage_can_be_typed(qtbot: QtBot, window: Window) -> None:
    choose(window, "set")
    form = window.stage_form._forms["given0"]
    retype(qtbot, line_of(form, "volume_l"), "25 mL")
    rennet = next(one for one in window.session.recipe.additions if one.id == "rennet")
    assert rennet.volume_l == pytest.approx(0.025)


def test_every_kind_has_a_form(qtbot: QtBot, window: Window) -> None:
    choose(window, "cut")
    for kind, model in KINDS.items():
        window.stages.insert(kind)
        stage = window.session.recipe.stage(window.session.chosen)
        assert stage.kind == kind
        shown = {
            meta.name
            for meta in field_metas(model)
            if meta.shape in SHOWN_SHAPES and meta.name not in ("id", "kind", "format", "what")
        }
        assert shown <= set(window.stage_form._own.editors)
        window.session.stack.undo()
        choose(window, "cut")


def test_every_quantity_explains_itself() -> None:
    for model in KINDS.values():
        for meta in field_metas(model):
            if meta.kind:
                assert len(explained(meta, "metric")) > 8
                assert title(meta)[:1].isupper() or title(meta).startswith("pH")


def test_the_form_follows_units(window: Window) -> None:
    choose(window, "warm")
    window._set_system("us")
    assert line_of(window.stage_form._own, "temperature_c").text() == "102.2 °F"
    window._set_system("metric")
    assert line_of(window.stage_form._own, "temperature_c").text() == "39 °C"


def milk_of(window: Window) -> MilkPlace:
    window.go("milk")
    place = window.opened["milk"]
    assert isinstance(place, MilkPlace)
    return place


def test_the_milk_place_edits_the_milk(qtbot: QtBot, window: Window) -> None:
    form = milk_of(window)._cards["morning"].form
    before = window.session.forecast.outcomes["fdm_pct"].value
    retype(qtbot, line_of(form, "fat_pct"), "4.4 %")
    assert window.session.recipe.milks[0].fat_pct == 4.4
    assert window.session.forecast.outcomes["fdm_pct"].value > before


def test_withheld_milk_is_refused_beside_its_field(qtbot: QtBot, window: Window) -> None:
    form = milk_of(window)._cards["morning"].form
    form._unfold()
    form.changed.emit("withheld", True, False)
    assert form.editors["withheld"].wrong.text()
    assert not window.session.recipe.milks[0].withheld


def test_starters_come_and_go(qtbot: QtBot, window: Window) -> None:
    place = milk_of(window)
    button = next(b for b in place.findChildren(QPushButton) if b.text() == "Add starter")
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert len(window.session.recipe.starters) == 2
    new = window.session.recipe.starters[-1].id
    kind = place._cards[new].form.editors["kind"]
    assert isinstance(kind, ChoiceEditor)
    kind.box.setCurrentIndex(kind.box.findData("thermophilic"))
    kind.box.activated.emit(kind.box.currentIndex())
    assert window.session.recipe.starters[-1].kind == "thermophilic"
    place._cards[new].taken_out.emit(new)
    assert len(window.session.recipe.starters) == 1


def test_the_style_can_be_chosen(window: Window) -> None:
    place = milk_of(window)
    style = place._cards["recipe"].form.editors["style"]
    assert isinstance(style, ChoiceEditor)
    style.box.setCurrentIndex(style.box.findData("gouda"))
    style.box.activated.emit(style.box.currentIndex())
    assert window.session.verdict is not None
    assert window.session.verdict.name == "Gouda"


def test_a_value_far_outside_practice_is_asked_about_and_stands(qtbot: QtBot, window: Window) -> None:
    choose(window, "cut")
    form = window.stage_form._own
    editor = form.editors["cut_mm"]
    retype(qtbot, line_of(form, "cut_mm"), "1 mm")
    assert window.session.recipe.stage("cut").cut_mm == 1.0  # type: ignore[union-attr]
    assert editor.doubt.isVisible()
    assert editor.doubt.text().startswith("Sure? 1 mm is far below what is usual")
    retype(qtbot, line_of(form, "cut_mm"), "10 mm")
    assert not editor.doubt.isVisible()
