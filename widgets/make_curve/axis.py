"""The one time axis all panes share: minutes from milk in the vat to pixels, zoom, pan, and where its marks stand."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Final

import numpy as np
from numpy.typing import NDArray

LITTLE: Final = 1.3
"""Up to so many times as long as what came before, what follows stands on the same scale."""
# Steps between marks that a maker would choose [min].
STEPS: Final = (
    1, 2, 5, 10, 15, 30, 60, 120, 180, 240, 360, 720, 1440, 2880, 10080, 20160, 40320, 80640, 120960, 241920, 483840,
)  # fmt: skip
SHORTEST_MIN: Final = 10.0
"""Nothing shorter fills the width."""


@dataclass(frozen=True, slots=True)
class TimeAxis:
    """What part of the make fills the width: `start_min`, `span_min`, from pixel `left` over `width` pixels.

    With `joints` the scale changes on the way: (minute, share of the width) from the first minute in view to the last,
    so that the hours of the make, the days after it and the months of ageing are all read in one picture.
    """

    left: float
    width: float
    start_min: float
    span_min: float
    whole_min: float
    """Length of the whole make; the axis is held within it and a little margin."""
    joints: tuple[tuple[float, float], ...] = ()

    @property
    def end_min(self) -> float:
        """Last minute in view."""
        return self.start_min + self.span_min

    @property
    def right(self) -> float:
        """Pixel of the last minute in view."""
        return self.left + self.width

    @property
    def pieces(self) -> tuple[TimeAxis, ...]:
        """The stretches of one scale each, from left to right."""
        if not self.joints:
            return (self,)
        return tuple(
            TimeAxis(self.left + a * self.width, (b - a) * self.width, start, end - start, self.whole_min)
            for (start, a), (end, b) in pairwise(self.joints)
        )

    @property
    def breaks(self) -> tuple[float, ...]:
        """Minutes at which the scale changes."""
        return tuple(minute for minute, _ in self.joints[1:-1])

    def piece(self, minute: float) -> TimeAxis:
        """The stretch of one scale a minute stands in; one at a break in the stretch before it."""
        pieces = self.pieces
        return next((one for one in pieces if minute <= one.end_min), pieces[-1])

    @property
    def px_per_min(self) -> float:
        """Pixels a minute takes, in the first stretch."""
        return self.pieces[0].width / self.pieces[0].span_min if self.joints else self.width / self.span_min

    def x(self, minute: float) -> float:
        """Pixel of a minute."""
        if self.joints:
            return self.piece(minute).x(minute)
        return self.left + (minute - self.start_min) * self.width / self.span_min

    def xs(self, minutes: NDArray[np.float64]) -> NDArray[np.float64]:
        """Pixels of minutes, shape (n,)."""
        if not self.joints:
            return self.left + (minutes - self.start_min) * (self.width / self.span_min)
        known, shares = zip(*self.joints, strict=True)
        return self.left + self.width * np.interp(minutes, known, shares)

    def minute(self, x: float) -> float:
        """Minute at a pixel."""
        if self.joints:
            pieces = self.pieces
            return next((one for one in pieces if x <= one.right), pieces[-1]).minute(x)
        return self.start_min + (x - self.left) * self.span_min / self.width

    def shown(self, start_min: float, end_min: float) -> TimeAxis:
        """One scale from one minute to another, held within the make."""
        longest = self.whole_min * 1.04
        span = min(max(end_min - start_min, SHORTEST_MIN), max(longest, SHORTEST_MIN))
        start = min(max(start_min, -0.02 * span), max(longest - span, 0.0))
        return TimeAxis(self.left, self.width, start, span, self.whole_min)

    def joined(self, day_min: float, make_min: float) -> TimeAxis:
        """All of it: the work at the vat, the rest of the make, and ageing, each on a scale of its own.

        One scale does where what follows is short against what came before.
        """
        if self.whole_min <= LITTLE * make_min:
            return self.shown(0.0, self.whole_min)
        shares = (0.52, 0.76) if make_min > LITTLE * day_min else (0.72,)
        ends = (day_min, make_min) if len(shares) > 1 else (make_min,)
        joints = ((0.0, 0.0), *zip(ends, shares, strict=True), (self.whole_min, 1.0))
        return TimeAxis(self.left, self.width, 0.0, self.whole_min, self.whole_min, joints)

    def placed(self, left: float, width: float) -> TimeAxis:
        """The same minutes over other pixels."""
        return replace(self, left=left, width=max(width, 1.0))

    def grown(self, whole_min: float) -> TimeAxis:
        """The same view of a make of another length."""
        return replace(self, whole_min=whole_min)

    def zoomed(self, x: float, factor: float) -> TimeAxis:
        """`factor` times as much time in view, the minute under pixel `x` staying where it is.

        Out of a joined scale one gets to the scale of the stretch under the pixel.
        """
        about = self.minute(x)
        here = self.piece(about)
        span = here.span_min / here.width * self.width * factor
        span = min(max(span, SHORTEST_MIN), max(self.whole_min * 1.04, SHORTEST_MIN))
        start = about - (x - self.left) / self.width * span
        return self.shown(start, start + span)

    def panned(self, pixels: float) -> TimeAxis:
        """Moved by pixels; positive shows later minutes. A joined scale shows all there is, and stays."""
        if self.joints:
            return self
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
