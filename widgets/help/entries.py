"""What can be looked up: words of the glossary, the figures the forecast is held against, the model's constants.

All have one shape, so that the source of any number is found in the same way.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from typing import Any, Final

from PySide6.QtCore import QCoreApplication

from designer.judge.depths import Topic, topics
from designer.judge.row_units import told
from designer.judge.verdict import Row, Verdict
from designer.language import joined, number, word
from designer.make.constants import Constant, table
from designer.recipe.document import Addition, Coat, Form, MilkSource, Starter, Vat
from designer.recipe.field import FieldMeta, field_metas
from designer.recipe.stages.kinds import KINDS
from designer.units import System
from widgets.form.editors import range_words, shown, title
from widgets.form.editors import words as field_words
from widgets.outcomes.figures import figure_text
from widgets.wording import kind_name

WORD, FIGURE, SETTING, LAW, CONSTANT = "word", "figure", "setting", "law", "constant"
PARTS: Final = (MilkSource, Starter, Addition, Form, Coat, Vat)


@dataclass(frozen=True, slots=True)
class Entry:
    """One thing to look up. `says` is its one sentence; `keys` are the quantities, fields and kinds it speaks of."""

    kind: str
    title: str
    second: str
    says: str
    more: tuple[str, ...] = ()
    source: str = ""
    have: str = ""
    keys: frozenset[str] = frozenset()
    place: str = ""

    @property
    def searched(self) -> str:
        """All its text, small."""
        return " ".join((self.title, self.second, self.says, *self.more, self.source)).lower()


def tr(text: str) -> str:
    """A text of the glossary in the maker's language."""
    return QCoreApplication.translate("Glossary", text)


@cache
def terms() -> tuple[dict[str, Any], ...]:
    """The glossary as read."""
    text = files("widgets.help").joinpath("glossary.toml").read_text(encoding="utf-8")
    return tuple(tomllib.loads(text)["term"])


def words() -> Iterator[Entry]:
    """The glossary, in order of the alphabet."""
    for term in sorted(terms(), key=lambda one: tr(one["name"]).lower()):
        yield Entry(
            WORD, tr(term["name"]), ", ".join(tr(one) for one in term.get("also", ())), tr(term["says"]),
            tuple(tr(one) for one in (term["more"],)) if "more" in term else (),
            tr(term.get("source", "")), term.get("have", ""), frozenset(term.get("of", ())), term.get("place", ""),
        )  # fmt: skip


def figures(verdict: Verdict | None, system: System = "metric") -> Iterator[Entry]:
    """Every figure the forecast is held against now."""
    for row in verdict.rows if verdict is not None else ():
        yield figure(row, verdict.name, system)


def figure(row: Row, style: str, system: System = "metric") -> Entry:
    """One of them, of the style of this name."""
    return Entry(
        FIGURE, f"{row.label[:1].upper()}{row.label[1:]}" if not row.label.startswith("pH") else row.label,
        row.rule or style, _stands(*told(row, system)), (row.note,) if row.note else (), row.source, row.have,
        frozenset({row.quantity}), "check",
    )  # fmt: skip


def _stands(row: Row, decimals: int) -> str:
    ask = span(row.low, row.high, row.unit)
    if row.value is None:
        return ask
    text = QCoreApplication.translate("LookUp", "{0}. Forecast {1}: {2}.")
    return text.format(ask, figure_text(row, decimals), row.sentence)


def span(low: float | None, high: float | None, unit: str) -> str:
    """A range in figures, open where an end is not named."""
    if low is None and high is None:
        return QCoreApplication.translate("LookUp", "no range")
    if high is None:
        return f"\u2265 {number(low, 'g')} {unit}".rstrip()
    if low is None:
        return f"\u2264 {number(high, 'g')} {unit}".rstrip()
    return f"{number(low, 'g')}\u2013{number(high, 'g')} {unit}".rstrip()


def settings(system: str) -> Iterator[Entry]:
    """Every setting of every stage kind and of what goes in, with its range, its usual range and its source."""
    owners = [(kind_name(kind), "design", model) for kind, model in KINDS.items()]
    owners += [(field_words(model.__name__), "milk", model) for model in PARTS]
    for owner, place, model in owners:
        for meta in field_metas(model):
            if meta.shape == "quantity":
                yield Entry(
                    SETTING, title(meta), owner, meta.help, tuple(_ranges(meta, system)), meta.source, "",
                    frozenset({meta.name}), place,
                )  # fmt: skip


def _ranges(meta: FieldMeta, system: str) -> Iterator[str]:
    allowed = range_words(meta, system)
    if allowed:
        yield QCoreApplication.translate("LookUp", "Allowed: {0}.").format(allowed)
    if meta.usual is not None and any(end is not None for end in meta.usual):
        ends = [shown(meta, end, system) if end is not None else "\u2026" for end in meta.usual]
        yield QCoreApplication.translate("LookUp", "Practice stays within {0} to {1}.").format(*ends)


def laws() -> Iterator[Entry]:
    """The laws of the model: what each says in words, its statement, and the constants it stands on with their range.

    Topics of teaching that are outcomes or settings are words and settings here already.
    """
    for one in topics():
        if one.about == "law":
            yield Entry(
                LAW, one.title, "", one.child, (one.maker, *map(_capital, one.statements()), *_stands_on(one)),
                joined(dict.fromkeys(row.told_source.rstrip(".") for row in one.constants())), "",
                frozenset({one.key, *one.rows, *(name.rpartition(".")[2] for name in one.laws)}),
            )  # fmt: skip


def _stands_on(one: Topic) -> Iterator[str]:
    for row in one.constants():
        yield f"\u2013 {row.label} = {row.shown}. {_honest(row)}".rstrip()


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def constants() -> Iterator[Entry]:
    """The constants of the model."""
    for row in sorted(table().values(), key=lambda one: one.label.lower()):
        yield Entry(
            CONSTANT, _capital(row.label), row.shown, QCoreApplication.translate(
                "LookUp", "A constant of the make model: {0}."
            ).format(row.shown),
            tuple(text for text in (_honest(row), word(row.note, "note")) if text), row.told_source, row.have,
            frozenset({row.name}),
        )  # fmt: skip


def _honest(row: Constant) -> str:
    if row.low is None and row.high is None:
        return ""
    text = QCoreApplication.translate("LookUp", "It may honestly lie at {0}; the bands draw from that range.")
    return text.format(span(row.low, row.high, row.unit_words))


def word_of(key: str) -> Entry | None:
    """The glossary's word for a quantity, a field or a stage kind; None where it has none."""
    return next((entry for entry in words() if key and key in entry.keys), None)
