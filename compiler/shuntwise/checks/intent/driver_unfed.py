"""A driver that the signal of no input can reach.

What it finds: a driver on no closed loop through an input, where no other finding on the wiring says why: such as one
that hangs on a test point, or on a leg of which the open end is accepted.

Why it matters: the driver stays silent, and nothing that depends on it can be judged.

Bad:
    driver tweeter 8 ohm
    driver woofer 8 ohm
    capacitor C1 6.8 uF
    coil L1 0.82 mH
    testpoint hp
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      hp -- C1 -- tweeter+
                  ^^^^^^^^
      tweeter- -- return
    }

Good:
    driver tweeter 8 ohm
    driver woofer 8 ohm
    capacitor C1 6.8 uF
    coil L1 0.82 mH
    resistor R1 2.2 ohm
    testpoint hp
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- R1 -- hp
      hp -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: in a variant for the bench, in which a leg is left out on purpose.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for driver in evidence.drivers():
        if driver.name in evidence.faults.live:
            continue
        yield RULE.finding(
            evidence.place(f"{driver.name}+"),
            f"nothing leads from an input through `{driver.name}` and back",
            label="on no closed loop through an input",
            why="current must leave an input at one pad, pass the driver, and come back to the other",
            help="follow the leg from the input's plus to the driver and on to the return: a joint is missing",
            subjects=(driver.name,),
        )


RULE = Rule("driver-unfed", Severity.ERROR, "faultless", check)
