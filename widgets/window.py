"""The window: places along one edge, each opening in place; one recipe, one undo stack."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import QPoint, Qt, Slot
from PySide6.QtGui import QCloseEvent, QGuiApplication, QKeySequence, QUndoGroup, QUndoStack
from PySide6.QtWidgets import QApplication, QHBoxLayout, QLabel, QMainWindow, QSplitter, QWidget

from designer.forecast import forecast
from designer.recipe.document import Recipe
from widgets import stage_menu, wording
from widgets.actions import Actions, Spec
from widgets.aside import take_turns
from widgets.bands import banded
from widgets.branch_work import BranchWork
from widgets.chart_table import ChartTable
from widgets.choices import Choices
from widgets.files import FileWork
from widgets.form import hours_form
from widgets.form.stage_form import StageForm
from widgets.help.desk import Desk
from widgets.journal import Journal
from widgets.judging import Judging, known_style
from widgets.make_curve import looking
from widgets.make_curve.canvas import MakeCurve
from widgets.make_curve.drag import KEEP, LATER
from widgets.menus import Menus, Tools
from widgets.outcomes.locking import setting_at
from widgets.outcomes.panel import OutcomePanel
from widgets.preferences import Preferences
from widgets.rail import Place, Rail, Railed
from widgets.room import Parts, Stack, scrolling
from widgets.session import Session
from widgets.stage_work import StageWork
from widgets.teach.work import Teaching
from widgets.theme import apply as dress
from widgets.theme.icons import program_icon
from widgets.tour import views
from widgets.variants.page import Page
from widgets.variants.work import Variants

if TYPE_CHECKING:
    from widgets.form.milk_place import MilkPlace
    from widgets.start.place import StartPlace

SIDE_PX, BESIDE_PX = 336, 800
"""Width of what stands beside the make curve, and the least room for both beside each other."""
SHARES, SHARES_OPENED = (400, 270), (480, 190)
"""How outcomes and stage form share the side, and how while an outcome is open."""


class Window(QMainWindow):
    """Curdwright's window on one recipe."""

    def __init__(self, recipe: Recipe, *, config: Path, data: Path) -> None:
        super().__init__()
        take_turns()
        self.preferences = Preferences(config / "curdwright.ini", self)
        self.judging = Judging(self.preferences)
        self.session = Session(recipe, nominal=forecast, banded=banded, check=self.judging, parent=self)
        self.undo = QUndoGroup(self)
        """undo of what is worked on: the recipe, or a house style while its page is open"""
        self.undo.addStack(self.session.stack)
        self.journal = Journal(data / "recovery")
        self.files = FileWork(self.session, self.preferences, self.journal, self)
        self.stages = StageWork(self.session, self.files.tell, self)
        self.variants = Variants(self.session, self.files, self.go, data, self)
        self.variants.beside.connect(self._put_beside)
        self.branches = BranchWork(self.session, self.files.tell, self._name_branch, self)
        self.curve = MakeCurve(self.session)
        self.stage_form = StageForm(self.session)
        self.outcomes = OutcomePanel(self.session)
        self.teaching = Teaching(self.session, self.files, self.go, self.curve, lambda: self.preferences.scheme, self)
        self.opened: dict[str, QWidget] = {}
        """the places opened so far, by key"""
        self.help = Desk(self)
        self.choices = Choices(self.preferences, self._set_system, lambda text: self.status.setText(text))
        self.actions_ = Actions(self, self._specs())
        self.setWindowIcon(program_icon())
        self._lay_out()
        self.table = ChartTable(self.session, self.stack, self.preferences, self)
        self.menus = Menus(
            self,
            self.actions_,
            self.files,
            self.preferences,
            stages=self.stages,
            branches=self.branches,
            variants=self.variants,
            teaching=self.teaching,
            choices=self.choices,
            help_=self.help,
        )
        self.tools = Tools(self.actions_, self)
        self.addToolBar(self.tools)
        self.status = QLabel(self)
        self.status.setContentsMargins(10, 0, 10, 0)
        self.statusBar().addWidget(self.status, 1)
        self.statusBar().addPermanentWidget(self.variants.note)
        self.statusBar().setSizeGripEnabled(False)
        self._connect()
        self._apply_preferences()
        self._titled()
        self.resize(1366, 768)
        if not self.preferences.geometry.isEmpty():
            self.restoreGeometry(self.preferences.geometry)
        self.go("design")
        self.curve.setFocus()

    # ---- building

    def _lay_out(self) -> None:
        self.side = side = QSplitter(Qt.Orientation.Vertical)
        side.addWidget(self.outcomes)
        side.addWidget(self.stage_form)
        side.setSizes(list(SHARES))
        side.setChildrenCollapsible(False)
        side.setHandleWidth(1)
        side.setMinimumWidth(280)
        design = Parts([self.curve, side], [960, SIDE_PX], BESIDE_PX)
        design.setStretchFactor(0, 1)
        design.setStretchFactor(1, 0)
        design.turned.connect(self._turn_side)
        places = [
            Place("start", self.tr("Start"), "start", self._start, self._refresh, keys="Alt+Home"),
            Place("milk", self.tr("Milk"), "milk", self._milk),
            Place("design", self.tr("Design"), "design", lambda: design, self.curve.setFocus, views=views.design(self)),
            Place("check", self.tr("Check"), "check", self._check, self._refresh),
            Place("compare", self.tr("Compare"), "compare", self._compare, self._refresh, views=views.compare(self)),
            Place("plan", self.tr("Plan"), "plan", self._plan, self._refresh),
            *self.variants.places(),
            *self.teaching.places(),
        ]
        self.places = {place.key: place for place in places}
        self.stack = Stack()
        self.rail = Rail(places)
        self.rail.chosen.connect(self.go)
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(Railed(self.rail))
        row.addWidget(scrolling(self.stack), 1)
        self.setCentralWidget(whole)

    def _start(self) -> QWidget:
        from widgets.start.place import StartPlace  # this and the next ones: loaded after the first picture

        place = StartPlace(self.session, self.files, self.preferences)
        place.set_system(self.preferences.system)
        place.opened.connect(lambda: self.go("design"))
        return place

    def _new(self) -> None:
        self.go("start")
        cast("StartPlace", self.opened["start"]).start_new()

    def _milk(self) -> QWidget:
        from widgets.form.milk_place import MilkPlace

        place = MilkPlace(self.session)
        place.asked.connect(self.go)
        place.set_system(self.preferences.system)
        self._listen(place)
        return place

    def _check(self) -> QWidget:
        from widgets.outcomes.check_place import CheckPlace

        place = CheckPlace(self.session, self.judging)
        place.set_system(self.preferences.system)
        place.asked.connect(self.go)
        place.source_asked.connect(self.help.show_source)
        return place

    def _compare(self) -> QWidget:
        from widgets.compare.place import ComparePlace

        place = ComparePlace(self.session)
        place.set_system(self.preferences.system)
        return place

    @Slot(object, str)
    def _put_beside(self, recipe: Recipe, called: str) -> None:
        self.go("compare")
        self.opened["compare"].put_beside(recipe, called)  # type: ignore[attr-defined]

    def _seen(self, *keys: str) -> list[QWidget]:
        """Those of the places that were opened so far."""
        return [self.opened[key] for key in keys if key in self.opened]

    def _plan(self) -> QWidget:
        from designer.plan.make_plan import Print, make_plan
        from designer.plan.sheet import Paper, Sheet
        from widgets.paper.preview import PlanPreview

        def sheet(paper: Paper) -> Sheet:
            made = self.session.forecast
            known = known_style(made.recipe.style)
            return make_plan(made, known, Print(paper=paper, system=wording.system_of(self.preferences.system)))

        return PlanPreview(sheet)

    def _refresh(self) -> None:
        """Bring the open place up to date: a table or a sheet made from the forecast."""
        place = self.stack.currentWidget()
        if place is not None and place in self._seen("start", "check", "compare", "plan"):
            place.refresh()  # type: ignore[attr-defined]

    def _specs(self) -> list[Spec]:
        key = QKeySequence.StandardKey
        return [
            Spec("new", "&New recipe…", self._new, "", key.New),
            Spec("open", "&Open…", self._open, "open", key.Open),
            Spec("save", "&Save", self.files.save, "save", key.Save),
            Spec("save_as", "Save &as…", self.files.ask_and_save, "", "Ctrl+Shift+S"),
            Spec("print", "&Plan and print…", lambda: self.go("plan"), "print", key.Print),
            Spec("quit", "&Quit", self.close, "", key.Quit),
            Spec("undo", "&Undo", self.undo.undo, "undo", key.Undo),
            Spec("redo", "&Redo", self.undo.redo, "redo", key.Redo),
            Spec("lock", "&Lock this setting while aiming", self._lock, "", "Ctrl+L"),
            Spec("later", "Later stages move along", self._set_later, "later", "", True, "edges"),
            Spec("keep", "The next stage takes up the change", self._set_keep, "keep", "", True, "edges"),
            *looking.specs(self.curve),
            Spec("hours", "&Working hours…", lambda: hours_form.ask(self, self.preferences, self.curve), dialog=True),
            Spec("figures", "&Figures of the curves", lambda: self.table.tell(), "", "Ctrl+T", dialog=True),
            *self.choices.specs(),
            Spec("system", "As the &system", lambda: self._set_scheme("system"), "", "", True, "theme"),
            Spec("light", "&Light", lambda: self._set_scheme("light"), "", "", True, "theme"),
            Spec("dark", "&Dark", lambda: self._set_scheme("dark"), "", "", True, "theme"),
            Spec("contrast", "High &contrast", lambda: self._set_scheme("contrast"), "", "", True, "theme"),
            *self.stages.specs(lambda: self.curve.reading),
            *self.branches.specs(),
            *self.variants.specs(),
            *self.teaching.specs(),
            *self.help.specs(),
        ]

    @Slot(QPoint)
    def _show_stage_menu(self, at: QPoint) -> None:
        self.stage_menu = stage_menu.popup(self, self.menus.insert, self.actions_, at)

    def _connect(self) -> None:
        stack = self.session.stack
        for key, can, text in (
            ("undo", self.undo.canUndoChanged, self.undo.undoTextChanged),
            ("redo", self.undo.canRedoChanged, self.undo.redoTextChanged),
        ):
            action = self.actions_[key]
            action.setEnabled(False)
            can.connect(action.setEnabled)
            plain = action.text()
            text.connect(lambda what, action=action, plain=plain: action.setText(f"{plain}  {what}" if what else plain))
        stack.cleanChanged.connect(lambda clean: self.setWindowModified(not clean))
        self.session.documentChanged.connect(self._titled)
        self.session.pathChanged.connect(self._titled)
        self.session.problem.connect(self.tools.show_problem)
        self.curve.said.connect(self.status.setText)
        self.curve.moved.connect(self.stages.move)
        self.curve.menued.connect(self._show_stage_menu)
        self.curve.locked.connect(self._lock)
        self.curve.typed.connect(lambda grip: self.stage_form.focus_field(grip.field))
        self._listen(self.stage_form)
        self._listen(self.outcomes)
        self.outcomes.opening.changed.connect(self._share_side)
        self.outcomes.opening.source_asked.connect(self.help.show_source)
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self._system_scheme_changed)
        hints.accessibility().contrastPreferenceChanged.connect(self._system_scheme_changed)

    def _listen(self, part: StageForm | MilkPlace | OutcomePanel) -> None:
        part.said.connect(self.files.tell)
        part.hinted.connect(self.status.setText)

    @Slot(bool)
    def _turn_side(self, under: bool) -> None:
        """Under the curve, outcomes and stage form stand beside each other."""
        self.side.setOrientation(Qt.Orientation.Horizontal if under else Qt.Orientation.Vertical)
        self.side.setSizes([1, 1] if under else list(SHARES))

    def _share_side(self, opened: bool) -> None:
        """More room for the outcomes while one is open."""
        if self.side.orientation() == Qt.Orientation.Horizontal:
            return
        tall = sum(self.side.sizes())
        first, second = SHARES_OPENED if opened else SHARES
        self.side.setSizes([tall * first // (first + second), tall * second // (first + second)])

    # ---- places, units, theme

    def prepare(self, key: str) -> None:
        """Make a place, where that was not done."""
        if key not in self.opened:
            self.opened[key] = self.places[key].make()
            self.stack.addWidget(self.opened[key])

    def go(self, key: str) -> None:
        """Open a place; it is made when it is first opened, or before."""
        self.teaching.projecting.leave()
        self.prepare(key)
        place = self.opened[key]
        self.stack.setCurrentWidget(place)
        self.rail.show_chosen(self.places[key].under or key)
        self.help.went(key)
        own = getattr(place, "stack", None)
        self.undo.setActiveStack(own if isinstance(own, QUndoStack) else self.session.stack)
        self.places[key].opened()

    def _apply_preferences(self) -> None:
        self._set_system(self.preferences.system)
        self._set_scheme(self.preferences.scheme)
        kept = self.preferences
        self.curve.set_hours(kept.hours)
        self.curve.mode = KEEP if kept.keep_end else LATER
        self.actions_["keep" if kept.keep_end else "later"].setChecked(True)

    def _set_system(self, system: str) -> None:
        if system != self.preferences.system:
            self.preferences.system = system
        self.choices.show(self.actions_)
        for part in (self.curve, self.stage_form, self.outcomes):
            part.set_system(system)
        self.variants.set_system(system)
        self.teaching.set_system(system)
        for place in self._seen("start", "milk", "check", "compare"):
            place.set_system(system)  # type: ignore[attr-defined]
        self._refresh()

    def _set_scheme(self, scheme: str) -> None:
        if scheme != self.preferences.scheme:
            self.preferences.scheme = scheme
        self.actions_[scheme].setChecked(True)
        app = QApplication.instance()
        if isinstance(app, QApplication) and not dress.wears(scheme):
            dress.apply(app, scheme)
        self.actions_.recolour()
        self.rail.recolour()
        self._refresh()
        shown = self.stack.currentWidget()
        if isinstance(shown, Page):
            shown.refresh()  # a hidden one does so when it is opened

    @Slot()
    def _system_scheme_changed(self) -> None:
        """The system went light, dark, or into high contrast."""
        if self.preferences.scheme == "system":
            self._set_scheme("system")

    def _set_later(self) -> None:
        self.curve.mode = LATER
        self.preferences.keep_end = False

    def _set_keep(self) -> None:
        self.curve.mode = KEEP
        self.preferences.keep_end = True

    @Slot()
    def _lock(self) -> None:
        self.outcomes.opening.lock(setting_at(self.focusWidget(), self.session))

    def _name_branch(self) -> None:
        self.go("design")
        self.stage_form.name_branch()

    # ---- files

    def _open(self) -> None:
        self.files.ask_and_open()

    @Slot()
    def _titled(self) -> None:
        recipe, path = self.session.recipe, self.session.path
        where = path.name if path is not None else self.tr("not saved yet")
        self.setWindowTitle(self.tr("{0}[*] – {1} – Curdwright").format(recipe.name, where))
        self.tools.show_name(recipe.name)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Ask about unsaved work; end what runs beside the window."""
        if not self.files.may_leave():
            event.ignore()
            return
        self.teaching.stop()
        self.table.close()
        self.preferences.geometry = self.saveGeometry()
        self.files.close()
        self.outcomes.opening.stop()
        self.variants.stop()
        for place in self._seen("start", "compare"):
            place.stop()  # type: ignore[attr-defined]
        self.session.close()
        super().closeEvent(event)
