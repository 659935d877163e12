"""A lock that the system holds for a window and takes back when its process ends, however it ends.

A process number written into a file can be given to another process; a held lock can't be mistaken.
"""

from __future__ import annotations

import errno
import os
from pathlib import Path

_HELD_ELSEWHERE = {errno.EACCES, errno.EAGAIN, errno.EDEADLK}


class Hold:
    """One lock, by its file. Two windows of one process are two holders."""

    def __init__(self, file: Path) -> None:
        self.file = file
        self._handle = -1

    @property
    def held(self) -> bool:
        """True while it is ours."""
        return self._handle >= 0

    def take(self) -> bool:
        """Take the lock; False where another window has it. OSError where the file can't be made at all."""
        while not self.held:
            self.file.parent.mkdir(parents=True, exist_ok=True)
            handle = os.open(self.file, os.O_RDWR | os.O_CREAT, 0o600)
            try:
                _lock(handle)
            except OSError as error:
                os.close(handle)
                if error.errno in _HELD_ELSEWHERE:
                    return False
                raise
            if self._stands(handle):
                self._handle = handle
            else:  # the last holder took the file away between our two calls
                os.close(handle)
        return True

    def _stands(self, handle: int) -> bool:
        try:
            return os.path.samestat(os.fstat(handle), self.file.stat())
        except FileNotFoundError:
            return False

    def drop(self) -> None:
        """Give it back."""
        if not self.held:
            return
        handle, self._handle = self._handle, -1
        if os.name == "nt":  # an open file can't be taken away there
            os.close(handle)
            return
        try:
            self.file.unlink(missing_ok=True)
        finally:
            os.close(handle)


def _lock(handle: int) -> None:
    if os.name == "nt":
        import msvcrt

        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
    else:
        import fcntl

        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
