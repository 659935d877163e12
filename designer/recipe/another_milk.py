"""A recipe with another animal's milk in the vat, all or a share of it; nothing else is changed here.

What else should change, and why, is proposed by `judge.another_milk`, which can forecast.
"""

from __future__ import annotations

from designer.language import say
from designer.recipe.document import MilkSource, Recipe, Species
from designer.recipe.edit import edit_recipe, free_id
from designer.recipe.error import RecipeError
from designer.recipe.field import choice


def with_milk(recipe: Recipe, species: Species, *, breed: str = "", share_pct: float = 100.0) -> Recipe:
    """The recipe with `share_pct` of each milk replaced by milk of a species, of its usual composition or its breed's.

    Amounts, temperatures, age and heat treatment stay. Raises RecipeError for a share that can't be.
    """
    if not 0.0 < share_pct <= 100.0:
        raise RecipeError(
            say("a share of the milk lies between 0 and 100 %, not at {share_pct:g} %", share_pct=share_pct),
            say("another milk"),
        )
    kept, new = [], []
    for source in recipe.milks:
        other = source.but(
            species=species, breed=breed, name=say("{species} milk", species=choice(species)),
            fat_pct=None, protein_pct=None, casein_pct=None,
            lactose_pct=None, ph=None, late_lactation=False, season="any",
        )  # fmt: skip
        if share_pct >= 100.0:
            new.append(other)
            continue
        kept.append(_part(source, 1.0 - share_pct / 100.0))
        new.append(_part(other, share_pct / 100.0).but(id=free_id(recipe, f"{species}-{source.id}")))
    return edit_recipe(recipe, milks=(*kept, *new))


def _part(source: MilkSource, share: float) -> MilkSource:
    if source.volume_l is not None:
        return source.but(volume_l=source.volume_l * share)
    return source.but(mass_kg=(source.mass_kg or 0.0) * share)
