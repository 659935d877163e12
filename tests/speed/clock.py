"""Timing one thing many times, and the table it is shown in. A timing is printed; it never fails anything."""

from __future__ import annotations

import platform
import sys
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from importlib.metadata import version
from time import perf_counter

import numpy as np
from rich.console import Console
from rich.table import Table


@dataclass(frozen=True, slots=True)
class Timing:
    """Times of one thing [ms], and what we aim at [ms] where there is an aim (None: told for its own sake)."""

    what: str
    times_ms: tuple[float, ...]
    aim_p95_ms: float | None = None
    note: str = ""

    @property
    def p50(self) -> float:
        return float(np.percentile(self.times_ms, 50))

    @property
    def p95(self) -> float:
        return float(np.percentile(self.times_ms, 95))


def timed(what: str, act: Callable[[], object], times: int, *, aim: float | None = None, note: str = "") -> Timing:
    """Call `act` a few times to warm up, then `times` times against the clock."""
    for _ in range(3):
        act()
    took = []
    for _ in range(times):
        start = perf_counter()
        act()
        took.append((perf_counter() - start) * 1000)
    return Timing(what, tuple(took), aim, note)


def show(timings: Iterable[Timing]) -> None:
    """Print the timings, with the machine they were taken on."""
    libraries = ", ".join(f"{name} {version(name)}" for name in ("PySide6-Essentials", "numpy", "numba"))
    print(f"{platform.system()} {platform.machine()}, Python {sys.version.split()[0]}, {libraries}")
    table = Table("what", "p50", "p95", "aim", "times", "note")
    for column in table.columns[1:5]:
        column.justify = "right"
    for timing in timings:
        aim = "" if timing.aim_p95_ms is None else f"{milliseconds(timing.aim_p95_ms)}{verdict(timing)}"
        p50, p95 = milliseconds(timing.p50), milliseconds(timing.p95)
        table.add_row(timing.what, p50, p95, aim, str(len(timing.times_ms)), timing.note)
    Console(width=140).print(table)


def verdict(timing: Timing) -> str:
    return " ok" if timing.aim_p95_ms is not None and timing.p95 <= timing.aim_p95_ms else " over"


def milliseconds(value: float) -> str:
    """Three figures are enough."""
    return f"{value:.3f} ms" if value < 1 else f"{value:.1f} ms" if value < 1000 else f"{value / 1000:.2f} s"
