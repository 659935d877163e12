"""The verdict: met, near, not met, by how much, which rules apply; on figures chosen for the test."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

import pytest

from designer import forecast as forecasts
from designer.judge.check import check, decimals_of
from designer.judge.row_units import told
from designer.judge.verdict import AGE, CURVE, LIMIT, MAKE, MILK, QUALITY, Row, Verdict, worst
from designer.recipe.examples import example
from designer.recipe.file import read
from styles.reader import StyleError, reads, style, styles
from tests.judge.made_up import made_up, spread


def row(verdict: Verdict, quantity: str, rules: str = "") -> Row:
    """The one row of a quantity (and rule set)."""
    (found,) = [one for one in verdict.rows if one.quantity == quantity and one.rules == rules]
    return found


def cheddar(moisture: float, fat: float = 32.8, **others: float) -> dict[str, float]:
    """Outcomes of a cheese by its moisture and fat, the derived ones with it."""
    derived = {"fdm_pct": 100 * fat / (100 - moisture), "mnfs_pct": 100 * moisture / (100 - fat)}
    return {"moisture_pct": moisture, "fat_pct": fat, **derived, **others}


def test_a_cheddar_inside_every_limit_is_met() -> None:
    verdict = check(made_up(), "cheddar")
    assert verdict.state == "met"
    assert verdict.rules == ("us", "codex", "uk", "class", "first-grade", "second-grade")
    moisture = row(verdict, "moisture_pct", "us")
    assert (moisture.low, moisture.high, moisture.margin) == (None, 39, pytest.approx(2.0))
    assert moisture.sentence == "2.0 points under the limit of 39 %"
    assert moisture.rule == "United States, 21 CFR 133.113"
    assert moisture.have == "published, read"


def test_a_wet_cheddar_is_not_met_and_says_by_how_much() -> None:
    verdict = check(made_up(cheddar(39.8)), "cheddar")
    assert verdict.state == "not met"
    assert row(verdict, "moisture_pct", "us").sentence == "0.8 points over the limit of 39 %"
    assert verdict.sentence.startswith("Does not meet United States, 21 CFR 133.113: Moisture, 0.8 points over")


@pytest.mark.parametrize(("moisture", "state"), [(38.4, "met"), (38.6, "near"), (39.0, "near"), (39.01, "not met")])
def test_near_is_inside_but_close(moisture: float, state: str) -> None:
    assert row(check(made_up(cheddar(moisture)), "cheddar"), "moisture_pct", "us").state == state


def test_a_lean_cheddar_is_held_to_the_dry_matter_of_its_own_fat() -> None:
    rich, lean = (check(made_up(cheddar(44.0, fat)), "cheddar") for fat in (28.0, 25.0))
    assert row(rich, "dry_matter_pct", "codex").low == 61  # FDM 50.0
    assert row(rich, "dry_matter_pct", "codex").state == "not met"
    assert row(lean, "dry_matter_pct", "codex").low == 57  # FDM 44.6
    assert row(lean, "dry_matter_pct", "codex").sentence == "1.0 points under the least, 57 % at this fat"
    skim = row(check(made_up(cheddar(50.0, 5.0)), "cheddar"), "dry_matter_pct", "codex")
    assert skim.state == "not met"
    assert "no such cheese below 22 % fat in dry matter" in skim.sentence


def test_members_say_how_sure_it_is() -> None:
    members = {"moisture_pct": spread(38.2, 0.625), "fdm_pct": spread(52.0, 0.1)}
    verdict = check(made_up(cheddar(38.2), members=members), "cheddar")
    assert row(verdict, "moisture_pct", "us").sentence == "0.8 points under the limit of 39 %, likely inside: 9 in 10"
    assert row(verdict, "moisture_pct", "us").state == "met"
    wide = {"moisture_pct": spread(38.2, 1.6), "fdm_pct": spread(52.0, 0.1)}
    unsure = row(check(made_up(cheddar(38.2), members=wide), "cheddar"), "moisture_pct", "us")
    assert unsure.state == "near"
    assert unsure.chance == pytest.approx(0.69, abs=0.02)
    outside = row(
        check(made_up(cheddar(39.6), members=members | {"moisture_pct": spread(39.6, 0.6)}), "cheddar"),
        "moisture_pct",
        "us",
    )
    assert outside.sentence.endswith("likely outside: 8 in 10")


def test_members_share_the_bands_of_fat() -> None:
    """Half the members lie under 48 % FDM, where 57 % dry matter is enough; 59 % is between the two."""
    members = {"moisture_pct": spread(41.0, 0.01), "fdm_pct": spread(48.0, 0.5)}
    verdict = check(made_up(cheddar(41.0, 28.4), members=members), "cheddar", rules=["codex"])
    assert row(verdict, "dry_matter_pct", "codex").chance == pytest.approx(0.5, abs=0.01)
    assert verdict.chance == pytest.approx(0.5, abs=0.01)


def test_all_limits_at_once_are_less_sure_than_each() -> None:
    members = {"moisture_pct": spread(38.2, 1.0), "fdm_pct": spread(50.5, 0.6)}
    verdict = check(made_up(cheddar(38.2, 31.2), members=members), "cheddar", rules=["us"])
    chances = [one.chance for one in verdict.limits if one.chance is not None]
    assert verdict.chance is not None
    assert verdict.chance < min(chances)


def test_one_rule_set_alone() -> None:
    verdict = check(made_up(cheddar(44.0, 25.0)), "cheddar", rules=["class"])
    assert verdict.rules == ("class",)
    assert {one.section for one in verdict.rows} == {"class", "make", "curve"}
    with pytest.raises(StyleError, match="no rule set “ussr”"):
        check(made_up(), "cheddar", rules=["ussr"])


def test_rules_for_another_milk_are_left_out_with_the_reason() -> None:
    verdict = check(made_up(species="goat"), "cheddar")
    assert verdict.rules == ("class", "first-grade", "second-grade")
    assert any("speaks of cow's milk, not of goat's" in one for one in verdict.conditions)
    claimed = check(made_up(species="goat"), "cheddar", rules=["us"])
    assert claimed.state == "not met"
    assert row(claimed, "milk", "us").section == MILK


def test_a_rule_that_asks_for_pasteurised_milk() -> None:
    outcomes = cheddar(42.0, 30.0)
    assert check(made_up(outcomes), "monterey").state == "met"
    raw = check(made_up(outcomes, heat="raw"), "monterey")
    assert raw.state == "not met"
    assert row(raw, "heat", "us").sentence == "the milk must be high heat or pasteurised; it is raw"


def test_raw_milk_must_age_and_sixty_days_are_no_kill_step() -> None:
    assert not check(made_up(days=30), "cheddar").section(AGE)
    raw = check(made_up(heat="raw", days=30), "cheddar")
    assert raw.state == "not met"
    assert row(raw, "age_days", "us").sentence.startswith("30 days short of the 60")
    assert "not a kill step" in row(raw, "age_days", "us").sentence
    assert check(made_up(heat="raw", days=75), "cheddar").state == "met"
    unsaid = check(made_up(heat="raw"), "cheddar")
    assert not unsaid.section(AGE)
    assert any("must be 60 days old" in one for one in unsaid.conditions)


def test_grams_of_dry_matter_in_a_piece() -> None:
    outcomes = cheddar(52.0, 24.0, cheese_kg=10.0)  # 250 g a piece, 120 g dry matter
    piece = row(check(made_up(outcomes), "camembert", rules=["fr"]), "dry_matter_g_piece", "fr")
    assert piece.value == pytest.approx(120.0)
    assert piece.sentence == "10 g over the least, 110 g"


def test_quality_windows_do_not_change_the_state() -> None:
    verdict = check(made_up(cheddar(38.3, 31.8)), "cheddar")
    assert row(verdict, "mnfs_pct", "first-grade").section == QUALITY
    assert worst(verdict.section(QUALITY)) == "not met"
    assert verdict.state == "met"


def test_settings_of_the_make_against_the_usual() -> None:
    verdict = check(made_up(), "cheddar")
    assert row(verdict, "floc_multiple").value == pytest.approx(3.0)
    assert row(verdict, "floc_multiple").sentence == "inside the usual 2.5 to 3.5 ×"
    assert row(verdict, "cut_mm").state == "met"
    assert row(verdict, "cook_c").value == 39.0
    assert row(verdict, "cook_rate_c_min").value == pytest.approx(0.2)
    assert row(verdict, "salt_curd_pct").state == "met"
    late = check(made_up({"floc_min": 19.0, "cut_min": 40.0}), "cheddar")
    assert row(late, "floc_min").state == "near"
    assert row(late, "floc_min").sentence == "1 min over the usual 8 to 18 min"
    assert row(late, "floc_multiple").state == "not met"
    assert late.state == "met"
    assert worst(late.section(MAKE, CURVE)) == "not met"


def test_rooms_against_those_of_the_style() -> None:
    verdict = check(made_up(days=60), "cheddar")
    assert row(verdict, "room_c@room").sentence == "inside the usual 12 to 14 °C"
    assert row(verdict, "room_rh_pct@room").state == "met"
    assert row(check(made_up(days=60), "camembert"), "room_rh_pct@room").state == "not met"


def test_gates_stand_on_the_curve_where_the_make_is() -> None:
    verdict = check(made_up(), "cheddar")
    assert row(verdict, "ph@drain").minute == 150.0
    assert row(verdict, "ph@drain").state == "met"
    assert row(verdict, "ph@mill").minute == 170.0
    assert row(verdict, "ph@h24").minute == 1440.0
    slow = row(check(made_up(ph={150.0: 6.13}), "cheddar"), "ph@drain")
    assert (slow.state, slow.sentence) == ("near", "0.03 over the usual 6 to 6.1")
    assert row(check(made_up(ph={150.0: 6.3}), "cheddar"), "ph@drain").state == "not met"


def test_what_a_rule_limits_and_nobody_knows_is_said() -> None:
    forecast = made_up()
    without = {key: one for key, one in forecast.outcomes.items() if not key.startswith("salt")}
    verdict = check(replace(forecast, outcomes=without), "gouda", rules=["holland"])
    assert any("limits salt in dry matter, which is not known here" in one for one in verdict.conditions)
    assert all(one.quantity != "salt_in_dry_matter_pct" for one in verdict.rows)


def test_strict_ends_are_strict() -> None:
    house = reads(
        'format = 1\nname = "House"\nfamily = "f"\n[[rules]]\nset = "own"\nname = "Own"\nrule = "house"\n'
        'kind = "legal limit"\nmoisture_pct = "> 37, <= 40"\nsource = "practice"\nhave = "derived"\n',
        key="house",
    )
    assert check(made_up(cheddar(37.0)), house).state == "not met"
    assert check(made_up(cheddar(38.0)), house).state == "met"
    assert check(made_up(cheddar(40.0)), house).state == "near"


FORBIDDEN = re.compile(r"\b(compl(y|ies|iant)|certif|guarantee|safe|legal(ly)? ok|pass(es)?)\b", re.IGNORECASE)


@pytest.mark.parametrize("key", [one.key for one in styles()])
@pytest.mark.parametrize("outcomes", [{}, cheddar(30.0, 33.0), cheddar(52.0, 24.0), cheddar(80.0, 4.0)])
def test_no_verdict_ever_certifies(key: str, outcomes: Mapping[str, float]) -> None:
    members = {name: spread(value, 0.5) for name, value in {**cheddar(37.0), **outcomes}.items()}
    for forecast in (made_up(outcomes), made_up(outcomes, members=members, heat="raw", species="goat")):
        verdict = check(forecast, key)
        assert verdict.state in ("met", "near", "not met")
        for sentence in (verdict.sentence, *(one.sentence for one in verdict.rows), *verdict.conditions):
            assert not FORBIDDEN.search(sentence)
            assert "nan" not in sentence
            assert "inf" not in sentence
        if verdict.state == "met" and verdict.section(LIMIT):
            assert "forecast" in verdict.sentence


def test_every_row_says_its_source_and_how_we_have_it() -> None:
    for one in check(made_up(heat="raw", days=10), style("emmental")).rows:
        assert one.source
        assert one.have


def test_told_in_other_units_a_row_stands_as_it_stood() -> None:
    made = forecasts.forecast(read(example()))
    for key in ("cheddar", "gouda", "alpine", "mozzarella", "camembert"):
        for one in check(made, key).rows:
            here, decimals = told(one, "us")
            assert told(one, "metric") == (one, decimals_of(one.quantity))
            assert (here.state, here.margin, here.source) == (one.state, one.margin, one.source)
            if here.unit == one.unit:
                assert here == one
                continue
            assert here.unit in ("°F", "°F/min", "in", "psi")
            assert here.value == round(here.value or 0.0, decimals)
            assert here.unit in here.sentence
            assert here.sentence.startswith("inside") is one.sentence.startswith("inside")
