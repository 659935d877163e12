"""Explanations at three depths: a sentence for a child of the trade, the maker's paragraph, the law with its source.

The first two stand in depths.toml; the third is put together from what each law says (laws.toml) and the table of
constants, whose values are those computed with.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Literal

from designer.judge.movable import Movable
from designer.language import headed, say, word
from designer.make.constants import Constant, table
from designer.quantities import QUANTITIES
from designer.recipe.document import Recipe

About = Literal["outcome", "setting", "law"]
CONTEXT = "teach"
LAW_CONTEXT = "law"


@dataclass(frozen=True, slots=True)
class Statement:
    """What a law says in a maker's words, in English."""

    name_english: str
    says_english: str

    @property
    def told(self) -> str:
        """Both, in the language spoken."""
        return headed(word(self.name_english, LAW_CONTEXT), word(self.says_english, LAW_CONTEXT))


@cache
def statements() -> dict[str, Statement]:
    """The laws that are explained, by "module.function" of designer.make."""
    raw = tomllib.loads(files("designer.judge").joinpath("laws.toml").read_text(encoding="utf-8"))
    return {law: Statement(one["name"], one["says"]) for law, one in raw.items()}


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
        """What its laws say, each headed by what a maker would call it."""
        return tuple(statements()[name].told for name in self.laws)

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
        untold = [name for name in one.laws if name not in statements()]
        if untold:
            raise ValueError(f"topic {one.key!r}: laws.toml does not say what {', '.join(untold)} says")
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


def row_words(row: Constant) -> str:
    """A constant as a sentence: what it is called, its value and range, where it is from, how we have it."""
    text = f"{row.label} = {row.shown_with_range}"
    return say("{what}. {source} [{have}]", what=text, source=row.told_source.rstrip("."), have=word(row.have, "have"))
