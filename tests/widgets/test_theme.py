"""The palettes measured: contrast of every text, curves told apart by colour-blind eyes, icons that are there."""

from __future__ import annotations

import dataclasses
import itertools
import re
from pathlib import Path

import pytest
from PySide6.QtCore import QSize
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

import widgets
from designer.judge.vats import MOST
from widgets.compare.curves import DASHES
from widgets.make_curve.curves import PANES
from widgets.theme import apply as dress
from widgets.theme import icons
from widgets.theme.colour import DEFICIENCIES, contrast, difference, mix, seen_with
from widgets.theme.palette import (
    CONTENTS,
    CURVES,
    DECORATION,
    GROUNDS,
    INKS,
    LINES_ON,
    MAKES,
    MIXED,
    PALETTES,
    SHARED_PANE,
    TEXT_ON,
    VAT_WORDS,
    Colours,
)

ALL = pytest.mark.parametrize("palette", PALETTES.values(), ids=list(PALETTES))


def test_contrast_of_known_pairs() -> None:
    """WCAG 2.1: black on white is 21:1; #767676 on white is the grey that just reaches 4.5:1."""
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#767676", "#FFFFFF") == pytest.approx(4.54, abs=0.01)


@ALL
def test_every_text_reads(palette: Colours) -> None:
    faint = [
        f"{text} on {ground}: {found:.2f}"
        for text, ground in TEXT_ON
        if (found := contrast(written(palette, text, ground), palette.of(ground))) < 4.5
    ]
    assert not faint, faint


def written(palette: Colours, text: str, ground: str) -> str:
    """The colour words come out in: those over the vat's content let a little of it through."""
    full = palette.of(text)
    return mix(palette.of(ground), full, VAT_WORDS) if text == "vat_ink" else full


@ALL
def test_every_line_stands_out(palette: Colours) -> None:
    faint = [
        f"{line} on {ground}: {found:.2f}"
        for line, ground in LINES_ON
        if (found := contrast(palette.of(line), palette.of(ground))) < 3.0
    ]
    assert not faint, faint


def test_every_colour_stands_in_the_table() -> None:
    """A colour that is new to the palette, or put together anew, says what it is for, and is measured as that."""
    told = {*GROUNDS, *INKS, *CONTENTS, *CURVES, *DECORATION, *(name for pair in TEXT_ON for name in pair)}
    fields = {field.name for field in dataclasses.fields(Colours)} - {"name", "dark"}
    assert fields | set(MIXED) == told


def test_painters_ask_for_colours_by_their_name() -> None:
    """No painter mixes or writes down a colour of its own (textures of the curd apart), or names one there is not."""
    known = {field.name for field in dataclasses.fields(Colours)} | set(MIXED)
    wrong = []
    for path in Path(widgets.__path__[0]).rglob("*.py"):
        if path.parent.name in ("theme", "paper") or path.name == "texture.py":
            continue
        text = path.read_text(encoding="utf-8")
        wrong += [f"{path.name} mixes a colour" for _ in re.finditer(r"(?<![.\w])mix\(", text)]
        wrong += [f"{path.name} writes {found[0]}" for found in re.finditer(r"\"#[0-9A-Fa-f]{6}\"", text)]
        named = re.findall(r"(?:\.colour|\bc\.of)\(\s*\"(\w+)\"", text)
        wrong += [f"{path.name} names {name}" for name in named if name not in known]
    assert wrong == ['keys.py writes "#000000"', 'keys.py writes "#444444"', 'keys.py writes "#888888"'], wrong


def test_every_pane_of_the_make_curve_is_told_apart() -> None:
    """The curves that stand in one pane are the pairs that are looked at with colour-blind eyes."""
    together = {
        tuple(sorted((one.colour, other.colour)))
        for pane in PANES.values()
        for one, other in itertools.combinations(pane.curves, 2)
    }
    assert together == {tuple(sorted(pair)) for pair in SHARED_PANE}
    assert {curve.colour for pane in PANES.values() for curve in pane.curves} <= set(CURVES)


@ALL
@pytest.mark.parametrize("deficiency", DEFICIENCIES)
def test_curves_of_one_pane_are_told_apart(palette: Colours, deficiency: str) -> None:
    for one, other in SHARED_PANE:
        a, b = (seen_with(getattr(palette, name), deficiency) for name in (one, other))
        assert difference(a, b) >= 18.0, (one, other)
    # Of makes over each other, the first (full, in the colour of its pane) and the second.
    dress_as = [getattr(palette, name) for name in ("temperature", "ph", "moisture")]
    for first in dress_as:
        assert difference(*(seen_with(one, deficiency) for one in (first, palette.ink))) >= 18.0, first


@ALL
@pytest.mark.parametrize("eye", ["", *DEFICIENCIES])
def test_makes_over_each_other_are_told_apart(palette: Colours, eye: str) -> None:
    """Where there are more than two, each pair of them, in colour alone; and each is seen on paper."""
    assert len(MAKES[palette.name]) == len(DASHES) == MOST
    for pair in itertools.combinations(MAKES[palette.name], 2):
        a, b = (seen_with(palette.of(name), eye) if eye else palette.of(name) for name in pair)
        assert difference(a, b) >= 18.0, pair
    assert all(contrast(palette.of(name), palette.paper) >= 3.0 for name in MAKES[palette.name])


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
