"""What part of a make is looked at, and which panes are unfolded, as actions."""

from __future__ import annotations

from PySide6.QtCore import QT_TRANSLATE_NOOP
from PySide6.QtGui import QKeySequence

from widgets.actions import Spec
from widgets.make_curve.canvas import MakeCurve

N = QT_TRANSLATE_NOOP


def specs(curve: MakeCurve) -> list[Spec]:
    """The actions on the view of a make curve."""
    key = QKeySequence.StandardKey

    def unfold(on: bool) -> None:
        curve.set_panes(("ph", "moisture", "firmness") if on else ("ph", "moisture"))

    return [
        Spec("day", N("Actions", "Show the &make day"), curve.fit_day, "day", "Ctrl+0"),
        Spec("whole", N("Actions", "Show the &whole make"), curve.fit_whole, "whole", "Ctrl+9"),
        Spec("life", N("Actions", "Show make and a&geing"), curve.fit_life, "", "Ctrl+7"),
        Spec("one_scale", N("Actions", "Make and ageing on &one scale"), curve.set_one_scale, "", "", True),
        Spec("to_stage", N("Actions", "Show the selected &stage"), curve.fit_chosen, "", "Ctrl+8"),
        Spec("zoom_in", N("Actions", "Zoom &in"), lambda: curve.zoom(0.75), "zoom_in", key.ZoomIn),
        Spec("zoom_out", N("Actions", "Zoom &out"), lambda: curve.zoom(1 / 0.75), "zoom_out", key.ZoomOut),
        Spec("firmness", N("Actions", "Unfold &firmness and salt"), unfold, "", "Ctrl+F", True),
    ]
