"""Asks for the working hours, so that what falls outside them is marked on the make curve."""

from __future__ import annotations

from PySide6.QtCore import QTime, Signal
from PySide6.QtWidgets import QCheckBox, QDialog, QDialogButtonBox, QFormLayout, QTimeEdit, QVBoxLayout, QWidget

from widgets.make_curve.canvas import MakeCurve
from widgets.preferences import Preferences
from widgets.together import Wrapped

FIRST = (6 * 60.0, 18 * 60.0)
"""What is offered where none are kept, minutes of the day."""


class HoursForm(QDialog):
    """`chosen` carries (start, end) in minutes of the day, or None where nothing is to be marked."""

    chosen = Signal(object)

    def __init__(
        self, hours: tuple[float, float] | None, parent: QWidget | None = None, *, system: str = "metric"
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Working hours"))
        self.mark = QCheckBox(self.tr("Mark what falls outside my working hours"), self)
        self.mark.setChecked(hours is not None)
        self.times = [QTimeEdit(_time(minute), self) for minute in hours or FIRST]
        for edit in self.times:
            edit.setDisplayFormat("h:mm ap" if system == "us" else "HH:mm")
            edit.setMinimumHeight(28)
            edit.setEnabled(self.mark.isChecked())
            self.mark.toggled.connect(edit.setEnabled)
        rows = QFormLayout()
        rows.addRow(self.tr("From"), self.times[0])
        rows.addRow(self.tr("To"), self.times[1])
        says = Wrapped(self.tr("A recipe needs its start time for it; set it at the Milk place."), self)
        says.setProperty("role", "soft")
        buttons = QDialogButtonBox(
            QDialogButtonBox.StandardButton.Ok | QDialogButtonBox.StandardButton.Cancel, parent=self
        )
        buttons.accepted.connect(self._choose)
        buttons.rejected.connect(self.reject)
        self.ok = buttons.button(QDialogButtonBox.StandardButton.Ok)
        column = QVBoxLayout(self)
        column.setContentsMargins(20, 16, 20, 14)
        column.setSpacing(12)
        column.addWidget(self.mark)
        column.addLayout(rows)
        column.addWidget(says)
        column.addWidget(buttons)
        self.setMinimumWidth(340)

    def _choose(self) -> None:
        start, end = (float(edit.time().hour() * 60 + edit.time().minute()) for edit in self.times)
        self.chosen.emit((start, end) if self.mark.isChecked() else None)
        self.accept()


def ask(window: QWidget, preferences: Preferences, curve: MakeCurve) -> HoursForm:
    """Ask, keep what is chosen and mark it on the curve; nothing blocks."""
    form = HoursForm(preferences.hours, window, system=preferences.system)

    def keep(hours: tuple[float, float] | None) -> None:
        preferences.hours = hours
        curve.set_hours(hours)

    form.chosen.connect(keep)
    form.finished.connect(form.deleteLater)
    form.open()
    return form


def _time(minute: float) -> QTime:
    hour, rest = divmod(round(minute), 60)
    return QTime(hour % 24, rest)
