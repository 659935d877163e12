"""A number as text for the eye: in the unit of a system of measures, rounded, with the decimal mark spoken.

What must read back as the very same number is `units.exact`.
"""

from __future__ import annotations

from designer.language import spoken, word
from designer.unit_kinds import KINDS, System, factor


def convert(value: float, kind: str, to_unit: str) -> float:
    """A value in base units, told in another unit of the kind (KeyError for a unit it has not)."""
    unit = KINDS[kind].unit(to_unit)
    return value / factor(kind, unit.name) - unit.offset


def _decimal(value: float, decimals: int, *, fixed: bool, comma: bool) -> str:
    text = f"{value:.{decimals}f}"
    if not fixed and "." in text:
        text = text.rstrip("0").rstrip(".")
    if text.strip("-0.") == "" and text.startswith("-"):
        text = text[1:]
    return text.replace(".", ",") if comma else text


def show(
    value: float,
    kind: str,
    *,
    system: System = "metric",
    unit: str | None = None,
    decimals: int | None = None,
    comma: bool | None = None,
) -> str:
    """A value in base units as text for the eye, rounded: "88 °F", "31.5 °C", "1 h 30 min", "07:30", "6.10".

    Trailing zeros are dropped unless `decimals` is given. Less than a litre is told in mL, as it is measured out.
    `unit` overrides the unit of the system of measures, `comma` the decimal mark of the language spoken.
    """
    comma = spoken().comma if comma is None else comma
    spec = KINDS[kind]
    if kind == "clock":
        whole = round(value) % 1440
        return f"{whole // 60:02d}:{whole % 60:02d}"
    if kind == "duration" and unit is None and decimals is None:
        return _show_duration(value, comma=comma)
    name, usual = spec.display(system)
    if unit is not None:
        name = spec.unit(unit).name
    elif kind == "volume" and decimals is None and 0.0 < abs(value) < 1.0:
        name = "mL"  # as a syringe has it
    number = convert(value, kind, name)
    if kind in ("potency", "cells") and abs(number) >= 1e5:
        mantissa, exponent = f"{number:.{2 if decimals is None else decimals}e}".split("e")
        text = f"{_decimal(float(mantissa), 2, fixed=False, comma=comma)}e{int(exponent)}"
    else:
        places = usual if decimals is None else decimals
        text = _decimal(number, places, fixed=spec.fixed or decimals is not None, comma=comma)
    return f"{text} {word(name, 'unit')}".strip()


def _show_duration(value: float, *, comma: bool) -> str:
    sign, minutes = ("-" if value < 0 else ""), abs(value)
    if minutes < 10 and abs(minutes - round(minutes)) > 0.05:
        return f"{sign}{_decimal(minutes, 1, fixed=False, comma=comma)} min"
    whole = round(minutes)
    days, hours, rest = whole // 1440, whole // 60, whole % 60
    if days >= 3:
        hours = round((whole - days * 1440) / 60)
        days, hours = (days + 1, 0) if hours == 24 else (days, hours)
        day = word("d", "unit")
        return f"{sign}{days} {day} {hours} h" if hours else f"{sign}{days} {day}"
    if not hours:
        return f"{sign}{rest} min"
    return f"{sign}{hours} h {rest} min" if rest else f"{sign}{hours} h"
