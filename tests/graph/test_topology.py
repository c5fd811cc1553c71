"""The three graph searches agree with the general-purpose graph library on random graphs."""

from __future__ import annotations

import networkx as nx
import numpy as np
import pytest

from shuntwise.api import load_text
from shuntwise.graph.topology import DisjointSets, loops, reached


def random_pairs(seed: int) -> list[tuple[str, str]]:
    rng = np.random.default_rng(seed)
    size = int(rng.integers(2, 30))
    count = int(rng.integers(1, 2 * size))
    pairs = {tuple(sorted(map(str, rng.choice(size, 2, replace=False)))) for _ in range(count)}
    return sorted(pairs)  # type: ignore[arg-type]


@pytest.mark.parametrize("seed", range(200))
def test_searches_agree_with_the_graph_library(seed: int) -> None:
    pairs = random_pairs(seed)
    graph = nx.Graph(pairs)
    ours = {frozenset(frozenset(pair) for pair in group) for group in loops(pairs)}
    theirs = {frozenset(frozenset(pair) for pair in group) for group in nx.biconnected_component_edges(graph)}
    assert ours == theirs
    for node in graph:
        assert reached(pairs, node) == nx.node_connected_component(graph, node)
    sets = DisjointSets()
    for first, second in pairs:
        sets.union(first, second)
    assert {frozenset(group) for group in sets.sets()} == {frozenset(c) for c in nx.connected_components(graph)}


def test_a_long_chain_is_no_recursion() -> None:
    pairs = [(str(n), str(n + 1)) for n in range(50_000)]
    assert len(list(loops(pairs))) == len(pairs)
    assert len(reached(pairs, "0")) == len(pairs) + 1


def test_the_circuit_is_a_multigraph() -> None:
    """Nets are nodes, parts, drivers and inputs are edges, and two parts side by side are two edges."""
    text = (
        "driver woofer 8 ohm\ncoil L1 1 mH\ncapacitor C1 3.3 uF\ncapacitor C2 4.7 uF\n"
        "leg woofer {\n  input+ -- L1 -- woofer+\n  woofer+ -- (C1 | C2) -- return\n  woofer- -- return\n}\n"
    )
    graph = load_text(text).circuit.graph
    assert isinstance(graph, nx.MultiGraph)
    assert set(graph.nodes) == {"input+", "woofer+", "return"}
    assert {key for _, _, key in graph.edges(keys=True)} == {"input", "L1", "C1", "C2", "woofer"}
    assert graph.number_of_edges("woofer+", "return") == 3
