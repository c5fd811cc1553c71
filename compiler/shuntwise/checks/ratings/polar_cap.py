"""A polarised capacitor.

What it finds: a polar electrolytic anywhere in a crossover. Two that are joined back to back, with nothing else at
the joint, make one non-polar part; they are only advised against.

Why it matters: the signal reverses. One to one and a half volts the wrong way round can ruin a polarised capacitor;
it can burst or catch fire.

Bad:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH
    capacitor C1 6.8 uF { polar electrolytic }
              ^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH
    capacitor C1 6.8 uF { film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: never for a single one. A back-to-back pair has half the capacitance of each, and a wide spread.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import named, rated_at
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.graph.circuit import point_of
from shuntwise.model.design import Part


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    polar = [part for part in evidence.circuit.fitted_parts if part.construction == "polar electrolytic"]
    for part in polar:
        partner = _back_to_back(evidence, part)
        if partner is None:
            yield RULE.finding(
                rated_at(evidence, part),
                f"`{part.label}` is a polarised capacitor",
                label="the signal reverses its voltage",
                why="reverse voltage can make it burst or burn",
                help="fit a film or a non-polar electrolytic capacitor",
                subjects=named(evidence, part.label),
            )
        elif part.label < partner:
            yield RULE.finding(
                rated_at(evidence, part),
                f"`{part.label}` and `{partner}` are polarised capacitors back to back",
                severity=Severity.ADVICE,
                label="a pair in place of a non-polar part",
                why="together they have half the capacitance of each, and a wide spread",
                help="join like poles; a single non-polar or film part is better",
                subjects=named(evidence, part.label, partner),
            )


def _back_to_back(evidence: Evidence, part: Part) -> str | None:
    """The other polarised capacitor that alone shares a net with this one."""
    for terminal in ("start", "end"):
        net = evidence.circuit.nets[evidence.circuit.net_of[point_of(part.label, terminal)]]
        others = [attachment for attachment in net.attachments if attachment.owner != part.label]
        if len(others) == 1 and len(net.attachments) == 2:
            other = evidence.design.parts.get(others[0].owner)
            if other is not None and other.construction == part.construction:
                return other.label
    return None


RULE = Rule("polar-cap", Severity.ERROR, "circuit", check)
