"""Fields told and typed in the other ways a maker meets them, with figures worked by hand."""

from __future__ import annotations

import pytest

from designer.judge.other_reading import typed
from designer.judge.other_units import doubted, told
from designer.recipe.document import Addition, Form, MilkSource, Recipe, Starter
from designer.recipe.edit import add, edit_addition, edit_recipe, new_stage
from designer.recipe.end import End
from designer.recipe.field import Model
from designer.recipe.stages.press import PressStep
from designer.units import UnitError
from tests.make.parted_vats import recipe as vat


@pytest.fixture
def recipe() -> Recipe:
    """100 L in the vat, a form of 14.5 cm pressed by a lever of 4."""
    made = edit_recipe(vat(), form=Form(diameter_mm=145.0, height_mm=80.0, lever=4.0))
    return edit_recipe(made, milks=(made.milks[0].but(volume_l=100.0, mass_kg=None),))


def value(recipe: Recipe, part: Model, name: str, text: str) -> float:
    found = typed(recipe, part, name, text)
    assert found is not None
    return found.value


RENNET = Addition(id="r", what="coagulant", at="set", volume_l=0.0225, strength_imcu_ml=200.0)


class TestRennet:
    def test_a_dose_is_told_and_typed_by_the_litre(self, recipe: Recipe) -> None:
        assert told(recipe, RENNET, "volume_l") == "45.0 IMCU/L of milk; may be typed so"
        for imcu, ml in ((200.0, 22.5), (280.0, 16.1), (600.0, 7.5)):
            bottle = RENNET.but(strength_imcu_ml=imcu)
            assert value(recipe, bottle, "volume_l", "45 IMCU/L") * 1000.0 == pytest.approx(ml, abs=0.05)

    def test_age_takes_its_share(self, recipe: Recipe) -> None:
        old = RENNET.but(age_months=12.0)
        left = float(told(recipe, old, "strength_imcu_ml").split()[0])
        assert 150.0 < left < 200.0
        assert value(recipe, old, "volume_l", "45 IMCU/L") == pytest.approx(0.0225 * 200.0 / left, rel=0.01)

    def test_drops_and_the_old_strength(self, recipe: Recipe) -> None:
        assert value(recipe, RENNET, "volume_l", "20 drops") == pytest.approx(0.001)
        found = typed(recipe, RENNET, "strength_imcu_ml", "1:15000")
        assert found is not None
        assert found.value == pytest.approx(212.25)
        assert "200 to 225 IMCU/mL" in found.note

    def test_a_dose_far_outside_practice_is_asked_about(self, recipe: Recipe) -> None:
        rennet = next(one for one in recipe.additions if one.what == "coagulant")
        field = next(name for name in ("volume_l", "mass_kg") if getattr(rennet, name) is not None)
        assert doubted(recipe, rennet, field) == ""
        much = edit_addition(recipe, rennet.id, **{field: getattr(rennet, field) * 10.0})
        assert "IMCU per litre of milk" in doubted(much, next(a for a in much.additions if a.id == rennet.id), field)


class TestCulture:
    PACK = Starter(id="s", units=1.75, pack_units=50.0, pack_kg=0.0092)

    def test_units_by_the_pack(self, recipe: Recipe) -> None:
        assert "0.322 g of this pack" in told(recipe, self.PACK, "units")
        assert value(recipe, self.PACK, "units", "0.322 g") == pytest.approx(1.75, abs=0.001)
        with pytest.raises(UnitError, match="give the pack"):
            typed(recipe, Starter(id="s", units=1.75), "units", "0.3 g")

    def test_how_far_a_pack_goes(self, recipe: Recipe) -> None:
        assert "serves 400 L" in told(recipe, self.PACK.but(units=6.25, pack_units=25.0), "units")

    def test_too_little_to_weigh(self, recipe: Recipe) -> None:
        assert "stir 0.5 g into 100 mL of sterile milk and give 10.0 mL" in told(
            recipe, self.PACK.but(units=0.05, pack_kg=0.05), "units"
        )

    def test_mass_by_potency(self, recipe: Recipe) -> None:
        dry = Starter(id="s", mass_kg=0.001, potency_cfu_g=1e11)
        assert told(recipe, dry, "mass_kg").startswith("1.0e+06 cells")
        assert value(recipe, dry, "mass_kg", "1e6 /mL") == pytest.approx(0.001)


class TestPress:
    def test_load_and_pressure(self, recipe: Recipe) -> None:
        """5 psi on 14.5 cm are 58.0 kg, 14.5 kg on a lever of 4."""
        step = PressStep(load_kg=10.0, length_min=60.0)
        assert value(recipe, step, "load_kg", "5 psi") == pytest.approx(58.0 / 4.0, abs=0.12)
        assert told(recipe, step.but(load_kg=14.5), "load_kg") == "= 34.5 kPa, 5.0 psi"
        kpa = PressStep(pressure_kpa=10.0, length_min=60.0)
        assert value(recipe, kpa, "pressure_kpa", "14.5 kg") == pytest.approx(34.45, abs=0.1)
        assert told(recipe, kpa.but(pressure_kpa=34.45), "pressure_kpa") == "= 14.5 kg hung on a lever of 4"

    def test_times_its_weight(self, recipe: Recipe) -> None:
        kpa = 4.0 * 1080.0 * 9.81 * 0.08 / 1000.0
        load = value(recipe, PressStep(load_kg=10.0, length_min=60.0), "load_kg", "4 times its weight")
        assert told(recipe, PressStep(load_kg=load, length_min=60.0), "load_kg").startswith(f"= {kpa:.1f} kPa")


class TestBrine:
    @pytest.mark.parametrize(
        ("text", "pct"),
        [
            ("2.25 lb to 1 US gal", 21.3),
            ("20 kg to 100 L", 16.7),
            ("20 kg salt to 100 L of water", None),
            ("25 g/100 g water", 20.0),
            ("23 % w/v", 20.0),
            ("230 g/L", 20.0),
            ("19.1 °Bé", 20.0),
            ("19,1 Be", 20.0),
            ("1.15 kg/L", 20.0),
            ("76 % of saturation", 20.06),
            ("81 °sal", 21.4),
        ],
    )
    def test_every_way_it_is_said(self, recipe: Recipe, text: str, pct: float | None) -> None:
        brine = new_stage(recipe, "brine", id="b")
        if pct is None:
            with pytest.raises(UnitError):
                typed(recipe, brine, "strength_pct", text)
        else:
            assert value(recipe, brine, "strength_pct", text) == pytest.approx(pct, abs=0.1)

    def test_it_is_told_every_way(self, recipe: Recipe) -> None:
        said = told(recipe, new_stage(recipe, "brine", strength_pct=20.0), "strength_pct")
        for part in ("23.0 % w/v", "19.1 °Bé", "1.150 kg/L", "76 % of saturation", "25.0 kg of salt to 100 L of water"):
            assert part in said
        assert told(recipe, new_stage(recipe, "brine", strength_pct=26.4), "strength_pct") == "saturated"

    def test_which_gallon_is_asked(self, recipe: Recipe) -> None:
        with pytest.raises(UnitError, match="two sizes"):
            typed(recipe, new_stage(recipe, "brine"), "strength_pct", "2.25 lb to 1 gal")

    def test_more_than_there_can_be(self, recipe: Recipe) -> None:
        with pytest.raises(UnitError, match="no brine"):
            typed(recipe, new_stage(recipe, "brine"), "strength_pct", "50 kg to 100 L")


class TestCut:
    def test_by_its_name_and_by_its_surface(self, recipe: Recipe) -> None:
        cut = recipe.stage("cut")
        assert value(recipe, cut, "cut_mm", "Pea") == 8.0
        assert told(recipe, cut.but(cut_mm=10.0), "cut_mm") == "hazelnut; 6000 cm² of surface a litre"
        assert told(recipe, cut.but(cut_mm=5.0), "cut_mm").endswith("12000 cm² of surface a litre")
        with pytest.raises(UnitError, match="known are rice"):
            typed(recipe, cut, "cut_mm", "boulder")


class TestMilk:
    MILK = MilkSource(id="m", volume_l=100.0)

    def test_volume_and_mass_by_density(self, recipe: Recipe) -> None:
        assert told(recipe, self.MILK, "volume_l").startswith("= 102.9 kg")
        assert value(recipe, self.MILK, "volume_l", "103 kg") == pytest.approx(100.0, abs=0.3)
        heavy = self.MILK.but(volume_l=None, mass_kg=103.0)
        assert value(recipe, heavy, "mass_kg", "100 L") == pytest.approx(103.0, abs=0.3)
        with pytest.raises(UnitError, match="two sizes"):
            typed(recipe, heavy, "mass_kg", "2 gal")


class TestAcidity:
    def test_a_titration_is_read(self, recipe: Recipe) -> None:
        whey = Starter(id="w", kind="whey", bulk_pct=2.0, acidity_pct=0.5)
        assert value(recipe, whey, "acidity_pct", "1.8 mL on 9 mL") == pytest.approx(0.18, abs=0.0005)
        found = typed(recipe, whey, "acidity_pct", "1.8 mL of 0.1 N on 10 mL")
        assert found is not None
        assert found.value == pytest.approx(0.162, abs=0.0005)
        assert "another sample is another reading" in found.note
        assert value(recipe, whey, "acidity_pct", "5 mL N/9 per 10 mL") == pytest.approx(0.5, abs=0.005)
        assert told(recipe, whey.but(acidity_pct=0.18), "acidity_pct") == "18.0 °D, 8.0 °SH, 20.0 °Th"

    def test_only_where_acidity_ends_the_stage(self, recipe: Recipe) -> None:
        by_acid = End(by="acidity", value=0.2, of="whey", latest_min=60.0)
        assert value(recipe, by_acid, "value", "1.8 mL on 9 mL") == pytest.approx(0.18, abs=0.0005)
        assert typed(recipe, End(by="ph", value=6.0, of="curd", latest_min=60.0), "value", "1.8 mL on 9 mL") is None


def test_what_has_no_other_way_says_nothing(recipe: Recipe) -> None:
    cook = recipe.stage("cook")
    assert told(recipe, cook, "temperature_c") == ""
    assert typed(recipe, cook, "temperature_c", "warm") is None


def test_a_pack_is_kept_in_the_file(recipe: Recipe) -> None:
    from designer.recipe.file import reads, writes

    kept = add(recipe, Starter(id="pack", units=2.0, pack_units=50.0, pack_kg=0.0092))
    assert reads(writes(kept, None)) == kept
