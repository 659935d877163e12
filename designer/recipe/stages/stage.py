"""What every stage kind shares: end, place in the vat, temperature, rows for the Schedule, lines for the plan."""

from __future__ import annotations

import math
import string
from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, ClassVar, Literal, Self

from pydantic import model_validator

from designer.language import fill, say, word
from designer.recipe import schedule
from designer.recipe.end import END_VALUE_KIND, By, End, after
from designer.recipe.field import Model, Usual, choice, field_meta, part, quantity, words
from designer.recipe.vat_heat import VatHeat
from designer.units import System, show

Row = dict[str, float]


@dataclass(frozen=True, slots=True)
class Handle:
    """A setting the make curve lets one drag: the field, where its handle sits, and its natural step (base units)."""

    field: str
    place: Literal["edge", "corner", "inside"]
    step: float


@dataclass(frozen=True, slots=True)
class Geometry:
    """One cheese in its form (or the curd bed): mm and m²; `va_mm` is volume over cooling surface."""

    height_mm: float = 100.0
    radius_mm: float = 100.0
    va_mm: float = 25.0
    press_area_m2: float = math.pi * 0.01
    lever: float = 1.0
    pieces: int = 1

    @property
    def columns(self) -> dict[str, float]:
        """Schedule columns of the form."""
        return {"height_mm": self.height_mm, "radius_mm": self.radius_mm, "va_mm": self.va_mm}


@dataclass(frozen=True, slots=True)
class RowContext:
    """What a stage may know of the make when it writes its rows. `temperature_c` is nan where it follows the room."""

    index: int
    milk: schedule.Milk
    geometry: Geometry = Geometry()
    room_c: float = 20.0
    temperature_c: float = math.nan
    vat_of: VatHeat | None = None

    @property
    def vat(self) -> VatHeat | None:
        """The vat with this milk in this room."""
        return None if self.vat_of is None else replace(self.vat_of, milk_kg=self.milk.mass_kg, room_c=self.room_c)

    @property
    def litres(self) -> float:
        """Milk in the vat [L]."""
        return self.milk.mass_kg / self.milk.density_kg_l


class Stage(Model):
    """Base of the stage kinds. Class variables say what the kind is; fields say what the maker set."""

    LABEL: ClassVar[str] = ""
    HELP: ClassVar[str] = ""
    ENDS: ClassVar[tuple[By, ...]] = ("time",)
    HANDLES: ClassVar[tuple[Handle, ...]] = ()
    PLAN: ClassVar[tuple[str, ...]] = ()
    """Clauses of the plan line; one is used when every field it names is set and not 0. Kept short: the column is."""
    TICKS: ClassVar[tuple[str, ...]] = ()
    """What the maker ticks off on the plan: a yes or no, not a figure."""
    USUAL: ClassVar[Mapping[str, Usual]] = {}
    """Usual range of a field the kind shares with others, by field."""
    PLACE: ClassVar[int] = schedule.PLACE_MILK
    DISTURBED: ClassVar[float] = 0.0
    EVERY_MIN: ClassVar[float] = 1.0

    id: str = words(..., "Short stable name that drag handles, comments and readings hang on.")
    kind: str = words(..., "Kind of stage.")
    name: str = words("", "What the maker calls it.")
    end: End = part(after(30.0), "end", "end", "What ends the stage.")
    note: str = words("", "A remark for the plan.")

    @model_validator(mode="after")
    def _allowed_end(self) -> Self:
        if self.end.by not in self.ENDS:
            known = ", ".join(choice(by) for by in self.ENDS)
            raise ValueError(
                say(
                    "“{label}” can't end by {by}; it ends by {known}",
                    label=word(self.LABEL, "stage"),
                    by=choice(self.end.by),
                    known=known,
                )
            )
        return self

    @property
    def title(self) -> str:
        """The maker's name for it, or the word of the trade."""
        return self.name or word(self.LABEL, "stage")

    @classmethod
    def reconcile(cls, data: dict[str, Any], changes: Mapping[str, Any]) -> dict[str, Any]:
        """Field values before validation, after an edit of `changes`; kinds whose fields hang together settle them."""
        return data

    def rows(self, context: RowContext) -> list[Row]:
        """Schedule rows of this stage; most kinds need one."""
        return [self.row(context)]

    def row(self, context: RowContext, **columns: float) -> Row:
        """One row with this stage's end, place and handling; `columns` come on top.

        Milk and whey that nobody heats cool toward the room in an unheated vat.
        """
        base: dict[str, float] = {
            "stage": context.index,
            "place": self.PLACE,
            "disturbed": self.DISTURBED,
            "every_min": self.EVERY_MIN,
            **self.end.columns(),
            **self.temperature_columns(context),
        }
        out = schedule.row(**(base | columns))
        alone = out["t_law"] == schedule.T_HOLD and math.isnan(out["t_end_c"])
        if context.vat is not None and alone and out["place"] <= schedule.PLACE_UNDER_WHEY:
            out |= {"vat_loss": context.vat.loss_per_min, "follow_c": context.vat.room_c}
        return out

    def temperature_columns(self, context: RowContext) -> dict[str, float]:
        """Columns of the temperature law."""
        return {"t_law": schedule.T_HOLD}

    def end_temperature_c(self, before_c: float) -> float:
        """Temperature at the end as far as it is set [°C]; nan where it follows something."""
        return before_c

    def plan_lines(self, system: System = "metric") -> tuple[str, ...]:
        """What to do, in words with units of that system; clauses whose fields are not set are left out."""
        lines = []
        for clause in self.PLAN:
            names = [name for _, name, _, _ in string.Formatter().parse(clause) if name]
            if all(self._is_something(name) for name in names):
                lines.append(fill(clause, "stage", **{name: self.shown(name, system) for name in names}))
        return tuple(lines)

    def _is_something(self, name: str) -> bool:
        """Whether a field is set, and to more than nothing (0 °C is something)."""
        value = getattr(self, name)
        return value is not None and (value != 0.0 or field_meta(type(self), name).kind == "temperature")

    def plan_line(self, system: System = "metric") -> str:
        """The clauses as one line."""
        return ", ".join(self.plan_lines(system))

    def end_line(self, system: System = "metric") -> str:
        """When it is done, in words."""
        end = self.end
        if not end.is_state:
            return show(end.planned_min, "duration") + (say(" (by feel)") if end.by == "feel" else "")
        assert end.value is not None
        value = show(end.value, END_VALUE_KIND[end.by], system=system)
        latest = say("at the latest after {planned_min}", planned_min=show(end.planned_min, "duration"))
        match end.by:
            case "ph":
                return say(
                    "until pH {value} of the {of}, {latest}", value=value, of=choice(end.of or ""), latest=latest
                )
            case "acidity":
                return say(
                    "until {value} acid in the {of}, {latest}", value=value, of=choice(end.of or ""), latest=latest
                )
            case "floc_multiple":
                return say("until {value} × the flocculation time, {latest}", value=value, latest=latest)
            case "firmness":
                return say("until the gel holds {value}, {latest}", value=value, latest=latest)
            case "whey_off":
                return say("until {value} of the milk has run off as whey, {latest}", value=value, latest=latest)
        return say("until {value}, {latest}", value=value, latest=latest)

    def shown(self, name: str, system: System = "metric") -> str:
        """One field as text for the eye."""
        value, meta = getattr(self, name), field_meta(type(self), name)
        return show(value, meta.kind, system=system) if meta.kind and value is not None else choice(str(value))


class VatStage(Stage):
    """A stage whose temperature is held or led: it starts where the last ended and ends at `temperature_c`."""

    PLACE: ClassVar[int] = schedule.PLACE_MILK
    HANDLES: ClassVar[tuple[Handle, ...]] = (Handle("temperature_c", "corner", 0.5),)

    temperature_c: float | None = quantity(
        None,
        "temperature",
        "temperature",
        low=0.0,
        high=100.0,
        step=0.5,
        label="temperature",
        help="Temperature at the end of the stage; left out, it stays as it is.",
    )
    ramp_min: float | None = quantity(
        None,
        "ramp",
        "duration",
        low=0.0,
        high=1440.0,
        step=5.0,
        label="warm over",
        help="Time to reach that temperature, held afterwards; left out, the whole stage.",
    )

    @model_validator(mode="after")
    def _ramp_known(self) -> Self:
        if (
            self.end.is_state
            and self.end.by != "temperature"
            and self.temperature_c is not None
            and self.ramp_min is None
        ):
            raise ValueError(
                say(
                    "the length is not known beforehand, so say how long the change of temperature takes: "
                    'ramp = "30 min"'
                )
            )
        if self.ramp_min is not None and self.temperature_c is None and self.end.by != "temperature":
            raise ValueError(say("a ramp needs the temperature it leads to"))
        if self.ramp_min is not None and self.ramp_min > self.end.planned_min:
            raise ValueError(say("the change of temperature takes longer than the stage"))
        return self

    def temperature_columns(self, context: RowContext) -> dict[str, float]:
        """Held, or led to `temperature_c` as fast as is said or as the vat can; an end by temperature leads on to the
        value of the end. Raises ValueError for a temperature the vat never reaches."""
        if self.end.by == "temperature":
            assert self.end.value is not None
            return self._until(self.end.value, context)
        if self.temperature_c is None:
            return {"t_law": schedule.T_HOLD}
        minutes = self.end.planned_min if self.ramp_min is None else self.ramp_min
        if minutes == 0.0:
            return {"t_law": schedule.T_HOLD, "t_end_c": self.temperature_c}
        least = context.vat.least_minutes(context.temperature_c, self.temperature_c) if context.vat else None
        return {"t_law": schedule.T_RAMP, "t_end_c": self.temperature_c, "ramp_min": max(minutes, least or 0.0)}

    def _until(self, target_c: float, context: RowContext) -> dict[str, float]:
        """Led to the temperature that ends the stage, and a little past it so that it is crossed and not just touched.

        The pace is that of `ramp`, else what the vat's heating or cold jacket gives. The row is no longer than that
        takes: what counts the planned minutes of a make, as the hours since the starter do, counts those and not the
        `latest` that is only there in case.
        """
        change = target_c - context.temperature_c
        least = context.vat.least_minutes(context.temperature_c, target_c) if context.vat else None
        if self.ramp_min is not None:
            minutes = max(self.ramp_min, least or 0.0)
        elif least is not None:
            minutes = least
        else:
            raise ValueError(
                say(
                    'say how long the change of temperature takes (ramp = "30 min"), '
                    "or give the vat its power or cooling"
                )
            )
        past = 0.02 * change if math.isfinite(change) else 0.1
        pace = 1.02 if math.isfinite(change) else 1.0
        ramp = minutes * pace
        needed = min(self.end.planned_min, max(ramp, self.end.earliest_min or 0.0))
        led = {"t_law": schedule.T_RAMP, "t_end_c": target_c + past, "ramp_min": ramp}
        return led if ramp <= 0.0 else led | {"minutes": needed}

    def end_temperature_c(self, before_c: float) -> float:
        """What was set, else what it was."""
        if self.end.by == "temperature":
            return math.nan if self.end.value is None else self.end.value
        return before_c if self.temperature_c is None else self.temperature_c


class RoomStage(Stage):
    """A stage out of the vat: the cheese follows the room (or `room_c`) at the pace of its size."""

    PLACE: ClassVar[int] = schedule.PLACE_MOULD
    EVERY_MIN: ClassVar[float] = 5.0

    room_c: float | None = quantity(
        None,
        "room",
        "temperature",
        low=-2.0,
        high=60.0,
        step=1.0,
        label="room",
        help="Temperature of the room; left out, that of the recipe.",
    )

    def temperature_columns(self, context: RowContext) -> dict[str, float]:
        """Follows the room; geometry of the form on top."""
        room = context.room_c if self.room_c is None else self.room_c
        return {"t_law": schedule.T_FOLLOW, "follow_c": room, **context.geometry.columns}

    def end_temperature_c(self, before_c: float) -> float:
        """Not set: nan."""
        return math.nan


class BrineStage(Stage):
    """A cheese in brine of a strength and a temperature; the kinds differ in what is usual."""

    PLACE: ClassVar[int] = schedule.PLACE_BRINE

    strength_pct: float
    brine_c: float

    def temperature_columns(self, context: RowContext) -> dict[str, float]:
        """Follows the brine."""
        return {"t_law": schedule.T_FOLLOW, "follow_c": self.brine_c, **context.geometry.columns}

    def end_temperature_c(self, before_c: float) -> float:
        """Not set: nan."""
        return math.nan

    def rows(self, context: RowContext) -> list[Row]:
        """One row in brine."""
        return [self.row(context, brine_pct=self.strength_pct)]
