"""A maker's day in a process of its own, to be killed: edits and saves through the real session, files and journal.

`python -m tests.widgets.worker HOME`: begins with what is recovered or saved there, then edits for ever. After each
kept edit and each save it says so on standard output: "kept 7", "saved 7". The march is left out.
"""

from __future__ import annotations

import sys
from pathlib import Path
from types import SimpleNamespace
from typing import cast

from PySide6.QtWidgets import QApplication, QWidget

from designer.forecast import Forecast
from designer.recipe import edit as edits
from designer.recipe.document import Recipe
from designer.recipe.file import read, reads
from tests.widgets.conftest import CHEDDAR
from widgets import recovery
from widgets.files import FileWork
from widgets.journal import Journal, leftovers
from widgets.preferences import Preferences
from widgets.session import Session

SAVED_EVERY = 7


def number(recipe: Recipe) -> int:
    """Which edit made this recipe."""
    return int(recipe.name.rpartition(" ")[2]) if recipe.name.startswith("Cheese ") else 0


def main(home: Path) -> None:
    """Work until killed."""
    app = QApplication([])
    window = QWidget()
    recipe = read(CHEDDAR)
    made = cast(Forecast, SimpleNamespace(recipe=recipe, branches=(), bands=None))
    session = Session(recipe, nominal=lambda r: made, banded=lambda r, stop: made, check=lambda f: None)
    path = home / "mine.toml"
    files = FileWork(session, Preferences(home / "p.ini"), Journal(home / "recovery"), window)
    if path.exists():
        assert files.open(path)
    else:
        assert files.save_to(path)
    left = leftovers(home / "recovery")
    if left and recovery.saved_recipe(left[0]) != reads(left[0].text):  # else killed between the save and its end
        assert recovery.take_up(files, left[0])
    for one in left:  # an older one is of the same work: killed while it was taken up
        one.drop()
    print("begun", number(session.recipe), flush=True)
    while True:
        done = number(session.recipe) + 1
        session.commit(edits.edit_recipe(session.recipe, name=f"Cheese {done}"), "name")
        print("kept", done, flush=True)
        if done % SAVED_EVERY == 0:
            assert files.save()
            print("saved", done, flush=True)
        app.processEvents()


if __name__ == "__main__":
    main(Path(sys.argv[1]))
