"""The style files: every one loads, each figure says where it comes from, and what is not understood is refused."""

from __future__ import annotations

from pathlib import Path

import pytest

from styles.reader import FOLDER, HAVES, StyleError, keys, parse_range, read, reads, sources, style, styles
from styles.settings import COMPOSITION, MOMENTS, SETTINGS

SMALL = """
format = 1
name = "Small"
family = "soft"
milk = ["cow"]

[[rules]]
set = "us"
name = "United States"
rule = "21 CFR 133.155"
kind = "legal limit"
moisture_pct = "> 52, <= 60"
source = "cfr133"
have = "published, read"

[[windows]]
cut_mm = "5 to 10"
source = "practice"
have = "common practice, no source"

[[gates]]
ph.drain = "6.0 to 6.1"
source = "practice"
have = "common practice, no source"
"""


@pytest.mark.parametrize("key", keys())
def test_each_figure_of_a_style_says_where_it_comes_from(key: str) -> None:
    one = style(key)
    rows = [*one.limits, *one.typical, *one.windows, *one.gates, *one.room, *([one.sensory] if one.sensory else [])]
    assert len(one.rules) >= 1
    assert len(one.windows) >= 3
    for row in rows:
        assert row.have in HAVES
        assert row.source in sources().values()
    assert {window.key for window in one.windows} <= SETTINGS.keys() | COMPOSITION
    assert {gate.at for gate in one.gates} <= MOMENTS.keys()
    assert all(window.low != window.high for window in one.windows), "a window is a range, never one figure"
    assert one.sensory is not None
    assert one.milk


@pytest.mark.parametrize("key", keys())
def test_published_averages_of_a_style_agree_with_themselves(key: str) -> None:
    for row in style(key).typical:
        values = row.values
        if {"moisture_pct", "fat_pct", "fdm_pct"} <= values.keys():
            assert values["fdm_pct"] == pytest.approx(
                100 * values["fat_pct"] / (100 - values["moisture_pct"]), abs=0.15
            )
        if {"moisture_pct", "fat_pct", "mnfs_pct"} <= values.keys():
            expected = 100 * values["moisture_pct"] / (100 - values["fat_pct"])
            assert values["mnfs_pct"] == pytest.approx(expected, abs=0.15)
        if {"moisture_pct", "salt_pct", "salt_in_moisture_pct"} <= values.keys():
            expected = 100 * values["salt_pct"] / values["moisture_pct"]
            assert values["salt_in_moisture_pct"] == pytest.approx(expected, abs=0.05)


def test_the_ten_styles_to_start_are_here() -> None:
    start = [
        "cheddar",
        "colby",
        "gouda",
        "edam",
        "emmental",
        "alpine",
        "camembert",
        "white-brined",
        "monterey",
        "havarti",
    ]
    assert set(start) <= set(keys())
    assert len(styles()) == len(keys()) >= 45


def test_every_source_is_used_somewhere() -> None:
    text = "".join(path.read_text(encoding="utf-8") for path in FOLDER.glob("*.toml") if path.stem != "sources")
    unused = [key for key in sources() if f'"{key}"' not in text]
    assert unused == []


def test_a_protected_name_binds_only_who_claims_it() -> None:
    assert not style("gouda").rule_set("holland").judged
    assert style("gouda").rule_set("us").judged


def test_facts_from_memory_are_marked() -> None:
    assert style("gouda").rule_set("codex").have == "from memory (high)"
    assert style("gouda").rule_set("us").have == "published, read"


def test_dry_matter_depends_on_the_fat_actually_reached() -> None:
    (limit,) = [one for one in style("cheddar").rule_set("codex").limits if one.bands]
    assert [limit.low_at(fdm) for fdm in (21.9, 22, 47.9, 48, 59.9, 60)] == [None, 49, 57, 61, 61, 66]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("<= 39", (None, 39, False, False)),
        (">= 50", (50, None, False, False)),
        ("> 52, <= 60", (52, 60, True, False)),
        (">= 45, < 50", (45, 50, False, True)),
        ("8 to 18", (8, 18, False, False)),
        ("9.5", (9.5, 9.5, False, False)),
    ],
)
def test_ranges(text: str, expected: tuple[float | None, float | None, bool, bool]) -> None:
    assert parse_range(text) == expected


@pytest.mark.parametrize("text", ["", "about 5", "18 to 8", "<= ", "5 - 10", "> 60, < 52", "1e9", "8 to"])
def test_what_is_no_range_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"is no range|runs backwards|could not convert"):
        parse_range(text)


@pytest.mark.parametrize(
    ("old", "new", "sentence"),
    [
        ("cut_mm", "cut_m", "did you mean “cut_mm”"),
        ('family = "soft"', 'famly = "soft"', "did you mean “family”"),
        ("format = 1", "format = 2", "reads format 1"),
        ('"published, read"', '"I think so"', "is none of"),
        ('"cfr133"', '"cfr134"', "did you mean “cfr133"),
        ("ph.drain", "ph.drian", "did you mean “drain”"),
        ('"legal limit"', '"law"', "is none of"),
        ('"5 to 10"', "5", "should be text"),
        ('milk = ["cow"]', 'milk = ["yak"]', "yak"),
        ('name = "Small"', "", "“name” is missing"),
        ("[[rules]]", "[[rules", "not a readable style"),
    ],
)
def test_what_is_not_understood_is_refused(old: str, new: str, sentence: str) -> None:
    assert old in SMALL
    with pytest.raises(StyleError, match=sentence) as caught:
        reads(SMALL.replace(old, new), key="small", file="small.toml")
    assert "small.toml" in str(caught.value)


def test_a_small_style_is_read_whole() -> None:
    small = reads(SMALL, key="small")
    (limit,) = small.limits
    assert (limit.low, limit.high, limit.strict) == (52, 60, True)
    assert [window.key for window in small.windows] == ["cut_mm", "ph_drain"]


def test_an_unknown_style_names_the_nearest() -> None:
    with pytest.raises(StyleError, match="Did you mean cheddar"):
        style("chedar")


def test_a_missing_file_is_a_sentence(tmp_path: Path) -> None:
    with pytest.raises(StyleError, match="can't be read"):
        read(tmp_path / "none.toml")
