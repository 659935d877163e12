"""Settings tried a step on: where a way leads is worked out once, for the strongest before they are pointed at."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QObject, QTimer, Slot

from designer.judge.movable import movables, moved
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from widgets.outcomes.answers import Seen
from widgets.outcomes.lever_list import LeverList, Way
from widgets.session import Session

BESIDE_MS: Final = 30
"""How far apart the forecasts of what may be pointed at next are made; none while something is tried."""


class Trying(QObject):
    """The ways of the list that is open, each as the recipe it leads to."""

    def __init__(self, session: Session, parent: QObject) -> None:
        super().__init__(parent)
        self._session = session
        self._list: LeverList | None = None
        self._made: tuple[Seen, dict[tuple[tuple[str, str], int], Recipe]] | None = None
        self._next = QTimer(self)
        self._next.setInterval(BESIDE_MS)
        self._next.timeout.connect(self._look_ahead)

    @property
    def _known(self) -> dict[tuple[tuple[str, str], int], Recipe]:
        """What was made of the recipe as it is kept, by path of the setting and sign."""
        seen = Seen(self._session.recipe, self._session.lane)
        if self._made is None or self._made[0] != seen:
            self._made = seen, {}
        return self._made[1]

    def moved(self, way: Way) -> Recipe:
        """The recipe with a setting a step on from where it stands now. RecipeError where that can't be."""
        known, key = self._known, (way.setting.path, way.sign)
        if key not in known:
            now = {one.path: one for one in movables(self._session.recipe, self._session.lane)}
            setting = now.get(way.setting.path, way.setting)
            known[key] = moved(self._session.recipe, setting, round(setting.value + way.sign * way.setting.step, 9))
        return known[key]

    def begin(self, shown: LeverList) -> None:
        """Forecast the ways of a list, one after another."""
        self._list = shown
        self._next.start()

    def stop(self) -> None:
        """Forecast no more of them."""
        self._list = None
        self._next.stop()

    @Slot()
    def _look_ahead(self) -> None:
        """Forecast one more way of the strongest settings, so that pointing at it shows it at once."""
        ways = self._list.ways() if self._list is not None and not self._session.trouble else []
        known = self._known
        way = next((one for one in ways if (one.setting.path, one.sign) not in known), None)
        if way is None:
            self._next.stop()
        elif not self._session.previewing:
            try:
                self._session.march(self.moved(way))
            except RecipeError:
                self._next.stop()  # what is wrong with it is said when it is pointed at
