"""A fuse or protector that opens in ordinary use.

What it finds: one that carries more than its rated or held current with the programme at the stated amplifier, in the
40 C of a box in the sun; and a fuse of stated `i2t` of which one burst of the amplifier's rated sine, 10 ms long, takes
more than three tenths. The current is that of everything fitted, copper cold or hot, the worse of the two.

Why it matters: it opens in the middle of a show, and what replaces it is a piece of wire. Bursts that take a larger
share of the pre-arcing I2t age the link until it opens with nothing wrong (common practice, no source).

Bad:
    amplifier 200 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.7 ohm, le 0.55 mH, fs 52 Hz, qms 5, qes 0.44, 300 W }
    fuse F1 2 A { quick acting, cold 0.05 ohm, 250 V }
            ^^^
    leg woofer {
      input+ -- F1 -- woofer+
      woofer- -- return
    }

Good:
    amplifier 200 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.7 ohm, le 0.55 mH, fs 52 Hz, qms 5, qes 0.44, 300 W }
    fuse F1 4 A { quick acting, cold 0.02 ohm, 250 V }
    leg woofer {
      input+ -- F1 -- woofer+
      woofer- -- return
    }

When to ignore it: where the amplifier is never driven to its limit with this box, and a fuse that opens is wanted.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.protection import HOT_AIR_C, KINDS, carries_a
from shuntwise.checks.rated import amperes, driven_by, named, rated_at
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import percent
from shuntwise.model.design import Part

BURST_S = 0.01
SHARE = 0.3
"""Of the pre-arcing I2t that a burst may take."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for part in evidence.stress.parts(*KINDS):
        if part.value is None:
            continue
        bears, carries = evidence.stress.bears(part.label), carries_a(part)
        if bears.programme_a > carries:
            yield RULE.finding(
                rated_at(evidence, part, "value"),
                f"`{part.label}` carries {amperes(bears.programme_a)}, and holds no more than {amperes(carries)}",
                label="opens in use",
                why=f"at {driven_by(evidence)}, in air of {HOT_AIR_C:g} C",
                help="choose one for more current, and look again whether it still guards its driver",
                subjects=named(evidence, part.label),
            )
        else:
            yield from _bursts(evidence, part, bears.peak_a / 2**0.5)


def _bursts(evidence: Evidence, part: Part, sine_a: float) -> Iterator[Diagnostic]:
    i2t, taken = part.get("i2t"), sine_a**2 * BURST_S
    if i2t and taken > SHARE * i2t:
        yield RULE.finding(
            rated_at(evidence, part, "i2t"),
            f"a burst of {1000 * BURST_S:g} ms takes {percent(taken / i2t)} of the I2t of `{part.label}`",
            label="opens with nothing wrong",
            why=f"the rated sine of the amplifier drives {amperes(sine_a)} r.m.s. through it",
            help="choose one with a time lag, or for more current",
            subjects=named(evidence, part.label),
        )


RULE = Rule("fuse-opens-in-use", Severity.WARNING, "stress", check)
