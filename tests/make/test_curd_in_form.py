"""Curd in a form is one body: the cut counts for less there than in the vat; a bed stirred dry drains fastest."""

from __future__ import annotations

import pytest

from designer.forecast import forecast
from designer.make import kernel
from designer.make.start import parameters
from designer.make.syneresis import formed_share, handling, size_share, warm_share
from designer.recipe.edit import edit
from designer.recipe.schedule import GEL_LACTIC, GEL_RENNET, PLACE_DRAINED
from designer.validate.makes import makes
from tests.make.families import COW
from tests.speed import lsoda

P = lsoda.named(parameters(COW)[0])


def test_the_cut_counts_for_less_once_pieces_have_joined() -> None:
    """Curd cut to 5 and to 10 mm: in a form the size does a small part of what it does in the vat."""
    in_vat = size_share(5.0, GEL_RENNET, P) / size_share(10.0, GEL_RENNET, P)
    formed = [formed_share(size_share(edge, GEL_RENNET, P), GEL_RENNET, P) for edge in (5.0, 10.0)]
    assert formed[0] / formed[1] == pytest.approx(in_vat**P.syneresis_size_formed)
    assert 1.0 < formed[0] / formed[1] < in_vat
    lactic = size_share(20.0, GEL_LACTIC, P)
    assert formed_share(lactic, GEL_LACTIC, P) == lactic


def test_ladled_curd_drains_in_its_form() -> None:
    """Camembert comes to 50-58 % of water in a day cut or ladled: in the form it is one body either way (practice)."""
    kernel.warm_up()
    cut = next(make.recipe for make in makes() if make.id == "camembert")
    moisture = [forecast(edit(cut, "cut", cut_mm=edge)).outcomes["moisture_pct"].value for edge in (12.8, 25.0)]
    assert moisture[0] < moisture[1] < 60.0


def test_stirring_a_drained_bed_does_more_than_six_degrees() -> None:
    """Disturbance above all, then temperature and pressure (J. Dairy Res., continuously made curd)."""
    stirred = handling(PLACE_DRAINED, 1.0, 0.0, P) / handling(PLACE_DRAINED, 0.0, 0.0, P)
    assert stirred > warm_share(38.0, GEL_RENNET, P) / warm_share(32.0, GEL_RENNET, P)


def test_curd_is_drier_for_stirring_dry() -> None:
    kernel.warm_up()
    colby = next(make.recipe for make in makes() if make.id == "colby")
    moisture = [
        forecast(edit(colby, "dry", vigour=vigour)).outcomes["moisture_pct"].value for vigour in (0.0, 0.5, 1.0)
    ]
    assert moisture[0] > moisture[1] > moisture[2]


def test_fat_kept_is_that_of_published_balances() -> None:
    """90.9 % in 48 factories at 3.77 % (Van Slyke 1894), 90 % in the US order at 3.5 %, 86-91 % by Guelph Table 6.1."""
    kernel.warm_up()
    made = {make.id: make.recipe for make in makes()}
    kept = {
        name: forecast(made[name]).outcomes["fat_recovery_pct"].value for name in ("cheddar-factories-1893", "gouda")
    }
    assert kept["cheddar-factories-1893"] == pytest.approx(90.9, abs=1.0)
    assert 86.0 <= kept["gouda"] <= 91.0
