"""The ledger of batches as the window has it: opened when it is first asked for, with undo that never erases.

The example dairy's invented batches lie in a ledger of their own that is gone with the window.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QUndoCommand, QUndoStack

from designer.batch.invented import invented
from designer.batch.ledger import Ledger
from designer.batch.liked import liked
from designer.batch.record import AsMade, Batch, BatchError, Key, Reading, Tasting, Told, as_forecast
from designer.recipe.file import writes
from widgets.session import Session


class Step(QUndoCommand):
    """Writes one thing into the ledger; taken back, it writes what held before."""

    def __init__(self, desk: LedgerDesk, text: str, do: Callable[[], object], back: Callable[[], object]) -> None:
        super().__init__(text)
        self._desk, self._do, self._back = desk, do, back

    def redo(self) -> None:
        """Write it."""
        self._desk.write(self._do)

    def undo(self) -> None:
        """Write what held before."""
        self._desk.write(self._back)


class LedgerDesk(QObject):
    """What the window reads of the ledger and writes into it; whatever fails is told by `problem`."""

    changed = Signal()
    problem = Signal(str)

    def __init__(self, path: Path, session: Session, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._path, self._session = path, session
        self._own: Ledger | None = None
        self._made_up: Ledger | None = None
        self.made_up = False
        """whether the example dairy's batches are shown in place of the maker's own"""
        self.stack = QUndoStack(self)

    def _ledger(self) -> Ledger:
        if self.made_up:
            self._made_up = self._made_up or invented()
            return self._made_up
        self._own = self._own or Ledger(self._path)
        return self._own

    def show_made_up(self, made_up: bool) -> None:
        """Show the example dairy's batches, or the maker's own."""
        if made_up != self.made_up:
            self.made_up = made_up
            self.stack.clear()
            self.changed.emit()

    def batches(self) -> tuple[Batch, ...]:
        """Every batch, the last made first; none where the ledger can't be read, which is told."""
        try:
            return self._ledger().batches() if self.made_up or self._path.exists() else ()
        except BatchError as error:
            self.problem.emit(str(error))
            return ()

    def liked(self) -> tuple[Batch, ...]:
        """The batches of the open recipe that were liked."""
        return liked(self.batches(), self._session.recipe.name)

    def write(self, do: Callable[[], object]) -> None:
        """Write into the ledger and tell that it is another."""
        try:
            do()
        except BatchError as error:
            self.problem.emit(str(error))
        self.changed.emit()

    # ---- what can be written, each a step of undo

    def note(self, made: date, model: str) -> int | None:
        """Note the open recipe as made that day, with its forecast; the number of the batch."""
        session = self._session
        recipe = session.recipe
        kept = AsMade(recipe.name, writes(recipe, session.text), recipe.style, as_forecast(session.forecast), model)
        told = Told(made, recipe.maker)
        number: list[int] = []

        def do() -> None:
            if number:
                self._ledger().tell(number[0], told)
            else:
                number.append(self._ledger().note(kept, told))

        def back() -> None:
            if number:
                self._ledger().tell(number[0], Told(told.made, told.maker, struck=True))

        self.stack.push(Step(self, self.tr("Batch noted"), do, back))
        return number[0] if number else None

    def tell(self, batch: Batch, told: Told) -> None:
        """Say something else of a batch, or take it back."""
        if told != batch.told:
            self._push(
                self.tr("Batch taken back") if told.struck else self.tr("Batch: {0}").format(told.made.isoformat()),
                lambda ledger: ledger.tell(batch.number, told),
                lambda ledger: ledger.tell(batch.number, batch.told),
            )

    def instrument(self, key: Key) -> str:
        """What this quantity was last measured with."""
        every = [(each, read) for one in self.batches() for each, read in one.readings.items() if each[0] == key[0]]
        here = [read for each, read in every if each == key]
        return next((read.instrument for read in (*here, *(read for _, read in every)) if read.instrument), "")

    def read(self, batch: Batch, key: Key, reading: Reading | None, label: str) -> None:
        """Note a reading, or take it back."""
        before = batch.readings.get(key)
        if reading != before:
            self._push(
                self.tr("Reading: {0}").format(label),
                lambda ledger: ledger.read(batch.number, key, reading),
                lambda ledger: ledger.read(batch.number, key, before),
            )

    def taste(self, batch: Batch, tasting: Tasting, number: int | None = None) -> None:
        """Note a tasting, or correct the one of that number."""
        if number is not None:
            before = batch.tastings[number]
            self._push(
                self.tr("Tasting corrected"),
                lambda ledger: ledger.retaste(number, tasting),
                lambda ledger: ledger.retaste(number, before),
            )
            return
        noted: list[int] = []

        def do(ledger: Ledger) -> None:
            if noted:
                ledger.retaste(noted[0], tasting)
            else:
                noted.append(ledger.taste(batch.number, tasting))

        def back(ledger: Ledger) -> None:
            if noted:
                ledger.retaste(noted[0], Tasting(tasting.tasted, struck=True))

        self._push(self.tr("Tasting"), do, back)

    def _push(self, text: str, do: Callable[[Ledger], object], back: Callable[[Ledger], object]) -> None:
        self.stack.push(Step(self, text, lambda: do(self._ledger()), lambda: back(self._ledger())))

    def past(self, batch: Batch, key: Key) -> tuple[float | None, ...]:
        """What a reading was before, the first one first."""
        try:
            return tuple(one.value for one in self._ledger().past(batch.number, key))[:-1]
        except BatchError as error:
            self.problem.emit(str(error))
            return ()

    def close(self) -> None:
        """Let go of the files."""
        for one in (self._own, self._made_up):
            if one is not None:
                one.close()
        self._own = self._made_up = None
