"""Words and figures on the screen: names of stage kinds, clock times, lengths, quantities in the maker's units."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Final

from PySide6.QtCore import QCoreApplication

from designer.language import number, word
from designer.quantities import quantity
from designer.recipe.stages.kinds import KINDS
from designer.unit_kinds import Measure, System, measure
from designer.units import convert, show

MINUS: Final = "\u2212"
NARROW: Final = "\u202f"


def kind_name(kind: str) -> str:
    """A stage kind in the maker's language."""
    return word(KINDS[kind].LABEL, "stage") if kind in KINDS else kind


def stage_name(name: str, kind: str) -> str:
    """What the maker calls a stage, or what its kind is called."""
    return name or kind_name(kind)


def clock(minute_of_day: float, system: str = "metric") -> str:
    """ "07:30", or "7:30 am" in US units; days roll over."""
    whole = round(minute_of_day) % 1440
    hour, minute = divmod(whole, 60)
    if system != "us":
        return f"{hour:02d}:{minute:02d}"
    half = QCoreApplication.translate("Clock", "am") if hour < 12 else QCoreApplication.translate("Clock", "pm")
    return f"{(hour - 1) % 12 + 1}:{minute:02d}{NARROW}{half}"


def length(minutes: float) -> str:
    """ "45 min", "2 h 30", "16 h", "3 d": as short as it can be said."""
    whole = round(minutes)
    if abs(minutes) < 10 and abs(minutes - whole) > 0.05:
        return f"{number(minutes, '.1f')} min"
    if whole < 60:
        return f"{whole} min"
    hours, rest = divmod(whole, 60)
    if hours < 48:
        return f"{hours} h {rest:02d}" if rest else f"{hours} h"
    days, rest_hours = divmod(round(minutes / 60), 24)
    day = word("d", "unit")
    return f"{days} {day} {rest_hours} h" if rest_hours else f"{days} {day}"


def figure(key: str, value: float, system: str = "metric") -> str:
    """A value of a quantity (`designer.quantities`) with its unit, in the maker's system."""
    what = quantity(key)
    if what.kind in ("ratio", "count", "ph"):
        return number(value, f".{what.decimals}f")
    if measured(system, what.kind) == "metric":
        return f"{number(value, f'.{what.decimals}f')} {what.unit}".rstrip()
    return show(value, what.kind, system=system)  # type: ignore[arg-type]


@dataclass(frozen=True, slots=True)
class Display:
    """How a kind of unit is displayed: shown = slope * base + offset, as `unit`."""

    slope: float
    offset: float
    unit: str

    def shown(self, base: float) -> float:
        """Base value to displayed value."""
        return self.slope * base + self.offset

    def base(self, shown: float) -> float:
        """Displayed value to base value."""
        return (shown - self.offset) / self.slope


def system_of(text: str) -> System:
    """A system of measures by its key; metric where it is none."""
    return text if text in ("us", "imperial", "own") else "metric"


def measured(system: str, kind: str) -> Measure:
    """The measure of a kind of quantity in a system."""
    return measure(system_of(system), kind)


def temperature(system: str) -> Display:
    """Temperatures as °C, or °F in US units."""
    return _temperature(measured(system, "temperature"))


@lru_cache(maxsize=8)
def _temperature(system: Measure) -> Display:
    if system != "us":
        return Display(1.0, 0.0, "°C")
    zero = convert(0.0, "temperature", "°F")
    return Display(convert(1.0, "temperature", "°F") - zero, zero, "°F")
