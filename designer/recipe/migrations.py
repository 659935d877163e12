"""Older recipe files, brought to the present format: one function a format, on plain dicts; newer ones are refused."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from designer.language import say
from designer.recipe.document import FORMAT
from designer.recipe.error import RecipeError

Migration = Callable[[dict[str, Any]], dict[str, Any]]

# Format n -> function that makes it format n + 1. One sample file per old format is kept in tests/recipe/formats.
MIGRATIONS: dict[int, Migration] = {}


def migrated(
    data: dict[str, Any], *, present: int = FORMAT, migrations: dict[int, Migration] = MIGRATIONS
) -> dict[str, Any]:
    """Plain data of the present format. Raises RecipeError for a missing, unreadable, unknown or newer format."""
    version = data.get("format")
    if version is None:
        raise RecipeError(
            say("the file does not say its format; a recipe begins with format = {present}", present=present)
        )
    if not isinstance(version, int) or isinstance(version, bool) or version < 1:
        raise RecipeError(
            say(
                "format = {version!r} is no format; a recipe begins with format = {present}",
                version=version,
                present=present,
            )
        )
    if version > present:
        raise RecipeError(
            say(
                "the file has format {version}, this program knows formats up to {present}; open it with "
                "a newer version of the program",
                version=version,
                present=present,
            )
        )
    while version < present:
        data = migrations[version](dict(data))
        version += 1
        data["format"] = version
    return data
