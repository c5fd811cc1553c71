"""Designs for the tests of documents: the examples and small texts, as far as the network, and with all checks."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

from shuntwise.api import check
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.loading import read_design
from shuntwise.model.design import Design
from shuntwise.model.include import Collected, Loaded
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check
from shuntwise.network.lower import Unlowered, lower
from shuntwise.network.network import Network
from shuntwise.pipeline import Compilation, read
from shuntwise.source import Source

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "examples").glob("*.shunt"))


@dataclass(frozen=True)
class Compiled:
    design: Design
    circuit: Circuit
    lowered: Network | Unlowered


def load(path: str, source: Source, library: bool) -> Loaded:
    text = (ROOT / "compiler/shuntwise/library" / f"{path}.shunt").read_text(encoding="utf-8")
    return Loaded(Source(f"library/{path}", text), f"library:{path}")


def compiled(text: str) -> tuple[Compiled, ...]:
    """The design and its variants."""
    return _lowered(read(Source("test.shunt", text), load)[0])


def lowered(path: Path) -> tuple[Compiled, ...]:
    """The design of a file and its variants, without any checks, which take most of the time."""
    return _lowered(read_design(str(path))[0])


def _lowered(collected: Collected) -> tuple[Compiled, ...]:
    results = []
    for variant in (None, *to_check(resolve(collected)[0])):
        design, _ = resolve(collected, variant=variant)
        circuit, _ = connect(design)
        results.append(Compiled(design, circuit, lower(circuit)))
    return tuple(results)


def one(text: str) -> Compiled:
    return compiled(text)[0]


def example(start: str) -> Compiled:
    (path,) = [path for path in EXAMPLES if path.name.startswith(start)]
    return one(path.read_text(encoding="utf-8"))


TWO_WAY = """\
driver woofer 8 ohm
driver tweeter 8 ohm
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
coil L1 0.5 mH
capacitor C1 5 uF
"""


@cache
def checked(path: Path) -> tuple[Compilation, ...]:
    """A design and its variants with all findings, worked out once for all tests."""
    return tuple(check(str(path)))
