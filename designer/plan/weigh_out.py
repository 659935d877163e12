"""The weigh-out: all that must stand ready before the milk comes, each with its amount, lot and how to measure it.

Amounts come from the recipe and, for dry salt, from the curd the forecast expects. A figure that hangs on the pack or
the bottle is printed with the sum that turns it into the maker's own.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from designer.forecast import Forecast
from designer.language import mark, say, word
from designer.plan.doses import brine_salt_kg, culture_kg_for_cells, stock
from designer.plan.place import milk_behind_kg
from designer.plan.sheet import Blank, Cell, Column, Line, Section, Table, Ticks
from designer.recipe import schedule
from designer.recipe.document import Addition, Branch, Recipe, Starter
from designer.recipe.field import choice
from designer.recipe.stages.brine import Brine
from designer.recipe.stages.hold_brine import HoldBrine
from designer.recipe.stages.salt import Salt
from designer.recipe.stages.wash import Wash
from designer.units import KINDS, System, convert, measure, show

AMOUNT_PT = 14.0
WATER_PER_COAGULANT = 20.0
"""Dilution of the coagulant: about twenty volumes of water (common practice, no source)."""
BRINE_WATER_L = 10.0


_WHAT = {
    "calcium_chloride": mark("calcium chloride"),
    "ripening_culture": mark("ripening culture"),
}
_SHORT = {
    "coagulant": mark("coagulant"),
    "calcium_chloride": "CaCl2",
    "colour": mark("colour"),
    "lipase": mark("lipase"),
    "acid": mark("acid"),
}
_COAGULANT = {
    "calf": mark("calf rennet"),
    "chymosin": mark("chymosin"),
    "microbial": mark("microbial coagulant"),
    "camel": mark("camel chymosin"),
    "plant": mark("plant coagulant"),
}


@dataclass(frozen=True, slots=True)
class Weighed:
    """One thing to weigh out: `amount` in large type, `detail` beside it, `more` below; `note` is said elsewhere."""

    id: str
    what: str
    amount: str
    detail: str = ""
    lot: str = ""
    note: str = ""
    more: tuple[str, ...] = ()
    word: str = ""
    """The short word for it, where there is only one of its kind."""

    @property
    def brief(self) -> str:
        """ "rennet 22.5 mL", for the stage it goes in at."""
        return f"{self.word or self.what} {self.amount}"


def weighed(lane: Recipe | Branch, forecast: Forecast, milk: schedule.Milk, system: System) -> tuple[Weighed, ...]:
    """All that a make (or a branch of it) needs weighed out, in the order it goes in."""
    begun = replace(milk, mass_kg=milk_behind_kg(lane, forecast.weight, milk.mass_kg, 0))
    out: list[Weighed] = [_starter(starter, begun) for starter in lane.starters]
    out += [_addition(addition, begun) for addition in lane.additions]
    for index, (stage, done) in enumerate(zip(lane.stages, forecast.stages, strict=False)):
        milk_kg = milk_behind_kg(lane, forecast.weight, milk.mass_kg, index)
        match stage:
            case Wash():
                litres = stage.water_l if stage.water_l is not None else (stage.water_pct or 0.0) / 100.0 * milk_kg
                out.append(
                    Weighed(
                        stage.id,
                        say("wash water"),
                        volume(litres, system),
                        say("at {water_c}", water_c=_degrees(stage.water_c, system)),
                    )
                )
            case Salt():
                out.append(_salt(stage, forecast, done.start_min, milk_kg, system))
            case Brine() | HoldBrine():
                out.append(_brine(stage, system))
            case _:
                pass
    words = _short_words(lane)
    return tuple(replace(item, word=words.get(item.id, "")) for item in out)


def _short_words(lane: Recipe | Branch) -> Mapping[str, str]:
    """Id -> short word, for everything that goes in and is the only one of its word."""
    words = {starter.id: say("starter") for starter in lane.starters}
    for addition in lane.additions:
        words[addition.id] = say("rennet") if addition.coagulant == "calf" else word(_SHORT.get(addition.what, ""))
    counts = Counter(words.values())
    return {key: word for key, word in words.items() if counts[word] == 1}


def weigh_out_section(items: Iterable[Weighed], title: str = "") -> Section:
    """The box: two items a row, each with room for its lot and a box to tick."""
    items = tuple(items)
    columns = (Column("", 54.0), Column("", 25.0), Column("", 7.5)) * 2
    rows = []
    for index in range(0, len(items), 2):
        pair = [*items[index : index + 2], None][:2]
        rows.append(tuple(cell for item in pair for cell in _cells(item)))
    return Section(title or say("Weigh out before the milk comes"), (Table(columns, tuple(rows)),))


def _cells(item: Weighed | None) -> tuple[Cell, Cell, Cell]:
    if item is None:
        return (), (), ()
    lines = (Line(item.what), Line(item.amount, AMOUNT_PT, True, item.detail), *(Line(text) for text in item.more))
    return lines, (Blank(say("lot {lot}", lot=item.lot).strip()),), (Ticks(("",)),)


def _starter(starter: Starter, milk: schedule.Milk) -> Weighed:
    what = starter.name or say("starter, {kind}", kind=choice(starter.kind))
    litres = milk.mass_kg / milk.density_kg_l
    if starter.bulk_pct is not None:
        kind = "" if starter.acidity_pct is None else say("{acidity_pct:g} % acid", acidity_pct=starter.acidity_pct)
        return Weighed(starter.id, what, mass(milk.mass_kg * starter.bulk_pct / 100.0), kind, starter.lot)
    if starter.mass_kg is not None:
        return _small(Weighed(starter.id, what, mass(starter.mass_kg), "", starter.lot), starter.mass_kg)
    if starter.units is not None and starter.pack_units is not None and starter.pack_kg is not None:
        mass_kg = starter.units * starter.pack_kg / starter.pack_units
        detail = say("{units:g} units", units=starter.units)
        return _small(Weighed(starter.id, what, mass(mass_kg), detail, starter.lot), mass_kg)
    if starter.units is not None:
        note = say("{what}: grams = {units:g} × grams in the pack ÷ units in the pack.", what=what, units=starter.units)
        return Weighed(starter.id, what, say("{units:g} units", units=starter.units), "", starter.lot, note)
    assert starter.cells_per_ml is not None
    if starter.potency_cfu_g is not None:
        mass_kg = culture_kg_for_cells(starter.cells_per_ml, litres, starter.potency_cfu_g)
        detail = say("at {potency_cfu_g}", potency_cfu_g=show(starter.potency_cfu_g, "potency"))
        return _small(Weighed(starter.id, what, mass(mass_kg), detail, starter.lot), mass_kg)
    cells = starter.cells_per_ml * litres * 1000.0
    note = say("{what}: grams = {cells:.2g} ÷ CFU per gram on the pack.", what=what, cells=cells)
    return Weighed(starter.id, what, f"{show(starter.cells_per_ml, 'cells')}", say("cells"), starter.lot, note)


def _addition(addition: Addition, milk: schedule.Milk) -> Weighed:
    what = addition.name or (word(_WHAT[addition.what]) if addition.what in _WHAT else choice(addition.what))
    mass_kg = addition.mass_kg
    if addition.mass_pct is not None:
        mass_kg = addition.mass_pct / 100.0 * milk.mass_kg
    amount = mass(mass_kg) if mass_kg is not None else volume(addition.volume_l or 0.0)
    if addition.what == "coagulant":
        return _coagulant(addition, mass_kg, amount)
    detail = (
        ""
        if addition.strength_pct is None
        else say("solution of {strength_pct:g} %", strength_pct=addition.strength_pct)
    )
    item = Weighed(addition.id, what, amount, detail, addition.lot)
    return item if mass_kg is None else _small(item, mass_kg)


def _coagulant(addition: Addition, mass_kg: float | None, amount: str) -> Weighed:
    what = addition.name or word(_COAGULANT[addition.coagulant or "calf"])
    strength = addition.strength_imcu_ml
    assert strength is not None
    size, unit = (mass_kg * 1000.0, "g") if mass_kg is not None else ((addition.volume_l or 0.0) * 1000.0, "mL")
    water = volume(_two_figures(WATER_PER_COAGULANT * size / 1000.0))
    more = (
        say("in {water} of cool water", water=water),
        say("other: {round} ÷ IMCU/{unit}", round=_round(size * strength), unit=unit),
    )
    return Weighed(
        addition.id, what, amount, say("{strength:g} IMCU/{unit}", strength=strength, unit=unit), addition.lot, "", more
    )


def _salt(stage: Salt, forecast: Forecast, start_min: float, milk_kg: float, system: System) -> Weighed:
    if stage.of == "milk":
        return Weighed(
            stage.id,
            say("salt"),
            mass(stage.salt_pct / 100.0 * milk_kg, system),
            say("{salt_pct:g} % of the milk", salt_pct=stage.salt_pct),
        )
    curd_kg = forecast.trace.at("curd_kg_per_100kg", start_min) / 100.0 * milk_kg
    per_kg = say("{salt_pct:g} g to each kg of curd", salt_pct=stage.salt_pct * 10.0)
    return Weighed(stage.id, say("salt"), mass(stage.salt_pct / 100.0 * curd_kg, system), "", "", "", (per_kg,))


def _brine(stage: Brine | HoldBrine, system: System) -> Weighed:
    salt = brine_salt_kg(stage.strength_pct, BRINE_WATER_L)
    return Weighed(
        stage.id,
        say(
            "brine {strength_pct:g} % w/w, {brine_c}",
            strength_pct=stage.strength_pct,
            brine_c=_degrees(stage.brine_c, system),
        ),
        say("{salt} salt", salt=mass(salt)),
        say("to {brine_water_l:g} L water", brine_water_l=BRINE_WATER_L),
    )


def _small(item: Weighed, mass_kg: float) -> Weighed:
    """With the way round a scale that is too coarse."""
    small = stock(mass_kg)
    if small is None:
        return item
    note = say(
        "{what}: too little to weigh. Stir {weigh_kg} into {into_l} of sterile milk and give {take_l} of that.",
        what=item.what,
        weigh_kg=mass(small.weigh_kg),
        into_l=volume(small.into_l),
        take_l=volume(small.take_l),
    )
    return replace(
        item, note=note, more=(say("{take_l} of a stock, see “On the amounts”", take_l=volume(small.take_l)),)
    )


def degrees(system: System) -> str:
    """The sign of a degree in a system of measures."""
    return KINDS["temperature"].display(system)[0]


def mass(kg: float, system: System = "metric") -> str:
    """A mass as a scale shows it: three figures, grams below a kilogram; pounds for large masses in US measure."""
    if measure(system, "mass") != "metric" and kg >= 0.5:
        return f"{_figures(convert(kg, 'mass', 'lb'))} lb"
    return f"{_figures(kg)} kg" if kg >= 0.9995 else f"{_figures(kg * 1000.0)} g"


def volume(litres: float, system: System = "metric") -> str:
    """A volume as a jug or syringe shows it: three figures, mL below a litre."""
    if measure(system, "volume") != "metric" and litres >= 2.0:
        unit = KINDS["volume"].display(system)[0]
        return f"{_figures(convert(litres, 'volume', unit))} {unit}"
    return f"{_figures(litres)} L" if litres >= 0.9995 else f"{_figures(litres * 1000.0)} mL"


def _figures(value: float) -> str:
    decimals = 0 if value >= 99.95 else 1 if value >= 9.995 else 2 if value >= 0.9995 else 3
    text = say("{value:.{decimals}f}", value=value, decimals=decimals)
    return text.rstrip("0").rstrip(".") if "." in text else text


def _two_figures(value: float) -> float:
    return float(f"{value:.2g}")


def _round(value: float) -> str:
    return say("{float:,.0f}", float=float(say("{value:.3g}", value=value))).replace(",", "\u202f")


def _degrees(celsius: float, system: System) -> str:
    return show(celsius, "temperature", system=system)
