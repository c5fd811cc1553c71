"""A driver that does not say what it is.

What it finds: a driver without a role, or without a nominal impedance. The role is clear from the names
`woofer`, `mid` and `tweeter`, also with a number behind them; any other driver states it.

Why it matters: most checks must know which driver needs protection from bass, and which impedance the box
will be marked with.

Bad:
    driver horn 8 ohm
           ^^^^
    capacitor C1 6.8 uF
    leg horn {
      input+ -- C1 -- horn+
      horn- -- return
    }

Good:
    driver horn 8 ohm { role tweeter }
    capacitor C1 6.8 uF
    leg horn {
      input+ -- C1 -- horn+
      horn- -- return
    }

When to ignore it: for a driver that is none of the three, such as a full-range one; but then most checks of
intent are silent about it.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.design import Driver
from shuntwise.model.findings import replace
from shuntwise.model.kinds import ROLES
from shuntwise.syntax.words import nearest


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for driver in evidence.design.drivers.values():
        missing, help_text = [], []
        if driver.nominal is None and not _value_refused(driver):
            missing.append("nominal impedance")
            help_text.append(f"write it behind the name: `driver {driver.name} 8 ohm`")
        if driver.role is None:
            missing.append("role")
            help_text.append("say what it is for in its braces: " + ", ".join(f"`role {role}`" for role in ROLES))
        if missing:
            near = nearest(driver.name, ROLES) if driver.role is None else None
            if near is not None:
                help_text.insert(0, f"if it is a slip of the pen, write `{near}`")
            yield RULE.finding(
                driver.name_span,
                f"the driver `{driver.name}` has no {' and no '.join(missing)}"
                + (f": is it the `{near}`?" if near is not None else ""),
                label="a driver says what it is",
                why="without it most checks of this driver cannot be made",
                help="; ".join(help_text),
                fixes=(replace(driver.name_span, near),) if near is not None else (),
                subjects=(driver.name, *((near,) if near is not None else ())),
            )


def _value_refused(driver: Driver) -> bool:
    """Does something stand where the impedance belongs? Then it has been complained of."""
    source, begin = driver.span.source, driver.name_span.end
    return source.text[begin : driver.span.end].lstrip()[:1] not in ("", "{")


RULE = Rule("role-missing", Severity.WARNING, "design", check)
