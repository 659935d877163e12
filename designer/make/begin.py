"""What happens at once when a row of the Schedule begins: additions, the cut, salt strewn, a temperature set."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.acid import awake_at_start
from designer.make.buffer import casein_balance
from designer.make.law import law
from designer.make.rates import curd_mass, curd_ph
from designer.make.set import heat_curdled, unfolded
from designer.make.state import (
    ACID,
    ACID_IN,
    AWAKE,
    CACL2,
    CALCIUM,
    CALCIUM_CHLORIDE_KG,
    CALCIUM_KG,
    CASEIN,
    CELLS,
    COAGULANT,
    CURD,
    DRY_SALT,
    FAT,
    GEL,
    GONE,
    GRAIN,
    LACTATE,
    PHASE,
    RENNET,
    SALT,
    SALT_IN,
    WHEY,
    WHEY_PROTEIN,
    T,
)
from designer.recipe.schedule import (
    GEL_ACID_HEAT,
    GEL_LACTIC,
    GEL_NONE,
    PLACE_MILK,
    PLACE_UNDER_WHEY,
    T_HOLD,
)


@law
def begin(y: NDArray[np.float64], row: Any, p: Any) -> None:
    """What happens at once when a row begins: additions, the cut, salt strewn, a temperature set."""
    _add(y, row, p)
    in_vat = row.place == PLACE_MILK or row.place == PLACE_UNDER_WHEY
    edge = row.cut_mm
    if edge <= 0.0 and y[GRAIN] <= 0.0 and not in_vat:
        edge = 40.0  # ladled or hung uncut: lumps of a ladle's size
    if edge > 0.0:
        if y[GRAIN] <= 0.0:
            _cut(y, edge, p)
        if y[GRAIN] <= 0.0 or row.place == PLACE_UNDER_WHEY:
            y[GRAIN] = edge
    if not in_vat and row.whey_off <= 0.0:
        for i in range(PHASE):  # the little that clung to the curd when the whey was drawn
            y[GONE + i] += y[WHEY + i]
            y[WHEY + i] = 0.0
    strewn = row.salt_per_curd * curd_mass(y, p)
    y[DRY_SALT] += strewn
    if row.place == PLACE_MILK:
        y[CURD + SALT] += row.salt_per_milk
    else:
        y[DRY_SALT] += row.salt_per_milk
    y[SALT_IN] += strewn + row.salt_per_milk
    if row.t_law == T_HOLD and not np.isnan(row.t_end_c):
        y[T] = row.t_end_c


@law
def _add(y: NDArray[np.float64], row: Any, p: Any) -> None:
    """Cultures, acid, calcium chloride and coagulant into the milk, and what sets it."""
    inocula = (row.inoculum_meso, row.inoculum_strep, row.inoculum_rods)
    speeds = (p.meso_mu, p.strep_mu, p.rods_mu)
    for i in range(3):
        if inocula[i] > 0.0:
            before = y[CELLS + i]
            awake = awake_at_start(row.lag_h, speeds[i])
            y[CELLS + i] = before + inocula[i]
            y[AWAKE + i] = (before * y[AWAKE + i] + inocula[i] * awake) / y[CELLS + i]
    added = row.inoculum_lactate + row.acid_mol_kg
    y[CURD + LACTATE] += row.inoculum_lactate
    if row.cacl2_g_kg > 0.0:
        mol = row.cacl2_g_kg / 1000.0 / CALCIUM_CHLORIDE_KG
        y[CURD + CALCIUM] += mol * CALCIUM_KG
        y[CACL2] += row.cacl2_g_kg
        added += p.calcium_h * mol
    y[CURD + ACID] += added
    y[ACID_IN] += added
    y[RENNET] += row.rennet_imcu_l
    if row.rennet_imcu_l > 0.0:
        y[COAGULANT] = row.coagulant
    if row.gel != GEL_NONE:
        y[GEL] = row.gel
        if row.gel == GEL_ACID_HEAT:  # heated whey protein joins the curd; both are protein from here on
            joined = p.heat_curd_protein * max(p.heat_denatured, unfolded(y[T], p)) * y[CURD + WHEY_PROTEIN]
            y[CURD + WHEY_PROTEIN] -= joined
            y[CURD + CASEIN] += joined


@law
def _cut(y: NDArray[np.float64], edge: float, p: Any) -> None:
    """What the first cut, to an edge [mm], loses to the whey: fines, their acid, and fat."""
    ph = curd_ph(y, p, p.ph_native)
    kept = p.casein_kept
    if y[GEL] == GEL_LACTIC:
        kept = p.casein_kept_acid
    caught = 1.0
    if y[GEL] == GEL_ACID_HEAT:
        caught = heat_curdled(ph, y[T], p)
    kept *= caught
    fines = (1.0 - kept) * y[CURD + CASEIN]
    sour = casein_balance(ph, fines, p)
    y[CURD + ACID] -= sour
    y[WHEY + ACID] += sour
    fat = p.fat_lost_kg
    if y[GEL] != GEL_LACTIC:  # soft acid gel tears in the ladle and on the cloth, however large its pieces
        fat *= (p.syneresis_size_ref_mm / edge) ** p.fat_lost_size
    fat *= (y[CURD + FAT] / 0.038) ** p.fat_lost_fat
    fat = fat * y[CURD + FAT] / max(fat + y[CURD + FAT], 1e-12)  # skim milk may hold none
    fat += (1.0 - caught) * (y[CURD + FAT] - fat)
    y[CURD + CASEIN] -= fines
    y[WHEY + CASEIN] += fines
    y[CURD + FAT] -= fat
    y[WHEY + FAT] += fat
