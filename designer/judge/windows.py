"""Which figure of a recipe a style's usual range speaks of: from a style's make windows to what can be moved.

Explain asks how far a recipe stands from the middle of its style; aim asks how far a figure may go.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from designer.judge.movable import Movable, movables, stages_before
from designer.recipe.document import Recipe
from designer.recipe.stages.stage import Stage
from styles.reader import Style, Window

# Setting of a style -> (kind of stage, field) of the recipe figure it speaks of, and what one of its units is in ours.
_FIELDS: Mapping[str, tuple[tuple[str, ...], str, float]] = {
    "ripen_c": (("ripen",), "temperature_c", 1.0),
    "ripen_min": (("ripen",), "end.length_min", 1.0),
    "set_c": (("set", "lactic_set"), "temperature_c", 1.0),
    "set_min": (("set",), "end.length_min", 1.0),
    "floc_multiple": (("set",), "end.value", 1.0),
    "cut_mm": (("cut", "ladle"), "cut_mm", 1.0),
    "heal_min": (("rest",), "end.length_min", 1.0),
    "cook_c": (("cook",), "temperature_c", 1.0),
    "wash_pct": (("wash",), "water_pct", 1.0),
    "wash_c": (("wash",), "water_c", 1.0),
    "stack_min": (("stack",), "end.length_min", 1.0),
    "ph_mill": (("stack",), "end.value", 1.0),
    "salt_curd_pct": (("salt",), "salt_pct", 1.0),
    "stretch_c": (("stretch",), "water_c", 1.0),
    "scald_c": (("scald",), "bath_c", 1.0),
    "brine_pct": (("brine",), "strength_pct", 1.0),
    "brine_h": (("brine",), "end.length_min", 60.0),
    "brine_c": (("brine",), "brine_c", 1.0),
    "hang_h": (("hang",), "end.length_min", 60.0),
}


@dataclass(frozen=True, slots=True)
class Ranged:
    """A movable figure and the usual range of its style, in the figure's own base unit."""

    setting: Movable
    window: Window
    low: float
    high: float

    @property
    def middle(self) -> float:
        """The middle of the range, on the figure's natural step."""
        middle = 0.5 * (self.low + self.high)
        stepped = round(middle / self.setting.step) * self.setting.step
        return stepped if self.low <= stepped <= self.high else middle

    @property
    def is_middle(self) -> bool:
        """Whether it stands there already, within half a step."""
        return abs(self.setting.value - self.middle) <= 0.5 * self.setting.step + 1e-9


def ranged(recipe: Recipe, style: Style, branch: str | None = None) -> tuple[Ranged, ...]:
    """Figures of the recipe, or of what moves a branch, that the style has a usual range for; in the order of the
    recipe, each once. A branch of curd has come through the main make, so the style speaks of that, too.

    Where several ranges speak of one figure, the narrowest holds. A figure that appears twice (two cooks) takes the
    last one for a temperature, the first otherwise.
    """
    found: dict[tuple[str, str], Ranged] = {}
    every = movables(recipe, branch)
    stages = _way(recipe, branch)
    by_path = {one.path: one for one in every}
    for key, (kinds, field, unit) in _FIELDS.items():
        windows = [window for window in style.windows_of(key) if window.low is not None and window.high is not None]
        set_in = [
            by_path[(stage.id, field)] for stage in _stages(stages, kinds, field, key) if (stage.id, field) in by_path
        ]
        if not windows or not set_in:
            continue
        setting = set_in[-1] if field == "temperature_c" else set_in[0]
        window = min(windows, key=lambda one: (one.high or 0.0) - (one.low or 0.0))
        low, high = float(window.low or 0.0) * unit, float(window.high or 0.0) * unit
        low, high = max(low, setting.low), min(high, setting.high)
        if low <= high and math.isfinite(low + high):
            found[setting.path] = Ranged(setting, window, low, high)
    return tuple(found[one.path] for one in every if one.path in found)


def _way(recipe: Recipe, branch: str | None) -> tuple[Stage, ...]:
    if branch is None:
        return recipe.stages
    own = recipe.branch(branch)
    return (*stages_before(recipe, own), *own.stages) if own.of == "curd" else own.stages


def _stages(stages: Sequence[Stage], kinds: tuple[str, ...], field: str, key: str) -> Iterator[Stage]:
    """Stages of those kinds whose figure the setting really speaks of: an end by pH for a pH, by multiple for one."""
    wanted = {"ph_mill": "ph", "floc_multiple": "floc_multiple"}.get(key)
    for stage in stages:
        if stage.kind in kinds and (field != "end.value" or stage.end.by == wanted):
            yield stage
