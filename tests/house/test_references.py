"""The Qt binding keeps its references: 6.12.0 on Python below 3.12 lost one to None at every call that returns nothing.

A process that loses them ends with "none_dealloc" after some 80 frames of a drag. pyproject.toml keeps that pair out.
"""

from __future__ import annotations

import sys

from PySide6.QtCore import QObject

CALLS = 1000
NOISE = 50


def test_calls_that_return_nothing_keep_none_alive() -> None:
    thing = QObject()
    before = sys.getrefcount(None)
    for _ in range(CALLS):
        thing.setObjectName("curd")
    assert abs(sys.getrefcount(None) - before) < NOISE


def test_signals_keep_true_alive() -> None:
    thing = QObject()
    names: list[str] = []
    thing.objectNameChanged.connect(names.append)
    before = sys.getrefcount(True)
    for number in range(CALLS):
        thing.setObjectName(f"curd {number}")
    assert len(names) == CALLS
    assert abs(sys.getrefcount(True) - before) < NOISE
