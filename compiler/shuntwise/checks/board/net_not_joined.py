"""A net that is in pieces on the board.

What it finds: leads that the circuit joins, on pieces of metal that no copper and no wire joins, such as with a
jumper that was forgotten.

Why it matters: nothing flows where the piece of metal ends: a driver stays silent, or a part does nothing.

Bad:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    capacitor C1 5 uF
    capacitor C2 4.7 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- (C1 | C2) -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      place C2 at 90:60 mm { leads into upper 3 and lower 3 }
      lead out upper 1 to input+
      lead out lower 5 to input-
      ^^^^^^^^^^^^^^^^^^^^^^^^^^
      lead out upper 3 to woofer+
      lead out lower 5 to woofer-
    }

Good:
    include "lath" from library
    driver woofer 8 ohm
    coil L1 1 mH
    capacitor C1 5 uF
    capacitor C2 4.7 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- (C1 | C2) -- return
      woofer- -- return
    }
    layout on lath {
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      place C2 at 90:60 mm { leads into upper 3 and lower 3 }
      lead out upper 1 to input+
      lead out lower 5 to input-
      lead out upper 3 to woofer+
      lead out lower 5 to woofer-
      jumper lower 3 -- lower 5
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.checks.mending import told

    yield from told(RULE, evidence, "open", WHY)


WHY = "what is not joined carries no current"

RULE = Rule("net-not-joined", Severity.ERROR, "layout", check)
