"""Scald: whole pieces lie in hot whey or water."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, RoomStage, RowContext


class Scald(RoomStage):
    """Pieces heated through in a hot bath; they follow the bath at the pace of their size."""

    LABEL: ClassVar[str] = "scald"
    HELP: ClassVar[str] = "Lay the pieces in hot whey or water."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "temperature", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("bath_c", "corner", 1.0),)
    PLAN: ClassVar[tuple[str, ...]] = ("in whey or water of {bath_c}",)
    PLACE: ClassVar[int] = schedule.PLACE_BRINE  # in a liquid, here without salt
    EVERY_MIN: ClassVar[float] = 1.0

    kind: Literal["scald"] = words("scald", "Kind of stage.")
    end: End = part(after(60.0), "end", "end", "What ends the stage.")
    bath_c: float = quantity(
        90.0,
        "bath",
        "temperature",
        low=30.0,
        high=100.0,
        step=1.0,
        label="bath",
        help="Temperature of the whey or water.",
        source="common practice",
    )

    def temperature_columns(self, context: RowContext) -> dict[str, float]:
        """Follows the bath."""
        return {"t_law": schedule.T_FOLLOW, "follow_c": self.bath_c, **context.geometry.columns}
