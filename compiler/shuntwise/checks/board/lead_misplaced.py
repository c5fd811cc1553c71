"""A lead in the wrong hole.

What it finds: a lead of a part, or the end of a wire, that lies on a piece of metal where it does not belong, so that
a net is not whole or two are joined. It names the shortest repair.

Why it matters: a lead one hole further is the commonest slip on a board, and on copper that was made for something
else it cannot be seen.

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
      place L1 at 48:70 mm { leads into upper 1 and upper 2 }
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

When to ignore it: never: move the lead, or say in the layout what is done.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.checks.mending import told

    yield from told(RULE, evidence, "misplaced", WHY)


WHY = "on the board it is another circuit than in the text"

RULE = Rule("lead-misplaced", Severity.ERROR, "layout", check)
