"""A style as rows: what they say, what is typed, how they change it."""

from __future__ import annotations

import pytest

from designer.judge.style_rows import StyleRow, addable, figure_of, rows, with_added, with_row
from designer.units import UnitError
from styles import house
from styles.house import Figures
from styles.reader import Style, keys, style

FIGURES = Figures(
    {"moisture_pct": 41.0, "fdm_pct": 48.0},
    {"cut_mm": 8.0, "brine_h": 20.0},
    {("ph", "drain"): 6.4, ("ph", "h24"): 5.2},
)


@pytest.fixture
def own() -> Style:
    return house.from_style(style("gouda"), "Weirside Ring")


def row(of: Style, part: str, key: str, at: str = "") -> StyleRow:
    return next(one for one in rows(of) if one.path == (part, key, at))


@pytest.mark.parametrize("key", keys())
def test_every_figure_of_a_style_is_a_row_that_reads_what_it_shows(key: str) -> None:
    for one in rows(style(key)):
        for end in (one.low, one.high):
            if end is not None:
                assert one.read(one.shown(end)) == pytest.approx(end, rel=0.01, abs=0.006)
        assert one.source
        assert one.have


def test_units_are_understood_and_a_bare_number_is_in_the_unit_shown(own: Style) -> None:
    cook = row(own, "window", "cook_c")
    assert cook.read("37,5") == 37.5
    assert cook.read("100 °F") == pytest.approx(37.78, abs=0.01)
    assert cook.read("100", "us") == pytest.approx(37.78, abs=0.01)
    assert row(own, "window", "cut_mm").read("1/4 in") == pytest.approx(6.35)
    assert row(own, "window", "press_h").read("90 min") == 1.5
    assert cook.read(" ") is None
    with pytest.raises(UnitError):
        cook.read("5 kg")
    with pytest.raises(UnitError, match="no unit"):
        row(own, "window", "floc_min").read("12")


def test_a_row_changes_and_goes_and_its_source_is_the_makers(own: Style) -> None:
    changed = with_row(own, row(own, "window", "cut_mm"), 6.0, 9.0)
    assert (row(changed, "window", "cut_mm").low, row(changed, "window", "cut_mm").source) == (6.0, house.OWN)
    assert row(changed, "window", "cook_c") == row(own, "window", "cook_c")
    gone = with_row(changed, row(changed, "gate", "ph", "h24"), None, None)
    assert not any(one.path == ("gate", "ph", "h24") for one in rows(gone))


def test_several_sources_of_one_range_are_told_apart_until_ones_own_stands_in_their_place() -> None:
    own = house.from_style(style("cheddar"), "Hill Round")
    cuts = [one for one in rows(own) if one.key == "cut_mm"]
    assert len(cuts) == len({one.path for one in cuts}) > 1
    (mine,) = [one for one in rows(with_row(own, cuts[1], 8.0, 10.0)) if one.key == "cut_mm"]
    assert (mine.low, mine.source, mine.twin) == (8.0, house.OWN, "")
    assert all(len({one.path for one in rows(style(key))}) == len(rows(style(key))) for key in keys())


def test_law_stays(own: Style) -> None:
    assert not any(one.editable for one in rows(own) if one.part == "law")
    assert {one.part for one in rows(own)} == {"law", "window", "gate"}


def test_what_is_missing_can_be_added_around_the_figures_of_a_make(own: Style) -> None:
    (first, second) = addable(own, "limit", FIGURES)
    assert [first.key, second.key] == ["fdm_pct", "moisture_pct"]
    limited = with_added(own, second)
    assert (row(limited, "limit", "moisture_pct").low, row(limited, "limit", "moisture_pct").high) == (40.0, 42.0)
    assert [one.key for one in addable(limited, "limit", FIGURES)] == ["fdm_pct"]
    assert [one.at for one in addable(own, "gate", FIGURES)] == ["drain"]
    assert "brine_h" in {one.key for one in addable(own, "window", FIGURES)}


def test_the_figure_of_a_make_stands_beside(own: Style) -> None:
    assert figure_of(row(own, "window", "cut_mm"), FIGURES) == 8.0
    assert figure_of(row(own, "gate", "ph", "h24"), FIGURES) == 5.2
    assert figure_of(row(own, "law", "dry_matter_pct", "codex"), FIGURES) == 59.0
    assert figure_of(row(own, "window", "cook_c"), FIGURES) is None
