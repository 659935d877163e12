"""Recipes the tests of this folder share: the examples and one that holds every kind of stage."""

from __future__ import annotations

from pathlib import Path

EXAMPLES = sorted((Path(__file__).parents[2] / "example_recipes").glob("*.toml"))

CHEDDAR = Path(__file__).parents[2] / "example_recipes" / "thistlecombe-cheddar.toml"

HEAD = """format = 1
name = "Every stage"

[[milk]]
id = "milk"
volume = "100 L"
temperature = "10 °C"

[[addition]]
id = "rennet"
what = "coagulant"
at = "set"
strength = "200 IMCU/mL"
volume = "20 mL"

[vat]
power = "10 kW"

[form]
shape = "cylinder"
diameter = "200 mm"
height = "100 mm"
"""

STAGES = {
    "heat": 'end = { by = "temperature", value = "31 °C", latest = "2 h" }',
    "cool": 'length = "20 min"\ntemperature = "30 °C"',
    "ripen": 'end = { by = "ph", of = "milk", value = "6.55", latest = "2 h" }',
    "set": 'end = { by = "firmness", value = "20 Pa", latest = "2 h" }',
    "lactic_set": 'end = { by = "acidity", of = "whey", value = "0.5 %", latest = "30 h" }',
    "acid_heat": 'length = "20 min"\ntemperature = "85 °C"\nramp = "10 min"',
    "cut": 'length = "10 min"\nsize = "1/2 in"',
    "rest": 'length = "5 min"',
    "stir": 'length = "20 min"\nvigour = 1.2',
    "cook": 'end = { by = "feel" }\nlength = "40 min"\ntemperature = "39 °C"',
    "wash": 'length = "30 min"\nwhey_off = "30 %"\nwater_volume = "20 L"',
    "settle": 'length = "10 min"\npressure = "1 kPa"',
    "drain": 'end = { by = "whey_off", value = "80 %", latest = "1 h" }',
    "ladle": 'length = "1 h"\nslice = "2 cm"',
    "hang": 'length = "12 h"\nroom = "18 °C"',
    "stack": 'end = { by = "acidity", of = "whey", value = "24 °SH", latest = "3 h" }',
    "mill": 'length = "10 min"\nsize = "15 mm"',
    "salt": 'length = "15 min"\nsalt = "0.25 %"\nof = "milk"',
    "scald": 'length = "1 h"\nbath = "92 °C"',
    "stretch": 'length = "10 min"\nwater_temperature = "78 °C"',
    "fill": 'length = "15 min"',
    "press": 'end = { by = "ph", of = "cheese", value = "5.30", earliest = "1 h", latest = "8 h" }\n'
    'steps = [ { load = "10 lb", length = "1 h" }, { pressure = "5 psi", length = "7 h" } ]',
    "turn": 'length = "5 min"',
    "brine": 'length = "12 h"\nstrength = "20 %"\ntemperature = "13 °C"',
    "hold_brine": 'length = "7 d"\nstrength = "8 %"\ntemperature = "6 °C"',
    "drying": 'length = "1 d"\nhumidity = "75 %"',
    "room": 'length = "30 d"\nroom = "12 °C"\nhumidity = "85 %"',
}


def every_stage() -> str:
    """A recipe text with one stage of every kind; no cheese, but every reader, writer and row is met."""
    stages = (
        f'\n[[stage]]\nid = "{kind.replace("_", "-")}"\nkind = "{kind}"\n{rest}\n' for kind, rest in STAGES.items()
    )
    return HEAD + "".join(stages)
