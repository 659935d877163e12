"""Keys and gestures on one page: to read, to save as a PDF, to pin up beside the vat."""

from __future__ import annotations

from html import escape
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QEvent, QMarginsF, QSaveFile
from PySide6.QtGui import QPageLayout, QPageSize, QPdfWriter, QTextDocument
from PySide6.QtWidgets import QDialog, QFileDialog, QHBoxLayout, QPushButton, QTextBrowser, QVBoxLayout, QWidget

from widgets.help.action_list import Found
from widgets.theme import apply as dress
from widgets.together import Wrapped


def gestures() -> list[tuple[str, str]]:
    """(what you do, what it does) on the make curve and in the lists."""
    tr = QCoreApplication.translate
    return [
        (tr("Keys", "Drag a stage's edge"), tr("Keys", "its length; a diamond asks for another state")),
        (tr("Keys", "Drag a corner"), tr("Keys", "the temperature there")),
        (tr("Keys", "Drag a rounded figure"), tr("Keys", "that setting: cut, load, salt, whey off")),
        (tr("Keys", "Shift while dragging"), tr("Keys", "lets go of round values")),
        (tr("Keys", "Ctrl while dragging"), tr("Keys", "turns “move along” and “keep the end” round")),
        (tr("Keys", "Esc while dragging"), tr("Keys", "puts everything back")),
        (tr("Keys", "Tab on the curve"), tr("Keys", "goes from handle to handle")),
        (tr("Keys", "Arrows on a handle"), tr("Keys", "change it; Page Up and Down more, Shift less")),
        (tr("Keys", "Enter on a handle"), tr("Keys", "types the value")),
        (tr("Keys", "Wheel"), tr("Keys", "zooms; with Shift it pans; dragging the curves pans too")),
        (tr("Keys", "Drag a stage by its name"), tr("Keys", "puts it elsewhere in the make")),
        (tr("Keys", "Right click or menu key"), tr("Keys", "says what else can be done there")),
        (tr("Keys", "Double-click a stage"), tr("Keys", "shows it alone")),
        (tr("Keys", "Enter on an outcome"), tr("Keys", "opens it: its limits, why, what moves it, aim")),
        (tr("Keys", "A figure typed on an outcome"), tr("Keys", "is the value to aim at; Enter looks for the way")),
        (tr("Keys", "L on a handle or lever"), tr("Keys", "keeps it as it is while you aim; Ctrl+L in a field")),
        (tr("Keys", "Left, Right on a lever"), tr("Keys", "previews a step; Enter keeps it")),
    ]  # fmt: skip


def page(found: list[Found], ink: str, soft: str, line: str) -> str:
    """The page as HTML: gestures, then every action that has a key, by menu."""
    tr = QCoreApplication.translate

    def row(left: str, right: str) -> str:
        return (
            f'<tr><td style="padding:2px 18px 2px 0;white-space:nowrap"><b>{escape(left)}</b></td>'
            f'<td style="padding:2px 0">{escape(right)}</td></tr>'
        )

    parts = [f'<div style="color:{ink}"><h2>{escape(tr("Keys", "Keys and gestures"))}</h2>']
    parts.append("<table>" + "".join(row(*pair) for pair in gestures()) + "</table>")
    where = ""
    for one in found:
        if not one.keys:
            continue
        if one.where != where:
            parts.append("</table>" if where else "")
            where = one.where
            parts.append(f'<h4 style="color:{soft}">{escape(where)}</h4><table>')
        parts.append(row(one.keys, one.words))
    return "".join(parts) + ("</table>" if where else "") + "</div>"


class Keys(QDialog):
    """The page on the screen."""

    def __init__(self, found: list[Found], parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Keys and gestures"))
        self.resize(660, 600)
        self._found = found
        self.text = QTextBrowser(self)
        self.text.setAccessibleName(self.tr("Keys and gestures"))
        self._write()
        self.said = Wrapped(self)
        self.said.setProperty("role", "soft")
        self.pdf = QPushButton(self.tr("Save as PDF…"), self)
        self.pdf.setAutoDefault(False)
        self.pdf.clicked.connect(self._ask)
        close = QPushButton(self.tr("Close"), self)
        close.clicked.connect(self.close)
        foot = QHBoxLayout()
        foot.addWidget(self.said, 1)
        foot.addWidget(self.pdf)
        foot.addWidget(close)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 16, 16, 14)
        column.addWidget(self.text, 1)
        column.addLayout(foot)

    def _write(self) -> None:
        c = dress.colours()
        self.text.setHtml(page(self._found, c.ink, c.soft, c.line))

    def changeEvent(self, event: QEvent) -> None:
        """Another palette while it is open."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange and self.isVisible():
            self._write()

    def _ask(self) -> None:
        name, _ = QFileDialog.getSaveFileName(self, self.tr("Save the keys"), "keys.pdf", self.tr("PDF (*.pdf)"))
        if name:
            self.save_to(Path(name))

    def save_to(self, path: Path) -> bool:
        """Write the page as a PDF in black on white; False, with the reason said, where that failed."""
        out = QSaveFile(str(path))
        if not out.open(QSaveFile.OpenModeFlag.WriteOnly):
            self.said.setText(self.tr("The keys could not be written: {0}").format(out.errorString()))
            return False
        writer = QPdfWriter(out)
        writer.setTitle(self.tr("Keys and gestures"))
        writer.setPageLayout(
            QPageLayout(
                QPageSize(QPageSize.PageSizeId.A4), QPageLayout.Orientation.Portrait, QMarginsF(18, 16, 18, 16),
                QPageLayout.Unit.Millimeter,
            )
        )  # fmt: skip
        document = QTextDocument()
        document.documentLayout().setPaintDevice(writer)
        document.setDefaultFont(dress.font("body"))
        document.setHtml(page(self._found, "#000000", "#444444", "#888888"))
        document.print_(writer)
        del document, writer  # the writer ends its file when it goes
        if not out.commit():
            self.said.setText(self.tr("The keys could not be written: {0}").format(out.errorString()))
            return False
        self.said.setText(self.tr("Written to {0}").format(path))
        return True
