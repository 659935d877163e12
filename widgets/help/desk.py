"""All the help of a window in one piece: its actions, its menu, what F1 looks up, and the look around."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QT_TRANSLATE_NOOP, QObject, QPoint, QRect, Qt, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QApplication, QMenu, QMessageBox, QToolButton, QWidget

from widgets.actions import Actions, Spec
from widgets.help.action_list import ActionList, Found, in_menus
from widgets.help.keys import Keys
from widgets.help.look_around import LookAround, Step
from widgets.help.look_up import LookUp
from widgets.theme.icons import program_icon

if TYPE_CHECKING:
    from designer.judge.verdict import Row
    from widgets.window import Window

N = QT_TRANSLATE_NOOP


def key_of(widget: QWidget | None) -> str:
    """What quantity, field or kind a widget shows: what it, or the nearest around it, says of itself."""
    while widget is not None:
        told = getattr(widget, "looked_up", None)
        if told is not None and (key := str(told())):
            return key
        widget = widget.parentWidget()
    return ""


class Desk(QObject):
    """Made once for a window; opens each part when it is first asked for."""

    def __init__(self, window: Window) -> None:
        super().__init__(window)
        self._window = window
        self.look_up: LookUp | None = None
        self.actions: ActionList | None = None
        self._around: LookAround | None = None

    def specs(self) -> list[Spec]:
        """The actions of the Help menu."""
        return [
            Spec("look_up", N("Actions", "&Look up a word or a source…"), self.show_look_up, "", "F1", dialog=True),
            Spec("all_actions", N("Actions", "&All actions…"), self.show_actions, "", "Ctrl+Shift+P", dialog=True),
            Spec("keys", N("Actions", "&Keys and gestures…"), self.show_keys, "", "Ctrl+/", dialog=True),
            Spec("around", N("Actions", "A look a&round"), self.start_around, "", "Ctrl+F1"),
            Spec("about", N("Actions", "A&bout Curdwright"), self.about, dialog=True),
        ]

    def fill(self, menu: QMenu, actions: Actions) -> None:
        """Put them into the menu."""
        menu.addActions([actions[key] for key in ("look_up", "all_actions", "keys")])
        menu.addSeparator()
        menu.addActions([actions[key] for key in ("around", "about")])

    # ---- looking up

    @Slot()
    def show_look_up(self) -> None:
        """Open the search; on something that has a word of its own, at that word."""
        key = key_of(QApplication.focusWidget())
        shown = self._looked_up()
        if not shown.open_at(key):
            shown.search.selectAll()
        shown.search.setFocus(Qt.FocusReason.ShortcutFocusReason)

    @Slot(object)
    def show_source(self, row: Row) -> None:
        """Open the search at the figure of a row of the verdict, with its source."""
        self._looked_up().open_row(row)

    def _looked_up(self) -> LookUp:
        if self.look_up is None:
            self.look_up = LookUp(self._window)
            self.look_up.asked.connect(self._window.go)
        self.look_up.system = self._window.preferences.system
        self.look_up.put(self._window.session.verdict)
        self.look_up.show()
        self.look_up.activateWindow()
        return self.look_up

    # ---- actions and keys

    def found(self) -> list[Found]:
        """Every action there is: of the menus, of the window outside the menus, and the places."""
        made = list(in_menus(self._window.menuBar()))
        known = {id(one.action) for one in made}
        own = self.tr("Window")
        made += [Found(action, own) for action in self._window.actions_.by_key.values() if id(action) not in known]
        return made + [Found(action, self.tr("Places")) for action in self._places()]

    def _places(self) -> list[QAction]:
        return [self._place(key, button) for key, button in self._window.rail.buttons.items()]

    def _place(self, key: str, button: QToolButton) -> QAction:
        name = f"place-{key}"
        action = self.findChild(QAction, name)
        if not isinstance(action, QAction):
            action = QAction(self.tr("Go to {0}").format(button.text()), self)
            action.setObjectName(name)
            action.setShortcut(button.shortcut())  # shown only: the button has the key
            action.triggered.connect(button.click)
        return action

    @Slot()
    def show_actions(self) -> None:
        """Open the list of all actions."""
        if self.actions is None:
            self.actions = ActionList(self._window)
        self.actions.put(self.found())
        self.actions.open()
        self.actions.search.setFocus()

    @Slot()
    def show_keys(self) -> None:
        """Open the page of keys and gestures."""
        page = Keys(self.found(), self._window)
        page.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        page.open()

    @Slot()
    def about(self) -> None:
        """What the program is, in which version, under which licence."""
        from designer.command import model_version  # brings the command line's libraries with it

        box = QMessageBox(self._window)
        box.setWindowTitle(self.tr("About Curdwright"))
        box.setIconPixmap(program_icon().pixmap(64, 64))
        box.setText(self.tr("Curdwright {0}").format(model_version()))
        box.setInformativeText(
            self.tr(
                "Curdwright designs the make of a cheese: what a recipe will do, how it stands against a style, "
                "and the plan to make it by. A forecast is never a certificate."
            )
            + "\n\n"
            + self.tr("Free software under the MIT licence.")
        )
        box.open()

    # ---- the look around

    @property
    def around(self) -> LookAround:
        """The look around this window."""
        if self._around is None:
            self._around = LookAround(self._window, self._window.go, self._steps())
            self._around.closed.connect(self._seen)
        return self._around

    @Slot()
    def start_around(self) -> None:
        """Begin it, or go on with it; from the start page at its first step."""
        here = self._window.stack.currentWidget()
        if self.around.at == 0 and here is not self._window.opened.get("start"):
            self.around.at = 1
        self.around.start()

    def went(self, place: str) -> None:
        """The window went to a place: a note about another place waits until it is asked for."""
        if self._around is not None and self._around.shown and self._around.steps[self._around.at].place != place:
            self._around.pause()

    @Slot()
    def _seen(self) -> None:
        self._window.preferences.look_around = False

    def offer_around(self) -> None:
        """Show it by itself, unless it was closed for good."""
        if self._window.preferences.look_around:
            self.start_around()

    def _of(self, widget: QWidget, part: QRect | None = None) -> QRect:
        inside = part if part is not None else widget.rect()
        return QRect(widget.mapTo(self._window, inside.topLeft()), inside.size())

    def _steps(self) -> list[Step]:
        window = self._window
        curve = window.curve

        def vat() -> QRect:
            return self._of(curve, curve.frame.places.vat.toRect())

        def ribbon() -> QRect:
            return self._of(curve, curve.frame.places.ribbon.toRect().adjusted(0, -14, 0, 0))

        def panes() -> QRect:
            inside = curve.frame.places
            first = next(iter(inside.panes.values())).toRect()
            return self._of(curve, QRect(QPoint(first.left(), first.top() - 20), first.bottomRight()))

        return [
            Step(lambda: self._of(window.stack), self.tr("Where to begin"), self.tr(
                "Take up a recipe of yours, let a first one be drawn for your milk and a style, or open an example: "
                "it is a copy, so nothing can go wrong with it."), "start"),
            Step(vat, self.tr("The vat, drawn through time"), self.tr(
                "Width is time, the line is temperature, and under it stands what is in the vat, to scale: milk, gel, "
                "curd in its whey, cheese. Drag a round corner or a figure and the whole day answers at once.")),
            Step(ribbon, self.tr("The stages"), self.tr(
                "Drag the edge of a stage to make it longer. A diamond marks a stage that ends by a state, such as "
                "a pH: drag it and you ask for another. Ctrl with the arrows goes from stage to stage.")),
            Step(panes, self.tr("What happens inside"), self.tr(
                "pH, moisture and whey on the same clock. The pale band holds 8 makes in 10. Small gates show where "
                "the style would have a curve pass.")),
            Step(lambda: self._of(window.outcomes), self.tr("What comes of it"), self.tr(
                "Each line is a figure of the cheese with its limit and margin. Open one, with a click or Enter, to "
                "see why it is so and what moves it, and to aim at the value you want.")),
            Step(lambda: self._of(window.stage_form), self.tr("The stage in figures"), self.tr(
                "The same settings to type: “88 °F”, “1/2 in”, “31,5”. F1 on any of them looks it up.")),
            Step(lambda: self._of(window.rail), self.tr("The places"), self.tr(
                "Milk and doses, the check against the style, another make beside this one, and the plan to print. "
                "Ctrl+Shift+P finds any action by its name; this look around is in the Help menu.")),
        ]  # fmt: skip
