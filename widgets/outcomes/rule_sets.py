"""Which rule sets a forecast is held against, several at once: general class, national standard, the maker's own."""

from __future__ import annotations

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QLabel, QToolButton, QWidget

from designer.language import headed, word
from styles.reader import Rules, Style
from widgets.flow import Flow
from widgets.judging import Judging, known_style
from widgets.session import Session


class RuleSets(QWidget):
    """One button a rule set of the style; those pressed are judged by, in the Check place and everywhere else."""

    def __init__(self, session: Session, judging: Judging, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session, self._judging = session, judging
        self._shown: Style | None = None
        self.buttons: dict[str, QToolButton] = {}
        self._row = Flow(self)
        label = QLabel(self.tr("Held against"), self)
        label.setProperty("role", "soft")
        label.setMinimumHeight(26)
        self._row.addWidget(label)
        self.usual = QToolButton(self)
        self.usual.setText(self.tr("as usual"))
        self.usual.setToolTip(self.tr("Back to the rules that bind every maker of this style"))
        self.usual.setMinimumHeight(26)
        self.usual.clicked.connect(lambda: self._choose(None))
        self._row.addWidget(self.usual)

    @Slot()
    def refresh(self) -> None:
        """Show the rule sets of the recipe's style."""
        known, verdict = known_style(self._session.recipe.style), self._session.verdict
        self.setVisible(known is not None and bool(known.rules))
        if known is None or verdict is None:
            return
        if known != self._shown:
            self._build(known)
        for key, one in self.buttons.items():
            one.setChecked(key in self._on(known))
        self.usual.setVisible(self._judging.chosen(known) is not None)

    def _on(self, known: Style) -> tuple[str, ...]:
        chosen = self._judging.chosen(known)
        return self._session.verdict.rules if chosen is None else chosen

    def _build(self, known: Style) -> None:
        self._shown = known
        for old in self.buttons.values():
            self._row.removeWidget(old)
            old.hide()
            old.deleteLater()
        self.buttons = {}
        for at, rules in enumerate(known.rules):
            one = QToolButton(self)
            one.setText(word(rules.name, "rules"))
            one.setCheckable(True)
            one.setMinimumHeight(26)
            one.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
            one.setProperty("role", "chip")
            one.setToolTip(told(rules))
            one.setAccessibleDescription(told(rules))
            one.clicked.connect(lambda _=False: self._pressed())
            self._row.insertWidget(1 + at, one)
            self.buttons[rules.key] = one

    def _pressed(self) -> None:
        self._choose(tuple(key for key, one in self.buttons.items() if one.isChecked()))

    def _choose(self, keys: tuple[str, ...] | None) -> None:
        self._judging.choose(self._session.recipe.style, keys)
        self._session.judge_again()


def told(rules: Rules) -> str:
    """A rule set in one line: rule, source, how we have it."""
    return headed(word(rules.kind, "rules"), f"{rules.rule}; {rules.source} ({word(rules.have, 'have')})")
