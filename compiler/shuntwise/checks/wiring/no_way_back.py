"""A driver that is fed, but from which nothing leads back.

What it finds: a driver whose pads are both wired, and through which no current can flow all the same: every
way back to the other pad of the input leads through itself. A series-type network, in which one driver leads
back through the other, is healthy, and so is a node between two capacitors.

Why it matters: the driver stays silent. Mostly its return wire ends on a node that goes nowhere.

Bad:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C2 -- bar
      woofer- -- bar
                 ^^^
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C2 -- bar
      woofer- -- bar
      bar -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.faults.dead import Dead
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.graph.circuit import point_of
from shuntwise.graph.topology import distances, pair_links
from shuntwise.model.kinds import KINDS
from shuntwise.source import Span


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for dead in evidence.faults.dead:
        if dead.kind != "no-way-back":
            continue
        driver = dead.drivers[0]
        pad = _far_pad(evidence, dead, driver)
        at = _far_node(evidence, dead, pad) or pad
        others = [owner for owner in dead.owners if owner != driver]
        omitted = _omitted(evidence, dead)
        known = {dead.contact} & evidence.circuit.spans.keys()
        also = ", nor through " + ", ".join(f"`{owner}`" for owner in others[:6]) if others else ""
        yield RULE.finding(
            _best_place(evidence, at),
            f"no current can flow through `{driver}`{also}",
            label=f"nothing leads on from `{at}`, but back through `{driver}`",
            why="current must leave the input at one pad and come back to the other",
            help=_remedy(evidence, dead, at, omitted),
            places=[
                *(Label(evidence.place(dead.contact), "hangs on the rest here only") for _ in known),
                *(Label(evidence.place(label), "left out") for label in omitted),
            ],
            subjects=(driver, *others, *omitted),
        )


def _omitted(evidence: Evidence, dead: Dead) -> list[str]:
    """Parts left out that would lead to the dead piece."""
    circuit = evidence.circuit
    inside = {net for edge in dead.edges for net in (edge.plus, edge.minus)} - {dead.contact}
    return [
        part.label
        for part in circuit.design.parts.values()
        if not part.fitted
        and any(circuit.net_of[point_of(part.label, end)] in inside for end in KINDS[part.kind].terminals)
    ]


def _remedy(evidence: Evidence, dead: Dead, at: str, omitted: list[str]) -> str:
    if omitted:
        return f"`{omitted[0]}` is left out: leave out what hangs behind it as well, or fit it"
    feeds = evidence.design.feeds
    towards = f"{feeds[0].name}+" if _hangs_on_return(evidence, dead) else "return"
    return f"wire `{at}` on" + (f", such as to `{towards}`" if len(feeds) == 1 else "")


def _hangs_on_return(evidence: Evidence, dead: Dead) -> bool:
    return dead.contact in {evidence.circuit.pad(feed.name, "-") for feed in evidence.design.feeds}


def _far_node(evidence: Evidence, dead: Dead, pad: str) -> str:
    """The author's node farthest ahead of the driver, where its way to the input's plus is missing; else ""."""
    if not _hangs_on_return(evidence, dead):
        return ""
    circuit = evidence.circuit
    near = pair_links((edge.plus, edge.minus) for edge in dead.edges if edge.kind == "part")
    distance = distances(near, circuit.net_of[pad], (dead.contact,))
    nodes = [(steps, node) for net, steps in distance.items() if steps for node in circuit.nets[net].nodes]
    return max(nodes, default=(0, ""))[1]


def _far_pad(evidence: Evidence, dead: Dead, driver: str) -> str:
    """The pad of the driver that is farther from where the dead piece hangs on the rest."""
    circuit = evidence.circuit
    for sign, other in ("+-", "-+"):
        if circuit.pad(driver, sign) == dead.contact:
            return driver + other
    near = pair_links((edge.plus, edge.minus) for edge in dead.edges if edge.owner != driver)
    from_contact = distances(near, dead.contact)
    nearer = min("+-", key=lambda sign: from_contact.get(circuit.pad(driver, sign), len(dead.edges) + 1))
    return driver + {"+": "-", "-": "+"}[nearer]


def _best_place(evidence: Evidence, pad: str) -> Span:
    """A node where it is first named; of a pad the node to which it is wired, where that stands beside it."""
    if pad in evidence.design.node_spans:
        return evidence.design.node_spans[pad][0]
    net = evidence.circuit.nets[evidence.circuit.net_of[pad]]
    for wire in evidence.circuit.joints.get(pad, ()):
        other = wire.second if wire.first == pad else wire.first
        for span in evidence.design.node_spans.get(other, ()) if other in net.nodes else ():
            if span.source is wire.span.source and wire.span.start <= span.start < wire.span.end:
                return span
    return evidence.place(pad)


RULE = Rule("no-way-back", Severity.ERROR, "circuit", check)
