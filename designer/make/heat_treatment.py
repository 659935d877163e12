"""Heat treatment of milk: which pairs of temperature and time the law lists. Looked up, never computed.

An equal-effect sum would find many other pairs "equivalent"; none of them is legal without approval, and the high
pairs do not even lie on one line. So the table is the answer. Table: US PMO as in 21 CFR 131.3, Texas and Michigan law.
"""

from __future__ import annotations

from dataclasses import dataclass

from designer.language import say

SOURCE = "US PMO pasteurisation table, as in 21 CFR 131.3, Texas administrative rules and Michigan MCL 288.697"
RICH_FROM_FAT_PCT = 10.0


@dataclass(frozen=True, slots=True)
class Pair:
    """One legal pair: every particle at `temp_c` or hotter for `seconds` or longer; `rule` says whose table.

    The US table prints both scales with °C rounded up, and either is the law: 145 °F is 62.8 °C.
    """

    temp_c: float
    temp_f: float
    seconds: float
    rule: str = "US"

    @property
    def least_c(self) -> float:
        """The coolest hold that meets the pair [°C]."""
        return min(self.temp_c, (self.temp_f - 32.0) / 1.8) if self.rule == "US" else self.temp_c


MILK = (
    Pair(63, 145, 1800),
    Pair(72, 161, 15),
    Pair(89, 191, 1.0),
    Pair(90, 194, 0.5),
    Pair(94, 201, 0.1),
    Pair(96, 204, 0.05),
    Pair(100, 212, 0.01),
)
RICH = (
    Pair(66, 150, 1800),
    Pair(75, 166, 15),
    Pair(92, 196, 1.0),
    Pair(93, 199, 0.5),
    Pair(97, 206, 0.1),
    Pair(99, 209, 0.05),
    Pair(103, 217, 0.01),
)
ONTARIO = (Pair(63, 145, 1800, "Ontario"), Pair(72, 161, 16, "Ontario"))
ONTARIO_RICH = (Pair(66, 150, 1800, "Ontario"), Pair(75, 166, 16, "Ontario"))
TABLES = {"US": (MILK, RICH), "Ontario": (ONTARIO, ONTARIO_RICH)}


def legal_pairs(fat_pct: float = 4.0, rule: str = "US") -> tuple[Pair, ...]:
    """The pairs listed for milk of that fat [%]; from 10 % fat (or sweetened) 3 °C (5 °F) hotter."""
    milk, rich = TABLES[rule]
    return rich if fat_pct >= RICH_FROM_FAT_PCT else milk


def pair_met(temp_c: float, seconds: float, fat_pct: float = 4.0, rule: str = "US") -> Pair | None:
    """The listed pair that a hold meets, the coolest first; None if it meets none, whatever its sum of effect."""
    for pair in legal_pairs(fat_pct, rule):
        if temp_c >= pair.least_c - 1e-3 and seconds >= pair.seconds:
            return pair
    return None


def treatment(temp_c: float, seconds: float, fat_pct: float = 4.0, rule: str = "US") -> str:
    """One sentence on a hold: which pair it meets, or that it meets none and which is the nearest."""
    pair = pair_met(temp_c, seconds, fat_pct, rule)
    if pair is not None:
        return say(
            "Meets the listed pair {temp_c:g} °C for {seconds} ({rule}), if the air above the milk "
            "and its slowest particle were that hot for that long.",
            temp_c=pair.temp_c,
            seconds=_time(pair.seconds),
            rule=pair.rule,
        )
    near = min(legal_pairs(fat_pct, rule), key=lambda one: abs(one.temp_c - temp_c))
    return say(
        "{temp_c:.4g} °C for {seconds} is no listed pair; the nearest is {temp_c2:g} °C for "
        "{seconds2} ({rule}). The law counts this milk as raw.",
        temp_c=temp_c,
        seconds=_time(seconds),
        temp_c2=near.temp_c,
        seconds2=_time(near.seconds),
        rule=near.rule,
    )


def _time(seconds: float) -> str:
    return say("{seconds:g} min", seconds=seconds / 60) if seconds >= 60 else say("{seconds:g} s", seconds=seconds)
