"""The recovery journal: every edit that is kept is written at once, so that a crash or a power cut loses nothing.

One file a window in the user's data folder, put in place atomically; it names the recipe's file and the process that
writes it. A journal whose process is gone is offered at the next start; a clean close takes its own away.
"""

from __future__ import annotations

import json
import os
import uuid
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QSaveFile


@dataclass(frozen=True, slots=True)
class Leftover:
    """Work that was not saved when its window ended."""

    journal: Path
    recipe_path: Path | None
    name: str
    text: str

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

    def write(self, text: str, name: str, recipe_path: Path | None) -> str:
        """Put the recipe's text in place of what the journal held; "" or a sentence about why that failed."""
        held = {"pid": os.getpid(), "name": name, "path": str(recipe_path) if recipe_path else "", "text": text}
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            return _unwritten(error.strerror or error)
        out = QSaveFile(str(self.file))
        if not out.open(QSaveFile.OpenModeFlag.WriteOnly):
            return _unwritten(out.errorString())
        out.write(json.dumps(held, ensure_ascii=False).encode())
        return "" if out.commit() else _unwritten(out.errorString())

    def clear(self) -> None:
        """Nothing is unsaved any more."""
        self.file.unlink(missing_ok=True)


def leftovers(folder: Path) -> list[Leftover]:
    """Journals whose process is gone, newest first; files that can't be read are passed over and left alone."""
    made = []
    found = (
        sorted(folder.glob("*.json"), key=lambda path: path.stat().st_mtime, reverse=True) if folder.is_dir() else []
    )
    for file in found:
        try:
            held = json.loads(file.read_text(encoding="utf-8"))
            pid, text = int(held["pid"]), str(held["text"])
            path, name = str(held["path"]), str(held["name"])
        except (OSError, ValueError, KeyError, TypeError):
            continue
        if not _running(pid):
            made.append(Leftover(file, Path(path) if path else None, name, text))
    return made


def _running(pid: int) -> bool:
    """True where a process of this number runs (it may be another program that took the number: then we ask later)."""
    if pid == os.getpid():
        return True
    if os.name == "nt":
        import ctypes

        handle = ctypes.windll.kernel32.OpenProcess(0x1000, False, pid)
        if handle:
            ctypes.windll.kernel32.CloseHandle(handle)
        return bool(handle)
    try:
        os.kill(pid, 0)
    except ProcessLookupError:
        return False
    except PermissionError:
        return True
    return True
