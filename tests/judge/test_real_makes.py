"""Moments and settings read from real forecasts of the example recipes, and a verdict on each and on its branches."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

from designer.forecast import Forecast, forecast
from designer.judge.check import check
from designer.judge.moments import moments, settings
from designer.recipe.file import read

EXAMPLES = sorted(Path("example_recipes").glob("*.toml"))
ORDER = ("rennet", "cut", "drain", "mill", "salt", "press_end")


@cache
def made(name: str) -> Forecast:
    return forecast(read(Path("example_recipes") / f"{name}.toml"))


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_has_a_verdict_for_its_style(path: Path) -> None:
    whole = made(path.stem)
    for one in (whole, *whole.branches):
        verdict = check(one, whole.recipe.style or "crottin")
        assert verdict.state in ("met", "near", "not met")
        assert verdict.section("make")
        for row in verdict.rows:
            assert row.value is None or row.value == row.value
            assert row.sentence


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_moments_come_in_order(path: Path) -> None:
    one = made(path.stem)
    when = moments(one)
    minutes = [when[name] for name in ORDER if name in when]
    assert minutes[:3] == sorted(minutes[:3])
    assert {"rennet", "h6", "h24"} <= when.keys()
    assert all(0.0 <= minute <= one.trace.time_min[-1] for minute in when.values())


def test_settings_of_a_washed_and_brined_make() -> None:
    one = made("weirside-gouda")
    found = settings(one, moments(one))
    assert found["wash_pct"] == 22.0
    assert found["wash_c"] == 57.0
    assert found["brine_pct"] == 20.0
    assert found["brine_h"] == pytest.approx(28.0)
    assert found["floc_multiple"] == pytest.approx(3.0, abs=0.01)
    assert found["age_days"] == pytest.approx(92.0)
    assert found["whey_off_pct"] == pytest.approx(
        0.42 * one.trace.at("whey_in_vat_kg_per_100kg", moments(one)["drain"]), rel=0.02
    )


def test_settings_of_a_milled_and_pressed_make() -> None:
    one = made("thistlecombe-cheddar")
    found = settings(one, moments(one))
    assert found["cut_mm"] == pytest.approx(7.9375)
    assert found["cook_c"] == pytest.approx(39.0)
    assert found["salt_curd_pct"] == 2.8
    assert found["press_h"] == pytest.approx(18.0)
    assert found["ripen_min"] == pytest.approx(60.0)
