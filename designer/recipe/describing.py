"""The recipe file as JSON Schema (draft 2020-12), made from the fields of the document."""

from __future__ import annotations

from typing import Any

from designer.recipe.document import FORMAT, Recipe
from designer.recipe.end import By, End
from designer.recipe.field import FieldMeta, Model, field_metas
from designer.recipe.ingredients import MilkSource
from designer.recipe.presets import presets
from designer.recipe.stages.kinds import KINDS
from designer.recipe.stages.stage import Stage
from designer.units import KINDS as UNIT_KINDS
from designer.units import show

Schema = dict[str, Any]


def json_schema() -> Schema:
    """What a recipe file may hold, after its TOML is read as plain data."""
    definitions: Schema = {}
    root = _object(Recipe, definitions)
    definitions["stage"] = {"oneOf": [{"$ref": f"#/$defs/{model.__name__}"} for model in KINDS.values()]}
    for model in KINDS.values():
        definitions[model.__name__] = _object(model, definitions)
    root["properties"]["format"] = {"const": FORMAT, "description": "Format of the file."}
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "Curdwright recipe",
        **root,
        "$defs": dict(sorted(definitions.items())),
    }


def _object(model: type[Model], definitions: Schema) -> Schema:
    properties, required = {}, []
    for meta in field_metas(model):
        properties[meta.key] = _property(model, meta, definitions)
        if meta.required:
            required.append(meta.key)
    if issubclass(model, Stage):
        properties["length"] = _quantity(
            "duration", "Planned length, for an end by time or feel; an end by a state has its latest.", 0.5, None
        )
    out: Schema = {"type": "object", "properties": properties, "additionalProperties": False}
    if model is Recipe:
        required = ["format", "name", "milk", "stage"]
    if issubclass(model, Stage):
        required.append("kind")
        out["description"] = model.HELP
    return out | ({"required": required} if required else {})


def _property(model: type[Model], meta: FieldMeta, definitions: Schema) -> Schema:
    if meta.shape == "quantity":
        return _quantity(meta.kind, meta.english_help, meta.low, meta.high, meta.source)
    if meta.shape == "end":
        definitions.setdefault("End", _object(End, definitions))
        assert issubclass(model, Stage)
        return {"allOf": [{"$ref": "#/$defs/End"}, {"properties": {"by": {"enum": _ends(model.ENDS)}}}]}
    if meta.shape in ("table", "tables"):
        return _parts(meta, definitions)
    if meta.name == "value" and model is End:
        return {"type": ["string", "number"], "description": "The state asked for, with its unit."}
    kinds = {"yes": "boolean", "number": "integer"}
    out: Schema = {"type": kinds.get(meta.shape, "string"), "description": meta.english_help}
    if model is MilkSource and meta.name == "breed":
        return out | {"enum": ["", *presets()["breed"]]}
    if meta.choices:
        return {"const": meta.choices[0]} if len(meta.choices) == 1 else out | {"enum": list(meta.choices)}
    return out


def _ends(allowed: tuple[By, ...]) -> list[str]:
    return [by for by in allowed if by != "time"] + ["time"]


def _parts(meta: FieldMeta, definitions: Schema) -> Schema:
    if meta.key == "stage":
        inner = {"$ref": "#/$defs/stage"}
    else:
        assert meta.model is not None
        if meta.model.__name__ not in definitions:
            definitions[meta.model.__name__] = {}
            definitions[meta.model.__name__] = _object(meta.model, definitions)
        inner = {"$ref": f"#/$defs/{meta.model.__name__}"}
    return {"type": "array", "items": inner} if meta.shape == "tables" else inner


def _quantity(kind: str, help_text: str, low: float | None, high: float | None, source: str = "") -> Schema:
    spec = UNIT_KINDS[kind]
    said = help_text
    if low is not None and high is not None and kind != "clock":
        said += f" From {show(low, kind)} to {show(high, kind)}."
    out: Schema = {
        "type": ["string", "number"] if spec.plain else "string",
        "description": said + (f" ({source})" if source else ""),
        "examples": [spec.written],
    }
    units = [unit.name for unit in spec.units if unit.name]
    return out | ({"x-units": units} if units and kind != "clock" else {})
