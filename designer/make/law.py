"""`law` marks a typed function that runs as plain Python and, unchanged, inside the compiled march.

Division follows IEEE (no hidden branch a division), and products may be fused and reordered; nothing may assume away
nan, which a Schedule uses for "not set". The twin and the compiled march agree to about 1e-12.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

from numba.extending import register_jitable

FAST = {"contract", "arcp", "reassoc", "nsz"}


F = TypeVar("F", bound=Callable[..., Any])


def law(function: F) -> F:
    """The function itself, known to the compiler."""
    return register_jitable(error_model="numpy", fastmath=FAST)(function)
