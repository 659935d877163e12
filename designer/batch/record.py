"""What is kept of a made batch: the recipe and its forecast as they were, what was measured, how it tasted.

Nothing here is ever worked out anew: a batch tells what was thought and what was found on its day.
"""

from __future__ import annotations

import json
import math
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from typing import Any

from designer.forecast import Forecast
from designer.judge.own_style import figures_of
from designer.judge.style_rows import gate_label, kind_of, setting_label
from designer.judge.words import label_of
from designer.language import say, word
from styles.house import Figures
from styles.reader import Style, completed
from styles.settings import COMPOSITION, MOMENTS, SETTINGS

Key = tuple[str, str]
"""What is read: a quantity, and for what is read on the way the moment of the make ("" for the young cheese)."""
Spread = tuple[float, float, float]
"""A figure with its band: value, low, high."""
PARTS = ("appearance", "body", "flavour")
BEST_MARK = 10.0
MOST: Mapping[str, float] = {"percent": 100.0, "ph": 14.0}
"""The most a reading of a kind can be; others are only above nothing."""
OF_CHEESE = ("moisture_pct", "fat_pct", "salt_pct", "fdm_pct", "protein_pct", "yield_kg_per_100kg")
OF_MAKE = ("floc_min",)
READ_ON = ("ph", "ph_whey")


class BatchError(ValueError):
    """What can't be kept or read of a batch: one sentence for the maker."""


@dataclass(frozen=True, slots=True)
class AsForecast:
    """A forecast as it was: outcomes with their bands, settings of the make, curves at the moments that count."""

    outcomes: Mapping[str, Spread]
    settings: Mapping[str, float]
    curves: Mapping[tuple[str, str], float]

    @property
    def figures(self) -> Figures:
        """The same as a house style takes them."""
        composition = {key: value for key, (value, _, _) in self.outcomes.items() if key in COMPOSITION}
        return Figures(composition, self.settings, self.curves)

    def of(self, key: Key) -> Spread | None:
        """What was forecast for a reading, with its band where there was one."""
        quantity, moment = key
        if moment:
            value = self.curves.get((quantity, moment))
            return None if value is None else (value, value, value)
        return self.outcomes.get(quantity)


def as_forecast(made: Forecast) -> AsForecast:
    """What is kept of a forecast."""
    figures = figures_of(made)
    outcomes = {key: (one.value, one.low, one.high) for key, one in made.outcomes.items() if math.isfinite(one.value)}
    curves = {key: value for key, value in figures.curves.items() if math.isfinite(value)}
    return AsForecast(outcomes, figures.settings, curves)


def forecast_text(kept: AsForecast) -> str:
    """A kept forecast as JSON."""
    curves: dict[str, dict[str, float]] = {}
    for (curve, at), value in kept.curves.items():
        curves.setdefault(curve, {})[at] = value
    data = {"outcomes": dict(kept.outcomes), "settings": dict(kept.settings), "curves": curves}
    return json.dumps(data, separators=(",", ":"))


def forecast_in(text: str) -> AsForecast:
    """A kept forecast from its JSON. Raises BatchError."""
    try:
        data: dict[str, Any] = json.loads(text)
        outcomes = {key: (float(one[0]), float(one[1]), float(one[2])) for key, one in data["outcomes"].items()}
        settings = {key: float(value) for key, value in data["settings"].items()}
        curves = {(curve, at): float(value) for curve, row in data["curves"].items() for at, value in row.items()}
    except (ValueError, KeyError, TypeError, IndexError, AttributeError):
        raise BatchError(say("The forecast kept with a batch can't be read.")) from None
    return AsForecast(outcomes, settings, curves)


@dataclass(frozen=True, slots=True)
class AsMade:
    """What stood when the batch was noted, and never changes: recipe, style, forecast, and which model spoke."""

    recipe: str
    recipe_text: str
    style: str
    forecast: AsForecast
    model: str


@dataclass(frozen=True, slots=True)
class Told:
    """What the maker says of a batch: when it was made, by whom, a remark; `struck` where it is taken back."""

    made: date
    maker: str = ""
    remark: str = ""
    struck: bool = False


@dataclass(frozen=True, slots=True)
class Tasting:
    """One tasting: when and by whom, words for each part of it, a mark of 0 to 10, and whether to make it so again."""

    tasted: date
    taster: str = ""
    appearance: tuple[str, ...] = ()
    body: tuple[str, ...] = ()
    flavour: tuple[str, ...] = ()
    mark: float | None = None
    keep: bool | None = None
    remark: str = ""
    struck: bool = False

    def __post_init__(self) -> None:
        if self.mark is not None and not 0.0 <= self.mark <= BEST_MARK:
            raise BatchError(say("A mark goes from 0 to {best:g}, not {mark:g}.", best=BEST_MARK, mark=self.mark))

    @property
    def words(self) -> tuple[str, ...]:
        """All words, in the order of tasting."""
        return (*self.appearance, *self.body, *self.flavour)


@dataclass(frozen=True, slots=True)
class Reading:
    """One figure that was measured: when it was taken (a day, or day and time; None: not said), and with what."""

    value: float
    taken: date | None = None
    instrument: str = ""


@dataclass(frozen=True, slots=True)
class Batch:
    """One vat of cheese as the ledger has it now; `tastings` by their number in the ledger, the first one first."""

    number: int
    as_made: AsMade
    told: Told
    noted: datetime
    readings: Mapping[Key, Reading] = field(default_factory=dict)
    tastings: Mapping[int, Tasting] = field(default_factory=dict)

    @property
    def last(self) -> Tasting | None:
        """The tasting at the greatest age, None before the first."""
        return max(self.tastings.values(), key=lambda one: one.tasted, default=None)

    @property
    def liked(self) -> bool:
        """Whether its last tasting says to make it so again."""
        return self.last is not None and self.last.keep is True

    def age_days(self, tasting: Tasting) -> int:
        """How old it was."""
        return (tasting.tasted - self.told.made).days

    @property
    def measured(self) -> Figures:
        """What was measured, with what follows of it (fat in dry matter, MNFS, salt in moisture)."""
        values = {key: one.value for key, one in self.readings.items()}
        cheese = {key: value for (key, at), value in values.items() if not at and key in COMPOSITION}
        make = {key: value for (key, at), value in values.items() if not at and key in SETTINGS}
        return Figures(completed(cheese), make, {key: value for key, value in values.items() if key[1]})


def asked(kept: AsForecast) -> tuple[Key, ...]:
    """What can be read of a make, in the order of its day, then of its cheese."""
    order = list(MOMENTS)
    on_the_way = sorted((key for key in kept.curves if key[0] in READ_ON), key=lambda key: (order.index(key[1]), key))
    make = [(key, "") for key in OF_MAKE if key in kept.outcomes]
    return (*make, *on_the_way, *((key, "") for key in OF_CHEESE if key in kept.outcomes))


def label(key: Key) -> str:
    """What is read: "pH of milk or curd at milling", "Moisture", "Yield, kg per 100 kg milk"."""
    quantity, at = key
    if at:
        return say("pH {moment}", moment=MOMENTS[at].label) if quantity == "ph" else gate_label(quantity, at)
    if quantity in SETTINGS:
        return setting_label(quantity)
    name, unit, _ = label_of(quantity)
    return f"{name}, {unit}" if kind_of(quantity) == "ratio" else name


def possible(key: Key, value: float) -> float:
    """The value, if a reading can be that. Raises BatchError."""
    quantity, at = key
    if not ((at in MOMENTS and quantity in READ_ON) or (not at and quantity in (*OF_CHEESE, *OF_MAKE))):
        raise BatchError(say("There is no reading “{quantity}”.", quantity=f"{quantity} {at}".strip()))
    most = MOST.get(kind_of(quantity), math.inf)
    if not 0.0 <= value <= most or not math.isfinite(value):
        raise BatchError(say("{label} can't be {value:g}.", label=label(key), value=value))
    return value


def when_text(taken: date | None) -> str:
    """ "2024-05-07 11:40", the day alone where no time was said, "" where nothing was."""
    if isinstance(taken, datetime):
        return f"{taken:%Y-%m-%d %H:%M}"
    return taken.isoformat() if taken is not None else ""


def read_when(text: str, made: date) -> date | None:
    """When a reading was taken: a day, a time of the day of the make, or both; None for nothing. Raises BatchError."""
    text = text.strip()
    if not text:
        return None
    try:
        taken = _when(text, made)
    except ValueError:
        raise BatchError(
            say("“{text}” is no moment; write it as 2024-05-07 11:40, or 11:40 on the day of the make.", text=text)
        ) from None
    if (taken.date() if isinstance(taken, datetime) else taken) < made:
        raise BatchError(say("{when} is before the cheese was made.", when=when_text(taken)))
    return taken


def _when(text: str, made: date) -> date:
    day, _, clock = text.replace("T", " ").rpartition(" ")
    if ":" not in clock:
        return date.fromisoformat(text)
    hour, minute = clock.split(":")
    return datetime.combine(date.fromisoformat(day.strip()) if day else made, time(int(hour), int(minute)))


def neutral_words(style: Style | None) -> Mapping[str, tuple[str, ...]]:
    """The style's own words for each part of a tasting; none where it has none."""
    if style is None or style.sensory is None:
        return dict.fromkeys(PARTS, ())
    texts = {part: word(str(getattr(style.sensory, part)), "style") for part in PARTS}
    return {part: tuple(split_words(text)) for part, text in texts.items()}


def split_words(text: str) -> list[str]:
    """ "firm, smooth; melts" as its words."""
    return [one.strip() for one in text.replace(";", ",").split(",") if one.strip()]
