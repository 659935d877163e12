"""From the document to TOML text. What still means the same stays as the maker wrote it: numbers, comments, order.

The text is cut into blocks, one a `[[stage]]`, `[form]` and so on, each with the comment right above it. A block is
merged with its part of the document by id; only keys whose meaning changed are touched. What the blocks of a text say
is remembered: until it is saved, every edit is written beside the same text.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import tomlkit
from tomlkit.items import Array, InlineTable

from designer.recipe.document import Branch, Recipe
from designer.recipe.end import END_VALUE_KIND, End
from designer.recipe.error import RecipeError
from designer.recipe.field import FieldMeta, Model, field_metas
from designer.recipe.reading import build, quantity_of
from designer.recipe.stages.stage import Stage
from designer.units import GRAIN, KINDS, UnitError, exact, parse

PARTS = ("milk", "starter", "addition", "form", "coat", "vat", "stage", "branch")
_HEADER = re.compile(r"^\s*(\[\[|\[)\s*([A-Za-z0-9_.\s\"'-]+?)\s*(\]\]|\])\s*(#.*)?$")


@dataclass(frozen=True, slots=True)
class Block:
    """One table of the file with the comment above it. `name` is "" for what stands before the first table."""

    name: str
    text: str


# --- The text in blocks ---------------------------------------------------------------------------------------------


def _open_at_line_ends(text: str) -> list[bool]:
    """For every line: is a multi-line string or array still open when it begins?"""
    out, depth, quote, index = [False], 0, "", 0
    while index < len(text):
        if quote:
            if quote[0] == '"' and text[index] == "\\":
                index += 2
                continue
            if text.startswith(quote, index):
                index += len(quote)
                quote = ""
                continue
        elif text[index] in "\"'":
            quote = text[index] * 3 if text.startswith(text[index] * 3, index) else text[index]
            index += len(quote)
            continue
        elif text[index] == "#":
            index = text.find("\n", index) if "\n" in text[index:] else len(text)
            continue
        elif text[index] in "[{":
            depth += 1
        elif text[index] in "]}":
            depth -= 1
        if index < len(text) and text[index] == "\n":
            if len(quote) == 1:
                quote = ""
            out.append(bool(quote) or depth > 0)
        index += 1
    return out


@lru_cache(maxsize=32)
def blocks(text: str, prefix: str = "") -> tuple[Block, ...]:
    """The text cut at the headers of the parts below `prefix`; a comment right above a header goes with it."""
    lines = text.splitlines(keepends=True)
    held = _open_at_line_ends(text)
    names = {f"{prefix}{part}" for part in PARTS}
    cut, current = [("", 0)], 0  # name of each block, and its first line
    for number, line in enumerate(lines):
        header = None if held[number] else _HEADER.match(line)
        name = re.sub(r"[\s\"']", "", header[2]) if header else ""
        if name in names and not (prefix == "" and "." in name):
            first = number
            while first > current and lines[first - 1].lstrip().startswith("#"):
                first -= 1
            if first == current == 0:
                first = number  # the comment at the very top belongs to the file
            cut.append((name.removeprefix(prefix), first))
            current = number
    ends = [first for _, first in cut[1:]] + [len(lines)]
    return tuple(Block(name, "".join(lines[first:end])) for (name, first), end in zip(cut, ends, strict=True))


# --- One value ------------------------------------------------------------------------------------------------------


def _same(raw: object, value: float, kind: str) -> bool:
    try:
        return round(quantity_of(raw, kind, "", ""), GRAIN) == round(value, GRAIN)
    except RecipeError:
        return False


def _quantity_text(value: float, kind: str, raw: object) -> str | int | float:
    """Text of a quantity in the unit that stood there; a plain number stays a plain number."""
    if KINDS[kind].plain and raw is not None and not isinstance(raw, str):
        return int(value) if value == int(value) else value
    unit = None
    if isinstance(raw, str):
        try:
            unit = parse(raw, kind).unit
        except UnitError:
            unit = None
    return exact(value, kind, unit)


def _end_data(end: End, raw: Mapping[str, Any]) -> dict[str, Any]:
    out: dict[str, Any] = {"by": end.by}
    for meta in field_metas(End):
        value = getattr(end, meta.name)
        if value is None or meta.name == "by" or (meta.name == "length_min"):
            continue
        kind = END_VALUE_KIND[end.by] if meta.name == "value" else meta.kind
        old = raw.get(meta.key) if raw.get("by") == end.by or meta.name != "value" else None
        out[meta.key] = value if not kind else old if _same(old, value, kind) else _quantity_text(value, kind, old)
    return out


def _value(meta: FieldMeta, value: Any, raw: object) -> Any:
    """What a key should hold; the raw value itself where it still means the same."""
    if meta.shape == "quantity":
        return raw if raw is not None and _same(raw, value, meta.kind) else _quantity_text(value, meta.kind, raw)
    if meta.shape == "tables":
        old = raw if isinstance(raw, list) else []
        return [_plain_table(each, old[index] if index < len(old) else {}) for index, each in enumerate(value)]
    if meta.shape == "table":
        return _plain_table(value, raw if isinstance(raw, Mapping) else {})
    return value


def _plain_table(model: Model, raw: Mapping[str, Any]) -> dict[str, Any]:
    return {key: value for key, value in wanted(model, raw, anew=not raw).items() if value is not None}


def wanted(model: Model, raw: Mapping[str, Any], *, anew: bool = False) -> dict[str, Any]:
    """Key -> what the table should hold (None: the key goes), in the order of the fields. Parts are left out.

    A setting left to its default stays out of a table that left it out; a table written `anew` says it.
    """
    out: dict[str, Any] = {}
    for meta in field_metas(type(model)):
        value = getattr(model, meta.name)
        if meta.key in PARTS and meta.shape in ("table", "tables"):
            continue
        if meta.shape == "end":
            out |= _end_keys(model, raw, anew=anew)
        elif value is None or (meta.key not in raw and _unsaid(meta, value, anew=anew)):
            out[meta.key] = None
        else:
            out[meta.key] = _value(meta, value, raw.get(meta.key))
    return out


def _unsaid(meta: FieldMeta, value: Any, *, anew: bool) -> bool:
    """May this value go without saying where the key does not stand?"""
    if meta.name in ("kind", "format") or value != meta.default:
        return False
    return not anew or not value or meta.name in ("vigour", "units_per_100l", "lever")


def _end_keys(stage: Model, raw: Mapping[str, Any], *, anew: bool) -> dict[str, Any]:
    assert isinstance(stage, Stage)
    end, default = stage.end, type(stage).model_fields["end"].default
    silent = "end" not in raw and "length" not in raw
    if silent and ((stage.kind == "press" and end.by == "time") or (end == default and not anew)):
        return {"length": None, "end": None}
    if end.is_state:
        old = raw.get("end")
        return {"length": None, "end": _end_data(end, old if isinstance(old, Mapping) else {})}
    assert end.length_min is not None
    old_length = raw.get("length")
    length = old_length
    if not _same(old_length, end.length_min, "duration"):
        length = _quantity_text(end.length_min, "duration", old_length)
    return {"length": length, "end": {"by": "feel"} if end.by == "feel" else None}


# --- One table ------------------------------------------------------------------------------------------------------


def _inline(value: Any) -> Any:
    if isinstance(value, Mapping):
        table = tomlkit.inline_table()
        for key, each in value.items():
            table[key] = _inline(each)
        return table
    if isinstance(value, list):
        array = tomlkit.array()
        for each in value:
            array.append(_inline(each))
        return array.multiline(len(value) > 1)
    if isinstance(value, str) and "\n" in value:
        return tomlkit.string(value, multiline=True)
    return value


def _alike(table: InlineTable, value: Mapping[str, Any]) -> bool:
    """Another kind of end is another table, written anew."""
    return bool(table.get("by") == value.get("by"))


def _merge_inline(table: InlineTable, value: Mapping[str, Any]) -> None:
    for key in [key for key in table if key not in value]:
        del table[key]
    for key, each in value.items():
        if key not in table or table[key] != each:
            table[key] = _inline(each)


def _merge_array(array: Array, values: list[Any]) -> None:
    del array[len(values) :]
    for index, value in enumerate(values):
        if index >= len(array):
            array.append(_inline(value))
        elif isinstance(array[index], InlineTable) and isinstance(value, Mapping):
            _merge_inline(array[index], value)
        elif array[index] != value:
            array[index] = _inline(value)


def _merge_table(table: Any, values: Mapping[str, Any]) -> None:
    """Set the keys of a tomlkit table; what is equal already is not touched, what is unknown here goes."""
    for key in [key for key in table if key not in values]:
        del table[key]
    for key, value in values.items():
        if value is None:
            if key in table:
                del table[key]
        elif key not in table:
            table[key] = _inline(value)
        elif isinstance(table[key], Array) and isinstance(value, list):
            _merge_array(table[key], value)
        elif isinstance(table[key], InlineTable) and isinstance(value, Mapping) and _alike(table[key], value):
            _merge_inline(table[key], value)
        elif table[key] != value:
            table[key] = _inline(value)


def _fresh_block(name: str, listed: bool, model: Model) -> str:
    document = tomlkit.document()
    for key, value in _plain_table(model, {}).items():
        document.add(key, _inline(value))
    header = f"[[{name}]]" if listed else f"[{name}]"
    return f"{header}\n{tomlkit.dumps(document)}"


def _merged_block(block: Block, name: str, model: Model) -> str:
    document = tomlkit.parse(block.text)
    table: Any = document
    for step in name.split("."):
        table = table[step][0] if isinstance(table[step], list) else table[step]
    values = wanted(model, table.unwrap())
    before = tomlkit.dumps(document)
    _merge_table(table, values)
    after = tomlkit.dumps(document)
    return block.text if before == after else after


# --- The whole document ---------------------------------------------------------------------------------------------


def _block_data(block: Block, name: str) -> dict[str, Any]:
    """The table of a block as plain data; many times quicker than with its comments."""
    data: Any = tomllib.loads(block.text)
    for step in name.split("."):
        data = data[step][0] if isinstance(data[step], list) else data[step]
    return dict(data)


@dataclass(slots=True)
class _Placed:
    """A block of the new text: where it goes, what it says, whether it is new or moved."""

    order: tuple[float, int]
    text: str
    loose: bool


def _merge_parts(document: Recipe | Branch, found: Sequence[Block], prefix: str) -> list[_Placed]:
    """The blocks after the first, merged with the parts of the document; moved and new ones follow their neighbour."""
    placed: list[_Placed] = []
    for meta in sorted((meta for meta in field_metas(type(document)) if meta.key in PARTS), key=_rank):
        listed, value = meta.shape == "tables", getattr(document, meta.name)
        own = [index for index, block in enumerate(found) if block.name == meta.key]
        parts = list(value) if listed else [value] if value is not None else []
        by_id = _by_id(found, own, prefix + meta.key, parts) if listed else {"": own[0]} if own else {}
        last = own[0] - 0.5 if own else _place_for(meta, found)
        for part in parts:
            index = by_id.get(getattr(part, "id", ""))
            if index is None:
                text = _new_part(prefix + meta.key, listed, part)
            else:
                text = _kept_part(found[index], prefix + meta.key, part)
            stays = index is not None and index > last
            last = float(index) if stays and index is not None else last
            placed.append(_Placed((last, 0 if stays else len(placed) + 1), text, not stays))
    return sorted(placed, key=lambda each: each.order)


def _rank(meta: FieldMeta) -> int:
    return PARTS.index(meta.key)


def _place_for(meta: FieldMeta, found: Sequence[Block]) -> float:
    """Where a part goes of which there is none yet: before the first block of a later kind, else at the end."""
    later = [index for index, block in enumerate(found) if block.name and PARTS.index(block.name) > _rank(meta)]
    return (min(later) if later else len(found)) - 0.5 + _rank(meta) / 100.0


def _joined(top: str, placed: list[_Placed]) -> str:
    """The text; where a block is new or moved, one empty line lies between it and its neighbours."""
    out, loose = top, not placed or placed[0].loose
    for each in placed:
        out += "" if out.endswith("\n") or not out else "\n"
        if (loose or each.loose) and out:
            out = out.rstrip("\n") + "\n\n"
        out += each.text
        loose = each.loose
    return out.rstrip("\n") + "\n" if loose else out


def _by_id(found: Sequence[Block], own: list[int], name: str, parts: list[Any]) -> dict[str, int]:
    """Part id -> its block; a part whose id alone changed keeps the block in its place."""
    ids = [_id_of(found[index], name) for index in own]
    out = dict(zip(ids, own, strict=True))
    if len(parts) == len(own):
        known = {part.id for part in parts}
        for part, old, index in zip(parts, ids, own, strict=True):
            if part.id not in out and old not in known:
                out[part.id] = index
    return out


def _new_part(name: str, listed: bool, part: Model) -> str:
    text = _fresh_block(name, listed, part)
    return _joined(text, _merge_parts(part, [Block("", "")], f"{name}.")) if isinstance(part, Branch) else text


def _kept_part(block: Block, name: str, part: Model) -> str:
    if not isinstance(part, Branch):
        return block.text if _said(block, name, type(part)) == part else _merged_block(block, name, part)
    inner = blocks(block.text, f"{name}.")
    return _joined(_merged_block(inner[0], name, part), _merge_parts(part, inner, f"{name}."))


@lru_cache(maxsize=256)
def _id_of(block: Block, name: str) -> str:
    return str(_block_data(block, name).get("id", ""))


@lru_cache(maxsize=256)
def _said(block: Block, name: str, kind: type[Model]) -> Model | None:
    """The part of that kind a block means, None where it means none."""
    try:
        return build(kind, _block_data(block, name), "")
    except RecipeError:
        return None


def merged(recipe: Recipe, text: str) -> str:
    """The recipe written into an earlier text of it. Raises KeyError or a TOML error where the text can't be merged."""
    found = blocks(text)
    document = tomlkit.parse(found[0].text)
    values = wanted(recipe, document.unwrap(), anew=not text)
    before = tomlkit.dumps(document)
    _merge_table(document, values)
    after = tomlkit.dumps(document)
    return _joined(found[0].text if before == after else after, _merge_parts(recipe, found, ""))


def part_text(name: str, part: Model) -> str:
    """One part of a list (`[[stage]]`, `[[addition]]`, ...) written anew."""
    return _new_part(name, True, part)


def fresh(recipe: Recipe) -> str:
    """The recipe written anew."""
    return merged(recipe, "")
