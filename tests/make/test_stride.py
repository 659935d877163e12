"""The methods of a stride by themselves: what they are good to, how long a stride stands, and heat known beforehand."""

from __future__ import annotations

from types import SimpleNamespace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.linalg import expm

from designer.make import kernel, march, rates, stride
from designer.make.heat import PACE, conducts_per_min, cool, find_pace
from designer.make.kept import KEPT, nothing_kept
from designer.make.march import OUT_EXTRA
from designer.make.start import parameters
from designer.make.state import CALCIUM, CORE, OUTER, SIZE, WHEY, ZONES, T
from designer.make.stride import CHEBYSHEV, MOST_LOOKS, NOTHING, STAGES, STANDS, farthest
from designer.recipe.schedule import PLACE_PRESS, PLACE_UNDER_WHEY, T_FOLLOW, as_rows, row
from tests.make.families import COW, cheddar, marched


def decayed(looks: int, z: float) -> float:
    """What one Chebyshev stride makes of a state of 1 that changes by z of itself."""
    before, last = 1.0, 1.0 + CHEBYSHEV[looks, 1, 2] * z
    for mu, nu, here, first, _ in CHEBYSHEV[looks, 2 : looks + 1]:
        before, last = last, 1.0 + mu * (last - 1.0) + nu * (before - 1.0) + here * z * last + first * z
    return float(last)


@pytest.mark.parametrize("looks", range(2, MOST_LOOKS + 1))
def test_a_chebyshev_stride_is_of_the_second_order(looks: int) -> None:
    """A tenth of the stride is off by a thousandth: its error is of the third power."""
    long, short = (abs(decayed(looks, -z) - np.exp(-z)) for z in (1e-2, 1e-3))
    assert long < 1e-6
    assert short == pytest.approx(long / 1000.0, rel=0.05)


@pytest.mark.parametrize("looks", range(2, MOST_LOOKS + 1))
def test_a_chebyshev_stride_stands_as_far_as_it_says(looks: int) -> None:
    """Nothing grows that should die away, up to STANDS and not much farther."""
    assert max(abs(decayed(looks, -z)) for z in np.linspace(0.0, STANDS[looks], 4000)[1:]) <= 1.0
    assert abs(decayed(looks, -1.2 * STANDS[looks])) > 1.0


@pytest.mark.parametrize("looks", range(2, MOST_LOOKS + 1))
def test_its_looks_are_where_they_say(looks: int) -> None:
    """A state that grows by 1 a minute stands at each look at the minute of that look, and at the end at 1."""
    before, last = 0.0, CHEBYSHEV[looks, 1, 2]
    assert last == pytest.approx(CHEBYSHEV[looks, 1, 4])
    for mu, nu, here, first, when in CHEBYSHEV[looks, 2 : looks + 1]:
        before, last = last, mu * last + nu * before + here + first
        assert last == pytest.approx(when)
    assert last == pytest.approx(1.0)


def cheese(minutes: float, core_c: float, outer_c: float, room_c: float, va_mm: float) -> tuple[np.ndarray, ...]:
    """A cheese of two halves that cools: where `cool` has it, and the matrix of its rates."""
    p = parameters(COW)[0]
    plain = SimpleNamespace(**{name: float(p[name]) for name in p.dtype.names})
    held = as_rows([row(minutes=600, place=PLACE_PRESS, t_law=T_FOLLOW, follow_c=room_c, va_mm=va_mm)])[0]
    of = SimpleNamespace(**{name: held[name].item() for name in held.dtype.names})
    pace = np.empty(PACE)
    find_pace(ZONES, of, plain, pace)
    y = np.zeros((ZONES, SIZE))
    y[:, T] = core_c, outer_c
    to = y.copy()
    cool(y, of, pace, minutes, to)
    inward, outward = conducts_per_min(of, plain)
    return to[:, T], np.array([[-inward, inward], [inward, -inward - outward]])


@given(
    minutes=st.floats(0.0, 3000.0),
    core_c=st.floats(4.0, 70.0),
    outer_c=st.floats(4.0, 70.0),
    room_c=st.floats(1.0, 30.0),
    va_mm=st.floats(2.0, 120.0),
)
def test_a_cheese_cools_as_its_rates_say(
    minutes: float, core_c: float, outer_c: float, room_c: float, va_mm: float
) -> None:  # fmt: skip
    """Against the matrix exponential of SciPy."""
    found, matrix = cheese(minutes, core_c, outer_c, room_c, va_mm)
    exact = room_c + expm(matrix * minutes) @ np.array([core_c - room_c, outer_c - room_c])
    assert found == pytest.approx(exact, abs=1e-9)
    assert found.min() >= min(core_c, outer_c, room_c) - 1e-9
    assert found.max() <= max(core_c, outer_c, room_c) + 1e-9


def test_a_quiet_day_is_a_few_strides(monkeypatch: pytest.MonkeyPatch) -> None:
    """A settled cheese at rest for two days: no stride is cut short by what has long settled."""
    p = parameters(COW)[0]
    y = marched(cheddar()).out[-1, OUT_EXTRA:].copy()
    rest = row(minutes=2880, place=PLACE_PRESS, t_law=T_FOLLOW, follow_c=18.0, va_mm=40.0)
    looked = []
    plain = rates.zone_rates

    def counted(*given: object) -> None:
        looked.append(1)
        plain(*given)

    monkeypatch.setattr(stride, "zone_rates", counted)
    monkeypatch.setattr(march, "zone_rates", counted)
    path = kernel.march(kernel.prepare(as_rows([rest])), y, p, twin=True)
    assert path.out[-1, 0] == pytest.approx(2880.0)
    pace = np.array([1.25 * float(p["calcium_dissolve_per_min"]), 0.0, 0.0])
    assert len(looked) < 0.5 * 3.0 * 2880.0 / (2.5 / pace[0])  # half of what the pair would look at, at its longest
    assert farthest(pace) > 10.0 * 2.5 / pace[0]


def test_a_stride_far_too_long_leaves_nothing_behind() -> None:
    """What it makes of the states may be no number; the next, from where it began, knows nothing of it."""
    p = parameters(COW)[0]
    plain = SimpleNamespace(**{name: float(p[name]) for name in p.dtype.names})
    stirred = as_rows([row(minutes=600, place=PLACE_UNDER_WHEY, disturbed=1.0)])[0]
    of = SimpleNamespace(**{name: stirred[name].item() for name in stirred.dtype.names})
    y = np.vstack([marched(cheddar()[:4]).out[-1, OUT_EXTRA:], np.full(SIZE, np.nan)])
    to, k, kept, pace = y.copy(), np.zeros((STAGES, ZONES, SIZE)), np.empty((ZONES, KEPT)), np.empty(PACE)
    nothing_kept(kept, plain.ph_native)
    find_pace(1, of, plain, pace)
    rates.zone_rates(y, 1, of, plain, kept, k[0])
    fresh = stride.stride(y, 1, of, plain, kept, 0.5, pace, k.copy(), to)
    expected = to[CORE].copy()
    k[1:] = np.nan
    assert stride.stride(y, 1, of, plain, kept, 0.5, pace, k, to) == pytest.approx(fresh)
    assert to[CORE] == pytest.approx(expected, rel=1e-12)
    assert np.isfinite(expected).all()


def test_what_lies_a_hair_below_nothing_does_not_stop_the_march() -> None:
    """Washed out calcium that rounding left just below nothing may sink a hair further, but no stride takes more."""
    y = np.vstack([marched(cheddar()[:4]).out[-1, OUT_EXTRA:], np.full(SIZE, np.nan)])
    y[CORE, WHEY + CALCIUM] = 1.02 * NOTHING
    sunk, taken = y.copy(), y.copy()
    sunk[CORE, WHEY + CALCIUM] = 1.03 * NOTHING
    taken[CORE, WHEY + CALCIUM] = 3.0 * NOTHING
    assert not stride._overdrawn(y, sunk, 1)
    assert stride._overdrawn(y, taken, 1)


def test_the_halves_cool_apart_and_meet() -> None:
    found, _ = cheese(30.0, 35.0, 35.0, 15.0, 40.0)
    assert 15.0 < found[OUTER] < found[CORE] < 35.0
