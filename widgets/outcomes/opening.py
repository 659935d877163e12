"""Opens the lines of the outcomes, asks beside the window for what stands in them, and does what is chosen there.

What is tried goes through the session's preview; what is kept is one step of undo.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from itertools import pairwise
from typing import Any, Final

from PySide6.QtCore import QObject, QPoint, Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QScrollArea, QWidget

from designer.forecast import Forecast
from designer.judge.aim import Aimed, AimError, aim, at
from designer.judge.explain import Explanation, explain, outcomes_of
from designer.judge.freedom import style_of
from designer.judge.levers import Levers, Spread, levers, spreads
from designer.judge.movable import Movable, movables, moved
from designer.language import joined
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.units import System
from widgets.outcomes import cheese_words
from widgets.outcomes.asking import Asker, Question, Stop, StoppedError
from widgets.outcomes.cheese_words import Cheese, WordsPage
from widgets.outcomes.lever_list import Way, undo_text
from widgets.outcomes.opened import OpenedOutcome
from widgets.outcomes.outcome_list import OutcomeList
from widgets.session import Session

LINE_PX: Final = 12
"""What stands less apart in height stands on one line."""


@dataclass(frozen=True, slots=True)
class Seen:
    """What a question was asked of: the very recipe, and the lane looked at."""

    recipe: Recipe
    lane: str | None

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Seen) and self.recipe is other.recipe and self.lane == other.lane


BESIDE_MS: Final = 30
"""How far apart the forecasts of what may be pointed at next are made; none while something is tried."""
BANDED: Final = 5
"""How many of the strongest effects are given a band."""


def why(made: Forecast, key: str, stop: Stop) -> Explanation | None:
    """The explanation of an outcome; gives up when it is no longer asked."""
    style = style_of(made.recipe, made.branch_id)
    if style is None:
        return None

    def measure(recipe: Recipe) -> Mapping[str, float]:
        if stop():
            raise StoppedError
        return outcomes_of(recipe, made.branch_id)

    return explain(made, key, style, measure=measure)


def aimed(
    recipe: Recipe, lane: str | None, key: str, value: float, locks: frozenset[tuple[str, str]]
) -> Aimed | str:  # fmt: skip
    """What aim finds, or the sentence why it can't be looked for."""
    try:
        return aim(recipe, [at(key, value)], branch=lane, locks=locks, style=style_of(recipe, lane))
    except AimError as error:
        return str(error)


def noted(known: list[Levers], found: Levers) -> Levers:
    """Effects just worked out, kept for the question after."""
    known.append(found)
    return found


def strongest(recipe: Recipe, lane: str | None, key: str, known: list[Levers]) -> tuple[Spread, ...]:
    """Bands of the effects that move an outcome most; none where the effects could not be worked out."""
    if not known or key not in known[0].keys:
        return ()
    return spreads(recipe, key, known[0].ranked(key)[:BANDED], branch=lane)


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
        self.cheese: Cheese | None = None
        self._area = area
        self._asker = Asker(self)
        self._asker.answered.connect(self._take)
        self._asker.failed.connect(self._fail)
        self._levers: tuple[Seen, Levers] | None = None
        self._spreads: tuple[Seen, str, tuple[Spread, ...]] | None = None
        self._why: tuple[Seen, str, Explanation | None] | None = None
        self._judged: Forecast | None = None
        self._wanted: tuple[float, frozenset[tuple[str, str]]] | None = None
        self._tried: tuple[Seen, dict[tuple[tuple[str, str], int], Recipe]] | None = None
        self._next = QTimer(self)
        self._next.setInterval(BESIDE_MS)
        self._next.timeout.connect(self._look_ahead)
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
        self._wanted = None
        self._next.stop()
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
        self._wanted = None
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

    @property
    def _seen(self) -> Seen:
        return Seen(self.session.recipe, self.session.lane)

    def _ask(self) -> None:
        made, seen = self.session.seen, self._seen
        recipe, lane = seen.recipe, seen.lane
        asked: dict[str, Question] = {}
        last: dict[str, Question] = {}
        if isinstance(self.page, OpenedOutcome):
            key = self.page.key
            known: list[Levers] = []
            if self._levers is not None and self._levers[0] == seen:
                known.append(self._levers[1])
            else:
                asked["levers"] = lambda _: (seen, noted(known, levers(recipe, branch=lane)))
            if self._why is None or self._why[:2] != (seen, key):
                asked["why"] = lambda stop: (seen, key, why(made, key, stop))
            if self._wanted is not None:
                value, locks = self._wanted
                asked["aim"] = lambda _: (seen, key, aimed(recipe, lane, key, value, locks))
            if self._spreads is None or self._spreads[:2] != (seen, key):
                last["spreads"] = lambda _: (seen, key, strongest(recipe, lane, key, known))
        if self._judged is not made:
            asked["cheese"] = lambda _: (made, cheese_words.cheese(made, style_of(recipe, lane)))
            self.lines.put_words(self.lines.words, pale=True)
        self._asker.ask(asked | last)

    @Slot(str, object)
    def _take(self, name: str, answer: Any) -> None:
        if name == "levers":
            self._levers = answer
        elif name == "spreads":
            self._spreads = answer
        elif name == "why":
            self._why = answer
        elif name == "cheese":
            self._judged, self.cheese = answer
            if isinstance(self.page, WordsPage):
                self.page.put(self.cheese)
            self.lines.put_words(cheese_words.lines(self.cheese))
            if isinstance(self.page, WordsPage) and self.page.key not in {line.key for line in self.lines.words}:
                self.shut()
            return
        elif isinstance(self.page, OpenedOutcome):
            self._wanted = None
            found = answer[2]
            if isinstance(found, str):
                self.page.aim.fail(found)
            else:
                self.page.aim.put(found)
            return
        self._fill()

    @Slot(str, str)
    def _fail(self, name: str, sentence: str) -> None:
        self._wanted = None if name == "aim" else self._wanted
        if isinstance(self.page, OpenedOutcome) and name == "aim":
            self.page.aim.fail(sentence)
        else:
            self.hinted.emit(sentence)

    # ---- showing

    def _fill(self) -> None:
        """Put into what is open all that is known of the recipe as it is kept."""
        page, seen = self.page, self._seen
        if isinstance(page, WordsPage):
            if self.cheese is not None:
                page.put(self.cheese)
        elif isinstance(page, OpenedOutcome):
            self._fill_figures()
            if self._levers is not None and self._levers[0] == seen:
                known = self._levers[1]
                page.put_levers(known.ranked(page.key) if page.key in known.keys else ())
                self._next.start()
            if self._spreads is not None and self._spreads[:2] == (seen, page.key):
                page.put_bands(self._spreads[2])
            if self._why is not None and self._why[:2] == (seen, page.key):
                page.put_why(self._why[2])
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

    def _moved(self, way: Way) -> Recipe:
        """The recipe with a setting a step on from where it stands now. RecipeError where that can't be."""
        if self._tried is None or self._tried[0] != self._seen:
            self._tried = self._seen, {}
        tried, key = self._tried[1], (way.setting.path, way.sign)
        if key not in tried:
            now = {one.path: one for one in movables(self.session.recipe, self.session.lane)}
            setting = now.get(way.setting.path, way.setting)
            tried[key] = moved(self.session.recipe, setting, round(setting.value + way.sign * way.setting.step, 9))
        return tried[key]

    @Slot()
    def _look_ahead(self) -> None:
        """Forecast one more way of the strongest settings, so that pointing at it shows it at once."""
        page = self.page
        ways = page.levers.ways() if isinstance(page, OpenedOutcome) and not self.session.trouble else []
        tried = self._tried[1] if self._tried is not None and self._tried[0] == self._seen else {}
        way = next((one for one in ways if (one.setting.path, one.sign) not in tried), None)
        if way is None:
            self._next.stop()
        elif not self.session.previewing:
            try:
                self.session.march(self._moved(way))
            except RecipeError:
                self._next.stop()  # what is wrong with it is said when it is pointed at

    @Slot(object)
    def _point(self, way: Way | None) -> None:
        if way is None:
            self._show(None)
            self.hinted.emit("")
            return
        try:
            self._show(self._moved(way))
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
            made = self._moved(way)
            self.session.march(made)
        except RecipeError as error:
            self.session.drop_preview()
            self.said.emit(str(error))
            return
        self.session.commit(made, undo_text(way, self.system), key=("lever", way.setting.path, way.sign))
        self.hinted.emit(self.tr("Kept: {0}").format(undo_text(way, self.system)))

    @Slot(float, object)
    def _aim(self, value: float, locks: frozenset[tuple[str, str]]) -> None:
        self._wanted = value, locks
        self._ask()

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
        return self._asker.idle

    def stop(self) -> None:
        """Stop what runs beside the window."""
        self._next.stop()
        self._asker.stop()
