"""Two drivers of one band, opposite ways round.

What it finds: two woofers, mids or tweeters of which one is turned round. Nothing is said where an `expect polarity`
line states that they are meant to be opposite.

Why it matters: what one pushes the other pulls: they cancel wherever both play.

Bad:
    driver woofer1 8 ohm { re 6 ohm, le 0.4 mH }
    driver woofer2 8 ohm { re 6 ohm, le 0.4 mH }
    coil L1 0.47 mH
    leg woofer1 and woofer2 {
      input+ -- L1 -- pair
      pair -- woofer1+
      woofer1- -- return
      pair -- woofer2-
              ^^^^^^^^
      woofer2+ -- return
    }

Good:
    driver woofer1 8 ohm { re 6 ohm, le 0.4 mH }
    driver woofer2 8 ohm { re 6 ohm, le 0.4 mH }
    coil L1 0.47 mH
    leg woofer1 and woofer2 {
      input+ -- L1 -- pair
      pair -- woofer1+
      woofer1- -- return
      pair -- woofer2+
      woofer2- -- return
    }

When to ignore it: for a pair of which one is mounted back to front; state it by `expect polarity of woofer1 and
woofer2 opposite`.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.model.kinds import ROLES
from shuntwise.structure.ladders import names


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    stated = evidence.stated_polarities
    for role in ROLES:
        for first, second in pairwise(evidence.structure.of_role(role)):
            if first.turned == second.turned or stated >= {*names(first, second)}:
                continue
            turned, other = (first, second) if first.turned else (second, first)
            yield RULE.finding(
                evidence.place(turned.hot_pad),
                f"`{turned.driver.name}` is turned round, and `{other.driver.name}` of the same band is not",
                label="its minus faces the amplifier",
                why="what one pushes the other pulls: they cancel wherever both play",
                help="turn one of them; if one is mounted back to front, state it: "
                f"`expect polarity of {first.driver.name} and {second.driver.name} opposite`",
                places=(Label(evidence.place(other.hot_pad), "the other one"),),
                subjects=names(turned, other),
            )


RULE = Rule("pair-opposed", Severity.ERROR, "structure", check)
