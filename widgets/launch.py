"""Opens the window for the command line: the application, its name and look, the recipe, and what was left unsaved."""

from __future__ import annotations

import gc
import sys
from pathlib import Path

from platformdirs import user_config_path, user_data_path, user_log_path
from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtWidgets import QApplication

from designer.language import spoken
from designer.recipe.examples import example, is_example
from widgets import language, mishap, recovery
from widgets.ahead import Ahead
from widgets.files import read
from widgets.journal import leftovers
from widgets.judging import adopt_beside
from widgets.preferences import Preferences
from widgets.theme import apply as dress
from widgets.window import Window


def open_window(path: Path | None) -> int:
    """Open the window on a recipe and stay until it is closed; the process's exit code.

    None: the start page, with the example behind it.
    """
    gc.disable()  # from the first picture on it is looked for here and nowhere else (see `widgets.tidying`)
    app = QApplication.instance() or QApplication(sys.argv[:1])
    assert isinstance(app, QApplication)
    QCoreApplication.setApplicationName("curdwright")
    app.setApplicationDisplayName("Curdwright")
    app.setDesktopFileName("curdwright")
    config, data = user_config_path("curdwright", appauthor=False), user_data_path("curdwright", appauthor=False)
    chosen = Preferences(config / "curdwright.ini")
    told = spoken().key  # the command line may have asked for a language
    language.install(app, told if told != "en" else language.asked(chosen.language), chosen.mark)
    dress.apply(app, chosen.scheme)
    opened = path if path is not None else example()
    recipe, text = read(opened)
    adopt_beside(opened)
    window = Window(recipe, config=config, data=data)
    ahead = Ahead(window)
    mishap.watch(window, user_log_path("curdwright", appauthor=False) / "window.txt")
    if not is_example(opened):
        window.session.path, window.session.text = opened.resolve(), text
        window.preferences.remember(opened)
        window.session.pathChanged.emit()
    else:
        window.session.text = text
    if path is None:
        window.go("start")
    window.show()
    QTimer.singleShot(0, window, lambda: recovery.offer(window, leftovers(data / "recovery")))
    QTimer.singleShot(0, window, window.help.offer_around)
    code = app.exec()
    ahead.stop()
    return code
