"""Mill the stacked curd into chips, ready for salt."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, Row, RowContext, VatStage


class Mill(VatStage):
    """Slabs torn or cut to chips and stirred."""

    LABEL: ClassVar[str] = "mill"
    HELP: ClassVar[str] = "Mill the slabs into chips."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("cut_mm", "inside", 1.0),)
    PLAN: ClassVar[tuple[str, ...]] = ("to {cut_mm}",)
    PLACE: ClassVar[int] = schedule.PLACE_DRAINED
    DISTURBED: ClassVar[float] = 1.0

    kind: Literal["mill"] = words("mill", "Kind of stage.")
    end: End = part(after(10.0), "end", "end", "What ends the stage.")
    cut_mm: float = quantity(
        15.0,
        "size",
        "length",
        low=3.0,
        high=60.0,
        step=1.0,
        label="size of chips",
        help="Edge of the chips.",
        source="common practice",
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One row that begins with the milling."""
        return [self.row(context, cut_mm=self.cut_mm)]
