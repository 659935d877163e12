"""What goes into the vat: milk, starters, and what is added to them, each with exactly one way of saying how much.

Parts of the document (`document`): frozen plain data in base units, like the whole of it.
"""

from __future__ import annotations

from typing import Literal, Self, get_args

from pydantic import model_validator

from designer.language import say
from designer.recipe.field import Model, quantity, words

Species = Literal["cow", "goat", "sheep", "buffalo"]
SPECIES: tuple[Species, ...] = get_args(Species)
Heat = Literal["raw", "thermised", "pasteurised", "high_heat"]
StarterKind = Literal[
    "mesophilic", "aroma", "thermophilic", "thermophilic_rods", "alpine", "mixed", "whey", "yoghurt", "mother"
]
What = Literal["coagulant", "calcium_chloride", "lipase", "ripening_culture", "colour", "herbs", "acid", "salt"]
Coagulant = Literal["calf", "chymosin", "microbial", "camel", "plant"]
Acid = Literal["lactic", "citric", "acetic"]

Season = Literal["any", "spring", "summer", "autumn", "winter"]

ID_HELP = "Short stable name; comments and readings hang on it."


def _one_of(part_name: str, **given: float | None) -> None:
    """Raises ValueError unless exactly one of the amounts is given."""
    said = [name for name, value in given.items() if value is not None]
    if len(said) != 1:
        keys = ", ".join(given)
        raise ValueError(
            say("{part_name} takes exactly one of {keys}; ", part_name=part_name, keys=keys)
            + (say("{said} are given", said=" and ".join(said)) if said else say("none is given"))
        )


class MilkSource(Model):
    """One milk in the vat. Composition left out comes from the preset of its breed, else of its species."""

    id: str = words(..., ID_HELP)
    name: str = words("", "What the maker calls it.")
    species: Species = words("cow", "Animal.")
    breed: str = words("", "Preset of the breed; empty takes the average of the species.", shape="choice")
    volume_l: float | None = quantity(
        None, "volume", "volume", low=0.01, high=100_000.0, step=1.0, help="Milk by volume at 20 °C."
    )
    mass_kg: float | None = quantity(None, "mass", "mass", low=0.01, high=100_000.0, step=1.0, help="Milk by mass.")
    fat_pct: float | None = quantity(
        None, "fat", "percent", low=0.0, high=15.0, step=0.1, help="Fat, g per 100 g.", usual=(None, 10.0)
    )
    protein_pct: float | None = quantity(
        None,
        "protein",
        "percent",
        low=1.0,
        high=10.0,
        step=0.1,
        help="Total protein (nitrogen × 6.38), g per 100 g.",
        usual=(2.4, 7.5),
    )
    casein_pct: float | None = quantity(
        None, "casein", "percent", low=0.5, high=8.0, step=0.1, help="Casein, g per 100 g."
    )
    lactose_pct: float | None = quantity(
        None, "lactose", "percent", low=0.0, high=7.0, step=0.1, help="Lactose, g per 100 g."
    )
    ph: float | None = quantity(
        None, "ph", "ph", low=6.0, high=7.2, step=0.05, label="pH", help="pH at 20 °C as delivered."
    )
    temperature_c: float | None = quantity(
        None, "temperature", "temperature", low=0.0, high=45.0, step=1.0, help="Temperature as it goes into the vat."
    )
    age_h: float = quantity(
        0.0, "age", "hours", low=0.0, high=168.0, step=6.0, help="Time kept cold since milking.", usual=(None, 96.0)
    )
    heat: Heat = words("pasteurised", "Heat treatment.", label="heat treatment")
    heat_c: float | None = quantity(
        None, "heat_temperature", "temperature", low=50.0, high=145.0, step=1.0, help="Heated to."
    )
    heat_min: float | None = quantity(None, "heat_length", "duration", low=0.01, high=120.0, step=1.0, help="Held for.")
    frozen: bool = words(
        False, "Has been frozen. Kept with the recipe; no law of the forecast answers to it.", shape="yes"
    )
    late_lactation: bool = words(
        False, "From late lactation: what is not given is richer, poorer in sugar and sweeter of pH.", shape="yes"
    )
    season: Season = words("any", "Season of the milk; what is not given shifts with it.")
    withheld: bool = words(False, "Withheld because of medicine: can't be used.", shape="yes")

    @model_validator(mode="after")
    def _whole(self) -> Self:
        _one_of("milk", volume=self.volume_l, mass=self.mass_kg)
        if self.casein_pct is not None and self.protein_pct is not None and self.casein_pct >= self.protein_pct:
            raise ValueError(say("casein is a part of the protein and can't be as much"))
        return self


class Starter(Model):
    """A culture that makes acid, with exactly one way of saying how much."""

    id: str = words(..., ID_HELP)
    name: str = words("", "What the maker calls it.")
    kind: StarterKind = words("mesophilic", "Kind of culture.")
    at: str = words("", "Stage it goes in at; empty: the first that ripens, else the first.")
    after_min: float = quantity(
        0.0, "after", "duration", low=0.0, high=2880.0, step=5.0, help="Minutes into that stage."
    )
    bulk_pct: float | None = quantity(
        None,
        "bulk",
        "percent",
        low=0.001,
        high=20.0,
        step=0.1,
        label="bulk starter",
        help="Liquid starter, share of the milk.",
        source="0.5-3 %: published makes",
        usual=(0.05, 6.0),
    )
    mass_kg: float | None = quantity(
        None, "mass", "small_mass", low=1e-6, high=100.0, step=0.001, help="Mass of freeze-dried or frozen culture."
    )
    potency_cfu_g: float | None = quantity(
        None,
        "potency",
        "potency",
        low=1e6,
        high=1e14,
        step=1e10,
        help="Living cells per gram, from the pack.",
        source="1e11-1e13: concentrates, published",
        usual=(1e9, 5e13),
        usual_where="on a pack",
    )
    cells_per_ml: float | None = quantity(
        None, "cells", "cells", low=1.0, high=1e9, step=1e6, help="Cells given to each mL of milk."
    )
    units: float | None = quantity(
        None, "units", "units", low=0.001, high=1e6, step=1.0, label="activity units", help="Activity units given."
    )
    units_per_100l: float = quantity(
        10.0,
        "units_per_100l",
        "units",
        low=0.01,
        high=1e4,
        step=0.5,
        label="units for 100 L",
        help="Units of this pack that do as 1 % bulk starter in 100 L.",
        source="10 (another maker 6.5): common practice",
        usual=(1.0, 50.0),
    )
    pack_units: float | None = quantity(
        None, "pack", "units", low=0.01, high=1e6, step=5.0, label="units in the pack", help="Activity units of a pack."
    )
    pack_kg: float | None = quantity(
        None, "pack_mass", "small_mass", low=1e-6, high=50.0, step=0.001, label="pack weighs", help="Mass of that pack."
    )
    acidity_pct: float | None = quantity(
        None, "acidity", "acidity", low=0.1, high=3.0, step=0.05, help="Titratable acidity of a liquid starter."
    )
    direct: bool = words(False, "Freeze-dried or frozen, straight into the vat: longer to wake.", shape="yes")
    lot: str = words("", "Lot.")

    @model_validator(mode="after")
    def _whole(self) -> Self:
        _one_of(say("a starter"), bulk=self.bulk_pct, mass=self.mass_kg, cells=self.cells_per_ml, units=self.units)
        if self.mass_kg is not None and self.potency_cfu_g is None:
            raise ValueError(say('a starter by mass needs the potency of its pack, for example potency = "1e11 CFU/g"'))
        return self

    @property
    def grams(self) -> float | None:
        """Dose by mass [g]."""
        return None if self.mass_kg is None else self.mass_kg * 1000.0


class Addition(Model):
    """Something timed that goes in: coagulant, calcium chloride, acid, salt, cultures, colour, herbs, lipase."""

    id: str = words(..., ID_HELP)
    what: What = words(..., "What goes in.")
    name: str = words("", "What the maker calls it.")
    at: str = words(..., "Stage it goes in at.")
    after_min: float = quantity(
        0.0, "after", "duration", low=0.0, high=2880.0, step=1.0, help="Minutes into that stage."
    )
    mass_kg: float | None = quantity(
        None, "mass", "small_mass", low=1e-7, high=1000.0, step=0.001, help="Amount by mass."
    )
    volume_l: float | None = quantity(
        None, "volume", "volume", low=1e-6, high=1000.0, step=0.001, help="Amount by volume."
    )
    mass_pct: float | None = quantity(
        None, "share", "percent", low=1e-5, high=20.0, step=0.01, help="Amount as share of the milk's mass."
    )
    coagulant: Coagulant | None = words(None, "Kind of coagulant.", key="kind", shape="choice")
    strength_imcu_ml: float | None = quantity(
        None,
        "strength",
        "strength",
        low=1.0,
        high=5000.0,
        step=10.0,
        help="Strength on the bottle or tub, IMCU per mL or g.",
        usual=(50.0, 2500.0),
        usual_where="on a bottle (liquids 50-650, powders 1000-2300)",
    )
    strength_pct: float | None = quantity(
        None,
        "solution",
        "percent",
        low=0.5,
        high=100.0,
        step=1.0,
        label="solution",
        help="Strength of the solution by weight; dry is 100 %.",
    )
    acid: Acid | None = words(None, "Which acid.", shape="choice")
    age_months: float = quantity(
        0.0, "age", "months", low=0.0, high=60.0, step=1.0, help="Since the coagulant was made.", usual=(None, 30.0)
    )
    lot: str = words("", "Lot.")

    @model_validator(mode="after")
    def _whole(self) -> Self:
        _one_of(self.what.replace("_", " "), mass=self.mass_kg, volume=self.volume_l, share=self.mass_pct)
        if self.what == "coagulant":
            if self.strength_imcu_ml is None:
                raise ValueError(
                    say(
                        'a coagulant needs its strength in IMCU/mL (on the bottle), for example strength = "200 '
                        'IMCU/mL"'
                    )
                )
        elif self.coagulant is not None or self.strength_imcu_ml is not None or self.age_months:
            raise ValueError(
                say("kind, strength and age belong to a coagulant, not to {what}", what=self.what.replace("_", " "))
            )
        if self.what == "acid" and self.acid is None:
            raise ValueError(say("say which acid: lactic, citric or acetic"))
        if self.what != "acid" and self.acid is not None:
            raise ValueError(say('“acid” names which acid and belongs to what = "acid"'))
        if self.strength_pct is not None and self.what not in ("acid", "calcium_chloride"):
            raise ValueError(say("“solution” belongs to an acid or to calcium chloride"))
        return self
