"""Setting a checkout up: what is trusted, what is built anew, what is asked, and that one process does it at a time."""

from __future__ import annotations

import ast
import io
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from designer import bootstrap
from designer.bootstrap import LIBRARY_MISSING, MUST_BE_THERE, OURS, ROOT, Checkout

BEFORE_THE_ENVIRONMENT = ("designer/__init__.py", "designer/bootstrap.py", "designer/__main__.py")
BEFORE_THE_ENVIRONMENT += ("tests/__init__.py", "tests/__main__.py")
BROKEN = 1


class Recorded(Checkout):
    """A checkout that writes down what it would build; `finds` are the answers of its import trials, in turn."""

    def __init__(self, root: Path, finds: list[int]) -> None:
        super().__init__(root)
        self.finds = finds
        self.done: list[str] = []

    def build(self) -> None:
        self.done.append("build")
        self.venv.mkdir(exist_ok=True)
        self.python.parent.mkdir(exist_ok=True)
        self.python.touch()

    def install(self) -> None:
        self.done.append("install")
        for name in MUST_BE_THERE:
            (self.packages / name).mkdir(parents=True, exist_ok=True)

    def compile(self) -> None:
        self.done.append("compile")

    def probe(self) -> int:
        return self.finds.pop(0)


@pytest.fixture
def recorded(tmp_path: Path) -> Callable[..., Recorded]:
    def make(*finds: int) -> Recorded:
        (tmp_path / "pyproject.toml").write_text('name = "curdwright"\n', encoding="utf-8")
        return Recorded(tmp_path, list(finds))

    return make


@pytest.fixture
def ran(monkeypatch: pytest.MonkeyPatch) -> list[list[str]]:
    """Commands that would have been run; each succeeds."""
    commands: list[list[str]] = []

    def note(command: list[str], **_: str) -> int:
        commands.append(command)
        return 0

    monkeypatch.setattr(bootstrap, "run", note)
    monkeypatch.setattr("shutil.which", lambda name: f"/usr/bin/{name}")
    monkeypatch.setattr(sys, "platform", "linux")
    return commands


@pytest.mark.parametrize("name", BEFORE_THE_ENVIRONMENT)
def test_an_old_python_can_read_it(name: str) -> None:
    ast.parse((ROOT / name).read_text(encoding="utf-8"), feature_version=(3, 8))


def test_it_needs_only_the_standard_library() -> None:
    tree = ast.parse((ROOT / "designer/bootstrap.py").read_text(encoding="utf-8"))
    names = {alias.name for node in ast.walk(tree) if isinstance(node, ast.Import) for alias in node.names}
    names |= {str(node.module) for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)}
    assert {name.split(".")[0] for name in names} <= sys.stdlib_module_names


def test_an_old_python_gets_a_sentence(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setattr(sys, "version_info", (3, 8, 10))
    with pytest.raises(SystemExit) as ended:
        bootstrap.enter("designer", [])
    assert ended.value.code == 2
    assert "needs Python 3.11 or newer" in capsys.readouterr().err


def test_an_installed_copy_is_left_alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(bootstrap, "ROOT", tmp_path)
    bootstrap.enter("designer", [])
    assert list(tmp_path.iterdir()) == []


def test_the_first_start_builds_and_stamps(recorded: Callable[..., Recorded]) -> None:
    checkout = recorded(0)
    checkout.prepare()
    assert checkout.done == ["build", "install", "compile"]
    assert checkout.is_ready()


def test_a_ready_checkout_is_not_touched(recorded: Callable[..., Recorded]) -> None:
    recorded(0).prepare()
    again = recorded()
    again.prepare()
    assert again.done == []


def test_a_changed_project_file_makes_the_stamp_stale(recorded: Callable[..., Recorded]) -> None:
    checkout = recorded(0)
    checkout.prepare()
    (checkout.root / "pyproject.toml").write_text('name = "curdwright"\nversion = "2"\n', encoding="utf-8")
    assert not checkout.is_ready()
    assert not checkout.is_installed()


@pytest.mark.parametrize("name", MUST_BE_THERE)
def test_a_stamp_is_not_believed_over_a_missing_package(name: str, recorded: Callable[..., Recorded]) -> None:
    checkout = recorded(0)
    checkout.prepare()
    (checkout.packages / name).rmdir()
    assert not checkout.is_ready()


def test_a_damaged_environment_is_built_anew(
    recorded: Callable[..., Recorded], monkeypatch: pytest.MonkeyPatch
) -> None:
    checkout = recorded(BROKEN, 0)
    monkeypatch.setattr(checkout, "can_be_mended", lambda: True)
    checkout.prepare()
    assert checkout.done == ["install", "build", "install", "compile"]
    assert checkout.is_ready()


def test_what_never_imports_is_never_stamped(recorded: Callable[..., Recorded]) -> None:
    checkout = recorded(BROKEN)
    with pytest.raises(SystemExit) as ended:
        checkout.prepare()
    assert ended.value.code == 2
    assert not checkout.is_installed()


def test_without_the_systems_libraries_the_rest_works(
    recorded: Callable[..., Recorded], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(bootstrap, "fetch", lambda packages, why: False)
    checkout = recorded(LIBRARY_MISSING, LIBRARY_MISSING, 0)
    checkout.prepare()
    assert checkout.is_installed()
    assert not checkout.is_ready()
    checkout.prepare()
    assert checkout.done == ["build", "install", "compile"], "nothing is installed twice"
    checkout.prepare()
    assert checkout.is_ready(), "libraries that came later are noticed"


def give_pip(venv: Path) -> None:
    """A stand-in that imports, which is all that is asked of it."""
    next(venv.glob("lib/python*/site-packages")).joinpath("pip.py").touch()


@pytest.mark.parametrize("fault", ["no pip", "cut off", "no folder", "a link", "another Python"])
def test_what_pip_cannot_mend(fault: str, tmp_path: Path) -> None:
    checkout = Checkout(tmp_path)
    made = tmp_path / ("elsewhere" if fault == "a link" else ".venv")
    if fault != "no folder":
        subprocess.run([sys.executable, "-m", "venv", "--without-pip", str(made)], check=True)
    if fault == "a link":
        checkout.venv.symlink_to(made)
    if fault not in ("no pip", "no folder"):
        give_pip(made)
    if fault == "cut off":
        checkout.unfinished.touch()
    if fault == "another Python":
        checkout.python.unlink()
        checkout.python.write_text("#!/bin/sh\necho '(3, 1)'\n", encoding="utf-8")
        checkout.python.chmod(0o755)
    assert not checkout.can_be_mended()


def test_pip_can_mend_an_environment_that_has_it(tmp_path: Path) -> None:
    checkout = Checkout(tmp_path)
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", str(checkout.venv)], check=True)
    give_pip(checkout.venv)
    assert checkout.can_be_mended()


def test_root_unattended_installs_by_itself(ran: list[list[str]], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(os, "geteuid", lambda: 0)
    monkeypatch.setattr(bootstrap, "someone_is_there", lambda: False)
    assert bootstrap.fetch(("libgl1",), "It is missing.")
    assert ran == [["apt-get", "update"], ["apt-get", "install", "--yes", "--no-install-recommends", "libgl1"]]


@pytest.mark.parametrize(("answer", "installs"), [("y\n", True), ("\n", False), ("n\n", False), ("", False)])
def test_root_at_a_terminal_is_asked(
    answer: str, installs: bool, ran: list[list[str]], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(os, "geteuid", lambda: 0)
    monkeypatch.setattr(bootstrap, "someone_is_there", lambda: True)
    monkeypatch.setattr(sys, "stdin", io.StringIO(answer))
    assert bootstrap.fetch(("libgl1",), "It is missing.") == installs
    assert bool(ran) == installs


def test_anybody_else_gets_the_exact_command(
    ran: list[list[str]], monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(os, "geteuid", lambda: 1000)
    assert not bootstrap.fetch(("libgl1", "libegl1"), "They are missing.")
    assert ran == []
    wanted = "sudo apt-get update && sudo apt-get install --yes --no-install-recommends libgl1 libegl1"
    assert wanted in capsys.readouterr().err


def test_what_is_run_leaves_standard_output_alone(capfd: pytest.CaptureFixture[str]) -> None:
    assert bootstrap.run([sys.executable, "-c", "print('pip says')"]) == 0
    seen = capfd.readouterr()
    assert (seen.out, seen.err) == ("", "pip says\n")


def test_our_modules_are_compiled_where_python_writes_no_bytecode(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in OURS:
        (tmp_path / name).mkdir()
        (tmp_path / name / "one.py").touch()
    monkeypatch.setenv("PYTHONDONTWRITEBYTECODE", "1")
    monkeypatch.delenv("PYTHONPYCACHEPREFIX", raising=False)
    checkout = Checkout(tmp_path)
    checkout.python = Path(sys.executable)
    checkout.compile()
    assert [len(list((tmp_path / name).glob("__pycache__/one.*.pyc"))) for name in OURS] == [1] * len(OURS)


def test_a_second_process_waits_for_the_first(tmp_path: Path) -> None:
    program = "import pathlib, sys, designer.bootstrap as b\nwith b.Checkout(pathlib.Path(sys.argv[1])).lock(): ..."
    command = [sys.executable, "-c", program, str(tmp_path)]
    with Checkout(tmp_path).lock():
        second = subprocess.Popen(command, cwd=ROOT, stderr=subprocess.PIPE, text=True)
        assert second.stderr is not None
        assert "waiting" in second.stderr.readline()
        assert second.poll() is None
    _, rest = second.communicate(timeout=30)
    assert (second.returncode, rest) == (0, "")


def test_a_checkout_that_cannot_be_written_gets_a_sentence(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit), Checkout(tmp_path / "absent").lock():
        pass
    assert "can't write" in capsys.readouterr().err


@pytest.mark.parametrize("fetched", [True, False])
def test_a_display_without_its_libraries_is_told_before_qt_ends_the_process(
    fetched: bool, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    def lacking(name: str) -> None:
        raise OSError("libxcb-cursor.so.0: cannot open shared object file")

    wanted: list[tuple[str, ...]] = []

    def fetch(packages: tuple[str, ...], why: str) -> bool:
        wanted.append(packages)
        return fetched

    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.setenv("DISPLAY", ":0")
    monkeypatch.delenv("QT_QPA_PLATFORM")
    monkeypatch.setattr("ctypes.CDLL", lacking)
    monkeypatch.setattr(bootstrap, "fetch", fetch)
    if fetched:
        bootstrap.prepare_display()
    else:
        with pytest.raises(SystemExit):
            bootstrap.prepare_display()
        assert "no window" in capsys.readouterr().err
    assert wanted == [bootstrap.DISPLAY_PACKAGES]


@pytest.mark.parametrize(("variable", "shown"), [("DISPLAY", True), ("WAYLAND_DISPLAY", True), ("TERM", False)])
def test_whether_a_window_can_be_shown(variable: str, shown: bool, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "platform", "linux")
    monkeypatch.delenv("DISPLAY", raising=False)
    monkeypatch.delenv("WAYLAND_DISPLAY", raising=False)
    monkeypatch.setenv(variable, "x")
    assert bootstrap.has_display() == shown
