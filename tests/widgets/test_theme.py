"""The palettes measured: contrast of every text, curves told apart by colour-blind eyes, icons that are there."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from widgets.theme import apply as dress
from widgets.theme import icons
from widgets.theme.colour import DEFICIENCIES, contrast, difference, mix, seen_with
from widgets.theme.palette import LINES, PALETTES, SHARED_PANE, TEXT_ON, Colours

ALL = pytest.mark.parametrize("palette", PALETTES.values(), ids=list(PALETTES))


def test_contrast_of_known_pairs() -> None:
    """WCAG 2.1: black on white is 21:1; #767676 on white is the grey that just reaches 4.5:1."""
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#767676", "#FFFFFF") == pytest.approx(4.54, abs=0.01)


@ALL
def test_every_text_reads(palette: Colours) -> None:
    for text, ground in TEXT_ON:
        assert contrast(getattr(palette, text), getattr(palette, ground)) >= 4.5, (text, ground)


@ALL
def test_every_line_stands_out(palette: Colours) -> None:
    for line in LINES:
        assert contrast(getattr(palette, line), palette.paper) >= 3.0, line


@ALL
@pytest.mark.parametrize("deficiency", DEFICIENCIES)
def test_curves_of_one_pane_are_told_apart(palette: Colours, deficiency: str) -> None:
    for one, other in SHARED_PANE:
        a, b = (seen_with(getattr(palette, name), deficiency) for name in (one, other))
        assert difference(a, b) >= 18.0, (one, other)


def test_simulation_leaves_grey_alone() -> None:
    for deficiency in DEFICIENCIES:
        assert difference("#808080", seen_with("#808080", deficiency)) < 1.0


def test_mixing() -> None:
    assert mix("#000000", "#FFFFFF", 0.5) == "#808080"
    assert mix("#102030", "#FFFFFF", 0.0) == "#102030"


@pytest.mark.parametrize("scheme", ["light", "dark", "contrast"])
def test_one_function_dresses_the_application(qtbot: QtBot, qapp: QApplication, scheme: str) -> None:
    colours = dress.apply(qapp, scheme)
    assert dress.colours() is colours
    assert dress.wears(scheme)
    assert qapp.palette().color(QPalette.ColorRole.Window) == QColor(colours.window)


def test_system_is_light_where_the_system_says_nothing(qtbot: QtBot) -> None:
    assert dress.resolve("system").name in ("light", "dark")


def test_type_scale_rises(qtbot: QtBot) -> None:
    sizes = [dress.font(role).pointSizeF() for role in ("note", "body", "head", "figure", "title")]
    assert sizes == sorted(sizes)
    assert dress.width("0000", "body") > dress.width("00", "body")
    assert dress.fitted("a long word indeed", "note", 40).endswith("…")


def test_every_icon_draws_something(qtbot: QtBot) -> None:
    for name in icons._DRAWN:
        image = icons.icon(name, "#000000").pixmap(QSize(24, 24)).toImage()
        assert any(image.pixelColor(x, y).alpha() > 0 for x in range(24) for y in range(24)), name
    assert not icons.program_icon().pixmap(64, 64).isNull()
