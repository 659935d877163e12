"""Size of the cut by its common name, and the surface it makes.

Names differ from country to country, so a name never stands without its millimetres (common practice; Hill, University
of Guelph, prints 3/8 in for Cheddar).
"""

from __future__ import annotations

NAMES: tuple[tuple[str, float, float], ...] = (
    ("rice", 2.0, 3.0),
    ("wheat", 3.0, 5.0),
    ("hemp", 5.0, 7.0),
    ("pea", 7.0, 9.0),
    ("hazelnut", 9.0, 14.0),
    ("cherry", 14.0, 20.0),
    ("walnut", 20.0, 35.0),
)
"""Name, from, to [mm edge]; rice 2, wheat 4, hemp 6, pea 8, hazelnut 10, walnut 25 where one figure is said."""
ONE_FIGURE_MM = {"rice": 2.0, "wheat": 4.0, "hemp": 6.0, "pea": 8.0, "hazelnut": 10.0, "cherry": 16.0, "walnut": 25.0}


def surface_cm2_per_l(edge_mm: float) -> float:
    """Surface of a litre of curd cut into cubes of that edge [cm²/L]: 6 V / edge. Halving the edge doubles it."""
    return 6.0 * 1000.0 / (edge_mm / 10.0)


def pieces_per_l(edge_mm: float) -> float:
    """Cubes of that edge in a litre."""
    return (100.0 / edge_mm) ** 3


def name_of(edge_mm: float) -> str:
    """Common name of a size, "" where there is none."""
    return next((name for name, low, high in NAMES if low <= edge_mm < high), "")


def edge_of(name: str) -> float:
    """Edge [mm] of a common name; KeyError for a name that has none."""
    return ONE_FIGURE_MM[name.strip().lower()]
