"""What every file of the house keeps to: one idea a file, a word on what it is for, nothing left lying."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from pathlib import Path

from designer.bootstrap import ROOT

TOP = {"README.md", "DEVELOPERS.md", "LICENSE", "pyproject.toml"}
FOLDERS = {"designer", "widgets", "styles", "example_recipes", "tests"}
LONGEST = 500
TEXT = {".py", ".toml", ".md", ".svg", ".json", ".txt", ""}

# Spelled in pieces, so that this file passes its own test.
LEFT_LYING = [
    "/" + "work/",
    "/" + "farm/",
    "/" + "tmp/",
    "py" + "pi.org",
    "python" + "hosted",
    "deb." + "debian.org",
    "registry." + "npmjs",
    "TO" + "DO",
    "FIX" + "ME",
    "Not" + "ImplementedError",
    "time." + "sleep",
    "pytest." + "skip",
    "mark." + "skip",
    "mark." + "xfail",
]


def files() -> Iterator[Path]:
    for top in sorted(FOLDERS):
        inside = sorted((ROOT / top).rglob("*"))
        yield from (path for path in inside if path.is_file() and "__pycache__" not in path.parts)
    yield from (ROOT / name for name in sorted(TOP))
    yield ROOT / ".ci" / "run"


def named(path: Path) -> str:
    return str(path.relative_to(ROOT))


def parsed(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def sources() -> list[Path]:
    return [path for path in files() if path.suffix == ".py"]


def test_the_top_holds_nothing_else() -> None:
    found = {path.name for path in ROOT.iterdir() if not path.name.startswith(".") and path.name != "__pycache__"}
    assert found - {"dist", "build"} == TOP | FOLDERS


def test_one_idea_a_file() -> None:
    lines = {named(path): len(path.read_text(encoding="utf-8").splitlines()) for path in sources()}
    assert {name: count for name, count in lines.items() if count > LONGEST} == {}


def test_every_module_says_what_it_is_for() -> None:
    silent = [named(path) for path in sources() if (tree := parsed(path)).body and not ast.get_docstring(tree)]
    assert not silent


def test_nothing_is_left_lying() -> None:
    pattern = re.compile("|".join(re.escape(word) for word in LEFT_LYING))
    found = [
        f"{named(path)}:{number}: {line.strip()[:80]}"
        for path in files()
        if path.suffix in TEXT
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1)
        if pattern.search(line)
    ]
    assert not found, "\n".join(found)


def test_no_error_is_swallowed() -> None:
    for path in sources():
        for node in ast.walk(parsed(path)):
            if isinstance(node, ast.ExceptHandler):
                caught = node.type.id if isinstance(node.type, ast.Name) else node.type
                dropped = caught == "Exception" and all(isinstance(step, ast.Pass) for step in node.body)
                passed_on = isinstance(node.body[-1], ast.Raise)
                assert caught not in (None, "BaseException") or passed_on, f"{named(path)}:{node.lineno} keeps all"
                assert not dropped, f"{named(path)}:{node.lineno} drops every error"
