"""A leg named for one driver that wires another.

What it finds: a leg of which no walk comes to a driver that it is named for, while its walks come to one that it is not
named for. A leg that ends at a node, from which another leg goes on, is left alone.

Why it matters: a leg is often copied from the one above, and its name is the line that is forgotten. Whoever reads the
sheets by legs then solders one driver's filter to another.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg woofer {
        ^^^^^^
      input+ -- C1 -- tweeter+
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

When to ignore it: better name the leg for all drivers that it wires: `leg woofer and tweeter`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Confidence, Diagnostic, Rule, Severity
from shuntwise.model.design import NodeStop, all_stops
from shuntwise.model.findings import replace


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    design = evidence.design
    for number, leg in enumerate(design.legs):
        stops = [stop for walk in design.walks if walk.leg == number for stop in all_stops(walk.stops)]
        touched = {stop.node for stop in stops if isinstance(stop, NodeStop)}
        wired = [name for name in design.drivers if not touched.isdisjoint((f"{name}+", f"{name}-"))]
        others = [name for name in wired if name not in leg.drivers]
        for name, span in zip(leg.drivers, leg.name_spans, strict=True):
            if name in design.drivers and name not in wired and others:
                wires = " and ".join(f"`{other}`" for other in others)
                yield RULE.finding(
                    span,
                    f"the leg of `{name}` wires {wires}, and not `{name}`",
                    label="named for another driver than it wires",
                    why="sheets go by legs, and a driver's filter would be looked for in the wrong one",
                    help=f"name the leg for what it wires: `leg {' and '.join(wired)}`; if its name is right, "
                    "a walk in it goes to the wrong driver",
                    fixes=(replace(span, others[0], Confidence.NEEDS_REVIEW),) if len(others) == 1 else (),
                    subjects=(name, *others),
                )


RULE = Rule("leg-misnamed", Severity.WARNING, "circuit", check)
