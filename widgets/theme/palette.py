"""Our palettes: warm paper, iron ink, and the colours of what is in a vat. Light, dark and high contrast.

Curves that share a pane differ in lightness and in line style too, so that they are told apart by colour-blind
eyes and in mono print; a test measures both, and the contrast of every text.
"""

from __future__ import annotations

from dataclasses import dataclass


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
    salt="#7B8790",
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

# What must be read on what: every pair is held to 4.5:1 by a test.
TEXT_ON: tuple[tuple[str, str], ...] = (
    *(
        (text, ground)
        for text in ("ink", "soft", "met", "near", "miss")
        for ground in ("window", "paper", "panel", "field")
    ),
    ("ink", "chosen"),
    ("accent_ink", "accent"),
    *(("vat_ink", ground) for ground in ("milk", "gel", "curd", "curd_dry", "cheese", "whey", "gone")),
)
# Curves drawn in one pane: told apart under every simulated deficiency.
SHARED_PANE: tuple[tuple[str, str], ...] = (("ph", "ph_whey"), ("moisture", "whey_off"), ("firmness", "salt"))
# Lines that carry meaning: 3:1 against the paper (WCAG 2.1, 1.4.11).
LINES: tuple[str, ...] = ("temperature", "ph", "ph_whey", "moisture", "whey_off", "firmness", "salt", "accent")
