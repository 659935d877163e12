"""What moves it: for every outcome, the effect of one natural step of every setting, both ways.

The whole recipe is marched once and each step from its own stage on, all on longer steps than a forecast takes: a
difference is good to a few per cent so, and a change that is kept is always forecast again.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from designer.forecast import HIGH, LOW, forecast
from designer.judge.movable import Movable, movables, moved
from designer.judge.stepped import Stepped
from designer.make import many
from designer.make.outcomes import outcomes
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError

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


def levers(recipe: Recipe, *, only: Collection[tuple[str, str]] | None = None) -> Levers:
    """Both ways, one step of every setting of the main make (or of those whose paths are in `only`).

    Raises RecipeError where the recipe itself can't be lowered.
    """
    settings = tuple(one for one in movables(recipe) if only is None or one.path in only)
    steps = [one.value + sign * one.step for one in settings for sign in (1.0, -1.0)]
    every = effects(recipe, [one for one in settings for _ in (0, 1)], steps)
    keys = tuple(every)
    table = np.array([every[key] for key in keys]).T
    change = table[1:] - table[0]
    return Levers(settings, keys, table[0], change[0::2], change[1::2])


def effects(
    recipe: Recipe, which: Sequence[Movable], values: Sequence[float], *, settings_too: bool = False
) -> dict[str, Floats]:
    """Outcomes of the recipe (first) and of the recipe with each setting alone at its value, shape (1 + n,) a key.

    nan for a value that can't be set. `settings_too` adds what a style has usual ranges for beside outcomes: its
    temperatures and times, by their keys in styles.settings. On the long steps of this module, but for a vat that
    parts with whey or cream: what is left of it is forecast in full.
    """
    if any(branch.of != "curd" for branch in recipe.branches):
        return _forecast_each(recipe, which, values)
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


def _forecast_each(recipe: Recipe, which: Sequence[Movable], values: Sequence[float]) -> dict[str, Floats]:
    base = {key: one.value for key, one in forecast(recipe).outcomes.items()}
    out = {key: np.full(len(which) + 1, np.nan) for key in base}
    for key, value in base.items():
        out[key][0] = value
    for k, (one, to) in enumerate(zip(which, values, strict=True), start=1):
        try:
            found = forecast(moved(recipe, one, to)).outcomes
        except RecipeError:
            continue
        for key in base.keys() & found.keys():
            out[key][k] = found[key].value
    return out


@dataclass(frozen=True, slots=True)
class Spread:
    """The 80 % band of what one step of a setting does, up and down, as (low, high); nan where it can't be taken."""

    setting: Movable
    up: tuple[float, float]
    down: tuple[float, float]


def spreads(recipe: Recipe, key: str, top: Sequence[Lever], *, members: int = 32) -> tuple[Spread, ...]:
    """Bands of the effects on one outcome (usually the first five of `Levers.ranked`), from draws of what is uncertain.

    Each draw is marched with and without the step, so that a band is that of the effect. Not for a vat that parts with
    whey or cream (comes back empty). KeyError for an outcome this make has not.
    """
    if any(branch.of != "curd" for branch in recipe.branches):
        return ()
    make = Stepped(recipe)
    ways = [(one.setting, one.setting.value + sign * one.setting.step) for one in top for sign in (1.0, -1.0)]
    moves = [make.move(one, value) for one, value in ways]
    still = many.Variant({}, make.starter_min)
    variants = make.spread([still, *(move for move in moves if move is not None)], members)
    marks = many.march_variants(make.base, variants)
    milk_kg = np.full(len(variants) + 1, make.milk.mass_kg)
    found = outcomes(marks, mill_row=make.mill_row(marks), milk_kg=milk_kg)[key][1:].reshape(-1, members)
    ends = iter(np.percentile(found[1:] - found[0], [LOW, HIGH], axis=1).T)
    bands = [(np.nan, np.nan) if move is None else _ends(next(ends)) for move in moves]
    return tuple(Spread(one.setting, bands[2 * k], bands[2 * k + 1]) for k, one in enumerate(top))


def _ends(band: Floats) -> tuple[float, float]:
    return float(band[0]), float(band[1])
