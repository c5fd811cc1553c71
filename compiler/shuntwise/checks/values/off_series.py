"""A value that no part is made in.

What it finds: a capacitor or resistor whose typed value is in no preferred series: E24, or E96 for parts of 2 % and
closer (IEC 60063, second-hand). Coils are left alone, since they can be wound to any value, and so are values that the
text works out or that have more than three digits.

Why it matters: the part cannot be bought. Two of the series in parallel or in a row can make it up; declare both.

Bad:
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    capacitor C1 6.5 uF
                 ^^^^^^
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

Good:
    driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
    capacitor C1 6.8 uF
    leg tweeter {
      input+ -- C1 -- tweeter+
      tweeter- -- return
    }

When to ignore it: for a measured part, or one that is made up of several.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from shuntwise import units
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.design import Part
from shuntwise.model.findings import replace
from shuntwise.model.preferred import E24, E96, is_in, nearest_in

CLOSE = 0.02
"""Parts of this tolerance and closer are made in E96 as well."""

MOST_DIGITS = 3
"""A value with more significant digits was measured or worked out: no part bears so many."""

_TYPED = re.compile(r"[\d.]+\s*[^\W\d_]+")


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for part in evidence.design.parts.values():
        if part.kind not in ("capacitor", "resistor") or part.value is None or not part.fitted or not _typed(part):
            continue
        series = E24 + E96 if part.get("tolerance", 1.0) <= CLOSE else E24
        if is_in(series, part.value.value):
            continue
        shown = units.write(nearest_in(series, part.value.value), part.value.dimension)
        yield RULE.finding(
            part.value.span,
            f"no {part.kind} is made of {part.value.text}",
            label="in no preferred series",
            why="the part cannot be bought as it stands",
            help=f"the nearest is `{shown}`; or declare the two parts that make it up",
            fixes=(replace(part.value.span, shown),),
            subjects=(part.label,),
        )


def _typed(part: Part) -> bool:
    """Is the value a number that the author typed as printed on a part, not one measured or worked out?"""
    assert part.value is not None
    text = part.value.text
    digits = re.sub(r"\D", "", text).strip("0")
    return len(digits) <= MOST_DIGITS and (bool(_TYPED.fullmatch(text)) or units.read_code(text) is not None)


RULE = Rule("off-series", Severity.ADVICE, "design", check)
