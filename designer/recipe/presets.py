"""Presets of the recipe: milk of a species or breed, starters, solutions.

The figures and their sources are in presets.toml.
"""

from __future__ import annotations

import tomllib
from collections.abc import Sequence
from functools import cache
from importlib.resources import files
from typing import Any

from designer.language import say


@cache
def presets() -> dict[str, Any]:
    """The whole of presets.toml as read."""
    return tomllib.loads(files("designer.recipe").joinpath("presets.toml").read_text(encoding="utf-8"))


def breeds(species: str) -> dict[str, str]:
    """Breed keys of a species with their labels, for choices."""
    return {key: breed["label"] for key, breed in presets()["breed"].items() if breed["species"] == species}


SHIFTED_BY_SHARE = ("fat", "protein", "lactose")
SHIFTED_BY_SUM = ("casein_share", "ph")


def shifted(milk: dict[str, float], shifts: Sequence[str]) -> dict[str, float]:
    """That composition after shifts of presets.toml by name ("late_lactation", "spring" ...); calcium and ash stay.

    The calcium of a source follows its casein in `recipe.milk`.
    """
    out = dict(milk)
    for name in shifts:
        shift = presets()["shift"][name]
        out |= {key: out[key] * float(shift[key]) for key in SHIFTED_BY_SHARE}
        out |= {key: out[key] + float(shift[key]) for key in SHIFTED_BY_SUM}
    return out


def milk_of(species: str, breed: str) -> dict[str, float]:
    """Composition a source may leave out [g/100 g; ph plain]: the breed's figures over those of its species.

    Raises KeyError for a breed the presets have not, ValueError for a breed of another animal.
    """
    out = {key: float(value) for key, value in presets()["species"][species].items() if isinstance(value, float)}
    if breed:
        of_breed = presets()["breed"][breed]
        if of_breed["species"] != species:
            raise ValueError(
                say(
                    "“{label}” is a {species} breed, not {species2}",
                    label=of_breed["label"],
                    species=of_breed["species"],
                    species2=species,
                )
            )
        out |= {key: float(value) for key, value in of_breed.items() if isinstance(value, float)}
    return out
