"""Members of a band: fixed draws, closed milks, and a spread that does not hang on the steps it is marched in."""

from __future__ import annotations

import numpy as np
import pytest

from designer.make import draws, kernel, many, members
from designer.make.outcomes import composition
from designer.make.state import CASEIN, CURD, FAT, HEXOSE, HEXOSE_KG, WATER
from designer.recipe.schedule import as_rows
from tests.make.families import COW, MAKES, ready

COUNT = 64


def spread(name: str, *, fine: bool) -> np.ndarray:
    """Moisture and pH of the members at the end, shape (2, COUNT)."""
    rows, y0, p = members.drawn(COW, kernel.prepare(as_rows(MAKES[name])), COUNT)
    if fine:
        ends = np.array([kernel.march(rows[k], y0[k], p[k], twin=False).out[-1] for k in range(COUNT)])
    else:
        marks = many.unmarched(rows, [0, rows.shape[1]], y0, p, 0.0)
        many.march_on(marks, np.zeros(COUNT, dtype=np.int64), beyond=1)
        ends = marks.at_end[:, -1]
    moisture = composition(ends[:, -y0.shape[1] :], p)["moisture_pct"]
    return np.array([moisture, ends[:, 2]])


@pytest.mark.parametrize("name", MAKES)
def test_a_rough_spread_is_the_same_spread(name: str) -> None:
    ready()
    coarse, fine = (np.percentile(spread(name, fine=one), [10, 50, 90], axis=1) for one in (False, True))
    width = fine[2] - fine[0]
    assert (np.abs(coarse - fine) < 0.05 * width + [0.05, 0.005]).all()


def test_draws_never_change() -> None:
    assert draws.normal(16) is draws.normal(16)
    assert np.array_equal(draws.normal(32)[:16], draws.normal(16))
    assert np.abs(draws.normal(128).mean(axis=0)).max() < 0.05
    assert np.abs(draws.normal(128).std(axis=0) - 1.0).max() < 0.1


def test_a_drawn_milk_still_closes() -> None:
    """What fat, casein and lactose gain, water loses."""
    _, y0, p = members.drawn(COW, as_rows(MAKES["cheddar"]), COUNT)
    solids = y0[:, CURD + FAT] + y0[:, CURD + CASEIN] + HEXOSE_KG * y0[:, CURD + HEXOSE]
    assert np.ptp(solids + y0[:, CURD + WATER]) < 1e-12
    assert np.allclose(p["water_milk"], y0[:, CURD + WATER])
    assert np.allclose(p["casein_milk"], y0[:, CURD + CASEIN])


def test_draws_are_the_sobol_points_of_scipy() -> None:
    from scipy.special import ndtri
    from scipy.stats import qmc

    columns = len(members.uncertainties())
    theirs = ndtri(qmc.Sobol(columns, scramble=True, rng=20).random_base2(11))
    assert draws.normal(draws.MOST) == pytest.approx(theirs, abs=1e-9)
