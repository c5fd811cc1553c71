"""Solver and simulators agree on hundreds of random networks, from the same seeds in every run.

`SHUNTWISE_LONG=1 pytest tests/property/test_random_networks.py` takes ten times as many.
"""

import os
from concurrent.futures import ThreadPoolExecutor

import pytest

from engines.installed import needs
from property.random_networks import random_network
from shuntwise.engines.crosscheck import CrossCheck, crosscheck
from shuntwise.engines.engine import Engine
from shuntwise.engines.gnucap import GNUCAP, LARGEST_COUPLING
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.network.network import GROUND, Network
from shuntwise.network.sweep import Sweep

TIMES = 10 if os.environ.get("SHUNTWISE_LONG") else 1

SWEEP = Sweep(20.0, 20000.0, 2)
"""Seven points: what goes wrong does so in the arrangement of parts, not in the fineness of the sweep."""


def check_all(engine: Engine, seeds: range) -> list[tuple[int, CrossCheck]]:
    """Each engine run is a process of its own, so threads are enough to fill the processor's cores."""

    def one(seed: int) -> tuple[int, CrossCheck]:
        return seed, crosscheck(random_network(seed), SWEEP, engine)

    with ThreadPoolExecutor(4) as pool:
        return list(pool.map(one, [seed for seed in seeds if engine is NGSPICE or gnucap_can(seed)]))


def gnucap_can(seed: int) -> bool:
    return all(abs(coupling.k) <= LARGEST_COUPLING for coupling in random_network(seed).couplings)


@pytest.mark.parametrize(
    ("engine", "seeds"),
    [
        pytest.param(NGSPICE, range(300 * TIMES), marks=needs(NGSPICE), id="ngspice"),
        pytest.param(GNUCAP, range(100 * TIMES), marks=needs(GNUCAP), id="gnucap"),
    ],
)
def test_every_random_network_agrees(engine: Engine, seeds: range) -> None:
    """Every node, driver and input impedance, within 1e-9 of the source voltage or of the impedance."""
    checks = check_all(engine, seeds)
    assert len(checks) > 0.9 * len(seeds)
    failed = [(seed, check.worst) for seed, check in checks if not check.passed]
    assert not failed


def test_random_networks_hold_what_trips_solvers() -> None:
    """The seeds of the test above hold each hard feature seven times and more, and the invariants of a network."""
    networks = [random_network(seed) for seed in range(300)]
    features = {
        "two inputs": sum(len(n.feeds) == 2 for n in networks),
        "a floating driver": sum(any(GROUND not in (d.plus, d.minus) for d in n.drivers) for n in networks),
        "a reversed driver": sum(any(d.plus == GROUND for d in n.drivers) for n in networks),
        "couplings": sum(len(n.couplings) > 1 for n in networks),
        "perfect coupling": sum(any(abs(c.k) == 1 for c in n.couplings) for n in networks),
        "a node only capacitors touch": sum(has_capacitor_only_node(n) for n in networks),
        "coils side by side": sum(has_coil_loop(n) for n in networks),
    }
    assert min(features.values()) >= 7, features
    for network in networks:
        assert len(network.element) == len(network.elements)
        assert reached_from_ground(network) == {GROUND, *network.nodes}
        assert len({feed.node for feed in network.feeds} - {GROUND}) == len(network.feeds)


def has_capacitor_only_node(network: Network) -> bool:
    kinds: dict[str, set[str]] = {}
    for element in network.elements:
        for node in (element.plus, element.minus):
            kinds.setdefault(node, set()).add(element.kind)
    fed = {GROUND, *(feed.node for feed in network.feeds)}
    return any(found == {"C"} and node not in fed for node, found in kinds.items())


def has_coil_loop(network: Network) -> bool:
    ends = [frozenset((e.plus, e.minus)) for e in network.elements if e.kind == "L"]
    return len(set(ends)) < len(ends)


def reached_from_ground(network: Network) -> set[str]:
    reached = {GROUND}
    grown = True
    while grown:
        before = len(reached)
        for element in network.elements:
            if element.plus in reached or element.minus in reached:
                reached |= {element.plus, element.minus}
        grown = len(reached) > before
    return reached
