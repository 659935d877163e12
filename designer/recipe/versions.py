"""Versions of a recipe: every save keeps what was there before, as plain TOML in `<recipe>.history/`.

A version is the whole recipe text under a head of comments that says who saved it, when, a note, and what changed. So
it opens like any recipe, and a folder of versions needs no program to be read.
"""

from __future__ import annotations

import tomllib
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from pathlib import Path

import tomlkit

from designer.language import say
from designer.recipe import file
from designer.recipe.changes import Change, changes, in_words
from designer.recipe.document import Recipe
from designer.recipe.error import RecipeError

MARK = "#| "
FIRST = "as it was before versions were kept"
OUTSIDE = "changed outside this program"


@dataclass(frozen=True, slots=True)
class Version:
    """One kept state: its number, file, when and by whom it was saved, the note, and what changed in words."""

    number: int
    path: Path
    saved: datetime
    by: str
    note: str
    changed: str


@dataclass(frozen=True, slots=True)
class Saved:
    """What a save left: the text in the file, its version (None where nothing changed), and a sentence where keeping
    the version failed though the recipe itself is safe."""

    text: str
    version: Version | None
    problem: str = ""


def folder(path: Path | str) -> Path:
    """Where the versions of a recipe are."""
    return Path(path).resolve().with_suffix(".history")


def save(
    recipe: Recipe,
    path: Path | str,
    previous_text: str | None = None,
    *,
    by: str = "",
    note: str = "",
    when: datetime | None = None,
) -> Saved:
    """Write a recipe as `file.write` does and keep the version. Raises RecipeError where the file can't be written.

    `by` is else the maker in the recipe, `when` now.
    """
    path = Path(path)
    before = file.read_text(path) if path.exists() else None
    stood = datetime.fromtimestamp(path.stat().st_mtime, UTC) if path.exists() else None
    text = file.write(recipe, path, previous_text)
    try:
        version = _keep(path, before, stood, text, recipe, by, note, when or datetime.now(UTC))
    except (OSError, RecipeError) as error:
        why = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        return Saved(text, None, say("The recipe is saved, but its version could not be kept: {why}.", why=why))
    return Saved(text, version)


def _keep(
    path: Path, before: str | None, stood: datetime | None, text: str, recipe: Recipe, by: str, note: str, now: datetime
) -> Version | None:
    """Keep what stood there where it is not kept yet, then the new text."""
    kept = versions(path)
    last = text_of(kept[-1]) if kept else None
    if before is not None and before != last:
        _store(path, before, stood or now, "", OUTSIDE if kept else FIRST, last)
        last = before
    if text == last:
        return None
    return _store(path, text, now, by or recipe.maker, note, last)


def _store(path: Path, text: str, saved: datetime, by: str, note: str, last: str | None) -> Version:
    home = folder(path)
    home.mkdir(exist_ok=True)
    number = max((int(one.stem) for one in _files(home)), default=0) + 1
    changed = "" if last is None else _difference(last, text)
    version = Version(
        number, home / f"{number:04d}.toml", saved.astimezone(UTC).replace(microsecond=0), by, note, changed
    )
    file.replace_file(version.path, _head(version) + text)
    return version


def _difference(last: str, text: str) -> str:
    try:
        found = changes(file.reads(last), file.reads(text))
    except RecipeError:
        return say("one of the two can't be read as a recipe")
    return in_words(found) if found else say("wording or order only")


def _head(version: Version) -> str:
    head = tomlkit.document()
    head.add("saved", tomlkit.item(version.saved))
    for key in ("by", "note", "changed"):
        head.add(key, tomlkit.item(" ".join(str(getattr(version, key)).split())))
    lines = tomlkit.dumps(head).strip().splitlines()
    return "".join(f"{MARK}{line}\n" for line in (f"version = {version.number}", *lines)) + "\n"


def _files(home: Path) -> list[Path]:
    return sorted(one for one in home.glob("*.toml") if one.stem.isdigit()) if home.is_dir() else []


def versions(path: Path | str) -> tuple[Version, ...]:
    """The kept versions of a recipe, the oldest first; none where there is no history.

    Raises RecipeError for a version whose head can't be read.
    """
    return tuple(sorted((_version(one) for one in _files(folder(path))), key=lambda one: one.number))


def _version(path: Path) -> Version:
    lines = file.read_text(path).splitlines()
    head = "\n".join(line.removeprefix(MARK) for line in lines if line.startswith(MARK))
    try:
        said = tomllib.loads(head)
        saved = said["saved"]
        if not isinstance(saved, datetime):
            raise KeyError("saved")
    except (tomllib.TOMLDecodeError, KeyError):
        raise RecipeError(
            say("the head of this version can't be read; it should say saved, by, note and changed"), str(path)
        ) from None
    return Version(int(path.stem), path, saved, *(str(said.get(key, "")) for key in ("by", "note", "changed")))


def version(path: Path | str, number: int) -> Version:
    """One version of a recipe; RecipeError if it has not that many."""
    found = versions(path)
    for one in found:
        if one.number == number:
            return one
    raise RecipeError(
        say("there is no version {number}; there are {found}", number=number, found=len(found)), str(path)
    )


def text_of(one: Version) -> str:
    """The recipe text of a version, as it was."""
    text = file.read_text(one.path)
    head = sum(len(line) for line in text.splitlines(keepends=True) if line.startswith(MARK))
    return text[head:].removeprefix("\n")


def recipe_of(one: Version) -> Recipe:
    """The recipe of a version. Raises RecipeError where it can't be read."""
    return file.reads(text_of(one))


def annotate(path: Path | str, number: int, note: str) -> Version:
    """Give a version another note, its recipe untouched. RecipeError where there is none, or it can't be written."""
    one = replace(version(path, number), note=" ".join(note.split()))
    text = _head(one) + text_of(one)
    try:
        file.replace_file(one.path, text)
    except OSError as error:
        raise RecipeError(say("the note can't be written: {why}", why=error.strerror or error), str(one.path)) from None
    return one


def compare(old: Version, new: Version) -> tuple[Change, ...]:
    """What differs between two versions."""
    return changes(recipe_of(old), recipe_of(new))


def restore(path: Path | str, number: int, *, by: str = "", when: datetime | None = None) -> Saved:
    """Put a version back in its place. It becomes the newest version; none is lost."""
    path = Path(path)
    one = version(path, number)
    recipe = recipe_of(one)
    return save(recipe, path, text_of(one), by=by, note=say("version {number} put back", number=number), when=when)
