"""Several small vats side by side: the same recipe in each, and in each one thing changed."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from designer.judge.movable import Movable, movables, moved
from designer.judge.windows import ranged
from designer.language import say
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.scale import scale
from designer.units import System
from styles.reader import Style

MOST = 5
"""Vats that can be told apart by their lines."""
STEPS_AWAY = 4.0


@dataclass(frozen=True, slots=True)
class Vat:
    """One vat: what is changed in it (None: nothing), to what, and the recipe that comes of it."""

    setting: Movable | None
    value: float
    recipe: Recipe

    def name(self, system: System = "metric") -> str:
        """ "cook: temperature 37 °C"; "as it is"."""
        if self.setting is None:
            return say("as it is")
        return f"{self.setting.title} {self.setting.shown(self.value, system)}"


def small(recipe: Recipe, litres: float) -> Vat:
    """The vat in which nothing is changed: the recipe scaled to so many litres. RecipeError where that can't be."""
    return Vat(None, 0.0, scale(recipe.but(branches=()), litres).recipe)


def setting_of(recipe: Recipe, path: tuple[str, str]) -> Movable:
    """The setting at a path, as the small vat has it; RecipeError where there is none."""
    found = next((one for one in movables(recipe) if one.path == path), None)
    if found is None:
        raise RecipeError(say("nothing can be moved there"), ".".join(part for part in path if part))
    return found


def changed(base: Vat, path: tuple[str, str], value: float) -> Vat:
    """A vat like `base` with one setting at a value; RecipeError where it can't be."""
    setting = setting_of(base.recipe, path)
    return Vat(setting, value, moved(base.recipe, setting, value))


def low_usual_high(base: Vat, path: tuple[str, str], style: Style | None) -> tuple[float, ...]:
    """Values worth a vat: both ends and the middle of the style's usual range, else some steps to either side.

    What the recipe has already is left out: that vat stands there as it is.
    """
    setting = setting_of(base.recipe, path)
    usual = ranged(base.recipe, style) if style is not None else ()
    found = next((one for one in usual if one.setting.path == path), None)
    if found is not None and found.high > found.low:
        values: Iterable[float] = (found.low, found.middle, found.high)
    else:
        away = STEPS_AWAY * setting.step
        values = (max(setting.low, setting.value - away), min(setting.high, setting.value + away))
    return tuple(dict.fromkeys(value for value in values if abs(value - setting.value) > 0.5 * setting.step))
