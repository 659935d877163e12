"""`python3 -m designer`: sets a checkout up on first use, then runs the command line inside its environment."""

from __future__ import annotations

import sys

from designer import bootstrap


def main() -> int:
    """Everything after the module's name goes to the command line as it is; its exit code comes back."""
    bootstrap.enter("designer", sys.argv[1:])
    from designer.cli import main as command_line

    return command_line()


raise SystemExit(main())
