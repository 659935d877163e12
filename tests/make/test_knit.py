"""Knit: each circumstance costs what the table says, smoothly and in the right direction, also in whole forecasts."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import example_recipes
from designer.forecast import Forecast, forecast
from designer.make import knit
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from designer.recipe.file import read
from designer.recipe.lower import lower
from designer.recipe.schedule import GEL_ACID_HEAT, GEL_RENNET, PLACE_MOULD, as_rows, row

GOOD = knit.Joining(
    temperature_c=28.5, ph=5.3, moisture_pct=43.0, salt_in_moisture_pct=3.5, load_kpa=100.0, early_kpa=10.0,
    contact_min=960.0, loose=0.0, stretched=False,
)  # fmt: skip
SWEET = replace(GOOD, salt_in_moisture_pct=0.0, ph=6.2, temperature_c=36.0, moisture_pct=55.0, load_kpa=30.0)


@cache
def recipe(name: str) -> Recipe:
    return read(Path(example_recipes.__file__).parent / f"{name}.toml")


def ways(own: Recipe, stage: str, name: str, values: list[object]) -> list[float]:
    return [forecast(edit(own, stage, **{name: value})).outcomes["knit"].value for value in values]


def of(made: Forecast) -> knit.Knit:
    joined = knit.of_stages(lower(made.recipe).lanes[0].rows, made.stages, made.trace)
    assert joined is not None
    return knit.knit(joined)


def test_good_curd_closes() -> None:
    for curd in (GOOD, SWEET):
        assert knit.score(curd) > 0.95
        assert knit.knit(curd).word == "closed"
        assert knit.knit(curd).reasons == ()


# The factors of syneresis-and-press section 5.4, well past each limit.
@pytest.mark.parametrize(
    ("key", "left", "changed"),
    [
        ("cold", 0.5, {"temperature_c": 20.0}),
        ("warm", 0.7, {"temperature_c": 38.0}),
        ("sweet", 0.6, {"ph": 5.9}),
        ("acid", 0.8, {"ph": 4.7}),
        ("light", 0.7, {"load_kpa": 10.0, "early_kpa": 5.0}),
        ("dry", 0.8, {"moisture_pct": 35.0}),
        ("hard", 0.8, {"early_kpa": 95.0}),
        ("brief", 0.8, {"contact_min": 10.0}),
        ("loose", 0.9, {"loose": 1.0}),
    ],
)
def test_one_fault_costs_what_the_table_says(key: str, left: float, changed: dict[str, float]) -> None:
    verdict = knit.knit(replace(GOOD, **changed))  # type: ignore[arg-type]
    assert verdict.score == pytest.approx(left, abs=0.03)
    assert verdict.reasons[0].key == key
    assert verdict.reasons[0].source
    assert "engineering default" in verdict.reasons[0].have
    assert verdict.reasons[0].remedy


def test_the_words_follow_the_published_lines() -> None:
    assert [knit.word(score) for score in (0.95, 0.7, 0.5, 0.3)] == list(knit.WORDS)
    worst = knit.knit(replace(GOOD, temperature_c=18.0, ph=5.9, load_kpa=10.0, early_kpa=5.0))
    assert worst.word == "creviced"
    assert "mould" in worst.means["natural"]
    assert "bag" in worst.means["bag"]
    costs = [reason.lost for reason in worst.reasons]
    assert costs == sorted(costs, reverse=True)


def test_what_hurts_salted_curd_does_not_hurt_sweet_curd() -> None:
    hot = replace(SWEET, temperature_c=52.0)
    assert knit.score(hot) > 0.95  # Alpine curd goes hot into the press
    assert knit.score(replace(SWEET, load_kpa=12.0)) > 0.9  # ten times its own weight is enough


def test_moist_and_stretched_curd_run_together_by_themselves() -> None:
    ladled = replace(SWEET, moisture_pct=80.0, temperature_c=20.0, ph=4.6, load_kpa=0.5, early_kpa=0.0)
    assert knit.knit(ladled).word == "closed"
    assert knit.score(replace(GOOD, stretched=True, temperature_c=20.0)) == 1.0


@given(
    st.floats(10.0, 60.0), st.floats(4.4, 6.6), st.floats(30.0, 88.0), st.floats(0.0, 8.0), st.floats(0.2, 300.0),
    st.floats(0.0, 1.0), st.floats(1.0, 2000.0), st.floats(0.0, 1.0),
)  # fmt: skip
def test_the_score_is_a_share_and_never_jumps(
    temp: float, ph: float, moisture: float, salt: float, load: float, early: float, minutes: float, loose: float
) -> None:
    curd = knit.Joining(temp, ph, moisture, salt, load, early * load, minutes, loose, False)
    here = knit.score(curd)
    assert 0.0 < here <= 1.0
    near = replace(curd, temperature_c=temp + 0.01, ph=ph + 0.001, moisture_pct=moisture + 0.01, load_kpa=load * 1.001)
    assert knit.score(near) == pytest.approx(here, abs=0.02)


@given(st.floats(15.0, 27.0), st.floats(5.0, 60.0))
def test_warmer_below_the_limit_and_heavier_are_never_worse(temp: float, load: float) -> None:
    curd = replace(GOOD, temperature_c=temp, load_kpa=load, early_kpa=2.0)
    assert knit.score(replace(curd, temperature_c=temp + 0.5)) >= knit.score(curd)
    assert knit.score(replace(curd, load_kpa=load + 5.0)) >= knit.score(curd)


def test_stages_and_march_give_the_same_score() -> None:
    for name in ("thistlecombe-cheddar", "weirside-gouda", "highfold-alpine", "kitchen-bloom"):
        made = forecast(recipe(name))
        assert of(made).score == pytest.approx(made.outcomes["knit"].value, abs=1e-6)


def test_cheddar_pressed_too_warm_opens_and_cooling_it_closes_it() -> None:
    own = edit(recipe("thistlecombe-cheddar"), "stack", temperature_c=31.0, ramp_min=30.0)
    cold, good, warm = ways(own, "salt", "temperature_c", [19.0, 28.5, 37.0])
    assert good > max(warm, cold)
    cool = of(forecast(edit(own, "salt", temperature_c=28.5)))
    assert cool.word == "closed"
    assert "warm" not in [reason.key for reason in cool.reasons]


def test_heavier_pressing_knits_better() -> None:
    own = recipe("thistlecombe-cheddar")
    steps = [[{"load_kg": 2.0, "length_min": 60.0}, {"load_kg": kg, "length_min": 900.0}] for kg in (4.0, 12.0, 40.0)]
    knits = ways(own, "press", "steps", list(steps))
    assert all(lighter < heavier for lighter, heavier in pairwise(knits))


def test_salting_too_sweet_costs_knit() -> None:
    own = edit(recipe("thistlecombe-cheddar"), "mill", temperature_c=29.0)
    knits = []
    for minutes in (5.0, 120.0):
        short = edit(own, "stack", end={"by": "time", "length_min": minutes}, temperature_c=None, ramp_min=None)
        knits.append((forecast(short).outcomes["ph_mill"].value, forecast(short).outcomes["knit"].value))
    (sweet, open_knit), (sour, closed_knit) = knits
    assert sweet > 5.6 > sour
    assert closed_knit > open_knit + 0.03


def test_nothing_formed_has_no_knit_and_heated_acid_curd_is_not_judged() -> None:
    vat = [row(minutes=2.0), row(minutes=2.0)]
    fresh = [row(minutes=2.0, gel=GEL_ACID_HEAT), row(minutes=2.0, place=PLACE_MOULD)]
    formed = [row(minutes=2.0, gel=GEL_RENNET), row(minutes=2.0, place=PLACE_MOULD)]
    rows = np.array([as_rows(make) for make in (vat, fresh, formed)])
    ends = np.tile([[0.0, 2.0], [2.0, 4.0]], (3, 1, 1))
    point = [np.full(3, value) for value in (30.0, 6.0, 60.0, 0.0)]
    got = knit.joining(rows, ends, np.ones((3, 2), bool), lambda _: point)
    assert [got.one(make) is None for make in range(3)] == [True, True, False]
    assert list(np.isnan(knit.score(got))) == [True, True, False]


def test_many_makes_score_as_each_of_them_alone() -> None:
    curds = [GOOD, SWEET, replace(GOOD, temperature_c=18.0, ph=5.9)]
    names = knit.Joining.__dataclass_fields__
    stacked = knit.Joining(**{name: np.array([getattr(curd, name) for curd in curds]) for name in names})
    assert knit.score(stacked) == pytest.approx([float(knit.score(curd)) for curd in curds])


def test_the_band_carries_knit() -> None:
    made = forecast(
        edit(recipe("thistlecombe-cheddar"), "press", steps=[{"load_kg": 25.0, "length_min": 900.0}]), members=8
    )
    assert made.bands is not None
    assert made.bands.samples["knit"].shape == (8,)
    figure = made.outcomes["knit"]
    assert figure.low < figure.high
