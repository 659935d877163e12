"""How a stage ends: by time, by a state that is reached, or by feel. Every state end has a latest moment."""

from __future__ import annotations

from typing import Literal, Self

from pydantic import model_validator

from designer.language import say, word
from designer.recipe import schedule
from designer.recipe.field import Model, quantity, words

By = Literal["time", "temperature", "ph", "acidity", "floc_multiple", "firmness", "whey_off", "feel"]
Of = Literal["milk", "whey", "curd", "cheese"]

# What the value of a state end is measured in, its range and natural step in base units.
END_VALUE_KIND: dict[str, str] = {
    "temperature": "temperature",
    "ph": "ph",
    "acidity": "acidity",
    "floc_multiple": "multiple",
    "firmness": "firmness",
    "whey_off": "percent",
}
END_VALUE_RANGE: dict[str, tuple[float, float, float]] = {
    "temperature": (0.0, 100.0, 0.5),
    "ph": (4.0, 7.2, 0.05),
    "acidity": (0.05, 1.5, 0.01),
    "floc_multiple": (1.0, 8.0, 0.25),
    "firmness": (1.0, 500.0, 5.0),
    "whey_off": (1.0, 98.0, 1.0),
}
BY_WORDS = {
    "temperature": "temperature",
    "ph": "pH",
    "acidity": "acidity",
    "floc_multiple": "flocculation multiple",
    "firmness": "firmness",
    "whey_off": "whey run off",
    "time": "time",
    "feel": "feel",
}
_BY = {
    "time": schedule.END_TIME,
    "feel": schedule.END_TIME,
    "temperature": schedule.END_TEMPERATURE,
    "ph": schedule.END_PH,
    "acidity": schedule.END_ACIDITY,
    "floc_multiple": schedule.END_FLOC_MULTIPLE,
    "firmness": schedule.END_FIRMNESS,
    "whey_off": schedule.END_WHEY_OFF,
}
_OF = {"milk": schedule.OF_MILK, "whey": schedule.OF_WHEY, "curd": schedule.OF_CURD, "cheese": schedule.OF_CHEESE}


class End(Model):
    """The end of a stage. Time and feel carry `length_min`; a state carries `value` and `latest_min`.

    `value` is °C, pH, % lactic acid, multiple of the flocculation time, Pa, or kg whey off per 100 kg milk, by `by`.
    """

    by: By = words("time", "What ends the stage.")
    value: float | None = words(None, "The state asked for.", shape="number")
    of: Of | None = words(None, "What the pH or acidity is read on.")
    length_min: float | None = quantity(
        None, "length", "duration", low=0.5, high=1_000_000.0, step=5.0, help="Planned length.", label="length"
    )
    earliest_min: float | None = quantity(
        None,
        "earliest",
        "duration",
        low=0.0,
        high=1_000_000.0,
        step=5.0,
        help="The state is not looked for before this.",
        label="earliest",
    )
    latest_min: float | None = quantity(
        None,
        "latest",
        "duration",
        low=0.5,
        high=1_000_000.0,
        step=5.0,
        help="The stage ends then at the latest; every end by a state needs it.",
        label="latest",
    )

    @model_validator(mode="after")
    def _whole(self) -> Self:
        if self.is_state:
            self._has_a_state()
        else:
            self._has_a_length()
        return self

    def _has_a_length(self) -> None:
        if self.length_min is None:
            by_feel = self.by == "feel"
            raise ValueError(
                say("an end by feel needs its planned length") if by_feel else say("the length is missing")
            )
        if any(each is not None for each in (self.value, self.latest_min, self.of, self.earliest_min)):
            raise ValueError(say("an end by {by} has a length and nothing else", by=self._called))

    def _has_a_state(self) -> None:
        if self.length_min is not None:
            raise ValueError(say("an end by {by} has a latest moment, not a length", by=self._called))
        if self.value is None:
            raise ValueError(say("an end by {by} needs its value", by=self._called))
        if self.latest_min is None:
            raise ValueError(say('an end by {by} needs its latest moment, for example latest = "2 h"', by=self._called))
        if self.by in ("ph", "acidity"):
            if self.of is None:
                raise ValueError(say("an end by {by} must say of what: milk, whey, curd or cheese", by=self._called))
        elif self.of is not None:
            raise ValueError(
                say("an end by {by} is not read on milk, whey, curd or cheese; leave “of” out", by=self._called)
            )
        if self.earliest_min is not None and self.earliest_min >= self.latest_min:
            raise ValueError(say("the earliest moment must lie before the latest"))
        low, high, _ = END_VALUE_RANGE[self.by]
        if not low <= self.value <= high:
            told = say(
                "an end by {by} lies between {low:g} and {high:g}, not at {value:g}",
                by=self._called,
                low=low,
                high=high,
                value=self.value,
            )
            raise ValueError(told)

    @property
    def _called(self) -> str:
        return word(BY_WORDS[self.by], "choice")

    @property
    def is_state(self) -> bool:
        """True when the forecast finds the length."""
        return self.by not in ("time", "feel")

    @property
    def planned_min(self) -> float:
        """Planned length [min]; for a state end its latest."""
        planned = self.latest_min if self.is_state else self.length_min
        assert planned is not None
        return planned

    def columns(self) -> dict[str, float]:
        """The Schedule columns of this end, for a row that spans the whole stage."""
        value = self.value or 0.0
        return {
            "minutes": self.planned_min,
            "end_by": _BY[self.by],
            "end_of": _OF[self.of or "curd"],
            "end_value": value / 100.0 if self.by == "whey_off" else value,
            "earliest_min": self.earliest_min or 0.0,
        }


def after(minutes: float) -> End:
    """An end by time."""
    return End(by="time", length_min=minutes)


def feel(minutes: float) -> End:
    """An end by feel with its planned length."""
    return End(by="feel", length_min=minutes)
