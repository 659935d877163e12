"""Outcomes as figures, not gauges: the verdict, the lines of outcomes, each opening in place, and the cautions."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QVBoxLayout, QWidget

from widgets import wording
from widgets.make_curve.lanes import name_of
from widgets.outcomes.announce import Announcer
from widgets.outcomes.lane_table import LaneTable
from widgets.outcomes.opening import Opening
from widgets.outcomes.outcome_list import OutcomeList
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped


class OutcomePanel(QWidget):
    """Verdict, outcomes, cautions."""

    said = Signal(str)
    """a sentence: what could not be done"""
    hinted = Signal(str)
    """what the keys do where the keyboard is"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._name = QLabel(self)
        self._name.setFont(dress.font("head", bold=True))
        self._verdict = Wrapped(self)
        self._verdict.setFont(dress.font("note"))
        self._verdict.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.list = OutcomeList(session, self)
        self._cautions = Wrapped(self)
        self._cautions.setFont(dress.font("note"))
        self._cautions.setContentsMargins(16, 8, 14, 10)
        self.lanes = LaneTable(session, self)
        inside = QWidget(self)
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 10, 0, 0)
        column.setSpacing(4)
        beside = QVBoxLayout()
        beside.setContentsMargins(10, 0, 14, 0)
        beside.addWidget(self.lanes)
        column.addLayout(beside)
        for label in (self._name, self._verdict):
            label.setContentsMargins(16, 0, 14, 0)
            column.addWidget(label)
        column.addSpacing(4)
        line = QFrame(inside)
        line.setObjectName("hairline")
        column.addWidget(line)
        column.addWidget(self.list)
        column.addWidget(self._cautions)
        column.addStretch(1)
        self.area = area = QScrollArea(self)
        area.setWidget(inside)
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setAccessibleName(self.tr("Outcomes of the make"))
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.announcer = Announcer(session, self)
        self.opening = Opening(session, self.list, area, self)
        self.opening.said.connect(self.said)
        self.opening.hinted.connect(self.hinted)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(area)
        session.forecastChanged.connect(self.refresh)
        session.bandsChanged.connect(self.refresh)
        session.laneChanged.connect(self.refresh)
        self.refresh()

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.list.system = system
        self.lanes.set_system(system)
        self.refresh()
        self.opening.set_system(wording.system_of(system))

    @Slot()
    def refresh(self) -> None:
        """Show what the forecast and the verdict say."""
        verdict, forecast = self.session.verdict, self.session.seen
        self.list.refresh()
        lane = "" if forecast.branch_id is None else name_of(forecast.recipe.branch(forecast.branch_id))
        if verdict is None:
            _write(self._name, lane or self.tr("Outcomes"))
            _write(self._verdict, self.tr("No style is chosen, so nothing is checked."))
        else:
            _write(self._name, f"{lane}: {verdict.name}" if lane else verdict.name)
            _write(self._verdict, verdict.sentence)
        if self.session.previewing:
            # The sentence may lose its chances while something is dragged; the figures under it must not jump.
            self._verdict.setMinimumHeight(max(self._verdict.minimumHeight(), self._verdict.height()))
            return
        self._verdict.setMinimumHeight(0)
        self.list.setAccessibleDescription(self.list.told())
        shown = [caution for caution in forecast.cautions if caution.level != "note"]
        lines = [f"\u25b2 {caution.text}" for caution in shown] + [f"\u2022 {note}" for note in forecast.notes]
        _write(self._cautions, "\n\n".join(lines))
        self._cautions.setVisible(bool(lines))
        self._cautions.setToolTip("\n".join(f"{one.text}  ({one.source})" for one in shown))


def _write(label: QLabel, text: str) -> None:
    if label.text() != text:
        label.setText(text)
