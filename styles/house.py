"""House styles: one's own, made from another style, from figures of a make, or from tasted batches, and changed.

A house style is a TOML file beside the recipes, `<key>.style.toml`, in the form of the shipped ones. Its figures say
that they are the maker's own and where they come from; what was taken over from a shipped style keeps its source.
"""

from __future__ import annotations

import json
import os
import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from pathlib import Path

from designer.language import say
from styles.reader import (
    FORMAT,
    HOUSE,
    WORKED_OUT,
    Gate,
    Limit,
    Room,
    Rules,
    Style,
    StyleError,
    Typical,
    Window,
    completed,
    keys,
    reads,
    sources,
    windows_of_gates,
)
from styles.settings import COMPOSITION, CURVES, MOMENTS, SETTINGS

OWN = "the maker's own"
OWN_RULES = "own"
RANGE_NEAR: Mapping[str, float] = {
    "moisture_pct": 1.0,
    "dry_matter_pct": 1.0,
    "fat_pct": 1.0,
    "fdm_pct": 1.5,
    "mnfs_pct": 1.0,
    "protein_pct": 1.0,
    "salt_pct": 0.2,
    "salt_in_moisture_pct": 0.4,
    "salt_in_dry_matter_pct": 0.3,
    "calcium_mg_per_g_protein": 1.0,
    "yield_kg_per_100kg": 0.4,
}
"""Half the width of a window around one figure; of a setting it is what still counts as near."""
GATE_NEAR: Mapping[str, float] = {"ph": 0.05, "ph_whey": 0.05, "temperature_c": 0.5, "curd_moisture_pct": 1.0}
"""The same of a gate on a curve."""


@dataclass(frozen=True, slots=True)
class Figures:
    """What one make or one batch was: composition and settings by key, and curves at moments, (curve, at) -> value."""

    composition: Mapping[str, float] = field(default_factory=dict)
    settings: Mapping[str, float] = field(default_factory=dict)
    curves: Mapping[tuple[str, str], float] = field(default_factory=dict)


def key_of(name: str) -> str:
    """The key of a name, as its file is called; StyleError where none is left, or a shipped style has it."""
    key = re.sub(r"[^a-z0-9]+", "-", name.lower()).strip("-")
    if not key:
        raise StyleError(say("A house style needs a name with letters in it."))
    if key in keys():
        raise StyleError(
            say("“{name}” is the name of a style that comes with the program; give yours another.", name=name)
        )
    return key


def path_of(folder: Path, style: Style) -> Path:
    """Where a house style is kept."""
    return folder / f"{style.key}{HOUSE}"


def from_style(style: Style, name: str) -> Style:
    """One's own from another style, all figures with their sources; protected names are left behind."""
    rules = tuple(one for one in style.rules if one.kind != "protected name")
    said = say("Made from {name}.", name=style.title)
    return replace(style, key=key_of(name), name=name, rules=rules, notes=f"{said} {style.notes}".strip())


def from_make(
    name: str,
    figures: Figures,
    *,
    of: str,
    like: Style | None = None,
    milk: Sequence[str] = (),
    limits: bool = False,
) -> Style:
    """One's own around a single make: its figures in the middle of windows as wide as what still counts as near.

    `of` says which make ("forecast of Lantern Colby, 3 May 2024"); `like` lends family, general class, rooms and words,
    and with `limits` also what law and standards ask of it.
    """
    return _around(name, figures, of, like, milk, limits=limits)


def _around(
    name: str, figures: Figures, of: str, like: Style | None, milk: Sequence[str], *, limits: bool = False
) -> Style:
    composition = {key: rounded(value) for key, value in figures.composition.items() if key in COMPOSITION}
    windows = [
        Window(key, *around(value, RANGE_NEAR[key]), of, OWN)
        for key, value in figures.composition.items()
        if key in COMPOSITION and key in RANGE_NEAR
    ]
    gates = tuple(
        Gate(curve, at, *around(value, GATE_NEAR[curve]), of, OWN)
        for (curve, at), value in figures.curves.items()
        if curve in CURVES and at in MOMENTS
    )
    gated = {MOMENTS[gate.at].setting for gate in gates if gate.curve == "ph"}
    windows += [
        Window(key, *around(value, SETTINGS[key].near), of, OWN)
        for key, value in figures.settings.items()
        if key in SETTINGS and key not in gated
    ]
    typical = (Typical(name, composition, of, OWN),) if composition else ()
    return settled(begun(name, like, milk, typical, windows, gates, say("Made from {of}.", of=of), limits=limits))


def begun(
    name: str,
    like: Style | None,
    milk: Sequence[str],
    typical: tuple[Typical, ...],
    windows: Sequence[Window],
    gates: tuple[Gate, ...],
    notes: str,
    *,
    limits: bool = False,
) -> Style:
    """A style of one's own; `like` lends family, rooms, words and its general class, and its `limits` if wanted."""
    return Style(
        key=key_of(name),
        name=name,
        family=like.family if like is not None else "house style",
        milk=tuple(milk) or (like.milk if like is not None else ()),
        rules=lent(like, limits=limits),
        typical=typical,
        windows=tuple(windows),
        gates=gates,
        room=like.room if like is not None else (),
        sensory=like.sensory if like is not None else None,
        notes=notes,
    )


def lent(like: Style | None, *, limits: bool) -> tuple[Rules, ...]:
    """Rule sets a style lends a house style: its general class, with `limits` those of law and standards too.

    A protected name is never lent.
    """
    if like is None:
        return ()
    return tuple(one for one in like.rules if one.kind == "class" or (limits and one.kind != "protected name"))


def settled(style: Style) -> Style:
    """The style with its windows in the order its file has: those written, then those its pH gates stand for."""
    every = set(windows_of_gates(style.gates))
    written = tuple(one for one in style.windows if one not in every)
    return replace(style, windows=(*written, *windows_of_gates(style.gates)))


def rounded(value: float) -> float:
    """To four figures."""
    return float(f"{value:.4g}")


def around(value: float, near: float) -> tuple[float, float]:
    """`near` to both sides of a value, never under nothing, to three figures: no range is sharper."""
    return float(f"{max(0.0, value - near):.3g}"), float(f"{value + near:.3g}")


# --- Changes ---------------------------------------------------------------------------------------------------------


def with_limit(style: Style, quantity: str, low: float | None, high: float | None) -> Style:
    """With a limit of one's own; both ends None takes it away. StyleError for what no limit can speak of."""
    if quantity not in COMPOSITION:
        raise StyleError(
            say(
                "A limit speaks of one of: {composition}; not of “{quantity}”.",
                composition=", ".join(sorted(COMPOSITION)),
                quantity=quantity,
            )
        )
    _ordered(quantity, low, high)
    own = next((one for one in style.rules if one.key == OWN_RULES), None)
    kept = [one for one in (own.limits if own is not None else ()) if one.quantity != quantity]
    if (low, high) != (None, None):
        kept.append(Limit(quantity, low, high, False, False, "own limit", OWN_RULES, OWN, OWN))
    rules = [one for one in style.rules if one.key != OWN_RULES]
    if kept:
        rules.append(
            Rules(
                OWN_RULES, say("House limits"), OWN_RULES, "own limit", OWN, OWN, tuple(kept), frozenset(), frozenset(),
                None, "always", True, "",
            )
        )  # fmt: skip
    return replace(style, rules=tuple(rules))


def with_window(style: Style, key: str, low: float | None, high: float | None) -> Style:
    """With one's own usual range of a setting or figure in place of the others; both ends None takes it away."""
    if key not in SETTINGS and key not in COMPOSITION:
        raise StyleError(say("There is no setting “{key}”.", key=key))
    _ordered(key, low, high)
    gates = tuple(one for one in style.gates if not (one.curve == "ph" and MOMENTS[one.at].setting == key))
    kept = tuple(one for one in style.windows if one.key != key)
    own = () if (low, high) == (None, None) else (Window(key, low, high, OWN, OWN),)
    return settled(replace(style, windows=(*kept, *own), gates=gates))


def with_gate(style: Style, curve: str, at: str, low: float | None, high: float | None) -> Style:
    """With one's own gate on a curve at a moment in place of the others; both ends None takes it away."""
    if curve not in CURVES or at not in MOMENTS:
        raise StyleError(
            say(
                "A gate stands on one of {curves}, at one of {moments}.",
                curves=", ".join(sorted(CURVES)),
                moments=", ".join(MOMENTS),
            )
        )
    _ordered(f"{curve} {MOMENTS[at].label}", low, high)
    kept = tuple(one for one in style.gates if (one.curve, one.at) != (curve, at))
    own = () if (low, high) == (None, None) else (Gate(curve, at, low, high, OWN, OWN),)
    gone = set(windows_of_gates(style.gates)) - set(windows_of_gates(kept))
    windows = tuple(one for one in style.windows if one not in gone)
    if own and curve == "ph":
        windows = tuple(one for one in windows if one.key != MOMENTS[at].setting)
    return settled(replace(style, gates=(*kept, *own), windows=windows))


def _ordered(what: str, low: float | None, high: float | None) -> None:
    if low is not None and high is not None and low > high:
        raise StyleError(
            say("The range of {what} runs backwards: from {low:g} to {high:g}.", what=what, low=low, high=high)
        )


# --- The file --------------------------------------------------------------------------------------------------------


def write(style: Style, path: Path) -> str:
    """Write a style's file at once, or leave the old one; the text. StyleError where it can't be written."""
    text = writes(style)
    half = path.with_name(f".{path.name}.new")
    try:
        with half.open("w", encoding="utf-8", newline="\n") as stream:
            stream.write(text)
            stream.flush()
            os.fsync(stream.fileno())
        os.replace(half, path)
    except OSError as error:
        half.unlink(missing_ok=True)
        raise StyleError(
            say("The style can't be written to {path}: {strerror}.", path=path, strerror=error.strerror or error)
        ) from None
    return text


def writes(style: Style) -> str:
    """The file of a style; it reads back as the same style (its key is the file's name)."""
    writer = _Writer()
    text = "".join(f"{line}\n" for line in writer.lines(style))
    if reads(text, key=style.key) != style:
        raise StyleError(say("{name} can't be written as a style file.", name=style.name))
    return text


class _Writer:
    """Lines of a style file; works that are not in the shipped list of sources are written into the file itself."""

    def __init__(self) -> None:
        self._keys = {text: key for key, text in sources().items()}
        self._own: dict[str, str] = {}

    def lines(self, style: Style) -> Iterator[str]:
        """The whole file."""
        body = list(self._body(style))
        yield f"format = {FORMAT}"
        yield f"name = {_text(style.name)}"
        yield f"family = {_text(style.family)}"
        yield f"milk = {_texts(style.milk)}"
        if style.notes:
            yield f"notes = {_text(style.notes)}"
        if self._own:
            yield ""
            yield "[sources]"
            yield from (f"{key} = {_text(text)}" for key, text in self._own.items())
        yield from body

    def _body(self, style: Style) -> Iterator[str]:
        for rules in style.rules:
            yield from self._rules(rules)
        for typical in style.typical:
            yield from ("", "[[typical]]", f"name = {_text(typical.name)}")
            yield from (f"{key} = {_number(value)}" for key, value in _printed(typical.values))
            yield from self._from(typical)
        gated = set(windows_of_gates(style.gates))
        for window in style.windows:
            if window not in gated:
                yield from ("", "[[windows]]", f"{window.key} = {_range_text(window.low, window.high)}")
                yield from self._from(window)
        for gate in style.gates:
            yield from ("", "[[gates]]", f"{gate.curve}.{gate.at} = {_range_text(gate.low, gate.high)}")
            yield from self._from(gate)
        for room in style.room:
            yield from ("", "[[room]]", f"name = {_text(room.name)}")
            for key in ("temp_c", "rh_pct", "days"):
                if getattr(room, key) is not None:
                    yield f"{key} = {_range_text(*getattr(room, key))}"
            yield from self._from(room)
        if style.sensory is not None:
            yield from ("", "[sensory]")
            for key in ("appearance", "body", "flavour"):
                yield f"{key} = {_text(getattr(style.sensory, key))}"
            yield f"source = {_text(self._key(style.sensory.source))}"
            yield f"have = {_text(style.sensory.have)}"

    def _rules(self, rules: Rules) -> Iterator[str]:
        yield from ("", "[[rules]]", f"set = {_text(rules.key)}", f"name = {_text(rules.name)}")
        yield from (f"rule = {_text(rules.rule)}", f"kind = {_text(rules.kind)}")
        if rules.milk:
            yield f"milk = {_texts(sorted(rules.milk))}"
        if rules.heat:
            yield f"heat = {_texts(sorted(rules.heat))}"
        if rules.min_age_days is not None:
            yield f"min_age_days = {_number(rules.min_age_days)}"
        yield f"age_if = {_text(rules.age_if)}"
        yield f"judged = {'true' if rules.judged else 'false'}"
        for limit in rules.limits:
            if limit.bands:
                bands = ", ".join(f"[{_number(start)}, {_number(least)}]" for start, least in limit.bands)
                yield f"dry_matter_by_fdm = [{bands}]"
            else:
                yield f"{limit.quantity} = {_range_text(limit.low, limit.high, limit.low_strict, limit.high_strict)}"
        yield from self._from(rules)

    def _from(self, row: Rules | Typical | Window | Gate | Room) -> Iterator[str]:
        yield f"source = {_text(self._key(row.source))}"
        yield f"have = {_text(row.have)}"
        if row.note:
            yield f"note = {_text(row.note)}"

    def _key(self, work: str) -> str:
        if work not in self._keys:
            key = re.sub(r"[^a-z0-9]+", "-", work.lower()).strip("-")[:40] or "own"
            while key in self._own or key in sources():
                key += "-2"
            self._keys[work], self._own[key] = key, work
        return self._keys[work]


def _text(text: str) -> str:
    return json.dumps(text, ensure_ascii=False)


def _texts(texts: Iterable[str]) -> str:
    return f"[{', '.join(map(_text, texts))}]"


def _number(value: float) -> str:
    short = f"{value:g}"
    return short if float(short) == value else repr(value)


def _printed(values: Mapping[str, float]) -> Iterator[tuple[str, float]]:
    """The figures of a composition without those the reader works out itself."""
    for key, value in values.items():
        rest = {other: figure for other, figure in values.items() if other not in WORKED_OUT}
        if key not in WORKED_OUT or completed(rest).get(key) != value:
            yield key, value


def _range_text(low: float | None, high: float | None, low_strict: bool = False, high_strict: bool = False) -> str:
    if low is not None and high is not None and not (low_strict or high_strict):
        return _text(_number(low) if low == high else f"{_number(low)} to {_number(high)}")
    ends = [f"{'>' if low_strict else '>='} {_number(low)}"] if low is not None else []
    ends += [f"{'<' if high_strict else '<='} {_number(high)}"] if high is not None else []
    return _text(", ".join(ends))
