"""What a vat can do with its milk: how long its heating or its cold jacket takes, and how fast it cools in the room.

One stirred body, m c dT/dt = P + U A (jacket - T) + U A (room - T); its usual coefficients stand in presets.toml.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from designer.language import say
from designer.units import show


@dataclass(frozen=True, slots=True)
class VatHeat:
    """A vat with its milk [kg]: heating [kW], loss to the room and to a cold jacket [kW/K], its heat [kJ/kg K]; °C.

    `unheated` says that nobody keeps the temperature between changes.
    """

    milk_kg: float
    room_c: float
    power_kw: float | None = None
    loss_kw_k: float = 0.0
    jacket_kw_k: float = 0.0
    cooling_c: float | None = None
    unheated: bool = False
    kj_per_kg_k: float = 3.93

    @property
    def heat_kj_k(self) -> float:
        """Heat the milk holds [kJ/K]."""
        return self.milk_kg * self.kj_per_kg_k

    @property
    def loss_per_min(self) -> float:
        """Share of its distance to the room that an unheated vat loses in a minute [1/min]; 0 where it is kept."""
        return self.loss_kw_k * 60.0 / self.heat_kj_k if self.unheated else 0.0

    def left_alone_c(self, start_c: float, minutes: float) -> float:
        """Temperature after so many minutes without heating [°C]."""
        return self.room_c + (start_c - self.room_c) * math.exp(-self.loss_per_min * minutes)

    def least_minutes(self, start_c: float, end_c: float) -> float | None:
        """Minutes the vat needs at full heating or cooling; None where it has neither, or the start is not known.

        Raises ValueError, a sentence, for a temperature it never reaches.
        """
        if not math.isfinite(start_c + end_c) or start_c == end_c:
            return None
        if end_c > start_c:
            return None if not self.power_kw else self._minutes(start_c, end_c, self.power_kw, self.loss_kw_k)
        if self.cooling_c is None:
            return None
        driven = self.loss_kw_k * (self.room_c - self.cooling_c)  # what the room gives while the jacket is at work
        both = self.loss_kw_k + self.jacket_kw_k
        return self._minutes(start_c, end_c, driven, both, self.cooling_c)

    def _minutes(
        self, start_c: float, end_c: float, power_kw: float, loss_kw_k: float, toward_c: float | None = None
    ) -> float:
        """Of a body with that power that loses heat to `toward_c` (the room where it is left out)."""
        if loss_kw_k <= 0.0:
            return self.heat_kj_k * (end_c - start_c) / power_kw / 60.0
        limit = (self.room_c if toward_c is None else toward_c) + power_kw / loss_kw_k
        if (limit - end_c) * (end_c - start_c) <= 0.0:
            what = "heating" if end_c > start_c else "jacket"
            raise ValueError(
                say(
                    "the vat's {what} brings so much milk to {limit} at the most, never to {end_c}",
                    what=what,
                    limit=show(limit, "temperature"),
                    end_c=show(end_c, "temperature"),
                )
            )
        return self.heat_kj_k / (60.0 * loss_kw_k) * math.log((limit - start_c) / (limit - end_c))
