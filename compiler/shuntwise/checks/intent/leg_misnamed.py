"""A leg that goes to a driver that it is not named for.

What it finds: a walk in a leg that touches a pad of a driver for which the leg is not named. Where no walk comes to the
driver that the leg is named for, it is the name that is told.

Why it matters: a leg is often copied from the one above, and its name, or one of the pads in it, is what is forgotten.
Whoever reads the sheets by legs then solders one driver's parts to another.

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
from shuntwise.checks.rule import Confidence, Diagnostic, Label, Rule, Severity, Span
from shuntwise.diagnostics.wording import quoted
from shuntwise.model.design import NodeStop, all_stops
from shuntwise.model.findings import replace


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    design = evidence.design
    owner = {f"{name}{sign}": name for name in design.drivers for sign in "+-"}
    for number, leg in enumerate(design.legs):
        stops = [stop for walk in design.walks if walk.leg == number for stop in all_stops(walk.stops)]
        pads = [stop for stop in stops if isinstance(stop, NodeStop) and stop.node in owner]
        wired = tuple(dict.fromkeys(owner[stop.node] for stop in pads))
        strange = [stop for stop in pads if owner[stop.node] not in leg.drivers]
        if not strange or not leg.drivers or not {*leg.drivers} <= design.drivers.keys():
            continue
        unwired = [(name, span) for name, span in zip(leg.drivers, leg.name_spans, strict=True) if name not in wired]
        others = tuple(dict.fromkeys(owner[stop.node] for stop in strange))
        if unwired:
            yield _misnamed(*unwired[0], wired, others)
        else:
            yield _strays(leg.drivers, strange, others)


def _misnamed(name: str, span: Span, wired: tuple[str, ...], others: tuple[str, ...]) -> Diagnostic:
    wires = quoted(others)
    return RULE.finding(
        span,
        f"the leg of `{name}` wires {wires}, and not `{name}`",
        label="named for another driver than it wires",
        why="sheets go by legs, and a driver's filter would be looked for in the wrong one",
        help=f"name the leg for what it wires: `leg {' and '.join(wired)}`; if its name is right, "
        "a walk in it goes to the wrong driver",
        fixes=(replace(span, others[0], Confidence.NEEDS_REVIEW),) if len(others) == 1 else (),
        subjects=(name, *others),
    )


def _strays(drivers: tuple[str, ...], strange: list[NodeStop], others: tuple[str, ...]) -> Diagnostic:
    named = quoted(drivers)
    return RULE.finding(
        strange[0].span,
        f"the leg of {named} goes to `{strange[0].node}`",
        label="a pad of another driver",
        why="sheets go by legs: what stands in this one is looked for at its own driver",
        help=f"if the pad is right, name the leg for both: `leg {' and '.join((*drivers, *others))}`",
        places=[Label(stop.span, "and here") for stop in strange[1:3]],
        subjects=(*others, *drivers),
    )


RULE = Rule("leg-misnamed", Severity.WARNING, "settled", check)
