"""A resistor that gets too hot.

What it finds: a resistor, or an attenuator at either end of its range or where it stands, whose average heat, with the
programme at the stated amplifier's limit, is above its rating (an error), or leaves less than the usual margin of 2 (a
warning). `limit resistor-hot 3` asks for more: a closed box wants a margin of 3. Unless the amplifier says otherwise,
the programme is that of IEC 60268-1 (second-hand) with its peaks clipped to twice its r.m.s. value, which gives half
the rated power without a pause. The finding tells the warmest air in which the resistor bears its heat: ratings hold
up to 70 C and fall to nothing at a temperature that its construction sets, here 275 C for wirewound, also in a ceramic
case (some stand 350 C), 235 C for metal oxide, 155 C for metal film, carbon film and where none is stated (from
memory; the part's own data come first).

Why it matters: a resistor at its full rating can exceed 200 C. It chars the board, melts the ties beside it, and its
joints let go.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.56 mH { dcr 0.2 ohm, 5 %, air core }
    resistor R1 6.8 ohm { 5 %, 7 W, wirewound }
                               ^^^
    capacitor C1 22 uF { 10 %, 160 V, film }
    capacitor C2 5.6 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.56 mH { dcr 0.2 ohm, 5 %, air core }
    resistor R1 6.8 ohm { 5 %, 20 W, wirewound }
    capacitor C1 22 uF { 10 %, 160 V, film }
    capacitor C2 5.6 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer+ -- R1 -- C1 -- return
      woofer- -- return
    }
    leg tweeter {
      input+ -- C2 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the box will never play at its amplifier's limit; better say so at the amplifier, by
`crest 4` for music that is never clipped.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import driven_by, named, next_rating, rated_at, watts
from shuntwise.checks.rule import Bound, Diagnostic, Rule, Severity
from shuntwise.units import PLAIN

RATED_TO_C = 70.0
"""The ambient temperature up to which a rating holds: IEC 60115-1, second-hand."""

NO_POWER_C = {"wirewound": 275.0, "metal oxide": 235.0, "metal film": 155.0, "carbon film": 155.0}
"""The temperature at which no power is left, by construction, the lower of what is sold: all from memory. Wirewound
power resistors go to 275 C or 350 C (characteristics U and V of MIL-PRF-26), ceramic-cased ones to the same; films to
the upper category temperature of 155 C of the IEC 60115 family.
"""

LEAST_NO_POWER_C = min(NO_POWER_C.values())
"""Where no construction is stated, the worst is taken."""


def warmest_air_c(share: float, construction: str | None) -> float:
    """The warmest air (C) in which a resistor bears this share (0 to 1) of its rating.

    Above 70 C the rating falls in a straight line to nothing, P(T) = Pr (Tmax - T) / (Tmax - 70 C): IEC 60115-1,
    second-hand.
    """
    no_power_c = NO_POWER_C.get(construction or "", LEAST_NO_POWER_C)
    return no_power_c - share * (no_power_c - RATED_TO_C)


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    margin = RULE.limit(evidence)
    for part in evidence.stress.parts("resistor", "attenuator"):
        rating = part.get("power")
        heat = evidence.stress.bears(part.label).heat_w
        if not rating or rating >= margin * heat:
            continue
        over = heat > rating
        headline = f"`{part.label}` dissipates {watts(heat)} and is rated for {watts(rating)}"
        air_c = warmest_air_c(heat / rating, part.construction)
        air = "" if over else f"; it stands that in air of up to {air_c:.0f} C"
        yield RULE.finding(
            rated_at(evidence, part, "power"),
            headline,
            severity=Severity.ERROR if over else Severity.WARNING,
            label="too little" if over else f"less than {margin:g} times what it dissipates",
            why=f"average heat at {driven_by(evidence)}{air}",
            help=f"fit {watts(next_rating(margin * heat))} or more, or share the heat between several",
            subjects=named(evidence, part.label),
        )


RULE = Rule("resistor-hot", Severity.ERROR, "stress", check, Bound(2.0, PLAIN))
