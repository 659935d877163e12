"""The place "Compare": choose what stands beside the open make, see what differences are worth, take one, print."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QButtonGroup, QHBoxLayout, QProgressBar, QPushButton, QToolButton, QVBoxLayout, QWidget

from designer.judge.beside import Another, Beside, Lanes, Pair, title
from designer.judge.compare import Difference
from designer.plan.compare_sheet import compare_sheet
from designer.plan.make_plan import Print
from designer.plan.sheet import Paper, Sheet
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.units import System
from widgets import wording
from widgets.compare.curves import Curves
from widgets.compare.outcome_pair import OutcomePair
from widgets.compare.partners import Partners
from widgets.compare.sentences import said, said_of_texture
from widgets.compare.working import Answer, CompareWorker, Question
from widgets.compare.worth_table import WorthTable, capital, words_of
from widgets.flow import flowing
from widgets.paper.preview import PlanPreview
from widgets.room import LEAST_PX, Parts, Stack, Turning
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped

EMPTY, BESIDE, PRINTED = range(3)
BESIDE_PX = 860
"""The least room for the two cheeses beside the table of what differs."""


def button(text: str, pressed: Callable[[], object] | None = None, *, strong: bool = False) -> QPushButton:
    """A push button of this place."""
    made = QPushButton(text)
    made.setProperty("strong", strong)
    if pressed is not None:
        made.clicked.connect(lambda: pressed())
    return made


class ComparePlace(QWidget):
    """The open make on the left, another beside it. `beside` is who stands there, None while nobody does."""

    compared = Signal()
    """what is shown is another comparison"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.beside: Beside | None = None
        self.answer: Answer | None = None
        self._asked: Question | None = None
        self._system: System = "metric"
        self._sides: tuple[Beside, Recipe, tuple[Recipe, Recipe]] | None = None
        self.worker = CompareWorker(self)
        self.worker.ready.connect(self._answered)
        self.worker.failed.connect(self._failed)
        self.worker.progress.connect(self._told)
        self.partners = Partners(session, self)
        self.partners.chosen.connect(self.put_beside)
        self.partners.failed.connect(self._failed)
        self._title = Wrapped(self.tr("Compare"), self)
        self._title.setFont(dress.font("title", bold=True))
        self.sentence = Wrapped(self)
        self.table = WorthTable(self)
        self.table.setMinimumHeight(LEAST_PX)
        self.outcomes = OutcomePair(self)
        self.body = Wrapped(self)
        self.curves = Curves(self)
        self.take = button(self.tr("&Take across"), self.take_across, strong=True)
        self.stack = Stack(self)
        for page in (self._empty(), self._beside(), self._printed()):
            self.stack.addWidget(page)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.stack)
        self.table.taken.connect(self._take)
        self.table.currentItemChanged.connect(self._offer)
        session.forecastChanged.connect(self._maybe)

    # ---- building

    def _empty(self) -> QWidget:
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(24, 16, 24, 16)
        column.setSpacing(16)
        column.addStretch(1)
        words = Wrapped(
            self.tr("Put another make beside this one, and every difference says what it is worth in the cheese.")
        )
        words.setFont(dress.font("head"))
        words.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.first_open = button(self.tr("Open a &recipe…"), self.partners.ask_and_open, strong=True)
        ways = [self.first_open]
        for menu in (self.partners.examples, self.partners.versions, self.partners.middles, self.partners.lanes):
            ways.append(button(menu.title()))
            ways[-1].setMenu(menu)
        row = flowing(*ways, spacing=10, centred=True)
        self.trouble = Wrapped()
        self.trouble.setProperty("role", "wrong")
        self.trouble.setAlignment(Qt.AlignmentFlag.AlignCenter)
        column.addWidget(words)
        column.addWidget(row)
        column.addWidget(self.trouble)
        column.addStretch(1)
        return whole

    def _beside(self) -> QWidget:
        self.choose = button(self.tr("Set &beside"))
        self.choose.setMenu(self.partners.all)
        self.swap = button(self.tr("S&wap sides"), self.swap_sides)
        self.swap.setToolTip(self.tr("The other one first, so that values go the other way"))
        self.print = button(self.tr("Print…"), self.show_print)
        self.away = button(self.tr("Put away"), self.put_away)
        buttons = flowing(self.choose, self.swap, self.print, self.away, spacing=8)
        head = Turning([(self._title, 1), (buttons, 0)], BESIDE_PX, spacing=8)
        split = Parts([self._worths(), self._cheeses()], [810, 420], BESIDE_PX)
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 1)
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(24, 16, 20, 12)
        column.setSpacing(8)
        column.addWidget(head)
        column.addLayout(self._saying())
        column.addWidget(split, 1)
        return whole

    def _saying(self) -> QHBoxLayout:
        """The sentence; while it is worked out, how far, and a way to stop."""
        row = QHBoxLayout()
        row.setSpacing(10)
        row.addWidget(self.sentence, 1)
        self.bar = QProgressBar()
        self.bar.setAccessibleName(self.tr("How far the comparison is"))
        self.bar.setFixedWidth(160)
        self.bar.setTextVisible(False)
        self.halt = button(self.tr("Stop"), self.give_up)
        for one in (self.bar, self.halt):
            one.setVisible(False)
            row.addWidget(one)
        return row

    def _worths(self) -> QWidget:
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 12, 0)
        column.setSpacing(8)
        column.addWidget(self.table, 1)
        foot = QHBoxLayout()
        self.hint = Wrapped()
        self.hint.setProperty("role", "soft")
        foot.addWidget(self.hint, 1)
        foot.addWidget(self.take)
        column.addLayout(foot)
        return left

    def _cheeses(self) -> QWidget:
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(12, 0, 0, 0)
        column.setSpacing(8)
        column.addWidget(self.outcomes)
        column.addWidget(self.body)
        column.addWidget(self.curves, 1)
        row = QHBoxLayout()
        row.setSpacing(6)
        row.addStretch(1)
        self.spans = QButtonGroup(self)
        for number, text in enumerate((self.tr("To the press"), self.tr("First 30 hours"))):
            one = QToolButton()
            one.setText(text)
            one.setCheckable(True)
            one.setChecked(number == 0)
            self.spans.addButton(one, number)
            row.addWidget(one)
        self.spans.idClicked.connect(lambda number: self.curves.set_whole(number == 1))
        column.addLayout(row)
        return right

    def _printed(self) -> QWidget:
        self.preview = PlanPreview(self._sheet, name=self.tr("The comparison, as printed"), file="comparison.pdf")
        back = button(self.tr("Back to the comparison"), self._back)
        back.setToolTip(self.tr("Back (Esc)"))
        self.preview.row.insertWidget(0, back)
        leave = QShortcut(QKeySequence(Qt.Key.Key_Escape), self.preview)
        leave.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        leave.activated.connect(self._back)
        return self.preview

    # ---- who stands beside

    @property
    def called(self) -> str:
        """What the other is called."""
        return self.beside.names(self.session.recipe)[1] if self.beside is not None else ""

    def open_file(self, path: Path) -> None:
        """Put the recipe of a file beside the open one."""
        self.partners.open_file(path)

    @Slot(object)
    def put_beside(self, other: Beside | Recipe, called: str = "") -> None:
        """Compare the open make with this one; `called` says which recipe it is, where its name doesn't."""
        beside = Another(other, called) if isinstance(other, Recipe) else other
        try:
            for side in beside.sides(self.session.recipe):
                self.session.march(side)
        except RecipeError as error:
            self._failed(str(error))
            return
        self.beside = beside
        self.trouble.setText("")
        self.stack.setCurrentIndex(BESIDE)
        self.table.setFocus()
        self._ask()

    def swap_sides(self) -> None:
        """Lanes, or two versions, the other way round."""
        if isinstance(self.beside, Lanes | Pair):
            self.put_beside(self.beside.swapped())

    def put_away(self) -> None:
        """Nothing beside the open make any more."""
        self.worker.forget()
        self.beside = self.answer = self._asked = None
        self._working(False)
        self.stack.setCurrentIndex(EMPTY)
        self.first_open.setFocus()

    # ---- comparing

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self._system = wording.system_of(system)
        self.refresh()

    @Slot()
    def _maybe(self) -> None:
        if not self.session.previewing:
            self._offer()
            if self.isVisible():
                self.refresh()

    @Slot()
    def refresh(self) -> None:
        """Bring what is shown up to date: compare again, or only dress it anew."""
        if self.beside is None:
            return
        if self.fresh and self.answer is not None:
            self._answered(self.answer)
        else:
            self._ask()

    def _question(self) -> Question | None:
        """What is to be compared now; None where nobody stands beside. RecipeError where a side is gone."""
        if self.beside is None:
            return None
        recipe = self.session.recipe
        if self._sides is None or self._sides[0] != self.beside or self._sides[1] is not recipe:
            self._sides = (self.beside, recipe, self.beside.sides(recipe))
        return Question(*self._sides[2], self._system)

    def _ask(self) -> None:
        try:
            question = self._question()
        except RecipeError as error:
            self.put_away()
            self._failed(str(error))
            return
        if question is not None and self.beside is not None and not (question == self._asked and self.answer is None):
            self._asked, self.answer = question, None
            self._title.setText(title(self.beside, self.session.recipe))
            self.sentence.setText(self.tr("Working out what each difference is worth…"))
            self.swap.setVisible(isinstance(self.beside, Lanes | Pair))
            self._working(True)
            self.worker.ask(question)
        self._offer()

    def _working(self, on: bool) -> None:
        self.bar.setRange(0, 0)
        self.bar.setVisible(on)
        self.halt.setVisible(on)
        self.print.setEnabled(not on)

    @Slot(int, int)
    def _told(self, done: int, of: int) -> None:
        self.bar.setRange(0, of)
        self.bar.setValue(done)

    def give_up(self) -> None:
        """Stop working it out; the button that stopped it begins it again."""
        if self.answer is None and self.bar.isVisible():
            self.worker.forget()
            self._asked = None
            self._working(False)
            self.sentence.setText(self.tr("Stopped. What stands below is not of these two makes."))
            self.halt.setText(self.tr("Compare again"))
            self.halt.setVisible(True)
        else:
            self.halt.setText(self.tr("Stop"))
            self._ask()

    @Slot(object)
    def _answered(self, answer: Answer) -> None:
        self.answer = answer
        found = answer.comparison
        self._working(False)
        apart = self.beside.called if isinstance(self.beside, Pair) else None
        self.outcomes.fill(found, self._system, apart)
        self.body.setText(said_of_texture(found))
        names = self.beside.names(self.session.recipe) if self.beside is not None else ("", "")
        self.curves.show_makes((answer.left, answer.right), names)
        self.table.fill(found, apart)
        self.sentence.setText(said(found))
        self._offer()
        self.compared.emit()

    @Slot(str)
    def _failed(self, sentence: str) -> None:
        self._working(False)
        (self.trouble if self.beside is None else self.sentence).setText(sentence)

    # ---- taking across

    @property
    def fresh(self) -> bool:
        """Whether what is shown belongs to the open make as it is now."""
        try:
            return self.answer is not None and self.answer.question == self._question()
        except RecipeError:
            return False

    @Slot()
    def _offer(self) -> None:
        chosen = self.table.chosen()
        fresh = self.fresh
        apart = isinstance(self.beside, Pair)
        self.take.setEnabled(fresh and chosen is not None and not apart)
        self.take.setVisible(not apart)
        if chosen is not None:
            self.hint.setText(self.tr("{0}: {1}.").format(capital(words_of(chosen)), chosen.consequences))
        elif not apart:
            self.hint.setText(self.tr("Choose a difference to take it across into the open make."))
        if fresh and self.answer is not None:
            self.curves.mark(self.answer.spans(chosen))

    def take_across(self) -> None:
        """Take the selected difference into the open make, as one step of undo."""
        chosen = self.table.chosen()
        if chosen is not None:
            self._take(chosen)

    @Slot(object)
    def _take(self, difference: Difference) -> None:
        if self.answer is None or self.beside is None or not self.fresh:
            return
        try:
            taken = self.beside.taken(self.session.recipe, self.answer.comparison.take(difference))
            self.session.march(taken)
        except RecipeError as error:
            self.hint.setText(str(error))
            return
        self.session.commit(taken, self.tr("Taken across: {0}").format(words_of(difference)))

    # ---- on paper

    def show_print(self) -> None:
        """Show the comparison as it will be printed."""
        if self.answer is not None:
            self.stack.setCurrentIndex(PRINTED)
            self.preview.refresh()
            self.preview.setFocus()

    def _sheet(self, paper: Paper) -> Sheet:
        assert self.answer is not None
        assert self.beside is not None
        names = self.beside.names(self.session.recipe)
        made = self.answer.left, self.answer.right
        head = title(self.beside, self.session.recipe)
        return compare_sheet(self.answer.comparison, made, names, head, Print(paper=paper, system=self._system))

    @Slot()
    def _back(self) -> None:
        self.stack.setCurrentIndex(BESIDE)
        self.table.setFocus()

    def stop(self) -> None:
        """End what runs beside the window."""
        self.worker.stop()
