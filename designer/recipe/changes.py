"""What is different between two states of a recipe, in words: "cook: temperature 38 °C → 39 °C; wash curd added".

Parts are told apart by their id, so a renamed stage is the same stage and a moved one is said to have moved.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any, Literal

from designer.language import headed, say, word
from designer.recipe.document import Branch, Recipe
from designer.recipe.field import FieldMeta, Model, choice, field_metas
from designer.recipe.stages.press import Press
from designer.recipe.stages.stage import Stage
from designer.units import System, show

How = Literal["changed", "added", "taken out", "moved"]


@dataclass(frozen=True, slots=True)
class Change:
    """One difference. `part` is the id of its part ("" for the recipe itself), `field` the name of its field ("" where
    the whole part came or went); `before` and `after` are texts."""

    part: str
    of: str
    how: How
    field: str = ""
    label: str = ""
    before: str = ""
    after: str = ""

    @property
    def sentence(self) -> str:
        """ "cook: temperature 38 °C → 39 °C"."""
        if self.how == "changed":
            return (
                headed(self.of, f"{self.label} {self.before} → {self.after}")
                if self.of
                else headed(self.label, self.after)
            )
        match self.how:
            case "added":
                return say("{of} added {after}", of=self.of, after=self.after).rstrip()
            case "taken out":
                return say("{of} taken out", of=self.of)
            case _:
                return say("{of} moved {after}", of=self.of, after=self.after)


def changes(old: Recipe, new: Recipe, system: System = "metric") -> tuple[Change, ...]:
    """Everything that differs, in the order of the new document; what is gone stands at the end of its kind."""
    return tuple(_all(old, new, system))


def in_words(found: Sequence[Change], most: int = 12) -> str:
    """Changes as one line; past `most` the rest is counted."""
    if not found:
        return say("nothing changed")
    said = "; ".join(change.sentence for change in found[:most])
    return said if len(found) <= most else say("{said}; and {found} more", said=said, found=len(found) - most)


def _all(old: Recipe, new: Recipe, system: System) -> Iterator[Change]:
    yield from _fields("", say("recipe"), old, new, system)
    yield from _parts(old.milks, new.milks, system)
    yield from _lane(old, new, system)
    before = {branch.id: branch for branch in old.branches}
    for branch in new.branches:
        if branch.id not in before:
            yield Change(branch.id, say("branch “{name}”", name=branch.name or branch.id), "added")
            continue
        yield from _fields(
            branch.id, say("branch “{name}”", name=branch.name or branch.id), before[branch.id], branch, system
        )
        yield from _lane(before[branch.id], branch, system)
    kept = {branch.id for branch in new.branches}
    for branch in old.branches:
        if branch.id not in kept:
            yield Change(branch.id, say("branch “{name}”", name=branch.name or branch.id), "taken out")


def _lane(old: Recipe | Branch, new: Recipe | Branch, system: System) -> Iterator[Change]:
    yield from _parts(old.starters, new.starters, system)
    yield from _parts(old.additions, new.additions, system)
    for name in ("form", "coat", "vat"):
        yield from _single(name, getattr(old, name, None), getattr(new, name, None), system)
    yield from _parts(old.stages, new.stages, system)
    yield from _moved(old.stages, new.stages)


def _single(name: str, old: Model | None, new: Model | None, system: System) -> Iterator[Change]:
    if old is None and new is not None:
        yield Change(name, word(name, "field"), "added")
    elif old is not None and new is None:
        yield Change(name, word(name, "field"), "taken out")
    elif old is not None and new is not None:
        yield from _fields(name, word(name, "field"), old, new, system)


def _parts(old: Sequence[Any], new: Sequence[Any], system: System) -> Iterator[Change]:
    before = {part.id: part for part in old}
    for index, part in enumerate(new):
        was = before.get(part.id)
        if was is None or type(was) is not type(part):
            after = say("after {called}", called=called(new[index - 1])) if isinstance(part, Stage) and index else ""
            yield Change(part.id, called(part), "added", after=after)
        else:
            yield from _fields(part.id, called(part), was, part, system)
    kept = {part.id: part for part in new}
    for part in old:
        if part.id not in kept or type(kept[part.id]) is not type(part):
            yield Change(part.id, called(part), "taken out")


def _moved(old: Sequence[Stage], new: Sequence[Stage]) -> Iterator[Change]:
    """Stages whose order among those in both has changed: the fewest that, moved, give the new order."""
    common = [stage.id for stage in old if any(stage.id == other.id for other in new)]
    order = [common.index(stage.id) for stage in new if stage.id in common]
    still = _longest_rising(order)
    shared = [stage for stage in new if stage.id in common]
    for place, stage in zip(order, shared, strict=True):
        if place not in still:
            index = new.index(stage)
            after = say("to after {called}", called=called(new[index - 1])) if index else say("to the front")
            yield Change(stage.id, called(stage), "moved", after=after)


def _longest_rising(order: Sequence[int]) -> set[int]:
    """The longest rising run among numbers, in order."""
    ending: list[list[int]] = []
    for value in order:
        before: list[int] = []
        for run in ending:
            if run[-1] < value and len(run) > len(before):
                before = run
        ending.append([*before, value])
    longest: list[int] = []
    for run in ending:
        longest = run if len(run) > len(longest) else longest
    return set(longest)


def called(part: Any) -> str:
    """What the maker calls a part."""
    if isinstance(part, Stage):
        return part.title
    name = getattr(part, "name", "")
    return str(name) if name else choice(str(getattr(part, "what", "") or getattr(part, "kind", "") or part.id))


def _fields(part_id: str, of: str, old: Model, new: Model, system: System) -> Iterator[Change]:
    for meta in field_metas(type(new)):
        if meta.name in ("id", "format") or (meta.shape in ("tables", "table") and meta.name != "steps"):
            continue
        before, after = getattr(old, meta.name), getattr(new, meta.name)
        if before == after:
            continue
        said = said_of(old, meta, system), said_of(new, meta, system)
        yield Change(part_id, of, "changed", meta.name, label_of(meta), *said)


def label_of(meta: FieldMeta) -> str:
    """The label of a field as the maker reads it; without a label of its own the word of the file."""
    return say("ends") if meta.shape == "end" else meta.label


def said_of(part: Model, meta: FieldMeta, system: System = "metric") -> str:
    """A field's value as text."""
    value = getattr(part, meta.name)
    if meta.shape == "end":
        assert isinstance(part, Stage)
        return part.end_line(system)
    if isinstance(part, Press) and meta.name == "steps":
        return part.shown("steps", system)
    if value is None:
        return say("none")
    if meta.kind:
        return show(value, meta.kind, system=system)
    if isinstance(value, bool):
        return say("yes") if value else say("no")
    return f"“{value}”" if meta.shape == "text" else choice(str(value))
