"""Brine the cheese: salt goes in from the faces, about twice as much water comes out."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import BrineStage, Handle


class Brine(BrineStage):
    """Cheese lying in brine, then taken out to dry."""

    LABEL: ClassVar[str] = "brine"
    HELP: ClassVar[str] = "Lay the cheese in brine."
    ENDS: ClassVar[tuple[By, ...]] = ("time",)
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("strength_pct", "inside", 0.5), Handle("brine_c", "corner", 1.0))
    PLAN: ClassVar[tuple[str, ...]] = ("in brine of {strength_pct} and {brine_c}", "salt the floating faces")
    TICKS: ClassVar[tuple[str, ...]] = ("turned",)
    EVERY_MIN: ClassVar[float] = 5.0

    kind: Literal["brine"] = words("brine", "Kind of stage.")
    end: End = part(after(720.0), "end", "end", "What ends the stage.")
    strength_pct: float = quantity(
        20.0,
        "strength",
        "percent",
        low=1.0,
        high=26.4,
        step=0.5,
        label="strength",
        help="Salt in the brine by weight (100 g brine hold so many grams); saturated is 26.4 %.",
        source="18-23 %: common practice",
        usual=(12.0, 26.4),
    )
    brine_c: float = quantity(
        13.0,
        "temperature",
        "temperature",
        low=0.0,
        high=30.0,
        step=1.0,
        label="temperature",
        help="Temperature of the brine.",
        source="8-15 °C: common practice",
        usual=(4.0, 20.0),
    )
