"""Guess first, then show: what a change does to the outcomes, held against what was guessed, and how it came about."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from designer.forecast import Forecast, StageForecast
from designer.judge.compare import KEYS, amount, part_words
from designer.language import points, say
from designer.quantities import QUANTITIES

LESS, SAME, MORE = -1, 0, 1
NEAR = 0.5
"""A guess is near where it is off by no more than this part of the change, or by one figure."""


@dataclass(frozen=True, slots=True)
class Change:
    """An outcome before and after."""

    key: str
    before: float
    after: float

    @property
    def change(self) -> float:
        """After less before."""
        return self.after - self.before

    @property
    def way(self) -> int:
        """`MORE`, `LESS`, or `SAME` where it does not show in the figures of the outcome."""
        if not part_words(self.key, self.change):
            return SAME
        return MORE if self.change > 0.0 else LESS

    @property
    def words(self) -> str:
        """ "0.9 points less", "stays"."""
        return way_words(self.key, self.way, abs(self.change))


@dataclass(frozen=True, slots=True)
class Guess:
    """Which way an outcome was guessed to go and, where that was said, by how much (in its own unit)."""

    way: int
    amount: float | None = None


@dataclass(frozen=True, slots=True)
class Told:
    """A guess held against the forecast: `right` is the way, `near` the amount (None where none was guessed)."""

    change: Change
    guess: Guess
    right: bool
    near: bool | None
    sentence: str


def changes(before: Forecast, after: Forecast) -> tuple[Change, ...]:
    """The outcomes that both have, in the order of Compare."""
    return tuple(
        Change(key, before.outcomes[key].value, after.outcomes[key].value)
        for key in KEYS
        if key in before.outcomes and key in after.outcomes
    )


def way_words(key: str, way: int, size: float) -> str:
    """A change in words."""
    if way == SAME:
        return say("stays")
    template = say("{amount} more") if way == MORE else say("{amount} less")
    return template.format(amount=amount(key, size, bare=True))


def held(change: Change, guess: Guess) -> Told:
    """A guess against what the forecast says."""
    right = guess.way == change.way
    near = None
    if right and guess.way != SAME and guess.amount is not None:
        off = abs(guess.amount - abs(change.change))
        near = off <= max(NEAR * abs(change.change), 1.001 * 10.0 ** -QUANTITIES[change.key].decimals)
    if not right:
        sentence = say("Not so: {words}.", words=change.words)
    elif near is None:
        sentence = say("Right: {words}.", words=change.words)
    elif near:
        sentence = say("Right, and near: {words}.", words=change.words)
    else:
        assert guess.amount is not None
        off_words = amount(change.key, abs(guess.amount - abs(change.change)), bare=True)
        sentence = say("Right way, {off} off: {words}.", off=off_words, words=change.words)
    return Told(change, guess, right, near, sentence)


def chain(before: Forecast, after: Forecast) -> tuple[str, ...]:
    """How it came about: stage by stage from where the two begin to differ, what is other at its end."""
    here = {stage.id: stage for stage in before.stages}
    there = {stage.id for stage in after.stages}
    lines = [say("{stage}: left out", stage=stage.name) for stage in before.stages if stage.id not in there]
    for stage in after.stages:
        if stage.id not in here:
            lines.append(say("{stage}: put in", stage=stage.name))
            continue
        said = list(_other(here[stage.id], stage))
        if said:
            lines.append(say("{stage}: {differences}", stage=stage.name, differences=", ".join(said)))
    return tuple(lines)


_SEEN = (
    ("temperature_c", 0.1, ".1f", "°C"),
    ("curd_moisture_pct", 0.1, ".1f", ""),
    ("ph", 0.01, ".2f", ""),
    ("whey_kg_per_100kg", 0.1, ".1f", "kg"),
)


def _other(before: StageForecast, after: StageForecast) -> Iterator[str]:
    longer = (after.end_min - after.start_min) - (before.end_min - before.start_min)
    if abs(longer) >= 0.5:
        size = amount("finish_min", abs(longer))
        yield say("{size} longer", size=size) if longer > 0.0 else say("{size} shorter", size=size)
    for key, least, spec, unit in _SEEN:
        if key not in before.values or key not in after.values:
            continue
        by = after.values[key] - before.values[key]
        if abs(by) >= least:
            yield _seen_words(key, by, f"{format(abs(by), spec)} {unit}".rstrip())


def _seen_words(key: str, by: float, size: str) -> str:
    match key:
        case "temperature_c":
            return say("{size} warmer", size=size) if by > 0.0 else say("{size} cooler", size=size)
        case "curd_moisture_pct":
            told = f"{size} {points(by)}"
            return say("{size} moister", size=told) if by > 0.0 else say("{size} drier", size=told)
        case "ph":
            return say("pH {size} higher", size=size) if by > 0.0 else say("pH {size} lower", size=size)
    if by > 0.0:
        return say("{size} more whey off per 100 kg", size=size)
    return say("{size} less whey off per 100 kg", size=size)
