"""Attribution adds up, whatever the measure; an explanation adds up to the distance from the style's middle."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from designer.forecast import forecast
from designer.judge import attribution
from designer.judge.explain import explain, middle_of
from designer.judge.movable import moved
from designer.judge.windows import ranged
from designer.recipe.file import read
from styles.reader import style
from tests.make.families import ready
from tests.recipe.samples import EXAMPLES

STYLED = [path for path in EXAMPLES if read(path).style]


@given(st.lists(st.floats(-3, 3), min_size=1, max_size=6))
def test_parts_add_up_even_where_changes_act_on_each_other(values: list[float]) -> None:
    def measure(done: tuple[float, ...]) -> dict[str, float]:
        total = sum(done)
        return {"one": total + total**2, "two": 2.0 * total}

    changes = [lambda done, v=value: (*done, v) for value in values]
    parts = attribution.parts((), changes, measure)
    whole = measure(tuple(values))["one"]
    assert sum(part["one"] for part in parts) == pytest.approx(whole, abs=1e-9)
    assert [part["two"] for part in parts] == pytest.approx([2.0 * value for value in values])


def test_alike_changes_are_worth_the_same() -> None:
    def measure(done: tuple[int, ...]) -> dict[str, float]:
        return {"one": float(len(done) ** 2)}

    parts = attribution.parts((), [lambda done: (*done, 1)] * 3, measure)
    assert [part["one"] for part in parts] == pytest.approx([3.0, 3.0, 3.0])


@pytest.mark.parametrize("path", STYLED, ids=lambda path: path.stem)
@pytest.mark.parametrize("key", ["moisture_pct", "ph_24h", "salt_in_moisture_pct"])
def test_links_and_rest_make_the_whole(path: Path, key: str) -> None:
    ready()
    recipe = read(path)
    made = forecast(recipe)
    found = explain(made, key, recipe.style)
    if middle_of(style(recipe.style), key) is None:
        assert found is None
        return
    assert found is not None
    assert found.value == made.outcomes[key].value
    assert sum(link.part for link in found.links) + found.rest == pytest.approx(found.value - found.middle, abs=1e-6)
    assert found.sentence.endswith(".")
    assert found.source


def test_a_finer_cut_than_the_style_is_said_to_dry() -> None:
    ready()
    recipe = read(next(path for path in EXAMPLES if path.stem == "weirside-gouda"))
    cut = next(one for one in ranged(recipe, style("gouda")) if one.setting.field == "cut_mm")
    fine = moved(recipe, cut.setting, cut.low)
    found = explain(forecast(fine), "moisture_pct", "gouda")
    assert found is not None
    first = found.links[0]
    assert first.ranged.setting.field == "cut_mm"
    assert first.part < -0.3
    assert {law.name for law in first.laws} >= {"syneresis_size"}
    assert "drier" in found.sentence or "moister" in found.sentence


def test_nothing_to_explain_without_a_middle() -> None:
    ready()
    recipe = read(STYLED[0])
    assert explain(forecast(recipe), "finish_min", recipe.style) is None
