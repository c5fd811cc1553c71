"""An electrolytic capacitor in series with a tweeter.

What it finds: an electrolytic that the tweeter's whole current passes. Advice; a warning where the amplifier gives
more than 500 W, or what `limit electrolytic-series-tweeter` says.

Why it matters: its losses and its ageing shift the tweeter's level and corner, and it is the part that fails most
often in the crossovers that come in for repair (common practice, no source).

Bad:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH
    capacitor C1 6.8 uF { non-polar electrolytic }
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

When to ignore it: where it is meant to be replaced at the next service, or the box is small and cheap.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import ELECTROLYTIC, named, rated_at, watts
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.units import WATT


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    amplifier, limit = evidence.amplifier, RULE.limit(evidence)
    strong = amplifier is not None and amplifier.power is not None and amplifier.power.value > limit
    for ladder in evidence.structure.of_role("tweeter"):
        blocks = [step.block for step in ladder.parts if all(letter != "D" for letter, _ in step.block.ones)]
        for label in dict.fromkeys(label for block in blocks for label in block.labels):
            part = evidence.design.parts[label]
            if part.construction not in ELECTROLYTIC:
                continue
            power = f", at an amplifier of more than {watts(limit)}" if strong else ""
            yield RULE.finding(
                rated_at(evidence, part),
                f"`{label}`, in series with `{ladder.driver.name}`, is an electrolytic{power}",
                severity=Severity.WARNING if strong else Severity.ADVICE,
                label=f"all that `{ladder.driver.name}` gets passes here",
                why="it drifts with age, and the level and corner of the leg drift with it",
                help="fit a film capacitor",
                subjects=named(evidence, label),
            )


RULE = Rule("electrolytic-series-tweeter", Severity.ADVICE, "structure", check, Bound(500.0, WATT))
