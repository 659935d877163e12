"""Work beside the window steps back: where both want the processor, the picture has it.

What is worked out beside marches on two threads. With the same right to the processor as the window's own, on a machine
of two cores they double how long a frame of a drag takes at its worst; idle cores they have all the same.
"""

from __future__ import annotations

import os
import sys
import threading
from typing import Final

NICE: Final = 10
"""How far a thread steps back, of 19."""
TURN_S: Final = 0.001
"""How long a thread may keep the interpreter while the window waits: Python's own 5 ms are a third of a frame."""


def step_back() -> None:
    """From now on this thread, and every one it starts, yields to the window; only Linux has that for threads."""
    if sys.platform == "linux":
        os.setpriority(os.PRIO_PROCESS, threading.get_native_id(), NICE)


def take_turns() -> None:
    """Let threads of this process change over often enough that the window need not wait."""
    sys.setswitchinterval(TURN_S)
