"""One recipe being worked on: the document, its undo stack, what a drag shows before it is kept, and the forecast.

Data flows one way: an edit makes a new recipe, the forecast is worked out from it in the same frame, the eyes are
told. Bands follow from a worker. Nothing here draws.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal, Slot
from PySide6.QtGui import QUndoCommand, QUndoStack

from designer.forecast import Forecast
from designer.recipe.document import Branch, Recipe
from designer.recipe.error import RecipeError
from widgets.asking import Asker
from widgets.bands import REST_MS
from widgets.carry import carried
from widgets.remembered import Remembered

MERGE_WITHIN_S = 1.0
"""Nudges of one setting that follow each other this closely are one step of undo."""

Work = Callable[[Recipe], Forecast]
Check = Callable[[Forecast], Any]
Banded = Callable[[Recipe, Callable[[], bool]], Forecast]


class Replace(QUndoCommand):
    """Puts one recipe in place of another. Nudges with the same `key` merge while they follow closely."""

    def __init__(self, session: Session, before: Recipe, after: Recipe, text: str, key: int) -> None:
        super().__init__(text)
        self._session, self._before, self._after, self._key = session, before, after, key
        self._at = time.monotonic()

    def id(self) -> int:
        """Same id: may merge."""
        return self._key

    def redo(self) -> None:
        """Show what comes after."""
        self._session._put(self._after)

    def undo(self) -> None:
        """Show what was before."""
        self._session._put(self._before)

    def takes(self, other: Replace) -> bool:
        """True where the other is a nudge of the same setting and followed closely."""
        return self._key >= 0 and self._key == other._key and other._at - self._at <= MERGE_WITHIN_S

    def mergeWith(self, other: QUndoCommand) -> bool:
        """Take over a nudge of the same setting that followed closely; one that leads back to the start is dropped."""
        if not isinstance(other, Replace) or not self.takes(other):
            return False
        self._after, self._at = other._after, other._at
        self.setText(other.text())
        self.setObsolete(self._after == self._before)
        return True


class Session(QObject):
    """The document of the window. `shown` is what is drawn: the recipe, or the preview while something is dragged."""

    documentChanged = Signal(object)
    """the committed recipe is another"""
    forecastChanged = Signal()
    """`forecast`, `verdict` and `before` are those of `shown`"""
    laneChanged = Signal()
    """another lane is looked at: `seen` and `verdict` are its own"""
    bandsChanged = Signal()
    problem = Signal(str)
    """what is wrong with what is shown, a sentence; "" when it is mended"""
    chosenChanged = Signal(str)
    pathChanged = Signal()
    committed = Signal(object)
    """an edit was kept (also by undo and redo): for the journal"""

    def __init__(
        self, recipe: Recipe, *, nominal: Work, banded: Banded, check: Check, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._nominal, self._check = Remembered(nominal), check
        self.recipe = recipe
        self.shown = recipe
        self.path: Path | None = None
        self.text: str | None = None
        self.chosen = recipe.stages[0].id if recipe.stages else ""
        self.verdict: Any = None
        self.bands_stale = True
        self.trouble = ""
        self._keys: dict[object, int] = {}
        self.stack = QUndoStack(self)
        self._tick = QTimer(self)
        self._tick.setSingleShot(True)
        self._tick.setInterval(0)
        self._tick.timeout.connect(self.settle)
        self._banded = banded
        self._bands = Asker(self, rest_ms=REST_MS)
        self._bands.answered.connect(self._take_bands)
        self.forecast: Forecast = self._nominal(recipe)
        self._kept = self.forecast
        self._kept_before: Forecast | None = None
        self._merging = False
        self.verdict = check(self.seen)
        self._ask_bands(recipe)

    # ---- reading

    @property
    def previewing(self) -> bool:
        """True while what is shown is not what is kept."""
        return self.shown is not self.recipe

    @property
    def modified(self) -> bool:
        """True where there is something to save."""
        return not self.stack.isClean()

    @property
    def lane(self) -> str | None:
        """Id of the branch that is looked at, None: the main make. It is the one that holds the selected stage."""
        return next(
            (branch.id for branch in self.recipe.branches if any(one.id == self.chosen for one in branch.stages)), None
        )

    @property
    def seen(self) -> Forecast:
        """The forecast of the lane that is looked at."""
        lane = self.lane
        return next((one for one in self.forecast.branches if one.branch_id == lane), self.forecast)

    def march(self, recipe: Recipe) -> Forecast:
        """A forecast of another recipe, without bands; RecipeError where it can't be."""
        return self._nominal(recipe)

    # ---- files

    def load(self, recipe: Recipe, path: Path | None, text: str | None) -> None:
        """Begin anew with a recipe; `text` is what its file holds, so that comments are kept on saving."""
        self.stack.clear()
        self.path, self.text = path, text
        self._kept_before = None
        self._keys.clear()
        self.recipe = self.shown = recipe
        self.documentChanged.emit(recipe)
        self.choose(recipe.stages[0].id)
        before = self.forecast
        self._merging = True
        self.settle()
        self._merging = False
        if self.forecast is before:
            self.judge_again()  # the same recipe beside other house styles
        self.pathChanged.emit()

    def saved(self, path: Path, text: str) -> None:
        """What is kept now stands in a file."""
        self.path, self.text = path, text
        self.stack.setClean()
        self.pathChanged.emit()

    # ---- editing

    def preview(self, recipe: Recipe) -> None:
        """Show a recipe without keeping it; several within one frame collapse into one forecast."""
        if recipe != self.shown:
            self.shown = recipe
            self._tick.start()

    def drop_preview(self) -> None:
        """Back to what is kept."""
        if self.previewing:
            self.shown = self.recipe
            self.settle()

    def commit(self, recipe: Recipe, text: str, *, key: object = None) -> None:
        """Keep a recipe as one step of undo; steps with an equal `key` that follow closely merge."""
        if recipe == self.recipe:
            self.drop_preview()
            return
        number = -1 if key is None else self._keys.setdefault(key, len(self._keys) + 1)
        step = Replace(self, self.recipe, recipe, text, number)
        top = self.stack.command(self.stack.index() - 1) if self.stack.index() else None
        self._merging = isinstance(top, Replace) and top.takes(step) and not self.stack.isClean()
        self.stack.push(step)
        self._merging = False

    def choose(self, stage_id: str) -> None:
        """Select a stage."""
        if stage_id == self.chosen:
            return
        before = self.lane
        self.chosen = stage_id
        if self.lane != before:
            self.verdict = self._check(self.seen)
            self.laneChanged.emit()
        self.chosenChanged.emit(stage_id)

    def choose_lane(self, branch_id: str | None) -> None:
        """Look at a branch, or at the main make: its first stage is selected."""
        if branch_id != self.lane:
            lane = self.recipe if branch_id is None else self.recipe.branch(branch_id)
            self.choose(lane.stages[0].id)

    def _put(self, recipe: Recipe) -> None:
        self.recipe = self.shown = recipe
        self.documentChanged.emit(recipe)
        if self.chosen not in {stage.id for lane in recipe.lanes() for stage in lane.stages}:
            self.choose(recipe.stages[0].id)
        self.settle()
        self.committed.emit(recipe)

    # ---- forecast

    @property
    def before(self) -> Forecast | None:
        """The forecast before the last edit: while something is dragged, that of what is kept."""
        return self._kept if self.previewing else self._kept_before

    def agreed_min(self) -> float:
        """Up to this minute what is shown goes as what is kept does; 0 where all of it may differ."""
        kept, shown = self._kept.recipe, self.shown
        rest = {"stages": kept.stages, "branches": kept.branches}
        if _kinds(kept) != _kinds(shown) or shown.model_copy(update=rest) != kept:
            return 0.0
        return min(_agreed_min(*lane) for lane in zip(self._kept.lanes, kept.lanes(), shown.lanes(), strict=True))

    @Slot()
    def settle(self) -> None:
        """Work out the forecast and verdict of what is shown, now."""
        self._tick.stop()
        if self.forecast.recipe != self.shown:
            try:
                new = self._nominal(self.shown)
            except RecipeError as error:
                self._say(str(error))
                return
            self.forecast = carried(self.forecast, new)
            self.verdict = self._check(self.seen)
            self.bands_stale = True
            self._ask_bands(self.shown)
        if not self.previewing:
            if not self._merging and self._kept.recipe != self.forecast.recipe:
                self._kept_before = self._kept
            self._kept = self.forecast
        self._say("")
        self.forecastChanged.emit()

    def judge_again(self) -> None:
        """The style or the rules are others: the same forecast, judged anew."""
        self.verdict = self._check(self.seen)
        self.forecastChanged.emit()

    def _say(self, sentence: str) -> None:
        if sentence != self.trouble:
            self.trouble = sentence
            self.problem.emit(sentence)

    def _ask_bands(self, recipe: Recipe) -> None:
        banded = self._banded
        self._bands.ask({"bands": lambda stop: banded(recipe, stop)})

    @Slot(str, object)
    def _take_bands(self, _: str, forecast: Forecast) -> None:
        recipe = forecast.recipe
        if forecast.bands is not None and (recipe is self.forecast.recipe or recipe == self.forecast.recipe):
            self.forecast = forecast
            if not self.previewing:
                self._kept = forecast
            self.verdict = self._check(self.seen)
            self.bands_stale = False
            self.bandsChanged.emit()

    def hold_bands(self) -> None:
        """Work out no bands until `release_bands`: the first picture has the machine to itself."""
        self._bands.hold()

    def release_bands(self) -> None:
        """Begin with the bands of what is shown."""
        self._bands.release()

    def close(self) -> None:
        """Stop what runs beside the window."""
        self._tick.stop()
        self._bands.stop()


def _kinds(recipe: Recipe) -> list[list[tuple[str, str]]]:
    """What stands where, in every lane: where that differs, what came before may differ too."""
    return [[(stage.id, stage.kind) for stage in lane.stages] for lane in recipe.lanes()]


def _agreed_min(forecast: Forecast, kept: Recipe | Branch, shown: Recipe | Branch) -> float:
    """Up to where a lane goes as it did: to its first stage that is another, or to where it parts."""
    if isinstance(kept, Branch) and kept.model_copy(update={"stages": ()}) != shown.model_copy(update={"stages": ()}):
        return forecast.stages[0].start_min
    other = (index for index, pair in enumerate(zip(kept.stages, shown.stages, strict=True)) if pair[0] != pair[1])
    first = next(other, len(forecast.stages))
    return forecast.stages[first].start_min if first < len(forecast.stages) else forecast.stages[-1].end_min
