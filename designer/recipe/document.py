"""The recipe document: what the maker means, as frozen plain data in base units.

Milk, starters, additions, form, coat, vat, stages and branches; `file` reads and writes it, `edit` changes it,
`lower` turns it into a Schedule.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal, Self

from pydantic import model_validator

from designer.language import say
from designer.recipe.error import RecipeError as RecipeError
from designer.recipe.field import Model, part, quantity, words
from designer.recipe.stages.kinds import AnyStage
from designer.recipe.vat import Vat as Vat

FORMAT = 1

Species = Literal["cow", "goat", "sheep", "buffalo"]
Heat = Literal["raw", "thermised", "pasteurised", "high_heat"]
StarterKind = Literal[
    "mesophilic", "aroma", "thermophilic", "thermophilic_rods", "alpine", "mixed", "whey", "yoghurt", "mother"
]
What = Literal["coagulant", "calcium_chloride", "lipase", "ripening_culture", "colour", "herbs", "acid", "salt"]
Coagulant = Literal["calf", "chymosin", "microbial", "camel", "plant"]
Acid = Literal["lactic", "citric", "acetic"]
CoatKind = Literal["natural", "bloomy", "washed", "cloth", "wax", "coating", "bag", "leaves", "ash", "brine", "none"]
Shape = Literal["cylinder", "block", "loaf", "pyramid"]

_ID = "Short stable name; comments and readings hang on it."


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

    id: str = words(..., _ID)
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
    frozen: bool = words(False, "Has been frozen.", shape="yes")
    late_lactation: bool = words(False, "From late lactation.", shape="yes")
    withheld: bool = words(False, "Withheld because of medicine: can't be used.", shape="yes")

    @model_validator(mode="after")
    def _whole(self) -> Self:
        _one_of("milk", volume=self.volume_l, mass=self.mass_kg)
        if self.casein_pct is not None and self.protein_pct is not None and self.casein_pct >= self.protein_pct:
            raise ValueError(say("casein is a part of the protein and can't be as much"))
        return self


class Starter(Model):
    """A culture that makes acid, with exactly one way of saying how much."""

    id: str = words(..., _ID)
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

    id: str = words(..., _ID)
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


class Form(Model):
    """The cheese's shape and how many; height is that of the finished cheese."""

    shape: Shape = words("cylinder", "Shape of one cheese.")
    diameter_mm: float | None = quantity(
        None, "diameter", "length", low=20.0, high=1500.0, step=5.0, help="Of a round cheese.", usual=(40.0, 700.0)
    )
    length_mm: float | None = quantity(
        None, "length", "length", low=20.0, high=1500.0, step=5.0, help="Of a block or loaf."
    )
    width_mm: float | None = quantity(
        None, "width", "length", low=20.0, high=1500.0, step=5.0, help="Of a block, loaf or pyramid's foot."
    )
    height_mm: float = quantity(
        ...,
        "height",
        "length",
        low=10.0,
        high=1000.0,
        step=5.0,
        help="Height of the finished cheese.",
        usual=(15.0, 300.0),
    )
    count: int = words(1, "How many cheeses of one make.", shape="number")
    follower_diameter_mm: float | None = quantity(
        None,
        "follower",
        "length",
        low=20.0,
        high=1500.0,
        step=5.0,
        label="follower",
        help="Diameter of the plate that presses; else the cheese's face.",
    )
    lever: float = quantity(
        1.0,
        "lever",
        "ratio",
        low=0.5,
        high=30.0,
        step=0.5,
        help="Force on the cheese over the load hung up.",
        usual=(1.0, 20.0),
    )

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if not 1 <= self.count <= 10_000:
            raise ValueError(say("the number of cheeses lies between 1 and 10000, not at {count}", count=self.count))
        if self.shape == "cylinder" and self.diameter_mm is None:
            raise ValueError(say("a round form needs its diameter"))
        if self.shape in ("block", "loaf") and (self.length_mm is None or self.width_mm is None):
            raise ValueError(say("a {shape} needs its length and width", shape=self.shape))
        if self.shape == "pyramid" and self.width_mm is None:
            raise ValueError(say("a pyramid needs the width of its foot"))
        return self


class Coat(Model):
    """Rind or coat."""

    kind: CoatKind = words("natural", "Rind or coat.")
    from_day: float | None = quantity(
        None, "from", "days", low=0.0, high=400.0, step=1.0, help="Put on this day after the make."
    )
    note: str = words("", "A remark for the plan.")


class Branch(Model):
    """A share of curd, whey or cream that takes its own stages to its own cheese."""

    id: str = words(..., _ID)
    name: str = words("", "What the maker calls it.")
    after: str = words(..., "Stage of the main make after which it parts.")
    share_pct: float = quantity(
        100.0, "share", "percent", low=0.1, high=100.0, step=5.0, help="Share that goes this way."
    )
    of: Literal["curd", "whey", "cream"] = words("curd", "What goes this way.")
    style: str = words("", "Style it is checked against; empty: that of the recipe, for curd.", shape="choice")
    starters: tuple[Starter, ...] = part((), "starter", "tables", "Starters of this branch.")
    additions: tuple[Addition, ...] = part((), "addition", "tables", "Additions of this branch.")
    form: Form | None = part(None, "form", "table", "Form of this branch.")
    coat: Coat | None = part(None, "coat", "table", "Coat of this branch.")
    stages: tuple[AnyStage, ...] = part((), "stage", "tables", "Stages of this branch.")

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if not self.stages:
            raise ValueError(say("a branch needs at least one stage"))
        return self


class Recipe(Model):
    """A whole recipe. Every id is unique in it; starters and additions name a stage of their own make."""

    format: int = words(FORMAT, "Format of the file.", shape="number")
    name: str = words(..., "Name of the cheese.")
    maker: str = words("", "Who makes it.")
    place: str = words("", "Dairy.")
    style: str = words("", "Style it is checked against, e.g. cheddar.", shape="choice")
    notes: str = words("", "Remarks.")
    start_clock_min: float | None = quantity(
        None,
        "start",
        "clock",
        low=0.0,
        high=1439.0,
        step=15.0,
        label="start",
        help="Time of day when the milk is in the vat.",
    )
    room_c: float = quantity(
        20.0, "room", "temperature", low=-2.0, high=45.0, step=1.0, label="room", help="Temperature of the make room."
    )
    milks: tuple[MilkSource, ...] = part((), "milk", "tables", "Milk in the vat.")
    starters: tuple[Starter, ...] = part((), "starter", "tables", "Starters.")
    additions: tuple[Addition, ...] = part((), "addition", "tables", "Additions.")
    form: Form | None = part(None, "form", "table", "Form.")
    coat: Coat | None = part(None, "coat", "table", "Rind or coat.")
    vat: Vat | None = part(None, "vat", "table", "Vat.")
    stages: tuple[AnyStage, ...] = part((), "stage", "tables", "Stages of the make, in order.")
    branches: tuple[Branch, ...] = part((), "branch", "tables", "Branches.")

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if not self.name.strip():
            raise ValueError(say("the recipe needs a name"))
        if not self.milks:
            raise ValueError(say("the recipe has no milk; add a [[milk]]"))
        if not self.stages:
            raise ValueError(say("the recipe has no stage; add a [[stage]]"))
        self._unique_ids()
        for lane in self.lanes():
            place = say("branch “{name}”: ", name=lane.name or lane.id) if isinstance(lane, Branch) else ""
            own = {stage.id for stage in lane.stages}
            starters_and_additions: tuple[Starter | Addition, ...] = (*lane.starters, *lane.additions)
            for given in starters_and_additions:
                if given.at not in own and not (given.at == "" and isinstance(given, Starter)):
                    raise ValueError(
                        say(
                            "{place}“{name}” goes in at the stage “{at}”, which there is not",
                            place=place,
                            name=given.name or given.id,
                            at=given.at,
                        )
                    )
        for branch in self.branches:
            if branch.after not in {stage.id for stage in self.stages}:
                label = branch.name or branch.id
                raise ValueError(
                    say(
                        "the branch “{label}” parts after the stage “{after}”, which there is not",
                        label=label,
                        after=branch.after,
                    )
                )
        for after in {branch.after for branch in self.branches}:
            for of in ("curd", "whey", "cream"):
                share = sum(branch.share_pct for branch in self.branches if branch.after == after and branch.of == of)
                if share > 100.0 + 1e-9:
                    raise ValueError(
                        say(
                            "branches take {share:g} % of the {of} after “{after}”, more than there is",
                            share=share,
                            of=of,
                            after=after,
                        )
                    )
        return self

    def _unique_ids(self) -> None:
        seen: set[str] = set()
        for each in self.ids():
            if not each.strip():
                raise ValueError(say("an id is empty"))
            if each in seen:
                raise ValueError(say("the id “{each}” stands twice; every id is used once in a recipe", each=each))
            seen.add(each)

    def lanes(self) -> tuple[Recipe | Branch, ...]:
        """The main make and the branches."""
        return (self, *self.branches)

    def lane(self, stage_id: str) -> Recipe | Branch:
        """The lane that holds a stage; KeyError if there is none."""
        for lane in self.lanes():
            if any(stage.id == stage_id for stage in lane.stages):
                return lane
        raise KeyError(stage_id)

    def branch(self, branch_id: str) -> Branch:
        """The branch of that id; KeyError if there is none."""
        for branch in self.branches:
            if branch.id == branch_id:
                return branch
        raise KeyError(branch_id)

    def style_of(self, branch_id: str | None) -> str:
        """Key of the style a lane is checked against (None: the main make); "" where it is checked against none."""
        if branch_id is None:
            return self.style
        branch = self.branch(branch_id)
        return branch.style or (self.style if branch.of == "curd" else "")

    def ids(self) -> Iterator[str]:
        """Every id of the recipe, in the order of the document."""
        for source in self.milks:
            yield source.id
        for lane in self.lanes():
            if isinstance(lane, Branch):
                yield lane.id
            yield from (starter.id for starter in lane.starters)
            yield from (addition.id for addition in lane.additions)
            yield from (stage.id for stage in lane.stages)

    def stage(self, stage_id: str) -> AnyStage:
        """The stage of that id, also in branches; KeyError if there is none."""
        for lane in self.lanes():
            for stage in lane.stages:
                if stage.id == stage_id:
                    return stage
        raise KeyError(stage_id)


def stage_label(stages: tuple[AnyStage, ...], index: int) -> str:
    """How errors name a stage: 'stage 4, “cook”'."""
    return say("stage {index}, “{title}”", index=index + 1, title=stages[index].title)
