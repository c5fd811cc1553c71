"""The designs with layouts: the examples, and some that nobody builds, which are for judging only.

The strangers' were written from the reference of the language alone, and nothing was ever tuned on them.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.loading import read_design
from shuntwise.model.boards import Layout
from shuntwise.model.design import Design
from shuntwise.model.include import Collected
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check

ROOT = Path(__file__).parents[2]
EXAMPLES = [path for path in sorted((ROOT / "examples").glob("*.shunt")) if "\nlayout " in path.read_text("utf-8")]
JUDGES = sorted((Path(__file__).parent / "judges").glob("*.shunt"))
STRANGERS = sorted((Path(__file__).parent / "strangers").glob("*.shunt"))
GROUPS = {"examples": EXAMPLES, "judges": JUDGES, "strangers": STRANGERS}


@dataclass(frozen=True)
class LaidOut:
    """A design, or one of its variants, with its circuit and its layouts."""

    name: str
    design: Design
    circuit: Circuit
    layouts: tuple[Layout, ...]


@cache
def _collected(path: Path) -> Collected:
    """Read once for all forms, since layouts of two readings are never equal: their places are in two sources."""
    return read_design(str(path))[0]


@cache
def laid_out(path: Path, variant: str | None = None) -> LaidOut:
    design, _ = resolve(_collected(path), variant=variant)
    circuit, _ = connect(design)
    return LaidOut(path.stem + (f" {variant}" if variant else ""), design, circuit, design.layouts)


def forms(path: Path) -> list[LaidOut]:
    """The design and each of its variants and positions."""
    base = laid_out(path)
    return [base, *(laid_out(path, variant) for variant in to_check(base.design))]


def wirings(path: Path) -> list[LaidOut]:
    """Those forms that differ in which parts are fitted, or in how they are joined."""
    found: dict[object, LaidOut] = {}
    for laid in forms(path):
        joined = frozenset(laid.circuit.net_of.items()), frozenset(part.label for part in laid.circuit.fitted_parts)
        found.setdefault(joined, laid)
    return list(found.values())
