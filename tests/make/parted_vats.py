"""A made-up vat, and the ways it parts: curd washed or salted apart, whey for a cheese of its own, cream, milk."""

from __future__ import annotations

from designer.recipe.document import Addition, Branch, Recipe
from designer.recipe.edit import add
from designer.recipe.end import after
from designer.recipe.file import reads
from designer.recipe.stages.acid_heat import AcidHeat
from designer.recipe.stages.cut import Cut
from designer.recipe.stages.drain import Drain
from designer.recipe.stages.fill import Fill
from designer.recipe.stages.heat import Heat
from designer.recipe.stages.press import Press, PressStep
from designer.recipe.stages.ripen import Ripen
from designer.recipe.stages.salt import Salt
from designer.recipe.stages.set import Set
from designer.recipe.stages.wash import Wash

VAT = """
format = 1
name = "Parted vat"

[[milk]]
id = "milk"
volume = "100 L"
temperature = "31 °C"

[[starter]]
id = "bulk"
at = "ripen"
bulk = "1 %"

[[addition]]
id = "rennet"
what = "coagulant"
at = "set"
strength = "200 IMCU/mL"
volume = "20 mL"

[[stage]]
id = "ripen"
kind = "ripen"
length = "45 min"

[[stage]]
id = "set"
kind = "set"
length = "40 min"

[[stage]]
id = "cut"
kind = "cut"
length = "10 min"
size = "9 mm"

[[stage]]
id = "cook"
kind = "cook"
length = "60 min"
temperature = "38 °C"
ramp = "30 min"

[[stage]]
id = "drain"
kind = "drain"
length = "15 min"

[[stage]]
id = "salt"
kind = "salt"
length = "15 min"
salt = "2.4 %"

[[stage]]
id = "fill"
kind = "fill"
length = "15 min"

[[stage]]
id = "press"
kind = "press"
steps = [{ pressure = "40 kPa", length = "12 h" }]
"""


def pressed(name: str, minutes: float = 720.0) -> tuple[Fill, Press]:
    steps = (PressStep(pressure_kpa=40.0, length_min=minutes),)
    return Fill(id=f"{name}-fill", end=after(15.0)), Press(id=f"{name}-press", end=after(minutes), steps=steps)


def washed(share: float = 50.0) -> Branch:
    wash = Wash(id="wash", end=after(16.0), whey_off_pct=30.0, water_pct=25.0, water_c=10.0)
    drain = Drain(id="wash-drain", end=after(15.0))
    salt = Salt(id="wash-salt", end=after(15.0), salt_pct=2.4)
    return Branch(id="washed", after="cook", share_pct=share, stages=(wash, drain, salt, *pressed("wash")))


def salted(name: str, pct: float, share: float, of_stage: str = "drain") -> Branch:
    salt = Salt(id=f"{name}-salt", end=after(15.0), salt_pct=pct)
    return Branch(id=name, after=of_stage, share_pct=share, stages=(salt, *pressed(name)))


def whey_cheese(of_stage: str = "drain", share: float = 80.0, name: str = "whey") -> Branch:
    vinegar = Addition(id=f"{name}-acid", what="acid", acid="citric", at=f"{name}-set", mass_kg=0.05)
    stages = (
        Heat(id=f"{name}-heat", temperature_c=88.0, end=after(40.0)),
        AcidHeat(id=f"{name}-set", end=after(15.0)),
        Drain(id=f"{name}-drain", end=after(120.0)),
    )
    return Branch(id=name, after=of_stage, share_pct=share, of="whey", additions=(vinegar,), stages=stages)


def cream(share: float = 50.0) -> Branch:
    return Branch(id="cream", after="ripen", share_pct=share, of="cream", stages=(Ripen(id="sour", end=after(300.0)),))


def of_whole_milk(share: float = 40.0) -> Branch:
    """Milk taken for a cheese of its own before it is creamed."""
    rennet = Addition(id="own-rennet", what="coagulant", at="own-set", volume_l=0.008, strength_imcu_ml=200.0)
    stages = (
        Set(id="own-set", end=after(40.0)), Cut(id="own-cut", cut_mm=9.0), Drain(id="own-drain", end=after(30.0)),
        *pressed("own"),
    )  # fmt: skip
    return Branch(id="whole", after="fill-vat", share_pct=share, additions=(rennet,), stages=stages)


def stood(*branches: Branch) -> Recipe:
    """The vat with a while before its milk ripens, so that a share can leave before the cream does."""
    out = recipe()
    out = out.model_copy(update={"stages": (Ripen(id="fill-vat", end=after(20.0)), *out.stages)})
    for branch in branches:
        out = add(out, branch)
    return out


def recipe(*branches: Branch) -> Recipe:
    out = reads(VAT)
    for branch in branches:
        out = add(out, branch)
    return out
