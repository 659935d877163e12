"""Splitting the vat: a share of curd, whey or cream leaves after a stage and begins as something that can be made.

Curd begins as a twin of what follows in the main make; whey goes to a whey cheese, cream ripens. Amounts said by mass
or volume, and the forms, are shared out with the curd; what is said as a share stays.
"""

from __future__ import annotations

from typing import Final, Literal, TypeVar

from designer.language import say
from designer.recipe.document import Addition, Branch, Form, Recipe, Starter
from designer.recipe.edit import add, edit_recipe, free_id, new_stage
from designer.recipe.end import after
from designer.recipe.error import RecipeError
from designer.recipe.stages.kinds import AnyStage

Of = Literal["curd", "whey", "cream"]
G = TypeVar("G", Starter, Addition)

WHEY_HEAT_C: Final = 88.0
"""Whey for whey cheese is heated to 85-90 °C (common practice)."""
WHEY_ACID_PCT: Final = 0.06
"""Citric acid for a whey cheese, share of the whey: 0.5-1 g a litre (common practice)."""
CREAM_C: Final = 20.0
CREAM_MIN: Final = 720.0
"""Cream ripens about twelve hours at room temperature (common practice)."""


def split_off(recipe: Recipe, after_id: str, of: Of, share_pct: float, name: str) -> Recipe:
    """The recipe with a new branch after a stage of the main make, named `name`.

    Raises RecipeError where the stage is in a branch, or where more would be taken than there is.
    """
    main = [stage.id for stage in recipe.stages]
    if after_id not in main:
        raise RecipeError(say("a branch parts from the main make; choose a stage of it"))
    branch_id = free_id(recipe, _plain(name) or of)
    index = main.index(after_id)
    if of == "curd":
        return _twin(recipe, index, branch_id, share_pct, name)
    made = _whey_cheese(recipe, branch_id) if of == "whey" else (_cream(recipe, branch_id), ())
    stages, additions = made
    return add(
        recipe,
        Branch(
            id=branch_id, name=name, after=after_id, of=of, share_pct=share_pct, stages=stages, additions=additions,
            form=_small_form() if of == "whey" else None,
        ),
    )  # fmt: skip


def _plain(name: str) -> str:
    """A name as an id: small letters, digits and dashes."""
    kept = "".join(sign if sign.isalnum() and sign.isascii() else "-" for sign in name.lower())
    return "-".join(word for word in kept.split("-") if word)


def _twin(recipe: Recipe, index: int, branch_id: str, share_pct: float, name: str) -> Recipe:
    share = share_pct / 100.0
    following = recipe.stages[index + 1 :]
    if not any(stage.kind != "room" for stage in following):
        following = (new_stage(recipe, "turn"), *following)
    own = {stage.id: f"{branch_id}-{stage.id}" for stage in following}
    twin = Branch(
        id=branch_id,
        name=name,
        after=recipe.stages[index].id,
        of="curd",
        share_pct=share_pct,
        stages=tuple(stage.but(id=own[stage.id]) for stage in following),
        starters=tuple(_moved(one, own, branch_id, share) for one in recipe.starters if one.at in own),
        additions=tuple(_moved(one, own, branch_id, share) for one in recipe.additions if one.at in own),
        form=recipe.form,
        coat=recipe.coat,
    )
    left = 1.0 - share
    if left <= 0.0:
        return add(recipe, twin)
    starters = tuple(_scaled(one, left) if one.at in own else one for one in recipe.starters)
    additions = tuple(_scaled(one, left) if one.at in own else one for one in recipe.additions)
    form = recipe.form
    if form is not None and form.count > 1:
        there = min(max(round(form.count * share), 1), form.count - 1)
        twin, form = twin.but(form=form.but(count=there)), form.but(count=form.count - there)
    return add(edit_recipe(recipe, starters=starters, additions=additions, form=form), twin)


def _moved(one: G, own: dict[str, str], branch_id: str, share: float) -> G:
    return _scaled(one.but(id=f"{branch_id}-{one.id}", at=own[one.at]), share)


def _scaled(one: G, share: float) -> G:
    """The same dose for a share of the milk: what is said by mass or volume shrinks with it."""
    amounts = {name: getattr(one, name, None) for name in ("mass_kg", "volume_l")}
    return one.but(**{name: value * share for name, value in amounts.items() if value is not None})


def _whey_cheese(recipe: Recipe, branch_id: str) -> tuple[tuple[AnyStage, ...], tuple[Addition, ...]]:
    heat, curdle, hang = (f"{branch_id}-{what}" for what in ("heat", "curdle", "drain"))
    stages = (
        new_stage(recipe, "heat", id=heat, temperature_c=WHEY_HEAT_C, end=after(50.0)),
        new_stage(recipe, "acid_heat", id=curdle, end=after(15.0)),
        new_stage(recipe, "hang", id=hang, end=after(120.0)),
    )
    acid = Addition(id=f"{branch_id}-acid", what="acid", acid="citric", at=curdle, mass_pct=WHEY_ACID_PCT)
    return stages, (acid,)


def _cream(recipe: Recipe, branch_id: str) -> tuple[AnyStage, ...]:
    made = new_stage(recipe, "ripen", id=f"{branch_id}-ripen", temperature_c=CREAM_C, end=after(CREAM_MIN))
    return (made,)


def _small_form() -> Form:
    return Form(diameter_mm=120.0, height_mm=80.0, count=1)
