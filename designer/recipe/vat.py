"""The vat of a recipe: its heating, its cooling, and what it loses to the room."""

from __future__ import annotations

from designer.recipe.field import Model, quantity, words


class Vat(Model):
    """The vat's own heating, cooling and loss, where the maker gives them."""

    name: str = words("", "What the maker calls it.")
    power_kw: float | None = quantity(None, "power", "power", low=0.05, high=500.0, step=0.5, help="Heating power.")
    area_m2: float | None = quantity(
        None, "area", "area", low=0.01, high=100.0, step=0.1, help="Surface that loses heat."
    )
    u_w_m2k: float | None = quantity(
        None,
        "loss",
        "heat_transfer",
        low=0.1,
        high=1000.0,
        step=1.0,
        label="heat loss",
        help="Heat loss of that surface.",
        source="8-12 W/m²K to the room: textbook range, from memory",
    )
    unheated: bool = words(
        False, "Not kept at its temperature: milk and whey left alone cool toward the room.", shape="yes"
    )
    cooling_c: float | None = quantity(
        None,
        "cooling",
        "temperature",
        low=-5.0,
        high=40.0,
        step=1.0,
        label="cooling water",
        help="Temperature of the water in the jacket when the vat is cooled.",
        usual=(0.0, 20.0),
    )
    jacket_area_m2: float | None = quantity(
        None,
        "jacket",
        "area",
        low=0.01,
        high=100.0,
        step=0.1,
        label="jacket",
        help="Surface the cooling water works through; left out, most of the vat.",
    )
    jacket_u_w_m2k: float | None = quantity(
        None,
        "jacket_transfer",
        "heat_transfer",
        low=10.0,
        high=2000.0,
        step=10.0,
        label="jacket transfer",
        help="Heat the jacket takes through that surface.",
        source="200-500 W/m²K stirred, half of it not: textbook range, from memory",
    )
