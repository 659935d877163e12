"""The words of a style file: which figures of a cheese, which settings of a make, which moments of its curve.

Labels and units are those a maker reads; `kind` is the unit kind (designer/units.py) that shows the figure.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from designer.language import word


@dataclass(frozen=True, slots=True)
class Setting:
    """A setting of the make that a style has a usual range for; `near` is how far outside still counts as near."""

    english: str
    english_unit: str
    kind: str
    near: float

    @property
    def label(self) -> str:
        """What it is called, in the language spoken."""
        return word(self.english, "quantity")

    @property
    def unit(self) -> str:
        """Its unit for the eye, in the language spoken."""
        return word(self.english_unit, "unit")


@dataclass(frozen=True, slots=True)
class Moment:
    """A moment of the make at which a gate stands; `setting` is the window key a pH gate here stands for."""

    english: str
    setting: str = ""

    @property
    def label(self) -> str:
        """When that is, in the language spoken."""
        return word(self.english, "quantity")


COMPOSITION = frozenset(
    (
        "moisture_pct",
        "dry_matter_pct",
        "dry_matter_g_piece",
        "fat_pct",
        "fdm_pct",
        "mnfs_pct",
        "protein_pct",
        "salt_pct",
        "salt_in_moisture_pct",
        "salt_in_dry_matter_pct",
        "ph_ripe",
        "ash_pct",
        "calcium_mg_100g",
        "calcium_mg_per_g_protein",
        "yield_kg_per_100kg",
    )
)
"""What a limit, a published average or a quality window may speak of."""

SETTINGS: Mapping[str, Setting] = {
    "ripen_c": Setting("ripening temperature", "°C", "temperature", 1.0),
    "ripen_min": Setting("ripening time before rennet", "min", "duration", 10.0),
    "ph_rennet": Setting("pH at rennet", "", "ph", 0.05),
    "set_c": Setting("setting temperature", "°C", "temperature", 1.0),
    "floc_min": Setting("flocculation time", "min", "duration", 2.0),
    "floc_multiple": Setting("cut at multiple of flocculation", "×", "multiple", 0.25),
    "set_min": Setting("rennet to cut", "min", "duration", 5.0),
    "cut_mm": Setting("cut size", "mm", "length", 1.0),
    "heal_min": Setting("rest after cutting", "min", "duration", 3.0),
    "cook_c": Setting("highest temperature of the curd", "°C", "temperature", 0.5),
    "cook_rate_c_min": Setting("heating rate", "°C/min", "rate_temperature", 0.05),
    "cut_to_drain_min": Setting("cut to whey off", "min", "duration", 15.0),
    "whey_off_pct": Setting("whey drawn before washing", "% of milk", "percent", 3.0),
    "wash_pct": Setting("wash water", "% of milk", "percent", 3.0),
    "wash_c": Setting("wash water temperature", "°C", "temperature", 3.0),
    "ph_drain": Setting("pH at draining", "", "ph", 0.05),
    "stack_min": Setting("stacking", "min", "duration", 15.0),
    "ph_mill": Setting("pH at milling", "", "ph", 0.05),
    "salt_curd_pct": Setting("dry salt", "% of curd", "percent", 0.2),
    "ph_salt": Setting("pH at salting", "", "ph", 0.05),
    "ph_mould": Setting("pH at moulding", "", "ph", 0.05),
    "ph_stretch": Setting("pH at stretching", "", "ph", 0.05),
    "stretch_c": Setting("stretching water", "°C", "temperature", 3.0),
    "scald_c": Setting("scalding", "°C", "temperature", 3.0),
    "press_kpa": Setting("highest pressure", "kPa", "pressure", 5.0),
    "press_h": Setting("pressing", "h", "count", 2.0),
    "ph_press_end": Setting("pH out of the press", "", "ph", 0.05),
    "brine_pct": Setting("brine strength", "% w/w", "percent", 1.0),
    "brine_h": Setting("time in brine", "h", "count", 4.0),
    "brine_c": Setting("brine temperature", "°C", "temperature", 2.0),
    "ph_brine": Setting("pH into the brine", "", "ph", 0.05),
    "hang_h": Setting("hanging in cloth", "h", "count", 2.0),
    "ph_6h": Setting("pH 6 h after the starter", "", "ph", 0.1),
    "ph_24h": Setting("pH at 24 h", "", "ph", 0.05),
    "room_c": Setting("room temperature", "°C", "temperature", 1.0),
    "room_rh_pct": Setting("room humidity", "% RH", "percent", 3.0),
    "age_days": Setting("age", "days", "count", 7.0),
}

CURVES = frozenset(("ph", "ph_whey", "temperature_c", "curd_moisture_pct"))

MOMENTS: Mapping[str, Moment] = {
    "rennet": Moment("at rennet", "ph_rennet"),
    "cut": Moment("at the cut"),
    "cook_end": Moment("at the end of cooking"),
    "drain": Moment("when the whey comes off", "ph_drain"),
    "mill": Moment("at milling", "ph_mill"),
    "salt": Moment("at salting", "ph_salt"),
    "mould": Moment("when the forms are filled", "ph_mould"),
    "stretch": Moment("at stretching", "ph_stretch"),
    "press_end": Moment("out of the press", "ph_press_end"),
    "brine": Moment("into the brine", "ph_brine"),
    "h6": Moment("6 h after the starter", "ph_6h"),
    "h24": Moment("24 h after the starter", "ph_24h"),
}
