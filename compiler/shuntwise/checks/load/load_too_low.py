"""A load that is too low for the amplifier.

What it finds: an input whose impedance, from 20 Hz to 20 kHz and with cold copper, falls below the least load that the
amplifier may drive (an error). Where the amplifier states what the box is `marked` with, a least impedance under 80 %
of that, in the rated frequency range, is a warning: IEC 60268-5, clause 16.1, second-hand. The range is taken to begin
at the lowest resonance of the drivers in their box, if each states its `fs`, else at 20 Hz. `limit load-too-low 75 %`
sets another share.

Why it matters: the amplifier shuts down, distorts or burns. And who reads 8 ohm on the box links a second one to it.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
                                      ^^^^^
    driver woofer 4 ohm { re 3.2 ohm, le 0.2 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.33 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 60 W into 8 ohm { least 2.7 ohm }
    driver woofer 4 ohm { re 3.2 ohm, le 0.2 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.33 mH { dcr 0.15 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: the error never; the warning where the label states the least impedance beside the nominal one.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import hertz, ohms
from shuntwise.checks.rule import Bound, Diagnostic, NotChecked, Rule, Severity
from shuntwise.diagnostics.wording import percent
from shuntwise.units import PLAIN


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    amplifier = evidence.amplifier
    assert amplifier is not None
    allowed, marked = amplifier.quantities.get("least"), amplifier.quantities.get("marked")
    if allowed is None:
        yield RULE.not_checked("the `least` load that the amplifier may drive")
    share = RULE.limit(evidence)
    for feed in evidence.design.feeds:
        least = evidence.stress.least_load(feed.name)
        if allowed is not None and least.ohm < allowed.value:
            yield RULE.finding(
                allowed.span,
                f"the load at `{feed.name}` falls to {ohms(least.ohm)} at {hertz(least.freq_hz)}",
                label="the amplifier may drive no less than this",
                why="below its least load an amplifier shuts down, distorts or burns",
                help="other values or a Zobel in the leg that takes most there; or an amplifier for a lower load",
                subjects=(feed.name,),
            )
            continue
        least = evidence.stress.least_load(feed.name, evidence.stress.rated_from_hz)
        if marked is not None and least.ohm < share * marked.value:
            yield RULE.finding(
                marked.span,
                f"the impedance at `{feed.name}` falls to {ohms(least.ohm)} at {hertz(least.freq_hz)}",
                severity=Severity.WARNING,
                label=f"{percent(share)} of this is {ohms(share * marked.value)}",
                why="IEC 60268-5, clause 16.1 (second-hand): in the rated frequency range the impedance must not fall "
                "below 80 % of the rated one",
                help="mark the box with a lower impedance, or raise the dip with other values or a Zobel",
                subjects=(feed.name,),
            )


RULE = Rule("load-too-low", Severity.ERROR, "stress", check, Bound(0.8, PLAIN))
