"""Drain: run the whey off, all of it or a share."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, Row, RowContext, VatStage


class Drain(VatStage):
    """Whey run off evenly through the stage. All of it: the curd lies drained; a share: it stays under whey."""

    LABEL: ClassVar[str] = "drain"
    HELP: ClassVar[str] = "Run the whey off."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "whey_off", "ph", "acidity", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("whey_off_pct", "inside", 5.0),)
    PLAN: ClassVar[tuple[str, ...]] = ("{whey_off_pct} of the whey off",)
    PLACE: ClassVar[int] = schedule.PLACE_DRAINED

    kind: Literal["drain"] = words("drain", "Kind of stage.")
    end: End = part(after(15.0), "end", "end", "What ends the stage.")
    whey_off_pct: float = quantity(
        100.0,
        "whey_off",
        "percent",
        low=1.0,
        high=100.0,
        step=5.0,
        label="whey off",
        help="Share of the free whey run off.",
    )
    vigour: float = quantity(
        0.3,
        "vigour",
        "ratio",
        low=0.0,
        high=2.0,
        step=0.1,
        label="stirring out",
        help="0 left as a bed, 0.3 pushed aside, 1 stirred dry, 2 worked dry.",
        source="engineering default",
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One row; drained when all the whey goes."""
        place = schedule.PLACE_DRAINED if self.whey_off_pct >= 100.0 else schedule.PLACE_UNDER_WHEY
        return [self.row(context, place=place, whey_off=self.whey_off_pct / 100.0, disturbed=self.vigour)]
