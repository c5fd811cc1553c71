"""Two pads of an input, or of a pair of posts, that are joined.

What it finds: a chain of bare joints, links, or resistors and lamps of almost no resistance from plus to
minus of an input or a pair of posts. With two inputs, a plus on the minus of the other one counts as well, as
amplifiers mostly share their return. The finding marks the joint that most likely should go and shows the
whole chain.

Why it matters: the amplifier is shorted. With luck it shuts down.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
      input+ -- return
      ^^^^^^^^^^^^^^^^
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator

from shuntwise import units as u
from shuntwise.checks.faults.wording import chain_places, remedy, replaced_parts, replaced_places
from shuntwise.checks.rule import Bound, Diagnostic, Evidence, Label, Rule, Severity
from shuntwise.graph.circuit import Edge


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for short in evidence.faults.shorts:
        if short.kind != "input-shorted" or short.blamed is None:
            continue
        missing = replaced_parts(evidence, short)
        yield RULE.finding(
            short.blamed.span,
            f"`{short.between[0]}` and `{short.between[1]}` are one net",
            label="joins the two" if len(short.chain) == 1 else "part of the chain that joins the two",
            why="the amplifier is shorted",
            help=remedy(missing, "take out the joint that does not belong"),
            places=[*chain_places(short), *replaced_places(evidence, missing)],
            subjects=(*short.owners, *missing),
        )
    yield from _bridged_by_parts(evidence)


def _bridged_by_parts(evidence: Evidence) -> Iterator[Diagnostic]:
    """Chains of resistors and lamps, each far below any load, from plus to minus."""
    circuit, least = evidence.circuit, evidence.bound(RULE)
    near: dict[str, list[Edge]] = {}
    for edge in circuit.edges.values():
        part = evidence.design.parts.get(edge.owner)
        if part is None or part.kind not in ("resistor", "lamp") or part.value is None or edge.plus == edge.minus:
            continue
        if part.value.value <= least:
            near.setdefault(edge.plus, []).append(edge)
            near.setdefault(edge.minus, []).append(edge)
    for pair in evidence.design.feeds:
        chain = _chain(near, circuit.pad(pair.name, "+"), circuit.pad(pair.name, "-"))
        if chain:
            yield RULE.finding(
                evidence.place(chain[-1].owner),
                f"next to nothing lies between `{pair.name}+` and `{pair.name}-`",
                label="almost a wire, from plus to minus",
                why="for the amplifier this is a short",
                help="look at the value, or move one end",
                places=[Label(evidence.place(edge.owner), "also in the chain") for edge in chain[:-1]],
                subjects=(pair.name, *(edge.owner for edge in chain)),
            )


def _chain(near: dict[str, list[Edge]], start: str, end: str) -> tuple[Edge, ...]:
    """The shortest chain of edges between two different nets; empty if there is none."""
    came: dict[str, tuple[str, Edge] | None] = {start: None}
    waiting = deque([start])
    while waiting:
        net = waiting.popleft()
        for edge in near.get(net, ()):
            other = edge.minus if edge.plus == net else edge.plus
            if other not in came:
                came[other] = net, edge
                waiting.append(other)
    chain: list[Edge] = []
    step = came.get(end)
    while step is not None:
        net, edge = step
        chain.append(edge)
        step = came[net]
    return tuple(reversed(chain))


RULE = Rule("input-shorted", Severity.ERROR, "circuit", check, Bound(0.1, u.OHM))
