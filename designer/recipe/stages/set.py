"""Set the milk with coagulant; ends at a multiple of the flocculation time, a firmness, a time, or by feel."""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End
from designer.recipe.field import Usual, part, words
from designer.recipe.stages.stage import Row, RowContext, VatStage


class Set(VatStage):
    """Rennet gel. The coagulant is an addition at this stage; its dose in IMCU comes from there."""

    LABEL: ClassVar[str] = "set"
    EVERY_MIN: ClassVar[float] = 2.5
    HELP: ClassVar[str] = "Coagulant goes in; the milk stands still until the gel is ready to cut."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "floc_multiple", "firmness", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("stir in 1 min, then still",)
    TICKS: ClassVar[tuple[str, ...]] = ("lid on",)
    USUAL: ClassVar[Mapping[str, Usual]] = {"temperature_c": (18.0, 45.0)}

    kind: Literal["set"] = words("set", "Kind of stage.")
    end: End = part(End(by="floc_multiple", value=3.0, latest_min=90.0), "end", "end", "What ends the stage.")

    def rows(self, context: RowContext) -> list[Row]:
        """One row with a rennet gel."""
        return [self.row(context, gel=schedule.GEL_RENNET)]
