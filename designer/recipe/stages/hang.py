"""Hang the curd in cloth to drain."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, words
from designer.recipe.stages.stage import RoomStage, Row, RowContext


class Hang(RoomStage):
    """Curd draining in a cloth under its own weight."""

    LABEL: ClassVar[str] = "hang in cloth"
    HELP: ClassVar[str] = "Tie the curd in cloth and let it drip."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "whey_off", "ph", "feel")
    PLACE: ClassVar[int] = schedule.PLACE_DRAINED  # a cloth drains on all sides, as a bed does
    PLAN: ClassVar[tuple[str, ...]] = ("let it drip", "room {room_c}")

    kind: Literal["hang"] = words("hang", "Kind of stage.")
    end: End = part(after(720.0), "end", "end", "What ends the stage.")

    def rows(self, context: RowContext) -> list[Row]:
        """One row, all free whey off."""
        return [self.row(context, whey_off=1.0)]
