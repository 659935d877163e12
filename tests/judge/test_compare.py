"""Compare: stages meet by what they do, equal rows fold, and the parts of the differences add up to 1e-6."""

from __future__ import annotations

from itertools import combinations

import pytest

from designer.forecast import forecast
from designer.judge.align import align
from designer.judge.beside import Lanes
from designer.judge.between import Between
from designer.judge.compare import KEYS, Comparison, compare, outcomes_of, usual_make
from designer.make import kernel
from designer.recipe.document import Recipe
from designer.recipe.edit import add, edit, edit_addition, edit_milk, insert, new_stage, remove
from designer.recipe.end import after
from designer.recipe.error import RecipeError
from designer.recipe.file import read
from designer.recipe.per_milk import as_whole, for_milk
from styles.reader import style
from tests.make.parted_vats import recipe as vat
from tests.make.parted_vats import salted, washed
from tests.recipe.samples import CHEDDAR, EXAMPLES

TIGHT = 1e-6
COLBY = CHEDDAR.with_name("lantern-colby.toml")
GOUDA = CHEDDAR.with_name("weirside-gouda.toml")


@pytest.fixture(scope="module", autouse=True)
def machine_code() -> None:
    kernel.warm_up()


def adds_up(found: Comparison) -> None:
    for key in KEYS:
        if key in found.rest:
            parts = sum(one.worth.get(key, 0.0) for one in found.differences)
            gap = found.right_values[key] - found.left_values[key]
            # Hours of a finish come from ends found to 1e-10 of a pH; the figures of the cheese are exact.
            assert parts == pytest.approx(gap, abs=1e-4 if key == "finish_min" else TIGHT), key
            assert parts + found.rest[key] == pytest.approx(gap, abs=1e-9)


def test_stacked_against_washed() -> None:
    """The two meet at the cut, the cook, the draining and the press; stacking and milling stand alone."""
    rows = align(read(CHEDDAR).stages, read(COLBY).stages)
    roles = {row.role: row for row in rows}
    for role in ("ripen", "set", "cut", "salt", "fill", "press"):
        assert roles[role].left is not None
        assert roles[role].right is not None
    assert roles["stack"].right is None
    assert roles["mill"].right is None
    assert roles["wash"].left is None
    assert [row.left.id for row in rows if row.left] == [stage.id for stage in read(CHEDDAR).stages]
    assert [row.right.id for row in rows if row.right] == [stage.id for stage in read(COLBY).stages]


@pytest.mark.parametrize(
    ("left", "right"), [(CHEDDAR, COLBY), (COLBY, GOUDA), (GOUDA, CHEDDAR)], ids=["stacked-washed", "washed", "back"]
)
def test_parts_add_up_between_whole_makes(left: object, right: object) -> None:
    found = compare(read(left), read(right))  # type: ignore[arg-type]
    assert not found.together
    assert len(found.differences) > 12
    adds_up(found)


def test_every_pair_of_examples_can_be_compared() -> None:
    """Every recipe between two is a recipe: all differences taken across give the other make."""
    for left, right in combinations(map(read, EXAMPLES), 2):
        between = Between(left, right)
        whole = forecast(between.recipe(frozenset(range(len(between.steps)))))
        wanted = forecast(right).outcomes
        for key in KEYS:
            if key in wanted:
                assert whole.outcomes[key].value == pytest.approx(wanted[key].value, rel=1e-6, abs=1e-6), (
                    left.name,
                    right.name,
                    key,
                )


def test_the_same_recipe_is_one_fold() -> None:
    found = compare(read(CHEDDAR), read(CHEDDAR))
    assert found.differences == ()
    assert all(line.folded for line in found.lines)


def test_what_a_difference_is_worth_in_words() -> None:
    base = vat()
    found = compare(base, edit(base, "cook", temperature_c=40.0))
    (only,) = found.differences
    assert only.sentence == "cook: temperature 38 °C → 40 °C"
    assert only.worth["moisture_pct"] < 0.0
    assert only.words("moisture_pct").endswith("points drier")
    assert only.words("moisture_pct") in only.consequences
    assert found.right_values["moisture_pct"] - found.left_values["moisture_pct"] == pytest.approx(
        only.worth["moisture_pct"], abs=TIGHT
    )


def test_a_value_taken_across_is_an_edit_of_the_left() -> None:
    base = vat(washed())
    other = edit(edit(vat(), "cook", temperature_c=40.0), "cut", cut_mm=6.0)
    found = compare(base, other)
    finer = next(one for one in found.differences if one.steps[0].part == "cut")
    taken = found.take(finer)
    assert taken == edit(base, "cut", cut_mm=6.0)
    assert taken.branches == base.branches


def test_a_stage_taken_across_finds_its_place_and_its_doses() -> None:
    base = vat()
    more = insert(base, new_stage(base, "stack", id="pile", end=after(60.0)), after_id="drain")
    found = compare(base, more)
    (only,) = found.differences
    assert only.sentence.startswith("with stack")
    taken = found.take(only)
    assert [stage.id for stage in taken.stages] == [stage.id for stage in more.stages]
    back = compare(more, base)
    assert back.take(back.differences[0]).stages == base.stages
    adds_up(found)


def test_a_stage_gone_hands_its_doses_on() -> None:
    base = vat()
    without = remove(base, "ripen")
    found = compare(base, without)
    gone = next(one for one in found.differences if one.steps[0].what == "stage gone")
    assert found.take(gone).starters[0].at == "set"
    adds_up(found)


def test_per_100_kg_where_milks_differ_in_amount() -> None:
    base = vat()
    half = for_milk(base, 0.5)
    assert compare(base, half).differences == ()
    more = edit_addition(half, "rennet", volume_l=0.0125)
    found = compare(base, more)
    assert found.per_100kg
    (dose,) = found.differences
    assert "per 100 kg" in dose.sentence
    assert "(40.0 IMCU/L)" in dose.sentence
    assert "(50.0 IMCU/L)" in dose.sentence
    assert found.take(dose).additions[0].volume_l == pytest.approx(0.025)


def test_two_bottles_of_the_same_strength_in_the_milk_are_alike() -> None:
    base = vat()
    assert compare(base, edit_addition(base, "rennet", volume_l=0.01, strength_imcu_ml=400.0)).differences == ()


def test_milk_is_compared_by_what_it_holds() -> None:
    base = vat()
    found = compare(base, edit_milk(base, "milk", fat_pct=4.5))
    assert [one.sentence for one in found.apart] == ["milk: fat 3.6 % → 4.5 %"]
    goat = compare(base, edit_milk(base, "milk", species="goat"))
    assert len(goat.apart) == 1
    assert goat.apart[0].worth["fdm_pct"] != 0.0
    adds_up(goat)


def test_against_the_middle_of_a_style() -> None:
    recipe = read(GOUDA)
    usual = usual_make(recipe, style("gouda"))
    found = compare(recipe, usual)
    assert found.differences
    adds_up(found)
    assert found.take(found.ranked()[0]) != recipe


def test_lanes_of_a_vat_are_compared_as_makes_of_their_own() -> None:
    both = add(vat(salted("mild", 1.8, 50.0)), washed(30.0))
    made = forecast(both)
    for branch, lane in zip(both.branches, made.branches, strict=True):
        whole = forecast(as_whole(both, branch.id))
        for key in ("moisture_pct", "ph_24h", "salt_pct", "cheese_kg"):
            wanted = lane.outcomes[key].value
            if branch.id == "mild" and key == "cheese_kg":
                wanted /= 0.7  # the other branch parts first and takes its share of the vat
            assert whole.outcomes[key].value == pytest.approx(wanted, rel=1e-6), (branch.id, key)
    found = compare(as_whole(both, None), as_whole(both, "washed"))
    assert found.per_100kg
    assert any("wash" in one.sentence for one in found.differences)
    with pytest.raises(KeyError):
        as_whole(both, "none")


def test_a_value_goes_from_lane_to_lane_both_ways_and_leaves_the_others_alone() -> None:
    twins = read(CHEDDAR.with_name("millpond-twins.toml"))
    for lanes in (Lanes(None, "plain"), Lanes("plain", None)):
        found = compare(*lanes.sides(twins))
        adds_up(found)
        for one in found.differences:
            taken = lanes.taken(twins, found.take(one))
            forecast(taken)
            kept = [taken.stages] if lanes.left == "plain" else [taken.branches[0].stages]
            assert kept == ([twins.stages] if lanes.left == "plain" else [twins.branches[0].stages])
            assert taken.branches[1] == twins.branches[1].but(after=taken.branches[1].after)
            assert lanes.sides(taken)[0] != lanes.sides(twins)[0]
    shared = edit(as_whole(twins, "plain"), "cut", cut_mm=12.0)
    with pytest.raises(RecipeError, match="before the lanes part"):
        Lanes("plain", None).taken(twins, shared)


def test_only_what_goes_together_is_told_together_and_none_of_its_stages_folds() -> None:
    """A vat's power and the stage that is heated by it: one difference of two steps, all others by themselves."""
    found = compare(read(CHEDDAR), read(CHEDDAR.with_name("highfold-alpine.toml")))
    assert found.together
    (both,) = [one for one in found.differences if len(one.steps) > 1]
    assert {step.what for step in both.steps} == {"vat", "stage more"}
    heated = next(step.row for step in both.steps if step.what == "stage more")
    assert not found.lines[heated].folded
    assert found.lines[heated].differences == (both,)
    adds_up(found)


def test_a_mixture_that_cannot_be_is_told_together() -> None:
    """Measure refuses every single step of structure, so they are weighed as one; the sum still holds."""
    left, right = read(CHEDDAR), read(COLBY)
    stages = {len(left.stages), len(right.stages)}

    def fussy(recipe: Recipe) -> dict[str, float]:
        if len(recipe.stages) not in stages:
            raise RecipeError("half of it is not a make")
        return dict(outcomes_of(recipe))

    found = compare(left, right, measure=fussy)
    assert found.together
    adds_up(found)
