"""A first recipe for this milk in this style: every style, from a cow's milk and from the rich milk of dwarf goats.

Whatever the style, the recipe can be written and read, its forecast is finite, and it lies inside the limits or says
what is in the way.
"""

from __future__ import annotations

import math

import pytest

from designer.judge.check import check
from designer.judge.first_recipe import first_recipe
from designer.judge.meet import Met
from designer.judge.verdict import MILK, NOT_MET
from designer.make import kernel
from designer.recipe.document import MilkSource
from designer.recipe.file import reads, writes
from styles.reader import keys, style

MILKS = {
    "cow": {"id": "own", "species": "cow", "volume_l": 40.0},
    "dwarf goats": {"id": "own", "species": "goat", "breed": "nigerian_dwarf", "volume_l": 20.0},
}
FEW = (
    ("cheddar", "dwarf goats"),
    ("blue", "cow"),
    ("ricotta", "cow"),
    ("romano", "cow"),
    ("caerphilly", "dwarf goats"),
)
PARTS = 9


def first(milk: str, key: str) -> Met:
    kernel.warm_up()
    return first_recipe([MilkSource.model_validate(MILKS[milk])], key)


def is_sound(met: Met, milk: str, key: str) -> None:
    assert met.recipe.style == key
    assert met.recipe.milks == (MilkSource.model_validate(MILKS[milk]),)
    assert reads(writes(met.recipe)) == met.recipe
    assert all(math.isfinite(one.value) and one.value >= 0.0 for one in met.made.outcomes.values())
    assert not any(one.level == "stop" for one in met.made.cautions), [one.text for one in met.made.cautions]
    verdict = check(met.made, style(key))
    missed = [row for row in verdict.limits if row.state == NOT_MET]
    assert met.reached == (not missed)
    assert not any(row.quantity == "age_days" for row in missed)
    of_the_make = [row for row in missed if row.section != MILK and row.quantity != "fdm_pct"]
    assert met.milk or not any(row.quantity == "fdm_pct" for row in missed)  # then the milk is the way
    assert met.in_the_way or met.milk or not of_the_make
    assert met.missed or met.reached


@pytest.mark.parametrize(("key", "milk"), FEW)
def test_first_recipes(key: str, milk: str) -> None:
    is_sound(first(milk, key), milk, key)


@pytest.mark.slow
@pytest.mark.parametrize("milk", MILKS)
@pytest.mark.parametrize("part", range(PARTS))
def test_first_recipes_of_every_style(part: int, milk: str) -> None:
    inside = []
    for key in keys()[part::PARTS]:
        met = first(milk, key)
        is_sound(met, milk, key)
        inside.append(met.reached)
        print(f"{key:36}{milk:12}{'inside' if met.reached else '; '.join(met.missed)}")
    assert sum(inside) >= len(inside) - 2


@pytest.mark.parametrize("key", ["mozzarella-low-moisture", "provolone"])
def test_a_first_stretched_cheese_waits_for_its_acid_and_is_stretched(key: str) -> None:
    """No example is stretched: the stages come from the style, and the acid the stretch needs with them."""
    first = first_recipe([MilkSource(id="milk", volume_l=100.0)], key)
    kinds = [stage.kind for stage in first.recipe.stages]
    assert kinds.index("drain") < kinds.index("stack") < kinds.index("stretch")
    assert "wash" not in kinds
    assert any("asks for it" in note and "stretch" in note for note in first.notes)
    assert not any("tears instead" in note for note in first.notes)
