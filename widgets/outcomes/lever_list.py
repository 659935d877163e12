"""What moves an outcome, painted: each setting with its effect a natural step both ways.

Pointing at a way previews it, a click or a key keeps it. Up and down choose the setting, left and right the way.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal, Slot
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from designer.judge.levers import Lever, Spread
from designer.judge.movable import Movable
from designer.units import System
from widgets import wording
from widgets.outcomes.figures import change_words
from widgets.outcomes.spoken import Spoken, SpokenLines
from widgets.theme import apply as dress

FIRST_SHOWN: Final = 8
"""Settings shown before all are asked for."""
CHIP_PX: Final = 24.0
GAP_PX: Final = 6.0
WHISKER_PX: Final = 3.5
LESS, MORE = -1, 1


@dataclass(frozen=True, slots=True)
class Way:
    """A setting of the list and the way it is moved."""

    setting: Movable
    sign: int


class LeverList(QWidget):
    """The settings that move one outcome, the strongest first."""

    pointed = Signal(object)
    """a Way to preview, None where nothing is pointed at any more"""
    chosen = Signal(object)
    """a Way to keep"""
    locked = Signal(object)
    """a Movable to lock for aim, or to free again"""
    left = Signal()
    """Esc"""

    def __init__(self, key: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.key = key
        self.system: System = "metric"
        self.levers: tuple[Lever, ...] = ()
        self.bands: dict[tuple[tuple[str, str], int], tuple[float, float]] = {}
        """the 80 % band of an effect, by path of the setting and sign; only of the strongest, and later"""
        self.locks: frozenset[tuple[str, str]] = frozenset()
        self.every = False
        self.pale = True
        self.at: Way | None = None
        self._path: tuple[str, str] | None = None
        self._sign = MORE
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("What moves it"))
        self.spoken = SpokenLines(self)
        self.spoken.pressed.connect(self._press)
        self.spoken.entered.connect(self._enter)

    # ---- what is shown

    def put(self, levers: tuple[Lever, ...]) -> None:
        """Show these."""
        self.levers, self.pale, self.bands = levers, False, {}
        self.updateGeometry()
        self.update()
        self._describe()

    def put_bands(self, spreads: tuple[Spread, ...]) -> None:
        """How sure the effects of the strongest are."""
        ways = [
            ((one.setting.path, sign), band) for one in spreads for sign, band in ((MORE, one.up), (LESS, one.down))
        ]
        self.bands = {way: band for way, band in ways if band[0] == band[0]}
        self.update()
        self._describe()

    @Slot(object)
    def put_locks(self, locks: frozenset[tuple[str, str]]) -> None:
        """The settings that aim must leave as they are."""
        self.locks = locks
        self.update()
        self._describe()

    def set_pale(self) -> None:
        """The figures are those of before; new ones are on their way."""
        self.pale = True
        self.update()

    def show_every(self, every: bool) -> None:
        """All settings, or the strongest."""
        self.every = every
        self.updateGeometry()
        self.update()
        self._speak()

    @property
    def shown(self) -> tuple[Lever, ...]:
        """The settings in the list."""
        return self.levers if self.every else self.levers[:FIRST_SHOWN]

    @property
    def row(self) -> int:
        """Where the keyboard is."""
        return next((k for k, lever in enumerate(self.shown) if lever.setting.path == self._path), 0)

    def words(self, lever: Lever, sign: int) -> tuple[str, str]:
        """What is done to the setting, and what that does to the outcome; "" where it can't be done."""
        setting, effect = lever.setting, lever.up if sign > 0 else lever.down
        if effect != effect:
            return self.tr("at its end"), ""
        return setting.shown_change(sign * setting.step, self.system), change_words(self.key, effect, self.system)

    def told(self, lever: Lever) -> str:
        """A setting as text."""
        ways = [
            " ".join((*self.words(lever, sign), self.band_words(lever.setting.path, sign))).strip()
            for sign in (MORE, LESS)
        ]
        return f"{lever.setting.title} {self._now(lever)}: {' / '.join(ways)}"

    def _now(self, lever: Lever) -> str:
        now = lever.setting.shown(system=self.system)
        return self.tr("{0}, locked").format(now) if lever.setting.path in self.locks else now

    def band_words(self, path: tuple[str, str], sign: int) -> str:
        """How far 8 in 10 makes lie apart in what a way does, "" where that was not worked out."""
        band = self.bands.get((path, sign))
        if band is None:
            return ""
        low, high = (change_words(self.key, end, self.system) for end in band)
        return self.tr("(8 in 10 makes: {0} to {1})").format(low, high)

    # ---- places

    @staticmethod
    def _row_px() -> float:
        return float(dress.metrics("note").height()) + CHIP_PX + 12.0

    def sizeHint(self) -> QSize:
        """As tall as its settings."""
        return QSize(240, round(self._row_px() * max(1, len(self.shown))))

    def chip(self, row: int, sign: int) -> QRectF:
        """Where a way of a setting is painted and pressed."""
        wide = (self.width() - GAP_PX) / 2.0
        left = 0.0 if sign < 0 else wide + GAP_PX
        return QRectF(left, row * self._row_px() + dress.metrics("note").height() + 5.0, wide, CHIP_PX)

    def way_at(self, at: QPointF) -> Way | None:
        """The way under a point."""
        row = int(at.y() // self._row_px())
        if not 0 <= row < len(self.shown):
            return None
        sign = next((sign for sign in (LESS, MORE) if self.chip(row, sign).contains(at)), None)
        return self._way(row, sign) if sign is not None else None

    def _way(self, row: int, sign: int) -> Way | None:
        lever = self.shown[row]
        effect = lever.up if sign > 0 else lever.down
        return Way(lever.setting, sign) if effect == effect else None

    def ways(self) -> list[Way]:
        """What can be pointed at of the strongest settings."""
        found = (self._way(row, sign) for row in range(len(self.shown[:FIRST_SHOWN])) for sign in (LESS, MORE))
        return [way for way in found if way is not None]

    def whisker(self, row: int, sign: int) -> tuple[float, float, float] | None:
        """Where the band of a way begins, its effect stands and it ends [px]; all of the list to one scale."""
        lever = self.shown[row]
        band = self.bands.get((lever.setting.path, sign))
        if band is None:
            return None
        every = [end for one in self.bands.values() for end in one] + [
            end for one in self.levers for end in (one.up, one.down) if end == end
        ]
        low, high = min(0.0, *every), max(0.0, *every)
        box = self.chip(row, sign)

        def place(value: float) -> float:
            return box.left() + (value - low) / max(high - low, 1e-12) * box.width()

        return place(band[0]), place(lever.up if sign > 0 else lever.down), place(band[1])

    # ---- pointing and keys

    def _point(self, way: Way | None) -> None:
        if way != self.at:
            before, self.at = self.at, way
            self.pointed.emit(way)
            for row, lever in enumerate(self.shown):
                if any(one is not None and one.setting.path == lever.setting.path for one in (before, way)):
                    self.update(self.row_box(row).toAlignedRect())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Preview what is pointed at: a pointer that rests while the list slides under it asks for nothing."""
        way = self.way_at(event.position())
        self.setCursor(Qt.CursorShape.PointingHandCursor if way is not None else Qt.CursorShape.ArrowCursor)
        self._point(way)

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is pointed at any more."""
        self._point(None)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Keep the way under the pointer."""
        way = self.way_at(event.position())
        if event.button() == Qt.MouseButton.LeftButton and way is not None:
            self._path, self._sign = way.setting.path, way.sign
            self._keep(way)

    def _keep(self, way: Way | None) -> None:
        if way is not None:
            self.at = None
            self.chosen.emit(way)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """By keyboard the setting it stands on is pointed at."""
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self._go(self.row, self._sign)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Nothing is pointed at any more."""
        super().focusOutEvent(event)
        self._point(None)
        self.update()

    def _go(self, row: int, sign: int) -> None:
        if self.shown:
            row = min(max(row, 0), len(self.shown) - 1)
            self._path, self._sign = self.shown[row].setting.path, sign
            self._point(self._way(row, sign))
            self.setAccessibleDescription(self.told(self.shown[row]))
            self.spoken.point((self._path, sign))
            self.update()

    def _describe(self) -> None:
        self.setAccessibleDescription(self.told(self.shown[self.row]) if self.shown else "")
        self._speak()

    def _speak(self) -> None:
        """Tell every way of every setting to a screen reader."""
        self.spoken.put(
            Spoken(
                (lever.setting.path, sign), f"{lever.setting.title} {self._now(lever)}, {' '.join(said)}".rstrip(),
                self.band_words(lever.setting.path, sign), self.chip(row, sign).toAlignedRect(), can=bool(said[1]),
            )
            for row, lever in enumerate(self.shown)
            for sign in (LESS, MORE)
            for said in (self.words(lever, sign),)
        )  # fmt: skip

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width for the ways."""
        super().resizeEvent(event)
        self._speak()

    @Slot(object)
    def _press(self, way: tuple[tuple[str, str], int]) -> None:
        """A screen reader presses a way: it is kept."""
        self._path, self._sign = way
        self._keep(self._way(self.row, self._sign))

    @Slot(object)
    def _enter(self, way: tuple[tuple[str, str], int]) -> None:
        """A screen reader goes to a way."""
        self._path, sign = way
        self.setFocus()
        self._go(self.row, sign)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows point, plus, minus and Enter keep, L locks for aim, Esc leaves."""
        key = event.key()
        ways = {
            Qt.Key.Key_Up: (-1, 0), Qt.Key.Key_Down: (1, 0), Qt.Key.Key_Left: (0, LESS), Qt.Key.Key_Right: (0, MORE),
        }  # fmt: skip
        signs = {
            Qt.Key.Key_Plus: MORE, Qt.Key.Key_Equal: MORE, Qt.Key.Key_Minus: LESS, Qt.Key.Key_Return: self._sign,
            Qt.Key.Key_Enter: self._sign, Qt.Key.Key_Space: self._sign,
        }  # fmt: skip
        if key in ways:
            by, sign = ways[Qt.Key(key)]
            self._go(self.row + by, sign or self._sign)
        elif key in signs and self.shown:
            self._sign = signs[Qt.Key(key)]
            row = self.row
            self._path = self.shown[row].setting.path
            self._keep(self._way(row, self._sign))
        elif key == Qt.Key.Key_L and self.shown:
            self.locked.emit(self.shown[self.row].setting)
        elif key == Qt.Key.Key_Escape:
            self._point(None)
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def row_box(self, row: int) -> QRectF:
        """Where a setting is painted."""
        return QRectF(0, row * self._row_px(), self.width(), self._row_px())

    # ---- painting

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the settings that show."""
        painter = QPainter(self)
        try:
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            if not self.shown:
                painter.setFont(dress.font("note"))
                painter.setPen(dress.ink(dress.colours().soft))
                words = self.tr("Being worked out…") if self.pale else self.tr("Nothing in this make moves it.")
                painter.drawText(QPointF(0, dress.metrics("note").ascent() + 4), words)
            for row, lever in enumerate(self.shown):
                if self.row_box(row).intersects(QRectF(event.rect())):
                    self._paint_row(painter, row, lever)
        finally:
            painter.end()

    def _paint_row(self, painter: QPainter, row: int, lever: Lever) -> None:
        c = dress.colours()
        base = row * self._row_px() + dress.metrics("note").ascent() + 1
        now = self._now(lever)
        wide = dress.width(now, "note")
        painter.setFont(dress.font("note"))
        painter.setPen(dress.ink(c.soft if self.pale else c.ink))
        painter.drawText(QPointF(0, base), dress.fitted(lever.setting.title, "note", self.width() - wide - 12))
        painter.setPen(dress.ink(c.soft))
        painter.drawText(QPointF(self.width() - wide, base), now)
        for sign in (LESS, MORE):
            self._paint_chip(painter, row, lever, sign)
            self._paint_whisker(painter, row, sign)

    def _paint_whisker(self, painter: QPainter, row: int, sign: int) -> None:
        """Below a way: a line as long as its band, a dot where its effect stands."""
        found = self.whisker(row, sign)
        if found is None or self.pale:
            return
        low, at, high = found
        y = self.chip(row, sign).bottom() + WHISKER_PX
        painter.setPen(QPen(dress.ink(dress.colours().soft), 1.0))
        painter.drawLine(QPointF(low, y), QPointF(high, y))
        for end in (low, high):
            painter.drawLine(QPointF(end, y - 2.0), QPointF(end, y + 2.0))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(dress.ink(dress.colours().ink))
        painter.drawEllipse(QPointF(at, y), 2.0, 2.0)

    def _paint_chip(self, painter: QPainter, row: int, lever: Lever, sign: int) -> None:
        c, box = dress.colours(), self.chip(row, sign).adjusted(0.75, 0.75, -0.75, -0.75)
        done, effect = self.words(lever, sign)
        pointed = self.at is not None and self.at.setting.path == lever.setting.path and self.at.sign == sign
        held = self.hasFocus() and row == self.row and sign == self._sign
        painter.setBrush(dress.ink(c.chosen if pointed else c.field if effect else c.panel))
        painter.setPen(QPen(dress.ink(c.accent if held or pointed else c.line), 2.0 if held else 1.0))
        painter.drawRoundedRect(box, 5, 5)
        base = box.center().y() + dress.metrics("note").ascent() / 2.0 - 1.5
        painter.setFont(dress.font("note"))
        painter.setPen(dress.ink(c.soft if not pointed else c.ink))
        wide = dress.width(effect, "note", bold=True)
        painter.drawText(QPointF(box.left() + 8, base), dress.fitted(done, "note", box.width() - wide - 22))
        painter.setFont(dress.font("note", bold=True))
        painter.setPen(dress.ink(c.of("pale") if self.pale else c.ink))
        painter.drawText(QPointF(box.right() - 8 - wide, base), effect)


def undo_text(way: Way, system: System) -> str:
    """What undoing it is called: "cook: temperature −0.5 °C"."""
    change = way.setting.shown_change(way.sign * way.setting.step, system)
    return f"{way.setting.title} {change.replace('-', wording.MINUS)}"
