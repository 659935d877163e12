"""Turn the cheeses in their forms."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import part, words
from designer.recipe.stages.stage import RoomStage


class Turn(RoomStage):
    """Cheeses turned over; the stage is the turning and what they stand until the next thing."""

    LABEL: ClassVar[str] = "turn"
    HELP: ClassVar[str] = "Turn the cheeses in their forms."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("room {room_c}",)
    TICKS: ClassVar[tuple[str, ...]] = ("turned",)

    kind: Literal["turn"] = words("turn", "Kind of stage.")
    end: End = part(after(5.0), "end", "end", "What ends the stage.")
