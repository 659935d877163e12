"""The recipes that lie between two: every single difference, and the recipe with any of them taken across.

Differences are as small as they can be made one at a time: a temperature, an end, a dose, a stage that only one make
has. Whatever is chosen, what comes out is a whole recipe: what hangs on a stage that is gone hangs on the one before.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from designer.judge.align import Pair, align
from designer.judge.given import Dose, Pairs, amount_words, is_amount, of_100kg, paired, same_dose
from designer.judge.milk_vat_form import composition, faces, form_words, milk_words, same_vat, vat_words
from designer.language import headed, say, word
from designer.recipe.changes import called, label_of, said_of
from designer.recipe.document import Addition, Form, MilkSource, Recipe
from designer.recipe.dose import rennet_imcu_per_l
from designer.recipe.field import field_meta, field_metas
from designer.recipe.milk import blend
from designer.recipe.per_milk import explicit, for_milk, free_id
from designer.recipe.stages.stage import Stage
from designer.units import System, show

What = Literal["room", "vat", "milk", "form", "setting", "other stage", "stage gone", "stage more", "dose", "moment",
               "dose gone", "dose more"]  # fmt: skip
LESS_THAN_END_MIN = 0.5
# Fields that say one thing together and can't be changed one without the other.
_TOGETHER: dict[str, tuple[tuple[str, ...], ...]] = {
    "wash": (("water_pct", "water_l"),),
    "press": (("steps", "end"),),
    "salt": (("salt_pct", "of", "on"),),
}
_NO_MATTER = frozenset(("id", "kind", "name", "note", "turn_min", "lot"))
_MILK: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("breed", ("breed",)),
    ("fat", ("fat_pct",)),
    ("protein", ("protein_pct", "casein_pct")),
    ("lactose", ("lactose_pct",)),
    ("pH", ("ph",)),
    ("temperature", ("temperature_c",)),
    ("age", ("age_h",)),
    ("heat treatment", ("heat", "heat_c", "heat_min")),
)


@dataclass(frozen=True, slots=True)
class Step:
    """One difference: what kind, where it stands (row of the alignment, else -1), and both sides as text.

    `part` is the id of the left's part (of the right's, where the left has none); `fields` are what is taken across.
    """

    what: What
    row: int
    part: str
    of: str
    label: str
    left: str
    right: str
    fields: tuple[str, ...] = ()
    index: int = -1

    @property
    def sentence(self) -> str:
        """ "cook: temperature 38 °C → 40 °C", "wash curd more", "stack gone"."""
        match self.what:
            case "stage gone" | "dose gone":
                return say("without {of}", of=self.of)
            case "stage more" | "dose more":
                return say("with {of}", of=self.of) + (f", {self.right}" if self.right else "")
        return headed(self.of, self.change) if self.label else self.change

    @property
    def change(self) -> str:
        """The sentence without saying where: "temperature 38 °C → 40 °C"."""
        if self.what in ("stage gone", "dose gone", "stage more", "dose more"):
            return self.sentence
        return f"{self.label} {self.left} → {self.right}".strip()


class Between:
    """Two recipes, `left` as it is and `right` brought to the left's amount of milk, and the steps from one to the
    other. `rescaled` is True where the amounts of milk differed: doses then read per 100 kg of milk."""

    def __init__(self, left: Recipe, right: Recipe, system: System = "metric") -> None:
        milks = blend(left), blend(right)
        kg = [milk.mass_kg for milk in milks]
        self.rescaled = abs(kg[0] - kg[1]) > 5e-3 * kg[0]
        self.left = left
        # Litres or kilograms, as the left says its milk, so that its composition can change alone.
        by = [milk.mass_kg / (milk.density_kg_l if left.milks[0].volume_l is not None else 1.0) for milk in milks]
        self.right = _level(left, for_milk(right, by[0] / by[1]))
        self.system = system
        self.rows: tuple[Pair, ...] = align(left.stages, self.right.stages)
        self._row_of = tuple(
            {
                stage.id: row
                for row, pair in enumerate(self.rows)
                if (stage := (pair.left, pair.right)[side]) is not None
            }
            for side in (0, 1)
        )
        self._starters = paired(left.starters, self.right.starters)
        self._additions = paired(left.additions, self.right.additions)
        self._ids = self._new_ids()
        self.steps: tuple[Step, ...] = tuple(self._all())

    # --- what differs ----------------------------------------------------------------------------------------

    def _all(self) -> Iterator[Step]:
        yield from self._of_milk()
        if self.left.room_c != self.right.room_c:
            meta = field_meta(Recipe, "room_c")
            said = self._both(lambda one: said_of(one, meta, self.system))
            yield Step("room", -1, "", say("make room"), word("temperature", "field"), *said, ("room_c",))
        if not same_vat(self.left.vat, self.right.vat):
            said = self._both(lambda one: vat_words(one, self.rescaled))
            yield Step("vat", -1, "vat", say("vat"), say("heating"), *said)
        yield from self._of_doses(self._starters, "starter")
        yield from self._of_doses(self._additions, "addition")
        if faces(self.left.form) != faces(self.right.form):
            said = self._both(lambda one: form_words(one.form, self.system))
            yield Step("form", -1, "form", say("form"), say("size"), *said)
        for row, pair in enumerate(self.rows):
            yield from self._of_row(row, pair)

    def _both(self, words: Callable[[Recipe], str]) -> tuple[str, str]:
        return words(self.left), words(self.right)

    def _of_milk(self) -> Iterator[Step]:
        left, right = self.left.milks, self.right.milks
        if len(left) != 1 or len(right) != 1 or left[0].species != right[0].species:
            if composition(self.left) != composition(self.right):
                yield Step(
                    "milk", -1, left[0].id, say("milk"), "", milk_words(self.left), milk_words(self.right), ("*",)
                )
            return
        of_left, of_right = explicit(left[0]), explicit(right[0])
        for label, names in _MILK:
            if any(getattr(of_left, name) != getattr(of_right, name) for name in names):
                meta = field_meta(MilkSource, names[0])
                said = said_of(of_left, meta, self.system), said_of(of_right, meta, self.system)
                yield Step("milk", -1, left[0].id, say("milk"), word(label, "field"), *said, names)

    def _of_doses(self, pairs: Pairs, kind: str) -> Iterator[Step]:
        for index, (left, right) in enumerate(pairs):
            row = self._row(0, left, self.left) if left is not None else self._row(1, right, self.right)
            if right is None:
                yield Step("dose gone", row, left.id, called(left), "", self._dose(left, 0), "", (kind,), index)
            elif left is None:
                yield Step("dose more", row, right.id, called(right), "", "", self._dose(right, 1), (kind,), index)
            else:
                if not same_dose(left, right, self.left, self.right):
                    said = self._dose(left, 0), self._dose(right, 1)
                    yield Step("dose", row, left.id, called(left), say("dose"), *said, (kind,), index)
                if self._moment(left, 0) != self._moment(right, 1):
                    said = self._moment_words(left, 0), self._moment_words(right, 1)
                    yield Step("moment", row, left.id, called(left), say("goes in"), *said, (kind,), index)

    def _of_row(self, row: int, pair: Pair) -> Iterator[Step]:
        left, right = pair.left, pair.right
        if right is None:
            assert left is not None
            yield Step("stage gone", row, left.id, left.title, "", left.end_line(self.system), "")
        elif left is None:
            does = ", ".join((*right.plan_lines(self.system), right.end_line(self.system)))
            yield Step("stage more", row, right.id, right.title, "", "", does)
        elif type(left) is not type(right):
            kinds = [f"{word(one.LABEL, 'stage')}, {one.end_line(self.system)}" for one in (left, right)]
            yield Step("other stage", row, left.id, word(pair.role, "stage"), "", kinds[0], kinds[1])
        else:
            for names in _groups(left):
                if any(getattr(left, name) != getattr(right, name) for name in names):
                    metas = [field_meta(type(left), name) for name in names]
                    said = self._said(left, names, right), self._said(right, names, left)
                    label = say("loads") if names[0] == "steps" else label_of(metas[0])
                    yield Step("setting", row, left.id, left.title, label, *said, names)

    def _said(self, stage: Stage, names: tuple[str, ...], other: Stage) -> str:
        if names[0] == "steps":
            return f"{said_of(stage, field_meta(type(stage), 'steps'), self.system)}; {stage.end_line(self.system)}"
        if names == ("temperature_c",) and getattr(stage, names[0]) is None:
            return say("as it comes")
        first = next((name for name in names if getattr(stage, name) is not None), names[0])
        differ = [name for name in names if name != first and getattr(stage, name) not in (None, getattr(other, name))]
        return " ".join(said_of(stage, field_meta(type(stage), name), self.system) for name in (first, *differ))

    # --- doses -----------------------------------------------------------------------------------------------

    def _row(self, side: int, given: Dose, recipe: Recipe) -> int:
        """The row at which something goes in."""
        at = given.at or next((stage.id for stage in recipe.stages if stage.kind == "ripen"), recipe.stages[0].id)
        return self._row_of[side][at]

    def _moment(self, given: Dose, side: int) -> tuple[int, float]:
        return self._row(side, given, (self.left, self.right)[side]), given.after_min

    def _moment_words(self, given: Dose, side: int) -> str:
        row, after = self._moment(given, side)
        stage = (self.rows[row].left, self.rows[row].right)[side]
        assert stage is not None
        return say("at {title}", title=stage.title) + (
            say(" after {after}", after=show(after, "duration")) if after else ""
        )

    def _dose(self, given: Dose, side: int) -> str:
        recipe = (self.left, self.right)[side]
        milk = blend(recipe)
        factor = 100.0 / milk.mass_kg if self.rescaled else 1.0
        text = amount_words(given, factor, self.system)
        if isinstance(given, Addition) and given.what == "coagulant":
            text += say(" ({rennet_imcu_per_l:.1f} IMCU/L)", rennet_imcu_per_l=rennet_imcu_per_l(given, milk))
        return text + (of_100kg() if self.rescaled and is_amount(given) else "")

    def works(self, place: int) -> bool:
        """Whether a step can change anything that is forecast: what lies beyond the first room can't."""
        rooms = [at for at, pair in enumerate(self.rows) if "room" in _kinds(pair)]
        beyond = rooms and self.steps[place].row > rooms[0]
        return not (beyond and all(_kinds(self.rows[at]) <= {"room"} for at in rooms))

    # --- recipes between -------------------------------------------------------------------------------------

    def _new_ids(self) -> dict[int, str]:
        """Ids for stages that only the right has, by row."""
        taken, out = set(self.left.ids()), {}
        for row, pair in enumerate(self.rows):
            if pair.left is None and pair.right is not None:
                out[row] = free_id(pair.right.id, taken)
        return out

    def recipe(self, chosen: frozenset[int], *, branches: bool = False) -> Recipe:
        """The left recipe with the chosen steps (places in `steps`) taken from the right.

        Without `branches` it is the main make alone. Raises RecipeError where the mixture can't be a recipe.
        """
        steps = [self.steps[index] for index in sorted(chosen)]
        stages, ids = self._stages(steps)
        taken = {*self.left.ids(), *self._ids.values()}
        changed: dict[str, Any] = {
            "stages": tuple(stages),
            "starters": tuple(self._doses(self._starters, "starter", steps, stages, ids, taken)),
            "additions": tuple(self._doses(self._additions, "addition", steps, stages, ids, taken)),
            "branches": tuple(
                branch.but(after=_hung(self._row_of[0][branch.after], ids)) for branch in self.left.branches
            ) if branches else (),
        }  # fmt: skip
        for step in steps:
            match step.what:
                case "room":
                    changed["room_c"] = self.right.room_c
                case "vat":
                    changed["vat"] = self.right.vat
                case "form":
                    changed["form"] = self._form()
        changed["milks"] = self._milks(steps)
        return self.left.but(**changed)

    def _form(self) -> Form | None:
        right, left = self.right.form, self.left.form
        return right if right is None or left is None else right.but(count=left.count)

    def _milks(self, steps: Sequence[Step]) -> tuple[MilkSource, ...]:
        taken = [step for step in steps if step.what == "milk"]
        if not taken:
            return self.left.milks
        if taken[0].fields == ("*",):
            return self.right.milks
        data, other = dict(explicit(self.left.milks[0])), explicit(self.right.milks[0])
        for step in taken:
            data |= {name: getattr(other, name) for name in step.fields}
        return (MilkSource.model_validate(data),)

    def _stages(self, steps: Sequence[Step]) -> tuple[list[Stage], list[str]]:
        """Stages of the mixture, and for each row the id of its stage ("" where it has none)."""
        stages: list[Stage] = []
        ids = []
        by_row: dict[int, list[Step]] = {}
        for step in steps:
            by_row.setdefault(step.row, []).append(step)
        for row, pair in enumerate(self.rows):
            here = [step for step in by_row.get(row, []) if step.what in ("setting", "other stage")]
            stage = pair.left
            if pair.left is not None and pair.right is not None:
                stage = _mixed(pair.left, pair.right, here)
            elif any(step.what == "stage gone" for step in by_row.get(row, [])):
                stage = None
            elif pair.left is None and any(step.what == "stage more" for step in by_row.get(row, [])):
                assert pair.right is not None
                stage = pair.right.but(id=self._ids[row])
            ids.append(stage.id if stage is not None else "")
            if stage is not None:
                stages.append(stage)
        return stages, ids

    def _doses(
        self, pairs: Pairs, kind: str, steps: Sequence[Step], stages: Sequence[Stage],
        ids: Sequence[str], taken: set[str],
    ) -> Iterator[Any]:  # fmt: skip
        by_id = {stage.id: stage for stage in stages}
        own = {(step.index, step.what) for step in steps if step.fields == (kind,)}
        for index, (left, right) in enumerate(pairs):
            if left is None and (index, "dose more") not in own:
                continue
            if right is None and (index, "dose gone") in own:
                continue
            source, side = (left, 0) if left is not None else (right, 1)
            row, after = self._moment(source, side)
            if (index, "dose") in own:
                source = right.but(id=left.id)
            if (index, "moment") in own:
                row, after = self._moment(right, 1)
            if left is None:
                source = right.but(id=free_id(right.id, taken))
            at = _hung(row, ids)
            after = after if ids[row] == at else 0.0
            yield source.but(at=at, after_min=min(after, max(0.0, by_id[at].end.planned_min - LESS_THAN_END_MIN)))


def _level(left: Recipe, right: Recipe) -> Recipe:
    """The right with the left's figures for doses that do the same, so that no last digit tells them apart."""
    found: dict[str, list[Any]] = {"starters": list(right.starters), "additions": list(right.additions)}
    for field, own in found.items():
        for one, other in paired(getattr(left, field), getattr(right, field)):
            if one is not None and other is not None and same_dose(one, other, left, right):
                own[own.index(other)] = one.but(
                    id=other.id, name=other.name, at=other.at, after_min=other.after_min, lot=other.lot
                )
    return right.but(starters=tuple(found["starters"]), additions=tuple(found["additions"]))


def _kinds(pair: Pair) -> set[str]:
    return {one.kind for one in (pair.left, pair.right) if one is not None}


def _groups(stage: Stage) -> Iterator[tuple[str, ...]]:
    """Fields of a stage that are changed together, each once."""
    together = _TOGETHER.get(stage.kind, ())
    yield from together
    grouped = {name for names in together for name in names}
    for meta in field_metas(type(stage)):
        if meta.name not in grouped and meta.name not in _NO_MATTER:
            yield (meta.name,)


def _mixed(left: Stage, right: Stage, steps: Sequence[Step]) -> Stage:
    """The left's stage with the chosen settings of the right; all of the right where they can't stand together."""
    if not steps:
        return left
    if any(step.what == "other stage" for step in steps):
        return right.but(id=left.id)
    data: dict[str, Any] = dict(left)
    for step in steps:
        data |= {name: getattr(right, name) for name in step.fields}
    end = data["end"]
    if data.get("temperature_c", 0.0) is None:
        data["ramp_min"] = None
    elif "ramp_min" in data:
        if data["ramp_min"] is None and end.is_state and end.by != "temperature":
            data["ramp_min"] = min(end.planned_min, min(left.end.planned_min, right.end.planned_min))
        if data["ramp_min"] is not None:
            data["ramp_min"] = min(data["ramp_min"], end.planned_min)
    if left.kind == "wash":
        spare = end.planned_min / max(end.planned_min, data["off_min"] + data["on_min"])
        data |= {"off_min": data["off_min"] * spare, "on_min": data["on_min"] * spare}
    try:
        return type(left).model_validate(data)
    except ValueError:
        return right.but(id=left.id)


def _hung(row: int, ids: Sequence[str]) -> str:
    """The stage of a row, else of the nearest before it, else of the first after."""
    before = next((one for one in reversed(ids[: row + 1]) if one), "")
    return before or next(one for one in ids[row:] if one)
