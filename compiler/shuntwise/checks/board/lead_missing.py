"""A placed part with a lead that goes nowhere.

What it finds: a part that is placed and does not say for each of its leads where it goes.

Why it matters: a lead that is soldered to nothing makes the part do nothing.

Bad:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    capacitor C1 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { start into upper 1 }
            ^^
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

Good:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    capacitor C1 10 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.checks.mending import told

    yield from told(RULE, evidence, "lead missing", WHY)


WHY = "each lead must be soldered somewhere"

RULE = Rule("lead-missing", Severity.ERROR, "layout", check)
