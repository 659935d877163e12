"""Titratable acidity as a curve: what an end by acidity is read on, of milk, curd and whey."""

from __future__ import annotations

import numpy as np
import pytest

from designer.forecast import forecast
from designer.recipe.edit import set_end
from designer.recipe.file import read
from tests.recipe.samples import CHEDDAR


def test_milk_begins_at_what_the_titration_counts_without_lactic_acid_and_rises() -> None:
    trace = forecast(read(CHEDDAR)).trace
    assert 0.14 < trace["acidity_pct"][0] < 0.20
    assert trace["acidity_pct"][-1] > 0.5
    whey = trace["acidity_whey_pct"]
    assert whey[0] == trace["acidity_pct"][0]
    assert whey.min() < trace["acidity_pct"][np.argmin(whey)]


@pytest.mark.parametrize("of", ["curd", "whey"])
def test_an_end_by_acidity_comes_where_the_curve_reaches_it(of: str) -> None:
    recipe = read(CHEDDAR)
    column = "acidity_pct" if of == "curd" else "acidity_whey_pct"
    plain = forecast(recipe)
    hold = next(stage for stage in plain.stages if stage.id == "hold")
    wanted = round(plain.trace.at(column, hold.end_min - 10.0), 2)
    made = forecast(set_end(recipe, "hold", by="acidity", of=of, value=wanted, latest_min=240.0))
    end = next(stage for stage in made.stages if stage.id == "hold").end_min
    assert made.trace.at(column, end - 1e-6) == pytest.approx(wanted, abs=2e-3)
