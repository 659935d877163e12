"""Room: the cheese ages. The make ends when it comes in here; the cellar steps it by the day."""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import Usual, part, quantity, words
from designer.recipe.stages.stage import Handle, RoomStage, Row, RowContext


class Room(RoomStage):
    """Ageing at a temperature and humidity."""

    LABEL: ClassVar[str] = "age"
    HELP: ClassVar[str] = "Age the cheese in its room."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("room_c", "corner", 1.0), Handle("humidity_pct", "inside", 1.0))
    PLAN: ClassVar[tuple[str, ...]] = ("at {room_c}", "{humidity_pct} humidity")
    PLACE: ClassVar[int] = schedule.PLACE_AIR
    EVERY_MIN: ClassVar[float] = 60.0
    USUAL: ClassVar[Mapping[str, Usual]] = {"room_c": (0.0, 26.0), "humidity_pct": (60.0, None)}

    kind: Literal["room"] = words("room", "Kind of stage.")
    end: End = part(after(43_200.0), "end", "end", "What ends the stage.")
    humidity_pct: float = quantity(
        85.0,
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
