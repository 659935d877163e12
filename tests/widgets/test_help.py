"""Help in the window: words and sources looked up, every action found and done, keys written down, the look around."""

from __future__ import annotations

from pathlib import Path

import pypdf
import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox
from pytestqt.qtbot import QtBot

from designer.command import model_version
from designer.make.constants import table
from designer.quantities import QUANTITIES
from designer.recipe.stages.kinds import KINDS
from widgets.help.action_list import in_menus, plain
from widgets.help.desk import Desk, key_of
from widgets.help.entries import (
    CONSTANT,
    FIGURE,
    LAW,
    SETTING,
    WORD,
    constants,
    figure,
    figures,
    settings,
    terms,
    word_of,
    words,
)
from widgets.help.keys import Keys
from widgets.help.look_around import beside
from widgets.outcomes.check_place import SOURCE, WHAT, CheckPlace
from widgets.window import Window

LONG_MS = 120_000


@pytest.fixture
def desk(window: Window) -> Desk:
    """The help of the window."""
    return window.help


# ---- the glossary


def test_the_glossary_says_each_word_once_and_plainly() -> None:
    names = [term["name"].lower() for term in terms()]
    assert 80 <= len(names) == len(set(names))
    for term in terms():
        assert set(term) <= {"name", "also", "says", "more", "of", "place", "source", "have"}, term["name"]
        assert term["says"].endswith("."), term["name"]
        assert term["says"].count(". ") == 0, term["name"]
        assert ("source" in term) == ("have" in term), term["name"]


def test_words_speak_of_what_there_is(window: Window) -> None:
    places = {term["place"] for term in terms() if "place" in term}
    assert places <= set(window.places)
    for key in ("mnfs_pct", "fdm_pct", "salt_in_moisture_pct", "ph_24h", "moisture_pct", "floc_min"):
        assert key in QUANTITIES
        assert word_of(key) is not None, key


# ---- looking up


def test_every_figure_of_the_verdict_and_every_constant_has_a_source(window: Window) -> None:
    found = [*figures(window.session.verdict), *constants()]
    assert window.session.verdict is not None
    assert len(found) == len(window.session.verdict.rows) + len(table())
    assert [one.title for one in found if not (one.source and one.have)] == []
    assert {one.kind for one in found} == {FIGURE, CONSTANT}
    held = {one.keys for one in settings("metric")}
    assert {frozenset({"temperature_c"}), frozenset({"cut_mm"})} <= held


def test_search_finds_by_words_and_by_other_names(window: Window, desk: Desk) -> None:
    window.actions_["look_up"].trigger()
    shown = desk.look_up
    assert shown is not None
    assert shown.focusWidget() is shown.search
    QTest.keyClicks(shown.search, "fat-free")
    items = [shown.list.item(row) for row in range(shown.list.count())]
    assert "MNFS" in [item.text()[:4] for item in items if not item.isHidden()]
    shown.look("Holter", CONSTANT)
    assert "Holter" in shown.text.toPlainText()
    assert "How we have it" in shown.text.toPlainText()
    shown.look("syneresis", LAW)
    assert "How fast rennet curd gives off whey: A rate per minute" in shown.text.toPlainText()
    assert "bands draw from that range" in shown.text.toPlainText()
    shown.look("xyzzy")
    assert "Nothing found" in shown.count.text()
    shown.close()


def test_f1_on_an_outcome_and_on_a_field_opens_its_word(window: Window, desk: Desk) -> None:
    window.outcomes.list.current = "mnfs_pct"
    window.outcomes.list.setFocus()
    assert key_of(QApplication.focusWidget()) == "mnfs_pct"
    window.actions_["look_up"].trigger()
    shown = desk.look_up
    assert shown is not None
    assert shown.text.toPlainText().startswith("MNFS")
    shown.close()
    window.stage_form.focus_field("temperature_c")
    assert key_of(QApplication.focusWidget()) == "temperature_c"


def test_the_check_is_as_sharp_as_the_outcomes(window: Window) -> None:
    window.go("check")
    tree = window.opened["check"].tree  # type: ignore[attr-defined]
    rows = [tree.topLevelItem(at).child(row) for at in range(tree.topLevelItemCount())
            for row in range(tree.topLevelItem(at).childCount())]  # fmt: skip
    told = {row.text(1) for row in rows if row.text(WHAT).startswith("Salt in moisture")}
    assert told == {f"{window.session.forecast.outcomes['salt_in_moisture_pct'].value:.2f} %"}
    assert not any(row.text(1).endswith(".0 min") for row in rows)


def test_the_check_speaks_the_units_of_the_maker(window: Window, desk: Desk) -> None:
    window.go("check")
    place = window.opened["check"]
    assert isinstance(place, CheckPlace)

    def lines() -> dict[str, list[str]]:
        found = place.tree.findItems("*", Qt.MatchFlag.MatchWildcard | Qt.MatchFlag.MatchRecursive, WHAT)
        return {item.text(WHAT): [item.text(at) for at in range(1, 4)] for item in found}

    metric = lines()
    window.actions_["us"].trigger()
    us = lines()
    size = window.session.recipe.stage("cut").cut_mm  # type: ignore[attr-defined]
    assert us["Cut size"][0] == f"{size / 25.4:.3f} in"
    assert us["Ripening temperature"][0].endswith("°F")
    assert us["Ripening temperature"][1].endswith("°F")
    assert "°F" in us["Ripening temperature"][2]
    assert not any("°C" in text or " mm" in text for texts in us.values() for text in texts)
    assert us["Moisture"] == metric["Moisture"]
    row = next(row for row in window.session.verdict.rows if row.quantity == "ripen_c")  # type: ignore[union-attr]
    place.source_asked.emit(row)
    assert desk.look_up is not None
    assert "°F" in desk.look_up.text.toPlainText()
    desk.look_up.close()
    window.actions_["metric"].trigger()
    assert lines() == metric


def test_a_row_of_the_check_opens_its_source(window: Window, desk: Desk) -> None:
    window.go("check")
    tree = window.opened["check"].tree  # type: ignore[attr-defined]
    row = tree.topLevelItem(0).child(0)
    tree.setCurrentItem(row)
    tree.setFocus()
    QTest.keyClick(tree, Qt.Key.Key_Return)
    assert desk.look_up is not None
    said = desk.look_up.text.toPlainText()
    assert "Source:" in said
    assert "Moisture" in said
    asked: list[str] = []
    desk.look_up.asked.connect(asked.append)
    QTest.mouseClick(desk.look_up.there, Qt.MouseButton.LeftButton)
    assert asked == ["check"]
    desk.look_up.close()


def test_one_click_on_a_source_of_the_check_opens_that_very_source(qtbot: QtBot, window: Window, desk: Desk) -> None:
    window.go("check")
    place = window.opened["check"]
    assert isinstance(place, CheckPlace)
    tree = place.tree
    qtbot.waitUntil(lambda: not window.session.bands_stale, timeout=LONG_MS)  # the rows are made anew with them
    section = tree.topLevelItem(tree.topLevelItemCount() - 1)
    assert section is not None
    last = section.child(section.childCount() - 1)
    tree.scrollToItem(last)
    QApplication.processEvents()
    y = tree.visualItemRect(last).center().y()
    words, source = (QPoint(tree.header().sectionViewportPosition(at) + 20, y) for at in (WHAT, SOURCE))
    assert tree.itemAt(source) is last
    QTest.mouseMove(tree.viewport(), words)
    QTest.mouseClick(tree.viewport(), Qt.MouseButton.LeftButton, pos=words)
    assert desk.look_up is None, "only the source is a link"
    before = tree.viewport().grab().toImage()
    QTest.mouseMove(tree.viewport(), source)
    qtbot.waitUntil(lambda: tree.viewport().cursor().shape() == Qt.CursorShape.PointingHandCursor)
    assert tree.viewport().grab().toImage() != before, "it is underlined"
    QTest.mouseClick(tree.viewport(), Qt.MouseButton.LeftButton, pos=source)
    assert desk.look_up is not None
    said = desk.look_up.text.toPlainText()
    assert last.text(SOURCE).rpartition(" (")[0].rstrip(".") in said
    assert last.text(2).split()[0] in said
    desk.look_up.close()
    QTest.mouseMove(tree.viewport(), words)
    qtbot.waitUntil(lambda: tree.viewport().cursor().shape() == Qt.CursorShape.ArrowCursor)


def test_every_row_of_the_verdict_is_opened_as_itself(window: Window, desk: Desk) -> None:
    verdict = window.session.verdict
    assert verdict is not None
    for row in verdict.rows:
        desk.show_source(row)
        assert desk.look_up is not None
        shown = desk.look_up.entries[desk.look_up.list.currentRow()]
        assert shown == figure(row, verdict.name)
        assert row.source.rstrip(".") in desk.look_up.text.toPlainText()
    assert desk.look_up is not None
    desk.look_up.close()


# ---- actions and keys


def test_every_action_of_every_menu_is_in_the_list(window: Window, desk: Desk) -> None:
    found = desk.found()
    held = {id(one.action) for one in found}
    for spec, action in window.actions_.by_key.items():
        assert id(action) in held, spec
    kinds = [one for one in found if one.where.endswith("Insert after the selected")]
    assert len(kinds) == len(KINDS)
    assert {one.words for one in found if one.where == "Places"} == {
        f"Go to {place.name}" for place in window.places.values() if not place.under
    }
    keys = [one.keys for one in found if one.keys]
    assert len(keys) == len(set(keys)), sorted(keys)


def test_an_action_is_found_and_done_by_keys(window: Window, desk: Desk) -> None:
    window.actions_["all_actions"].trigger()
    shown = desk.actions
    assert shown is not None
    QTest.keyClicks(shown.search, "duplic")
    assert len(shown.shown()) == 1
    before = len(window.session.recipe.stages)
    QTest.keyClick(shown.search, Qt.Key.Key_Return)
    assert len(window.session.recipe.stages) == before + 1
    assert not shown.isVisible()


def test_the_list_moves_by_arrows_and_says_when_nothing_fits(window: Window, desk: Desk) -> None:
    window.actions_["all_actions"].trigger()
    shown = desk.actions
    assert shown is not None
    QTest.keyClicks(shown.search, "stage")
    first = shown.row()
    QTest.keyClick(shown.search, Qt.Key.Key_Down)
    assert shown.row() > first
    shown.search.setText("xyzzy")
    assert shown.none.isVisible()
    QTest.keyClick(shown.search, Qt.Key.Key_Return)
    assert shown.isVisible()
    shown.reject()


def test_menu_words_without_their_marks(window: Window) -> None:
    assert plain("&Save &as…") == "Save as"
    assert plain("Fish && chips") == "Fish & chips"
    assert all("&" not in one.words for one in in_menus(window.menuBar()))


def test_keys_are_written_as_a_pdf(qtbot: QtBot, window: Window, desk: Desk, tmp_path: Path) -> None:
    page = Keys(desk.found(), window)
    qtbot.addWidget(page)
    assert "Ctrl+Shift+P" in page.text.toPlainText()
    assert page.save_to(tmp_path / "keys.pdf")
    text = "".join(one.extract_text() for one in pypdf.PdfReader(tmp_path / "keys.pdf").pages)
    assert "Ctrl+Shift+P" in text
    assert not page.save_to(tmp_path / "nowhere" / "keys.pdf")
    assert "could not be written" in page.said.text()


# ---- the look around


def test_the_look_around_shows_real_things_and_blocks_nothing(window: Window, desk: Desk) -> None:
    focus = QApplication.focusWidget()
    window.actions_["around"].trigger()
    around = desk.around
    assert around.shown
    assert QApplication.focusWidget() is focus
    for _ in range(len(around.steps) - around.at - 1):
        where = around.steps[around.at].where()
        assert window.rect().contains(where.center())
        assert around.note.geometry().top() >= 0
        assert window.rect().contains(around.note.geometry())
        at = around.at
        QTest.mouseClick(around.next, Qt.MouseButton.LeftButton)
        assert around.at == at + 1
    QTest.mouseClick(around.back, Qt.MouseButton.LeftButton)
    assert around.at == len(around.steps) - 2
    around.pause()


def test_the_look_around_waits_and_goes_on(window: Window, desk: Desk) -> None:
    desk.start_around()
    around = desk.around
    QTest.mouseClick(around.next, Qt.MouseButton.LeftButton)
    at = around.at
    window.go("check")
    assert not around.shown
    desk.start_around()
    assert around.shown
    assert around.at == at
    QTest.mouseClick(around.later, Qt.MouseButton.LeftButton)
    assert not around.shown
    assert window.preferences.look_around


def test_closed_for_good_it_does_not_come_by_itself(window: Window, desk: Desk) -> None:
    desk.offer_around()
    assert desk.around.shown
    QTest.mouseClick(desk.around.end, Qt.MouseButton.LeftButton)
    assert not window.preferences.look_around
    desk.offer_around()
    assert not desk.around.shown
    window.actions_["around"].trigger()
    assert desk.around.shown
    desk.around.pause()


def test_a_note_stands_beside_its_thing_inside_the_window() -> None:
    window = QRect(0, 0, 1366, 768)
    for thing in (QRect(0, 0, 80, 768), QRect(1030, 0, 336, 768), QRect(100, 50, 900, 300), window):
        at = beside(thing, 340, 180, window)
        note = QRect(at.x(), at.y(), 340, 180)
        assert window.contains(note)
        assert thing == window or not note.intersects(thing)


def test_words_are_searched_small() -> None:
    assert all(one.searched == one.searched.lower() and one.kind == WORD for one in words())
    assert SETTING in {one.kind for one in settings("us")}


def test_about_tells_the_version_and_the_licence(window: Window) -> None:
    window.actions_["about"].trigger()
    box = window.findChild(QMessageBox)
    assert model_version() in box.text()
    assert "MIT" in box.informativeText()
    box.close()
