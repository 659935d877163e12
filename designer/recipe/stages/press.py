"""Press in steps of load: kg on the follower (with the form's lever) or pressure on the cheese.

kPa = kg · lever · 9.81 / area of the follower; stacked cheeses all feel the same force.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, ClassVar, Literal, Self

from pydantic import model_validator

from designer.language import say
from designer.recipe import schedule
from designer.recipe.end import By, End, after
from designer.recipe.field import Model, part, quantity, words
from designer.recipe.pressing import pressure_kpa
from designer.recipe.stages.stage import Handle, RoomStage, Row, RowContext
from designer.units import System, show


class PressStep(Model):
    """One load and how long it stays: kilograms hung on the press, or kPa on the cheese."""

    load_kg: float | None = quantity(
        None,
        "load",
        "mass",
        low=0.0,
        high=5000.0,
        step=1.0,
        label="load",
        help="Weight hung on the press, before its lever.",
        usual=(None, 200.0),
        usual_where="on a hand press",
    )
    pressure_kpa: float | None = quantity(
        None,
        "pressure",
        "pressure",
        low=0.0,
        high=400.0,
        step=1.0,
        label="pressure",
        help="Pressure on the cheese.",
        usual=(None, 200.0),
        usual_where="on a hand press",
    )
    length_min: float = quantity(
        ..., "length", "duration", low=0.5, high=20_000.0, step=5.0, label="length", help="How long this load stays."
    )

    @model_validator(mode="after")
    def _one_load(self) -> Self:
        if (self.load_kg is None) == (self.pressure_kpa is None):
            raise ValueError(say("a press step has either a load or a pressure"))
        return self

    def kpa(self, context: RowContext) -> float:
        """Pressure on the cheese [kPa]."""
        if self.pressure_kpa is not None:
            return self.pressure_kpa
        assert self.load_kg is not None
        geometry = context.geometry
        return pressure_kpa(self.load_kg * geometry.lever, geometry.press_area_m2)


class Press(RoomStage):
    """Steps of load one after the other. The stage is as long as its steps; an end by pH cuts the last one short."""

    LABEL: ClassVar[str] = "press"
    HELP: ClassVar[str] = "Press in steps, gently first: an early hard press closes the skin and keeps whey in."
    ENDS: ClassVar[tuple[By, ...]] = ("time", "ph", "feel")
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("steps", "inside", 1.0),)
    PLAN: ClassVar[tuple[str, ...]] = ("{steps}", "room {room_c}")
    TICKS: ClassVar[tuple[str, ...]] = ("turned",)
    PLACE: ClassVar[int] = schedule.PLACE_PRESS

    kind: Literal["press"] = words("press", "Kind of stage.")
    end: End = part(after(720.0), "end", "end", "What ends the stage.")
    steps: tuple[PressStep, ...] = part(
        (PressStep(pressure_kpa=20.0, length_min=720.0),), "steps", "tables", "Loads, in order."
    )

    @classmethod
    def reconcile(cls, data: dict[str, Any], changes: Mapping[str, Any]) -> dict[str, Any]:
        """Steps changed: the end follows their sum. End changed: the last step follows."""
        steps = tuple(PressStep.model_validate(step) for step in data.get("steps", ()))
        total = sum(step.length_min for step in steps)
        end = End.model_validate(data["end"]) if data.get("end") is not None else None
        if end is None:
            return data | {"end": after(total)} if steps else data
        if not steps or abs(end.planned_min - total) < 1e-6:
            return data
        if "end" in changes:
            last = steps[-1].length_min + end.planned_min - total
            if last < 0.5:
                raise ValueError(say("the press can't end before its last step begins; shorten the steps"))
            return data | {"steps": (*steps[:-1], steps[-1].but(length_min=last))}
        key = "latest_min" if end.is_state else "length_min"
        return data | {"end": end.but(**{key: total})}

    @model_validator(mode="after")
    def _sums(self) -> Self:
        if not self.steps:
            raise ValueError(say("a press needs at least one step"))
        total = sum(step.length_min for step in self.steps)
        if abs(total - self.end.planned_min) > 1e-6:
            raise ValueError(
                say(
                    "the steps last {total} together, the stage {planned_min}",
                    total=show(total, "duration"),
                    planned_min=show(self.end.planned_min, "duration"),
                )
            )
        return self

    def rows(self, context: RowContext) -> list[Row]:
        """One row a step; only the last looks for a state end."""
        out, before = [], 0.0
        for step in self.steps:
            last = step is self.steps[-1]
            columns = {"minutes": step.length_min, "load_kpa": step.kpa(context)}
            columns["earliest_min"] = max(0.0, (self.end.earliest_min or 0.0) - before) if last else 0.0
            if not last:
                columns |= {"end_by": schedule.END_TIME, "end_value": 0.0}
            out.append(self.row(context, **columns))
            before += step.length_min
        return out

    def shown(self, name: str, system: System = "metric") -> str:
        """Steps as "2 kg for 30 min, then 10 kg for 12 h"."""
        if name != "steps":
            return super().shown(name, system)
        return say(", then ").join(
            say("{load} for {length_min}", load=_load(step, system), length_min=show(step.length_min, "duration"))
            for step in self.steps
        )


def _load(step: PressStep, system: System) -> str:
    if step.pressure_kpa is not None:
        return say("at {pressure_kpa}", pressure_kpa=show(step.pressure_kpa, "pressure", system=system))
    assert step.load_kg is not None
    return say("with {load_kg}", load_kg=show(step.load_kg, "mass", system=system))
