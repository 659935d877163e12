"""From plain TOML data to the document: texts become numbers, and every fault a sentence that names its place."""

from __future__ import annotations

import difflib
import math
from collections.abc import Callable, Mapping
from typing import Any, TypeVar

from pydantic import ValidationError

from designer.language import say
from designer.recipe.document import Branch, Recipe
from designer.recipe.end import END_VALUE_KIND, End
from designer.recipe.error import RecipeError
from designer.recipe.field import FieldMeta, Model, field_metas
from designer.recipe.stages.kinds import KINDS
from designer.recipe.stages.stage import Stage
from designer.units import KINDS as UNIT_KINDS
from designer.units import UnitError, parse, show

M = TypeVar("M", bound=Model)
Table = Mapping[str, Any]


def _nearest(word: str, known: list[str]) -> str:
    close = difflib.get_close_matches(word, known, n=1, cutoff=0.5)
    return say("did you mean “{close}”?", close=close[0]) if close else say("known are {known}", known=", ".join(known))


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def quantity_of(value: object, kind: str, key: str, where: str) -> float:
    """A quantity as it stands in the file, in base units. Unitless kinds may stand as plain numbers."""
    spec = UNIT_KINDS[kind]
    if isinstance(value, str):
        try:
            return parse(value, kind).value
        except UnitError as error:
            raise RecipeError(f"{key} = {error}", where) from None
    if _is_number(value):
        number = float(value)  # type: ignore[arg-type]
        if spec.plain and math.isfinite(number):
            return number
        raise RecipeError(
            say(
                '{key} = {value} has no unit; write for example {key} = "{example}"',
                key=key,
                value=value,
                example=spec.example,
            ),
            where,
        )
    raise RecipeError(
        say(
            '{key} must be a {label}, for example {key} = "{example}"', key=key, label=spec.label, example=spec.example
        ),
        where,
    )


def _plain(value: object, meta: FieldMeta, where: str) -> Any:
    if meta.shape == "yes":
        if not isinstance(value, bool):
            raise RecipeError(say("{key} is true or false, not {value!r}", key=meta.key, value=value), where)
        return value
    if meta.shape == "number":
        if not isinstance(value, int) or isinstance(value, bool):
            raise RecipeError(say("{key} is a whole number, not {value!r}", key=meta.key, value=value), where)
        return value
    if not isinstance(value, str):
        raise RecipeError(say("{key} is a text in quotes, not {value!r}", key=meta.key, value=value), where)
    if meta.choices and value not in meta.choices:
        raise RecipeError(
            say(
                "{key} = “{value}” is unknown; {value2}",
                key=meta.key,
                value=value,
                value2=_nearest(value, list(meta.choices)),
            ),
            where,
        )
    return value


def end_of(raw: object, length: object, where: str) -> End | None:
    """The end of a stage from its `end` table and its `length`; None where the file says neither."""
    if raw is None:
        return None if length is None else build(End, {"by": "time", "length": length}, where)
    if not isinstance(raw, Mapping):
        raise RecipeError(
            say('end is a table, for example end = { by = "ph", of = "curd", value = "6.10", latest = "2 h" }'), where
        )
    data = dict(raw)
    if "by" not in data:
        raise RecipeError(say('end does not say by what; for example by = "ph"'), where)
    if length is not None:
        if data["by"] != "feel":
            raise RecipeError(say("a stage has a length or an end by a state, not both"), where)
        data["length"] = length
    return build(End, data, where)


def _end_value(value: object, by: object, where: str) -> float:
    kind = END_VALUE_KIND.get(str(by))
    if kind is None:
        raise RecipeError(say("an end by {by} has no value", by=by), where)
    return quantity_of(value, kind, "value", where)


def _many(value: object, key: str, where: str) -> list[Table]:
    if not isinstance(value, list) or not all(isinstance(each, Mapping) for each in value):
        raise RecipeError(say("{key} is a list of tables", key=key), where)
    return value


def part_label(key: str, index: int, raw: Table) -> str:
    """How errors name a table of a list: 'stage 4, “cook”'."""
    word = raw.get("name") or (raw.get("kind") if key == "stage" else None) or raw.get("what") or raw.get("id")
    if key == "stage" and not raw.get("name") and str(raw.get("kind")) in KINDS:
        word = KINDS[str(raw["kind"])].LABEL
    return f"{key} {index + 1}" + (f", “{str(word)[:40]}”" if word else "")


def build(model: type[M], raw: Table, where: str) -> M:
    """One part of the document from its table. Raises RecipeError for the first fault met."""
    metas = {meta.key: meta for meta in field_metas(model)}
    is_stage = issubclass(model, Stage)
    known = [*metas, "length"] if is_stage else list(metas)
    for key in raw:
        if key not in known:
            raise RecipeError(say("“{key}” is unknown here; {key2}", key=key, key2=_nearest(key, known)), where)
    data: dict[str, Any] = {}
    for key, value in raw.items():
        meta = metas.get(key)
        if meta is not None and meta.shape != "end":
            data[meta.name] = _field(model, meta, value, raw, where)
    for meta in metas.values():
        if meta.required and meta.name not in data:
            raise RecipeError(say("{key} is missing", key=meta.key), where)
    if is_stage:
        end = end_of(raw.get("end"), raw.get("length"), where)
        if end is not None:
            data["end"] = end
        data = _reconciled(model, data, where)
    built: M = checked(lambda: model.model_validate(data), model, where)
    return built


def _reconciled(model: type[Model], data: dict[str, Any], where: str) -> dict[str, Any]:
    assert issubclass(model, Stage)
    return data if "end" in data else checked(lambda: model.reconcile(data, {}), model, where)


def _field(model: type[Model], meta: FieldMeta, value: object, raw: Table, where: str) -> Any:
    if model is End and meta.name == "value":
        return _end_value(value, raw.get("by"), where)
    if meta.shape == "quantity":
        return quantity_of(value, meta.kind, meta.key, where)
    if meta.shape == "table":
        if not isinstance(value, Mapping):
            raise RecipeError(say("{key} is a table", key=meta.key), where)
        assert meta.model is not None
        return build(meta.model, value, _inside(where, meta.key))
    if meta.shape == "tables":
        parts = []
        for index, each in enumerate(_many(value, meta.key, where)):
            label = _inside(where, part_label(meta.key.removesuffix("s"), index, each))
            parts.append(build(stage_model(each, label) if meta.key == "stage" else _model(meta), each, label))
        return tuple(parts)
    return _plain(value, meta, where)


def _inside(where: str, label: str) -> str:
    return f"{where}, {label}" if where else label


def _model(meta: FieldMeta) -> type[Model]:
    assert meta.model is not None
    return meta.model


def stage_model(raw: Table, where: str) -> type[Stage]:
    """The kind of stage a table is of. Raises RecipeError where it says none, or one there is not."""
    kind = raw.get("kind")
    if kind is None:
        raise RecipeError(say('kind is missing; for example kind = "cook"'), where)
    if not isinstance(kind, str) or kind not in KINDS:
        raise RecipeError(
            say("kind = “{kind}” is unknown; {kind2}", kind=kind, kind2=_nearest(str(kind), list(KINDS))), where
        )
    return KINDS[kind]


def checked(make: Callable[[], Any], model: type[Model], where: str) -> Any:
    """Run a validation and turn its first fault into a RecipeError that names the place."""
    try:
        return make()
    except RecipeError:
        raise
    except ValidationError as error:
        raise RecipeError(fault(error, model), where) from None
    except ValueError as error:
        raise RecipeError(str(error), where) from None


def fault(error: ValidationError, model: type[Model]) -> str:
    """The first fault of a validation as words: which field, what it was, what is allowed."""
    first = error.errors()[0]
    if first["type"] == "value_error":
        return str(first["ctx"]["error"])
    names = [str(step) for step in first["loc"]]
    meta = next((each for each in field_metas(model) if names and each.name == names[0]), None)
    if meta is None:
        return (
            say(
                "“{names}” is unknown here; {names2}",
                names=names[0],
                names2=_nearest(names[0], [each.name for each in field_metas(model)]),
            )
            if names
            else first["msg"]
        )
    if first["type"] in ("greater_than_equal", "less_than_equal") and meta.kind:
        value = first["input"]
        assert meta.low is not None
        assert meta.high is not None
        allowed = say("{low} to {high}", low=show(meta.low, meta.kind), high=show(meta.high, meta.kind))
        return say(
            "{label} can't be {value}; allowed is {allowed}",
            label=meta.label,
            value=show(float(value), meta.kind),
            allowed=allowed,
        )
    if meta.choices:
        return say(
            "{label} = “{input}” is unknown; {input2}",
            label=meta.label,
            input=first["input"],
            input2=_nearest(str(first["input"]), list(meta.choices)),
        )
    if first["type"] == "missing":
        return say("{key} is missing", key=meta.key)
    return say("{label} can't be {input!r}", label=meta.label, input=first["input"])


def recipe_of(data: Table) -> Recipe:
    """The document from the plain data of a file of the present format."""
    return build(Recipe, data, "")


__all__ = ["Branch", "Recipe", "build", "checked", "fault", "part_label", "quantity_of", "recipe_of"]
