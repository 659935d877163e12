"""Ladle the gel into forms in slices, uncut or lightly cut."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, RoomStage, Row, RowContext


class Ladle(RoomStage):
    """Slices of gel into the forms; what is free of whey runs off there."""

    LABEL: ClassVar[str] = "ladle"
    HELP: ClassVar[str] = "Ladle the gel into the forms, slice by slice."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("cut_mm", "inside", 5.0),)
    PLAN: ClassVar[tuple[str, ...]] = ("slices of {cut_mm} into the forms", "room {room_c}")

    EVERY_MIN: ClassVar[float] = 1.0
    """Half of the free whey leaves in five minutes: a curve of it with fewer points has corners."""

    kind: Literal["ladle"] = words("ladle", "Kind of stage.")
    end: End = part(after(60.0), "end", "end", "What ends the stage.")
    cut_mm: float = quantity(
        20.0,
        "slice",
        "length",
        low=3.0,
        high=80.0,
        step=5.0,
        label="slice",
        help="Thickness of the slices.",
        source="common practice",
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One row in the form, all free whey off."""
        return [self.row(context, cut_mm=self.cut_mm, whey_off=1.0)]
