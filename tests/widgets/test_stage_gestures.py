"""Whole stages by real events: lifted by their name, asked for with the right button, copied from window to window."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QContextMenuEvent, QGuiApplication, QNativeGestureEvent, QPointingDevice, QWheelEvent
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from designer.recipe.document import Recipe
from tests.widgets.conftest import CTRL, gone, move, press, release
from widgets.make_curve.canvas import MakeCurve
from widgets.make_curve.ribbon import cell
from widgets.stage_work import STAGES
from widgets.window import Window

# A menu grabs the keyboard, which the off-screen platform can't.
pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)


def ids(window: Window) -> list[str]:
    """Stages of the main make, in order."""
    return [stage.id for stage in window.session.recipe.stages]


def name_of(curve: MakeCurve, stage: str) -> QPointF:
    """A point on the name of a stage in the ribbon, clear of its edges."""
    block = next(block for block in curve.frame.blocks if block.id == stage)
    return cell(curve.frame, block).center() + QPointF(0, 8)


def test_a_stage_is_dragged_by_its_name_to_another_place(window: Window, curve: MakeCurve) -> None:
    before = ids(window)
    start, end = name_of(curve, "hold"), name_of(curve, "warm") - QPointF(10, 0)
    press(curve, start)
    move(curve, start - QPointF(12, 0))
    move(curve, end)
    assert window.session.stack.count() == 0
    release(curve, end)
    after = ids(window)
    at = before.index("warm")
    assert after[at : at + 2] == ["hold", "warm"]
    assert window.session.stack.count() == 1
    window.actions_["undo"].trigger()
    assert ids(window) == before


def test_a_lifted_stage_put_back_or_cancelled_stays(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    before = ids(window)
    start = name_of(curve, "hold")
    press(curve, start)
    move(curve, start + QPointF(12, 0))
    release(curve, start + QPointF(3, 0))
    press(curve, start)
    move(curve, name_of(curve, "warm") - QPointF(10, 0))
    qtbot.keyClick(curve, Qt.Key.Key_Escape)
    release(curve, name_of(curve, "warm"))
    assert ids(window) == before
    assert window.session.stack.count() == 0


def test_a_stage_is_moved_by_key(qtbot: QtBot, window: Window, curve: MakeCurve) -> None:
    before = ids(window)
    curve.setFocus()
    window.session.choose("hold")
    qtbot.keyClick(curve, Qt.Key.Key_Left, CTRL | Qt.KeyboardModifier.ShiftModifier)
    assert ids(window).index("hold") == before.index("hold") - 1
    qtbot.keyClick(curve, Qt.Key.Key_Right, CTRL | Qt.KeyboardModifier.ShiftModifier)
    assert ids(window) == before


@pytest.mark.parametrize("by_key", [False, True])
def test_a_menu_says_what_can_be_done_with_a_stage(window: Window, curve: MakeCurve, by_key: bool) -> None:
    at = name_of(curve, "hold").toPoint()
    reason = QContextMenuEvent.Reason.Keyboard if by_key else QContextMenuEvent.Reason.Mouse
    if by_key:
        window.session.choose("hold")
    QApplication.sendEvent(curve, QContextMenuEvent(reason, at, curve.mapToGlobal(at)))
    menu = window.stage_menu
    assert menu.isVisible()
    assert window.session.chosen == "hold"
    assert {window.actions_[key] for key in ("split", "copy", "paste", "remove", "split_off")} <= set(menu.actions())
    window.actions_["duplicate"].trigger()
    menu.close()
    assert ids(window).count("hold") == 1
    assert ids(window)[ids(window).index("hold") + 1] == "hold-2"


def test_a_stage_is_split_at_the_reading_line(window: Window, curve: MakeCurve) -> None:
    block = next(block for block in curve.frame.blocks if block.id == "ripen")
    minute = block.start_min + 20.0
    at = QPointF(curve.frame.axis.x(minute), curve.frame.places.ribbon.center().y()).toPoint()
    QApplication.sendEvent(curve, QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, curve.mapToGlobal(at)))
    QApplication.sendEvent(curve, QEvent(QEvent.Type.Leave))  # the menu has the pointer
    window.stage_menu.close()
    window.actions_["split"].trigger()
    first = window.session.recipe.stage("ripen").end.length_min
    assert first == pytest.approx(20.0, abs=1.0)
    assert ids(window)[:2] == ["ripen", "ripen-2"]


@pytest.fixture
def other(qtbot: QtBot, recipe: Recipe, tmp_path: Path) -> Iterator[Window]:
    """A second window on another recipe."""
    renamed = recipe.model_copy(update={"name": "Another", "stages": recipe.stages[:7] + recipe.stages[10:]})
    made = Window(renamed, config=tmp_path / "config2", data=tmp_path / "data2")
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.session.stack.setClean()
    made.close()
    made.deleteLater()
    gone()


def test_stages_are_copied_from_window_to_window(qtbot: QtBot, window: Window, other: Window) -> None:
    window.session.choose("mill")
    with qtbot.waitActive(window):
        window.activateWindow()
    qtbot.keyClick(window.curve, Qt.Key.Key_C, CTRL)
    held = QGuiApplication.clipboard().mimeData()
    assert held.hasFormat(STAGES)
    assert held.text().startswith("[[stage]]")
    other.session.choose("drain")
    with qtbot.waitActive(other):
        other.activateWindow()
    qtbot.keyClick(other.curve, Qt.Key.Key_V, CTRL)
    there = ids(other)
    assert there[there.index("drain") + 1] == "mill"
    assert other.session.chosen == "mill"
    assert other.session.recipe.stage("mill") == window.session.recipe.stage("mill")
    other.actions_["undo"].trigger()
    assert "mill" not in ids(other)


def test_a_set_takes_its_rennet_along_when_cut_and_pasted(window: Window) -> None:
    session = window.session
    given = [one.id for one in session.recipe.additions if one.at == "set"]
    assert given
    session.choose("set")
    window.actions_["cut"].trigger()
    assert "set" not in ids(window)
    assert not {one.id for one in session.recipe.additions} & set(given)
    session.choose("ripen")
    window.actions_["paste"].trigger()
    assert ids(window)[:2] == ["ripen", "set"]
    assert [one.id for one in session.recipe.additions if one.at == "set"] == given
    assert not session.trouble


def test_what_is_no_stage_is_refused_with_a_sentence(window: Window) -> None:
    QGuiApplication.clipboard().setText("eggs, flour, a litre of milk")
    window.actions_["paste"].trigger()
    assert window.session.stack.count() == 0
    box = QApplication.activeModalWidget()
    said = window.status.text() + window.statusBar().currentMessage()
    assert "no stage of a recipe" in said or box is not None


def wheel(curve: MakeCurve, at: QPointF, pixels: QPoint, angle: QPoint) -> None:
    """One event of a touch pad."""
    QApplication.sendEvent(
        curve,
        QWheelEvent(
            at, curve.mapToGlobal(at), pixels, angle, Qt.MouseButton.NoButton, Qt.KeyboardModifier.NoModifier,
            Qt.ScrollPhase.ScrollUpdate, False,
        ),
    )  # fmt: skip


def test_two_fingers_sideways_pan_and_up_and_down_zoom(curve: MakeCurve) -> None:
    curve.zoom(0.5)
    at = QPointF(curve.frame.axis.left + 200, 300)
    axis = curve.frame.axis
    for angle in (QPoint(0, 0), QPoint(-60, 0)):
        axis = curve.frame.axis
        wheel(curve, at, QPoint(-30, 4), angle)
        assert curve.frame.axis.start_min == pytest.approx(axis.start_min + 30 / axis.px_per_min)
        assert curve.frame.axis.span_min == pytest.approx(axis.span_min)
    minute = axis.minute(at.x())
    axis, minute = curve.frame.axis, curve.frame.axis.minute(at.x())
    wheel(curve, at, QPoint(2, 40), QPoint(0, 0))
    assert curve.frame.axis.span_min < axis.span_min
    assert curve.frame.axis.minute(at.x()) == pytest.approx(minute, abs=0.5)


def test_a_pinch_zooms_about_the_fingers(curve: MakeCurve) -> None:
    at = QPointF(curve.frame.axis.left + 300, 300)
    span, minute = curve.frame.axis.span_min, curve.frame.axis.minute(at.x())
    pad = QPointingDevice.primaryPointingDevice()
    QApplication.sendEvent(
        curve,
        QNativeGestureEvent(
            Qt.NativeGestureType.ZoomNativeGesture, pad, 2, at, at, curve.mapToGlobal(at), 0.25, QPointF(0, 0)
        ),
    )
    assert curve.frame.axis.span_min == pytest.approx(span / 1.25)
    assert curve.frame.axis.minute(at.x()) == pytest.approx(minute, abs=0.5)


def test_the_pointers_shape_says_that_a_stage_is_in_the_hand(curve: MakeCurve) -> None:
    start = name_of(curve, "hold")
    press(curve, start)
    move(curve, start + QPointF(30, 0))
    assert curve.cursor().shape() == Qt.CursorShape.ClosedHandCursor
    QApplication.sendEvent(curve, QEvent(QEvent.Type.Leave))
    curve.cancel()
    release(curve, start)
    assert curve.cursor().shape() == Qt.CursorShape.ArrowCursor
