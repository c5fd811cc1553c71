"""How fast the tolerance analysis of the showcase design is, beside two rivals in the same run.

Run: python tests/bench/spread.py [--json]. 10,000 builds of examples/13-harbour-stage.shunt at 200 frequencies. The
rivals (see solver.py) solve the same builds of the same network for all node voltages, on fewer builds, scaled: batched
LAPACK and the ngspice library in this process. Seconds are processor time of one thread, the best of several runs, so
that other work on the machine counts less.
"""

from __future__ import annotations

import argparse
import json
import time
from collections.abc import Callable
from pathlib import Path

# Before numpy itself: it keeps numpy on one thread.
from solver import BUILDS, TOLERANCE_POINTS, Ngspice, nodal  # isort: skip
import numpy as np
from shuntwise.tolerance.curves import solve_curves

from shuntwise.api import load, network
from shuntwise.response.solve import Solver
from shuntwise.tolerance.draws import draw, element_values, varying
from shuntwise.tolerance.spread import spread

SHOWCASE = Path(__file__).parents[2] / "examples" / "13-harbour-stage.shunt"
LAPACK_BUILDS, NGSPICE_BUILDS = 100, 10
WANTED_S, WANTED_NGSPICE, WANTED_LAPACK = 0.25, 28, 16


def best(work: Callable[[], object], runs: int) -> float:
    """The least processor time of `work` (s)."""
    work()
    times = []
    for _ in range(runs):
        start = time.process_time()
        work()
        times.append(time.process_time() - start)
    return min(times)


def measure(runs: int = 7) -> dict[str, float]:
    """Seconds by job, for all builds."""
    compilation = load(str(SHOWCASE))
    circuit = network(compilation)
    solver, parts = Solver(circuit), varying(compilation.design, circuit).parts
    freq_hz = np.geomspace(20.0, 20e3, TOLERANCE_POINTS)
    values = dict(element_values(circuit, parts, draw(parts, BUILDS, seed=1)))
    some = {name: value[:LAPACK_BUILDS] for name, value in values.items()}
    ngspice = Ngspice()
    single = [{name: float(value[i]) for name, value in values.items()} for i in range(NGSPICE_BUILDS)]

    def stream(admittances: bool) -> None:
        for _ in solver.stream(freq_hz, values, admittances=admittances):
            pass

    # Jobs take turns, so that a slow spell of the machine meets them all.
    jobs: dict[str, tuple[Callable[[], object], float]] = {
        "solve, levels": (lambda: stream(False), 1),
        "solve, levels and impedance": (lambda: stream(True), 1),
        "solve and keep the curves": (lambda: solve_curves(solver, values, freq_hz), 1),
        "whole analysis": (lambda: spread(compilation.design, circuit, builds=BUILDS), 1),
        "LAPACK": (lambda: nodal(circuit, freq_hz, some), BUILDS / LAPACK_BUILDS),
        "ngspice": (lambda: [ngspice.run(circuit, freq_hz, one) for one in single], BUILDS / NGSPICE_BUILDS),
    }
    figures = dict.fromkeys(jobs, np.inf)
    for _ in range(runs):
        for name, (work, scale) in jobs.items():
            figures[name] = min(figures[name], best(work, 1) * scale)
    return figures


def table(figures: dict[str, float]) -> str:
    """Milliseconds, and how many times as long the rivals take."""
    lines = [f"{SHOWCASE.stem}, {BUILDS} builds x {TOLERANCE_POINTS} frequencies, processor time"]
    for name, seconds in figures.items():
        rival = name in ("LAPACK", "ngspice")
        lines.append(f"  {name:28} {seconds * 1e3:10.0f} ms" + (" (scaled)" if rival else ""))
    for ours in ("solve, levels and impedance", "whole analysis"):
        ratios = [f"{name} takes {figures[name] / figures[ours]:.0f} times as long" for name in ("ngspice", "LAPACK")]
        lines.append(f"  {ours}: {', '.join(ratios)}")
    lines.append(f"  wanted: {WANTED_S * 1e3:.0f} ms, {WANTED_NGSPICE} times, {WANTED_LAPACK} times")
    return "\n".join(lines)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true", help="print seconds as JSON")
    arguments = parser.parse_args()
    figures = measure()
    print(json.dumps(figures, indent=2) if arguments.json else table(figures))


if __name__ == "__main__":
    main()
