"""A recipe by the kilogram of milk: doses and water brought to another amount of milk, forms and times left alone.

For setting makes and lanes beside each other; to make one in another vat, see `scale`.
"""

from __future__ import annotations

from typing import Any, TypeVar

from designer.language import say
from designer.recipe.document import MilkSource, Recipe
from designer.recipe.error import RecipeError
from designer.recipe.field import Model
from designer.recipe.milk import source_milk
from designer.recipe.stages.wash import Wash

Part = TypeVar("Part", bound=Model)


def for_milk(recipe: Recipe, factor: float) -> Recipe:
    """The recipe for `factor` times the milk, as far as a kilogram of it can tell; without its branches.

    The vat's power goes along, so that it warms as fast.
    """
    if factor == 1.0 and not recipe.branches:
        return recipe
    milks = tuple(_times(one, factor, ("volume_l", "mass_kg")) for one in recipe.milks)
    stages = tuple(_times(stage, factor, ("water_l",)) if isinstance(stage, Wash) else stage for stage in recipe.stages)
    return recipe.but(
        milks=milks,
        stages=stages,
        starters=tuple(_times(one, factor, ("mass_kg", "units")) for one in recipe.starters),
        additions=tuple(_times(one, factor, ("mass_kg", "volume_l")) for one in recipe.additions),
        vat=recipe.vat if recipe.vat is None else _times(recipe.vat, factor, ("power_kw", "area_m2", "jacket_area_m2")),
        branches=(),
    )


def as_whole(recipe: Recipe, branch_id: str | None) -> Recipe:
    """A lane of a recipe as a make of its own: the main make up to where it parts, then the branch's stages.

    Only of curd; KeyError for another branch. Its milk is the share that goes this way.
    """
    if branch_id is None:
        return recipe.but(branches=())
    branch = next((one for one in recipe.branches if one.id == branch_id and one.of == "curd"), None)
    if branch is None:
        raise KeyError(branch_id)
    upto = [stage.id for stage in recipe.stages].index(branch.after) + 1
    begun = {stage.id for stage in recipe.stages[:upto]}
    first = recipe.stages[0].id
    part = for_milk(recipe, branch.share_pct / 100.0)
    return part.but(
        name=f"{recipe.name}, {branch.name or branch.id}",
        stages=(*part.stages[:upto], *branch.stages),
        starters=(*(one for one in part.starters if (one.at or first) in begun), *branch.starters),
        additions=(*(one for one in part.additions if one.at in begun), *branch.additions),
        form=branch.form or recipe.form,
        coat=branch.coat or recipe.coat,
    )


def back_into(recipe: Recipe, branch_id: str | None, whole: Recipe) -> Recipe:
    """The recipe with one lane, which was changed as a make of its own (`as_whole`), put back into its place.

    Stages that are new get ids that no other lane has. RecipeError where the change lies before the lane parts.
    """
    if branch_id is None:
        return whole
    old = as_whole(recipe, branch_id)
    branch = next(one for one in recipe.branches if one.id == branch_id)
    upto = [stage.id for stage in recipe.stages].index(branch.after) + 1
    stem = {stage.id for stage in recipe.stages[:upto]}
    first = recipe.stages[0].id
    lane: dict[str, tuple[Any, ...]] = {}
    shared: list[Any] = [whole.milks, whole.room_c, whole.vat, whole.stages[:upto]]
    before: list[Any] = [old.milks, old.room_c, old.vat, old.stages[:upto]]
    for field in ("starters", "additions"):
        for of, kept in ((whole, shared), (old, before)):
            kept.append([one for one in getattr(of, field) if (one.at or first) in stem])
        lane[field] = tuple(one for one in getattr(whole, field) if (one.at or first) not in stem)
    if shared != before:
        raise RecipeError(
            say("this lies before the lanes part, so it is the same for all; change it in the make itself"),
            say("branch “{name}”", name=branch.name or branch.id),
        )
    taken = set(recipe.ids()) - {one.id for one in (*branch.stages, *branch.starters, *branch.additions)}
    new = {one.id: free_id(one.id, taken) for one in (*whole.stages[upto:], *lane["starters"], *lane["additions"])}
    return recipe.but(
        branches=tuple(
            one if one.id != branch_id else branch.but(
                stages=tuple(stage.but(id=new[stage.id]) for stage in whole.stages[upto:]),
                starters=tuple(dose.but(id=new[dose.id], at=new[dose.at]) for dose in lane["starters"]),
                additions=tuple(dose.but(id=new[dose.id], at=new[dose.at]) for dose in lane["additions"]),
                form=branch.form if whole.form == old.form else whole.form,
            )
            for one in recipe.branches
        )
    )  # fmt: skip


def free_id(wanted: str, taken: set[str]) -> str:
    """The id wanted, with a number where it is taken; it counts as taken from here on."""
    name, count = wanted, 2
    while name in taken:
        name, count = f"{wanted}-{count}", count + 1
    taken.add(name)
    return name


def _times(part: Part, factor: float, names: tuple[str, ...]) -> Part:
    return part.but(**{name: getattr(part, name) * factor for name in names if getattr(part, name) is not None})


def explicit(source: MilkSource) -> MilkSource:
    """A milk with all that its breed or species lends it written out."""
    milk = source_milk(source)
    return source.but(
        fat_pct=milk.fat / 10.0,
        protein_pct=milk.protein / 10.0,
        casein_pct=milk.casein / 10.0,
        lactose_pct=milk.lactose / 10.0,
        ph=milk.ph,
        temperature_c=milk.temperature_c,
    )
