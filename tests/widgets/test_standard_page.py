"""Maker story 14 in the window, with real events: rich milk, the ways to a ratio, and what becomes of the cheese."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QRadioButton
from pytestqt.qtbot import QtBot

from designer.recipe.edit import edit_milk
from tests.widgets.test_form import retype
from widgets.variants.standard_page import StandardPage
from widgets.window import Window


@pytest.fixture
def page(qtbot: QtBot, window: Window) -> StandardPage:
    """The page on 100 kg of milk of 5.0 % fat and 3.9 % protein, asked for 0.91 with cream and skim as in the story."""
    rich = edit_milk(
        window.session.recipe, "morning", fat_pct=5.0, protein_pct=3.9, casein_pct=None, volume_l=None, mass_kg=100.0
    )
    window.session.commit(rich, "rich")
    window.actions_["standardise"].trigger()
    made = window.opened["standardise"]
    assert isinstance(made, StandardPage)
    for key, fat, protein in (("cream", "40", "2.2 %"), ("skim", "0.06 %", "4.05")):
        made.liquids[key][0].setText(fat)
        retype(qtbot, made.liquids[key][1], protein)
    retype(qtbot, made.ratio, "0.91")
    return made


def test_cream_off_or_skim_on(page: StandardPage) -> None:
    assert [offer.way for offer in page.offers] == ["cream off", "skim"]
    assert page.offers[0].kg_per_100kg == pytest.approx(1.90, abs=0.05)
    assert page.offers[1].kg_per_100kg == pytest.approx(16.3, abs=0.2)
    assert "4.29 % fat" in page.sentence.text()
    assert "1.90 kg of cream" in page.findChildren(QRadioButton)[0].text()


def test_fat_in_dry_matter_is_shown_before_and_after_and_is_lower(page: StandardPage) -> None:
    lines = [page.outcomes.topLevelItem(at) for at in range(page.outcomes.topLevelItemCount())]
    fdm = next(line for line in lines if line is not None and line.text(0) == "Fat in dry matter")
    before, after = (float(fdm.text(column).split()[0]) for column in (1, 2))
    assert after < before - 1.0


def test_it_is_kept_as_one_step_of_undo(qtbot: QtBot, page: StandardPage, window: Window) -> None:
    before = window.session.recipe
    page.choice.button(1).setFocus()
    qtbot.keyClick(page.choice.button(1), Qt.Key.Key_Space)
    qtbot.mouseClick(page.apply, Qt.MouseButton.LeftButton)
    assert len(window.session.recipe.milks) == 2
    assert "stands there already" in page.sentence.text()
    assert not page.apply.isEnabled()
    window.actions_["undo"].trigger()
    assert window.session.recipe == before


@pytest.mark.parametrize("text", ["rich", "9", "0.91 kg"])
def test_what_cannot_be_is_said_beside_the_field(qtbot: QtBot, page: StandardPage, text: str) -> None:
    retype(qtbot, page.ratio, text)
    assert page.wrong.isVisible()
    assert not page.apply.isEnabled()


def test_half_a_liquid_is_asked_for(qtbot: QtBot, page: StandardPage) -> None:
    retype(qtbot, page.liquids["cream"][1], " ")
    assert "both the fat and the protein" in page.wrong.text()


def test_a_milk_that_stands_there_is_told_and_can_be_tried_leaner(qtbot: QtBot, window: Window) -> None:
    window.actions_["standardise"].trigger()
    page = window.opened["standardise"]
    assert isinstance(page, StandardPage)
    retype(qtbot, page.ratio, "0.91")
    retype(qtbot, page.ratio, f"{page._now():.2f}")
    assert not page.offers
    assert "casein" in page.holds.text()
    assert "Usual for Cheddar: 0.91" in page.usual.text()
    assert page.outcomes.columnCount() == 2
    assert page.outcomes.topLevelItemCount() > 5
    qtbot.mouseClick(page.tries[1], Qt.MouseButton.LeftButton)
    assert [offer.way for offer in page.offers] == ["cream off", "skim"]
    assert page.outcomes.columnCount() == 4
    assert not page.tries[1].isVisible()
