"""A rating that nothing can be checked against.

What it finds: once the design says which amplifier drives it, a coil without its `dcr`, or with a core and without a
current; a capacitor without volts; a resistor without watts; a lamp without volts or watts; a driver without watts.
As long as no amplifier is stated the text is a sketch of the wiring, and nobody is asked for ratings.

Why it matters: the parts list goes to the shop without it, and the checks of volts, amperes and heat leave the part
out. In two years nobody can say what was fitted.

Bad:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, film }
              ^^
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    amplifier 60 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 6.1 ohm, le 0.35 mH, fs 72 Hz, qms 3.8, qes 0.62, 80 W }
    driver tweeter 8 ohm { re 6.3 ohm, le 0.05 mH, fs 900 Hz, qms 2.4, qes 1.5, 40 W }
    coil L1 0.47 mH { dcr 0.22 ohm, 5 %, air core }
    capacitor C1 6.8 uF { 5 %, 250 V, film }
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a part out of the drawer that carries no print; say so in the reason.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import CORED, named, rated_at
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.diagnostics.wording import listed
from shuntwise.model.design import Driver, Part
from shuntwise.model.kinds import KINDS, TOLERANCE

WORDS = {
    "dcr": "its DC resistance",
    "current": "its rated current",
    "voltage": "its rated volts",
    "power": "its rated watts",
    "cold": "its cold resistance",
    "trip": "the current at which it trips",
    "tripped": "its resistance when it has tripped",
}


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    if evidence.amplifier is None:
        yield RULE.not_checked("an `amplifier` with its power and load")
        return
    for part in evidence.circuit.fitted_parts:
        asked = {name: example for name, example in KINDS[part.kind].asked.items() if name != TOLERANCE.name}
        if part.construction in CORED:
            asked["current"] = "12 A"
        words = {**WORDS, "current": "the current that its core carries"} if part.construction in CORED else WORDS
        yield from _missing(evidence, part, part.label, asked, words)
    for driver in evidence.drivers():
        yield from _missing(evidence, driver, driver.name, {"power": "20 W"}, WORDS)


def _missing(
    evidence: Evidence, item: Part | Driver, owner: str, asked: Mapping[str, str], words: Mapping[str, str]
) -> Iterator[Diagnostic]:
    missing = [attribute for attribute in asked if attribute not in item.quantities]
    if not missing or item.refused:  # what is missing may be what could not be read
        return
    what = listed([words.get(attribute, f"its `{attribute}`") for attribute in missing])
    example = ", ".join(asked[attribute] for attribute in missing)
    yield RULE.finding(
        rated_at(evidence, item),
        f"`{owner}` does not say {what}",
        label="cannot be checked",
        why="what it sees, carries and dissipates at the amplifier is compared with nothing",
        help=f"write it among its attributes, such as `{{ {example} }}`",
        subjects=named(evidence, owner),
        missing=[words.get(attribute, attribute).removeprefix("its ") for attribute in missing],
    )


RULE = Rule("rating-missing", Severity.WARNING, "design", check)
