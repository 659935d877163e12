"""The march against itself and against SciPy: compiled, plain, LSODA, half the step, and started anywhere."""

from __future__ import annotations

import subprocess
import sys

import numpy as np
import pytest

from designer.make import kernel
from designer.make.march import OUT_EXTRA
from designer.make.rates import curd_ph
from designer.make.start import first_state, parameters
from designer.make.state import ASH, CALCIUM, COLLOIDAL, CURD, DRY_SALT, SALT, SKIN, WATER, T
from designer.make.stride import NOTHING, TOLERANCE
from designer.recipe.schedule import (
    END_FLOC_MULTIPLE,
    END_PH,
    END_TEMPERATURE,
    GEL_RENNET,
    OF_CURD,
    PLACE_DRAINED,
    PLACE_PRESS,
    PLACE_UNDER_WHEY,
    T_FOLLOW,
    T_RAMP,
    as_rows,
    row,
)
from tests.make.families import COW, MAKES, camembert, cheddar, composition, gouda, last, marched, ready
from tests.speed import lsoda


@pytest.mark.parametrize("name", MAKES)
def test_compiled_equals_plain(name: str) -> None:
    compiled, plain = marched(MAKES[name]), marched(MAKES[name], twin=True)
    assert compiled.out.shape == plain.out.shape
    assert np.allclose(compiled.out, plain.out, rtol=1e-8, atol=1e-8)  # a stride near its limit magnifies rounding


@pytest.mark.parametrize("name", MAKES)
def test_against_lsoda(name: str) -> None:
    p = parameters(COW)[0]
    path = marched(MAKES[name])
    zones = lsoda.plain(path, kernel.prepare(as_rows(MAKES[name])), first_state(COW, p), p)
    reference = zones.mean(axis=0)
    ours, named = last(path), lsoda.named(p)
    assert curd_ph(ours, named, 6.0) == pytest.approx(curd_ph(reference, named, 6.0), abs=0.004)
    assert composition(ours)["moisture_pct"] == pytest.approx(composition(reference)["moisture_pct"], abs=0.04)


@pytest.mark.parametrize("name", MAKES)
def test_a_hundredth_of_the_tolerance(name: str) -> None:
    """pH within 0.002 and moisture within 0.02 points at the end of every stage."""
    coarse, p = marched(MAKES[name]), parameters(COW)[0]
    fine = kernel.march(kernel.prepare(as_rows(MAKES[name])), first_state(COW, p), p, tolerance=TOLERANCE / 100.0)
    for end in coarse.ends[:, 1]:
        a = coarse.out[np.searchsorted(coarse.out[:, 0], end - 1e-9)]
        b = fine.out[np.searchsorted(fine.out[:, 0], end - 1e-9)]
        assert a[2] == pytest.approx(b[2], abs=0.002)
        assert composition(a[OUT_EXTRA:])["moisture_pct"] == pytest.approx(
            composition(b[OUT_EXTRA:])["moisture_pct"], abs=0.02
        )


def test_from_any_row() -> None:
    ready()
    rows = kernel.prepare(as_rows(cheddar()))
    p = parameters(COW)[0]
    whole = kernel.march(rows, first_state(COW, p), p)
    at = int(np.flatnonzero(whole.out[:, 1] == 4)[-1])
    rest = kernel.march(
        rows, whole.out[at, OUT_EXTRA:].copy(), p, first_row=5, t0=whole.out[at, 0],
        rennet_min=whole.rennet_min, floc_min=whole.floc_min, cut_min=whole.cut_min,
    )  # fmt: skip
    assert np.allclose(rest.out, whole.out[at + 1 :], rtol=1e-12, atol=1e-14)


def test_a_step_too_far_does_not_run_away() -> None:
    """Casein binds calcium again from what is dissolved; a step may leave that a hair below nothing, and no further."""
    ready()
    p = parameters(COW)[0]
    y = last(marched(cheddar()))
    whole = y[COLLOIDAL] + y[CURD + CALCIUM]
    y[CURD + CALCIUM] = -1.2e-5
    y[COLLOIDAL] = 0.8 * (whole - y[CURD + CALCIUM])  # less than the casein would bind
    after = kernel.march(kernel.prepare(as_rows([row(minutes=600, place=PLACE_DRAINED)])), y, p).out[:, OUT_EXTRA:]
    assert after[:, CURD + CALCIUM].min() >= y[CURD + CALCIUM]


@pytest.mark.parametrize(("kpa", "hours"), [(400.0, 48), (200.0, 300), (3.0, 300)])
def test_a_rind_closes_once_however_hard_and_long_it_is_pressed(kpa: float, hours: int) -> None:
    """Where nothing else stirs for days a stride grows long; it must not overshoot the rind that settles."""
    press = row(stage=9, minutes=60.0 * hours, place=PLACE_PRESS, load_kpa=kpa, every_min=15, height_mm=90.0)
    out = marched([*gouda()[:9], press]).out[:, OUT_EXTRA:]
    assert out[:, SKIN].min() >= 0.0
    assert out[:, SKIN].max() < 1.01
    assert np.diff(out[:, CURD + WATER]).max() < 1e-5


def test_calcium_is_bound_no_longer_than_there_are_salts_to_go_with_it() -> None:
    """Curd with far too much calcium chloride and next to no salts left: none are taken that are not there."""
    ready()
    p = parameters(COW)[0]
    y = last(marched(cheddar()))
    y[CURD + CALCIUM], y[CURD + ASH] = 1e-3, 1e-6
    y[COLLOIDAL] *= 0.5
    after = kernel.march(kernel.prepare(as_rows([row(minutes=600, place=PLACE_DRAINED)])), y, p).out[:, OUT_EXTRA:]
    assert after[:, CURD + ASH].min() >= NOTHING


def test_curd_dissolves_no_more_salt_than_its_water_holds() -> None:
    """Half its weight of salt on the curd: the water is saturated at 26.4 % w/w, the rest stays dry or runs off."""
    rows = cheddar(salt=0.5)[:-1]
    y = last(marched([*rows[:-1], rows[-1] | {"minutes": 600.0}]))
    assert y[CURD + SALT] / y[CURD + WATER] == pytest.approx(26.4 / (100.0 - 26.4), rel=0.02)
    assert y[DRY_SALT] > 0.0


def test_a_floc_multiple_ends_where_the_maker_says() -> None:
    """C1.25 of the setting figures: twice, three times the flocculation time, exactly."""
    for multiple in (2.0, 3.0, 4.0):
        rows = cheddar()
        rows[1] |= {"minutes": 180.0, "end_by": END_FLOC_MULTIPLE, "end_value": multiple}
        path = marched(rows)
        assert path.cut_min - path.rennet_min == pytest.approx(multiple * path.floc_min, abs=1e-6)


def test_a_ph_end_is_met_inside_the_step_and_smoothly() -> None:
    minutes = []
    for ph in np.linspace(6.0, 6.2, 41):
        rows = cheddar()
        rows[4] |= {"minutes": 240.0, "end_by": END_PH, "end_of": OF_CURD, "end_value": float(ph)}
        path = marched(rows)
        assert path.ends[4, 2] == 1.0
        at = np.searchsorted(path.out[:, 0], path.ends[4, 1] - 1e-9)
        assert path.out[at, 2] == pytest.approx(ph, abs=1e-6)
        minutes.append(path.ends[4, 1])
    steps = np.diff(minutes)
    assert (steps < 0.0).all()
    assert np.abs(np.diff(steps)).max() < 0.05


def test_an_end_out_of_reach_runs_to_its_latest() -> None:
    rows = cheddar()
    rows[4] |= {"minutes": 50.0, "end_by": END_PH, "end_of": OF_CURD, "end_value": 4.0}
    path = marched(rows)
    assert path.ends[4, 2] == 0.0
    assert path.ends[4, 1] - path.ends[4, 0] == pytest.approx(50.0)


def test_an_end_already_met_takes_no_time_but_keeps_what_is_added() -> None:
    rows = [
        row(stage=0, minutes=30, t_end_c=31.0, end_by=END_TEMPERATURE, end_value=31.0),
        row(stage=0, minutes=30, rennet_imcu_l=40.0, gel=GEL_RENNET, end_by=END_TEMPERATURE, end_value=31.0),
        row(stage=1, minutes=40),
    ]
    path = marched(rows)
    assert path.ends[1, 1] == 0.0
    assert path.floc_min > 5.0


def test_a_ramp_shorter_than_its_stage_holds() -> None:
    rows = cheddar()
    rows[3] |= {"minutes": 60.0, "ramp_min": 30.0}
    path = marched(rows)
    temps = path.out[:, OUT_EXTRA + T]
    clock = path.out[:, 0]
    start = path.ends[3, 0]
    assert np.interp(start + 30.0, clock, temps) == pytest.approx(38.5)
    assert np.interp(start + 59.0, clock, temps) == pytest.approx(38.5)


def test_cut_before_it_sets_still_marches() -> None:
    rows = camembert()
    rows[1]["minutes"] = 2.0
    assert np.isfinite(marched(rows).out).all()


def test_a_march_does_not_change_the_rows_it_was_given() -> None:
    ready()
    rows = kernel.prepare(as_rows([row(minutes=20, place=PLACE_UNDER_WHEY, t_law=T_RAMP, t_end_c=40.0, ramp_min=20)]))
    before = rows.copy()
    p = parameters(COW)[0]
    kernel.march(rows, first_state(COW, p), p)
    assert rows.tobytes() == before.tobytes()


def test_core_and_edge_cool_sour_and_drain_apart() -> None:
    """The edge cools first; the warm core sours on and drains on."""
    path = marched(cheddar())
    at = int(np.searchsorted(path.out[:, 0], path.ends[8, 0] + 240.0))
    core_c, edge_c, core_ph, edge_ph, core_moist, edge_moist = path.out[at, 5:11]
    assert core_c > edge_c + 0.3
    assert abs(core_ph - edge_ph) > 1e-4
    assert core_moist < edge_moist
    assert (path.out[path.out[:, 1] < 8, 5] == path.out[path.out[:, 1] < 8, 6]).all()


def test_cooling_against_the_exact_block() -> None:
    """Check C13: a 36 x 28 x 18 cm block from 32 °C, surface held at 4 °C; three-way product of slab series.

    The mean of the inner half is held to within 2 K of the exact mean over that half after 3, 6 and 9 hours.
    """
    sizes = np.array([0.36, 0.28, 0.18])
    va_mm = 1000.0 * sizes.prod() / (2.0 * (sizes[0] * sizes[1] + sizes[1] * sizes[2] + sizes[0] * sizes[2]))
    p = parameters(COW)
    p["cooling_h"] = 1e6
    alpha = float(p["cheese_conductivity"][0] / (p["cheese_density"][0] * p["cheese_cp"][0] * 1000.0))
    block = row(minutes=600, place=PLACE_PRESS, t_law=T_FOLLOW, follow_c=4.0, va_mm=float(va_mm), every_min=2)
    rows = kernel.prepare(as_rows([block]))
    ready()
    y0 = first_state(COW, p[0])
    y0[T] = 32.0
    path = kernel.march(rows, y0, p[0])
    odd = 2.0 * np.arange(60) + 1.0
    inner = 0.5 ** (1.0 / 3.0)
    for hours in (3.0, 6.0, 9.0):
        share = 1.0
        for size in sizes:
            decay = np.exp(-(odd**2) * np.pi**2 * alpha * hours * 3600.0 / size**2)
            waves = 8.0 / (odd**2 * np.pi**2) * np.sin(odd * np.pi / 2) * np.sin(odd * np.pi * inner / 2)
            share *= float((waves * decay).sum()) / inner
        exact = 4.0 + 28.0 * share
        ours = float(np.interp(hours * 60.0, path.out[:, 0], path.out[:, 5]))
        assert ours == pytest.approx(exact, abs=2.0)


def test_the_cache_is_named_after_all_that_is_compiled() -> None:
    """An edited law never meets an old compiled result: the key covers whatever the march imports here."""
    code = "import sys, designer.make.march; print(*(m for m in sys.modules if m.startswith('designer.make.')))"
    found = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout.split()
    assert {f"{name.rpartition('.')[2]}.py" for name in found} | {"constants.toml"} == set(kernel.MARCHED)


def test_an_end_met_after_the_ramp_counts_as_met() -> None:
    """A stage that cools first and then waits for its pH is two rows; the end belongs to both."""
    rows = cheddar()
    rows[6] |= {"minutes": 300.0, "end_by": END_PH, "end_of": OF_CURD, "end_value": 5.3}
    rows[6] |= {"t_law": T_RAMP, "t_end_c": 33.0, "ramp_min": 30.0}
    path = marched(rows)
    assert path.ends[6, 2] == 0.0
    assert path.ends[7, 2] == 1.0
    at = np.searchsorted(path.out[:, 0], path.ends[7, 1] - 1e-9)
    assert path.out[at, 2] == pytest.approx(5.3, abs=1e-6)
