"""No figure that can be moved is without the law behind it, and what lies outside a law is said beside it."""

from __future__ import annotations

from importlib.resources import files
from pathlib import Path
from types import SimpleNamespace
from typing import Any, get_args

import pytest

from designer.forecast import forecast
from designer.judge import movable
from designer.judge.behind import _ROWS, laws_behind, rows_behind
from designer.judge.explain import explain
from designer.judge.movable import Movable, movables
from designer.make import kernel
from designer.make.constants import table
from designer.recipe.document import What
from designer.recipe.edit import edit
from designer.recipe.field import field_metas
from designer.recipe.file import read
from designer.recipe.stages.kinds import KINDS
from designer.recipe.stages.press import PressStep

FOLDER = Path(str(files("example_recipes")))


def a_recipe(kind: str = "", what: str = "") -> Any:
    """As much of a recipe as is asked: one stage, one addition."""
    lane = SimpleNamespace(additions=(SimpleNamespace(id="x", what=what),))
    return SimpleNamespace(stage=lambda _: SimpleNamespace(kind=kind), additions=lane.additions, lanes=lambda: (lane,))


def a_setting(of: str, field: str) -> Movable:
    return Movable(of, "x", field, "", "", "number", 1.0, 0.0, 9.0, 1.0)  # type: ignore[arg-type]


def fields_of(kind: str) -> list[str]:
    """Every figure of a stage kind that can be moved."""
    model = KINDS[kind]
    found = [one.name for one in field_metas(model) if one.shape == "quantity" and one.name not in movable.FOR_THE_PLAN]
    if kind == "press":
        return [*found, *(f"steps.0.{one.name}" for one in field_metas(PressStep)), "end.value"]
    return [*found, "end.length_min", *(["end.value"] if set(model.ENDS) - {"time", "feel"} else [])]


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind != "room"])
def test_every_setting_of_a_stage_has_its_law(kind: str) -> None:
    without = [field for field in fields_of(kind) if not rows_behind(a_recipe(kind), a_setting("stage", field))]
    assert not without


@pytest.mark.parametrize(
    ("of", "fields"),
    [
        ("milk", movable.MILK_FIELDS),
        ("starter", movable.STARTER_FIELDS),
        ("form", movable.FORM_FIELDS),
        ("recipe", ("room_c",)),
        ("branch", ("share_pct",)),
    ],
)
def test_every_other_setting_has_its_law(of: str, fields: tuple[str, ...]) -> None:
    assert not [field for field in fields if not rows_behind(a_recipe(), a_setting(of, field))]


@pytest.mark.parametrize("what", [one for one in get_args(What) if one in movable._WORKING])
def test_every_addition_that_works_has_its_law(what: str) -> None:
    fields = [*movable.ADDITION_FIELDS]
    assert not [field for field in fields if not rows_behind(a_recipe(what=what), a_setting("addition", field))]


def test_every_row_is_there_and_has_its_source() -> None:
    assert not {name for rows in _ROWS.values() for name in rows} - set(table())
    recipe = read(FOLDER / "thistlecombe-cheddar.toml")
    for one in movables(recipe):
        laws = laws_behind(recipe, one)
        assert laws, one.title
        assert all(law.source and law.have and law.value for law in laws)


def test_where_a_law_does_not_reach_is_said_at_the_part() -> None:
    kernel.warm_up()
    gouda = read(FOLDER / "weirside-gouda.toml")
    found = explain(forecast(edit(gouda, "brine", brine_c=24.0)), "salt_in_moisture_pct", "gouda")
    assert found is not None
    brine = next(one for one in found.links if one.ranged.setting.path == ("brine", "brine_c"))
    assert any("outside the 4-20 °C" in text for text in brine.outside)
    assert {law.name for law in brine.laws} >= {"brine_ea", "brine_d_12c"}
    assert not any(one.outside for one in found.links if one.ranged.setting.where == "cut")
