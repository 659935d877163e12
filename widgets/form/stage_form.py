"""The form of the selected stage: how it ends, its own settings, its press steps, and what goes in at it."""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import QT_TRANSLATE_NOOP, QCoreApplication, QSignalBlocker, Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QComboBox, QFrame, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from designer.language import word
from designer.recipe import edit as edits
from designer.recipe.document import Recipe, Starter
from designer.recipe.end import END_VALUE_KIND, END_VALUE_RANGE, End
from designer.recipe.error import RecipeError
from designer.recipe.field import FieldMeta, field_meta, field_metas
from designer.recipe.stages.press import Press, PressStep
from widgets import wording
from widgets.form.branch_form import BranchForm
from widgets.form.editors import explained, title, words
from widgets.form.part_form import LABEL_PX, PartForm
from widgets.session import Session
from widgets.theme import apply as dress
from widgets.together import Wrapped

FOLLOW_MS = 60
"""How often the form follows a drag; curves, outcomes and verdict follow in every frame."""
BY_WORDS = {
    "time": QT_TRANSLATE_NOOP("Form", "after a time"),
    "temperature": QT_TRANSLATE_NOOP("Form", "at a temperature"),
    "ph": QT_TRANSLATE_NOOP("Form", "at a pH"),
    "acidity": QT_TRANSLATE_NOOP("Form", "at an acidity"),
    "floc_multiple": QT_TRANSLATE_NOOP("Form", "at a multiple of flocculation"),
    "firmness": QT_TRANSLATE_NOOP("Form", "at a firmness"),
    "whey_off": QT_TRANSLATE_NOOP("Form", "when so much whey is off"),
    "feel": QT_TRANSLATE_NOOP("Form", "by feel"),
}
# On what an acidity or pH is read where the maker has not said: by what there is at that stage.
OF_FIRST = {"ripen": "milk", "lactic_set": "milk", "set": "milk", "acid_heat": "milk"}


def value_meta(by: str) -> FieldMeta:
    """What is known of `End.value` for an end of this kind: its kind depends on what ends the stage."""
    low, high, step = END_VALUE_RANGE[by]
    base = field_meta(End, "value")
    return FieldMeta(
        name="value",
        key=base.key,
        english="value",
        shape="quantity",
        kind=END_VALUE_KIND[by],
        step=step,
        low=low,
        high=high,
        english_help=base.english_help,
    )


class EndForm(PartForm):
    """The end of a stage; its value takes the unit of what ends it."""

    def put_end(self, end: End, system: str) -> None:
        """Show an end."""
        only = ["length_min"] if not end.is_state else ["value", "of", "earliest_min", "latest_min"]
        if end.by not in ("ph", "acidity") and "of" in only:
            only.remove("of")
        metas = [value_meta(end.by) if name == "value" else field_meta(End, name) for name in only]
        lists: dict[str, list[tuple[Any, str]]] = {
            "of": [(one, words(one)) for one in ("milk", "whey", "curd", "cheese")]
        }
        key = (End, system, end.by)
        if key != self._built_for:
            self._build(metas, lists, system)
            self._built_for = key
        self._system = wording.system_of(system)
        self.follow(end)


class StageForm(QWidget):
    """Everything about the selected stage that can be typed."""

    said = Signal(str)
    hinted = Signal(str)
    """what is known of the field that has the keyboard"""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.session = session
        self.system = "metric"
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Settings of the selected stage"))
        self._title = Wrapped(self)
        self._title.setFont(dress.font("head", bold=True))
        self._when = QLabel(self)
        self._when.setProperty("role", "soft")
        self._by = QComboBox(self)
        self._by.setAccessibleName(self.tr("What ends the stage"))
        self._by.activated.connect(self._choose_end)
        self._end = EndForm(parent=self, recipe=self._shown_recipe)
        self._end.changed.connect(self._end_changed)
        self._own = PartForm(parent=self, recipe=self._shown_recipe)
        self._own.changed.connect(self._own_changed)
        self._steps = QVBoxLayout()
        self._steps.setSpacing(6)
        self._given = QVBoxLayout()
        self._given.setSpacing(6)
        self._branch = BranchForm(session, self)
        self._branch.said.connect(self.said)
        self._branch.hinted.connect(self.hinted)
        for form in (self._end, self._own):
            form.focused.connect(self._explain)
        self._forms: dict[str, PartForm] = {}
        self._lay_out()
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(FOLLOW_MS)
        self._later.timeout.connect(self._write_values)
        session.forecastChanged.connect(self._follow)
        session.chosenChanged.connect(self.refresh)
        self.refresh()

    def _lay_out(self) -> None:
        inside = QWidget(self)
        column = QVBoxLayout(inside)
        column.setContentsMargins(16, 10, 14, 10)
        column.setSpacing(7)
        column.addWidget(self._title)
        column.addWidget(self._when)
        row = QHBoxLayout()
        ends = QLabel(self.tr("Ends"), inside)
        ends.setProperty("role", "soft")
        ends.setFixedWidth(LABEL_PX)
        row.setSpacing(10)
        row.addWidget(ends)
        row.addWidget(self._by, 1)
        column.addLayout(row)
        column.addWidget(self._end)
        line = QFrame(inside)
        line.setObjectName("hairline")
        column.addWidget(line)
        column.addWidget(self._own)
        column.addLayout(self._steps)
        column.addLayout(self._given)
        column.addWidget(self._branch)
        column.addStretch(1)
        area = QScrollArea(self)
        area.setAccessibleName(self.tr("Settings of what is selected; arrows scroll them"))
        area.setWidget(inside)
        area.setWidgetResizable(True)
        area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(0)
        whole.addWidget(area, 1)

    # ---- showing

    def set_system(self, system: str) -> None:
        """Metric or US units."""
        self.system = system
        self._branch.system = system
        self.refresh()

    def name_branch(self) -> None:
        """Put the keyboard into the name of the branch."""
        self._branch.focus_name()

    def _shown_recipe(self) -> Recipe:
        return self.session.shown

    @property
    def stage(self) -> Any:
        """The selected stage, of what is shown."""
        return self.session.shown.stage(self.session.chosen)

    @Slot()
    def _follow(self) -> None:
        """At rest everything; while something is dragged the values that change, a few times a second."""
        if not self.session.previewing:
            self._later.stop()
            self.refresh()
        elif not self._later.isActive():
            self._later.start()

    @Slot()
    def _write_values(self) -> None:
        self._write_when()
        self._end.follow(self.stage.end)
        self._own.follow(self.stage)

    @Slot()
    def refresh(self) -> None:
        """Show the selected stage as it is."""
        recipe = self.session.shown
        if not any(stage.id == self.session.chosen for lane in recipe.lanes() for stage in lane.stages):
            return
        stage = self.stage
        self._title.setText(wording.stage_name(stage.name, stage.kind).capitalize())
        self._title.setToolTip(word(type(stage).HELP, "stage"))
        self._write_when()
        with QSignalBlocker(self._by):
            self._by.clear()
            for by in type(stage).ENDS:
                self._by.addItem(QCoreApplication.translate("Form", BY_WORDS[by]), by)
            self._by.setCurrentIndex(self._by.findData(stage.end.by))
        self._end.put_end(stage.end, self.system)
        self._own.put(stage, self.system, hide=frozenset({"kind"}))
        self._show_steps(stage)
        self._show_given(recipe, stage.id)
        self._branch.refresh()

    def _write_when(self) -> None:
        forecast = self.session.seen
        now = next((one for one in forecast.stages if one.id == self.session.chosen), None)
        if now is None:
            self._when.setText("")
            return
        clock = forecast.recipe.start_clock_min

        def at(minute: float) -> str:
            return wording.length(minute) if clock is None else wording.clock(clock + minute, self.system)

        text = self.tr("{0} to {1}  ·  {2}").format(
            at(now.start_min), at(now.end_min), wording.length(now.end_min - now.start_min)
        )
        if not now.reached:
            text += "\n" + self.tr("The state asked for is not reached; it ends at the latest moment.")
        self._when.setText(text)

    def _show_steps(self, stage: Any) -> None:
        steps = stage.steps if isinstance(stage, Press) else ()
        self._keep_forms("step", len(steps), self._steps)
        for index, step in enumerate(steps):
            form = self._form(f"step{index}", self._steps, self.tr("Load {0}").format(index + 1))
            only = ["pressure_kpa" if step.pressure_kpa is not None else "load_kg", "length_min"]
            form.of = (stage.id, f"steps.{index}.")
            form.put(step, self.system, only=only)

    def _show_given(self, recipe: Recipe, stage_id: str) -> None:
        lane = recipe.lane(stage_id)
        given = [one for one in (*lane.starters, *lane.additions) if one.at == stage_id]
        self._keep_forms("given", len(given), self._given)
        for index, one in enumerate(given):
            name = one.name or words(getattr(one, "what", None) or one.kind)
            form = self._form(f"given{index}", self._given, self.tr("Goes in: {0}").format(name), removable=True)
            only = [
                meta.name
                for meta in field_metas(type(one))
                if meta.shape == "quantity" and getattr(one, meta.name) is not None and meta.name != "units_per_100l"
            ]
            form.of = (one.id, "")
            form.put(one, self.system, only=only)

    def _form(self, key: str, column: QVBoxLayout, title: str, *, removable: bool = False) -> PartForm:
        form = self._forms.get(key)
        if form is None:
            head = QWidget(self)
            row = QHBoxLayout(head)
            row.setContentsMargins(0, 0, 0, 0)
            label = Wrapped(head)
            label.setFont(dress.font("body", bold=True))
            row.addWidget(label, 1)
            form = PartForm(parent=self, recipe=self._shown_recipe)
            form.setProperty("head", head)
            if removable:
                button = QPushButton(self.tr("Take out"), head)
                button.setFlat(True)
                button.clicked.connect(lambda _=False, key=key: self._take_out(key))
                row.addWidget(button)
            form.changed.connect(lambda name, value, nudged, key=key: self._part_changed(key, name, value, nudged))
            form.focused.connect(self._explain)
            column.addWidget(head)
            column.addWidget(form)
            self._forms[key] = form
        head = form.property("head")
        head.findChild(QLabel).setText(title)
        for button in head.findChildren(QPushButton):
            button.setAccessibleName(self.tr("Take out: {0}").format(title))
        return form

    def _keep_forms(self, prefix: str, count: int, column: QVBoxLayout) -> None:
        for key in [key for key in self._forms if key.startswith(prefix) and int(key[len(prefix) :]) >= count]:
            form = self._forms.pop(key)
            for widget in (form.property("head"), form):
                column.removeWidget(widget)
                widget.hide()
                widget.deleteLater()

    def _given_at(self, key: str) -> Any:
        """What goes in at the selected stage, by the key of its form."""
        stage = self.stage
        lane = self.session.recipe.lane(stage.id)
        return [one for one in (*lane.starters, *lane.additions) if one.at == stage.id][int(key[len("given") :])]

    def _take_out(self, key: str) -> None:
        given = self._given_at(key)
        try:
            made = edits.take_out(self.session.recipe, given.id)
        except RecipeError as error:
            self.said.emit(str(error))
            return
        self.session.commit(made, self.tr("Take out"))

    # ---- editing

    def _keep(self, form: PartForm, name: str, nudged: bool, change: Any) -> None:
        try:
            recipe = change()
        except RecipeError as error:
            form.complain(name, error.sentence)
            return
        form.complain(name, "")
        label = (
            title(form.editors[name].meta).lower() if name in form.editors else word(name.replace("_", " "), "field")
        )
        text = QCoreApplication.translate("Form", "{0} of {1}").format(label, self.stage.title)
        self.session.commit(recipe, text, key=(self.session.chosen, name) if nudged else None)

    @Slot(str, object, bool)
    def _own_changed(self, name: str, value: object, nudged: bool) -> None:
        recipe, chosen = self.session.recipe, self.session.chosen
        value = "" if value is None and name in ("name", "note") else value
        self._keep(self._own, name, nudged, lambda: edits.edit(recipe, chosen, **{name: value}))

    @Slot(str, object, bool)
    def _end_changed(self, name: str, value: object, nudged: bool) -> None:
        recipe, chosen = self.session.recipe, self.session.chosen
        self._keep(self._end, name, nudged, lambda: edits.edit_end(recipe, chosen, **{name: value}))

    def _part_changed(self, key: str, name: str, value: object, nudged: bool) -> None:
        recipe, stage = self.session.recipe, self.stage
        form = self._forms[key]
        if key.startswith("step"):
            index = int(key[4:])

            def change() -> Recipe:
                step = PressStep.model_validate(stage.steps[index].model_dump() | {name: value})
                return edits.edit(recipe, stage.id, steps=(*stage.steps[:index], step, *stage.steps[index + 1 :]))

            self._keep(form, name, nudged, change)
            return
        given = self._given_at(key)
        editing = edits.edit_starter if isinstance(given, Starter) else edits.edit_addition
        self._keep(form, name, nudged, lambda: editing(recipe, given.id, **{name: value}))

    @Slot(int)
    def _choose_end(self, index: int) -> None:
        """Another kind of end, begun from what the forecast gives at this stage's end."""
        by = self._by.itemData(index)
        recipe, stage = self.session.recipe, self.session.recipe.stage(self.session.chosen)
        if by == stage.end.by:
            return
        try:
            made = edits.set_end(recipe, stage.id, **self._begun(by, stage))
        except RecipeError as error:
            self.said.emit(str(error))
            self.refresh()
            return
        self.session.commit(made, self.tr("End of {0}").format(stage.title))

    def _begun(self, by: str, stage: Any) -> dict[str, Any]:
        now = next(one for one in self.session.seen.stages if one.id == stage.id)
        length = max(float(round(now.end_min - now.start_min)), 1.0)
        if by in ("time", "feel"):
            return {"by": by, "length_min": length}
        low, high, step = END_VALUE_RANGE[by]
        of = OF_FIRST.get(stage.kind, "curd")
        floc = self.session.seen.outcomes.get("floc_min")
        values = {
            "ph": now.values.get("ph", 6.0),
            "temperature": now.values["temperature_c"],
            "firmness": now.values.get("firmness_pa", 20.0),
            "whey_off": now.values.get("whey_kg_per_100kg", 50.0),
            "floc_multiple": length / floc.value if floc is not None and floc.value > 0 else 3.0,
            "acidity": 0.2,
        }
        value = min(max(round(values[by] / step) * step, low), high)
        made: dict[str, Any] = {"by": by, "value": value, "latest_min": max(2 * length, 30.0)}
        if by in ("ph", "acidity"):
            made["of"] = of
        return made

    @Slot(object)
    def _explain(self, meta: FieldMeta) -> None:
        self.hinted.emit(explained(meta, self.system))

    def focus_field(self, field: str) -> None:
        """Put the keyboard into a field of the stage."""
        form = self._end if field == "end" else self._own
        name = next(iter(form.editors), "") if field == "end" else field
        if field == "steps":
            form, name = self._forms[max(key for key in self._forms if key.startswith("step"))], ""
            name = next(iter(form.editors))
        if name in form.editors:
            form.editors[name].setFocus(Qt.FocusReason.ShortcutFocusReason)
