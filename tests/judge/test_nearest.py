"""What would have to change for this recipe to be a ...: styles ranked, and the way to each."""

from __future__ import annotations

from pathlib import Path

import pytest

from designer.forecast import Forecast, forecast
from designer.judge.check import check
from designer.judge.nearest import Near, known_for, nearest, way_to, ways
from designer.judge.own_style import figures_of, own_style
from designer.judge.short_way import LEAST, MOST
from designer.judge.style_stages import stages_of
from designer.judge.verdict import MET
from designer.make import kernel
from designer.recipe.file import read
from styles import house, reader
from styles.reader import reads, style, styles
from tests.recipe.samples import CHEDDAR, EXAMPLES


@pytest.fixture(scope="module")
def cheddar() -> Forecast:
    kernel.warm_up()
    return forecast(read(CHEDDAR))


def to(made: Forecast, key: str) -> Near:
    return next(near for near in nearest(made) if near.style.key == key)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_each_example_is_near_its_own_style(path: Path) -> None:
    made = forecast(read(path))
    found = nearest(made)
    assert len(found) == len(styles())
    assert [near.distance for near in found] == sorted(near.distance for near in found)
    if made.recipe.style:
        assert made.recipe.style in {near.style.key for near in found[:5]}


def test_what_lies_between_is_said_in_stages_and_figures(cheddar: Forecast) -> None:
    gouda = to(cheddar, "gouda")
    assert {"wash", "brine"} <= set(gouda.missing)
    assert {"stack", "mill", "salt"} <= set(gouda.extra)
    assert "with wash curd" in gouda.sentence
    assert not to(cheddar, "manchego").milk
    assert to(cheddar, "camembert").rind == "bloomy"


def test_the_way_to_a_style_of_the_same_stages(cheddar: Forecast) -> None:
    way = way_to(cheddar.recipe, to(cheddar, "double-gloucester"))
    assert way.stages == ()
    assert way.met is not None
    assert way.recipe is not None
    assert way.size == pytest.approx(sum(abs(change.steps) for change in way.changes))
    assert 1 <= len(way.changes) <= MOST, "a way is short"
    assert way.met.made.outcomes == forecast(way.recipe).outcomes, "and what it says is its forecast"
    assert way.met.reached
    assert len(way.left) + len(way.out) <= 2
    assert "Double Gloucester" in way.sentence
    assert to(way.met.made, "double-gloucester").distance < to(cheddar, "double-gloucester").distance


def test_the_way_to_a_washed_and_brined_cheese(cheddar: Forecast) -> None:
    way = way_to(cheddar.recipe, to(cheddar, "gouda"))
    assert way.recipe is not None
    kinds = [stage.kind for stage in way.recipe.stages]
    assert not {"stack", "mill", "salt"} & set(kinds)
    assert (
        kinds.index("cook") < kinds.index("wash") < kinds.index("drain") < kinds.index("press") < kinds.index("brine")
    )
    assert "wash curd after" in way.sentence
    washed = next(words for words in way.stages if words.startswith("wash curd"))
    assert washed.endswith(")"), "what a new stage is set to stands with it, and counts as no change"
    new = {"wash", "brine"}
    ids = {stage.id for stage in way.recipe.stages if stage.kind in new}
    assert not any(change.setting.where in ids for change in way.changes)
    assert len(way.changes) <= max(MOST - len(way.stages), LEAST)
    assert way.met is not None
    assert to(way.met.made, "gouda").distance < 0.55 * to(cheddar, "gouda").distance


def test_another_way_of_setting_is_another_recipe(cheddar: Forecast) -> None:
    way = way_to(cheddar.recipe, to(cheddar, "quark"))
    assert way.recipe is None
    assert "another recipe" in way.sentence


def test_ways_are_those_of_the_nearest(cheddar: Forecast) -> None:
    (first,) = ways(cheddar, 1)
    assert first.near == nearest(cheddar)[0]


def test_what_a_style_is_known_for() -> None:
    low, high = known_for(style("cheddar"), "moisture_pct")
    assert high is not None
    assert low is not None
    assert high <= 39.0
    assert low < 37.0
    assert stages_of(style("stilton")) >= {"mill", "salt", "set"}
    assert "press" not in stages_of(style("stilton"))
    assert "acid_heat" in stages_of(style("ricotta"))
    assert "lactic_set" in stages_of(style("crottin"))


def test_a_house_style_from_a_forecast_is_met_by_it(cheddar: Forecast, tmp_path: Path) -> None:
    own = own_style(cheddar, "Thistlecombe House", like=style("cheddar"))
    assert reads(house.writes(own), key=own.key) == own
    rows = check(cheddar, own).rows
    assert rows
    assert all(row.state == MET for row in rows if "room" not in row.quantity)
    house.write(own, house.path_of(tmp_path, own))
    reader.adopt(tmp_path)
    try:
        assert own.key in {near.style.key for near in nearest(cheddar)[:3]}
        assert to(cheddar, own.key).gaps[0].steps == 0.0
    finally:
        reader.adopt(tmp_path / "none")


def test_figures_of_a_forecast_are_those_a_maker_reads(cheddar: Forecast) -> None:
    figures = figures_of(cheddar)
    assert figures.composition["moisture_pct"] == cheddar.outcomes["moisture_pct"].value
    assert figures.curves[("ph", "mill")] == pytest.approx(cheddar.outcomes["ph_mill"].value, abs=0.01)
    assert "cut_mm" in figures.settings
