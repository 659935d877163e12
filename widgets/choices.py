"""What the maker chooses once for all recipes: language, decimal mark, and the measure of each group of quantities.

Measures hold at once; language and decimal mark from the next start on, so that nothing stands in two languages.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Final, get_args

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication
from PySide6.QtWidgets import QMenu

from designer.language import word
from designer.unit_kinds import Measure, choose, measure
from widgets import wording
from widgets.actions import Actions, Spec
from widgets.preferences import Preferences

N = QT_TRANSLATE_NOOP
MEASURES: Final[Mapping[str, tuple[str, Mapping[str, str]]]] = {
    "temperature": (N("Choices", "&Temperatures"), {"metric": "°C", "us": "°F"}),
    "volume": (N("Choices", "&Volumes"), {"metric": "L", "us": "US gal", "imperial": "imp gal"}),
    "mass": (N("Choices", "&Masses"), {"metric": "kg, g", "us": "lb"}),
    "length": (N("Choices", "&Lengths"), {"metric": "mm", "us": "in"}),
    "pressure": (N("Choices", "&Pressures"), {"metric": "kPa", "us": "psi"}),
}
"""Group of quantities: what it is called, and the unit of each measure it may be told in."""


class Choices:
    """The choices of a window. `shown` is called with the system of measures when it changes."""

    def __init__(self, kept: Preferences, shown: Callable[[str], None], said: Callable[[str], object]) -> None:
        self._kept, self._shown, self._said = kept, shown, said
        choose(kept.measures)

    def specs(self) -> list[Spec]:
        """The actions, all of which stay on."""

        def one(key: str, text: str, does: Callable[[], None], group: str) -> Spec:
            return Spec(key, text, does, "", "", True, group)

        made = [
            one("metric", N("Actions", "&Metric units"), lambda: self.set_system("metric"), "units"),
            one("us", N("Actions", "&US units"), lambda: self.set_system("us"), "units"),
            one("imperial", N("Actions", "&Imperial units"), lambda: self.set_system("imperial"), "units"),
            one("own", N("Actions", "&Each as chosen"), lambda: self.set_system("own"), "units"),
            one("language_system", N("Actions", "Language of the &system"), lambda: self._speak("system"), "language"),
            one("language_en", N("Actions", "English"), lambda: self._speak("en"), "language"),
            one("language_fr", N("Actions", "Français"), lambda: self._speak("fr"), "language"),
            one("mark_language", N("Actions", "Decimal mark of the &language"), lambda: self._mark("language"), "mark"),
            one("mark_comma", N("Actions", "Decimal &comma"), lambda: self._mark("comma"), "mark"),
            one("mark_point", N("Actions", "Decimal &point"), lambda: self._mark("point"), "mark"),
        ]
        for group, (_, units) in MEASURES.items():
            for key, unit in units.items():
                made.append(one(f"{group}_{key}", word(unit, "unit"), self._setting(group, key), group))
        return made

    def fill(self, menu: QMenu, actions: Actions) -> None:
        """Put the choices into a menu."""
        units = menu.addMenu(QCoreApplication.translate("Choices", "&Units"))
        units.addActions([actions[key] for key in ("metric", "us", "imperial", "own")])
        units.addSeparator()
        for group, (name, each) in MEASURES.items():
            own = units.addMenu(QCoreApplication.translate("Choices", name))
            own.addActions([actions[f"{group}_{key}"] for key in each])
        spoken = menu.addMenu(QCoreApplication.translate("Choices", "&Language and numbers"))
        spoken.addActions([actions[f"language_{key}"] for key in ("system", "en", "fr")])
        spoken.addSeparator()
        spoken.addActions([actions[f"mark_{key}"] for key in ("language", "comma", "point")])

    def show(self, actions: Actions) -> None:
        """Tick what is chosen."""
        actions[self._kept.system].setChecked(True)
        actions[f"language_{self._kept.language}"].setChecked(True)
        actions[f"mark_{self._kept.mark}"].setChecked(True)
        for group, (_, units) in MEASURES.items():
            here = measure(wording.system_of(self._kept.system), group)
            actions[f"{group}_{here if here in units else 'us'}"].setChecked(True)

    def set_system(self, system: str) -> None:
        """One measure for everything, or each as chosen."""
        self._kept.system = system
        self._shown(system)

    def set_measure(self, group: str, key: str) -> None:
        """Another measure for one group; the others stay as they are told now."""
        system = wording.system_of(self._kept.system)
        own: dict[str, Measure] = {each: measure(system, each) for each in MEASURES}
        own[group] = next(one for one in get_args(Measure) if one == key)
        self._kept.measures = own
        choose(own)
        self._shown("metric")  # so that what stands in "own" already is told anew
        self.set_system("own")

    def _setting(self, group: str, key: str) -> Callable[[], None]:
        return lambda: self.set_measure(group, key)

    def _speak(self, language: str) -> None:
        self._kept.language = language
        self._from_next_start()

    def _mark(self, mark: str) -> None:
        self._kept.mark = mark
        self._from_next_start()

    def _from_next_start(self) -> None:
        self._said(QCoreApplication.translate("Choices", "This holds from the next start of the program."))
