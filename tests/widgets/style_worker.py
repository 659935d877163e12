"""A maker at work on a house style in a process of its own, to be killed.

`python -m tests.widgets.style_worker HOME`: opens the style there and changes it for ever. After each change it says so
on standard output: "kept 7".
"""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path
from types import SimpleNamespace
from typing import cast

from PySide6.QtWidgets import QApplication

from styles.reader import Style
from widgets.judging import adopt_beside
from widgets.session import Session
from widgets.variants.style_document import StyleDocument
from widgets.variants.style_keeping import Keeping

KEY = "hill-round"


def number(style: Style) -> int:
    """Which change made this style."""
    return int(style.notes or 0)


def document(home: Path) -> StyleDocument:
    """The style of that home, open, with what an ended window left."""
    adopt_beside(home / "round.toml")
    recipe = SimpleNamespace(style="")
    made = StyleDocument(
        cast(Session, SimpleNamespace(path=home / "round.toml", recipe=recipe)), Keeping(home / "recovery" / "styles")
    )
    made.open(KEY)
    return made


def main(home: Path) -> None:
    """Work until killed."""
    app = QApplication([])
    made = document(home)
    assert made.style is not None
    print("begun", number(made.style), flush=True)
    while True:
        done = number(made.style) + 1
        made.commit(replace(made.style, notes=str(done)), "remarks")
        print("kept", done, flush=True)
        app.processEvents()


if __name__ == "__main__":
    main(Path(sys.argv[1]))
