"""A house style from what a recipe is forecast to be: its figures, settings and curves at the moments that count."""

from __future__ import annotations

from collections.abc import Mapping

from designer.forecast import Forecast
from designer.judge.moments import moments, settings
from designer.language import say
from styles.house import Figures, from_make
from styles.reader import Style
from styles.settings import COMPOSITION, MOMENTS, SETTINGS

_CURVES: Mapping[str, tuple[str, ...]] = {
    "ph": ("rennet", "drain", "mill", "salt", "mould", "stretch", "press_end", "brine", "h6", "h24"),
    "ph_whey": ("drain",),
    "temperature_c": ("cook_end",),
    "curd_moisture_pct": ("drain",),
}
"""Where a maker takes a reading: curve -> moments."""


def figures_of(made: Forecast) -> Figures:
    """Composition, settings and curves of a forecast, as a house style takes them."""
    when = moments(made)
    found = settings(made, when)
    curves = {
        (curve, at): made.trace.at(curve, when[at])
        for curve, moments_of in _CURVES.items()
        for at in moments_of
        if at in when and at in MOMENTS and curve in made.trace.columns
    }
    return Figures(
        composition={key: one.value for key, one in made.outcomes.items() if key in COMPOSITION},
        settings={key: value for key, value in found.items() if key in SETTINGS},
        curves=curves,
    )


def own_style(made: Forecast, name: str, *, like: Style | None = None, limits: bool = False) -> Style:
    """A house style around a forecast, its milk that of the recipe; `like` lends family, rooms and words.

    With `limits` it also lends what law and standards ask of it, beside the general class.
    """
    milk = sorted({source.species for source in made.recipe.milks})
    of = say("forecast of {name}", name=made.recipe.name)
    return from_make(name, figures_of(made), of=of, like=like, milk=milk, limits=limits)
