"""How the places that show more than one face are brought to each of them for their pictures."""

from __future__ import annotations

from typing import TYPE_CHECKING

from widgets.compare.place import ComparePlace
from widgets.files import examples
from widgets.rail import View

if TYPE_CHECKING:
    from widgets.window import Window


def design(window: Window) -> tuple[View, ...]:
    """The make day, the whole make, an outcome opened, a note of the look around."""
    opening = window.outcomes.opening
    return (
        View(),
        View("whole", lambda: window.curve.fit_whole()),
        View("opened", lambda: (window.curve.fit_day(), opening.open("moisture_pct"))),
        View("around", lambda: (opening.shut(), window.help.around.show(4))),
    )


def compare(window: Window) -> tuple[View, ...]:
    """Nothing beside the make, then another."""

    def beside() -> None:
        place = window.opened["compare"]
        assert isinstance(place, ComparePlace)
        place.open_file(next(path for path in examples() if path.stem == "lantern-colby"))

    return View("empty"), View("", beside)
