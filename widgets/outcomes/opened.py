"""An outcome opened: how it stands to every limit, why it is so, what moves it, and what would bring it elsewhere."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtWidgets import QLabel, QPushButton, QVBoxLayout, QWidget

from designer.forecast import Outcome
from designer.judge.explain import Explanation, Link
from designer.judge.levers import Lever, Spread
from designer.judge.movable import Movable
from designer.judge.turns import Turn
from designer.judge.verdict import Row
from designer.language import headed, word
from designer.units import System
from widgets.outcomes.aim_form import AimForm
from widgets.outcomes.check_place import range_text
from widgets.outcomes.figures import band_words, change_words, value_words
from widgets.outcomes.fold import Fold
from widgets.outcomes.lever_list import FIRST_SHOWN, LeverList
from widgets.outcomes.marks import state_words
from widgets.theme import apply as dress
from widgets.together import Wrapped


def note(parent: QWidget, text: str = "", *, soft: bool = False) -> QLabel:
    """A wrapped label in the size of notes."""
    made = Wrapped(text, parent)
    made.setFont(dress.font("note"))
    made.setTextFormat(Qt.TextFormat.PlainText)
    made.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
    made.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    if soft:
        made.setProperty("role", "soft")
    return made


def heading(parent: QWidget, text: str) -> QLabel:
    """The heading of a section."""
    made = QLabel(text, parent)
    made.setFont(dress.font("note", bold=True))
    made.setContentsMargins(0, 8, 0, 1)
    return made


class Part(QWidget):
    """A column whose content is put in anew."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(0, 0, 0, 0)
        self.column.setSpacing(1)

    def put(self, widgets: Iterable[QWidget]) -> None:
        """Show these in place of what was there."""
        while (item := self.column.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        for widget in widgets:
            self.column.addWidget(widget)

    def folds(self) -> list[Fold]:
        """The lines that open, from the top."""
        found = [item.widget() for k in range(self.column.count()) if (item := self.column.itemAt(k)) is not None]
        return [one for one in found if isinstance(one, Fold)]


class OpenedOutcome(QWidget):
    """Everything there is to say of one outcome, and to do about it."""

    left = Signal()
    source_asked = Signal(object)
    """the Row whose source is asked for"""

    def __init__(self, key: str, system: System, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.key, self.system = key, system
        self._rows: tuple[Row, ...] = ()
        self._spread = note(self)
        self.windows = Part(self)
        self._aim_head = heading(self, self.tr("Aim"))
        self.aim = AimForm(key, system, self)
        self._why_head = heading(self, self.tr("Why"))
        self._why = note(self)
        self.links = Part(self)
        self.levers = LeverList(key, self)
        self.levers.system = system
        self.levers.left.connect(self.left)
        self.more = QPushButton(self)
        self.more.clicked.connect(self._more)
        self.more.hide()
        self._turns_head = heading(self, self.tr("Where the usual direction turns"))
        self._turns_head.hide()
        self.turns = Part(self)
        self.levers.locked.connect(self.aim.turn_lock)
        self.aim.lockedAnew.connect(self.levers.put_locks)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 6, 0, 14)
        column.setSpacing(3)
        column.addWidget(self._spread)
        column.addWidget(self.windows)
        column.addWidget(self._aim_head)
        column.addWidget(self.aim)
        column.addWidget(self._why_head)
        column.addWidget(self._why)
        column.addWidget(self.links)
        self._levers_head = heading(self, self.tr("What moves it, a step either way"))
        column.addWidget(self._levers_head)
        column.addWidget(self.levers)
        column.addWidget(self.more, 0, Qt.AlignmentFlag.AlignLeft)
        column.addWidget(self._turns_head)
        column.addWidget(self.turns)
        self._pale_why()

    # ---- how it stands

    def put_outcome(self, outcome: Outcome, rows: tuple[Row, ...]) -> None:
        """Value, band, and every row of the verdict that speaks of it."""
        band = band_words(self.key, outcome, self.system)
        words = self.tr("8 in 10 makes within {0}").format(band) if band else ""
        said = "\n".join(text for text in (words, outcome.outside) if text)
        self._spread.setText(said)
        self._spread.setVisible(bool(said))
        self._rows = rows
        if [fold.head.accessibleName() for fold in self.windows.folds()] != [self._named(row) for row in rows]:
            self.windows.put(self._row(at, row) for at, row in enumerate(rows))
            return
        for fold, row in zip(self.windows.folds(), rows, strict=True):
            fold.head.say(self._sentence(row), row.state)

    @staticmethod
    def _window(row: Row) -> str:
        return row.rule or row.label

    def _named(self, row: Row) -> str:
        return ", ".join(text for text in (self._window(row), range_text(row)) if text)

    @staticmethod
    def _sentence(row: Row) -> str:
        return headed(state_words(row.state), row.sentence)

    def _row(self, at: int, row: Row) -> Fold:
        details = "\n".join(text for text in (f"{row.source} ({word(row.have, 'have')})", row.note) if text)
        made = Fold(
            self._window(row), details, value=range_text(row), second=self._sentence(row), state=row.state,
            source=row.source, parent=self,
        )  # fmt: skip
        if made.source is not None:
            made.source.clicked.connect(lambda: self.source_asked.emit(self._rows[at]))
        return made

    # ---- why

    def _pale_why(self) -> None:
        if not self._why.text():
            self._why.setText(self.tr("Being worked out…"))
        self._why.setProperty("role", "soft")
        self._why.style().polish(self._why)
        for fold in self.links.folds():
            fold.set_pale(True)

    def put_why(self, why: Explanation | None) -> None:
        """The chain, or that there is no middle to hold it against."""
        self._why.setProperty("role", "")
        self._why.style().polish(self._why)
        if why is None:
            self._why.setText(self.tr("No middle of a style is known for it, so there is nothing to hold it against."))
            self.links.put(())
            return
        self._why.setText(f"{why.head}.")
        rest = Fold(
            self.tr("Milk, doses and all the style does not speak of"),
            self.tr("What is left when the parts above are taken from the whole: {0} here, {1} at the middle.").format(
                value_words(self.key, why.value, self.system), value_words(self.key, why.middle, self.system)
            ) + "\n" + self.tr("The middle is from: {0}.").format(why.source.rstrip(".")),
            value=change_words(self.key, why.rest, self.system), parent=self,
        )  # fmt: skip
        self.links.put([*(self._link(link) for link in why.links), rest])

    def _link(self, link: Link) -> Fold:
        setting = link.ranged.setting
        there, usual = setting.shown(system=self.system), setting.shown(link.ranged.middle, self.system)
        window = link.ranged.window
        laws = [headed(law.label, f"{law.value}\n{law.source} ({word(law.have, 'have')})") for law in link.laws]
        laws = [*link.outside, *laws]
        laws.append(self.tr("Usual range: {0} ({1})").format(window.source, word(window.have, "have")))
        return Fold(
            setting.title, "\n\n".join(laws), value=change_words(self.key, link.part, self.system),
            second=self.tr("{0} instead of {1}").format(there, usual), parent=self,
        )  # fmt: skip

    # ---- what moves it

    def put_levers(self, levers: tuple[Lever, ...], turns: Sequence[tuple[Movable, Turn]] = ()) -> None:
        """The settings that move it, the strongest first, and those whose usual direction turns where they stand."""
        self.levers.put(levers)
        self._name_more()
        self._turns_head.setVisible(bool(turns))
        self.turns.setVisible(bool(turns))
        self.turns.put(self._turn(setting, turn) for setting, turn in turns)

    def _turn(self, setting: Movable, turn: Turn) -> Fold:
        source = f"{turn.source} ({word(turn.have, 'have')})"
        return Fold(setting.title, source, second=turn.text, parent=self)

    def put_bands(self, spreads: tuple[Spread, ...]) -> None:
        """How sure the effects of the strongest are."""
        self.levers.put_bands(spreads)

    def _name_more(self) -> None:
        count = len(self.levers.levers)
        self.more.setVisible(count > FIRST_SHOWN)
        self.more.setText(
            self.tr("Only the strongest") if self.levers.every else self.tr("All {0} settings").format(count)
        )

    @Slot()
    def _more(self) -> None:
        self.levers.show_every(not self.levers.every)
        self._name_more()

    def set_pale(self) -> None:
        """What is shown is that of before; answers are on their way."""
        self._pale_why()
        self.levers.set_pale()
        self.aim.forget()
