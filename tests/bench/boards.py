"""What a layout adds to a check: designs with their layouts and without, warm, side by side in processor time."""

from __future__ import annotations

import os
import time
from pathlib import Path
from statistics import median
from typing import Any

from shuntwise.workspace import Workspace

EXAMPLES = Path(__file__).parents[2] / "examples"
LAID_OUT = ("04-dance-column", "07-market-horn", "11-fairground-lamp", "13-harbour-stage", "16-village-hall")
GOAL_S = 0.040
"""What was promised, on a quiet machine."""


def measure(times: int = 11) -> dict[str, Any]:
    """Median seconds by design: reading and checking it without its layout, and what the layout adds."""
    return {name: _one(EXAMPLES / f"{name}.shunt", times) for name in LAID_OUT}


def _one(file: Path, times: int) -> dict[str, float]:
    text = file.read_text(encoding="utf-8")
    begin = text.index("\nlayout on")
    bare = text[:begin] + text[text.index("\n}\n", begin + 1) + 2 :]
    with_layout, without = [], []
    for _ in range(times):
        with_layout.append(_seconds(file, text))
        without.append(_seconds(file, bare))
    return {"without": median(without), "added": median(with_layout) - median(without)}


def _seconds(file: Path, text: str) -> float:
    start = time.process_time()
    assert Workspace(str(file), {os.path.realpath(file): text}).compilation() is not None
    return time.process_time() - start


def words(figures: dict[str, Any]) -> str:
    lines = [f"a check with a layout, warm (asked: at most {1000 * GOAL_S:.0f} ms more)"]
    for name, one in figures.items():
        lines.append(f"  {name:<20} {1000 * one['without']:7.1f} ms, {1000 * one['added']:+6.1f} ms with its layout")
    return "\n".join(lines) + "\n"
