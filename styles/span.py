"""Ranges as a maker writes them in a style file: "<= 39", "> 52, <= 60", "8 to 18", "9.5"."""

from __future__ import annotations

import re

from designer.language import say

_RANGE = re.compile(
    r"(?:(?P<above>>=?)\s*(?P<low>-?[\d.]+))?(?:,\s*)?(?:(?P<below><=?)\s*(?P<high>-?[\d.]+))?"
    r"|(?P<start>-?[\d.]+)(?:\s+to\s+(?P<end>-?[\d.]+))?"
)


def parse_range(text: str) -> tuple[float | None, float | None, bool, bool]:
    """Text such as "<= 39", "> 52, <= 60", "8 to 18" or "9.5" as (low, high, low strict, high strict).

    ValueError, as the end of a sentence, if the text is no range.
    """
    match = _RANGE.fullmatch(text.strip()) if text.strip() else None
    if match is None:
        raise ValueError(say("“{said}” is no range; write “<= 39”, “>= 50”, “> 52, <= 60” or “8 to 18”", said=text))
    if match["start"] is not None:
        low = float(match["start"])
        high = float(match["end"]) if match["end"] is not None else low
        strict = False, False
    else:
        low_text, high_text = match["low"], match["high"]
        if low_text is None or high_text is None:
            return (
                None if low_text is None else float(low_text),
                None if high_text is None else float(high_text),
                match["above"] == ">",
                match["below"] == "<",
            )
        low, high = float(low_text), float(high_text)
        strict = match["above"] == ">", match["below"] == "<"
    if low > high:
        raise ValueError(say("“{said}” runs backwards", said=text))
    return low, high, *strict
