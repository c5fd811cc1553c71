"""A driver without a way in, or fed in a way that cannot be recognised, is never passed in silence.

Random circuits, rich in what may stay open (taps, test points, parts left out), judged by the graph library: current
can reach a driver if it lies in one biconnected component with an input (H. Whitney, Non-separable and planar graphs,
Trans. Am. Math. Soc. 34, 1932: any two edges of such a component lie on a common cycle).
"""

from __future__ import annotations

import shutil
from pathlib import Path
from random import Random

import networkx as nx
import pytest

from shuntwise import api
from shuntwise.api import Compilation
from shuntwise.diagnostics.diagnostic import Severity
from shuntwise.loading import loader
from shuntwise.pipeline import compile_variant, read
from shuntwise.source import Source

ROOT = Path(__file__).parents[2] / "examples"
EXAMPLES = sorted(path.relative_to(ROOT) for path in ROOT.rglob("*.shunt"))
POINTS = ("input+", "return", "a", "b", "c")


def random_box(random: Random) -> str:
    """Two drivers and some parts between a handful of points, with some parts left out and some points for a meter."""
    points = [*POINTS, "woofer+", "woofer-", "tweeter+", "tweeter-"]
    lines = ["driver woofer 8 ohm", "driver tweeter 8 ohm"]
    walks = []
    for number in range(random.randint(2, 7)):
        kind = random.choice(("coil", "capacitor", "resistor", "tapped coil", "link"))
        label = {"coil": "L", "capacitor": "C", "resistor": "R", "tapped coil": "T", "link": "K"}[kind] + str(number)
        value = {"coil": "1 mH", "capacitor": "10 uF", "resistor": "4 ohm", "tapped coil": "2 mH", "link": ""}[kind]
        lines.append(f"{kind} {label} {value}" + (" { tap 0.5 mH }" if kind == "tapped coil" else ""))
        start, end = random.sample(points, 2)
        walks.append(f"{start} -- {label} -- {end}")
        if kind == "tapped coil" and random.random() < 0.5:
            walks.append(f"{label}.tap -- {random.choice(points)}")
        if random.random() < 0.15:
            lines.append(f"omit {label}")
    for pad in ("woofer+", "woofer-", "tweeter+", "tweeter-"):
        if random.random() < 0.5:
            walks.append(f"{pad} -- {random.choice(points)}")
    named = {word for walk in walks for word in walk.split(" -- ")}
    lines += [f"testpoint {node}" for node in "abc" if node in named and random.random() < 0.3]
    body = "\n  ".join(dict.fromkeys(walk for walk in walks if len(set(walk.split(" -- "))) > 1))
    return "\n".join(lines) + "\nleg woofer and tweeter {\n  " + body + "\n}\n"


def load_text(text: str, file: Path = ROOT / "box.shunt") -> Compilation:
    """A design through all checks, whatever the cause of what they find."""
    return compile_variant(*read(Source(file.name, text), loader(file, file.name)), causes=False)


def load(file: Path) -> Compilation:
    return load_text(file.read_text(encoding="utf-8"), file)


def unfed(compilation: Compilation) -> set[str]:
    """The drivers on no cycle through an input."""
    circuit = compilation.circuit
    graph = nx.MultiGraph()
    for edge in circuit.edges.values():  # a node in the middle of each edge makes parallel edges a cycle
        graph.add_edge(edge.plus, ("inside", edge.key))
        graph.add_edge(("inside", edge.key), edge.minus)
    fed = set()
    for component in nx.biconnected_components(nx.Graph(graph)):
        if len(component) > 2 and any(("inside", feed.name) in component for feed in circuit.design.feeds):
            fed |= {name for name in circuit.design.drivers if ("inside", name) in component}
    return set(circuit.design.drivers) - fed


def passes_in_silence(compilation: Compilation) -> bool:
    heard = any(finding.severity is Severity.ERROR for finding in compilation.findings)
    return not heard and bool(unfed(compilation))


@pytest.mark.parametrize("seed", range(40))
def test_driver_without_a_way_in_is_an_error(seed: int) -> None:
    random = Random(seed)
    texts = [random_box(random) for _ in range(9)]
    assert [text for text in texts if passes_in_silence(load_text(text))] == []


@pytest.mark.parametrize("seed", range(40, 60))
def test_what_cannot_be_recognised_is_told(seed: int) -> None:
    """Where checks lack a way in which a driver is fed there is a finding that says so."""
    random = Random(seed)
    for _ in range(9):
        text = random_box(random)
        compilation = load_text(text)
        unclear = any("a way in which an input feeds" in entry.lacks for entry in compilation.not_checked)
        grave = [f for f in compilation.findings if f.severity is not Severity.ADVICE]
        assert not unclear or any(f.name in ("feed-unclear", "driver-unfed") for f in grave), text


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda path: path.stem)
def test_part_left_out_of_an_example_silences_no_driver_unseen(example: Path, tmp_path: Path) -> None:
    shutil.copytree((ROOT / example).parent, tmp_path, dirs_exist_ok=True)
    file = tmp_path / example.name
    text = file.read_text(encoding="utf-8")
    for label in api.load(str(file)).design.parts:
        file.write_text(f"{text}\nomit {label}\n", encoding="utf-8")
        assert not passes_in_silence(load(file)), label
