"""Wash the curd: part of the whey off, water on. Warm water cooks, cold water keeps moisture; both carry lactose away.

The temperature that comes of it is a heat balance in the march, not a setting here.
"""

from __future__ import annotations

from typing import ClassVar, Literal, Self

from pydantic import model_validator

from designer.language import say
from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, Row, RowContext, Stage


class Wash(Stage):
    """Three steps in one: whey off, water on, stir in the diluted whey."""

    LABEL: ClassVar[str] = "wash curd"
    HELP: ClassVar[str] = "Draw whey, add water, stir on; takes lactose away so that the cheese ends sweeter."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "acidity", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (
        Handle("whey_off_pct", "inside", 5.0),
        Handle("water_pct", "inside", 1.0),
        Handle("water_c", "inside", 1.0),
    )
    PLAN: ClassVar[tuple[str, ...]] = (
        "{whey_off_pct} of the whey off",
        "water at {water_c}",
    )
    PLACE: ClassVar[int] = schedule.PLACE_UNDER_WHEY

    kind: Literal["wash"] = words("wash", "Kind of stage.")
    end: End = part(after(30.0), "end", "end", "What ends the stage.")
    whey_off_pct: float = quantity(
        35.0,
        "whey_off",
        "percent",
        low=0.0,
        high=100.0,
        step=5.0,
        label="whey off",
        help="Share of the free whey drawn before the water.",
        source="Gouda one third: University of Guelph",
    )
    off_min: float = quantity(
        5.0, "off_over", "duration", low=0.0, high=120.0, step=1.0, label="draw over", help="Time to draw the whey."
    )
    water_pct: float | None = quantity(
        None,
        "water",
        "percent",
        low=0.0,
        high=150.0,
        step=1.0,
        label="water on",
        help="Water added, as share of the milk's mass.",
        source="Gouda 20-25 % of milk: University of Guelph",
        usual=(2.0, 100.0),
    )
    water_l: float | None = quantity(
        None,
        "water_volume",
        "volume",
        low=0.0,
        high=100_000.0,
        step=1.0,
        label="water on",
        help="Water added, as volume.",
    )
    water_c: float = quantity(
        60.0,
        "water_temperature",
        "temperature",
        low=0.0,
        high=95.0,
        step=1.0,
        label="water",
        help="Temperature of the water.",
    )
    on_min: float = quantity(
        10.0,
        "on_over",
        "duration",
        low=0.5,
        high=120.0,
        step=1.0,
        label="add over",
        help="Time to add the water.",
        source="15-20 min: University of Guelph, Gouda",
    )
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

    @model_validator(mode="after")
    def _one_water(self) -> Self:
        if (self.water_pct is None) == (self.water_l is None):
            raise ValueError(say("say once how much water goes on: as share of the milk (water) or as water_volume"))
        if self.off_min + self.on_min > self.end.planned_min:
            raise ValueError(say("drawing the whey and adding the water take longer than the whole stage"))
        return self

    def water_per_milk(self, context: RowContext) -> float:
        """Water added [kg per kg milk]; 1 L of water counts as 1 kg."""
        if self.water_pct is not None:
            return self.water_pct / 100.0
        assert self.water_l is not None
        return self.water_l / context.milk.mass_kg

    def end_temperature_c(self, before_c: float) -> float:
        """Comes of mixing: nan."""
        return float("nan")

    def rows(self, context: RowContext) -> list[Row]:
        """Whey off, water on, and stirring until the end."""
        timed = {"end_by": schedule.END_TIME, "end_value": 0.0, "earliest_min": 0.0, "disturbed": self.vigour}
        out = []
        if self.whey_off_pct > 0.0 and self.off_min > 0.0:
            off = {"minutes": self.off_min, "whey_off": self.whey_off_pct / 100.0, "disturbed": 0.0}
            out.append(self.row(context, **(timed | off)))
        water = {"minutes": self.on_min, "water_on": self.water_per_milk(context), "water_c": self.water_c}
        out.append(self.row(context, **(timed | water)))
        before = sum(row["minutes"] for row in out)
        rest = self.end.planned_min - before
        if rest > 1e-9:
            earliest = max(0.0, (self.end.earliest_min or 0.0) - before)
            out.append(self.row(context, minutes=rest, earliest_min=earliest, disturbed=self.vigour))
        return out
