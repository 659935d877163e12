"""The one time axis all panes share: minutes from milk in the vat to pixels, zoom, pan, and where its marks stand."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

DAY_MIN: Final = 1440.0
# Steps between marks that a maker would choose [min].
STEPS: Final = (1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 10080, 20160, 40320)
SHORTEST_MIN: Final = 10.0
"""Nothing shorter fills the width."""


@dataclass(frozen=True, slots=True)
class TimeAxis:
    """What part of the make fills the width: `start_min`, `span_min`, from pixel `left` over `width` pixels."""

    left: float
    width: float
    start_min: float
    span_min: float
    whole_min: float
    """Length of the whole make; the axis is held within it and a little margin."""

    @property
    def end_min(self) -> float:
        """Last minute in view."""
        return self.start_min + self.span_min

    @property
    def right(self) -> float:
        """Pixel of the last minute in view."""
        return self.left + self.width

    @property
    def px_per_min(self) -> float:
        """Pixels a minute takes."""
        return self.width / self.span_min

    def x(self, minute: float) -> float:
        """Pixel of a minute."""
        return self.left + (minute - self.start_min) * self.px_per_min

    def minute(self, x: float) -> float:
        """Minute at a pixel."""
        return self.start_min + (x - self.left) / self.px_per_min

    def shown(self, start_min: float, end_min: float) -> TimeAxis:
        """The same axis showing from one minute to another, held within the make."""
        longest = self.whole_min * 1.04
        span = min(max(end_min - start_min, SHORTEST_MIN), max(longest, SHORTEST_MIN))
        start = min(max(start_min, -0.02 * span), max(longest - span, 0.0))
        return TimeAxis(self.left, self.width, start, span, self.whole_min)

    def placed(self, left: float, width: float) -> TimeAxis:
        """The same minutes over other pixels."""
        return TimeAxis(left, max(width, 1.0), self.start_min, self.span_min, self.whole_min)

    def grown(self, whole_min: float) -> TimeAxis:
        """The same view of a make of another length."""
        return TimeAxis(self.left, self.width, self.start_min, self.span_min, whole_min)

    def zoomed(self, x: float, factor: float) -> TimeAxis:
        """`factor` times as much time in view, the minute under pixel `x` staying where it is."""
        about = self.minute(x)
        span = min(max(self.span_min * factor, SHORTEST_MIN), max(self.whole_min * 1.04, SHORTEST_MIN))
        start = about - (x - self.left) / self.width * span
        return self.shown(start, start + span)

    def panned(self, pixels: float) -> TimeAxis:
        """Moved by pixels; positive shows later minutes."""
        start = self.start_min + pixels / self.px_per_min
        return self.shown(start, start + self.span_min)

    def step(self, apart_px: float) -> float:
        """The shortest natural step whose marks stand at least this far apart [min]."""
        return float(next((s for s in STEPS if s * self.px_per_min >= apart_px), STEPS[-1]))

    def marks(self, step: float, offset_min: float = 0.0) -> Iterator[float]:
        """Minutes in view at which (minute + offset) is a multiple of `step`; none before milk is in the vat."""
        first = math.ceil((max(self.start_min, 0.0) + offset_min) / step - 1e-9)
        last = math.floor((self.end_min + offset_min) / step + 1e-9)
        for index in range(first, last + 1):
            yield index * step - offset_min


def snap_step(px_per_min: float, near_px: float = 5.0) -> float:
    """To what a duration is rounded while dragging: a natural step at least `near_px` wide [min]."""
    return float(next((s for s in STEPS if s * px_per_min >= near_px), STEPS[-1]))
