"""`python3 -m tests --speed`: what the program takes its time for, printed. Nothing here can fail for being slow."""

from __future__ import annotations

from tests.speed import model, variants, window
from tests.speed.clock import show

show([*model.timings(), *variants.timings(), *window.timings()])
