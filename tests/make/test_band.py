"""A band marches its members together: what each of them is must not hang on that, in any lane of a vat that parts."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import count
from pathlib import Path

import numpy as np
import pytest

from designer.forecast import forecast
from designer.make import band, many, members, outcomes, path, run
from designer.make.parting import Parting
from designer.make.prepare import prepare
from designer.make.records import joined
from designer.make.stride import TOLERANCE
from designer.recipe.document import Recipe
from designer.recipe.examples import example
from designer.recipe.file import read
from designer.recipe.lower import lower
from tests.make.families import ready
from tests.make.parted_vats import cream, recipe, salted, whey_cheese

COUNT = 6
MAKES = {
    "cheddar": read(example()),
    "twins": read(Path(example()).with_name("millpond-twins.toml")),
    "parted": recipe(cream(30.0), salted("mild", 1.8, 40.0, "drain"), whey_cheese()),
}
KEYS = ("moisture_pct", "salt_pct", "ph_6h", "ph_24h", "ph_end", "fat_recovery_pct", "yield_kg_per_100kg", "floc_min")


def places(one: run.LaneRun) -> np.ndarray:
    """Row and share of it gone at each point of a path."""
    row = one.path.out[:, 1].astype(int)
    start, end = one.path.ends[row, :2].T
    return row + np.minimum((one.path.out[:, 0] - start) / np.maximum(end - start, 1e-9), many.WITHIN)


def lanes_of(made: Recipe) -> tuple[Sequence[band.Way], float]:
    """The lanes of a recipe as a forecast lowers them, looked at thrice in every row; minute of the starter."""
    schedule = lower(made)
    order = [stage.id for stage in made.stages]
    ways = []
    for lane, branch in zip(schedule.lanes, (None, *made.branches), strict=True):
        stages = made.stages if branch is None else branch.stages
        room = next((index for index, stage in enumerate(stages) if stage.kind == "room"), None)
        rows = run.until_room(lane.rows, room)
        wait = prepare(run.day_row(len(stages) - 1, 18.0, rows[-1]))
        at = np.concatenate([k + np.array([0.0, 0.37, many.WITHIN]) for k in range(len(rows))])
        parting = None
        if branch is not None:
            after = np.flatnonzero(ways[0].rows["stage"] <= order.index(branch.after))[-1]
            parting = Parting(int(after), branch.of, branch.share_pct / 100.0)
        ways.append(band.Way(rows, wait, at, parting))
    return ways, schedule.starter_min


@pytest.mark.parametrize("name", MAKES)
def test_members_marched_together_are_those_marched_alone(name: str) -> None:
    ready()
    made = MAKES[name]
    ways, starter_min = lanes_of(made)
    milk, until = lower(made).milk, starter_min + run.DAY_MIN
    together, lost = band.marched(milk, starter_min, ways[0], ways[1:], COUNT, tolerance=TOLERANCE)
    assert together is not None
    assert lost == 0
    found = [
        outcomes.outcomes(one.marks, mill_row=None, milk_kg=milk.mass_kg * one.weight) for one in together
    ]  # fmt: skip
    partings = [way.parting for way in ways if way.parting is not None]
    rows, y0, p = members.drawn(milk, ways[0].rows, COUNT)
    for m in range(COUNT):
        main = run.run_parted(rows[m], y0[m], p[m], until, ways[0].wait, partings, None)
        alone = [(main, main)]
        for way, parting, start in zip(ways[1:], partings, main.starts, strict=True):
            own = members.warmed(way.rows, COUNT)[m]
            whole = parting.of == "curd"
            alone.append(run.run_branch(main, start, parting.row, own, until, way.wait, whole=whole))
        for (own_run, whole_run), way, one, figures in zip(alone, ways, together, found, strict=True):
            read_there = path.Columns(own_run.path, own_run.rows, own_run.p)
            for k, column in enumerate(many.SEEN):
                there = np.interp(way.at, places(own_run), read_there[column])
                assert one.marks.seen[k, :, m] == pytest.approx(there, rel=1e-9, abs=1e-9), column
            left = outcomes.of_paths(
                [whole_run.path], whole_run.rows, joined([whole_run.p]), starter_min, whole_run.milk[None]
            )  # fmt: skip
            by_itself = outcomes.outcomes(left, mill_row=None, milk_kg=milk.mass_kg * np.array([whole_run.weight]))
            for key in KEYS:
                assert figures[key][m] == pytest.approx(by_itself[key][0], rel=1e-9, nan_ok=True), key


def test_a_stop_is_heard_on_the_way() -> None:
    """No bands, and the rest of the forecast is there; asked between the members, not only before the first."""
    ready()
    for after in (0, 2):
        asked = count()
        told = forecast(
            MAKES["cheddar"], members=3 * many.CHUNK, stop=lambda asked=asked, after=after: next(asked) >= after
        )
        assert told.bands is None
        assert "moisture_pct" in told.outcomes
        assert next(asked) > after
