"""Rest: let the cut curd heal before it is stirred."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, words
from designer.recipe.stages.stage import VatStage


class Rest(VatStage):
    """Curd lying still under its whey."""

    LABEL: ClassVar[str] = "rest"
    HELP: ClassVar[str] = "Leave the curd alone; its cut faces close."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "acidity", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("leave it alone",)
    PLACE: ClassVar[int] = schedule.PLACE_UNDER_WHEY

    kind: Literal["rest"] = words("rest", "Kind of stage.")
    end: End = part(after(5.0), "end", "end", "What ends the stage.")
