"""Cook (scald) the curd: warm it while stirring, and hold.

Slow at first, at most 1 °C in 5 min (University of Guelph, Cheddar); too fast closes the skin of the grain.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import Usual, part, quantity, words
from designer.recipe.stages.stage import Row, RowContext, VatStage


class Cook(VatStage):
    """Curd warmed and stirred; by time, temperature, pH, acidity or feel of the grain."""

    LABEL: ClassVar[str] = "cook"
    HELP: ClassVar[str] = "Warm the curd while stirring; the grain shrinks and firms."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "temperature", "ph", "acidity", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("to {temperature_c}", "over {ramp_min}")
    PLACE: ClassVar[int] = schedule.PLACE_UNDER_WHEY
    USUAL: ClassVar[Mapping[str, Usual]] = {"temperature_c": (25.0, 60.0)}

    kind: Literal["cook"] = words("cook", "Kind of stage.")
    end: End = part(after(30.0), "end", "end", "What ends the stage.")
    vigour: float = quantity(
        1.0,
        "vigour",
        "ratio",
        low=0.0,
        high=2.0,
        step=0.1,
        label="vigour",
        help="0 at rest, 1 gently stirred, 2 briskly.",
        source="engineering default",
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One stirred row with its ramp."""
        return [self.row(context, disturbed=self.vigour)]
