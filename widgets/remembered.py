"""Forecasts of the recipes looked at last, so that a drag there and back and a setting pointed at again cost nothing.

A recipe is frozen and its forecast follows from it alone: an equal recipe has the same one.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from designer.forecast import Forecast
from designer.recipe.document import Recipe

MOST: Final = 48
"""So many are kept, the ones asked for last: some 0.2 MB each."""


class Remembered:
    """Forecasts without bands, each worked out once; for one thread."""

    def __init__(self, work: Callable[[Recipe], Forecast]) -> None:
        self._work = work
        self._made: dict[Recipe, Forecast] = {}

    def __call__(self, recipe: Recipe) -> Forecast:
        """The forecast of a recipe; RecipeError where it can't be made, every time it is asked for."""
        made = self._made.pop(recipe, None)
        if made is None:
            made = self._work(recipe)
            if len(self._made) >= MOST:
                del self._made[next(iter(self._made))]
        self._made[recipe] = made
        return made
