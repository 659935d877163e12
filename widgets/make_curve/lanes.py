"""The branches as lanes: each a smaller vat on the same axis, beginning where it leaves the main make.

Every lane is a Frame of its own, so that vat, ribbon and grips are painted by the same hands as those of the main make.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from typing import Final

from PySide6.QtCore import QCoreApplication, QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF

from designer.forecast import Forecast
from designer.language import number
from designer.recipe.document import Branch, Recipe
from widgets import wording
from widgets.make_curve import vat
from widgets.make_curve.frame import Frame, blocks, edges_of
from widgets.theme import apply as dress

DASHES: Final = ([9.0, 3.0], [4.0, 2.5], [1.5, 2.5], [9.0, 3.0, 2.0, 3.0], [4.0, 2.0, 1.0, 2.0, 1.0, 2.0])
"""How the curves of a lane are broken where another lane is looked at: by the number of the lane."""
HEAD_PX: Final = 130.0
"""The least room a lane's name needs left of its vat."""


def dash(number: int) -> list[float]:
    """The dash pattern of a lane."""
    return DASHES[number % len(DASHES)]


def name_of(lane: Recipe | Branch) -> str:
    """What a lane is called."""
    if isinstance(lane, Recipe):
        return QCoreApplication.translate("Lane", "main make")
    return lane.name or lane.id


def share_text(recipe: Recipe, branch: Branch) -> str:
    """What goes a branch's way: "40 % of the curd, after stir"."""
    templates = {
        "curd": QCoreApplication.translate("Lane", "{0} of the curd, after {1}"),
        "whey": QCoreApplication.translate("Lane", "{0} of the whey, after {1}"),
        "cream": QCoreApplication.translate("Lane", "{0} of the cream, after {1}"),
    }
    stage = recipe.stage(branch.after)
    return templates[branch.of].format(f"{number(branch.share_pct)} %", wording.stage_name(stage.name, stage.kind))


def branch_frames(main: Frame, spans: Mapping[str, tuple[float, float]], larger: Mapping[str, int]) -> list[Frame]:
    """A frame for each branch. `spans` are low and high of its temperatures, `larger` how its curd is enlarged."""
    made = []
    for place_number, (forecast, (place, ribbon)) in enumerate(
        zip(main.forecast.branches, main.places.lanes, strict=True), start=1
    ):
        assert forecast.branch_id is not None
        span = spans.get(forecast.branch_id, (20.0, 40.0))
        made.append(
            replace(
                main,
                forecast=forecast,
                before=_before(main, forecast.branch_id),
                blocks=blocks(forecast, main.system),
                places=replace(main.places, vat=place, ribbon=ribbon),
                temperature=vat.temperature_scale(place, *span, head_px=main.fonts.note_metrics.height() + 7),
                enlarged=larger.get(forecast.branch_id, 1),
                memo={},
                edges=edges_of(forecast),
                name=name_of(forecast.recipe.branch(forecast.branch_id)),
                number=place_number,
            )
        )
    return made


def _before(main: Frame, branch_id: str) -> Forecast | None:
    if main.before is None:
        return None
    return next((one for one in main.before.branches if one.branch_id == branch_id), None)


def start_min(frame: Frame) -> float:
    """When a lane leaves the main make."""
    return frame.blocks[0].start_min if frame.blocks else 0.0


def paint_parting(painter: QPainter, main: Frame, lane: Frame) -> None:
    """The way from the main vat down to where a branch begins."""
    minute = start_min(lane)
    x = main.axis.x(minute)
    if not main.axis.left <= x <= main.axis.right or x < main.left_px:
        return
    top = vat.level_y(main, minute)
    bottom = lane.temperature.y(float(lane.forecast.trace["temperature_c"][0]))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for width, colour in ((5.0, "paper"), (2.0, "accent" if chosen(lane) else "rind")):
        painter.setPen(QPen(main.colour(colour), width, Qt.PenStyle.SolidLine, Qt.PenCapStyle.FlatCap))
        painter.drawLine(QLineF(x, top, x, bottom - 7))
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(main.colour("accent" if chosen(lane) else "rind"))
    painter.drawPolygon(QPolygonF([QPointF(x - 5, bottom - 9), QPointF(x + 5, bottom - 9), QPointF(x, bottom)]))


def chosen(frame: Frame) -> bool:
    """True where the selected stage is in this lane."""
    return any(stage.id == frame.chosen for stage in frame.stages)


def head_box(frame: Frame) -> QRectF:
    """Where the lane's name stands: left of its vat where there is room, else over its upper right corner."""
    rect = frame.places.vat
    start = min(max(frame.axis.x(start_min(frame)), rect.left()), rect.right())
    tall = frame.fonts.strong_metrics.height() + frame.fonts.note_metrics.height()
    if start - rect.left() >= HEAD_PX:
        middle = (rect.top() + frame.places.ribbon.bottom() - tall) / 2
        return QRectF(rect.left() + 8, middle, start - rect.left() - 24, tall)
    wide = min(dress.width(frame.name, "note", bold=True) + 40, rect.width() / 2)
    return QRectF(rect.right() - wide, rect.top() + 1, wide, frame.fonts.strong_metrics.height())


def paint_head(painter: QPainter, frame: Frame) -> None:
    """A lane's name, how its curves are broken, and what goes its way."""
    assert frame.lane is not None
    box = head_box(frame)
    beside = box.height() > frame.fonts.strong_metrics.height() + 1
    name = dress.fitted(frame.name, "note", box.width() - 34, bold=True)
    base = box.top() + frame.fonts.strong_metrics.ascent()
    if not beside:
        painter.fillRect(box, frame.colour("paper", 0.86))
    pen = QPen(frame.colour("accent" if chosen(frame) else "soft"), 2.0)
    if not chosen(frame):
        pen.setDashPattern([length * 0.6 for length in dash(frame.number)])
    painter.setPen(pen)
    y = base - frame.fonts.note_metrics.xHeight() / 2
    painter.drawLine(QLineF(box.left(), y, box.left() + 24, y))
    painter.setFont(frame.fonts.strong)
    painter.setPen(frame.colour("ink"))
    painter.drawText(QPointF(box.left() + 32, base), name)
    if beside:
        recipe = frame.forecast.recipe
        text = share_text(recipe, recipe.branch(frame.lane))
        painter.setFont(frame.fonts.note)
        painter.setPen(frame.colour("soft"))
        base += frame.fonts.note_metrics.height()
        painter.drawText(QPointF(box.left() + 32, base), dress.fitted(text, "note", box.width() - 34))


def at(frames: Sequence[Frame], y: float) -> Frame | None:
    """The lane whose vat or ribbon is at a height, None outside them."""
    for frame in frames:
        if frame.places.vat.top() <= y <= frame.places.ribbon.bottom():
            return frame
    return None
