"""The make curve as a picture: holds the axis and the scales, and builds frames from the session.

What is seen of time, and when the picture is another; how it is painted stands in `layers`.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPointF, QSize, Qt, QTimer, Slot
from PySide6.QtGui import QFontMetricsF, QHideEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QWidget

from designer.forecast import Forecast
from widgets.make_curve import curves, gates, grips, lanes, vat
from widgets.make_curve.axis import TimeAxis
from widgets.make_curve.frame import Fonts, Frame, Places, Scale, blocks, edges_of, make_day_end, places
from widgets.make_curve.layers import Layers, Scene
from widgets.make_curve.ribbon import gutter_px
from widgets.session import Session
from widgets.theme import apply as dress

KEPT_MARGIN_PX = 44.0
"""How far left of its stage a word or a figure of it may reach."""
PASSED_MS = 120
"""How long the view must rest before it is drawn in full after it was moved."""


class Picture(QWidget):
    """The vat drawn through time, with its panes. One session, one time axis."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system = "metric"
        self.panes: tuple[str, ...] = curves.DEFAULT_PANES
        self._axis = TimeAxis(0.0, 1.0, 0.0, 60.0, 60.0)
        self._fit = "day"
        self._one_scale = False
        self._make_min = 60.0
        self._hours: tuple[float, float] | None = None
        self._ranges: dict[str, tuple[float, float]] = {}
        self._enlarged: dict[str | None, int] = {}
        self._full_kg = 100.0
        self._frame: Frame | None = None
        self._branches: tuple[Frame, ...] = ()
        self._grips: tuple[grips.Grip, ...] = ()
        self._layers = Layers()
        self._passing = QTimer(self)
        self._passing.setSingleShot(True)
        self._passing.setInterval(PASSED_MS)
        self._passing.timeout.connect(self._came_to_rest)
        self.setMinimumSize(QSize(520, 380))
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        session.forecastChanged.connect(self._forecast_changed)
        session.bandsChanged.connect(self._other)
        session.chosenChanged.connect(self._chosen_changed)
        session.laneChanged.connect(self._changed)
        self._forecast_changed()

    # ---- what others may ask

    @property
    def frame(self) -> Frame:
        """What is drawn now of the main make."""
        if self._frame is None:
            self._frame = self._built()
            self._branches = tuple(lanes.branch_frames(self._frame, self._spans(), self._enlarged_branches()))
            self._grips = tuple(grip for frame in (self._frame, *self._branches) for grip in grips.of_frame(frame))
        return self._frame

    @property
    def frames(self) -> tuple[Frame, ...]:
        """What is drawn now: the main make and its branches."""
        return (self.frame, *self._branches)

    @property
    def seen(self) -> Frame:
        """The lane that is looked at."""
        return self.of_lane(self.session.lane)

    def of_lane(self, lane: str | None) -> Frame:
        """The frame of a lane; of the main make where there is no such branch."""
        return next((frame for frame in self.frames if frame.lane == lane), self.frame)

    def frame_of(self, grip: grips.Grip) -> Frame:
        """The frame a grip belongs to."""
        return self.of_lane(grip.lane)

    def hit(self, at: QPointF) -> grips.Grip | None:
        """The grip under a point."""
        frame = lanes.at(self.frames, at.y()) or self.frame
        return grips.hit(tuple(grip for grip in self._grips if grip.lane == frame.lane), frame, at)

    def grip(self, stage: str, field: str, place: str) -> grips.Grip:
        """The grip of a setting; KeyError if it is not in view."""
        _ = self.frame
        for found in self._grips:
            if found.key == (stage, field) and found.place == place:
                return found
        raise KeyError((stage, field, place))

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = system
        self._changed()
        self._settled()

    def set_panes(self, names: tuple[str, ...]) -> None:
        """Which panes are unfolded under the vat."""
        self.panes = names
        self._changed()
        self._settled()

    def fit_day(self) -> None:
        """Show the work at the vat, from milk to into the press."""
        self._fit = "day"
        self._show(0.0, max(make_day_end(frame.blocks) for frame in self.frames))

    def fit_whole(self) -> None:
        """Show the whole make."""
        self._fit = "whole"
        self._show(0.0, self._make_min)

    def fit_life(self) -> None:
        """Show make and ageing: on joined scales, or on one, where the make is a sliver."""
        self._fit = "life"
        self._axis = self._lived()
        self._changed()
        self._settled()

    def set_one_scale(self, on: bool) -> None:
        """Whether make and ageing stand on one scale."""
        self._one_scale = on
        self.fit_life()

    def _lived(self) -> TimeAxis:
        if self._one_scale:
            return self._axis.shown(0.0, self._axis.whole_min)
        day_min = max(make_day_end(blocks(lane, self.system)) for lane in self.session.forecast.lanes)
        return self._axis.joined(day_min, self._make_min)

    def set_hours(self, hours: tuple[float, float] | None) -> None:
        """Working hours, minutes of the day; None: any."""
        self._hours = hours
        self._changed()

    def fit_stage(self, stage_id: str) -> None:
        """Show one stage with a little on both sides."""
        block = next((block for frame in self.frames for block in frame.blocks if block.id == stage_id), None)
        if block is None:
            return  # the forecast has not come to it
        margin = 0.15 * block.length_min
        self._fit = "free"
        self._show(block.start_min - margin, block.end_min + margin)

    def fit_chosen(self) -> None:
        """Show the selected stage."""
        self.fit_stage(self.session.chosen)

    def zoom(self, factor: float, x: float | None = None, *, passing: bool = False) -> None:
        """`factor` times as much time in view, about a pixel or the middle; `passing` where more is to follow."""
        self._look(self._axis.zoomed(self._axis.left + self._axis.width / 2 if x is None else x, factor), passing)

    def pan(self, pixels: float, *, passing: bool = False) -> None:
        """Move the view; positive shows later minutes; `passing` where more is to follow."""
        self._look(self._axis.panned(pixels), passing)

    def look_at(self, minute: float) -> None:
        """Move the view so that a minute stands in its middle; more is to follow."""
        half = self._axis.span_min / 2
        self._look(self._axis.shown(minute - half, minute + half), True)

    # ---- building the picture

    def _show(self, start: float, end: float) -> None:
        self._passing.stop()
        self._axis = self._axis.shown(start, end)
        self._changed()
        self._settled()

    def _look(self, axis: TimeAxis, passing: bool) -> None:
        """Another view; while it is passing, what nobody would miss yet waits until it rests."""
        self._fit = "free"
        self._axis = axis
        self._changed()
        if passing:
            self._passing.start()
        else:
            self._passing.stop()
            self._settled()

    @Slot()
    def _came_to_rest(self) -> None:
        self._changed()
        self._settled()

    def _places(self) -> Places:
        line_px = QFontMetricsF(dress.font("note")).height()
        branches = len(self.session.forecast.branches)
        return places(self.width(), self.height(), self.panes, line_px, branches, gutter_px=gutter_px())

    def _spans(self) -> dict[str, tuple[float, float]]:
        """Temperatures of each branch, low and high."""
        return {key.split(":")[1]: span for key, span in self._ranges.items() if key.startswith("temperature:")}

    def _enlarged_branches(self) -> dict[str, int]:
        return {lane: times for lane, times in self._enlarged.items() if lane is not None}

    def _built(self) -> Frame:
        session = self.session
        forecast = session.forecast
        where = self._places()
        self._axis = self._axis.placed(where.vat.left(), where.vat.width())
        low, high = self._ranges["temperature"]
        scales = {
            key: Scale(where.panes[key.split(":")[0]], *span)
            for key, span in self._ranges.items()
            if key.split(":")[0] in where.panes
        }
        note, body, strong = dress.font("note"), dress.font("body"), dress.font("note", bold=True)
        return Frame(
            forecast=forecast,
            before=session.before,
            blocks=blocks(forecast, self.system),
            axis=self._axis,
            places=where,
            temperature=vat.temperature_scale(where.vat, low, high),
            scales=scales,
            colours=dress.colours(),
            fonts=Fonts(note, body, strong, QFontMetricsF(note), QFontMetricsF(strong)),
            system=self.system,
            clock_start_min=forecast.recipe.start_clock_min,
            chosen=session.chosen,
            bands_stale=session.bands_stale,
            moving=session.previewing,
            passing=self._passing.isActive(),
            pixel_ratio=self.devicePixelRatioF(),
            enlarged=self._enlarged.get(None, 1),
            full_kg=self._full_kg,
            from_px=self._layers.kept[1] if self._layers.kept is not None and session.previewing else 0.0,
            gates=gates.marks(session.verdict),
            edges=edges_of(forecast),
            make_min=self._make_min,
            hours=self._hours,
            name=lanes.name_of(forecast.recipe),
        )

    def _scene(self) -> Scene:
        frame = self.frame
        scaled_by = (self.panes, tuple(self._ranges.items()))
        return Scene(frame, self._branches, self.seen, self._grips, self.size(), scaled_by)

    def _settle_scales(self, forecast: Forecast) -> None:
        """Scales and length of the axis; held still while something is dragged."""
        self._ranges = curves.ranges(forecast.lanes, gates.marks(self.session.verdict))
        self._full_kg = vat.fullest_kg(forecast)
        self._enlarged = {lane.branch_id: vat.enlargement(lane, self._full_kg) for lane in forecast.lanes}
        life = 1.0
        for lane in forecast.lanes:
            shown = blocks(lane, self.system)
            warmth = [float(lane.trace["temperature_c"].min()), float(lane.trace["temperature_c"].max())]
            warmth += [block.end_c for block in shown if block.planned]
            key = "temperature" if lane.branch_id is None else f"temperature:{lane.branch_id}"
            self._ranges[key] = (min(warmth), max(warmth))
            life = max(life, *(block.end_min for block in shown))
        self._make_min = max(1.0, *(lane.stages[-1].end_min for lane in forecast.lanes))
        self._axis = self._axis.grown(life)

    @Slot()
    def _changed(self) -> None:
        self._layers.kept = None
        self._other()

    @Slot()
    def _other(self) -> None:
        self._frame = None
        self._layers.still = None
        self.update()

    @Slot()
    def _chosen_changed(self) -> None:
        """Another stage of the lane is selected: the ribbons and the strip say so, the rest of the picture stands."""
        still = self._layers.still
        if still is None or self._branches or self.session.previewing:
            self._changed()
            return
        self._frame = None
        self._layers.choose(still, self._scene())
        self.update()

    @Slot()
    def _forecast_changed(self) -> None:
        if not self.session.previewing:
            self._settle_scales(self.session.forecast)
            self._frame = None
            if self._fit == "day":
                ends = [make_day_end(blocks(lane, self.system)) for lane in self.session.forecast.lanes]
                self._axis = self._axis.shown(0.0, max(ends))
            elif self._fit == "whole":
                self._axis = self._axis.shown(0.0, self._make_min)
            elif self._fit == "life":
                self._axis = self._lived()
            self._changed()
            self._settled()
        else:
            self._keep_what_stands()
            self._other()

    def _settled(self) -> None:
        """The grips are where they will stay; called after every change but those within a drag."""

    def _over(self, painter: QPainter, frame: Frame) -> None:
        """Painted over the still picture each time."""

    # ---- painting

    def sizeHint(self) -> QSize:
        """A comfortable size."""
        return QSize(980, 640)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Everything moves."""
        super().resizeEvent(event)
        self._changed()
        self._settled()

    def hideEvent(self, event: QHideEvent) -> None:
        """Out of sight the view is at rest."""
        super().hideEvent(event)
        if self._passing.isActive():
            self._passing.stop()
            self._came_to_rest()

    def changeEvent(self, event: QEvent) -> None:
        """Another palette or font draws another picture."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.PaletteChange, QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._changed()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The still picture, and over it what moves with the pointer."""
        scene = self._scene()
        still = self._layers.painted(scene)
        painter = QPainter(self)
        try:
            painter.drawPixmap(0, 0, still)
            self._over(painter, scene.frame)
        finally:
            painter.end()

    def stand_ready(self) -> None:
        """Something is about to be tried: have the picture of what is kept, so that most of it can stay."""
        if self._passing.isActive():
            self._passing.stop()
            self._came_to_rest()
        if self._layers.still is None:
            self.repaint()

    def _keep_what_stands(self) -> None:
        """Of what is kept, all stays that lies before the first stage that is tried otherwise."""
        layers, frame = self._layers, self._frame
        whole = layers.kept[0] if layers.kept is not None else None
        if whole is None and frame is not None and not frame.passing and frame.forecast.recipe == self.session.recipe:
            whole = layers.still
        if whole is not None:
            agreed = self.session.agreed_min()
            layers.kept = (whole, max(self._axis.x(agreed) - KEPT_MARGIN_PX, 0.0) if agreed > 0.0 else 0.0)
