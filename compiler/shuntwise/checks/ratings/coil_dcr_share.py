"""Coils that take too large a share of the woofers' power.

What it finds: coils whose DC resistances, in the path of the woofers, come to more than 5 % of the woofers' nominal
impedance (a warning) or 10 % (an error); common practice, no source. `limit coil-dcr-share 8 %` sets the first, the
second is twice that. A coil that leads current past the woofers is not in their path.

Why it matters: 5 % costs half a decibel of all that the woofer plays, warms the coil, and lifts the woofer's
electrical Q, so that the box is tuned wrong for it.

Bad:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH { dcr 0.6 ohm }
                          ^^^^^^^
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    driver woofer 8 ohm { re 6.1 ohm }
    driver tweeter 8 ohm { re 6.3 ohm }
    coil L1 0.47 mH { dcr 0.3 ohm }
    capacitor C1 6.8 uF
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: where the box was tuned with this coil in place.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import named, rated_at
from shuntwise.checks.rule import Bound, Diagnostic, Label, Rule, Severity
from shuntwise.diagnostics.wording import percent, quoted
from shuntwise.units import PLAIN

NEARLY_DC_HZ = 0.1
"""Here coils are wire and capacitors open, so currents flow as they do at the bottom of the woofer's band."""

ROUNDING = 1 + 1e-3
"""What a current may be above another that it equals: at this frequency capacitors still carry a little."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    response = evidence.solver.solve([NEARLY_DC_HZ])
    branches = {branch.label for branch in response.network.branches}

    def current(owner: str) -> float:
        return abs(complex(response.current(owner)[0]))

    woofers = [d for d in evidence.drivers("woofer") if d.name in branches and d.nominal is not None]
    wanted = sum(current(d.name) ** 2 * d.nominal.value for d in woofers if d.nominal is not None)
    most_a = sum(current(d.name) for d in evidence.drivers("woofer") if d.name in branches)
    coils = [part for part in evidence.circuit.fitted_parts if part.kind == "coil" and part.label in branches]
    in_path = [part for part in coils if current(part.label) <= most_a * ROUNDING]
    shares = {part.label: current(part.label) ** 2 * part.get("dcr") / wanted for part in in_path} if wanted else {}
    share, limit = sum(shares.values()), RULE.limit(evidence)
    if share <= limit * (1 + 1e-9):
        return
    most = max(shares.values())
    taking = sorted((label for label in shares if shares[label] > most / 100), key=lambda label: -shares[label])
    places = [rated_at(evidence, evidence.design.parts[label], "dcr") for label in taking]
    names, whose = quoted(taking), "woofer's" if len({d.coil_of or d.name for d in woofers}) == 1 else "woofers'"
    yield RULE.finding(
        places[0],
        f"the resistance of {names} is {percent(share)} of the {whose} nominal impedance",
        severity=Severity.ERROR if share > 2 * limit * (1 + 1e-9) else Severity.WARNING,
        label=percent(shares[taking[0]]),
        places=[Label(place, percent(shares[label])) for place, label in zip(places[1:], taking[1:], strict=True)],
        why=f"{percent(limit)} of the nominal impedance is the usual ceiling; more costs level and changes the "
        "tuning of the box",
        help="thicker wire or a cored coil; or tune the box with this coil in place",
        subjects=named(evidence, *taking),
    )


RULE = Rule("coil-dcr-share", Severity.WARNING, "sound", check, Bound(0.05, PLAIN))
