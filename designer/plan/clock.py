"""The clock of a plan: minutes of the make as the wall clock says them, with the day and the night told."""

from __future__ import annotations

from dataclasses import dataclass

from designer.language import say
from designer.units import DAY_MIN

NIGHT_FROM_MIN, NIGHT_TO_MIN = 22 * 60.0, 5 * 60.0


@dataclass(frozen=True, slots=True)
class Clock:
    """Minute 0 of the make is milk in the vat; `start_min` its clock in minutes after midnight, None if unknown."""

    start_min: float | None

    def read(self, minute: float) -> str:
        """ "09:35" with a start clock, else "+2 h 05" from milk in the vat."""
        if self.start_min is None:
            whole = round(minute)
            return f"+{whole // 60} h {whole % 60:02d}" if whole >= 60 else f"+{whole} min"
        of_day = round(self.start_min + minute) % round(DAY_MIN)
        return f"{of_day // 60:02d}:{of_day % 60:02d}"

    def read_from(self, since_min: float, minute: float) -> str:
        """As `read`, with the day where it is another than that of `since_min`: "01:00, day 3"."""
        text = self.read(minute)
        if self.start_min is None or self.day(minute) == self.day(since_min):
            return text
        return f"{text}, {self.remarks(minute)[0]}"

    def day(self, minute: float) -> int:
        """0 on the day of the make, 1 the next day, ..."""
        return int((round(minute) + (self.start_min or 0.0)) // DAY_MIN)

    def night(self, minute: float) -> bool:
        """Whether somebody would have to get up for it."""
        if self.start_min is None:
            return False
        of_day = (self.start_min + minute) % DAY_MIN
        return of_day >= NIGHT_FROM_MIN or of_day < NIGHT_TO_MIN

    def remarks(self, minute: float) -> tuple[str, ...]:
        """What the clock alone does not say: "next day", "day 3", "night"."""
        day = self.day(minute)
        words = (
            "" if day == 0 else say("next day") if day == 1 else say("day {day}", day=day + 1),
            say("night") if self.night(minute) else "",
        )
        return tuple(one for one in words if one)
