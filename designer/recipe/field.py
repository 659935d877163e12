"""Fields of the recipe and what is known of each: kind, key in the file, step, range, help, source, choices.

One source for the file reader, the generated forms, the JSON Schema and the sentences of errors.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from types import UnionType
from typing import Any, Literal, Self, Union, get_args, get_origin

from pydantic import BaseModel, ConfigDict, Field, model_validator
from pydantic_core import PydanticUndefined

from designer.language import word
from designer.units import GRAIN, KINDS

Usual = tuple[float | None, float | None]
Shape = Literal["quantity", "text", "choice", "yes", "number", "table", "tables", "end"]


class Model(BaseModel):
    """Base of every part of the document: frozen, no unknown fields, numbers kept to the grain of the file."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False)

    @model_validator(mode="before")
    @classmethod
    def _settle(cls, data: Any) -> Any:
        if not isinstance(data, dict):
            return data
        return {name: round(value, GRAIN) + 0.0 if isinstance(value, float) else value for name, value in data.items()}

    def but(self, **changes: Any) -> Self:
        """A copy with fields replaced, validated anew (`model_copy` would take any value)."""
        return type(self).model_validate(dict(self) | changes)


@dataclass(frozen=True, slots=True)
class FieldMeta:
    """What is known of one field.

    `kind` is a key of `units.KINDS` ("" for words); `low`, `high`, `step` and `usual` are in base units. `usual` is the
    range practice stays in, open ends None, and `usual_where` where that is so ("on a hand press"); `recipe/sure.py`
    asks about what lies far outside it.
    """

    name: str
    key: str
    english: str
    shape: Shape
    kind: str = ""
    step: float = 0.0
    low: float | None = None
    high: float | None = None
    english_help: str = ""
    source: str = ""
    choices: tuple[str, ...] = ()
    optional: bool = False
    required: bool = False
    default: Any = None
    model: type[Model] | None = None
    usual: Usual | None = None
    english_where: str = ""

    @property
    def label(self) -> str:
        """What it is called, in the language spoken: its label, else the key it has in the file."""
        plain = self.english == self.name.replace("_", " ")
        return word(self.key.replace("_", " ") if plain else self.english, "field")

    @property
    def help(self) -> str:
        """What it means, in the language spoken."""
        return word(self.english_help, "field")

    @property
    def usual_where(self) -> str:
        """Where the usual range holds, in the language spoken."""
        return word(self.english_where, "field")


def choice(text: str) -> str:
    """One of the choices of a field, in the language spoken."""
    return word(text.replace("_", " "), "choice")


def quantity(
    default: Any,
    key: str,
    kind: str,
    *,
    low: float | None = None,
    high: float | None = None,
    step: float,
    help: str,
    label: str = "",
    source: str = "",
    usual: Usual | None = None,
    usual_where: str = "",
) -> Any:
    """A number of a kind with its unit. `default` is in base units; `...` makes it required, None leaves it open."""
    assert kind in KINDS, kind
    extra: dict[str, Any] = {"key": key, "shape": "quantity", "kind": kind, "step": step, "help": help, "label": label}
    extra |= {"source": source, "low": low, "high": high, "usual_where": usual_where}
    extra["usual"] = None if usual is None else list(usual)
    return Field(default, ge=low, le=high, json_schema_extra=extra)


def words(default: Any, help: str, *, key: str = "", label: str = "", shape: Shape = "text", source: str = "") -> Any:
    """A text, a choice (its type is a Literal), or yes/no."""
    extra: dict[str, Any] = {"key": key, "shape": shape, "help": help, "label": label, "source": source}
    return Field(default, json_schema_extra=extra)


def part(default: Any, key: str, shape: Shape, help: str) -> Any:
    """A table, a list of tables, or the end of a stage."""
    return Field(default, json_schema_extra={"key": key, "shape": shape, "help": help})


def _bare(annotation: Any) -> tuple[Any, bool]:
    """The type without None, and whether None was allowed."""
    if get_origin(annotation) in (Union, UnionType):
        kept = [each for each in get_args(annotation) if each is not type(None)]
        if len(kept) == 1:
            return kept[0], len(get_args(annotation)) > 1
    return annotation, False


def _choices(bare: Any) -> tuple[str, ...]:
    return tuple(str(each) for each in get_args(bare)) if get_origin(bare) is Literal else ()


def _model(bare: Any) -> type[Model] | None:
    inner = get_args(bare)[0] if get_origin(bare) is tuple else bare
    return inner if isinstance(inner, type) and issubclass(inner, Model) else None


@cache
def field_metas(model: type[Model]) -> tuple[FieldMeta, ...]:
    """What is known of every field of a part of the document, in order."""
    out = []
    for name, info in model.model_fields.items():
        extra = info.json_schema_extra if isinstance(info.json_schema_extra, dict) else {}
        bare, optional = _bare(info.annotation)
        choices = _choices(bare)
        known: dict[str, Any] = dict(extra)
        shape = known.pop("shape", "text")
        usual = getattr(model, "USUAL", {}).get(name, known.pop("usual", None))
        default = None if info.default is PydanticUndefined else info.default
        out.append(
            FieldMeta(
                name=name,
                key=known.pop("key", "") or name,
                english=known.pop("label", "") or name.replace("_", " "),
                english_help=known.pop("help", ""),
                english_where=known.pop("usual_where", ""),
                shape="choice" if shape == "text" and choices else shape,
                choices=choices,
                optional=optional,
                required=info.is_required(),
                default=default,
                model=_model(bare),
                usual=None if usual is None else (usual[0], usual[1]),
                **known,
            )
        )
    return tuple(out)


@cache
def field_meta(model: type[Model], name: str) -> FieldMeta:
    """What is known of one field; KeyError for a name the model has not."""
    for meta in field_metas(model):
        if meta.name == name:
            return meta
    raise KeyError(name)
