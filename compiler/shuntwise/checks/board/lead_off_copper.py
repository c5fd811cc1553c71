"""A lead in a hole that no copper surrounds.

What it finds: a lead or a wire that ends in a hole without copper and without a tag, where the circuit joins it with
others.

Why it matters: there is nothing to solder it to.

Bad:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area north from 4:25 mm to 76:35 mm
      area south from 4:5 mm to 76:15 mm
      holes north 4 of 1.3 mm from 10:30 mm to 70:30 mm
      holes south 4 of 1.3 mm from 10:10 mm to 70:10 mm
    }
    driver woofer 8 ohm
    coil L1 1 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { leads into north 2 and h1 }
                                                    ^^
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 4 to woofer+
      lead out south 4 to woofer-
      cut from 40:24 mm to 40:36 mm { width 2 mm }
      drill h1 1.3 mm at 60:20 mm
    }

Good:
    board slat {
      outline 80:40 mm
      thickness 2 mm
      corner 80:40 mm cut 5 mm
      area north from 4:25 mm to 76:35 mm
      area south from 4:5 mm to 76:15 mm
      holes north 4 of 1.3 mm from 10:30 mm to 70:30 mm
      holes south 4 of 1.3 mm from 10:10 mm to 70:10 mm
    }
    driver woofer 8 ohm
    coil L1 1 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    layout on slat {
      place L1 at 40:20 mm { leads into north 2 and north 3 }
      lead out north 1 to input+
      lead out south 1 to input-
      lead out north 4 to woofer+
      lead out south 4 to woofer-
      cut from 40:24 mm to 40:36 mm { width 2 mm }
    }

When to ignore it: never; two leads that are twisted together off the copper lie in one hole, which is no mistake.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    from shuntwise.checks.mending import told

    yield from told(RULE, evidence, "off copper", WHY)


WHY = "a lead holds and conducts where it is soldered to copper"

RULE = Rule("lead-off-copper", Severity.ERROR, "layout", check)
