"""What the eye needs in every place: the keyboard is seen where it is, and the system's theme is followed at once."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtGui import QGuiApplication, QImage
from PySide6.QtWidgets import QApplication, QScrollArea, QWidget
from shiboken6 import isValid

from widgets.theme import apply as dress
from widgets.theme.palette import CONTRAST, DARK, LIGHT, Colours
from widgets.window import Window

LEAST = 3.0
"""WCAG 2.2, 1.4.11 and 2.4.13: what tells a focused control from the same one without."""
RING_PX = 6
CHANCE_PX = 40
"""Edges are blended, and a blend may come out as any colour."""
PAPERS = ("plan", "lesson")
"""Places that show white paper in every theme."""


def pixels(window: Window, part: QRect) -> NDArray[np.uint8]:
    """A part of the window, shape (height, width, 4): blue, green, red and nothing."""
    image = window.grab(part).toImage().convertToFormat(QImage.Format.Format_RGB32)
    return np.array(image.constBits(), dtype=np.uint8).reshape(image.height(), image.width(), 4)


def luminance(seen: NDArray[np.uint8]) -> NDArray[np.float64]:
    """Relative luminance of every pixel (WCAG 2.1)."""
    share = seen[..., :3] / 255.0
    linear = np.where(share <= 0.04045, share / 12.92, ((share + 0.055) / 1.055) ** 2.4)
    return np.asarray(linear @ np.array([0.0722, 0.7152, 0.2126]))


def bring_into_view(one: QWidget) -> None:
    """Scroll whatever it lies in."""
    around = one.parentWidget()
    while around is not None:
        if isinstance(around, QScrollArea):
            around.ensureWidgetVisible(one, 20, 20)
        around = around.parentWidget()


def changed_px(window: Window, one: QWidget) -> int:
    """How many pixels in and around a control tell by 3:1 that the keyboard is there."""
    bring_into_view(one)
    one.setFocus(Qt.FocusReason.TabFocusReason)
    QApplication.processEvents()
    ring = QRect(one.mapTo(window, QPoint(0, 0)), one.size()).adjusted(-RING_PX, -RING_PX, RING_PX, RING_PX)
    part = ring & window.rect()
    held = luminance(pixels(window, part))
    window.setFocus()
    free = luminance(pixels(window, part))
    ratio = (np.maximum(held, free) + 0.05) / (np.minimum(held, free) + 0.05)
    return int(np.count_nonzero(ratio >= LEAST))


def test_every_control_shows_that_the_keyboard_is_there(window: Window) -> None:
    """In one theme: that the mark stands out from every ground in the others, `test_theme.py` asks of the palette."""
    window.activateWindow()
    seen: set[QWidget] = set()
    blind = []
    for key in window.places:
        window.go(key)
        QApplication.processEvents()
        reached = [one for one in window.findChildren(QWidget) if one.isVisible() and one.isEnabled()]
        for one in reached:
            if not isValid(one):  # a page came to its answer meanwhile
                continue
            if not one.focusPolicy() & Qt.FocusPolicy.TabFocus or one.focusProxy() is not None or one in seen:
                continue
            seen.add(one)
            found = changed_px(window, one)
            if found < min((one.width() + one.height()) // 2, 60):
                blind.append(f"{key}: {type(one).__name__} “{one.accessibleName()}” changes {found} pixels")
    assert len(seen) > 150
    assert not blind, "\n".join(blind)


def own_colours(palette: Colours, others: tuple[Colours, ...]) -> NDArray[np.uint32]:
    """The colours of a palette that no other has."""
    names = [name for name in Colours.__dataclass_fields__ if name not in ("name", "dark")]
    strange = {getattr(other, name) for other in others for name in names}
    return np.array([int(text[1:], 16) for name in names if (text := getattr(palette, name)) not in strange], np.uint32)


def left_over(window: Window, palette: Colours, now: Colours) -> int:
    """How many pixels of the window still have a colour of a palette that is not worn any more."""
    seen = pixels(window, window.rect()).astype(np.uint32)
    whole = seen[..., 2] << 16 | seen[..., 1] << 8 | seen[..., 0]
    return int(np.isin(whole, own_colours(palette, (now,))).sum())


def test_the_system_is_followed_while_the_window_is_open(window: Window, monkeypatch: pytest.MonkeyPatch) -> None:
    """No place keeps a picture, an icon or a word in a colour of before."""
    monkeypatch.setattr(dress, "wish", lambda: LIGHT)
    window._set_scheme("system")
    for key in window.places:
        window.go(key)
    QApplication.processEvents()
    hints = QGuiApplication.styleHints()
    high = hints.accessibility().contrastPreferenceChanged
    wishes = (
        (LIGHT, DARK, hints.colorSchemeChanged, Qt.ColorScheme.Dark),
        (DARK, CONTRAST, high, Qt.ContrastPreference.HighContrast),
    )
    for before, now, told, what in wishes:
        window.go("design")
        monkeypatch.setattr(dress, "wish", lambda now=now: now)
        told.emit(what)
        assert dress.colours() is now
        for key in window.places:
            window.go(key)
            QApplication.processEvents()
            kept = left_over(window, before, now)
            assert kept <= CHANCE_PX or key in PAPERS, f"{key} keeps {kept} pixels of {before.name} in {now.name}"
