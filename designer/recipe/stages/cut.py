"""Cut the gel to a size; the finer, the more whey leaves.

Sizes in mm with their trade names: rice 2-3, wheat 3-4, hemp 6, pea 5-8, hazelnut 10, walnut 20-30 (common practice).
"""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, Row, RowContext, VatStage


class Cut(VatStage):
    """Gel cut to an edge length at the start of the stage; gentle movement after."""

    LABEL: ClassVar[str] = "cut"
    HELP: ClassVar[str] = "Cut the gel to an even size."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("temperature_c", "corner", 0.5), Handle("cut_mm", "inside", 1.0))
    PLAN: ClassVar[tuple[str, ...]] = ("to {cut_mm}",)
    PLACE: ClassVar[int] = schedule.PLACE_UNDER_WHEY
    DISTURBED: ClassVar[float] = 0.3

    kind: Literal["cut"] = words("cut", "Kind of stage.")
    end: End = part(after(10.0), "end", "end", "What ends the stage.")
    cut_mm: float = quantity(
        10.0,
        "size",
        "length",
        low=1.0,
        high=60.0,
        step=1.0,
        label="size of cut",
        help="Edge of the curd pieces.",
        source="hard grating 2, Alpine 3-4, Cheddar 9.5, Camembert 12-30 mm: published makes",
        usual=(2.0, 50.0),
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One row that begins with the cut."""
        return [self.row(context, cut_mm=self.cut_mm)]
