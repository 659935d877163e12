"""A change of temperature that ends when it is reached: its pace, and the time it takes as far as that is known."""

from __future__ import annotations

import pytest

from designer.recipe.file import reads
from designer.recipe.lower import lower

MAKE = """format = 1
name = "Known length"

[[milk]]
id = "milk"
volume = "100 L"
temperature = "8 °C"

[[starter]]
id = "starter"
bulk = "1 %"

[[addition]]
id = "rennet"
what = "coagulant"
at = "set"
volume = "20 mL"
strength = "200 IMCU/mL"

[[stage]]
id = "heat"
kind = "heat"
ramp = "40 min"
end = { by = "temperature", value = "31 °C", latest = "4 h"EARLIEST }

[[stage]]
id = "ripen"
kind = "ripen"
length = "45 min"

[[stage]]
id = "set"
kind = "set"
length = "40 min"
"""


@pytest.mark.parametrize(("earliest", "minutes"), [("", 40.0), (', earliest = "90 min"', 90.0)])
def test_hours_since_the_starter_count_the_time_the_heating_takes(earliest: str, minutes: float) -> None:
    """Not the four hours that only stand there in case: pH six hours after the starter would be read much too late."""
    schedule = lower(reads(MAKE.replace("EARLIEST", earliest)))
    assert schedule.starter_min == pytest.approx(minutes, abs=1.0)


def test_a_heating_too_slow_for_its_latest_ends_there() -> None:
    slow = MAKE.replace('ramp = "40 min"', 'ramp = "200 min"').replace('latest = "4 h"EARLIEST', 'latest = "1 h"')
    with pytest.raises(ValueError, match="takes longer than the stage"):
        reads(slow)
    powered = slow.replace('ramp = "200 min"\n', "") + '\n[vat]\npower = "0.5 kW"\n'
    assert lower(reads(powered)).starter_min == 60.0
