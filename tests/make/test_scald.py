"""Pieces scalded in hot whey: drawn together by the heat, the more the hotter, the longer and the smaller they are."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from designer.forecast import Forecast, forecast
from designer.make.constants import table
from designer.make.syneresis import scalded_share
from designer.recipe.edit import edit, edit_end, edit_form
from designer.recipe.schedule import PLACE_BRINE, PLACE_PRESS
from designer.validate.makes import makes

PIECES = next(make for make in makes() if make.id == "halloumi").recipe


def scalded(bath_c: float = 90.0, length_min: float = 30.0, height_mm: float = 25.0) -> Forecast:
    return forecast(
        edit_form(edit_end(edit(PIECES, "scald", bath_c=bath_c), "scald", length_min=length_min), height_mm=height_mm)
    )


def left(made: Forecast) -> float:
    """Water in the pieces as they leave the bath [%]."""
    return next(stage for stage in made.stages if stage.id == "scald").values["curd_moisture_pct"]


def test_hotter_and_longer_is_drier_and_a_thick_piece_wetter() -> None:
    usual = left(scalded())
    assert left(scalded(bath_c=75.0)) > usual + 0.5
    assert left(scalded(length_min=12.0)) > usual + 0.5
    assert left(scalded(height_mm=50.0)) > usual + 0.5


def test_nothing_is_drawn_together_at_the_heat_of_a_cook() -> None:
    """The hottest cook of the published makes is 58 °C: less than 1 % of a scald there."""
    p = SimpleNamespace(**{name: one.value for name, one in table().items()})
    assert scalded_share(PLACE_BRINE, 58.0, 60.0, p) < 0.01
    assert scalded_share(PLACE_BRINE, 88.0, 90.0, p) > 0.99
    assert scalded_share(PLACE_BRINE, 88.0, 12.0, p) < 0.01  # hot pieces put to cold brine
    assert scalded_share(PLACE_PRESS, 88.0, 90.0, p) == 0.0


def test_a_kilogram_from_nine_litres_of_milk() -> None:
    """Rural dairy technology manual (attribution likely): 1 kg from 9 kg of cow's milk; practice: from 9 L."""
    assert forecast(PIECES).outcomes["yield_kg_per_100kg"].value == pytest.approx(10.95, abs=0.4)


def test_a_hot_bath_of_any_length_stays_in_step() -> None:
    """From the second hour on nothing moves any more: a bath twice as long leaves the pieces as they are."""
    assert left(scalded(length_min=360.0)) == pytest.approx(left(scalded(length_min=180.0)), abs=0.3)


def test_a_bath_too_cold_is_said_and_the_law_says_what_it_rests_on() -> None:
    cold, hot = scalded(bath_c=65.0), scalded()
    assert any("reach only" in note for note in cold.notes)
    assert not any("reach only" in note for note in hot.notes)
    assert any("scalded pieces" in note for note in hot.notes)
