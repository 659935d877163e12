"""How the places that show more than one face are brought to each of them for their pictures."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, cast

from PySide6.QtWidgets import QWidget

from designer.recipe.examples import example
from widgets.rail import View

if TYPE_CHECKING:
    from widgets.batch.page import BatchesPage
    from widgets.compare.place import ComparePlace
    from widgets.teach.guess_page import GuessPage
    from widgets.teach.vats_page import VatsPage
    from widgets.variants.versions_page import VersionsPage
    from widgets.window import Window


def design(window: Window) -> tuple[View, ...]:
    """The make day, the whole make, an outcome opened, a note of the look around."""
    opening = window.outcomes.opening
    return (
        View(),
        View("whole", lambda: window.curve.fit_whole()),
        View("life", lambda: window.curve.fit_life()),
        View("opened", lambda: (window.curve.fit_day(), opening.open("moisture_pct"))),
        View("around", lambda: (opening.shut(), window.help.around.show(4))),
    )


def compare(window: Window) -> tuple[View, ...]:
    """Nothing beside the make, then another."""

    def beside() -> None:
        place = cast("ComparePlace", window.opened["compare"])
        place.open_file(example("lantern-colby"))

    def printed() -> None:
        place = cast("ComparePlace", window.opened["compare"])
        place.show_print()

    return View("empty"), View("", beside), View("printed", printed)


def batches(pages: Mapping[str, QWidget]) -> tuple[View, ...]:
    """None noted yet; the example dairy's; a tasting being put down."""

    def page() -> BatchesPage:
        return cast("BatchesPage", pages["batches"])

    def tasting() -> None:
        batch = page().chosen()
        assert batch is not None
        page().tastings.correct.emit(next(iter(batch.tastings)))

    return View("empty"), View("", lambda: page().made_up.setChecked(True)), View("tasting", tasting)


def versions(pages: Mapping[str, QWidget]) -> tuple[View, ...]:
    """What was saved, and two of it to be compared."""

    def two() -> None:
        page = cast("VersionsPage", pages["versions"])
        for at in range(min(page.list.topLevelItemCount(), 2)):
            page.list.topLevelItem(at).setSelected(True)

    return View(), View("two", two)


def guess(pages: Mapping[str, QWidget]) -> tuple[View, ...]:
    """Before a guess, and once it is shown."""

    def shown() -> None:
        page = cast("GuessPage", pages["guess"])
        page.choice.step(-3)
        page.rows["moisture_pct"].ways.button(0).click()
        page.rows["ph_24h"].ways.button(0).click()
        page.reveal()

    return View("covered"), View("", shown)


def vats(pages: Mapping[str, QWidget]) -> tuple[View, ...]:
    """Vats at the ends and the middle of the style's range."""

    def filled() -> None:
        page = cast("VatsPage", pages["vats"])
        page.changes.clear()
        page.three.click()

    return (View("", filled),)
