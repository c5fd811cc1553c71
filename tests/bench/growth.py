"""How the time of every pass and every rule grows with the number of parts, in a design that states all it can.

The ladder of ladders.py, with tolerances and ratings, an amplifier and `expect` lines. Run:
python tests/bench/growth.py [--json] [SIZE ...]. The exponent is the slope of log time against log size from a
tenth of the greatest size to that. Every pass is timed once, with the collector of unused memory off, as `timeit` does;
the whole check, as a user runs it, with the collector on. A rule is listed if it takes 1 % of the rules' time.
"""

from __future__ import annotations

import argparse
import gc
import json
import math
import sys
import time
from collections.abc import Callable, Iterable
from dataclasses import replace
from pathlib import Path
from typing import TypeVar

sys.path[:0] = [str(Path(__file__).parents[2] / "compiler"), str(Path(__file__).parents[1])]

import numpy as np

from bench.ladders import ladder
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.idle_waivers import idle_waivers
from shuntwise.checks.registry import CATALOGUE, RULES
from shuntwise.checks.rule import Check, Rule
from shuntwise.checks.run import run
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.graph.connect import connect
from shuntwise.model.include import include, nothing_to_include
from shuntwise.model.resolve import resolve
from shuntwise.netlist.spice import emit
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.pipeline import compile_variant, in_order, read
from shuntwise.response.solve import Solver
from shuntwise.source import Source
from shuntwise.syntax.parser import parse
from shuntwise.tolerance.spread import spread

SIZES = (300, 1_000, 3_000, 10_000)
SPREAD_PARTS, SPREAD_BUILDS = 3_000, 100
"""The spread is drawn up to this many parts."""

LEAST_SHARE = 0.01
FURTHER = """
amplifier 100 W into 8 ohm { least 4 ohm }
expect impedance above 2 ohm from 20 Hz to 20 kHz
expect level of woofer -20 dB at 100 Hz within 60 dB
expect corner of woofer at 2 kHz within 50 %
expect slope of woofer 0 dB/octave from 50 Hz to 100 Hz within 12 dB/octave
"""

Value = TypeVar("Value")


class Clock:
    """Seconds by name."""

    def __init__(self) -> None:
        self.seconds: dict[str, float] = {}

    def __call__(self, name: str, work: Callable[[], Value]) -> Value:
        gc.collect()
        gc.disable()
        begin = time.perf_counter()
        value = work()
        self.seconds[name] = time.perf_counter() - begin
        gc.enable()
        return value


def design_text(parts: int) -> str:
    return ladder(parts) + FURTHER


def passes(parts: int) -> dict[str, float]:
    """Seconds by pass; those of rules by "rule " and the name."""
    clock = Clock()
    source = Source("ladder", design_text(parts))
    tree, form = clock("parse", lambda: parse(source))
    collected, _ = clock("include", lambda: include(tree, nothing_to_include, ""))
    design, resolved = clock("resolve", lambda: resolve(collected, catalogue=CATALOGUE))
    circuit, connected = clock("connect", lambda: connect(design))
    network = clock("lower", lambda: lower(circuit))
    assert isinstance(network, Network) and not form and not resolved and not connected
    rules: dict[str, float] = {}
    checked = clock("checks", lambda: run(timed_rules(rules), Evidence(design, circuit, network)))
    clock("waivers and order", lambda: (idle_waivers(design, checked), in_order(checked.findings)))
    clock("netlist", lambda: emit(network, Sweep(), design_title="ladder"))
    clock("response of 200 points", lambda: Solver(network).solve(np.geomspace(20, 20e3, 200)).impedance("input"))
    if parts <= SPREAD_PARTS:
        clock(f"spread of {SPREAD_BUILDS} builds", lambda: spread(design, network, builds=SPREAD_BUILDS))
    return clock.seconds | rules


def whole_check(parts: int) -> float:
    """Seconds from the text to the findings."""
    source = Source("ladder", design_text(parts))
    begin = time.perf_counter()
    collected, said = read(source)
    compile_variant(collected, said)
    return time.perf_counter() - begin


def timed_rules(seconds: dict[str, float]) -> list[Rule]:
    """Every rule, noting how long its check takes."""

    def timed(rule: Rule, check: Check) -> Check:
        def work(evidence: Evidence) -> Iterable[Diagnostic | NotChecked]:
            begin = time.perf_counter()
            found = tuple(check(evidence))
            seconds[f"rule {rule.name}"] = time.perf_counter() - begin
            return found

        return work

    return [replace(rule, check=timed(rule, rule.check)) for rule in RULES.values() if rule.check is not None]


def measure(sizes: Iterable[int] = SIZES) -> dict[str, dict[str, float]]:
    """By pass and rule: seconds by size, and the exponent over the last decade of the sizes at which it was timed."""
    passes(100)  # imports and first pages of memory
    results: dict[str, dict[str, float]] = {}
    figures: dict[str, float] = {}
    for size in sizes:
        figures = {**passes(size), "whole check": whole_check(size)}
        for name, seconds in figures.items():
            results.setdefault(name, {})[f"{size} parts"] = seconds
    small = LEAST_SHARE * figures["checks"]
    results = {n: f for n, f in results.items() if not n.startswith("rule ") or figures.get(n, 0) > small}
    for by_size in results.values():
        seconds_at = {int(name.split()[0]): seconds for name, seconds in by_size.items()}
        last = max(seconds_at)
        first = max((size for size in seconds_at if 10 * size <= last), default=min(seconds_at))
        if first < last:
            by_size["exponent"] = math.log(seconds_at[last] / seconds_at[first]) / math.log(last / first)
    return results


def words(results: dict[str, dict[str, float]]) -> str:
    """The figures as a table."""
    columns = list(dict.fromkeys(name for figures in results.values() for name in figures if name != "exponent"))
    lines = [
        "ladder with amplifier and expectations (s)".ljust(44) + "".join(c.rjust(14) for c in columns) + "  exponent"
    ]
    for title, figures in results.items():
        cells = "".join((f"{figures[c]:14.3f}" if c in figures else " " * 14) for c in columns)
        lines.append(f"  {title:42}{cells}" + (f"{figures['exponent']:10.2f}" if "exponent" in figures else ""))
    return "\n".join(lines)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("sizes", nargs="*", type=int, default=SIZES, metavar="SIZE")
    parser.add_argument("--json", action="store_true")
    options = parser.parse_args()
    results = measure(options.sizes)
    print(json.dumps(results, indent=1) if options.json else words(results))


if __name__ == "__main__":
    main()
