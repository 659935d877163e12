"""A vat that parts: what any one changed figure makes of its main make and of each branch.

Rows come from the pieces of `stepped`, one set a lane; the main make is marched to each parting and the branches on
from there, as in a forecast. A lane that a change does not reach is not marched again.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.forecast import branch_mill_row, mill_row
from designer.judge.movable import Movable, moved
from designer.judge.stepped import Stepped, start_of
from designer.make import kernel, outcomes, run
from designer.make.many import Variant
from designer.make.march import OUT_EXTRA
from designer.make.members import drawn, warmed
from designer.make.parting import Parting, PartingError
from designer.make.records import joined
from designer.make.state import T
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.lower import temperatures_before
from designer.recipe.schedule import Milk

Floats = NDArray[np.float64]
LaneId = str | None
ALL_DAY, NO_DAY = run.DAY_MIN, -np.inf


@dataclass(frozen=True, slots=True)
class Ran:
    """One lane as it went: `own` alone, `whole` with the main make before it where that is its own."""

    own: run.LaneRun
    whole: run.LaneRun
    mill_row: int | None
    starter_min: float
    milk_kg: float


@dataclass(frozen=True, slots=True)
class Made:
    """One make, `by` whom it was made: its main lane as far as it was asked for, what that was marched from, and the
    lanes asked for."""

    by: Parted
    milk: Milk
    main: run.LaneRun
    variant: Variant
    lanes: Mapping[LaneId, Ran]


class Parted:
    """A recipe with branches, as it stands and with one figure changed. RecipeError where it can't be lowered."""

    def __init__(self, recipe: Recipe) -> None:
        self.recipe = recipe
        self.main = Stepped(recipe)
        order = [stage.id for stage in recipe.stages]
        self.after = {branch.id: order.index(branch.after) for branch in recipe.branches}
        self.names = tuple(self.after)
        self.sides = dict(zip(self.names, self._sides(), strict=True))

    def _sides(self) -> list[Stepped]:
        """The branches, each with what there is for it."""
        if not self.names:
            return []
        p, y0 = start_of(self.main.milk)
        still = Variant({}, self.main.starter_min)
        try:
            starts = self._march(self.main.lane(still), y0, p, still, self.names).starts
        except PartingError as error:
            raise RecipeError(str(error)) from None
        return [
            Stepped(self.recipe, branch, start.weight * self.main.milk.mass_kg)
            for branch, start in zip(self.recipe.branches, starts, strict=True)
        ]

    def effects(
        self, which: Sequence[Movable], values: Sequence[float], lanes: Sequence[LaneId], *, settings_too: bool = False
    ) -> dict[LaneId, dict[str, Floats]]:
        """Outcomes of lanes as they stand (first) and with each setting alone at its value, shape (1 + n,) a key.

        nan for what can't be. Raises RecipeError where there is nothing to part with as the recipe stands.
        """
        base = self.made(lanes)
        found = kernel.each(
            lambda k: self.changed(which[k], values[k], lanes, base) or {}, len(which), lambda: False
        )  # fmt: skip
        assert found is not None
        return {lane: self._figures(lane, [base.lanes, *found], settings_too) for lane in lanes}

    def made(self, lanes: Sequence[LaneId]) -> Made:
        """The make as it stands. Raises RecipeError."""
        try:
            return self._made(Variant({}, self.main.starter_min), {}, lanes)
        except PartingError as error:
            raise RecipeError(str(error)) from None

    def changed(
        self, one: Movable, value: float, lanes: Sequence[LaneId], base: Made
    ) -> Mapping[LaneId, Ran] | None:  # fmt: skip
        """The lanes with one setting at a value; None where that can't be."""
        made = self.with_changed(one, value, lanes, base)
        return None if made is None else made.lanes

    def with_changed(self, one: Movable, value: float, lanes: Sequence[LaneId], base: Made) -> Made | None:
        """The make with one setting at a value; None where that can't be."""
        try:
            if one.of == "branch":
                return Parted(moved(self.recipe, one, value)).made(lanes)
            if one.branch is not None:
                own = self.sides[one.branch].move(one, value)
                if own is None or one.branch not in lanes:
                    return None if own is None else base
                ran = self._side(one.branch, base.main, own, base.variant, base.milk)
                return Made(self, base.milk, base.main, base.variant, {**base.lanes, one.branch: ran})
            variant = self.main.move(one, value)
            if variant is None:
                return None
            sides = {name: self._told(name, one, value) for name in self.sides if name in lanes}
            reached = [lane for lane in lanes if self._reaches(lane, variant, sides)]
            made = self._made(variant, sides, reached) if reached else base
            return Made(self, made.milk, made.main, made.variant, {**base.lanes, **made.lanes})
        except (PartingError, RecipeError, ValueError):
            return None

    def _reaches(self, lane: LaneId, variant: Variant, sides: Mapping[str, Variant]) -> bool:
        if lane is None:
            return True
        first = 0 if variant.y0 is not None else min(variant.pieces, default=len(self.main.stages))
        side = sides[lane]
        return first <= self.after[lane] or bool(side.pieces) or side.wait is not None

    def _told(self, name: str, one: Movable, value: float) -> Variant:
        """What a setting of the main make says to a branch beside the state it begins from."""
        side, own = self.sides[name], self.recipe.branch(name)
        still = Variant({}, self.main.starter_min)
        if one.of == "recipe" or (one.of == "form" and own.form is None):
            return side.move(one, value) or still
        if self.recipe.vat is not None and one.kind == "temperature":
            other = moved(self.recipe, one, value)
            milk_c = value if one.of == "milk" else self.main.milk.temperature_c
            return Variant(side.warmed(0, temperatures_before(other, milk_c)[side.stages[0].id]), still.starter_min)
        return still

    def _made(self, variant: Variant, sides: Mapping[str, Variant], lanes: Sequence[LaneId]) -> Made:
        milk = self.main.milk if variant.milk is None else variant.milk
        p, y0 = start_of(milk) if variant.y0 is None else (variant.p, variant.y0)
        rows = self.main.lane(variant)
        main = self._march(rows, y0, p, variant, lanes)
        out: dict[LaneId, Ran] = {}
        if None in lanes:
            kg = milk.mass_kg * main.weight
            out[None] = Ran(main, main, mill_row(self.recipe.stages, main), variant.starter_min, kg)
        still = Variant({}, variant.starter_min)
        for lane in lanes:
            if lane is not None:
                out[lane] = self._side(lane, main, sides.get(lane, still), variant, milk)
        return Made(self, milk, main, variant, out)

    def _march(self, rows: NDArray[Any], y0: Floats, p: Any, variant: Variant, lanes: Sequence[LaneId]) -> run.LaneRun:
        """The main make, or as much of it as the lanes need. `starts` stand for the branches in order, as far as they
        had parted by then."""
        partings = self._partings(rows)
        wait = self.main.wait if variant.wait is None else variant.wait
        if None in lanes:
            return run.run_parted(rows, y0, p, variant.starter_min + ALL_DAY, wait, partings, False)
        last = max(partings[k].row for k, name in enumerate(self.names) if name in lanes)
        early = [one if one.row <= last else Parting(last, "curd", 0.0) for one in partings]
        return run.run_parted(rows[: last + 1], y0, p, NO_DAY, wait, early, False)

    def _partings(self, rows: NDArray[Any]) -> list[Parting]:
        return [
            Parting(
                int(np.flatnonzero(rows["stage"] <= self.after[branch.id])[-1]), branch.of, branch.share_pct / 100.0
            )
            for branch in self.recipe.branches
        ]

    def _side(self, name: str, main: run.LaneRun, own: Variant, variant: Variant, milk: Milk) -> Ran:
        """A branch from where it begins in a main make."""
        side = self.sides[name]
        start = main.starts[self.names.index(name)]
        held = side.holding(start.weight * milk.mass_kg, own)
        wait = side.wait if own.wait is None else own.wait
        return self._along(name, main, side.lane(held), wait, variant.starter_min, milk)

    def _along(
        self, name: str, main: run.LaneRun, rows: NDArray[Any], wait: NDArray[Any], starter_min: float, milk: Milk
    ) -> Ran:  # fmt: skip
        """The march of a branch along prepared rows."""
        branch = self.recipe.branch(name)
        start = main.starts[self.names.index(name)]
        at = int(np.flatnonzero(main.rows[: main.end_row + 1]["stage"] <= self.after[name])[-1])
        until = starter_min + ALL_DAY
        own, whole = run.run_branch(main, start, at, rows, until, wait, False, whole=branch.of == "curd")
        mill = branch_mill_row(self.recipe, branch, main, own, at + 1)
        return Ran(own, whole, mill, starter_min, milk.mass_kg * start.weight)

    # ---- figures

    def _figures(
        self, lane: LaneId, every: Sequence[Mapping[LaneId, Ran]], settings_too: bool
    ) -> dict[str, Floats]:  # fmt: skip
        """Figures of one lane over makes, each (m,); nan where a make has not that lane."""
        rans = [made.get(lane) for made in every]
        single = list({id(one): one for one in rans if one is not None}.values())
        place = {id(one): k for k, one in enumerate(single)}
        found = self._outcomes(single)
        if settings_too:
            found |= self._settings(lane, single)
        at = np.array([-1 if one is None else place[id(one)] for one in rans])
        out = {key: np.where(at < 0, np.nan, column[at]) for key, column in found.items()}
        return {key: column for key, column in out.items() if np.isfinite(column[0])}

    def _outcomes(self, rans: Sequence[Ran]) -> dict[str, Floats]:
        """Outcomes of lanes, reckoned together where they have as many rows."""
        out: dict[str, Floats] = {}
        lengths = [len(one.whole.rows) for one in rans]
        for length in set(lengths):
            which = [k for k, own in enumerate(lengths) if own == length]
            for key, column in outcomes_of([rans[k] for k in which]).items():
                out.setdefault(key, np.full(len(rans), np.nan))[which] = column
        return out

    def _settings(self, lane: LaneId, rans: Sequence[Ran]) -> dict[str, Floats]:
        make = self.main if lane is None else self.sides[lane]
        edges, warm = np.empty((len(rans), len(make.stages) + 1)), np.empty((len(rans), len(make.stages)))
        for m, one in enumerate(rans):
            path, stage = one.own.path, one.own.rows["stage"][: one.own.end_row + 1]
            last = [int(np.flatnonzero(stage == k)[-1]) for k in range(len(make.stages))]
            edges[m] = [path.ends[0, 0], *path.ends[last, 1]]
            points = np.searchsorted(path.out[:, 1], last, side="right") - 1
            warm[m] = path.out[points, OUT_EXTRA + T]
        return make.settings_of(edges, warm)

    # ---- draws

    def drawn(self, made: Made, lane: LaneId, key: str, members: int) -> Floats:
        """An outcome of a lane in `members` draws of what is uncertain, nan where there was nothing to part with."""
        rows = made.main.rows[: made.main.end_row + 1]
        every, y0, p = drawn(made.milk, rows, members)
        own = made.lanes[lane].own
        sides = warmed(own.rows[: own.end_row + 1], members)

        def march(member: int) -> tuple[Ran | None]:
            try:
                main = self._march(every[member], y0[member], p[member], made.variant, [lane])
            except PartingError:
                return (None,)
            nominal = made.lanes[lane]
            if lane is None:
                return (Ran(main, main, nominal.mill_row, nominal.starter_min, nominal.milk_kg),)
            wait = own.rows[-1:]
            return (self._along(lane, main, sides[member], wait, nominal.starter_min, made.milk),)

        found = kernel.each(march, members, lambda: False)
        assert found is not None
        each = [made_[0] for made_ in found]
        out = np.full(members, np.nan)
        there = [k for k, one in enumerate(each) if one is not None]
        if there:
            out[there] = self._outcomes([one for one in each if one is not None])[key]
        return out


def outcomes_of(rans: Sequence[Ran]) -> dict[str, Floats]:
    """Outcomes of lanes with as many rows each."""
    left = outcomes.of_paths(
        [one.whole.path for one in rans], joined([one.whole.rows for one in rans]).reshape(len(rans), -1),
        joined([one.whole.p for one in rans]), np.array([one.starter_min for one in rans]),
        np.array([one.whole.milk for one in rans]),
    )  # fmt: skip
    mills = [one.mill_row for one in rans]
    mill = None if None in mills else np.array(mills, dtype=np.int64)
    return outcomes.outcomes(left, mill_row=mill, milk_kg=np.array([one.milk_kg for one in rans]))
