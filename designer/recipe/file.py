"""The recipe file: TOML with quantities as text.

Reading is strict and says where; writing keeps what the maker wrote.
"""

from __future__ import annotations

import glob
import os
import stat
import tempfile
import time
import tomllib
from contextlib import suppress
from pathlib import Path
from typing import Any, Final

from tomlkit.exceptions import TOMLKitError

from designer.language import say
from designer.recipe.describing import json_schema as json_schema
from designer.recipe.document import FORMAT, Recipe
from designer.recipe.error import RecipeError
from designer.recipe.migrations import migrated
from designer.recipe.reading import recipe_of
from designer.recipe.writing import fresh, merged

MAX_BYTES = 1_000_000

HALF: Final = ".new"
"""How a file is called while it is being written: hidden, beside the one it will stand in place of."""
HALF_AGE_S: Final = 60.0


def reads(text: str) -> Recipe:
    """The recipe in a text. Raises RecipeError: one sentence that names the place."""
    if len(text) > MAX_BYTES:
        raise RecipeError(
            say(
                "this is too large for a recipe ({said:.1f} MB, at most {max_bytes:.0f} MB)",
                said=len(text) / 1000000.0,
                max_bytes=MAX_BYTES / 1000000.0,
            )
        )
    return recipe_of(migrated(_toml(text)))


def _toml(text: str) -> dict[str, Any]:
    if not text.strip():
        raise RecipeError(say("the file is empty"))
    try:
        return tomllib.loads(text)
    except RecursionError:
        raise RecipeError(say("the file can't be read as TOML: it is nested too deeply")) from None
    except ValueError as error:
        said = str(error).splitlines()[0][:160] if str(error) else say("it is not TOML")
        raise RecipeError(
            say("the file can't be read as TOML: {said}{said2}", said=said[:1].lower(), said2=said[1:])
        ) from None


def read_text(path: Path | str) -> str:
    """The text of a recipe file. Raises RecipeError for a folder, no file, no leave to read, too large, not text."""
    path = Path(path)
    try:
        if path.is_dir():
            raise RecipeError(say("this is a folder, not a recipe file"), str(path))
        size = path.stat().st_size
        if size > MAX_BYTES:
            raise RecipeError(
                say(
                    "this is too large for a recipe ({size:.1f} MB, at most {max_bytes:.0f} MB)",
                    size=size / 1000000.0,
                    max_bytes=MAX_BYTES / 1000000.0,
                ),
                str(path),
            )
        return path.read_bytes().decode("utf-8-sig").replace("\r\n", "\n")
    except FileNotFoundError:
        raise RecipeError(say("there is no such file"), str(path)) from None
    except UnicodeDecodeError:
        raise RecipeError(say("this is not a text file (UTF-8), so it is no recipe"), str(path)) from None
    except OSError as error:
        raise RecipeError(
            say("the file can't be read: {strerror}", strerror=error.strerror or error), str(path)
        ) from None


def read(path: Path | str) -> Recipe:
    """The recipe in a file. Raises RecipeError: one sentence that names the file and the place in it."""
    text = read_text(path)
    try:
        return reads(text)
    except RecipeError as error:
        place = f"{path}, {error.where}" if error.where else str(path)
        raise RecipeError(error.sentence, place) from None


def writes(recipe: Recipe, previous_text: str | None = None) -> str:
    """The text of a recipe. With the text last read, comments, order and unchanged quantities stay as written.

    The result always reads back as the same document; where a text is laid out so that it can't be merged (parts as
    inline tables), it is written anew.
    """
    if previous_text is not None and previous_text.strip():
        try:
            text = merged(recipe, previous_text)
            if reads(text) == recipe:
                return text
        except (ValueError, TOMLKitError, KeyError, TypeError):
            pass
    return fresh(recipe)


def write(recipe: Recipe, path: Path | str, previous_text: str | None = None) -> str:
    """Write a recipe beside its path and put it in place at once, so that a crash leaves the old or the new; the text.

    Without `previous_text` the file itself is merged with, if there is one. A file of a newer format is never written
    over, nor one that is write-protected. Raises RecipeError where the file can't be written.
    """
    path = Path(path)
    if previous_text is None and path.exists():
        previous_text = read_text(path)
    if previous_text is not None:
        _never_over_newer(previous_text, path)
    _never_over_protected(path)
    text = writes(recipe, previous_text)
    try:
        replace_file(path, text)
    except OSError as error:
        raise RecipeError(
            say("the file can't be written: {strerror}", strerror=error.strerror or error), str(path)
        ) from None
    return text


def _never_over_newer(text: str, path: Path) -> None:
    try:
        version = tomllib.loads(text).get("format")
    except (ValueError, RecursionError):
        return
    if isinstance(version, int) and version > FORMAT:
        raise RecipeError(
            say("the file has format {version}, newer than this program; it is not written over", version=version),
            str(path),
        )


def _never_over_protected(path: Path) -> None:
    """A file can be put in the place of one that is write-protected; the maker protected it for a reason."""
    if path.exists() and not path.stat().st_mode & stat.S_IWUSR:
        raise RecipeError(say("the file is protected against writing; save under another name"), str(path))


def replace_file(path: Path, text: str) -> None:
    """Put a text in the place of a file at once, or leave the old one; what a crash left beside it goes. OSError."""
    target = path.resolve()
    clear_halves(target)
    handle, name = tempfile.mkstemp(prefix=f".{target.name}.", suffix=HALF, dir=target.parent)
    try:
        with os.fdopen(handle, "w", encoding="utf-8", newline="\n") as stream:
            stream.write(text)
            stream.flush()
            os.fsync(stream.fileno())
        os.chmod(name, target.stat().st_mode & 0o777 if target.exists() else 0o644)
        os.replace(name, target)
    except BaseException:
        Path(name).unlink(missing_ok=True)
        raise


def clear_halves(path: Path) -> None:
    """Take away what a crash in the middle of writing a file left beside it; what is young may be being written.

    What can't be taken away stays: it is of no use and does no harm.
    """
    now = time.time()
    for half in path.parent.glob(f".{glob.escape(path.name)}.*{HALF}"):
        with suppress(OSError):
            if now - half.stat().st_mtime > HALF_AGE_S:
                half.unlink()
