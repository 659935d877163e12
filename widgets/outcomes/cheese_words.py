"""What else there is to say of the cheese: body, knit, coat and cautions, each a line that opens to its reasons."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication
from PySide6.QtWidgets import QVBoxLayout, QWidget

from designer.forecast import Caution, Forecast
from designer.judge.coat import AGAINST, SUITS, CoatAdvice, Condition, Option, Point, advise, name_of
from designer.judge.verdict import MET, NEAR, NOT_MET
from designer.language import number
from designer.language import word as told
from designer.make import texture
from designer.make.texture import Because, Texture, Word
from styles.reader import Style
from widgets.outcomes.fold import Fold
from widgets.outcomes.opened import Part, heading, note
from widgets.outcomes.outcome_line import Line

N = QT_TRANSLATE_NOOP
BODY, KNIT, COAT, CAUTIONS = "words-body", "words-knit", "words-coat", "words-cautions"
LABELS: Final = {
    BODY: N("Cheese", "Body"),
    KNIT: N("Cheese", "Knit"),
    COAT: N("Cheese", "Coat"),
    CAUTIONS: N("Cheese", "Cautions"),
}
NEEDS: Final = (
    "moisture_pct",
    "fat_pct",
    "ph_24h",
    "calcium_mmol_per_kg",
    "mnfs_pct",
    "fdm_pct",
    "salt_in_moisture_pct",
)
"""Outcomes without which nothing is said of the body."""


def tr(text: str) -> str:
    """A sentence in the maker's language."""
    return QCoreApplication.translate("Cheese", text)


@dataclass(frozen=True, slots=True)
class Cheese:
    """All that is said of a forecast's cheese beside its figures; None where the make does not get so far."""

    body: Texture | None
    coat: CoatAdvice | None
    cautions: tuple[Caution, ...]


def cheese(made: Forecast, style: Style | None) -> Cheese:
    """Judge the cheese of a forecast."""
    known = all(key in made.outcomes for key in NEEDS)
    samples = made.bands.samples if made.bands is not None else None
    if samples is not None and not all(key in samples for key in NEEDS):
        samples = None
    body = texture.of_outcomes(made.outcomes, style, samples=samples) if known else None
    return Cheese(body, advise(made, style) if known else None, made.cautions)


def lines(of: Cheese) -> tuple[Line, ...]:
    """The lines, in the order they are read."""
    said = {}
    if of.body is not None:
        said[BODY] = ", ".join(word.said for word in of.body.words)
    if of.coat is not None and of.coat.knit is not None:
        said[KNIT] = of.coat.knit.said
    if of.coat is not None and of.coat.options:
        said[COAT] = _coat_words(of.coat)
    if of.cautions:
        grave = sum(caution.level != "note" for caution in of.cautions)
        notes = len(of.cautions) - grave
        parts = [tr("{0} to heed").format(grave)] if grave else []
        parts += [tr("{0} to know").format(notes)] if notes else []
        said[CAUTIONS] = ", ".join(parts)
    return tuple(Line(key, tr(LABELS[key]), words, of_words=True) for key, words in said.items())


def _coat_words(advice: CoatAdvice) -> str:
    one = advice.chosen if advice.chosen is not None else advice.options[0]
    return f"{name_of(one.coat)} {_stance(one)}"


def _stance(one: Option) -> str:
    return {SUITS: tr("suits"), AGAINST: tr("does not fit")}.get(one.stance, tr("with care"))


class WordsPage(QWidget):
    """One line of words opened."""

    def __init__(self, key: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.key = key
        self.part = Part(self)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 12)
        column.addWidget(self.part)

    def put(self, of: Cheese) -> None:
        """Show what is said, with its reasons."""
        made: list[QWidget] = []
        if self.key == BODY and of.body is not None:
            made = self._body(of.body)
        elif self.key == KNIT and of.coat is not None and of.coat.knit is not None:
            made = self._knit(of.coat)
        elif self.key == COAT and of.coat is not None:
            made = self._coat(of.coat)
        elif self.key == CAUTIONS:
            made = [self._caution(caution) for caution in of.cautions]
        self.part.put(made)

    def folds(self) -> list[Fold]:
        """The lines that open."""
        return self.part.folds()

    # ---- body

    def _body(self, body: Texture) -> list[QWidget]:
        made: list[QWidget] = []
        for word in body.words:
            made.append(heading(self, self._word(word)))
            made += [self._because(one) for one in word.because]
        if body.unsaid:
            made.append(note(self, body.unsaid, soft=True))
        return made

    @staticmethod
    def _word(word: Word) -> str:
        sure = {"good": tr("well held"), "fair": tr("fairly held"), "weak": tr("weakly held")}[word.confidence]
        tens = tr(", {0} in 10 makes").format(word.in_ten) if word.in_ten is not None else ""
        return f"{word.said[:1].upper()}{word.said[1:]} – {sure}{tens}"

    def _because(self, one: Because) -> Fold:
        details = [
            tr("Here it is {0}.").format(one.turns) if one.turns else "",
            f"{told(one.rule.change, 'texture')}." if one.rule.change else "",
            f"{one.rule.source} ({told(one.rule.have, 'have')})",
        ]  # fmt: skip
        return Fold(
            told(one.rule.says, "texture"), "\n".join(filter(None, details)), second=", ".join(one.figures), parent=self
        )

    # ---- knit

    def _knit(self, advice: CoatAdvice) -> list[QWidget]:
        knit = advice.knit
        assert knit is not None
        made: list[QWidget] = [note(self, tr("The cheese is likely {0}.").format(knit.said))]
        for one in knit.reasons:
            details = f"{one.source} ({told(one.have, 'have')})"
            text = f"{one.text[:1].upper()}{one.text[1:]}"
            mend = tr("Mend: {0}").format(one.remedy)
            made.append(Fold(text, details, value=f"−{number(one.lost, '.2f')}", second=mend, parent=self))
        meanwhile = [self._point(point) for point in advice.meanwhile if not point.next_time]
        if meanwhile:
            made += [heading(self, tr("Meanwhile")), *meanwhile]
        return made

    # ---- coat

    def _coat(self, advice: CoatAdvice) -> list[QWidget]:
        made: list[QWidget] = [note(self, advice.sentence)]
        first = advice.chosen if advice.chosen is not None else advice.options[0]
        for one in (first, *(other for other in advice.options if other is not first)):
            name = name_of(one.coat)
            name = name[:1].upper() + name[1:]
            planned = tr(", as planned") if one is advice.chosen else ""
            made.append(heading(self, f"{name} – {_stance(one)}{planned}"))
            made += [self._condition(each) for each in (one.conditions if one is first else one.open_conditions)]
            made += [self._point(point) for point in (*one.speaks_for, *one.speaks_against)]
        if advice.gas:
            made.append(heading(self, tr("May blow")))
            made += [self._point(point) for point in advice.gas]
        return made

    def _condition(self, one: Condition) -> Fold:
        state = {True: MET, False: NOT_MET}.get(one.met, NEAR) if one.met is not None else NEAR
        details = "\n".join(filter(None, (*one.figures, f"{one.source} ({told(one.have, 'have')})")))
        second = "" if one.met else one.todo if one.met is False else tr("look on the day: {0}").format(one.todo)
        return Fold(f"{one.text[:1].upper()}{one.text[1:]}", details, second=second, state=state, parent=self)

    def _point(self, one: Point) -> Fold:
        details = "\n".join(filter(None, (*one.figures, f"{one.source} ({told(one.have, 'have')})")))
        return Fold(f"{one.text[:1].upper()}{one.text[1:]}", details, parent=self)

    # ---- cautions

    def _caution(self, one: Caution) -> Fold:
        state = {"stop": NOT_MET, "watch": NEAR}.get(one.level, "")
        return Fold(one.text, one.source, state=state, parent=self)
