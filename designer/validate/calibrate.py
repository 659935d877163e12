"""The fit of the calibrated constants to published makes: least squares with priors, and each family left out in turn.

`python -m designer.validate.calibrate` prints what it would write; nothing is changed but with --write. With
`--only acid_syneresis,acid_gel` it fits the constants whose names begin so and holds the others where they are: for a
law whose makes stand by themselves. What such a fit does not move keeps its stored forecast out of the fit.
"""

from __future__ import annotations

import re
import sys
import tomllib
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import least_squares

from designer.make import kernel
from designer.make.constants import table
from designer.validate.course import Course, courses
from designer.validate.effects import effects
from designer.validate.makes import Figure

Vector = NDArray[np.float64]

NEVER_FITTED = frozenset(
    ("Cheddar logs", "Stirred-curd Cheddar", "Low-fat Cheddar", "Cheshire", "Emmental", "Romano", "Ewes' hard cheese",
     "Saint-Paulin", "Limburger", "Blue", "Halloumi")
)  # fmt: skip
"""Families no constant was fitted to: schedules mostly filled or from practice, laws of another kind, clean tests."""

SD = {
    "ph": 0.08, "ph_whey": 0.08, "ph_24h": 0.08, "moisture_pct": 0.8, "mnfs_pct": 1.1, "curd_moisture_pct": 0.8,
    "fat_pct": 2.0, "protein_pct": 1.6, "salt_pct": 0.25, "salt_in_moisture_pct": 0.6, "lactose_pct": 0.15,
    "lactate_pct": 0.15, "calcium_mg_per_g_protein": 1.5, "calcium_mmol_per_kg": 8.0, "casein_recovery_pct": 1.0,
}  # fmt: skip
"""Error a good published figure may have on a fully known make, by quantity (engineering default)."""
YIELD_SD_SHARE = 0.05
TRUST = {"measured": 1.0, "procedure": 1.2, "joined": 1.5}
WEAK = 1.4
EFFECT_SD = 0.06
STEP = 0.03
ROUNDS = 40
REFITS = 4
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
    if figure.quantity == "curd_moisture_pct":  # an error of the water per dry matter, so fewer points in wet curd
        base *= 4.0 * figure.value / 100.0 * (1.0 - figure.value / 100.0)
    base *= TRUST[figure.kind]
    if not figure.have.startswith("published"):
        base *= WEAK
    return float(np.hypot(base, np.hypot(0.5 * (figure.high - figure.low), LOSS_SD_SHARE * figure.loss_pct)))


class Fit:
    """Weighted errors of the makes over z, the constants in standard deviations of their priors.

    `only` names the constants that may move; without names all may.
    """

    def __init__(self, of: Sequence[Course], only: Collection[str] = ()) -> None:
        self.free = np.array([not only or prior.name in only for prior in priors()])
        self.courses = tuple(of)
        self.effects = effects()
        family = [course.make.family for course in of for _ in course.make.figures]
        self.family = np.array(family + [effect.before.make.family for effect in self.effects])
        figures = [figure for course in of for figure in course.make.figures]
        self.published = np.array([figure.value for figure in (*figures, *(effect.figure for effect in self.effects))])
        weights = [_weights(course, of) for course in of]
        self.weight = np.concatenate([*weights, [1.0 / EFFECT_SD] * len(self.effects)])

    def errors(self, z: Vector) -> Vector:
        """Model less published, over the standard deviation given to each figure, shape (figures,)."""
        constants = decoded(z)
        ours = np.concatenate(
            [*(course.values(constants) for course in self.courses), [each.value(constants) for each in self.effects]]
        )
        return np.asarray(np.clip(np.nan_to_num((ours - self.published) * self.weight, nan=30.0), -30.0, 30.0))

    def jacobian(self, z: Vector, at: Vector) -> Vector:
        """Slopes of the errors `at` z by differences, shape (figures, constants that may move)."""
        return np.array([(self.errors(z + STEP * unit) - at) / STEP for unit in np.eye(len(z))[self.free]]).T

    def solve(self, start: Vector) -> Vector:
        """Robust least squares with the priors, from `start`."""

        def at(free: Vector) -> Vector:
            z = start.copy()
            z[self.free] = free
            return z

        found = least_squares(
            lambda free: np.concatenate([self.errors(at(free)), free]),
            start[self.free],
            jac=lambda free: np.vstack([self.jacobian(at(free), self.errors(at(free))), np.eye(len(free))]),
            loss="soft_l1",
            max_nfev=ROUNDS,
            ftol=1e-4,
            xtol=1e-4,
        )
        return at(np.asarray(found.x))

    def without(self, family: str, z: Vector, slopes: Vector) -> Vector:
        """The constants refitted to all other families, from the whole fit z: Gauss-Newton with its slopes."""
        kept = self.family != family
        moved = z.copy()
        for _ in range(REFITS):
            errors = self.errors(moved)
            robust = 1.0 / np.sqrt(1.0 + errors[kept] ** 2)
            normal = slopes[kept].T @ (robust[:, None] * slopes[kept]) + np.eye(slopes.shape[1])
            moved[self.free] -= np.linalg.solve(normal, slopes[kept].T @ (robust * errors[kept]) + moved[self.free])
        return moved


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


def encoded(constants: Mapping[str, float]) -> Vector:
    """z of constants by name."""
    return np.array([prior.z(constants[prior.name]) for prior in priors()])


def shipped() -> Vector:
    """z of the constants as they stand in constants.toml."""
    return encoded({name: float(table()[name].value) for name in (prior.name for prior in priors())})  # type: ignore[arg-type]


def fitted_courses() -> tuple[Course, ...]:
    """The makes constants are fitted to."""
    return tuple(course for course in courses() if course.make.family not in NEVER_FITTED)


def left_out(fit: Fit, z: Vector, stored: Mapping[str, Sequence[float]]) -> dict[str, Sequence[float]]:
    """Make -> forecasts of its figures by the constants fitted without its family.

    Where not all constants are free, a family that none of these moves keeps what is `stored` of its makes.
    """
    slopes = fit.jacobian(z, fit.errors(z))
    without = {}
    for family in sorted(set(fit.family)):
        if fit.free.all() or slopes[fit.family == family].any():
            without[family] = decoded(fit.without(family, z, slopes))
    out: dict[str, Sequence[float]] = {}
    for course in fit.courses:
        make = course.make
        out[make.id] = course.values(without[make.family]).tolist() if make.family in without else stored[make.id]
    return out


def stored_left_out() -> Mapping[str, Sequence[float]]:
    """The forecasts out of the fit as left_out.toml has them, whatever its constants."""
    text = files("designer.validate").joinpath("left_out.toml").read_text("utf-8")
    forecasts: Mapping[str, Sequence[float]] = tomllib.loads(text)["left_out"]
    return forecasts


def as_toml(constants: Mapping[str, float], forecasts: Mapping[str, Sequence[float]]) -> str:
    """Text of left_out.toml."""
    lines = [
        "# Written by `python -m designer.validate.calibrate --write`: the constants of that fit, and what constants"
    ]
    lines += [
        "# fitted without its family say of each make, figure by figure in the order of the tables.",
        "[constants]",
    ]
    lines += [f"{name} = {value!r}" for name, value in constants.items()]
    lines += ["", "[left_out]"]
    lines += [f"{make} = [{', '.join(f'{value:.4f}' for value in values)}]" for make, values in forecasts.items()]
    return "\n".join(lines) + "\n"


def rounded(constants: Mapping[str, float]) -> dict[str, float]:
    """Constants to three figures, as they go into the table."""
    return {name: float(f"{value:.3g}") for name, value in constants.items()}


def rewritten(text: str, constants: Mapping[str, float]) -> str:
    """constants.toml with new values; a row that was not calibrated before says so now. KeyError for no such row."""
    for name, value in constants.items():
        start = text.find(f"[{name}]\n")
        if start < 0:
            raise KeyError(name)
        end = text.find("\n[", start)
        end = len(text) if end < 0 else end
        row = re.sub(r"(?m)^value = .*$", f"value = {value!r}", text[start:end], count=1)
        row = re.sub(r"(?m)^have = .*$", 'have = "calibrated"', row, count=1)
        text = text[:start] + row + text[end:]
    return text


def named(arguments: Sequence[str]) -> tuple[str, ...]:
    """Constants that `--only` asks for by the beginnings of their names; none without it. ValueError for no such."""
    if "--only" not in arguments:
        return ()
    at = arguments.index("--only") + 1
    beginnings = tuple(arguments[at].split(",")) if at < len(arguments) else ()
    names = tuple(prior.name for prior in priors() if prior.name.startswith(beginnings))
    if not names:
        raise ValueError(f"--only {','.join(beginnings)}: no constant of priors.toml begins so")
    return names


def main(arguments: Sequence[str]) -> None:
    """Fit from the shipped constants, all or `--only` some, print what moves, and write it with --write."""
    kernel.warm_up()
    fit = Fit(fitted_courses(), named(arguments))
    start = shipped()
    exact = fit.solve(start)
    constants = rounded(decoded(exact))
    z = encoded(constants)
    for prior, before, now in zip(priors(), start, z, strict=True):
        print(
            f"{prior.name:24s} {prior.value(before):9.4g} -> {constants[prior.name]:9.4g}  {now:+.2f} s.d. of its prior"
        )
    print(f"sum of squares {np.sum(fit.errors(start) ** 2):.1f} -> {np.sum(fit.errors(z) ** 2):.1f}")
    forecasts = left_out(fit, z, stored_left_out())
    if "--write" in arguments:
        here = Path(__file__).parent
        table_file = here.parent / "make" / "constants.toml"
        table_file.write_text(rewritten(table_file.read_text("utf-8"), constants), "utf-8")
        (here / "left_out.toml").write_text(as_toml(constants, forecasts), "utf-8")
        print("written")


if __name__ == "__main__":
    main(sys.argv[1:])
