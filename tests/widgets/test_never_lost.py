"""Any order of edits, undo, saves, reloads and crashes: what was kept is found again, and the file is always whole."""

from __future__ import annotations

import tempfile
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    initialize,
    invariant,
    precondition,
    rule,
    run_state_machine_as_test,
)
from PySide6.QtWidgets import QApplication, QWidget

from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.file import read, reads
from designer.recipe.versions import recipe_of, versions
from tests.widgets.conftest import CHEDDAR
from tests.widgets.test_session import EDITS, changed, told
from widgets import recovery
from widgets.files import FileWork
from widgets.journal import Journal, leftovers
from widgets.preferences import Preferences
from widgets.session import Session


class Keeping(RuleBasedStateMachine):
    """A maker at work. Beside the real session and files stands what they ought to hold.

    `steps` are the documents along the undo stack, `at` is where we are, `saved` what the file ought to hold, and
    `clean` where on the stack that is (None: nowhere on it). The march is left out.
    """

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.home = Path(self.folder.name)
        self.path = self.home / "mine.toml"
        self.saved: Recipe | None = None
        self.all_saved: list[Recipe] = []

    @initialize()
    def begin(self) -> None:
        self._open_window()
        assert self.files.begin(read(CHEDDAR))
        self.steps, self.at, self.clean = [self.session.recipe], 0, None

    def _open_window(self) -> None:
        self.window = QWidget()
        self.session = Session(
            read(CHEDDAR), nominal=lambda r: told(), banded=lambda r, stop: told(), check=lambda made: None
        )
        self.journal = Journal(self.home / "recovery")
        self.files = FileWork(self.session, Preferences(self.home / "p.ini"), self.journal, self.window)

    def _end(self, clean: bool) -> None:
        if clean:
            self.files.close()
        else:  # what the system does for a process that is gone
            self.journal.let_go()
            self.files._hold.drop() if self.files._hold is not None else None
            self.files._watch.follow(None, None)
        self.session.close()
        self.window.deleteLater()

    # ---- what the maker does

    @rule(what=EDITS, amount=st.floats(0, 1), nudged=st.booleans())
    def edit(self, what: str, amount: float, nudged: bool) -> None:
        try:
            made = changed(self.session.recipe, what, amount)
        except RecipeError:
            return
        before, count = self.session.recipe, self.session.stack.count()
        self.session.commit(made, what, key=what if nudged else None)
        if made == before:
            return
        if self.clean is not None and self.clean > self.at:
            self.clean = None
        stack = self.session.stack
        self.steps = self.steps[: stack.index()] + [made] if stack.index() else [made]
        self.at = stack.index()
        assert stack.count() == len(self.steps) - 1
        assert stack.count() <= count + 1

    @rule()
    def undo(self) -> None:
        self.session.stack.undo()
        self.at = max(self.at - 1, 0)

    @rule()
    def redo(self) -> None:
        self.session.stack.redo()
        self.at = min(self.at + 1, len(self.steps) - 1)

    @rule()
    def save(self) -> None:
        assert self.files.save_to(self.path)
        self.saved, self.clean = self.session.recipe, self.at
        self.all_saved.append(self.saved)

    @precondition(lambda self: self.saved is not None and not self.session.modified)
    @rule()
    def reload(self) -> None:
        assert self.files.open(self.path)
        assert self.saved is not None
        self.steps, self.at, self.clean = [self.saved], 0, 0

    @rule()
    def crash_and_recover(self) -> None:
        work, unsaved = self.session.recipe, self.session.modified
        self._end(clean=False)
        self._open_window()
        left = leftovers(self.journal.folder)
        assert len(left) == (1 if unsaved else 0)
        if not left:
            assert self.saved is not None
            assert self.files.open(self.path)
            self.steps, self.at, self.clean = [self.saved], 0, 0
            return
        assert reads(left[0].text) == work
        assert recovery.take_up(self.files, left[0])
        self.at = self.session.stack.index()
        begun = self.session.recipe
        if self.at:
            self.session.stack.undo()
            begun = self.session.recipe
            self.session.stack.redo()
        self.steps = [begun, work] if self.at else [work]
        self.clean = 0 if self.at and self.saved is not None else None

    @precondition(lambda self: not self.session.modified)
    @rule()
    def quit_and_start(self) -> None:
        self._end(clean=True)
        assert leftovers(self.journal.folder) == []
        self._open_window()
        assert self.files.open(self.path)
        assert self.saved is not None
        self.steps, self.at, self.clean = [self.saved], 0, 0

    # ---- what must always hold

    @invariant()
    def the_document_is_where_undo_says(self) -> None:
        assert self.session.recipe == self.steps[self.at]
        assert self.session.stack.index() == self.at

    @invariant()
    def the_file_is_whole_and_holds_what_was_saved(self) -> None:
        if self.saved is None:
            assert not self.path.exists()
        else:
            assert read(self.path) == self.saved

    @invariant()
    def what_is_not_saved_stands_in_the_journal(self) -> None:
        assert self.session.modified == (self.clean != self.at)
        assert self.journal.file.exists() == self.session.modified
        if self.session.modified:
            self.journal.let_go()
            (left,) = leftovers(self.journal.folder)
            assert reads(left.text) == self.session.recipe
            assert self.journal._hold.take()

    def teardown(self) -> None:
        """Every saved state is among the versions, whatever came after."""
        kept = [recipe_of(one) for one in versions(self.path)]
        assert all(one in kept for one in self.all_saved)
        self._end(clean=True)
        self.folder.cleanup()


def test_nothing_is_lost_in_any_order_of_work(qapp: QApplication) -> None:
    run_state_machine_as_test(Keeping, settings=settings(max_examples=12, stateful_step_count=25))


@pytest.mark.slow
@pytest.mark.parametrize("part", range(4))
def test_nothing_is_lost_in_a_long_day_of_work(qapp: QApplication, part: int) -> None:
    """A hundred days, begun anew each run; four parts, so that the cores share them."""
    run_state_machine_as_test(Keeping, settings=settings(max_examples=25, stateful_step_count=50, derandomize=False))
