"""Edges that carry no current though nothing simpler is wrong with them.

In: a `Circuit`, clusters of dead edges that nothing explains, and broken inputs. Out: `Dead` pieces.
Refuses to know shorts and open ends.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from typing import Literal

from shuntwise.checks.faults.shorts import outermost
from shuntwise.graph.circuit import Circuit, Edge
from shuntwise.graph.currents import DeadPiece

DeadKind = Literal["two-islands", "no-way-back", "dead-twig"]


@dataclass(frozen=True)
class Dead:
    """`edges` carry no current; `owners` are whose they are.

    `contact` is the net at which they hang on the rest, "" for an island.
    """

    kind: DeadKind
    edges: tuple[Edge, ...]
    owners: tuple[str, ...]
    contact: str

    @property
    def drivers(self) -> tuple[str, ...]:
        return tuple(edge.owner for edge in self.edges if edge.kind == "driver")


def find_dead(circuit: Circuit, clusters: Sequence[DeadPiece], broken: Collection[str]) -> tuple[Dead, ...]:
    """What to say of clusters that no open end, short or doubt explains.

    `broken` are inputs of which a pad is unwired or that are shorted: what hangs on them is not news, nor is
    an island beside them.
    """
    pads = {circuit.pad(name, sign) for name in broken for sign in "+-"}
    # A leg on posts that no link joins to an input is a matter of use, and of another check.
    posts = {circuit.pad(pair.name, sign) for pair in circuit.design.terminals if not pair.fed for sign in "+-"}
    found = []
    for cluster in clusters:
        if cluster.nets & posts or cluster.contacts & pads or (pads and not cluster.contacts):
            continue
        kind: DeadKind = "dead-twig"
        if not cluster.contacts:
            kind = "two-islands"
        elif any(edge.kind == "driver" for edge in cluster.edges):
            kind = "no-way-back"
        found.append(Dead(kind, cluster.edges, _owners(circuit, cluster), min(cluster.contacts, default="")))
    return tuple(found)


def _owners(circuit: Circuit, cluster: DeadPiece) -> tuple[str, ...]:
    """What is dead, used networks by their name; the parts inside, if it is all inside of one."""
    owners = tuple(dict.fromkeys(edge.owner for edge in cluster.edges))
    whole = tuple(dict.fromkeys(outermost(circuit, owner) or owner for owner in owners))
    return owners if len(whole) == 1 else whole
