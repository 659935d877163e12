"""What the program remembers between two starts: units, theme, recent files, where the window stood."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path
from typing import Final, get_args

from PySide6.QtCore import QByteArray, QLocale, QObject, QSettings, Signal

from designer.unit_kinds import GROUPS, Measure
from widgets.theme.apply import SCHEMES

SYSTEMS: Final = ("metric", "us", "imperial", "own")
LANGUAGES: Final = ("system", "en", "fr")
MARKS: Final = ("language", "point", "comma")
RECENT: Final = 9


class Preferences(QObject):
    """Read from and written to one INI file."""

    changed = Signal()

    def __init__(self, path: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.file = path
        self._store = QSettings(str(path), QSettings.Format.IniFormat, self)

    def _text(self, key: str, default: str, allowed: tuple[str, ...]) -> str:
        value = str(self._store.value(key, default))
        return value if value in allowed else default

    @property
    def system(self) -> str:
        """Units of measure: one of `SYSTEMS`; at first what the system's region uses."""
        us = QLocale.system().measurementSystem() == QLocale.MeasurementSystem.ImperialUSSystem
        return self._text("units", "us" if us else "metric", SYSTEMS)

    @system.setter
    def system(self, value: str) -> None:
        self._keep("units", value)

    @property
    def measures(self) -> dict[str, Measure]:
        """The measure of each group of quantities, for the system "own"."""
        groups = sorted(set(GROUPS.values()))
        kept = {group: self._text(f"measures/{group}", "metric", get_args(Measure)) for group in groups}
        return {group: one for group, said in kept.items() for one in get_args(Measure) if one == said}

    @measures.setter
    def measures(self, value: Mapping[str, Measure]) -> None:
        for group, said in value.items():
            self._keep(f"measures/{group}", said)

    @property
    def language(self) -> str:
        """Language of the window from the next start on: one of `LANGUAGES`."""
        return self._text("language", "system", LANGUAGES)

    @language.setter
    def language(self, value: str) -> None:
        self._keep("language", value)

    @property
    def mark(self) -> str:
        """Decimal mark, from the next start on: one of `MARKS`."""
        return self._text("mark", "language", MARKS)

    @mark.setter
    def mark(self, value: str) -> None:
        self._keep("mark", value)

    @property
    def scheme(self) -> str:
        """Theme: one of `SCHEMES`."""
        return self._text("theme", "system", SCHEMES)

    @scheme.setter
    def scheme(self, value: str) -> None:
        self._keep("theme", value)

    @property
    def keep_end(self) -> bool:
        """True where the stage after an edge takes up the change, so that the end is kept."""
        return self._text("edges", "later", ("later", "keep")) == "keep"

    @keep_end.setter
    def keep_end(self, value: bool) -> None:
        self._keep("edges", "keep" if value else "later")

    @property
    def remembered(self) -> list[Path]:
        """Files opened or saved lately, newest first, also those that are gone."""
        kept = self._store.value("recent", [], type=list)
        return [Path(str(one)) for one in kept if one] if isinstance(kept, list) else []

    @property
    def recent(self) -> list[Path]:
        """Those of them that are still there."""
        return [path for path in self.remembered if path.is_file()]

    def forget(self, path: Path) -> None:
        """Leave a file out of those opened lately; the file stays where it is."""
        self._keep("recent", [str(one) for one in self.remembered if one != path])

    def remember(self, path: Path) -> None:
        """A file was opened or saved."""
        others = [one for one in self.remembered if one != path.resolve()]
        self._keep("recent", [str(one) for one in [path.resolve(), *others][:RECENT]])

    def rules_of(self, style: str) -> tuple[str, ...] | None:
        """Rule sets chosen for a style, None where none were chosen."""
        kept = self._store.value(f"rules/{style}")
        if kept is None:
            return None
        return tuple(str(one) for one in kept) if isinstance(kept, list) else (str(kept),) if kept else ()

    def set_rules(self, style: str, keys: tuple[str, ...] | None) -> None:
        """Remember rule sets chosen for a style; None forgets them."""
        if keys is None:
            self._store.remove(f"rules/{style}")
        else:
            self._keep(f"rules/{style}", list(keys))

    @property
    def look_around(self) -> bool:
        """True until the look around the window was closed for good."""
        return self._text("look_around", "offer", ("offer", "seen")) == "offer"

    @look_around.setter
    def look_around(self, value: bool) -> None:
        self._keep("look_around", "offer" if value else "seen")

    @property
    def hours(self) -> tuple[float, float] | None:
        """Working hours, minutes of the day; None: not marked."""
        kept = [self._store.value(f"hours/{name}") for name in ("from", "to")]
        try:
            start, end = (float(str(one)) for one in kept)
        except ValueError:
            return None
        return (start, end) if 0.0 <= start < 1440.0 and 0.0 <= end < 1440.0 and start != end else None

    @hours.setter
    def hours(self, value: tuple[float, float] | None) -> None:
        if value is None:
            self._store.remove("hours")
            self.changed.emit()
        else:
            for name, one in zip(("from", "to"), value, strict=True):
                self._keep(f"hours/{name}", one)

    @property
    def geometry(self) -> QByteArray:
        """Where the window stood; empty at first."""
        value = self._store.value("window", QByteArray())
        return value if isinstance(value, QByteArray) else QByteArray()

    @geometry.setter
    def geometry(self, value: QByteArray) -> None:
        self._store.setValue("window", value)

    def _keep(self, key: str, value: object) -> None:
        self._store.setValue(key, value)
        self._store.sync()
        self.changed.emit()
