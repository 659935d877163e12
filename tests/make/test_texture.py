"""Texture: the words of published composition, the peak of pliability, and reasons that can be read."""

from __future__ import annotations

from functools import cache
from itertools import pairwise
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import example_recipes
from designer.forecast import Forecast, forecast
from designer.make import texture
from designer.recipe.document import Recipe
from designer.recipe.edit import edit
from designer.recipe.file import read
from styles.reader import style

CHEDDAR = {
    "ph": 5.1, "calcium_mmol_per_kg_snf": 604.0, "mnfs_pct": 55.0, "mnfs_off": 0.0, "fdm_pct": 52.0,
    "salt_in_moisture_pct": 4.8, "age_days": 1.0,
}  # fmt: skip


@cache
def recipe(name: str) -> Recipe:
    return read(Path(example_recipes.__file__).parent / f"{name}.toml")


def first(**changed: float) -> str:
    return texture.texture(CHEDDAR | changed).words[0].word


def body(made: Forecast) -> texture.Texture:
    return texture.of_outcomes(made.outcomes, style(made.recipe.style))


# Calcium per solids-not-fat after food tables (USDA SR Legacy), pH as sold young: syneresis-and-press 8.1 and 8.2.
@pytest.mark.parametrize(
    ("word", "figures"),
    [
        ("firm", {}),
        ("short", {"ph": 4.7, "calcium_mmol_per_kg_snf": 450.0, "mnfs_pct": 70.0}),  # Feta
        ("short", {"ph": 4.8, "calcium_mmol_per_kg_snf": 490.0, "mnfs_pct": 54.3}),  # Cheshire
        ("pliable", {"ph": 5.3, "calcium_mmol_per_kg_snf": 562.0, "mnfs_pct": 57.1}),  # Gouda
        ("rubbery", {"ph": 5.65, "calcium_mmol_per_kg_snf": 707.0, "mnfs_pct": 55.0}),  # sweet young Swiss
        ("soft", {"ph": 5.1, "calcium_mmol_per_kg_snf": 404.0, "mnfs_pct": 69.0, "mnfs_off": 4.0}),
        ("firm", {"mnfs_pct": 40.0, "mnfs_off": -4.5, "calcium_mmol_per_kg_snf": 640.0}),
    ],
)
def test_published_compositions_get_their_word(word: str, figures: dict[str, float]) -> None:
    assert first(**figures) == word


def test_pliability_peaks_between_5_2_and_5_4() -> None:
    at = {ph: float(texture.degree_of("pliable", CHEDDAR | {"ph": ph})) for ph in np.arange(4.6, 6.01, 0.02)}
    best = max(at, key=lambda ph: at[ph])
    assert 5.2 <= best <= 5.4
    assert at[best] > 0.95
    rising = [value for ph, value in at.items() if ph <= best]
    falling = [value for ph, value in at.items() if ph >= best]
    assert all(low <= high + 1e-12 for low, high in pairwise(rising))
    assert all(high >= low - 1e-12 for high, low in pairwise(falling))


def test_moist_and_sweet_is_pasty_and_dry_is_hard_against_the_style() -> None:
    pasty = texture.texture(CHEDDAR | {"ph": 5.5, "mnfs_pct": 61.0, "mnfs_off": 6.0})
    assert {"soft", "pasty"} <= {word.word for word in pasty.words}
    dry = texture.texture(CHEDDAR | {"mnfs_pct": 51.0, "mnfs_off": -4.0})
    assert any("corky" in because.rule.says for because in dry.words[0].because)


def test_age_shortens_firm_curd_and_weakens_rubber() -> None:
    assert texture.degree_of("short", CHEDDAR | {"age_days": 300.0}) > texture.degree_of("short", CHEDDAR) + 0.3
    sweet = CHEDDAR | {"ph": 5.7, "calcium_mmol_per_kg_snf": 720.0}
    assert texture.degree_of("rubbery", sweet | {"age_days": 120.0}) < 0.1


def test_every_word_says_what_it_rests_on() -> None:
    for ph in (4.6, 5.1, 5.3, 5.7):
        for word in texture.texture(CHEDDAR | {"ph": ph}).words:
            assert word.confidence in ("good", "fair", "weak")
            for because in word.because:
                assert because.figures
                assert any(unit in because.turns for unit in ("pH", "%", "mmol", "points", "days"))
                assert all((because.rule.source, because.rule.have, because.rule.change))


def test_on_the_edge_of_a_rule_the_word_is_said_with_less_trust() -> None:
    plain, edge = texture.texture(CHEDDAR), texture.texture(CHEDDAR | {"ph": 5.26})
    order = ("weak", "fair", "good")
    firm = next(word for word in edge.words if word.word == "firm")
    assert order.index(firm.confidence) < order.index(plain.words[0].confidence)
    assert firm.said == "rather firm"


def test_draws_say_in_how_many_of_ten_the_word_stands() -> None:
    spread = np.linspace(-0.3, 0.3, 101)
    draws = {key: np.full(101, value) for key, value in CHEDDAR.items()} | {"ph": CHEDDAR["ph"] + spread}
    firm = texture.texture(CHEDDAR, draws).words[0]
    assert firm.word == "firm"
    assert firm.in_ten in range(4, 10)


def test_without_a_style_moisture_is_judged_by_class_alone() -> None:
    made = forecast(recipe("little-thimble"))
    got = texture.of_outcomes(made.outcomes, None)
    assert "mnfs_off" not in got.figures
    assert "Without a style" in got.unsaid


@given(
    st.floats(4.3, 6.5), st.floats(150.0, 800.0), st.floats(35.0, 85.0), st.floats(-20.0, 20.0), st.floats(2.0, 75.0),
    st.floats(0.0, 12.0), st.floats(0.0, 700.0),
)  # fmt: skip
def test_there_is_always_a_word(
    ph: float, calcium: float, mnfs: float, off: float, fdm: float, salt: float, age: float
) -> None:
    got = texture.texture(dict(zip(CHEDDAR, (ph, calcium, mnfs, off, fdm, salt, age), strict=True)))
    assert got.words
    assert all(0.0 <= word.degree <= 1.0 for word in got.words)
    assert got.sentence.endswith(".")


def test_forecasts_read_as_their_kind() -> None:
    assert "firm" in {word.word for word in body(forecast(recipe("thistlecombe-cheddar"))).words}
    assert {"pliable", "firm"} == {word.word for word in body(forecast(recipe("highfold-alpine"))).words[:2]}
    assert body(forecast(recipe("saltmarsh-white"))).words[0].word == "short"


def test_more_wash_water_makes_a_gouda_more_pliable_and_less_short() -> None:
    own = recipe("weirside-gouda")
    figures = [body(forecast(edit(own, "wash", water_pct=water))).figures for water in (5.0, 15.0, 25.0)]
    for word, sign in (("pliable", 1.0), ("short", -1.0)):
        degrees = [sign * float(texture.degree_of(word, each)) for each in figures]
        assert all(less < more for less, more in pairwise(degrees))


def test_a_rule_with_a_word_or_figure_that_is_none_is_refused() -> None:
    head = '[figure.ph]\nlabel = "pH"\nunit = ""\ndecimals = 2\nwidth = 0.1\n[[rule]]\nstrength = 1\nsays = ""\n'
    tail = 'change = ""\nsource = ""\nhave = ""\n'
    with pytest.raises(ValueError, match="the word is none of"):
        texture.read(head + 'word = "nice"\nwhen = { ph = "< 5" }\n' + tail)
    with pytest.raises(ValueError, match="no figure is called taste"):
        texture.read(head + 'word = "firm"\nwhen = { taste = "< 5" }\n' + tail)


def test_of_two_opposites_only_the_stronger_is_said() -> None:
    """A hard cheese that is moister than its kind, or a soft one that is drier, is not firm and soft at once."""
    for figures in ({"mnfs_pct": 51.0, "mnfs_off": 4.0}, {"mnfs_pct": 75.0, "mnfs_off": -5.0, "ph": 4.6}):
        said = {word.word for word in texture.texture(CHEDDAR | figures).words}
        assert not {"firm", "soft"} <= said
        assert said & {"firm", "soft"}
