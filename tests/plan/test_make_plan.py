"""The plan of every example recipe: what must be on it is on it, nothing is clipped, and it is legible in mono."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path

import pytest

from designer.bootstrap import ROOT
from designer.forecast import Forecast, forecast
from designer.judge.moments import moments
from designer.make import kernel
from designer.plan.clock import Clock
from designer.plan.make_plan import Print, make_plan, plan_version
from designer.plan.sheet import (
    A4,
    BLANK_MM,
    BODY_PT,
    LETTER,
    MARGIN_MM,
    PUNCH_MM,
    STAGE_PT,
    Blank,
    Drawing,
    Label,
    Line,
    Paper,
    Polyline,
    Sheet,
    Table,
)
from designer.plan.weigh_out import weighed
from designer.recipe.edit import edit, edit_addition, edit_recipe
from designer.recipe.end import End
from designer.recipe.file import read, reads
from designer.recipe.milk import blend
from designer.units import System
from styles.reader import style
from widgets.paper import ink
from widgets.paper.layout import layout
from widgets.paper.marks import Page, Room, Words

pytestmark = pytest.mark.usefixtures("qapp")
EXAMPLES = sorted((ROOT / "example_recipes").glob("*.toml"))
CHEDDAR = ROOT / "example_recipes" / "thistlecombe-cheddar.toml"
EVERY = pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
BOTH = pytest.mark.parametrize("paper", [A4, LETTER], ids=lambda paper: paper.name)


@cache
def made(path: Path) -> Forecast:
    kernel.warm_up()
    return forecast(read(path), members=32)


@cache
def sheet(path: Path, paper: Paper = A4, system: System = "metric") -> Sheet:
    recipe = made(path).recipe
    return make_plan(made(path), style(recipe.style) if recipe.style else None, Print(paper, system, "0.1"))


@cache
def pages(path: Path, paper: Paper = A4, system: System = "metric") -> tuple[Page, ...]:
    return layout(sheet(path, paper, system))


def drawn(path: Path) -> Drawing:
    return next(block for section in sheet(path).sections for block in section.blocks if isinstance(block, Drawing))


def words(page: Page) -> list[Words]:
    return [mark for mark in page.marks if isinstance(mark, Words)]


@EVERY
@BOTH
def test_every_stage_stands_in_large_type_with_its_clock_and_room_to_write(path: Path, paper: Paper) -> None:
    result = made(path)
    tables = [block for section in sheet(path, paper).sections for block in section.blocks if isinstance(block, Table)]
    rows = [cells for table in tables for cells in table.rows if len(cells) == 7]
    clock = Clock(result.recipe.start_clock_min)
    for number, stage in enumerate(result.stages, start=1):
        title = f"{number}  {stage.name[:1].upper()}{stage.name[1:]}"
        cells = next(cells for cells in rows if isinstance(cells[0][0], Line) and cells[0][0].text == title)
        first = cells[0][0]
        assert isinstance(first, Line)
        assert first.size_pt == STAGE_PT
        assert first.bold
        begin = cells[1][0]
        assert isinstance(begin, Line)
        assert begin.text == clock.read(stage.start_min)
        assert cells[2], f"{title} has no target"
        for cell in cells[3:]:
            assert isinstance(cell[0], Blank)
    printed = " ".join(mark.text for page in pages(path, paper) for mark in words(page))
    assert len(result.stages) <= len(re.findall(r"\b\d+ [A-Z]", printed))


@EVERY
@BOTH
@pytest.mark.parametrize("system", ["metric", "us"])
def test_nothing_is_clipped_and_nothing_lies_on_another(path: Path, paper: Paper, system: System) -> None:
    for page in pages(path, paper, system):
        boxes = []
        for mark in words(page):
            right = mark.x if mark.upright else mark.x + mark.width
            assert mark.x >= PUNCH_MM - 0.01, mark.text
            assert right <= paper.width_mm - MARGIN_MM + 0.3, mark.text
            assert MARGIN_MM <= mark.y <= paper.height_mm - MARGIN_MM, mark.text
            if not mark.upright:
                boxes.append((mark.x, mark.y - mark.size_pt * ink.MM_PER_PT * 0.72, right, mark.y, mark.text))
        for index, one in enumerate(boxes):
            for other in boxes[index + 1 :]:
                apart = one[2] <= other[0] or other[2] <= one[0] or one[3] <= other[1] or other[3] <= one[1]
                assert apart, f"{one[4]!r} lies on {other[4]!r}"


@EVERY
@BOTH
def test_blanks_are_high_enough_and_body_type_large_enough(path: Path, paper: Paper) -> None:
    for page in pages(path, paper):
        assert all(mark.height >= BLANK_MM - 1e-6 for mark in page.marks if isinstance(mark, Room))
        small = {mark.text for mark in words(page) if mark.size_pt < BODY_PT}
        assert not any(len(re.findall(r"[a-z]{3,}", text)) > 5 for text in small)


@EVERY
@BOTH
def test_pages_say_how_many_there_are_and_which_plan_this_is(path: Path, paper: Paper) -> None:
    laid = pages(path, paper)
    assert len(laid) <= 4
    for number, page in enumerate(laid, start=1):
        texts = [mark.text for mark in words(page)]
        assert any(text.startswith(f"page {number} of {len(laid)}") for text in texts)
        assert any(plan_version(made(path).recipe) in text and "model 0.1" in text for text in texts)
    strips = [sum("Cut off" in mark.text for mark in words(page)) for page in laid]
    assert strips == [0] * (len(laid) - 1) + [1]


@EVERY
def test_lines_of_the_curve_are_told_apart_without_colour(path: Path) -> None:
    drawing = drawn(path)
    lines = {(item.width_mm, item.dash) for item in drawing.items if isinstance(item, Polyline)}
    assert len({dash for _, dash in lines}) >= 3
    labels = [item.text for item in drawing.items if isinstance(item, Label)]
    assert {"temperature", "pH", "planned"} <= set(labels)
    for item in drawing.items:
        if isinstance(item, Polyline):
            assert all(-0.1 <= x <= drawing.width_mm + 0.1 and -0.1 <= y <= drawing.height_mm for x, y in item.points)


def test_the_planned_line_is_where_the_forecast_says() -> None:
    result = made(CHEDDAR)
    drawing = drawn(CHEDDAR)
    thick = [item for item in drawing.items if isinstance(item, Polyline) and item.width_mm == 0.8]
    temperature, ph = thick[0], thick[1]
    assert temperature.points[0][1] > min(y for _, y in temperature.points)  # warmer is higher
    assert ph.points[0][1] < ph.points[-1][1]  # sourer is lower
    assert result.trace["ph"][0] > result.trace["ph"][-1]


def test_weigh_out_is_in_hand_before_the_milk() -> None:
    titles = [section.title for section in sheet(CHEDDAR).sections]
    assert titles.index("Weigh out before the milk comes") < titles.index("At the vat")
    printed = " ".join(sheet(CHEDDAR).words())
    for said in ("20 mL 200 IMCU/mL", "in 400 mL of cool water", "÷ IMCU/mL", "1.03 kg", "28 g to each kg of curd"):
        assert said in printed


@pytest.mark.parametrize(("strength", "ml"), [(200.0, 22.5), (280.0, 16.1), (600.0, 7.5)])
def test_another_bottle_has_its_sum(strength: float, ml: float) -> None:
    """45 IMCU/L in 100 L: 22.5 mL of 200 IMCU/mL, 16.1 of 280, 7.5 of 600."""
    recipe = edit_addition(read(CHEDDAR), "rennet", strength_imcu_ml=200.0, volume_l=0.0225)
    rennet = next(item for item in weighed(recipe, made(CHEDDAR), blend(recipe), "metric") if item.id == "rennet")
    assert rennet.amount == "22.5 mL"
    activity = float(rennet.more[1].removeprefix("other: ").partition(" ÷")[0].replace("\u202f", ""))
    assert activity / strength == pytest.approx(ml, abs=0.05)


def test_too_little_to_weigh_is_said_with_the_way_round() -> None:
    text = CHEDDAR.read_text(encoding="utf-8").replace('bulk = "1 %"', 'mass = "0.045 g"\npotency = "1e12 CFU/g"')
    recipe = reads(text.replace('acidity = "0.70 %"\n', ""))
    starter = weighed(recipe, made(CHEDDAR), blend(recipe), "metric")[0]
    assert "Stir 0.5 g into 100 mL of sterile milk and give 9 mL" in starter.note
    kernel.warm_up()
    assert starter.note in make_plan(forecast(recipe)).words()


def test_units_of_a_pack_ask_for_the_pack() -> None:
    text = CHEDDAR.read_text(encoding="utf-8").replace('bulk = "1 %"', 'units = "14 U"')
    recipe = reads(text.replace('acidity = "0.70 %"\n', ""))
    starter = weighed(recipe, made(CHEDDAR), blend(recipe), "metric")[0]
    assert starter.amount == "14 units"
    assert "grams in the pack" in starter.note


def test_targets_carry_the_style_s_window_or_the_forecast_s_range() -> None:
    printed = " ".join(sheet(CHEDDAR).words())
    assert "pH 5.40, curd" in printed
    assert re.search(r"whey \d\.\d\d \(\d\.\d\d–\d\.\d\d\)", printed)
    plain = " ".join(make_plan(made(CHEDDAR)).words())
    window = next(gate for gate in style("cheddar").gates if gate.curve == "ph" and gate.at == "h24")
    assert f"({window.low:.2f}–{window.high:.2f})" in printed
    assert f"({window.low:.2f}–{window.high:.2f})" not in plain


def test_late_or_early_says_when_to_cut() -> None:
    result = made(CHEDDAR)
    rennet = moments(result)["rennet"]
    printed = " ".join(sheet(CHEDDAR).words())
    floc, cut = next((int(found[1]), found[2]) for found in re.finditer(r"(\d+) min, cut (\d\d:\d\d)", printed))
    assert cut == Clock(result.recipe.start_clock_min).read(rennet + 3.0 * floc)
    assert "0.1 pH takes about" in printed
    assert "Once the whey is off" in printed


def test_what_waiting_does_is_told_of_the_cheese_not_of_the_curd_in_the_vat() -> None:
    """In the vat the curd loses points by the minute; by the press most of it comes to the same."""
    jack = made(next(path for path in EXAMPLES if path.stem == "fourways-jack"))
    hold = next(stage for stage in jack.stages if stage.id == "hold")
    longer = End(by="time", length_min=hold.end_min - hold.start_min + 10.0)
    waited = forecast(edit(jack.recipe, "hold", end=longer)).outcomes["moisture_pct"].value
    drier = jack.outcomes["moisture_pct"].value - waited
    assert 0.05 < drier < 2.0
    assert f"10 min more ends {drier:.1f} points drier." in " ".join(make_plan(jack).words())


def test_cautions_carry_their_source() -> None:
    printed = " ".join(sheet(CHEDDAR).words())
    for caution in made(CHEDDAR).cautions:
        assert caution.text in printed
        assert caution.source in printed


def test_the_label_tells_raw_milk_and_its_day() -> None:
    raw = next(path for path in EXAMPLES if path.stem == "highfold-alpine")
    strip = sheet(raw).strip
    assert strip is not None
    fields = {field.label: field.value for row in strip.rows for field in row}
    assert fields["milk"] == "raw"
    assert any("day" in label for label in fields)


HALF = """
[[branch]]
id = "half"
name = "washed half"
after = "hold"
share = "50 %"
of = "curd"

[[branch.stage]]
id = "half-wash"
kind = "wash"
length = "30 min"
whey_off = "40 %"
water = "20 %"
water_temperature = "20 °C"

[[branch.stage]]
id = "half-fill"
kind = "fill"
length = "20 min"
"""


def test_a_branch_has_its_own_table_and_both_share_the_curd() -> None:
    kernel.warm_up()
    whole, halved = made(CHEDDAR), forecast(reads(CHEDDAR.read_text(encoding="utf-8") + HALF))
    plan = make_plan(halved)
    printed = " ".join(plan.words())
    assert "washed half: 50 % of the curd" in printed
    assert "1  Wash curd" in printed
    milk = blend(whole.recipe)
    one = {item.id: item for item in weighed(whole.recipe, whole, milk, "metric")}
    two = {item.id: item for item in weighed(halved.recipe, halved, milk, "metric")}
    assert float(two["salt"].amount[:-2]) == pytest.approx(float(one["salt"].amount[:-2]) / 2.0, rel=0.02)
    own = weighed(halved.recipe.branches[0], halved.branches[0], milk, "metric")
    assert own[0].amount == "10.3 L"
    assert "10.3 L" in printed
    layout(plan)


def test_without_a_start_the_clock_counts_from_the_milk() -> None:
    kernel.warm_up()
    result = forecast(edit_recipe(read(CHEDDAR), start_clock_min=None))
    printed = make_plan(result).words()
    assert "+0 min" in printed
    assert "+1 h 00" in printed
    assert not any(re.fullmatch(r"\d\d:\d\d", text) for text in printed)
    layout(make_plan(result))


def test_the_plan_s_version_changes_with_the_recipe() -> None:
    recipe = read(CHEDDAR)
    assert plan_version(recipe) == plan_version(read(CHEDDAR))
    assert plan_version(recipe) != plan_version(edit_recipe(recipe, room_c=21.0))


def test_a_clock_knows_the_night_and_the_next_day() -> None:
    clock = Clock(450.0)
    assert clock.read(90.0) == "09:00"
    assert clock.remarks(90.0) == ()
    assert clock.remarks(990.0) == ("next day", "night")
    assert clock.remarks(3 * 1440.0) == ("day 4",)
    assert Clock(None).read(125.0) == "+2 h 05"


def test_a_latest_time_on_another_day_names_the_day() -> None:
    clock = Clock(19 * 60.0)
    assert clock.read_from(0.0, 120.0) == "21:00"
    assert clock.read_from(0.0, 6 * 60.0) == "01:00, next day"
    assert clock.read_from(0.0, 30 * 60.0) == "01:00, day 3"
    assert Clock(None).read_from(0.0, 1800.0) == "+30 h 00"
    words = sheet(ROOT / "example_recipes" / "little-thimble.toml").words()
    lactic = made(ROOT / "example_recipes" / "little-thimble.toml")
    stage, done = lactic.recipe.stages[1], lactic.stages[1]
    start = lactic.recipe.start_clock_min
    assert start is not None
    days = int((start + done.start_min + stage.end.planned_min) // 1440)
    assert any(re.search(rf"not after \d\d:\d\d, day {days + 1}$", line) for line in words)


def test_a_ph_of_whey_made_into_cheese_is_read_on_whey() -> None:
    twins = sheet(ROOT / "example_recipes" / "millpond-twins.toml").words()
    at = twins.index("whey cheese: 90 % of the whey")
    table = twins[at : twins.index("Late or early?", at)]
    assert "whey" in table
    assert "milk" not in table
