"""The recipe file: TOML with quantities as text.

Reading is strict and says where; writing keeps what the maker wrote.
"""

from __future__ import annotations

import tomllib
from pathlib import Path
from typing import Any

from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError
from designer.recipe.migrations import migrated
from designer.recipe.reading import recipe_of

MAX_BYTES = 1_000_000


def reads(text: str) -> Recipe:
    """The recipe in a text. Raises RecipeError: one sentence that names the place."""
    if len(text) > MAX_BYTES:
        raise RecipeError(
            f"this is too large for a recipe ({len(text) / 1e6:.1f} MB, at most {MAX_BYTES / 1e6:.0f} MB)"
        )
    return recipe_of(migrated(_toml(text)))


def _toml(text: str) -> dict[str, Any]:
    if not text.strip():
        raise RecipeError("the file is empty")
    try:
        return tomllib.loads(text)
    except RecursionError:
        raise RecipeError("the file can't be read as TOML: it is nested too deeply") from None
    except ValueError as error:
        said = str(error).splitlines()[0][:160] if str(error) else "it is not TOML"
        raise RecipeError(f"the file can't be read as TOML: {said[:1].lower()}{said[1:]}") from None


def read_text(path: Path | str) -> str:
    """The text of a recipe file. Raises RecipeError for a folder, no file, no leave to read, too large, not text."""
    path = Path(path)
    try:
        if path.is_dir():
            raise RecipeError("this is a folder, not a recipe file", str(path))
        size = path.stat().st_size
        if size > MAX_BYTES:
            raise RecipeError(
                f"this is too large for a recipe ({size / 1e6:.1f} MB, at most {MAX_BYTES / 1e6:.0f} MB)", str(path)
            )
        return path.read_bytes().decode("utf-8-sig").replace("\r\n", "\n")
    except FileNotFoundError:
        raise RecipeError("there is no such file", str(path)) from None
    except UnicodeDecodeError:
        raise RecipeError("this is not a text file (UTF-8), so it is no recipe", str(path)) from None
    except OSError as error:
        raise RecipeError(f"the file can't be read: {error.strerror or error}", str(path)) from None


def read(path: Path | str) -> Recipe:
    """The recipe in a file. Raises RecipeError: one sentence that names the file and the place in it."""
    text = read_text(path)
    try:
        return reads(text)
    except RecipeError as error:
        place = f"{path}, {error.where}" if error.where else str(path)
        raise RecipeError(error.sentence, place) from None
