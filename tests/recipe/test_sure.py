"""Values far outside practice are asked about, in the maker's units; the examples are all inside."""

from __future__ import annotations

from pathlib import Path

import pytest

from designer.recipe.document import Form
from designer.recipe.edit import edit, edit_addition, edit_milk
from designer.recipe.field import field_meta
from designer.recipe.file import read
from designer.recipe.stages.cook import Cook
from designer.recipe.stages.press import PressStep
from designer.recipe.stages.ripen import Ripen
from designer.recipe.sure import asked, doubts, pressed
from designer.units import parse
from tests.recipe.samples import CHEDDAR, EXAMPLES


def test_the_question_speaks_the_units_of_the_window() -> None:
    meta = field_meta(PressStep, "pressure_kpa")
    typed = parse("45 psi", "pressure").value
    assert asked(meta, typed, "us") == (
        "Sure? 45 psi is far above what is usual on a hand press: up to 29 psi. Check the unit or the decimal point."
    )
    assert asked(meta, parse("4.5 psi", "pressure").value) == ""


def test_a_kind_of_stage_has_its_own_range() -> None:
    assert field_meta(Cook, "temperature_c").usual == (25.0, 60.0)
    assert field_meta(Ripen, "temperature_c").usual == (10.0, 46.0)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_the_examples_raise_no_question(path: Path) -> None:
    assert doubts(read(path)) == ()


def test_a_dose_is_judged_by_the_milk_it_goes_into() -> None:
    recipe = read(CHEDDAR)
    rennet = next(each for each in recipe.additions if each.what == "coagulant")
    assert rennet.volume_l is not None
    ten_times = edit_addition(recipe, rennet.id, volume_l=10.0 * rennet.volume_l)
    (doubt,) = doubts(ten_times)
    assert doubt.part == rennet.id
    assert "IMCU per litre of milk: 10 to 120" in doubt.sentence


def test_every_part_is_looked_at() -> None:
    recipe = edit_milk(read(CHEDDAR), read(CHEDDAR).milks[0].id, fat_pct=12.0)
    cut = next(stage.id for stage in recipe.stages if stage.kind == "cut")
    recipe = edit(recipe, cut, cut_mm=1.0)
    assert [doubt.field for doubt in doubts(recipe)] == ["fat_pct", "cut_mm"]


def test_a_load_is_judged_by_the_pressure_it_makes() -> None:
    """130 kg hung up are usual; on a lever of 4 and a cheese of 14.5 cm they are 45 psi."""
    step, small = PressStep(load_kg=130.0, length_min=60.0), Form(diameter_mm=145.0, height_mm=80.0, lever=4.0)
    assert pressed(step, small, "us").startswith("Sure? 44.81 psi is far above what is usual on a hand press")
    assert pressed(step, small.but(lever=1.0)) == pressed(step, None) == ""
