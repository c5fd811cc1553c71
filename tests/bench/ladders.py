"""How time grows with the size of a design: generated ladders, from text to netlist and to the response.

A ladder of n parts is a coil in series and a capacitor in shunt, n / 2 times over, ending in a driver. Run:
python tests/bench/ladders.py [--json]
"""

from __future__ import annotations

import argparse
import json
import math
import sys
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[2] / "compiler"))

from shuntwise.api import Compilation, network
from shuntwise.graph.connect import connect
from shuntwise.model.resolve import resolve
from shuntwise.netlist.spice import emit
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.pipeline import compile_variant, read
from shuntwise.response.solve import Solver
from shuntwise.source import Source

SIZES = (100, 1_000, 10_000)
RESPONSE_SIZES = (500, 1_000, 2_000)


def ladder(parts: int) -> str:
    """A design of `parts` parts."""
    rungs = parts // 2
    lines = ["driver woofer 8 ohm { re 6 ohm, le 0.4 mH, fs 60 Hz, qms 4, qes 0.5, 100 W }"]
    for rung in range(1, rungs + 1):
        lines.append(f"coil L{rung} 0.1 mH {{ dcr 0.01 ohm, 5 %, air core }}")
        lines.append(f"capacitor C{rung} 1 uF {{ 5 %, 250 V, film }}")
    lines.append("leg woofer {")
    node = "input+"
    for rung in range(1, rungs + 1):
        following = "woofer+" if rung == rungs else f"node_{rung}"
        lines.append(f"  {node} -- L{rung} -- {following}")
        lines.append(f"  {following} -- C{rung} -- return")
        node = following
    lines += ["  woofer- -- return", "}"]
    return "\n".join(lines) + "\n"


def timed(work: Callable[[], object], repeats: int = 3) -> float:
    best = math.inf
    for _ in range(repeats):
        begin = time.perf_counter()
        work()
        best = min(best, time.perf_counter() - begin)
    return best


def to_network(text: str) -> Network:
    """Text to ideal elements, without the checks."""
    collected, _ = read(Source("ladder", text))
    design, _ = resolve(collected)
    circuit, _ = connect(design)
    lowered = lower(circuit)
    assert isinstance(lowered, Network)
    return lowered


def to_netlist(text: str) -> str:
    return emit(to_network(text), Sweep(), design_title="ladder").text


def checked(text: str) -> Compilation:
    collected, said = read(Source("ladder", text))
    return compile_variant(collected, said)


def measure() -> dict[str, dict[str, float]]:
    freq_hz = np.geomspace(20, 20_000, 200)
    to_netlist(ladder(10))
    results: dict[str, dict[str, float]] = {
        "text to netlist": {},
        "text to findings": {},
        "text to 200-point response": {},
    }
    for size in SIZES:
        text = ladder(size)
        repeats = 1 if size > 5_000 else 3
        results["text to netlist"][f"{size} parts"] = timed(lambda t=text: to_netlist(t), repeats) * 1e3
        if size <= 1_000:
            results["text to findings"][f"{size} parts"] = timed(lambda t=text: network(checked(t)), 3) * 1e3
    for size in RESPONSE_SIZES:
        text = ladder(size)
        run = timed(lambda t=text: Solver(to_network(t)).solve(freq_hz).impedance("input"), 3)
        results["text to 200-point response"][f"{size} parts"] = run * 1e3
    for figures in results.values():
        sizes = [float(name.split()[0]) for name in figures]
        times = list(figures.values())
        figures["exponent"] = math.log(times[-1] / times[0]) / math.log(sizes[-1] / sizes[0])
    return results


def words(results: dict[str, dict[str, float]]) -> str:
    """The figures as a table."""
    lines = []
    for title, figures in results.items():
        lines.append(f"{title} (ms; exponent of growth)")
        lines += [f"  {name:14} {value:10.2f}" for name, value in figures.items()]
    return "\n".join(lines)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true")
    results = measure()
    print(json.dumps(results, indent=1) if parser.parse_args().json else words(results))


if __name__ == "__main__":
    main()
