"""Published effects of one change on a make: the model must answer to a setting, not only land where makes landed."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from designer.recipe.document import Recipe
from designer.recipe.edit import edit, edit_milk
from designer.recipe.end import End, after
from designer.validate.course import Constants, Course, prepared
from designer.validate.makes import Figure, Make, makes


@dataclass(frozen=True, slots=True)
class Effect:
    """A change of a published make and what it does to `figure.quantity`; `figure` holds the published difference."""

    id: str
    before: Course
    after: Course
    figure: Figure

    def value(self, constants: Constants = None) -> float:
        """The model's difference, after less before, in the unit of the quantity."""
        return float(self.after.values(constants)[0] - self.before.values(constants)[0])


def _changed(recipe: Recipe, at: str, field: str, by: float) -> Recipe:
    if at == "milk":
        return edit_milk(recipe, recipe.milks[0].id, **{field: getattr(recipe.milks[0], field) + by})
    stage = next(stage for stage in recipe.stages if stage.id == at)
    if field == "end.length_min":
        return edit(recipe, at, end=after(stage.end.planned_min + by))
    return edit(recipe, at, **{field: getattr(stage, field) + by})


@cache
def effects() -> tuple[Effect, ...]:
    """The shipped table. KeyError or StopIteration for a make or stage there is not."""
    by_id = {make.id: make for make in makes()}
    out = []
    for row in tomllib.loads(files("designer.validate").joinpath("effects.toml").read_text("utf-8"))["effect"]:
        make = by_id[row["make"]]
        value = row["value"]
        low, high = value if isinstance(value, list) else (value, value)
        figure = Figure(
            make.id, row["quantity"], low, high, "procedure", row["source"], row["have"], at=row.get("at", "")
        )
        usual = make.recipe
        for end in row.get("ends", ()):
            usual = edit(usual, end["at"], end=End(by="ph", of="curd", value=end["ph"], latest_min=end["latest_min"]))
        changed = usual
        for change in row["changes"]:
            changed = _changed(changed, change["at"], change["field"], change["by"])
        before, after = (
            prepared(Make(row["id"], make.family, row["source"], row["have"], (), recipe, (figure,)))
            for recipe in (usual, changed)
        )
        out.append(Effect(row["id"], before, after, figure))
    return tuple(out)
