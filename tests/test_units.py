"""Text to number and back: what is read, what is asked, what is refused, and that nothing is lost on the way."""

from __future__ import annotations

import subprocess
import sys
from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.unit_kinds import factor
from designer.units import GRAIN, KINDS, MAX_TEXT, UnitError, convert, exact, parse, readings, show


@pytest.mark.parametrize(
    ("text", "kind", "value"),
    [
        ("31.5 °C", "temperature", 31.5),
        ("31,5 °C", "temperature", 31.5),
        ("-18 °C", "temperature", -18.0),
        ("−18 °C", "temperature", -18.0),
        ("1/2 in", "length", 12.7),
        ("1 1/2 in", "length", 38.1),
        ("1½ in", "length", 38.1),
        ('3/8"', "length", 9.525),
        ("1 h 30 min", "duration", 90.0),
        ("1.5 h", "duration", 90.0),
        ("90 s", "duration", 1.5),
        ("2 d", "duration", 2880.0),
        ("5 lb 4 oz", "mass", 5.25 * 0.45359237),
        ("0,250 kg", "mass", 0.25),
        ("0,25 kg", "mass", 0.25),
        ("1,234.5 g", "mass", 1.2345),
        ("1.234,5 g", "mass", 1.2345),
        ("1e11 CFU/g", "potency", 1e11),
        ("1e7 /mL", "cells", 1e7),
        ("6.10", "ph", 6.1),
        ("6,10 pH", "ph", 6.1),
        ("7 °SH", "acidity", 0.1575),
        ("17.5 °Th", "acidity", 0.1575),
        ("16 °D", "acidity", 0.16),
        ("07:30", "clock", 450.0),
        ("7:30 pm", "clock", 1170.0),
        ("12:05 am", "clock", 5.0),
        ("3 ×", "multiple", 3.0),
        ("20 % w/w", "percent", 20.0),
        ("200 IMCU/mL", "strength", 200.0),
    ],
)
def test_reads(text: str, kind: str, value: float) -> None:
    assert parse(text, kind).value == pytest.approx(value, rel=1e-12)


@pytest.mark.parametrize(
    ("text", "kind", "shown"),
    [  # conversions as makers print them
        ("86 °F", "temperature", "30 °C"),
        ("88 °F", "temperature", "31.1 °C"),
        ("102 °F", "temperature", "38.9 °C"),
        ("1 °F", "temperature_difference", "0.6 °C"),
        ("1 psi", "pressure", "6.9 kPa"),
        ("1 kg/cm²", "pressure", "98.1 kPa"),
        ("1 US gal", "volume", "3.785 L"),
        ("1 imp gal", "volume", "4.546 L"),
    ],
)
def test_converts_as_published(text: str, kind: str, shown: str) -> None:
    assert show(parse(text, kind).value, kind) == shown


def test_a_gallon_is_asked_for() -> None:
    """Story: 2 gal is 7.57 L in the US and 9.09 L by Imperial measure; without a word it is asked, never guessed."""
    assert parse("2 gal", "volume", gallon="us").value == pytest.approx(7.57, abs=0.005)
    assert parse("2 gal", "volume", gallon="imperial").value == pytest.approx(9.09, abs=0.005)
    with pytest.raises(UnitError, match="“US gal” or “imp gal”"):
        parse("2 gal", "volume")
    with pytest.raises(UnitError, match="country to country"):
        parse("1 tsp", "volume")


def test_absolute_and_difference_differ() -> None:
    assert parse("88 °F", "temperature").value == pytest.approx(31.1, abs=0.05)
    assert parse("1 °F", "temperature_difference").value == pytest.approx(0.556, abs=0.001)


@pytest.mark.parametrize(
    ("text", "kind", "says"),
    [
        ("1,234 g", "mass", "two ways; write 1234 or 1.234"),
        ("2*3 kg", "mass", "looks like a sum"),
        ("3+4 kg", "mass", "looks like a sum"),
        ("10-20 min", "duration", "looks like a sum"),
        ("2**999 kg", "mass", "looks like a sum"),
        ("__import__('os')", "mass", "looks like a sum"),
        ("(1) kg", "mass", "looks like a sum"),
        ("39", "temperature", "no unit; write for example “31.5 °C”"),
        ("39 kg", "temperature", "says mass, but temperature is asked for"),
        ("12 parsec", "length", "unknown unit “parsec”"),
        ("", "mass", "Nothing is written"),
        ("warm", "temperature", "is not a temperature"),
        ("nan kg", "mass", "is not a mass"),
        ("inf °C", "temperature", "is not a temperature"),
        ("1e999 kg", "mass", "unknown unit"),
        ("25:00", "clock", "not a time of day"),
        ("13:00 pm", "clock", "not a time of day"),
        ("half past", "clock", "not a time of day"),
        ("1/0 in", "length", "divides by nothing"),
        ("5 min 1 h", "duration", "mixes its units"),
        ("1 h 30", "duration", "not a length of time"),
        ("1 kg 2 kg", "mass", "mixes its units"),
    ],
)
def test_refuses_with_a_sentence(text: str, kind: str, says: str) -> None:
    with pytest.raises(UnitError) as caught:
        parse(text, kind)
    assert says in str(caught.value)
    assert str(caught.value).endswith(".")


def test_long_text_is_refused_without_being_repeated() -> None:
    with pytest.raises(UnitError, match="too long"):
        parse("1" * 5000 + " kg", "mass")
    with pytest.raises(UnitError) as caught:
        parse("9" * 5000 + " kg", "mass")
    assert len(str(caught.value)) < 150


@given(st.text(max_size=60), st.sampled_from(sorted(KINDS)))
def test_any_text_is_read_or_refused(text: str, kind: str) -> None:
    with suppress(UnitError):
        assert abs(parse(text, kind).value) < float("inf")


@pytest.mark.parametrize(
    ("value", "kind", "options", "text"),
    [
        (90.0, "duration", {}, "1 h 30 min"),
        (45.0, "duration", {}, "45 min"),
        (2.5, "duration", {}, "2.5 min"),
        (59.96, "duration", {}, "1 h"),
        (1440.0, "duration", {}, "24 h"),
        (60 * 24 * 30.0, "duration", {}, "30 d"),
        (6.1, "ph", {}, "6.10"),
        (31.111111, "temperature", {"system": "us"}, "88 °F"),
        (31.5, "temperature", {"comma": True}, "31,5 °C"),
        (31.0, "temperature", {"decimals": 1}, "31.0 °C"),
        (-0.01, "temperature", {}, "0 °C"),
        (0.00032, "small_mass", {}, "0.32 g"),
        (450.0, "clock", {}, "07:30"),
        (1e11, "potency", {}, "1e11 CFU/g"),
        (12.7, "length", {"system": "us"}, "0.5 in"),
        (100.0, "duration", {"unit": "h"}, "1.7 h"),
    ],
)
def test_shows(value: float, kind: str, options: dict[str, object], text: str) -> None:
    assert show(value, kind, **options) == text  # type: ignore[arg-type]


UNITS = [(kind.key, unit.name) for kind in KINDS.values() for unit in kind.units if kind.key != "clock"]


@given(st.sampled_from(UNITS), st.floats(-1e4, 1e4))
def test_exact_text_reads_back_as_the_same_number(unit: tuple[str, str], value: float) -> None:
    """Whatever unit stood in the file, a value kept to the grain is written so that it reads back as itself."""
    kind, name = unit
    kept = round(value, GRAIN)
    text = exact(kept, kind, name)
    assert len(text) <= MAX_TEXT
    assert round(parse(text, kind).value, GRAIN) == kept


@given(st.integers(1, 100_000).map(lambda n: n / 4))
def test_exact_durations_read_back(minutes: float) -> None:
    for unit in (None, "min", "h", "h min", "d", "d h min"):
        assert round(parse(exact(minutes, "duration", unit), "duration").value, GRAIN) == minutes


def test_exact_writes_as_a_maker_would() -> None:
    assert exact(31.111111111, "temperature", "°F") == "88 °F"
    assert exact(135.0, "duration", "h min") == "2 h 15 min"
    assert exact(127.0, "duration", "h") == "2 h 7 min"
    assert exact(0.0225, "volume", "mL") == "22.5 mL"
    assert exact(0.015, "small_mass") == "15 g"
    assert exact(5.0, "ph", "") == "5.00"
    assert exact(450.0, "clock") == "07:30"


def test_factors_written_out_are_those_of_pint() -> None:
    """Ratios that stand in the table agree with pint's, so that one may stand in for the other."""
    import pint

    registry = pint.UnitRegistry()
    for kind, ours, theirs in (
        ("mass", "g", "gram"), ("mass", "t", "tonne"), ("volume", "mL", "milliliter"), ("volume", "hL", "hectoliter"),
        ("volume", "m³", "meter**3"), ("length", "cm", "centimeter"), ("pressure", "bar", "bar"),
        ("pressure", "mbar", "millibar"), ("power", "W", "watt"), ("area", "cm²", "centimeter**2"),
    ):  # fmt: skip
        base = KINDS[kind].pint
        assert factor(kind, ours) == pytest.approx(registry.Quantity(1, theirs).to(base).magnitude, rel=1e-12)
    for one in KINDS.values():
        for unit in (unit for unit in one.units if unit.pint):
            theirs = registry.Quantity(1.0, registry.parse_units(unit.pint)).to(one.pint).magnitude
            assert unit.factor == pytest.approx(theirs, rel=1e-12)
    assert factor("temperature", "°F") == pytest.approx(
        registry.Quantity(1, "delta_degF").to("delta_degC").magnitude, rel=1e-12
    )


def test_less_than_a_litre_is_told_as_it_is_measured_out() -> None:
    assert show(0.02, "volume") == "20 mL"
    assert show(0.0225, "volume", system="us") == "22.5 mL"
    assert show(1.5, "volume") == "1.5 L"
    assert show(0.02, "volume", unit="L") == "0.02 L"


def test_convert() -> None:
    assert convert(31.111111, "temperature", "°F") == pytest.approx(88.0)
    assert convert(1.0, "mass", "lb") == pytest.approx(2.2046, abs=1e-4)
    with pytest.raises(KeyError):
        convert(1.0, "mass", "°C")


def test_reading_a_quantity_never_loads_pint() -> None:
    """Start-up stays short: pint is for the test above."""
    code = "import sys; from designer.units import parse; parse('100 psi', 'pressure'); sys.exit('pint' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


def test_every_kind_reads_its_own_example_and_display_units() -> None:
    for kind in KINDS.values():
        assert parse(kind.example, kind.key)
        for system in ("metric", "us", "imperial"):
            name, _ = kind.display(system)  # type: ignore[arg-type]
            assert kind.unit(name).name == name


@pytest.mark.parametrize(
    ("text", "kind", "clear"),
    [
        ("2 gal", "volume", ("2 US gal", "2 imp gal")),
        ("1 1/2 quarts", "volume", ("1 1/2 US qt", "1 1/2 imp qt")),
        ("1,234 kg", "mass", ("1234 kg", "1.234 kg")),
        ("2 L", "volume", ()),
        ("two gal", "volume", ()),
        ("1,234 gal", "volume", ()),
        ("3 cubits", "length", ()),
    ],
)
def test_a_text_with_two_meanings_has_two_readings(text: str, kind: str, clear: tuple[str, ...]) -> None:
    found = readings(text, kind)
    assert tuple(one for one, _ in found) == clear
    assert all(parse(one, kind).value == value for one, value in found)
