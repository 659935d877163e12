"""Branches: what leaves a vat and what stays add up to the milk, the salt and the water that went in."""

from __future__ import annotations

from functools import cache
from itertools import count
from typing import Any

import numpy as np
import pytest

from designer.forecast import Forecast, forecast
from designer.judge.levers import effects
from designer.judge.movable import movables, moved
from designer.make import band, kernel, run
from designer.make.many import NOWHERE
from designer.make.march import OUT_EXTRA
from designer.make.parting import Parted, Parting, PartingError
from designer.make.start import first_state, parameters
from designer.make.state import (
    ACID,
    ACID_IN,
    ASH,
    CALCIUM,
    CASEIN,
    COLLOIDAL,
    CURD,
    DRY_SALT,
    FAT,
    GALACTOSE,
    GONE,
    HEXOSE,
    LACTATE,
    SALT,
    SALT_IN,
    SERUM,
    WHEY,
    WHEY_PROTEIN,
)
from designer.recipe.document import Addition, Branch
from designer.recipe.edit import add, edit_recipe
from designer.recipe.end import after
from designer.recipe.error import RecipeError
from designer.recipe.lower import lower, lower_branch, milk_left
from designer.recipe.stages.ripen import Ripen
from tests.make.parted_vats import cream, of_whole_milk, recipe, salted, stood, washed, whey_cheese

TIGHT = 1e-9
CASES = {
    "half washed, half plain": (washed(),),
    "two salts, a third each": (salted("mild", 1.8, 33.3), salted("strong", 3.0, 33.3)),
    "whey cheese from the whey": (whey_cheese(),),
    "whey drawn from over the curd": (whey_cheese("cut", 40.0),),
    "cream off before the set": (cream(),),
    "two whey cheeses, the second of what is left": (whey_cheese("drain", 60.0), whey_cheese("salt", 100.0, "last")),
    "after the press, both halves": (salted("rubbed", 1.0, 50.0, "press"),),
    "all at once": (cream(30.0), washed(40.0), whey_cheese(), salted("mild", 1.8, 50.0)),
    "all of the curd goes": (salted("mild", 1.8, 100.0),),
}


@cache
def lanes(name: str) -> tuple[run.LaneRun, tuple[run.LaneRun, ...], tuple[run.Start, ...]]:
    """The main lane, the branches alone, and where they begin."""
    made = recipe(*CASES[name])
    schedule = lower(made)
    p = parameters(schedule.milk)[0]
    rows = run.until_room(schedule.lanes[0].rows, None)
    wait = kernel.prepare(run.day_row(len(made.stages) - 1, 20.0, rows[-1]))
    order = [stage.id for stage in made.stages]
    partings = [
        Parting(int(np.flatnonzero(rows["stage"] == order.index(one.after))[-1]), one.of, one.share_pct / 100.0)
        for one in made.branches
    ]
    main = run.run_main(schedule, rows, first_state(schedule.milk, p), p, wait, partings=partings)
    until = schedule.starter_min + run.DAY_MIN
    branches = []
    for branch, parting, start in zip(made.branches, partings, main.starts, strict=True):
        lane = lower_branch(made, branch, schedule.milk, start.weight * schedule.milk.mass_kg)
        own_rows = run.until_room(lane.rows, None)
        own, _ = run.run_branch(main, start, parting.row, own_rows, until, wait, whole=branch.of == "curd")
        branches.append(own)
    return main, tuple(branches), main.starts


def over_all(name: str, total: object) -> float:
    """A sum over curd, whey and run-off of all lanes, each by its weight; whey that went its own way once only."""
    main, branches, _ = lanes(name)
    out = 0.0
    for lane in (main, *branches):
        y = lane.path.out[-1, OUT_EXTRA:].copy()
        y[GONE : GONE + 12] -= lane.taken
        out += lane.weight * float(total(y))  # type: ignore[operator]
    return out


def over_phases(y: np.ndarray, component: int) -> float:
    return float(y[CURD + component] + y[WHEY + component] + y[GONE + component])


def first(name: str, total: object) -> float:
    """The same sum when all the starter is in."""
    main, _, _ = lanes(name)
    return float(total(main.path.out[1, OUT_EXTRA:]))  # type: ignore[operator]


TOTALS = {
    "fat": lambda y: over_phases(y, FAT),
    "protein": lambda y: over_phases(y, CASEIN) + over_phases(y, WHEY_PROTEIN),
    "serum": lambda y: over_phases(y, SERUM),
    "hexose equivalents": lambda y: over_phases(y, HEXOSE) + over_phases(y, GALACTOSE) + 0.5 * over_phases(y, LACTATE),
    "calcium": lambda y: over_phases(y, CALCIUM) + y[COLLOIDAL],
    "salt less what was given": lambda y: over_phases(y, SALT) + y[DRY_SALT] - y[SALT_IN],
    "acid less what was made and given": lambda y: over_phases(y, ACID) - over_phases(y, LACTATE) - y[ACID_IN],
    "ash": lambda y: over_phases(y, ASH) + float(parameters(lower(recipe()).milk)["ash_per_calcium"][0]) * y[COLLOIDAL],
}


@pytest.mark.parametrize("name", CASES)
@pytest.mark.parametrize("total", TOTALS)
def test_lanes_add_up(name: str, total: str) -> None:
    assert over_all(name, TOTALS[total]) == pytest.approx(first(name, TOTALS[total]), abs=TIGHT)


@pytest.mark.parametrize("name", CASES)
def test_a_branch_begins_as_what_was_there(name: str) -> None:
    """Its first kilogram of curd, whey or cream holds exactly what the share of the vat held."""
    main, branches, starts = lanes(name)
    for branch, start in zip(branches, starts, strict=True):
        y = np.nanmean(start.y, axis=0)
        assert np.allclose(branch.path.out[0, OUT_EXTRA + CURD : OUT_EXTRA + CURD + 2], y[CURD : CURD + 2], atol=1e-12)
        assert branch.weight == start.weight
    curd = [start.weight for start, own in zip(starts, CASES[name], strict=True) if own.of == "curd"]
    if curd and len(curd) == len(starts):
        assert main.weight + sum(curd) == pytest.approx(1.0, abs=1e-12)


@pytest.fixture(scope="module", autouse=True)
def machine_code() -> None:
    kernel.warm_up()


def made(*branches: Branch, **changes: object) -> Forecast:
    return forecast(edit_recipe(recipe(*branches), **changes))


def test_half_washed_half_plain() -> None:
    """The washed half is moister, with less sugar and acid in its water; both weigh about what the vat gives alone."""
    both, alone = made(washed()), made()
    plain, sweet = both.outcomes, both.branches[0].outcomes
    assert plain["moisture_pct"].value == pytest.approx(alone.outcomes["moisture_pct"].value, abs=1e-9)
    assert plain["cheese_kg"].value == pytest.approx(0.5 * alone.outcomes["cheese_kg"].value, rel=1e-9)
    assert sweet["moisture_pct"].value > plain["moisture_pct"].value
    sugar = [
        (one["lactose_pct"].value + one["lactate_pct"].value) / one["moisture_pct"].value for one in (sweet, plain)
    ]
    assert sugar[0] < 0.9 * sugar[1]
    assert sweet["cheese_kg"].value == pytest.approx(plain["cheese_kg"].value, rel=0.1)
    # What came before the parting belongs to both.
    assert sweet["floc_min"].value == plain["floc_min"].value
    assert 80.0 < sweet["fat_recovery_pct"].value < 99.0


def test_two_salts() -> None:
    parted = made(salted("strong", 3.0, 50.0))
    assert parted.branches[0].outcomes["salt_pct"].value > parted.outcomes["salt_pct"].value + 0.3
    assert parted.branches[0].outcomes["ph_mill"].value == pytest.approx(parted.outcomes["ph_mill"].value, abs=1e-9)


def test_whey_cheese_takes_the_whey_that_has_run_off_and_leaves_the_cheese_as_it_was() -> None:
    parted, alone = made(whey_cheese()), made()
    for key in ("moisture_pct", "ph_24h", "cheese_kg", "whey_kg_per_100kg"):
        assert parted.outcomes[key].value == alone.outcomes[key].value
    whey = parted.branches[0]
    assert whey.weight == pytest.approx(0.8 * 0.87, abs=0.05)
    assert 1.0 < whey.outcomes["cheese_kg"].value < 8.0


def test_whey_carries_starter_and_goes_on_souring() -> None:
    """Most cells stay with the curd: the whey sours, but later; without a tenth of them it would keep its pH."""
    stood = Branch(id="stood", after="drain", share_pct=80.0, of="whey", stages=(Ripen(id="stand", end=after(600.0)),))
    whey = made(stood).branches[0]
    assert whey.trace["ph"][0] == pytest.approx(whey.trace["ph_whey"][0], abs=1e-9)
    assert whey.trace["meso"][-1] > 2.0 * whey.trace["meso"][0] > 0.0
    assert whey.trace["ph"][-1] < whey.trace["ph"][0] - 0.3
    main = made(stood)
    curd = np.interp(whey.trace.time_min[0], main.trace.time_min, main.trace["meso"])
    assert whey.trace["meso"][0] < 0.2 * curd


def test_cream_takes_the_starter_of_its_serum() -> None:
    sour = made(cream()).branches[0].trace
    assert sour["meso"][0] > 0.0
    assert sour["ph"][-1] < sour["ph"][0] - 0.2


def test_whey_drawn_from_over_the_curd_is_gone_from_there() -> None:
    drawn = made(whey_cheese("cut", 60.0))
    at = drawn.trace.time_min.searchsorted(drawn.stages[3].start_min, side="right")
    assert drawn.trace["whey_kg_per_100kg"][at] > 5.0


def test_cream_off_makes_a_leaner_cheese() -> None:
    skimmed, whole = made(cream()), made()
    assert skimmed.outcomes["fdm_pct"].value < whole.outcomes["fdm_pct"].value - 8.0
    assert skimmed.outcomes["fat_recovery_pct"].value < 100.0
    assert skimmed.branches[0].outcomes["fat_pct"].value == pytest.approx(40.0, abs=0.5)


def test_milk_that_left_before_the_cream_counts_from_what_it_held() -> None:
    """Cream taken later is nothing to it: neither its cheese, nor what it recovers, nor any of their draws."""
    early, alone = forecast(stood(of_whole_milk(), cream()), members=16), forecast(stood(of_whole_milk()), members=16)
    whole, there = early.lane("whole"), alone.lane("whole")
    assert early.outcomes["fdm_pct"].value < alone.outcomes["fdm_pct"].value - 8.0
    assert whole.bands is not None
    assert there.bands is not None
    for key, one in there.outcomes.items():
        assert whole.outcomes[key].value == pytest.approx(one.value, rel=1e-9), key
        assert whole.bands.samples[key] == pytest.approx(there.bands.samples[key], rel=1e-9), key


def test_amounts_in_kilograms_count_for_the_share_they_go_to() -> None:
    """Fifty grams of salt in half the curd salt it twice as much as in the whole."""
    salt = Addition(id="by-hand", what="salt", at="salt", mass_kg=0.2)
    whole = add(edit_recipe(recipe()), salt)
    half = add(whole, salted("mild", 2.4, 50.0))
    plain = forecast(add(whole, salted("mild", 2.4, 50.0, "press")))
    assert plain.outcomes["salt_pct"].value == pytest.approx(forecast(whole).outcomes["salt_pct"].value, abs=1e-9)
    assert forecast(half).outcomes["salt_pct"].value > plain.outcomes["salt_pct"].value + 0.5
    milk = lower(half).milk
    assert milk_left(half, 5, milk) == 0.5
    assert milk_left(half, 4, milk) == 1.0


def test_bands_know_of_the_parting() -> None:
    banded = forecast(recipe(cream(100.0)), members=16)
    fat = banded.outcomes["fdm_pct"]
    assert fat.low <= fat.value <= fat.high < 20.0
    assert banded.outcomes["cheese_kg"].high < 12.0


def test_branches_have_bands_from_the_same_draws() -> None:
    """Two halves that go the same way differ by nothing, draw by draw."""
    twin = salted("twin", 2.4, 50.0)
    main, branch = forecast(recipe(twin), members=16).lanes
    assert main.bands is not None
    assert branch.bands is not None
    for key in ("moisture_pct", "salt_pct", "cheese_kg"):
        assert np.allclose(main.bands.samples[key], branch.bands.samples[key], rtol=1e-3), key
        one = branch.outcomes[key]
        assert one.low <= one.value <= one.high, key
        assert one.low < one.high, key
    for name, low in branch.bands.low.items():
        assert low.shape == branch.trace.time_min.shape
        assert (low <= branch.bands.high[name] + 1e-12).all()


def test_draws_of_all_lanes_share_out_their_milk() -> None:
    """What the draws make of the curd in every lane adds up to what they make of an unparted vat."""
    parted = forecast(recipe(salted("mild", 2.4, 50.0)), members=16)
    whole = forecast(recipe(), members=16)
    assert whole.bands is not None
    kg = sum(lane.bands.samples["cheese_kg"] for lane in parted.lanes if lane.bands is not None)
    assert np.allclose(kg, whole.bands.samples["cheese_kg"], rtol=2e-3)


def test_the_bands_of_whey_and_cream_lie_around_them() -> None:
    _, sour, curds = forecast(recipe(cream(50.0), whey_cheese()), members=16).lanes
    for lane, key in ((sour, "ph_end"), (curds, "moisture_pct"), (curds, "yield_kg_per_100kg")):
        assert lane.bands is not None
        assert lane.branch_id is not None
        assert lane.outcomes[key].low < lane.outcomes[key].high, (lane.branch_id, key)


@pytest.mark.parametrize(("without", "banded"), [(3, True), (9, False)])
def test_draws_without_whey_are_left_out_and_counted(
    monkeypatch: pytest.MonkeyPatch, without: int, banded: bool
) -> None:  # fmt: skip
    """Some draws have nothing to part with: the bands are of the others, and it is said; of too few there are none."""
    whole, each = band.part, count()

    def some(*args: Any) -> Parted:
        if next(each) < without:
            raise PartingError
        return whole(*args)

    monkeypatch.setattr(band, "part", some)
    for lane in forecast(recipe(whey_cheese()), members=16).lanes:
        said = next(one for one in lane.cautions if one.code in ("draws-without", "no-bands"))
        assert f"In {without} of 16 draws" in said.text
        assert "branch “" in said.text
        assert (lane.bands is not None) == banded
        assert lane.bands is None or len(lane.bands.samples["moisture_pct"]) == 16 - without


def test_a_member_without_whey_is_lost() -> None:
    """The vat has not given any whey yet, or it has."""
    schedule = lower(recipe(whey_cheese()))
    rows = run.until_room(schedule.lanes[0].rows, None)
    wait = kernel.prepare(run.day_row(0, 20.0, rows[-1]))
    main = band.Way(rows, wait, NOWHERE)
    for at, lost in ((0, 4), (len(rows) - 1, 0)):
        side = band.Way(run.until_room(schedule.lanes[1].rows, None), wait, NOWHERE, Parting(at, "whey", 0.9))
        made, without = band.marched(schedule.milk, schedule.starter_min, main, [side], 4)
        assert without == lost
        assert (made is None) == (lost == 4)


@pytest.mark.parametrize(
    ("branch", "word"),
    [(whey_cheese("ripen"), "no whey there yet"), (cream().but(after="cut"), "before it is cut")],
)
def test_there_must_be_something_to_part_with(branch: Branch, word: str) -> None:
    with pytest.raises(RecipeError, match=word):
        made(branch)


def test_what_moves_it_knows_what_is_left_in_the_vat() -> None:
    """A dose in kilograms after the parting, moved and not: the quick way agrees with the forecast in full."""
    base = add(recipe(salted("mild", 2.4, 50.0)), Addition(id="by-hand", what="salt", at="salt", mass_kg=0.2))
    more = next(one for one in movables(base) if one.path == ("milk", "volume_l"))
    found = effects(base, [more], [130.0])
    wanted = [forecast(one).outcomes["salt_pct"].value for one in (base, moved(base, more, 130.0))]
    assert found["salt_pct"][1] - found["salt_pct"][0] == pytest.approx(wanted[1] - wanted[0], rel=0.1)
