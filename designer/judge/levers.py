"""What moves it: for every outcome, the effect of one natural step of every setting, both ways.

The whole recipe is marched once and each step from its own stage on, all on longer steps than a forecast takes: a
difference is good to a few per cent so, and a change that is kept is always forecast again.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.judge.movable import Movable, changes, made_stages, movables
from designer.make import many
from designer.make.kernel import prepare
from designer.make.run import day_row
from designer.make.start import first_state, parameters
from designer.recipe.document import Addition, Recipe, Starter
from designer.recipe.error import RecipeError
from designer.recipe.lower import context_of, geometry, given_at, stage_rows, temperatures_before
from designer.recipe.milk import blend
from designer.recipe.schedule import PLACE_MOULD, PLACE_UNDER_WHEY, T_FOLLOW, Milk, as_rows
from designer.recipe.stages.stage import Geometry, RowContext, Stage

Floats = NDArray[np.float64]
Given = tuple[Starter | Addition, ...]
HOT_C, HOT_STEP_MIN = 43.0, 0.5
LONGER_UNDER_WHEY, LONGER_COOLING, LONGER = 3.0, 2.0, 4.0
"""How much longer steps are than in a forecast, by what limits them."""


@dataclass(frozen=True, slots=True)
class Lever:
    """What one step of a setting does to one outcome; nan where the step can't be taken."""

    setting: Movable
    up: float
    down: float

    @property
    def size(self) -> float:
        """The greater of the two effects."""
        return float(np.nanmax(np.abs([self.up, self.down, 0.0])))


@dataclass(frozen=True, slots=True)
class Levers:
    """Effects of one step up and down: `up` and `down` (settings, outcomes), nan where a step can't be taken.

    `base` (outcomes,) is the recipe on the same steps: for differences, not for show.
    """

    settings: tuple[Movable, ...]
    keys: tuple[str, ...]
    base: Floats
    up: Floats
    down: Floats

    def ranked(self, key: str) -> tuple[Lever, ...]:
        """All that moves an outcome, the strongest first; what does nothing is left out. KeyError if unknown."""
        column = self.column(key)
        every = [
            Lever(one, float(self.up[row, column]), float(self.down[row, column]))
            for row, one in enumerate(self.settings)
        ]
        floor = 1e-9 * max(1.0, abs(float(self.base[column])))
        return tuple(sorted((one for one in every if one.size > floor), key=lambda one: -one.size))

    def column(self, key: str) -> int:
        """Where an outcome stands; KeyError if this make has it not."""
        if key not in self.keys:
            raise KeyError(key)
        return self.keys.index(key)


@dataclass(frozen=True, slots=True)
class _Move:
    """One changed value as rows: which stages read differently, and the milk and starter time if they do."""

    pieces: Mapping[int, NDArray[Any]]
    starter_min: float
    milk: Milk


def levers(recipe: Recipe, *, only: Collection[tuple[str, str]] | None = None) -> Levers:
    """Both ways, one step of every setting of the main make (or of those whose paths are in `only`).

    Raises RecipeError where the recipe itself can't be lowered.
    """
    settings = tuple(one for one in movables(recipe) if only is None or one.path in only)
    steps = [one.value + sign * one.step for one in settings for sign in (1.0, -1.0)]
    every = effects(recipe, [one for one in settings for _ in (0, 1)], steps)
    keys = tuple(every)
    table = np.array([every[key] for key in keys]).T
    change = table[1:] - table[0]
    return Levers(settings, keys, table[0], change[0::2], change[1::2])


def effects(recipe: Recipe, which: Sequence[Movable], values: Sequence[float]) -> dict[str, Floats]:
    """Outcomes of the recipe (first) and of the recipe with each setting alone at its value, shape (1 + n,) a key.

    nan for a value that can't be set. On the long steps of this module.
    """
    make = _Make(recipe)
    moves = [make.move(one, value) for one, value in zip(which, values, strict=True)]
    place = [k for k, move in enumerate(moves) if move is not None]
    marks = many.march_variants(make.base, [make.variant(move) for move in moves if move is not None])
    found = many.outcomes(marks, mill_row=make.mill_row(marks), milk_kg=make.milk_kg(moves))
    out = {}
    for key, column in found.items():
        if not np.isnan(column[0]):
            out[key] = np.full(len(moves) + 1, np.nan)
            out[key][0] = column[0]
            out[key][1 + np.array(place, dtype=int)] = column[1:]
    return out


class _Make:
    """The recipe as pieces of prepared rows, one a stage, and its base march."""

    def __init__(self, recipe: Recipe) -> None:
        self.recipe = recipe
        self.milk = blend(recipe)
        self.stages = tuple(made_stages(recipe))
        self.given = [given_at(recipe, stage) for stage in self.stages]
        starts_c = temperatures_before(recipe, self.milk.temperature_c)
        self.contexts = [
            context_of(recipe, recipe, index, self.milk, starts_c[stage.id]) for index, stage in enumerate(self.stages)
        ]
        self.hot = _hot(self.stages, starts_c)
        self.pieces = [self._piece(index, self.contexts[index]) for index in range(len(self.stages))]
        self.starter_min = self._starter_min({})
        rows = [self._longer(index, piece) for index, piece in enumerate(self.pieces)]
        p, y0 = _start(self.milk)
        lane = np.concatenate(rows)
        self.first = np.cumsum([0, *(len(piece) for piece in rows)])
        self.base = many.base(lane, self._wait(lane), y0, p, self.starter_min)

    def _piece(self, index: int, context: RowContext) -> NDArray[Any]:
        return _piece(self.stages[index], self.given[index], context)

    def _wait(self, lane: NDArray[Any]) -> NDArray[Any]:
        room = next((stage for stage in self.recipe.stages if stage.kind == "room"), None)
        cool = getattr(room, "temperature_c", None) or self.recipe.room_c if room is not None else self.recipe.room_c
        return day_row(len(self.stages), cool, 0.0, lane[-1])

    def _longer(self, index: int, piece: NDArray[Any]) -> NDArray[Any]:
        """The piece on longer steps, which follow the base wherever the rows are as many."""
        out = piece.copy()
        if self.hot[index]:
            under = out["place"] == PLACE_UNDER_WHEY
            out["step_max_min"] = np.where(under, np.minimum(out["step_max_min"], HOT_STEP_MIN), out["step_max_min"])
        by = np.where(out["place"] == PLACE_UNDER_WHEY, LONGER_UNDER_WHEY, LONGER)
        by = np.where((out["t_law"] == T_FOLLOW) & (out["place"] >= PLACE_MOULD), LONGER_COOLING, by)
        out["step_max_min"] = np.minimum(by * out["step_max_min"], np.maximum(out["minutes"] / 3.0, 0.1))
        return out

    def _starter_min(self, pieces: Mapping[int, NDArray[Any]], given: Mapping[int, Given] | None = None) -> float:
        """Planned minute of the first starter."""
        clock = 0.0
        for index in range(len(self.stages)):
            doses = (given or {}).get(index, self.given[index])
            first = min((each.after_min for each in doses if isinstance(each, Starter)), default=None)
            if first is not None:
                return clock + first
            clock += float(pieces.get(index, self.pieces[index])["minutes"].sum())
        return 0.0

    def move(self, one: Movable, value: float) -> _Move | None:
        """What changes when one setting takes a value; None where it can't."""
        if not one.low - 1e-9 <= value <= one.high + 1e-9:
            return None
        try:
            match one.of:
                case "stage":
                    return self._move_stage(one, value)
                case "starter" | "addition":
                    return self._move_dose(one, value)
                case "milk":
                    return self._move_milk(one, value)
                case "form":
                    assert self.recipe.form is not None
                    form = geometry(_changed(self.recipe.form, one.field, value))
                    return self._move_contexts("geometry", {"geometry": form})
            return self._move_contexts("room", {"room_c": value})
        except (RecipeError, ValueError):
            return None

    def _move_stage(self, one: Movable, value: float) -> _Move:
        index = next(k for k, stage in enumerate(self.stages) if stage.id == one.where)
        stage = _changed(self.stages[index], one.field, value)
        pieces = {index: _piece(stage, self.given[index], self.contexts[index])}
        ends_c = stage.end_temperature_c(self.contexts[index].temperature_c)
        if self.recipe.vat is not None and ends_c == ends_c:
            pieces |= self._warmed(index + 1, ends_c)
        return _Move(pieces, self._starter_min(pieces), self.milk)

    def _warmed(self, first: int, start_c: float) -> dict[int, NDArray[Any]]:
        """Pieces of the later stages whose rows depend on the temperature they start from."""
        out = {}
        for index in range(first, len(self.stages)):
            context = replace(self.contexts[index], temperature_c=start_c)
            if "start" in _depends(self.stages[index], self.given[index], self.contexts[index]):
                out[index] = self._piece(index, context)
            start_c = self.stages[index].end_temperature_c(start_c)
        return out

    def _move_dose(self, one: Movable, value: float) -> _Move:
        index, at = next(
            (k, j) for k, doses in enumerate(self.given) for j, each in enumerate(doses) if each.id == one.where
        )
        doses = self.given[index]
        given = (*doses[:at], _changed(doses[at], one.field, value), *doses[at + 1 :])
        pieces = {index: _piece(self.stages[index], given, self.contexts[index])}
        return _Move(pieces, self._starter_min(pieces, {index: given}), self.milk)

    def _move_milk(self, one: Movable, value: float) -> _Move:
        milks = tuple(
            _changed(source, one.field, value) if source.id == one.where else source for source in self.recipe.milks
        )
        milk = blend(self.recipe.model_copy(update={"milks": milks}))
        pieces = self._move_contexts("milk", {"milk": milk}).pieces
        if self.recipe.vat is not None and milk.temperature_c != self.milk.temperature_c:
            pieces = {**pieces, **self._warmed(0, milk.temperature_c)}
        return _Move(pieces, self.starter_min, milk)

    def _move_contexts(self, what: str, update: Mapping[str, Any]) -> _Move:
        """What changes when every stage is told something else of the make."""
        pieces = {}
        for index, stage in enumerate(self.stages):
            if what in _depends(stage, self.given[index], self.contexts[index]):
                pieces[index] = self._piece(index, replace(self.contexts[index], **update))
        return _Move(pieces, self.starter_min, self.milk)

    def variant(self, move: _Move) -> many.Variant:
        """The move as rows from the first stage that reads differently."""
        other_milk = move.milk is not self.milk
        last = len(self.stages) - 1
        stage = 0 if other_milk else min(move.pieces, default=last)
        rows = [
            self._longer(index, move.pieces[index])
            if index in move.pieces
            else self.base.rows[self.first[index] : self.first[index + 1]]
            for index in range(stage, last + 1)
        ]
        for index, piece in zip(range(stage, last + 1), rows, strict=True):
            own = self.base.rows[self.first[index] : self.first[index + 1]]
            if len(piece) == len(own):
                piece["step_max_min"] = own["step_max_min"]
        p, y0 = _start(move.milk) if other_milk else (None, None)
        return many.Variant(stage, np.concatenate(rows), move.starter_min, y0, p)

    def mill_row(self, marks: many.Marks) -> NDArray[np.int64] | None:
        """First row of milling, else of salting the curd, of every make."""
        kinds = [stage.kind for stage in self.stages]
        stage = next((kinds.index(kind) for kind in ("mill", "salt") if kind in kinds), None)
        return None if stage is None else (marks.rows["stage"] == stage).argmax(axis=1)

    def milk_kg(self, moves: Sequence[_Move | None]) -> Floats:
        """Milk in the vat of every make that can be."""
        return np.array([self.milk.mass_kg, *(move.milk.mass_kg for move in moves if move is not None)])


def _changed(part: Any, field: str, value: float) -> Any:
    """A part with one figure changed, validated anew as an edit is."""
    data = dict(part) | changes(part, field, value)
    if isinstance(part, Stage):
        data = type(part).reconcile(data, changes(part, field, value))
    return type(part).model_validate(data)


@lru_cache(maxsize=8192)
def _piece(stage: Stage, given: Given, context: RowContext) -> NDArray[Any]:
    """Prepared rows of one stage; kept, because from one edit to the next almost all stages stay as they are."""
    rows, _ = stage_rows(stage, given, context, stage.title)
    out = prepare(as_rows(rows))
    out.flags.writeable = False
    return out


@lru_cache(maxsize=1024)
def _depends(stage: Stage, given: Given, context: RowContext) -> frozenset[str]:
    """What of the make the rows of a stage depend on: "milk", "geometry", "room", "start"; found by trying."""
    here = _piece(stage, given, context).tobytes()
    milk, form = context.milk, context.geometry
    probes: Mapping[str, Mapping[str, Any]] = {
        "milk": {"milk": replace(milk, mass_kg=milk.mass_kg * 1.01, density_kg_l=milk.density_kg_l * 1.001)},
        "geometry": {
            "geometry": Geometry(
                form.height_mm + 1.0, form.radius_mm + 1.0, form.va_mm + 1.0, form.press_area_m2 * 1.01,
                form.lever * 1.01, form.pieces,
            )
        },
        "room": {"room_c": context.room_c + 1.0},
        "start": {"temperature_c": context.temperature_c + 1.0},
    }  # fmt: skip
    return frozenset(
        name for name, update in probes.items() if _piece(stage, given, replace(context, **update)).tobytes() != here
    )


@lru_cache(maxsize=512)
def _start(milk: Milk) -> tuple[Any, Floats]:
    p = parameters(milk)[0]
    return p, first_state(milk, p)


def _hot(stages: Sequence[Stage], starts_c: Mapping[str, float]) -> list[bool]:
    """Where curd under whey may be hot enough to be stepped finely."""
    out = []
    for stage in stages:
        before = starts_c[stage.id]
        after = stage.end_temperature_c(before)
        out.append(any(temp > HOT_C for temp in (before, after) if temp == temp))
    return out
