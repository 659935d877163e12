"""Which setting the keyboard is on, as aim speaks of it: a handle of the make curve, a field of a form."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from designer.judge.movable import Movable, movables
from widgets.form.editors import Editor
from widgets.form.milk_place import Card
from widgets.form.part_form import PartForm
from widgets.form.stage_form import EndForm
from widgets.make_curve.controls import GripControl
from widgets.session import Session


def _path(widget: QWidget | None, stage: str) -> tuple[str, str] | None:
    """(id of the part, its field) of a focused widget; in the form of stages the part is the selected stage."""
    field = ""
    while widget is not None:
        if isinstance(widget, GripControl):
            return widget.grip.key
        if isinstance(widget, Editor):
            field = widget.meta.name
        elif isinstance(widget, EndForm) and field:
            field = f"end.{field}"
        elif isinstance(widget, PartForm) and widget.of is not None and field:
            where, before = widget.of
            return where, f"{before}{field}"
        elif isinstance(widget, Card) and field:
            part = widget.part
            return str(getattr(part, "id", type(part).__name__.lower())), field
        widget = widget.parentWidget()
    return (stage, field) if field else None


def setting_at(widget: QWidget | None, session: Session) -> Movable | None:
    """What can be locked there; None where the keyboard is on nothing that aim would move."""
    path = _path(widget, session.chosen)
    if path is None:
        return None
    where, field = path
    own = [one for one in movables(session.recipe, session.lane) if one.where == where]
    exact = [one for one in own if one.field == field]
    inside = [one for one in own if one.field.startswith(f"{field}.")]
    return next(iter(exact or reversed(inside)), None)
