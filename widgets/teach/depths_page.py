"""Explanations at three depths: outcomes, settings and laws, each as a sentence, a paragraph, and the law itself."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QButtonGroup,
    QFrame,
    QLabel,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from designer.judge.depths import Topic, row_words, topic, topics
from widgets.flow import flowing
from widgets.room import Parts, scrolling
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped
from widgets.variants.page import BESIDE_PX, Page

KEY: Final = Qt.ItemDataRole.UserRole
SENTENCE, PARAGRAPH, LAW = range(3)


class DepthsPage(Page):
    """A list to search on the left, the topic at the chosen depth on the right; 1, 2 and 3 choose the depth."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("What is behind it"))
        self.back.setText(self.tr("‹ Design"))
        self.sentence.setText(
            self.tr("Every outcome, setting and law in a sentence, in a paragraph, and to the bottom.")
        )
        self.search = QLineEdit()
        self.search.setPlaceholderText(self.tr("Search"))
        self.search.setAccessibleName(self.tr("Search the topics"))
        self.search.textChanged.connect(self._fill)
        self.list = QListWidget()
        self.list.setAccessibleName(self.tr("Topics"))
        self.list.setFrameShape(QFrame.Shape.NoFrame)
        self.list.currentItemChanged.connect(self._show)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 12, 0)
        column.addWidget(self.search)
        column.addWidget(self.list, 1)
        split = Parts([left, self._right()], [360, 840], BESIDE_PX)
        self.body.addWidget(split, 1)
        self._fill()

    def _right(self) -> QWidget:
        right = QWidget()
        column = QVBoxLayout(right)
        column.setContentsMargins(18, 0, 0, 0)
        column.setSpacing(12)
        self.name = QLabel()
        self.name.setFont(dress.font("title", bold=True))
        self.depths = QButtonGroup(self)
        ways = []
        for depth, text in enumerate(
            (self.tr("1  In a sentence"), self.tr("2  For the maker"), self.tr("3  The law and its source"))
        ):
            one = QToolButton()
            one.setText(text)
            one.setCheckable(True)
            one.setChecked(depth == SENTENCE)
            one.setMinimumHeight(28)
            self.depths.addButton(one, depth)
            ways.append(one)
        self.depths.idClicked.connect(lambda _: self._show())
        self.text = Wrapped()
        self.text.setTextFormat(Qt.TextFormat.PlainText)
        self.text.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self.text.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.text.setMaximumWidth(760)
        area = scrolling(self.text, across=False)
        area.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        area.setAccessibleName(self.tr("Explanation"))
        column.addWidget(self.name)
        column.addWidget(flowing(*ways, spacing=4))
        column.addWidget(area, 1)
        return right

    # ---- choosing

    @Slot()
    def _fill(self) -> None:
        """List what the search leaves; the chosen topic stays where it can."""
        wanted = self.search.text().casefold().strip()
        chosen = self.topic.key if self.topic is not None else ""
        self.list.clear()
        heads = {"outcome": self.tr("Outcomes"), "setting": self.tr("Settings"), "law": self.tr("Laws")}
        last = ""
        for one in topics():
            if wanted and wanted not in f"{one.title} {one.child} {one.maker}".casefold():
                continue
            if one.about != last:
                last = one.about
                head = QListWidgetItem(heads[last])
                head.setFlags(Qt.ItemFlag.ItemIsEnabled)
                head.setFont(dress.font("note", bold=True))
                self.list.addItem(head)
            item = QListWidgetItem(f"   {one.title}")
            item.setData(KEY, one.key)
            self.list.addItem(item)
            if one.key == chosen:
                self.list.setCurrentItem(item)
        if self.topic is None and self.list.count() > 1:
            self.list.setCurrentRow(1)

    @property
    def topic(self) -> Topic | None:
        """The topic chosen."""
        item = self.list.currentItem()
        key = item.data(KEY) if item is not None else None
        return topic(key) if key else None

    def choose(self, key: str) -> None:
        """Choose a topic."""
        self.search.clear()
        for at in range(self.list.count()):
            if self.list.item(at).data(KEY) == key:
                self.list.setCurrentRow(at)

    @Slot()
    def _show(self) -> None:
        found = self.topic
        if found is None:
            self.name.setText(self.tr("Nothing of that name"))
            self.text.setText("")
            return
        depth = self.depths.checkedId()
        self.name.setText(found.title)
        self.text.setFont(dress.font(("figure", "head", "body")[depth]))
        if depth == SENTENCE:
            self.text.setText(found.child)
        elif depth == PARAGRAPH:
            self.text.setText(f"{found.child}\n\n{found.maker}")
        else:
            said = [text[:1].upper() + text[1:] for text in found.statements()]
            rows = [row_words(row) for row in found.constants()]
            self.text.setText("\n\n".join([*said, *(f"\u2013 {text}" for text in rows)]))

    def opened(self) -> None:
        """The page is shown: the list has the keyboard."""
        self._fill()
        self._show()
        self.list.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """1, 2 and 3 choose the depth."""
        depth = {Qt.Key.Key_1: 0, Qt.Key.Key_2: 1, Qt.Key.Key_3: 2}.get(Qt.Key(event.key()))
        if depth is None:
            super().keyPressEvent(event)
        else:
            self.depths.button(depth).setChecked(True)
            self._show()
