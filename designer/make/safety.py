"""Cautions of the make: acid too slow, warm milk too long, raw milk, loads, wax, allergens - with their source.

Limits are looked up for the family, never learned, and nothing measured or learned relaxes them. A caution is not a
certificate and its absence is none either: the maker's own authority decides.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from designer.recipe.document import Recipe
from designer.recipe.schedule import GEL_LACTIC, PLACE_PRESS, Schedule
from designer.recipe.stages.stage import Stage

if TYPE_CHECKING:
    from designer.forecast import Outcome, StageForecast, Trace

DELBES = "Delbes et al. 2006, J. Food Prot. 69:2161 (published, read: abstract)"
ZEHREN = "Zehren & Zehren 1968, J. Dairy Sci. (published, read: abstract)"
COMMON = "common practice, no source"


@dataclass(frozen=True, slots=True)
class Caution:
    """A caution of the make. `level`: "note" | "watch" | "stop". `stage` is a stage id or ""."""

    code: str
    level: str
    text: str
    source: str
    stage: str = ""


def cautions(
    recipe: Recipe, stages: Sequence[Stage], schedule: Schedule, marched: Sequence[StageForecast], trace: Trace,
    outcomes: Mapping[str, Outcome],
) -> tuple[Caution, ...]:  # fmt: skip
    """All cautions for one lane, the gravest first."""
    found = [
        *_milk(recipe),
        *_acid(recipe, stages, schedule, trace, outcomes),
        *_late(stages, marched),
        *_work(recipe, stages, schedule),
    ]
    grave = {"stop": 0, "watch": 1, "note": 2}
    return tuple(sorted(found, key=lambda caution: grave[caution.level]))


def _milk(recipe: Recipe) -> list[Caution]:
    out = []
    if any(source.withheld for source in recipe.milks):
        out.append(Caution("withheld", "stop", "Milk withheld because of medicine can't be made into cheese.", COMMON))
    if any(source.heat in ("raw", "thermised") for source in recipe.milks):
        out.append(
            Caution(
                "raw-milk",
                "watch",
                "Raw or thermised milk: where a rule asks 60 days at 1.7 °C or more, those days are no kill step. Ask "
                "your authority; warn people at risk.",
                "21 CFR 133 (published, read); the 60-day rule does not guarantee safety",
            )
        )
    out.append(
        Caution("allergen-milk", "note", "Contains milk: it must be named on a label.", "EU and UK labelling rules")
    )
    return out


def _acid(
    recipe: Recipe, stages: Sequence[Stage], schedule: Schedule, trace: Trace, outcomes: Mapping[str, Outcome]
) -> list[Caution]:
    rows = schedule.lanes[0].rows
    kinds = {stage.kind for stage in stages}
    if not recipe.starters and "acid_heat" not in kinds:
        return [
            Caution(
                "no-starter",
                "watch",
                "No starter: nothing but cold, salt and heat holds back what grows. Keep it cold and eat it soon.",
                COMMON,
            )
        ]
    if "acid_heat" in kinds:
        return []
    warm = np.diff(trace.time_min, prepend=0.0) * (trace["temperature_c"] > 15.0) * (trace["ph"] > 5.8)
    warm_hours = float(warm.sum()) / 60.0
    if GEL_LACTIC in set(rows["gel"].tolist()):
        if warm_hours > 18.0:
            return [
                Caution(
                    "slow-acid",
                    "stop",
                    f"Slow acid: {warm_hours:.0f} h above 15 °C before pH 5.8. A cool lactic set is slow by nature, but "
                    "not as slow as this; hold the batch and ask.",
                    "FACEnetwork European Guide 2016: judge against your own normal curve; figure: " + COMMON,
                )
            ]
        return []
    ph6 = outcomes["ph_6h"].value if "ph_6h" in outcomes else 0.0
    cooked = float(trace["temperature_c"].max()) >= 48.0
    if ph6 > 6.3 and not cooked:
        return [
            Caution(
                "slow-acid",
                "stop",
                f"Slow acid: pH {ph6:.2f} six hours after the starter. Enterotoxin was found where it stood at 6.5-6.6; "
                "a slow vat is held and tested, not sold on.",
                DELBES,
            )
        ]
    if ph6 > 5.8 and not cooked:
        return [
            Caution(
                "acid-watch",
                "watch",
                f"pH {ph6:.2f} six hours after the starter: semi-hard raw-milk cheeses should be at 5.8 or below by then.",
                DELBES,
            )
        ]
    if cooked and ph6 > 6.3:
        return [
            Caution(
                "acid-watch",
                "watch",
                f"pH {ph6:.2f} six hours after the starter: slow for a cooked cheese, which should near 5.7 by then.",
                "textbook course of Alpine cheeses (from memory, medium)",
            )
        ]
    return []


def _late(stages: Sequence[Stage], marched: Sequence[StageForecast]) -> list[Caution]:
    return [
        Caution(
            "not-reached",
            "watch",
            f"“{one.name}” runs to its latest without reaching its end: pH {one.values['ph']:.2f}, "
            f"{one.values['temperature_c']:.0f} °C by then.",
            "this forecast",
            one.id,
        )
        for one in marched
        if not one.reached
    ]


def _work(recipe: Recipe, stages: Sequence[Stage], schedule: Schedule) -> list[Caution]:
    out = []
    rows = schedule.lanes[0].rows
    chloride = float(rows["cacl2_g_kg"].sum())
    if chloride > 0.2 + 1e-9:
        out.append(
            Caution(
                "calcium",
                "watch",
                f"Calcium chloride {chloride / 10.0:.3f} % of the milk; 0.02 % is the ceiling of the US and Codex texts.",
                "21 CFR 133, Codex CXS 278 (published, read)",
            )
        )
    radius_m = rows["radius_mm"] / 1000.0
    load_kg = rows["load_kpa"] * 1000.0 * np.pi * radius_m**2 / 9.81 * (rows["place"] == PLACE_PRESS)
    if load_kg.size and float(load_kg.max()) > 100.0:
        stage = stages[int(rows["stage"][int(load_kg.argmax())])]
        out.append(
            Caution(
                "heavy-press",
                "watch",
                f"{float(load_kg.max()):.0f} kg on one cheese: never stack such a load by hand; use a guided press or lever.",
                "300-500 lb stacked on a follower proved unsafe (" + COMMON + ")",
                stage.id,
            )
        )
    kinds = [stage.kind for stage in stages]
    if "brine" in kinds or "hold_brine" in kinds:
        out.append(
            Caution(
                "brine",
                "note",
                "Brine kept for long can harbour Listeria that stands salt: skim it, keep it cold, have it tested. Gloves "
                "and eye cover when mixing it.",
                "published brine procedure; " + COMMON,
                stages[kinds.index("brine" if "brine" in kinds else "hold_brine")].id,
            )
        )
    coat = recipe.coat.kind if recipe.coat else ""
    if coat == "wax":
        out.append(
            Caution(
                "hot-wax", "note", "Hot wax burns and catches fire: melt it in a water bath, never leave it.", COMMON
            )
        )
    if coat in ("washed", "bloomy"):
        out.append(
            Caution(
                "listeria",
                "watch",
                "Washed and bloomy rinds turn back to neutral where Listeria grows: clean drains, boards and cloths first, "
                "test as your rules ask, warn people at risk.",
                "UK specialist code; EU Reg. 2073/2005 (from memory, high)",
            )
        )
    out.append(
        Caution(
            "cleaning",
            "note",
            "Never mix chlorine and acid cleaners (toxic gas); chlorine in the water also kills rennet.",
            "Hill, University of Guelph: 2 ppm kills 40 % of rennet in 3 min; " + COMMON,
        )
    )
    return out
