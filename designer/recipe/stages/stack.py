"""Stack the drained curd: slabs turned and piled while acid comes (cheddaring)."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, VatStage


class Stack(VatStage):
    """Drained bed kept warm, turned and piled; usually until the pH for milling."""

    LABEL: ClassVar[str] = "stack"
    EVERY_MIN: ClassVar[float] = 2.5
    HELP: ClassVar[str] = "Cut the drained bed into slabs, turn and pile them while acid comes."
    ENDS: ClassVar[tuple[By, ...]] = ("ph", "time", "acidity", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("temperature_c", "corner", 0.5),)
    PLAN: ClassVar[tuple[str, ...]] = ("turn every {turn_min}", "keep at {temperature_c}")
    TICKS: ClassVar[tuple[str, ...]] = ("turned",)
    PLACE: ClassVar[int] = schedule.PLACE_DRAINED

    kind: Literal["stack"] = words("stack", "Kind of stage.")
    end: End = part(End(by="ph", of="curd", value=5.4, latest_min=180.0), "end", "end", "What ends the stage.")
    turn_min: float | None = quantity(
        None,
        "turn_every",
        "duration",
        low=1.0,
        high=240.0,
        step=5.0,
        label="turn every",
        help="How often the slabs are turned; for the plan only.",
        source="common practice",
    )
