"""The graph searches agree with the general-purpose graph library on random graphs."""

from __future__ import annotations

import networkx as nx
import numpy as np
import pytest

from shuntwise.api import load_text
from shuntwise.graph.topology import DisjointSets, distances, links, loops, pair_links, reached, shortest_path


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
    near = pair_links(pairs)
    for node in graph:
        assert reached(near, node) == nx.node_connected_component(graph, node)
        assert distances(near, node) == nx.single_source_shortest_path_length(graph, node)
    sets = DisjointSets()
    for first, second in pairs:
        sets.union(first, second)
    assert {frozenset(group) for group in sets.sets()} == {frozenset(c) for c in nx.connected_components(graph)}


@pytest.mark.parametrize("seed", range(60))
def test_shortest_paths_agree_with_the_graph_library(seed: int) -> None:
    """Also round a barred name, and without one of the joints."""
    pairs = random_pairs(seed)
    near = links((a, b, (a, b)) for a, b in pairs)
    rng = np.random.default_rng(seed)
    names = sorted(near)
    for _ in range(20):
        start, end, barred = (str(name) for name in rng.choice(names, 3))
        without = pairs[int(rng.integers(len(pairs)))]
        graph = nx.Graph([pair for pair in pairs if pair != without])
        graph.add_nodes_from(names)
        if barred in (start, end):
            continue
        graph.remove_node(barred)
        path = shortest_path(near, start, end, (barred,), (without,))
        assert reached(near, start, (barred,), (without,)) == nx.node_connected_component(graph, start)
        if not nx.has_path(graph, start, end):
            assert path is None
            continue
        assert path is not None and len(path) == nx.shortest_path_length(graph, start, end)
        here = start
        for a, b in path:
            assert here in (a, b) and (a, b) != without
            here = b if here == a else a
        assert here == end


def test_a_long_chain_is_no_recursion() -> None:
    pairs = [(str(n), str(n + 1)) for n in range(50_000)]
    assert len(list(loops(pairs))) == len(pairs)
    assert len(reached(pair_links(pairs), "0")) == len(pairs) + 1


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
