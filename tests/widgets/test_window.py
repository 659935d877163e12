"""The window as a whole: places, outcomes, check, units and themes, stages by menu, every example drawn."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QDialog
from pytestqt.qtbot import QtBot

from designer.judge.verdict import CURVE, MET, NEAR, NOT_MET
from designer.recipe import edit as edits
from designer.recipe.examples import examples
from widgets.make_curve.frame import make_day_end
from widgets.outcomes.check_place import CheckPlace, range_text, state_icon
from widgets.outcomes.outcome_line import row_for, short_chance
from widgets.theme import apply as dress
from widgets.window import Window


def colours_in(image: QImage) -> int:
    """How many colours a picture has, to tell a drawing from an empty page."""
    small = image.scaled(300, 200)
    return len({small.pixel(x, y) for x in range(small.width()) for y in range(small.height())})


@pytest.mark.parametrize("key", ["milk", "design", "check", "plan"])
def test_each_place_opens_and_shows_something(window: Window, key: str) -> None:
    window.go(key)
    QApplication.processEvents()
    assert window.stack.currentWidget() is window.opened[key]
    assert window.rail.buttons[key].isChecked()
    assert colours_in(window.grab().toImage()) > 20


def test_places_open_by_key(qtbot: QtBot, window: Window) -> None:
    with qtbot.waitActive(window):
        window.activateWindow()
    qtbot.keyClick(window.curve, Qt.Key.Key_3, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: window.stack.currentWidget() is window.opened.get("check"))


@pytest.mark.parametrize("path", examples(), ids=lambda path: path.stem)
def test_every_example_is_drawn(window: Window, path: Path) -> None:
    assert window.files.open(path)
    window.curve.fit_day()
    assert colours_in(window.curve.grab().toImage()) > 60
    window.curve.fit_whole()
    assert colours_in(window.curve.grab().toImage()) > 60
    blocks = window.curve.frame.blocks
    assert 0 < make_day_end(blocks) <= blocks[-1].end_min


@pytest.mark.parametrize("scheme", ["light", "dark", "contrast"])
def test_every_theme_draws(window: Window, scheme: str) -> None:
    window._set_scheme(scheme)
    image = window.curve.grab().toImage()
    assert image.pixelColor(3, image.height() // 2).name().upper() == dress.colours().paper
    window._set_scheme("light")


def test_outcomes_show_values_bands_windows_and_margins(qtbot: QtBot, window: Window) -> None:
    if window.session.bands_stale:
        with qtbot.waitSignal(window.session.bandsChanged, timeout=60_000):
            pass
    lines = {line.key: line for line in window.outcomes.list.lines}
    moisture = lines["moisture_pct"]
    assert moisture.value.endswith("%")
    assert "–" in moisture.band
    assert moisture.row is not None
    assert moisture.row.state in (MET, NEAR, NOT_MET)
    assert "Moisture" in window.outcomes.list.told()
    verdict = window.session.verdict
    assert verdict is not None
    assert window.outcomes._verdict.text() == verdict.sentence


def test_the_row_that_matters_is_the_worst_limit(window: Window) -> None:
    verdict = window.session.verdict
    assert verdict is not None
    row = row_for(verdict.rows, "moisture_pct")
    assert row is not None
    assert row.section == "limit"
    assert row_for(verdict.rows, "nothing") is None


def test_chances_are_short() -> None:
    assert short_chance(0.9) == "9 in 10"
    assert short_chance(0.97) == "> 9 in 10"
    assert short_chance(0.3) == "7 in 10 outside"
    assert short_chance(0.5) == "even odds"


def test_gates_stand_on_the_curves_as_judged(window: Window) -> None:
    verdict = window.session.verdict
    assert verdict is not None
    marks = window.curve.frame.gates
    assert {mark.row.quantity for mark in marks} == {row.quantity for row in verdict.section(CURVE)}
    assert all(mark.words() for mark in marks)


def test_the_check_table_has_every_row(window: Window) -> None:
    window.go("check")
    place = window.opened["check"]
    assert isinstance(place, CheckPlace)
    tree = place.tree
    shown = sum(tree.topLevelItem(i).childCount() for i in range(tree.topLevelItemCount()))  # type: ignore[union-attr]
    verdict = window.session.verdict
    assert verdict is not None
    assert shown == len(verdict.rows)
    assert all(range_text(row) for row in verdict.rows if row.low is not None or row.high is not None)


def test_half_the_outcomes_are_in_sight_beside_the_curve_of_a_small_screen(window: Window) -> None:
    lines, area = window.outcomes.list, window.outcomes.area.viewport()
    inside = [
        line.key for line in lines.every
        if area.rect().contains(lines.box_of(line.key).toRect().translated(lines.mapTo(area, QPoint())))
    ]  # fmt: skip
    assert len(inside) >= len(lines.every) / 2


def test_the_shapes_of_the_states_differ(qtbot: QtBot) -> None:
    made = [state_icon(state).pixmap(16, 16).toImage() for state in (MET, NEAR, NOT_MET)]
    alphas = [np.array([[i.pixelColor(x, y).alpha() > 60 for x in range(16)] for y in range(16)]) for i in made]
    assert all((alphas[a] != alphas[b]).sum() > 12 for a, b in ((0, 1), (0, 2), (1, 2)))


def test_without_a_style_nothing_is_checked(window: Window) -> None:
    window.session.commit(edits.edit_recipe(window.session.recipe, style=""), "style")
    assert window.session.verdict is None
    assert window.curve.frame.gates == ()
    window.go("check")


def test_us_units_reach_the_curve(window: Window) -> None:
    window.actions_["us"].trigger()
    assert window.preferences.system == "us"
    assert window.curve.tip_at(window.curve.grip("warm", "temperature_c", "corner").at).endswith("102.2 °F")
    window.actions_["metric"].trigger()


def test_stages_by_menu(window: Window) -> None:
    window.session.choose("cut")
    count = len(window.session.recipe.stages)
    for key, more in (("duplicate", 1), ("undo", 0), ("remove", -1), ("undo", 0)):
        window.actions_[key].trigger()
        assert len(window.session.recipe.stages) == count + more
    window.session.choose("ripen")
    window.actions_["split"].trigger()
    assert len(window.session.recipe.stages) == count + 1
    window.actions_["next"].trigger()
    assert window.session.chosen == window.session.recipe.stages[1].id


def test_the_end_can_be_kept_for_good(window: Window) -> None:
    window.actions_["keep"].trigger()
    assert window.curve.mode == "keep"
    assert window.preferences.keep_end
    window.actions_["later"].trigger()
    assert window.curve.mode == "later"


def test_firmness_and_salt_unfold(window: Window) -> None:
    window.actions_["firmness"].trigger()
    assert "firmness" in window.curve.frame.places.panes
    assert window.curve.frame.places.strip.bottom() <= window.curve.height()
    window.actions_["firmness"].trigger()
    assert "firmness" not in window.curve.frame.places.panes


def test_undo_says_what_it_undoes(window: Window) -> None:
    window.session.commit(edits.edit_end(window.session.recipe, "ripen", length_min=75.0), "length of ripen")
    assert "length of ripen" in window.actions_["undo"].text()
    assert window.actions_["undo"].isEnabled()
    assert not window.actions_["redo"].isEnabled()


def test_help_opens_and_closes(window: Window) -> None:
    for key in ("keys", "about"):
        window.actions_[key].trigger()
        box = next(box for box in window.findChildren(QDialog) if box.isVisible())
        assert colours_in(box.grab().toImage()) > 5
        box.close()


def test_stage_words_never_collide(window: Window) -> None:
    """Cells of the ribbon do not overlap, and lie in order."""
    from widgets.make_curve.ribbon import cell

    cells = [cell(window.curve.frame, block) for block in window.curve.frame.blocks]
    shown = [box for box in cells if box.width() > 0]
    assert all(a.right() <= b.left() + 1e-6 for a, b in pairwise(shown))
