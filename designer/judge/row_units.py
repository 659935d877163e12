"""A row of the check in the measures of the maker: a usual temperature in °F, a size of cut in inches.

Rows are judged in base units and say so; a window tells them again. Limits of law are all in percent and stay.
"""

from __future__ import annotations

from designer.judge.check import decimals_of
from designer.judge.verdict import MAKE, Row
from designer.judge.words import usual_words
from designer.units import KINDS, System, convert
from styles.settings import SETTINGS


def told(row: Row, system: System) -> tuple[Row, int]:
    """The row as a system of measures has it, and the decimals of its figure; itself where it is the same there."""
    decimals = decimals_of(row.quantity)
    setting = SETTINGS.get(row.quantity.partition("@")[0])
    if row.section != MAKE or setting is None or row.value is None:
        return row, decimals
    kind = KINDS.get(setting.kind)
    if kind is None or row.unit != kind.base:
        return row, decimals
    unit, places = kind.display(system)
    if unit == kind.base:
        return row, decimals

    def there(value: float | None) -> float | None:
        return None if value is None else round(convert(value, setting.kind, unit), places)

    value, low, high = there(row.value), there(row.low), there(row.high)
    assert value is not None
    read = value
    if (row.margin or 0.0) >= 0.0:  # judged as it reads in base units, and rounding must not put it outside here
        read = max(read, read if low is None else low)
        read = min(read, read if high is None else high)
    sentence = usual_words(read, low, high, unit, places)
    return row._replace(value=value, low=low, high=high, unit=unit, sentence=sentence), places
