"""A style as plain data: limits, typical composition, make windows, gates, rooms, each with source and how we have it.

`reader` makes them from files; ends that are open are None.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from designer.language import say, word


class StyleError(ValueError):
    """A style file says something the program can't take: one sentence naming the file and the place."""


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit of one rule set. `low`/`high` are None where open; `bands` makes the low end depend on FDM.

    `bands` is ((FDM from, least dry matter), ...), rising: the band that holds at an FDM is the last one begun.
    """

    quantity: str
    low: float | None
    high: float | None
    low_strict: bool
    high_strict: bool
    kind: str
    rule: str
    source: str
    have: str
    note: str = ""
    bands: tuple[tuple[float, float], ...] = ()

    @property
    def strict(self) -> bool:
        """True where a value on the limit itself is outside."""
        return self.low_strict or self.high_strict

    def low_at(self, fdm_pct: float) -> float | None:
        """The low end at an FDM [%]; None below the first band (no such cheese under this standard)."""
        if not self.bands:
            return self.low
        low = None
        for start, least in self.bands:
            if fdm_pct >= start:
                low = least
        return low


@dataclass(frozen=True, slots=True)
class Rules:
    """One rule set: a general class, a national standard, a protected name. `judged` is False where it binds only
    the maker who claims the name. `heat` and `milk` are what it allows (empty: anything)."""

    key: str
    name: str
    rule: str
    kind: str
    source: str
    have: str
    limits: tuple[Limit, ...]
    milk: frozenset[str]
    heat: frozenset[str]
    min_age_days: float | None
    age_if: str
    judged: bool
    note: str


@dataclass(frozen=True, slots=True)
class Window:
    """A usual range of one setting of the make (or of one outcome), open ends None."""

    key: str
    low: float | None
    high: float | None
    source: str
    have: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Gate:
    """Where a curve should pass at a moment of the make: `curve` a trace column, `at` a key of MOMENTS."""

    curve: str
    at: str
    low: float | None
    high: float | None
    source: str
    have: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Typical:
    """One published composition of the style: quantity -> value (a figure of that source, not a limit)."""

    name: str
    values: Mapping[str, float]
    source: str
    have: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Room:
    """One room of the store: ranges (low, high) of temperature [°C], relative humidity [%] and days, None if unsaid."""

    name: str
    temp_c: tuple[float | None, float | None] | None
    rh_pct: tuple[float | None, float | None] | None
    days: tuple[float | None, float | None] | None
    source: str
    have: str
    note: str = ""


@dataclass(frozen=True, slots=True)
class Sensory:
    """What the cheese should look, feel and taste like, in neutral words."""

    appearance: str
    body: str
    flavour: str
    source: str
    have: str


@dataclass(frozen=True, slots=True)
class Style:
    """A style of cheese; every figure in it says where it comes from and how we have it."""

    key: str
    name: str
    family: str
    milk: tuple[str, ...]
    rules: tuple[Rules, ...]
    typical: tuple[Typical, ...]
    windows: tuple[Window, ...]
    gates: tuple[Gate, ...]
    room: tuple[Room, ...]
    sensory: Sensory | None
    notes: str

    @property
    def title(self) -> str:
        """Its name in the language spoken."""
        return word(self.name, "style")

    @property
    def limits(self) -> tuple[Limit, ...]:
        """All limits of all rule sets, in order."""
        return tuple(limit for rules in self.rules for limit in rules.limits)

    def rule_set(self, key: str) -> Rules:
        """The rule set of that key; StyleError names the ones there are."""
        for rules in self.rules:
            if rules.key == key:
                return rules
        have = ", ".join(rules.key for rules in self.rules)
        raise StyleError(say("{name} has no rule set “{key}” (it has: {have}).", name=self.name, key=key, have=have))

    def windows_of(self, key: str) -> tuple[Window, ...]:
        """The windows of one setting, as many as there are sources."""
        return tuple(window for window in self.windows if window.key == key)
