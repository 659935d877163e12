"""Draws laid-out pages with a QPainter: to a PDF, a printer or the preview."""

from __future__ import annotations

import math
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QFile, QIODevice, QLineF, QMarginsF, QPointF, QSaveFile, QSizeF, Qt
from PySide6.QtGui import QPageLayout, QPageSize, QPainter, QPainterPath, QPdfWriter, QPen, QPolygonF

from designer.plan.sheet import Paper, Point, Sheet
from widgets.paper import ink
from widgets.paper.layout import layout
from widgets.paper.marks import Hatch, Page, Room, Shape, Stroke, Words

_MM = ink.UNITS_PER_MM


def page_layout(paper: Paper) -> QPageLayout:
    """The paper as Qt wants it, without margins: the plan keeps its own."""
    size = QPageSize(QSizeF(paper.width_mm, paper.height_mm), QPageSize.Unit.Millimeter, paper.name)
    whole = QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0), QPageLayout.Unit.Millimeter)
    whole.setMode(QPageLayout.Mode.FullPageMode)
    return whole


def write_pdf(sheet: Sheet, path: Path) -> int:
    """Writes the sheet as a PDF, whole or not at all; returns the number of pages. Raises OSError with Qt's reason."""
    file = QSaveFile(str(path))
    if not file.open(QIODevice.OpenModeFlag.WriteOnly):
        raise OSError(file.errorString())
    writer = QPdfWriter(file)
    writer.setPageLayout(page_layout(sheet.paper))
    writer.setResolution(1200)
    writer.setTitle(QCoreApplication.translate("Paper", "{0}: plan of the make").format(sheet.title))
    writer.setCreator("Curdwright")
    pages = layout(sheet)
    painter = QPainter()
    if not painter.begin(writer):
        raise OSError(QCoreApplication.translate("Paper", "the PDF could not be begun"))
    try:
        for number, page in enumerate(pages):
            if number:
                writer.newPage()
            paint_page(painter, page)
    finally:
        painter.end()
    if file.error() != QFile.FileError.NoError or not file.commit():
        raise OSError(file.errorString())
    return len(pages)


def paint_page(painter: QPainter, page: Page) -> None:
    """One page at the painter's origin, life size by the resolution of its device."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    device = painter.device()
    painter.scale(device.logicalDpiX() / ink.UNITS_PER_INCH, device.logicalDpiY() / ink.UNITS_PER_INCH)
    # A preview records the page and plays it with the window's pen; a pen that is black already is not recorded.
    painter.setPen(Qt.PenStyle.NoPen)
    for mark in page.marks:
        match mark:
            case Words():
                _words(painter, mark)
            case Stroke():
                painter.setPen(_pen(mark.width_mm, mark.dash))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawPolyline(_polygon(mark.points))
            case Shape():
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(Qt.GlobalColor.black if mark.black else Qt.GlobalColor.white)
                painter.drawPolygon(_polygon(mark.points))
            case Hatch():
                _hatch(painter, mark)
            case Room():
                pass
    painter.restore()


def _words(painter: QPainter, mark: Words) -> None:
    painter.setPen(Qt.GlobalColor.black)
    painter.setFont(ink.font(mark.size_pt, mark.bold))
    if not mark.upright:
        painter.drawText(QPointF(mark.x * _MM, mark.y * _MM), mark.text)
        return
    painter.save()
    painter.translate(mark.x * _MM, mark.y * _MM)
    painter.rotate(-90.0)
    painter.drawText(QPointF(0.0, 0.0), mark.text)
    painter.restore()


def _hatch(painter: QPainter, mark: Hatch) -> None:
    polygon = _polygon(mark.points)
    box = polygon.boundingRect()
    path = QPainterPath()
    path.addPolygon(polygon)
    painter.save()
    painter.setClipPath(path, Qt.ClipOperation.IntersectClip)
    painter.setPen(_pen(0.2, ()))
    step = mark.gap_mm * _MM * math.sqrt(2.0)
    for number in range(int((box.width() + box.height()) / step) + 1):
        x = box.left() + number * step
        painter.drawLine(QLineF(x, box.top(), x - box.height(), box.bottom()))
    painter.restore()


def _pen(width_mm: float, dash: tuple[float, ...]) -> QPen:
    pen = QPen(Qt.GlobalColor.black)
    pen.setWidthF(width_mm * _MM)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    if dash:
        pen.setDashPattern([length / width_mm for length in dash])
    return pen


def _polygon(points: tuple[Point, ...]) -> QPolygonF:
    return QPolygonF([QPointF(x * _MM, y * _MM) for x, y in points])
