"""How fast the built-in solver is, beside two rivals on the same network in the same run.

Run: python tests/bench/solver.py [--json]. The rivals are (a) nodal matrices built and solved by numpy's batched
LAPACK, and (b) the ngspice library in this process, through PySpice. Every figure is the best of several runs.
The rivals' tolerance runs are timed on fewer builds and scaled, which the table says. One core.
"""

from __future__ import annotations

import argparse
import json
import logging
import math
import os
import sys
import time
from collections.abc import Callable
from pathlib import Path

# Threads would blur a comparison on one core, and tuning variables meant for other jobs slow numpy down.
for variable in [name for name in os.environ if name.startswith(("OPENBLAS_", "NVPL_"))]:
    del os.environ[variable]
os.environ["OPENBLAS_NUM_THREADS"] = "1"

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[2] / "compiler"))

from shuntwise.api import load
from shuntwise.api import network as network_of
from shuntwise.network.network import GROUND, Coupling, DriverPort, Element, Feed, Network
from shuntwise.response.solve import Solver

BUILDS, TOLERANCE_POINTS, SWEEP_POINTS = 10_000, 200, 1_000


def driver_elements(name: str, node: str, re: float, le: float, fs: float, qms: float, qes: float) -> list[Element]:
    """The lumped model of a driver from `node` to ground: Re, Le and a parallel resonance (Thiele 1971, Small 1972)."""
    omega = 2 * np.pi * fs
    a, b = f"{name}.a", f"{name}.b"
    return [
        Element(f"R{name}e", "R", node, a, re, name),
        Element(f"L{name}e", "L", a, b, le, name),
        Element(f"R{name}s", "R", b, GROUND, re * qms / qes, name),
        Element(f"L{name}s", "L", b, GROUND, re / (omega * qes), name),
        Element(f"C{name}s", "C", b, GROUND, qes / (omega * re), name),
    ]


def three_way(bridged: bool = False) -> Network:
    """A three-way crossover of 15 parts (coils with resistance) and three driver models, 34 elements.

    `bridged` adds a bypass capacitor across the tweeter's two series parts, a shared cable resistance and a coupling
    of two coils, so that a mesh is left that no series and parallel reduction can take apart.
    """
    source = "cable" if bridged else "in"

    def coil(name: str, a: str, b: str, henry: float, ohm: float) -> list[Element]:
        inner = f"{name}.i"
        return [Element(name, "L", a, inner, henry, name), Element(f"R{name}", "R", inner, b, ohm, name)]

    elements = [
        *coil("L1", source, "w", 1.8e-3, 0.35),
        Element("C1", "C", "w", GROUND, 47e-6, "C1"),
        Element("R5", "R", "w", "z", 6.8, "R5"),
        Element("C6", "C", "z", GROUND, 22e-6, "C6"),
        *driver_elements("w", "w", 5.8, 0.9e-3, 45, 4.2, 0.42),
        Element("C2", "C", source, "m1", 33e-6, "C2"),
        *coil("L2", "m1", GROUND, 2.7e-3, 0.5),
        *coil("L3", "m1", "m2", 0.39e-3, 0.18),
        Element("C3", "C", "m2", GROUND, 6.8e-6, "C3"),
        Element("R1", "R", "m2", "m", 2.2, "R1"),
        Element("R2", "R", "m", GROUND, 22.0, "R2"),
        *driver_elements("m", "m", 6.0, 0.35e-3, 210, 3.1, 0.8),
        Element("C4", "C", source, "t1", 4.7e-6, "C4"),
        *coil("L4", "t1", GROUND, 0.27e-3, 0.15),
        Element("C5", "C", "t1", "t2", 10e-6, "C5"),
        Element("R3", "R", "t2", "t", 3.3, "R3"),
        Element("R4", "R", "t", GROUND, 15.0, "R4"),
        *driver_elements("t", "t", 5.4, 0.05e-3, 850, 2.4, 1.3),
    ]
    couplings: tuple[Coupling, ...] = ()
    if bridged:
        elements += [
            Element("R9", "R", "in", "cable", 0.08, "R9"),
            Element("C7", "C", source, "t", 0.33e-6, "C7"),
        ]
        couplings = (Coupling("K1", "L1", "L3", 0.04),)
    drivers = tuple(DriverPort(name, node, GROUND) for name, node in (("woofer", "w"), ("mid", "m"), ("tweeter", "t")))
    return Network(tuple(elements), couplings, (Feed("in", "in"),), drivers)


"""The parts whose values vary in a tolerance run: everything but the drivers and the wire resistances."""


def nodal(network: Network, freq_hz: np.ndarray, values: dict[str, np.ndarray]) -> np.ndarray:
    """Node voltages by batched LAPACK, as one writes it in numpy: (builds * F, nodes).

    One matrix of node voltages (the feed moved to the right-hand side) and coupled coil currents per point.
    """
    coupled = {name for c in network.couplings for name in (c.first, c.second)}
    nodes = [n for n in network.nodes if n != network.feeds[0].node]
    row = {n: i for i, n in enumerate(nodes)}
    row |= {name: len(nodes) + i for i, name in enumerate(sorted(coupled))}
    s = 2j * np.pi * freq_hz
    builds = max((v.size for v in values.values()), default=1)
    matrix = np.zeros((builds, freq_hz.size, len(row), len(row)), complex)
    right = np.zeros((builds, freq_hz.size, len(row), 1), complex)
    for e in network.elements:
        value = values[e.name][:, None] if e.name in values else e.value
        a, b = row.get(e.plus), row.get(e.minus)
        if e.name in coupled:
            i = row[e.name]
            matrix[..., i, i] -= s * value
            for node, end, sign in ((a, e.plus, 1), (b, e.minus, -1)):
                if node is not None:
                    matrix[..., node, i] += sign
                    matrix[..., i, node] += sign
                elif end == network.feeds[0].node:
                    right[..., i, 0] -= sign
            continue
        y = 1 / value if e.kind == "R" else s * value if e.kind == "C" else 1 / (s * value)
        for one, other, end in ((a, b, e.minus), (b, a, e.plus)):
            if one is None:
                continue
            matrix[..., one, one] += y
            if other is not None:
                matrix[..., one, other] -= y
            elif end == network.feeds[0].node:
                right[..., one, 0] += y
    for c in network.couplings:
        first, second = network.element[c.first], network.element[c.second]
        mutual = c.k * np.sqrt(
            values.get(c.first, np.array([first.value])) * values.get(c.second, np.array([second.value]))
        )
        i, j = row[c.first], row[c.second]
        matrix[..., i, j] -= s * mutual[:, None]
        matrix[..., j, i] -= s * mutual[:, None]
    shape = (builds * freq_hz.size, len(row))
    solution = np.linalg.solve(matrix.reshape(*shape, len(row)), right.reshape(*shape, 1))
    return solution[:, : len(nodes), 0]


class Ngspice:
    """The ngspice library in this process."""

    def __init__(self) -> None:
        logging.getLogger("PySpice").setLevel(logging.CRITICAL)
        from PySpice.Spice.NgSpice.Shared import NgSpiceShared

        NgSpiceShared.LIBRARY_PATH = "libngspice.so.0"
        self.library = NgSpiceShared.new_instance()

    def run(self, network: Network, freq_hz: np.ndarray, values: dict[str, float]) -> dict[str, np.ndarray]:
        """Node voltages at logarithmic points from the first to the last of `freq_hz`."""
        node = {name: str(i) for i, name in enumerate((GROUND, *network.nodes))}
        lines = ["bench", f"v1 {node[network.feeds[0].node]} 0 dc 0 ac 1"]
        name = {e.name: f"{e.kind.lower()}{i}" for i, e in enumerate(network.elements)}
        for e in network.elements:
            lines.append(f"{name[e.name]} {node[e.plus]} {node[e.minus]} {values.get(e.name, e.value)!r}")
        lines += [f"k{i} {name[c.first]} {name[c.second]} {c.k!r}" for i, c in enumerate(network.couplings)]
        first, last = float(freq_hz[0]), float(freq_hz[-1])
        per_decade = math.ceil((freq_hz.size - 1) / math.log10(last / first) - 1e-9)
        lines += [".options noopac", f".ac dec {per_decade} {first!r} {last!r}", ".end", ""]
        self.library.load_circuit("\n".join(lines))
        self.library.run()
        plot = self.library.plot(None, self.library.last_plot)
        result = {n: plot[f"V({node[n]})" if f"V({node[n]})" in plot else node[n]]._data for n in network.nodes}
        self.library.destroy("all")
        self.library.remove_circuit()
        return result


def best(work: Callable[[], object], seconds: float = 1.0, least: int = 3) -> float:
    """The least time of `work` in seconds, over at least `least` runs and about `seconds` of trying."""
    work()
    times: list[float] = []
    while len(times) < least or sum(times) < seconds:
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return min(times)


def measure(network: Network, ngspice: Ngspice) -> dict[str, float]:
    """All figures for one network: seconds, and the worst disagreement of the three."""
    sweep = np.geomspace(20.0, 20e3, SWEEP_POINTS)
    solver = Solver(network)
    plain: dict[str, np.ndarray] = {}
    names = [driver.name for driver in network.drivers]

    def ours_every_node() -> list[np.ndarray]:
        response = solver.solve(sweep, nodes=network.nodes)
        return [response.voltage(n) for n in network.nodes]

    def ours_drivers() -> list[np.ndarray]:
        response = solver.solve(sweep)
        return [*map(response.driver_voltage, names), *(response.impedance(feed.name) for feed in network.feeds)]

    def ours_every_build() -> None:
        for _ in solver.stream(points, values):
            pass

    points = np.geomspace(20.0, 20e3, TOLERANCE_POINTS)
    rng = np.random.default_rng(1)
    drivers = {driver.name for driver in network.drivers}
    varied = [e for e in network.elements if e.part not in drivers and not e.name.endswith((".dcr", ".esr"))]
    values = {element.name: element.value * (1 + 0.05 * rng.uniform(-1, 1, BUILDS)) for element in varied}
    few = 100
    some = {name: value[:few] for name, value in values.items()}
    # The first large arrays of a process come with fresh pages, which cost whoever asks first: let all ask once.
    nodal(network, sweep, plain)
    figures = {
        "compile": best(lambda: Solver(network).solve(sweep[:1])),
        "sweep": best(ours_every_node),
        "sweep, drivers and impedance": best(ours_drivers),
        "sweep, LAPACK": best(lambda: nodal(network, sweep, plain)),
        "sweep, ngspice": best(lambda: ngspice.run(network, sweep, {})),
    }
    figures["tolerance"] = best(ours_every_build, 3.0, 5)
    figures["tolerance, LAPACK"] = best(lambda: nodal(network, points, some)) * BUILDS / few
    figures["tolerance, ngspice"] = (
        best(lambda: [ngspice.run(network, points, {n: float(v[i]) for n, v in some.items()}) for i in range(10)])
        * BUILDS
        / 10
    )
    ours, theirs = ours_every_node(), ngspice.run(network, sweep, {})
    figures["worst difference from ngspice (V)"] = max(
        float(np.abs(a - theirs[n]).max()) for a, n in zip(ours, network.nodes, strict=True)
    )
    return figures


def table(title: str, figures: dict[str, float]) -> str:
    """The figures in milliseconds and as ratios to ours."""
    lines = [title, f"  compile and solve one point  {figures['compile'] * 1e3:9.2f} ms"]
    for job, note in (("sweep", f"{SWEEP_POINTS} points"), ("tolerance", f"{BUILDS} x {TOLERANCE_POINTS}")):
        lines.append(f"  {job}, {note}: built-in {figures[job] * 1e3:9.3f} ms")
        if job == "sweep":
            lines.append(f"    drivers and impedance only {figures['sweep, drivers and impedance'] * 1e3:9.3f} ms")
        for rival in ("LAPACK", "ngspice"):
            seconds = figures[f"{job}, {rival}"]
            scaled = {"LAPACK": " (100 builds, scaled)", "ngspice": " (10 builds, scaled)"}[rival]
            lines.append(
                f"    {rival:8} {seconds * 1e3:12.3f} ms, {seconds / figures[job]:6.1f} times ours"
                + (scaled if job == "tolerance" else "")
            )
    lines.append(f"  worst difference from ngspice, any node: {figures['worst difference from ngspice (V)']:.1e} V")
    return "\n".join(lines)


def figures() -> dict[str, dict[str, float]]:
    """All figures for the showcase example, and for a network that series and parallel steps cannot resolve."""
    showcase = network_of(load(str(Path(__file__).parents[2] / "examples" / "13-harbour-stage.shunt")))
    ngspice = Ngspice()
    networks = {
        f"the showcase, {len(showcase.elements)} elements": showcase,
        "three-way with cable, bypass and two coupled coils, 36 elements": three_way(bridged=True),
    }
    return {title: measure(network, ngspice) for title, network in networks.items()}


def words(results: dict[str, dict[str, float]]) -> str:
    """The figures as tables."""
    return "\n\n".join(table(title, figures) for title, figures in results.items())


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--json", action="store_true", help="print seconds as JSON")
    results = figures()
    print(json.dumps(results, indent=2) if parser.parse_args().json else words(results))


if __name__ == "__main__":
    main()
