"""The pasteurisation table is looked up: a hold that a sum of effect would pass is still no listed pair."""

from __future__ import annotations

import pytest

from designer.make.heat_treatment import legal_pairs, pair_met, treatment


def test_every_listed_pair_meets_itself_and_none_cooler() -> None:
    for fat in (3.5, 12.0):
        for pair in legal_pairs(fat):
            assert pair_met(pair.temp_c, pair.seconds, fat) is pair
            assert pair_met((pair.temp_f - 32) / 1.8, pair.seconds, fat) is pair
            assert pair_met(pair.least_c - 0.1, pair.seconds, fat) is not pair


def test_rich_milk_is_three_degrees_hotter() -> None:
    for lean, rich in zip(legal_pairs(3.5), legal_pairs(10.0), strict=True):
        assert rich.temp_c - lean.temp_c == 3
        assert rich.seconds == lean.seconds
        assert rich.temp_f - lean.temp_f == 5


def test_fahrenheit_and_celsius_of_a_pair_are_the_same_heat() -> None:
    for pair in (*legal_pairs(3.5), *legal_pairs(12.0)):
        assert (pair.temp_f - 32) / 1.8 == pytest.approx(pair.temp_c, abs=1.0)


@pytest.mark.parametrize(("temp_c", "seconds"), [(65, 621), (66, 365), (68, 126), (70, 43.5)])
def test_equal_effect_on_paper_is_not_legal(temp_c: float, seconds: float) -> None:
    sentence = treatment(temp_c, seconds)
    assert pair_met(temp_c, seconds) is None
    assert "no listed pair" in sentence
    assert "as raw" in sentence


def test_a_pair_that_is_met_says_which() -> None:
    assert "63 °C for 30 min" in treatment(63.5, 1900)
