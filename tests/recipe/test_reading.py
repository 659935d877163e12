"""Reading a recipe: what is understood, and for everything else one sentence that names the place."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.recipe.document import FORMAT, Recipe
from designer.recipe.error import RecipeError
from designer.recipe.file import MAX_BYTES, read, reads
from designer.recipe.migrations import MIGRATIONS, migrated
from designer.recipe.stages.kinds import KINDS
from tests.recipe.samples import CHEDDAR, EXAMPLES, STAGES, every_stage

TEXT = CHEDDAR.read_text(encoding="utf-8")


def test_the_numbers_of_the_cheddar() -> None:
    recipe = read(CHEDDAR)
    assert recipe.name == "Thistlecombe Cheddar"
    assert recipe.start_clock_min == 450.0
    assert recipe.milks[0].volume_l == 100.0
    assert recipe.starters[0].bulk_pct == 1.0
    assert recipe.stage("cut").cut_mm == 7.9375  # type: ignore[union-attr]
    hold = recipe.stage("hold").end
    assert (hold.by, hold.of, hold.value, hold.latest_min) == ("ph", "curd", 6.1, 120.0)
    press = recipe.stage("press")
    assert press.end.length_min == 30 + 90 + 960
    assert recipe.form is not None
    assert recipe.form.lever == 4.0


def test_every_kind_is_read() -> None:
    recipe = reads(every_stage())
    assert [stage.kind for stage in recipe.stages] == list(STAGES)
    assert set(STAGES) == set(KINDS)
    assert len(KINDS) == 27
    for stage in recipe.stages:
        assert type(stage).HELP
        assert stage.LABEL
        assert stage.end_line()
        assert isinstance(stage.plan_line("us"), str)


def bad(old: str, new: str) -> str:
    assert old in TEXT
    return TEXT.replace(old, new, 1)


def without_stages() -> str:
    return TEXT[: TEXT.index("[[stage]]")]


BAD = [
    # what is wrong in the text, what the sentence must name: the place, and what is allowed
    (bad('size = "5/16 in"', 'sise = "3/8 in"'), ["stage 3, “cut”", "“sise” is unknown here", "did you mean “size”?"]),
    (bad('name = "Thistlecombe Cheddar"', 'nmae = "x"\nname = "y"'), ["“nmae” is unknown", "“name”"]),
    (bad('temperature = "39 °C"', 'temperature = "139 °C"'), ["stage 5, “cook”", "139 °C", "0 °C to 100 °C"]),
    (bad('temperature = "39 °C"', 'temperature = "39 kg"'), ["stage 5, “cook”", "mass, but temperature is asked for"]),
    (bad('temperature = "39 °C"', 'temperature = 39'), ["stage 5, “cook”", "no unit", "31.5 °C"]),
    (bad('temperature = "39 °C"', 'temperature = "30+9 °C"'), ["stage 5, “cook”", "looks like a sum"]),
    (bad('temperature = "39 °C"', 'temperature = "__import__(\'os\')"'), ["stage 5, “cook”", "looks like a sum"]),
    (bad('temperature = "39 °C"', 'temperature = ["39 °C"]'), ["stage 5, “cook”", "must be a temperature"]),
    (bad('temperature = "39 °C"', 'temperature = nan'), ["stage 5, “cook”", "no unit"]),
    (bad('lever = 4', 'lever = inf'), ["form", "lever"]),
    (bad('lever = 4', 'lever = true'), ["form", "lever"]),
    (bad('count = 2', 'count = 2.5'), ["form", "count is a whole number"]),
    (bad('count = 2', 'count = 0'), ["form", "between 1 and 10000"]),
    (bad('kind = "mill"', 'kind = "mil"'), ["stage 9", "did you mean “mill”?"]),
    (bad('kind = "mill"', 'name = "mill"'), ["stage 9, “mill”", "kind is missing"]),
    (bad('id = "mill"\n', ''), ["stage 9, “mill”", "id is missing"]),
    (bad('id = "mill"', 'id = "salt"'), ["“salt” stands twice"]),
    (bad('at = "ripen"', 'at = "ripn"'), ["“house bulk starter”", "“ripn”, which there is not"]),
    (bad(', latest = "2 h" }', ' }'), ["stage 6, “stir at heat”", "latest moment"]),
    (bad('of = "curd", value = "6.10"', 'value = "6.10"'), ["stage 6", "of what: milk, whey, curd or cheese"]),
    (bad('value = "6.10"', 'value = "61"'), ["stage 6", "between 4 and 7.2"]),
    (bad('value = "6.10"', 'value = "6.10 kg"'), ["stage 6", "value", "pH is asked for here"]),
    (bad('by = "ph", of = "curd", value = "6.10"', 'by = "moon", value = "6.10"'), ["stage 6", "moon"]),
    (bad('kind = "fill"\nlength = "15 min"',
         'kind = "fill"\nend = { by = "firmness", value = "9 Pa", latest = "1 h" }'),
     ["stage 11, “fill forms”", "can't end by firmness", "time"]),
    (bad('end = { by = "ph", of = "curd", value = "6.10"',
         'length = "1 h"\nend = { by = "ph", of = "curd", value = "6.10"'),
     ["stage 6", "not both"]),
    (bad('length = "35 min"\ntemperature', 'length = "0 min"\ntemperature'), ["stage 5", "length can't be 0 min"]),
    (bad('ramp = "35 min"', 'ramp = "36 min"'), ["stage 5", "longer than the stage"]),
    (bad('length = "30 min" },', 'length = "30 min", load = "3 kg" },'), ["can't be read as TOML"]),
    (bad('{ load = "10 kg", length = "30 min" }', '{ length = "30 min" }'),
     ["stage 12, “press”", "step 1", "load or a pressure"]),
    (bad('strength = "200 IMCU/mL"\n', ''), ["addition 2, “calf rennet, single strength”", "IMCU/mL (on the bottle)"]),
    (bad('bulk = "1 %"', 'bulk = "1 %"\nunits = "10"'), ["starter 1, “house bulk starter”", "exactly one of"]),
    (bad('volume = "100 L"', 'volume = "100 gal"'), ["milk 1, “morning milk”", "“US gal” or “imp gal”"]),
    (bad('casein = "2.6 %"', 'casein = "3.4 %"'), ["milk 1, “morning milk”", "casein"]),
    (bad('diameter = "20 cm"\n', ''), ["form", "diameter"]),
    (bad('species = "cow"', 'species = "cou"'), ["milk 1", "did you mean “cow”?"]),
    (bad('species = "cow"', 'species = 3'), ["milk 1", "text in quotes"]),
    (bad('heat = "pasteurised"', 'withheld = "yes"\nheat = "pasteurised"'), ["milk 1", "true or false"]),
    (bad('start = "07:30"', 'start = "7.30 Uhr"'), ["start", "not a time of day"]),
    (bad('[[milk]]\nid = "morning"', '[milk]\nid = "morning"'), ["milk is a list of tables"]),
    (bad('[form]', '[[form]]'), ["form is a table"]),
    (without_stages(), ["no stage", "[[stage]]"]),
    (TEXT[: len(TEXT) // 2], ["can't be read as TOML"]),
    (TEXT.replace("format = 1\n", ""), ["does not say its format"]),
    (TEXT.replace("format = 1\n", "format = 2\n"), ["format 2", "newer version of the program"]),
    (TEXT.replace("format = 1\n", 'format = "one"\n'), ["is no format"]),
    ("", ["empty"]),
    ("x = " + "[" * 100_000, ["nested too deeply"]),
    ("x = " + "9" * 10_000, ["can't be read as TOML"]),
    ("format = 1", ["name is missing"]),
    ('format = 1\nname = "x"', ["no milk"]),
]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "says"), BAD, ids=[f"{number}-{says[0][:30]}" for number, (_, says) in enumerate(BAD)]
)
def test_bad_text_is_one_sentence_that_names_the_place(text: str, says: list[str]) -> None:
    with pytest.raises(RecipeError) as caught:
        reads(text)
    said = str(caught.value)
    for words in says:
        assert words in said
    assert said.endswith((".", "?"))
    assert "\n" not in said
    assert len(said) < 400


def test_bad_files(tmp_path: Path) -> None:
    """A folder, no file, 10 MB of noise, no text, and a good file with a fault: each a sentence that names the file."""
    noise, binary, cut = tmp_path / "noise.toml", tmp_path / "binary.toml", tmp_path / "cut.toml"
    noise.write_bytes(os.urandom(10_000_000))
    binary.write_bytes(b"\xff\xfe\x00\x81" * 100)
    cut.write_text(bad('size = "5/16 in"', 'size = "3/8 kg"'), encoding="utf-8")
    for path, words in (
        (tmp_path, "folder"),
        (tmp_path / "none.toml", "no such file"),
        (noise, "too large for a recipe (10.0 MB"),
        (binary, "not a text file"),
        (cut, "stage 3, “cut”"),
    ):
        with pytest.raises(RecipeError) as caught:
            read(path)
        assert words in str(caught.value)
        assert str(path) in str(caught.value)
    with pytest.raises(RecipeError, match="too large"):
        reads("#" * (MAX_BYTES + 1))


def test_a_file_from_another_system_is_read(tmp_path: Path) -> None:
    path = tmp_path / "windows.toml"
    path.write_bytes(b"\xef\xbb\xbf" + TEXT.replace("\n", "\r\n").encode())
    assert read(path) == read(CHEDDAR)


@given(st.text(max_size=300))
def test_any_text_is_read_or_refused(text: str) -> None:
    with pytest.raises(RecipeError):
        reads(text)


@given(st.integers(0, len(TEXT)), st.integers(0, 40), st.text(max_size=12))
def test_a_damaged_recipe_is_read_or_refused(place: int, gone: int, put: str) -> None:
    """Anything cut out or put in anywhere: a recipe or a sentence, never another error."""
    with suppress(RecipeError):
        assert isinstance(reads(TEXT[:place] + put + TEXT[place + gone :]), Recipe)


def test_older_formats_go_through_every_migration_and_newer_ones_are_refused() -> None:
    steps = {1: lambda data: data | {"two": True}, 2: lambda data: data | {"three": True}}
    assert migrated({"format": 1}, present=3, migrations=steps) == {"format": 3, "two": True, "three": True}
    assert set(MIGRATIONS) == set(range(1, FORMAT))
    with pytest.raises(RecipeError, match="newer version"):
        migrated({"format": FORMAT + 1})


def test_milk_that_is_withheld_opens_so_that_it_can_be_corrected() -> None:
    assert reads(bad('species = "cow"', 'withheld = true\nspecies = "cow"')).milks[0].withheld


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_examples_read(path: Path) -> None:
    recipe = read(path)
    assert recipe.place.startswith("Thistlecombe Dairy")
    assert recipe.maker
