"""The recipe document: what the maker means, as frozen plain data in base units.

Form, coat, branches and the whole, and the door to its other parts: what goes in (`ingredients`), vat and stages.
`file` reads and writes it, `edit` changes it, `lower` turns it into a Schedule.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal, Self

from pydantic import model_validator

from designer.language import say
from designer.recipe.error import RecipeError as RecipeError
from designer.recipe.field import Model, part, quantity, words
from designer.recipe.ingredients import ID_HELP
from designer.recipe.ingredients import Addition as Addition
from designer.recipe.ingredients import MilkSource as MilkSource
from designer.recipe.ingredients import Species as Species
from designer.recipe.ingredients import Starter as Starter
from designer.recipe.ingredients import What as What
from designer.recipe.stages.kinds import AnyStage
from designer.recipe.vat import Vat as Vat

FORMAT = 1

CoatKind = Literal["natural", "bloomy", "washed", "cloth", "wax", "coating", "bag", "leaves", "ash", "brine", "none"]
Shape = Literal["cylinder", "block", "loaf", "pyramid"]


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

    id: str = words(..., ID_HELP)
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
