"""The recovery journal: every edit that is kept is written at once, so that a crash or a power cut loses nothing.

One file a window in the user's data folder, put in place atomically, beside a lock that its window holds. A journal
that nobody holds is offered at the next start; a save or a clean close takes its own away.
"""

from __future__ import annotations

import json
import uuid
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QSaveFile

from widgets.hold import Hold


@dataclass(frozen=True, slots=True)
class Leftover:
    """Work that was not saved when its window ended; `base` is what its file held when it was opened, "" for none."""

    journal: Path
    recipe_path: Path | None
    name: str
    text: str
    base: str = ""

    def drop(self) -> None:
        """Forget it."""
        self.journal.unlink(missing_ok=True)


def _unwritten(why: str) -> str:
    return QCoreApplication.translate("Journal", "The recovery copy can't be written: {0}.").format(why)


class Journal:
    """The journal of one window."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.file = folder / f"{uuid.uuid4().hex}.json"
        self._hold = Hold(self.file.with_suffix(".lock"))

    def write(self, text: str, name: str, recipe_path: Path | None, base: str = "") -> str:
        """Put the recipe's text in place of what the journal held; "" or a sentence about why that failed."""
        held = {"name": name, "path": str(recipe_path) if recipe_path else "", "text": text, "base": base}
        try:
            self._hold.take()
        except OSError as error:
            return _unwritten(error.strerror or str(error))
        out = QSaveFile(str(self.file))
        if not out.open(QSaveFile.OpenModeFlag.WriteOnly):
            return _unwritten(out.errorString())
        out.write(json.dumps(held, ensure_ascii=False).encode())
        return "" if out.commit() else _unwritten(out.errorString())

    def clear(self) -> str:
        """Nothing is unsaved any more; "" or a sentence about why the journal stays (it equals the file by then)."""
        try:
            self.file.unlink(missing_ok=True)
            self._hold.drop()
        except OSError as error:
            return _unwritten(error.strerror or str(error))
        return ""

    def let_go(self) -> None:
        """Leave what is written to whoever opens next."""
        self._hold.drop()


def leftovers(folder: Path) -> list[Leftover]:
    """Journals that no window holds, newest first; files that can't be read are passed over and left alone."""
    files = [(path.stat().st_mtime, path) for path in folder.glob("*.json")] if folder.is_dir() else []
    made = []
    for _, file in sorted(files, reverse=True):
        try:
            held = json.loads(file.read_text(encoding="utf-8"))
            text, path, name = str(held["text"]), str(held["path"]), str(held["name"])
            base = str(held.get("base", ""))
            hold = Hold(file.with_suffix(".lock"))
            free = hold.take()
            hold.drop()
        except (OSError, ValueError, KeyError, TypeError, AttributeError):
            continue
        if free:
            made.append(Leftover(file, Path(path) if path else None, name, text, base))
    return made
