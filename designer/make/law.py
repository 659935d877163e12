"""`law` marks a typed function that runs as plain Python and, unchanged, inside the compiled march.

Division follows IEEE (no hidden branch a division), and products may be fused and reordered; nothing may assume away
nan, which a Schedule uses for "not set". Laws are put together into one body: a tenth of the march went by in calls
that hand over arrays. The twin and the compiled march agree to about 1e-12. The compiler is loaded only when something
is compiled: the window draws its first picture before that.
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Any, TypeVar

import numpy as np

GAS, ZERO_C = 8.314, 273.15
"""Gas constant [J/mol/K], and 0 °C [K]."""
FAST = {"contract", "arcp", "reassoc", "nsz"}
F = TypeVar("F", bound=Callable[..., Any])
_laws: list[Callable[..., Any]] = []
_telling = threading.Lock()


def law(function: F) -> F:
    """The function itself, to be made known to the compiler."""
    _laws.append(function)
    return function


@law
def power(base: float, exponent: float) -> float:
    """base ** exponent of a positive base, in half the time the general power takes."""
    return np.exp(exponent * np.log(base))


@law
def arrhenius(temp_c: float, ea: float, ref_c: float) -> float:
    """How much faster what has an activation energy ea [J/mol] goes at a temperature than at ref_c [1]."""
    return np.exp(ea / GAS * (1.0 / (ref_c + ZERO_C) - 1.0 / (temp_c + ZERO_C)))


def tell_compiler() -> None:
    """Make every law known to the compiler, once."""
    from numba.extending import register_jitable

    with _telling:
        while _laws:
            register_jitable(error_model="numpy", fastmath=FAST, forceinline=True)(_laws.pop())


def machine_code(function: Callable[..., Any]) -> Callable[..., Any]:
    """A function made of laws as machine code, kept in the cache folder of the sources it is made of."""
    from numba import njit

    tell_compiler()
    made: Callable[..., Any] = njit(cache=True, nogil=True, error_model="numpy", fastmath=FAST)(function)
    return made
