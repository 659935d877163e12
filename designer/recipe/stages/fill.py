"""Fill forms: the curd goes into its forms and drains there under its own weight."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import part, words
from designer.recipe.stages.stage import RoomStage, Row, RowContext


class Fill(RoomStage):
    """Curd in forms, all free whey off; it may stand there until its pH is reached."""

    LABEL: ClassVar[str] = "fill forms"
    HELP: ClassVar[str] = "Fill the curd into its forms."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "acidity", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("evenly and quickly", "room {room_c}")

    kind: Literal["fill"] = words("fill", "Kind of stage.")
    end: End = part(after(15.0), "end", "end", "What ends the stage.")

    def rows(self, context: RowContext) -> list[Row]:
        """One row in the form, all free whey off."""
        return [self.row(context, whey_off=1.0)]
