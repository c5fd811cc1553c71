"""Braces or brackets nested beyond all need.

What it finds: more levels of `{ }` or `( )` than any design needs: 20 of braces, 100 of brackets. The
example is tried with a bound of one level of braces, to be short.

Why it matters: no circuit needs it, and no file may exhaust the compiler.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    variant reversed "the woofer turned round" {
      leg woofer {
                 ^
        input+ -- L1 -- woofer-
        woofer+ -- return
      }
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    variant reversed "the woofer turned round" {
      leg woofer {
        input+ -- L1 -- woofer-
        woofer+ -- return
      }
    }

When to ignore it: never.
"""

from __future__ import annotations

from shuntwise.checks.rule import Rule, Severity

RULE = Rule("nested-too-deep", Severity.ERROR, "text")
