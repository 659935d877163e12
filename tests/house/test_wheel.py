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
        for data in (ROOT / package).rglob("*.toml"):
            assert (installed / data.relative_to(ROOT)).read_bytes() == data.read_bytes()
    assert not (installed / "tests").exists()


def test_it_forecasts_far_from_the_checkout(installed: Path, tmp_path: Path) -> None:
    recipe = sorted((installed / "example_recipes").glob("*.toml"))[0]
    forecast = [sys.executable, "-m", "designer", "forecast", str(recipe), "--json", "--members", "0"]
    own = {**os.environ, "PYTHONPATH": str(installed)}
    done = subprocess.run(forecast, cwd=tmp_path, env=own, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    assert "moisture_pct" in json.loads(done.stdout)["outcomes"]
