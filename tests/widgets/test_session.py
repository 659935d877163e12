"""The session: undo by snapshots, previews, bands that follow, and any number of edits undone."""

from __future__ import annotations

from functools import cache
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pytestqt.qtbot import QtBot

from designer.forecast import Forecast, forecast
from designer.recipe import edit as edits
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.file import read
from designer.recipe.split_off import split_off
from tests.widgets.conftest import CHEDDAR
from widgets.carry import carried
from widgets.remembered import MOST, Remembered
from widgets.session import Session

RECIPE = read(CHEDDAR)


def longer(recipe: Recipe, minutes: float, stage: str = "ripen") -> Recipe:
    return edits.edit_end(recipe, stage, length_min=minutes)


def test_an_edit_is_a_step_and_goes_back(session: Session, recipe: Recipe) -> None:
    session.commit(longer(recipe, 75.0), "length")
    assert session.modified
    assert session.forecast.stages[0].end_min == pytest.approx(75.0)
    session.stack.undo()
    assert session.recipe == recipe
    assert session.forecast.stages[0].end_min == pytest.approx(60.0)
    assert not session.modified


def test_an_edit_that_changes_nothing_is_no_step(session: Session, recipe: Recipe) -> None:
    session.commit(longer(recipe, 60.0), "length")
    assert session.stack.count() == 0


def test_nudges_merge_and_a_nudge_back_leaves_nothing(session: Session, recipe: Recipe) -> None:
    for minutes in (61.0, 62.0, 63.0):
        session.commit(longer(recipe, minutes), "length", key=("ripen", "end"))
    assert session.stack.count() == 1
    session.commit(recipe, "length", key=("ripen", "end"))
    assert session.stack.count() == 0
    assert session.recipe == recipe


def test_nudges_do_not_merge_over_a_save(session: Session, recipe: Recipe, tmp_path: Path) -> None:
    session.commit(longer(recipe, 61.0), "length", key="k")
    session.saved(tmp_path / "a.toml", "")
    session.commit(longer(recipe, 62.0), "length", key="k")
    assert session.modified
    session.stack.undo()
    assert not session.modified


def test_a_preview_is_shown_but_not_kept(qtbot: QtBot, session: Session, recipe: Recipe) -> None:
    with qtbot.waitSignal(session.forecastChanged):
        session.preview(longer(recipe, 90.0))
    assert session.previewing
    assert session.recipe is recipe
    assert session.forecast.stages[0].end_min == pytest.approx(90.0)
    assert session.before is not None
    assert session.before.recipe == recipe
    session.drop_preview()
    assert session.forecast.stages[0].end_min == pytest.approx(60.0)


def test_previews_of_one_frame_collapse(qtbot: QtBot, recipe: Recipe) -> None:
    marched: list[Recipe] = []

    def nominal(wanted: Recipe) -> Forecast:
        marched.append(wanted)
        return forecast(wanted)

    session = Session(recipe, nominal=nominal, banded=lambda r, stop: nominal(r), check=lambda made: None)
    marched.clear()
    for minutes in (70.0, 80.0, 90.0):
        session.preview(longer(recipe, minutes))
    with qtbot.waitSignal(session.forecastChanged):
        pass
    assert [one.stages[0].end.length_min for one in marched] == [90.0]
    session.close()


def test_there_and_back_is_forecast_once(qtbot: QtBot, recipe: Recipe) -> None:
    marched: list[Recipe] = []

    def nominal(wanted: Recipe) -> Forecast:
        marched.append(wanted)
        return forecast(wanted)

    session = Session(recipe, nominal=nominal, banded=lambda r, stop: forecast(r), check=lambda made: None)
    marched.clear()
    ends = []
    for minutes in (70.0, 80.0, 70.0):
        session.preview(longer(recipe, minutes))
        session.settle()
        ends.append(session.forecast.stages[0].end_min)
    session.drop_preview()
    assert ends == pytest.approx([70.0, 80.0, 70.0])
    assert session.forecast.stages[0].end_min == pytest.approx(60.0)
    assert [one.stages[0].end.length_min for one in marched] == [70.0, 80.0]
    session.close()


def test_only_the_last_forecasts_are_remembered(session: Session, recipe: Recipe) -> None:
    asked: list[Recipe] = []
    made = session.forecast

    def work(wanted: Recipe) -> Forecast:
        asked.append(wanted)
        return made

    remembered = Remembered(work)
    recipes = [longer(recipe, 60.0 + more) for more in range(1, MOST + 2)]
    for one in recipes:
        remembered(one)
    remembered(recipes[-1])
    assert len(asked) == MOST + 1
    remembered(recipes[0])
    assert asked[MOST + 1 :] == [recipes[0]]


def test_bands_follow_and_only_the_latest_count(qtbot: QtBot, session: Session, recipe: Recipe) -> None:
    with qtbot.waitSignal(session.bandsChanged, timeout=20_000):
        session.preview(longer(recipe, 70.0))
        session.preview(longer(recipe, 80.0))
    assert session.forecast.bands is not None
    assert session.forecast.recipe.stages[0].end.length_min == 80.0
    assert not session.bands_stale


def test_bands_wait_on_the_new_curve(qtbot: QtBot, session: Session, recipe: Recipe) -> None:
    if session.bands_stale:
        with qtbot.waitSignal(session.bandsChanged, timeout=20_000):
            pass
    old = session.forecast
    new = session.march(longer(recipe, 90.0))
    waiting = carried(old, new)
    assert waiting.bands is not None
    assert len(waiting.bands.low["ph"]) == len(new.trace.time_min)
    assert (waiting.bands.low["ph"] <= new.trace["ph"] + 1e-9).mean() > 0.9
    moisture = waiting.outcomes["moisture_pct"]
    assert moisture.low <= moisture.value <= moisture.high
    assert carried(new, new) is new


def test_what_cannot_be_made_is_said_and_mended(qtbot: QtBot, session: Session, recipe: Recipe) -> None:
    withheld = edits.edit_milk(recipe, recipe.milks[0].id, withheld=True)
    with pytest.raises(RecipeError):
        session.march(withheld)
    session.commit(withheld, "withheld")
    assert "medicine" in session.trouble
    session.stack.undo()
    assert session.trouble == ""


def test_the_selection_survives_the_loss_of_its_stage(session: Session, recipe: Recipe) -> None:
    session.choose("mill")
    session.commit(edits.remove(recipe, "mill"), "remove")
    assert session.chosen in {stage.id for stage in session.recipe.stages}


def test_the_lane_that_is_looked_at_is_judged_again(qtbot: QtBot, recipe: Recipe) -> None:
    """Other rules while a branch is looked at: the verdict stays that of the branch."""
    parted = split_off(recipe, "warm", "curd", 40.0, "plain twin")
    session = Session(parted, nominal=forecast, banded=lambda r, stop: forecast(r), check=lambda made: made.branch_id)
    session.choose_lane("plain-twin")
    assert session.verdict == "plain-twin"
    session.judge_again()
    assert session.verdict == "plain-twin"
    session.close()


EDITS = st.sampled_from(["length", "temperature", "cut", "salt", "remove", "duplicate", "move", "milk", "name"])


def changed(recipe: Recipe, what: str, amount: float) -> Recipe:
    """One of the edits the window can make; RecipeError where it is not allowed just now."""
    ids = [stage.id for stage in recipe.stages]
    one = ids[int(amount * 997) % len(ids)]
    match what:
        case "length":
            return edits.edit_end(recipe, one, length_min=1.0 + round(amount * 100))
        case "temperature":
            return edits.edit(recipe, one, temperature_c=30.0 + round(amount * 20) / 2)
        case "cut":
            return edits.edit(recipe, one, cut_mm=2.0 + round(amount * 20))
        case "salt":
            return edits.edit(recipe, one, salt_pct=round(amount * 4, 1))
        case "remove":
            return edits.remove(recipe, one)
        case "duplicate":
            return edits.duplicate(recipe, one)
        case "move":
            return edits.move(recipe, one, 1 if amount > 0.5 else -1)
        case "milk":
            return edits.edit_milk(recipe, recipe.milks[0].id, fat_pct=3.0 + round(amount, 2))
    return edits.edit_recipe(recipe, name=f"Cheese {amount:.3f}")


@settings(max_examples=5)
@given(st.lists(st.tuples(EDITS, st.floats(0, 1), st.booleans()), min_size=200, max_size=200))
def test_two_hundred_edits_undone_end_in_the_first_document(steps: list[tuple[str, float, bool]]) -> None:
    """The march is left out, for what is tried here is the document and its undo."""
    still = Session(RECIPE, nominal=lambda r: told(), banded=lambda r, stop: told(), check=lambda made: None)
    seen = [RECIPE]
    for what, amount, nudged in steps:
        try:
            made = changed(still.recipe, what, amount)
        except RecipeError:
            continue
        still.commit(made, what, key=what if nudged else None)
        if still.stack.count() >= len(seen):
            seen.append(still.recipe)
        else:
            seen = seen[: still.stack.count() + 1]
            seen[-1] = still.recipe
    assert still.stack.count() > 0
    last = still.recipe
    for index in range(still.stack.count(), 0, -1):
        assert still.recipe == seen[index]
        still.stack.undo()
    assert still.recipe == RECIPE
    for _ in range(still.stack.count()):
        still.stack.redo()
    assert still.recipe == last
    still.close()


@cache
def told() -> Forecast:
    """One forecast for every walk."""
    return forecast(RECIPE)
