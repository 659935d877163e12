"""The made batches on a terminal and as JSON: `curdwright batches`."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from rich.console import Console
from rich.table import Table

from designer.batch.record import Batch, Tasting, asked, label, when_text
from designer.language import number, say


def batch_json(one: Batch) -> dict[str, Any]:
    """A batch whole: recipe and forecast as they were, readings with what had been forecast, tastings with the age."""
    kept = one.as_made
    return {
        "number": one.number,
        "recipe": kept.recipe,
        "made": one.told.made.isoformat(),
        "maker": one.told.maker,
        "remark": one.told.remark,
        "noted": one.noted.isoformat(),
        "model": kept.model,
        "style": kept.style,
        "liked": one.liked,
        "readings": [
            {
                "quantity": key[0], "at": key[1], "measured": read.value,
                "forecast": (kept.forecast.of(key) or (None,))[0],
                "taken": read.taken.isoformat() if read.taken is not None else None, "instrument": read.instrument,
            }
            for key, read in one.readings.items()
        ],
        "tastings": [_tasting(one, each) for each in one.tastings.values()],
        "forecast": {key: {"value": v, "low": low, "high": high} for key, (v, low, high) in
                     kept.forecast.outcomes.items()},
        "recipe_text": kept.recipe_text,
    }  # fmt: skip


def _tasting(batch: Batch, one: Tasting) -> dict[str, Any]:
    return {
        "tasted": one.tasted.isoformat(),
        "age_days": batch.age_days(one),
        "taster": one.taster,
        "appearance": list(one.appearance),
        "body": list(one.body),
        "flavour": list(one.flavour),
        "mark": one.mark,
        "keep": one.keep,
        "remark": one.remark,
    }


def print_batches(batches: Sequence[Batch]) -> None:
    """One line a batch: when, what, how much was measured, how it tasted last."""
    if not batches:
        print(say("No made batch is noted."))
        return
    table = Table(box=None, pad_edge=False)
    for head in (say("No."), say("Made"), say("Recipe"), say("Measured"), say("Last tasting")):
        table.add_column(head)
    for one in batches:
        table.add_row(str(one.number), one.told.made.isoformat(), one.as_made.recipe, _measured(one), _last(one))
    Console().print(table)


def print_readings(batches: Sequence[Batch]) -> None:
    """One line a reading of each batch: what was forecast and measured, when, with what."""
    table = Table(box=None, pad_edge=False)
    for head in (say("No."), say("Reading"), say("Forecast"), say("Measured"), say("Taken"), say("With")):
        table.add_column(head)
    for one in batches:
        for key, read in one.readings.items():
            then = one.as_made.forecast.of(key)
            was = number(then[0], ".4g") if then is not None else ""
            what = (str(one.number), label(key), was, number(read.value, ".4g"))
            table.add_row(*what, when_text(read.taken), read.instrument)
    Console().print(table)


def _measured(one: Batch) -> str:
    return say("{count} of {all}", count=len(one.readings), all=len(asked(one.as_made.forecast)))


def _last(batch: Batch) -> str:
    one = batch.last
    if one is None:
        return say("not tasted yet")
    head = say("{day}, {age} days old", day=one.tasted.isoformat(), age=batch.age_days(one))
    kept = {True: say("again"), False: say("not again")}
    said = [number(one.mark)] if one.mark is not None else []
    said += [kept[one.keep]] if one.keep is not None else []
    return "\n".join(filter(None, (head, ", ".join(said), ", ".join(one.words), one.remark)))
