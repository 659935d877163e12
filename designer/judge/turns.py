"""Where a setting's usual direction turns, said beside the setting before the maker is surprised.

The rows stand in turns.toml, each with its source. A figure that makers would expect to go one way and that goes the
other here has a row, or it is a fault of the model.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from designer.judge.movable import Movable
from designer.language import word
from designer.recipe.document import Recipe
from designer.recipe.stages.stage import Stage


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
    if setting.of != "stage" or setting.branch is not None:
        return ()
    at = setting.value if value is None else value
    return _turns(recipe, recipe.stage(setting.where), setting.field, at, outcome)


def turns_among(recipe: Recipe, settings: Iterable[Movable], outcome: str) -> tuple[tuple[Movable, Turn], ...]:
    """Those of some settings whose usual direction turns for an outcome where they stand, with what to say."""
    return tuple((one, turn) for one in settings for turn in turns_at(recipe, one, outcome=outcome))


def turned(recipe: Recipe, stage: Stage, field: str) -> tuple[Turn, ...]:
    """What to say beside a field of a stage because of where it stands; what holds at any value is left out."""
    value = getattr(stage, field, None)
    if not isinstance(value, int | float):
        return ()
    return tuple(one for one in _turns(recipe, stage, field, value, "") if one.low is not None or one.high is not None)


def _turns(recipe: Recipe, stage: Stage, field: str, value: float, outcome: str) -> tuple[Turn, ...]:
    fields = {field}
    if field == "end.value":
        fields.add(f"end.{stage.end.by}")
    if field.endswith((".load_kg", ".pressure_kpa")):
        fields.add(f"{field.rpartition('.')[0]}.load")
    cultures = {starter.kind for starter in recipe.starters}
    return tuple(
        one
        for one in turns()
        if stage.kind in one.kinds
        and one.field in fields
        and (not outcome or one.outcome == outcome)
        and (one.low is None or value >= one.low - 1e-9)
        and (one.high is None or value <= one.high + 1e-9)
        and (not one.needs or cultures & set(one.needs))
    )
