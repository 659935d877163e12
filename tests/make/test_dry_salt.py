"""Dry salt: on a formed cheese in a room of its own, and on curd that is handed over before it has gone in."""

from __future__ import annotations

import pytest

from designer.forecast import forecast
from designer.recipe.document import Recipe
from designer.recipe.file import reads

BEGIN = """format = 1
name = "Salted"

[[milk]]
id = "milk"
volume = "50 L"
temperature = "30 °C"

[[starter]]
id = "starter"
bulk = "1.5 %"
at = "set"

[[addition]]
id = "rennet"
what = "coagulant"
at = "set"
volume = "10 mL"
strength = "200 IMCU/mL"

[form]
diameter = "11 cm"
height = "4 cm"
count = 20

[[stage]]
id = "set"
kind = "set"
length = "60 min"

[[stage]]
id = "ladle"
kind = "ladle"
length = "20 min"

[[stage]]
id = "turn"
kind = "turn"
length = "20 h"

[[stage]]
id = "salt"
kind = "salt"
salt = "2 %"
"""


def salted(*lines: str) -> Recipe:
    return reads(BEGIN + "\n".join(lines) + "\n")


def test_a_formed_cheese_is_salted_at_the_temperature_of_its_stage() -> None:
    cool, room = (
        forecast(salted('on = "cheese"', 'length = "24 h"', *more), members=0)
        for more in (('temperature = "12 °C"',), ())
    )
    assert cool.stages[-1].values["temperature_c"] == pytest.approx(12.0, abs=0.5)
    assert room.stages[-1].values["temperature_c"] == pytest.approx(20.0, abs=0.5)
    assert cool.outcomes["moisture_pct"].value > room.outcomes["moisture_pct"].value


def test_curd_handed_over_at_once_is_as_salty_as_curd_that_waits() -> None:
    """Salt is stirred into fresh cheese in minutes: what still lies on it will be eaten with it."""
    soon, waited = (forecast(salted(f'length = "{length}"'), members=0) for length in ("3 min", "4 h"))
    assert soon.outcomes["dry_salt_left_pct"].value > 1.0
    assert soon.outcomes["salt_pct"].value == pytest.approx(waited.outcomes["salt_pct"].value, abs=0.25)
