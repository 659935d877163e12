"""Outcomes in words and figures: what each is called here, its value, a change of it, and its unit."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication

from designer.forecast import Outcome
from designer.judge.verdict import Row
from designer.language import number
from designer.quantities import quantity
from designer.units import show
from widgets import wording

SHORT: Final[dict[str, str]] = {
    "mnfs_pct": QT_TRANSLATE_NOOP("Outcome", "Moisture, fat-free (MNFS)"),
    "fdm_pct": QT_TRANSLATE_NOOP("Outcome", "Fat in dry matter"),
    "salt_in_moisture_pct": QT_TRANSLATE_NOOP("Outcome", "Salt in moisture"),
    "yield_kg_per_100kg": QT_TRANSLATE_NOOP("Outcome", "Yield of 100 kg milk"),
    "calcium_mg_per_g_protein": QT_TRANSLATE_NOOP("Outcome", "Calcium per g protein"),
    "floc_min": QT_TRANSLATE_NOOP("Outcome", "Flocculation"),
    "drain_moisture_pct": QT_TRANSLATE_NOOP("Outcome", "Curd moisture at draining"),
    "finish_min": QT_TRANSLATE_NOOP("Outcome", "Make takes"),
}
SHORTER: Final[dict[str, str]] = {
    "mnfs_pct": QT_TRANSLATE_NOOP("Outcome", "MNFS"),
    "fdm_pct": QT_TRANSLATE_NOOP("Outcome", "FDM"),
    "yield_kg_per_100kg": QT_TRANSLATE_NOOP("Outcome", "Yield"),
    "calcium_mg_per_g_protein": QT_TRANSLATE_NOOP("Outcome", "Calcium"),
}
"""Where even that has no room."""
UNIT: Final[dict[str, str]] = {"yield_kg_per_100kg": "kg", "calcium_mg_per_g_protein": "mg"}


def label_of(key: str) -> str:
    """What an outcome is called here."""
    return QCoreApplication.translate("Outcome", SHORT[key]) if key in SHORT else quantity(key).label


def shorter_of(key: str) -> str:
    """The same where there is little room."""
    return QCoreApplication.translate("Outcome", SHORTER[key]) if key in SHORTER else label_of(key)


def value_words(key: str, value: float, system: str) -> str:
    """A value of an outcome with its unit."""
    what = quantity(key)
    if what.kind == "duration":
        return wording.length(value)
    if what.kind == "mass":
        return show(value, "mass", system=wording.system_of(system), decimals=what.decimals)
    unit = UNIT.get(key, what.unit)
    return f"{number(value, f'.{what.decimals}f')} {unit}".rstrip()


def band_words(key: str, outcome: Outcome, system: str) -> str:
    """The 80 % band, "" where none was worked out or it is narrower than the last figure."""
    what = quantity(key)
    if what.kind in ("mass",):
        return ""
    low, high = number(outcome.low, f".{what.decimals}f"), number(outcome.high, f".{what.decimals}f")
    if low == high:
        return ""
    if what.kind == "duration" and outcome.high >= 60:
        low, high = wording.length(outcome.low), wording.length(outcome.high)
    return f"{low}\u2013{high}"


def difference_words(key: str, change: float, system: str) -> str:
    """What lies between two values that stand beside it, with its sign, as fine as they are told."""
    return change_words(key, change, system, finer=0)


def change_words(key: str, change: float, system: str, *, finer: int = 1) -> str:
    """A change of an outcome with its sign, one figure finer than the outcome: effects of one step are small."""
    what = quantity(key)
    sign = "+" if change >= 0.0 else wording.MINUS
    if what.kind == "mass":
        words = show(abs(change), "mass", system=wording.system_of(system), decimals=what.decimals + finer)
        return f"{sign}{words}"
    unit = {"percent": ""}.get(what.kind, UNIT.get(key, what.unit if what.kind in ("duration", "pressure") else ""))
    decimals = min(what.decimals + finer, 3)
    return f"{sign}{number(abs(change), f'.{decimals}f')} {unit}".rstrip()


def figure_text(row: Row, decimals: int) -> str:
    """The figure of a row with its unit, as sharp as its sentence tells it; "" where there is none."""
    return "" if row.value is None else f"{number(row.value, f'.{decimals}f')} {row.unit}".rstrip()
