"""Which yields mass balance leaves open to a lactic cheese of a printed moisture.

Old books print a range of yield beside a range of moisture, and both cannot hold at all their ends: a curd of 75 %
water from skim milk weighs what its casein and its water weigh. `closes` of a figure keeps that range beside what is
printed; only the printed yields within it are held against the model.
"""

from __future__ import annotations

from designer.make.balance import yield_components_emmons_1990

FAT_KEPT = (0.85, 0.97)
"""Of soft cheese: Camembert, Brie and Coulommiers 0.86-0.95 (Guelph Table 6.1; from memory), bench curd 0.94."""
CASEIN_KEPT = (0.95, 0.98)
WHEY_SOLIDS = 0.066
"""kg of sugar, acid, ash and whey protein beside each kg of water, as the whey of fresh milk has them."""
MILK_SALTS = 0.02
"""kg per kg casein: the calcium phosphate has left sour curd."""
SALT_PCT = 1.0


def closing_yield(fat_pct: float, casein_pct: float, moisture_pct: tuple[float, float]) -> tuple[float, float]:
    """Least and most cheese [kg/100 kg milk] of milk of that fat and casein [%] and of a moisture in a range [%]."""
    low, high = (
        yield_components_emmons_1990(
            fat_pct, casein_pct, moisture, SALT_PCT,
            fat_kept=fat, casein_kept=casein, whey_solids=WHEY_SOLIDS, milk_salts=MILK_SALTS,
        )
        for fat, casein, moisture in zip(FAT_KEPT, CASEIN_KEPT, moisture_pct, strict=True)
    )  # fmt: skip
    return low, high
