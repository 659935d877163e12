"""What every test gets: no screen, settings and data of its own, and pointer moves that are never dropped."""

from __future__ import annotations

import os

import pytest
from hypothesis import HealthCheck, settings

from styles import reader
from tests import compiled

os.environ["QT_QPA_PLATFORM"] = "offscreen"
compiled.settle()

WITHOUT_A_MARCH = ("house", "styles", "tests")
"""Folders whose tests march nothing in this process: they need not wait for the compiler."""

settings.register_profile("quick", deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])
settings.register_profile("long", deadline=None, max_examples=1000, suppress_health_check=[HealthCheck.too_slow])


def pytest_addoption(parser: pytest.Parser) -> None:
    parser.addoption("--long", action="store_true", help="also run what is marked slow: kill, fuzz and soak")


def pytest_configure(config: pytest.Config) -> None:
    settings.load_profile("long" if config.getoption("--long") else "quick")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Leave the slow ones out, said so in the summary, unless --long asks for them."""
    if config.getoption("--long"):
        return
    slow = [item for item in items if item.get_closest_marker("slow")]
    items[:] = [item for item in items if item not in slow]
    config.hook.pytest_deselected(items=slow)


@pytest.fixture(scope="session")
def ready() -> None:
    """The compiled march, so that no forecast is made step by step in Python unless a test asks for that."""
    from designer.make import kernel

    kernel.warm_up()


@pytest.fixture(scope="module", autouse=True)
def march(request: pytest.FixtureRequest) -> None:
    """Every test finds the march ready, whatever ran before it."""
    if request.path.parent.name not in WITHOUT_A_MARCH:
        request.getfixturevalue("ready")


@pytest.fixture(autouse=True)
def own_folders(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> None:
    """Settings, data and state of a made-up user, so that no test reads or writes the real ones."""
    home = tmp_path_factory.mktemp("home", numbered=True)
    for folder in ("CONFIG", "DATA", "STATE"):
        monkeypatch.setenv(f"XDG_{folder}_HOME", str(home / folder.lower()))


@pytest.fixture(autouse=True)
def no_house_styles(monkeypatch: pytest.MonkeyPatch) -> None:
    """House styles that one test adopted are not known to the next."""
    monkeypatch.setattr(reader, "_house", {})
