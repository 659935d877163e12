"""What a comparison says in a sentence: how many differences, which does most, and the textures of both cheeses."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from designer.judge.compare import Comparison
from widgets.compare.worth_table import words_of


def _tr(text: str) -> str:
    return QCoreApplication.translate("ComparePlace", text)


def said(found: Comparison) -> str:
    """The differences: how many, and what most comes from."""
    ranked = found.ranked()
    if not ranked:
        return _tr("Both makes do the same in every stage.")
    first = words_of(ranked[0])
    worth = ", ".join(ranked[0].consequences.split(", ")[:3])
    if len(ranked) == 1:
        words = _tr("One difference: {0} ({1}).").format(first, worth)
    else:
        words = _tr("{0} differences. Most comes from: {1} ({2}).").format(len(ranked), first, worth)
    if found.per_100kg:
        words += " " + _tr("Doses read per 100 kg of milk.")
    return words


def said_of_texture(found: Comparison) -> str:
    """The textures of both cheeses, once where they are the same."""
    bodies = found.bodies()
    if bodies[0] == bodies[1]:
        return _tr("Texture of both: {0}.").format(bodies[0])
    return _tr("Texture: {0} → {1}.").format(*bodies)
