"""Setting against published figures: heat and acid together, coagulant kinds, firmness."""

from __future__ import annotations

from typing import Any

import pytest

from designer.forecast import forecast
from designer.make.set import firmness_scott_blair_1959, floc_minutes_foltmann_1959, heat_factor
from designer.make.start import parameters
from designer.recipe.schedule import COAGULANT_CALF, COAGULANT_MICROBIAL, COAGULANT_PLANT, Milk
from designer.validate.makes import makes
from tests.make.families import COW, milk
from tests.speed.lsoda import named


def of(one: Milk = COW) -> Any:
    return named(parameters(one)[0])


def test_strongly_heated_milk_gains_most_from_acid_calcium_and_warmth() -> None:
    """Check C1.13: 23.28 times faster at 35 °C, pH 5.8 with 0.4 g/L than at 30 °C, pH 6.5 without (Belgrade trial).

    The slope of time against pH is the weakest constant of setting; the product is held to a factor of two and a half.
    """
    p = of(milk(heat_denatured=1.0, age_cold_h=0.0))
    slow = floc_minutes_foltmann_1959(40.0, 30.0, 6.5, 0.0, COAGULANT_CALF, p) - p.floc_lag_min
    fast = floc_minutes_foltmann_1959(40.0, 35.0, 5.8, 0.4, COAGULANT_CALF, p) - p.floc_lag_min
    assert 23.28 / 2.5 < slow / fast < 23.28 * 2.5


def test_heat_lengthens_at_native_ph_and_hardly_below_6_2() -> None:
    """Check C1.18: 95 °C/5 min takes 74 % longer at native pH; below 6.2 the harm is gone (Lucey et al. 1993)."""
    p = of(milk(heat_denatured=1.0))
    assert heat_factor(6.7, p) == pytest.approx(1.74, abs=0.02)
    assert heat_factor(5.8, p) == pytest.approx(1.0, abs=0.02)


def test_a_microbial_coagulant_leans_less_on_ph() -> None:
    p = of()

    def gain(kind: int) -> float:
        return floc_minutes_foltmann_1959(40.0, 32.0, 6.7, 0.0, kind, p) / floc_minutes_foltmann_1959(
            40.0, 32.0, 6.3, 0.0, kind, p
        )

    assert gain(COAGULANT_CALF) > gain(COAGULANT_MICROBIAL) > 1.0


def test_plant_coagulant_firms_sooner_than_calf() -> None:
    """Esteves et al. 2001: chymosin has the longest time constant of firming."""
    p = of()
    assert firmness_scott_blair_1959(2.0, 0.026, COAGULANT_PLANT, p) > firmness_scott_blair_1959(
        2.0, 0.026, COAGULANT_CALF, p
    )


def test_firmness_at_cutting_lies_in_the_published_window() -> None:
    """Lopez et al. 1998: judges cut at 7-10 Pa; another instrument gives 30-40 Pa at the standard time."""
    p = of()
    assert 7.0 < firmness_scott_blair_1959(2.0, 0.026, COAGULANT_CALF, p) < 40.0
    assert 30.0 < firmness_scott_blair_1959(3.0, 0.026, COAGULANT_CALF, p) < 70.0
    assert firmness_scott_blair_1959(1.0, 0.026, COAGULANT_CALF, p) == 0.0


def test_milk_cut_before_it_is_a_gel_and_milk_heated_high_are_spoken_of() -> None:
    """Forecast as curd all the same, so it must be said; no make that sets is told so."""
    whole = next(make for make in makes() if make.id == "gouda").recipe
    plain = forecast(whole, members=0)
    assert plain.notes == ()
    rennet = next(each for each in whole.additions if each.what == "coagulant")

    def dosed(share: float) -> tuple[str, ...]:
        less = rennet.but(**{name: getattr(rennet, name) * share for name in ("volume_l", "mass_kg", "mass_pct")
                             if getattr(rennet, name) is not None})  # fmt: skip
        others = tuple(less if each is rennet else each for each in whole.additions)
        return forecast(whole.but(additions=others), members=0).notes

    slow = plain.outcomes["cut_min"].value / plain.outcomes["floc_min"].value
    assert any("has not set" in note for note in dosed(0.9 / slow))
    assert any("not even flocculated" in note for note in dosed(0.001))
    hot = whole.but(milks=tuple(each.but(heat="high_heat") for each in whole.milks))
    assert any("denatured by heat" in note for note in forecast(hot, members=0).notes)
    for make in makes():
        assert not any("has not" in note and "coagulant" in note for note in forecast(make.recipe, members=0).notes)
