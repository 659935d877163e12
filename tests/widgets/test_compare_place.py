"""The place Compare with real events: put another make beside, unfold, read, take a value across, undo."""

from __future__ import annotations

import itertools
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QTreeWidgetItem
from pytestqt.qtbot import QtBot

from designer.judge.beside import Lanes
from designer.judge.compare import decimals
from designer.recipe import versions
from designer.recipe.edit import edit
from designer.recipe.examples import examples
from designer.recipe.file import write
from widgets import wording
from widgets.compare.place import ComparePlace
from widgets.compare.worth_table import COLUMNS, DIFFERENCE
from widgets.files import read
from widgets.make_curve.vat import read_marks
from widgets.window import Window
from widgets.wording import MINUS

LONG_MS = 60_000


@pytest.fixture
def place(window: Window) -> ComparePlace:
    """The place, opened by its button."""
    window.rail.buttons["compare"].click()
    made = window.opened["compare"]
    assert isinstance(made, ComparePlace)
    return made


def answered(qtbot: QtBot, place: ComparePlace) -> None:
    """Wait until what is shown belongs to the open make."""
    qtbot.waitUntil(lambda: place.fresh, timeout=LONG_MS)


@pytest.fixture
def beside(qtbot: QtBot, place: ComparePlace, window: Window, tmp_path: Path) -> ComparePlace:
    """A make cooked cooler and cut coarser beside the open one, read from a file."""
    other = edit(edit(window.session.recipe, "warm", temperature_c=37.0), "cut", cut_mm=12.0)
    path = tmp_path / "cooler.toml"
    write(other, path)
    place.open_file(path)
    answered(qtbot, place)
    return place


def tops(place: ComparePlace) -> list[QTreeWidgetItem]:
    """The top lines of the table."""
    made = (place.table.topLevelItem(at) for at in range(place.table.topLevelItemCount()))
    return [item for item in made if item is not None]


def figure(text: str) -> float:
    """A figure of the table as a number, nothing is nought; hours and minutes as minutes."""
    if ":" in text:
        hours, minutes = text.lstrip("+" + MINUS).split(":")
        return (60.0 * int(hours) + int(minutes)) * (-1.0 if text.startswith(MINUS) else 1.0)
    return float(text.replace(MINUS, "-")) if text else 0.0


def test_the_empty_place_teaches_with_two_buttons(place: ComparePlace) -> None:
    assert place.stack.currentIndex() == 0
    assert place.first_open.isVisible()
    assert len(place.partners.all.actions()) == 5


def test_equal_stages_are_folded_and_unfold_by_key(qtbot: QtBot, beside: ComparePlace) -> None:
    alike = [item for item in tops(beside) if item.text(0).endswith("alike")]
    assert alike
    assert not any(item.isExpanded() for item in alike)
    folded = sum(item.childCount() for item in alike)
    assert folded == sum(line.folded for line in beside.answer.comparison.lines)  # type: ignore[union-attr]
    beside.table.setFocus()
    beside.table.setCurrentItem(alike[0])
    qtbot.keyClick(beside.table, Qt.Key.Key_Right)
    assert alike[0].isExpanded()
    assert not beside.take.isEnabled()


def test_the_parts_shown_add_up_to_the_difference_shown(qtbot: QtBot, place: ComparePlace) -> None:
    gouda = next(path for path in examples() if "gouda" in path.name)
    place.open_file(gouda)
    answered(qtbot, place)
    lines = tops(place)
    assert sum(1 for _ in place.table.items()) == len(place.answer.comparison.differences)  # type: ignore[union-attr]
    for column, (key, _) in enumerate(COLUMNS, 1):
        parts = sum(figure(item.text(column)) for item in place.table.items()) + figure(lines[-1].text(column))
        assert parts == pytest.approx(figure(lines[0].text(column)), abs=0.01 * 10.0 ** -decimals(key))


def test_what_goes_only_together_is_one_difference_and_no_stage_of_it_is_called_alike(
    qtbot: QtBot, place: ComparePlace
) -> None:
    place.open_file(next(path for path in examples() if "alpine" in path.name))
    answered(qtbot, place)
    assert place.answer is not None
    found = place.answer.comparison
    assert any(len(one.steps) > 1 for one in found.differences)
    alike = sum(item.childCount() for item in tops(place) if item.text(0).endswith("alike"))
    assert alike == sum(line.folded for line in found.lines)
    assert len(list(place.table.items())) == len(found.differences)


def test_a_value_is_taken_across_by_enter_and_undone(qtbot: QtBot, beside: ComparePlace, window: Window) -> None:
    before = window.session.recipe
    item = next(one for one in beside.table.items() if "37" in one.text(0))
    beside.table.setFocus()
    beside.table.setCurrentItem(item)
    qtbot.keyClick(beside.table, Qt.Key.Key_Return)
    assert window.session.recipe == edit(before, "warm", temperature_c=37.0)
    assert not beside.take.isEnabled(), "what is shown is of the make before"
    answered(qtbot, beside)
    assert len(list(beside.table.items())) == 1
    window.session.stack.undo()
    assert window.session.recipe == before
    answered(qtbot, beside)
    assert len(list(beside.table.items())) == 2


def test_a_value_is_taken_across_by_the_button(qtbot: QtBot, beside: ComparePlace, window: Window) -> None:
    item = next(one for one in beside.table.items() if one.data(0, DIFFERENCE).steps[0].part == "cut")
    beside.table.setCurrentItem(item)
    qtbot.mouseClick(beside.take, Qt.MouseButton.LeftButton)
    assert next(one for one in window.session.recipe.stages if one.id == "cut").cut_mm == 12.0  # type: ignore[attr-defined]
    assert window.session.stack.count() == 1
    answered(qtbot, beside)


def test_the_pointer_and_the_arrows_read_both_curves(qtbot: QtBot, beside: ComparePlace) -> None:
    curves = beside.curves
    qtbot.mouseMove(curves, QPoint(curves.width() // 2, 60))
    curves.setFocus()
    qtbot.keyClick(curves, Qt.Key.Key_Home)
    qtbot.keyClick(curves, Qt.Key.Key_Right)
    assert curves.minute == 5.0
    short = curves.end_min
    beside.spans.button(1).click()
    assert curves.end_min > short


def test_the_newest_of_two_questions_is_answered(qtbot: QtBot, beside: ComparePlace, window: Window) -> None:
    first = edit(window.session.recipe, "cut", cut_mm=9.0)
    second = edit(window.session.recipe, "cut", cut_mm=10.0)
    beside.put_beside(first)
    beside.put_beside(second)
    answered(qtbot, beside)
    assert beside.answer is not None
    assert beside.answer.comparison.right == second


def test_a_saved_version_can_stand_beside(qtbot: QtBot, place: ComparePlace, window: Window, tmp_path: Path) -> None:
    path = tmp_path / "kept.toml"
    versions.save(window.session.recipe, path, note="first")
    assert window.files.save_to(path)
    place.partners.versions.aboutToShow.emit()
    place.partners.versions.actions()[-1].trigger()
    answered(qtbot, place)
    assert place.answer is not None
    assert not place.answer.comparison.differences
    assert place.called == "version 1"
    place.away.click()
    assert place.stack.currentIndex() == 0


def test_a_file_that_is_no_recipe_is_said_in_place(place: ComparePlace, tmp_path: Path) -> None:
    path = tmp_path / "broken.toml"
    path.write_text("name = 3 3")
    place.open_file(path)
    assert "broken.toml" in place.trouble.text()
    assert place.beside is None


def test_the_middle_of_a_style_follows_the_open_make(qtbot: QtBot, place: ComparePlace, window: Window) -> None:
    menu = place.partners.middles
    menu.aboutToShow.emit()
    assert menu.actions()[0].text() == "Cheddar", "the recipe's own style stands first"
    menu.actions()[0].trigger()
    answered(qtbot, place)
    assert "the middle of Cheddar" in place.called
    before = place.table.chosen()
    assert before is not None
    qtbot.keyClick(place.table, Qt.Key.Key_Return)
    answered(qtbot, place)
    said = [item.data(0, DIFFERENCE).sentence for item in place.table.items()]
    assert before.sentence not in said
    window.session.stack.undo()
    answered(qtbot, place)


def test_lanes_of_a_vat_both_ways(qtbot: QtBot, place: ComparePlace, window: Window) -> None:
    twins = read(next(path for path in examples() if "twins" in path.name))[0]
    window.session.load(twins, None, None)
    place.partners.lanes.aboutToShow.emit()
    place.partners.lanes.actions()[0].trigger()
    answered(qtbot, place)
    assert place.beside == Lanes(None, "plain")
    qtbot.mouseClick(place.swap, Qt.MouseButton.LeftButton)
    assert place.beside == Lanes("plain", None)
    answered(qtbot, place)
    drain = next(item for item in place.table.items() if item.data(0, DIFFERENCE).steps[0].part == "plain-drain")
    place.table.setCurrentItem(drain)
    qtbot.mouseClick(place.take, Qt.MouseButton.LeftButton)
    assert window.session.recipe.stages == twins.stages
    assert window.session.recipe.branches[0] != twins.branches[0]
    answered(qtbot, place)
    window.session.stack.undo()
    assert window.session.recipe == twins
    window.session.commit(twins.but(branches=()), "no branch any more")
    assert place.stack.currentIndex() == 0
    assert "plain" in place.trouble.text()


def test_a_long_comparison_is_stopped_and_begun_again(qtbot: QtBot, place: ComparePlace) -> None:
    with qtbot.waitSignal(place.worker.progress, timeout=LONG_MS):
        place.open_file(next(path for path in examples() if "alpine" in path.name))
    assert place.halt.isVisible()
    assert place.bar.maximum() > 100
    qtbot.mouseClick(place.halt, Qt.MouseButton.LeftButton)
    assert place.answer is None
    assert not place.bar.isVisible()
    qtbot.mouseClick(place.halt, Qt.MouseButton.LeftButton)
    assert place.bar.isVisible()
    answered(qtbot, place)
    assert not place.halt.isVisible()


def test_the_comparison_is_shown_as_printed_and_written(qtbot: QtBot, beside: ComparePlace, tmp_path: Path) -> None:
    qtbot.mouseClick(beside.print, Qt.MouseButton.LeftButton)
    assert beside.preview.isVisible()
    assert any("against" in words for words in beside.preview.sheet().words())
    path = tmp_path / "comparison.pdf"
    beside.preview.save_to(path)
    assert path.read_bytes().startswith(b"%PDF")
    qtbot.keyClick(beside.preview, Qt.Key.Key_Escape)
    assert beside.table.isVisible()


def test_a_chosen_difference_marks_its_stage_in_both_curves(beside: ComparePlace) -> None:
    cut = next(item for item in beside.table.items() if item.data(0, DIFFERENCE).steps[0].part == "cut")
    beside.table.setCurrentItem(cut)
    assert len(beside.curves.spans) == 2
    assert all(span is not None and span[0] < span[1] for span in beside.curves.spans)
    beside.grab()


def test_an_outcome_has_its_short_name_where_the_long_one_would_be_cut(beside: ComparePlace) -> None:
    pair = beside.outcomes
    names = {}
    for wide in (320, 700):
        pair.resize(wide, pair.height())
        names[wide] = [pair.topLevelItem(at).text(0) for at in range(pair.topLevelItemCount())]
    assert "Calcium" in names[320]
    assert "Calcium per g protein" in names[700]


@pytest.mark.parametrize("tall", [36.0, 37.0, 50.0, 180.0])
@pytest.mark.parametrize(("low", "high"), [(26.9, 43.1), (4.9, 7.0), (5.1, 6.7), (28.0, 96.0)])
def test_beside_a_pane_of_any_height_a_scale_can_be_read(low: float, high: float, tall: float) -> None:
    told = read_marks(low, high, tall, 13.0)
    assert len(told) >= 2
    assert min(b - a for a, b in itertools.pairwise(told)) / (high - low) * tall >= 10.0


def test_hours_of_the_curves_are_told_as_a_clock_has_them(beside: ComparePlace) -> None:
    for width in (240.0, 500.0, 1500.0):
        minutes = beside.curves.minutes_told(width)
        assert minutes[0] == 0.0
        assert {minute % 15.0 for minute in minutes} == {0.0}
        assert all("." not in wording.length(minute) for minute in minutes)
