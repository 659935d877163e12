"""Curdle hot milk or whey with acid: whey proteins and casein come together."""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import Usual, part, words
from designer.recipe.stages.stage import Row, RowContext, VatStage


class AcidHeat(VatStage):
    """Acid-and-heat curdling. The acid is an addition at this stage."""

    LABEL: ClassVar[str] = "acid-and-heat curdling"
    HELP: ClassVar[str] = "Acid goes into hot milk or whey and curdles it at once."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "temperature", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("stir the acid in slowly until the whey is clear", "hold {temperature_c}")
    USUAL: ClassVar[Mapping[str, Usual]] = {"temperature_c": (70.0, 98.0)}

    kind: Literal["acid_heat"] = words("acid_heat", "Kind of stage.")
    end: End = part(after(20.0), "end", "end", "What ends the stage.")

    def rows(self, context: RowContext) -> list[Row]:
        """One row with an acid-and-heat gel."""
        return [self.row(context, gel=schedule.GEL_ACID_HEAT)]
