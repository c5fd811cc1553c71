"""A place where the text cannot be read.

What it finds: anything that the grammar has no place for: a missing comma, a wrong sign between two
stations of a walk, a statement that breaks off. The finding says what can stand there.

Why it matters: what cannot be read is left out. All else in the file is still checked, but nothing is said
of what the lost words may have supplied.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH { dcr 0.28 ohm 5 % }
                                   ^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

or:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -> L1 -- woofer+
             ^^
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH { dcr 0.28 ohm, 5 % }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never. If the message does not help, write the line anew after an example of the
reference.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("syntax-error", Severity.ERROR, "text")
