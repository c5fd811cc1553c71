"""A design without a driver.

What it finds: a text that declares no driver at all, in the design or in what it includes.

Why it matters: a crossover is there to feed drivers. Without one nothing can be checked or solved, and an
empty or wrong file would pass as a clean design.

Bad:
    design "Spare board"
    ^^^^^^^^^^^^^^^^^^^^

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    leg woofer {
      input+ -- L1 -- woofer+
      woofer- -- return
    }

When to ignore it: for a file that only holds networks or parts for others to include; say so in the waiver, or
check the designs that include it instead.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.source import Span


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    design = evidence.design
    if design.drivers or design.unread or design.doubtful:
        return
    source = design.source
    first = next(
        (number for number in range(1, len(source.line_starts) + 1) if _says_something(source.line(number))), 1
    )
    line = source.line(first)
    start = source.line_starts[first - 1] + len(line) - len(line.lstrip())
    yield RULE.finding(
        Span(source, start, start + len(line.strip())),
        "no driver is declared",
        label="the text begins here",
        why="a crossover is there to feed drivers; without one there is nothing to check",
        help="declare one: `driver woofer 8 ohm`; a file that designs include is checked with `--as-include`",
    )


def _says_something(line: str) -> bool:
    text = line.strip()
    return bool(text) and not text.startswith("#")


RULE = Rule("no-driver", Severity.ERROR, "design", check)
