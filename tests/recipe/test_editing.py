"""Edits make a new recipe and leave the old one; bad ones change nothing; any run of them can be undone and saved."""

from __future__ import annotations

import json
import random
from contextlib import suppress
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from designer.recipe import edit as change
from designer.recipe.document import Branch, Coat, Recipe
from designer.recipe.edit import edit, edit_addition, edit_end, edit_milk, edit_starter
from designer.recipe.end import END_VALUE_RANGE, End, after
from designer.recipe.error import RecipeError
from designer.recipe.field import field_metas
from designer.recipe.file import json_schema, read, reads, writes
from designer.recipe.lower import lower
from designer.recipe.stages.kinds import KINDS
from tests.recipe.samples import CHEDDAR, EXAMPLES, every_stage
from tests.recipe.test_writing import BRANCH, TEXT


def test_an_edit_leaves_the_old_recipe() -> None:
    recipe = read(CHEDDAR)
    new = edit(recipe, "warm", temperature_c=38.0)
    assert new.stage("warm").temperature_c == 38.0  # type: ignore[union-attr]
    assert recipe == read(CHEDDAR)
    assert edit(new, "warm", temperature_c=39.0) == recipe
    assert hash(edit(new, "warm", temperature_c=39.0)) == hash(recipe)


def test_a_bad_edit_is_a_sentence_and_changes_nothing() -> None:
    recipe = read(CHEDDAR)
    for call, words in (
        (
            lambda: edit(recipe, "warm", temperature_c=139.0),
            "stage 5, “cook”: temperature can't be 139 °C; allowed is 0 °C to 100 °C.",
        ),
        (lambda: edit(recipe, "warm", temperature_c=float("nan")), "stage 5, “cook”"),
        (lambda: edit(recipe, "warm", temprature_c=39.0), "there is no field “temprature_c”"),
        (lambda: edit(recipe, "nowhere", name="x"), "there is no stage “nowhere”"),
        (lambda: edit(recipe, "cut", id="set"), "“set” stands twice"),
        (lambda: edit_end(recipe, "hold", value=9.0), "stage 6"),
        (lambda: change.set_end(recipe, "fill", by="whey_off", value=80.0, latest_min=60.0), "can't end by whey off"),
        (lambda: edit(recipe, "press", end=after(60.0)), "shorten the steps"),
        (lambda: edit_milk(recipe, "evening", fat_pct=4.0), "there is no milk “evening”"),
        (lambda: edit_starter(recipe, "nobody", bulk_pct=1.0), "there is no starter “nobody”"),
        (lambda: edit_addition(recipe, "rennet", at="nowhere"), "which there is not"),
        (lambda: change.take_out(recipe, "nobody"), "there is no part “nobody”"),
        (lambda: change.split(recipe, "cut", 5.0), "done twice"),
        (lambda: change.split(recipe, "warm", 35.0), "can't be cut there"),
        (lambda: change.new_stage(recipe, "dance"), "no stage kind “dance”"),
        (lambda: change.edit_recipe(recipe, milks=()), "no milk"),
        (lambda: change.edit_branch(recipe, "x", name="y"), "there is no branch “x”"),
    ):
        with pytest.raises(RecipeError) as caught:
            call()  # type: ignore[no-untyped-call]
        assert words in str(caught.value)
    assert recipe == read(CHEDDAR)


def test_press_and_its_steps_stay_one() -> None:
    recipe = read(CHEDDAR)
    longer = edit(recipe, "press", end=after(1200.0)).stage("press")
    assert [step.length_min for step in longer.steps] == [30.0, 90.0, 1080.0]  # type: ignore[union-attr]
    fewer = edit(recipe, "press", steps=({"pressure_kpa": 20.0, "length_min": 300.0},)).stage("press")
    assert fewer.end.length_min == 300.0
    first, second = change.split(recipe, "press", 60.0).stages[11:13]
    assert [step.length_min for step in first.steps] == [30.0, 30.0]  # type: ignore[union-attr]
    assert [step.length_min for step in second.steps] == [60.0, 960.0]  # type: ignore[union-attr]


def test_stages_in_order() -> None:
    recipe = read(CHEDDAR)

    def ids(one: Recipe) -> list[str]:
        return [stage.id for stage in one.stages]

    before = ids(recipe)
    assert ids(change.move(recipe, "mill", 1))[8:10] == ["salt", "mill"]
    assert ids(change.move(recipe, "mill", -99))[0] == "mill"
    assert ids(change.duplicate(recipe, "cut")) == [*before[:3], "cut-2", *before[3:]]
    wash = change.new_stage(recipe, "wash")
    assert ids(change.insert(recipe, wash, after_id="hold"))[6] == "wash"
    assert ids(change.insert(recipe, wash))[0] == "wash"
    gone = change.remove(recipe, "ripen")
    assert gone.starters[0].at == "set"
    assert gone.additions[0].at == "set"
    assert gone.additions[0].after_min == 0.0
    assert change.remove(recipe, "set").additions[1].at == "ripen"


def test_a_ramp_cut_in_two_is_the_same_line() -> None:
    recipe = change.split(read(CHEDDAR), "warm", 14.0)
    first, second = recipe.stages[4:6]
    assert first.temperature_c == pytest.approx(31.0 + 8.0 * 14.0 / 35.0)  # type: ignore[union-attr]
    assert (second.temperature_c, second.ramp_min, second.end.length_min) == (39.0, 21.0, 21.0)  # type: ignore[union-attr]
    held = change.split(edit(read(CHEDDAR), "warm", ramp_min=10.0), "warm", 14.0).stages[5]
    assert held.temperature_c is None  # type: ignore[union-attr]


def test_what_goes_in_later_goes_in_at_the_second_half() -> None:
    recipe = change.split(read(CHEDDAR), "ripen", 20.0)
    assert recipe.starters[0].at == "ripen"
    assert (recipe.additions[0].at, recipe.additions[0].after_min) == ("ripen-2", 10.0)


def test_branches_are_edited_in_place() -> None:
    recipe = reads(TEXT + BRANCH)
    assert edit(recipe, "curdle", temperature_c=90.0).stage("curdle").temperature_c == 90.0  # type: ignore[union-attr]
    assert edit_addition(recipe, "vinegar", volume_l=0.5).branches[0].additions[0].volume_l == 0.5
    assert change.edit_branch(recipe, "whey-cheese", share_pct=50.0).branches[0].share_pct == 50.0
    assert change.edit_recipe(recipe, branches=()).branches == ()
    assert edit(recipe, "drain", id="whey-off").branches[0].after == "whey-off"
    assert change.remove(recipe, "drain").branches[0].after == "hold"
    assert edit(recipe, "curdle", id="boil").branches[0].additions[0].at == "boil"
    assert change.take_out(recipe, "whey-cheese").branches == ()
    with pytest.raises(RecipeError, match="more than there is"):
        change.add(
            recipe,
            recipe.branches[0].model_copy(update={"id": "b2", "stages": _copied(recipe.branches[0]), "additions": ()}),
        )
    with pytest.raises(RecipeError, match="only stage"):
        change.remove(change.remove(recipe, "basket"), "curdle")


def _copied(branch: Branch) -> tuple[Any, ...]:
    return tuple(stage.model_copy(update={"id": f"{stage.id}-b"}) for stage in branch.stages)


def test_parts_begin_and_go() -> None:
    recipe = read(CHEDDAR)
    assert change.edit_coat(recipe, kind="wax").coat == Coat(kind="wax", from_day=1.0, note=recipe.coat.note)  # type: ignore[union-attr]
    bare = change.edit_recipe(recipe, form=None, coat=None, vat=None)
    assert change.edit_form(bare, diameter_mm=100.0, height_mm=50.0).form is not None
    assert change.edit_vat(bare, power_kw=3.0).vat is not None
    with pytest.raises(RecipeError, match=r"form: .*missing"):
        change.edit_form(bare, diameter_mm=100.0)


# --- Any run of edits ------------------------------------------------------------------------------------------------


def any_edit(recipe: Recipe, dice: random.Random) -> Recipe:
    """One edit such as a maker might make, somewhere; RecipeError where the recipe does not allow it."""
    stage = dice.choice([stage for lane in recipe.lanes() for stage in lane.stages])
    kind = dice.choice(
        ["field", "field", "field", "end", "other end", "move", "copy", "remove", "split", "new", "milk", "dose", "id"]
    )
    if kind == "field":
        metas = [
            meta for meta in field_metas(type(stage)) if meta.shape in ("quantity", "choice") and meta.name != "kind"
        ]
        if not metas:
            return edit(recipe, stage.id, name=dice.choice(["", "a “name”", 'with "quotes"', "two\nlines"]))
        meta = dice.choice(metas)
        if meta.shape == "choice":
            return edit(recipe, stage.id, **{meta.name: dice.choice(meta.choices)})
        if meta.optional and dice.random() < 0.2:
            return edit(recipe, stage.id, **{meta.name: None})
        assert meta.low is not None
        assert meta.high is not None
        return edit(recipe, stage.id, **{meta.name: dice.uniform(meta.low, min(meta.high, 200.0))})
    if kind == "end":
        if stage.end.is_state:
            return edit_end(recipe, stage.id, latest_min=dice.uniform(30.0, 500.0))
        return edit_end(recipe, stage.id, length_min=float(dice.randint(1, 3000)))
    if kind == "other end":
        by = dice.choice(stage.ENDS)
        if by in ("time", "feel"):
            return edit(recipe, stage.id, end=End(by=by, length_min=dice.uniform(1.0, 300.0)))
        low, high, _ = END_VALUE_RANGE[by]
        of = dice.choice(["milk", "whey", "curd", "cheese"]) if by in ("ph", "acidity") else None
        return change.set_end(recipe, stage.id, by=by, of=of, value=dice.uniform(low, high), latest_min=600.0)
    if kind == "move":
        return change.move(recipe, stage.id, dice.randint(-3, 3))
    if kind == "copy":
        return change.duplicate(recipe, stage.id)
    if kind == "remove":
        return change.remove(recipe, stage.id)
    if kind == "split":
        return change.split(recipe, stage.id, stage.end.planned_min * dice.uniform(0.1, 0.9))
    if kind == "new":
        return change.insert(recipe, change.new_stage(recipe, dice.choice(list(KINDS))), after_id=stage.id)
    if kind == "milk":
        source = dice.choice(recipe.milks)
        return edit_milk(recipe, source.id, fat_pct=dice.uniform(2.0, 6.0), name=dice.choice(["", "evening"]))
    if kind == "dose":
        return edit_addition(
            recipe, dice.choice(recipe.additions).id, mass_kg=None, volume_l=dice.uniform(0.001, 0.1), mass_pct=None
        )
    return edit(recipe, stage.id, id=f"stage-{dice.randint(0, 99)}")


@settings(max_examples=8)
@given(st.sampled_from([*EXAMPLES, "branches", "every stage"]), st.integers(0, 2**32).map(random.Random))
def test_200_edits_undone_end_in_the_first_document(example: Any, dice: random.Random) -> None:
    """Each edit leaves its forerunner as it was; kept forerunners are the whole of undo, in either direction."""
    text = {"branches": TEXT + BRANCH, "every stage": every_stage()}.get(example) or example.read_text(encoding="utf-8")
    first = recipe = reads(text)
    frozen = [first.model_dump_json()]
    steps = [first]
    for _ in range(200):
        try:
            recipe = any_edit(recipe, dice)
        except RecipeError:
            continue
        steps.append(recipe)
        frozen.append(recipe.model_dump_json())
        with suppress(RecipeError):
            lower(recipe)
    assert len(steps) > 20
    for kept, was in zip(reversed(steps), reversed(frozen), strict=True):
        assert kept.model_dump_json() == was
    assert steps[0] == reads(text)
    new = writes(recipe, text)
    assert reads(new) == recipe
    assert writes(recipe, new) == new
    assert reads(writes(first, new)) == first


@settings(max_examples=40)
@given(st.sampled_from(EXAMPLES), st.integers(0, 2**32).map(random.Random))
def test_one_edit_touches_only_its_own_lines(path: Any, dice: random.Random) -> None:
    """Comments that stood in the file stand there still, unless their stage or key went."""
    text = path.read_text(encoding="utf-8")
    recipe = reads(text)
    stage = dice.choice(recipe.stages)
    metas = [meta for meta in field_metas(type(stage)) if meta.shape == "quantity"]
    if not metas:
        return
    meta = dice.choice(metas)
    assert meta.low is not None
    assert meta.high is not None
    try:
        new = edit(recipe, stage.id, **{meta.name: round(dice.uniform(meta.low, meta.high), 2)})
    except RecipeError:
        return
    written = writes(new, text)
    assert reads(written) == new
    gone = [line for line in text.splitlines() if line not in written.splitlines()]
    assert len(gone) <= 1
    for line in text.splitlines():
        if "#" in line:
            assert line[line.index("#") :] in written


# --- What is known of the fields ------------------------------------------------------------------------------------


def test_every_field_says_what_it_is() -> None:
    for kind, model in KINDS.items():
        for meta in field_metas(model):
            if meta.optional:
                assert meta.default is None, "what is left out of the file must be what None means"
            if meta.shape == "quantity":
                assert meta.help.endswith(".")
                assert meta.step > 0.0
                assert meta.low is not None
                assert meta.high is not None
                assert meta.low <= meta.high
                assert meta.kind
        names = {meta.name for meta in field_metas(model)}
        for handle in model.HANDLES:
            assert handle.field in names, (kind, handle)
            assert handle.step > 0.0
        keys = [meta.key for meta in field_metas(model)]
        assert len(keys) == len(set(keys))
        assert model.model_fields["end"].default.by in model.ENDS


def test_the_schema_knows_every_key_of_every_example() -> None:
    schema = json_schema()
    json.dumps(schema)
    assert schema["required"] == ["format", "name", "milk", "stage"]
    definitions = schema["$defs"]

    def check(table: dict[str, Any], known: dict[str, Any]) -> None:
        for key, value in table.items():
            assert key in known["properties"], key
            inner = known["properties"][key]
            items = value if isinstance(value, list) else [value]
            target = inner.get("items", inner).get("$ref", "").rpartition("/")[2]
            for item in items:
                if isinstance(item, dict) and target:
                    name = KINDS[item["kind"]].__name__ if target == "stage" else target
                    check(item, definitions[name])
        assert set(known.get("required", [])) <= set(table)

    import tomllib

    for text in [path.read_text(encoding="utf-8") for path in EXAMPLES] + [TEXT + BRANCH, every_stage()]:
        check(tomllib.loads(text), schema)
