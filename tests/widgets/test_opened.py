"""An outcome opened: why it is so, what moves it (previewed, kept, undone), aim, and the words about the cheese."""

from __future__ import annotations

from itertools import pairwise

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from designer.judge.movable import movables
from designer.recipe import edit as edits
from designer.recipe.document import Recipe
from designer.units import UnitError
from widgets.outcomes.aim_form import wanted_value
from widgets.outcomes.cheese_words import BODY, CAUTIONS, COAT, KNIT, WordsPage
from widgets.outcomes.lever_list import LESS, MORE, LeverList, Way
from widgets.outcomes.opened import OpenedOutcome
from widgets.window import Window

LONG_MS = 120_000


def settle(qtbot: QtBot, window: Window) -> None:
    """Until every answer is there."""
    window.session.settle()
    window.session._bands.wait()
    QApplication.processEvents()
    qtbot.waitUntil(lambda: window.outcomes.opening.idle, timeout=LONG_MS)
    QApplication.processEvents()


def opened(qtbot: QtBot, window: Window, key: str = "moisture_pct") -> OpenedOutcome:
    """A line opened by a real click, answered."""
    lines = window.outcomes.list
    qtbot.mouseClick(lines, Qt.MouseButton.LeftButton, pos=lines.box_of(key).center().toPoint())
    settle(qtbot, window)
    page = window.outcomes.opening.page
    assert isinstance(page, OpenedOutcome)
    assert page.key == key
    return page


def value_of(recipe: Recipe, way: Way) -> float:
    """Where a setting stands in a recipe."""
    return {one.path: one.value for one in movables(recipe)}[way.setting.path]


def chip(levers: LeverList, row: int, sign: int) -> QPoint:
    """The middle of a way."""
    return levers.chip(row, sign).center().toPoint()


def in_sight(window: Window, widget: QWidget, point: QPoint) -> None:
    """Scroll a point of a widget into the visible part of the side; a pointer can't rest on what is scrolled away."""
    area = window.outcomes.area
    at = widget.mapTo(area.widget(), point)
    area.ensureVisible(at.x(), at.y(), 50, 50)


def test_a_click_opens_below_the_line_and_another_shuts(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    lines = window.outcomes.list
    assert page.isVisible()
    assert page.y() == pytest.approx(lines.box_of("moisture_pct").bottom(), abs=1.0)
    below = next(line.key for line in lines.every if line.key == "mnfs_pct")
    assert lines.top_of(below) >= page.y() + page.height() - 1
    assert lines.line_at(page.y() + 30) is None
    qtbot.mouseClick(lines, Qt.MouseButton.LeftButton, pos=lines.box_of("moisture_pct").center().toPoint())
    assert window.outcomes.opening.page is None
    assert lines.opened == ""


def test_by_keyboard_arrows_enter_and_esc(qtbot: QtBot, window: Window) -> None:
    lines = window.outcomes.list
    lines.setFocus()
    qtbot.keyClick(lines, Qt.Key.Key_Home)
    qtbot.keyClick(lines, Qt.Key.Key_Down)
    qtbot.keyClick(lines, Qt.Key.Key_Return)
    page = window.outcomes.opening.page
    assert page is not None
    assert page.key == "mnfs_pct"
    qtbot.keyClick(lines, Qt.Key.Key_Escape)
    assert window.outcomes.opening.page is None
    assert lines.hasFocus()


def test_tab_goes_from_the_line_into_what_is_open(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    window.outcomes.list.setFocus()
    walked = []
    for _ in range(8):
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        walked.append(QApplication.focusWidget())
    assert all(page.isAncestorOf(one) for one in walked)
    heights = [one.mapTo(page, one.rect().center()).y() for one in walked]
    assert all(after > before - 8 for before, after in pairwise(heights))
    at = walked.index(page.aim.field)
    assert walked[at + 1] is page.aim.ask


def test_a_figure_typed_on_an_outcome_is_aimed_at(qtbot: QtBot, window: Window) -> None:
    lines = window.outcomes.list
    lines.setFocus()
    qtbot.keyClick(lines, Qt.Key.Key_Home)
    qtbot.keyClick(lines, Qt.Key.Key_3)
    page = window.outcomes.opening.page
    assert isinstance(page, OpenedOutcome)
    assert page.key == "moisture_pct"
    field = page.aim.field
    qtbot.waitUntil(field.hasFocus)
    qtbot.keyClicks(field, "5.5")
    assert field.text() == "35.5"
    with qtbot.waitSignal(page.aim.wanted) as asked:
        qtbot.keyClick(field, Qt.Key.Key_Return)
    assert asked.args[0] == pytest.approx(35.5)


def test_every_row_of_the_verdict_and_its_source(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    verdict = window.session.verdict
    assert verdict is not None
    rows = [row for row in verdict.rows if row.quantity == "moisture_pct"]
    folds = page.windows.folds()
    assert len(folds) == len(rows) > 0
    assert all(row.source in fold.details.text() for row, fold in zip(rows, folds, strict=True))
    assert not folds[0].details.isVisible()
    tall = page.height()
    folds[0].head.setFocus()
    qtbot.keyClick(folds[0].head, Qt.Key.Key_Return)
    assert folds[0].details.isVisible()
    qtbot.waitUntil(lambda: page.height() > tall)


def test_the_source_of_a_limit_is_in_sight_and_one_click_opens_it(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    verdict = window.session.verdict
    assert verdict is not None
    rows = [row for row in verdict.rows if row.quantity == "moisture_pct"]
    links = [fold.source for fold in page.windows.folds()]
    for row, link in zip(rows, links, strict=True):
        assert link is not None
        assert link.isVisible()
        assert link.text() == row.source
    first, last = links[0], links[-1]
    assert first is not None
    assert last is not None
    in_sight(window, first, first.rect().center())
    qtbot.mouseClick(first, Qt.MouseButton.LeftButton)
    shown = window.help.look_up
    assert shown is not None
    assert rows[0].source.rstrip(".") in shown.text.toPlainText()
    shown.close()
    last.setFocus()
    qtbot.keyClick(last, Qt.Key.Key_Return)
    assert shown.isVisible()
    assert rows[-1].source.rstrip(".") in shown.text.toPlainText()
    shown.close()


def test_why_is_a_chain_whose_links_open_to_laws(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    why = window.outcomes.opening.answers.why(page.key)
    assert why is not None
    assert why.said is not None
    folds = page.links.folds()
    assert len(folds) == len(why.said.links) + 1
    law = why.said.links[0].laws[0]
    assert law.source in folds[0].details.text()
    assert law.label in folds[0].details.text()
    assert law.name not in folds[0].details.text()
    qtbot.mouseClick(folds[0].head, Qt.MouseButton.LeftButton)
    assert folds[0].details.isVisible()


def test_the_strongest_are_given_their_bands(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    levers = page.levers
    assert {path for path, _ in levers.bands} == {lever.setting.path for lever in levers.levers[:5]}
    for row, sign in ((0, LESS), (0, MORE)):
        found = levers.whisker(row, sign)
        assert found is not None
        assert found[0] < found[2]
        assert levers.band_words(levers.shown[row].setting.path, sign) in levers.told(levers.shown[row])
    assert levers.whisker(6, MORE) is None
    levers.set_pale()
    assert not levers.grab().isNull()


def test_pointing_previews_and_leaving_cancels(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    before = window.session.recipe
    in_sight(window, page.levers, chip(page.levers, 0, LESS))
    qtbot.mouseMove(page.levers, chip(page.levers, 0, LESS))
    qtbot.waitUntil(lambda: window.session.previewing)
    way = page.levers.at
    assert way is not None
    assert value_of(window.session.shown, way) == pytest.approx(way.setting.value - way.setting.step)
    settle(qtbot, window)
    told = page.levers.shown[0].down
    moved = window.session.forecast.outcomes["moisture_pct"].value
    kept = window.session.before
    assert kept is not None
    assert moved - kept.outcomes["moisture_pct"].value == pytest.approx(told, abs=0.3 * abs(told) + 0.02)
    qtbot.mouseMove(page, QPoint(2, 2))
    page.levers.leaveEvent(None)  # type: ignore[arg-type]
    assert not window.session.previewing
    assert window.session.recipe == before
    assert window.session.stack.count() == 0


def test_a_click_keeps_it_as_one_step_of_undo(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    before = window.session.recipe
    lever = page.levers.shown[0]
    qtbot.mouseClick(page.levers, Qt.MouseButton.LeftButton, pos=chip(page.levers, 0, MORE))
    assert page.levers.pale
    assert value_of(window.session.recipe, Way(lever.setting, MORE)) == pytest.approx(
        lever.setting.value + lever.setting.step
    )
    assert lever.setting.title in window.actions_["undo"].text()
    settle(qtbot, window)
    assert not page.levers.pale
    assert page.levers.shown[page.levers.row].setting.path == lever.setting.path
    window.actions_["undo"].trigger()
    assert window.session.recipe == before


def test_levers_by_keyboard(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    levers = page.levers
    levers.setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(levers, Qt.Key.Key_Down)
    qtbot.keyClick(levers, Qt.Key.Key_Left)
    assert levers.row == 1
    assert levers.at == Way(levers.shown[1].setting, LESS)
    assert window.session.previewing
    way = levers.at
    qtbot.keyClick(levers, Qt.Key.Key_Minus)
    assert not window.session.previewing
    assert value_of(window.session.recipe, way) == pytest.approx(way.setting.value - way.setting.step)
    assert window.session.stack.count() == 1
    qtbot.keyClick(levers, Qt.Key.Key_Escape)
    assert window.outcomes.list.hasFocus()


def test_where_a_direction_turns_stands_under_the_settings_and_under_the_field(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    assert not any("hardly dries" in fold.head.second for fold in page.turns.folds())
    window.session.commit(edits.edit(window.session.recipe, "warm", temperature_c=51.0), "hot")
    settle(qtbot, window)
    turn = next(fold for fold in page.turns.folds() if "hardly dries" in fold.head.second)
    assert turn.isVisible()
    head = turn.head
    in_sight(window, head, head.rect().center())
    qtbot.mouseClick(head, Qt.MouseButton.LeftButton)
    assert turn.details.isVisible()
    assert "Huber" in turn.details.text()
    window.session.choose("warm")
    QApplication.processEvents()
    assert "hardly dries" in window.stage_form._own.editors["temperature_c"].told.text()


def test_all_settings_on_demand(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    few = len(page.levers.shown)
    qtbot.mouseClick(page.more, Qt.MouseButton.LeftButton)
    assert len(page.levers.shown) == len(page.levers.levers) > few
    assert page.levers.way_at(QPointF(chip(page.levers, few, MORE))) is not None


def test_aim_finds_previews_and_applies(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    before = window.session.recipe
    wanted = round(window.session.forecast.outcomes["moisture_pct"].value - 1.0, 1)
    page.aim.field.setFocus()
    qtbot.keyClicks(page.aim.field, f"{wanted} %")
    qtbot.keyClick(page.aim.field, Qt.Key.Key_Return)
    assert window.outcomes.opening.page is page
    qtbot.waitUntil(lambda: page.aim.found is not None, timeout=LONG_MS)
    found = page.aim.found
    assert found is not None
    assert found.reached
    page.aim.apply.setFocus()
    assert window.session.shown == found.recipe
    qtbot.mouseClick(page.aim.apply, Qt.MouseButton.LeftButton)
    assert window.session.recipe == found.recipe
    assert window.session.stack.count() == 1
    assert window.session.forecast.outcomes["moisture_pct"].value == pytest.approx(wanted, abs=0.15)
    assert page.aim.apply.isHidden()
    assert page.aim.field.hasFocus()
    assert not window.session.previewing, "the settings below are not pointed at by that"
    assert page.aim.y() < page.levers.y(), "in sight when the outcome is opened"
    window.actions_["undo"].trigger()
    assert window.session.recipe == before


def test_a_lock_asks_for_another_way(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    wanted = window.session.forecast.outcomes["moisture_pct"].value - 1.0
    qtbot.keyClicks(page.aim.field, f"{wanted:.1f}")
    qtbot.keyClick(page.aim.field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.aim.found is not None, timeout=LONG_MS)
    assert page.aim.found is not None
    locked = page.aim.found.changes[0].setting
    page.aim._lock(locked, True)
    qtbot.waitUntil(lambda: page.aim.found is not None, timeout=LONG_MS)
    assert page.aim.found is not None
    assert locked.path not in {change.setting.path for change in page.aim.found.changes}


def test_a_key_locks_a_setting_of_the_list_for_aim(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    levers = page.levers
    levers.setFocus(Qt.FocusReason.TabFocusReason)
    strongest = levers.shown[levers.row].setting
    qtbot.keyClick(levers, Qt.Key.Key_L)
    assert levers.locks == {strongest.path}
    assert "locked" in levers.accessibleDescription()
    wanted = window.session.forecast.outcomes["moisture_pct"].value - 1.0
    qtbot.keyClicks(page.aim.field, f"{wanted:.1f}")
    qtbot.keyClick(page.aim.field, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: page.aim.found is not None, timeout=LONG_MS)
    assert page.aim.found is not None
    assert strongest.path not in {change.setting.path for change in page.aim.found.changes}
    qtbot.keyClick(levers, Qt.Key.Key_L)
    assert levers.locks == frozenset()
    handle = window.curve.control("cut", "cut_mm", "inside")
    handle.setFocus()
    qtbot.keyClick(handle, Qt.Key.Key_L)
    assert levers.locks == {("cut", "cut_mm")}
    window.session.choose("warm")
    window.stage_form.focus_field("temperature_c")
    window.actions_["lock"].trigger()
    assert levers.locks == {("cut", "cut_mm"), ("warm", "temperature_c")}
    for stage, form, field, path in (
        ("press", "step1", "load_kg", ("press", "steps.1.load_kg")),
        ("ripen", "given0", "bulk_pct", ("bulk", "bulk_pct")),
    ):
        window.session.choose(stage)
        editor = window.stage_form._forms[form].editors[field]
        editor.setFocus()
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
        assert path in levers.locks
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_L, Qt.KeyboardModifier.ControlModifier)
    handle.setFocus()
    qtbot.keyClick(handle, Qt.Key.Key_L)
    assert levers.locks == {("warm", "temperature_c")}
    window.curve.setFocus()
    window.actions_["lock"].trigger()
    assert "Nothing to lock" in window.status.text()
    qtbot.keyClick(levers, Qt.Key.Key_Escape)
    settle(qtbot, window)


def test_what_is_typed_for_aim() -> None:
    assert wanted_value("moisture_pct", "37,5") == 37.5
    assert wanted_value("moisture_pct", "37.5 %") == 37.5
    assert wanted_value("finish_min", "18 h") == 1080.0
    with pytest.raises(UnitError):
        wanted_value("moisture_pct", "dry")


def test_a_slip_in_aim_is_told_in_the_form(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    qtbot.keyClicks(page.aim.field, "very dry")
    qtbot.keyClick(page.aim.field, Qt.Key.Key_Return)
    assert page.aim.field.property("wrong")
    assert page.aim.sentence.text()


@pytest.mark.parametrize("key", [BODY, KNIT, COAT, CAUTIONS])
def test_words_about_the_cheese_open_to_reasons(qtbot: QtBot, window: Window, key: str) -> None:
    settle(qtbot, window)
    lines = {line.key: line for line in window.outcomes.list.words}
    assert lines[key].value
    window.outcomes.list.setFocus()
    window.outcomes.opening.toggle(key)
    page = window.outcomes.opening.page
    assert isinstance(page, WordsPage)
    assert page.part.column.count() > 0
    assert all(fold.details.text() for fold in page.folds())


def test_an_edit_elsewhere_pales_and_answers_anew(qtbot: QtBot, window: Window) -> None:
    page = opened(qtbot, window)
    old = page.levers.levers
    window.session.commit(edits.edit_end(window.session.recipe, "ripen", length_min=75.0), "ripen")
    assert page.levers.pale
    settle(qtbot, window)
    assert not page.levers.pale
    assert page.levers.levers != old


def test_units_and_themes_reach_what_is_open(qtbot: QtBot, window: Window) -> None:
    opened(qtbot, window)
    window.actions_["us"].trigger()
    settle(qtbot, window)
    page = window.outcomes.opening.page
    assert isinstance(page, OpenedOutcome)
    assert any("°F" in page.levers.told(lever) for lever in page.levers.levers)
    for scheme in ("dark", "contrast", "light"):
        window._set_scheme(scheme)
        assert not page.grab().isNull()
    window.actions_["metric"].trigger()
