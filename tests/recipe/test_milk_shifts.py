"""Lactation and season shift what a milk source leaves out, and nothing that was measured."""

from __future__ import annotations

import pytest

from designer.recipe.document import MilkSource
from designer.recipe.error import RecipeError
from designer.recipe.milk import source_milk
from designer.recipe.presets import presets

PLAIN = MilkSource(id="milk", volume_l=100.0)
SEASONS = ("spring", "summer", "autumn", "winter")


def test_late_lactation_is_richer_sweeter_and_poorer_in_sugar() -> None:
    """The directions of Haenlein's goat-milk sheet; the casein's share falls, the casein itself does not."""
    plain, late = source_milk(PLAIN), source_milk(PLAIN.but(late_lactation=True))
    assert late.fat > plain.fat
    assert late.casein > plain.casein
    assert late.calcium > plain.calcium
    assert late.lactose < plain.lactose
    assert late.ph > plain.ph
    assert late.casein / (late.casein + late.whey_protein) < plain.casein / (plain.casein + plain.whey_protein)


def test_protein_of_the_seasons_spans_what_was_measured() -> None:
    """Jura cow milk: 33.4 g/kg in September, 30.9 in March (Masson et al. 1981)."""
    of = {season: source_milk(PLAIN.but(season=season)) for season in SEASONS}
    protein = {season: milk.casein + milk.whey_protein for season, milk in of.items()}
    assert max(protein, key=lambda season: protein[season]) == "autumn"
    assert min(protein, key=lambda season: protein[season]) == "spring"
    assert protein["autumn"] / protein["spring"] == pytest.approx(33.4 / 30.9, abs=0.01)
    assert min(of, key=lambda season: of[season].fat) == "summer"


def test_what_was_measured_stays() -> None:
    given = PLAIN.but(fat_pct=3.9, protein_pct=3.4, lactose_pct=4.6, ph=6.7)
    shifted = source_milk(given.but(late_lactation=True, season="spring"))
    assert shifted.fat == pytest.approx(39.0)
    assert shifted.casein + shifted.whey_protein == pytest.approx(34.0)
    assert shifted.lactose == pytest.approx(46.0)
    assert shifted.ph == 6.7


def test_each_shift_says_where_it_is_from() -> None:
    shifts = presets()["shift"]
    assert set(shifts) == {"late_lactation", *SEASONS}
    assert all(shift["source"] and shift["have"] for shift in shifts.values())


def test_an_unknown_breed_is_told_which_there_are() -> None:
    with pytest.raises(RecipeError, match="of sheep there are: lacaune, east_friesian"):
        source_milk(PLAIN.but(species="sheep", breed="manchega"))
