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

from collections.abc import Iterator

from shuntwise import units as u
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.remedies import chain_places, remedy, replaced_parts, replaced_places
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.graph.circuit import Edge
from shuntwise.graph.topology import links, shortest_path


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
    circuit, least = evidence.circuit, RULE.limit(evidence)
    chains = [edge for edge in circuit.edges.values() if _all_but_wire(evidence, edge, least)]
    near = links((edge.plus, edge.minus, edge) for edge in chains)
    for pair in evidence.design.feeds:
        chain = shortest_path(near, circuit.pad(pair.name, "+"), circuit.pad(pair.name, "-"))
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


def _all_but_wire(evidence: Evidence, edge: Edge, least: float) -> bool:
    part = evidence.design.parts.get(edge.owner)
    if part is None or part.value is None or edge.plus == edge.minus:
        return False
    return part.value.dimension == u.OHM and part.value.value <= least


RULE = Rule("input-shorted", Severity.ERROR, "circuit", check, Bound(0.1, u.OHM))
