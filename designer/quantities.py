"""Every quantity the program shows, once: label, unit, decimals, natural step.

Outcomes, styles, charts, the plan and JSON all ask here.
"""

from __future__ import annotations

from dataclasses import dataclass

from designer.language import word


@dataclass(frozen=True, slots=True)
class Quantity:
    """One quantity of a make. `unit` is for the eye, `kind` names the kind in `units`, `step` is in base units.

    `better` says which way is usually wanted ("less", "more" or "" where it depends on the cheese).
    """

    key: str
    english: str
    english_unit: str
    kind: str
    decimals: int
    step: float
    better: str = ""

    @property
    def label(self) -> str:
        """What it is called, in the language spoken."""
        return word(self.english, "quantity")

    @property
    def unit(self) -> str:
        """Its unit for the eye, in the language spoken."""
        return word(self.english_unit, "unit")


def _percent(key: str, label: str, decimals: int = 1, step: float = 0.1, better: str = "") -> Quantity:
    return Quantity(key, label, "%", "percent", decimals, step, better)


def _ph(key: str, label: str) -> Quantity:
    return Quantity(key, label, "", "ph", 2, 0.01)


def _minutes(key: str, label: str) -> Quantity:
    return Quantity(key, label, "min", "duration", 0, 1.0)


_OUTCOMES = (
    # The cheese as it enters its first room, unless the label says otherwise.
    _percent("moisture_pct", "Moisture"),
    _percent("mnfs_pct", "Moisture in non-fat substance (MNFS)"),
    _percent("fdm_pct", "Fat in dry matter (FDM)"),
    _percent("fat_pct", "Fat"),
    _percent("protein_pct", "Protein"),
    _percent("dry_matter_pct", "Dry matter"),
    _percent("salt_pct", "Salt", 2, 0.05),
    _percent("salt_in_moisture_pct", "Salt in moisture (S/M)", 2, 0.1),
    _percent("lactose_pct", "Lactose", 2, 0.05, "less"),
    _percent("galactose_pct", "Galactose", 2, 0.05, "less"),
    _percent("lactate_pct", "Lactate", 2, 0.05),
    _percent("weight_loss_pct", "Weight loss", 1, 0.1, "less"),
    _percent("fat_recovery_pct", "Fat kept", 1, 0.5, "more"),
    _percent("casein_recovery_pct", "Casein kept", 1, 0.5, "more"),
    _percent("drain_moisture_pct", "Curd moisture at draining"),
    _ph("ph_24h", "pH at 24 h"),
    _ph("ph_set", "pH at setting"),
    _ph("ph_cut", "pH at cutting"),
    _ph("ph_drain", "pH at draining"),
    _ph("ph_mill", "pH at milling or salting"),
    _ph("ph_6h", "pH at 6 h"),
    _ph("ph_end", "pH at the end of the make"),
    Quantity("yield_kg_per_100kg", "Yield", "kg per 100 kg milk", "ratio", 2, 0.05, "more"),
    Quantity("cheese_kg", "Cheese", "kg", "mass", 2, 0.05, "more"),
    Quantity("calcium_mg_per_g_protein", "Calcium", "mg per g protein", "ratio", 1, 0.5),
    Quantity("calcium_mmol_per_kg", "Calcium", "mmol per kg", "ratio", 0, 5.0),
    _minutes("floc_min", "Flocculation after coagulant"),
    _minutes("cut_min", "Cut after coagulant"),
    _minutes("finish_min", "End of the make"),
    Quantity("press_kpa", "Highest pressure on the cheese", "kPa", "pressure", 1, 1.0),
    Quantity("knit", "Knit of the curd", "of 1", "ratio", 2, 0.05, "more"),
    Quantity("acidity_drawn_pct", "Acidity of the whey when first drawn", "% lactic acid", "acidity", 2, 0.01),
)
# Trace columns: one value at every moment.
_TRACES = (
    Quantity("temperature_c", "Temperature", "°C", "temperature", 1, 0.5),
    _ph("ph", "pH of milk or curd"),
    _ph("ph_whey", "pH of whey"),
    _percent("curd_moisture_pct", "Curd moisture"),
    Quantity("acidity_pct", "Acidity of milk or curd", "% lactic acid", "acidity", 2, 0.01),
    Quantity("acidity_whey_pct", "Acidity of whey", "% lactic acid", "acidity", 2, 0.01),
    Quantity("curd_kg_per_100kg", "Curd", "kg per 100 kg milk", "ratio", 1, 0.1),
    Quantity("whey_in_vat_kg_per_100kg", "Whey still in the vat", "kg per 100 kg milk", "ratio", 1, 0.1),
    Quantity("whey_kg_per_100kg", "Whey run off", "kg per 100 kg milk", "ratio", 1, 0.1),
    Quantity("firmness_pa", "Firmness of the gel", "Pa", "firmness", 0, 1.0),
    Quantity("load_kpa", "Pressure on the cheese", "kPa", "pressure", 1, 1.0),
    Quantity("r", "Water per casein", "kg/kg", "ratio", 2, 0.05),
    Quantity("meso", "Mesophilic starter", "10⁹ cells per mL", "ratio", 3, 0.01),
    Quantity("strep", "Thermophilic cocci", "10⁹ cells per mL", "ratio", 3, 0.01),
    Quantity("rods", "Thermophilic rods", "10⁹ cells per mL", "ratio", 3, 0.01),
)
QUANTITIES: dict[str, Quantity] = {quantity.key: quantity for quantity in (*_OUTCOMES, *_TRACES)}
OUTCOMES = tuple(quantity.key for quantity in _OUTCOMES)
"""Keys of what is told of the cheese and its make as a whole."""


def quantity(key: str) -> Quantity:
    """The quantity of that key; KeyError names the key that is not one."""
    return QUANTITIES[key]
