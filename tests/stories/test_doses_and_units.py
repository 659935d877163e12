"""Maker stories 1, 2, 4, 10, 11 and 12 with their figures: bottles, packs, loads, brines, gallons, titrations."""

from __future__ import annotations

import pytest

from designer.make import salt, strength
from designer.recipe import pressing
from designer.recipe.dilute import stock
from designer.recipe.document import Addition
from designer.recipe.field import field_meta
from designer.recipe.stages.press import PressStep
from designer.recipe.sure import asked
from designer.units import UnitError, convert, parse


class TestRennetStrength:
    """Story 1: as a maker with a new bottle I want my dose converted."""

    @pytest.mark.parametrize(("imcu", "ml"), [(200.0, 22.5), (280.0, 16.1), (600.0, 7.5)])
    def test_a_new_bottle(self, imcu: float, ml: float) -> None:
        assert strength.rennet_ml(45.0, 100.0, imcu) == pytest.approx(ml, abs=0.05)

    def test_another_bottle_and_another_vat(self) -> None:
        assert strength.rennet_again_ml(8.0, 200.0, 43.7, 500.0, 10.0) == pytest.approx(0.73, abs=0.01)

    def test_without_strength_there_is_no_dose_and_the_bottle_is_asked_for(self) -> None:
        with pytest.raises(ValueError, match=r"IMCU/mL \(on the bottle\)"):
            Addition(id="rennet", what="coagulant", at="set", volume_l=0.02)


class TestCultureByWeight:
    """Story 2."""

    def test_units_to_grams(self) -> None:
        assert strength.culture_g(1.75, 9.2, 50.0) == pytest.approx(0.322, abs=0.001)

    def test_how_far_a_pack_goes(self) -> None:
        assert strength.pack_serves_l(25.0, 6.25) == pytest.approx(400.0)

    def test_too_little_to_weigh(self) -> None:
        """0.05 g: weigh half a gram into 100 mL of sterile milk and give 10 mL of it."""
        small = stock(0.05e-3)
        assert small is not None
        assert small.weigh_kg * 1000.0 == pytest.approx(0.5)
        assert small.weigh_kg * small.take_l / small.into_l == pytest.approx(0.05e-3)
        assert stock(0.10e-3) is None


class TestPressByPressure:
    """Story 4."""

    def test_five_psi_on_a_follower(self) -> None:
        kpa = parse("5 psi", "pressure").value
        assert kpa == pytest.approx(34.5, abs=0.05)
        assert pressing.force_kg(kpa, pressing.round_area_m2(145.0)) == pytest.approx(58.0, abs=0.5)

    def test_forty_five_psi_is_asked_about(self) -> None:
        kpa = parse("45 psi", "pressure").value
        assert pressing.force_kg(kpa, pressing.round_area_m2(145.0)) == pytest.approx(522.0, abs=1.0)
        sentence = asked(field_meta(PressStep, "pressure_kpa"), kpa, "us")
        assert "far above what is usual on a hand press" in sentence
        assert "Check the unit or the decimal point" in sentence

    def test_what_to_hang_on_the_lever(self) -> None:
        kpa = parse("10 psi", "pressure").value
        area = pressing.round_area_m2(parse("6 in", "length").value)
        pounds = convert(pressing.force_kg(kpa, area), "mass", "lb")
        # The reference's gravity is the standard 9.80665; ours is 9.81, 0.03 % apart.
        assert pounds == pytest.approx(282.7, abs=0.2)
        assert pressing.hang_kg(pounds, 3.0, 4.0) == pytest.approx(92.9, abs=0.5)


class TestBrine:
    """Story 10."""

    def test_by_the_gallon(self) -> None:
        salt_kg, water_kg = parse("2.25 lb", "mass").value, parse("1 US gal", "volume").value * 0.9990
        pct = salt.strength_of_salt_and_water(salt_kg, water_kg)
        assert pct == pytest.approx(21.3, abs=0.1)
        assert salt.saturation_pct(pct) == pytest.approx(81.0, abs=0.5)

    def test_twenty_to_a_hundred_is_not_twenty_per_cent(self) -> None:
        assert salt.strength_of_salt_and_water(20.0, 100.0) == pytest.approx(16.7, abs=0.05)

    def test_twenty_per_cent_in_a_hundred_litres(self) -> None:
        water = 0.998 * 100.0
        assert salt.salt_for_water_kg(20.0, water) == pytest.approx(24.95, abs=0.1)

    @pytest.mark.parametrize("pct", [18.0, 21.3, 26.0])
    def test_saturated_is_said_of_one_strength_only(self, pct: float) -> None:
        assert "saturated" not in salt.in_words(pct)
        assert "saturated" in salt.in_words(26.4)
        assert "saturated" in salt.in_words(pct, undissolved=True)

    def test_a_brine_every_way_it_is_said(self) -> None:
        assert salt.in_words(20.0) == (
            "20.0 % w/w, 23.0 % w/v, 25.0 g per 100 g water, 1.150 kg/L at 15 °C, 19.1 °Bé, 76 % of saturation"
        )


class TestUnits:
    """Story 11."""

    def test_a_gallon_is_asked_about(self) -> None:
        assert parse("2 gal", "volume", gallon="us").value == pytest.approx(7.57, abs=0.005)
        assert parse("2 gal", "volume", gallon="imperial").value == pytest.approx(9.09, abs=0.005)
        with pytest.raises(UnitError, match=r"US gal.*imp gal"):
            parse("2 gal", "volume")

    def test_a_temperature_and_a_difference_convert_differently(self) -> None:
        assert parse("88 °F", "temperature").value == pytest.approx(31.1, abs=0.05)
        assert parse("1 °F", "temperature_difference").value == pytest.approx(0.56, abs=0.01)

    def test_a_decimal_comma(self) -> None:
        assert parse("0,25 kg", "mass").value == 0.25
        with pytest.raises(UnitError, match="two ways"):
            parse("1,234 kg", "mass")


class TestTitration:
    """Story 12."""

    @pytest.mark.parametrize(("sample_ml", "pct", "dornic"), [(9.0, 0.18, 18.0), (10.0, 0.162, 16.2)])
    def test_burette_to_lactic_acid(self, sample_ml: float, pct: float, dornic: float) -> None:
        found = strength.lactic_pct_of_titration(1.8, sample_ml)
        assert found == pytest.approx(pct, abs=0.0005)
        assert convert(found, "acidity", "°D") == pytest.approx(dornic, abs=0.05)

    def test_units_of_acidity(self) -> None:
        assert parse("8 °SH", "acidity").value == pytest.approx(0.18)
        assert parse("20 °Th", "acidity").value == pytest.approx(0.18)

    def test_another_sample_volume_is_another_reading(self) -> None:
        before = strength.lactic_pct_of_titration(1.8, 9.0)
        assert strength.reading_changed(1.8, 9.0, 10.0) == (
            f"With a sample of 10 mL instead of 9 mL the same 1.8 mL mean {before * 0.9:.3f} %, not {before:.3f} %: "
            "read the burette again, or put the sample back."
        )
        assert strength.reading_changed(1.8, 9.0, 9.0) == ""
