"""House styles: made, changed, written beside the recipes, read back the same, and judged like any other."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from styles import house, reader
from styles.house import Figures
from styles.reader import StyleError, keys, reads, style
from styles.tasted import Tasted, from_batches


@pytest.fixture(autouse=True)
def nothing_adopted() -> Iterator[None]:
    yield
    reader.adopt(Path(__file__).parent)


@pytest.mark.parametrize("key", keys())
def test_every_shipped_style_is_written_and_read_back_the_same(key: str) -> None:
    assert reads(house.writes(style(key)), key=key) == style(key)


def test_one_from_another_keeps_its_sources_and_leaves_the_protected_name() -> None:
    own = house.from_style(style("gouda"), "Weirside Round")
    assert own.key == "weirside-round"
    assert {one.kind for one in own.rules} == {one.kind for one in style("gouda").rules} - {"protected name"}
    assert own.windows == style("gouda").windows
    assert reads(house.writes(own), key=own.key) == own


def test_limits_windows_and_gates_can_be_changed() -> None:
    own = house.from_style(style("gouda"), "Weirside Round")
    own = house.with_limit(own, "moisture_pct", None, 42.0)
    own = house.with_window(own, "cut_mm", 6.0, 9.0)
    own = house.with_gate(own, "ph", "h24", 5.15, 5.25)
    assert own.rule_set("own").limits[0].high == 42.0
    assert [(one.low, one.high) for one in own.windows_of("cut_mm")] == [(6.0, 9.0)]
    assert [(one.low, one.high) for one in own.gates if one.at == "h24"] == [(5.15, 5.25)]
    assert [(one.low, one.high) for one in own.windows_of("ph_24h")] == [(5.15, 5.25)]
    assert reads(house.writes(own), key=own.key) == own
    bare = house.with_gate(house.with_window(house.with_limit(own, "moisture_pct", None, None), "cut_mm", None, None),
                           "ph", "h24", None, None)  # fmt: skip
    assert not any(one.key == "own" for one in bare.rules)
    assert bare.windows_of("cut_mm") == bare.windows_of("ph_24h") == ()


@pytest.mark.parametrize(
    ("wrong", "said"),
    [
        (lambda own: house.with_limit(own, "moisture", 1.0, 2.0), "A limit speaks of"),
        (lambda own: house.with_window(own, "cut", 1.0, 2.0), "no setting"),
        (lambda own: house.with_gate(own, "ph", "noon", 5.0, 5.2), "A gate stands on"),
        (lambda own: house.with_window(own, "cut_mm", 9.0, 6.0), "runs backwards"),
        (lambda own: house.key_of("Gouda"), "give yours another"),
        (lambda own: house.key_of("!"), "letters"),
        (lambda own: from_batches("New", []), "at least one batch"),
    ],
)
def test_what_cannot_be_is_a_sentence(wrong: object, said: str) -> None:
    with pytest.raises(StyleError, match=said):
        wrong(house.from_style(style("gouda"), "Own"))  # type: ignore[operator]


def test_from_one_make() -> None:
    made = Figures({"moisture_pct": 41.7, "fdm_pct": 48.2}, {"cut_mm": 8.0, "cook_c": 37.0}, {("ph", "drain"): 6.42})
    own = house.from_make("River Round", made, of="forecast of the river make", like=style("gouda"))
    assert own.typical[0].values["moisture_pct"] == 41.7
    (cut,) = own.windows_of("cut_mm")
    assert (cut.low, cut.high, cut.source, cut.have) == (7.0, 9.0, "forecast of the river make", house.OWN)
    assert (own.gates[0].low, own.gates[0].high) == (6.37, 6.47)
    assert own.room == style("gouda").room
    assert reads(house.writes(own), key=own.key).windows_of("cut_mm") == (cut,)


def tasted(moisture: float | None, cut_mm: float = 8.0) -> Tasted:
    """A batch whose moisture was measured, or not."""
    measured = {} if moisture is None else {"moisture_pct": moisture}
    return Tasted(Figures(measured), Figures({"moisture_pct": 38.0, "fdm_pct": 50.0}, {"cut_mm": cut_mm}))


def test_from_batches_is_the_range_of_what_was_measured() -> None:
    """Moistures of 40, 41 and 44 of four batches: the range is theirs, and the forecast of the fourth is left out."""
    own = from_batches("Tasted", [tasted(40.0), tasted(41.0), tasted(44.0), tasted(None, 12.0)])
    (moisture,), (cut,) = own.windows_of("moisture_pct"), own.windows_of("cut_mm")
    assert (moisture.low, moisture.high, moisture.have) == (40.0, 44.0, house.OWN)
    assert moisture.source == "measured in 3 of 4 liked batches"
    assert (cut.low, cut.high) == (8.0, 12.0)
    assert cut.source == "in the recipes of 4 of 4 liked batches"
    assert "4 batches" in own.notes
    assert "Too few" not in own.notes
    assert reads(house.writes(own), key=own.key) == own


def test_what_was_not_measured_is_the_forecast_and_says_so() -> None:
    (fdm,) = from_batches("Tasted", [tasted(40.0), tasted(41.0)]).windows_of("fdm_pct")
    assert (fdm.low, fdm.high, fdm.have) == (48.5, 51.5, "derived")
    assert "not measured" in fdm.source


def test_two_batches_are_few() -> None:
    own = from_batches("Two", [tasted(40.0), tasted(40.2)])
    assert "Too few" in own.notes
    (moisture,) = own.windows_of("moisture_pct")
    assert (moisture.low, moisture.high) == (39.1, 41.1)


def test_the_limits_of_a_style_are_lent_where_they_are_wanted() -> None:
    made = Figures({"moisture_pct": 38.0})
    plain = house.from_make("Plain", made, of="a make", like=style("cheddar"))
    bound = house.from_make("Bound", made, of="a make", like=style("cheddar"), limits=True)
    assert {one.kind for one in plain.rules} == {"class"}
    assert {one.kind for one in bound.rules} > {"class", "legal limit"}
    assert all(one.kind != "protected name" for one in bound.rules)


def test_beside_the_recipes(tmp_path: Path) -> None:
    own = house.with_window(house.from_style(style("gouda"), "Weirside Round"), "cut_mm", 6.0, 9.0)
    path = house.path_of(tmp_path, own)
    house.write(own, path)
    assert path.name == "weirside-round.style.toml"
    assert reader.read(path) == own
    with pytest.raises(StyleError, match="no style"):
        style("weirside-round")
    assert reader.adopt(tmp_path) == ("weirside-round",)
    assert style("weirside-round") == own
    house.write(house.with_window(own, "cut_mm", 7.0, 9.0), path)
    assert style("weirside-round").windows_of("cut_mm")[0].low == 7.0
    with pytest.raises(StyleError, match="weirside-round"):
        style("weirside-rond")


def test_a_shipped_style_is_never_replaced(tmp_path: Path) -> None:
    (tmp_path / "gouda.style.toml").write_text("format = 1\n", encoding="utf-8")
    assert reader.adopt(tmp_path) == ()
    assert style("gouda").name == "Gouda"


def test_own_sources_stand_in_the_file() -> None:
    own = house.from_make("Own", Figures({"moisture_pct": 41.0}), of="My book")
    text = house.writes(own)
    assert 'my-book = "My book"' in text
    with pytest.raises(StyleError, match="does not stand in"):
        reads(text.replace('source = "my-book"', 'source = "my-bok"'), key="own")


def test_where_it_cannot_be_written(tmp_path: Path) -> None:
    with pytest.raises(StyleError, match="can't be written"):
        house.write(house.from_style(style("gouda"), "Own"), tmp_path / "none" / "own.style.toml")
