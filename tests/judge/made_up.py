"""A made-up forecast, so that a verdict can be tried on figures chosen for the test and not on those of the model."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.forecast import Bands, Forecast, Outcome, StageForecast, Trace
from designer.recipe.file import reads

RECIPE = """
format = 1
name = "Made up"

[[milk]]
id = "milk"
species = "SPECIES"
volume = "100 L"
heat = "HEAT"

[[starter]]
id = "starter"
at = "ripen"
bulk = "1 %"

[[addition]]
id = "rennet"
what = "coagulant"
at = "set"
after = "0 min"
volume = "20 mL"
strength = "200 IMCU/mL"

[form]
shape = "cylinder"
diameter = "110 mm"
height = "30 mm"
count = 40

[[stage]]
id = "ripen"
kind = "ripen"
temperature = "31 °C"
length = "60 min"

[[stage]]
id = "set"
kind = "set"
length = "40 min"

[[stage]]
id = "cut"
kind = "cut"
size = "9.5 mm"
length = "10 min"

[[stage]]
id = "cook"
kind = "cook"
temperature = "39 °C"
length = "40 min"

[[stage]]
id = "drain"
kind = "drain"
length = "20 min"

[[stage]]
id = "mill"
kind = "mill"
length = "10 min"

[[stage]]
id = "salt"
kind = "salt"
salt = "2.7 %"
length = "20 min"
"""
ROOM = """
[[stage]]
id = "room"
kind = "room"
room = "12 °C"
humidity = "85 %"
length = "DAYS days"
"""

ENDS = {"ripen": 60.0, "set": 100.0, "cut": 110.0, "cook": 150.0, "drain": 170.0, "mill": 180.0, "salt": 200.0}
TEMPERATURES = {"ripen": 31.0, "set": 31.0, "cut": 31.0, "cook": 39.0, "drain": 37.0, "mill": 33.0, "salt": 31.0}
CHEDDAR = {
    "moisture_pct": 37.0,
    "fat_pct": 32.8,
    "fdm_pct": 100 * 32.8 / 63.0,
    "mnfs_pct": 100 * 37.0 / 67.2,
    "salt_pct": 1.8,
    "salt_in_moisture_pct": 100 * 1.8 / 37.0,
    "floc_min": 13.0,
    "cut_min": 39.0,
    "cheese_kg": 10.0,
}


def made_up(
    outcomes: Mapping[str, float] | None = None,
    *,
    species: str = "cow",
    heat: str = "pasteurised",
    days: float | None = None,
    members: Mapping[str, NDArray[np.float64]] | None = None,
    ph: Mapping[float, float] | None = None,
) -> Forecast:
    """A forecast of a Cheddar-like make with these outcomes; `ph` gives the pH by minute (straight between)."""
    text = RECIPE.replace("SPECIES", species).replace("HEAT", heat)
    if days is not None:
        text += ROOM.replace("DAYS", f"{days:g}")
    recipe = reads(text)
    course = {0.0: 6.6, 60.0: 6.55, 150.0: 6.05, 170.0: 5.35, 1440.0: 5.15, 1500.0: 5.15} | dict(ph or {})
    minutes = np.array(sorted({0.0, *ENDS.values(), *course}))
    curve = np.interp(minutes, sorted(course), [course[minute] for minute in sorted(course)])
    temperature = np.interp(minutes, [60.0, 110.0, 150.0, 200.0], [31.0, 31.0, 39.0, 31.0])
    columns: dict[str, Any] = {"ph": curve, "temperature_c": temperature}
    values = dict(CHEDDAR) | dict(outcomes or {})
    starts = dict(zip(ENDS, [0.0, *ENDS.values()], strict=False))
    stages = tuple(
        StageForecast(key, key, key, starts[key], end, end, end, True, {"temperature_c": TEMPERATURES[key]})
        for key, end in ENDS.items()
    )
    return Forecast(
        recipe=recipe,
        stages=stages,
        trace=Trace(minutes, np.zeros(len(minutes), dtype=np.int32), columns),
        outcomes={key: Outcome(key, value, value, value) for key, value in values.items()},
        cautions=(),
        bands=Bands({}, {}, dict(members)) if members is not None else None,
    )


def spread(centre: float, sd: float, count: int = 200) -> NDArray[np.float64]:
    """Members spread evenly over a bell, the same each time."""
    quantile = (np.arange(count) + 0.5) / count
    return centre + sd * np.sqrt(2.0) * _inverse_erf(2.0 * quantile - 1.0)


def _inverse_erf(x: NDArray[np.float64]) -> NDArray[np.float64]:
    """Winitzki's approximation, good to 0.002: enough for shares of members."""
    log = np.log1p(-x * x)
    first = 2.0 / (np.pi * 0.147) + log / 2.0
    return np.sign(x) * np.sqrt(np.sqrt(first * first - log / 0.147) - first)
