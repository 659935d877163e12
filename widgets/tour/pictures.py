"""Walks a window through its places and main dialogs and makes a picture of each, the same on every run.

A place says itself how it is shown (`Place.views`); a dialog is an action that says it opens one (`Spec.dialog`). A
picture is taken once the window has settled: no worker runs and no single-shot timer waits.
"""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Collection, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from PySide6.QtCore import QEventLoop, QObject, QPoint, QRect, QThreadPool, QTimer
from PySide6.QtGui import QColor, QPainter, QPixmap
from PySide6.QtWidgets import QApplication, QDialog

from widgets.files import read
from widgets.judging import adopt_beside
from widgets.rail import View
from widgets.theme import apply as dress
from widgets.tour.dairy import saved
from widgets.window import Window

THEMES: Final = ("light", "dark", "contrast")
SIZES: Final = ((1366, 768), (1920, 1080))
POLL_MS: Final = 15
"""how often a window that works is asked whether it has settled"""
QUIET: Final = 3
"""looks in a row that must find nothing running: what one timer starts the next look sees"""

Shown = Callable[[int, int, Path], object]


@dataclass(frozen=True, slots=True)
class Shot:
    """One picture: what it is called, which place it is in, how the window is brought to it."""

    name: str
    place: str
    view: View
    dialog: str = ""


def shots(window: Window) -> list[Shot]:
    """Every picture the actions and the places of a window ask for: dialogs first, then in the order of the rail."""
    made = [
        Shot(f"{place.key}-{view.name}" if view.name else place.key, place.key, view)
        for place in window.places.values()
        for view in place.views
    ]
    dialogs = [key for key, spec in window.actions_.specs.items() if spec.dialog]
    return [Shot(f"dialog-{key}", "design", View(), key) for key in dialogs] + made


def busy(window: QObject) -> bool:
    """True while a worker of the window runs or a single-shot timer of it waits."""
    pools = any(pool.activeThreadCount() for pool in window.findChildren(QThreadPool))
    return pools or any(timer.isSingleShot() and timer.isActive() for timer in window.findChildren(QTimer))


def settle(window: QObject) -> None:
    """Let the window work until there is nothing left for it to do."""
    loop = QEventLoop()
    poll = QTimer()
    poll.setInterval(POLL_MS)
    quiet = 0

    def look() -> None:
        nonlocal quiet
        quiet = 0 if busy(window) else quiet + 1
        if quiet >= QUIET:
            loop.quit()

    poll.timeout.connect(look)
    poll.start()
    loop.exec()
    poll.stop()


def take(window: Window, shot: Shot) -> QPixmap:
    """Bring the window to a view and make its picture."""
    window.go(shot.place)
    settle(window)
    shot.view.show()
    settle(window)
    if not shot.dialog:
        return window.grab()
    window.actions_[shot.dialog].trigger()
    settle(window)
    dialogs = [one for one in window.findChildren(QDialog) if one.isVisible()]
    picture = _over(window, dialogs)
    for one in dialogs:
        one.close()
    settle(window)
    return picture


def _over(window: Window, dialogs: list[QDialog]) -> QPixmap:
    """The window, dimmed, with its dialogs in the middle."""
    picture = window.grab()
    painter = QPainter(picture)
    painter.fillRect(window.rect(), QColor(0, 0, 0, 70))
    for one in dialogs:
        at = window.rect().center() - QPoint(one.width() // 2, one.height() // 2)
        painter.drawPixmap(at, one.grab())
        painter.setPen(QColor(dress.colours().line))
        painter.drawRect(QRect(at, one.size()))
    painter.end()
    return picture


def pictures(
    out: Path,
    recipe: Path,
    *,
    only: Collection[str] = (),
    themes: Collection[str] = THEMES,
    sizes: Collection[tuple[int, int]] = SIZES,
    shown: Shown = lambda done, of, path: None,
) -> list[Path]:
    """Write the pictures to `out` and return their files; `only` names places or pictures.

    `shown(done, of, path)` is told after each. Raises OSError where one can't be written, RecipeError where the recipe
    can't be read, ValueError a theme or a name that is not there.
    """
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    flash = app.cursorFlashTime()
    app.setCursorFlashTime(0)
    if unknown := [theme for theme in themes if theme not in THEMES]:
        raise ValueError(f"there is no theme “{unknown[0]}”, only {', '.join(THEMES)}")
    out.mkdir(parents=True, exist_ok=True)
    written: list[Path] = []
    try:
        rounds = [(theme, size) for theme in themes for size in sizes]
        for theme, size in rounds:
            for name, picture, count in _round(recipe, theme, size, only):
                path = out / f"{name}-{theme}-{size[0]}x{size[1]}.png"
                if not picture.save(str(path)):
                    raise OSError(f"{path} can't be written")
                written.append(path)
                shown(len(written), len(rounds) * count, path)
    finally:
        app.setCursorFlashTime(flash)
    return written


def _round(
    recipe: Path, theme: str, size: tuple[int, int], only: Collection[str]
) -> Iterator[tuple[str, QPixmap, int]]:
    """All pictures in one theme and size, from a window of their own with nothing remembered from before."""
    app = QApplication.instance()
    assert isinstance(app, QApplication)
    dress.apply(app, theme)
    with tempfile.TemporaryDirectory() as folder:
        document, text = read(recipe)
        window = Window(document, config=Path(folder), data=Path(folder))
        path = saved(Path(folder), document, text)
        adopt_beside(path)
        window.session.text, window.session.path = text, path
        window.session.pathChanged.emit()
        try:
            window.actions_["metric"].trigger()
            window.actions_[theme].trigger()
            window.resize(*size)
            window.show()
            chosen = [shot for shot in shots(window) if not only or shot.place in only or shot.name in only]
            if not chosen:
                known = ", ".join(shot.name for shot in shots(window))
                raise ValueError(f"there is no picture “{', '.join(only)}”, only {known}")
            for shot in chosen:
                yield shot.name, take(window, shot), len(chosen)
        finally:
            _end(window)
            adopt_beside(None)


def _end(window: Window) -> None:
    window.session.stack.setClean()
    window.close()
    window.deleteLater()
    QApplication.processEvents()
