"""Writing a recipe: what did not change stays to the letter; what did is said in the unit that stood there."""

from __future__ import annotations

import os
import stat
import time
from pathlib import Path

import pytest

from designer.recipe import edit as change
from designer.recipe.document import Recipe
from designer.recipe.edit import edit, edit_end, edit_form, edit_milk, edit_recipe
from designer.recipe.error import RecipeError
from designer.recipe.file import clear_halves, read, reads, write, writes
from designer.recipe.writing import blocks
from tests.recipe.samples import CHEDDAR, EXAMPLES, every_stage

TEXT = CHEDDAR.read_text(encoding="utf-8")


def changed_lines(recipe: Recipe, text: str = TEXT) -> tuple[list[str], list[str]]:
    """(lines gone, lines come) when a recipe is written into an earlier text; it must read back as itself."""
    new = writes(recipe, text)
    assert reads(new) == recipe
    old_lines, new_lines = text.splitlines(), new.splitlines()
    return [line for line in old_lines if line not in new_lines], [line for line in new_lines if line not in old_lines]


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_unchanged_is_the_same_text(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    assert writes(reads(text), text) == text


@pytest.mark.parametrize("text", [path.read_text(encoding="utf-8") for path in EXAMPLES] + [every_stage()])
def test_anew_reads_back_as_the_same_document(text: str) -> None:
    recipe = reads(text)
    new = writes(recipe)
    assert reads(new) == recipe
    assert writes(recipe, new) == new


def test_a_change_is_written_in_the_unit_that_stood_there() -> None:
    recipe = reads(TEXT)
    assert changed_lines(edit(recipe, "cut", cut_mm=12.7)) == (['size = "5/16 in"'], ['size = "0.5 in"'])
    gone, come = changed_lines(edit_form(recipe, diameter_mm=245.0))
    assert (gone, come) == (['diameter = "20 cm"'], ['diameter = "24.5 cm"'])
    gone, come = changed_lines(edit_end(recipe, "hold", value=6.0, latest_min=127.0))
    assert come == ['end = { by = "ph", of = "curd", value = "6.00", latest = "2 h 7 min" }']
    gone, come = changed_lines(edit_recipe(recipe, start_clock_min=495.0))
    assert come == ['start = "08:15"']


def test_us_units_stay_us_units() -> None:
    jack = next(path for path in EXAMPLES if "jack" in path.stem)
    text = jack.read_text(encoding="utf-8")
    recipe = reads(text)
    gone, come = changed_lines(edit(recipe, "cook", temperature_c=round((102 - 32) / 1.8, 9)), text)
    assert (gone, come) == (['temperature = "101 °F"'], ['temperature = "102 °F"'])
    gone, come = changed_lines(edit_milk(recipe, "milk", volume_l=round(3.785411784 * 30, 9)), text)
    assert come == ['volume = "30 US gal"']


def test_comments_and_order_are_kept() -> None:
    recipe = edit_milk(reads(TEXT), "morning", fat_pct=3.9)
    new = writes(recipe, TEXT)
    assert 'fat = "3.9 %"              # P/F 0.91 after a little skim was blended in' in new
    assert new.startswith("# Thistlecombe Dairy is made up")
    assert [line for line in TEXT.splitlines() if "#" in line and "fat" not in line] == [
        line for line in new.splitlines() if "#" in line and "fat" not in line
    ]


def test_text_that_means_the_same_stays() -> None:
    text = TEXT.replace('"31 °C"', '"31,0 °C"', 1).replace('length = "1 h"', 'length = "60 min"', 1)
    recipe = reads(text)
    assert recipe == reads(TEXT)
    new = writes(edit(recipe, "cut", cut_mm=8.0), text)
    assert '"31,0 °C"' in new
    assert 'length = "60 min"' in new


def test_a_comment_above_a_stage_goes_with_it() -> None:
    text = TEXT.replace('[[stage]]\nid = "mill"', '# The loud bit.\n[[stage]]\nid = "mill"')
    recipe = reads(text)
    moved = writes(change.move(recipe, "mill", 1), text)
    assert '# The loud bit.\n[[stage]]\nid = "mill"' in moved
    assert moved.index('id = "salt"') < moved.index("# The loud bit.")
    assert reads(moved) == change.move(recipe, "mill", 1)
    assert "# The loud bit." not in writes(change.remove(recipe, "mill"), text)


def test_new_gone_renamed() -> None:
    recipe = reads(TEXT)
    wash = change.new_stage(recipe, "wash", water_pct=10.0, water_c=15.0)
    new = writes(change.insert(recipe, wash, after_id="hold"), TEXT)
    assert new.index('id = "hold"') < new.index('id = "wash"') < new.index('id = "drain"')
    assert "\n\n\n" not in new
    gone, come = changed_lines(edit(recipe, "ripen", id="ripening"))
    assert set(come) == {'id = "ripening"', 'at = "ripening"'}
    gone, come = changed_lines(edit_recipe(recipe, coat=None))
    assert "[coat]" in gone
    assert come == []
    gone, come = changed_lines(change.edit_vat(recipe, power_kw=6.0))
    assert come == ["[vat]", 'power = "6 kW"']


def test_a_step_of_the_press_alone() -> None:
    recipe = reads(TEXT)
    gone, come = changed_lines(edit_end(recipe, "press", length_min=1200.0))
    assert (gone, come) == (
        ['  { load = "60 kg", length = "16 h" },'],
        ['  { load = "60 kg", length = "18 h" },'],
    )


def test_another_kind_of_end() -> None:
    recipe = change.set_end(reads(TEXT), "stack", by="time", length_min=95.0)
    _, come = changed_lines(recipe)
    assert come == ['length = "1 h 35 min"']
    back = change.set_end(recipe, "stack", by="feel", length_min=95.0)
    new = writes(back, writes(recipe, TEXT))
    assert reads(new) == back


def test_lists_and_strings_over_many_lines_are_not_headers() -> None:
    text = TEXT.replace(
        'notes = "Cloth-bound; tasted from the sixth month on."',
        'notes = """Cloth-bound.\n[[stage]]\n# not a comment\n"""',
    )
    assert reads(text).notes == "Cloth-bound.\n[[stage]]\n# not a comment\n"
    assert len(blocks(text)) == len(blocks(TEXT))
    new = writes(edit(reads(text), "cut", cut_mm=12.7), text)
    assert "[[stage]]\n# not a comment" in new


def test_other_layouts_of_the_same_toml() -> None:
    """Parts as inline tables or dotted keys can't be merged block by block: written anew, nothing lost."""
    inline = TEXT[: TEXT.index("[form]")] + TEXT[TEXT.index("[coat]") :]
    inline = inline.replace(
        'style = "cheddar"', 'style = "cheddar"\nform = { diameter = "20 cm", height = "16 cm", count = 2, lever = 4 }'
    )
    recipe = reads(inline)
    assert recipe.form == reads(TEXT).form
    later = edit(recipe, "cut", cut_mm=12.0)
    assert reads(writes(later, inline)) == later


BRANCH = """
# The whey has its own cheese.
[[branch]]
id = "whey-cheese"
name = "Whey cheese"
after = "drain"
of = "whey"
share = "80 %"

[[branch.addition]]
id = "vinegar"
what = "acid"
acid = "acetic"
at = "curdle"
volume = "1 L"

[branch.form]
diameter = "10 cm"
height = "8 cm"

# Hot.
[[branch.stage]]
id = "curdle"
kind = "acid_heat"
length = "30 min"
temperature = "88 °C"      # no hotter

[[branch.stage]]
id = "basket"
kind = "hang"
length = "4 h"
"""


def test_branches_keep_their_text_too() -> None:
    text = TEXT + BRANCH
    recipe = reads(text)
    assert writes(recipe, text) == text
    assert changed_lines(edit(recipe, "curdle", temperature_c=90.0), text) == (
        ['temperature = "88 °C"      # no hotter'],
        ['temperature = "90 °C"      # no hotter'],
    )
    new = writes(change.remove(recipe, "basket"), text)
    assert "# Hot.\n[[branch.stage]]" in new
    assert 'id = "basket"' not in new
    assert reads(writes(recipe)) == recipe
    more = change.insert(recipe, change.new_stage(recipe, "turn"), after_id="curdle")
    assert reads(writes(more, text)) == more


def test_written_at_once_or_not_at_all(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "mine.toml"
    path.write_text(TEXT, encoding="utf-8")
    path.chmod(0o640)
    recipe = edit(read(path), "cut", cut_mm=12.7)
    assert write(recipe, path) == path.read_text(encoding="utf-8")
    assert read(path) == recipe
    assert stat.S_IMODE(path.stat().st_mode) == 0o640
    assert [each.name for each in tmp_path.iterdir()] == ["mine.toml"]

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    before = path.read_bytes()
    monkeypatch.setattr("os.fsync", full)
    with pytest.raises(RecipeError, match="No space left"):
        write(edit(recipe, "cut", cut_mm=5.0), path)
    assert path.read_bytes() == before
    assert [each.name for each in tmp_path.iterdir()] == ["mine.toml"]


def test_where_it_can_t_be_written(tmp_path: Path) -> None:
    recipe = reads(TEXT)
    with pytest.raises(RecipeError, match="can't be written"):
        write(recipe, tmp_path / "no folder" / "mine.toml")
    with pytest.raises(RecipeError, match="folder"):
        write(recipe, tmp_path)


def test_a_newer_format_is_never_written_over(tmp_path: Path) -> None:
    path = tmp_path / "newer.toml"
    newer = TEXT.replace("format = 1", "format = 9")
    path.write_text(newer, encoding="utf-8")
    with pytest.raises(RecipeError, match="not written over"):
        write(reads(TEXT), path)
    assert path.read_text(encoding="utf-8") == newer


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    real, link = tmp_path / "real.toml", tmp_path / "link.toml"
    real.write_text(TEXT, encoding="utf-8")
    link.symlink_to(real)
    write(edit(reads(TEXT), "cut", cut_mm=12.7), link)
    assert link.is_symlink()
    assert read(real).stage("cut").cut_mm == 12.7  # type: ignore[union-attr]


def test_text_that_is_no_recipe_any_more_is_written_anew() -> None:
    recipe = reads(TEXT)
    assert reads(writes(recipe, "this is = not [ toml")) == recipe
    assert reads(writes(recipe, '[[stage]]\nkind = "cut"\n')) == recipe


def test_what_a_crash_left_is_taken_away(tmp_path: Path) -> None:
    path = tmp_path / "a [first] tomme.toml"
    old, young, other = (tmp_path / f".{name}.x1.new" for name in (path.name, f"{path.name}.y", "b.toml"))
    for half in (old, young, other):
        half.write_text("half")
    long_ago = time.time() - 3600.0
    os.utime(old, (long_ago, long_ago))
    os.utime(other, (long_ago, long_ago))
    clear_halves(path)
    assert not old.exists()
    assert young.exists(), "it may be being written"
    assert other.exists(), "it is of another file"
