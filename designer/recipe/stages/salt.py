"""Salt the curd (or the face of the cheese) dry.

Cheddar 2.5-3.0 % of the curd, milder territorials 1.6-2.0 % (common practice); what stays is a law of the march.
"""

from __future__ import annotations

import math
from typing import ClassVar, Literal

from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import part, quantity, words
from designer.recipe.stages.stage import Handle, Row, RowContext, VatStage


class Salt(VatStage):
    """Dry salt, as a share of the curd then or of the milk; the stage is the mellowing after it."""

    LABEL: ClassVar[str] = "salt curd"
    HELP: ClassVar[str] = "Strew salt and let it mellow."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("salt_pct", "inside", 0.1),)
    PLAN: ClassVar[tuple[str, ...]] = ("{salt_pct} of the {of}", "strewn evenly")
    PLACE: ClassVar[int] = schedule.PLACE_DRAINED

    kind: Literal["salt"] = words("salt", "Kind of stage.")
    end: End = part(after(15.0), "end", "end", "What ends the stage.")
    salt_pct: float = quantity(
        2.5,
        "salt",
        "percent",
        low=0.0,
        high=8.0,
        step=0.1,
        label="salt",
        help="Dry salt strewn.",
        source="Cheddar 2.5-3.0 % of curd: common practice",
        usual=(0.2, 5.0),
    )
    temperature_c: float | None = quantity(
        None,
        "temperature",
        "temperature",
        low=0.0,
        high=100.0,
        step=0.5,
        label="temperature",
        help="Of curd: at the end of the stage, left out it stays. Of a formed cheese: the air it lies in, left out "
        "the make room.",
    )
    of: Literal["curd", "milk"] = words("curd", "What the share is taken of.", label="share of")
    on: Literal["curd", "cheese"] = words(
        "curd", "Loose curd that is stirred, or the faces of a formed cheese.", label="strewn on"
    )

    def rows(self, context: RowContext) -> list[Row]:
        """One row that begins with the salt; a formed cheese lies in air of `temperature_c`, else in the room's."""
        key = "salt_per_curd" if self.of == "curd" else "salt_per_milk"
        if self.on == "curd":
            return [self.row(context, disturbed=1.0, **{key: self.salt_pct / 100.0})]
        around = context.room_c if self.temperature_c is None else self.temperature_c
        air = {"place": schedule.PLACE_AIR, "t_law": schedule.T_FOLLOW, "follow_c": around, "every_min": 5.0}
        air |= {"t_end_c": math.nan, "ramp_min": 0.0}
        return [self.row(context, **(air | context.geometry.columns), **{key: self.salt_pct / 100.0})]

    def end_temperature_c(self, before_c: float) -> float:
        """A formed cheese follows the room."""
        return super().end_temperature_c(before_c) if self.on == "curd" else float("nan")
