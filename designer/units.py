"""Text to number at the door and back: "88 °F", "1/2 in", "2 US gal", "31,5 °C", "1 h 30 min".

A strict grammar of our own (one number, one unit); pint gives the ratios of trade and US units behind it, loaded only
when one is met. User text never reaches pint's evaluator.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import TYPE_CHECKING, Any, Literal

if TYPE_CHECKING:
    import pint

System = Literal["metric", "us", "imperial"]
Gallon = Literal["us", "imperial"]

MAX_TEXT = 40


class UnitError(ValueError):
    """A text that is no quantity of the kind asked for; `str()` is a sentence for the maker."""


@dataclass(frozen=True, slots=True)
class Unit:
    """One accepted unit: how it is shown, how it may be spelt, and what one of it is in base units.

    `factor` is given where it is exact by definition of the decimal system or the trade; else `pint` names the unit
    for the ratio. `offset` is added before the factor (only absolute °F). `asks` makes the spelling ambiguous.
    """

    name: str
    spellings: tuple[str, ...] = ()
    factor: float | None = None
    pint: str = ""
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of quantity: base unit, accepted units, the unit and decimals shown in each system."""

    key: str
    label: str
    base: str
    units: tuple[Unit, ...]
    metric: tuple[str, int]
    us: tuple[str, int]
    imperial: tuple[str, int]
    pint: str = ""
    compound: tuple[str, ...] = ()
    fixed: bool = False
    plain: bool = False
    example: str = ""

    def unit(self, name: str) -> Unit:
        """The unit of that name or spelling; KeyError if this kind has none."""
        for unit in self.units:
            if name == unit.name or name in unit.spellings:
                return unit
        raise KeyError(name)

    def display(self, system: System) -> tuple[str, int]:
        """(unit name, decimals) shown in a system of measures."""
        return self.us if system == "us" else self.imperial if system == "imperial" else self.metric


@dataclass(frozen=True, slots=True)
class Amount:
    """A quantity as read: value in the kind's base unit, unit name as written, the text itself."""

    value: float
    unit: str
    text: str


_MASS = (
    Unit("kg", (), 1.0),
    Unit("g", (), 1e-3),
    Unit("mg", (), 1e-6),
    Unit("t", (), 1e3),
    Unit("lb", ("lbs",), pint="pound"),
    Unit("oz", (), pint="ounce"),
)
_TIME = {
    "s": ("sec", "seconds"),
    "min": ("minute", "minutes"),
    "h": ("hr", "hour", "hours"),
    "d": ("day", "days"),
    "wk": ("week", "weeks"),
    "month": ("months",),
}
_MINUTES = {"s": 1 / 60, "min": 1.0, "h": 60.0, "d": 1440.0, "wk": 10080.0, "month": 43830.0}
_VOLUME = (
    Unit("L", ("l", "litre", "litres", "liter", "liters"), 1.0),
    Unit("mL", ("ml", "cm³", "cc"), 1e-3),
    Unit("cL", ("cl",), 1e-2),
    Unit("dL", ("dl",), 1e-1),
    Unit("hL", ("hl",), 1e2),
    Unit("m³", ("m3",), 1e3),
    Unit("US gal", ("us gal",), pint="gallon"),
    Unit("US qt", ("us qt",), pint="quart"),
    Unit("US pt", ("us pt",), pint="pint"),
    Unit("US fl oz", ("us fl oz",), pint="fluid_ounce"),
    Unit("US cup", ("us cup",), pint="cup"),
    Unit("US tbsp", ("us tbsp",), pint="tablespoon"),
    Unit("US tsp", ("us tsp",), pint="teaspoon"),
    Unit("imp gal", ("imperial gal", "UK gal"), pint="imperial_gallon"),
    Unit("imp qt", ("imperial qt", "UK qt"), pint="imperial_quart"),
    Unit("imp pt", ("imperial pt", "UK pt"), pint="imperial_pint"),
    Unit("imp fl oz", ("imperial fl oz", "UK fl oz"), pint="imperial_fluid_ounce"),
)
# Spellings that mean two sizes: the gallon of the text must be known.
_TWO_SIZES = {
    "gal": "gal", "gallon": "gal", "gallons": "gal", "qt": "qt", "quart": "qt", "quarts": "qt",
    "pt": "pt", "pint": "pt", "pints": "pt", "fl oz": "fl oz", "floz": "fl oz",
}  # fmt: skip
_SIZE_ONLY_US = {"tsp": "US tsp", "tbsp": "US tbsp", "cup": "US cup", "cups": "US cup"}


def _time(base: str) -> tuple[Unit, ...]:
    return tuple(Unit(name, _TIME[name], _MINUTES[name] / _MINUTES[base]) for name in _TIME)


def _same(name: str, decimals: int) -> dict[str, Any]:
    return {"metric": (name, decimals), "us": (name, decimals), "imperial": (name, decimals)}


def _plain(key: str, label: str, spellings: tuple[str, ...], decimals: int, example: str, *, fixed: bool = False) -> Kind:
    return Kind(key, label, "", (Unit("", spellings, 1.0),), **_same("", decimals), fixed=fixed, plain=True, example=example)


def _single(key: str, label: str, units: tuple[Unit, ...], decimals: int, example: str) -> Kind:
    return Kind(key, label, units[0].name, units, **_same(units[0].name, decimals), example=example)


_ALL = (
    Kind(
        "temperature", "temperature", "°C",
        (Unit("°C", ("C", "degC", "º C", "ºC", "° C"), 1.0), Unit("°F", ("F", "degF", "ºF", "° F"), 5 / 9, offset=-32.0)),
        ("°C", 1), ("°F", 1), ("°C", 1), example="31.5 °C",
    ),
    Kind(
        "temperature_difference", "temperature difference", "K",
        (Unit("K", ("Δ°C", "°C", "C"), 1.0), Unit("°F", ("F", "Δ°F"), 5 / 9)),
        ("K", 1), ("°F", 1), ("K", 1), example="1 K",
    ),
    Kind(
        "rate_temperature", "rate of warming", "K/min",
        (Unit("K/min", ("°C/min",), 1.0), Unit("K/h", ("°C/h",), 1 / 60), Unit("°F/min", (), 5 / 9), Unit("°F/h", (), 5 / 540)),
        ("K/min", 2), ("°F/min", 2), ("K/min", 2), example="0.2 K/min",
    ),
    Kind(
        "duration", "length of time", "min", _time("min"), **_same("min", 1),
        compound=("wk", "d", "h", "min", "s"), example="1 h 30 min",
    ),
    Kind("hours", "length of time", "h", _time("h"), **_same("h", 1), compound=("d", "h", "min"), example="12 h"),
    Kind("days", "length of time", "d", _time("d"), **_same("d", 1), example="14 d"),
    Kind("months", "length of time", "month", _time("month"), **_same("month", 1), example="3 months"),
    Kind("volume", "volume", "L", _VOLUME, ("L", 3), ("US gal", 3), ("imp gal", 3), pint="liter", example="100 L"),
    Kind(
        "mass", "mass", "kg", _MASS, ("kg", 3), ("lb", 3), ("lb", 3),
        pint="kilogram", compound=("lb", "oz"), example="2.5 kg",
    ),
    Kind(
        "small_mass", "mass", "kg", _MASS, ("g", 3), ("g", 3), ("g", 3),
        pint="kilogram", compound=("lb", "oz"), example="25 g",
    ),
    Kind(
        "length", "length", "mm",
        (Unit("mm", (), 1.0), Unit("cm", (), 10.0), Unit("m", (), 1000.0), Unit("in", ("inch", "inches", "″", '"'), pint="inch"),
         Unit("ft", ("feet", "foot"), pint="foot")),
        ("mm", 1), ("in", 3), ("in", 3), pint="millimeter", example="10 mm",
    ),
    Kind(
        "pressure", "pressure", "kPa",
        (Unit("kPa", ("kpa",), 1.0), Unit("Pa", (), 1e-3), Unit("bar", (), 100.0), Unit("mbar", ("hPa",), 0.1),
         Unit("psi", (), pint="psi"), Unit("kg/cm²", ("kg/cm2", "kgf/cm²", "kgf/cm2"), pint="kilogram_force/centimeter**2")),
        ("kPa", 1), ("psi", 2), ("kPa", 1), pint="kilopascal", example="20 kPa",
    ),
    _single("percent", "share", (Unit("%", ("pct", "% w/w", "g/100 g", "g/100g"), 1.0), Unit("g/kg", (), 0.1)), 3, "2.5 %"),
    _single("strength", "strength", (Unit("IMCU/mL", ("IMCU/ml", "IMCU/g"), 1.0),), 0, "200 IMCU/mL"),
    _single("potency", "potency", (Unit("CFU/g", ("cfu/g",), 1.0),), 0, "1e11 CFU/g"),
    _single("cells", "cells", (Unit("/mL", ("/ml", "CFU/mL", "cfu/ml", "cells/mL", "cells/ml"), 1.0),), 0, "1e7 /mL"),
    _single(
        "acidity", "titratable acidity",
        (Unit("%", ("% lactic", "% lactic acid"), 1.0), Unit("°D", (), 0.01), Unit("°SH", (), 0.0225), Unit("°Th", (), 0.009)),
        3, "0.18 %",
    ),
    _single("density", "density", (Unit("kg/L", ("kg/l", "g/mL", "g/ml"), 1.0), Unit("g/L", ("g/l", "kg/m³", "kg/m3"), 1e-3)), 4,
            "1.030 kg/L"),
    _single("concentration", "concentration", (Unit("g/L", ("g/l",), 1.0), Unit("g/mL", ("g/ml",), 1e3)), 2, "230 g/L"),
    Kind(
        "power", "power", "kW", (Unit("kW", ("kw",), 1.0), Unit("W", (), 1e-3), Unit("BTU/h", ("btu/h",), pint="Btu/hour")),
        **_same("kW", 2), pint="kilowatt", example="6 kW",
    ),
    Kind(
        "area", "area", "m²",
        (Unit("m²", ("m2",), 1.0), Unit("cm²", ("cm2",), 1e-4), Unit("ft²", ("ft2", "sq ft"), pint="foot**2")),
        ("m²", 3), ("ft²", 2), ("ft²", 2), pint="meter**2", example="1.2 m²",
    ),
    _single("heat_transfer", "heat transfer", (Unit("W/m²K", ("W/m2K", "W/m²/K", "W/m2/K"), 1.0),), 0, "10 W/m²K"),
    _single("firmness", "firmness", (Unit("Pa", (), 1.0),), 0, "35 Pa"),
    _plain("ph", "pH", ("pH",), 2, "6.10", fixed=True),
    _plain("multiple", "multiple", ("x", "×", "times"), 2, "3"),
    _plain("ratio", "ratio", (), 3, "0.91"),
    _plain("count", "number", ("x", "×", "pieces"), 0, "4"),
    _plain("units", "activity units", ("U", "units"), 3, "10"),
    Kind("clock", "time of day", "min", (Unit("min", (), 1.0),), **_same("min", 0), example="07:30"),
)  # fmt: skip
KINDS: dict[str, Kind] = {kind.key: kind for kind in _ALL}

_DIGITS = r"\d+(?:[.,]\d+)?(?:[eE][+-]?\d{1,2})?"
_NUMBER = re.compile(
    rf"(?P<mixed>\d+\s+\d+/\d+|\d+/\d+)|(?P<grouped>\d{{1,3}}(?:,\d{{3}})+\.\d+|\d{{1,3}}(?:\.\d{{3}})+,\d+)|(?P<plain>{_DIGITS})"
)
_CLOCK = re.compile(r"(\d{1,2}):(\d{2})\s*(am|pm)?", re.IGNORECASE)
_GLYPHS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_LOOKS_LIKE_A_SUM = re.compile(r"[*^=(){}\[\];_\\|&<>!$`]|\d\s*[-+]\s*\d|/\s*/|import|lambda|eval")


@cache
def _registry() -> pint.UnitRegistry[Any]:
    import pint

    return pint.UnitRegistry(cache_folder=":auto:")


@cache
def factor(kind_key: str, unit_name: str) -> float:
    """Base units in one unit of that name (without the offset of absolute °F)."""
    kind = KINDS[kind_key]
    unit = kind.unit(unit_name)
    if unit.factor is not None:
        return unit.factor
    registry = _registry()
    return float(registry.Quantity(1.0, registry.parse_units(unit.pint)).to(kind.pint).magnitude)


def _quote(text: str) -> str:
    return f"“{text if len(text) <= MAX_TEXT else text[: MAX_TEXT - 1] + '…'}”"


def _number(text: str, whole: str, comma_digits_ask: bool = True) -> float:
    match = _NUMBER.fullmatch(text)
    if match is None:
        raise UnitError(f"{_quote(whole)} is not a number with a unit.")
    if match["mixed"]:
        *ones, share = match["mixed"].split()
        top, bottom = share.split("/")
        if int(bottom) == 0:
            raise UnitError(f"{_quote(whole)} divides by nothing.")
        return float((int(ones[0]) if ones else 0) + Fraction(int(top), int(bottom)))
    if match["grouped"]:
        marks = "," if match["grouped"].rfind(".") > match["grouped"].rfind(",") else "."
        return float(match["grouped"].replace(marks, "").replace(",", "."))
    if comma_digits_ask and re.fullmatch(r"[1-9]\d{0,2},\d{3}", text):
        plain = text.replace(",", "")
        raise UnitError(f"{_quote(whole)} can be read two ways; write {plain} or {text.replace(',', '.')}.")
    return float(text.replace(",", "."))


def _unit(name: str, kind: Kind, whole: str, gallon: Gallon | None) -> Unit:
    name = " ".join(name.split())
    try:
        return kind.unit(name)
    except KeyError:
        pass
    if kind.key == "volume":
        if name.lower() in _TWO_SIZES:
            size = _TWO_SIZES[name.lower()]
            if gallon is None:
                raise UnitError(f"{_quote(whole)} has two sizes; write “US {size}” or “imp {size}”.")
            return kind.unit(f"{'US' if gallon == 'us' else 'imp'} {size}")
        if name.lower() in _SIZE_ONLY_US:
            if gallon == "us":
                return kind.unit(_SIZE_ONLY_US[name.lower()])
            raise UnitError(f"{_quote(whole)} differs from country to country; write “{_SIZE_ONLY_US[name.lower()]}” or mL.")
    if not name:
        raise UnitError(f"{_quote(whole)} has no unit; write for example “{kind.example}”.")
    for other in KINDS.values():
        if any(name in (unit.name, *unit.spellings) for unit in other.units):
            raise UnitError(f"{_quote(whole)} is a {other.label}, not a {kind.label}; write for example “{kind.example}”.")
    raise UnitError(f"{_quote(whole)} has the unknown unit “{name}”; write for example “{kind.example}”.")


def _to_base(value: float, kind: Kind, unit: Unit) -> float:
    return (value + unit.offset) * factor(kind.key, unit.name)


def parse(text: str, kind: str, *, gallon: Gallon | None = None) -> Amount:
    """Read one quantity. `gallon` says which gallon, quart, pint and fluid ounce a bare one is.

    Raises UnitError (a sentence) for anything but one number and one unit of the kind, 40 characters at most.
    """
    spec = KINDS[kind]
    whole = text.strip()
    if not whole:
        raise UnitError(f"Nothing is written; write for example “{spec.example}”.")
    if len(whole) > MAX_TEXT:
        raise UnitError(f"{_quote(whole)} is too long for a quantity ({len(whole)} characters, at most {MAX_TEXT}).")
    if kind == "clock":
        return _clock(whole)
    body = whole.replace("−", "-").replace("\u00a0", " ").replace("\u202f", " ")
    for glyph, share in _GLYPHS.items():
        body = body.replace(glyph, f" {share}").strip()
    if _LOOKS_LIKE_A_SUM.search(re.sub(r"[eE][+-]?\d", "", body).replace("(", "(")):
        raise UnitError(f"{_quote(whole)} looks like a sum; write one number and its unit, for example “{spec.example}”.")
    sign = -1.0 if body.startswith("-") else 1.0
    body = body.lstrip("+-").strip() if body[0] in "+-" else body
    head = _NUMBER.match(body)
    if head is None:
        raise UnitError(f"{_quote(whole)} is not a {spec.label}; write for example “{spec.example}”.")
    number, rest = head.group(), body[head.end() :].strip()
    if spec.compound and re.search(r"\d", rest) and not re.search(r"[²³]|cm2|m3", rest):
        return Amount(sign * _compound(body, spec, whole), spec.compound[-1], whole)
    unit = _unit(rest, spec, whole, gallon)
    value = _to_base(sign * _number(number, whole), spec, unit)
    return Amount(value, unit.name, whole)


def _compound(body: str, kind: Kind, whole: str) -> float:
    total, place = 0.0, -1
    rest = body
    while rest:
        head = re.match(rf"({_DIGITS})\s*([^\d\s]+)\s*", rest)
        if head is None:
            raise UnitError(f"{_quote(whole)} is not a {kind.label}; write for example “{kind.example}”.")
        unit = _unit(head[2], kind, whole, None)
        if unit.name not in kind.compound or kind.compound.index(unit.name) <= place:
            raise UnitError(f"{_quote(whole)} mixes its units; write for example “{kind.example}”.")
        place = kind.compound.index(unit.name)
        total += _to_base(_number(head[1], whole), kind, unit)
        rest = rest[head.end() :]
    return total


def _clock(whole: str) -> Amount:
    match = _CLOCK.fullmatch(whole)
    if match is None:
        raise UnitError(f"{_quote(whole)} is not a time of day; write for example “07:30”.")
    hour, minute, half = int(match[1]), int(match[2]), (match[3] or "").lower()
    if half:
        if not 1 <= hour <= 12:
            raise UnitError(f"{_quote(whole)} is not a time of day; write for example “07:30”.")
        hour = hour % 12 + (12 if half == "pm" else 0)
    if hour > 23 or minute > 59:
        raise UnitError(f"{_quote(whole)} is not a time of day; write for example “07:30”.")
    return Amount(60.0 * hour + minute, "min", whole)


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
    comma: bool = False,
) -> str:
    """A value in base units as text for the eye, rounded: "88 °F", "31.5 °C", "1 h 30 min", "07:30", "6.10".

    Trailing zeros are dropped unless `decimals` is given. `unit` overrides the unit of the system of measures.
    """
    spec = KINDS[kind]
    if kind == "clock":
        whole = round(value) % 1440
        return f"{whole // 60:02d}:{whole % 60:02d}"
    if kind == "duration" and unit is None and decimals is None:
        return _show_duration(value, comma=comma)
    name, usual = spec.display(system)
    if unit is not None:
        name = spec.unit(unit).name
    number = convert(value, kind, name)
    if kind in ("potency", "cells") and abs(number) >= 1e5:
        mantissa, exponent = f"{number:.{2 if decimals is None else decimals}e}".split("e")
        text = f"{_decimal(float(mantissa), 2, fixed=False, comma=comma)}e{int(exponent)}"
    else:
        places = usual if decimals is None else decimals
        text = _decimal(number, places, fixed=spec.fixed or decimals is not None, comma=comma)
    return f"{text} {name}".strip()


def _show_duration(value: float, *, comma: bool) -> str:
    sign, minutes = ("-" if value < 0 else ""), abs(value)
    if minutes < 10 and abs(minutes - round(minutes)) > 0.05:
        return f"{sign}{_decimal(minutes, 1, fixed=False, comma=comma)} min"
    whole = round(minutes)
    days, hours, rest = whole // 1440, whole // 60, whole % 60
    if days >= 3:
        hours = round((whole - days * 1440) / 60)
        days, hours = (days + 1, 0) if hours == 24 else (days, hours)
        return f"{sign}{days} d {hours} h" if hours else f"{sign}{days} d"
    if not hours:
        return f"{sign}{rest} min"
    return f"{sign}{hours} h {rest} min" if rest else f"{sign}{hours} h"


GRAIN = 9
"""Decimals of a base unit that a document keeps: every unit can then say every kept number exactly."""


def exact(value: float, kind: str, unit: str | None = None) -> str:
    """Text in that unit (default: base) that reads back as the very same number, to `GRAIN` decimals; for files."""
    spec = KINDS[kind]
    value = round(value, GRAIN)
    if kind == "clock":
        return show(value, kind)
    if kind == "duration" and unit is None:
        unit = "h" if value >= 240 and value % 60 == 0 else "min"
        unit = "d" if value >= 4320 and value % 1440 == 0 else unit
    name = spec.unit(unit).name if unit is not None else spec.base
    for candidate in (name, spec.base):
        number = convert(value, kind, candidate)
        for digits in range(1, 18):
            text = _plain_digits(number, digits)
            if round(_to_base(float(text), spec, spec.unit(candidate)), GRAIN) == value:
                if spec.fixed and "." in text and len(text.split(".")[1]) < spec.metric[1]:
                    text += "0" * (spec.metric[1] - len(text.split(".")[1]))
                return f"{text} {candidate}".strip()
    return f"{value!r} {spec.base}".strip()


def _plain_digits(number: float, digits: int) -> str:
    text = f"{number:.{digits}g}"
    if "e" not in text:
        return text
    mantissa, exponent = text.split("e")
    if 0 < int(exponent) < 5 or -5 < int(exponent) < 0:
        return f"{float(text):.{max(0, digits - 1 - int(exponent))}f}"
    return f"{mantissa}e{int(exponent)}"
