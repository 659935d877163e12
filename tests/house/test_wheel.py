"""The wheel an installed user gets: all four packages with their data, and it works far from the checkout."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from designer.bootstrap import ROOT


@pytest.fixture(scope="module")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder holding what the wheel holds."""
    folder = tmp_path_factory.mktemp("wheel")
    build = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(folder)]
    subprocess.run(build, cwd=ROOT, check=True, capture_output=True)
    (wheel,) = folder.glob("curdwright-*.whl")
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(folder / "site")
    return folder / "site"


def test_data_travels_with_the_packages(installed: Path) -> None:
    for package in ("designer", "widgets", "styles", "example_recipes"):
        for kind in ("*.toml", "*.ts", "*.qm"):
            for data in (ROOT / package).rglob(kind):
                assert (installed / data.relative_to(ROOT)).read_bytes() == data.read_bytes()
    assert list((installed / "designer" / "translations").glob("*.qm"))
    assert not (installed / "tests").exists()


FORECAST_AND_CHECK = """
from designer.recipe.examples import example
from designer.forecast import forecast
from designer.judge.check import check
from designer.recipe.file import read
from styles.reader import style

recipe = read(example())
made = forecast(recipe, twin=True)
print(example(), made.outcomes["moisture_pct"].value, check(made, style(recipe.style)).state, sep="\\n")
"""


def far_away(installed: Path, folder: Path, *arguments: str) -> str:
    """What a Python that knows only the wheel prints."""
    own = {**os.environ, "PYTHONPATH": str(installed)}
    command = [sys.executable, *arguments]
    done = subprocess.run(command, cwd=folder, env=own, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


def test_it_forecasts_and_checks_far_from_the_checkout(installed: Path, tmp_path: Path) -> None:
    recipe, moisture, state = far_away(installed, tmp_path, "-c", FORECAST_AND_CHECK).splitlines()
    assert Path(recipe).is_relative_to(installed)
    assert 30 < float(moisture) < 45
    assert state


def test_its_command_line_answers_far_from_the_checkout(installed: Path, tmp_path: Path) -> None:
    assert "properties" in json.loads(far_away(installed, tmp_path, "-m", "designer", "schema"))
