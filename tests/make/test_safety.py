"""Safety of the make: the published lines flag and pass what they should, and nothing good that follows lifts them."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray

import example_recipes
from designer.forecast import Forecast, forecast
from designer.make import slow_acid
from designer.make.caution import LEVELS, Caution, family, limit, say, table
from designer.make.heat_treatment import pair_met
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from designer.recipe.file import read, reads, writes
from designer.recipe.lower import lower

UNCOOKED, MILLED = family("uncooked"), family("milled")


@cache
def recipe(name: str) -> Recipe:
    return read(Path(example_recipes.__file__).parent / f"{name}.toml")


def changed(name: str, *swaps: tuple[str, str]) -> Recipe:
    """An example with pieces of its text changed."""
    text = (Path(example_recipes.__file__).parent / f"{name}.toml").read_text("utf-8")
    for old, new in swaps:
        assert old in text
        text = text.replace(old, new)
    return reads(text)


def codes(made: Forecast, level: str | None = None) -> set[str]:
    return {caution.code for caution in made.cautions if level in (None, caution.level)}


def found(made: Forecast, code: str) -> Caution:
    return next(caution for caution in made.cautions if caution.code == code)


@dataclass
class Made:
    """A made-up outcome."""

    value: float

    @property
    def low(self) -> float:
        return self.value

    high = low


class Course:
    """A made-up course of temperature and pH through given hours, all in one stage."""

    def __init__(self, hours: list[float], temp: list[float], ph: list[float]) -> None:
        self.time_min = np.arange(0.0, hours[-1] * 60.0 + 0.1, 5.0)
        self.stage = np.zeros(len(self.time_min), np.int32)
        at = np.array(hours) * 60.0
        self.columns = {"temperature_c": np.interp(self.time_min, at, temp), "ph": np.interp(self.time_min, at, ph)}

    def __getitem__(self, name: str) -> NDArray[np.float64]:
        return self.columns[name]


def course(of: str, hours: list[float], temp: list[float], ph: list[float], **outcomes: float) -> list[Caution]:
    """What is said of a course of temperature and pH in a make like that example."""
    made = recipe(of)
    figures = {key: Made(value) for key, value in outcomes.items()}
    rows = lower(made).lanes[0].rows
    return slow_acid.cautions(made, made.stages, rows, 0.0, Course(hours, temp, ph), figures)


# ---- the published check cases, C5.1 to C5.9 -----------------------------------------------------------------
@pytest.mark.parametrize(
    ("fahrenheit", "hours"), [(80, 60.0), (90, 33.3), (95, 28.6), (100, 25.0), (102, 21.4), (110, 18.0)]
)
def test_c5_1_degree_hours_at_a_steady_temperature(fahrenheit: float, hours: float) -> None:
    start = table()["degree_hours"]["start_f"]
    assert slow_acid.degree_hour_limit(fahrenheit) / (fahrenheit - start) == pytest.approx(hours, abs=0.05)
    minute = np.linspace(0.0, hours * 60.0, 200)
    counted, hottest = slow_acid.degree_hours(minute, np.full(200, (fahrenheit - 32.0) / 1.8), np.full(200, 6.0))
    assert counted == pytest.approx(slow_acid.degree_hour_limit(fahrenheit), rel=0.003)
    assert hottest == pytest.approx(fahrenheit)


def test_c5_2_acidity_at_milling_and_drawing() -> None:
    held = slow_acid.milling_acidity(0.35)
    assert held is not None
    assert held.level == "stop"
    assert "Zehren" in held.source
    assert slow_acid.milling_acidity(0.40) is None
    drawn = slow_acid.drawing_acidity(0.13)
    assert drawn is not None
    assert drawn.level == "stop"
    assert slow_acid.drawing_acidity(0.15) is not None
    assert slow_acid.drawing_acidity(0.17) is None


def test_c5_3_six_hours_of_salers_and_saint_nectaire() -> None:
    salers = slow_acid.by_six_hours(MILLED, 6.5)
    assert salers is not None
    assert salers.level == "stop"
    assert slow_acid.by_six_hours(MILLED, 6.2) is None
    nectaire = slow_acid.by_six_hours(UNCOOKED, 5.9)
    assert nectaire is not None
    assert nectaire.level == "watch"
    assert slow_acid.by_six_hours(UNCOOKED, 5.8) is None


@pytest.mark.parametrize(
    ("temp_c", "seconds"),
    [(65, 621), (66, 365), (68, 126), (70, 43.5), (60, 1800), *((temp, 15) for temp in (57, 60, 63, 65, 68))],
)
def test_c5_4_c5_5_c5_9_equal_effect_and_thermising_are_no_pair(temp_c: float, seconds: float) -> None:
    assert pair_met(temp_c, seconds) is None


def test_the_legal_pairs_are_met_in_both_scales() -> None:
    for temp_c, seconds in ((63.0, 1800), (62.78, 1800), (72.0, 15), (71.7, 15)):
        assert pair_met(temp_c, seconds) is not None


# ---- the table ------------------------------------------------------------------------------------------------
def test_every_row_has_its_level_and_source() -> None:
    for key, row in table()["say"].items():
        assert row["level"] in LEVELS, key
        assert row["source"], key
        assert set(row) == {"code", "level", "text", "source"}, key
    for key in table()["limit"]:
        assert limit(key).source
        assert limit(key).have
    for key in table()["family"]:
        assert family(key).source
        assert family(key).have


@given(st.floats(4.0, 7.0), st.floats(0.0, 0.5))
def test_a_sweeter_vat_is_never_judged_milder(ph: float, more: float) -> None:
    for key in table()["family"]:
        here, sweeter = slow_acid.by_six_hours(family(key), ph), slow_acid.by_six_hours(family(key), ph + more)
        if here is not None:
            assert sweeter is not None
            assert LEVELS.index(sweeter.level) <= LEVELS.index(here.level)


# ---- courses --------------------------------------------------------------------------------------------------
def test_a_good_ph_later_never_lifts_a_hold() -> None:
    for later in (5.6, 5.2, 4.6):
        held = course("weirside-gouda", [0, 6, 9, 24], [31, 31, 22, 20], [6.6, 6.5, 5.3, later])
        assert "slow-acid" in [one.code for one in held if one.level == "stop"]
        assert "lifts nothing" in held[0].text


def test_curd_salted_lightly_while_loose_goes_on_souring_and_is_judged_by_its_hours() -> None:
    """A blue or an Asiago gets some 1 % of salt at pH 6.3 and sours in its form; Cheddar's 2.5 % stops the acid."""
    whole = recipe("thistlecombe-cheddar")
    rows = lower(whole).lanes[0].rows
    loose = [stage for stage in whole.stages if stage.kind != "mill"]
    families = {
        (of, pct): slow_acid.family_of(
            [one.model_copy(update={"salt_pct": pct, "of": of}) if one.kind == "salt" else one for one in loose],
            rows,
            39.0,
        )
        for of, pct in (("curd", 1.0), ("curd", 2.5), ("milk", 0.1), ("milk", 0.25))
    }
    assert families == {("curd", 1.0): UNCOOKED, ("curd", 2.5): MILLED, ("milk", 0.1): UNCOOKED, ("milk", 0.25): MILLED}
    assert slow_acid.family_of(whole.stages, rows, 39.0) == MILLED  # milled, however little salt


def test_a_hold_at_milling_stands_beside_a_good_six_hours_and_a_good_day() -> None:
    held = course("thistlecombe-cheddar", [0, 6, 24], [31, 31, 20], [6.6, 5.6, 5.1], ph_mill=5.85)
    assert [one.code for one in held if one.level == "stop"] == ["subnormal-acid"]
    near = course("thistlecombe-cheddar", [0, 6, 24], [31, 31, 20], [6.6, 5.6, 5.1], ph_mill=5.65)
    assert [one.code for one in near] == ["acid-watch"]
    assert course("thistlecombe-cheddar", [0, 6, 24], [31, 31, 20], [6.6, 5.6, 5.1], ph_mill=5.4) == []


def test_a_cool_set_is_counted_in_warm_hours() -> None:
    cool = course("little-thimble", [0, 14, 16, 24, 30], [12, 12, 21, 21, 21], [6.6, 6.5, 6.3, 5.0, 4.6])
    assert cool == []  # fourteen hours at 12 °C do not count
    slow = course("little-thimble", [0, 16, 30, 40], [21, 21, 21, 21], [6.6, 6.3, 5.4, 4.8])
    assert [one.level for one in slow] == ["stop"]
    assert "warm hours" in slow[0].text
    behind = course("little-thimble", [0, 14, 24], [21, 21, 21], [6.6, 5.8, 4.6])
    assert [one.level for one in behind] == ["watch"]


def test_a_vat_without_acid_for_a_day_is_held() -> None:
    dead = course("weirside-gouda", [0, 24], [31, 25], [6.6, 6.5])
    assert {one.level for one in dead} == {"stop"}
    assert any("NO ACID" in one.text for one in dead)


def test_degree_hours_only_warn_and_say_they_are_borrowed() -> None:
    over = [one for one in course("weirside-gouda", [0, 24], [38, 38], [6.6, 5.35]) if one.code == "degree-hours"]
    assert over[0].level == "watch"
    assert "fermented sausage" in over[0].text
    assert "Borrowed" in over[0].text
    assert all("degree" not in row["text"] or "never passes" in row["text"] for row in table()["say"].values())


def test_warm_milk_that_waits_for_its_starter() -> None:
    waiting = edit(recipe("weirside-gouda"), "ripen", end={"by": "time", "length_min": 360.0})
    starter = waiting.starters[0]
    text = writes(waiting).replace(f'id = "{starter.id}"', f'id = "{starter.id}"\nafter = "5 h"', 1)
    made = forecast(reads(text))
    assert "warm-waiting" in codes(made, "watch")
    assert "warm-waiting" not in codes(forecast(recipe("weirside-gouda")))


# ---- whole forecasts ------------------------------------------------------------------------------------------
@pytest.mark.parametrize(
    "name", ["thistlecombe-cheddar", "weirside-gouda", "highfold-alpine", "kitchen-bloom", "little-thimble"]
)
def test_sound_makes_are_not_held(name: str) -> None:
    made = forecast(recipe(name))
    assert codes(made, "stop") == set()
    assert "acid-watch" not in codes(made)


@pytest.mark.parametrize("bulk", ['bulk = "0.001 %"', 'bulk = "0.02 %"'])
def test_a_weak_starter_is_loud_and_first(bulk: str) -> None:
    own = changed("thistlecombe-cheddar", ('bulk = "1 %"', bulk))
    made = forecast(own)
    assert made.cautions[0].level == "stop"
    assert made.cautions[0].code in ("slow-acid", "subnormal-acid")
    assert "hold it" in made.cautions[0].text
    assert made.cautions[0].source


def test_cautions_come_gravest_first() -> None:
    made = forecast(changed("thistlecombe-cheddar", ('bulk = "1 %"', 'bulk = "0.02 %"'), ("pasteurised", "raw")))
    order = [LEVELS.index(caution.level) for caution in made.cautions]
    assert order == sorted(order)


def test_raw_milk_says_sixty_days_are_no_kill_step() -> None:
    made = forecast(changed("weirside-gouda", ('heat = "pasteurised"', 'heat = "raw"')))
    assert "not a kill step" in found(made, "raw-milk").text
    assert "raw-milk" not in codes(forecast(recipe("weirside-gouda")))
    young = forecast(recipe("little-thimble"))
    assert "raw-days" in codes(young)
    assert "people-at-risk" in codes(young)


def test_a_hold_that_is_no_pair_is_called_raw_and_never_equivalent() -> None:
    swap = ('heat_temperature = "63 °C"', 'heat_temperature = "65 °C"')
    made = forecast(changed("thistlecombe-cheddar", swap, ('heat_length = "30 min"', 'heat_length = "12 min"')))
    assert {"heat-pair", "raw-milk"} <= codes(made)
    assert "no listed pair" in found(made, "heat-pair").text
    assert not any("equivalent" in caution.text for caution in made.cautions)


def test_a_vat_hold_asks_for_airspace_and_filling_time() -> None:
    text = found(forecast(recipe("thistlecombe-cheddar")), "heat-treatment").text
    assert "air above the milk at least 3 °C hotter" in text
    assert "filling time" in text


@pytest.mark.parametrize(
    ("name", "allergen"),
    [("lysozyme", "egg"), ("brown mustard seed", "mustard"), ("walnut leaves", "nuts"), ("dark ale", "barley")],
)
def test_allergens_by_the_words_written(name: str, allergen: str) -> None:
    extra = f'\n[[addition]]\nid = "extra"\nwhat = "herbs"\nname = "{name}"\nat = "salt"\nmass = "20 g"\n'
    made = forecast(changed("thistlecombe-cheddar", ("\n[form]", f"{extra}\n[form]")))
    got = [caution for caution in made.cautions if caution.code == "allergen"]
    assert [allergen in caution.text for caution in got] == [True]
    assert got[0].stage == "salt"
    assert "herbs" in codes(made)


def test_words_that_only_contain_an_allergen_are_not_one() -> None:
    extra = '\n[[addition]]\nid = "extra"\nwhat = "herbs"\nname = "nutmeg"\nat = "salt"\nmass = "20 g"\n'
    made = forecast(changed("thistlecombe-cheddar", ("\n[form]", f"{extra}\n[form]")))
    assert "allergen" not in codes(made)


def test_loads_are_judged_by_what_is_hung_and_pressures_by_a_slip_of_the_unit() -> None:
    own = recipe("thistlecombe-cheddar")
    assert own.form is not None
    assert "heavy-press" not in codes(forecast(own))
    step = {"pressure_kpa": 310.0, "length_min": 600.0}
    made = forecast(edit(own, "press", steps=[step]))
    assert {"heavy-press", "load-unit"} <= codes(made)
    by_hand = forecast(
        changed("thistlecombe-cheddar", ("lever = 4", "lever = 1"), ('load = "60 kg"', 'load = "240 kg"'))
    )
    assert "heavy-press" in codes(by_hand)


def test_no_starter_wax_brine_and_chemicals_are_spoken_of() -> None:
    text = writes(recipe("weirside-gouda"))
    head, rest = text.split("[[starter]]", 1)
    bare = reads(head + rest[rest.index("[[addition]]") :])
    assert "no-starter" in codes(forecast(bare), "watch")
    assert "brine" in codes(forecast(recipe("weirside-gouda")))
    assert "cleaning" in codes(forecast(recipe("weirside-gouda")))
    assert "hot-wax" in codes(forecast(recipe("fourways-jack")))


def test_a_warm_lactic_set_is_judged_by_its_first_six_hours() -> None:
    """Forty degrees and hardly any acid is no cool set that may take its time; a good yoghurt vat is told nothing."""
    text = """format = 1
name = "Yoghurt"

[[milk]]
id = "milk"
volume = "10 L"
temperature = "DEGREES"

[[starter]]
id = "starter"
kind = "KIND"
bulk = "DOSE"

[[stage]]
id = "set"
kind = "lactic_set"
length = "14 h"

[[stage]]
id = "hang"
kind = "hang"
length = "10 h"
"""

    def made(degrees: str, kind: str, dose: str) -> Forecast:
        return forecast(reads(text.replace("DEGREES", degrees).replace("KIND", kind).replace("DOSE", dose)))

    assert "acid-watch" in codes(made("43 °C", "yoghurt", "0.001 %"), "watch")
    assert "slow-acid" in codes(made("32 °C", "mesophilic", "0.001 %"), "stop")
    for good in (made("43 °C", "yoghurt", "3 %"), made("22 °C", "mesophilic", "1.5 %")):
        assert not {"slow-acid", "acid-watch"} & codes(good)


def test_acid_for_the_whey_is_none_for_the_cheese() -> None:
    """A cheese without starter whose whey is soured for ricotta is told of no starter, not of acid."""
    text = writes(recipe("weirside-gouda"))
    head, rest = text.split("[[starter]]", 1)
    ricotta = """
[[branch]]
id = "ricotta"
after = "drain"
of = "whey"

[[branch.addition]]
id = "citric"
what = "acid"
acid = "citric"
at = "curdle"
share = "0.05 %"

[[branch.stage]]
id = "curdle"
kind = "acid_heat"
length = "20 min"
temperature = "88 °C"

[[branch.stage]]
id = "basket"
kind = "hang"
length = "2 h"
"""
    made = forecast(reads(head + rest[rest.index("[[addition]]") :] + ricotta))
    assert found(made, "no-starter").text.startswith("No starter")
    assert "heat-curd" in codes(made.branches[0])


def test_a_row_is_filled_with_its_figures() -> None:
    got = say("raw-days", "cellar", days=35.2, limit=60.0, room=1.7)
    assert got.stage == "cellar"
    assert "35 days" in got.text
