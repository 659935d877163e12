"""A recipe on its way to another amount of milk: what has become of it so far, and a line for every figure of it.

Each line says what a figure was, what it is now, by which rule, and why. `scale` and `scale_stages` write them.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal

from designer.language import say, word
from designer.recipe.document import Branch, Form, Recipe, Vat
from designer.recipe.field import FieldMeta
from designer.recipe.lower import geometry
from designer.units import System, show

Rule = Literal["by milk", "by area", "by thickness squared", "by the vat's power", "unchanged", "to be checked"]
Forms = Literal["many", "large"]


@dataclass(frozen=True, slots=True)
class Line:
    """One line of the preview: what it is of, before and after as text, the rule, and why."""

    part: str
    of: str
    what: str
    before: str
    after: str
    rule: Rule
    why: str

    @property
    def changed(self) -> bool:
        """Whether the text differs."""
        return self.before != self.after


@dataclass(frozen=True, slots=True)
class Scaled:
    """The recipe for another amount of milk, the factor, and a line for every figure of it."""

    recipe: Recipe
    factor: float
    lines: tuple[Line, ...]

    def by(self, rule: Rule) -> tuple[Line, ...]:
        """The lines of one rule."""
        return tuple(line for line in self.lines if line.rule == rule)


class Scaling:
    """The recipe on its way (`recipe`; `first` as it was), with the lines written so far."""

    def __init__(self, recipe: Recipe, factor: float, forms: Forms | Form, vat: Vat | None, system: System) -> None:
        self.first, self.recipe, self.factor, self.forms, self.system = recipe, recipe, factor, forms, system
        self.vat = vat
        self.lines: list[Line] = []

    def line(self, part: str, of: str, what: str, before: str, after: str, rule: Rule, why: str) -> None:
        """Write a line of what is a text already; labels and reasons are told in the language spoken."""
        self.lines.append(Line(part, word(of, "field"), word(what, "field"), before, after, rule, word(why, "rule")))

    def figure(
        self, part: str, of: str, meta: FieldMeta, before: float, now: float | None, rule: Rule, why: str
    ) -> None:
        """Write a line of a figure in base units; `now` None: it stays."""
        said = self.both(meta.kind, before, before if now is None else now)
        self.line(part, of, meta.label, *said, rule, why)

    def both(self, kind: str, before: float | None, now: float | None) -> tuple[str, str]:
        """A figure before and after, as text."""
        first, then = (say("none") if value is None else self._shown(kind, value) for value in (before, now))
        return first, then

    def _shown(self, kind: str, value: float) -> str:
        """A figure as text."""
        return show(value, kind, system=self.system)

    def geometry(self, recipe: Recipe, lane: Recipe | Branch) -> Any:
        """The form of a lane of the old or the new recipe, as the march takes it."""
        form = recipe.form
        if isinstance(lane, Branch):
            form = next(one.form for one in recipe.branches if one.id == lane.id) or form
        return geometry(form)
