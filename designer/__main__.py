"""`python3 -m designer`: sets a checkout up on first use, then runs the command line inside its environment."""

from __future__ import annotations

import sys

from designer import bootstrap


def main() -> None:
    """Everything after the module's name goes to the command line as it is."""
    bootstrap.enter("designer", sys.argv[1:])
    from designer.cli import main as command_line

    command_line()


main()
