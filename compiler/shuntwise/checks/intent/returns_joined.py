"""Returns joined though an amplifier is bridged.

What it finds: two inputs, each fed by an amplifier of its own, with one return for both, while the amplifier is stated
to be bridged. Returns that a link joins are `link-left-in`.

Why it matters: the minus of a bridged amplifier is an output too. Joined to another's minus it is shorted.

Bad:
    amplifier 200 W into 8 ohm { bridged }
    input low
    input high
    ^^^^^^^^^^
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- low-
      high- -- low-
    }

Good:
    amplifier 200 W into 8 ohm { bridged }
    input low
    input high
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import combinations

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    circuit, amplifier = evidence.circuit, evidence.amplifier
    if amplifier is None or not amplifier.bridged:
        return
    for first, second in combinations([pair.name for pair in evidence.design.feeds], 2):
        if circuit.pad(first, "-") != circuit.pad(second, "-"):
            continue
        if any(wire.link for wire in circuit.wire_path(f"{first}-", f"{second}-")):
            continue
        yield RULE.finding(
            evidence.declared(second),
            f"the inputs `{first}` and `{second}` have one return, and the amplifier is bridged",
            label="its minus is an output too",
            why="the minus of a bridged amplifier carries signal; joined to another's it is shorted",
            help="keep the two returns apart, or do not bridge",
            subjects=(first, second),
        )


RULE = Rule("returns-joined", Severity.ERROR, "circuit", check)
