"""Two legs that meet behind the input.

What it finds: drivers of different legs that are joined by parts or wires anywhere but at an input's or post's
pads. A leg that names several drivers (`leg woofer and tweeter`) declares that these may share parts.

Why it matters: legs fed side by side meet at the input and the return alone. A joint in between feeds one driver
through the other's filter. Mostly a lead has gone to a node of the neighbour's.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      woofer+ -- C1 -- tweeter+
      ^^^^^^^
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never; where drivers share parts, a leg says so.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.source import Span
from shuntwise.structure.reach import tied_legs


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for drivers, nets in tied_legs(evidence.circuit):
        shown = quoted(drivers)
        yield RULE.finding(
            _meeting(evidence, nets) or evidence.declared(drivers[-1]),
            f"the legs of {shown} meet behind the input",
            label="here",
            why="one driver is then fed through the other's filter",
            help=f"move the lead; if they are to share parts, say so: `leg {' and '.join(drivers)} {{ ... }}`",
            subjects=drivers,
        )


def _meeting(evidence: Evidence, nets: tuple[str, ...]) -> Span | None:
    """Where the text names a pad or node of one driver in a leg of another one, else a node of two legs."""
    design, circuit = evidence.design, evidence.circuit
    points = sorted(point for net in nets for point in circuit.nets[net].points)
    for point in points:
        owner = point.rstrip("+-")
        for leg in sorted(circuit.leg_of.get(point, ())):
            if owner in design.drivers and owner not in design.legs[leg].drivers:
                inside = [span for span in circuit.spans.get(point, ()) if _within(span, design.legs[leg].span)]
                if inside:
                    return inside[0]
    for point in points:
        if len(circuit.leg_of.get(point, ())) > 1:
            return circuit.spans[point][-1]
    return None


def _within(inner: Span, outer: Span) -> bool:
    return inner.source is outer.source and outer.start <= inner.start and inner.end <= outer.end


RULE = Rule("legs-tied", Severity.ERROR, "structure", check)
