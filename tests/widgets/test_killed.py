"""The program is killed (-9) again and again in the middle of work: nothing it called kept is lost, no file is broken.

Each start goes on from what the last one left, as a maker would. The moment is chosen by the number of reports read
before the kill, so it falls anywhere in what follows; nothing waits for a clock.
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from designer.recipe import versions
from designer.recipe.file import read, reads
from tests.widgets.worker import number
from widgets.journal import leftovers


def worked_and_killed(
    home: Path, reports: int, worker_of: str = "tests.widgets.worker"
) -> tuple[list[tuple[str, int]], str]:
    """Everything the worker reported before it was killed after so many reports, and what it complained of."""
    environment = os.environ | {"QT_QPA_PLATFORM": "offscreen"}
    with subprocess.Popen(
        [sys.executable, "-m", worker_of, str(home)],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env=environment,
    ) as worker:
        assert worker.stdout is not None
        assert worker.stderr is not None
        lines = []
        for line in worker.stdout:
            lines.append(line)
            if len(lines) > reports:
                break
        worker.kill()
        lines += worker.stdout.readlines()
        told = worker.stderr.read()
    said = [line.split() for line in lines if line.endswith("\n")]
    return [(what, int(count)) for what, count in said], told


def assert_nothing_lost(home: Path, said: list[tuple[str, int]], told: str) -> None:
    """What is in the journals or else in the file is at least the last edit reported; every file can be read."""
    assert said, told
    kept = max(count for _, count in said)
    saved = max((count for what, count in said if what == "saved"), default=0)
    in_file = number(read(home / "mine.toml"))
    in_journal = [number(reads(left.text)) for left in leftovers(home / "recovery")]
    assert in_file >= saved
    assert max([in_file, *in_journal]) in (kept, kept + 1)
    assert len(in_journal) <= 2
    for one in versions.versions(home / "mine.toml"):
        versions.recipe_of(one)


def killed_times(home: Path, times: int) -> None:
    """Kill so many times, at another moment each."""
    for turn in range(times):
        said, told = worked_and_killed(home, 1 + turn * 7 % 23)
        assert_nothing_lost(home, said, told)


def test_killed_in_the_middle_of_work(tmp_path: Path) -> None:
    killed_times(tmp_path, 2)


@pytest.mark.slow
def test_killed_fifty_times(tmp_path: Path) -> None:
    killed_times(tmp_path, 50)
