"""Outcomes as figures, not gauges: value and band, the style's window in figures, the margin in words.

Painted in one go, because it changes in every frame of a drag.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QEvent, QPointF, QRectF, QSize, Qt, Slot
from PySide6.QtGui import QHelpEvent, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QFrame, QLabel, QScrollArea, QSizePolicy, QToolTip, QVBoxLayout, QWidget

from designer.forecast import Outcome
from designer.judge.verdict import CLASS, LIMIT, MAKE, MET, NEAR, NOT_MET, QUALITY, Row
from designer.quantities import quantity
from designer.units import show
from widgets import wording
from widgets.session import Session
from widgets.theme import apply as dress

SHOWN: Final = (
    "moisture_pct",
    "mnfs_pct",
    "fdm_pct",
    "salt_in_moisture_pct",
    "salt_pct",
    "ph_24h",
    "yield_kg_per_100kg",
    "cheese_kg",
    "protein_pct",
    "calcium_mg_per_g_protein",
    "lactose_pct",
    "floc_min",
    "drain_moisture_pct",
    "finish_min",
)
SHORT: Final[dict[str, str]] = {
    "mnfs_pct": QT_TRANSLATE_NOOP("Outcome", "Moisture, fat-free (MNFS)"),
    "fdm_pct": QT_TRANSLATE_NOOP("Outcome", "Fat in dry matter"),
    "salt_in_moisture_pct": QT_TRANSLATE_NOOP("Outcome", "Salt in moisture"),
    "yield_kg_per_100kg": QT_TRANSLATE_NOOP("Outcome", "Yield of 100 kg milk"),
    "calcium_mg_per_g_protein": QT_TRANSLATE_NOOP("Outcome", "Calcium per g protein"),
    "floc_min": QT_TRANSLATE_NOOP("Outcome", "Flocculation"),
    "drain_moisture_pct": QT_TRANSLATE_NOOP("Outcome", "Curd moisture at draining"),
    "finish_min": QT_TRANSLATE_NOOP("Outcome", "Make takes"),
}
UNIT: Final[dict[str, str]] = {"yield_kg_per_100kg": "kg", "calcium_mg_per_g_protein": "mg"}
COLOUR: Final = {MET: "met", NEAR: "near", NOT_MET: "miss"}
RANK: Final = {MET: 0, NEAR: 1, NOT_MET: 2}
STATE_WORDS: Final = {
    MET: QT_TRANSLATE_NOOP("Outcome", "met"),
    NEAR: QT_TRANSLATE_NOOP("Outcome", "near"),
    NOT_MET: QT_TRANSLATE_NOOP("Outcome", "not met"),
}


@dataclass(frozen=True, slots=True)
class Line:
    """One outcome as written: label, value, band, and the row of the verdict that speaks of it."""

    key: str
    label: str
    value: str
    band: str
    row: Row | None
    outside: str


def label_of(key: str) -> str:
    """What an outcome is called here."""
    return QCoreApplication.translate("Outcome", SHORT[key]) if key in SHORT else quantity(key).label


def value_words(key: str, value: float, system: str) -> str:
    """A value of an outcome with its unit."""
    what = quantity(key)
    if what.kind == "duration":
        return wording.length(value)
    if what.kind == "mass":
        return show(value, "mass", system="us" if system == "us" else "metric", decimals=None if system == "us" else 2)
    unit = UNIT.get(key, what.unit)
    return f"{value:.{what.decimals}f} {unit}".rstrip()


def band_words(key: str, outcome: Outcome, system: str) -> str:
    """The 80 % band, "" where none was worked out or it is narrower than the last figure."""
    what = quantity(key)
    if what.kind in ("mass",):
        return ""
    low, high = f"{outcome.low:.{what.decimals}f}", f"{outcome.high:.{what.decimals}f}"
    if low == high:
        return ""
    if what.kind == "duration" and outcome.high >= 60:
        low, high = wording.length(outcome.low), wording.length(outcome.high)
    return f"{low}\u2013{high}"


def row_for(rows: Sequence[Row], key: str) -> Row | None:
    """The row of a verdict that matters most for an outcome: limits before quality before usual, the worst of them."""
    for sections in ((LIMIT,), (QUALITY, CLASS), (MAKE,)):
        found = [row for row in rows if row.quantity == key and row.section in sections]
        if found:
            return max(found, key=lambda row: (RANK[row.state], -(row.margin if row.margin is not None else 0.0)))
    return None


class OutcomeList(QWidget):
    """The lines themselves."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system = "metric"
        self.lines: tuple[Line, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Outcomes"))

    def refresh(self) -> None:
        """Read forecast and verdict anew."""
        forecast, verdict = self.session.forecast, self.session.verdict
        rows = verdict.rows if verdict is not None else ()
        before = len(self.lines), tuple(line.row is None for line in self.lines)
        made = []
        for key in SHOWN:
            outcome = forecast.outcomes.get(key)
            if outcome is not None:
                value, band = value_words(key, outcome.value, self.system), band_words(key, outcome, self.system)
                made.append(Line(key, label_of(key), value, band, row_for(rows, key), outcome.outside))
        self.lines = tuple(made)
        if before != (len(self.lines), tuple(line.row is None for line in self.lines)):
            self.updateGeometry()
        self.update()

    def told(self) -> str:
        """The lines as text, for whoever can't see them."""
        return "; ".join(
            f"{line.label} {line.value}" + (f", {line.row.sentence}" if line.row is not None else "")
            for line in self.lines
        )

    @staticmethod
    def _height(line: Line) -> float:
        below = dress.metrics("note").height() if line.row is not None else 0.0
        return dress.metrics("body").height() + 9 + below

    def sizeHint(self) -> QSize:
        """As tall as its lines."""
        return QSize(260, round(sum(self._height(line) for line in self.lines)) + 4)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the lines that show."""
        painter = QPainter(self)
        top, bottom = event.rect().top(), event.rect().bottom()
        try:
            y = 0.0
            for line in self.lines:
                tall = self._height(line)
                if y <= bottom and y + tall >= top:
                    self._paint_line(painter, line, QRectF(16, y, self.width() - 30, tall))
                y += tall
        finally:
            painter.end()

    def _paint_line(self, painter: QPainter, line: Line, box: QRectF) -> None:
        ink, soft = dress.ink(dress.colours().ink), dress.ink(dress.colours().soft)
        base = box.top() + dress.metrics("body").ascent() + 4
        wide, band_wide = dress.width(line.value, "body", bold=True), dress.width(line.band, "note")
        value_room = max(wide, 58.0)
        painter.setPen(ink)
        painter.setFont(dress.font("body", bold=True))
        painter.drawText(QPointF(box.right() - wide, base), line.value)
        painter.setFont(dress.font("body"))
        room = box.width() - value_room - band_wide - 20
        painter.drawText(QPointF(box.left(), base), dress.fitted(line.label, "body", room))
        painter.setFont(dress.font("note"))
        painter.setPen(soft)
        painter.drawText(QPointF(box.right() - value_room - 10 - band_wide, base), line.band)
        if line.row is not None:
            self._paint_margin(painter, line.row, box, base + dress.metrics("note").height())
        rule = dress.ink(dress.colours().line)
        painter.fillRect(round(box.left()), round(box.bottom()) - 1, round(box.width()), 1, rule)

    @staticmethod
    def _paint_margin(painter: QPainter, row: Row, box: QRectF, base: float) -> None:
        """The margin in words behind the shape of its state, the chance at the right."""
        said, _, chance = row.sentence.rpartition(", ") if row.chance is not None else (row.sentence, "", "")
        said = said if row.state == MET else f"{state_words(row.state)}: {said}"
        chance = short_chance(chance)
        chance_wide = dress.width(chance, "note")
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_state(painter, QPointF(box.left() + 5, base - 4), row.state)
        painter.setPen(dress.ink(getattr(dress.colours(), COLOUR[row.state])))
        painter.drawText(QPointF(box.left() + 15, base), dress.fitted(said, "note", box.width() - 20 - chance_wide))
        painter.setPen(dress.ink(dress.colours().soft))
        painter.drawText(QPointF(box.right() - chance_wide, base), chance)

    def line_at(self, y: float) -> Line | None:
        """The line at a height."""
        top = 0.0
        for line in self.lines:
            top += self._height(line)
            if y < top:
                return line
        return None

    def event(self, event: QEvent) -> bool:
        """The tooltip says where a limit comes from and how we have it."""
        if event.type() == QEvent.Type.ToolTip and isinstance(event, QHelpEvent):
            line = self.line_at(event.pos().y())
            QToolTip.showText(event.globalPos(), self._tip(line) if line is not None else "", self)
            return True
        return super().event(event)

    def _tip(self, line: Line) -> str:
        lines = [f"{quantity(line.key).label}: {line.value}"]
        if line.band:
            lines.append(self.tr("8 in 10 makes within {0}").format(line.band))
        if line.row is not None:
            lines += [line.row.rule, line.row.sentence, f"{line.row.source} ({line.row.have})", line.row.note]
        lines.append(line.outside)
        return "\n".join(text for text in lines if text)


def short_chance(words: str) -> str:
    """The judge's chance, shorter: "9 in 10", "> 9 in 10", "7 in 10 outside"; the tooltip has it in full."""
    odds = words.removeprefix("likely inside: ").replace("more than ", "> ").replace("fewer than ", "< ")
    if odds.startswith("likely outside: "):
        return QCoreApplication.translate("Outcome", "{0} outside").format(odds.removeprefix("likely outside: "))
    return odds


def state_words(state: str) -> str:
    """A state of the verdict in the maker's language."""
    return QCoreApplication.translate("Outcome", STATE_WORDS[state])


def paint_state(painter: QPainter, at: QPointF, state: str) -> None:
    """The shape of a state: ring met, triangle near, cross not met."""
    c = dress.colours()
    painter.setPen(QPen(dress.ink(getattr(c, COLOUR[state])), 1.8))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    if state == MET:
        painter.drawEllipse(at, 3.4, 3.4)
    elif state == NEAR:
        painter.drawPolygon(QPolygonF([at + QPointF(-4, 3.2), at + QPointF(4, 3.2), at + QPointF(0, -3.8)]))
    else:
        painter.drawLine(at + QPointF(-3.4, -3.4), at + QPointF(3.4, 3.4))
        painter.drawLine(at + QPointF(-3.4, 3.4), at + QPointF(3.4, -3.4))


class OutcomePanel(QWidget):
    """Verdict, outcomes, cautions."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._name = QLabel(self)
        self._name.setFont(dress.font("head", bold=True))
        self._verdict = QLabel(self)
        self._verdict.setWordWrap(True)
        self._verdict.setFont(dress.font("note"))
        self._verdict.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.list = OutcomeList(session, self)
        self._cautions = QLabel(self)
        self._cautions.setWordWrap(True)
        self._cautions.setFont(dress.font("note"))
        self._cautions.setContentsMargins(16, 8, 14, 10)
        inside = QWidget(self)
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 10, 0, 0)
        column.setSpacing(4)
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
        area = QScrollArea(self)
        area.setWidget(inside)
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        area.setAccessibleName(self.tr("Outcomes of the make"))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(area)
        session.forecastChanged.connect(self.refresh)
        session.bandsChanged.connect(self.refresh)
        self.refresh()

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.list.system = system
        self.refresh()

    @Slot()
    def refresh(self) -> None:
        """Show what the forecast and the verdict say."""
        verdict, forecast = self.session.verdict, self.session.forecast
        self.list.refresh()
        if verdict is None:
            _write(self._name, self.tr("Outcomes"))
            _write(self._verdict, self.tr("No style is chosen, so nothing is checked."))
        else:
            _write(self._name, verdict.name)
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
