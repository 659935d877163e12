"""What one picture of the make shows: the forecast cut into blocks, the axis, the panes' places, fonts and colours.

A Frame is built once per repaint and read by every painter; nothing in it changes.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, Final

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QCoreApplication, QRectF
from PySide6.QtGui import QColor, QFont, QFontMetricsF

from designer.forecast import Forecast
from designer.judge.moments import own_stages
from designer.language import number
from widgets import wording
from widgets.make_curve.axis import TimeAxis
from widgets.make_curve.path import stage_edges
from widgets.theme import apply as dress
from widgets.theme.palette import Colours

MILK_KINDS: Final = frozenset({"heat", "cool", "ripen"})
GEL_KINDS: Final = frozenset({"set", "lactic_set"})
WHEY_KINDS: Final = frozenset({"acid_heat", "cut", "rest", "stir", "cook", "wash", "settle", "drain"})
BARE_KINDS: Final = frozenset({"ladle", "hang", "stack", "mill", "salt", "scald", "stretch"})
CUT_KINDS: Final = frozenset({"cut", "ladle", "mill"})
OUT: Final = frozenset({"bare", "cheese"})
"""Phases in which the curd is out of the whey."""


@dataclass(frozen=True, slots=True)
class Block:
    """One stage as drawn. `by` is what ends it; `state` is true where a state ends it and not the clock."""

    index: int
    id: str
    kind: str
    name: str
    start_min: float
    end_min: float
    low_min: float
    high_min: float
    reached: bool
    by: str
    of: str
    value: float | None
    end_text: str
    end_c: float
    """temperature at the end [°C]"""
    phase: str
    """what there is: "milk", "gel", "whey" (curd under it), "bare" (drained curd), "cheese", "drawn" whey, "cream" """
    grain_mm: float
    """size the curd was last cut to"""
    planned: bool = False
    """after the make: drawn as written, the forecast does not come to it"""

    @property
    def length_min(self) -> float:
        """How long it lasts."""
        return self.end_min - self.start_min

    @property
    def state(self) -> bool:
        """True where a state ends the stage."""
        return self.by not in ("time", "feel")


def end_text(end: Any, length_min: float, system: str) -> str:
    """How a stage ends, as short as it can be said: "45 min", "pH 6.10", "3 × floc"."""
    value, by = end.value, end.by
    if by == "time" or value is None:
        text = wording.length(length_min)
        return QCoreApplication.translate("Ends", "{0}, by feel").format(text) if by == "feel" else text
    if by == "ph":
        return QCoreApplication.translate("Ends", "pH {0}").format(number(value, ".2f"))
    if by == "temperature":
        return wording.figure("temperature_c", value, system)
    if by == "floc_multiple":
        return QCoreApplication.translate("Ends", "{0} × floc").format(number(value, ".2g"))
    if by == "acidity":
        return QCoreApplication.translate("Ends", "{0} % acid").format(number(value, ".2f"))
    if by == "firmness":
        return QCoreApplication.translate("Ends", "{0} Pa").format(number(value, ".0f"))
    return QCoreApplication.translate("Ends", "{0} % whey off").format(number(value, ".0f"))


def phases(kinds: Iterable[str], *, begins: str = "milk") -> list[str]:
    """What is there in each stage of a lane, by the kinds of its stages; a cheese stays a cheese.

    `begins` is what there is before: "milk", "drawn" whey, "cream", or the phase at which curd left the main make.
    """
    made = []
    moulded = begins == "cheese"
    first = begins if begins in ("milk", "drawn", "cream") else "bare" if begins == "bare" else "whey"
    for kind in kinds:
        if kind in MILK_KINDS and not moulded:
            made.append(first)
        elif kind in GEL_KINDS and not moulded:
            made.append("gel")
        elif kind in WHEY_KINDS and not moulded:
            made.append("whey")
        elif kind in BARE_KINDS and not moulded:
            made.append("bare")
        else:
            moulded = True
            made.append("cheese")
    return made


def lane_phases(forecast: Forecast) -> list[str]:
    """What is there in each stage of the lane of a forecast; of a branch of curd that goes on from the main make."""
    main = phases(stage.kind for stage in forecast.recipe.stages)
    if forecast.branch_id is None:
        return main
    branch = forecast.recipe.branch(forecast.branch_id)
    parted = next(phase for stage, phase in zip(forecast.recipe.stages, main, strict=True) if stage.id == branch.after)
    begins = {"whey": "drawn", "cream": "cream"}.get(branch.of, parted)
    return phases((stage.kind for stage in branch.stages), begins=begins)


def blocks(forecast: Forecast, system: str) -> tuple[Block, ...]:
    """The stages of a forecast as blocks, in order."""
    written = {stage.id: stage for stage in own_stages(forecast)}
    made = []
    held = lane_phases(forecast)
    grain_mm = 12.0
    for index, stage in enumerate(forecast.stages):
        end = written[stage.id].end
        if stage.kind in CUT_KINDS:
            grain_mm = float(getattr(written[stage.id], "cut_mm", grain_mm))
        length = stage.end_min - stage.start_min
        made.append(
            Block(
                index=index,
                id=stage.id,
                kind=stage.kind,
                name=wording.stage_name(stage.name, stage.kind),
                start_min=stage.start_min,
                end_min=stage.end_min,
                low_min=stage.end_low_min,
                high_min=stage.end_high_min,
                reached=stage.reached,
                by=end.by,
                of=end.of or "",
                value=end.value,
                end_text=end_text(end, length, system),
                end_c=stage.values["temperature_c"],
                phase=held[index],
                grain_mm=grain_mm,
            )
        )
    return (*made, *_after_the_make(forecast, made, held, system))


def _after_the_make(forecast: Forecast, made: list[Block], held: list[str], system: str) -> Iterator[Block]:
    """The stages from the first room on, as written: the march ends where the cheese goes into its room."""
    end_min = made[-1].end_min if made else 0.0
    for index, stage in enumerate(own_stages(forecast)[len(made) :], start=len(made)):
        start_min, end_min = end_min, end_min + stage.end.planned_min
        own_c = getattr(stage, "room_c", None)
        yield Block(
            index=index,
            id=stage.id,
            kind=stage.kind,
            name=wording.stage_name(stage.name, stage.kind),
            start_min=start_min,
            end_min=end_min,
            low_min=end_min,
            high_min=end_min,
            reached=True,
            by="time",
            of="",
            value=None,
            end_text=wording.length(stage.end.planned_min),
            end_c=forecast.recipe.room_c if own_c is None else own_c,
            phase=held[index],
            grain_mm=12.0,
            planned=True,
        )


def make_day_end(shown: tuple[Block, ...]) -> float:
    """Where the default view ends: the work at the vat, and a little of the long stage that follows."""
    total = shown[-1].end_min if shown else 60.0
    end = 0.0
    for block in shown:
        if block.kind in ("press", "brine", "hold_brine", "drying", "room", "hang", "turn") and block.length_min > 150:
            return min(total, max(end, 60.0) * 1.14)
        end = block.end_min
    return total


@dataclass(frozen=True, slots=True)
class Places:
    """Where each part of the picture stands, in pixels of the widget."""

    vat: QRectF
    ribbon: QRectF
    panes: Mapping[str, QRectF]
    axis: QRectF
    strip: QRectF
    lanes: tuple[tuple[QRectF, QRectF], ...] = ()
    """of each branch: where its vat and its ribbon stand"""

    @property
    def top(self) -> float:
        """Top of what the reading line crosses."""
        return self.vat.top()

    @property
    def bottom(self) -> float:
        """Bottom of what the reading line crosses."""
        return self.axis.top()


GUTTER_LEFT: Final = 56.0
GUTTER_RIGHT: Final = 46.0
TIGHT_PX: Final = 520.0
"""Lower than this, branches leave the ribbon of the main make one line."""
LANE_GAP: Final = 6.0
LANE_SHARE: Final = 0.48
"""Height of a branch's vat, of that of the main make."""


def places(
    width: float,
    height: float,
    panes: tuple[str, ...],
    line_px: float,
    branches: int = 0,
    *,
    gutter_px: float = GUTTER_LEFT,
) -> Places:
    """Divide a widget: vat, stage ribbon, branches, panes, time axis, strip of the whole make.

    `line_px` is the height of a line of text, `gutter_px` what the words of the scales ask for at the left.
    """
    head = line_px + 10
    strip, axis = 20.0, 2 * line_px + 9
    slim = max(line_px + 8, 24.0)
    ribbon = slim if branches and height < TIGHT_PX else 2 * line_px + 32
    left = max(GUTTER_LEFT, gutter_px)
    inner = width - left - GUTTER_RIGHT
    free = height - head - 4 - ribbon - axis - strip - len(panes) * head - 8 - branches * (slim + LANE_GAP)
    vat_share = 1.0 / (1.0 + 0.52 * len(panes) + LANE_SHARE * branches)
    vat_height = max(free * vat_share, 60.0)
    lane_height = max(LANE_SHARE * vat_height, 34.0)
    pane_height = max((free - vat_height - branches * lane_height) / max(len(panes), 1), 30.0)
    y = head + 4
    vat = QRectF(left, y, inner, vat_height)
    y += vat_height
    ribbon_rect = QRectF(left, y, inner, ribbon)
    y += ribbon
    lanes = []
    for _ in range(branches):
        y += LANE_GAP
        lanes.append((QRectF(left, y, inner, lane_height), QRectF(left, y + lane_height, inner, slim)))
        y += lane_height + slim
    made: dict[str, QRectF] = {}
    for name in panes:
        y += head
        made[name] = QRectF(left, y, inner, pane_height)
        y += pane_height
    axis_rect = QRectF(left, y, inner, axis)
    return Places(vat, ribbon_rect, made, axis_rect, QRectF(left, y + axis, inner, strip - 6), tuple(lanes))


@dataclass(frozen=True, slots=True)
class Scale:
    """A vertical scale: base value `low` at the bottom of `rect`, `high` at its top."""

    rect: QRectF
    low: float
    high: float

    def y(self, value: float) -> float:
        """Pixel of a value."""
        return self.rect.bottom() - (value - self.low) / (self.high - self.low) * self.rect.height()

    def ys(self, values: NDArray[np.float64]) -> NDArray[np.float64]:
        """Pixels of values, shape (n,)."""
        return self.rect.bottom() - (values - self.low) * (self.rect.height() / (self.high - self.low))

    def value(self, y: float) -> float:
        """Value at a pixel."""
        return self.low + (self.rect.bottom() - y) / self.rect.height() * (self.high - self.low)

    @property
    def px_per_unit(self) -> float:
        """Pixels one base unit takes."""
        return self.rect.height() / (self.high - self.low)


@dataclass(frozen=True, slots=True)
class Fonts:
    """The fonts of the picture with their measures."""

    note: QFont
    body: QFont
    strong: QFont
    note_metrics: QFontMetricsF
    strong_metrics: QFontMetricsF


@dataclass(frozen=True, slots=True)
class Frame:
    """Everything the painters read of one lane: the main make, or a branch with a smaller vat of its own."""

    forecast: Forecast
    before: Forecast | None
    blocks: tuple[Block, ...]
    axis: TimeAxis
    places: Places
    temperature: Scale
    scales: Mapping[str, Scale]
    colours: Colours
    fonts: Fonts
    system: str
    clock_start_min: float | None
    chosen: str
    bands_stale: bool = False
    moving: bool = False
    """something is being dragged: what can be drawn plainer is"""
    passing: bool = False
    """the view is being moved: this picture stands for a moment only, and is drawn plainer too"""
    pixel_ratio: float = 1.0
    enlarged: int = 1
    """how many times as large the curd is drawn once out of the whey"""
    full_kg: float = 100.0
    """what the whole height of the vat stands for [kg per 100 kg milk]"""
    from_px: float = 0.0
    """while something is dragged: nothing left of this changes, so nothing left of it is drawn"""
    gates: tuple[Any, ...] = ()
    memo: dict[object, Any] = field(default_factory=dict)
    """what several painters need, worked out once a frame"""
    edges: NDArray[np.bool_] = field(default_factory=lambda: np.zeros(0, dtype=bool))
    make_min: float = 0.0
    """when the last lane goes into its room"""
    hours: tuple[float, float] | None = None
    """working hours, minutes of the day; None: any"""
    name: str = ""
    """of the lane"""
    number: int = 0
    """of the lane: 0 the main make"""

    @property
    def lane(self) -> str | None:
        """Id of the branch, None: the main make."""
        return self.forecast.branch_id

    @property
    def stages(self) -> Sequence[Any]:
        """The stages of this lane as written, also those the forecast has not come to."""
        return own_stages(self.forecast)

    @property
    def left_px(self) -> float:
        """First pixel of the axis that is drawn."""
        return max(self.axis.left, self.from_px)

    def colour(self, name: str, alpha: float = 1.0) -> QColor:
        """A colour of the palette, with opacity."""
        return dress.ink(getattr(self.colours, name), alpha)

    def clock_text(self, minute: float) -> str:
        """The clock at a minute of the make, or the time since milk where the recipe has no start."""
        if self.clock_start_min is None:
            return wording.length(minute)
        return wording.clock(self.clock_start_min + minute, self.system)


def edges_of(forecast: Forecast) -> NDArray[np.bool_]:
    """First and last point of every stage of the trace."""
    return stage_edges(forecast.trace.stage)
