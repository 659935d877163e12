"""Warm the milk: to a set temperature over a time, or until it is reached with what heating the vat has."""

from __future__ import annotations

from typing import ClassVar, Literal

from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, VatStage


class Heat(VatStage):
    """Milk warmed, usually to the temperature of the starter."""

    LABEL: ClassVar[str] = "heat"
    HELP: ClassVar[str] = "Warm the milk, usually to the temperature the starter likes."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "temperature")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("temperature_c", "corner", 0.5),)
    PLAN: ClassVar[tuple[str, ...]] = ("to {temperature_c}", "stir gently")

    kind: Literal["heat"] = words("heat", "Kind of stage.")
    end: End = part(after(30.0), "end", "end", "What ends the stage.")
    temperature_c: float | None = quantity(
        None,
        "temperature",
        "temperature",
        low=0.0,
        high=100.0,
        step=0.5,
        label="temperature",
        help="Temperature to reach; for an end by temperature the end says it.",
    )
