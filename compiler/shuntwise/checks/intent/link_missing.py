"""Posts that no link joins to an input.

What it finds: a pair of posts of which a pad is joined to a driver's leg but not, by wire or link, to any input's
pad.

Why it matters: with one amplifier the leg behind these posts stays silent.

Bad:
    input low
    posts high
    ^^^^^^^^^^
    link K1
    link K2
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }
    leg woofer and tweeter {
      low+ -- K1 -- high+
      low- -- K2 -- high-
    }
    omit K1

Good:
    input low
    posts high
    link K1
    link K2
    driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    coil L1 0.47 mH
    capacitor C1 6.8 uF
    leg woofer {
      low+ -- L1 -- woofer+
      woofer- -- low-
    }
    leg tweeter {
      high+ -- C1 -- tweeter+
      tweeter- -- high-
    }
    leg woofer and tweeter {
      low+ -- K1 -- high+
      low- -- K2 -- high-
    }

When to ignore it: never; posts that a second amplifier feeds are declared as `input`.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.model.kinds import KINDS


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    circuit, design = evidence.circuit, evidence.design
    if not evidence.wiring_read:
        return
    fed = {circuit.pad(pair.name, sign) for pair in design.feeds for sign in "+-"}
    for pair in design.terminals:
        if pair.fed or pair.span is None:
            continue
        nets = {pair.name + sign: circuit.nets[circuit.pad(pair.name, sign)] for sign in "+-"}
        cut_off = [pad for pad, net in nets.items() if net.name not in fed and len(net.attachments) > 1]
        if cut_off:
            omitted = [p.label for p in design.parts.values() if KINDS[p.kind].wire and not p.fitted]
            shown = quoted(cut_off)
            left_out = f" ({', '.join(f'`{label}`' for label in omitted)} left out)" if omitted else ""
            yield RULE.finding(
                pair.span,
                f"no link joins {shown} to an input",
                label="no amplifier feeds these posts",
                why="what is wired to them stays silent",
                help=f"fit the links{left_out}, or declare `input {pair.name}` if an amplifier of its own feeds it",
                subjects=(pair.name, *omitted),
            )


RULE = Rule("link-missing", Severity.ERROR, "circuit", check)
