"""House styles are never lost: each change stands in a journal before it is in its file, and after a window has ended.

The file is put in place whole. While a window works on it the journal holds it beside what the file held before, so
that after a kill undo still leads back; a clean close takes it away, unless the file could not be written.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QWidget

from designer.language import say
from styles import house
from styles.reader import HOUSE, Style, StyleError, reads
from widgets import unsaved
from widgets.journal import Journal, Leftover, leftovers
from widgets.outside import standing


@dataclass(frozen=True, slots=True)
class Unsaved:
    """A style as a window that was ended left it; `begun` is what its file held when that work began."""

    style: Style
    begun: Style | None
    overtaken: bool
    """the file holds neither: others changed it since"""
    leftover: Leftover

    def drop(self) -> None:
        """Forget it."""
        self.leftover.drop()


class Keeping:
    """Writes the styles of one window: to a journal, then to their files."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._journals: dict[Path, Journal] = {}
        self._begun: dict[Path, str] = {}
        self._unwritten: set[Path] = set()

    def write(self, made: Style, path: Path) -> None:
        """Put a style into its file at once. StyleError where that failed, or the file can't be read: it is in the
        journal then."""
        there = standing(path)
        begun = self._begun.setdefault(path, there or "")
        text = house.writes(made)
        journal = self._journals.setdefault(path, Journal(self._folder))
        problem = journal.write(text, made.name, path, begun)
        self._unwritten.add(path)
        known = _style(there, path) if there is not None else None
        if there is not None and known is None:
            raise StyleError(
                say(
                    "{file} can't be read as it stands now, so it is not written over. Mend it or take it away: "
                    "the next change here is written again.",
                    file=path.name,
                )
            )
        if known != made:
            house.write(made, path)
        self._unwritten.discard(path)
        if begun and _style(begun, path) == made:
            journal.clear()
        if problem:
            raise StyleError(problem)

    def left(self, path: Path) -> Unsaved | None:
        """What an ended window left of this style, the newest; None where that is nothing."""
        for one in leftovers(self._folder):
            if one.recipe_path == path and (made := _style(one.text, path)) is not None:
                begun, now = _style(one.base, path), _style(standing(path) or "", path)
                if made == begun:
                    one.drop()
                    continue
                return Unsaved(made, begun, now not in (made, begun), one)
        return None

    def go_on(self, left: Unsaved) -> Style | None:
        """Its work goes on here: the journal keeps what it began from; that style, None where there was no file."""
        if left.begun is not None and left.leftover.recipe_path is not None:
            self._begun[left.leftover.recipe_path] = left.leftover.base
        return left.begun

    def close(self) -> None:
        """What stands in its file needs no journal; the rest is left to whoever opens next."""
        for path, journal in self._journals.items():
            if path in self._unwritten:
                journal.let_go()
            else:
                journal.clear()


def _style(text: str, path: Path) -> Style | None:
    try:
        return reads(text, key=path.name.removesuffix(HOUSE), file=path.name)
    except StyleError:
        return None


def ask(parent: QWidget, left: Unsaved, take: Callable[[Unsaved], None]) -> None:
    """Ask about work that its file has not and that others have changed since."""

    def answered(answer: unsaved.Answer) -> None:
        if answer is unsaved.Answer.TAKE_UP:
            take(left)
        elif answer is unsaved.Answer.FORGET:
            left.drop()

    changed = QCoreApplication.translate("Recovery", "The file was changed since that work began.")
    unsaved.ask(parent, left.style.name, changed, answered)
