"""17 of 19 averages of the food table lie inside the US limits of their styles; the two that do not, by how much."""

from __future__ import annotations

import pytest

from designer.validate.averages import Average, averages

BY_NAME = {one.name: one for one in averages()}


def test_seventeen_of_nineteen_are_inside() -> None:
    assert len(averages()) == 19
    assert {one.name for one in averages() if one.misses} == {"Blue", "Mozzarella, whole milk"}


def test_blue_misses_fat_in_dry_matter_by_a_tenth() -> None:
    (row,) = BY_NAME["Blue"].misses
    assert row.quantity == "fdm_pct"
    assert row.margin == pytest.approx(-0.1, abs=0.05)
    assert row.sentence == "0.1 points under the least, 50 %"


def test_whole_milk_mozzarella_falls_in_the_low_moisture_class() -> None:
    one = BY_NAME["Mozzarella, whole milk"]
    misses = {row.quantity: row for row in one.misses}
    assert set(misses) == {"moisture_pct", "fdm_pct"}
    assert misses["moisture_pct"].sentence == "2.0 points under the least, 52 %"
    assert misses["fdm_pct"].margin == pytest.approx(-0.3, abs=0.05)
    (moisture,) = [row for row in one.rows("mozzarella-low-moisture") if row.quantity == "moisture_pct"]
    assert moisture.state != "not met"


@pytest.mark.parametrize("one", averages(), ids=[one.name for one in averages()])
def test_an_average_names_its_table(one: Average) -> None:
    assert "release 26" in one.source
    assert one.have == "published, read"
