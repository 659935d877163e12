"""What can be written down but not made: the forecast says so in a sentence, and names the stage."""

from __future__ import annotations

import pytest

from designer.forecast import forecast
from designer.recipe.error import RecipeError
from designer.recipe.examples import example
from designer.recipe.file import read


def test_a_recipe_that_begins_in_the_room_makes_nothing() -> None:
    recipe = read(example())
    room = next(stage for stage in recipe.stages if stage.kind == "room")
    bare = recipe.model_copy(update={"stages": (room,), "starters": (), "additions": (), "branches": ()})
    with pytest.raises(RecipeError, match=r"stage 1, .*before it"):
        forecast(bare, twin=True)
