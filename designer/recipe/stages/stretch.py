"""Stretch the ripe curd in hot water until it runs smooth."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, RoomStage, Row, RowContext


class Stretch(RoomStage):
    """Curd worked in hot water, 70-85 °C; the curd itself reaches 55-65 °C (common practice)."""

    LABEL: ClassVar[str] = "stretch"
    HELP: ClassVar[str] = "Work the ripe curd in hot water until it stretches smooth."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "temperature", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("water_c", "corner", 1.0),)
    PLAN: ClassVar[tuple[str, ...]] = ("in water of {water_c}", "until it shines and pulls long")
    PLACE: ClassVar[int] = schedule.PLACE_DRAINED
    STEP_MAX_MIN: ClassVar[float] = 1.0

    kind: Literal["stretch"] = words("stretch", "Kind of stage.")
    end: End = part(after(10.0), "end", "end", "What ends the stage.")
    water_c: float = quantity(
        78.0,
        "water_temperature",
        "temperature",
        low=50.0,
        high=98.0,
        step=1.0,
        label="water",
        help="Temperature of the water.",
        source="70-80 °C: Chandan & Kilara 2011, Mozzarella",
    )

    def temperature_columns(self, context: RowContext) -> dict[str, float]:
        """Follows the water; the curd is in thin pieces."""
        return {"t_law": schedule.T_FOLLOW, "follow_c": self.water_c, "va_mm": 5.0}

    def rows(self, context: RowContext) -> list[Row]:
        """One worked row."""
        return [self.row(context, stretch=1.0, disturbed=1.0)]
