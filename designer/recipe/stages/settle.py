"""Settle (pitch): the curd sinks to a bed under its whey, with or without plates and weights on it."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, Row, RowContext, VatStage


class Settle(VatStage):
    """Curd bed under whey; pressed there when a pressure is given."""

    LABEL: ClassVar[str] = "settle"
    HELP: ClassVar[str] = "Let the curd sink and lie together under the whey."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "acidity", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("pressure_kpa", "inside", 0.5),)
    PLAN: ClassVar[tuple[str, ...]] = ("under the whey", "pressed at {pressure_kpa}")
    PLACE: ClassVar[int] = schedule.PLACE_UNDER_WHEY

    kind: Literal["settle"] = words("settle", "Kind of stage.")
    end: End = part(after(10.0), "end", "end", "What ends the stage.")
    pressure_kpa: float | None = quantity(
        None,
        "pressure",
        "pressure",
        low=0.0,
        high=50.0,
        step=0.5,
        label="pressure",
        help="Pressure of the plates on the bed.",
        usual=(None, 15.0),
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One row at rest."""
        return [self.row(context, load_kpa=self.pressure_kpa or 0.0)]
