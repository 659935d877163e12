"""Milk in the vat: every source with what its breed or species adds, blended by mass."""

from __future__ import annotations

from designer.language import say
from designer.recipe import schedule
from designer.recipe.document import MilkSource, Recipe
from designer.recipe.error import RecipeError
from designer.recipe.field import choice
from designer.recipe.presets import breeds, milk_of, presets, shifted


def density_walstra(fat: float, protein: float, lactose: float, ash: float) -> float:
    """Density at 20 °C [kg/L] from shares [g/100 g] by Walstra's component rule; good to 0.4 kg/m³ for milk."""
    rho = presets()["density"]
    water = 100.0 - fat - protein - lactose - ash
    volume = (
        fat / rho["fat"] + protein / rho["protein"] + lactose / rho["lactose"] + ash / rho["ash"] + water / rho["water"]
    )
    return float(100.0 / volume)


def source_milk(source: MilkSource, where: str = "milk") -> schedule.Milk:
    """One source as milk [g/kg], its gaps filled from breed or species, shifted by lactation and season.

    Raises RecipeError for milk that is withheld, an unknown breed, or more solids than there can be.
    """
    if source.withheld:
        raise RecipeError(say("milk withheld because of medicine can't be used; take it out of the recipe"), where)
    try:
        usual = milk_of(source.species, source.breed)
    except KeyError:
        known = ", ".join(breeds(source.species))
        raise RecipeError(
            say(
                "there is no preset for the breed “{breed}”; of {species} there are: {known}",
                breed=source.breed,
                species=choice(source.species),
                known=known or say("none"),
            ),
            where,
        ) from None
    except ValueError as error:
        raise RecipeError(str(error), where) from None
    preset = shifted(usual, _shifts(source))
    fat = preset["fat"] if source.fat_pct is None else source.fat_pct
    if source.protein_pct is not None:
        protein = source.protein_pct
    elif source.casein_pct is not None:
        protein = source.casein_pct / preset["casein_share"]
    else:
        protein = preset["protein"]
    casein = protein * preset["casein_share"] if source.casein_pct is None else source.casein_pct
    if casein >= protein:
        raise RecipeError(
            say(
                "casein ({casein:g} %) is a part of the protein ({protein:g} %) and can't be as much",
                casein=casein,
                protein=protein,
            ),
            where,
        )
    lactose = preset["lactose"] if source.lactose_pct is None else source.lactose_pct
    solids = fat + protein + lactose + preset["ash"]
    if not 6.0 <= solids <= 30.0:
        raise RecipeError(
            say("milk has between 6 and 30 % solids; this one would have {solids:.1f} %", solids=solids), where
        )
    density = density_walstra(fat, protein, lactose, preset["ash"])
    mass = source.mass_kg if source.mass_kg is not None else (source.volume_l or 0.0) * density
    return schedule.Milk(
        mass_kg=mass,
        density_kg_l=density,
        fat=10.0 * fat,
        casein=10.0 * casein,
        whey_protein=10.0 * (protein - casein),
        lactose=10.0 * lactose,
        ash=10.0 * preset["ash"],
        ph=preset["ph"] if source.ph is None else source.ph,
        species=source.species,
        # Most calcium rides on the casein, so it goes with it.
        calcium=10.0 * usual["calcium"] * casein / (usual["protein"] * usual["casein_share"]),
        heat_denatured=float(presets()["heat_denatured"][source.heat]),
        age_cold_h=source.age_h,
        temperature_c=float(presets()["milk"]["temperature"]) if source.temperature_c is None else source.temperature_c,
    )


def _shifts(source: MilkSource) -> tuple[str, ...]:
    """The shifts of presets.toml that what a source leaves out takes."""
    late = ("late_lactation",) if source.late_lactation else ()
    return late if source.season == "any" else (*late, source.season)


def blend(recipe: Recipe) -> schedule.Milk:
    """All milk of the recipe as one, by mass balance; volumes add at 20 °C, the species is that of the greater part.

    Raises RecipeError naming the milk that can't be used.
    """
    milks = [source_milk(source, milk_label(recipe, index)) for index, source in enumerate(recipe.milks)]
    if len(milks) == 1:
        return milks[0]
    mass = sum(milk.mass_kg for milk in milks)

    def mean(name: str) -> float:
        return float(sum(milk.mass_kg * getattr(milk, name) for milk in milks) / mass)

    by_species: dict[str, float] = {}
    for milk in milks:
        by_species[milk.species] = by_species.get(milk.species, 0.0) + milk.mass_kg
    means = (
        "fat",
        "casein",
        "whey_protein",
        "lactose",
        "ash",
        "ph",
        "calcium",
        "heat_denatured",
        "age_cold_h",
        "temperature_c",
    )
    return schedule.Milk(
        mass_kg=mass,
        density_kg_l=mass / sum(milk.mass_kg / milk.density_kg_l for milk in milks),
        species=max(by_species, key=lambda species: by_species[species]),
        shares=tuple((species, kg / mass) for species, kg in by_species.items()) if len(by_species) > 1 else (),
        **{name: mean(name) for name in means},
    )


def milk_label(recipe: Recipe, index: int) -> str:
    """How errors name a milk: 'milk 1, “evening milk”'."""
    source = recipe.milks[index]
    return say("milk {index}, “{name}”", index=index + 1, name=source.name or source.id)
