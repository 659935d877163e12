"""Standardising milk: to a protein:fat or casein:fat ratio by skim, by cream taken off or by cream put in.

Balances by mass (Hill, University of Guelph, standardising for cheese; Pearson's square as in the FAO village-dairy
text). What cream and skim hold follows from the milk's own serum unless the maker says otherwise.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any, Literal

from designer.language import say, word
from designer.recipe.document import MilkSource, Recipe
from designer.recipe.edit import edit_recipe, free_id
from designer.recipe.error import RecipeError
from designer.recipe.milk import blend, density_walstra, milk_label, source_milk
from designer.recipe.reading import checked

Way = Literal["skim", "cream off", "cream on"]
CREAM_FAT_PCT = 40.0
SKIM_FAT_PCT = 0.06
"""Fat of separated cream and skim [%], as in the worked examples; the separator's own figures may be given instead."""
SKIM_SOLIDS_LIMIT_PCT = 11.0
"""Most solids-not-fat that cheese milk should hold (Hill, University of Guelph: normal is about 9)."""


def pearson_parts(high_pct: float, low_pct: float, target_pct: float) -> tuple[float, float]:
    """Parts of the richer and of the leaner milk that mix to a target; ValueError if it lies outside the two."""
    if not low_pct <= target_pct <= high_pct:
        raise ValueError(
            say(
                "No mix of {low_pct} % and {high_pct} % gives {target_pct} %.",
                low_pct=low_pct,
                high_pct=high_pct,
                target_pct=target_pct,
            )
        )
    return target_pct - low_pct, high_pct - target_pct


def skim_to_add_kg(
    fat_pct: float, protein_pct: float, skim_fat_pct: float, skim_protein_pct: float, ratio: float
) -> float:
    """Skim milk [kg per kg milk] that brings protein : fat to `ratio`; the same with casein for both proteins."""
    return (ratio * fat_pct - protein_pct) / (skim_protein_pct - ratio * skim_fat_pct)


def cream_to_remove_kg(
    fat_pct: float, protein_pct: float, cream_fat_pct: float, cream_protein_pct: float, ratio: float
) -> float:
    """Cream [kg per kg milk] to take off that brings protein : fat to `ratio`; negative: cream to put in."""
    return (ratio * fat_pct - protein_pct) / (ratio * cream_fat_pct - cream_protein_pct)


RATIOS = (0.3, 5.0)
"""Protein to fat that milk can be brought to."""


@dataclass(frozen=True, slots=True)
class Target:
    """A ratio asked for: protein (or casein) over fat, by mass."""

    ratio: float
    of: Literal["protein", "casein"] = "protein"

    @classmethod
    def within(cls, ratio: float) -> Target:
        """Protein to fat as near to that as milk can be made."""
        return cls(min(max(ratio, RATIOS[0]), RATIOS[1]))


@dataclass(frozen=True, slots=True)
class Liquid:
    """Cream or skim: fat and total protein [g/100 g]."""

    fat_pct: float
    protein_pct: float


@dataclass(frozen=True, slots=True)
class Offer:
    """One way to reach the target: how much of what, and the milk it gives.

    `kg` for the vat of the recipe, `kg_per_100kg` of its milk; `fat_pct`, `protein_pct` and `casein_pct` after.
    """

    way: Way
    kg: float
    kg_per_100kg: float
    liquid: Liquid
    fat_pct: float
    protein_pct: float
    casein_pct: float
    sentence: str


def wanted_fat_pct(recipe: Recipe, target: Target) -> float:
    """Fat the milk would hold at the target if only fat came or went [%]."""
    return _holds(recipe)[target.of] / target.ratio


def offers(
    recipe: Recipe, target: Target, *, cream: Liquid | None = None, skim: Liquid | None = None
) -> tuple[Offer, ...]:
    """The ways to bring the milk of a recipe to a target; none where it stands there already.

    Milk too rich: skim, or cream off. Milk too lean: cream on. Raises RecipeError for a ratio that can't be.
    """
    if not 0.3 <= target.ratio <= 5.0:
        raise RecipeError(
            say(
                "{of} to fat lies between 0.3 and 5 in cheese milk, not at {ratio:g}",
                of=word(target.of, "field"),
                ratio=target.ratio,
            ),
            "milk",
        )
    held = _holds(recipe)
    fat, protein = held["fat"], held["protein"]
    if fat > 0.0 and abs(held[target.of] / fat - target.ratio) < 5e-4:
        return ()
    serum = protein / (1.0 - fat / 100.0)
    cream = cream or Liquid(CREAM_FAT_PCT, serum * (1.0 - CREAM_FAT_PCT / 100.0))
    skim = skim or Liquid(SKIM_FAT_PCT, serum * (1.0 - SKIM_FAT_PCT / 100.0))
    share = held[target.of] / protein
    off = cream_to_remove_kg(fat, held[target.of], cream.fat_pct, cream.protein_pct * share, target.ratio)
    if off < 0.0:
        return (_offer(held, "cream on", -off, cream),)
    on = skim_to_add_kg(fat, held[target.of], skim.fat_pct, skim.protein_pct * share, target.ratio)
    return _offer(held, "cream off", off, cream), _offer(held, "skim", on, skim)


def _holds(recipe: Recipe) -> Mapping[str, float]:
    """Mass [kg] and composition [g/100 g] of the blended milk."""
    milk = blend(recipe)
    return {
        "kg": milk.mass_kg,
        "fat": milk.fat / 10.0,
        "protein": milk.protein / 10.0,
        "casein": milk.casein / 10.0,
        "solids_not_fat": (milk.protein + milk.lactose + milk.ash) / 10.0,
    }


def _offer(held: Mapping[str, float], way: Way, share: float, liquid: Liquid) -> Offer:
    """An offer of `share` kg liquid per kg milk."""
    sign = -1.0 if way == "cream off" else 1.0
    after = 1.0 + sign * share
    fat = (held["fat"] + sign * share * liquid.fat_pct) / after
    protein = (held["protein"] + sign * share * liquid.protein_pct) / after
    casein = protein * held["casein"] / held["protein"]
    verb = say("remove") if way == "cream off" else say("add")
    what = say("skim") if way == "skim" else say("cream")
    sentence = say(
        "Per 100 kg milk {verb} {share:.2f} kg {what} ({fat_pct:g} % fat, {protein_pct:.2f} % "
        "protein): fat {fat:.2f} %, protein {protein:.2f} %, protein to fat {protein2:.2f}.",
        verb=verb,
        share=100.0 * share,
        what=what,
        fat_pct=liquid.fat_pct,
        protein_pct=liquid.protein_pct,
        fat=fat,
        protein=protein,
        protein2=protein / fat,
    )
    if way == "skim" and held["solids_not_fat"] > SKIM_SOLIDS_LIMIT_PCT:
        sentence += say(
            " It holds {solids_not_fat:.1f} % solids not fat; above {skim_solids_limit_pct:g} % is much.",
            solids_not_fat=held["solids_not_fat"],
            skim_solids_limit_pct=SKIM_SOLIDS_LIMIT_PCT,
        )
    return Offer(way, share * held["kg"], 100.0 * share, liquid, fat, protein, casein, sentence)


def standardise(recipe: Recipe, offer: Offer) -> Recipe:
    """The recipe with the offer carried out on its milk. Raises RecipeError where a milk has not the fat to give."""
    if offer.way == "skim":
        return edit_recipe(recipe, milks=(*recipe.milks, _skim_source(recipe, offer)))
    sign = -1.0 if offer.way == "cream off" else 1.0
    share = sign * offer.kg_per_100kg / 100.0
    mixed = tuple(_creamed(recipe, index, share, offer.liquid) for index in range(len(recipe.milks)))
    return edit_recipe(recipe, milks=mixed)


def _skim_source(recipe: Recipe, offer: Offer) -> MilkSource:
    """Skim as a milk of its own, of the kind of the milk there is most of."""
    index = max(range(len(recipe.milks)), key=lambda i: source_milk(recipe.milks[i]).mass_kg)
    like = recipe.milks[index]
    milk = source_milk(like, milk_label(recipe, index))
    serum = (1.0 - offer.liquid.fat_pct / 100.0) / (1.0 - milk.fat / 1000.0)
    data = dict(like) | {
        "id": free_id(recipe, "skim"),
        "name": say("skim milk"),
        "volume_l": None,
        "mass_kg": offer.kg,
        "fat_pct": offer.liquid.fat_pct,
        "protein_pct": offer.liquid.protein_pct,
        "casein_pct": offer.liquid.protein_pct * milk.casein / milk.protein,
        "lactose_pct": milk.lactose / 10.0 * serum,
    }
    return _built(data, say("skim milk"))


def _creamed(recipe: Recipe, index: int, share: float, cream: Liquid) -> MilkSource:
    """One milk with `share` kg cream put in per kg (negative: taken off)."""
    source, where = recipe.milks[index], milk_label(recipe, index)
    milk = source_milk(source, where)
    fat, protein = milk.fat / 10.0, milk.protein / 10.0
    after = 1.0 + share
    fat_after = (fat + share * cream.fat_pct) / after
    if fat_after < 0.0:
        raise RecipeError(say("so much cream can't be taken off: it holds {fat:g} % fat", fat=fat), where)
    protein_after = (protein + share * cream.protein_pct) / after
    serum = (1.0 - cream.fat_pct / 100.0) / (1.0 - fat / 100.0)
    lactose_after = milk.lactose / 10.0 * (1.0 + share * serum) / after
    mass = milk.mass_kg * after
    data = dict(source) | {
        "fat_pct": fat_after,
        "protein_pct": protein_after,
        "casein_pct": protein_after * milk.casein / milk.protein,
        "lactose_pct": lactose_after,
        "mass_kg": mass if source.mass_kg is not None else None,
    }
    if source.volume_l is not None:
        data["volume_l"] = mass / density_walstra(fat_after, protein_after, lactose_after, milk.ash / 10.0)
    return _built(data, where)


def _built(data: Mapping[str, Any], where: str) -> MilkSource:
    source: MilkSource = checked(lambda: MilkSource.model_validate(data), MilkSource, where)
    return source


@cache
def _ratios() -> Mapping[str, Any]:
    return tomllib.loads(files("designer.recipe").joinpath("ratios.toml").read_text(encoding="utf-8"))


def usual_source() -> tuple[str, str, str]:
    """Where the usual ratios are from, how we have them, and what to know about them; the note as marked for `word`."""
    table = _ratios()
    return str(table["source"]), str(table["have"]), str(table["note"])


def usual_target(style: str) -> Target | None:
    """The protein:fat usual for a style's milk, where the table has one."""
    found = _ratios()["protein_to_fat"].get(style)
    return None if found is None else Target(float(found))
