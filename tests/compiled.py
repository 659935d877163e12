"""The march compiled once for a whole run, in a cache of the checkout; `python -m tests.compiled` does it ahead."""

from __future__ import annotations

import os
from pathlib import Path

CACHE = Path(__file__).parent.parent / ".pytest_cache" / "user"
"""Compiled kernels outlive the run; everything else of the user's goes to a fresh folder for each test."""


def settle() -> None:
    """Let this process and those it begins keep compiled kernels in the checkout."""
    os.environ["XDG_CACHE_HOME"] = str(CACHE)


def main() -> None:
    """Compile or load all that is ever compiled: the march, and the loop over variants around it."""
    settle()
    from designer.make import many

    many.warm_up()


if __name__ == "__main__":
    main()
