"""Older recipe files, brought to the present format: one function a format, on plain dicts; newer ones are refused."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

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
        raise RecipeError(f"the file does not say its format; a recipe begins with format = {present}")
    if not isinstance(version, int) or isinstance(version, bool) or version < 1:
        raise RecipeError(f"format = {version!r} is no format; a recipe begins with format = {present}")
    if version > present:
        raise RecipeError(
            f"the file has format {version}, this program knows formats up to {present}; "
            "open it with a newer version of the program"
        )
    while version < present:
        data = migrations[version](dict(data))
        version += 1
        data["format"] = version
    return data
