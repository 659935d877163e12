"""A style as the rows of a table: limits, usual ranges and gates, how each is told and typed, and how it is changed.

A figure is typed with its unit; a bare number takes the unit that stands in the row. Limits of law and standards are
shown, and stay: a house style adds limits of its own.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Literal

from designer.judge.words import label_of
from designer.language import joined, number, spoken
from designer.quantities import QUANTITIES
from designer.units import KINDS, System, gallon_of, parse, show
from styles.house import GATE_NEAR, OWN_RULES, RANGE_NEAR, Figures, around, with_gate, with_limit, with_window
from styles.reader import Style, windows_of_gates
from styles.settings import COMPOSITION, CURVES, MOMENTS, SETTINGS

Part = Literal["law", "limit", "window", "gate"]
_BY_UNIT = {"h": "hours", "days": "days"}
_PLAIN = {"calcium_mg_100g": "ratio", "dry_matter_g_piece": "ratio", "ph_ripe": "ph"}
_BARE = re.compile(r"[-+−]?\d+(?:[.,]\d+)?")


@dataclass(frozen=True, slots=True)
class StyleRow:
    """One row: what it speaks of (`key`, and for a gate the moment `at`), its ends in base units, and where from."""

    part: Part
    key: str
    at: str
    label: str
    kind: str
    low: float | None
    high: float | None
    source: str
    have: str
    note: str = ""
    twin: str = ""
    """the source, where several speak of the same"""

    @property
    def editable(self) -> bool:
        """Whether a house style may change it."""
        return self.part != "law"

    @property
    def path(self) -> tuple[str, str, str]:
        """What tells it from other rows."""
        return self.part, self.key, f"{self.at} {self.twin}".strip()

    def shown(self, value: float | None, system: System = "metric") -> str:
        """An end as text with its unit; "" for an open one."""
        return "" if value is None else show(value, self.kind, system=system)

    def read_off(self, value: float | None, system: System = "metric") -> str:
        """A figure of a make as text, no sharper than it is read; "" where there is none."""
        if value is not None and self.key in QUANTITIES:
            value = round(value, QUANTITIES[self.key].decimals)
        elif value is not None and self.kind == "percent":
            value = round(value, 1)
        return self.shown(value, system)

    def read(self, text: str, system: System = "metric") -> float | None:
        """What was typed for an end, "" for open. Raises UnitError."""
        plain = text.strip()
        if not plain:
            return None
        if _BARE.fullmatch(plain) and self.kind != "duration":
            plain = f"{plain} {KINDS[self.kind].display(system)[0]}"
        return parse(plain, self.kind, gallon=gallon_of(system), comma=spoken().comma).value


def rows(style: Style) -> tuple[StyleRow, ...]:
    """Every row of a style: limits of law and standards, limits of one's own, usual ranges, gates."""
    every = (*_limits(style), *_windows(style), *_gates(style))
    count = Counter(row.path for row in every)
    return tuple(replace(row, twin=row.source) if count[row.path] > 1 else row for row in every)


def _limits(style: Style) -> Iterator[StyleRow]:
    for rules in style.rules:
        part: Part = "limit" if rules.key == OWN_RULES else "law"
        for one in rules.limits:
            source = one.source if part == "limit" else f"{rules.name}, {one.rule}; {one.source}"
            note = joined(f"{number(least)} % from {number(start)} % FDM" for start, least in one.bands) or one.note
            yield StyleRow(
                part, one.quantity, rules.key if part == "law" else "", label_of(one.quantity)[0],
                kind_of(one.quantity), one.low, one.high, source, one.have, note,
            )  # fmt: skip


def _windows(style: Style) -> Iterator[StyleRow]:
    """Usual ranges in the order of a make, those of one setting together."""
    gated, order = set(windows_of_gates(style.gates)), [*SETTINGS, *sorted(COMPOSITION)]
    for one in sorted((one for one in style.windows if one not in gated), key=lambda one: order.index(one.key)):
        label = setting_label(one.key)
        yield StyleRow(
            "window", one.key, "", label, kind_of(one.key), one.low, one.high, one.source, one.have, one.note
        )


def _gates(style: Style) -> Iterator[StyleRow]:
    for one in style.gates:
        label = gate_label(one.curve, one.at)
        yield StyleRow(
            "gate", one.curve, one.at, label, kind_of(one.curve), one.low, one.high, one.source, one.have, one.note
        )


def kind_of(key: str) -> str:
    """The unit kind that reads and shows a figure of a style."""
    if key in SETTINGS:
        return _BY_UNIT.get(SETTINGS[key].unit, SETTINGS[key].kind)
    if key == "ph_whey":
        return "ph"
    if key in QUANTITIES:
        return QUANTITIES[key].kind
    return _PLAIN.get(key, "percent")


def setting_label(key: str) -> str:
    """What a usual range speaks of, with the share's base: "Wash water, % of milk"."""
    if key not in SETTINGS:
        return label_of(key)[0]
    one = SETTINGS[key]
    base = f", {one.unit}" if one.unit.startswith("%") and one.unit != "%" else ""
    return one.label[:1].upper() + one.label[1:] + base if not one.label.startswith("pH") else one.label


def gate_label(curve: str, at: str) -> str:
    """What a gate speaks of: "pH at milling"."""
    return f"{label_of(curve)[0]} {MOMENTS[at].label}"


def with_row(style: Style, row: StyleRow, low: float | None, high: float | None) -> Style:
    """The style with a row changed to one's own ends; both None takes it away. Raises StyleError."""
    if row.part == "limit":
        return with_limit(style, row.key, low, high)
    if row.part == "window":
        return with_window(style, row.key, low, high)
    return with_gate(style, row.key, row.at, low, high)


@dataclass(frozen=True, slots=True)
class Addable:
    """A row a style has not yet, with ends around the figure of a make."""

    part: Part
    key: str
    at: str
    label: str
    low: float
    high: float


def addable(style: Style, part: Part, figures: Figures) -> tuple[Addable, ...]:
    """Rows of a part that could be added, as far as the make at hand has a figure for them, by name."""
    have = {(row.part, row.key, row.at) for row in rows(style)}
    found = (one for one in _known(part, figures) if (one.part, one.key, one.at) not in have)
    return tuple(sorted(found, key=lambda one: one.label.lower()))


def _known(part: Part, figures: Figures) -> Iterator[Addable]:
    if part == "gate":
        for (curve, at), value in figures.curves.items():
            if curve in CURVES and value == value:
                yield Addable(part, curve, at, gate_label(curve, at), *around(value, GATE_NEAR[curve]))
        return
    for key, value in figures.composition.items():
        if key in COMPOSITION and key in RANGE_NEAR:
            yield Addable(part, key, "", label_of(key)[0], *around(value, RANGE_NEAR[key]))
    if part == "window":
        for key, value in figures.settings.items():
            if key in SETTINGS and not key.startswith("ph_"):
                yield Addable(part, key, "", setting_label(key), *around(value, SETTINGS[key].near))


def with_added(style: Style, one: Addable) -> Style:
    """The style with such a row. Raises StyleError."""
    row = StyleRow(one.part, one.key, one.at, one.label, kind_of(one.key), None, None, "", "")
    return with_row(style, row, one.low, one.high)


def figure_of(row: StyleRow, figures: Figures) -> float | None:
    """The figure of a make that a row speaks of; None where it has none."""
    if row.part == "gate":
        value = figures.curves.get((row.key, row.at))
        return None if value is None or value != value else value
    value = figures.settings.get(row.key, figures.composition.get(row.key))
    if value is None and row.key == "dry_matter_pct" and "moisture_pct" in figures.composition:
        return 100.0 - figures.composition["moisture_pct"]
    return value
