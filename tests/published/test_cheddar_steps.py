"""pH steps of a published Cheddar make, each stage run for the time printed, no end asked for by pH.

Source: Hill, University of Guelph, Cheese Making Technology, chapter Cheddar (published, read): 1 % starter an hour at
31 °C (pH down 0.05), 190 mL rennet to 1000 kg, 9.5 mm, 39 °C in 30 min and some 75 min there to curd pH 6.0-6.1 (whey
6.2-6.3), milling at 5.3-5.4 about two hours after the whey comes off. Not printed and taken from the style: the milk
beyond protein to fat 0.91, rennet strength (200 IMCU/mL), minutes to the cut, salt, press.
"""

from __future__ import annotations

import pytest

from designer.forecast import Forecast, forecast
from designer.judge.moments import moments
from designer.recipe.file import reads

RECIPE = """
format = 1
name = "Cheddar as printed"

[[milk]]
id = "milk"
species = "cow"
volume = "100 L"
fat = "3.55 %"
protein = "3.23 %"
casein = "2.52 %"
lactose = "4.7 %"
ph = "6.60"
temperature = "31 °C"
heat = "pasteurised"

[[starter]]
id = "starter"
kind = "mesophilic"
at = "ripen"
bulk = "1 %"

[[addition]]
id = "rennet"
what = "coagulant"
at = "set"
strength = "200 IMCU/mL"
volume = "19.6 mL"

[form]
shape = "cylinder"
diameter = "25 cm"
height = "20 cm"
"""
STAGES = (
    ("ripen", "ripen", "60 min", 'temperature = "31 °C"'),
    ("set", "set", "40 min", ""),
    ("cut", "cut", "5 min", 'size = "9.5 mm"'),
    ("heal", "rest", "10 min", ""),
    ("warm", "cook", "30 min", 'temperature = "39 °C"\nramp = "30 min"'),
    ("hold", "cook", "75 min", ""),
    ("drain", "drain", "20 min", ""),
    ("stack", "stack", "100 min", ""),
    ("mill", "mill", "10 min", 'size = "15 mm"'),
    ("salt", "salt", "30 min", 'salt = "2.7 %"'),
    (
        "press",
        "press",
        "",
        'steps = [{ pressure = "20 kPa", length = "30 min" }, { pressure = "75 kPa", length = "16 h" }]',
    ),
)

# Moment, curve, printed range; the forecast may lie 0.1 outside it (the aim set for a named step).
STEPS = (
    ("rennet", "ph", 6.55, 6.55),
    ("drain", "ph", 6.0, 6.1),
    ("drain", "ph_whey", 6.2, 6.3),
    ("mill", "ph", 5.3, 5.4),
)
AIM = 0.1


@pytest.fixture(scope="module")
def made() -> Forecast:
    """The make as printed, forecast once."""
    text = RECIPE
    for stage_id, kind, length, more in STAGES:
        text += (
            f'\n[[stage]]\nid = "{stage_id}"\nkind = "{kind}"\n' + (f'length = "{length}"\n' if length else "") + more
        )
    return forecast(reads(text + "\n"))


@pytest.mark.parametrize(("moment", "curve", "low", "high"), STEPS)
def test_a_step_of_the_make(made: Forecast, moment: str, curve: str, low: float, high: float) -> None:
    ours = made.trace.at(curve, moments(made)[moment])
    assert low - AIM <= ours <= high + AIM, f"{curve} at {moment}: {ours:.2f}, printed {low}-{high}"


def test_the_steps_come_at_the_printed_times(made: Forecast) -> None:
    when = moments(made)
    assert when["drain"] - when["cut"] == pytest.approx(120.0)
    assert when["mill"] - when["drain"] == pytest.approx(120.0)
