"""Paper: everything inside the margins, blanks high enough, rows whole, fonts in the file, words to be found."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter, QPicture
from PySide6.QtWidgets import QApplication, QGraphicsView
from pytestqt.qtbot import QtBot

from designer.plan.sheet import (
    A4,
    BLANK_MM,
    LETTER,
    MARGIN_MM,
    PUNCH_MM,
    Area,
    Blank,
    Column,
    Drawing,
    Field,
    Fields,
    Label,
    Line,
    Paper,
    Polyline,
    Ruled,
    Section,
    Sheet,
    Strip,
    Table,
    Ticks,
    Words,
)
from widgets.paper import ink
from widgets.paper.draw import paint_page, write_pdf
from widgets.paper.layout import layout
from widgets.paper.marks import Page, Room, Stroke
from widgets.paper.marks import Words as SetWords
from widgets.paper.preview import PlanPreview
from widgets.theme import apply as dress

pytestmark = pytest.mark.usefixtures("qapp")
BOTH = pytest.mark.parametrize("paper", [A4, LETTER], ids=lambda paper: paper.name)


def sheet(paper: Paper, rows: int = 13) -> Sheet:
    columns = (Column("stage", 60.0), Column("target", 40.0), Column("time", 30.0), Column("pH", 40.0))
    cells = [
        (
            (Line(f"{number} Cook", 16.0, True), Line("to 39 °C in 45 min")),
            (Line("pH 6.20 (6.10–6.30)"),),
            (Blank(),),
            (Blank(), Ticks(("whey", "curd"))),
        )
        for number in range(1, rows + 1)
    ]
    curve = Drawing(
        paper.inner_width_mm,
        60.0,
        (
            Polyline(((0.0, 0.0), (paper.inner_width_mm, 60.0)), 0.5, (2.0, 1.0)),
            Area(((10.0, 10.0), (30.0, 10.0), (30.0, 30.0)), "hatch"),
            Label("39 °C", 20.0, 20.0, clear=True),
        ),
        tallest_mm=90.0,
    )
    return Sheet(
        paper,
        "Thistlecombe Cheddar",
        "Thistlecombe Dairy",
        (
            Section("", (Fields(((Field("batch"), Field("maker", "A. Person")),)), Ticks(("lid on", "sanitised")))),
            Section(
                "At the vat", (Table(columns, tuple(cells)),), keep=False, remark="Blanks: at the end of the stage."
            ),
            Section("The curve", (curve,), early=True),
            Section("Cautions", (Words((Line("Floc first. " * 20),), hang="!"),)),
            Section("Notes", (Ruled(2, fill=True),)),
        ),
        "plan 1234",
        Strip("Cut off", ((Field("batch"), Field("cheese", "Cheddar")),)),
    )


def reach(page: Page) -> list[tuple[float, float]]:
    """Corners of everything on a page."""
    out: list[tuple[float, float]] = []
    for mark in page.marks:
        match mark:
            case SetWords():
                out += [(mark.x, mark.y - ink.ascent_mm(mark.size_pt)), (mark.x + mark.width, mark.y)]
            case Room():
                out += [(mark.x, mark.y), (mark.x + mark.width, mark.y + mark.height)]
            case _:
                out += list(mark.points)
    return out


@BOTH
@pytest.mark.parametrize("rows", [1, 5, 13, 30])
def test_nothing_leaves_the_margins(paper: Paper, rows: int) -> None:
    for page in layout(sheet(paper, rows)):
        for x, y in reach(page):
            assert PUNCH_MM - 0.01 <= x <= paper.width_mm - MARGIN_MM + 0.01
            assert MARGIN_MM - 0.01 <= y <= paper.height_mm - MARGIN_MM + 0.01


@BOTH
def test_every_place_for_the_pen_is_high_enough(paper: Paper) -> None:
    rooms = [mark for page in layout(sheet(paper)) for mark in page.marks if isinstance(mark, Room)]
    assert len(rooms) > 26
    assert all(room.height >= BLANK_MM - 1e-6 for room in rooms)


@BOTH
@pytest.mark.parametrize("rows", [5, 13, 30])
def test_words_never_overlap(paper: Paper, rows: int) -> None:
    for page in layout(sheet(paper, rows)):
        boxes = [
            (mark.x, mark.y - mark.size_pt * ink.MM_PER_PT * 0.75, mark.x + mark.width, mark.y, mark.text)
            for mark in page.marks
            if isinstance(mark, SetWords)
        ]
        for index, one in enumerate(boxes):
            for other in boxes[index + 1 :]:
                apart = one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
                assert apart, f"{one[4]!r} lies on {other[4]!r}"


@BOTH
def test_heads_are_printed_again_and_pages_are_numbered(paper: Paper) -> None:
    pages = layout(sheet(paper, 30))
    words = [[mark.text for mark in page.marks if isinstance(mark, SetWords)] for page in pages]
    assert len(pages) > 2
    for number, texts in enumerate(words, start=1):
        assert any(text.startswith(f"page {number} of {len(pages)}") for text in texts)
    assert all("target" in texts for texts in words if any("Cook" in text for text in texts))
    assert sum("Cut off" in texts for texts in words) == 1


def test_what_fits_one_page_stays_on_one() -> None:
    assert len(layout(sheet(A4, 3))) == 1


@BOTH
def test_pdf_holds_its_fonts_and_its_words(paper: Paper, tmp_path: Path) -> None:
    path = tmp_path / "plan.pdf"
    count = write_pdf(sheet(paper), path)
    reader = PdfReader(path)
    assert len(reader.pages) == count
    size = reader.pages[0].mediabox
    assert float(size.width) == pytest.approx(paper.width_mm / ink.MM_PER_PT, abs=0.6)
    assert float(size.height) == pytest.approx(paper.height_mm / ink.MM_PER_PT, abs=0.6)
    text = " ".join(" ".join(page.extract_text() for page in reader.pages).split())
    for word in ("Thistlecombe Cheddar", "Floc first", "39 °C", "plan 1234", "Cut off"):
        assert word in text
    for page in reader.pages:
        for font in page["/Resources"]["/Font"].values():
            below = font.get_object()["/DescendantFonts"][0].get_object()
            assert "/FontFile2" in below["/FontDescriptor"].get_object()


def test_no_ink_is_grey(tmp_path: Path) -> None:
    path = tmp_path / "plan.pdf"
    write_pdf(sheet(A4), path)
    for page in PdfReader(path).pages:
        contents = page.get_contents()
        assert contents is not None
        for operands, operator in contents.operations:
            if operator in (b"rg", b"RG", b"g", b"G", b"scn", b"SCN"):
                numbers = [float(each) for each in operands if not isinstance(each, str)]
                assert set(numbers) <= {0.0, 1.0}


def test_a_recorded_page_is_black_in_whatever_pen_it_is_played() -> None:
    """A preview records the page and plays it on a window, whose pen is pale in the dark."""
    page = Page()
    page.marks.append(SetWords("Thistlecombe Cheddar", 10.0, 20.0, 24.0, True))
    recorded = QPicture()
    painter = QPainter(recorded)
    paint_page(painter, page)
    painter.end()
    seen = QImage(900, 300, QImage.Format.Format_Grayscale8)
    seen.fill(Qt.GlobalColor.white)
    painter = QPainter(seen)
    painter.setPen(Qt.GlobalColor.lightGray)
    painter.drawPicture(0, 0, recorded)
    painter.end()
    assert min(bytes(seen.constBits())) < 40


def test_an_unwritable_place_is_an_error_with_a_reason(tmp_path: Path) -> None:
    with pytest.raises(OSError, match=r"\w"):
        write_pdf(sheet(A4), tmp_path / "nowhere" / "plan.pdf")


def test_ragged_rows_are_refused() -> None:
    with pytest.raises(ValueError, match="2 cells under 1"):
        Table((Column("a", 1.0),), (((Blank(),), (Blank(),)),))


def test_words_are_told_in_reading_order() -> None:
    words = sheet(A4).words()
    assert words.index("At the vat") < words.index("1 Cook") < words.index("whey") < words.index("Cautions")


def test_a_figure_keeps_its_unit_on_its_line() -> None:
    text = "in brine of 20 % and 13 °C, 400 mL of cool water for 10 min, pH 5.40, cut at 3 × floc"
    for room in range(20, 90):
        lines = ink.wrap(text, 12.0, False, float(room))
        assert " ".join(lines) == text
        assert not any(line.split(" ")[-1].isdigit() or line.endswith("pH") for line in lines)
    assert ink.wrap("20 %", 12.0, False, 6.0) == ["20", "%"], "where there is no room for both they part"


def test_long_words_are_broken_inside() -> None:
    lines = ink.wrap("a" * 200, 12.0, False, 40.0)
    assert "".join(lines) == "a" * 200
    assert all(ink.width_mm(line, 12.0) <= 40.0 for line in lines)


def test_preview_saves_what_it_shows(qtbot: QtBot, tmp_path: Path) -> None:
    preview = PlanPreview(sheet)
    qtbot.addWidget(preview)
    with qtbot.waitExposed(preview):
        preview.show()
    preview.paper.setCurrentIndex(1)
    assert preview.sheet().paper is LETTER
    preview.save_to(tmp_path / "plan.pdf")
    assert PdfReader(tmp_path / "plan.pdf").pages
    assert "written" in preview.said.text()
    preview.save_to(tmp_path / "nowhere" / "plan.pdf")
    assert "could not be written" in preview.said.text()


def test_the_pages_lie_on_the_ground_of_the_theme(qtbot: QtBot, qapp: QApplication) -> None:
    preview = PlanPreview(sheet)
    qtbot.addWidget(preview)
    pages = preview.findChild(QGraphicsView)
    grounds = []
    for theme in ("dark", "contrast", "light"):
        dress.apply(qapp, theme)
        QApplication.processEvents()
        grounds.append(pages.scene().backgroundBrush().color().name().upper())
        assert grounds[-1] == dress.colours().window
    assert len(set(grounds)) == 3


def test_pages_too_small_to_read_beside_each_other_come_one_at_a_time(qtbot: QtBot) -> None:
    preview = PlanPreview(lambda paper: sheet(paper, 30))
    qtbot.addWidget(preview)
    preview.resize(600, 400)
    with qtbot.waitExposed(preview):
        preview.show()
    qtbot.waitUntil(preview.turner.isVisible)
    pages = len(layout(sheet(A4, 30)))
    assert preview.page.text() == f"page 1 of {pages}"
    assert not preview.back.isEnabled()
    qtbot.mouseClick(preview.on, Qt.MouseButton.LeftButton)
    assert preview.page.text() == f"page 2 of {pages}"
    qtbot.mouseClick(preview.back, Qt.MouseButton.LeftButton)
    assert preview.page.text() == f"page 1 of {pages}"


def test_strokes_are_thick_enough_for_a_wet_room() -> None:
    strokes = [mark for page in layout(sheet(A4)) for mark in page.marks if isinstance(mark, Stroke)]
    assert min(stroke.width_mm for stroke in strokes) >= 0.2
