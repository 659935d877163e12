"""`rates`: all physics of the march in one right-hand side, from the state and one Schedule row.

SciPy integrates the same function in the cross-check. Every rate vanishes smoothly with the stock it draws from, so
that sums over curd, whey and run-off hold to rounding.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from designer.make.acid import cpm_rosso_1995, salt_share
from designer.make.buffer import LACTIC_H, on_curve, ph_of, serum_balance
from designer.make.heat import conducts_per_min, warm
from designer.make.kept import DEATH, DRAINS, DRAWS, FORMED, GROWTH, HOLDS, PH_CURD, PH_WHEY, SIZED, keep
from designer.make.law import law, power
from designer.make.set import firmness_acid, firmness_scott_blair_1959, floc_minutes_foltmann_1959
from designer.make.state import (
    ACID,
    ASH,
    AWAKE,
    CACL2,
    CALCIUM,
    CASEIN,
    CELLS,
    CLOT,
    COAGULANT,
    COLLOIDAL,
    CORE,
    CURD,
    DRY_SALT,
    EVAPORATED,
    FAT,
    FILM,
    GALACTOSE,
    GALACTOSE_KG,
    GEL,
    GONE,
    GRAIN,
    HEXOSE,
    HEXOSE_KG,
    LACTATE,
    LACTATE_KG,
    LEAST_WATER,
    OUTER,
    PHASE,
    RENNET,
    SALT,
    SALT_IN,
    SERUM,
    SIZE,
    SKIN,
    THETA,
    WATER,
    WATER_IN,
    WATER_KG,
    WHEY,
    WHEY_PROTEIN,
    ZONES,
    T,
)
from designer.make.syneresis import exchange_per_min, film_growth_per_min, skin_growth_per_min, water_loss
from designer.make.uptake import brine_uptake, salt_diffusivity_cm2_d, surface_salt
from designer.recipe.schedule import (
    GEL_LACTIC,
    GEL_NONE,
    PLACE_MILK,
    PLACE_MOULD,
    PLACE_PRESS,
    PLACE_UNDER_WHEY,
    T_FOLLOW,
    T_RAMP,
    WHEY_OFF_MOST,
)

NONE_LEFT = 1e-12


@law
def phase_kg(y: NDArray[np.float64], phase: int) -> float:
    """Mass of the components of a phase [kg per kg milk]."""
    return (
        y[phase + WATER] + y[phase + FAT] + y[phase + CASEIN] + y[phase + WHEY_PROTEIN] + y[phase + ASH]
        + y[phase + SALT] + HEXOSE_KG * y[phase + HEXOSE] + GALACTOSE_KG * y[phase + GALACTOSE]
        + LACTATE_KG * y[phase + LACTATE]
    )  # fmt: skip


@law
def curd_mass(y: NDArray[np.float64], p: Any) -> float:
    """Mass of the curd (before cutting: of the milk) [kg per kg milk]."""
    return phase_kg(y, CURD) + p.ash_per_calcium * y[COLLOIDAL]


@law
def curd_ph(y: NDArray[np.float64], p: Any, near: float) -> float:
    """pH of the curd, from its acid balance and the buffers it holds; looked for from the pH `near` on."""
    return ph_of(y[CURD + ACID], y[CURD + CASEIN], y[CURD + SERUM], y[CURD + LACTATE], p, near)


@law
def whey_ph(y: NDArray[np.float64], p: Any, ph_curd: float, near: float) -> float:
    """pH of the free whey, looked for from the pH `near` on; where there is none yet, that of the curd."""
    if y[WHEY + WATER] < LEAST_WATER:
        return ph_curd
    return ph_of(y[WHEY + ACID], y[WHEY + CASEIN] * 0.3, y[WHEY + SERUM], y[WHEY + LACTATE], p, near)


@law
def firmness(y: NDArray[np.float64], ph: float, p: Any) -> float:
    """Firmness of the gel [Pa]; zero in milk. Rennet and acid add up in a mixed gel."""
    if y[GEL] == GEL_NONE:
        return 0.0
    return firmness_scott_blair_1959(y[CLOT], p.casein_milk, int(y[COAGULANT]), p) + firmness_acid(
        ph, y[T], p.casein_milk, p
    )


@law
def _ferment(y: NDArray[np.float64], p: Any, ph: float, kept: NDArray[np.float64], dy: NDArray[np.float64]) -> None:
    """Growth, rest and death of three populations in the curd water, and what they turn into lactate."""
    water = y[CURD + WATER]
    shrunk = p.water_milk / water
    salt_pct = 100.0 * y[CURD + SALT] / water
    hexose = max(0.0, y[CURD + HEXOSE]) / water
    galactose = max(0.0, y[CURD + GALACTOSE]) / water
    undissociated = y[CURD + LACTATE] * on_curve(LACTIC_H, ph) / water
    ceiling = p.crowding * power(shrunk, p.crowding_curd)
    for i in range(3):
        if y[CELLS + i] <= 0.0:
            continue
        if i == 0:
            acid_share = cpm_rosso_1995(ph, p.meso_ph_min, p.meso_ph_opt, p.meso_ph_max)
            salty, sour = p.meso_salt_max, p.acid_stop
        elif i == 1:
            acid_share = cpm_rosso_1995(ph, p.strep_ph_min, p.strep_ph_opt, p.strep_ph_max)
            salty, sour = p.strep_salt_max, p.acid_stop
        else:
            acid_share = cpm_rosso_1995(ph, p.rods_ph_min, p.rods_ph_opt, p.rods_ph_max)
            salty, sour = p.rods_salt_max, p.rods_acid_stop
        warm = kept[GROWTH + i]
        # Each population has its own ceiling: rods go on after cocci have stopped (the two peaks of a Swiss press).
        room = max(0.0, 1.0 - y[CELLS + i] * shrunk / ceiling)
        stopped = 1.0 / (1.0 + (undissociated / sour) ** 4)
        working = warm * acid_share * salt_share(salt_pct, salty) * stopped * y[AWAKE + i]
        dy[AWAKE + i] += warm * y[AWAKE + i] * (1.0 - y[AWAKE + i])
        fed = hexose / (hexose + p.hexose_half)
        dy[CELLS + i] += y[CELLS + i] * (working * room * fed - kept[DEATH + i])
        lactate = p.acid_yield * working * y[CELLS + i] * (room + p.acid_resting)
        if i == 1:  # cocci burn the glucose half of lactose and leave galactose
            used = 0.5 * lactate * fed
            dy[CURD + HEXOSE] -= 2.0 * used
            dy[CURD + GALACTOSE] += used
            dy[CURD + LACTATE] += 2.0 * used
            dy[CURD + ACID] += 2.0 * used
            dy[CURD + WATER] -= WATER_KG * used
        else:
            preferred = 0.0
            if i == 2:
                preferred = p.rods_galactose * galactose / (galactose + hexose + p.hexose_half)
            from_lactose = 0.5 * lactate * fed * (1.0 - preferred)
            from_galactose = 0.5 * lactate * preferred
            dy[CURD + HEXOSE] -= from_lactose
            dy[CURD + GALACTOSE] -= from_galactose
            dy[CURD + LACTATE] += 2.0 * (from_lactose + from_galactose)
            dy[CURD + ACID] += 2.0 * (from_lactose + from_galactose)
            dy[CURD + WATER] -= 0.5 * WATER_KG * from_lactose


@law
def _leave(y: NDArray[np.float64], p: Any, ph: float, water: float, to: int, dy: NDArray[np.float64]) -> None:
    """Curd serum leaves at `water` [kg/min] for another phase, with what is dissolved in its solvent water."""
    share = water / (y[CURD + WATER] - p.nonsolvent * y[CURD + CASEIN])
    dy[CURD + WATER] -= water
    dy[to + WATER] += water
    for i in (HEXOSE, GALACTOSE, LACTATE, SERUM, ASH, CALCIUM, SALT):
        dy[CURD + i] -= share * y[CURD + i]
        dy[to + i] += share * y[CURD + i]
    free = share * (y[CURD + WHEY_PROTEIN] - p.bound_whey_protein)
    dy[CURD + WHEY_PROTEIN] -= free
    dy[to + WHEY_PROTEIN] += free
    acid = share * serum_balance(ph, y[CURD + SERUM], y[CURD + LACTATE], p)
    dy[CURD + ACID] -= acid
    dy[to + ACID] += acid


@law
def _even_out(
    y: NDArray[np.float64], p: Any, ph: float, ph_w: float, solvent: float, edge_now: float, dy: NDArray[np.float64]
) -> None:
    """Curd and the whey around it even out what is dissolved (this is what washing does)."""
    free = y[WHEY + WATER]
    k = exchange_per_min(edge_now, p) / (solvent + free)
    for i in (HEXOSE, GALACTOSE, LACTATE, SERUM, ASH, CALCIUM, SALT):
        flow = k * (y[CURD + i] * free - y[WHEY + i] * solvent)
        dy[CURD + i] -= flow
        dy[WHEY + i] += flow
    in_curd = serum_balance(ph, y[CURD + SERUM], y[CURD + LACTATE], p)
    in_whey = serum_balance(ph_w, y[WHEY + SERUM], y[WHEY + LACTATE], p)
    flow = k * (in_curd * free - in_whey * solvent)
    dy[CURD + ACID] -= flow
    dy[WHEY + ACID] += flow


@law
def _stretch(y: NDArray[np.float64], p: Any, ph: float, r: float, dy: NDArray[np.float64]) -> None:
    """Plastic curd worked in hot water: fat runs off, and water goes in or out toward what curd of its heat holds."""
    plastic = 1.0 / (1.0 + np.exp((p.stretch_plastic_c - y[T]) / 1.5))
    hotter = y[T] - p.stretch_t_ref_c
    fat = p.fat_lost_stretch / p.stretch_min * np.exp(p.stretch_fat_warm * hotter) * plastic * y[CURD + FAT]
    dy[CURD + FAT] -= fat
    dy[GONE + FAT] += fat
    water = p.stretch_water_per_min * plastic * y[CURD + CASEIN]
    water *= r - p.stretch_r_holds * np.exp(-p.stretch_r_warm * hotter)
    if water >= 0.0:
        _leave(y, p, ph, water, GONE, dy)
    else:
        dy[CURD + WATER] -= water
        dy[WATER_IN] -= water


@law
def _salt(y: NDArray[np.float64], row: Any, p: Any, ph: float, r: float, mass: float, dy: NDArray[np.float64]) -> None:
    """Dry salt dissolving into the curd, and brine."""
    spare = max(0.0, r - 0.9)
    willing = spare / (spare + 0.2)
    if y[DRY_SALT] > 0.0:
        # No more than the water can dissolve; the sharp blend leaves every usual dose as it is.
        room = max(p.salt_saturated * y[CURD + WATER] - y[CURD + SALT], 1e-12)
        absorbed = p.salt_absorb_per_min * y[DRY_SALT] / np.sqrt(np.sqrt(1.0 + (y[DRY_SALT] / room) ** 4))
        squeezed = 0.0
        if row.place == PLACE_PRESS:
            squeezed = 0.02 * y[DRY_SALT] * row.load_kpa / (row.load_kpa + 20.0)
        dy[DRY_SALT] -= absorbed + squeezed
        dy[CURD + SALT] += p.salt_retained * absorbed
        dy[GONE + SALT] += (1.0 - p.salt_retained) * absorbed + squeezed
        _leave(y, p, ph, p.salt_water_out * p.salt_retained * absorbed * willing, GONE, dy)
    if row.brine_pct > 0.0 and row.stretch > 0.0:  # kneaded in: no depth to diffuse through
        salt = p.stretch_salt_per_min * (y[CURD + WATER] * surface_salt(row.brine_pct, p) - y[CURD + SALT])
        dy[CURD + SALT] += salt
        dy[SALT_IN] += max(0.0, salt)
        dy[GONE + SALT] -= min(0.0, salt)
    elif row.brine_pct > 0.0:
        d = salt_diffusivity_cm2_d(100.0 * y[CURD + WATER] / mass, y[T], p) / 1440.0
        dy[THETA] += d
        theta = y[THETA] + p.brine_film_cm**2
        per_water = y[CURD + SALT] / y[CURD + WATER]
        salt = brine_uptake(
            per_water, surface_salt(row.brine_pct, p), theta, row.height_mm / 10.0, row.radius_mm / 10.0, p
        )
        salt *= y[CURD + WATER] * d
        dy[CURD + SALT] += salt
        if salt >= 0.0:
            dy[SALT_IN] += salt
            out = p.salt_water_out * row.brine_pct / p.brine_water_ref_pct * salt * willing
            dy[CURD + WATER] -= out
            dy[GONE + WATER] += out
        else:
            dy[GONE + SALT] -= salt
            dy[CURD + WATER] -= p.brine_water_in * salt
            dy[WATER_IN] -= p.brine_water_in * salt


@law
def rates(y: NDArray[np.float64], row: Any, p: Any, kept: NDArray[np.float64], dy: NDArray[np.float64]) -> None:
    """Fill dy/dt [per min] for the state y under one Schedule row and parameters p (constants and the milk).

    kept (KEPT,) spares working out again what stands as it was; it changes no result (see `make.kept`).
    """
    for i in range(SIZE):
        dy[i] = 0.0
    keep(y[T], y[GRAIN], int(y[GEL]), p, kept)
    ph = curd_ph(y, p, kept[PH_CURD])
    kept[PH_CURD] = ph
    casein = y[CURD + CASEIN]
    r = y[CURD + WATER] / casein
    mass = curd_mass(y, p)
    to = GONE
    if row.place == PLACE_UNDER_WHEY or row.place == PLACE_MILK:
        to = WHEY
    warm(y, row, p, mass, dy)
    _ferment(y, p, ph, kept, dy)
    # How far rennet has come is asked for as long as curd lies in its whey; of an acid gel, to the end.
    if y[GEL] != GEL_NONE and y[RENNET] > 0.0 and (to == WHEY or y[GEL] == GEL_LACTIC):
        dy[CLOT] += 1.0 / floc_minutes_foltmann_1959(y[RENNET], y[T], ph, y[CACL2], int(y[COAGULANT]), p)
    # Calcium leaves the micelle as pH falls, the less the less water there is.
    loose = r / ((1.0 + np.exp((ph - p.calcium_ph_half) / p.calcium_ph_width)) * (r + p.calcium_water_half))
    freed = p.calcium_dissolve_per_min * (y[COLLOIDAL] - p.colloidal_per_casein * casein * (1.0 - loose))
    if freed < 0.0:
        # Nothing is bound again from water that holds none of it, or no salts to go with it.
        dissolved = max(min(y[CURD + CALCIUM], y[CURD + ASH] / p.ash_per_calcium), 0.0)
        freed *= dissolved / (dissolved + 1e-5)
    dy[COLLOIDAL] -= freed
    dy[CURD + CALCIUM] += freed
    dy[CURD + ASH] += p.ash_per_calcium * freed
    if row.stretch > 0.0:
        _stretch(y, p, ph, r, dy)
    elif y[GRAIN] > 0.0:
        closed = 1.0 - (1.0 - p.skin_share * y[SKIN]) * (1.0 - p.film_share * y[FILM])
        lost = casein * water_loss(
            r,
            int(y[GEL]),
            y[T],
            kept[DRAINS],
            kept[HOLDS],
            kept[DRAWS],
            kept[FORMED] if row.place >= PLACE_MOULD else kept[SIZED],
            ph,
            y[CURD + FAT] / casein,
            row.place,
            row.disturbed,
            row.load_kpa,
            closed,
            row.height_mm,
            y[CLOT],
            row.follow_c,
            p,
        )
        _leave(y, p, ph, lost, to, dy)
        dy[SKIN] += skin_growth_per_min(row.load_kpa, row.place, p) * (1.0 - y[SKIN])
        heating = 0.0
        if row.t_law == T_RAMP:
            heating = row.slope_c_min
        dy[FILM] += film_growth_per_min(heating, r, p) * (1.0 - y[FILM])
        if to == WHEY and y[WHEY + WATER] > NONE_LEFT:
            solvent = y[CURD + WATER] - p.nonsolvent * casein
            kept[PH_WHEY] = whey_ph(y, p, ph, kept[PH_WHEY])
            _even_out(y, p, ph, kept[PH_WHEY], solvent, y[GRAIN] * power(mass, 1.0 / 3.0), dy)
    _salt(y, row, p, ph, r, mass, dy)
    if row.water_on > 0.0:
        dy[WHEY + WATER] += row.water_on / row.minutes
        dy[WATER_IN] += row.water_on / row.minutes
    if row.whey_off > 0.0:
        run_off = -np.log(1.0 - min(row.whey_off, WHEY_OFF_MOST)) / row.minutes
        for i in range(PHASE):
            flow = run_off * y[WHEY + i]
            dy[WHEY + i] -= flow
            dy[GONE + i] += flow
    if row.evaporation > 0.0:
        area = 2000.0 * (1.0 / row.height_mm + 1.0 / row.radius_mm) / p.cheese_density
        vapour = p.drying_per_min * row.evaporation * area * mass * y[CURD + WATER] / (y[CURD + WATER] + casein)
        dy[CURD + WATER] -= vapour
        dy[EVAPORATED] += vapour


@law
def zone_rates(
    y: NDArray[np.float64], zones: int, row: Any, p: Any, kept: NDArray[np.float64], dy: NDArray[np.float64]
) -> None:
    """Rates of all zones, y and dy (ZONES, SIZE), kept (ZONES, KEPT); a second zone adds conduction.

    Heat crosses half of the body's depth between the halves and a quarter of it to the surface; the depth is volume
    over surface times a shape factor. Held to the exact series of a block with a fixed surface in the tests.
    """
    for zone in range(zones):
        rates(y[zone], row, p, kept[zone], dy[zone])
    if zones < ZONES or row.t_law != T_FOLLOW:
        return
    inward, outward = conducts_per_min(row, p)
    flow = inward * (y[OUTER, T] - y[CORE, T])
    dy[CORE, T] += flow
    dy[OUTER, T] += outward * (row.follow_c - y[OUTER, T]) - flow
