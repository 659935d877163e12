"""Where a setting's usual direction turns, said beside the setting before the maker is surprised.

The rows stand in turns.toml, each with its source. A figure that makers would expect to go one way and that goes the
other here has a row, or it is a fault of the model.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from designer.judge.movable import Movable
from designer.language import word
from designer.recipe.document import Recipe


@dataclass(frozen=True, slots=True)
class Turn:
    """One exception: of which stage kinds and field, in which outcome, between which values, and why."""

    key: str
    kinds: tuple[str, ...]
    field: str
    outcome: str
    english: str
    source: str
    have: str
    low: float | None = None
    high: float | None = None
    needs: tuple[str, ...] = ()

    @property
    def text(self) -> str:
        """What to say, in the language spoken."""
        return word(self.english, "caution")


@cache
def turns() -> tuple[Turn, ...]:
    """The shipped rows, in order."""
    rows = tomllib.loads(files("designer.judge").joinpath("turns.toml").read_text(encoding="utf-8"))
    return tuple(
        Turn(
            key, tuple(row["kinds"]), row["field"], row["outcome"], row["text"], row["source"], row["have"],
            row.get("from"), row.get("to"), tuple(row.get("needs", ())),
        )
        for key, row in rows.items()
    )  # fmt: skip


def turns_at(recipe: Recipe, setting: Movable, value: float | None = None, outcome: str = "") -> tuple[Turn, ...]:
    """What to say of a setting at a value (its own by default), of one outcome or of any."""
    if setting.of != "stage":
        return ()
    stage = recipe.stage(setting.where)
    at = setting.value if value is None else value
    fields = {setting.field, setting.field.rsplit(".", 1)[0]}
    if setting.field == "end.value":
        fields.add(f"end.{stage.end.by}")
    cultures = {starter.kind for starter in recipe.starters}
    return tuple(
        one
        for one in turns()
        if stage.kind in one.kinds
        and one.field in fields
        and (not outcome or one.outcome == outcome)
        and (one.low is None or at >= one.low - 1e-9)
        and (one.high is None or at <= one.high + 1e-9)
        and (not one.needs or cultures & set(one.needs))
    )
