"""Stir the curd in its whey without warming it."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Row, RowContext, VatStage


class Stir(VatStage):
    """Curd kept moving in its whey."""

    LABEL: ClassVar[str] = "stir"
    HELP: ClassVar[str] = "Keep the curd moving in its whey."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "acidity", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("so that the curd just keeps floating",)
    PLACE: ClassVar[int] = schedule.PLACE_UNDER_WHEY

    kind: Literal["stir"] = words("stir", "Kind of stage.")
    end: End = part(after(20.0), "end", "end", "What ends the stage.")
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
        """One stirred row."""
        return [self.row(context, disturbed=self.vigour)]
