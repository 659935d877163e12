"""Our moist air against the library psychrolib (ASHRAE Fundamentals), over every room a cheese may lie in."""

from __future__ import annotations

import psychrolib
import pytest

from designer.cellar.air import deficit_pa, dew_point_c, humidity_ratio, saturation_pressure_hyland_1983

PRESSURE_PA = 101325.0
ROOMS = [(temp_c, rh) for temp_c in (-5.0, 0.5, 4.0, 8.0, 12.0, 14.0, 18.0, 24.0, 35.0) for rh in (0.4, 0.8, 0.9, 0.98)]


@pytest.fixture(autouse=True, scope="module")
def _si_units() -> None:
    """Once: each call makes the library compile its functions anew."""
    psychrolib.SetUnitSystem(psychrolib.SI)


@pytest.mark.parametrize("temp_c", [-20.0, -1.0, 0.0, 4.0, 12.0, 20.0, 32.0, 55.0, 90.0])
def test_saturation_pressure(temp_c: float) -> None:
    assert saturation_pressure_hyland_1983(temp_c) == pytest.approx(psychrolib.GetSatVapPres(temp_c), rel=1e-6)


@pytest.mark.parametrize(("temp_c", "rh"), ROOMS)
def test_humidity_ratio(temp_c: float, rh: float) -> None:
    expected = psychrolib.GetHumRatioFromRelHum(temp_c, rh, PRESSURE_PA)
    assert humidity_ratio(temp_c, rh) == pytest.approx(expected, rel=1e-5)


@pytest.mark.parametrize(("temp_c", "rh"), ROOMS)
def test_dew_point(temp_c: float, rh: float) -> None:
    assert dew_point_c(temp_c, rh) == pytest.approx(psychrolib.GetTDewPointFromRelHum(temp_c, rh), abs=0.005)


def test_nothing_dries_where_the_air_is_as_moist_as_the_surface() -> None:
    assert deficit_pa(12.0, 0.98, 12.0, 0.98) == pytest.approx(0.0, abs=1e-9)
    assert deficit_pa(12.0, 0.85, 12.0, 0.98) > 0 > deficit_pa(12.0, 0.99, 10.0, 0.95)


def test_air_without_water_has_no_dew_point() -> None:
    with pytest.raises(ValueError, match="no dew point"):
        dew_point_c(12.0, 0.0)
