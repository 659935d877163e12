"""What each of several differences is worth: averaged substitution, whose parts add up to the whole.

Between two recipes some settings differ. Changing one of them is worth more or less depending on which others have been
changed before; the part of each is its mean over orders (Shapley 1953), every order together with its reverse.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Mapping, Sequence
from itertools import permutations
from typing import TypeVar

R = TypeVar("R")
Change = Callable[[R], R]
ALL_ORDERS_UP_TO = 3
ORDERS = 4
"""Orders drawn (and as many reversed) where not all are taken."""


def orders(count: int, drawn: int = ORDERS) -> list[tuple[int, ...]]:
    """Orders in which `count` changes are made: all of them for a few, else fixed random ones with their reverse."""
    if count <= ALL_ORDERS_UP_TO:
        return list(permutations(range(count)))
    dice = random.Random(count)
    out: list[tuple[int, ...]] = []
    for _ in range(drawn):
        order = list(range(count))
        dice.shuffle(order)
        out += [tuple(order), tuple(reversed(order))]
    return out


def most(count: int, drawn: int = ORDERS) -> int:
    """How often `parts` asks its measure at the most for so many changes: to say how far a long work is."""
    return len({frozenset(order[:upto]) for order in orders(count, drawn) for upto in range(count + 1)})


def parts(
    base: R,
    changes: Sequence[Change[R]],
    measure: Callable[[R], Mapping[str, float]],
    every: Sequence[Sequence[int]] | None = None,
) -> tuple[dict[str, float], ...]:
    """Part of each change in every measured figure, in the order of `changes`; the parts of a figure add up exactly.

    `measure` is asked once for each set of changes made; a figure that is missing anywhere is left out. A change that
    can't be made raises what it raises. `every` are the orders, by default those of `orders`.
    """
    seen: dict[frozenset[int], Mapping[str, float]] = {frozenset(): measure(base)}

    def figures(order: Sequence[int], upto: int) -> Mapping[str, float]:
        made = frozenset(order[:upto])
        if made not in seen:
            changed = base
            for index in sorted(made):
                changed = changes[index](changed)
            seen[made] = measure(changed)
        return seen[made]

    every = orders(len(changes)) if every is None else every
    steps = [[figures(order, upto) for upto in range(len(changes) + 1)] for order in every]
    keys = set.intersection(*(set(one) for one in seen.values()))
    out: tuple[dict[str, float], ...] = tuple(dict.fromkeys(keys, 0.0) for _ in changes)
    for order, path in zip(every, steps, strict=True):
        for place, index in enumerate(order):
            for key in keys:
                out[index][key] += (path[place + 1][key] - path[place][key]) / len(every)
    return out
