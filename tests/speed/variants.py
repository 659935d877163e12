"""Timings of variants: loading the styles, ranking them, comparing and scaling."""

from __future__ import annotations

from collections.abc import Iterator

from designer.forecast import forecast
from designer.judge.compare import compare
from designer.judge.nearest import nearest
from designer.recipe.file import read
from designer.recipe.scale import scale
from styles.reader import FOLDER, keys
from styles.reader import read as read_style
from tests.recipe.samples import CHEDDAR
from tests.speed.clock import Timing, timed


def timings() -> Iterator[Timing]:
    """All of them; styles from their files each time."""
    yield timed("styles: all from their files", _styles, 5, aim=100.0, note=f"{len(keys())} styles")
    recipe, other = read(CHEDDAR), read(CHEDDAR.with_name("lantern-colby.toml"))
    made = forecast(recipe)
    yield timed("nearest styles", lambda: nearest(made), 10)
    found = compare(recipe, other)
    yield timed("compare two makes", lambda: compare(recipe, other), 3, note=f"{len(found.differences)} differences")
    yield timed("scale a recipe", lambda: scale(recipe, 300.0), 10)


def _styles() -> None:
    for key in keys():
        read_style(FOLDER / f"{key}.toml")
