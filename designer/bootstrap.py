"""Makes the local environment of a checkout, once: `.venv` with all that pyproject.toml asks for; then enters it.

Standard library only, and written so that Python 3.8 can still read it: an old Python gets a sentence, no traceback.
Outside a checkout it does nothing: an installed copy has its environment already. All it says goes to standard error.
"""

from __future__ import annotations

import contextlib
import ctypes
import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import NoReturn

OLDEST = (3, 11)
ROOT = Path(__file__).resolve().parent.parent

# What `import PySide6.QtWidgets` needs of a bare Debian 12 or 13 (fonts come with libfontconfig1).
QT_PACKAGES = ("libglib2.0-0", "libgl1", "libegl1", "libxkbcommon0", "libdbus-1-3", "libfontconfig1")
# What a window on an X display needs beside them.
DISPLAY_PACKAGES = ("libxcb-cursor0", "libxcb-icccm4", "libxcb-keysyms1", "libxcb-shape0", "libxkbcommon-x11-0")

# Folders without which a stamp is not believed: somebody may have cleared up since.
MUST_BE_THERE = ("pip", "numba", "PySide6")
# The packages in which our own modules stand.
OURS = ("designer", "styles", "widgets")
LIBRARY_MISSING = 3
PROBE = f"""
import importlib, sys
for name in ("numba", "PySide6.QtWidgets"):
    try:
        importlib.import_module(name)
    except ImportError as error:
        print(f"{{name}}: {{error}}", file=sys.stderr)
        sys.exit({LIBRARY_MISSING} if name != "numba" and "shared object file" in str(error) else 1)
"""


def enter(module: str, arguments: list[str]) -> None:
    """Return only where `module` can run: inside the finished environment, or in an installed copy.

    Anywhere else: set up what is missing, then run `python -m module arguments` inside the environment and end with its
    exit code. Ends with code 2 and a sentence where that is not possible.
    """
    if sys.version_info[:2] < OLDEST:
        stop(too_old())
    checkout = Checkout(ROOT)
    if not checkout.exists():
        return
    if checkout.is_running():
        if checkout.is_installed():
            return
        # The environment can't replace itself; the Python it was made from can.
        replace_process([getattr(sys, "_base_executable", sys.executable), "-m", module, *arguments])
    if not checkout.is_ready():
        checkout.prepare()
    replace_process([str(checkout.python), "-m", module, *arguments])


class Checkout:
    """A source tree and the environment in it."""

    def __init__(self, root: Path) -> None:
        self.root = root
        self.venv = root / ".venv"
        on_windows = sys.platform == "win32"
        library = "Lib" if on_windows else f"lib/python{sys.version_info[0]}.{sys.version_info[1]}"
        self.python = self.venv / ("Scripts/python.exe" if on_windows else "bin/python")
        self.packages = self.venv / library / "site-packages"
        self.stamp = self.venv / "curdwright-ready"
        self.installed = self.venv / "curdwright-installed"
        self.unfinished = self.venv / "curdwright-unfinished"

    def exists(self) -> bool:
        """Whether this is a source tree of ours, and not a folder packages were installed into."""
        project = self.root / "pyproject.toml"
        return project.is_file() and 'name = "curdwright"' in project.read_text(encoding="utf-8")

    def is_running(self) -> bool:
        """Whether this very process runs inside the environment."""
        return self.venv.is_dir() and os.path.samefile(sys.prefix, self.venv)

    def wanted(self) -> str:
        """What the stamps must say: the hash of pyproject.toml, of the place and of the Python in use."""
        hashed = hashlib.sha256((self.root / "pyproject.toml").read_bytes())
        hashed.update(f"{self.root} {sys.version_info[:2]}".encode())
        return hashed.hexdigest()

    def _says(self, stamp: Path) -> bool:
        if not (self.python.exists() and stamp.is_file() and stamp.read_text(encoding="utf-8") == self.wanted()):
            return False
        return all((self.packages / name).is_dir() for name in MUST_BE_THERE)

    def is_ready(self) -> bool:
        """Whether everything is installed and was seen to import."""
        return self._says(self.stamp)

    def is_installed(self) -> bool:
        """Whether the Python packages are there; the system's libraries for the window may still be missing."""
        return self._says(self.installed)

    def prepare(self) -> None:
        """Build or mend the environment under a lock, and stamp it once its imports were tried."""
        with self.lock():
            if self.is_ready():
                return
            if not self.is_installed():
                anew = not self.can_be_mended()
                if anew:
                    self.build()
                self.install()
                if not anew and self.probe() not in (0, LIBRARY_MISSING):
                    say("The environment is damaged: building it anew.")
                    self.build()
                    self.install()
                self.compile()
            self.try_imports()

    def try_imports(self) -> None:
        """Stamp the environment if all imports; where only the system's libraries are missing, fetch or name them."""
        found = self.probe()
        if found == LIBRARY_MISSING and fetch(QT_PACKAGES, "The window needs libraries this system lacks."):
            found = self.probe()
        if found not in (0, LIBRARY_MISSING):
            stop("The environment was built but does not work: see the error above. Remove .venv and try again.")
        self.installed.write_text(self.wanted(), encoding="utf-8")
        if found == 0:
            self.stamp.write_text(self.wanted(), encoding="utf-8")
            say("Ready.")
        else:
            say("Until then forecast and check work; the window and the printed plan do not.")

    def can_be_mended(self) -> bool:
        """Whether pip can bring it up to date: it starts, is of this Python, has pip and no install was cut off."""
        if self.venv.is_symlink() or self.unfinished.exists() or not self.python.exists():
            return False
        ask = [str(self.python), "-c", "import pip, sys; print(sys.version_info[:2])"]
        try:
            answer = subprocess.run(ask, capture_output=True, text=True, check=False)
        except OSError:
            return False
        return answer.returncode == 0 and answer.stdout.strip() == str(sys.version_info[:2])

    def build(self) -> None:
        """A new environment holding nothing but pip."""
        if not has_ensurepip():
            package = f"python{sys.version_info[0]}.{sys.version_info[1]}-venv"
            why = f"This Python ({sys.executable}) can't make environments yet."
            if not (fetch((package,), why) and has_ensurepip()):
                stop("Without it, any other Python 3.11 or newer that has the venv module will do.")
        say(f"Making the environment in {self.venv} ...")
        if self.venv.is_symlink() or self.venv.is_file():
            self.venv.unlink()
        elif self.venv.exists():
            shutil.rmtree(self.venv)
        if run([sys.executable, "-m", "venv", str(self.venv)]) != 0:
            stop(f"Python could not make an environment in {self.venv}: see the error above.")

    def install(self) -> None:
        """Let pip install the project and all it needs, marked so that a cut-off install is recognised."""
        say("Installing Curdwright and what it needs (the first time a few minutes and 1 GB of disk) ...")
        self.unfinished.touch()
        for old in (self.stamp, self.installed):
            if old.exists():
                old.unlink()
        code = run([str(self.python), "-m", "pip", "install", "--editable", f"{self.root}[tests]"], **PIP_SETTINGS)
        if code >= 0:  # pip ended by itself: what it could not install, it took back
            self.unfinished.unlink()
        if code != 0:
            stop("The packages could not be installed: see pip's words above. Is the network there? Then try again.")

    def compile(self) -> None:
        """Compile our own modules, as pip did those of others.

        Else the first start does it, and where Python is told to write no bytecode every start.
        """
        run([str(self.python), "-m", "compileall", "-q", *(str(self.root / name) for name in OURS)])

    def probe(self) -> int:
        """0 if the window's and the model's libraries import, LIBRARY_MISSING if the system lacks one, else another."""
        return run([str(self.python), "-c", PROBE], QT_QPA_PLATFORM="offscreen")

    @contextlib.contextmanager
    def lock(self) -> Iterator[None]:
        """Only one process at a time sets up; the system frees the lock if that process dies."""
        try:
            handle = open(self.root / ".bootstrap.lock", "a+b")  # noqa: SIM115 - closed by the with below
        except OSError as error:
            stop(f"Curdwright can't write in {self.root}: {error.strerror}.")
        with handle:
            take(handle.fileno())
            yield


PIP_SETTINGS = {"PIP_DISABLE_PIP_VERSION_CHECK": "1", "PIP_NO_INPUT": "1", "PIP_USER": "0"}


def take(descriptor: int) -> None:
    """Hold the lock on an open file, waiting for whoever has it."""
    if sys.platform == "win32":
        import msvcrt

        while True:  # one call waits ten seconds, then gives up
            with contextlib.suppress(OSError):
                msvcrt.locking(descriptor, msvcrt.LK_LOCK, 1)
                return
    import fcntl

    try:
        fcntl.flock(descriptor, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except BlockingIOError:
        say("Another process is setting Curdwright up: waiting for it ...")
        fcntl.flock(descriptor, fcntl.LOCK_EX)


def fetch(packages: tuple[str, ...], why: str) -> bool:
    """Install Debian packages as root, unasked only where nobody can be asked; else print the command. True if done."""
    names = " ".join(packages)
    if sys.platform != "linux" or shutil.which("apt-get") is None:
        say(f"{why} Debian calls them: {names}. Install your system's own and try again.")
        return False
    install = ["apt-get", "install", "--yes", "--no-install-recommends", *packages]
    if os.geteuid() != 0:
        say(f"{why} This command installs them:\n\n    sudo apt-get update && sudo {' '.join(install)}\n")
        return False
    if someone_is_there() and not agreed(f"{why} Install {names} with apt-get?"):
        say(f"This command installs them:\n\n    apt-get update && {' '.join(install)}\n")
        return False
    say(f"Installing {names} ...")
    settings = {"DEBIAN_FRONTEND": "noninteractive"}
    run(["apt-get", "update"], **settings)  # an old list may still do: the install decides
    return run(install, **settings) == 0


def someone_is_there() -> bool:
    """Whether a person can answer a question."""
    return sys.stdin is not None and sys.stdin.isatty() and sys.stderr.isatty()


def agreed(question: str) -> bool:
    """Ask, and take only a plain yes for one."""
    print(f"{question} [y/N] ", end="", file=sys.stderr, flush=True)
    return sys.stdin.readline().strip().lower() in ("y", "yes")


def has_ensurepip() -> bool:
    """Whether this Python can put pip into an environment (Debian ships that part in a package of its own)."""
    return subprocess.run([sys.executable, "-c", "import ensurepip"], capture_output=True, check=False).returncode == 0


def has_display() -> bool:
    """Whether a window can be shown here."""
    if sys.platform != "linux":
        return True
    return bool(os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"))


def prepare_display() -> None:
    """Fetch or name the libraries an X display needs before Qt, which would end the process over a missing one."""
    if sys.platform != "linux" or not os.environ.get("DISPLAY") or os.environ.get("QT_QPA_PLATFORM"):
        return
    found = importlib.util.find_spec("PySide6")
    if found is None or found.origin is None:
        return
    try:
        ctypes.CDLL(str(Path(found.origin).parent / "Qt/plugins/platforms/libqxcb.so"))
    except OSError as error:
        if not fetch(DISPLAY_PACKAGES, f"The display needs libraries that are missing ({error})."):
            stop("Without them no window can be opened here.")


def too_old() -> str:
    """The sentence for an old Python, with a newer one if this machine has it."""
    text = f"Curdwright needs Python 3.11 or newer; this is {sys.version.split()[0]} ({sys.executable})."
    for minor in (14, 13, 12, 11):
        if shutil.which(f"python3.{minor}"):
            return f"{text} Use python3.{minor} in place of python3."
    return text


def run(command: list[str], **environment: str) -> int:
    """Run a command with all it prints on standard error; its exit code, negative if a signal ended it."""
    return subprocess.run(command, stdout=sys.stderr, env={**os.environ, **environment}, check=False).returncode


def replace_process(command: list[str]) -> NoReturn:
    """Go on as another command; Windows has no true exec, so there it is waited for."""
    if sys.platform == "win32":
        raise SystemExit(subprocess.run(command, check=False).returncode)
    os.execv(command[0], command)


def say(text: str) -> None:
    """A line of progress."""
    print(text, file=sys.stderr, flush=True)


def stop(text: str) -> NoReturn:
    """Give up with a sentence."""
    say(text)
    raise SystemExit(2)
