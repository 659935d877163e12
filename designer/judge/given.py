"""What goes in, set beside each other: which dose of one make answers which of the other, and if they do the same."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from designer.language import say
from designer.recipe.document import Addition, Recipe, Starter
from designer.recipe.dose import addition_columns, starter_columns
from designer.recipe.field import field_meta
from designer.recipe.milk import blend
from designer.recipe.schedule import Milk
from designer.units import System, show

Dose = Starter | Addition
Pairs = tuple[tuple[Any, Any], ...]
"""(of the left or None, of the right or None), each a Starter or an Addition."""


def paired(left: Sequence[Dose], right: Sequence[Dose]) -> Pairs:
    """Doses that do the same, by what they are; those that meet nothing stand alone."""
    rest = list(right)
    out: list[tuple[Any, Any]] = []
    for one in left:
        like = [other for other in rest if _kind(other) == _kind(one)]
        found = next((other for other in like if other.id == one.id), like[0] if like else None)
        if found is not None:
            rest.remove(found)
        out.append((one, found))
    return (*out, *((None, one) for one in rest))


def _kind(given: Dose) -> str:
    return "starter" if isinstance(given, Starter) else given.what


def same_dose(left: Any, right: Any, of_left: Recipe, of_right: Recipe) -> bool:
    """Whether two doses do the same to the milk; of what does nothing to it, whether they read the same."""
    skip = {"id", "name", "at", "after_min", "lot"}
    if left.model_dump(exclude=skip) == right.model_dump(exclude=skip):
        return True
    columns = [columns_of(one, blend(recipe)) for one, recipe in ((left, of_left), (right, of_right))]
    if not any(columns) or columns[0].keys() != columns[1].keys():
        return False
    return all(abs(value - columns[1][key]) <= 1e-6 * abs(value) for key, value in columns[0].items())


def columns_of(given: Dose, milk: Milk) -> dict[str, float]:
    """What a dose does to the milk, by Schedule column; nothing for colour, herbs and the like."""
    return dict(starter_columns(given, milk) if isinstance(given, Starter) else addition_columns(given, milk))


_AMOUNTS = ("bulk_pct", "mass_kg", "volume_l", "mass_pct", "units", "cells_per_ml")


def is_amount(given: Dose) -> bool:
    """Whether a dose is said as an amount, which belongs to an amount of milk."""
    return any(getattr(given, name, None) is not None for name in ("mass_kg", "volume_l", "units"))


def of_100kg() -> str:
    """What stands behind an amount that is said of 100 kg of milk."""
    return say(" per 100 kg")


def amount_words(given: Dose, factor: float, system: System) -> str:
    """How much goes in, amounts multiplied by `factor`; three figures where that makes them odd."""
    for name in _AMOUNTS:
        value = getattr(given, name, None)
        if value is not None:
            meta = field_meta(type(given), name)
            if is_amount(given) and factor != 1.0:
                value = float(f"{value * factor:.3g}")
            return show(value, meta.kind, system=system)
    raise AssertionError(given)
