"""Ripen the milk: the starter wakes and begins to make acid before the coagulant goes in."""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import Usual, part, words
from designer.recipe.stages.stage import VatStage


class Ripen(VatStage):
    """Milk held with its starter; by time, or until its pH or acidity has moved."""

    LABEL: ClassVar[str] = "ripen"
    EVERY_MIN: ClassVar[float] = 2.5
    HELP: ClassVar[str] = "Hold the milk warm with its starter until acid has begun."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "acidity", "feel")
    PLAN: ClassVar[tuple[str, ...]] = ("at {temperature_c}",)
    TICKS: ClassVar[tuple[str, ...]] = ("lid on",)
    USUAL: ClassVar[Mapping[str, Usual]] = {"temperature_c": (10.0, 46.0)}

    kind: Literal["ripen"] = words("ripen", "Kind of stage.")
    end: End = part(after(45.0), "end", "end", "What ends the stage.")
