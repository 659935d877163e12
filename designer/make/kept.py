"""What a march keeps between two looks at the rates: what temperature or the size cut decide alone, and the last pH.

Most stages hold their temperature, so its laws are worked out once and kept while it stands; a pH is looked for where
it was last. A figure kept is the figure worked out anew: nothing here changes a result, only how often it is computed.
One array `kept` (KEPT,) for each zone, of one make: its parameters never change.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.acid import ctmi_rosso_1993, death_per_min
from designer.make.law import law
from designer.make.syneresis import contraction_kpa, formed_share, hot_holds, size_share, warm_share
from designer.recipe.schedule import GEL_LACTIC

AT_C, AT_MM, OF_GEL = 0, 1, 2
GROWTH, DEATH = 3, 6  # [1/min] of the three populations
DRAINS, HOLDS, SIZED, FORMED = 9, 10, 11, 12  # [1]
DRAWS = 13  # [kPa]
PH_CURD, PH_WHEY = 14, 15
KEPT = 16


@law
def nothing_kept(kept: NDArray[np.float64], ph: float) -> None:
    """Forget all of it, kept (ZONES, KEPT); a pH is looked for from `ph` on."""
    for zone in range(kept.shape[0]):
        for i in range(PH_CURD):
            kept[zone, i] = np.nan
        kept[zone, PH_CURD] = ph
        kept[zone, PH_WHEY] = ph


@law
def keep(temp_c: float, edge_mm: float, gel: int, p: Any, kept: NDArray[np.float64]) -> None:
    """Bring what is kept to a temperature, an edge as cut (0: not cut) and a gel."""
    if temp_c != kept[AT_C] or gel != kept[OF_GEL]:
        kept[AT_C] = temp_c
        kept[GROWTH] = p.meso_mu * ctmi_rosso_1993(temp_c, p.meso_t_min, p.meso_t_opt, p.meso_t_max)
        kept[GROWTH + 1] = p.strep_mu * ctmi_rosso_1993(temp_c, p.strep_t_min, p.strep_t_opt, p.strep_t_max)
        kept[GROWTH + 2] = p.rods_mu * ctmi_rosso_1993(temp_c, p.rods_t_min, p.rods_t_opt, p.rods_t_max)
        for i in range(3):
            kept[GROWTH + i] *= p.activity / 60.0
        lethal = death_per_min(temp_c, 1.0, p.death_t_ref_c, p.death_z_c)
        kept[DEATH] = lethal / (p.meso_d_ref_min + lethal / p.death_limit)
        kept[DEATH + 1] = lethal / (p.strep_d_ref_min + lethal / p.death_limit)
        kept[DEATH + 2] = lethal / (p.rods_d_ref_min + lethal / p.death_limit)
        kept[DRAINS] = warm_share(temp_c, gel, p)
        kept[HOLDS] = hot_holds(temp_c, p)
        kept[DRAWS] = 0.0
        if gel == GEL_LACTIC:
            kept[DRAWS] = contraction_kpa(temp_c, p)
    if edge_mm != kept[AT_MM] or gel != kept[OF_GEL]:
        kept[AT_MM] = edge_mm
        kept[SIZED] = size_share(edge_mm, gel, p)
        kept[FORMED] = formed_share(kept[SIZED], gel, p)
    kept[OF_GEL] = gel
