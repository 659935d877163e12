"""Two makes laid beside each other by what their stages do, even where one has more stages than the other.

Sequence alignment (Needleman & Wunsch 1970) on roles: a stacked make and a washed one meet at the cut, the cook, the
draining and the press, and each stands alone where it does something the other does not.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from designer.recipe.stages.stage import Stage

ROLES: dict[str, str] = {
    "heat": "bring to temperature",
    "cool": "bring to temperature",
    "ripen": "ripen",
    "set": "set",
    "lactic_set": "set",
    "acid_heat": "set",
    "cut": "cut",
    "rest": "heal",
    "stir": "stir and cook",
    "cook": "stir and cook",
    "wash": "wash",
    "settle": "settle",
    "drain": "drain",
    "ladle": "fill",
    "hang": "drain",
    "stack": "stack",
    "mill": "mill",
    "salt": "salt",
    "scald": "scald",
    "stretch": "stretch",
    "fill": "fill",
    "press": "press",
    "turn": "stand and turn",
    "brine": "brine",
    "hold_brine": "keep in brine",
    "drying": "dry",
    "room": "age",
}
"""What a kind of stage does in a make."""
SAME_KIND, SAME_ROLE, SAME_NAME, SAME_END, ALONE = 4.0, 2.5, 0.6, 0.3, -1.0


@dataclass(frozen=True, slots=True)
class Pair:
    """One row of the alignment: a stage of each make, or of one alone."""

    left: Stage | None
    right: Stage | None

    @property
    def role(self) -> str:
        """What the row does in the make."""
        stage = self.left or self.right
        assert stage is not None
        return ROLES[stage.kind]


def likeness(left: Stage, right: Stage) -> float | None:
    """How well two stages go together; None where they do different things."""
    if ROLES[left.kind] != ROLES[right.kind]:
        return None
    score = SAME_KIND if left.kind == right.kind else SAME_ROLE
    score += SAME_NAME if left.id == right.id else 0.0
    return score + (SAME_END if left.end.by == right.end.by else 0.0)


def align(left: Sequence[Stage], right: Sequence[Stage]) -> tuple[Pair, ...]:
    """The rows of two makes, in the order of both; stages that meet nothing stand alone, those of the left first."""
    n, m = len(left), len(right)
    best = [[0.0] * (m + 1) for _ in range(n + 1)]
    for i in range(n, -1, -1):
        for j in range(m, -1, -1):
            ways = [0.0] if i == n and j == m else []
            if i < n:
                ways.append(best[i + 1][j] + ALONE)
            if j < m:
                ways.append(best[i][j + 1] + ALONE)
            if i < n and j < m:
                like = likeness(left[i], right[j])
                if like is not None:
                    ways.append(best[i + 1][j + 1] + like)
            best[i][j] = max(ways)
    out: list[Pair] = []
    i = j = 0
    while i < n or j < m:
        like = likeness(left[i], right[j]) if i < n and j < m else None
        if like is not None and best[i][j] == best[i + 1][j + 1] + like:
            out.append(Pair(left[i], right[j]))
            i, j = i + 1, j + 1
        elif i < n and best[i][j] == best[i + 1][j] + ALONE:
            out.append(Pair(left[i], None))
            i += 1
        else:
            out.append(Pair(None, right[j]))
            j += 1
    return tuple(out)
