"""What would have to change for this recipe to be a ...? Styles by how far they lie, each with the way to it."""

from __future__ import annotations

from typing import Any, Final

from PySide6.QtCore import QSignalBlocker, Qt, Slot
from PySide6.QtWidgets import (
    QHeaderView,
    QLabel,
    QProgressBar,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from designer.judge.nearest import Near, Way, nearest_to, way_to
from designer.language import joined
from designer.recipe.document import Recipe
from designer.recipe.edit import edit_recipe
from designer.recipe.field import choice
from widgets.asking import Asker, Question
from widgets.compare.curves import Curves
from widgets.room import Parts
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.variants.outcome_table import OutcomeTable
from widgets.variants.page import BESIDE_PX, Dotted, Page, button, listed, note, scrolled

FIRST: Final = 6
"""Of so many of the nearest styles the way is worked out unasked."""
LINES: Final = 4
"""So many ranges left outside are told."""
RANKING: Final = "\u2116"
NEAR: Final = Qt.ItemDataRole.UserRole


class NearestPage(Page):
    """The list of styles on the left, the way to the chosen one on the right."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(session, "", "", parent)
        self.title.setText(self.tr("What would have to change for this recipe to be a …?"))
        self.back.setText(self.tr("‹ Check"))
        self.ranked: tuple[Near, ...] = ()
        self.ways: dict[str, Way | str] = {}
        """the way to a style by its key, or why there is none"""
        self._of: Recipe | None = None
        self._waiting: list[str] = []
        self._asker = Asker(self)
        self._asker.answered.connect(self._take)
        self._asker.failed.connect(self._fail)
        self.progress = QProgressBar()
        self.progress.setTextVisible(False)
        self.progress.setFixedWidth(140)
        self.progress.setAccessibleName(self.tr("Ways worked out"))
        self.halt = button(self.tr("Stop"), self.give_up)
        self.head.addWidget(self.progress)
        self.head.addWidget(self.halt)
        self.list = self._list()
        split = Parts([self.list, self._way()], [560, 620], BESIDE_PX)
        self.body.addWidget(split, 1)
        self.hint = note()
        self.apply = button(self.tr("Change the recipe so"), self._apply, strong=True)
        self.foot.addWidget(self.hint, 1)
        self.foot.addWidget(self.apply)
        session.documentChanged.connect(self._another)

    # ---- building

    def _list(self) -> QTreeWidget:
        made = listed(
            self.tr("Styles, the nearest first"), [self.tr("Style"), self.tr("To change"), self.tr("What lies between")]
        )
        head = made.header()
        head.setStretchLastSection(True)
        head.setSectionResizeMode(0, QHeaderView.ResizeMode.Interactive)
        head.setSectionResizeMode(1, QHeaderView.ResizeMode.Interactive)
        made.setColumnWidth(0, 150)
        made.setColumnWidth(1, 130)
        made.currentItemChanged.connect(self._chosen)
        return made

    def _way(self) -> QWidget:
        inside = QWidget()
        column = QVBoxLayout(inside)
        column.setContentsMargins(16, 0, 4, 0)
        column.setSpacing(8)
        self.name = QLabel()
        self.name.setFont(dress.font("head", bold=True))
        self.changes = Dotted()
        self.rest = note()
        self.rest.setTextFormat(Qt.TextFormat.PlainText)
        self.outcomes = OutcomeTable(self.tr("Outcomes as it is and so changed"))
        self.curves = Curves()
        self.curves.setMinimumHeight(250)
        for widget in (self.name, self.changes, self.rest, self.outcomes):
            column.addWidget(widget)
        column.addWidget(self.curves, 10)
        column.addStretch(1)
        return scrolled(inside)

    # ---- asking

    def refresh(self) -> None:
        """Rank anew where the recipe is another; else only show anew."""
        if self._of is not self.session.recipe:
            self._of = self.session.recipe
            self.ranked, self.ways, self._waiting = (), {}, []
            self.sentence.setText(self.tr("Looking at every style…"))
            with QSignalBlocker(self.list):
                self.list.clear()
            recipe = self._of
            self._asker.ask({RANKING: lambda _: nearest_to(recipe)})
        self._show()

    def opened(self) -> None:
        """The page is shown: the list has the keyboard."""
        self.refresh()
        self.setFocusProxy(self.list)

    def _ask(self, keys: list[str]) -> None:
        """Work out these ways, in this order; what was asked before and not answered is asked after them."""
        rest = [key for key in self._waiting if key not in keys]
        self._waiting = [key for key in (*keys, *rest) if key not in self.ways]
        near = {one.style.key: one for one in self.ranked}
        recipe = self._of
        assert recipe is not None

        def question(one: Near) -> Question:
            return lambda _: way_to(recipe, one)

        self._asker.ask({key: question(near[key]) for key in self._waiting})

    def give_up(self) -> None:
        """Work out no more."""
        self._waiting = []
        self._asker.forget()
        self._show()

    @Slot(str, object)
    def _take(self, name: str, answer: Any) -> None:
        if name == RANKING:
            self.ranked = answer
            self._fill()
            self._ask([one.style.key for one in self.ranked[:FIRST]])
        else:
            self.ways[name] = answer
            self._waiting = [key for key in self._waiting if key != name]
        self._show()

    @Slot(str, str)
    def _fail(self, name: str, sentence: str) -> None:
        if name == RANKING:
            self.sentence.setText(sentence)
            return
        self.ways[name] = sentence
        self._waiting = [key for key in self._waiting if key != name]
        self._show()

    @property
    def idle(self) -> bool:
        """True where nothing is being worked out."""
        return self._asker.idle and not self._waiting and bool(self.ranked)

    # ---- showing

    def _fill(self) -> None:
        with QSignalBlocker(self.list):
            self.list.clear()
        for near in self.ranked:
            item = QTreeWidgetItem([near.style.title, "", near.sentence])
            item.setData(0, NEAR, near)
            item.setToolTip(2, near.sentence)
            self.list.addTopLevelItem(item)
        own = next((at for at, one in enumerate(self.ranked) if one.style.key != self.session.recipe.style), 0)
        self.list.setCurrentItem(self.list.topLevelItem(own))

    @Slot()
    def _chosen(self) -> None:
        near = self.chosen()
        if near is not None and near.style.key not in self.ways and self._of is self.session.recipe:
            self._ask([near.style.key])
        self._show()

    def chosen(self) -> Near | None:
        """The style the list stands on."""
        item = self.list.currentItem()
        return item.data(0, NEAR) if item is not None else None

    @Slot()
    def _show(self) -> None:
        for at in range(self.list.topLevelItemCount()):
            item = self.list.topLevelItem(at)
            key = item.data(0, NEAR).style.key
            item.setText(1, self._short(key))
        busy = bool(self._waiting) or not self.ranked
        done = len(self.ways)
        self.progress.setRange(0, max(done + len(self._waiting), 1))
        self.progress.setValue(done)
        self.progress.setVisible(busy)
        self.halt.setVisible(bool(self._waiting))
        if self.ranked:
            self.sentence.setText(
                self.tr("{0} styles, the nearest first. Choose one to see the smallest change that gets there.").format(
                    len(self.ranked)
                )
            )
        self._show_way()

    def _short(self, key: str) -> str:
        way = self.ways.get(key)
        if way is None:
            return "…" if key in self._waiting else ""
        if isinstance(way, str) or way.met is None:
            return self.tr("another recipe")
        count = len(way.stages) + len(way.changes)
        if not count:
            return self.tr("nothing")
        words = self.tr("1 change") if count == 1 else self.tr("{0} changes").format(count)
        return words if way.met.reached else self.tr("{0}, not all").format(words)

    def _show_way(self) -> None:
        near = self.chosen()
        way = self.ways.get(near.style.key) if near is not None else None
        known = isinstance(way, Way) and way.met is not None
        self.outcomes.setVisible(known)
        self.curves.setVisible(known)
        self.rest.setText("")
        self.apply.setEnabled(False)
        self.hint.setText("")
        self.name.setText(near.style.title if near is not None else "")
        if near is None:
            self.changes.setText("")
        elif way is None:
            waits = near.style.key in self._waiting
            self.changes.setText(self.tr("Working out the smallest change…") if waits else near.sentence)
        elif isinstance(way, str):
            self.changes.setText(way)
        else:
            self._show_found(way)

    def _show_found(self, way: Way) -> None:
        met, near = way.met, way.near
        if met is None:
            self.changes.setText(way.sentence)
            return
        lines = [*way.stages, *(change.sentence(self.system) for change in way.changes)]
        if lines:
            self.changes.put(lines)
        elif way.left or way.out:
            self.changes.setText(self.tr("Nothing that its limits ask for."))
        else:
            self.changes.setText(self.tr("Nothing: by its figures it is one already."))
        rest = [] if met.reached else [self.tr("That brings it nearer, but not inside its limits.")]
        rest += [self.tr("More changes would bring in: {0}").format(joined(way.left[:LINES]))] if way.left else []
        rest += [self.tr("Out of reach so: {0}").format(joined(way.out[:LINES]))] if way.out else []
        rest += [self.tr("Milk: {0}").format(offer.sentence) for offer in met.milk[:1]]
        if not near.milk:
            rest.append(
                self.tr("{0} is made of {1} milk.").format(
                    near.style.title, " / ".join(choice(one) for one in near.style.milk)
                )
            )
        self.rest.setText("\n".join(rest))
        self.outcomes.put([self.tr("As it is"), self.tr("So changed")], [met.before, met.made], self.system)
        self.curves.show_makes((met.before, met.made), (self.tr("as it is"), self.tr("so changed")))
        fresh = self._of is self.session.recipe
        self.apply.setEnabled(fresh and (bool(lines) or near.style.key != self.session.recipe.style))
        if near.style.key != self.session.recipe.style:
            self.hint.setText(
                self.tr("The recipe is then checked against {0}; one step of undo.").format(near.style.title)
            )

    # ---- doing

    @Slot()
    def _apply(self) -> None:
        near = self.chosen()
        way = self.ways.get(near.style.key) if near is not None else None
        if near is None or not isinstance(way, Way) or way.recipe is None:
            return
        recipe = edit_recipe(way.recipe, style=near.style.key)
        self.session.commit(recipe, self.tr("Towards {0}").format(near.style.title))

    def stop(self) -> None:
        """End what runs beside the window."""
        self._waiting = []
        self._asker.stop()
