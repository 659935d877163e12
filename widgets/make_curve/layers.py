"""The make curve in layers: what is painted in which order, and what of it can stay when something changes.

Four of them: the scales (grid and figures) stay while the view is moved in time, the ground (they and the time axis)
while something is dragged, the still picture while the pointer only moves; what lies over it is painted each time.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPixmap, QRegion

from widgets.make_curve import curves, gates, hours, lanes, overlay, ribbon, vat
from widgets.make_curve.frame import Frame
from widgets.make_curve.grips import Grip


@dataclass(frozen=True, slots=True)
class Scene:
    """All there is to paint: every lane and the grips on it."""

    frame: Frame
    """the main make"""
    branches: tuple[Frame, ...]
    seen: Frame
    """the lane that is looked at"""
    grips: tuple[Grip, ...]
    size: QSize
    scaled_by: tuple[object, ...]
    """what the scales hang on beside size, place and palette"""

    @property
    def frames(self) -> tuple[Frame, ...]:
        """The main make and its branches."""
        return (self.frame, *self.branches)


class Layers:
    """The pixmaps of one make curve; each is painted anew when what it shows is another."""

    def __init__(self) -> None:
        self.still: QPixmap | None = None
        """the picture without what moves with the pointer; None: to be painted"""
        self.kept: tuple[QPixmap, float] | None = None
        """while something is tried: the picture of what is kept, and the pixel from which what is tried differs"""
        self._last: QPixmap | None = None
        self._scales: QPixmap | None = None
        self._scales_key: tuple[object, ...] = ()
        self._ground: QPixmap | None = None
        self._ground_key: tuple[object, ...] = ()
        self._words: dict[str | None, dict[str, str]] = {}

    def painted(self, scene: Scene) -> QPixmap:
        """The still picture; painted where it is not."""
        ground = self.ground(scene)
        if self.still is None:
            if self.kept is not None and scene.frame.moving:
                self.still, kept = self._sheet(scene), self.kept[0]
                within(self.still, lambda painter: self._paint_changed(painter, scene, ground, kept))
            else:
                self.still = self._sheet(scene)
                within(self.still, lambda painter: self.paint_still(painter, scene, ground))
        return self.still

    def choose(self, still: QPixmap, scene: Scene) -> None:
        """Another stage is selected: on a still picture the ribbon and the strip say so."""
        frame = scene.frame
        ground = self.ground(scene)

        def paint(painter: QPainter) -> None:
            spots = (frame.places.ribbon.toRect(), frame.places.strip.toRect())
            painter.setClipRegion(QRegion(spots[0]).united(spots[1]))
            painter.drawPixmap(0, 0, ground)
            ribbon.paint_ribbon(painter, frame)
            _paint_over_ribbons(painter, scene)

        within(still, paint)

    # ---- the pixmaps

    def _sheet(self, scene: Scene) -> QPixmap:
        """The pixmap painted last, to be painted over; a new one where it is kept or of another size.

        A new one for every frame would cost time, and the Qt binding takes six references to None for each pixmap it
        first paints on and never gives them back.
        """
        kept = self.kept is not None and self.kept[0] is self._last
        self._last = afresh(None if kept else self._last, scene)
        return self._last

    def _scaled(self, scene: Scene) -> QPixmap:
        """What stays as it is while the view is moved; drawn anew when scales, size or palette change."""
        frame = scene.frame
        key = (
            frame.places.vat,
            len(scene.branches),
            scene.scaled_by,
            frame.colours.name,
            frame.system,
            frame.pixel_ratio,
            frame.fonts.note.key(),
            scene.size,
        )
        if self._scales is None or key != self._scales_key:
            self._scales_key = key
            self._scales = afresh(self._scales, scene)
            self._scales.fill(frame.colour("paper"))
            within(self._scales, lambda painter: _paint_scales(painter, scene))
            self._ground_key = ()
        return self._scales

    def ground(self, scene: Scene) -> QPixmap:
        """What stays as it is while something is dragged: the scales, and the time axis over them."""
        scales = self._scaled(scene)
        frame = scene.frame
        key = (frame.axis, frame.clock_start_min, frame.hours)
        if self._ground is None or key != self._ground_key:
            self._ground_key = key
            self._ground = afresh(self._ground, scene)
            within(self._ground, lambda painter: _paint_ground(painter, frame, scales))
        return self._ground

    # ---- painting

    def _paint_changed(self, painter: QPainter, scene: Scene, ground: QPixmap, kept: QPixmap) -> None:
        """What was kept, and anew only what lies right of where the change begins, and the strip."""
        frame, width = scene.frame, scene.size.width()
        painter.drawPixmap(0, 0, kept)
        if frame.from_px < frame.axis.right:
            painter.setClipRect(QRectF(frame.from_px, 0, width - frame.from_px, frame.places.axis.bottom()))
            self.paint_still(painter, scene, ground)
        painter.setClipRect(QRectF(0, frame.places.axis.bottom(), width, scene.size.height()))
        painter.drawPixmap(0, 0, ground)
        ribbon.paint_strip(painter, frame)

    def paint_still(self, painter: QPainter, scene: Scene, ground: QPixmap) -> None:
        """The still picture in its order, from the ground up."""
        frame, seen = scene.frame, scene.seen
        painter.drawPixmap(0, 0, ground)
        for each in scene.frames:
            pills = [grip.box for grip in scene.grips if grip.place == "inside" and grip.lane == each.lane]
            each.memo["pills"] = pills
            vat.paint_vat(painter, each)
            owners = self._words.get(each.lane, {})
            self._words[each.lane] = vat.content_words(painter, each, pills, owners)
            ribbon.paint_ribbon(painter, each)
            if each is frame:  # before the branches: a way down passes behind those it goes by, not over their words
                for branch in scene.branches:
                    lanes.paint_parting(painter, frame, branch)
        for branch in scene.branches:
            lanes.paint_head(painter, branch)
            branch.memo["heads"] = [lanes.head_box(branch)]
        for key in frame.places.panes:
            curves.paint_pane(painter, seen, curves.PANES[key], [each for each in scene.frames if each is not seen])
        _paint_over_ribbons(painter, scene)
        gates.paint_gates(painter, frame)
        for each in scene.frames:
            overlay.paint_corner_words(painter, each, [grip for grip in scene.grips if grip.lane == each.lane])


def _paint_scales(painter: QPainter, scene: Scene) -> None:
    for each in scene.frames:
        vat.paint_scale(painter, each)
    for key in scene.frame.places.panes:
        curves.paint_ground(painter, scene.frame, curves.PANES[key])
    overlay.paint_heads(painter, scene.frame)


def _paint_ground(painter: QPainter, frame: Frame, scales: QPixmap) -> None:
    painter.drawPixmap(0, 0, scales)
    hours.paint_hours(painter, frame)
    ribbon.paint_axis(painter, frame)


def _paint_over_ribbons(painter: QPainter, scene: Scene) -> None:
    ribbon.paint_midnights(painter, scene.frame)
    ribbon.paint_breaks(painter, scene.frame)
    for each in scene.frames:
        hours.paint_outside(painter, each)
    if not scene.frame.from_px:
        ribbon.paint_strip(painter, scene.frame)


def afresh(last: QPixmap | None, scene: Scene) -> QPixmap:
    """A pixmap to be painted over: the last one where it has the size."""
    ratio = scene.frame.pixel_ratio
    pixels = QSize(round(scene.size.width() * ratio), round(scene.size.height() * ratio))
    if last is None or last.devicePixelRatio() != ratio or last.size() != pixels:
        last = QPixmap(pixels)
        last.setDevicePixelRatio(ratio)
    return last


def within(pixmap: QPixmap, paint: Callable[[QPainter], None]) -> None:
    """Paint on a pixmap; a painter left open when its pixmap goes would end the process."""
    painter = QPainter(pixmap)
    try:
        paint(painter)
    finally:
        painter.end()
