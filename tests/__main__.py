"""`python3 -m tests [--long] [pytest's own arguments]`: sets the checkout up, then runs ruff, mypy and pytest.

`--long` adds kill, fuzz and soak. `--speed` prints the benchmark instead. Parses on Python 3.8, like bootstrap.
"""

from __future__ import annotations

import os
import subprocess
import sys

from designer import bootstrap


def main(arguments: list[str]) -> int:
    """0 if every check passed; all are run, pytest last so that its closing line is."""
    bootstrap.enter("tests", arguments)
    if not bootstrap.Checkout(bootstrap.ROOT).is_ready():
        bootstrap.stop("The tests open windows off screen: they need the libraries named above first.")
    if "--speed" in arguments:
        return run("tests.speed", *[word for word in arguments if word != "--speed"])
    checks = [run("ruff", "check", "."), run("mypy"), run("pytest", *arguments)]
    if any(checks[:2]):
        print("Failed before the tests: ruff or mypy found something, see above.", flush=True)
    return 1 if any(checks) else 0


def run(module: str, *arguments: str) -> int:
    """Run a tool of the environment from the top of the checkout; its exit code."""
    print("--", module, *arguments, flush=True)
    settings = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    return subprocess.run([sys.executable, "-m", module, *arguments], cwd=bootstrap.ROOT, env=settings).returncode


raise SystemExit(main(sys.argv[1:]))
