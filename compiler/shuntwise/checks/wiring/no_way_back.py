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

from collections import deque
from collections.abc import Iterator

from shuntwise.checks.faults.dead import Dead
from shuntwise.checks.rule import Diagnostic, Evidence, Label, Rule, Severity
from shuntwise.source import Span


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for dead in evidence.faults.dead:
        if dead.kind != "no-way-back":
            continue
        driver = dead.drivers[0]
        pad = _far_pad(evidence, dead, driver)
        others = [owner for owner in dead.owners if owner != driver]
        also = ", nor through " + ", ".join(f"`{owner}`" for owner in others[:6]) if others else ""
        yield RULE.finding(
            _best_place(evidence, pad),
            f"no current can flow through `{driver}`{also}",
            label=f"nothing leads on from `{pad}`, but back through `{driver}`",
            why="current must leave the input at one pad and come back to the other",
            help=f"wire `{pad}` on" + (", such as to `return`" if len(evidence.design.feeds) == 1 else ""),
            places=(Label(evidence.place(dead.contact), "hangs on the rest here only"),)
            if dead.contact in evidence.circuit.spans
            else (),
            subjects=(driver, *others),
        )


def _far_pad(evidence: Evidence, dead: Dead, driver: str) -> str:
    """The pad of the driver that is farther from where the dead piece hangs on the rest."""
    circuit = evidence.circuit
    beside: dict[str, list[str]] = {}
    for edge in dead.edges:
        if edge.owner != driver:
            beside.setdefault(edge.plus, []).append(edge.minus)
            beside.setdefault(edge.minus, []).append(edge.plus)
    seen, waiting = {dead.contact}, deque([dead.contact])
    while waiting:
        for net in beside.get(waiting.popleft(), ()):
            if net not in seen:
                seen.add(net)
                waiting.append(net)
                if net == circuit.pad(driver, "+"):
                    return f"{driver}-"
                if net == circuit.pad(driver, "-"):
                    return f"{driver}+"
    return f"{driver}-" if circuit.pad(driver, "+") == dead.contact else f"{driver}+"


def _best_place(evidence: Evidence, pad: str) -> Span:
    """The node to which the pad is wired, where it is written beside it, else the pad."""
    net = evidence.circuit.nets[evidence.circuit.net_of[pad]]
    for wire in evidence.circuit.joints.get(pad, ()):
        other = wire.second if wire.first == pad else wire.first
        for span in evidence.design.node_spans.get(other, ()) if other in net.nodes else ():
            if span.source is wire.span.source and wire.span.start <= span.start < wire.span.end:
                return span
    return evidence.place(pad)


RULE = Rule("no-way-back", Severity.ERROR, "circuit", check)
