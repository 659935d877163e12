"""Reads the style files beside it into the data of `style`, and knows which styles there are.

One TOML a style. Figures stand in groups that share a source and "how we have it"; a range is text a maker can read:
"<= 39", ">= 50", "> 52, <= 60", "8 to 18", "9.5". Unknown keys are refused. Nothing is parsed until it is asked for.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from difflib import get_close_matches
from functools import cache
from pathlib import Path
from typing import Any

from designer.language import either, say
from styles.settings import COMPOSITION, CURVES, MOMENTS, SETTINGS
from styles.span import parse_range as parse_range
from styles.style import Gate as Gate
from styles.style import Limit as Limit
from styles.style import Room as Room
from styles.style import Rules as Rules
from styles.style import Sensory as Sensory
from styles.style import Style as Style
from styles.style import StyleError as StyleError
from styles.style import Typical as Typical
from styles.style import Window as Window

FORMAT = 1
FOLDER = Path(__file__).parent
SOURCES = "sources.toml"

HAVES = frozenset(
    (
        "published, read",
        "from memory (high)",
        "from memory (medium)",
        "from memory (low)",
        "common practice, no source",
        "derived",
        "the maker's own",
    )
)
KINDS = frozenset(("legal limit", "standard limit", "protected name", "class", "quality window", "own limit"))
MILKS = frozenset(("cow", "goat", "sheep", "buffalo"))
HEATS = frozenset(("raw", "thermised", "pasteurised", "high_heat"))
AGE_IF = frozenset(("always", "raw", "usual"))


def keys() -> tuple[str, ...]:
    """Keys of the shipped styles, in order of the alphabet; no file is opened."""
    return tuple(sorted(path.stem for path in FOLDER.glob("*.toml") if path.name != SOURCES))


HOUSE = ".style.toml"
_house: dict[str, Path] = {}


def adopt(folder: Path) -> tuple[str, ...]:
    """Let `style` find the house styles of a folder (files that end in .style.toml), and no other's; their keys.

    A shipped style is never replaced by one of the same key.
    """
    _house.clear()
    shipped = set(keys())
    for path in sorted(folder.glob(f"*{HOUSE}")):
        key = path.name.removesuffix(HOUSE)
        if key not in shipped:
            _house[key] = path
    return tuple(_house)


def house_keys() -> tuple[str, ...]:
    """Keys of the house styles adopted, in order of the alphabet."""
    return tuple(_house)


def style(key: str) -> Style:
    """The style of that key, shipped or adopted. StyleError with the nearest names if there is none."""
    if key in _house:
        return read(_house[key])  # read anew: the maker may be changing it
    if key not in keys():
        known = (*keys(), *_house)
        near = get_close_matches(key, known, n=3)
        hint = (
            say(" Did you mean {near}?", near=either(near))
            if near
            else say(" There are: {known}.", known=", ".join(known))
        )
        raise StyleError(say("There is no style “{key}”.{hint}", key=key, hint=hint))
    return _shipped(key)


@cache
def _shipped(key: str) -> Style:
    return read(FOLDER / f"{key}.toml")


@cache
def styles() -> tuple[Style, ...]:
    """Every shipped style, by name."""
    return tuple(sorted((style(key) for key in keys()), key=lambda one: one.name))


def read(path: Path) -> Style:
    """A style from a file (a shipped one or a house style beside the recipes); StyleError names file and place."""
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        raise StyleError(say("The style file {name} can't be read: {error}.", name=path.name, error=error)) from error
    return reads(text, key=path.name.removesuffix(HOUSE).removesuffix(".toml"), file=path.name)


def reads(text: str, *, key: str, file: str = "the style") -> Style:
    """A style from TOML text; strict: what is not understood is refused."""
    try:
        document = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise StyleError(say("{file} is not a readable style: {error}.", file=file, error=error)) from error
    own = document.pop("sources", {})
    if not isinstance(own, dict) or not all(isinstance(text, str) for text in own.values()):
        raise StyleError(say("{file}, sources: each is a key and the work in full, as text.", file=file))
    return _Reader(file, {**sources(), **own}).style(key, document)


@cache
def sources() -> Mapping[str, str]:
    """Source key -> the work it names, in full."""
    with (FOLDER / SOURCES).open("rb") as file:
        return tomllib.load(file)


@dataclass(frozen=True, slots=True)
class _Reader:
    """Turns one parsed TOML document into a Style, naming the file and the place in every refusal."""

    file: str
    known_sources: Mapping[str, str]

    def style(self, key: str, document: dict[str, Any]) -> Style:
        self._known(document, say("the file"), _STYLE_KEYS)
        if document.get("format") != FORMAT:
            raise StyleError(
                say(
                    "{file} has format {format!r}; this program reads format {format2}.",
                    file=self.file,
                    format=document.get("format"),
                    format2=FORMAT,
                )
            )
        gates = tuple(self._gates(document.get("gates", [])))
        return Style(
            key=key,
            name=self._text(document, "name", say("the file")),
            family=self._text(document, "family", say("the file")),
            milk=tuple(self._choice(document, "milk", say("the file"), MILKS)),
            rules=tuple(self._rules(document.get("rules", []))),
            typical=tuple(self._typical(document.get("typical", []))),
            windows=(*self._windows(document.get("windows", [])), *windows_of_gates(gates)),
            gates=gates,
            room=tuple(self._rooms(document.get("room", []))),
            sensory=self._sensory(document["sensory"]) if "sensory" in document else None,
            notes=str(document.get("notes", "")),
        )

    def _rules(self, groups: Iterable[dict[str, Any]]) -> Iterator[Rules]:
        for group in groups:
            place = say("rules “{set}”", set=group.get("set", "?"))
            self._known(group, place, _RULE_KEYS | COMPOSITION)
            source, have = self._source(group, place)
            kind, rule = self._text(group, "kind", place), self._text(group, "rule", place)
            if kind not in KINDS:
                raise self._refuse(
                    place, say("kind “{kind}” is none of: {kinds}", kind=kind, kinds=", ".join(sorted(KINDS)))
                )
            age_if = group.get("age_if", "always")
            if age_if not in AGE_IF:
                raise self._refuse(
                    place,
                    say("age_if “{age_if}” is none of: {age_if2}", age_if=age_if, age_if2=", ".join(sorted(AGE_IF))),
                )
            note = str(group.get("note", ""))
            limits = [
                Limit(key, *self._range(group[key], f"{place}, {key}"), kind, rule, source, have, note)
                for key in group
                if key in COMPOSITION
            ]
            if "dry_matter_by_fdm" in group:
                bands = tuple((float(start), float(least)) for start, least in group["dry_matter_by_fdm"])
                if list(bands) != sorted(bands):
                    raise self._refuse(place, say("the FDM bands must rise"))
                limits.append(Limit("dry_matter_pct", None, None, False, False, kind, rule, source, have, note, bands))
            yield Rules(
                key=self._text(group, "set", place),
                name=self._text(group, "name", place),
                rule=rule,
                kind=kind,
                source=source,
                have=have,
                limits=tuple(limits),
                milk=frozenset(self._choice(group, "milk", place, MILKS)),
                heat=frozenset(self._choice(group, "heat", place, HEATS)),
                min_age_days=float(group["min_age_days"]) if "min_age_days" in group else None,
                age_if=age_if,
                judged=bool(group.get("judged", kind != "protected name")),
                note=note,
            )

    def _typical(self, groups: Iterable[dict[str, Any]]) -> Iterator[Typical]:
        for group in groups:
            place = say("typical “{name}”", name=group.get("name", "?"))
            self._known(group, place, _GROUP_KEYS | {"name"} | COMPOSITION)
            source, have = self._source(group, place)
            values = completed({key: float(group[key]) for key in group if key in COMPOSITION})
            yield Typical(self._text(group, "name", place), values, source, have, str(group.get("note", "")))

    def _windows(self, groups: Iterable[dict[str, Any]]) -> Iterator[Window]:
        for group in groups:
            place = say("windows after {source}", source=group.get("source", "?"))
            self._known(group, place, _GROUP_KEYS | SETTINGS.keys() | COMPOSITION)
            source, have = self._source(group, place)
            for key in group:
                if key not in _GROUP_KEYS:
                    low, high, _, _ = self._range(group[key], f"{place}, {key}")
                    yield Window(key, low, high, source, have, str(group.get("note", "")))

    def _gates(self, groups: Iterable[dict[str, Any]]) -> Iterator[Gate]:
        for group in groups:
            place = say("gates after {source}", source=group.get("source", "?"))
            self._known(group, place, _GROUP_KEYS | CURVES)
            source, have = self._source(group, place)
            for curve in group:
                if curve in _GROUP_KEYS:
                    continue
                self._known(group[curve], f"{place}, {curve}", MOMENTS.keys())
                for at, text in group[curve].items():
                    low, high, _, _ = self._range(
                        text, say("{place}, {curve} at {at}", place=place, curve=curve, at=at)
                    )
                    yield Gate(curve, at, low, high, source, have, str(group.get("note", "")))

    def _rooms(self, groups: Iterable[dict[str, Any]]) -> Iterator[Room]:
        for group in groups:
            place = say("room “{name}”", name=group.get("name", "?"))
            self._known(group, place, _GROUP_KEYS | {"name", "temp_c", "rh_pct", "days"})
            source, have = self._source(group, place)
            temp_c, rh_pct, days = (
                self._range(group[key], f"{place}, {key}")[:2] if key in group else None
                for key in ("temp_c", "rh_pct", "days")
            )
            name = self._text(group, "name", place)
            yield Room(name, temp_c, rh_pct, days, source, have, str(group.get("note", "")))

    def _sensory(self, group: dict[str, Any]) -> Sensory:
        self._known(group, "sensory", {"appearance", "body", "flavour", "source", "have"})
        source, have = self._source(group, "sensory")
        words = [str(group.get(key, "")) for key in ("appearance", "body", "flavour")]
        return Sensory(words[0], words[1], words[2], source, have)

    def _source(self, group: Mapping[str, Any], place: str) -> tuple[str, str]:
        key, have = self._text(group, "source", place), self._text(group, "have", place)
        if have not in HAVES:
            raise self._refuse(
                place, say("have “{have}” is none of: {haves}", have=have, haves="; ".join(sorted(HAVES)))
            )
        if key not in self.known_sources:
            hint = _hint(key, self.known_sources)
            raise self._refuse(
                place, say("the source “{key}” does not stand in {sources}{hint}", key=key, sources=SOURCES, hint=hint)
            )
        return self.known_sources[key], have

    def _range(self, text: Any, place: str) -> tuple[float | None, float | None, bool, bool]:
        if not isinstance(text, str):
            raise self._refuse(place, say("{said!r} should be text, as in “<= 39” or “8 to 18”", said=text))
        try:
            return parse_range(text)
        except ValueError as error:
            raise self._refuse(place, str(error)) from error

    def _text(self, group: Mapping[str, Any], key: str, place: str) -> str:
        value = group.get(key)
        if not isinstance(value, str) or not value:
            raise self._refuse(place, say("“{key}” is missing", key=key))
        return value

    def _choice(self, group: Mapping[str, Any], key: str, place: str, allowed: frozenset[str]) -> list[str]:
        chosen = group.get(key, [])
        for one in chosen:
            if one not in allowed:
                raise self._refuse(
                    place,
                    say("{key} “{one}” is none of: {allowed}", key=key, one=one, allowed=", ".join(sorted(allowed))),
                )
        return list(chosen)

    def _known(self, group: Mapping[str, Any], place: str, allowed: Iterable[str]) -> None:
        for key in group:
            if key not in allowed:
                raise self._refuse(place, say("“{key}” is not known there{hint}", key=key, hint=_hint(key, allowed)))

    def _refuse(self, place: str, why: str) -> StyleError:
        return StyleError(f"{self.file}, {place}: {why}.")


_GROUP_KEYS = frozenset(("source", "have", "note"))
_STYLE_KEYS = frozenset(
    ("format", "name", "family", "milk", "notes", "rules", "typical", "windows", "gates", "room", "sensory")
)
_RULE_KEYS = _GROUP_KEYS | frozenset(
    ("set", "name", "rule", "kind", "milk", "heat", "min_age_days", "age_if", "judged", "dry_matter_by_fdm")
)


def windows_of_gates(gates: tuple[Gate, ...]) -> Iterator[Window]:
    """A pH gate is also a window of the setting it stands for ("pH at draining")."""
    for gate in gates:
        if gate.curve == "ph" and MOMENTS[gate.at].setting:
            yield Window(MOMENTS[gate.at].setting, gate.low, gate.high, gate.source, gate.have, gate.note)


WORKED_OUT = ("fdm_pct", "mnfs_pct", "salt_in_moisture_pct")


def completed(values: dict[str, float]) -> dict[str, float]:
    """FDM, MNFS and salt in moisture worked out from the figures printed, where the source prints them not."""
    water, fat, salt = values.get("moisture_pct"), values.get("fat_pct"), values.get("salt_pct")
    if water is not None and fat is not None:
        values.setdefault("fdm_pct", 100 * fat / (100 - water))
        values.setdefault("mnfs_pct", 100 * water / (100 - fat))
    if water is not None and salt is not None:
        values.setdefault("salt_in_moisture_pct", 100 * salt / water)
    return values


def _hint(key: str, allowed: Iterable[str]) -> str:
    near = get_close_matches(key, list(allowed), n=1)
    return say("; did you mean “{near}”?", near=near[0]) if near else ""
