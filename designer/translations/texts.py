"""Every text that can be translated: literals in the code, found by reading it, and the texts of our tables.

`all_texts` gives (context, English) pairs; `python -m designer.translations.gather` brings the .ts files up to date.
"""

from __future__ import annotations

import ast
import re
import tomllib
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any, Final, get_args

from typer.main import get_command

from designer import cli_help
from designer.cli import app
from designer.judge import align, coat, depths, verdict, words
from designer.language import CONTEXT
from designer.make import constants, knit, texture
from designer.make.caution import LEVELS
from designer.quantities import QUANTITIES
from designer.recipe import document, end, scale_stages, scaling, standardise
from designer.recipe.field import Model, field_metas
from designer.recipe.stages import press
from designer.recipe.stages.kinds import KINDS
from designer.unit_kinds import KINDS as UNIT_KINDS
from styles.reader import HAVES, styles
from styles.settings import MOMENTS, SETTINGS

ROOT = Path(__file__).resolve().parents[2]
Text = tuple[str, str]
FIELD = re.compile(r"\{[^{}]*(\{[^{}]*\}[^{}]*)*\}")
LETTERS = re.compile(r"[^\W\d_]{2}")
SIGNS: Final = ("d", "{head}: {text}", "; ")
"""Texts of no word that another language writes otherwise."""


def all_texts() -> list[Text]:
    """Every (context, English), each once, sorted."""
    found = set(_in_code()) | set(_in_tables())
    return sorted((context, text) for context, text in found if text in SIGNS or LETTERS.search(FIELD.sub("", text)))


def _in_code() -> Iterator[Text]:
    for folder in ("designer", "styles", "widgets"):
        for path in sorted((ROOT / folder).rglob("*.py")):
            if path.name == "bootstrap.py":  # speaks before there is anything to speak with
                continue
            yield from texts_of(path.read_text("utf-8"))


def texts_of(source: str) -> Iterator[Text]:
    """The marked literals of one module, designer's and Qt's."""
    tree = ast.parse(source)
    if any(
        isinstance(node, ast.ImportFrom)
        and node.module == "designer.make.caution"
        and any(one.name == "say" for one in node.names)
        for node in ast.walk(tree)
    ):
        return  # `say` names a row of the table of cautions there
    own = dict(_own_functions(tree))
    for node, class_name in _calls(tree, ""):
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        literal = [
            one.value if isinstance(one, ast.Constant) and isinstance(one.value, str) else None for one in node.args
        ]
        first, second = (*literal, None, None)[:2]
        if name in ("say", "mark") and first:
            yield (second if name == "mark" and second else CONTEXT), first
        elif name == "several":
            yield from ((CONTEXT, one) for one in literal[1:3] if one)
        elif name in ("translate", "QT_TRANSLATE_NOOP", "N", "tr", "noop") and first and second:
            yield first, second
        elif name == "tr" and first and isinstance(node.func, ast.Attribute):
            yield class_name, first
        elif name in own and first:
            yield own[name], first
        elif name == "Spec":
            tips = [_literal(one.value) for one in node.keywords if one.arg == "tip"]
            yield from (("Actions", one) for one in (second, *tips) if one)


def _literal(node: ast.expr) -> str | None:
    return node.value if isinstance(node, ast.Constant) and isinstance(node.value, str) else None


def _calls(node: ast.AST, class_name: str) -> Iterator[tuple[ast.Call, str]]:
    for child in ast.iter_child_nodes(node):
        inside = child.name if isinstance(child, ast.ClassDef) else class_name
        if isinstance(child, ast.Call):
            yield child, inside
        yield from _calls(child, inside)


def _own_functions(tree: ast.Module) -> Iterator[tuple[str, str]]:
    """Functions of a module that translate their one text in one context: name and context."""
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef) and isinstance(node.body[-1], ast.Return):
            call = node.body[-1].value
            if isinstance(call, ast.Call) and getattr(call.func, "attr", "") == "translate" and len(call.args) == 2:
                context, text = call.args
                if isinstance(context, ast.Constant) and isinstance(text, ast.Name):
                    yield node.name, str(context.value)


def _in_tables() -> Iterator[Text]:
    yield from _quantities()
    yield from _document()
    yield from _judgement()
    yield "note", standardise.usual_source()[2]
    yield from _styles()
    yield from ((cli_help.CONTEXT, text) for text in cli_help.texts(get_command(app)))
    yield from _glossary()


def _glossary() -> Iterator[Text]:
    table = tomllib.loads((ROOT / "widgets" / "help" / "glossary.toml").read_text("utf-8"))
    for term in table["term"]:
        told = [term["name"], term["says"], term.get("more", ""), term.get("source", ""), *term.get("also", ())]
        yield from (("Glossary", text) for text in told if text)


def _quantities() -> Iterator[Text]:
    for one in QUANTITIES.values():
        yield from (("quantity", one.english), ("unit", one.english_unit))
    for setting in SETTINGS.values():
        yield from (("quantity", setting.english), ("unit", setting.english_unit))
    yield from (("quantity", moment.english) for moment in MOMENTS.values())
    for label, unit, _ in words.LABELS.values():
        yield from (("quantity", label), ("unit", unit))
    for measures in (coat.table()[0], texture.table()[0]):
        for measure in measures.values():
            yield from (("quantity", measure.label), ("unit", measure.unit))
    for kind in UNIT_KINDS.values():
        yield "kind", kind.english
        yield from (("unit", unit.name) for unit in kind.units)
    yield "unit", "d"


def _document() -> Iterator[Text]:
    parts: tuple[type[Model], ...] = (
        document.Recipe, document.MilkSource, document.Starter, document.Addition, document.Form, document.Coat,
             document.Vat, document.Branch, end.End, press.PressStep, *KINDS.values())  # fmt: skip
    for part in parts:
        yield from _fields(part)
    for kind in KINDS.values():
        yield from (("stage", text) for text in (kind.LABEL, kind.HELP, *kind.PLAN, *kind.TICKS))
    yield from (("stage", role) for role in align.ROLES.values())
    yield from (("choice", text) for text in end.BY_WORDS.values())
    yield from (("choice", by.replace("_", " ")) for by in get_args(end.By))
    for text in ("form", "number", "power", "vat", "ends", "length", "pressure", "load", "warm over", "coat", "milk",
                 "starter", "addition", "casein", "protein", "breed", "heat treatment"):  # fmt: skip
        yield "field", text
    for row in (*scale_stages.LENGTHS.values(), scale_stages.BY_HAND):
        yield from (("rule", text) for text in row)
    yield from (("rule", text) for text in (*scale_stages.UNCHANGED.values(), *get_args(scaling.Rule)))
    yield from (("rule", text) for text in (scale_stages.EACH_LITRE, scale_stages.NO_SCALE))


def _fields(part: type[Model]) -> Iterator[Text]:
    for meta in field_metas(part):
        plain = meta.english == meta.name.replace("_", " ")
        yield "field", meta.key.replace("_", " ") if plain else meta.english
        yield from (("field", meta.english_help), ("field", meta.english_where))
        if len(meta.choices) > 1:
            yield from (("choice", one.replace("_", " ")) for one in meta.choices)


def _judgement() -> Iterator[Text]:
    for one in constants.table().values():
        yield from ((constants.CONTEXT, one.words), ("unit", one.unit), ("note", one.note), ("have", one.have))
        yield constants.SOURCE_CONTEXT, one.source
    yield from (("level", level) for level in LEVELS)
    yield from (("state", state) for state in (verdict.MET, verdict.NEAR, verdict.NOT_MET))
    yield from (("knit", text) for text in knit.WORDS)
    yield from (("knit", text) for row in knit.REASONS.values() for text in row[:2])
    yield from (("knit", text) for row in knit.MEANS.values() for text in row.values())
    yield from (("texture", text) for text in texture.WORDS)
    for rule in texture.table()[1]:
        yield from (("texture", rule.says), ("texture", rule.change), ("have", rule.have))
    yield from (("coat", name) for name in coat.NAMES.values())
    for part in coat.table()[1].values():
        for row in part:
            yield from (("coat", row.says), ("coat", row.todo), ("have", row.have))
    for topic in depths.topics():
        yield from (("teach", text) for text in (topic.english, topic.child_english, topic.maker_english) if text)
    for law in depths.statements().values():
        yield from ((depths.LAW_CONTEXT, text) for text in (law.name_english, law.says_english))
    for path in ("designer/make/safety.toml", "designer/judge/turns.toml", "designer/judge/another_milk.toml"):
        yield from _rows(tomllib.loads((ROOT / path).read_text("utf-8")))


def _rows(table: Any) -> Iterator[Text]:
    """Texts, names and how we have them, wherever they stand in a table of cautions."""
    for key, value in table.items() if isinstance(table, dict) else enumerate(table):
        if isinstance(value, dict | list):
            yield from _rows(value)
        elif key in ("text", "name", "more") and isinstance(value, str):
            yield "caution", value
        elif key == "have":
            yield "have", value


def _styles() -> Iterator[Text]:
    yield from (("have", have) for have in HAVES)
    for style in styles():
        yield from (("style", style.name), ("style", style.family), ("note", style.notes))
        rows: Iterable[Any] = (*style.rules, *style.typical, *style.windows, *style.gates, *style.room)
        for row in rows:
            yield from (("note", row.note), ("have", row.have))
        yield from (("rules", text) for rules in style.rules for text in (rules.name, rules.kind))
        yield from (("style", room.name) for room in style.room)
        yield from (("milk", f"{milk}'s") for milk in style.milk)
        if style.sensory is not None:
            yield from (
                ("style", text) for text in (style.sensory.appearance, style.sensory.body, style.sensory.flavour)
            )
