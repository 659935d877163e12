"""The make curve to work with: pointer and keyboard over the picture, each gesture one step of undo."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, QEvent, QPoint, QPointF, QRectF, Qt, Signal, Slot
from PySide6.QtGui import (
    QContextMenuEvent,
    QFocusEvent,
    QHelpEvent,
    QKeyEvent,
    QMouseEvent,
    QNativeGestureEvent,
    QPainter,
    QWheelEvent,
)
from PySide6.QtWidgets import QApplication, QToolTip, QWidget

from widgets.make_curve import grips, lanes, overlay, ribbon
from widgets.make_curve.controls import GripControl
from widgets.make_curve.drag import LATER, Answer, Drag, nudged
from widgets.make_curve.frame import Frame
from widgets.make_curve.lift import Lift, grabbed
from widgets.make_curve.lift import paint as paint_lift
from widgets.make_curve.picture import Picture
from widgets.make_curve.tips import tip
from widgets.session import Session

PAN_AFTER_PX = 4.0
LIFT_AFTER_PX = 8.0


@dataclass(slots=True)
class Grab:
    """The gesture under way: a drag of a grip, a stage lifted by its name, or a pan of the view from a pixel."""

    at: QPointF
    drag: Drag | None = None
    lift: Lift | None = None
    pan_from: float = 0.0
    strip: bool = False
    moved: bool = False
    answer: Answer | None = None


class MakeCurve(Picture):
    """The picture with everything on it that can be taken hold of."""

    typed = Signal(object)
    """the maker wants to type the value of a grip"""
    said = Signal(str)
    """what is being done, for the status line; "" when over"""
    locked = Signal()
    """the setting of the handle the keyboard is on is to stay as it is while one aims, or is free again"""
    moved = Signal(int)
    """the selected stage is to go so many places later"""
    menued = Signal(QPoint)
    """what can be done with the selected stage is asked for, at a point of the screen"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        self._hot: grips.Grip | None = None
        self._focused: grips.Grip | None = None
        self._grab: Grab | None = None
        self._reading: float | None = None
        self._controls: dict[tuple[str, str, str], GripControl] = {}
        self._nudge: Answer | None = None
        self._ringed = False
        """the keyboard came here by a key: a frame says so"""
        self.mode = LATER
        super().__init__(session, parent)
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(self.tr("Make curve"))

    def control(self, stage: str, field: str, place: str) -> GripControl:
        """The focusable control of a grip."""
        return self._controls[stage, field, place]

    def _settled(self) -> None:
        """One slider over each grip in view, in the order of the make."""
        _ = self.frame
        order = {"corner": 0, "inside": 1, "edge": 2}
        number = {frame.lane: frame.number for frame in self.frames}
        wanted = sorted(self._grips, key=lambda g: (number[g.lane], g.index, order[g.place]))
        seen: set[tuple[str, str, str]] = set()
        last: QWidget | None = None
        for grip in wanted:
            key = (*grip.key, grip.place)
            seen.add(key)
            control = self._controls.get(key)
            if control is None:
                control = GripControl(grip, self)
                control.nudged.connect(self._nudged)
                control.entered.connect(self._entered)
                control.left.connect(self._left)
                control.asked.connect(self.typed)
                control.locked.connect(self.locked)
                self._controls[key] = control
            control.show_grip(grip, self.system)
            control.show()
            if last is not None:
                QWidget.setTabOrder(last, control)
            last = control
        for key in [key for key in self._controls if key not in seen]:
            control = self._controls.pop(key)
            control.hide()
            control.deleteLater()

    def _over(self, painter: QPainter, frame: Frame) -> None:
        grab = self._grab
        dragged = grab.drag.grip if grab is not None and grab.drag is not None else None
        for each in self.frames:
            own = [grip for grip in self._grips if grip.lane == each.lane]
            focused = self._focused if self._focused is not None and self._focused.lane == each.lane else None
            overlay.paint_grips(painter, each, own, dragged or self._hot, focused)
        overlay.paint_reading(painter, frame, self._read_on(), None if dragged else self._reading)
        at, answer = None, None
        if grab is not None and grab.lift is not None and grab.moved:
            own = self.of_lane(grab.lift.lane)
            paint_lift(painter, own, grab.lift, grab.at.x())
            name, place = grab.lift.block.name, grab.lift.words(own, grab.at.x())
            overlay.paint_badge(painter, frame, grab.at, name, place, "", self.width())
        if grab is not None and grab.answer is not None:
            at, answer = grab.at, grab.answer
        elif grab is None and self._hot is not None and self._hot.place == "inside":
            text = grips.value_text(self._hot.kind, self._hot.value, self.system)
            at, answer = self._hot.at, Answer(None, self._hot.value, text, self._hot.label)
        elif self._nudge is not None and self._focused is not None:
            key = self._focused.key
            at, answer = next((grip.at for grip in self._grips if grip.key == key), None), self._nudge
        if at is not None and answer is not None:
            overlay.paint_badge(painter, frame, at, answer.text, answer.note, answer.why, self.width())
        if self._ringed:
            overlay.paint_ring(painter, frame, QRectF(self.rect()))

    def _read_on(self) -> Frame:
        """The lane whose values stand at the reading line: the main make until the branch looked at has begun."""
        seen = self.seen
        began = self._reading is None or lanes.start_min(seen) <= self._reading
        return seen if began else self.frame

    # ---- pointer

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of a grip, choose a stage, or start to pan."""
        if event.button() != Qt.MouseButton.LeftButton:
            return
        at = event.position()
        frame = self.frame
        found = self.hit(at)
        if found is not None and self.session.trouble:
            # What is drawn is the last make that could be forecast; it is not what would be changed.
            self.said.emit(self.session.trouble)
        elif found is not None:
            self.session.choose(found.stage)
            own = self.frame_of(found)
            self.stand_ready()
            self._grab = Grab(drag=Drag.start(found, own, self.session.recipe, at, self.session.march), at=at)
            self.said.emit(self.tr("Shift lets go of round values, Ctrl keeps the end, Esc cancels."))
        elif frame.places.strip.adjusted(0, -6, 0, 6).contains(at):
            self._grab = Grab(strip=True, at=at)
            self._pan_strip(at)
        else:
            lane = lanes.at(self.frames, at.y())
            block = grabbed(lane, at) if lane is not None else None
            lift = Lift(lane.lane, block) if lane is not None and block is not None else None
            self._grab = Grab(pan_from=at.x(), at=at, lift=lift)
            self._choose_at(at)
        self.update()

    def _choose_at(self, at: QPointF) -> None:
        """Select the stage under a point; left or right of all stages of a branch, the branch."""
        lane = lanes.at(self.frames, at.y())
        if lane is None:
            return
        block = overlay.block_at(lane, lane.axis.minute(at.x()))
        if block is not None:
            self.session.choose(block.id)
        elif lane.lane is not None:
            self.session.choose_lane(lane.lane)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Drag, pan, or read."""
        at = event.position()
        grab = self._grab
        if grab is None:
            self._hover(at)
        elif grab.drag is not None:
            self._drag_to(at, event.modifiers())
        elif grab.strip:
            self._pan_strip(at)
        elif grab.lift is not None:
            if not grab.moved and abs(at.x() - grab.at.x()) > LIFT_AFTER_PX:
                grab.moved = True
                self.setCursor(Qt.CursorShape.ClosedHandCursor)
                self.said.emit(self.tr("Let go where the stage is to stand; Esc leaves it where it is."))
            if grab.moved:
                grab.at = at
                self.update()
        elif grab.moved or abs(at.x() - grab.at.x()) > PAN_AFTER_PX:
            grab.moved = True
            self.pan(grab.pan_from - at.x(), passing=True)
            grab.pan_from = at.x()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Keep what the drag led to, as one step of undo."""
        grab, self._grab = self._grab, None
        if event.button() != Qt.MouseButton.LeftButton or grab is None:
            return
        self.said.emit("")
        if grab.drag is not None:
            if grab.answer is not None and grab.answer.recipe is not None:
                self.session.commit(grab.answer.recipe, self._step_text(grab.drag.grip, grab.answer))
            else:
                self.session.drop_preview()
            self._hover(event.position())
        elif grab.lift is not None and grab.moved:
            by = grab.lift.by(self.of_lane(grab.lift.lane), event.position().x())
            self._hover(event.position())
            if by:
                self.moved.emit(by)
        self.update()

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """Zoom to a stage; anywhere else, back to the make day."""
        at = event.position()
        frame = lanes.at(self.frames, at.y()) or self.frame
        block = overlay.block_at(frame, frame.axis.minute(at.x()))
        if frame.places.ribbon.contains(at) and block is not None:
            self.fit_stage(block.id)
        else:
            self.fit_day()

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """What can be done with the stage under the pointer, or by key with the selected one."""
        at = QPointF(event.pos())
        if event.reason() == QContextMenuEvent.Reason.Mouse:
            self._choose_at(at)
            self._reading = max(self._axis.minute(at.x()), 0.0)
            self.menued.emit(event.globalPos())
        else:
            block = next((one for frame in self.frames for one in frame.blocks if one.id == self.session.chosen), None)
            frame = self.seen
            x = min(max(self._axis.x(block.start_min), self._axis.left), self._axis.right) if block is not None else 0.0
            self.menued.emit(self.mapToGlobal(QPointF(x, frame.places.ribbon.bottom()).toPoint()))

    @property
    def reading(self) -> float | None:
        """The minute at the reading line, None where there is none."""
        return self._reading

    def leaveEvent(self, event: QEvent) -> None:
        """No reading line without a pointer; but a menu that opens takes the pointer only to ask what to do there."""
        if self._grab is None and QApplication.activePopupWidget() is None:
            self._reading, self._hot = None, None
            self.update()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Wheel zooms about the pointer; sideways, or with Shift, it pans; touch pads do both."""
        if self._grab is not None and self._grab.drag is not None:
            return
        pixels, angle = event.pixelDelta(), event.angleDelta()
        # A touch pad tells pixels, a wheel an eighth of a degree a step; some pads tell pixels only.
        across, down = (pixels.x(), pixels.y()) if not pixels.isNull() else (angle.x() / 2, angle.y() / 2)
        if event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self.pan(-(across or down), passing=True)
        elif abs(across) > abs(down):
            self.pan(-across, passing=True)
        else:
            self.zoom(1.0024 ** (-down), event.position().x(), passing=True)
        event.accept()

    def event(self, event: QEvent) -> bool:
        """Pinch on a touch pad zooms; tooltips come from what is under the pointer."""
        if isinstance(event, QNativeGestureEvent) and event.gestureType() == Qt.NativeGestureType.ZoomNativeGesture:
            self.zoom(1.0 / max(1.0 + event.value(), 0.2), event.position().x(), passing=True)
            return True
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            text = self.tip_at(QPointF(event.pos()))
            if text:
                QToolTip.showText(event.globalPos(), text, self)
            else:
                QToolTip.hideText()
            return True
        return super().event(event)

    def tip_at(self, at: QPointF) -> str:
        """What a tooltip says at a point."""
        return tip(self.frame, lanes.at(self.frames, at.y()), self.hit(at), at)

    def _hover(self, at: QPointF) -> None:
        frame = self.frame
        self._hot = self.hit(at)
        inside = frame.axis.left <= at.x() <= frame.axis.right and frame.places.top <= at.y() <= frame.places.bottom
        self._reading = max(frame.axis.minute(at.x()), 0.0) if inside else None
        shape = Qt.CursorShape.ArrowCursor
        if self._hot is not None:
            shape = Qt.CursorShape.SplitHCursor if self._hot.place == "edge" else Qt.CursorShape.SizeVerCursor
        elif inside:
            reads = lanes.at(self.frames, at.y()) is None
            shape = Qt.CursorShape.CrossCursor if reads else Qt.CursorShape.ArrowCursor
        if self.cursor().shape() != shape:
            self.setCursor(shape)
        self.update()

    def _drag_to(self, at: QPointF, modifiers: Qt.KeyboardModifier) -> None:
        grab = self._grab
        assert grab is not None
        assert grab.drag is not None
        grab.at, grab.moved = at, True
        free = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
        mode = self.mode
        if modifiers & Qt.KeyboardModifier.ControlModifier:
            mode = "keep" if mode == LATER else LATER
        answer = grab.drag.to(at, free=free, mode=mode)
        if answer.recipe is None and grab.answer is not None:
            # Not allowed: what was last allowed stays, with the reason beside the pointer.
            answer = Answer(grab.answer.recipe, grab.answer.value, grab.answer.text, grab.answer.note, answer.why)
        grab.answer = answer
        if answer.recipe is not None:
            self.session.preview(answer.recipe)
        self.update()

    def cancel(self) -> bool:
        """Let go of what is dragged, as if it had not been touched; False where nothing was."""
        if self._grab is None or (self._grab.drag is None and not (self._grab.lift is not None and self._grab.moved)):
            return False
        self._grab = None
        self.setCursor(Qt.CursorShape.ArrowCursor)
        self.session.drop_preview()
        self.said.emit("")
        self.update()
        return True

    def _pan_strip(self, at: QPointF) -> None:
        self.look_at(ribbon.strip_minute(self.frame, at.x()))

    def _step_text(self, grip: grips.Grip, answer: Answer) -> str:
        return QCoreApplication.translate("MakeCurve", "{0}: {1}").format(grip.label, answer.text)

    # ---- keyboard

    def focusInEvent(self, event: QFocusEvent) -> None:
        """A frame about the picture where a key led here; a click needs none."""
        super().focusInEvent(event)
        self._ringed = event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """The keyboard is elsewhere."""
        super().focusOutEvent(event)
        self._ringed = False
        self.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Esc cancels; plus and minus zoom; arrows move the reading line."""
        key = event.key()
        if key == Qt.Key.Key_Escape and self.cancel():
            return
        if key in (Qt.Key.Key_Plus, Qt.Key.Key_Equal):
            self.zoom(0.8)
        elif key == Qt.Key.Key_Minus:
            self.zoom(1.25)
        elif key in (Qt.Key.Key_Left, Qt.Key.Key_Right):
            here = self._axis.start_min if self._reading is None else self._reading
            step = self._axis.piece(here + 1e-6).step(12.0) * (1 if key == Qt.Key.Key_Right else -1)
            start = self._axis.start_min if self._reading is None else self._reading + step
            self._reading = min(max(start, 0.0), self._axis.whole_min)
            self.update()
        else:
            super().keyPressEvent(event)

    @Slot(object, float, bool)
    def _nudged(self, grip: grips.Grip, steps: float, fine: bool) -> None:
        if self.session.trouble:
            self.said.emit(self.session.trouble)
            return
        now = self.grip(*grip.key, grip.place)
        answer = nudged(self.session.recipe, now, self.frame_of(now), steps, mode=self.mode, fine=fine)
        self._nudge = answer
        if answer.recipe is not None:
            self.session.commit(answer.recipe, self._step_text(now, answer), key=grip.key)
        self.update()

    @Slot(object)
    def _entered(self, grip: grips.Grip) -> None:
        self._focused = grip
        self._nudge = None
        self.session.choose(grip.stage)
        self.update()

    @Slot()
    def _left(self) -> None:
        self._focused = None
        self._nudge = None
        self.update()
