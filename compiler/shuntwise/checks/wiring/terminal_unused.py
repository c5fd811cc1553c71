"""A pad of an input or of a pair of posts, or a terminal of a tapped coil, that nothing is wired to.

What it finds: an input or pair of posts with one pad unwired, or with both. An input is not told of when a
driver has no way back, or an end is open, for want of a wire to that pad: the finding is made there. For a
tapped coil with one unwired terminal it is a warning.

Why it matters: current must come back to the amplifier: an input with one wired pad feeds nothing. A tapped
coil without its tap is a dearer plain coil.

Bad:
    input low
    input high
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      ^^^^^
      tweeter- -- low-
    }

or:
    posts through
    ^^^^^^^^^^^^^
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

Good:
    input low
    input high
    driver woofer 8 ohm
    driver tweeter 8 ohm
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }

When to ignore it: a terminal of a tapped coil may stay free when the coil is in the drawer and a plain one is
not.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.kinds import ATTENUATOR, KINDS


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    if all(walk.leg is None for walk in evidence.design.walks):
        return  # nothing is wired yet, and `part-not-wired` says so
    unused: dict[str, list[str]] = {}
    for end in evidence.faults.ends.open:
        if end.kind == "terminal-unused" and end.attachment is not None:
            unused.setdefault(end.attachment.owner, []).append(end.attachment.terminal)
    for owner, terminals in unused.items():
        if owner in evidence.design.parts:
            if evidence.design.parts[owner].kind == ATTENUATOR.word and terminals == ["common"]:
                continue  # `attenuator-miswired` says what comes of it
            kind = KINDS[evidence.design.parts[owner].kind]
            plain = kind.inductive and len(kind.windings) == 1
            yield RULE.finding(
                evidence.place(owner),
                f"nothing is wired to the {terminals[0]} of `{owner}`",
                severity=Severity.WARNING,
                label="a free terminal",
                why="it works as a plain coil" if plain else "part of it carries no current",
                help=f"wire `{owner}.{terminals[0]}`" + (", or declare a plain coil" if plain else ""),
                subjects=(owner,),
            )
        elif len(terminals) == 2:
            yield RULE.finding(
                evidence.declared(owner),
                f"nothing is wired to `{owner}`",
                label="neither of its pads is wired",
                why="no current flows through what is not wired",
                help=f"wire `{owner}+` and `{owner}-`",
                subjects=(owner,),
            )
        else:
            other = owner + ("-" if terminals[0] == "+" else "+")
            yield RULE.finding(
                evidence.place(other),
                f"nothing is wired to `{owner}{terminals[0]}`",
                label=f"`{other}` is wired, its other pad is not",
                why="current that leaves one pad must come back to the other",
                help=f"wire `{owner}{terminals[0]}`" + (", which `return` stands for" if owner == "input" else ""),
                subjects=(owner,),
            )


RULE = Rule("terminal-unused", Severity.ERROR, "circuit", check)
