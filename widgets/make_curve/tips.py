"""What a tooltip over the make curve says: the gate, the grip, or the stage in full."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QPointF

from designer.language import headed
from widgets.make_curve import gates, hours, overlay, ribbon
from widgets.make_curve.frame import Frame
from widgets.make_curve.grips import Grip, value_text


def tip(frame: Frame, lane: Frame | None, grip: Grip | None, at: QPointF) -> str:
    """The text at a point of the picture; "" where there is none.

    `frame` is that of the main make, `lane` the one whose vat or ribbon the point is in, `grip` the one under it.
    """
    for mark in frame.gates:
        found = gates.place(frame, mark)
        if found is not None and abs(found[0] - at.x()) < 9 and found[1].rect.contains(at):
            return mark.sentence()
    late = hours.tip_at(lane, at) if lane is not None else ""
    if grip is not None:
        told = headed(grip.label, value_text(grip.kind, grip.value, frame.system))
        return f"{told}\n{late}" if late else told
    block = overlay.block_at(lane, frame.axis.minute(at.x())) if lane is not None else None
    if block is not None:
        text = QCoreApplication.translate("MakeCurve", "{0}: {1} to {2}, ends by {3}")
        told = text.format(
            block.name, frame.clock_text(block.start_min), frame.clock_text(block.end_min), block.end_text
        )
        return "\n".join((told, *(f"\u25b2 {one}" for one in ribbon.cautions_of(lane or frame, block.id))))
    return ""
