"""The pictures of every place: each place and dialog has one, twice the same, and a wrong wish is a sentence."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from tests.widgets.conftest import CHEDDAR
from widgets.tour.pictures import pictures, shots
from widgets.window import Window


def test_every_place_and_dialog_has_a_picture(window: Window) -> None:
    found = shots(window)
    assert {shot.place for shot in found} == set(window.places)
    assert {"design", "dialog-keys", "compare"} <= {shot.name for shot in found}
    assert len({shot.name for shot in found}) == len(found)


def test_pictures_are_the_same_on_every_run(qtbot: QtBot, tmp_path: Path) -> None:
    told: list[tuple[int, int]] = []
    names = ("design", "check", "dialog-about")
    runs = [
        pictures(
            tmp_path / str(number), CHEDDAR, only=names, themes=("dark",), sizes=((1366, 768),),
            shown=lambda done, of, path: told.append((done, of)),
        )
        for number in range(2)
    ]  # fmt: skip
    assert {"design-dark-1366x768.png", "dialog-about-dark-1366x768.png"} <= {path.name for path in runs[0]}
    for one, other in zip(*runs, strict=True):
        assert QImage(str(one)).size().toTuple() == (1366, 768)
        assert one.read_bytes() == other.read_bytes(), one.name
    count = len(runs[0])
    assert told == [(done, count) for done in range(1, count + 1)] * 2
    assert not [one for one in QApplication.topLevelWidgets() if isinstance(one, Window) and one.isVisible()]


@pytest.mark.parametrize(("only", "theme"), [(("kitchen",), "light"), ((), "sepia")])
def test_a_wrong_wish_names_what_there_is(qtbot: QtBot, tmp_path: Path, only: tuple[str, ...], theme: str) -> None:
    with pytest.raises(ValueError, match="only"):
        pictures(tmp_path, CHEDDAR, only=only, themes=(theme,), sizes=((1366, 768),))
