"""One function that dresses the application: style, palette, type scale and the few rules of the style sheet."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path
from typing import Final

from PySide6.QtCore import QDir, Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QFontMetricsF, QGuiApplication, QPalette
from PySide6.QtWidgets import QApplication

from widgets.theme.colour import mix
from widgets.theme.palette import CONTRAST, DARK, LIGHT, PALETTES, Colours

SCHEMES: Final = ("system", "light", "dark", "contrast")
# Faces that read well in small sizes, best first; the last is on every system of ours.
FACES: Final = ("Source Sans 3", "Noto Sans", "Segoe UI", "Helvetica Neue", "Cantarell", "Ubuntu", "DejaVu Sans")
# Type scale in points: notes, body, headings of a part, the figure of an outcome, title.
SCALE: Final = {"note": 8.5, "body": 9.5, "head": 10.5, "figure": 12.5, "title": 15.0}

_current: Colours = LIGHT
_larger = 1.0
"""how much larger all type is than at the desk"""
_dressed = 0
"""counts the dressings, so that what was measured in another font is measured again"""


def colours() -> Colours:
    """The palette in force."""
    return _current


@lru_cache(maxsize=1024)
def ink(text: str, alpha: float = 1.0) -> QColor:
    """A colour "#RRGGBB" for painting, with opacity; not to be changed, it is shared."""
    made = QColor(text)
    made.setAlphaF(alpha)
    return made


def font(role: str, *, bold: bool = False) -> QFont:
    """The font of a role of the type scale, following the application's base size."""
    return _font(role, bold, _dressed)


def metrics(role: str, *, bold: bool = False) -> QFontMetricsF:
    """The measures of a role's font."""
    return _metrics(role, bold, _dressed)


def width(text: str, role: str, *, bold: bool = False) -> float:
    """How wide a text is in a role's font; remembered, because the same texts are measured in every frame."""
    return _width(text, role, bold, _dressed)


def fitted(text: str, role: str, room: float, *, bold: bool = False) -> str:
    """A text cut to a room in pixels; remembered."""
    return _fitted(text, role, bold, int(room), _dressed)


@lru_cache(maxsize=4096)
def _fitted(text: str, role: str, bold: bool, room: int, base: int) -> str:
    return _metrics(role, bold, base).elidedText(text, Qt.TextElideMode.ElideRight, room)


@lru_cache(maxsize=4096)
def _width(text: str, role: str, bold: bool, base: int) -> float:
    return _metrics(role, bold, base).horizontalAdvance(text)


@lru_cache(maxsize=64)
def _metrics(role: str, bold: bool, base: int) -> QFontMetricsF:
    return QFontMetricsF(_font(role, bold, base))


@lru_cache(maxsize=64)
def _font(role: str, bold: bool, _base: int) -> QFont:
    base = QApplication.font()
    made = QFont(base)
    made.setPointSizeF(base.pointSizeF() * SCALE[role] / SCALE["body"])
    made.setWeight(QFont.Weight.DemiBold if bold else QFont.Weight.Normal)
    return made


def wish() -> Colours:
    """What the system asks for: high contrast, or dark, else light."""
    hints = QGuiApplication.styleHints()
    if hints.accessibility().contrastPreference() == Qt.ContrastPreference.HighContrast:
        return CONTRAST
    return DARK if hints.colorScheme() == Qt.ColorScheme.Dark else LIGHT


def resolve(scheme: str) -> Colours:
    """The palette of a scheme; "system" follows the system."""
    return wish() if scheme == "system" else PALETTES[scheme]


def wears(scheme: str) -> bool:
    """True where the application is dressed in what the scheme asks for."""
    return _dressed > 0 and resolve(scheme) is _current


def enlarge(app: QApplication, scheme: str, larger: float) -> None:
    """Dress the application again with all type so much larger; 1 is the desk."""
    global _larger
    _larger = larger
    apply(app, scheme)


def apply(app: QApplication, scheme: str = "system") -> Colours:
    """Dress the application in a scheme of `SCHEMES` and return its colours."""
    global _current, _dressed
    _current = resolve(scheme)
    QDir.setSearchPaths("curdwright", [str(Path(__file__).parent)])
    app.setStyleSheet("")  # bare, every widget takes the rest up at once: three times as quick as over the old sheet
    app.setStyle("Fusion")
    face = next((name for name in FACES if name in QFontDatabase.families()), app.font().family())
    base = QFont(face)
    base.setPointSizeF(SCALE["body"] * _larger)
    base.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    app.setFont(base)
    _dressed += 1  # not before: a widget that measures itself meanwhile must not keep the old type as the new
    app.setPalette(_palette(_current))
    app.setStyleSheet(_sheet(_current))
    return _current


def _palette(c: Colours) -> QPalette:
    made = QPalette()
    role = QPalette.ColorRole
    for which, colour in (
        (role.Window, c.window),
        (role.WindowText, c.ink),
        (role.Base, c.field),
        (role.AlternateBase, c.panel),
        (role.Text, c.ink),
        (role.PlaceholderText, c.soft),
        (role.Button, c.panel),
        (role.ButtonText, c.ink),
        (role.BrightText, c.miss),
        (role.ToolTipBase, c.ink),
        (role.ToolTipText, c.paper),
        (role.Highlight, c.accent),
        (role.HighlightedText, c.accent_ink),
        (role.Link, c.accent),
        (role.LinkVisited, c.accent),
        (role.Light, mix(c.panel, "#FFFFFF", 0.2)),
        (role.Midlight, c.line),
        (role.Mid, c.line),
        (role.Dark, mix(c.line, "#000000", 0.3)),
        (role.Shadow, mix(c.line, "#000000", 0.6)),
        (role.Accent, c.accent),
    ):
        made.setColor(which, QColor(colour))
    off = QColor(c.of("off"))
    for which in (role.WindowText, role.Text, role.ButtonText):
        made.setColor(QPalette.ColorGroup.Disabled, which, off)
    return made


def _sheet(c: Colours) -> str:
    hover, stripe, off = c.of("hover"), c.of("stripe"), c.of("off")
    edge = "2px" if c is CONTRAST else "1px"
    return f"""
    QToolTip {{ background: {c.ink}; color: {c.paper}; border: 0; padding: 4px 7px; }}
    QMenuBar {{ background: {c.window}; padding: 1px 4px; }}
    QMenuBar::item {{ padding: 4px 9px; border-radius: 4px; background: transparent; }}
    QMenuBar::item:selected {{ background: {c.chosen}; }}
    QMenu {{ background: {c.panel}; border: 1px solid {c.line}; padding: 4px; }}
    QMenu::item {{ padding: 5px 26px 5px 22px; border-radius: 4px; }}
    QMenu::item:selected {{ background: {c.chosen}; color: {c.ink}; }}
    QMenu::separator {{ height: 1px; background: {c.line}; margin: 4px 8px; }}
    QToolBar {{ background: {c.window}; border: 0; spacing: 2px; padding: 3px 8px; }}
    QToolBar::separator {{ width: 1px; background: {c.line}; margin: 5px 7px; }}
    QToolButton {{ border: 0; border-radius: 5px; padding: 5px; color: {c.ink}; background: transparent; }}
    QToolButton:hover {{ background: {hover}; }}
    QToolButton:pressed, QToolButton:checked {{ background: {c.chosen}; }}
    QToolButton:focus {{ outline: 0; border: {edge} solid {c.accent}; padding: 4px; }}
    QToolButton:disabled {{ color: {off}; }}
    QToolButton[role="chip"] {{ border: 1px solid {c.line}; border-radius: 9px; padding: 2px 10px;
        background: {c.field}; color: {c.soft}; }}
    QToolButton[role="chip"]:hover {{ background: {hover}; }}
    QToolButton[role="chip"]:checked {{ background: {c.chosen}; color: {c.ink}; border: 1px solid {c.accent}; }}
    QToolButton[role="chip"]:focus {{ border: 2px solid {c.accent}; padding: 1px 9px; }}
    QStatusBar {{ background: {c.window}; color: {c.soft}; }}
    QStatusBar::item {{ border: 0; }}
    QLineEdit, QPlainTextEdit, QTimeEdit {{
        background: {c.field}; color: {c.ink}; border: 1px solid {c.line}; border-radius: 4px;
        padding: 3px 7px; min-height: 20px; selection-background-color: {c.accent};
        selection-color: {c.accent_ink}; }}
    QTimeEdit > QLineEdit {{ border: 0; padding: 0 7px; min-height: 0; background: transparent; }}
    QTimeEdit::up-button, QTimeEdit::down-button {{ width: 0; border: 0; }}
    QLineEdit {{ placeholder-text-color: {c.soft}; }}
    QLineEdit:focus, QPlainTextEdit:focus, QTimeEdit:focus {{ border: {edge} solid {c.accent}; }}
    QLineEdit[wrong="true"] {{ border: {edge} solid {c.miss}; }}
    QLineEdit:disabled, QTimeEdit:disabled {{ color: {c.soft}; background: {c.panel}; }}
    QComboBox {{ background: {c.field}; color: {c.ink}; border: 1px solid {c.line}; border-radius: 4px;
        padding: 3px 7px; min-height: 20px; }}
    QComboBox::drop-down {{ border: 0; width: 22px; }}
    QComboBox::down-arrow {{ image: url(curdwright:arrow-{c.name}.svg); width: 12px; height: 12px; }}
    QComboBox:focus {{ border: {edge} solid {c.accent}; }}
    QComboBox QAbstractItemView {{ background: {c.panel}; border: 1px solid {c.line}; outline: 0;
        selection-background-color: {c.chosen}; selection-color: {c.ink}; }}
    QPushButton {{ background: {c.field}; border: 1px solid {c.line}; border-radius: 5px; padding: 5px 14px;
        min-height: 18px; color: {c.ink}; }}
    QPushButton:hover {{ background: {hover}; }}
    QPushButton:focus {{ border: {edge} solid {c.accent}; }}
    QPushButton#row {{ border: 1px solid transparent; background: transparent; text-align: left; padding: 2px; }}
    QPushButton#row:hover, QPushButton#row:pressed {{ background: {hover}; }}
    QPushButton#row:focus {{ border: {edge} solid {c.accent}; }}
    QPushButton[strong="true"] {{ background: {c.accent}; color: {c.accent_ink}; border: 0; }}
    QPushButton[strong="true"]:focus {{ border: 3px double {c.accent_ink}; padding: 2px 11px; }}
    QPushButton:disabled, QPushButton[strong="true"]:disabled {{ background: {c.panel}; border: 1px solid {c.line};
        color: {off}; }}
    QScrollArea, QScrollArea > QWidget > QWidget {{ background: transparent; border: 0; }}
    QScrollArea {{ border: {edge} solid transparent; }}
    QScrollArea#edge {{ border: 0; }}
    QScrollArea:focus, QGraphicsView:focus {{ border: {edge} solid {c.accent}; }}
    QScrollBar:vertical {{ background: transparent; width: 10px; margin: 0; }}
    QScrollBar::handle:vertical {{ background: {mix(c.line, c.soft, 0.35)}; border-radius: 4px; min-height: 28px;
        margin: 1px 2px; }}
    QScrollBar:horizontal {{ background: transparent; height: 10px; margin: 0; }}
    QScrollBar::handle:horizontal {{ background: {mix(c.line, c.soft, 0.35)}; border-radius: 4px; min-width: 28px;
        margin: 2px 1px; }}
    QScrollBar::add-line, QScrollBar::sub-line {{ width: 0; height: 0; }}
    QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
    QTreeView {{ background: {c.panel}; alternate-background-color: {stripe};
        border: {edge} solid transparent; selection-background-color: {c.chosen}; selection-color: {c.ink};
        outline: 0; }}
    QTreeView:focus, QTableView:focus {{ border: {edge} solid {c.accent}; }}
    QRadioButton, QCheckBox {{ min-height: 24px; border: {edge} solid transparent; border-radius: 4px;
        padding: 0 3px; }}
    QRadioButton::indicator, QCheckBox::indicator {{ width: 14px; height: 14px; background: {c.field};
        border: 1px solid {c.soft}; border-radius: 3px; }}
    QRadioButton::indicator {{ border-radius: 8px; }}
    QRadioButton::indicator:checked {{ border-color: {c.accent}; background: qradialgradient(cx:0.5, cy:0.5,
        radius:0.5, fx:0.5, fy:0.5, stop:0 {c.accent}, stop:0.55 {c.accent}, stop:0.65 {c.field}); }}
    QCheckBox::indicator:checked {{ border-color: {c.accent}; background: {c.accent};
        image: url(curdwright:tick-{c.name}.svg); }}
    QRadioButton::indicator:disabled, QCheckBox::indicator:disabled {{ border-color: {off}; }}
    QRadioButton:focus, QCheckBox:focus {{ border: {edge} solid {c.accent}; }}
    QProgressBar {{ background: {c.field}; border: 1px solid {c.line}; border-radius: 4px; max-height: 8px; }}
    QProgressBar::chunk {{ background: {c.accent}; border-radius: 3px; }}
    QListView {{ background: {c.field}; border: 1px solid {c.line}; border-radius: 4px; outline: 0; }}
    QListView:focus {{ border: {edge} solid {c.accent}; }}
    QListView::item {{ padding: 4px 6px; min-height: 18px; }}
    QListView::item:selected {{ background: {c.chosen}; color: {c.ink}; }}
    QTreeView::item {{ padding: 4px 6px 4px 2px; }}
    QTableView {{ background: {c.panel}; alternate-background-color: {stripe};
        border: {edge} solid transparent; selection-background-color: {c.chosen}; selection-color: {c.ink};
        outline: 0; }}
    QTableView::item:focus {{ border: {edge} solid {c.accent}; }}
    QTableView QLineEdit {{ border-radius: 0; padding: 0 4px; min-height: 0; }}
    QHeaderView::section {{ background: {c.window}; color: {c.soft}; border: 0; border-bottom: 1px solid {c.line};
        padding: 5px 6px; }}
    QTableCornerButton::section {{ background: {c.window}; border: 0; border-bottom: 1px solid {c.line}; }}
    QTableView#lanes {{ background: transparent; font-size: {SCALE["note"]}pt; }}
    QTableView#lanes::item {{ padding: 0 1px; border-bottom: 1px solid {c.line}; }}
    QTableView#lanes::item:selected {{ background: {c.chosen}; color: {c.ink}; }}
    QTableView#lanes QHeaderView, QTableView#lanes QTableCornerButton::section {{ background: transparent; border: 0; }}
    QTableView#lanes QHeaderView::section {{ background: transparent; padding: 2px 1px; font-size: {SCALE["note"]}pt; }}
    QTableView#lanes QHeaderView::section:vertical {{ color: {c.ink}; padding: 2px 4px 2px 6px; }}
    QSplitter::handle {{ background: {c.line}; }}
    QLabel[role="soft"] {{ color: {c.soft}; }}
    QLabel[role="near"] {{ color: {c.near}; }}
    QLabel[role="wrong"] {{ color: {c.miss}; }}
    QFrame#note {{ background: {c.panel}; border: 2px solid {c.accent}; border-radius: 8px; }}
    QTextBrowser {{ background: {c.field}; border: 1px solid {c.line}; border-radius: 4px; padding: 6px; }}
    QTextBrowser:focus {{ border: {edge} solid {c.accent}; }}
    QFrame#card {{ background: {c.panel}; border: 1px solid {c.line}; border-radius: 8px; }}
    QWidget#panel {{ background: {c.panel}; }}
    QWidget#places {{ background: {c.window}; border-right: 1px solid {c.line}; }}
    QFrame#hairline {{ background: {c.line}; border: 0; max-height: 1px; min-height: 1px; }}
    """
