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
    PLAN: ClassVar[tuple[str, ...]] = (
        "in water of {water_c}",
        "{salt_pct} salt in it",
        "until it shines and pulls long",
    )
    PLACE: ClassVar[int] = schedule.PLACE_DRAINED
    EVERY_MIN: ClassVar[float] = 1.0

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
    water_per_curd: float | None = quantity(
        None,
        "water_per_curd",
        "ratio",
        low=0.2,
        high=20.0,
        step=0.1,
        label="water per curd",
        help="Kilograms of water to one of curd: the less, the more it cools. Left out, it is kept as hot.",
        usual=(0.5, 6.0),
    )
    salt_pct: float = quantity(
        0.0,
        "salt",
        "percent",
        low=0.0,
        high=20.0,
        step=0.5,
        label="salt in the water",
        help="Salt in the water by weight.",
        usual=(None, 10.0),
    )

    def temperature_columns(self, context: RowContext) -> dict[str, float]:
        """Follows the water; the curd is in thin pieces."""
        return {"t_law": schedule.T_FOLLOW, "follow_c": self.water_c, "va_mm": 5.0}

    def rows(self, context: RowContext) -> list[Row]:
        """One worked row."""
        share = 0.0 if self.water_per_curd is None else 1.0 / self.water_per_curd
        return [self.row(context, stretch=1.0, disturbed=1.0, curd_per_water=share, brine_pct=self.salt_pct)]
