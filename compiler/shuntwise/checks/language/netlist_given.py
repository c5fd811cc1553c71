"""A SPICE netlist where a design is wanted.

What it finds: a text with a simulator's lines (`.end`, `.ac` and their like) and lines of elements, in which no
statement of the language stands. Nothing else is said of it.

Why it matters: a netlist is made from a design, and holds no ratings, legs or expectations to check.

Bad:
    * two-way, made by hand
    V1 in 0 AC 1
    L1 in a 1m
    R1 a 0 8
    .ac dec 10 20 20k
    ^^^^^^^^^^^^^^^^^
    .end

Good:
    driver woofer 8 ohm
    coil L1 1 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("netlist-given", Severity.ERROR, "text")
