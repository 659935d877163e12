"""A house style from the batches of the ledger that the maker liked."""

from __future__ import annotations

from collections.abc import Sequence

from designer.batch.record import Batch
from styles.reader import Style
from styles.tasted import Tasted, from_batches


def liked(batches: Sequence[Batch], recipe: str = "") -> tuple[Batch, ...]:
    """Those whose last tasting says to make them so again; with `recipe` only those of that name."""
    return tuple(one for one in batches if one.liked and (not recipe or one.as_made.recipe == recipe))


def style_of(
    name: str, batches: Sequence[Batch], like: Style | None = None, *, milk: Sequence[str] = (), limits: bool = False
) -> Style:
    """A house style of what these batches measured, and of their forecasts where they did not; `like` lends as ever.

    Raises StyleError.
    """
    tasted = [Tasted(one.measured, one.as_made.forecast.figures) for one in batches]
    return from_batches(name, tasted, like=like, milk=milk, limits=limits)
