"""The plan on the screen as it will leave the printer, with the ways out: PDF file or printer."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Final

from PySide6.QtCore import QCoreApplication, QEvent, Qt, QTimer, Slot
from PySide6.QtGui import QColor, QKeySequence, QPainter, QShortcut, QShowEvent
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo, QPrintPreviewWidget
from PySide6.QtWidgets import (
    QComboBox,
    QFileDialog,
    QGraphicsView,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from designer.plan.sheet import A4, PAPERS, Paper, Sheet
from widgets.paper.draw import page_layout, paint_page, write_pdf
from widgets.paper.layout import layout
from widgets.theme import apply as dress
from widgets.together import Wrapped

READABLE_PX: Final = 420
"""How wide a page is at least where two stand beside each other."""


def _tr(text: str) -> str:
    return QCoreApplication.translate("Paper", text)


class PlanPreview(QWidget):
    """Shows the sheet that `make_sheet(paper)` gives; call `refresh` when the recipe has changed."""

    def __init__(
        self, make_sheet: Callable[[Paper], Sheet], parent: QWidget | None = None, *, name: str = "", file: str = ""
    ) -> None:
        """`name` says what is shown, `file` what its PDF is called; without them it is the plan of the make."""
        super().__init__(parent)
        self._file = file or "plan.pdf"
        self._make_sheet = make_sheet
        self._sheet: Sheet | None = None
        self._printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        self._printer.setFullPage(True)
        self._view = QPrintPreviewWidget(self._printer, self)
        self._view.setAccessibleName(name or _tr("Plan of the make, as printed"))
        for part in (pages := self._view.findChild(QGraphicsView), pages.viewport()):
            part.setAccessibleName(self._view.accessibleName())
        self._pages: QGraphicsView = pages
        self._ground()
        self._view.setAllPagesViewMode()
        self._view.paintRequested.connect(self.paint)
        self.paper = QComboBox(self)
        self.paper.setAccessibleName(_tr("Paper size"))
        for key, paper in PAPERS.items():
            self.paper.addItem(paper.name, key)
        self.paper.currentIndexChanged.connect(self.refresh)
        self.save = QPushButton(_tr("Save as &PDF…"), self)
        self.save.clicked.connect(self.ask_and_save)
        self.print = QPushButton(_tr("P&rint…"), self)
        self.print.clicked.connect(self.ask_and_print)
        self.turner = QWidget(self)
        self.back, self.on = QPushButton("\u2039", self.turner), QPushButton("\u203a", self.turner)
        self.page = QLabel(self.turner)
        for button, name, by in ((self.back, _tr("Page before"), -1), (self.on, _tr("Next page"), 1)):
            button.setAccessibleName(name)
            button.setToolTip(name)
            button.clicked.connect(lambda _=False, by=by: self._turn(by))
        self.said = Wrapped(self)
        self.row = row = QHBoxLayout()
        row.addWidget(self.paper)
        row.addWidget(self.save)
        row.addWidget(self.print)
        row.addWidget(self.said, 1)
        turning = QHBoxLayout(self.turner)
        turning.setContentsMargins(0, 0, 0, 0)
        for widget in (self.back, self.page, self.on):
            turning.addWidget(widget)
        turning.addStretch(1)
        self.turner.hide()
        column = QVBoxLayout(self)
        column.addLayout(row)
        column.addWidget(self.turner)
        column.addWidget(self._view, 1)
        for keys, zoom in (
            (QKeySequence.StandardKey.ZoomIn, self._view.zoomIn),
            (QKeySequence.StandardKey.ZoomOut, self._view.zoomOut),
        ):
            QShortcut(keys, self).activated.connect(lambda zoom=zoom: self._zoom(zoom))

    def _ground(self) -> None:
        """The table the pages lie on, in the colours of the theme; Qt's own is one grey for all."""
        self._pages.scene().setBackgroundBrush(QColor(dress.colours().window))

    def changeEvent(self, event: QEvent) -> None:
        """Another theme, another ground."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.PaletteChange:
            self._ground()

    def showEvent(self, event: QShowEvent) -> None:
        """Fit the pages to the width, once there is one: before it is laid out the view zooms to a size it has not."""
        super().showEvent(event)
        QTimer.singleShot(0, self._view, self._fit)

    def _fit(self) -> None:
        """All pages, or where they would be too small to read one at a time, as wide as there is room."""
        several = self._view.pageCount() > 1
        apart = several and self._view.width() < 2 * READABLE_PX
        if apart:
            self._view.setSinglePageViewMode()
        else:
            self._view.setAllPagesViewMode()
        self._tell_page()
        self.turner.setVisible(apart)
        self._zoom(self._view.fitToWidth, sideways=False)

    def _turn(self, by: int) -> None:
        """So many pages on."""
        self._view.setCurrentPage(self._view.currentPage() + by)
        self._tell_page()

    def _tell_page(self) -> None:
        """Which page is shown, and which ways there are from it."""
        at, of = self._view.currentPage(), self._view.pageCount()
        self.page.setText(_tr("page {0} of {1}").format(at, of))
        self.back.setEnabled(at > 1)
        self.on.setEnabled(at < of)

    def _zoom(self, zoom: Callable[[], object], *, sideways: bool = True) -> None:
        """Another size of the pages; fitted to the width they need no bar for it, though Qt shows one for its frame."""
        pages = self._view.findChild(QGraphicsView)
        if pages is not None:
            policy = Qt.ScrollBarPolicy
            pages.setHorizontalScrollBarPolicy(policy.ScrollBarAsNeeded if sideways else policy.ScrollBarAlwaysOff)
        zoom()

    def chosen_paper(self) -> Paper:
        """The paper chosen in the list."""
        return PAPERS.get(str(self.paper.currentData()), A4)

    def sheet(self) -> Sheet:
        """The sheet shown."""
        if self._sheet is None:
            self._sheet = self._make_sheet(self.chosen_paper())
        return self._sheet

    @Slot()
    def refresh(self) -> None:
        """Make the sheet anew and show it."""
        self._sheet = None
        self._printer.setPageLayout(page_layout(self.chosen_paper()))
        self._view.updatePreview()

    @Slot(QPrinter)
    def paint(self, printer: QPrinter) -> None:
        """All pages of the sheet on a printer (or on the preview's stand-in for one)."""
        painter = QPainter()
        if not painter.begin(printer):
            self.said.setText(_tr("The printer did not answer; save it as a PDF instead."))
            return
        try:
            for number, page in enumerate(layout(self.sheet())):
                if number:
                    printer.newPage()
                paint_page(painter, page)
        finally:
            painter.end()

    @Slot()
    def ask_and_save(self) -> None:
        """Ask for a file and write the PDF there."""
        name, _ = QFileDialog.getSaveFileName(self, _tr("Save the pages"), self._file, _tr("PDF (*.pdf)"))
        if name:
            self.save_to(Path(name))

    def save_to(self, path: Path) -> None:
        """Write the PDF and say so, or say why not."""
        try:
            pages = write_pdf(self.sheet(), path)
        except OSError as error:
            self.said.setText(_tr("The pages could not be written to {path}: {why}").format(path=path, why=error))
            return
        self.said.setText(_tr("{count} pages written to {path}").format(count=pages, path=path))

    @Slot()
    def ask_and_print(self) -> None:
        """Ask for a printer and print; without one, say that the PDF is there."""
        if not QPrinterInfo.availablePrinterNames():
            self.said.setText(_tr("No printer is set up on this computer; save it as a PDF instead."))
            return
        if QPrintDialog(self._printer, self).exec() == QPrintDialog.DialogCode.Accepted:
            self.paint(self._printer)
