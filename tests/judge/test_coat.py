"""Coat advice: what a poor knit asks for and under which conditions, with real forecasts."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest

import example_recipes
from designer.forecast import forecast
from designer.judge import coat
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from designer.recipe.file import read, reads
from styles.reader import style

CREVICED = ({"pressure_kpa": 12.0, "length_min": 900.0},)


@cache
def recipe(name: str) -> Recipe:
    return read(Path(example_recipes.__file__).parent / f"{name}.toml")


def advice(own: Recipe) -> coat.CoatAdvice:
    return coat.advise(forecast(own), style(own.style) if own.style else None)


def poorly_knit(store_c: float) -> Recipe:
    """The example Cheddar, salted cold and pressed light, in a store of that temperature."""
    own = edit(recipe("thistlecombe-cheddar"), "salt", temperature_c=19.0)
    return edit(edit(own, "press", steps=list(CREVICED)), "cellar", room_c=store_c)


@cache
def creviced() -> coat.CoatAdvice:
    return advice(poorly_knit(6.0))


def unmet(option: coat.Option) -> str:
    return "; ".join(condition.text for condition in option.conditions if condition.met is False)


def test_a_poorly_knit_wheel_goes_in_a_bag_and_not_on_a_natural_rind() -> None:
    got = creviced()
    assert got.knit is not None
    assert got.knit.word in ("open", "creviced")
    assert got.options[0].coat == "bag"
    assert got.options[0].stance == "suits"
    assert got.option("natural").stance == "speaks against"
    assert "crevice" in got.option("natural").speaks_against[0].text
    assert "vacuum bag" in got.sentence
    assert "cloth, as planned" in got.sentence


def test_the_bag_carries_all_its_conditions() -> None:
    conditions = creviced().option("bag").conditions
    assert len(conditions) == 5
    assert all(condition.met for condition in conditions)
    for needed in ("free whey", "pH", "salt", "no gas", "cold"):
        assert any(needed in condition.text for condition in conditions)
    for condition in conditions:
        assert condition.todo
        assert condition.source
        assert condition.have


def test_a_warm_store_leaves_the_bag_with_a_condition_to_meet() -> None:
    warm = advice(poorly_knit(14.0))
    assert "kept cold" in unmet(warm.option("bag"))
    assert warm.option("bag").fit < creviced().option("bag").fit
    assert "only if" in warm.sentence
    assert "kept cold" in warm.sentence


def test_there_is_something_to_do_meanwhile_and_next_time() -> None:
    texts = [point.text for point in creviced().meanwhile]
    assert any("press on" in text for text in texts)
    assert any(text.startswith("next time: ") and "warm" in text for text in texts)
    assert all(point.source for point in creviced().meanwhile)
    assert advice(recipe("weirside-gouda")).meanwhile == ()


def test_gas_speaks_against_sealing() -> None:
    text = (Path(example_recipes.__file__).parent / "thistlecombe-cheddar.toml").read_text("utf-8")
    slow = advice(reads(text.replace('bulk = "1 %"', 'bulk = "0.02 %"')))
    assert slow.figures["held"] == 1.0
    assert slow.figures["gas"] > 0.5
    assert slow.sentence.startswith("The vat is held")
    assert slow.option("bag").stance == "speaks against"
    assert any("gas" in point.text for point in slow.option("bag").speaks_against)
    assert "no gas" in unmet(slow.option("bag"))


def test_salt_outside_its_window_speaks_against_the_bag() -> None:
    meagre = advice(edit(poorly_knit(6.0), "salt", salt_pct=0.3))
    assert meagre.figures["salt_off"] > 1.0
    assert "salt in moisture" in unmet(meagre.option("bag"))
    assert meagre.option("bag").fit < 0.5 * creviced().option("bag").fit


def test_whey_still_running_speaks_against_bag_and_wax() -> None:
    made = forecast(recipe("lantern-colby"))
    figures = coat.facts(made, style("colby"))
    dry, wet = (coat.facts(made, style("colby")) | {"whey_rate": rate} for rate in (0.0, 1.0))
    for name in ("bag", "wax", "coating"):
        assert coat.option(name, wet).fit < 0.4 * coat.option(name, dry).fit
    assert figures["whey_rate"] < 0.3


@pytest.mark.parametrize(
    ("name", "planned"),
    [
        ("highfold-alpine", "washed"),
        ("kitchen-bloom", "bloomy"),
        ("weirside-gouda", "coating"),
        ("lantern-colby", "bag"),
    ],
)
def test_sound_cheeses_suit_the_coat_their_recipe_plans(name: str, planned: str) -> None:
    got = advice(recipe(name))
    assert got.chosen is not None
    assert got.chosen.coat == planned
    assert got.chosen.stance == "suits"


def test_better_knit_never_speaks_less_for_a_natural_rind_or_more_for_a_bag() -> None:
    base = dict(creviced().figures)
    fits = {name: [coat.option(name, base | {"knit": knit / 20.0}).fit for knit in range(21)] for name in coat.COATS}
    assert fits["natural"][-1] == max(fits["natural"])
    assert fits["bag"][0] == max(fits["bag"])
    assert all(low <= high + 1e-9 for low, high in zip(fits["cloth"], fits["cloth"][1:], strict=False))
    assert all(low <= high + 1e-9 for low, high in zip(fits["wax"], fits["wax"][1:], strict=False))


def test_a_dry_store_speaks_against_a_bare_face() -> None:
    damp, dry = (advice(edit(recipe("weirside-gouda"), "cellar", humidity_pct=rh)) for rh in (86.0, 65.0))
    assert dry.option("natural").fit < damp.option("natural").fit
    assert any("cracks" in point.text for point in dry.option("natural").speaks_against)


def test_brined_cheese_needs_none() -> None:
    got = advice(recipe("saltmarsh-white"))
    assert got.options == ()
    assert "brine" in got.sentence


def test_an_unknown_fact_leaves_a_condition_open() -> None:
    known = dict(creviced().figures)
    del known["salt_off"]
    salt = next(one for one in coat.option("bag", known).conditions if "salt" in one.text)
    assert salt.met is None
    assert salt in coat.option("bag", known).open_conditions


def test_every_rule_is_sourced_and_of_a_coat_that_is_one() -> None:
    _, rules, _ = coat.table()
    for rows in rules.values():
        for row in rows:
            assert row.source
            assert row.have
            assert row.coat in (*coat.COATS, "")
            assert row.side in ("for", "against", "")


def test_a_branch_is_advised_on_its_own_form_and_stages() -> None:
    text = (Path(example_recipes.__file__).parent / "thistlecombe-cheddar.toml").read_text("utf-8")
    branch = """
[[branch]]
id = "light"
name = "pressed light"
after = "salt"
share = "50 %"
of = "curd"
[branch.form]
shape = "cylinder"
diameter = "20 cm"
height = "16 cm"
[branch.coat]
kind = "wax"
[[branch.stage]]
id = "light-press"
kind = "press"
steps = [{ pressure = "3 kPa", length = "2 h" }]
[[branch.stage]]
id = "light-store"
kind = "room"
length = "60 d"
room = "6 °C"
"""
    made = forecast(reads(text + branch))
    light = coat.advise(made.branches[0], style("cheddar"))
    whole = coat.advise(made, style("cheddar"))
    assert light.knit is not None
    assert whole.knit is not None
    assert light.knit.score < whole.knit.score
    assert light.knit.score == pytest.approx(made.branches[0].outcomes["knit"].value, abs=1e-6)
    assert light.chosen is not None
    assert light.chosen.coat == "wax"
    assert light.figures["room_c"] == 6.0


def test_no_coat_suits_while_a_condition_of_it_is_broken() -> None:
    warm = dict(creviced().figures) | {"room_c": 15.0, "room_rh": 60.0}
    for name in coat.COATS:
        option = coat.option(name, warm)
        if any(condition.met is False for condition in option.conditions):
            assert option.stance != "suits"
