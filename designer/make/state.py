"""The state of a make, by place in the array y[zone, state]: what curd, free whey and run-off hold.

In the vat there is one zone; from the moulds on the cheese has two halves, its core and its edge, which cool, sour and
drain apart. A zone that is not there yet has nan for its temperature.
Everything extensive is per kilogram of milk in the vat. Twelve components stand three times, once for each phase, so
that a sum over the phases is a balance.
"""

from __future__ import annotations

# Components of a phase: kg per kg milk, but mol for hexose (as hexose equivalents), galactose, lactate and acid.
COMPONENTS = (
    "water",
    "hexose",
    "galactose",
    "lactate",
    "acid",
    "fat",
    "casein",
    "whey_protein",
    "serum",
    "ash",
    "calcium",
    "salt",
)
WATER, HEXOSE, GALACTOSE, LACTATE, ACID, FAT, CASEIN, WHEY_PROTEIN, SERUM, ASH, CALCIUM, SALT = range(12)
PHASE = 12
"""Components of a phase."""
CURD, WHEY, GONE = 0, 12, 24
# The curd itself.
T, CLOT, RENNET, CACL2 = 36, 37, 38, 39
CELLS, AWAKE = 40, 43  # three populations each
COLLOIDAL = 46  # calcium bound to casein [kg per kg milk]
DRY_SALT, SKIN, FILM, THETA = 47, 48, 49, 50
GRAIN, GEL = 51, 52  # edge of the grain as cut [mm], GEL_*
EVAPORATED, SALT_IN, WATER_IN, ACID_IN = 53, 54, 55, 56
COAGULANT = 57  # COAGULANT_*
SIZE = 58
CORE, OUTER, ZONES = 0, 1, 2

LEAST_WATER = 1e-5
"""Less water of a phase than this is none [kg per kg milk]."""

# kg per mol, with lactose counted as two anhydrous hexoses.
HEXOSE_KG, GALACTOSE_KG, LACTATE_KG, WATER_KG = 0.17115, 0.18016, 0.09008, 0.018015
CALCIUM_CHLORIDE_KG, CALCIUM_KG = 0.11098, 0.04008
