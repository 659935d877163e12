"""Says a sentence aloud to whoever listens by a screen reader; others notice nothing."""

from __future__ import annotations

from PySide6.QtGui import QAccessible, QAccessibleAnnouncementEvent, QAccessibleEvent
from PySide6.QtWidgets import QWidget


def say(speaker: QWidget, sentence: str) -> None:
    """Announce a sentence on behalf of a widget, after what is being read."""
    event = QAccessibleAnnouncementEvent(speaker, sentence)
    event.setPoliteness(QAccessible.AnnouncementPoliteness.Polite)
    QAccessible.updateAccessibility(event)


def go_to(part: QWidget) -> None:
    """Tell a screen reader that the keyboard works this part now, whichever widget takes the keys."""
    QAccessible.updateAccessibility(QAccessibleEvent(part, QAccessible.Event.Focus))
