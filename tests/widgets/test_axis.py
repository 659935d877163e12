"""The time axis: mapping, zoom about a point, limits, and where marks stand."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from pytestqt.qtbot import QtBot

from widgets.make_curve.axis import STEPS, TimeAxis, snap_step
from widgets.make_curve.path import between, polygon, stage_edges, stroke, thinned
from widgets.make_curve.vat import nice_marks

AXIS = TimeAxis(56.0, 900.0, 0.0, 420.0, 2880.0)
minutes = st.floats(0, 2880)


@given(minutes)
def test_there_and_back(minute: float) -> None:
    assert AXIS.minute(AXIS.x(minute)) == pytest.approx(minute, abs=1e-6)


@given(st.floats(56, 956), st.floats(0.2, 5.0))
def test_zoom_keeps_the_minute_under_the_pointer(x: float, factor: float) -> None:
    zoomed = AXIS.zoomed(x, factor)
    assert 10.0 <= zoomed.span_min <= 2880 * 1.04 + 1e-6
    free = zoomed.start_min > -0.019 * zoomed.span_min and zoomed.end_min < 2880 * 1.04 - 1e-6
    if free and 10.0 < zoomed.span_min < 2880 * 1.04:
        assert zoomed.minute(x) == pytest.approx(AXIS.minute(x), abs=1e-6)


@given(st.lists(st.floats(-3000, 3000), max_size=6))
def test_panning_stays_within_the_make(moves: list[float]) -> None:
    axis = AXIS
    for pixels in moves:
        axis = axis.panned(pixels)
        assert axis.start_min >= -0.021 * axis.span_min
        assert axis.end_min <= 2880 * 1.05


@given(st.floats(0, 1439), st.floats(20, 200))
def test_marks_are_round_on_the_clock(offset: float, apart: float) -> None:
    step = AXIS.step(apart)
    assert step in STEPS
    marks = list(AXIS.marks(step, offset))
    assert all(abs((minute + offset) / step - round((minute + offset) / step)) < 1e-6 for minute in marks)
    assert all(-1e-6 <= minute <= 420 + 1e-6 for minute in marks)
    assert np.all(np.diff([AXIS.x(minute) for minute in marks]) >= min(apart, STEPS[-1] * AXIS.px_per_min) - 1e-6)


def test_snapping_gets_finer_when_zoomed_in() -> None:
    assert snap_step(0.3) > snap_step(2.0) > snap_step(12.0)


@given(st.floats(-50, 90), st.floats(1, 200), st.floats(60, 900))
def test_scale_marks_are_round_and_inside(low: float, spread: float, height: float) -> None:
    marks = nice_marks(low, low + spread, height, 24.0)
    assert all(low - 1e-6 <= mark <= low + spread + 1e-6 for mark in marks)
    assert len(marks) <= height / 24.0 + 2


def test_thinning_keeps_edges_and_ends() -> None:
    x = np.linspace(0, 100, 1000)
    stage = np.repeat([0, 1], 500).astype(np.int32)
    kept = thinned(x, stage_edges(stage), 10, 90)
    assert len(kept) < 60
    assert {499, 500} <= set(kept.tolist())
    assert x[kept[0]] <= 10
    assert x[kept[-1]] >= 90


def test_polygons_hold_their_points(qtbot: QtBot) -> None:
    x, y = np.array([0.0, 1.0, 2.0]), np.array([5.0, 6.0, 7.0])
    made = polygon(x, y)
    assert [(p.x(), p.y()) for p in made] == [(0, 5), (1, 6), (2, 7)]
    assert between(x, y, y + 1).size() == 6
    assert stroke(x, y, 2.0).size() == 6
    assert polygon(x[:0], y[:0]).isEmpty()


JOINED = AXIS.grown(240 * 1440.0).joined(400.0, 2860.0)
"""a day at the vat, two days of make, 240 days of ageing"""


@given(st.floats(0, 240 * 1440.0))
def test_joined_scales_go_there_and_back(minute: float) -> None:
    assert JOINED.minute(JOINED.x(minute)) == pytest.approx(minute, abs=1e-4)
    assert JOINED.xs(np.array([minute]))[0] == pytest.approx(JOINED.x(minute), abs=1e-6)


def test_joined_scales_leave_the_make_its_room() -> None:
    assert JOINED.breaks == (400.0, 2860.0)
    assert JOINED.x(400.0) - JOINED.left > 0.5 * JOINED.width
    assert JOINED.x(240 * 1440.0) == pytest.approx(JOINED.right)
    wide = [piece.px_per_min for piece in JOINED.pieces]
    assert wide == sorted(wide, reverse=True)
    assert not AXIS.joined(420.0, 2880.0).breaks[1:], "days after a make are one break"
    assert not AXIS.joined(2800.0, 2880.0).joints, "what is hardly longer needs none"


def test_zooming_in_a_joined_scale_keeps_the_scale_under_the_pointer() -> None:
    for minute in (200.0, 1500.0, 100_000.0):
        zoomed = JOINED.zoomed(JOINED.x(minute), 0.5)
        assert not zoomed.joints
        assert zoomed.px_per_min >= 1.999 * JOINED.piece(minute).px_per_min
        assert zoomed.start_min <= minute <= zoomed.end_min
    assert JOINED.panned(50.0) is JOINED
