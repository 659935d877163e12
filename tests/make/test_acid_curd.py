"""Acid curd: where it sets, how it drains hung, ladled or pressed, and acid-and-heat curd, each against its figures."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import pytest

from designer.forecast import forecast
from designer.make import kernel
from designer.make.march import OUT_EXTRA
from designer.make.set import acid_gelation_ph, firmness_acid, heat_curdled
from designer.make.start import first_state, parameters
from designer.make.state import CURD, FAT, T
from designer.make.syneresis import acid_gel_open, acid_gel_per_min, contraction_kpa
from designer.make.validity import LACTIC
from designer.recipe.edit import edit
from designer.recipe.end import after
from designer.recipe.schedule import (
    GEL_ACID_HEAT,
    GEL_LACTIC,
    PLACE_DRAINED,
    PLACE_MILK,
    PLACE_MOULD,
    PLACE_PRESS,
    PLACE_UNDER_WHEY,
    T_FOLLOW,
    T_RAMP,
    Milk,
    as_rows,
    row,
)
from designer.validate.makes import makes
from tests.make.families import COW, composition, last, ready
from tests.speed import lsoda

P = lsoda.named(parameters(COW)[0])


def lactic(**setting: float) -> list[dict[str, float]]:
    """Soured overnight, then ladled into forms or hung, then perhaps pressed."""
    get = setting.get
    room: dict[str, Any] = {"t_law": T_FOLLOW, "follow_c": get("room_c", 18.0), "va_mm": 20.0, "every_min": 5.0}
    room["height_mm"] = get("height_mm", 60.0)
    place = PLACE_DRAINED if get("hung", 1.0) else PLACE_MOULD
    return [
        row(minutes=60 * get("sour_h", 18.0), t_end_c=get("set_c", 21.0), inoculum_meso=0.02, gel=GEL_LACTIC,
            rennet_imcu_l=get("rennet", 2.0), every_min=5),
        row(stage=1, minutes=60 * get("hang_h", 10.0), place=place, whey_off=1.0, cut_mm=get("cut_mm", 30.0), **room),
        row(stage=2, minutes=60 * get("press_h", 0.0), place=PLACE_PRESS, load_kpa=get("kpa", 3.0), **room),
    ]  # fmt: skip


def moisture(rows: list[dict[str, float]], milk: Milk = COW, **constants: float) -> float:
    ready()
    p = parameters(milk)
    for name, value in constants.items():
        p[name] = value
    path = kernel.march(kernel.prepare(as_rows(rows)), first_state(milk, p[0]), p[0])
    return composition(last(path))["moisture_pct"]


@pytest.mark.parametrize(
    ("setting", "low", "high", "sign"),
    [
        ("hang_h", 3.0, 24.0, -1),
        ("room_c", 8.0, 26.0, -1),
        ("rennet", 0.0, 6.0, -1),
        ("cut_mm", 10.0, 60.0, +1),
        ("height_mm", 25.0, 120.0, -1),
        ("sour_h", 9.0, 18.0, -1),
        ("press_h", 0.0, 6.0, -1),
    ],
)
def test_which_way_it_drains(setting: str, low: float, high: float, sign: int) -> None:
    """Longer, warmer, with rennet, in smaller pieces, taller, sourer: drier."""
    beside = {"height_mm": {"hung": 0.0}, "cut_mm": {"hang_h": 3.0}}.get(setting, {})
    values = [moisture(lactic(**beside, **{setting: low + k * (high - low) / 4})) for k in range(5)]
    assert all(sign * (after - before) > 0.0 for before, after in pairwise(values))


def test_a_heavier_press_and_a_cloth_dry_more_than_a_form() -> None:
    loads = [moisture(lactic(press_h=6.0, kpa=kpa)) for kpa in (1.0, 3.0, 9.0)]
    assert all(after < before for before, after in pairwise(loads))
    assert moisture(lactic(hung=1.0)) < moisture(lactic(hung=0.0)) - 2.0


def test_gels_of_heated_milk_hold_their_whey_and_set_sooner() -> None:
    assert moisture(lactic(), heat_denatured=0.9) > moisture(lactic()) + 1.0
    boiled = lsoda.named(parameters(COW)[0])
    boiled.heat_denatured = 0.9
    assert 5.1 < acid_gelation_ph(20.0, boiled) < 5.35
    assert acid_gelation_ph(20.0, P) == pytest.approx(4.95, abs=0.05)
    assert acid_gelation_ph(40.0, P) == pytest.approx(5.15, abs=0.06)
    firm = [firmness_acid(ph, 21.0, 0.026, P) for ph in (5.6, 5.1, 4.9, 4.7, 4.5)]
    assert all(after > before for before, after in pairwise(firm))


def test_still_afloat_it_loses_little() -> None:
    """A lactic curd that is cut and left in its whey has next to no weight to squeeze it."""
    afloat = [*lactic()[:1], row(stage=1, minutes=600, place=PLACE_UNDER_WHEY, cut_mm=30.0, every_min=5)]
    assert moisture(afloat) > moisture(lactic()) + 8.0


def drained(r: float, minutes: float, kpa: float, end: float = 0.1) -> float:
    """Water an acid gel of r still holds, drained at one stress and 22 °C, in small steps."""
    opened = acid_gel_open(1.0, 1.0, PLACE_DRAINED, 0.0, 0.0, P)
    for _ in range(int(minutes)):
        r -= acid_gel_per_min(r, end, kpa, opened, P) * r
    return r


def test_it_closes_as_it_drains() -> None:
    """With permeability falling as the third power, four times as long leaves half: water goes with 1 / sqrt(time)."""
    waters = [drained(32.0, hours * 60.0, 1.0) for hours in (6.0, 24.0, 96.0)]
    assert [after / before for before, after in pairwise(waters)] == pytest.approx([0.5, 0.5], abs=0.02)
    # Far from its end point a weight works by pressure times time.
    assert drained(32.0, 360.0, 4.0) == pytest.approx(drained(32.0, 1440.0, 1.0), rel=0.02)


def test_at_its_end_point_nothing_leaves() -> None:
    opened = acid_gel_open(1.0, 1.0, PLACE_PRESS, 0.0, 0.0, P)
    assert acid_gel_per_min(3.0, 3.0, 5.0, opened, P) == 0.0
    assert acid_gel_per_min(2.0, 3.0, 5.0, opened, P) == 0.0
    near = [acid_gel_per_min(3.0 + over, 3.0, 5.0, opened, P) for over in (1e-6, 2e-6)]
    assert near[1] == pytest.approx(4.0 * near[0], rel=1e-3)  # without a corner
    assert drained(32.0, 60000.0, 3.0, end=2.7) == pytest.approx(2.7, abs=0.05)


def test_a_press_lets_it_out_through_both_faces() -> None:
    form, press = (acid_gel_open(1.0, 1.0, place, 0.0, 3.0, P) for place in (PLACE_MOULD, PLACE_PRESS))
    assert press == pytest.approx(4.0 * form)
    assert acid_gel_open(1.0, 1.0, PLACE_MILK, 0.0, 3.0, P) == 0.0


def test_a_cook_shrinks_what_has_no_weight_on_it() -> None:
    """Cottage curd afloat draws itself together: hardly at 22 °C, as if under several centimetres of curd at 55."""
    assert contraction_kpa(22.0, P) < 0.04 < 0.1 < contraction_kpa(55.0, P)
    ramp: dict[str, Any] = {"t_law": T_RAMP, "ramp_min": 30.0, "place": PLACE_UNDER_WHEY, "cut_mm": 12.0}
    stirred = row(stage=2, minutes=90, place=PLACE_UNDER_WHEY, disturbed=1.0, every_min=5)
    cooked, cool = (
        moisture([*lactic()[:1], row(stage=1, minutes=30, t_end_c=temp, **ramp), stirred]) for temp in (54.0, 24.0)
    )
    assert cooked < cool - 4.0
    assert cooked < 84.0


def hot(ph_acid: float, temp_c: float = 88.0, *, kpa: float = 0.0, fat: float = 30.0) -> dict[str, float]:
    """Milk curdled hot by `ph_acid` mol acid per kg, drained in its basket for half an hour, pressed where kpa > 0."""
    ready()
    milk = Milk(1.0, 1.03, fat, 26.0, 6.5, 47.0, 7.2, 6.65, "cow", 1.2, heat_denatured=0.05)
    p = parameters(milk)[0]
    basket = {"height_mm": 70.0, "t_law": T_FOLLOW, "follow_c": 20.0, "va_mm": 18.0, "every_min": 1.0}
    rows = [
        row(minutes=10, t_end_c=temp_c),
        row(stage=1, minutes=15, gel=GEL_ACID_HEAT, acid_mol_kg=ph_acid),
        row(stage=2, minutes=60, place=PLACE_MOULD, whey_off=1.0, **basket),
    ]
    if kpa:
        rows.append(row(stage=3, minutes=60, place=PLACE_PRESS, load_kpa=kpa, **basket))
    path = kernel.march(kernel.prepare(as_rows(rows)), first_state(milk, p), p)
    lost = 1.0 - float(last(path)[CURD + FAT]) / (fat / 1000.0)
    curdled = path.out[path.out[:, 1] == 1]
    return composition(last(path)) | {
        "ph": float(curdled[-1, 2]), "fat_lost": lost, "temp": float(curdled[-1, OUT_EXTRA + T]),
    }  # fmt: skip


ENOUGH, SWEET = 0.032, 0.018
"""Acid for paneer and Queso blanco, pH 5.4, and for ricotta, pH 5.8 [mol/kg]."""


def test_the_published_acid_and_heat_cheeses() -> None:
    """Ricotta 71.7 % (SR26), pH 5.9; paneer 52-56 % under 2-3 kPa (from memory); Queso blanco 53 %, pH 5.4 (Guelph)."""
    ricotta, paneer, blanco = hot(SWEET), hot(ENOUGH, kpa=2.5, fat=45.0), hot(ENOUGH, kpa=6.0, fat=27.0)
    assert [ricotta["ph"], blanco["ph"]] == pytest.approx([5.85, 5.4], abs=0.08)
    assert ricotta["moisture_pct"] == pytest.approx(71.7, abs=2.0)
    assert ricotta["protein_pct"] == pytest.approx(11.3, abs=1.5)
    assert 50.0 < paneer["moisture_pct"] < 58.0
    assert blanco["moisture_pct"] == pytest.approx(53.0, abs=3.0)


def test_curd_soured_less_holds_more() -> None:
    """Paneer: about nine points of moisture between pH 5.0 and 5.5 (from memory, medium)."""
    sour, sweet = hot(0.046, kpa=2.5, fat=45.0), hot(0.027, kpa=2.5, fat=45.0)
    assert [sour["ph"], sweet["ph"]] == pytest.approx([5.0, 5.5], abs=0.06)
    assert 5.0 < sweet["moisture_pct"] - sour["moisture_pct"] < 11.0


def test_hot_milk_curdles_where_practice_says() -> None:
    """Paneer near pH 5.3-5.4 at 70-80 °C, ricotta of hot milk up to pH 5.8 at 90 °C (from memory, medium)."""
    assert heat_curdled(5.3, 80.0, P) > 0.95
    assert heat_curdled(5.6, 90.0, P) > 0.9
    assert heat_curdled(6.3, 90.0, P) < 0.05
    assert heat_curdled(5.6, 45.0, P) < 0.1
    shares = [heat_curdled(5.7, temp, P) for temp in (50.0, 65.0, 80.0, 95.0)]
    assert all(after > before for before, after in pairwise(shares))


def test_too_little_acid_leaves_the_curd_in_the_whey() -> None:
    yields = [hot(acid) for acid in (0.004, 0.012, 0.018, ENOUGH)]
    assert yields[0]["fat_lost"] > 0.8 > 0.15 > yields[-1]["fat_lost"]
    assert all(b["fat_lost"] < a["fat_lost"] for a, b in pairwise(yields))
    assert yields[-1]["yield_kg_per_100kg"] > yields[0]["yield_kg_per_100kg"] + 5.0


def test_hotter_milk_brings_more_whey_protein() -> None:
    cool, warm = hot(ENOUGH, 70.0, kpa=2.5), hot(ENOUGH, 90.0, kpa=2.5)
    assert warm["yield_kg_per_100kg"] > cool["yield_kg_per_100kg"] + 0.5


def test_pressing_dries_it_further() -> None:
    loads = [hot(ENOUGH, kpa=kpa)["moisture_pct"] for kpa in (0.0, 1.0, 3.0, 10.0)]
    assert all(after < before for before, after in pairwise(loads))


def test_what_lies_outside_the_law_is_said_of_the_outcomes_it_concerns() -> None:
    """A lactic make carries its remark on moisture and not on pH; curd drained sweet is named as such."""
    quark = next(make for make in makes() if make.id == "quark").recipe
    found = forecast(quark)
    assert found.outcomes["moisture_pct"].outside == LACTIC
    assert found.outcomes["ph_24h"].outside == ""
    early = forecast(edit(quark, "set", end=after(300.0)))
    assert any("begins to drain at pH" in note for note in early.notes)
    plain = next(make for make in makes() if make.id == "gouda").recipe
    assert forecast(plain).notes == ()


def test_hot_whey_curdles_sweeter_than_hot_milk() -> None:
    """Ricotta of sweet whey: some of it by heat alone, most of it when soured to 5.8-6.0 (from memory, medium)."""
    record = parameters(COW)
    record["whey_share"] = 0.95
    whey = lsoda.named(record[0])
    assert heat_curdled(6.25, 88.0, P) < 0.05 < 0.6 < heat_curdled(6.25, 88.0, whey)
    assert 0.15 < heat_curdled(6.55, 88.0, whey) < 0.5
    assert heat_curdled(5.85, 88.0, whey) > 0.9
    assert heat_curdled(6.0, 60.0, whey) < heat_curdled(6.0, 88.0, whey)
