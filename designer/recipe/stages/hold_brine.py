"""Hold in brine: the cheese stays in a weaker brine and ripens in it."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import BrineStage, Handle


class HoldBrine(BrineStage):
    """Cheese kept in brine for weeks."""

    LABEL: ClassVar[str] = "hold in brine"
    HELP: ClassVar[str] = "Keep the cheese in brine to ripen."
    ENDS: ClassVar[tuple[By, ...]] = ("time",)
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("strength_pct", "inside", 0.5), Handle("brine_c", "corner", 1.0))
    PLAN: ClassVar[tuple[str, ...]] = ("under brine of {strength_pct} and {brine_c}",)
    EVERY_MIN: ClassVar[float] = 30.0

    kind: Literal["hold_brine"] = words("hold_brine", "Kind of stage.")
    end: End = part(after(20_160.0), "end", "end", "What ends the stage.")
    strength_pct: float = quantity(
        8.0,
        "strength",
        "percent",
        low=1.0,
        high=26.4,
        step=0.5,
        label="strength",
        help="Salt in the brine by weight (100 g brine hold so many grams); saturated is 26.4 %.",
        source="6-10 %: common practice",
        usual=(3.0, 16.0),
    )
    brine_c: float = quantity(
        6.0,
        "temperature",
        "temperature",
        low=0.0,
        high=30.0,
        step=1.0,
        label="temperature",
        help="Temperature of the brine.",
        source="4-8 °C: common practice",
        usual=(0.0, 16.0),
    )
