"""The averages of a national food table against the limits of their own styles: data and limits tried on each other."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from designer.judge.limits import judge
from designer.judge.verdict import NOT_MET, Row
from designer.make.balance import fdm_pct, mnfs_pct
from styles.reader import style

RULES = "us"


@dataclass(frozen=True, slots=True)
class Average:
    """One cheese of the table: its average moisture and fat [%] and the style it is sold as."""

    name: str
    style: str
    moisture_pct: float
    fat_pct: float
    source: str
    have: str

    @property
    def figures(self) -> dict[str, float]:
        """What limits may ask of it."""
        return {
            "moisture_pct": self.moisture_pct,
            "fat_pct": self.fat_pct,
            "fdm_pct": fdm_pct(self.fat_pct, self.moisture_pct),
            "mnfs_pct": mnfs_pct(self.moisture_pct, self.fat_pct),
        }

    def rows(self, of: str | None = None) -> tuple[Row, ...]:
        """The US limits of its style (or of another), each met or not."""
        return tuple(judge(style(of or self.style).rule_set(RULES), self.figures))

    @property
    def misses(self) -> tuple[Row, ...]:
        """The limits of its own style that it does not meet."""
        return tuple(row for row in self.rows() if row.state == NOT_MET)


@cache
def averages() -> tuple[Average, ...]:
    """The table, in its own order."""
    table = tomllib.loads(files("designer.validate").joinpath("averages.toml").read_text("utf-8"))
    return tuple(Average(**row, source=table["source"], have=table["have"]) for row in table["average"])
