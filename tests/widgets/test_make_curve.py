"""The make curve by real events: what a drag or a key changes, what the eyes are told, and what undo gives back."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QWheelEvent
from PySide6.QtWidgets import QApplication, QSlider
from pytestqt.qtbot import QtBot

from designer.recipe import edit as edits
from designer.recipe.edit import set_end
from tests.widgets.conftest import CTRL, SHIFT, drag, move, press, release, send
from widgets.make_curve import ribbon
from widgets.make_curve.axis import snap_step
from widgets.make_curve.canvas import MakeCurve
from widgets.make_curve.layers import afresh, within
from widgets.make_curve.picture import KEPT_MARGIN_PX
from widgets.theme import apply as dress
from widgets.window import Window


def below(curve: MakeCurve, stage: str) -> QPointF:
    """A point of a stage's edge within the ribbon, clear of corners and pills."""
    return curve.grip(stage, "end", "edge").at + QPointF(0, 12)


def test_dragging_an_edge_changes_the_length_by_the_mapped_minutes(window: Window, curve: MakeCurve) -> None:
    before = window.session.recipe.stage("ripen").end.length_min
    forecast, verdict = window.session.forecast, window.session.verdict
    per_min = curve.frame.axis.px_per_min
    drag(curve, below(curve, "ripen"), QPointF(40, 0), SHIFT)
    after = window.session.recipe.stage("ripen").end.length_min
    assert after is not None
    assert before is not None
    assert after - before == pytest.approx(40 / per_min, abs=1 / per_min + 0.25)
    assert window.session.forecast is not forecast
    assert window.session.forecast.stages[0].end_min == pytest.approx(after)
    assert window.session.verdict is not verdict
    assert window.session.stack.count() == 1


def test_a_drag_snaps_to_round_lengths(window: Window, curve: MakeCurve) -> None:
    step = snap_step(curve.frame.axis.px_per_min)
    drag(curve, below(curve, "ripen"), QPointF(33, 0))
    length = window.session.recipe.stage("ripen").end.length_min
    assert length is not None
    assert length % step == pytest.approx(0.0)


def test_the_forecast_follows_before_the_button_is_let_go(window: Window, curve: MakeCurve) -> None:
    start = below(curve, "warm")
    kept = window.session.recipe
    moisture = window.session.forecast.outcomes["moisture_pct"].value
    press(curve, start)
    move(curve, start + QPointF(60, 0))
    assert window.session.previewing
    assert window.session.forecast.outcomes["moisture_pct"].value != moisture
    assert window.session.recipe is kept
    assert window.outcomes.list.lines[0].value == f"{window.session.forecast.outcomes['moisture_pct'].value:.1f} %"
    release(curve, start + QPointF(60, 0))
    assert not window.session.previewing


def test_escape_puts_everything_back(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    kept, forecast = window.session.recipe, window.session.forecast.trace["ph"].copy()
    start = below(curve, "warm")
    press(curve, start)
    move(curve, start + QPointF(80, 0))
    qtbot.keyClick(curve, Qt.Key.Key_Escape)
    release(curve, start + QPointF(80, 0))
    assert window.session.recipe is kept
    assert window.session.shown is kept
    assert window.session.stack.count() == 0
    assert np.array_equal(window.session.forecast.trace["ph"], forecast)


def test_a_press_without_a_move_changes_nothing(window: Window, curve: MakeCurve) -> None:
    press(curve, below(curve, "warm"))
    release(curve, below(curve, "warm"))
    assert window.session.stack.count() == 0


def test_there_and_back_is_no_step(window: Window, curve: MakeCurve) -> None:
    start = below(curve, "warm")
    press(curve, start)
    for x in (20, 60, 20, 0):
        move(curve, start + QPointF(x, 0))
    release(curve, start)
    assert window.session.stack.count() == 0


def test_undo_of_a_drag_is_one_step(window: Window, curve: MakeCurve) -> None:
    kept = window.session.recipe
    drag(curve, below(curve, "warm"), QPointF(50, 0))
    changed = window.session.recipe
    assert changed != kept
    window.actions_["undo"].trigger()
    assert window.session.recipe == kept
    window.actions_["redo"].trigger()
    assert window.session.recipe == changed


def test_a_corner_drags_a_temperature(window: Window, curve: MakeCurve) -> None:
    grip = curve.grip("warm", "temperature_c", "corner")
    per_degree = curve.frame.temperature.px_per_unit
    drag(curve, grip.at, QPointF(0, -2 * per_degree))
    assert window.session.recipe.stage("warm").temperature_c == pytest.approx(41.0)  # type: ignore[union-attr]
    assert window.session.forecast.stages[4].values["temperature_c"] == pytest.approx(41.0, abs=0.05)


def test_a_pill_drags_the_kinds_own_setting(window: Window, curve: MakeCurve) -> None:
    grip = curve.grip("salt", "salt_pct", "inside")
    before = window.session.recipe.stage("salt").salt_pct  # type: ignore[union-attr]
    drag(curve, grip.at, QPointF(0, -18))
    assert window.session.recipe.stage("salt").salt_pct == pytest.approx(before + 0.3)  # type: ignore[union-attr]


def test_the_press_pill_drags_the_last_load(window: Window, curve: MakeCurve) -> None:
    steps = window.session.recipe.stage("press").steps  # type: ignore[union-attr]
    drag(curve, curve.grip("press", "steps", "inside").at, QPointF(0, -60))
    after = window.session.recipe.stage("press").steps  # type: ignore[union-attr]
    assert after[:-1] == steps[:-1]
    assert after[-1].load_kg == steps[-1].load_kg + 10


def test_dragging_a_state_end_asks_for_another_state(window: Window, curve: MakeCurve) -> None:
    end = window.session.recipe.stage("hold").end
    stages = window.session.forecast.stages
    start = below(curve, "hold")
    wanted = stages[5].end_min - 12
    press(curve, start)
    for share in (0.3, 0.6, 1.0):
        move(curve, QPointF(curve.frame.axis.x(stages[5].end_min - 12 * share), start.y()), SHIFT)
    release(curve, QPointF(curve.frame.axis.x(wanted), start.y()))
    after = window.session.recipe.stage("hold").end
    assert after.by == "ph"
    assert after.latest_min == end.latest_min
    assert after.value is not None
    assert end.value is not None
    assert after.value > end.value
    assert window.session.forecast.stages[5].end_min == pytest.approx(wanted, abs=1.5)


def test_a_state_end_stops_at_its_latest_and_says_so(window: Window, curve: MakeCurve) -> None:
    start = below(curve, "hold")
    press(curve, start)
    move(curve, start + QPointF(4000, 0))
    assert curve._grab is not None
    assert curve._grab.answer is not None
    assert "latest" in curve._grab.answer.why
    release(curve, start + QPointF(4000, 0))


def test_an_end_by_acidity_is_dragged(window: Window, curve: MakeCurve) -> None:
    hold = window.session.forecast.stages[5]
    value = round(window.session.forecast.trace.at("acidity_pct", hold.end_min), 2)
    by_acidity = set_end(window.session.recipe, "hold", by="acidity", of="curd", value=value, latest_min=180.0)
    window.session.commit(by_acidity, "by acidity")
    start = below(curve, "hold")
    press(curve, start)
    move(curve, start + QPointF(30, 0))
    release(curve, start + QPointF(30, 0))
    after = window.session.recipe.stage("hold").end
    assert after.by == "acidity"
    assert after.value is not None
    assert after.value > value


def test_keeping_the_end_takes_the_change_from_the_next_stage(window: Window, curve: MakeCurve) -> None:
    recipe = window.session.recipe
    drag(curve, below(curve, "mill"), QPointF(curve.frame.axis.px_per_min * 5, 0), CTRL)
    after = window.session.recipe
    gained = after.stage("mill").end.planned_min - recipe.stage("mill").end.planned_min
    assert gained > 0
    assert after.stage("salt").end.planned_min == pytest.approx(recipe.stage("salt").end.planned_min - gained)


def test_what_is_not_allowed_stays_at_the_last_allowed(window: Window, curve: MakeCurve) -> None:
    start = below(curve, "mill")
    press(curve, start)
    move(curve, start + QPointF(20, 0), CTRL)
    move(curve, start + QPointF(900, 0), CTRL)
    assert curve._grab is not None
    assert curve._grab.answer is not None
    assert curve._grab.answer.why
    release(curve, start + QPointF(900, 0))
    assert window.session.recipe.stage("salt").end.planned_min >= 0.5


def test_arrow_keys_nudge_and_merge(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    kept = window.session.recipe
    control = curve.control("warm", "end", "edge")
    control.setFocus()
    for _ in range(4):
        qtbot.keyClick(control, Qt.Key.Key_Right)
    assert window.session.recipe.stage("warm").end.length_min == 55.0
    assert window.session.stack.count() == 1
    window.session.stack.undo()
    assert window.session.recipe == kept


def test_nudges_of_two_settings_are_two_steps(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    for key in (("warm", "end", "edge"), ("warm", "temperature_c", "corner")):
        control = curve.control(*key)
        control.setFocus()
        qtbot.keyClick(control, Qt.Key.Key_Up)
    assert window.session.stack.count() == 2
    assert window.session.recipe.stage("warm").temperature_c == 39.5  # type: ignore[union-attr]


def test_small_steps_with_shift(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    control = curve.control("warm", "end", "edge")
    control.setFocus()
    qtbot.keyClick(control, Qt.Key.Key_Right, SHIFT)
    assert window.session.recipe.stage("warm").end.length_min == 36.0


def test_every_handle_is_a_named_slider_with_a_value(curve: MakeCurve) -> None:
    controls = curve.findChildren(QSlider)
    assert len(controls) > 20
    for control in controls:
        assert control.accessibleName()
        assert control.accessibleDescription()
        assert control.width() >= 22
    assert curve.control("warm", "end", "edge").accessibleDescription() == "35 min"


def test_enter_on_a_handle_goes_to_its_field(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    control = curve.control("warm", "temperature_c", "corner")
    control.setFocus()
    qtbot.keyClick(control, Qt.Key.Key_Return)
    assert window.focusWidget() is window.stage_form._own.editors["temperature_c"].focusProxy()


def test_a_click_on_the_ribbon_selects_the_stage(window: Window, curve: MakeCurve) -> None:
    block = next(block for block in curve.frame.blocks if block.id == "stack")
    at = QPointF(curve.frame.axis.x((block.start_min + block.end_min) / 2), curve.frame.places.ribbon.center().y())
    press(curve, at)
    release(curve, at)
    assert window.session.chosen == "stack"
    assert window.stage_form._title.text() == "Stack"


def test_the_wheel_zooms_about_the_pointer_and_the_fits_come_back(curve: MakeCurve) -> None:
    at = QPointF(500, 480)
    minute, span = curve.frame.axis.minute(at.x()), curve.frame.axis.span_min
    event = QWheelEvent(
        at, curve.mapToGlobal(at), QPoint(), QPoint(0, 240), Qt.MouseButton.NoButton, Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(curve, event)
    assert curve.frame.axis.span_min < span
    assert curve.frame.axis.minute(at.x()) == pytest.approx(minute, abs=0.01)
    curve.fit_whole()
    assert curve.frame.axis.span_min >= curve.session.forecast.stages[-1].end_min
    curve.fit_day()
    assert curve.frame.axis.span_min == pytest.approx(span)


def test_the_reading_line_follows_the_pointer(curve: MakeCurve) -> None:
    send(curve, QEvent.Type.MouseMove, QPointF(430, 480), False)
    assert curve._reading == pytest.approx(curve.frame.axis.minute(430))
    curve.grab()
    QApplication.sendEvent(curve, QEvent(QEvent.Type.Leave))
    assert curve._reading is None


def test_tooltips_say_what_is_there(curve: MakeCurve) -> None:
    from widgets.make_curve import gates

    assert "cook" in curve.tip_at(below(curve, "warm"))
    mark = curve.frame.gates[0]
    found = gates.place(curve.frame, mark)
    assert found is not None
    assert mark.row.source in curve.tip_at(QPointF(found[0], found[1].rect.center().y()))


def test_the_line_before_the_last_edit_stays(window: Window, curve: MakeCurve) -> None:
    first = window.session.forecast
    drag(curve, below(curve, "warm"), QPointF(50, 0))
    assert window.session.before is not None
    assert window.session.before.recipe == first.recipe
    assert curve.frame.before is window.session.before


def test_scales_are_held_during_a_drag(curve: MakeCurve) -> None:
    start = below(curve, "warm")
    press(curve, start)
    before = dict(curve.frame.scales), curve.frame.axis, curve.frame.enlarged
    move(curve, start + QPointF(90, 0))
    assert (dict(curve.frame.scales), curve.frame.axis, curve.frame.enlarged) == before
    release(curve, start + QPointF(90, 0))


def apart_from_whole(curve: MakeCurve) -> float:
    """Share of the pixels drawn anew that are another than if the whole picture were."""
    curve.repaint()
    layers = curve._layers
    assert layers.still is not None
    part = layers.still.toImage()
    left = int(curve.frame.from_px)
    kept, layers.kept, curve._frame = layers.kept, None, None
    scene = curve._scene()
    layers.kept, curve._frame = kept, None
    whole = afresh(None, scene)
    within(whole, lambda painter: layers.paint_still(painter, scene, layers.ground(scene)))
    other = whole.toImage().convertToFormat(part.format())
    a, b = (
        np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), image.width(), 4)[:, :, :3]
        for image in (part, other)
    )
    return float((np.abs(a.astype(int) - b.astype(int)).max(axis=2) > 24)[:, left + 2 :].mean())


def test_what_is_drawn_during_a_drag_is_what_would_be_drawn_whole(curve: MakeCurve) -> None:
    """Only what lies after the start of the dragged stage is drawn anew; nothing there may differ for it."""
    start = below(curve, "warm")
    press(curve, start)
    move(curve, start + QPointF(60, 0))
    curve.session.settle()
    assert curve.frame.from_px > curve.frame.places.vat.left()
    assert apart_from_whole(curve) < 0.01  # dots and dashes begin at another pixel; nothing else is apart
    release(curve, start)


def test_so_is_what_is_tried_from_a_list(curve: MakeCurve) -> None:
    """One setting after another, without the recipe as it is kept in between; each from its own stage on."""
    session = curve.session
    curve.repaint()
    starts = {block.id: block.start_min for block in curve.frame.blocks}
    tried = (
        ("drain", edits.edit_end(session.recipe, "drain", length_min=30.0)),
        ("warm", edits.edit(session.recipe, "warm", temperature_c=38.0)),
        (None, edits.edit_milk(session.recipe, session.recipe.milks[0].id, fat_pct=4.4)),
        ("warm", edits.edit(session.recipe, "warm", temperature_c=37.0)),
    )
    for stage, recipe in tried:
        session.preview(recipe)
        session.settle()
        begins = curve._axis.x(starts[stage]) if stage is not None else 0.0
        assert curve.frame.from_px == pytest.approx(max(begins - KEPT_MARGIN_PX, 0.0))
        assert apart_from_whole(curve) < 0.01
    session.drop_preview()
    assert curve.frame.from_px == 0.0


def test_selecting_a_stage_draws_what_a_whole_picture_would(curve: MakeCurve) -> None:
    """Only the ribbon and the strip are drawn anew."""
    curve.repaint()
    before = curve._layers.still
    curve.session.choose("stack")
    assert curve._layers.still is before
    assert before is not None
    part = before.toImage()
    curve._changed()
    curve.repaint()
    assert curve._layers.still is not None
    assert part == curve._layers.still.toImage()


def test_a_long_name_of_a_stage_breaks_before_it_is_cut() -> None:
    whole = int(dress.width("stir at heat", "note", bold=True)) + 1
    half = int(dress.width("stir at", "note", bold=True)) + 1
    assert ribbon.broken("stir at heat", whole) == ("stir at heat",)
    assert ribbon.broken("stir at heat", half) == ("stir at", "heat")
    assert ribbon.broken("stir at heat", half // 2) == ("stir at heat",)
    assert ribbon.broken("fermentation", 20) == ("fermentation",)


def test_the_words_before_the_axis_have_their_room_in_larger_type(qapp: QApplication, curve: MakeCurve) -> None:
    try:
        for larger in (1.0, 1.7, 2.5):
            dress.enlarge(qapp, "light", larger)
            QApplication.processEvents()
            room = curve.frame.places.axis.left() - 12
            assert all(dress.width(word, "note") <= room for word in ("clock", "elapsed"))
    finally:
        dress.enlarge(qapp, "light", 1.0)


def test_midnights_are_drawn_only_where_a_day_is_wide_enough(window: Window, curve: MakeCurve) -> None:
    def drawn() -> bool:
        picture = QImage(curve.size(), QImage.Format.Format_RGB32)
        picture.fill(Qt.GlobalColor.white)
        bare = picture.copy()
        painter = QPainter(picture)
        ribbon.paint_midnights(painter, curve.frame)
        painter.end()
        return picture != bare

    window.actions_["one_scale"].trigger()
    curve.fit_life()
    assert ribbon.DAY_MIN * curve.frame.axis.pieces[0].px_per_min < ribbon.NIGHT_PX
    assert not drawn()
    curve.fit_whole()
    assert drawn()


def test_a_caution_of_a_stage_is_marked_on_the_stage(window: Window, curve: MakeCurve) -> None:
    cell = ribbon.cell(curve.frame, next(block for block in curve.frame.blocks if block.kind == "press"))
    corner = QPointF(cell.left() + 8, cell.top() + 8)

    def marked() -> bool:
        near = QColor(curve.frame.colours.near)
        image = curve.grab(QRectF(cell.left(), cell.top(), 16, 18).toRect()).toImage()
        seen = [image.pixelColor(x, y) for x in range(image.width()) for y in range(image.height())]
        return near in seen

    assert not ribbon.cautions_of(curve.frame, "press")
    assert "\u25b2" not in curve.tip_at(corner)
    assert not marked()
    stage = window.session.recipe.stage("press")
    steps = tuple(step.but(load_kg=400.0) for step in stage.steps)  # type: ignore[attr-defined]
    window.session.commit(edits.edit(window.session.recipe, "press", steps=steps), "heavy")
    QApplication.processEvents()
    assert ribbon.cautions_of(curve.frame, "press")
    assert "\u25b2" in curve.tip_at(corner)
    assert marked()
