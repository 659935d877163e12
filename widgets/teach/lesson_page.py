"""The sheet for learners as it will be printed, with the targets or without them."""

from __future__ import annotations

from PySide6.QtWidgets import QCheckBox, QWidget

from designer.plan.lesson_sheet import lesson_sheet
from designer.plan.make_plan import Print
from designer.plan.sheet import Paper, Sheet
from widgets.paper.preview import PlanPreview
from widgets.session import Session
from widgets.variants.page import Page


class LessonPage(Page):
    """A preview and one question: with targets or without."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("Sheet for learners"))
        self.back.setText(self.tr("‹ Design"))
        self.sentence.setText(
            self.tr("With its targets to work by, or without them: guess first, then write down what was read.")
        )
        self.targets = QCheckBox(self.tr("Print the &targets"))
        self.targets.setChecked(True)
        self.preview = PlanPreview(self._sheet, name=self.tr("Sheet for learners, as printed"), file="lesson.pdf")
        self.preview.row.insertWidget(0, self.targets)
        self.targets.toggled.connect(lambda _: self.preview.refresh())
        self.body.addWidget(self.preview, 1)

    def _sheet(self, paper: Paper) -> Sheet:
        want = Print(paper=paper, system=self.system)
        return lesson_sheet(self.session.forecast, want, targets=self.targets.isChecked())

    def refresh(self) -> None:
        """The recipe or the units are others."""
        self.preview.refresh()

    def opened(self) -> None:
        """The page is shown: the question has the keyboard."""
        self.refresh()
        self.targets.setFocus()
