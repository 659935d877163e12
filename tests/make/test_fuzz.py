"""Random recipes: whatever a maker may write down, the forecast is finite, in order and in range."""

from __future__ import annotations

import os
import random
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest

from designer.forecast import Forecast, forecast
from designer.recipe.document import Recipe, RecipeError
from designer.recipe.file import reads
from tests.make.families import ready
from tests.recipe.samples import EXAMPLES, every_stage
from tests.recipe.test_editing import any_edit

SOURCES = [path.read_text("utf-8") for path in EXAMPLES] + [every_stage()]
RANGES = {
    "moisture_pct": (0.0, 100.0),
    "fat_pct": (0.0, 100.0),
    "protein_pct": (0.0, 100.0),
    "fdm_pct": (0.0, 100.0),
    "mnfs_pct": (0.0, 100.0),
    "salt_pct": (0.0, 100.0),  # what was strewn and still lies on the curd counts
    "lactose_pct": (0.0, 60.0),
    "ph_24h": (3.2, 8.2),
    "yield_kg_per_100kg": (0.0, 110.0),
    "casein_recovery_pct": (50.0, 101.0),
    "knit": (0.0, 1.0),
}


def sound(made: Forecast) -> None:
    """Every state finite, the clock never turns back, every outcome in its range."""
    for name, column in made.trace.columns.items():
        assert np.isfinite(column).all(), name
    assert (np.diff(made.trace.time_min) >= -1e-9).all()
    assert made.trace["curd_moisture_pct"].min() > 0.0
    assert made.trace["whey_in_vat_kg_per_100kg"].min() > -1e-9
    for key, outcome in made.outcomes.items():
        assert np.isfinite(outcome.value), key
        low, high = RANGES.get(key, (-1e-9, np.inf))
        assert low - 1e-6 <= outcome.value <= high + 1e-6, (key, outcome.value)
    for earlier, later in zip(made.stages, made.stages[1:], strict=False):
        assert earlier.start_min <= earlier.end_min <= later.start_min + 1e-6
    for branch in made.branches:
        sound(branch)


def wander(seed: int, edits: int) -> int:
    """Walk `edits` random edits from an example and forecast after each; returns how many could be marched."""
    dice = random.Random(seed)
    recipe: Recipe = reads(dice.choice(SOURCES))
    marched = 0
    for _ in range(edits):
        try:
            recipe = any_edit(recipe, dice)
            made = forecast(recipe)
        except RecipeError:
            continue
        sound(made)
        marched += 1
    return marched


def test_random_recipes() -> None:
    ready()
    assert sum(wander(seed, 12) for seed in range(20)) > 100


@pytest.mark.slow
@pytest.mark.parametrize("seed", range(1000, 9000, 1000))
def test_ten_thousand_random_recipes(seed: int) -> None:
    """An eighth of them from each seed, so that the cores share the work."""
    ready()
    marched = 0
    while marched < 1_250:
        marched += wander(seed, 25)
        seed += 1


@pytest.mark.slow
def test_once_with_bounds_checking(tmp_path: Path) -> None:
    """Compiled anew with every index checked: a march that reads or writes outside its arrays fails."""
    code = "from tests.make.test_fuzz import wander, ready; ready(); assert sum(wander(s, 10) for s in range(15)) > 60"
    checked = os.environ | {"NUMBA_BOUNDSCHECK": "1", "NUMBA_CACHE_DIR": str(tmp_path)}
    done = subprocess.run([sys.executable, "-c", code], env=checked, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
