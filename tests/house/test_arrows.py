"""The arrows of the house point one way, and what does the job never pulls in the window."""

from __future__ import annotations

import ast
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

from designer.bootstrap import ROOT

# Each layer may use those before it and itself.
LAYERS: tuple[tuple[str, ...], ...] = (
    ("designer.units", "designer.quantities"),
    ("styles",),
    ("designer.recipe",),
    ("designer.make",),
    ("designer.cellar",),
    ("designer.cost",),
    ("designer.forecast",),
    ("designer.judge",),
    ("designer.batch",),
    ("designer.plan", "designer.validate"),
    (
        "designer.command",
        "designer.cli_batch",
        "designer.cli_compare",
        "designer.cli_teach",
        "designer.cli",
        "designer.tour",
        "widgets",
    ),
    ("designer.__main__",),
)
WINDOW = ("PySide6", "shiboken6", "widgets")
MAY_OPEN_THE_WINDOW = {"designer.cli", "designer.command", "designer.tour"}
PACKAGES = ("designer", "widgets", "styles", "example_recipes")


def dotted(path: Path) -> str:
    parts = path.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


MODULES = {dotted(path): path for package in PACKAGES for path in sorted((ROOT / package).rglob("*.py"))}


def imports(tree: ast.AST, inside_function: bool = False) -> Iterator[tuple[str, bool]]:
    """Every name imported anywhere, and whether the import waits inside a function."""
    for node in ast.iter_child_nodes(tree):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield alias.name, inside_function
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, "relative import"
            for alias in node.names:
                yield f"{node.module}.{alias.name}", inside_function
        yield from imports(node, inside_function or isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef))


def within(name: str, package: str) -> bool:
    return name == package or name.startswith(package + ".")


def layer(name: str) -> int | None:
    return next((at for at, names in enumerate(LAYERS) if any(within(name, package) for package in names)), None)


def faults(name: str) -> Iterator[str]:
    own = layer(name)
    for imported, waits in imports(ast.parse(MODULES[name].read_text(encoding="utf-8"))):
        of_the_window = any(within(imported, package) for package in WINDOW)
        lazy = name in MAY_OPEN_THE_WINDOW and waits and within(imported, "widgets")
        if of_the_window and not within(name, "widgets") and not lazy:
            yield f"{name} imports {imported}: only widgets may"
        target = layer(imported)
        if own is not None and target is not None and target > own:
            yield f"{name} imports {imported}, which stands above it"


def test_arrows_point_one_way() -> None:
    found = [fault for name in MODULES for fault in faults(name)]
    assert not found, "\n".join(found)


def test_the_job_is_done_without_the_window() -> None:
    names = [name for name in MODULES if not within(name, "widgets") and not name.endswith("__main__")]
    program = (
        "import importlib, sys\n"
        f"for name in {names!r}: importlib.import_module(name)\n"
        f"print(*[name for name in sys.modules if name.split('.')[0] in {WINDOW!r}])"
    )
    done = subprocess.run([sys.executable, "-c", program], cwd=ROOT, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout.split()) == (0, []), done.stderr


def test_packages_import_nothing() -> None:
    for name, path in MODULES.items():
        if path.name == "__init__.py":
            body = ast.parse(path.read_text(encoding="utf-8")).body
            assert all(isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant) for node in body), name
