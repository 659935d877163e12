"""Timings without a window: the march against LSODA, an edit up to its verdict, the bands."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import cycle

import numpy as np

from designer.forecast import forecast
from designer.judge.aim import aim as aim_at
from designer.judge.aim import at
from designer.judge.check import check
from designer.judge.levers import levers, spreads
from designer.make import kernel
from designer.make.march import OUT_EXTRA
from designer.make.run import until_room
from designer.make.start import first_state, parameters
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from designer.recipe.examples import example
from designer.recipe.file import read
from designer.recipe.lower import lower
from styles.reader import style
from tests.speed import lsoda
from tests.speed.clock import Timing, timed

SMALL = 1e-6
WARM_TO_C = (38.0, 38.5, 39.0, 39.5)


def timings() -> Iterator[Timing]:
    """All of them, the march first."""
    yield from marches()
    yield from edits()


def marches() -> Iterator[Timing]:
    """One make of the example by the compiled march, its plain twin, and LSODA on plain and compiled rates."""
    recipe = read(example())
    schedule = lower(recipe)
    room = next((index for index, stage in enumerate(recipe.stages) if stage.kind == "room"), None)
    rows = until_room(schedule.lanes[0].rows, room)
    p = parameters(schedule.milk)[0]
    y0 = first_state(schedule.milk, p)
    kernel.warm_up()
    path = kernel.march(rows, y0, p, twin=False)
    march = timed("march, compiled", lambda: kernel.march(rows, y0, p, twin=False), 300, aim=0.5)
    yield Timing(march.what, march.times_ms, march.aim_p95_ms, f"{len(path.out)} points, {len(rows)} rows")
    highest = np.abs(path.out[:, OUT_EXTRA:]).max(axis=0) + SMALL
    apart = (np.abs(lsoda.compiled(path, rows, y0, p) - path.last) / highest).max()
    agreement = f"; states at the end at most {apart:.1e} of their highest apart"
    for name, act, times, told in (
        ("march, plain twin", lambda: kernel.march(rows, y0, p, twin=True), 3, ""),
        ("LSODA, plain rates", lambda: lsoda.plain(path, rows, y0, p), 3, ""),
        ("LSODA, compiled rates", lambda: lsoda.compiled(path, rows, y0, p), 20, agreement),
    ):
        other = timed(name, act, times)
        yield Timing(other.what, other.times_ms, None, f"{other.p50 / march.p50:.0f} times the march{told}")


def edits() -> Iterator[Timing]:
    """An edit up to its verdict, and the bands that follow it."""
    recipe = read(example())
    cheddar = style(recipe.style)
    stage = next(stage.id for stage in recipe.stages if stage.kind == "cook")
    temperatures = cycle(WARM_TO_C)

    def edited() -> Recipe:
        return edit(recipe, stage, temperature_c=next(temperatures))

    yield timed("edit: a new recipe", edited, 100)
    yield timed("lower: recipe to schedule", lambda: lower(recipe), 100)
    yield timed("edit to verdict", lambda: check(forecast(edited()), cheddar), 100, aim=3.0)
    for members, aim in ((128, 15.0), (500, 60.0)):
        yield timed(f"band of {members}", lambda members=members: forecast(recipe, members=members), 10, aim=aim)
    found = levers(recipe)
    what = f"what moves it: {len(found.settings)} settings both ways, after an edit"
    yield timed(what, lambda: levers(edited()), 30, aim=10.0)
    top = found.ranked("moisture_pct")[:5]
    yield timed("bands of the five strongest", lambda: spreads(recipe, "moisture_pct", top), 10)
    drier = [at("moisture_pct", forecast(recipe).outcomes["moisture_pct"].value - 1.0)]
    yield timed("aim: a point drier", lambda: aim_at(recipe, drier), 5, aim=1000.0)
