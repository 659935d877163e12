"""Our palettes: warm paper, iron ink, and the colours of what is in a vat. Light, dark and high contrast.

Curves that share a pane differ in lightness and in line style too, so that they are told apart by colour-blind
eyes and in mono print; a test measures both, and the contrast of every text.
"""

from __future__ import annotations

from dataclasses import dataclass

from widgets.theme.colour import mix


@dataclass(frozen=True, slots=True)
class Colours:
    """One palette; every colour is "#RRGGBB"."""

    name: str
    dark: bool
    window: str
    """behind everything"""
    paper: str
    """behind the curves"""
    panel: str
    """behind figures and forms"""
    field: str
    """behind what can be typed"""
    ink: str
    soft: str
    """quieter text, still 4.5:1"""
    line: str
    """hairlines between parts"""
    grid: str
    accent: str
    accent_ink: str
    """text on the accent"""
    chosen: str
    """behind what is selected"""
    met: str
    near: str
    miss: str
    milk: str
    gel: str
    curd: str
    curd_dry: str
    """curd out of the whey"""
    cheese: str
    rind: str
    whey: str
    gone: str
    """the part of the vat that has run off"""
    vat_ink: str
    """text over the vat's content"""
    temperature: str
    ph: str
    ph_whey: str
    moisture: str
    whey_off: str
    firmness: str
    salt: str

    def of(self, name: str) -> str:
        """A colour by its name: one of the palette, or one of `MIXED`."""
        if name in MIXED:
            ground, over, share = MIXED[name]
            return mix(self.of(ground), self.of(over), share)
        return str(getattr(self, name))


LIGHT = Colours(
    name="light",
    dark=False,
    window="#EFECE4",
    paper="#FDFCF8",
    panel="#F7F5EF",
    field="#FFFFFF",
    ink="#23272C",
    soft="#595D63",
    line="#D8D3C6",
    grid="#ECE8DE",
    accent="#1C5D63",
    accent_ink="#FFFFFF",
    chosen="#D9E7E4",
    met="#1E6340",
    near="#805200",
    miss="#A32A18",
    milk="#F7EFD9",
    gel="#F1E2B8",
    curd="#EBCB7F",
    curd_dry="#E6BF68",
    cheese="#DDAB48",
    rind="#9A6A16",
    whey="#CFE3D6",
    gone="#F1EEE5",
    vat_ink="#2A2413",
    temperature="#A33B1C",
    ph="#2E418F",
    ph_whey="#2F7FA8",
    moisture="#6E4E08",
    whey_off="#1F7F6B",
    firmness="#7A3B78",
    salt="#6C747A",
)

DARK = Colours(
    name="dark",
    dark=True,
    window="#191B1D",
    paper="#202326",
    panel="#24282B",
    field="#2D3135",
    ink="#ECE8DE",
    soft="#AEABA2",
    line="#3A3F43",
    grid="#2C3034",
    accent="#7CC4BF",
    accent_ink="#10201F",
    chosen="#2C4344",
    met="#86CFA0",
    near="#E8BE6A",
    miss="#F2937C",
    milk="#575140",
    gel="#625838",
    curd="#77602B",
    curd_dry="#7A5F24",
    cheese="#805D1B",
    rind="#D6A443",
    whey="#2C4A44",
    gone="#272B2D",
    vat_ink="#F8F3E6",
    temperature="#F08A62",
    ph="#8095F5",
    ph_whey="#93E4F2",
    moisture="#DDB45A",
    whey_off="#5FC9AC",
    firmness="#C67DC1",
    salt="#D8DFE5",
)

CONTRAST = Colours(
    name="contrast",
    dark=True,
    window="#000000",
    paper="#000000",
    panel="#000000",
    field="#000000",
    ink="#FFFFFF",
    soft="#E6E6E6",
    line="#9A9A9A",
    grid="#3A3A3A",
    accent="#FFE14D",
    accent_ink="#000000",
    chosen="#1E3A5F",
    met="#7DFFB0",
    near="#FFD24D",
    miss="#FF9C8A",
    milk="#3D3A30",
    gel="#4A4224",
    curd="#6A5312",
    curd_dry="#70560E",
    cheese="#7A5A06",
    rind="#FFD24D",
    whey="#0E3F44",
    gone="#101010",
    vat_ink="#FFFFFF",
    temperature="#FF9A6B",
    ph="#88A0FF",
    ph_whey="#A5FAFF",
    moisture="#FFD24D",
    whey_off="#5CFFC9",
    firmness="#FFA8F5",
    salt="#FFFFFF",
)

PALETTES: dict[str, Colours] = {palette.name: palette for palette in (LIGHT, DARK, CONTRAST)}

# Colours put together from two of the palette: (ground, what is laid over it, its share). A painter asks for them by
# name (`mixed`), so that what is painted and what is measured is one.
MIXED: dict[str, tuple[str, str, float]] = {
    "hover": ("window", "accent", 0.12),
    "pointed": ("panel", "accent", 0.09),
    "unfolded": ("paper", "accent", 0.09),
    "stripe": ("panel", "line", 0.22),
    "cell": ("panel", "line", 0.28),
    "pale": ("panel", "ink", 0.74),
    "off": ("window", "soft", 0.6),
    "set_gel": ("gel", "curd", 0.25),
    "curd_edge": ("curd", "rind", 0.55),
    "whey_edge": ("whey", "whey_off", 0.55),
    "to_come": ("cheese", "paper", 0.5),
    "to_run": ("whey", "paper", 0.5),
    "chosen_cheese": ("cheese", "accent", 0.5),
    "chosen_whey": ("whey", "accent", 0.5),
}

# ---- the one table of what is painted on what. Every colour of the palette stands in one of these; a test asks for it,
# and holds every pair of words to 4.5:1 and every line that means something to 3:1 (WCAG 2.1, 1.4.3 and 1.4.11).

GROUNDS: tuple[str, ...] = (
    "window", "paper", "panel", "field", "chosen", "hover", "pointed", "unfolded", "stripe", "cell",
)  # fmt: skip
"""What may lie behind words: each ink reads on each of them, so that no pair can be forgotten."""
INKS: tuple[str, ...] = ("ink", "soft", "met", "near", "miss", "accent")
"""What words are written in, anywhere."""
CONTENTS: tuple[str, ...] = ("milk", "gel", "set_gel", "curd", "curd_dry", "cheese", "whey", "gone")
"""What is in the vat; words on it have an ink of their own."""
CURVES: tuple[str, ...] = ("temperature", "ph", "ph_whey", "moisture", "whey_off", "firmness", "salt")
"""Drawn on paper, beside the gates and the reading line."""
WRITTEN_CURVES: tuple[str, ...] = ("temperature", "ph", "moisture", "whey_off", "firmness", "salt")
"""Curves whose figures or names are written in their colour, on paper."""
DECORATION: tuple[str, ...] = (
    "line", "grid", "rind", "off", "curd_edge", "whey_edge", "to_come", "to_run", "chosen_cheese", "chosen_whey",
)  # fmt: skip
"""Neither words nor a line that means something by itself; "off" is what can't be used now (exempt by 1.4.3)."""

VAT_WORDS: float = 0.92
"""Opacity of words over the vat's content."""

TEXT_ON: tuple[tuple[str, str], ...] = (
    *((ink, ground) for ink in INKS for ground in GROUNDS),
    *(("vat_ink", ground) for ground in CONTENTS),
    *((curve, "paper") for curve in WRITTEN_CURVES),
    ("soft", "gone"),
    ("temperature", "gone"),
    *(("pale", ground) for ground in ("panel", "field", "chosen")),
    ("accent_ink", "accent"),
    ("paper", "ink"),
)
# Curves drawn in one pane of the make curve.
SHARED_PANE: tuple[tuple[str, str], ...] = (("ph", "ph_whey"), ("moisture", "whey_off"), ("firmness", "salt"))
# Makes drawn over each other where there are more than two: each has its own colour in every pane (and its own dashes).
# No one set of names stays apart for every eye in all three palettes, so each palette has its own.
MAKES: dict[str, tuple[str, ...]] = {
    "light": ("ink", "temperature", "ph_whey", "ph", "salt"),
    "dark": ("ink", "near", "ph", "firmness", "miss"),
    "contrast": ("ink", "temperature", "ph", "moisture", "met"),
}
# Lines that carry meaning, and where: the mark of the keyboard is seen on every ground.
LINES_ON: tuple[tuple[str, str], ...] = (
    *((curve, "paper") for curve in CURVES),
    *(("accent", ground) for ground in GROUNDS),
    ("rind", "paper"),
    ("ink", "paper"),
)
