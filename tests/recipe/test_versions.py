"""Versions: every save keeps its predecessor, and any can be opened, compared and put back."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest

from designer.recipe import file, versions
from designer.recipe.changes import changes, in_words
from designer.recipe.document import Recipe
from designer.recipe.edit import add, duplicate, edit, edit_end, edit_recipe, move, remove
from designer.recipe.error import RecipeError
from designer.recipe.file import read
from tests.make.parted_vats import salted
from tests.recipe.samples import CHEDDAR

MORNING = datetime(2024, 5, 3, 6, 30, tzinfo=UTC)


def warmer(recipe: Recipe) -> Recipe:
    return edit(recipe, "ripen", temperature_c=32.0)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    out = tmp_path / "cheddar.toml"
    out.write_text(CHEDDAR.read_text(encoding="utf-8"), encoding="utf-8")
    return out


def test_the_first_save_keeps_what_was_there(path: Path) -> None:
    before = path.read_text(encoding="utf-8")
    saved = versions.save(warmer(read(path)), path, by="Ottilie", note="warm spring", when=MORNING)
    assert saved.problem == ""
    first, second = versions.versions(path)
    assert versions.text_of(first) == before
    assert first.note == versions.FIRST
    assert (second.number, second.by, second.note, second.saved) == (2, "Ottilie", "warm spring", MORNING)
    assert second.changed == "ripen: temperature 31 °C → 32 °C"
    assert versions.text_of(second) == path.read_text(encoding="utf-8") == saved.text


def test_a_version_is_a_recipe_in_plain_toml(path: Path) -> None:
    versions.save(warmer(read(path)), path)
    for one in versions.versions(path):
        assert one.path.parent == path.with_suffix(".history")
        assert read(one.path) == versions.recipe_of(one)


def test_any_version_can_be_put_back_and_none_is_lost(path: Path) -> None:
    first = read(path)
    versions.save(warmer(first), path)
    versions.save(edit_recipe(read(path), room_c=18.0), path)
    text = versions.text_of(versions.version(path, 1))
    saved = versions.restore(path, 1, by="Ottilie")
    assert path.read_text(encoding="utf-8") == text
    assert read(path) == first
    assert saved.version is not None
    assert saved.version.note == "version 1 put back"
    assert [one.number for one in versions.versions(path)] == [1, 2, 3, 4]


def test_versions_are_compared_in_words(path: Path) -> None:
    versions.save(warmer(read(path)), path)
    versions.save(edit_recipe(read(path), room_c=18.0), path)
    first, _, third = versions.versions(path)
    assert in_words(versions.compare(first, third)) == "recipe: room 20 °C → 18 °C; ripen: temperature 31 °C → 32 °C"


def test_a_save_without_a_change_makes_no_version(path: Path) -> None:
    versions.save(warmer(read(path)), path)
    assert versions.save(read(path), path).version is None
    assert len(versions.versions(path)) == 2


def test_a_change_from_outside_is_kept_too(path: Path) -> None:
    versions.save(warmer(read(path)), path)
    by_hand = path.read_text(encoding="utf-8").replace('room = "20 °C"', 'room = "17 °C"')
    path.write_text(by_hand, encoding="utf-8")
    versions.save(edit_recipe(read(path), name="Other"), path)
    outside = versions.version(path, 3)
    assert outside.note == versions.OUTSIDE
    assert versions.text_of(outside) == by_hand
    assert "room 20 °C → 17 °C" in outside.changed


def test_a_new_file_has_its_own_first_version(tmp_path: Path) -> None:
    path = tmp_path / "new.toml"
    recipe = read(CHEDDAR)
    versions.save(recipe, path)
    (only,) = versions.versions(path)
    assert only.by == recipe.maker
    assert versions.recipe_of(only) == recipe


def test_where_no_version_can_be_kept_the_recipe_is_safe(path: Path) -> None:
    path.with_suffix(".history").write_text("a file in the way", encoding="utf-8")
    saved = versions.save(warmer(read(path)), path)
    assert saved.version is None
    assert "could not be kept" in saved.problem
    assert read(path) == warmer(read(CHEDDAR))


def test_a_broken_head_is_said(path: Path) -> None:
    versions.save(warmer(read(path)), path)
    one = versions.versions(path)[0]
    one.path.write_text("#| saved = yesterday\n", encoding="utf-8")
    with pytest.raises(RecipeError, match="head of this version"):
        versions.versions(path)
    with pytest.raises(RecipeError, match="no version 9"):
        versions.version(path.with_name("none.toml"), 9)


def test_notes_of_several_lines_stay_one(path: Path) -> None:
    saved = versions.save(warmer(read(path)), path, note='two\nlines, "quoted"')
    assert saved.version is not None
    assert versions.versions(path)[-1].note == 'two lines, "quoted"'


def test_what_changed_names_stages_that_came_went_and_moved() -> None:
    old = read(CHEDDAR)
    new = move(duplicate(old, "cut"), "fill", -1)
    said = in_words(changes(old, new))
    assert "cut added after cut" in said
    assert said.count("moved") == 1
    assert in_words(changes(new, old)).count("taken out") == 1
    assert in_words(changes(old, old)) == "nothing changed"
    fewer = remove(old, "fill")
    assert in_words(changes(old, fewer)) == "fill forms taken out"


def test_what_changed_reads_ends_loads_and_branches() -> None:
    old = read(CHEDDAR)
    said = in_words(changes(old, edit_end(old, "stack", value=5.3)))
    assert "stack: ends until pH 5.40 of the curd" in said
    assert "→ until pH 5.30 of the curd" in said
    parted = add(old, salted("mild", 1.8, 50.0, "mill"))
    assert in_words(changes(old, parted)) == "branch “mild” added"
    assert in_words(changes(parted, edit(parted, "mild-salt", salt_pct=2.0))) == "salt curd: salt 1.8 % → 2 %"
    assert file.reads(file.writes(parted)) == parted


def test_a_note_can_be_written_later(tmp_path: Path) -> None:
    path = tmp_path / "round.toml"
    versions.save(read(CHEDDAR), path, note="first")
    text = versions.text_of(versions.version(path, 1))
    assert versions.annotate(path, 1, "the  one\nfor spring").note == "the one for spring"
    (one,) = versions.versions(path)
    assert one.note == "the one for spring"
    assert versions.text_of(one) == text
    with pytest.raises(RecipeError, match="there is no version 2"):
        versions.annotate(path, 2, "none")
