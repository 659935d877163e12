"""The stage kinds by their key, and the union the document holds. A new kind is one module and one line here."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field

from designer.recipe.stages.acid_heat import AcidHeat
from designer.recipe.stages.brine import Brine
from designer.recipe.stages.cook import Cook
from designer.recipe.stages.cool import Cool
from designer.recipe.stages.cut import Cut
from designer.recipe.stages.drain import Drain
from designer.recipe.stages.drying import Drying
from designer.recipe.stages.fill import Fill
from designer.recipe.stages.hang import Hang
from designer.recipe.stages.heat import Heat
from designer.recipe.stages.hold_brine import HoldBrine
from designer.recipe.stages.lactic_set import LacticSet
from designer.recipe.stages.ladle import Ladle
from designer.recipe.stages.mill import Mill
from designer.recipe.stages.press import Press
from designer.recipe.stages.rest import Rest
from designer.recipe.stages.ripen import Ripen
from designer.recipe.stages.room import Room
from designer.recipe.stages.salt import Salt
from designer.recipe.stages.scald import Scald
from designer.recipe.stages.set import Set
from designer.recipe.stages.settle import Settle
from designer.recipe.stages.stack import Stack
from designer.recipe.stages.stage import Stage
from designer.recipe.stages.stir import Stir
from designer.recipe.stages.stretch import Stretch
from designer.recipe.stages.turn import Turn
from designer.recipe.stages.wash import Wash

AnyStage = Annotated[
    Heat | Cool | Ripen | Set | LacticSet | AcidHeat
    | Cut | Rest | Stir | Cook | Wash | Settle | Drain
    | Ladle | Hang | Stack | Mill | Salt | Scald | Stretch
    | Fill | Press | Turn | Brine | HoldBrine | Drying | Room,
    Field(discriminator="kind"),
]  # fmt: skip

# In the order of a make.
KINDS: dict[str, type[Stage]] = {
    str(model.model_fields["kind"].default): model
    for model in (
        Heat, Cool, Ripen, Set, LacticSet, AcidHeat, Cut, Rest, Stir, Cook, Wash, Settle, Drain, Ladle, Hang, Stack,
        Mill, Salt, Scald, Stretch, Fill, Press, Turn, Brine, HoldBrine, Drying, Room,
    )
}  # fmt: skip
