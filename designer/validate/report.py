"""The report on published makes: forecast beside figure, mean errors with n and interval, and how far bands hold.

Errors stand twice: with the shipped constants, and "out of the fit", where a family of makes had no say: left out in
turn (left_out.toml, written by `calibrate`) or never fitted at all. Only the second kind says what a new make may
expect.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

import numpy as np
from scipy.stats import beta

from designer.make.constants import table
from designer.validate.calibrate import NEVER_FITTED
from designer.validate.course import courses
from designer.validate.makes import CLASSES, Figure

MOISTURE, YIELD = "moisture", "yield"
LACTIC = {MOISTURE: "moisture, lactic curd", YIELD: "yield, lactic curd"}
"""Lines that lactic curd stands in by itself: it drains by a law of its own."""
GROUPS: Mapping[str, str] = {
    "moisture_pct": MOISTURE,
    "ph": "pH at a step",
    "ph_whey": "pH at a step",
    "ph_24h": "pH at a step",
    "yield_kg_per_100kg": YIELD,
    "fat_pct": "fat",
    "protein_pct": "protein",
    "salt_pct": "salt",
    "calcium_mg_per_g_protein": "calcium per protein",
}
"""Quantity -> the line of the report it counts in; what is not here stands in the rows only."""
UNITS = {
    MOISTURE: "points", LACTIC[MOISTURE]: "points", "pH at a step": "pH", YIELD: "% of it",
    LACTIC[YIELD]: "% of it", "fat": "points", "protein": "points", "salt": "points", "calcium per protein": "mg/g",
}  # fmt: skip
AIMS = {MOISTURE: 1.5, "pH at a step": 0.1, YIELD: 3.0}
INTERVAL_PCT = (10.0, 90.0)
RESAMPLED, SEED = 4000, 20


@dataclass(frozen=True, slots=True)
class Row:
    """One figure beside the forecast. `left_out` is the forecast of constants fitted without its family, if fitted."""

    figure: Figure
    family: str
    fitted: bool
    lactic: bool
    forecast: float
    left_out: float | None
    low: float
    high: float

    @property
    def error(self) -> float:
        """Forecast less published (the middle of a printed range)."""
        return self.forecast - self.figure.value

    @property
    def error_out(self) -> float | None:
        """The same out of the fit; None while left_out.toml is older than the constants."""
        if not self.fitted:
            return self.error
        return None if self.left_out is None else self.left_out - self.figure.value

    @property
    def group(self) -> str:
        """The line of the report it counts in, "" for none."""
        group = GROUPS.get(self.figure.quantity, "")
        return LACTIC.get(group, group) if self.lactic else group

    @property
    def touched(self) -> bool | None:
        """Whether the band, moved to where it lies out of the fit, reaches the published figure or range."""
        out = self.error_out
        if out is None or not self.low < self.high:
            return None
        moved = out - self.error
        return self.low + moved <= self.figure.high and self.figure.low <= self.high + moved

    def scaled(self, error: float) -> float:
        """An error in the unit of its line: yield in per cent of the figure."""
        return 100.0 * error / self.figure.value if UNITS.get(self.group) == "% of it" else error


@dataclass(frozen=True, slots=True)
class Mean:
    """Mean absolute error of one line and class; `low`..`high` is the 80 % interval from resampling families."""

    group: str
    kind: str
    n: int
    families: int
    fitted: float
    out: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Coverage:
    """How many published figures the 80 % bands reach, out of the fit, with the 80 % interval of that share."""

    group: str
    n: int
    inside: int
    low_pct: float
    high_pct: float


@cache
def left_out() -> Mapping[str, Sequence[float]]:
    """Make -> forecasts of its figures by constants fitted without its family; empty where it is out of date."""
    stored = tomllib.loads(files("designer.validate").joinpath("left_out.toml").read_text("utf-8"))
    if any(table()[name].value != value for name, value in stored["constants"].items()):
        return {}
    forecasts: Mapping[str, Sequence[float]] = stored["left_out"]
    return forecasts


def rows(members: int = 0) -> tuple[Row, ...]:
    """Every figure of every make; with `members` > 0 each with its band."""
    out = []
    for course in courses():
        ours = course.values()
        low, high = ours, ours
        if members:
            low, high = np.percentile(course.drawn(members), INTERVAL_PCT, axis=0)
        stored = left_out().get(course.make.id)
        lactic = any(stage.kind == "lactic_set" for stage in course.make.recipe.stages)
        fitted = course.make.family not in NEVER_FITTED
        out += [
            Row(figure, course.make.family, fitted, lactic, float(ours[at]), stored[at] if stored else None,
                float(low[at]), float(high[at]))
            for at, figure in enumerate(course.make.figures)
        ]  # fmt: skip
    return tuple(out)


def means(of: Iterable[Row]) -> tuple[Mean, ...]:
    """One line a group and class, and one of all classes together, in the order of UNITS."""
    known = [row for row in of if row.group and row.error_out is not None]
    out = []
    for group in UNITS:
        for kind in (*CLASSES, "all"):
            chosen = [row for row in known if row.group == group and kind in (row.figure.kind, "all")]
            if chosen:
                out.append(_mean(group, kind, chosen))
    return tuple(out)


def _mean(group: str, kind: str, of: Sequence[Row]) -> Mean:
    families = sorted({row.family for row in of})
    errors = [[abs(row.scaled(row.error_out or 0.0)) for row in of if row.family == family] for family in families]
    sums, counts = np.array([sum(each) for each in errors]), np.array([len(each) for each in errors])
    drawn = np.random.default_rng(SEED).integers(len(families), size=(RESAMPLED, len(families)))
    low, high = np.percentile(sums[drawn].sum(axis=1) / counts[drawn].sum(axis=1), INTERVAL_PCT)
    return Mean(
        group, kind, len(of), len(families), float(np.mean([abs(row.scaled(row.error)) for row in of])),
        float(sums.sum() / counts.sum()), float(low), float(high),
    )  # fmt: skip


def coverage(of: Iterable[Row]) -> tuple[Coverage, ...]:
    """Coverage of the bands a group; Clopper-Pearson interval."""
    out = []
    known = [(row.group, row.touched) for row in of if row.group and row.touched is not None]
    for group in UNITS:
        hits = [touched for own, touched in known if own == group]
        if hits:
            n, inside = len(hits), sum(bool(hit) for hit in hits)
            low = beta.ppf(0.1, inside, n - inside + 1) if inside else 0.0
            high = beta.ppf(0.9, inside + 1, n - inside) if inside < n else 1.0
            out.append(Coverage(group, n, inside, 100.0 * float(low), 100.0 * float(high)))
    return tuple(out)


def markdown(of: Sequence[Row], groups: Sequence[str] = tuple(UNITS)) -> str:
    """The means as a table for the README."""
    lines = [
        "| | class | figures (families) | as fitted | out of the fit | 80 % interval | aim |",
        "|---|---|---|---|---|---|---|",
    ]
    for mean in (each for each in means(of) if each.group in groups):
        aim = f"{AIMS[mean.group]:g}" if mean.kind == "all" and mean.group in AIMS else ""
        lines.append(
            f"| {mean.group} [{UNITS[mean.group]}] | {mean.kind} | {mean.n} ({mean.families}) | {mean.fitted:.2g} | "
            f"{mean.out:.2g} | {mean.low:.2g}-{mean.high:.2g} | {aim} |"
        )
    return "\n".join(lines)
