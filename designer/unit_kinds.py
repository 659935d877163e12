"""The kinds of quantity and the units each may be written in.

Every ratio stands here: exact by the definition of the unit, but for the BTU, which several tables round apart (ours is
the 1055.056 J of ISO 31-4, as in pint; published, read there). The tests hold those of trade and US units to pint's;
pint itself takes too long to load for a program that opens in a second.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Literal

from designer.language import spoken, word

Measure = Literal["metric", "us", "imperial"]
System = Literal["metric", "us", "imperial", "own"]
"""A system of measures; "own" takes another for each group of quantities, as chosen with `choose`."""
GROUPS: dict[str, str] = {
    "temperature": "temperature",
    "temperature_difference": "temperature",
    "rate_temperature": "temperature",
    "volume": "volume",
    "mass": "mass",
    "small_mass": "mass",
    "length": "length",
    "area": "length",
    "pressure": "pressure",
}
"""Kind of quantity to the group its measure is chosen by."""
_own: dict[str, Measure] = {}


def choose(own: Mapping[str, Measure]) -> None:
    """What "own" means from now on: a measure for each group; metric where none is said."""
    _own.clear()
    _own.update(own)


def measure(system: System, kind: str) -> Measure:
    """The measure of a kind of quantity in a system."""
    return _own.get(GROUPS.get(kind, ""), "metric") if system == "own" else system


@dataclass(frozen=True, slots=True)
class Unit:
    """One accepted unit: how it is shown, how it may be spelt, and what one of it is in base units.

    `pint` names the unit there, where the ratio is not one of the decimal system. `offset` is added before the factor
    (only absolute °F).
    """

    name: str
    spellings: tuple[str, ...] = ()
    factor: float = 1.0
    pint: str = ""
    offset: float = 0.0


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of quantity: base unit, accepted units, the unit and decimals shown in each system."""

    key: str
    english: str
    base: str
    units: tuple[Unit, ...]
    metric: tuple[str, int]
    us: tuple[str, int]
    imperial: tuple[str, int]
    pint: str = ""
    compound: tuple[str, ...] = ()
    fixed: bool = False
    plain: bool = False
    written: str = ""

    @property
    def label(self) -> str:
        """What it is called, in the language spoken."""
        return word(self.english, "kind")

    @property
    def example(self) -> str:
        """How one is written, with the decimal mark of the language."""
        return self.written.replace(".", ",") if spoken().comma else self.written

    def unit(self, name: str) -> Unit:
        """The unit of that name or spelling; KeyError if this kind has none."""
        for unit in self.units:
            if name == unit.name or name in unit.spellings:
                return unit
        raise KeyError(name)

    def display(self, system: System) -> tuple[str, int]:
        """(unit name, decimals) shown in a system of measures."""
        here = measure(system, self.key)
        return self.us if here == "us" else self.imperial if here == "imperial" else self.metric


_US_GALLON_L, _IMPERIAL_GALLON_L = 3.785411784, 4.54609
_MASS = (
    Unit("kg", (), 1.0),
    Unit("g", (), 1e-3),
    Unit("mg", (), 1e-6),
    Unit("t", (), 1e3),
    Unit("lb", ("lbs",), 0.45359237, "pound"),
    Unit("oz", (), 0.45359237 / 16, "ounce"),
)
_TIME = {
    "s": ("sec", "seconds"),
    "min": ("minute", "minutes"),
    "h": ("hr", "hour", "hours", "heure", "heures"),
    "d": ("day", "days", "j", "jour", "jours"),
    "wk": ("week", "weeks", "sem", "semaine", "semaines"),
    "month": ("months", "mois"),
}
_MINUTES = {"s": 1 / 60, "min": 1.0, "h": 60.0, "d": 1440.0, "wk": 10080.0, "month": 43830.0}
_VOLUME = (
    Unit("L", ("l", "litre", "litres", "liter", "liters"), 1.0),
    Unit("mL", ("ml", "cm³", "cc"), 1e-3),
    Unit("cL", ("cl",), 1e-2),
    Unit("dL", ("dl",), 1e-1),
    Unit("hL", ("hl",), 1e2),
    Unit("m³", ("m3",), 1e3),
    Unit("US gal", ("us gal", "gal US"), _US_GALLON_L, "gallon"),
    Unit("US qt", ("us qt", "qt US"), _US_GALLON_L / 4, "quart"),
    Unit("US pt", ("us pt", "pt US"), _US_GALLON_L / 8, "pint"),
    Unit("US fl oz", ("us fl oz", "fl oz US"), _US_GALLON_L / 128, "fluid_ounce"),
    Unit("US cup", ("us cup",), _US_GALLON_L / 16, "cup"),
    Unit("US tbsp", ("us tbsp",), _US_GALLON_L / 256, "tablespoon"),
    Unit("US tsp", ("us tsp",), _US_GALLON_L / 768, "teaspoon"),
    Unit("imp gal", ("imperial gal", "UK gal", "gal imp"), _IMPERIAL_GALLON_L, "imperial_gallon"),
    Unit("imp qt", ("imperial qt", "UK qt", "qt imp"), _IMPERIAL_GALLON_L / 4, "imperial_quart"),
    Unit("imp pt", ("imperial pt", "UK pt", "pt imp"), _IMPERIAL_GALLON_L / 8, "imperial_pint"),
    Unit("imp fl oz", ("imperial fl oz", "UK fl oz", "fl oz imp"), _IMPERIAL_GALLON_L / 160, "imperial_fluid_ounce"),
)


def _time(base: str) -> tuple[Unit, ...]:
    return tuple(Unit(name, _TIME[name], _MINUTES[name] / _MINUTES[base]) for name in _TIME)


def _same(name: str, decimals: int) -> dict[str, Any]:
    return {"metric": (name, decimals), "us": (name, decimals), "imperial": (name, decimals)}


def _plain(
    key: str, label: str, spellings: tuple[str, ...], decimals: int, example: str, *, fixed: bool = False
) -> Kind:
    return Kind(
        key, label, "", (Unit("", spellings, 1.0),), **_same("", decimals), fixed=fixed, plain=True, written=example
    )


def _single(key: str, label: str, units: tuple[Unit, ...], decimals: int, example: str) -> Kind:
    return Kind(key, label, units[0].name, units, **_same(units[0].name, decimals), written=example)


_ALL = (
    Kind(
        "temperature",
        "temperature",
        "°C",
        (
            Unit("°C", ("C", "degC", "º C", "ºC", "° C"), 1.0),
            Unit("°F", ("F", "degF", "ºF", "° F"), 5 / 9, offset=-32.0),
        ),
        ("°C", 1),
        ("°F", 1),
        ("°C", 1),
        written="31.5 °C",
    ),
    Kind(
        "temperature_difference",
        "temperature difference",
        "°C",
        (Unit("°C", ("K", "Δ°C", "C"), 1.0), Unit("°F", ("F", "Δ°F"), 5 / 9)),
        ("°C", 1),
        ("°F", 1),
        ("°C", 1),
        written="1 °C",
    ),
    Kind(
        "rate_temperature",
        "rate of warming",
        "°C/min",
        (
            Unit("°C/min", ("K/min",), 1.0),
            Unit("°C/h", ("K/h",), 1 / 60),
            Unit("°F/min", (), 5 / 9),
            Unit("°F/h", (), 5 / 540),
        ),
        ("°C/min", 2),
        ("°F/min", 2),
        ("°C/min", 2),
        written="0.2 °C/min",
    ),
    Kind(
        "duration",
        "length of time",
        "min",
        _time("min"),
        **_same("min", 1),
        compound=("wk", "d", "h", "min", "s"),
        written="1 h 30 min",
    ),
    Kind("hours", "length of time", "h", _time("h"), **_same("h", 1), compound=("d", "h", "min"), written="12 h"),
    Kind("days", "length of time", "d", _time("d"), **_same("d", 1), written="14 d"),
    Kind("months", "length of time", "month", _time("month"), **_same("month", 1), written="3 months"),
    Kind("volume", "volume", "L", _VOLUME, ("L", 3), ("US gal", 3), ("imp gal", 3), pint="liter", written="100 L"),
    Kind(
        "mass",
        "mass",
        "kg",
        _MASS,
        ("kg", 3),
        ("lb", 3),
        ("lb", 3),
        pint="kilogram",
        compound=("lb", "oz"),
        written="2.5 kg",
    ),
    Kind(
        "small_mass",
        "mass",
        "kg",
        _MASS,
        ("g", 3),
        ("g", 3),
        ("g", 3),
        pint="kilogram",
        compound=("lb", "oz"),
        written="25 g",
    ),
    Kind(
        "length",
        "length",
        "mm",
        (
            Unit("mm", (), 1.0),
            Unit("cm", (), 10.0),
            Unit("m", (), 1000.0),
            Unit("in", ("inch", "inches", "″", '"'), 25.4, "inch"),
            Unit("ft", ("feet", "foot"), 304.8, "foot"),
        ),
        ("mm", 1),
        ("in", 3),
        ("in", 3),
        pint="millimeter",
        written="10 mm",
    ),
    Kind(
        "pressure",
        "pressure",
        "kPa",
        (
            Unit("kPa", ("kpa",), 1.0),
            Unit("Pa", (), 1e-3),
            Unit("bar", (), 100.0),
            Unit("mbar", ("hPa",), 0.1),
            Unit("psi", (), 4.4482216152605 / 0.64516, "psi"),
            Unit("kg/cm²", ("kg/cm2", "kgf/cm²", "kgf/cm2"), 98.0665, "kilogram_force/centimeter**2"),
        ),
        ("kPa", 1),
        ("psi", 2),
        ("kPa", 1),
        pint="kilopascal",
        written="20 kPa",
    ),
    _single(
        "percent", "share", (Unit("%", ("pct", "% w/w", "g/100 g", "g/100g"), 1.0), Unit("g/kg", (), 0.1)), 3, "2.5 %"
    ),
    _single("strength", "strength", (Unit("IMCU/mL", ("IMCU/ml", "IMCU/g"), 1.0),), 0, "200 IMCU/mL"),
    _single("potency", "potency", (Unit("CFU/g", ("cfu/g", "UFC/g", "ufc/g"), 1.0),), 0, "1e11 CFU/g"),
    _single(
        "cells",
        "cells",
        (Unit("/mL", ("/ml", "CFU/mL", "cfu/ml", "cells/mL", "cells/ml", "UFC/mL", "ufc/ml"), 1.0),),
        0,
        "1e7 /mL",
    ),
    _single(
        "acidity",
        "titratable acidity",
        (
            Unit("%", ("% lactic", "% lactic acid"), 1.0),
            Unit("°D", (), 0.01),
            Unit("°SH", (), 0.0225),
            Unit("°Th", (), 0.009),
        ),
        3,
        "0.18 %",
    ),
    _single(
        "density",
        "density",
        (Unit("kg/L", ("kg/l", "g/mL", "g/ml"), 1.0), Unit("g/L", ("g/l", "kg/m³", "kg/m3"), 1e-3)),
        4,
        "1.030 kg/L",
    ),
    _single("concentration", "concentration", (Unit("g/L", ("g/l",), 1.0), Unit("g/mL", ("g/ml",), 1e3)), 2, "230 g/L"),
    Kind(
        "power",
        "power",
        "kW",
        (Unit("kW", ("kw",), 1.0), Unit("W", (), 1e-3), Unit("BTU/h", ("btu/h",), 1.055056 / 3600, "Btu/hour")),
        **_same("kW", 2),
        pint="kilowatt",
        written="6 kW",
    ),
    Kind(
        "area",
        "area",
        "m²",
        (Unit("m²", ("m2",), 1.0), Unit("cm²", ("cm2",), 1e-4), Unit("ft²", ("ft2", "sq ft"), 0.3048**2, "foot**2")),
        ("m²", 3),
        ("ft²", 2),
        ("ft²", 2),
        pint="meter**2",
        written="1.2 m²",
    ),
    _single("heat_transfer", "heat transfer", (Unit("W/m²K", ("W/m2K", "W/m²/K", "W/m2/K"), 1.0),), 0, "10 W/m²K"),
    _single("firmness", "firmness", (Unit("Pa", (), 1.0),), 0, "35 Pa"),
    _plain("ph", "pH", ("pH",), 2, "6.10", fixed=True),
    _plain("multiple", "multiple", ("x", "×", "times"), 2, "3"),
    _plain("ratio", "ratio", (), 3, "0.91"),
    _plain("count", "number", ("x", "×", "pieces", "pièces"), 0, "4"),
    _plain("units", "activity units", ("U", "units"), 3, "10"),
    Kind("clock", "time of day", "min", (Unit("min", (), 1.0),), **_same("min", 0), written="07:30"),
)
KINDS: dict[str, Kind] = {kind.key: kind for kind in _ALL}


def factor(kind_key: str, unit_name: str) -> float:
    """Base units in one unit of that name (without the offset of absolute °F)."""
    return KINDS[kind_key].unit(unit_name).factor
