"""A line of the outcomes in words: what stands in it, what its tooltip says, what a screen reader is told."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QCoreApplication

from designer.forecast import Forecast
from designer.judge.verdict import CLASS, LIMIT, MAKE, QUALITY, RANK, Row
from designer.judge.words import chance_words
from designer.language import headed, word
from designer.quantities import quantity
from widgets.help.entries import word_of
from widgets.outcomes.figures import band_words, label_of, value_words
from widgets.outcomes.marks import state_words

SHOWN: Final = (
    "moisture_pct",
    "mnfs_pct",
    "fdm_pct",
    "salt_in_moisture_pct",
    "salt_pct",
    "ph_24h",
    "yield_kg_per_100kg",
    "cheese_kg",
    "protein_pct",
    "calcium_mg_per_g_protein",
    "lactose_pct",
    "floc_min",
    "drain_moisture_pct",
    "finish_min",
)


@dataclass(frozen=True, slots=True)
class Line:
    """One outcome as written: label, value, band, and the row of the verdict that speaks of it."""

    key: str
    label: str
    value: str
    band: str = ""
    row: Row | None = None
    outside: str = ""
    of_words: bool = False
    """words about the cheese, no figure"""

    @property
    def said(self) -> str:
        """The line as text, with what the verdict says of it."""
        return f"{self.label} {self.value}" + (f", {self.row.sentence}" if self.row is not None else "")

    @property
    def name(self) -> str:
        """The line as a screen reader names it: with its state in words, where the eye has the shape of a mark."""
        stands = [headed(state_words(self.row.state), self.row.sentence)] if self.row is not None else []
        return ", ".join((self.label, self.value, *stands))

    @property
    def within(self) -> str:
        """The band as a sentence, "" where there is none."""
        told = QCoreApplication.translate("OutcomeList", "8 in 10 makes within {0}")
        return told.format(self.band) if self.band else ""

    @property
    def tip(self) -> str:
        """What the quantity is, where its limit comes from and how we have it."""
        if self.of_words:
            return headed(self.label, self.value)
        known = word_of(self.key)
        lines = [headed(quantity(self.key).label, self.value), known.says if known is not None else "", self.within]
        if (row := self.row) is not None:
            lines += [row.rule, row.sentence, f"{row.source} ({word(row.have, 'have')})", row.note]
        return "\n".join(text for text in (*lines, self.outside) if text)


def lines_of(made: Forecast, rows: Sequence[Row], system: str) -> tuple[Line, ...]:
    """The outcomes of a forecast, each with the row of the verdict that matters most for it."""
    return tuple(
        Line(
            key, label_of(key), value_words(key, outcome.value, system), band_words(key, outcome, system),
            row_for(rows, key), outcome.outside,
        )
        for key in SHOWN
        if (outcome := made.outcomes.get(key)) is not None
    )  # fmt: skip


def row_for(rows: Sequence[Row], key: str) -> Row | None:
    """The row of a verdict that matters most for an outcome: limits before quality before usual, the worst of them."""
    for sections in ((LIMIT,), (QUALITY, CLASS), (MAKE,)):
        found = [row for row in rows if row.quantity == key and row.section in sections]
        if found:
            return max(found, key=lambda row: (RANK[row.state], -(row.margin if row.margin is not None else 0.0)))
    return None


def short_chance(chance: float | None) -> str:
    """The judge's chance, shorter: "9 in 10", "> 9 in 10", "7 in 10 outside"; the tooltip has it in full."""
    if chance is None:
        return ""
    if 0.45 < chance < 0.55:
        return chance_words(chance)
    odds = max(chance, 1.0 - chance)
    if odds >= 0.95:
        tens = QCoreApplication.translate("Outcome", "> 9 in 10")
    else:
        tens = QCoreApplication.translate("Outcome", "{0} in 10").format(round(10.0 * odds))
    return tens if chance > 0.5 else QCoreApplication.translate("Outcome", "{0} outside").format(tens)
