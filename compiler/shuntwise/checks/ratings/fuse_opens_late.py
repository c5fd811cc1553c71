"""A fuse or protector that opens too late for the driver that it guards.

What it finds: one in the path to a driver that still lets through more than the driver takes at the current at which
it has surely opened: four times the driver's rated power for the 2 s of a quick acting fuse, twice for the 10 s of one
with a time lag or the minute of a protector. It is looked for only where the amplifier can drive more than the rated
power into the driver at all. What flows past the driver in a pad or filter is taken off, as with the programme.

Why it matters: a fuse carries one and a half times its rated current for an hour, and opens within seconds only at
nearly three times as much (IEC 60127-2, second-hand). A voice coil is burnt by then if the fuse was chosen by the
driver's own current.

Bad:
    amplifier 200 W into 8 ohm { least 4 ohm }
    driver woofer 8 ohm { re 5.7 ohm, le 0.55 mH, fs 52 Hz, qms 5, qes 0.44, 150 W }
    fuse F1 4 A { time lag, cold 0.02 ohm, 250 V }
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

When to ignore it: where the maker of the driver states what it takes for seconds, and that is more.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.protection import BEARS, KINDS, guards, opens_at, rated_a
from shuntwise.checks.rated import amperes, driven_by, named, rated_at
from shuntwise.checks.rule import Diagnostic, NotChecked, Rule, Severity
from shuntwise.diagnostics.wording import rounded
from shuntwise.model.design import Driver, Part


def check(evidence: Evidence) -> Iterator[Diagnostic | NotChecked]:
    for part, ladder in guards(evidence):
        if part.kind not in KINDS:
            continue
        for name in ladder.together.labels:
            if name in evidence.design.drivers and {name, part.label} <= evidence.stress.branches.keys():
                yield from _judge(evidence, part, evidence.design.drivers[name])


def _judge(evidence: Evidence, part: Part, driver: Driver) -> Iterator[Diagnostic | NotChecked]:
    rated, opening = rated_a(driver), opens_at(part)
    if rated is None:
        yield RULE.not_checked(f"the nominal impedance and rated power of `{driver.name}`", driver.name)
    elif isinstance(opening, str):
        yield RULE.not_checked(opening, part.label)
    else:
        bears, through = evidence.stress.bears(driver.name), evidence.stress.bears(part.label).programme_a
        if bears.peak_a / 2**0.5 <= rated or not through:
            return
        times = (opening.amperes * bears.programme_a / through / rated) ** 2
        if times > BEARS[opening.seconds]:
            yield RULE.finding(
                rated_at(evidence, part, "value"),
                f"`{part.label}` opens too late for `{driver.name}`",
                label=f"lets {rounded(times, 2)} times its rated power through for {opening.seconds:g} s",
                why=f"it has surely opened at {amperes(opening.amperes)}, and a driver takes "
                f"{BEARS[opening.seconds]:g} times its rated power so long; at {driven_by(evidence)}",
                help="choose one for less current or a quicker one, or a limiter at the amplifier",
                subjects=named(evidence, part.label, driver.name),
            )


RULE = Rule("fuse-opens-late", Severity.WARNING, "stress", check)
