"""Work beside the window steps back, and the window's own thread does not."""

from __future__ import annotations

import os
import sys
import threading

from pytestqt.qtbot import QtBot

from designer.forecast import forecast
from designer.recipe.document import Recipe
from tests.widgets.conftest import banded
from widgets.aside import NICE
from widgets.session import Session


def nice() -> int:
    return os.getpriority(os.PRIO_PROCESS, threading.get_native_id())


def test_bands_are_worked_out_behind_the_window(qtbot: QtBot, recipe: Recipe) -> None:
    own, seen = nice(), []

    def work(wanted: Recipe, stop: object) -> object:
        seen.append(nice())
        return banded(wanted, lambda: False)

    session = Session(recipe, nominal=forecast, banded=work, check=lambda made: None)  # type: ignore[arg-type]
    with qtbot.waitSignal(session.bandsChanged, timeout=20_000):
        pass
    assert seen == [NICE if sys.platform == "linux" else own]
    assert nice() == own
    session.close()
