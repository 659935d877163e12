"""The place "Compare": choose another make to stand beside the open one, see what each difference is worth, take it."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt, Slot
from PySide6.QtWidgets import (
    QButtonGroup,
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QMenu,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from designer.judge.compare import Comparison, Difference
from designer.recipe import versions
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.units import System
from widgets.compare.outcome_pair import OutcomePair
from widgets.compare.two_curves import TwoCurves
from widgets.compare.working import Answer, CompareWorker, Question
from widgets.compare.worth_table import WorthTable, words_of
from widgets.files import FILTER, examples, read
from widgets.session import Session
from widgets.theme import apply as dress


def button(text: str, pressed: Callable[[], object] | None = None, *, strong: bool = False) -> QPushButton:
    """A push button of this place."""
    made = QPushButton(text)
    made.setProperty("strong", strong)
    if pressed is not None:
        made.clicked.connect(lambda: pressed())
    return made


class ComparePlace(QWidget):
    """The open make on the left, another beside it."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.other: Recipe | None = None
        self.called = ""
        self.answer: Answer | None = None
        self._asked: Question | None = None
        self._system: System = "metric"
        self.worker = CompareWorker(self)
        self.worker.ready.connect(self._answered)
        self.worker.failed.connect(self._failed)
        self._title = QLabel(self.tr("Compare"), self)
        self._title.setFont(dress.font("title", bold=True))
        self.sentence = QLabel(self)
        self.sentence.setWordWrap(True)
        self.table = WorthTable(self)
        self.outcomes = OutcomePair(self)
        self.curves = TwoCurves(self)
        self.take = button(self.tr("Take across"), self.take_across, strong=True)
        self.example_menu, self.version_menu = QMenu(self), QMenu(self)
        self.example_menu.aboutToShow.connect(self._fill_examples)
        self.version_menu.aboutToShow.connect(self._fill_versions)
        self.stack = QStackedWidget(self)
        self.stack.addWidget(self._empty())
        self.stack.addWidget(self._beside())
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
        column.setAlignment(Qt.AlignmentFlag.AlignCenter)
        column.setSpacing(16)
        words = QLabel(
            self.tr("Put another make beside this one, and every difference says what it is worth in the cheese.")
        )
        words.setFont(dress.font("head"))
        words.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.first_open = button(self.tr("Open a recipe…"), self.ask_and_open, strong=True)
        self.first_example = button(self.tr("Take an example"))
        self.first_example.setMenu(self.example_menu)
        row = QHBoxLayout()
        row.setAlignment(Qt.AlignmentFlag.AlignCenter)
        row.setSpacing(10)
        row.addWidget(self.first_open)
        row.addWidget(self.first_example)
        self.trouble = QLabel()
        self.trouble.setProperty("role", "wrong")
        self.trouble.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.trouble.setWordWrap(True)
        column.addWidget(words)
        column.addLayout(row)
        column.addWidget(self.trouble)
        return whole

    def _beside(self) -> QWidget:
        head = QHBoxLayout()
        head.setSpacing(8)
        head.addWidget(self._title, 1)
        self.open = button(self.tr("Open another…"), self.ask_and_open)
        self.example = button(self.tr("Example"))
        self.example.setMenu(self.example_menu)
        self.version = button(self.tr("Saved version"))
        self.version.setMenu(self.version_menu)
        self.away = button(self.tr("Put away"), self.put_away)
        for one in (self.open, self.example, self.version, self.away):
            head.addWidget(one)
        left = QWidget()
        left_column = QVBoxLayout(left)
        left_column.setContentsMargins(0, 0, 12, 0)
        left_column.setSpacing(8)
        left_column.addWidget(self.table, 1)
        foot = QHBoxLayout()
        self.hint = QLabel()
        self.hint.setProperty("role", "soft")
        self.hint.setWordWrap(True)
        foot.addWidget(self.hint, 1)
        foot.addWidget(self.take)
        left_column.addLayout(foot)
        right = QWidget()
        right_column = QVBoxLayout(right)
        right_column.setContentsMargins(12, 0, 0, 0)
        right_column.setSpacing(8)
        right_column.addWidget(self.outcomes)
        right_column.addWidget(self.curves, 1)
        right_column.addLayout(self._spans())
        split = QSplitter(Qt.Orientation.Horizontal)
        split.addWidget(left)
        split.addWidget(right)
        split.setChildrenCollapsible(False)
        split.setHandleWidth(1)
        split.setStretchFactor(0, 1)
        split.setStretchFactor(1, 1)
        split.setSizes([760, 470])
        whole = QWidget()
        column = QVBoxLayout(whole)
        column.setContentsMargins(24, 16, 20, 12)
        column.setSpacing(8)
        column.addLayout(head)
        column.addWidget(self.sentence)
        column.addWidget(split, 1)
        return whole

    def _spans(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(6)
        self.key = QLabel()
        self.key.setProperty("role", "soft")
        self.key.setWordWrap(True)
        row.addWidget(self.key, 1)
        self.spans = QButtonGroup(self)
        for number, text in enumerate((self.tr("To the press"), self.tr("First 30 hours"))):
            one = QToolButton()
            one.setText(text)
            one.setCheckable(True)
            one.setChecked(number == 0)
            self.spans.addButton(one, number)
            row.addWidget(one)
        self.key.setText(self.tr("Full line: open make. Broken line: the other."))
        self.spans.idClicked.connect(lambda number: self.curves.set_whole(number == 1))
        return row

    # ---- choosing the other

    def ask_and_open(self) -> None:
        """Ask which recipe to put beside the open one."""
        start = str(self.session.path.parent) if self.session.path is not None else ""
        kinds = QCoreApplication.translate("Files", "Recipes ({0})").format(FILTER)
        name, _ = QFileDialog.getOpenFileName(self, self.tr("Open a recipe to compare with"), start, kinds)
        if name:
            self.open_file(Path(name))

    def open_file(self, path: Path) -> None:
        """Put the recipe of a file beside the open one."""
        self._put(lambda: read(path)[0])

    def _put(self, made: Callable[[], Recipe], called: str = "") -> None:
        try:
            recipe = made()
            self.session.march(recipe)
        except RecipeError as error:
            self._failed(str(error))
            return
        self.put_beside(recipe, called)

    def put_beside(self, other: Recipe, called: str = "") -> None:
        """Compare the open make with this one; `called` says which it is, where its name doesn't."""
        self.other = other
        self.called = called or (other.name if other.name != self.session.recipe.name else self.tr("the other"))
        self.trouble.setText("")
        self.stack.setCurrentIndex(1)
        self.table.setFocus()
        self._ask()

    def put_away(self) -> None:
        """Nothing beside the open make any more."""
        self.worker.forget()
        self.other = self.answer = self._asked = None
        self.stack.setCurrentIndex(0)
        self.first_open.setFocus()

    @Slot()
    def _fill_examples(self) -> None:
        self.example_menu.clear()
        for path in examples():
            name = path.stem.replace("-", " ")
            action = self.example_menu.addAction(name[:1].upper() + name[1:])
            action.triggered.connect(lambda _=False, path=path: self.open_file(path))

    @Slot()
    def _fill_versions(self) -> None:
        menu, path = self.version_menu, self.session.path
        menu.clear()
        try:
            kept = versions.versions(path) if path is not None else ()
        except RecipeError as error:
            menu.addAction(str(error)).setEnabled(False)
            return
        for one in reversed(kept):
            said = " ".join(f"{one.note or one.changed}".split())
            said = said if len(said) <= 60 else said[:59] + "…"
            action = menu.addAction(f"{one.number}  {one.saved.astimezone():%Y-%m-%d %H:%M}  {said}".rstrip())
            called = self.tr("version {0}").format(one.number)
            action.triggered.connect(
                lambda _=False, one=one, called=called: self._put(lambda: versions.recipe_of(one), called)
            )
        if not kept:
            menu.addAction(self.tr("None yet: every save keeps a version")).setEnabled(False)

    # ---- comparing

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self._system = "us" if system == "us" else "metric"
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
        if self.other is None:
            return
        if self._asked == self._question() and self.answer is not None and self.answer.question == self._asked:
            self._answered(self.answer)
        else:
            self._ask()

    def _question(self) -> Question | None:
        return Question(self.session.recipe, self.other, self._system) if self.other is not None else None

    def _ask(self) -> None:
        question = self._question()
        if question is not None and not (question == self._asked and self.answer is None):
            self._asked, self.answer = question, None
            self._title.setText(self.tr("{0}  against  {1}").format(question.left.name, self.called))
            self.sentence.setText(self.tr("Working out what each difference is worth…"))
            self.worker.ask(question)
        self._offer()

    @Slot(object)
    def _answered(self, answer: Answer) -> None:
        self.answer = answer
        found = answer.comparison
        self.outcomes.fill(found, self._system)
        self.table.fill(found)
        self.curves.show_makes(answer.left, answer.right, (found.left.name, self.called))
        self.sentence.setText(self._said(found))
        self._offer()

    def _said(self, found: Comparison) -> str:
        ranked = found.ranked()
        if not ranked:
            return self.tr("Both makes do the same in every stage.")
        first = words_of(ranked[0])
        worth = ", ".join(ranked[0].consequences.split(", ")[:3])
        if len(ranked) == 1:
            words = self.tr("One difference: {0} ({1}).").format(first, worth)
        else:
            words = self.tr("{0} differences. Most comes from: {1} ({2}).").format(len(ranked), first, worth)
        if found.per_100kg:
            words += " " + self.tr("Doses read per 100 kg of milk.")
        return words

    @Slot(str)
    def _failed(self, sentence: str) -> None:
        (self.trouble if self.other is None else self.sentence).setText(sentence)

    # ---- taking across

    @property
    def fresh(self) -> bool:
        """Whether what is shown belongs to the open make as it is now."""
        return self.answer is not None and self.answer.question.left == self.session.recipe

    @Slot()
    def _offer(self) -> None:
        chosen = self.table.chosen()
        self.take.setEnabled(self.fresh and chosen is not None)
        if chosen is not None:
            self.hint.setText(self.tr("Worth: {0}.").format(chosen.consequences))
        else:
            self.hint.setText(self.tr("Choose a difference to take it across into the open make."))

    def take_across(self) -> None:
        """Take the selected difference into the open make, as one step of undo."""
        chosen = self.table.chosen()
        if chosen is not None:
            self._take(chosen)

    @Slot(object)
    def _take(self, difference: Difference) -> None:
        if self.answer is None or not self.fresh:
            return
        try:
            taken = self.answer.comparison.take(difference)
            self.session.march(taken)
        except RecipeError as error:
            self.hint.setText(str(error))
            return
        self.session.commit(taken, self.tr("Taken across: {0}").format(words_of(difference)))

    def stop(self) -> None:
        """End what runs beside the window."""
        self.worker.stop()
