"""Set the milk by acid with a few drops of coagulant: cool and slow, overnight."""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End
from designer.recipe.field import Usual, part, words
from designer.recipe.stages.stage import Row, RowContext, VatStage


class LacticSet(VatStage):
    """Acid gel with little rennet; it ends by pH, firmness, acidity of the whey, time or feel."""

    LABEL: ClassVar[str] = "lactic set"
    HELP: ClassVar[str] = "The starter curdles the milk slowly; a little coagulant firms it."
    ENDS: ClassVar[tuple[By, ...]] = ("ph", "time", "firmness", "acidity", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("keep still", "at {temperature_c}")
    TICKS: ClassVar[tuple[str, ...]] = ("lid on",)
    EVERY_MIN: ClassVar[float] = 5.0
    USUAL: ClassVar[Mapping[str, Usual]] = {"temperature_c": (12.0, 45.0)}

    kind: Literal["lactic_set"] = words("lactic_set", "Kind of stage.")
    end: End = part(End(by="ph", of="curd", value=4.6, latest_min=1800.0), "end", "end", "What ends the stage.")

    def rows(self, context: RowContext) -> list[Row]:
        """One row with an acid gel."""
        return [self.row(context, gel=schedule.GEL_LACTIC)]
