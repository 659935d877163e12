"""Explanations at three depths: a sentence for a child of the trade, the maker's paragraph, the law with its source.

The first two stand in depths.toml; the third is put together from the laws themselves and the table of constants, so
that it never says anything else than what is computed.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from importlib.resources import files
from inspect import getdoc
from typing import Literal

from designer.judge.movable import Movable
from designer.language import say, word
from designer.make.constants import Constant, table
from designer.quantities import QUANTITIES
from designer.recipe.document import Recipe

About = Literal["outcome", "setting", "law"]
CONTEXT = "teach"


@dataclass(frozen=True, slots=True)
class Topic:
    """Something to explain. `fields`, `kinds` and `of` say which settings it speaks of; `laws` are "module.function" of
    designer.make, `rows` names of constants."""

    key: str
    about: About
    english: str
    child_english: str
    maker_english: str
    laws: tuple[str, ...] = ()
    rows: tuple[str, ...] = ()
    fields: tuple[str, ...] = ()
    kinds: tuple[str, ...] = ()
    of: str = ""

    @property
    def title(self) -> str:
        """What it is called, in the language spoken."""
        return QUANTITIES[self.key].label if self.about == "outcome" else word(self.english, CONTEXT)

    @property
    def child(self) -> str:
        """One sentence for someone new to the trade."""
        return word(self.child_english, CONTEXT)

    @property
    def maker(self) -> str:
        """The maker's paragraph."""
        return word(self.maker_english, CONTEXT)

    def statements(self) -> tuple[str, ...]:
        """What its laws say, in their own words."""
        return tuple(_statement(name) for name in self.laws)

    def constants(self) -> tuple[Constant, ...]:
        """The rows behind it, with source and range."""
        return tuple(table()[name] for name in self.rows)


@cache
def topics() -> tuple[Topic, ...]:
    """All topics in the order of the file. Raises ValueError for a law or a row that is not there."""
    raw = tomllib.loads(files("designer.judge").joinpath("depths.toml").read_text(encoding="utf-8"))
    found = tuple(
        Topic(
            key, one["about"], one.get("title", ""), one["child"], one["maker"], tuple(one.get("laws", ())),
            tuple(one.get("rows", ())), tuple(one.get("fields", ())), tuple(one.get("kinds", ())), one.get("of", ""),
        )
        for key, one in raw.items()
    )  # fmt: skip
    for one in found:
        missing = [name for name in one.rows if name not in table()]
        if missing:
            raise ValueError(f"topic {one.key!r}: no constant {', '.join(missing)}")
    return found


def topic(key: str) -> Topic:
    """One topic; KeyError if unknown."""
    return {one.key: one for one in topics()}[key]


def topic_of(recipe: Recipe, setting: Movable) -> Topic | None:
    """The topic that speaks of a setting, None where none does."""
    kind = recipe.stage(setting.where).kind if setting.of == "stage" else ""
    fields = {setting.field, setting.field.partition(".")[0]}
    for one in topics():
        if one.about == "setting" and fields & set(one.fields) and one.of in ("", setting.of):
            if one.kinds and kind not in one.kinds:
                continue
            if one.key == "rennet_dose" and not _is_coagulant(recipe, setting.where):
                continue
            return one
    return None


def _is_coagulant(recipe: Recipe, where: str) -> bool:
    return any(one.id == where and one.what == "coagulant" for one in recipe.additions)


def _statement(name: str) -> str:
    module, _, function = name.rpartition(".")
    law = getattr(import_module(f"designer.make.{module}"), function)
    said = " ".join((getdoc(law) or "").split())
    return f"{function.replace('_', ' ')}: {said}"


def row_words(row: Constant) -> str:
    """A constant as a sentence: what it is called, its value and range, where it is from, how we have it."""
    text = f"{row.label} = {row.shown_with_range}"
    return say("{what}. {source} [{have}]", what=text, source=row.source.rstrip("."), have=word(row.have, "have"))
