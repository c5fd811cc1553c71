"""A Zobel that is not at its driver.

What it finds: a resistor and capacitor in a row across the input while a driver sits behind a coil, and such a row
that has a coil of its leg between itself and the driver.

Why it matters: the row evens out the voice coil for the filter. On the wrong side of the coil the filter does not
see it, and it only takes power.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.6 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    resistor R1 6.8 ohm
    capacitor C1 15 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      input+ -- R1 -- C1 -- return
                ^^
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.6 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    resistor R1 6.8 ohm
    capacitor C1 15 uF
    capacitor C2 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a row across the input that is meant to load the amplifier at the top.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.rule import Diagnostic, Evidence, Label, Rule, Severity


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    structure = evidence.structure
    if structure.dc_paths:
        return
    seen: set[str] = set()
    for ladder in structure.of_role("woofer", "mid", "tweeter"):
        for shunt in ladder.shunts:
            coils = [step.block.label for step in shunt.behind if step.block.letter == "L"]
            if set(shunt.block.letters) != {"C", "R"} or shunt.block.form != "chain" or not coils:
                continue
            label = shunt.block.label
            if label not in seen:
                seen.add(label)
                rest = " and ".join(f"`{part}`" for part in shunt.block.labels)
                yield RULE.finding(
                    evidence.place(label),
                    f"{rest} are on the amplifier's side of `{coils[0]}`",
                    label="not across the driver",
                    why="the filter does not see them there, and they only take power",
                    help=f"put them straight across `{ladder.driver.name}`",
                    places=(Label(evidence.place(coils[0]), "between them and the driver"),),
                    subjects=(*shunt.block.labels, ladder.driver.name),
                )


RULE = Rule("zobel-misplaced", Severity.WARNING, "structure", check)
