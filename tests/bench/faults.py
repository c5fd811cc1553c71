"""How long the bench takes: its dictionary, a sheet, a verdict and the next reading, warm, in processor time."""

from __future__ import annotations

import time
from pathlib import Path
from statistics import median
from typing import Any

from shuntwise.bench.bench import Bench
from shuntwise.model.box import Taken
from shuntwise.workspace import Workspace

EXAMPLES = Path(__file__).parents[2] / "examples"
DESIGNS = ("07-market-horn", "12-ferry-deck", "13-harbour-stage")
GOALS_S = {"dictionary": 1.0, "sheet": 2.0, "verdict": 0.3, "next": 0.3}
"""What was promised of a three-way: the dictionary with its classes, the whole sheet with it, each step of a search."""


def measure(times: int = 5) -> dict[str, Any]:
    """Median seconds by design."""
    return {name: _one(EXAMPLES / f"{name}.shunt", times) for name in DESIGNS}


def _one(file: Path, times: int) -> dict[str, float]:
    circuit = Workspace(str(file), on_boards=False).compilation().circuit
    seconds: dict[str, list[float]] = {name: [] for name in GOALS_S}
    for _ in range(times):
        start = time.process_time()
        bench = Bench(circuit)
        assert bench.class_of[0] == 0
        seconds["dictionary"].append(time.process_time() - start)
        lines = bench.sheet.lines
        seconds["sheet"].append(time.process_time() - start)
        # A board on which the last reading of the sheet is three times what it should be.
        taken = [Taken(line.reading, line.expected) for line in lines[:-1]]
        taken.append(Taken(lines[-1].reading, 3 * lines[-1].expected))
        for name, step in (("verdict", bench.judge), ("next", bench.propose)):
            start = time.process_time()
            step(taken)
            seconds[name].append(time.process_time() - start)
    return {name: median(values) for name, values in seconds.items()}


def words(figures: dict[str, Any]) -> str:
    goals = ", ".join(f"{name} {1000 * goal:.0f}" for name, goal in GOALS_S.items())
    lines = [f"the bench, warm, ms (asked of a three-way: {goals})"]
    for name, one in figures.items():
        lines.append(f"  {name:<20} " + "  ".join(f"{step} {1000 * s:6.0f}" for step, s in one.items()))
    return "\n".join(lines) + "\n"
