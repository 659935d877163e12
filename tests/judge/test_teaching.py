"""Teaching without a window: three depths, guesses held against the forecast, small vats that change one thing."""

from __future__ import annotations

import re
from importlib import import_module

import pytest

from designer import language
from designer.forecast import forecast
from designer.judge.compare import KEYS
from designer.judge.depths import row_words, statements, topic, topic_of, topics
from designer.judge.guess import LESS, MORE, SAME, Change, Guess, chain, changes, held
from designer.judge.movable import movables
from designer.judge.rebuilt import of_milk, places, put_in, shifted, without
from designer.judge.vats import changed, low_usual_high, small
from designer.language import speak
from designer.make import kernel
from designer.make.constants import table
from designer.recipe.edit import edit
from designer.recipe.error import RecipeError
from designer.recipe.file import read
from designer.recipe.milk import blend
from styles.reader import style
from tests.recipe.samples import CHEDDAR, EXAMPLES


@pytest.fixture(scope="module", autouse=True)
def machine_code() -> None:
    kernel.warm_up()


def test_every_topic_has_three_depths() -> None:
    for one in topics():
        assert one.title
        assert one.child.endswith(".")
        assert len(one.child) <= 160, one.key
        assert len(one.maker) > len(one.child), one.key
        assert all(": " in said for said in one.statements())
        assert one.constants()
        for row in one.constants():
            assert row.told_source.rstrip(".") in row_words(row)
            assert row.have in row_words(row)
    assert {one.about for one in topics()} == {"outcome", "setting", "law"}
    assert set(KEYS) <= {one.key for one in topics()}


def test_every_law_is_told_in_a_makers_words() -> None:
    explained = {law for one in topics() for law in one.laws}
    assert set(statements()) == explained
    for law in explained:
        module, _, function = law.rpartition(".")
        assert callable(getattr(import_module(f"designer.make.{module}"), function)), law
        told = statements()[law].told
        assert not re.search(r"\w_\w|`|[=*]", told), told


def test_laws_and_sources_are_told_in_the_language_spoken() -> None:
    before = speak(language.read("fr"))
    try:
        for one in topics():
            for law, told in zip(one.laws, one.statements(), strict=True):
                assert statements()[law].says_english not in told
        assert table()["syneresis_t_ref_c"].told_source != table()["syneresis_t_ref_c"].source
    finally:
        speak(before)


def test_settings_find_their_topic() -> None:
    recipe = read(CHEDDAR)
    by_path = {one.path: topic_of(recipe, one) for one in movables(recipe)}
    assert by_path[("cut", "cut_mm")] is topic("cut")
    assert by_path[("", "room_c")] is topic("room")
    assert by_path[("rennet", "volume_l")] is topic("rennet_dose")
    found = [topic_of(read(path), one) for path in EXAMPLES for one in movables(read(path))]
    assert sum(one is not None for one in found) > 0.6 * len(found)


def test_a_guess_is_held_against_the_forecast() -> None:
    before = forecast(read(CHEDDAR))
    after = forecast(edit(read(CHEDDAR), "cut", cut_mm=4.0))
    found = {one.key: one for one in changes(before, after)}
    drier = found["moisture_pct"]
    assert drier.way == LESS
    assert held(drier, Guess(MORE)).sentence.startswith("Not so")
    assert held(drier, Guess(LESS)).right
    assert held(drier, Guess(LESS, abs(drier.change))).near is True
    assert held(drier, Guess(LESS, 10.0 * abs(drier.change))).near is False
    still = Change("moisture_pct", 40.0, 40.01)
    assert still.way == SAME
    assert held(still, Guess(SAME)).sentence == "Right: stays."


def test_the_chain_begins_where_the_change_is() -> None:
    before = forecast(read(CHEDDAR))
    said = chain(before, forecast(edit(read(CHEDDAR), "cut", cut_mm=4.0)))
    assert said
    assert not said[0].startswith(("ripen", "set"))
    assert any("drier" in line for line in said)
    assert chain(before, before) == ()


def test_small_vats_each_change_one_thing() -> None:
    base = small(read(CHEDDAR), 10.0)
    milk = blend(base.recipe)
    assert milk.mass_kg / milk.density_kg_l == pytest.approx(10.0)
    values = low_usual_high(base, ("cut", "cut_mm"), style("cheddar"))
    assert 1 <= len(values) <= 3
    vats = [base, *(changed(base, ("cut", "cut_mm"), value) for value in values)]
    assert len({one.name() for one in vats}) == len(vats)
    moist = [forecast(one.recipe).outcomes["moisture_pct"].value for one in vats]
    by_cut = sorted(zip([base.recipe.stage("cut").cut_mm, *values], moist, strict=True))  # type: ignore[union-attr]
    assert [value for _, value in by_cut] == sorted(moist)
    with pytest.raises(RecipeError, match="nothing can be moved there"):
        changed(base, ("cut", "no_such"), 1.0)


def test_stages_and_milk_can_be_guessed_about_too() -> None:
    recipe = read(CHEDDAR)
    before = forecast(recipe)
    gone = without(recipe, "stack")
    after = forecast(gone.recipe)
    assert "stack" not in [stage.id for stage in gone.recipe.stages]
    assert any(line.endswith("left out") for line in chain(before, after))
    assert any(line.endswith("put in") for line in chain(after, before))
    more = put_in(recipe, "wash", "warm")
    ids = [stage.id for stage in more.recipe.stages]
    assert more.recipe.stages[ids.index("warm") + 1].kind == "wash"
    assert " after " in more.words
    assert of_milk(recipe, "goat").recipe.milks[0].species == "goat"
    later = shifted(recipe, "mill", 1)
    assert [one for one, _ in places(later.recipe)].index("mill") == [one for one, _ in places(recipe)].index(
        "mill"
    ) + 1
    fresh = without(recipe, recipe.additions[-1].at)
    assert not [one for one in fresh.recipe.additions if one.at == recipe.additions[-1].at]
