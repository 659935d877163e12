"""Whey loss: how fast curd gives up whey, from the vat to the press, and how washing and stirring act on it.

dr/dt = -k (r - r_eq) / (1 + (r_s/r)^q), r in kg water per kg casein: nearly first order early (Marshall 1982), slowing
as the curd closes. Valid 20-55 °C, cut edges 2-30 mm. Acid gels are pressed out like a wet sponge: whey goes as fast
as what squeezes them drives it through a network that closes; valid at pH 4.4-4.8, 5-56 °C and 0.1-10 kPa.
Heat-and-acid curd goes at one rate toward an end point set by what squeezes it.
"""

from __future__ import annotations

from typing import Any

import numpy as np

from designer.make.law import arrhenius, law, power
from designer.recipe.schedule import (
    GEL_ACID_HEAT,
    GEL_LACTIC,
    PLACE_BRINE,
    PLACE_DRAINED,
    PLACE_MILK,
    PLACE_MOULD,
    PLACE_PRESS,
    PLACE_UNDER_WHEY,
)


@law
def temperature_share(temp_c: float, ea: float, ref_c: float, cap_c: float, gate_c: float) -> float:
    """Arrhenius factor against ref_c [1], level above cap_c (smoothly), fading out below gate_c [°C]."""
    capped = cap_c - np.log1p(np.exp(-(temp_c - cap_c)))
    return arrhenius(capped, ea, ref_c) / (1.0 + np.exp(-(temp_c - gate_c) / 1.5))


@law
def warm_share(temp_c: float, gel: int, p: Any) -> float:
    """What a temperature does to the drainage of a gel of a kind [1]."""
    if gel == GEL_LACTIC:
        return arrhenius(temp_c, p.acid_syneresis_ea, 22.0)
    if gel == GEL_ACID_HEAT:
        return temperature_share(temp_c, p.heat_curd_ea, 60.0, 95.0, 6.0)
    return temperature_share(temp_c, p.syneresis_ea, p.syneresis_t_ref_c, p.syneresis_t_cap_c, p.syneresis_t_gate_c)


@law
def size_share(edge_mm: float, gel: int, p: Any) -> float:
    """What the size of the pieces as cut does to the drainage of a gel of a kind [1]; 1 for acid-and-heat curd."""
    if edge_mm <= 0.0 or gel == GEL_ACID_HEAT:
        return 1.0
    if gel == GEL_LACTIC:
        return (p.acid_gel_size_ref_mm / edge_mm) ** p.acid_gel_size
    return (p.syneresis_size_ref_mm / edge_mm) ** p.syneresis_size


@law
def formed_share(sized: float, gel: int, p: Any) -> float:
    """What is left of a `size_share` once the pieces have joined in a form [1]: rennet curd drains as one body there.

    Pieces fuse within half an hour of contact (Lodaite et al. 2002); few channels between them stay open for longer.
    """
    if gel in (GEL_LACTIC, GEL_ACID_HEAT):
        return sized
    return sized**p.syneresis_size_formed


@law
def pressed(load_kpa: float, p: Any) -> float:
    """Handling factor under a load [1]: own weight at 0 kPa, levelling off: moisture is not linear in it."""
    return p.handling_mould + (p.handling_press - p.handling_mould) * load_kpa / (load_kpa + p.press_half_kpa) * (
        1.0 + p.press_half_kpa / 60.0
    )


@law
def handling(place: int, disturbed: float, load_kpa: float, p: Any) -> float:
    """Handling factor [1] by place: still or stirred under whey, drained bed, moulds, press."""
    if place == PLACE_MILK:
        return 0.0
    if place == PLACE_UNDER_WHEY:
        gentle = min(disturbed, 1.0)
        return p.handling_still + (1.0 - p.handling_still) * gentle + p.handling_brisk * max(0.0, disturbed - 1.0)
    if place == PLACE_DRAINED:
        return p.handling_bed + p.handling_worked * disturbed
    if place == PLACE_PRESS:
        return pressed(load_kpa, p)
    return p.handling_mould


@law
def heated_further(p: Any) -> float:
    """Share of whey protein denatured beyond pasteurising [1]; of less no difference to the curd is known."""
    return max(0.0, p.heat_denatured - p.syneresis_heat_ref)


@law
def rennet_curd_per_min(warm: float, ph: float, sized: float, fat_per_casein: float, handled: float, p: Any) -> float:
    """Rate constant k of the whey law [1/min] for rennet curd, with its shares by temperature and by the size cut."""
    k = p.syneresis_k * sized * handled * warm
    k *= 1.0 - p.syneresis_heat * heated_further(p)
    # The hyperbolic tangent, levelling off at the span on both sides.
    sourer = p.syneresis_ph_span * (1.0 - 2.0 / (1.0 + np.exp((6.5 - ph) * 2.0 / p.syneresis_ph_span)))
    return k * np.exp(p.syneresis_ph * sourer - p.syneresis_fat * (fat_per_casein - p.syneresis_fat_ref))


@law
def hot_holds(temp_c: float, p: Any) -> float:
    """How much more water a rennet curd keeps in the end while hot [1].

    Hot curd closes over what it holds (above 50 °C a skin blocks the outflow, Huber et al. 2001).
    """
    return np.exp(p.syneresis_r_eq_warm * (temp_c - p.syneresis_t_ref_c))


@law
def end_point(ph: float, hot: float, p: Any) -> float:
    """Water a rennet curd keeps in the end [kg per kg casein]: more once it has turned to acid curd, more while hot.

    Whey protein that heat has bound to the casein holds as much as casein does.
    """
    acid = 1.0 / (1.0 + np.exp((ph - p.syneresis_acid_ph) / p.syneresis_acid_width))
    bound = heated_further(p) * p.whey_share / max(1.0 - p.whey_share, 0.5)
    return (p.syneresis_r_eq + (p.syneresis_r_eq_acid - p.syneresis_r_eq) * acid) * hot * (1.0 + bound)


@law
def scalded_share(place: int, temp_c: float, bath_c: float, p: Any) -> float:
    """How far heat draws the network of a rennet curd together [1]: none at a cook's heat, all in a scald's.

    Only whole pieces in a hot bath: `temp_c` is the piece's, `bath_c` that of what it lies in.
    """
    if place != PLACE_BRINE:
        return 0.0
    return 1.0 / (1.0 + np.exp((p.scald_sets_c - min(temp_c, bath_c)) / 2.5))


@law
def stress_kpa(place: int, height_mm: float, load_kpa: float, p: Any) -> float:
    """What squeezes acid curd from outside [kPa]: afloat, hung or on a cloth, its own weight in a form, any load."""
    if place == PLACE_UNDER_WHEY:
        return p.acid_gel_afloat_kpa + load_kpa
    if place == PLACE_DRAINED:
        return p.acid_gel_hung_kpa + load_kpa
    return p.acid_gel_form_kpa * height_mm / 100.0 + load_kpa


@law
def contraction_kpa(temp_c: float, p: Any) -> float:
    """What draws an acid gel together from inside [kPa]: little when cool, much in a cooked cottage curd."""
    return p.acid_gel_draws_kpa * np.exp((temp_c - 50.0) / p.acid_gel_draws_c)


@law
def acid_gel_end_point(ph: float, kpa: float, p: Any) -> float:
    """Water an acid gel keeps in the end under a stress [kg per kg casein]: a power of the stress, as particle gels.

    More while it is not yet fully sour, more from heated milk, whose whey protein binds it.
    """
    sweet = 0.05 * np.log1p(np.exp((ph - p.acid_gel_sour_ph) / 0.05))
    return (
        p.acid_gel_r_eq
        * kpa ** (-p.acid_gel_power)
        * np.exp(p.acid_gel_sweet * sweet)
        * (1.0 + p.acid_gel_heat * p.heat_denatured)
    )


@law
def acid_gel_open(warm: float, sized: float, place: int, disturbed: float, clot: float, p: Any) -> float:
    """How readily an acid gel of `acid_gel_r_ref` lets whey through [1/min and kPa].

    By temperature, piece, place, and what rennet has done. Under a press it drains through both faces.
    """
    if place == PLACE_MILK:
        return 0.0
    handled = 1.0 + p.handling_worked * disturbed
    if place == PLACE_UNDER_WHEY:
        handled = p.acid_gel_still + (1.0 - p.acid_gel_still) * min(disturbed, 1.0)
    elif place == PLACE_MOULD:
        handled = p.acid_gel_mould
    elif place == PLACE_PRESS:
        handled = p.acid_gel_mould * p.acid_gel_press
    return p.acid_syneresis_k * warm * sized * handled * (1.0 + p.acid_gel_rennet * clot / (1.0 + clot))


@law
def acid_gel_per_min(r: float, end: float, kpa: float, opened: float, p: Any) -> float:
    """Share of its water an acid gel loses [1/min] by Darcy's law in a gel that closes; 0 at its end point and below.

    The stress that the network does not bear by itself, a power of its own water, drives the whey. The permeability of
    acid casein gels falls with about the third power of their casein (fractal dimension near 2.35; Bremer, van Vliet &
    Walstra 1989, from memory), so that a curd drains fast at first and then for days.
    """
    if r <= end:
        return 0.0
    over = 1.0 - end / r
    unborne = kpa * (1.0 - power(end / r, 1.0 / p.acid_gel_power)) * over / (over + 0.01)  # no corner for a stride
    share = opened * unborne * power(r / p.acid_gel_r_ref, p.acid_gel_closing) / r
    return share / (1.0 + share / p.acid_curd_limit)


@law
def heat_curd_end_point(ph: float, kpa: float, p: Any) -> float:
    """Water an acid-and-heat curd keeps in the end under a stress [kg per kg protein of the curd]."""
    return p.heat_curd_r_eq * kpa ** (-p.heat_curd_power) * np.exp(p.heat_curd_sweet * (ph - 5.3))


@law
def water_loss(
    r: float,
    gel: int,
    temp_c: float,
    warm: float,
    hot: float,
    draws_kpa: float,
    sized: float,
    ph: float,
    fat_per_casein: float,
    place: int,
    disturbed: float,
    load_kpa: float,
    closed: float,
    height_mm: float,
    clot: float,
    bath_c: float,
    p: Any,
) -> float:
    """-dr/dt [kg water per kg casein and min]; `closed` is the share of outflow lost to skin and surface film.

    warm, hot, draws_kpa and sized are `warm_share`, `hot_holds`, `contraction_kpa` and `size_share` (in a form
    `formed_share`) of this gel, its temperature and its pieces.
    height_mm is that of the form, clot what rennet has done [flocculation times]; only acid gels ask for both. bath_c
    is the temperature around the piece; only scalded ones ask for it.

    Falls smoothly to zero at the end point of the gel; below it (salted, brined, dried) nothing flows back.
    """
    if gel == GEL_LACTIC:
        kpa = stress_kpa(place, height_mm, load_kpa, p) + draws_kpa
        opened = acid_gel_open(warm, sized, place, disturbed, clot, p)
        return acid_gel_per_min(r, acid_gel_end_point(ph, kpa, p), kpa, opened, p) * r * (1.0 - closed)
    if gel == GEL_ACID_HEAT:
        k = p.heat_curd_k * warm
        k = k / (1.0 + k / p.acid_curd_limit)
        if place == PLACE_MILK:
            k = 0.0
        over = r - heat_curd_end_point(ph, stress_kpa(place, height_mm, load_kpa, p), p)
        slow = 1.0
    else:
        handled = handling(place, disturbed, load_kpa, p)
        k = rennet_curd_per_min(warm, ph, sized, fat_per_casein, handled, p)
        k *= p.syneresis_k_limit / (k + p.syneresis_k_limit)
        scalded = scalded_share(place, temp_c, bath_c, p)
        over = r - end_point(ph, hot, p) * (1.0 - scalded) - p.scald_r_holds * scalded
        slow = 1.0 + power(p.syneresis_r_slow / r, p.syneresis_q)
        k += scalded * p.scald_per_min * slow
    if over <= 0.0:
        return 0.0
    return k * over / slow * (1.0 - closed)


@law
def skin_growth_per_min(load_kpa: float, place: int, p: Any) -> float:
    """How fast the rind closes [1/min]: by pressing only."""
    if place == PLACE_PRESS:
        return p.skin_per_min * load_kpa / p.skin_load_kpa
    if place == PLACE_MOULD:
        return p.skin_per_min * 0.01
    return 0.0


@law
def film_growth_per_min(heating_c_min: float, r: float, p: Any) -> float:
    """How fast a surface film forms on wet grain heated too fast [1/min], a smooth hinge at film_rate_c_min."""
    if heating_c_min <= 0.0:
        return 0.0
    over = np.log1p(np.exp((heating_c_min - p.film_rate_c_min) / 0.05)) * 0.05
    return p.film_per_degree * over * r / (r + 8.0)


@law
def exchange_per_min(edge_mm: float, p: Any) -> float:
    """Rate at which curd and whey even out what is dissolved [1/min], by the grain's edge squared and its film."""
    inside = (p.exchange_edge_mm / edge_mm) ** 2 / p.exchange_min
    return inside / (1.0 + inside / p.exchange_limit)
