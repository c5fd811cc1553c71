"""Two leads or two parts in each other's place.

What it finds: two leads that would both be right in the hole of the other, or two parts that lie in each other's
place. What is electrically the same (a part with two like leads turned round, like parts exchanged, parts of a row in
another order) is no mistake.

Why it matters: both parts look well placed, and the box plays: only not as it was designed.

Bad:
    include "lath" from library
    driver woofer 8 ohm
    tapped coil L1 1 mH { tap 0.4 mH }
    capacitor C1 10 uF
    leg woofer {
      L1.start -- return
      input+ -- L1.end
      L1.tap -- woofer+
      woofer+ -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { start into lower 3, tap into upper 1, end into upper 3 }
                                                                            ^^^^^^^
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out upper 3 to woofer+
      lead out lower 3 to woofer-
    }

Good:
    include "lath" from library
    driver woofer 8 ohm
    tapped coil L1 1 mH { tap 0.4 mH }
    capacitor C1 10 uF
    leg woofer {
      L1.start -- return
      input+ -- L1.end
      L1.tap -- woofer+
      woofer+ -- C1 -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { start into lower 3, tap into upper 3, end into upper 1 }
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

    yield from told(RULE, evidence, "exchanged", WHY)


WHY = "the parts are all there, but they make another circuit"

RULE = Rule("leads-exchanged", Severity.ERROR, "layout", check)
