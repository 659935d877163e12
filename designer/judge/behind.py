"""What stands behind a setting: the constants through which it acts on the cheese, each with its source.

What teaching speaks of stands in depths.toml and is asked there; here is the rest, so that no figure that can be moved
is without its law (tests/judge/test_behind.py).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from designer.judge.depths import topic_of
from designer.judge.movable import Movable
from designer.make.constants import Constant, table
from designer.recipe.document import Recipe

Rows = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Law:
    """A row behind a setting: its name, what a maker calls it, value with unit and the range it may lie in, source and
    how we have it."""

    name: str
    label: str
    value: str
    source: str
    have: str


_WARMTH: Rows = ("cp_milk", "meso_t_opt", "strep_t_opt", "floc_k")
_WAITING: Rows = ("meso_mu", "acid_yield", "syneresis_k")
_POURED: Rows = ("exchange_min", "cp_water")
_COOLING: Rows = ("cooling_h", "cooling_shape", "cheese_conductivity")
_HELD_HOT: Rows = ("heat_curd_t_half_c", "heat_curd_t_width_c", "death_t_ref_c", "death_z_c")

# (what it is of, stage kind or what is added; "" where it does not matter, field).
_ROWS: Mapping[tuple[str, str, str], Rows] = {
    ("milk", "", "volume_l"): ("floc_k", "acid_yield"),
    ("milk", "", "mass_kg"): ("floc_k", "acid_yield"),
    ("milk", "", "lactose_pct"): ("acid_yield", "hexose_half", "acid_stop"),
    ("milk", "", "temperature_c"): _WARMTH,
    ("starter", "", "acidity_pct"): ("lactic_pka", "buffer_scale"),
    ("starter", "", "after_min"): ("meso_mu", "acid_yield"),
    ("addition", "", "after_min"): ("floc_lag_min", "firming_tau"),
    ("addition", "coagulant", "mass_pct"): ("floc_k", "floc_lag_min"),
    ("addition", "calcium_chloride", ""): ("floc_ca_slope", "calcium_h", "firming_tau"),
    ("addition", "acid", ""): ("lactic_pka", "buffer_scale", "heat_curd_sweet", "acid_gel_ph"),
    ("addition", "salt", ""): ("salt_retained", "salt_absorb_per_min", "meso_salt_max"),
    ("form", "", "follower_diameter_mm"): ("press_half_kpa", "skin_load_kpa"),
    ("branch", "", "share_pct"): ("cells_in_whey", "casein_kept"),
    ("stage", "", "ramp_min"): ("film_rate_c_min", "film_share", "syneresis_ea"),
    ("stage", "", "on_min"): _POURED,
    ("stage", "", "off_min"): _POURED,
    ("stage", "settle", "pressure_kpa"): ("handling_press", "press_half_kpa"),
    ("stage", "drying", "humidity_pct"): ("drying_per_min",),
    ("stage", "scald", "bath_c"): ("cooling_h_brine", "syneresis_ea", "syneresis_t_cap_c", "death_t_ref_c"),
    ("stage", "stretch", "water_per_curd"): ("stretch_plastic_c", "stretch_r_holds", "cp_water"),
    ("stage", "stretch", "temperature_c"): ("stretch_plastic_c", "stretch_r_warm", "stretch_fat_warm"),
    ("stage", "stretch", "end.length_min"): ("stretch_min", "stretch_water_per_min", "stretch_salt_per_min"),
    ("stage", "acid_heat", "end.length_min"): ("heat_curd_k", "heat_curd_ea", "heat_curd_r_eq"),
    ("stage", "heat", "end.length_min"): _HELD_HOT,
    ("stage", "cool", "end.length_min"): _WAITING,
    ("stage", "scald", "end.length_min"): ("cooling_h_brine", "syneresis_k"),
    ("stage", "set", "end.length_min"): ("floc_k", "firming_tau", "firm_limit_pa"),
    ("stage", "hang", "end.length_min"): ("acid_syneresis_k", "acid_gel_closing", "acid_gel_r_eq", "acid_gel_hung_kpa"),
    ("stage", "lactic_set", "end.length_min"): ("meso_mu", "acid_yield", "acid_gel_ph"),
    ("stage", "press", "end.length_min"): ("handling_press", "skin_per_min", "acid_yield"),
    ("stage", "salt", "end.length_min"): ("salt_absorb_per_min", "salt_water_out"),
    ("stage", "drying", "end.length_min"): ("drying_per_min",),
    ("stage", "heat", "temperature_c"): _HELD_HOT,
    ("stage", "acid_heat", "temperature_c"): _HELD_HOT,
    ("stage", "acid_heat", "end.value"): _HELD_HOT,
    ("stage", "heat", "end.value"): _HELD_HOT,
    ("stage", "cool", "end.value"): _WARMTH,
    ("stage", "scald", "end.value"): ("cooling_h_brine", "syneresis_ea", "syneresis_t_cap_c"),
    ("stage", "stretch", "end.value"): ("stretch_plastic_c", "stretch_r_warm", "stretch_min"),
    ("stage", "", "temperature_c"): ("syneresis_ea", *_WARMTH),
    ("stage", "", "end.value"): _WAITING,
    ("stage", "", "end.length_min"): _WAITING,
    ("stage", "", "room_c"): _COOLING,
}


def rows_behind(recipe: Recipe, setting: Movable) -> Rows:
    """Names of the constants behind a setting; empty where none is known."""
    kind = _kind(recipe, setting)
    own = _ROWS.get((setting.of, kind, setting.field)) or _ROWS.get((setting.of, kind, ""))
    if own and kind:
        return own
    found = topic_of(recipe, setting)
    if found is not None and found.rows:
        return found.rows
    return _ROWS.get((setting.of, "", setting.field), ())


def laws_behind(recipe: Recipe, setting: Movable) -> tuple[Law, ...]:
    """The constants behind a setting, as they are shown."""
    return tuple(law_of(table()[name]) for name in rows_behind(recipe, setting))


def law_of(row: Constant) -> Law:
    """A constant in words."""
    return Law(row.name, row.label, row.shown_with_range, row.told_source, row.have)


def _kind(recipe: Recipe, setting: Movable) -> str:
    """Kind of the stage, or what it is that is added."""
    if setting.of == "stage":
        return recipe.stage(setting.where).kind
    every = (one for lane in recipe.lanes() for one in lane.additions)
    return next((one.what for one in every if one.id == setting.where), "") if setting.of == "addition" else ""
