"""How the bands of a recipe are worked out, beside the window: those of before go along, pale, until they are there."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from designer.forecast import Forecast, forecast
from designer.make import kernel
from designer.recipe.document import Recipe

MEMBERS: Final = 128
"""Draws behind the bands, as many as the command line takes."""
REST_MS: Final = 25
"""How long nothing new must be shown before they are begun."""


def banded(recipe: Recipe, stop: Callable[[], bool]) -> Forecast:
    """A forecast with bands; the first one waits for the march to be compiled."""
    kernel.warm_up()
    return forecast(recipe, members=MEMBERS, stop=stop)
