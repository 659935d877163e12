"""Opens the lines of the outcomes, shows in them what is answered beside the window, and does what is chosen there.

What is tried goes through the session's preview; what is kept is one step of undo.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Final

from PySide6.QtCore import QObject, QPoint, Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QScrollArea, QWidget

from designer.judge.aim import Aimed
from designer.judge.movable import Movable
from designer.judge.turns import turns_among
from designer.language import joined
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.units import System
from widgets.outcomes import cheese_words
from widgets.outcomes.answers import Answers, Locks
from widgets.outcomes.cheese_words import WordsPage
from widgets.outcomes.lever_list import Way, undo_text
from widgets.outcomes.opened import OpenedOutcome
from widgets.outcomes.outcome_list import OutcomeList
from widgets.outcomes.trying import Trying
from widgets.session import Session

LINE_PX: Final = 12
"""What stands less apart in height stands on one line."""


class Opening(QObject):
    """What is open in the list of outcomes, and its answers."""

    said = Signal(str)
    hinted = Signal(str)
    source_asked = Signal(object)
    """the Row whose source is asked for"""
    changed = Signal(bool)
    """something is open now, or nothing"""

    def __init__(self, session: Session, lines: OutcomeList, area: QScrollArea, parent: QWidget) -> None:
        super().__init__(parent)
        self.session, self.lines = session, lines
        self.system: System = "metric"
        self.page: OpenedOutcome | WordsPage | None = None
        self._area = area
        self.answers = Answers(session, self)
        self.answers.came.connect(self._fill)
        self.answers.judged.connect(self._judged)
        self.answers.aimed.connect(self._aimed)
        self.answers.failed.connect(self.hinted)
        self._trying = Trying(session, self)
        lines.asked.connect(self.toggle)
        lines.shut.connect(self.shut)
        lines.wanted.connect(self._want)
        lines.moved.connect(self._reveal)
        session.documentChanged.connect(self._another)
        session.forecastChanged.connect(self._follow)
        session.bandsChanged.connect(self._follow)
        session.laneChanged.connect(self._another_lane)
        self._ask()

    # ---- opening and shutting

    @Slot(str)
    def toggle(self, key: str) -> None:
        """Open a line, or shut it."""
        if key == self.lines.opened:
            self.shut()
        else:
            self.open(key)

    def open(self, key: str) -> None:
        """Open a line; another that was open is shut."""
        self._clear()
        inside = self.lines
        if key in cheese_words.LABELS:
            page: OpenedOutcome | WordsPage = WordsPage(key, inside)
        else:
            page = self._outcome_page(key, inside)
        self.page = page
        self._fill()
        page.show()
        self.lines.open(key, page)
        self.changed.emit(True)
        self._ask()
        QTimer.singleShot(0, self, self._to_the_line)

    @Slot(str, str)
    def _want(self, key: str, typed: str) -> None:
        """Open a line where it is aimed, to go on typing the value wanted."""
        if key != self.lines.opened:
            self.open(key)
        if isinstance(self.page, OpenedOutcome):
            self.page.aim.begin(typed)

    def _outcome_page(self, key: str, parent: QWidget) -> OpenedOutcome:
        page = OpenedOutcome(key, self.system, parent)
        page.left.connect(self._back)
        page.source_asked.connect(self.source_asked)
        page.levers.pointed.connect(self._point)
        page.levers.chosen.connect(self._keep)
        page.aim.wanted.connect(self._aim)
        page.aim.shown.connect(self._show)
        page.aim.taken.connect(self._take_aim)
        return page

    @Slot()
    def shut(self) -> None:
        """Shut what is open; the keyboard is back on its line."""
        if self.page is not None:
            self._clear()
            self.lines.open("", None)
            self.lines.setFocus()
            self.changed.emit(False)

    def _clear(self) -> None:
        self.session.drop_preview()
        self.answers.forget_aim()
        self._trying.stop()
        if self.page is not None:
            self.page.hide()
            self.page.deleteLater()
            self.page = None

    @Slot()
    def _back(self) -> None:
        self.lines.setFocus()

    @Slot()
    def _to_the_line(self) -> None:
        if self.page is not None:
            bar = self._area.verticalScrollBar()
            bar.setValue(round(self.lines.y() + self.lines.top_of(self.lines.opened)) - 2)

    @Slot(float, float)
    def _reveal(self, top: float, height: float) -> None:
        middle = self.lines.y() + top + height / 2
        self._area.ensureVisible(0, round(middle), 0, round(height / 2) + 4)

    def set_system(self, system: System) -> None:
        """Metric or US units: what is open is opened anew in them."""
        if system != self.system:
            self.system = system
            if self.page is not None:
                self.open(self.lines.opened)

    # ---- asking

    @Slot(object)
    def _another(self, recipe: Recipe) -> None:
        """The recipe is another: what is shown pales until it is answered."""
        self.answers.forget_aim()
        if isinstance(self.page, OpenedOutcome):
            self.page.set_pale()

    @Slot()
    def _another_lane(self) -> None:
        """Another lane is looked at: what was open spoke of the one before."""
        if self.page is not None:
            self._clear()
            self.lines.open("", None)
            self.changed.emit(False)
        self._ask()

    @Slot()
    def _follow(self) -> None:
        """Figures follow at once, also those of a preview; reasons are asked for when something is kept."""
        self._fill_figures()
        if not self.session.previewing:
            self._ask()

    def _ask(self) -> None:
        if self.answers.pale:
            self.lines.put_words(self.lines.words, pale=True)
        self.answers.ask(self.page.key if isinstance(self.page, OpenedOutcome) else "")

    @Slot()
    def _judged(self) -> None:
        """The words on the cheese are there; a line of them that is gone is shut."""
        cheese = self.answers.cheese
        assert cheese is not None
        self.lines.put_words(cheese_words.lines(cheese))
        if isinstance(self.page, WordsPage):
            self.page.put(cheese)
            if self.page.key not in {line.key for line in self.lines.words}:
                self.shut()

    @Slot(object)
    def _aimed(self, found: Aimed | str) -> None:
        """What brings the outcome to the value wanted, or the sentence why nothing does."""
        if not isinstance(self.page, OpenedOutcome):
            return
        if isinstance(found, str):
            self.page.aim.fail(found)
        else:
            self.page.aim.put(found)

    # ---- showing

    @Slot()
    def _fill(self) -> None:
        """Put into what is open all that is known of the recipe as it is kept."""
        page, answers = self.page, self.answers
        if isinstance(page, WordsPage):
            if answers.cheese is not None:
                page.put(answers.cheese)
        elif isinstance(page, OpenedOutcome):
            self._fill_figures()
            if (levers := answers.levers()) is not None:
                ranked = levers.ranked(page.key) if page.key in levers.keys else ()
                settings = (one.setting for one in ranked)
                page.put_levers(ranked, turns_among(self.session.recipe, settings, page.key))
                self._trying.begin(page.levers)
            if (spreads := answers.spreads(page.key)) is not None:
                page.put_bands(spreads)
            if (why := answers.why(page.key)) is not None:
                page.put_why(why.said)
        QTimer.singleShot(0, self, self._follow_the_line)  # once it is laid out

    def _stands(self, one: QWidget) -> tuple[int, int]:
        """Where a widget stands in the list, as one reads: its line, then how far across."""
        middle = one.mapTo(self.lines, QPoint(0, one.height() // 2))
        return middle.y() // LINE_PX, middle.x()

    @Slot()
    def _follow_the_line(self) -> None:
        """The Tab key goes from the line down what is open, before it leaves for the form."""
        if self.page is None:
            return
        inside: list[QWidget] = []
        one = self.page.nextInFocusChain()
        while one is not self.page:
            if self.page.isAncestorOf(one) and one.focusPolicy() & Qt.FocusPolicy.TabFocus:
                inside.append(one)
            one = one.nextInFocusChain()
        inside.sort(key=self._stands)
        for before, after in pairwise((self.lines, *inside)):
            QWidget.setTabOrder(before, after)

    def _fill_figures(self) -> None:
        page, made, verdict = self.page, self.session.seen, self.session.verdict
        if not isinstance(page, OpenedOutcome):
            return
        outcome = made.outcomes.get(page.key)
        if outcome is None:
            if not self.session.previewing:
                self.shut()
            return
        page.aim.suggest(outcome.value)
        rows = tuple(row for row in verdict.rows if row.quantity == page.key) if verdict is not None else ()
        page.put_outcome(outcome, rows)

    # ---- doing

    @Slot(object)
    def _point(self, way: Way | None) -> None:
        if way is None:
            self._show(None)
            self.hinted.emit("")
            return
        try:
            self._show(self._trying.moved(way))
            how = self.tr("{0}: click, + or − keeps it").format(undo_text(way, self.system))
            sure = (
                self.page.levers.band_words(way.setting.path, way.sign) if isinstance(self.page, OpenedOutcome) else ""
            )
            self.hinted.emit(f"{how} {sure}".rstrip())
        except RecipeError as error:
            self._show(None)
            self.hinted.emit(str(error))

    @Slot(object)
    def _show(self, recipe: Recipe | None) -> None:
        if recipe is None:
            self.session.drop_preview()
        else:
            self.session.preview(recipe)

    @Slot(object)
    def _keep(self, way: Way) -> None:
        try:
            made = self._trying.moved(way)
            self.session.march(made)
        except RecipeError as error:
            self.session.drop_preview()
            self.said.emit(str(error))
            return
        self.session.commit(made, undo_text(way, self.system), key=("lever", way.setting.path, way.sign))
        self.hinted.emit(self.tr("Kept: {0}").format(undo_text(way, self.system)))

    @Slot(float, object)
    def _aim(self, value: float, locks: Locks) -> None:
        if isinstance(self.page, OpenedOutcome):
            self.answers.aim_at(self.page.key, value, locks)

    def lock(self, setting: Movable | None) -> None:
        """Lock a setting for the aim of the outcome that is open, or free it; what can't be done is said."""
        if setting is None:
            self.hinted.emit(self.tr("Nothing to lock here: go to a handle or a field that moves the cheese."))
        elif not isinstance(self.page, OpenedOutcome):
            self.hinted.emit(self.tr("Open an outcome first: a lock keeps a setting while you aim at a value."))
        else:
            self.page.aim.turn_lock(setting)
            locked = setting.path in self.page.aim.locks
            said = self.tr("Locked: {0}") if locked else self.tr("Free again: {0}")
            self.hinted.emit(said.format(setting.title))

    @Slot(object)
    def _take_aim(self, found: Aimed) -> None:
        text = joined(change.sentence(self.system) for change in found.changes)
        self.session.commit(found.recipe, self.tr("Aim: {0}").format(text))

    # ---- end

    @property
    def idle(self) -> bool:
        """True where every answer is there."""
        return self.answers.idle

    def stop(self) -> None:
        """Stop what runs beside the window."""
        self._trying.stop()
        self.answers.stop()
