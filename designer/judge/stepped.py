"""A make as rows of each stage: its base march, and what any one changed figure makes of it.

Rows are worked out once for each stage and kept: from one edit to the next almost all stages stay as they are.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cached_property, lru_cache
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from designer.judge.moments import UNDER_WHEY
from designer.judge.movable import Movable, changes, made_stages, moved
from designer.make import many
from designer.make.march import OUT_EXTRA
from designer.make.members import drawn
from designer.make.prepare import prepare
from designer.make.records import beside, joined
from designer.make.run import day_row
from designer.make.start import first_state, parameters
from designer.make.state import T
from designer.recipe.document import Addition, Branch, Recipe, Starter
from designer.recipe.field import Model
from designer.recipe.lower import contexts_of, geometry, given_at, stage_rows, temperatures_before
from designer.recipe.milk import blend
from designer.recipe.schedule import Milk, as_rows
from designer.recipe.stages.stage import Geometry, RowContext, Stage

Floats = NDArray[np.float64]
Given = tuple[Starter | Addition, ...]
M = TypeVar("M", bound=Model)
SPARSE_MIN = 30.0
"""Points as far apart as this still tell the pH at 6 and 24 h."""
# Settings of styles.settings that come of the whole make: (key, kind of stage, minutes in its unit), (key, kinds).
_LENGTHS = (
    ("ripen_min", "ripen", 1.0),
    ("stack_min", "stack", 1.0),
    ("press_h", "press", 60.0),
    ("brine_h", "brine", 60.0),
    ("hang_h", "hang", 60.0),
)
_WARM = (("ripen_c", ("ripen",)), ("set_c", ("set", "lactic_set")), ("cook_c", tuple(UNDER_WHEY)))


class Stepped:
    """The main make of a recipe, or one of its branches, as pieces of prepared rows, one a stage."""

    def __init__(self, recipe: Recipe, branch: Branch | None = None, held_kg: float = 0.0) -> None:
        """Of a branch, `held_kg` says how much milk (as curd with its whey), whey or cream it begins with."""
        self.recipe, self.branch = recipe, branch
        lane = recipe if branch is None else branch
        self.milk = blend(recipe)
        self.stages = tuple(made_stages(lane))
        starts_c = temperatures_before(recipe, self.milk.temperature_c)
        held = self.milk if branch is None else replace(self.milk, mass_kg=max(held_kg, 1e-9))
        self.contexts = contexts_of(recipe, lane, held, starts_c)[: len(self.stages)]
        self.given = [given_at(lane, stage) for stage in self.stages]
        self.pieces: list[_Pieces] = []
        for stage, given, context in zip(self.stages, self.given, self.contexts, strict=True):
            self.pieces.append(_pieces(_Same(stage, *given), context))
        self.starters_min = [_first_starter_min(doses) for doses in self.given]
        self.starter_min = self._starter_min()

    @cached_property
    def base(self) -> many.Marks:
        """The main make, marched; of a vat that parts with curd only."""
        p, y0 = start_of(self.milk)
        return many.march_base([piece.base for piece in self.pieces], self.wait, y0, p, self.starter_min)

    @cached_property
    def wait(self) -> NDArray[Any]:
        """The row that waits for 24 h, where the forecast lets it wait."""
        return self.waiting(self.recipe.room_c, {})

    def waiting(self, room_c: float, pieces: Mapping[int, NDArray[Any]]) -> NDArray[Any]:
        """The same with another make room, or with other pieces."""
        lane = self.recipe if self.branch is None else self.branch
        room = next((stage for stage in lane.stages if stage.kind == "room"), None)
        own = None if room is None else getattr(room, "room_c", None)
        last = pieces.get(len(self.stages) - 1, self.pieces[-1].base)[-1]
        shape = float(last["va_mm"]), float(last["height_mm"]), float(last["radius_mm"])
        return _wait(len(self.stages), room_c if own is None else own, *shape)

    def _starter_min(self, pieces: Mapping[int, NDArray[Any]] | None = None, given: Given = (), at: int = -1) -> float:
        """Planned minute of the first starter, with other rows for some stages, or other doses at one."""
        clock = 0.0
        for index, piece in enumerate(self.pieces):
            first = _first_starter_min(given) if index == at else self.starters_min[index]
            if first is not None:
                return clock + first
            other = None if pieces is None else pieces.get(index)
            clock += piece.minutes if other is None else float(other["minutes"].sum())
        return 0.0

    def move(self, one: Movable, value: float) -> many.Variant | None:
        """What changes when one setting of this make takes a value; None where it can't."""
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
                    lane = self.recipe if one.branch is None else self.recipe.branch(one.branch)
                    assert lane.form is not None
                    pieces = self.told("geometry", geometry(changed(lane.form, one.field, value)))
                    return many.Variant(pieces, self.starter_min, wait=self.waiting(self.recipe.room_c, pieces))
                case "branch":
                    return self._move_share(one, value)
            pieces = self.told("room_c", value)
            return many.Variant(pieces, self.starter_min, wait=self.waiting(value, pieces))
        except ValueError:
            return None

    def _move_stage(self, one: Movable, value: float) -> many.Variant:
        index = next(k for k, stage in enumerate(self.stages) if stage.id == one.where)
        rows, ends_c = self.pieces[index].own(one.field, value)
        pieces = {index: rows}
        if self.recipe.vat is not None and ends_c == ends_c:
            pieces |= self.warmed(index + 1, ends_c)
        return many.Variant(pieces, self._starter_min(pieces))

    def warmed(self, first: int, start_c: float) -> dict[int, NDArray[Any]]:
        """Rows of the later stages that depend on the temperature they start from."""
        out = {}
        for index in range(first, len(self.stages)):
            if "temperature_c" in self.pieces[index].depends:
                out[index] = self.pieces[index].told("temperature_c", start_c)
            start_c = self.stages[index].end_temperature_c(start_c)
        return out

    def _move_dose(self, one: Movable, value: float) -> many.Variant:
        index = next(k for k, doses in enumerate(self.given) if any(each.id == one.where for each in doses))
        rows, given = self.pieces[index].dose(one.where, one.field, value)
        return many.Variant({index: rows}, self._starter_min(None, given, index))

    def _move_share(self, one: Movable, value: float) -> many.Variant:
        """Another share for a branch: less or more of the vat stays behind."""
        other = Stepped(moved(self.recipe, one, value))
        pieces = {
            index: piece.base
            for index, piece in enumerate(other.pieces)
            if piece.base.tobytes() != self.pieces[index].base.tobytes()
        }
        return many.Variant(pieces, self.starter_min)

    def _move_milk(self, one: Movable, value: float) -> many.Variant:
        milk = _other_milk(_Milks(self.recipe), one.where, one.field, value)
        pieces = {}
        for index, own in enumerate(self.pieces):
            if "milk" in own.depends:
                behind = own.context.milk.mass_kg / self.milk.mass_kg
                held = milk if behind == 1.0 else replace(milk, mass_kg=milk.mass_kg * behind)  # the vat has parted
                pieces[index] = own.told("milk", held)
        if self.recipe.vat is not None and milk.temperature_c != self.milk.temperature_c:
            pieces |= self.warmed(0, milk.temperature_c)
        p, y0 = start_of(milk)
        return many.Variant(pieces, self.starter_min, y0, p, milk)

    def told(self, what: str, value: Any) -> dict[int, NDArray[Any]]:
        """Rows of the stages that depend on what is told to all of them."""
        return {index: own.told(what, value) for index, own in enumerate(self.pieces) if what in own.depends}

    def settings(self, marks: many.Marks) -> dict[str, Floats]:
        """Temperatures and times that a style has usual ranges for, of every make, shape (m,)."""
        warm = marks.at_end[np.arange(len(marks.t))[:, None], marks.bounds[:, 1:-1] - 1, OUT_EXTRA + T]
        return self.settings_of(marks.t, warm)

    def settings_of(self, edges: Floats, warm: Floats) -> dict[str, Floats]:
        """The same from the minutes between stages (m, s + 1) and the temperatures they end at (m, s)."""
        kinds, lengths = [stage.kind for stage in self.stages], np.diff(edges, axis=1)
        out: dict[str, Floats] = {}
        for key, kind, unit in _LENGTHS:
            if kind in kinds:
                out[key] = lengths[:, [one == kind for one in kinds]].sum(axis=1) / unit
        for key, of_kinds in _WARM:
            which = [one in of_kinds for one in kinds]
            if any(which):
                out[key] = warm[:, which].max(axis=1) if key == "cook_c" else warm[:, which][:, -1]
        drawn = next((k for k, stage in enumerate(self.stages) if _draws_whey(stage)), None)
        if drawn is not None and "cut" in kinds:
            out["cut_to_drain_min"] = edges[:, drawn] - edges[:, kinds.index("cut")]
        return out

    def mill_row(self, marks: many.Marks) -> NDArray[np.int64] | None:
        """First row of milling, else of salting, of every make."""
        kinds = [stage.kind for stage in self.stages]
        stage = next((kinds.index(kind) for kind in ("mill", "salt") if kind in kinds), None)
        return None if stage is None else marks.bounds[:, stage]

    def spread(self, moves: Sequence[many.Variant], count: int) -> Iterator[many.Marks]:
        """The recipe, then each move, in the same `count` draws of what is uncertain; each from where it differs on."""
        still = many.Variant({}, self.starter_min)
        base = self._drawn(still, count, None)
        yield base
        for move in moves:
            yield self._drawn(move, count, base)

    def _drawn(self, move: many.Variant, count: int, base: many.Marks | None) -> many.Marks:
        lane, first = self.lane(move), 0
        rows, y0, p = drawn(self.milk if move.milk is None else move.milk, lane, count)
        edges = np.cumsum([0, *(len(move.pieces.get(k, own.base)) for k, own in enumerate(self.pieces))])
        rows = beside(count, rows, self.wait if move.wait is None else move.wait)
        if base is not None and move.y0 is None:
            first = min(move.pieces, default=len(self.pieces))
            after = edges[first:] - edges[first]
            marks = many.along(base, first, rows[:, edges[first] :], after.tolist(), move.starter_min)
        else:
            marks = many.unmarched(rows, edges.tolist(), y0, p, move.starter_min)
        many.march_on(marks, np.full(count, first))
        return marks

    def lane(self, variant: many.Variant) -> NDArray[Any]:
        """All rows of a variant, without the wait."""
        return joined([variant.pieces.get(index, piece.base) for index, piece in enumerate(self.pieces)])

    def holding(self, mass_kg: float, variant: many.Variant) -> many.Variant:
        """A variant of a branch that turns out to hold so much milk, whey or cream: doses in kilograms count for it."""
        milk = self.contexts[0].milk
        if abs(mass_kg - milk.mass_kg) <= 1e-9 * milk.mass_kg:
            return variant
        told = {
            index: own.at(replace(milk, mass_kg=max(mass_kg, 1e-9)))
            for index, own in enumerate(self.pieces)
            if "milk" in own.depends and index not in variant.pieces
        }
        return replace(variant, pieces=told | dict(variant.pieces))

    def milk_kg(self, which: Sequence[Movable], values: Sequence[float]) -> Floats:
        """Milk behind the main make: of the recipe, and with each setting at its value."""
        kept = 1.0 - sum(branch.share_pct for branch in self.recipe.branches if branch.of == "curd") / 100.0
        base, by_share = self.milk.mass_kg, np.zeros(1 + len(which))
        by_share[1:] = [
            (one.value - value) / 100.0 if one.of == "branch" else 0.0 for one, value in zip(which, values, strict=True)
        ]
        volume = {"volume_l": self.milk.density_kg_l, "mass_kg": 1.0}
        more = [
            (value - one.value) * volume.get(one.field, 0.0) if one.of == "milk" else 0.0
            for one, value in zip(which, values, strict=True)
        ]
        return (kept + by_share) * (base + np.array([0.0, *more]))


def changed(part: M, field: str, value: float) -> M:
    """A part of a recipe with one figure changed, validated anew as an edit is; ValueError where it can't be."""
    fresh = changes(part, field, value)
    data = dict(part) | fresh
    if isinstance(part, Stage):
        data = type(part).reconcile(data, fresh)
    return type(part).model_validate(data)


def _first_starter_min(doses: Given) -> float | None:
    """When in its stage the first starter goes in; None without one."""
    return min((each.after_min for each in doses if isinstance(each, Starter)), default=None)


def _draws_whey(stage: Stage) -> bool:
    """True where whey leaves the vat."""
    return stage.kind in ("drain", "ladle", "hang") or getattr(stage, "whey_off_pct", 0.0) > 0.0


class _Same:
    """Parts of a recipe, equal to others only if they are the very same objects: edits keep what they do not touch."""

    __slots__ = ("parts",)

    def __init__(self, *parts: Any) -> None:
        self.parts = parts

    def __hash__(self) -> int:
        return hash(tuple(id(part) for part in self.parts))

    def __eq__(self, other: object) -> bool:
        return (
            isinstance(other, _Same)
            and len(self.parts) == len(other.parts)
            and all(one is two for one, two in zip(self.parts, other.parts, strict=True))
        )


class _Milks(_Same):
    """The milks of a recipe, with the recipe they were met in first."""

    __slots__ = ("recipe",)

    def __init__(self, recipe: Recipe) -> None:
        super().__init__(*recipe.milks)
        self.recipe = recipe


@lru_cache(maxsize=512)
def _other_milk(of: _Milks, where: str, field: str, value: float) -> Milk:
    """What is in the vat with one figure of one milk changed; ValueError where it can't be."""
    milks = (changed(source, field, value) if source.id == where else source for source in of.recipe.milks)
    return blend(of.recipe.model_copy(update={"milks": tuple(milks)}))


class _Pieces:
    """Rows of one stage: as it stands, and with any one thing changed. Each is worked out once."""

    def __init__(self, stage: Stage, given: Given, context: RowContext) -> None:
        self.stage, self.given, self.context = stage, given, context
        self.known: dict[tuple[Any, ...], Any] = {}
        self.base = self._rows(stage, given, context)
        self.minutes = float(self.base["minutes"].sum())

    def _rows(self, stage: Stage, given: Given, context: RowContext) -> NDArray[Any]:
        return _sparse(as_rows(stage_rows(stage, given, context, stage.title)[0]))

    def own(self, field: str, value: float) -> tuple[NDArray[Any], float]:
        """Rows with a field of the stage changed, and the temperature it then ends at."""
        key = (field, value)
        if key not in self.known:
            stage = changed(self.stage, field, value)
            ends_c = stage.end_temperature_c(self.context.temperature_c)
            self.known[key] = self._rows(stage, self.given, self.context), ends_c
        rows, ends_c = self.known[key]
        return rows, ends_c

    def dose(self, dose_id: str, field: str, value: float) -> tuple[NDArray[Any], Given]:
        """Rows with one dose changed, and the doses."""
        key = (dose_id, field, value)
        if key not in self.known:
            given = tuple(changed(each, field, value) if each.id == dose_id else each for each in self.given)
            self.known[key] = self._rows(self.stage, given, self.context), given
        rows, doses = self.known[key]
        return rows, doses

    def told(self, what: str, value: Any) -> NDArray[Any]:
        """Rows where the make around it is another: "milk", "geometry", "room_c", "temperature_c"."""
        key = ("told", what, value)
        if key not in self.known:
            self.known[key] = self._rows(self.stage, self.given, replace(self.context, **{what: value}))
        rows: NDArray[Any] = self.known[key]
        return rows

    def at(self, milk: Milk) -> NDArray[Any]:
        """Rows with another mass of milk; not kept, for it is never the same twice."""
        return self._rows(self.stage, self.given, replace(self.context, milk=milk))

    @cached_property
    def depends(self) -> frozenset[str]:
        """What of the make around it its rows depend on; found by trying."""
        milk, form, context = self.context.milk, self.context.geometry, self.context
        other = {
            "milk": replace(milk, mass_kg=milk.mass_kg * 1.01, density_kg_l=milk.density_kg_l * 1.001),
            "geometry": Geometry(
                form.height_mm + 1.0, form.radius_mm + 1.0, form.va_mm + 1.0, form.press_area_m2 * 1.01,
                form.lever * 1.01, form.pieces,
            ),
            "room_c": context.room_c + 1.0,
            "temperature_c": context.temperature_c + 1.0,
        }  # fmt: skip
        return frozenset(
            what for what, value in other.items() if self.told(what, value).tobytes() != self.base.tobytes()
        )


@lru_cache(maxsize=512)
def _pieces(parts: _Same, context: RowContext) -> _Pieces:
    stage, *given = parts.parts
    return _Pieces(stage, tuple(given), context)


def _sparse(rows: NDArray[Any]) -> NDArray[Any]:
    """Rows prepared for the march with their points far apart: little but the ends of rows is read."""
    rows["every_min"] = np.maximum(rows["every_min"], SPARSE_MIN)
    return prepare(rows)


@lru_cache(maxsize=512)
def _wait(stage: int, room_c: float, va_mm: float, height_mm: float, radius_mm: float) -> NDArray[Any]:
    like = {"va_mm": va_mm, "height_mm": height_mm, "radius_mm": radius_mm}
    return _sparse(day_row(stage, room_c, like))[:1]


@lru_cache(maxsize=512)
def start_of(milk: Milk) -> tuple[Any, Floats]:
    p = parameters(milk)[0]
    return p, first_state(milk, p)
