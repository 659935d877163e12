"""Maker story 14: rich milk, a protein to fat wanted, and what that makes of the cheese."""

from __future__ import annotations

import pytest

from designer.forecast import forecast
from designer.recipe.document import Recipe
from designer.recipe.edit import edit_milk
from designer.recipe.standardise import Liquid, Target, offers, standardise, wanted_fat_pct
from tests.make.parted_vats import recipe as vat

WANTED = Target(0.91)
CREAM, SKIM = Liquid(40.0, 2.2), Liquid(0.06, 4.05)


@pytest.fixture(scope="module")
def rich() -> Recipe:
    return edit_milk(vat(), "milk", fat_pct=5.0, protein_pct=3.9, volume_l=None, mass_kg=100.0)


def test_the_fat_wanted(rich: Recipe) -> None:
    assert wanted_fat_pct(rich, WANTED) == pytest.approx(4.3, abs=0.05)


def test_cream_off_or_skim_on(rich: Recipe) -> None:
    by_way = {offer.way: offer for offer in offers(rich, WANTED, cream=CREAM, skim=SKIM)}
    assert by_way["cream off"].kg_per_100kg == pytest.approx(1.90, abs=0.05)
    assert by_way["skim"].kg_per_100kg == pytest.approx(16.3, abs=0.2)


@pytest.mark.parametrize("way", ["cream off", "skim"])
def test_fat_in_dry_matter_is_lower_after(rich: Recipe, way: str) -> None:
    offer = next(one for one in offers(rich, WANTED, cream=CREAM, skim=SKIM) if one.way == way)
    before = forecast(rich).outcomes["fdm_pct"].value
    after = forecast(standardise(rich, offer)).outcomes["fdm_pct"].value
    assert after < before - 1.0
