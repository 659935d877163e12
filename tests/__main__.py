"""`python3 -m tests [--long] [pytest's own arguments]`: sets the checkout up, then runs ruff, mypy and pytest.

`--long` adds kill, fuzz and soak. `--speed` prints the benchmark instead. Parses on Python 3.8, like bootstrap.

All cores are used: mypy reads while the march is compiled, once for all, and then pytest shares its tests among as many
processes (`-n 0`: in one).
"""

from __future__ import annotations

import os
import subprocess
import sys

from designer import bootstrap

SHARED = ("--numprocesses=auto", "--maxprocesses=8", "--dist=worksteal")
"""Tests stay in the order of their files, so that a module's fixtures are mostly made once."""


def main(arguments: list[str]) -> int:
    """0 if every check passed; all are run, pytest last so that its closing line is."""
    bootstrap.enter("tests", arguments)
    if not bootstrap.Checkout(bootstrap.ROOT).is_ready():
        bootstrap.stop("The tests open windows off screen: they need the libraries named above first.")
    if "--speed" in arguments:
        return run("tests.speed", *[word for word in arguments if word != "--speed"])
    reading = start("mypy", stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    checks = [run("ruff", "check", "."), run("tests.compiled")]
    print("-- mypy", reading.communicate()[0].decode(), sep="\n", end="", flush=True)
    checks += [reading.returncode, run("pytest", *SHARED, *arguments)]
    if any(checks[:3]):
        print("Failed before the tests: ruff, the compiler or mypy found something, see above.", flush=True)
    return 1 if any(checks) else 0


def start(module: str, *arguments: str, **streams: int) -> subprocess.Popen[bytes]:
    """Begin with a tool of the environment, from the top of the checkout."""
    settings = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    return subprocess.Popen([sys.executable, "-m", module, *arguments], cwd=bootstrap.ROOT, env=settings, **streams)


def run(module: str, *arguments: str) -> int:
    """Run a tool of the environment; its exit code."""
    print("--", module, *arguments, flush=True)
    return start(module, *arguments).wait()


raise SystemExit(main(sys.argv[1:]))
