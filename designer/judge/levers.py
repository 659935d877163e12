"""What moves it: for every outcome, the effect of one natural step of every setting, both ways.

The whole recipe is marched once and each step from its own stage on, all in rougher strides than a forecast takes: a
difference is good to a few per cent so, and a change that is kept is always forecast again.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from designer.forecast import HIGH, LOW
from designer.judge.movable import Movable, movables
from designer.judge.parted import Parted
from designer.judge.stepped import Stepped
from designer.make import many
from designer.make.outcomes import outcomes
from designer.recipe.document import Recipe

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Lever:
    """What one step of a setting does to one outcome; nan where the step can't be taken."""

    setting: Movable
    up: float
    down: float

    @property
    def size(self) -> float:
        """The greater of the two effects."""
        return float(np.nanmax(np.abs([self.up, self.down, 0.0])))


@dataclass(frozen=True, slots=True)
class Levers:
    """Effects of one step up and down: `up` and `down` (settings, outcomes), nan where a step can't be taken.

    `base` (outcomes,) is the recipe on the same steps: for differences, not for show.
    """

    settings: tuple[Movable, ...]
    keys: tuple[str, ...]
    base: Floats
    up: Floats
    down: Floats

    def ranked(self, key: str) -> tuple[Lever, ...]:
        """All that moves an outcome, the strongest first; what does nothing is left out. KeyError if unknown."""
        column = self.column(key)
        every = [
            Lever(one, float(self.up[row, column]), float(self.down[row, column]))
            for row, one in enumerate(self.settings)
        ]
        floor = 1e-9 * max(1.0, abs(float(self.base[column])))
        return tuple(sorted((one for one in every if one.size > floor), key=lambda one: -one.size))

    def column(self, key: str) -> int:
        """Where an outcome stands; KeyError if this make has it not."""
        if key not in self.keys:
            raise KeyError(key)
        return self.keys.index(key)


def levers(
    recipe: Recipe, *, branch: str | None = None, only: Collection[tuple[str, str]] | None = None
) -> Levers:  # fmt: skip
    """Both ways, one step of every setting of the main make, or of all that moves a branch (or of those whose paths are
    in `only`).

    Raises RecipeError where the recipe itself can't be lowered, KeyError for a branch that is not there.
    """
    settings = tuple(one for one in movables(recipe, branch) if only is None or one.path in only)
    steps = [one.value + sign * one.step for one in settings for sign in (1.0, -1.0)]
    every = effects(recipe, [one for one in settings for _ in (0, 1)], steps, branch=branch)
    keys = tuple(every)
    table = np.array([every[key] for key in keys]).T
    change = table[1:] - table[0]
    return Levers(settings, keys, table[0], change[0::2], change[1::2])


def effects(
    recipe: Recipe, which: Sequence[Movable], values: Sequence[float], *, branch: str | None = None,
    settings_too: bool = False,
) -> dict[str, Floats]:  # fmt: skip
    """Outcomes of the recipe (first) and of the recipe with each setting alone at its value, shape (1 + n,) a key: of
    its main make, or of a branch.

    nan for a value that can't be set. `settings_too` adds what a style has usual ranges for beside outcomes: its
    temperatures and times, by their keys in styles.settings. All in the rough strides of `make.many`.
    """
    if branch is not None or _parts(recipe):
        return Parted(recipe).effects(which, values, [branch], settings_too=settings_too)[branch]
    make = Stepped(recipe)
    moves = [make.move(one, value) for one, value in zip(which, values, strict=True)]
    place = np.array([0, *(k for k, move in enumerate(moves, start=1) if move is not None)])
    marks = many.march_variants(make.base, [move for move in moves if move is not None])
    found = outcomes(marks, mill_row=make.mill_row(marks), milk_kg=make.milk_kg(which, values)[place])
    if settings_too:
        found |= make.settings(marks)
    out = {}
    for key, column in found.items():
        if not np.isnan(column[0]):
            out[key] = np.full(len(moves) + 1, np.nan)
            out[key][place] = column
    return out


def lane_effects(
    recipe: Recipe, which: Sequence[Movable], values: Sequence[float], lanes: Sequence[str | None], *,
    settings_too: bool = False,
) -> dict[str | None, dict[str, Floats]]:  # fmt: skip
    """`effects` for several lanes at once (None: the main make)."""
    if recipe.branches:
        return Parted(recipe).effects(which, values, lanes, settings_too=settings_too)
    return {lane: effects(recipe, which, values, settings_too=settings_too) for lane in lanes}


def _parts(recipe: Recipe) -> bool:
    """Whether the main make goes on from another state than it came to: whey or cream has left it."""
    return any(branch.of != "curd" for branch in recipe.branches)


@dataclass(frozen=True, slots=True)
class Spread:
    """The 80 % band of what one step of a setting does, up and down, as (low, high); nan where it can't be taken."""

    setting: Movable
    up: tuple[float, float]
    down: tuple[float, float]


def spreads(
    recipe: Recipe, key: str, top: Sequence[Lever], *, branch: str | None = None, members: int = 32
) -> tuple[Spread, ...]:
    """Bands of the effects on one outcome (usually the first five of `Levers.ranked`), from draws of what is uncertain.

    Each draw is marched with and without the step, so that a band is that of the effect; one in which there is nothing
    to part with says nothing. KeyError for an outcome this make has not.
    """
    ways = [(one.setting, one.setting.value + sign * one.setting.step) for one in top for sign in (1.0, -1.0)]
    every = (
        _parted_draws(recipe, key, ways, branch, members)
        if branch is not None or _parts(recipe)
        else _draws(recipe, key, ways, members)
    )
    bands = [_ends(made - every[0]) for made in every[1:]]
    return tuple(Spread(one.setting, bands[2 * k], bands[2 * k + 1]) for k, one in enumerate(top))


def _draws(recipe: Recipe, key: str, ways: Sequence[tuple[Movable, float]], members: int) -> list[Floats]:
    """An outcome in draws (members,) of the main make, and with each change; nan where that can't be."""
    make = Stepped(recipe)
    moves = [make.move(one, value) for one, value in ways]
    kg = np.full(members, make.milk.mass_kg)
    made = (
        outcomes(marks, mill_row=make.mill_row(marks), milk_kg=kg)[key]
        for marks in make.spread([move for move in moves if move is not None], members)
    )
    return [next(made), *(np.full(members, np.nan) if move is None else next(made) for move in moves)]


def _parted_draws(
    recipe: Recipe, key: str, ways: Sequence[tuple[Movable, float]], branch: str | None, members: int
) -> list[Floats]:
    """The same of a vat that parts: its main make, or a branch."""
    make = Parted(recipe)
    base = make.made([branch])
    every = [base, *(make.with_changed(one, value, [branch], base) for one, value in ways)]
    return [np.full(members, np.nan) if one is None else one.by.drawn(one, branch, key, members) for one in every]


def _ends(changes: Floats) -> tuple[float, float]:
    """The 80 % band of changes, over the draws that there are."""
    there = changes[np.isfinite(changes)]
    if not there.size:
        return np.nan, np.nan
    low, high = np.percentile(there, [LOW, HIGH])
    return float(low), float(high)
