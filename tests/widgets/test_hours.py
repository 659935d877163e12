"""Make and ageing on one axis, and working hours: what is drawn, what is marked, what the strip shows."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt, QTime
from PySide6.QtWidgets import QApplication, QTimeEdit
from pytestqt.qtbot import QtBot

from tests.widgets.conftest import CTRL, drag, press, release
from widgets.form import hours_form
from widgets.make_curve import hours, ribbon
from widgets.make_curve.canvas import MakeCurve
from widgets.preferences import Preferences
from widgets.window import Window


def test_ageing_stands_after_the_make_as_it_is_planned(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    room = curve.frame.blocks[-1]
    assert room.kind == "room"
    assert room.planned
    assert room.start_min == pytest.approx(window.session.forecast.stages[-1].end_min)
    assert room.length_min == window.session.recipe.stage(room.id).end.planned_min
    curve.setFocus()
    qtbot.keyClick(curve, Qt.Key.Key_7, CTRL)
    assert curve.frame.axis.end_min >= room.end_min
    qtbot.keyClick(curve, Qt.Key.Key_9, CTRL)
    assert curve.frame.axis.end_min == pytest.approx(room.start_min)


def test_ageing_is_lengthened_by_dragging_its_end(window: Window, curve: MakeCurve) -> None:
    curve.fit_life()
    before = window.session.recipe.stage("cellar").end.planned_min
    at = curve.grip("cellar", "end", "edge").at + QPointF(-2, 12)
    drag(curve, at, QPointF(-60, 0))
    assert window.session.recipe.stage("cellar").end.planned_min < before
    assert window.session.stack.count() == 1
    make_px = curve.frame.axis.x(curve.frame.make_min) - curve.frame.axis.left
    assert make_px > 0.7 * curve.frame.axis.width, "ageing stands on a scale of its own"
    set_edge = curve.grip("ripen", "end", "edge").at
    drag(curve, set_edge + QPointF(0, 12), QPointF(30, 0))
    assert window.session.recipe.stage("ripen").end.planned_min > 60.0
    window.actions_["one_scale"].trigger()
    assert curve.frame.axis.x(curve.frame.make_min) - curve.frame.axis.left < 0.1 * curve.frame.axis.width


def test_the_strip_keeps_the_make_readable_and_goes_there_and_back(curve: MakeCurve) -> None:
    frame = curve.frame
    assert ribbon.strip_x(frame, frame.make_min) > frame.places.strip.center().x()
    for minute in (0.0, 100.0, frame.make_min, frame.make_min * 1.5, frame.axis.whole_min):
        assert ribbon.strip_minute(frame, ribbon.strip_x(frame, minute)) == pytest.approx(minute, abs=1e-6)
    strip = frame.places.strip
    at = QPointF(ribbon.strip_x(frame, frame.make_min * 0.5), strip.center().y())
    press(curve, at)
    release(curve, at)
    middle = curve.frame.axis.start_min + curve.frame.axis.span_min / 2
    assert middle == pytest.approx(frame.make_min * 0.5, rel=0.02)


@pytest.mark.parametrize(
    ("minute", "span", "inside"),
    [(480.0, (360.0, 1080.0), True), (1200.0, (360.0, 1080.0), False), (1200.0 + 1440, (1080.0, 120.0), True),
     (300.0, (1080.0, 120.0), False)],
)  # fmt: skip
def test_hours_may_run_over_midnight(minute: float, span: tuple[float, float], inside: bool) -> None:
    assert hours.works(minute, span) is inside


def test_what_falls_outside_the_working_hours_is_marked_and_said(window: Window, curve: MakeCurve) -> None:
    assert hours.outside(curve.frame) == []
    start = window.session.recipe.start_clock_min
    assert start is not None
    ripened = next(block for block in curve.frame.blocks if block.id == "ripen")
    curve.set_hours(((start + ripened.end_min + 5.0) % 1440, (start + ripened.end_min + 300.0) % 1440))
    marked = hours.outside(curve.frame)
    assert ripened.id in {block.id for block in marked}
    assert "cut" not in {block.id for block in marked}
    at = QPointF(curve.frame.axis.x(ripened.end_min) + 4, curve.frame.places.ribbon.bottom() - 6)
    assert "outside the working hours" in curve.tip_at(at)
    shaded = list(hours.nights(curve.frame))
    assert shaded[0][0] == pytest.approx(max(curve.frame.axis.start_min, 0.0))
    assert shaded[0][1] == pytest.approx(ripened.end_min + 5.0)


def test_working_hours_are_kept_as_a_preference(qtbot: QtBot, window: Window) -> None:
    window.actions_["hours"].trigger()
    form = window.findChild(hours_form.HoursForm)
    assert form is not None
    form.mark.setChecked(True)
    form.times[0].setTime(QTime(5, 30))
    form.times[1].setTime(QTime(14, 0))
    qtbot.mouseClick(form.ok, Qt.MouseButton.LeftButton)
    QApplication.processEvents()
    assert window.preferences.hours == (330.0, 840.0)
    assert window.curve.frame.hours == (330.0, 840.0)
    again = Preferences(window.preferences.file)
    assert again.hours == (330.0, 840.0)
    again.hours = None
    assert again.hours is None


@pytest.mark.parametrize(("system", "shown"), [("metric", "06:00"), ("us", "6:00 am")])
def test_working_hours_are_typed_in_lines_like_any_other(qtbot: QtBot, system: str, shown: str) -> None:
    form = hours_form.HoursForm((360.0, 1080.0), system=system)
    qtbot.addWidget(form)
    form.show()
    first = form.times[0]
    line = first.lineEdit()
    assert first.text().lower() == shown
    assert first.height() >= 24
    assert line.width() > line.fontMetrics().horizontalAdvance(shown)
    first.setSelectedSection(QTimeEdit.Section.HourSection)
    qtbot.keyClick(first, Qt.Key.Key_Up)
    assert first.time() == QTime(7, 0)
