"""The two wires to a driver or an input exchanged on the board.

What it finds: a driver, input or pair of posts whose plus is led out where its minus belongs, and the other way
round. A driver that the circuit turns round on purpose is wired so in its leg; on the board its plus still goes to
its plus.

Why it matters: a driver of the wrong polarity leaves a hole in the response at the crossover, and no meter on the
bench shows it.

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
      place L1 at 48:70 mm { leads into upper 1 and upper 3 }
      place C1 at 74:60 mm { leads into upper 3 and lower 3 }
      lead out upper 1 to input+
      lead out lower 3 to input-
      lead out lower 3 to woofer+
      ^^^^^^^^^^^^^^^^^^^^^^^^^^^
      lead out upper 3 to woofer-
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

When to ignore it: never: where the driver shall be turned round, write it in its leg.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.checks.mending import told

    for finding in told(RULE, evidence, "reversed", "so wired it is turned round, and no meter shows that"):
        (owner,) = finding.subjects
        ladder = evidence.structure.ladders.get(owner) if evidence.traceable else None
        if ladder is not None and ladder.turned:
            on_purpose = f"the circuit turns `{owner}` round already; on the board its plus is led to its plus"
            yield replace(finding, help=f"{finding.help}: {on_purpose}")
        else:
            yield finding


RULE = Rule("leads-reversed", Severity.ERROR, "layout", check)
