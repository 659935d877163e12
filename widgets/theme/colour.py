"""Colour arithmetic: contrast by WCAG 2.1, mixing, and how a colour looks to a colour-blind eye.

Contrast: WCAG 2.1, section 1.4.3 and its definition of relative luminance. Simulation: Machado, Oliveira and
Fernandes 2009, IEEE Trans. Vis. Comput. Graph. 15(6):1291, full severity matrices. Lab: CIE 1976, D65.
"""

from __future__ import annotations

from typing import Final

Rgb = tuple[float, float, float]

DEFICIENCIES: Final[dict[str, tuple[Rgb, Rgb, Rgb]]] = {
    "protanopia": (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    "deuteranopia": (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    "tritanopia": (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}


def rgb(text: str) -> Rgb:
    """ "#RRGGBB" as three shares 0..1 of display red, green and blue."""
    return int(text[1:3], 16) / 255.0, int(text[3:5], 16) / 255.0, int(text[5:7], 16) / 255.0


def text_of(colour: Rgb) -> str:
    """The "#RRGGBB" text of a colour, each channel held within what a display can show."""
    return "#" + "".join(f"{round(min(1.0, max(0.0, channel)) * 255):02X}" for channel in colour)


def _linear(channel: float) -> float:
    return channel / 12.92 if channel <= 0.04045 else ((channel + 0.055) / 1.055) ** 2.4


def _display(channel: float) -> float:
    held = min(1.0, max(0.0, channel))
    return 12.92 * held if held <= 0.0031308 else 1.055 * held ** (1 / 2.4) - 0.055


def luminance(text: str) -> float:
    """Relative luminance, 0 black to 1 white."""
    red, green, blue = (_linear(channel) for channel in rgb(text))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1 to 21."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def mix(one: str, other: str, share: float) -> str:
    """`share` of `other` laid over `one`."""
    a, b = rgb(one), rgb(other)
    return text_of((a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share, a[2] + (b[2] - a[2]) * share))


def seen_with(text: str, deficiency: str) -> str:
    """The colour as an eye with this deficiency sees it (a key of `DEFICIENCIES`)."""
    linear = [_linear(channel) for channel in rgb(text)]
    rows = DEFICIENCIES[deficiency]
    red, green, blue = (_display(sum(w * c for w, c in zip(row, linear, strict=True))) for row in rows)
    return text_of((red, green, blue))


def lab(text: str) -> Rgb:
    """CIE L*a*b* under D65."""
    r, g, b = (_linear(channel) for channel in rgb(text))
    x = (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047
    y = 0.2126729 * r + 0.7151522 * g + 0.0721750 * b
    z = (0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.08883
    fx, fy, fz = (v ** (1 / 3) if v > 0.008856 else 7.787 * v + 16 / 116 for v in (x, y, z))
    return 116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)


def difference(one: str, other: str) -> float:
    """Distance of two colours in L*a*b* (about 2.3 is just noticeable)."""
    a, b = lab(one), lab(other)
    return float(sum((p - q) ** 2 for p, q in zip(a, b, strict=True)) ** 0.5)
