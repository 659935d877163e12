"""Drying: the faces dry before the cheese is coated, waxed or goes to its room."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, RoomStage, Row, RowContext


class Drying(RoomStage):
    """Cheese on a board in moving air."""

    LABEL: ClassVar[str] = "drying"
    HELP: ClassVar[str] = "Let the faces dry."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("room_c", "corner", 1.0), Handle("humidity_pct", "inside", 1.0))
    PLAN: ClassVar[tuple[str, ...]] = ("at {room_c}", "{humidity_pct} humidity")
    TICKS: ClassVar[tuple[str, ...]] = ("turned",)
    PLACE: ClassVar[int] = schedule.PLACE_AIR
    EVERY_MIN: ClassVar[float] = 20.0

    kind: Literal["drying"] = words("drying", "Kind of stage.")
    end: End = part(after(1440.0), "end", "end", "What ends the stage.")
    humidity_pct: float = quantity(
        75.0,
        "humidity",
        "percent",
        low=30.0,
        high=100.0,
        step=1.0,
        label="humidity",
        help="Relative humidity of the room.",
        source="common practice",
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One row in the room's air."""
        return [self.row(context, evaporation=1.0 - self.humidity_pct / 100.0)]
