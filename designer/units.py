"""Text to number at the door and back: "88 °F", "1/2 in", "2 US gal", "31,5 °C", "1 h 30 min".

A strict grammar of our own: one number, one unit. No evaluator ever reads user text. The kinds of quantity stand in
`unit_kinds`, the text for the eye in `unit_text`; both are reached through here.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from designer.language import say
from designer.unit_kinds import KINDS as KINDS
from designer.unit_kinds import Kind as Kind
from designer.unit_kinds import System as System
from designer.unit_kinds import Unit as Unit
from designer.unit_kinds import factor as factor
from designer.unit_kinds import measure as measure
from designer.unit_text import convert as convert
from designer.unit_text import show as show

Gallon = Literal["us", "imperial"]

MAX_TEXT = 40
DAY_MIN = 1440.0
"""A day [min]."""


def gallon_of(system: System) -> Gallon | None:
    """Which gallon a bare one is in a system; None where it must be said."""
    here = measure(system, "volume")
    return None if here == "metric" else here


class UnitError(ValueError):
    """A text that is no quantity of the kind asked for; `str()` is a sentence for the maker."""


@dataclass(frozen=True, slots=True)
class Amount:
    """A quantity as read: value in the kind's base unit, unit name as written, the text itself."""

    value: float
    unit: str
    text: str


# Spellings that mean two sizes: the gallon of the text must be known.
_TWO_SIZES = {
    "gal": "gal",
    "gallon": "gal",
    "gallons": "gal",
    "qt": "qt",
    "quart": "qt",
    "quarts": "qt",
    "pt": "pt",
    "pint": "pt",
    "pints": "pt",
    "fl oz": "fl oz",
    "floz": "fl oz",
}
_SIZE_ONLY_US = {"tsp": "US tsp", "tbsp": "US tbsp", "cup": "US cup", "cups": "US cup"}


_DIGITS = r"\d+(?:[.,]\d+)?(?:[eE][+-]?\d{1,2})?"
_NUMBER = re.compile(
    rf"(?P<mixed>\d+\s+\d+/\d+|\d+/\d+)|(?P<grouped>\d{{1,3}}(?:,\d{{3}})+\.\d+|\d{{1,3}}(?:\.\d{{3}})+,\d+)|(?P<plain>{_DIGITS})"
)
_CLOCK = re.compile(r"(\d{1,2}):(\d{2})\s*(am|pm)?", re.IGNORECASE)
_GLYPHS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅓": "1/3", "⅔": "2/3", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_LOOKS_LIKE_A_SUM = re.compile(r"[*^=(){}\[\];_\\|&<>!$`]|\d\s*[-+]\s*\d|/\s*/|import|lambda|eval")


def _quote(text: str) -> str:
    return f"“{text if len(text) <= MAX_TEXT else text[: MAX_TEXT - 1] + '…'}”"


def _number(text: str, whole: str, comma: bool = False) -> float:
    match = _NUMBER.fullmatch(text)
    if match is None:
        raise UnitError(say("{whole} is not a number with a unit.", whole=_quote(whole)))
    if match["mixed"]:
        *ones, share = match["mixed"].split()
        top, bottom = share.split("/")
        if int(bottom) == 0:
            raise UnitError(say("{whole} divides by nothing.", whole=_quote(whole)))
        return float((int(ones[0]) if ones else 0) + Fraction(int(top), int(bottom)))
    if match["grouped"]:
        marks = "," if match["grouped"].rfind(".") > match["grouped"].rfind(",") else "."
        return float(match["grouped"].replace(marks, "").replace(",", "."))
    if not comma and re.fullmatch(r"[1-9]\d{0,2},\d{3}", text):
        plain = text.replace(",", "")
        raise UnitError(
            say(
                "{whole} can be read two ways; write {plain} or {said}.",
                whole=_quote(whole),
                plain=plain,
                said=text.replace(",", "."),
            )
        )
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
                raise UnitError(
                    say("{whole} has two sizes; write “US {size}” or “imp {size}”.", whole=_quote(whole), size=size)
                )
            return kind.unit(f"{'US' if gallon == 'us' else 'imp'} {size}")
        if name.lower() in _SIZE_ONLY_US:
            if gallon == "us":
                return kind.unit(_SIZE_ONLY_US[name.lower()])
            raise UnitError(
                say(
                    "{whole} differs from country to country; write “{size_only_us}” or mL.",
                    whole=_quote(whole),
                    size_only_us=_SIZE_ONLY_US[name.lower()],
                )
            )
    if not name:
        raise UnitError(
            say("{whole} has no unit; write for example “{example}”.", whole=_quote(whole), example=kind.example)
        )
    for other in KINDS.values():
        if any(name in (unit.name, *unit.spellings) for unit in other.units):
            raise UnitError(
                say(
                    "{whole} says {found}, but {wanted} is asked for here; write for example “{example}”.",
                    whole=_quote(whole),
                    found=other.label,
                    wanted=kind.label,
                    example=kind.example,
                )
            )
    raise UnitError(
        say(
            "{whole} has the unknown unit “{name}”; write for example “{example}”.",
            whole=_quote(whole),
            name=name,
            example=kind.example,
        )
    )


def _to_base(value: float, kind: Kind, unit: Unit) -> float:
    return (value + unit.offset) * factor(kind.key, unit.name)


def parse(text: str, kind: str, *, gallon: Gallon | None = None, comma: bool = False) -> Amount:
    """Read one quantity. `gallon` says which gallon, quart, pint and fluid ounce a bare one is; where the decimal mark
    is a `comma`, "1,250" is no thousand.

    Raises UnitError (a sentence) for anything but one number and one unit of the kind, 40 characters at most.
    """
    spec = KINDS[kind]
    whole = text.strip()
    if not whole:
        raise UnitError(say("Nothing is written; write for example “{example}”.", example=spec.example))
    if len(whole) > MAX_TEXT:
        raise UnitError(
            say(
                "{whole} is too long for a quantity ({length} characters, at most {most}).",
                whole=_quote(whole),
                length=len(whole),
                most=MAX_TEXT,
            )
        )
    if kind == "clock":
        return _clock(whole)
    body = whole.replace("−", "-").replace("\u00a0", " ").replace("\u202f", " ")
    for glyph, share in _GLYPHS.items():
        body = body.replace(glyph, f" {share}").strip()
    if _LOOKS_LIKE_A_SUM.search(re.sub(r"[eE][+-]?\d", "", body)):
        raise UnitError(
            say(
                "{whole} looks like a sum; write one number and its unit, for example “{example}”.",
                whole=_quote(whole),
                example=spec.example,
            )
        )
    sign = -1.0 if body.startswith("-") else 1.0
    body = body.lstrip("+-").strip() if body[0] in "+-" else body
    head = _NUMBER.match(body)
    if head is None:
        raise UnitError(
            say(
                "{whole} is not a {label}; write for example “{example}”.",
                whole=_quote(whole),
                label=spec.label,
                example=spec.example,
            )
        )
    number, rest = head.group(), body[head.end() :].strip()
    if spec.compound and re.search(r"\d", rest) and not re.search(r"[²³]|cm2|m3", rest):
        value, names = _compound(body, spec, whole, comma)
        return Amount(sign * value, names, whole)
    unit = _unit(rest, spec, whole, gallon)
    value = _to_base(sign * _number(number, whole, comma), spec, unit)
    return Amount(value, unit.name, whole)


def readings(text: str, kind: str) -> tuple[tuple[str, float], ...]:
    """Every way a text with two meanings can be read, as (text that is clear, value): "2 gal", "1,234 kg".

    None where the text is clear as it stands, or can't be read at all.
    """
    whole = text.strip()
    try:
        parse(whole, kind)
    except UnitError:
        pass
    else:
        return ()
    match = re.fullmatch(rf"([^a-zA-Z%°µ]*)\s*({'|'.join(_TWO_SIZES)})", whole, re.IGNORECASE)
    if match is not None and kind == "volume":
        size = _TWO_SIZES[match[2].lower()]
        clear = [f"{match[1].strip()} {which} {size}" for which in ("US", "imp")]
    else:
        number = re.match(r"([1-9]\d{0,2}),(\d{3})(?![\d.,])", whole)
        if number is None:
            return ()
        rest = whole[number.end() :]
        clear = [f"{number[1]}{number[2]}{rest}", f"{number[1]}.{number[2]}{rest}"]
    found = []
    for one in clear:
        try:
            found.append((one, parse(one, kind).value))
        except UnitError:
            return ()
    return tuple(found)


def _compound(body: str, kind: Kind, whole: str, comma: bool) -> tuple[float, str]:
    total, place = 0.0, -1
    rest, names = body, []
    while rest:
        head = re.match(rf"({_DIGITS})\s*([^\d\s]+)\s*", rest)
        if head is None:
            raise UnitError(
                say(
                    "{whole} is not a {label}; write for example “{example}”.",
                    whole=_quote(whole),
                    label=kind.label,
                    example=kind.example,
                )
            )
        unit = _unit(head[2], kind, whole, None)
        if unit.name not in kind.compound or kind.compound.index(unit.name) <= place:
            raise UnitError(
                say(
                    "{whole} mixes its units; write for example “{example}”.", whole=_quote(whole), example=kind.example
                )
            )
        place = kind.compound.index(unit.name)
        names.append(unit.name)
        total += _to_base(_number(head[1], whole, comma), kind, unit)
        rest = rest[head.end() :]
    return total, " ".join(names)


def _clock(whole: str) -> Amount:
    match = _CLOCK.fullmatch(whole)
    if match is None:
        raise UnitError(say("{whole} is not a time of day; write for example “07:30”.", whole=_quote(whole)))
    hour, minute, half = int(match[1]), int(match[2]), (match[3] or "").lower()
    if half:
        if not 1 <= hour <= 12:
            raise UnitError(say("{whole} is not a time of day; write for example “07:30”.", whole=_quote(whole)))
        hour = hour % 12 + (12 if half == "pm" else 0)
    if hour > 23 or minute > 59:
        raise UnitError(say("{whole} is not a time of day; write for example “07:30”.", whole=_quote(whole)))
    return Amount(60.0 * hour + minute, "min", whole)


GRAIN = 9
"""Decimals of a base unit that a document keeps: every unit can then say every kept number exactly."""


def exact(value: float, kind: str, unit: str | None = None) -> str:
    """Text in that unit (default: the natural one) that reads back as the very same number to `GRAIN` decimals."""
    spec = KINDS[kind]
    value = round(value, GRAIN)
    if kind == "clock":
        return show(value, kind)
    if unit is None:
        unit = _natural_unit(value, kind)
    if unit is not None and " " in unit and spec.compound:
        together = _exact_compound(value, spec, unit.split())
        if together:
            return together
        unit = unit.split()[-1]
    name = spec.unit(unit).name if unit is not None else spec.base
    for candidate in (name, spec.base):
        number = convert(value, kind, candidate)
        for digits in range(1, 18):
            text = _plain_digits(number, digits)
            if round(_to_base(float(text), spec, spec.unit(candidate)), GRAIN) == value:
                if spec.compound and len(text.partition(".")[2]) > 2 and candidate in spec.compound[:-1]:
                    together = _exact_compound(value, spec, list(spec.compound[spec.compound.index(candidate) :]))
                    text, candidate = (together, "") if together else (text, candidate)
                if spec.fixed:
                    whole, _, rest = text.partition(".")
                    text = f"{whole}.{rest:0<{spec.metric[1]}}"
                return f"{text} {candidate}".strip()
    return f"{value!r} {spec.base}".strip()


def _natural_unit(value: float, kind: str) -> str | None:
    """The unit a maker would write a metric value in."""
    if kind == "duration":
        return "d" if value >= 4320 and value % 1440 == 0 else "h min" if value >= 60 else "min"
    if kind in ("mass", "small_mass") and 0 < abs(value) < 1:
        return "g"
    if kind == "volume" and 0 < abs(value) < 1:
        return "mL"
    return None


def _exact_compound(value: float, kind: Kind, names: list[str]) -> str:
    """ "1 h 30 min" for units that stood together before; "" where that can't say the value exactly."""
    rest, parts = abs(value), []
    for name in names[:-1]:
        whole = int(rest / factor(kind.key, name) + 1e-9)
        rest = max(0.0, rest - whole * factor(kind.key, name))
        parts += [f"{whole} {name}"] if whole else []
    last = f"{_plain_digits(rest / factor(kind.key, names[-1]), 12)} {names[-1]}"
    text = ("-" if value < 0 else "") + " ".join([*parts, last] if float(last.split()[0]) or not parts else parts)
    return text if len(text) <= MAX_TEXT and round(parse(text, kind.key).value, GRAIN) == value else ""


def _plain_digits(number: float, digits: int) -> str:
    text = f"{number:.{digits}g}"
    if "e" not in text:
        return text
    mantissa, exponent = text.split("e")
    if 0 < int(exponent) < 5 or -5 < int(exponent) < 0:
        return f"{float(text):.{max(0, digits - 1 - int(exponent))}f}"
    return f"{mantissa}e{int(exponent)}"
