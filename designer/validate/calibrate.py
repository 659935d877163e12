"""The fit of the calibrated constants to published makes: least squares with priors, and each family left out in turn.

`python -m designer.validate.calibrate` prints what it would write; nothing is changed but with --write.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import least_squares

from designer.validate.course import Course, courses
from designer.validate.makes import Figure

Vector = NDArray[np.float64]

NEVER_FITTED = frozenset(
    ("Cheddar logs", "Stirred-curd Cheddar", "Low-fat Cheddar", "Emmental", "Cheshire", "Romano", "Saint-Paulin",
     "Limburger", "Halloumi", "Cottage and quark", "Neufchâtel")
)  # fmt: skip
"""Families no constant was fitted to: weak records, laws of another kind, or kept for a clean test."""

SD = {
    "ph": 0.08, "ph_whey": 0.08, "ph_24h": 0.08, "moisture_pct": 1.1, "mnfs_pct": 1.4, "curd_moisture_pct": 1.5,
    "fat_pct": 2.0, "protein_pct": 1.6, "salt_pct": 0.25, "salt_in_moisture_pct": 0.6, "lactose_pct": 0.15,
    "lactate_pct": 0.15, "calcium_mg_per_g_protein": 1.5, "calcium_mmol_per_kg": 8.0, "casein_recovery_pct": 1.0,
}  # fmt: skip
"""Error a good published figure may have on a fully known make, by quantity (engineering default)."""
YIELD_SD_SHARE = 0.05
TRUST = {"measured": 1.0, "procedure": 1.2, "joined": 1.5}
WEAK = 1.4
LOSS_SD_SHARE = 0.25


@dataclass(frozen=True, slots=True)
class Prior:
    """What was held of a constant before the fit."""

    name: str
    centre: float
    scale: str
    sd: float
    source: str

    def value(self, z: float) -> float:
        """The constant at z standard deviations from the centre."""
        return float(self.centre * np.exp(self.sd * z)) if self.scale == "log" else self.centre + self.sd * z

    def z(self, value: float) -> float:
        """How many standard deviations a value lies from the centre."""
        return float(np.log(value / self.centre) / self.sd) if self.scale == "log" else (value - self.centre) / self.sd


@cache
def priors() -> tuple[Prior, ...]:
    """The shipped table, in order."""
    text = files("designer.validate").joinpath("priors.toml").read_text("utf-8")
    return tuple(Prior(name, **row) for name, row in tomllib.loads(text).items())


def sd(figure: Figure) -> float:
    """Standard deviation given to a published figure in the fit, in its unit."""
    base = YIELD_SD_SHARE * figure.value if figure.quantity == "yield_kg_per_100kg" else SD[figure.quantity]
    base *= TRUST[figure.kind]
    if not figure.have.startswith("published"):
        base *= WEAK
    return float(np.hypot(base, np.hypot(0.5 * (figure.high - figure.low), LOSS_SD_SHARE * figure.loss_pct)))


class Fit:
    """Residuals of chosen families over z, the constants in standard deviations of their priors."""

    def __init__(self, families: frozenset[str], of: Sequence[Course] | None = None) -> None:
        self.courses = [course for course in of or courses() if course.make.family in families]
        self.weights = [_weights(course, self.courses) for course in self.courses]

    def residuals(self, z: Vector) -> Vector:
        """Weighted errors of the figures, then z itself (the priors), shape (figures + constants,)."""
        constants = decoded(z)
        parts = [
            weight * (course.values(constants) - [figure.value for figure in course.make.figures])
            for course, weight in zip(self.courses, self.weights, strict=True)
        ]
        return np.concatenate([np.clip(np.nan_to_num(np.concatenate(parts), nan=30.0), -30.0, 30.0), z])

    def solve(self, start: Vector) -> Vector:
        """Robust least squares from `start`."""
        found = least_squares(self.residuals, start, loss="soft_l1", diff_step=0.02, max_nfev=15, xtol=1e-4, ftol=1e-4)
        return np.asarray(found.x)


def _weights(course: Course, fitted: Sequence[Course]) -> Vector:
    """1 / sd, less where a family brings the same quantity many times."""
    own = [each.make for each in fitted if each.make.family == course.make.family]
    out = []
    for figure in course.make.figures:
        same = sum(each.quantity == figure.quantity for make in own for each in make.figures)
        out.append(1.0 / (sd(figure) * np.sqrt(same)))
    return np.array(out)


def decoded(z: Vector) -> Mapping[str, float]:
    """Constants by name."""
    return {prior.name: prior.value(at) for prior, at in zip(priors(), z, strict=True)}
