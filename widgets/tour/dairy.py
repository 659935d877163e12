"""The folder the pictures are taken in: the recipe saved with what it was before, and a house style beside it.

Days and names are fixed and made up, so that every run shows the same.
"""

from __future__ import annotations

from contextlib import suppress
from datetime import UTC, datetime
from pathlib import Path

from designer.batch.invented import invented
from designer.batch.liked import liked, style_of
from designer.recipe import versions
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from designer.recipe.error import RecipeError
from styles import house
from styles.reader import StyleError, style

STYLE = "Thistlecombe Own"
TRIED = ((10.0, datetime(2024, 2, 20, 17, 5, tzinfo=UTC), ""), (9.0, datetime(2024, 3, 4, 18, 40, tzinfo=UTC), "finer"))
"""Cut sizes [mm] tried before, when, and the note."""
NOW = datetime(2024, 3, 18, 19, 15, tzinfo=UTC)


def saved(folder: Path, recipe: Recipe, text: str) -> Path:
    """The recipe saved in a folder, with versions of it and a house style of what was liked; its path."""
    path = folder / "round.toml"
    cut = next((stage.id for stage in recipe.stages if stage.kind == "cut"), None)
    for size, when, note in TRIED if cut is not None else ():
        with suppress(RecipeError):  # a cut that can't be of that size: it was never tried
            versions.save(edit(recipe, cut or "", cut_mm=size), path, text, note=note, when=when)
    versions.save(recipe, path, text, when=NOW)
    with suppress(StyleError):  # the recipe's own style is not known: none can be made like it
        _house_style(folder, recipe)
    return path


def _house_style(folder: Path, recipe: Recipe) -> None:
    """Of the invented batches, like the recipe's style."""
    ledger = invented()
    like = style(recipe.style) if recipe.style else None
    species = sorted({source.species for source in recipe.milks})
    made = style_of(STYLE, liked(ledger.batches()), like, milk=species, limits=True)
    ledger.close()
    house.write(made, house.path_of(folder, made))
