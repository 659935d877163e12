"""Two makes beside each other: what differs, and what each difference is worth.

Stages are aligned by what they do (`align`), the recipes in between are whole recipes (`between`), and the parts of the
differences add up to the whole (`attribution`). Where milks differ in amount, doses read per 100 kg of milk.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from designer.forecast import Forecast, forecast
from designer.judge import attribution
from designer.judge.align import Pair
from designer.judge.between import Between, Step
from designer.judge.movable import moved
from designer.judge.windows import ranged
from designer.language import joined, mark, number, points, say, word
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
    "calcium_mg_per_g_protein": (mark("more calcium per g protein"), mark("less calcium per g protein")),
    "yield_kg_per_100kg": (mark("more cheese per 100 kg milk"), mark("less cheese per 100 kg milk")),
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
    def rows(self) -> frozenset[int]:
        """Every row of the alignment that it touches; -1 among them for what belongs to no stage."""
        return frozenset(step.row for step in self.steps)

    @property
    def sentence(self) -> str:
        """What differs, in words."""
        return joined(step.sentence for step in self.steps)

    def words(self, key: str) -> str:
        """ "0.9 points drier"; "" where it is worth nothing there."""
        part = self.worth.get(key, 0.0)
        if abs(part) < 0.5 * 10.0 ** -decimals(key):
            return ""
        more, less = _WORDS[key]
        return f"{amount(key, abs(part), bare=True)} {word(more if part > 0.0 else less)}"

    @property
    def consequences(self) -> str:
        """All it is worth, the largest first: "0.9 points drier, 0.3 kg less cheese per 100 kg milk"."""
        ranked = sorted(self.worth, key=lambda key: -abs(self.worth[key]) / _step(key))
        said = [words for key in ranked if key in _WORDS and (words := self.words(key))]
        return ", ".join(said) or say("makes no difference here")

    @property
    def size(self) -> float:
        """How much it does in all, in natural steps of the outcomes."""
        return max((abs(part) / _step(key) for key, part in self.worth.items()), default=0.0)


@dataclass(frozen=True, slots=True)
class Line:
    """One row for the eye: the stages of both makes, and every difference that touches it; folded where there are none.

    A difference whose steps go only together stands in each row that it touches.
    """

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
        Line(pair, tuple(one for one in differences if row in one.rows)) for row, pair in enumerate(between.rows)
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


Group = tuple[int, ...]
"""Places of steps that are weighed as one."""


def _weighed(between: Between, measure: Measure) -> tuple[tuple[Difference, ...], bool]:
    """Differences with their parts. Steps that no recipe can have one without the other are weighed as one."""
    seen: dict[frozenset[int], Figures | RecipeError] = {}

    def figures(chosen: frozenset[int]) -> Figures:
        if chosen not in seen:
            try:
                found = measure(between.recipe(chosen))
                seen[chosen] = {key: found[key] for key in KEYS if key in found}
            except RecipeError as error:
                seen[chosen] = error
        known = seen[chosen]
        if isinstance(known, RecipeError):
            raise known
        return known

    count = len(between.steps)
    working = [place for place in range(count) if between.works(place)]
    orders = [[working[at] for at in order] for order in attribution.orders(len(working))]
    groups: list[Group] = [(place,) for place in working]
    while (pair := _inseparable(groups, orders, figures)) is not None:
        groups = [one for one in groups if one not in pair] + [tuple(sorted(pair[0] + pair[1]))]
    groups.sort()
    shares: Sequence[Figures] = ()
    if groups:
        every = [[groups.index(group) for group in _walk(groups, order)] for order in orders]
        shares = attribution.parts(frozenset[int](), [_adding(group) for group in groups], figures, every)
    worth: dict[Group, Figures] = dict(zip(groups, shares, strict=True))
    worth |= {(place,): {} for place in range(count) if place not in working}
    found = (Difference(tuple(between.steps[place] for place in group), group, worth[group]) for group in sorted(worth))
    return tuple(found), len(groups) < len(working)


def _adding(group: Group) -> attribution.Change[frozenset[int]]:
    return lambda chosen: chosen | frozenset(group)


def _walk(groups: Sequence[Group], order: Sequence[int]) -> list[Group]:
    """The groups in the order in which their first steps come."""
    of_step = {place: group for group in groups for place in group}
    return list(dict.fromkeys(of_step[place] for place in order))


def _inseparable(
    groups: Sequence[Group], orders: Sequence[Sequence[int]], figures: Callable[[frozenset[int]], Figures]
) -> tuple[Group, Group] | None:
    """Two groups of which no recipe can have the first without the second; None where all go one by one.

    RecipeError where even the whole can't be.
    """
    for order in orders:
        chosen: frozenset[int] = frozenset()
        broken: Group | None = None
        for group in _walk(groups, order):
            chosen |= frozenset(group)
            try:
                figures(chosen)
            except RecipeError:
                if len(chosen) == len(order):
                    raise
                broken = broken or group
            else:
                if broken is not None:
                    return broken, group
    return None


def decimals(key: str) -> int:
    """Figures after the point of a part."""
    quantity = QUANTITIES[key]
    return 0 if quantity.kind == "duration" else max(1, quantity.decimals)


def _step(key: str) -> float:
    """What counts as much in an outcome as a natural step of another: an hour more or less, for a finish."""
    return 60.0 if key == "finish_min" else QUANTITIES[key].step


_BARE = {"yield_kg_per_100kg": "kg", "calcium_mg_per_g_protein": "mg"}
"""Units without what they are per, where that is said elsewhere."""


def amount(key: str, value: float, *, bare: bool = False) -> str:
    """An amount of an outcome without sign: "0.9 points", "12 min", "0.05 pH"; `bare` leaves out what it is per."""
    quantity = QUANTITIES[key]
    if quantity.kind == "duration":
        return show(round(value), "duration")
    unit = points(round(value, decimals(key))) if quantity.unit.startswith("%") else quantity.unit or "pH"
    if bare and key in _BARE:
        unit = word(_BARE[key], "unit")
    return f"{number(value, f'.{decimals(key)}f')} {unit}"


def part_words(key: str, value: float) -> str:
    """A part with its sign, as narrow as it can be said: "−0.9", "+1:20" of a finish; "" where it rounds to nothing."""
    if key == "finish_min":
        whole = round(abs(value))
        text = f"{whole // 60}:{whole % 60:02d}" if whole else ""
    else:
        text = number(abs(value), f".{decimals(key)}f") if round(abs(value), decimals(key)) else ""
    return text and ("+" if value > 0.0 else "−") + text
