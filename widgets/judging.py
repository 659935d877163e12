"""What a forecast is held against in the window: the style its recipe names, and the rule sets chosen for it."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from PySide6.QtCore import QCoreApplication

from designer.forecast import Forecast
from designer.judge.check import check
from designer.judge.verdict import Verdict
from styles.reader import Style, StyleError, adopt, house_keys, style, styles
from widgets.preferences import Preferences


@lru_cache(maxsize=64)
def known_style(key: str) -> Style | None:
    """The style of a key, None where there is none; remembered, because it is asked for in every frame of a drag."""
    try:
        return style(key) if key else None
    except StyleError:
        return None


def why_not(key: str) -> str:
    """Why a style a recipe names can't be checked against, a sentence; "" where it can, or none is named."""
    try:
        if key:
            style(key)
    except StyleError as error:
        return str(error)
    return ""


def adopt_beside(path: Path | None) -> None:
    """House styles are those beside this recipe, and what was remembered of others is forgotten; None: there are none.

    Called also when a house style has been changed.
    """
    adopt(path.resolve().parent if path is not None else Path(__file__).parent)
    known_style.cache_clear()


def house_names() -> list[tuple[str, str]]:
    """(key, name) of the house styles beside the recipe; one that can't be read goes by its key."""
    known = ((key, known_style(key)) for key in house_keys())
    return sorted(((key, one.name if one is not None else key) for key, one in known), key=lambda pair: pair[1].lower())


def style_names() -> list[tuple[str, str]]:
    """(key, name) of every style that can be chosen: one's own first, then those that come with the program."""
    own = QCoreApplication.translate("Style", "{0} (own)")
    return [(key, own.format(name)) for key, name in house_names()] + [(one.key, one.title) for one in styles()]


class Judging:
    """The check of a session, by the rule sets the maker chose for each style."""

    def __init__(self, preferences: Preferences) -> None:
        self._preferences = preferences
        self._chosen: dict[str, tuple[str, ...] | None] = {}

    def __call__(self, made: Forecast) -> Verdict | None:
        """The verdict on a forecast, None where the recipe names no style we know."""
        known = known_style(made.recipe.style_of(made.branch_id))
        return None if known is None else check(made, known, rules=self.chosen(known))

    def chosen(self, known: Style) -> tuple[str, ...] | None:
        """Keys of the rule sets chosen for a style; None: those that bind any maker of it."""
        if known.key not in self._chosen:
            self._chosen[known.key] = self._preferences.rules_of(known.key)
        chosen = self._chosen[known.key]
        if chosen is None:
            return None
        have = {rules.key for rules in known.rules}
        return tuple(key for key in chosen if key in have)

    def choose(self, style_key: str, keys: tuple[str, ...] | None) -> None:
        """Judge by these rule sets from now on; None: by those that bind any maker."""
        self._chosen[style_key] = keys
        self._preferences.set_rules(style_key, keys)


def judged(made: Forecast) -> Verdict | None:
    """The verdict by the rule sets that bind any maker, None where the recipe names no style we know."""
    known = known_style(made.recipe.style_of(made.branch_id))
    return check(made, known) if known is not None else None
