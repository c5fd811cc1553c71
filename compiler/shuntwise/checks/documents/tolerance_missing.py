"""A part without a tolerance.

What it finds: once the design says which amplifier drives it, a coil, capacitor or resistor that does not say how far
it may stray from its value.

Why it matters: the windows of the check sheet, the spread of a batch and the match of a pair all come from the
tolerances. A part without one counts as exact.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 250 V, film }
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
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where each part is measured before it is fitted.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import named, rated_at
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.model.kinds import KINDS, TOLERANCE


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    if evidence.amplifier is None:
        yield RULE.not_checked("an `amplifier` with its power and load")
        return
    for part in evidence.circuit.fitted_parts:
        example = KINDS[part.kind].asked.get(TOLERANCE.name)
        if example is None or TOLERANCE.name in part.quantities or part.refused:
            continue
        yield RULE.finding(
            rated_at(evidence, part),
            f"`{part.label}` does not say its tolerance",
            label="counts as exact",
            why="the windows of the check sheet and the spread of a batch come from the tolerances",
            help=f"write it among its attributes, such as `{{ {example} }}`",
            subjects=named(evidence, part.label),
            missing=("tolerance",),
        )


RULE = Rule("tolerance-missing", Severity.ADVICE, "design", check)
