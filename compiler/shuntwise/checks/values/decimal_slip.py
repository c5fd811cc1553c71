"""A value that is off by a power of ten.

What it finds: a value outside the window in which crossover parts lie (a capacitor in the path to a driver 1 to 100 uF,
any other 0.1 to 470 uF, a coil 0.05 to 15 mH, a resistor 0.3 to 100 ohm: common practice, no source), unless it
speaks of the same corner as the rest of its crossover, as a subwoofer's coil does, or bypasses a capacitor ten times
as large; and a part of a filter that speaks of a corner further from what the other parts of its crossover speak of
than the bound (a factor), where ten times more or less brings it close. Ahead of a tapped coil a driver counts with
the impedance that its turns make of it.

Why it matters: 0.56 for 5.6 is one dot, and the board shows nothing of it.

Bad:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    coil L2 8.2 mH
            ^^^^^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

Good:
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.82 mH
    capacitor C1 6.8 uF
    capacitor C2 6.8 uF
    coil L2 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- C1 -- woofer-
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter-
      tweeter- -- L2 -- tweeter+
      tweeter+ -- return
    }

When to ignore it: for an unusual value that is meant.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Bound, Confidence, Diagnostic, Rule, Severity
from shuntwise.model.design import Part
from shuntwise.model.findings import replace
from shuntwise.structure.slips import FAR_OFF, Slip


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for label, slip in evidence.slips.items():
        yield _finding(evidence, evidence.design.parts[label], slip)


def _finding(evidence: Evidence, part: Part, slip: Slip) -> Diagnostic:
    assert part.value is not None
    corrected = units.write(part.value.value * slip.factor, part.value.dimension)
    plain = part.value.span.text == part.value.text
    return RULE.finding(
        part.value.span if part.value.span.source is evidence.design.source else evidence.place(part.label),
        f"the value of `{part.label}` looks off by a power of ten: {part.value.text}",
        label=slip.why,
        why="a dot in the wrong place does not show on the board, only in the sound",
        help=f"look at the part; `{corrected}` would fit",
        fixes=(replace(part.value.span, corrected, Confidence.NEEDS_REVIEW),) if plain else (),
        subjects=(part.label,),
    )


RULE = Rule("decimal-slip", Severity.WARNING, "settled", check, Bound(FAR_OFF, units.PLAIN))
