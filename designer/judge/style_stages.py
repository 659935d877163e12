"""The stages a style asks for by its windows and the words of its family, beside those a recipe has.

What a recipe lacks is put in its usual place, what the style has not is taken out; settings are left to others.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from designer.language import say
from designer.recipe.document import Recipe
from designer.recipe.edit import insert, new_stage, remove
from designer.recipe.error import RecipeError
from designer.recipe.stages.kinds import KINDS
from designer.recipe.stages.salt import Salt
from styles.reader import Style

LACTIC_SET_MIN = 300.0
"""A gel that takes longer from rennet to cut is an acid gel."""
# What a style's windows and the words of its family say of stages.
_BY_WINDOW: Mapping[str, str] = {
    "wash_pct": "wash", "wash_c": "wash", "stretch_c": "stretch", "ph_stretch": "stretch", "brine_pct": "brine",
    "brine_h": "brine", "brine_c": "brine", "ph_brine": "brine", "salt_curd_pct": "salt", "ph_salt": "salt",
    "ph_mill": "mill", "stack_min": "stack", "press_kpa": "press", "press_h": "press", "ph_press_end": "press",
    "hang_h": "hang", "scald_c": "scald",
}  # fmt: skip
_BY_WORD: Mapping[str, str] = {
    "washed curd": "wash", "washed,": "wash", "stretched": "stretch", "brined": "brine", "milled": "mill",
    "dry-salted": "salt", "scalded": "scald", "pressed": "press",
}  # fmt: skip
SETS = ("set", "lactic_set", "acid_heat")
_ASKED = frozenset(_BY_WINDOW.values())
_AS_GOOD: Mapping[str, tuple[str, ...]] = {"brine": ("brine", "hold_brine")}
_ORDER = tuple(KINDS)


def sets_slowly(style: Style) -> bool:
    """Whether by its windows a style sets by acid."""
    return any((one.low or 0.0) >= LACTIC_SET_MIN for one in style.windows_of("set_min"))


def stages_of(style: Style) -> frozenset[str]:
    """Stage kinds a style asks for, by its windows and the words of its family."""
    found = {_BY_WINDOW[one.key] for one in style.windows if one.key in _BY_WINDOW}
    found |= {kind for words, kind in _BY_WORD.items() if words in style.family}
    if "unpressed" in style.family:
        found.discard("press")
    lactic = (
        sets_slowly(style) or "lactic" in style.family or ("fresh, acid" in style.family and "heat" not in style.family)
    )
    found.add("acid_heat" if "acid and heat" in style.family else "lactic_set" if lactic else "set")
    return frozenset(found)


def between(recipe: Recipe, style: Style) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Stage kinds the style asks for and the main make has not, and those it has and the style does not allow."""
    have = {stage.kind for stage in recipe.stages if not (isinstance(stage, Salt) and stage.on == "cheese")}
    asked = stages_of(style)
    missing = tuple(kind for kind in _ORDER if kind in asked and not have & set(_AS_GOOD.get(kind, (kind,))))
    extra = tuple(
        kind
        for kind in _ORDER
        if kind in have and kind not in asked and (kind in _ASKED or kind in SETS) and not _is_allowed(kind, style)
    )
    return missing, extra


def _is_allowed(kind: str, style: Style) -> bool:
    """Whether a stage a style does not speak of may be there: pressing and salting are seldom spoken of."""
    if kind == "press":
        return not any(word in style.family for word in ("soft", "fresh", "lactic", "unpressed"))
    if kind == "salt":
        return "brine" not in stages_of(style)
    if kind == "brine":
        return "salt" not in stages_of(style)
    return kind == "hang" or (kind == "stack" and "mill" in stages_of(style))


def with_stages(
    recipe: Recipe, missing: Sequence[str], extra: Sequence[str]
) -> tuple[Recipe, list[str], dict[str, str]]:
    """The recipe with `missing` stages in their usual places and without `extra` ones; that in words; and the ids of
    those that came in, by the words for them."""
    said: list[str] = []
    came: dict[str, str] = {}
    for kind in extra:
        for stage in [one for one in recipe.stages if one.kind == kind]:
            try:
                recipe = remove(recipe, stage.id)
            except RecipeError:  # the only stage of the make
                continue
            said.append(say("without {stage}", stage=stage.title))
    for kind in missing:
        before = [stage for stage in recipe.stages if _ORDER.index(stage.kind) < _ORDER.index(kind)]
        new = new_stage(recipe, kind)
        recipe = insert(recipe, new, after_id=before[-1].id if before else None)
        words = say("{title} first", title=new.title)
        if before:
            words = say("{title} after {title2}", title=new.title, title2=before[-1].title)
        said.append(words)
        came[words] = new.id
    return recipe, said, came
