"""Two makes beside each other: what differs, and what each difference is worth.

Stages are aligned by what they do (`align`), the recipes in between are whole recipes (`between`), and the parts of the
differences add up to the whole (`attribution`). Where milks differ in amount, doses read per 100 kg of milk.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from itertools import accumulate

from designer.forecast import Forecast, forecast
from designer.judge import attribution
from designer.judge.align import Pair
from designer.judge.between import Between, Step
from designer.judge.movable import moved
from designer.judge.windows import ranged
from designer.language import mark, number, say, word
from designer.make import texture
from designer.quantities import QUANTITIES
from designer.recipe.document import Recipe
from designer.recipe.edit import edit_recipe
from designer.recipe.error import RecipeError
from designer.units import System, show
from styles.reader import Style

Figures = Mapping[str, float]
Measure = Callable[[Recipe], Figures]

KEYS = (
    "moisture_pct",
    "ph_24h",
    "fdm_pct",
    "salt_in_moisture_pct",
    "calcium_mg_per_g_protein",
    "yield_kg_per_100kg",
    "finish_min",
)
"""Outcomes a difference is weighed by."""
_WORDS: Mapping[str, tuple[str, str]] = {
    "moisture_pct": (mark("moister"), mark("drier")),
    "mnfs_pct": (mark("moister"), mark("drier")),
    "ph_24h": (mark("less acid"), mark("more acid")),
    "fdm_pct": (mark("more fat in dry matter"), mark("less fat in dry matter")),
    "salt_in_moisture_pct": (mark("saltier"), mark("less salty")),
    "calcium_mg_per_g_protein": (mark("more calcium"), mark("less calcium")),
    "yield_kg_per_100kg": (mark("more cheese"), mark("less cheese")),
    "finish_min": (mark("later"), mark("sooner")),
}


@dataclass(frozen=True, slots=True)
class Difference:
    """One difference with its part in each outcome. `places` are its steps in the `Between`: one, unless several can't
    be told apart because no recipe has one without the other."""

    steps: tuple[Step, ...]
    places: tuple[int, ...]
    worth: Figures

    @property
    def row(self) -> int:
        """Row of the alignment, or -1."""
        return self.steps[0].row

    @property
    def sentence(self) -> str:
        """What differs, in words."""
        return "; ".join(step.sentence for step in self.steps)

    def words(self, key: str) -> str:
        """ "0.9 points drier"; "" where it is worth nothing there."""
        part = self.worth.get(key, 0.0)
        if abs(part) < 0.5 * 10.0 ** -_decimals(key):
            return ""
        more, less = _WORDS[key]
        return f"{amount(key, abs(part))} {word(more if part > 0.0 else less)}"

    @property
    def consequences(self) -> str:
        """All it is worth, the largest first: "0.9 points drier, 0.3 kg per 100 kg milk less cheese"."""
        ranked = sorted(self.worth, key=lambda key: -abs(self.worth[key]) / _step(key))
        said = [words for key in ranked if key in _WORDS and (words := self.words(key))]
        return ", ".join(said) or say("makes no difference here")

    @property
    def size(self) -> float:
        """How much it does in all, in natural steps of the outcomes."""
        return max((abs(part) / _step(key) for key, part in self.worth.items()), default=0.0)


@dataclass(frozen=True, slots=True)
class Line:
    """One row for the eye: the stages of both makes, and its differences; folded where there are none."""

    pair: Pair
    differences: tuple[Difference, ...]

    @property
    def folded(self) -> bool:
        """Whether both do the same here."""
        return not self.differences


@dataclass(frozen=True, slots=True)
class Comparison:
    """Two makes compared. For every outcome: right - left = sum of the parts + `rest`, to rounding.

    `rest` is what no difference of the recipes can say (a branch that takes cream from one). `left_values` and
    `right_values` are by outcome; `apart` are differences that belong to no stage (milk, form, room).
    """

    left: Recipe
    right: Recipe
    between: Between
    lines: tuple[Line, ...]
    differences: tuple[Difference, ...]
    left_values: Figures
    right_values: Figures
    rest: Figures
    together: bool

    @property
    def per_100kg(self) -> bool:
        """Whether the amounts of milk differ, so that doses read per 100 kg of milk."""
        return self.between.rescaled

    @property
    def apart(self) -> tuple[Difference, ...]:
        """Differences of milk, form, room and vat."""
        return tuple(one for one in self.differences if one.row < 0)

    def ranked(self, key: str | None = None) -> tuple[Difference, ...]:
        """Differences, the greatest first: in one outcome, or in whatever each changes most."""
        if key is None:
            return tuple(sorted(self.differences, key=lambda one: -one.size))
        return tuple(sorted(self.differences, key=lambda one: -abs(one.worth.get(key, 0.0))))

    def bodies(self, style: Style | None = None) -> tuple[str, str]:
        """The texture of both cheeses in words; held against a style's middle where one is given."""
        said = []
        for values in (self.left_values, self.right_values):
            body = texture.texture(texture.figures_of(values, mnfs_style=texture.mnfs_of(style), age_days=1.0))
            said.append(", ".join(word.said for word in body.words))
        return said[0], said[1]

    def take(self, difference: Difference) -> Recipe:
        """The left recipe, branches and all, with this difference taken across from the right.

        Raises RecipeError where the left can't take it alone.
        """
        return self.between.recipe(frozenset(difference.places), branches=True)


def outcomes_of(recipe: Recipe) -> Figures:
    """Outcomes of a recipe by a plain forecast."""
    return {key: one.value for key, one in forecast(recipe).outcomes.items()}


def compare(
    left: Recipe,
    right: Recipe,
    *,
    measure: Measure = outcomes_of,
    system: System = "metric",
    made: tuple[Forecast, Forecast] | None = None,
) -> Comparison:
    """Left against right: rows by what the stages do, differences, and their parts in the outcomes of `KEYS`.

    `made` are both forecasts where they are at hand. About ten forecasts a difference. Raises RecipeError for a recipe
    that can't be forecast.
    """
    between = Between(left, right, system)
    values = [_values(made[side] if made else None, recipe, measure) for side, recipe in enumerate((left, right))]
    if between.right != right and not right.branches:
        values[1] = measure(between.right)  # the same make, but for the last digits of its rescaled doses
    if not between.steps:
        differences: tuple[Difference, ...] = ()
        whole: Figures = {}
        together = False
    else:
        differences, together = _weighed(between, measure)
        whole = {key: sum(one.worth.get(key, 0.0) for one in differences) for key in KEYS}
    keys = [key for key in KEYS if key in values[0] and key in values[1]]
    rest = {key: values[1][key] - values[0][key] - whole.get(key, 0.0) for key in keys}
    lines = tuple(
        Line(pair, tuple(one for one in differences if one.row == row)) for row, pair in enumerate(between.rows)
    )
    return Comparison(left, right, between, lines, differences, values[0], values[1], rest, together)


def usual_make(recipe: Recipe, style: Style) -> Recipe:
    """The recipe with every figure that its style has a usual range for at the middle of that range."""
    out = recipe
    for one in ranged(recipe, style):
        if not one.is_middle:
            try:
                out = moved(out, one.setting, one.middle)
            except RecipeError:
                continue  # a figure that can't stand there beside the others stays as it is
    return edit_recipe(out, name=say("{name}, the middle of its windows", name=style.title))


def _values(made: Forecast | None, recipe: Recipe, measure: Measure) -> Figures:
    return measure(recipe) if made is None else {key: one.value for key, one in made.outcomes.items()}


def _weighed(between: Between, measure: Measure) -> tuple[tuple[Difference, ...], bool]:
    """Differences with their parts. Where a mixture can't be made, the steps that only make sense together go together:
    first all that add or take away a stage or a dose, then all."""
    count = len(between.steps)
    alone: list[tuple[int, ...]] = [(index,) for index in range(count)]
    shape = tuple(index for index in range(count) if between.steps[index].what in _SHAPE)
    tries = [alone]
    if len(shape) > 1:
        tries.append([shape, *((index,) for index in range(count) if index not in shape)])
    tries.append([tuple(range(count))])
    for groups in tries:
        try:
            return _parts(between, groups, measure), groups is not alone
        except RecipeError:
            if groups is tries[-1]:
                raise
    raise AssertionError


_SHAPE = frozenset(("stage gone", "stage more", "other stage", "dose gone", "dose more", "moment"))


def _parts(between: Between, groups: list[tuple[int, ...]], measure: Measure) -> tuple[Difference, ...]:
    def add(places: tuple[int, ...]) -> attribution.Change[frozenset[int]]:
        return lambda chosen: chosen | frozenset(places)

    def figures(chosen: frozenset[int]) -> Figures:
        found = measure(between.recipe(chosen))
        return {key: found[key] for key in KEYS if key in found}

    working = [places for places in groups if any(between.works(place) for place in places)]
    shares: Sequence[Figures] = ()
    if working:
        shares = attribution.parts(frozenset[int](), [add(places) for places in working], figures)
    worth = dict(zip(working, shares, strict=True))
    return tuple(
        Difference(tuple(between.steps[place] for place in places), places, worth.get(places, {})) for places in groups
    )


def _decimals(key: str) -> int:
    quantity = QUANTITIES[key]
    return 0 if quantity.kind == "duration" else max(1, quantity.decimals)


def _step(key: str) -> float:
    """What counts as much in an outcome as a natural step of another: an hour more or less, for a finish."""
    return 60.0 if key == "finish_min" else QUANTITIES[key].step


def amount(key: str, value: float) -> str:
    """An amount of an outcome without sign: "0.9 points", "12 min", "0.05 pH"."""
    quantity = QUANTITIES[key]
    if quantity.kind == "duration":
        return show(round(value), "duration")
    unit = say("points") if quantity.unit.startswith("%") else quantity.unit or "pH"
    return f"{number(value, f'.{_decimals(key)}f')} {unit}"


def running(comparison: Comparison, key: str) -> tuple[float, ...]:
    """The outcome from left to right as one difference after the other is added, largest first; ends at the right
    less the rest."""
    ranked = comparison.ranked(key)
    return tuple(accumulate((one.worth.get(key, 0.0) for one in ranked), initial=comparison.left_values[key]))
