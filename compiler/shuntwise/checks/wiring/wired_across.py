"""A wire or link that bridges a part which should work.

What it finds: a bare joint, or a fitted link, between the two ends of a part, or of several in a row. If no
wire but the part's own leads join its ends, the part is to blame: that is `does-nothing`. A link across resistors only
is a way to choose a level, fitted or left out, and is left alone.

Why it matters: all current takes the wire, and the part might as well not be there. A bridged coil gives the
woofer everything, a bridged capacitor gives the tweeter the bass that kills it.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      input+ -- woofer+
      ^^^^^^^^^^^^^^^^^
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: never; to bridge a part in one variant only, `omit` it there and declare a `link`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.remedies import chain_places, remedy, replaced_parts, replaced_places
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    seen = set()
    for short in evidence.faults.shorts:
        wire = short.blamed
        if short.kind != "wired-across" or wire is None or wire.span in seen:
            continue
        seen.add(wire.span)
        names = ", ".join(f"`{owner}`" for owner in short.owners)
        what = f"the link `{wire.link}`" if wire.link else "this wire"
        missing = replaced_parts(evidence, short)
        usual = "take the link out with `omit`" if wire.link else "remove the wire, or wire it to where it belongs"
        yield RULE.finding(
            wire.span,
            f"{what} bridges {names}",
            label="joins what the part should keep apart" if len(short.owners) == 1 else "leads past the parts",
            why="all current takes the wire, and the part does nothing",
            help=remedy(missing, usual),
            places=[
                *(Label(evidence.place(owner), "bridged") for owner in short.owners),
                *chain_places(short),
                *replaced_places(evidence, missing),
            ],
            subjects=(*short.owners, *([wire.link] if wire.link else []), *missing),
        )


RULE = Rule("wired-across", Severity.ERROR, "circuit", check)
