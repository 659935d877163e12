"""The invented batches of the example dairy, from the files in `example_recipes/tasted`, each named as its recipe's.

They never come into the maker's own ledger: they fill one that is gone when it is closed.
"""

from __future__ import annotations

import tomllib
from typing import Any

from designer.batch.ledger import Ledger
from designer.batch.record import PARTS, AsMade, Reading, Tasting, Told, as_forecast
from designer.forecast import forecast
from designer.recipe import file
from designer.recipe.edit import edit
from designer.recipe.examples import example, folder

MODEL = "now"
"""An example is forecast when it is shown: it has no day of its own."""


def invented() -> Ledger:
    """A ledger in memory with the example dairy's batches."""
    ledger = Ledger(None)
    for source in sorted((folder() / "tasted").glob("*.toml")):
        text = example(source.stem).read_text("utf-8")
        for row in tomllib.loads(source.read_text("utf-8"))["batch"]:
            _note(ledger, text, row)
    return ledger


def _note(ledger: Ledger, text: str, row: dict[str, Any]) -> None:
    recipe = file.reads(text)
    for stage, changes in row.get("set", {}).items():
        recipe = edit(recipe, stage, **changes)
    made = AsMade(recipe.name, file.writes(recipe, text), recipe.style, as_forecast(forecast(recipe)), MODEL)
    number = ledger.note(made, Told(row["made"], row.get("maker", recipe.maker), row.get("remark", "")))
    taken, instruments = row.get("taken", {}), row.get("instrument", {})
    read = {(quantity, ""): value for quantity, value in row.get("measured", {}).items()}
    read |= {(curve, moment): value for curve in ("ph", "ph_whey") for moment, value in row.get(curve, {}).items()}
    for (quantity, moment), value in read.items():
        when = taken.get(f"{quantity}.{moment}" if moment else quantity)
        ledger.read(number, (quantity, moment), Reading(value, when, instruments.get(quantity, "")))
    for one in row.get("tasting", ()):
        ledger.taste(number, Tasting(**one | {part: tuple(one.get(part, ())) for part in PARTS}))
