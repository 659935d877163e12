"""Cool the milk: after heat treatment, or down to a cool overnight ripening."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import part, words
from designer.recipe.stages.stage import VatStage


class Cool(VatStage):
    """Milk cooled to a set temperature."""

    LABEL: ClassVar[str] = "cool"
    HELP: ClassVar[str] = "Cool the milk to a temperature."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "temperature")
    PLAN: ClassVar[tuple[str, ...]] = ("to {temperature_c}", "stir gently")

    kind: Literal["cool"] = words("cool", "Kind of stage.")
    end: End = part(after(30.0), "end", "end", "What ends the stage.")
