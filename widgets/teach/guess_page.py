"""Guess first, then show: change a setting, say which way and how much each outcome goes, then see it and why."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication, Qt, Signal, Slot
from PySide6.QtWidgets import (
    QButtonGroup,
    QComboBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from designer.judge.compare import KEYS
from designer.judge.depths import Topic, topic_of
from designer.judge.guess import LESS, MORE, SAME, Guess, Told, chain, changes, held
from designer.judge.movable import moved
from designer.judge.rebuilt import Rebuilt
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from widgets.compare.curves import Curves
from widgets.flow import flowing
from widgets.outcomes import figures
from widgets.room import Parts, Stack, Turning
from widgets.session import Session
from widgets.teach.setting_choice import SettingChoice
from widgets.teach.whole_choice import WAYS, WholeChoice
from widgets.theme import apply as dress
from widgets.together import Wrapped
from widgets.variants.page import BESIDE_PX, Page, button, note, scrolled

SETTING = "setting"
FIRST = ("cut_mm", "temperature_c")
"""Fields to begin with, where the recipe has one."""


@dataclass(slots=True)
class Row:
    """What belongs to one outcome: its ways to choose, its amount, what is told in the end."""

    ways: QButtonGroup
    by: QLineEdit
    told: QLabel


class GuessPage(Page):
    """The change and the guesses on the left; on the right, once it is shown, the answer and why."""

    deeper = Signal(str)
    """the topic of depths that is asked for"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Guess first, then show"))
        self.back.setText(self.tr("‹ Design"))
        self.sentence.setText(
            self.tr("Change a setting, a stage or the milk, and say what will come of it, before the forecast does.")
        )
        self.choice = SettingChoice()
        self.choice.changed.connect(self._begin)
        self.choice.wrong.connect(self.said)
        self.whole = WholeChoice()
        self.whole.changed.connect(self._begin)
        self.way = QComboBox()
        self.way.setAccessibleName(self.tr("What is changed"))
        self.way.addItem(self.tr("A setting"), SETTING)
        for key, text in WAYS.items():
            self.way.addItem(QCoreApplication.translate("Guess", text), key)
        self.way.currentIndexChanged.connect(self._other_way)
        self._cannot = ""
        """why the change chosen can't be made"""
        self.rows: dict[str, Row] = {}
        self.answers: tuple[Told, ...] = ()
        self._of: Recipe | None = None
        self._changed: Rebuilt | None = None
        split = Parts([self._guesses(), self._why()], [640, 560], BESIDE_PX)
        self.asked = Stack()
        self.asked.addWidget(self.choice)
        self.asked.addWidget(self.whole)
        self.body.addWidget(Turning([(self.way, 0), (self.asked, 1)], BESIDE_PX, spacing=8))
        self.body.addWidget(split, 1)
        self.score = note()
        self.behind = button(self.tr("What is &behind it"), self._behind)
        self.keep = button(self.tr("&Keep this change"), self._keep)
        self.again = button(self.tr("&Another guess"), self._begin)
        self.show_it = button(self.tr("&Show"), self.reveal, strong=True)
        buttons = flowing(self.behind, self.keep, self.again, self.show_it, spacing=10)
        self.foot.addWidget(Turning([(self.score, 1), (buttons, 0)], BESIDE_PX))
        session.documentChanged.connect(self._another)

    # ---- building

    def _guesses(self) -> QWidget:
        whole = QWidget()
        grid = QGridLayout(whole)
        grid.setContentsMargins(0, 4, 14, 0)
        grid.setHorizontalSpacing(8)
        grid.setVerticalSpacing(6)
        grid.setColumnStretch(3, 1)
        for column, text in enumerate((self.tr("Outcome"), self.tr("I guess"), self.tr("by (if you dare)"), "")):
            grid.addWidget(note(text), 0, column)
        for at, key in enumerate(KEYS, start=1):
            name = figures.label_of(key)
            grid.addWidget(QLabel(name), at, 0)
            grid.addWidget(self._ways(key, name), at, 1)
            self.rows[key].by.setAccessibleName(self.tr("{0}: by how much").format(name))
            grid.addWidget(self.rows[key].by, at, 2)
            grid.addWidget(self.rows[key].told, at, 3)
        self.curves = Curves()
        self.curves.setMinimumHeight(150)
        grid.addWidget(self.curves, len(KEYS) + 1, 0, 1, 4)
        grid.setRowStretch(len(KEYS) + 1, 1)
        return whole

    def _ways(self, key: str, name: str) -> QWidget:
        ways = QButtonGroup(self)
        row = QWidget()
        line = QGridLayout(row)
        line.setContentsMargins(0, 0, 0, 0)
        line.setSpacing(2)
        for column, (way, text) in enumerate(
            ((LESS, self.tr("less")), (SAME, self.tr("same")), (MORE, self.tr("more")))
        ):
            one = QToolButton()
            one.setText(text)
            one.setCheckable(True)
            one.setMinimumSize(48, 28)
            one.setAccessibleName(f"{name}: {text}")
            ways.addButton(one, way + 1)
            line.addWidget(one, 0, column)
        by = QLineEdit()
        by.setFixedWidth(96)
        told = Wrapped()
        self.rows[key] = Row(ways, by, told)
        ways.idClicked.connect(lambda _: self._ready())
        return row

    def _why(self) -> QWidget:
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(14, 0, 4, 0)
        column.setSpacing(8)
        self.why = Wrapped()
        self.why.setTextFormat(Qt.TextFormat.PlainText)
        self.why_head = Wrapped()
        self.why_head.setFont(dress.font("head", bold=True))
        for one in (self.why_head, self.why):
            column.addWidget(one)
        column.addStretch(1)
        return scrolled(inside)

    # ---- the round

    def refresh(self) -> None:
        """Begin anew where the recipe is another."""
        recipe = self.session.recipe
        if self._of is recipe and self.choice.system == self.system:
            return
        path = None
        if self._of is None:
            path = next(
                ((stage.id, field) for field in FIRST for stage in recipe.stages if hasattr(stage, field)), None
            )
        self._of = recipe
        self.whole.put(recipe)
        self.choice.put(recipe, self.system, path)

    @Slot()
    def _other_way(self) -> None:
        """Another sort of change: its lists come."""
        way = str(self.way.currentData())
        self.asked.setCurrentIndex(0 if way == SETTING else 1)
        if way != SETTING:
            self.whole.way = way
            self.whole.put(self.session.recipe)
        self._begin()

    def opened(self) -> None:
        """The page is shown: what is changed has the keyboard."""
        self.refresh()
        self.way.setFocus()

    @property
    def shown(self) -> bool:
        """Whether the answer is on the table."""
        return bool(self.answers)

    @Slot()
    def _begin(self) -> None:
        """A new round: guesses are wiped, the answer is hidden."""
        self.answers = ()
        self._changed = self._change()
        here = self.session.forecast.outcomes
        for key, row in self.rows.items():
            row.ways.setExclusive(False)
            for one in row.ways.buttons():
                one.setChecked(False)
                one.setEnabled(key in here)
            row.ways.setExclusive(True)
            row.by.clear()
            row.by.setEnabled(key in here)
            now = figures.value_words(key, here[key].value, self.system) if key in here else ""
            row.told.setText(self.tr("now {0}").format(now) if now else self.tr("not in this make"))
        self.why_head.setText(self.tr("The answer stays covered until you have guessed."))
        self.why.setText("")
        self.curves.show_makes((), ())
        self._ready()

    def _change(self) -> Rebuilt | None:
        """The change chosen, carried out and marched once; None where there is none, or it can't be made."""
        self._cannot = ""
        recipe, one = self.session.recipe, self.choice.setting
        try:
            if self.way.currentData() != SETTING:
                made = self.whole.change(recipe)
            elif one is None or abs(self.choice.value - one.value) <= 1e-9:
                return None
            else:
                words = f"{one.title} {one.shown(self.choice.value, self.system)}"
                made = Rebuilt(moved(recipe, one, self.choice.value), words)
            self.session.march(made.recipe)
        except RecipeError as error:
            self._cannot = str(error)
            return None
        return made

    def _guessed(self) -> dict[str, Guess]:
        found = {}
        for key, row in self.rows.items():
            if row.ways.checkedId() >= 0:
                found[key] = Guess(row.ways.checkedId() - 1, _number(row.by.text()))
        return found

    def _ready(self) -> None:
        """Which buttons are of use now, and what to do next."""
        guessed, moves = bool(self._guessed()), self._changed is not None
        self.show_it.setEnabled(guessed and moves and not self.shown)
        self.behind.setVisible(self.shown and self._topic() is not None)
        self.keep.setVisible(self.shown)
        self.again.setVisible(self.shown)
        if self.shown:
            right = sum(one.right for one in self.answers)
            self.score.setText(self.tr("{0} of {1} ways right.").format(right, len(self.answers)))
        elif self._cannot:
            self.score.setText(self._cannot)
        elif not moves:
            self.score.setText(self.tr("Choose a setting above and give it another value."))
        elif not guessed:
            self.score.setText(self.tr("Now say of at least one outcome which way it goes."))
        else:
            self.score.setText(self.tr("Ready when you are."))

    def reveal(self) -> None:
        """Show what the forecast says, held against the guesses, and why."""
        guessed = self._guessed()
        if self._changed is None or not guessed or self.shown:
            return
        before, after = self.session.forecast, self.session.march(self._changed.recipe)
        every = {found.key: found for found in changes(before, after)}
        self.answers = tuple(held(every[key], guess) for key, guess in guessed.items() if key in every)
        for told in self.answers:
            mark = "\u2713" if told.right else "\u2717"
            self.rows[told.change.key].told.setText(f"{mark}  {told.sentence}")
        for key, found in every.items():
            if key not in guessed:
                self.rows[key].told.setText(found.words)
        topic = self._topic()
        self.why_head.setText(topic.child if topic is not None else self.tr("How it came about"))
        said = [topic.maker, ""] if topic is not None else []
        self.why.setText("\n".join([*said, *(f"\u2013 {line}" for line in chain(before, after))]))
        self.curves.show_makes((before, after), (self.tr("as it is"), self.tr("so changed")))
        self._ready()

    def _topic(self) -> Topic | None:
        one = self.choice.setting if self.way.currentData() == SETTING else None
        return topic_of(self.session.recipe, one) if one is not None else None

    def _behind(self) -> None:
        topic = self._topic()
        if topic is not None:
            self.deeper.emit(topic.key)

    def _keep(self) -> None:
        """Take the change into the recipe, as one step of undo."""
        if self._changed is not None and self.shown:
            words = self.tr("Guessed and kept: {0}").format(self._changed.words)
            self.session.commit(self._changed.recipe, words)


def _number(text: str) -> float | None:
    """A number that was typed, with point or comma and whatever unit behind it; None where there is none."""
    words = text.replace(",", ".").strip().lstrip("+-\u2212").split()
    try:
        return abs(float(words[0].rstrip("%"))) if words else None
    except ValueError:
        return None
