"""Branches in the window by real events: split off, drawn, dragged, chosen, compared, renamed, taken out."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from designer.recipe.document import Recipe
from designer.recipe.split_off import split_off
from tests.widgets.conftest import SHIFT, drag, press, release
from tests.widgets.test_opened import settle
from widgets.form.split_form import SplitForm
from widgets.make_curve import lanes, vat
from widgets.outcomes.lever_list import MORE
from widgets.outcomes.opened import OpenedOutcome
from widgets.window import Window


@pytest.fixture
def twins(window: Window, recipe: Recipe) -> Window:
    """The window on a make with two branches: 40 % of the curd after the warming, 90 % of the whey at draining."""
    recipe = split_off(recipe, "warm", "curd", 40.0, "plain twin")
    recipe = split_off(recipe, "drain", "whey", 90.0, "whey cheese")
    window.session.load(recipe, None, None)
    window.go("design")
    QApplication.processEvents()
    return window


def ask(window: Window, stage: str, of: str, share: str, name: str) -> SplitForm:
    """Fill the form that splits the vat, up to its button."""
    window.session.choose(stage)
    window.actions_["split_off"].trigger()
    form = window.branches.form
    assert form is not None
    form.of.setCurrentIndex(form.of.findData(of))
    form.share.setText(share)
    form.name.setText(name)
    return form


def test_a_branch_is_split_off_from_the_window_and_undone(qtbot: QtBot, window: Window) -> None:
    kept = window.session.recipe
    form = ask(window, "warm", "curd", "40 %", "plain twin")
    qtbot.mouseClick(form.do, Qt.MouseButton.LeftButton)
    assert not form.isVisible()
    branch = window.session.recipe.branches[0]
    assert (branch.name, branch.after, branch.share_pct, branch.of) == ("plain twin", "warm", 40.0, "curd")
    assert window.session.lane == branch.id
    assert len(window.curve.frames) == 2
    assert window.session.stack.count() == 1
    window.actions_["undo"].trigger()
    assert window.session.recipe == kept
    assert window.session.lane is None
    assert len(window.curve.frames) == 1


def test_what_can_not_be_split_off_is_said_in_the_form(qtbot: QtBot, window: Window) -> None:
    form = ask(window, "ripen", "whey", "40 %", "too early")
    qtbot.mouseClick(form.do, Qt.MouseButton.LeftButton)
    assert form.isVisible()
    assert form.error.text()
    form.share.setText("forty")
    qtbot.mouseClick(form.do, Qt.MouseButton.LeftButton)
    assert form.isVisible()
    assert window.session.recipe.branches == ()
    form.reject()


def test_a_lane_begins_where_it_leaves_and_is_drawn_to_scale(twins: Window) -> None:
    curve = twins.curve
    main, plain, whey = curve.frames
    stages = {stage.id: stage for stage in main.forecast.stages}
    assert lanes.start_min(plain) == pytest.approx(stages["warm"].end_min)
    assert lanes.start_min(whey) == pytest.approx(stages["drain"].end_min)
    weights = vat.weights(main.forecast)
    assert weights[0] == 1.0
    assert weights[-1] == pytest.approx(main.forecast.weight)
    at = int(np.searchsorted(main.forecast.trace.time_min, lanes.start_min(plain)))
    shared = vat.content(main.forecast, 1, 100.0).whey[at + 3] + vat.content(plain.forecast, 1, 100.0).whey[1]
    assert shared == pytest.approx(vat.content(main.forecast, 1, 100.0).whey[at - 1], abs=0.01)
    tops = [frame.places.vat.top() for frame in curve.frames]
    assert tops == sorted(tops)
    assert whey.places.ribbon.bottom() < min(rect.top() for rect in main.places.panes.values())


def test_a_handle_of_a_branch_is_dragged(twins: Window) -> None:
    curve, session = twins.curve, twins.session
    before, main = session.recipe.stage("plain-twin-hold"), session.recipe.stages
    grip = curve.grip("plain-twin-salt", "salt_pct", "inside")
    drag(curve, grip.at, QPointF(0, -18))
    assert session.recipe.stage("plain-twin-salt").salt_pct > session.recipe.stage("salt").salt_pct  # type: ignore[union-attr]
    assert session.recipe.stage("plain-twin-hold") == before
    assert session.recipe.stages == main
    assert session.lane == "plain-twin"
    edge = curve.grip("plain-twin-hold", "end", "edge").at + QPointF(0, 12)
    drag(curve, edge, QPointF(-20, 0), SHIFT)
    after = session.recipe.stage("plain-twin-hold").end
    assert after.value is not None
    assert before.end.value is not None
    assert after.value > before.end.value
    assert session.stack.count() == 2


def test_choosing_a_lane_shows_its_outcomes_and_checks(qtbot: QtBot, twins: Window) -> None:
    session, panel = twins.session, twins.outcomes
    curve = twins.curve
    whey = curve.frames[2]
    box = whey.places.ribbon
    at = QPointF(whey.axis.x(lanes.start_min(whey)) + 8, box.center().y())
    press(curve, at)
    release(curve, at)
    assert session.lane == "whey-cheese"
    assert session.verdict is None
    value = session.forecast.lane("whey-cheese").outcomes["moisture_pct"].value
    assert panel.list.lines[0].value == f"{value:.1f} %"
    assert curve.seen.lane == "whey-cheese"
    qtbot.keyClick(curve, Qt.Key.Key_Up, Qt.KeyboardModifier.ControlModifier)
    assert session.lane == "plain-twin"
    assert session.verdict is not None
    assert panel.list.lines[0].value == f"{session.seen.outcomes['moisture_pct'].value:.1f} %"
    twins.actions_["next_lane"].trigger()
    twins.actions_["next_lane"].trigger()
    assert session.lane is None


def test_the_lanes_are_compared_in_a_table_that_chooses(qtbot: QtBot, twins: Window) -> None:
    table, session = twins.outcomes.lanes, twins.session
    assert table.isVisible()
    assert table.rowCount() == 3
    for row, lane in enumerate(session.forecast.lanes):
        item = table.item(row, 0)
        assert item is not None
        assert item.text() == f"{lane.outcomes['moisture_pct'].value:.1f}"
    item = table.item(1, 2)
    qtbot.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=table.visualItemRect(item).center())
    assert session.lane == "plain-twin"
    qtbot.keyClick(table, Qt.Key.Key_Down)
    assert session.lane == "whey-cheese"
    session.load(session.recipe.model_copy(update={"branches": ()}), None, None)
    assert not table.isVisible()


def test_what_moves_a_branch_is_shown_kept_and_aimed_with(qtbot: QtBot, twins: Window) -> None:
    session, panel = twins.session, twins.outcomes
    session.choose("plain-twin-salt")
    panel.opening.open("salt_in_moisture_pct")
    page = panel.opening.page
    assert isinstance(page, OpenedOutcome)
    settle(qtbot, twins)
    assert "style" in page._why.text() or page.links.folds()
    first = page.levers.levers[0]
    assert first.setting.path == ("plain-twin-salt", "salt_pct")
    assert first.setting.branch == "plain-twin"
    before, main = session.recipe.stage("plain-twin-salt").salt_pct, session.recipe.stage("salt")  # type: ignore[union-attr]
    qtbot.mouseClick(page.levers, Qt.MouseButton.LeftButton, pos=page.levers.chip(0, MORE).center().toPoint())
    assert session.recipe.stage("plain-twin-salt").salt_pct > before  # type: ignore[union-attr]
    assert session.recipe.stage("salt") == main
    settle(qtbot, twins)
    now = session.seen.outcomes["salt_in_moisture_pct"].value
    panel.opening._aim(now + 0.3, frozenset())
    settle(qtbot, twins)
    assert panel.opening.page is page
    assert page.aim.found is not None
    assert page.aim.found.branch == "plain-twin"
    assert page.aim.found.lane.outcomes["salt_in_moisture_pct"].value > now


def test_stages_of_a_branch_are_worked_on_by_menu(twins: Window) -> None:
    session = twins.session
    session.choose("plain-twin-stack")
    twins.actions_["duplicate"].trigger()
    ids = [stage.id for stage in session.recipe.branches[0].stages]
    assert ids.count("plain-twin-stack") + ids.count("plain-twin-stack-2") == 2
    session.choose("plain-twin-stack")
    twins.actions_["remove"].trigger()
    assert session.lane == "plain-twin"
    assert len(session.recipe.branches[0].stages) == len(ids) - 1
    twins.actions_["next"].trigger()
    assert session.lane == "plain-twin"


def test_a_branch_is_renamed_and_its_parts_edited_in_the_form(qtbot: QtBot, twins: Window) -> None:
    session, form = twins.session, twins.stage_form._branch
    twins.curve.setFocus()
    session.choose("plain-twin-salt")
    assert form.isVisible()
    name = form.forms["branch"].editors["name"]
    twins.actions_["name_branch"].trigger()
    name.changed.emit("name", "sister", False)
    assert session.recipe.branches[0].name == "sister"
    form.forms["form"].changed.emit("diameter_mm", 240.0, False)
    assert session.recipe.branches[0].form is not None
    assert session.recipe.branches[0].form.diameter_mm == 240.0
    assert session.recipe.form is not None
    assert session.recipe.form.diameter_mm != 240.0
    form.forms["coat"].changed.emit("kind", "wax", False)
    assert session.recipe.branches[0].coat is not None
    assert session.recipe.branches[0].coat.kind == "wax"
    qtbot.mouseClick(form.more["addition"], Qt.MouseButton.LeftButton)
    assert [one.at for one in session.recipe.branches[0].additions] == ["plain-twin-salt"]
    twins.stage_form._take_out("given0")
    assert session.recipe.branches[0].additions == ()
    form.forms["branch"].changed.emit("share_pct", 150.0, False)
    assert session.recipe.branches[0].share_pct == 40.0
    qtbot.mouseClick(form.remove, Qt.MouseButton.LeftButton)
    assert [branch.name for branch in session.recipe.branches] == ["whey cheese"]
    assert session.lane is None
    assert not form.isVisible()


def test_the_branch_looked_at_is_removed_by_key(qtbot: QtBot, twins: Window) -> None:
    twins.session.choose_lane("whey-cheese")
    twins.curve.setFocus()
    twins.actions_["remove_branch"].trigger()
    assert [branch.id for branch in twins.session.recipe.branches] == ["plain-twin"]
    twins.actions_["remove_branch"].trigger()
    assert len(twins.session.recipe.branches) == 1


def test_lanes_are_drawn_in_every_theme_and_told_apart(twins: Window) -> None:
    assert len({tuple(lanes.dash(number)) for number in range(5)}) == 5
    for scheme in ("light", "dark", "contrast"):
        twins._set_scheme(scheme)
        image = twins.curve.grab().toImage()
        for frame in twins.curve.frames:
            centre = QPointF(frame.axis.x(lanes.start_min(frame)) + 30, frame.places.ribbon.center().y())
            assert image.rect().contains(QPoint(round(centre.x()), round(centre.y())))


def test_the_way_to_a_branch_passes_behind_those_it_goes_by(twins: Window) -> None:
    """It is seen between the lanes, and not over the names of their stages."""
    main, twin, whey = twins.curve.frames
    x = round(main.axis.x(lanes.start_min(whey)))
    picture = twins.curve.grab().toImage()
    ratio = picture.devicePixelRatio()

    def inked(y: float) -> bool:  # the line stands anywhere within the pixel
        colours = [picture.pixelColor(round(x * ratio) + beside, round(y * ratio)) for beside in (-1, 0, 1)]
        rind = main.colour("rind").getRgb()[:3]
        return any(all(abs(a - b) < 40 for a, b in zip(own.getRgb()[:3], rind, strict=True)) for own in colours)

    ribbon = twin.places.ribbon
    assert inked(ribbon.bottom() + 8)
    assert not any(inked(y) for y in range(round(ribbon.top()) + 3, round(ribbon.bottom()) - 2))
