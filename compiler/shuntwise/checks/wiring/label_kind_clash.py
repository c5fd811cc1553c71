"""A label that reads as another kind of part.

What it finds: a label of the usual form, such as `C3` or `L12a`, whose letter the trade uses for another kind
than the declared one: L coils, C capacitors, R resistors, T tapped coils, B lamps, K links and their like.

Why it matters: on the board one reads the label, not the list. A coil called C3 gets a capacitor's place.

Bad:
    driver woofer 8 ohm
    coil C3 0.82 mH
         ^^
    leg woofer {
      input+ -- C3 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L3 0.82 mH
    leg woofer {
      input+ -- L3 -- woofer+
      woofer- -- return
    }

When to ignore it: if old sheets bear the label, and it is not worth a change.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rated import named
from shuntwise.checks.rule import Diagnostic, Rule, Severity
from shuntwise.model.kinds import KINDS
from shuntwise.source import Span

_LABEL = re.compile(r"([A-Za-z]{1,2})\d+[a-z]?|([A-Z])[a-z]?")


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    uses: dict[Span, list[str]] = defaultdict(list)
    for part in evidence.design.parts.values():
        uses[part.name_span].append(part.label)
    seen = set()
    for part in evidence.design.parts.values():
        local = part.label.rpartition(".")[2]
        match = _LABEL.fullmatch(local)
        if match is None or part.name_span in seen:
            continue
        letters = (match[1] or match[2]).upper()
        meant = [kind.word for kind in KINDS.values() if letters in kind.letters]
        if not meant or part.kind in meant or (KINDS[part.kind].inductive and KINDS[meant[0]].inductive):
            continue
        seen.add(part.name_span)
        yield RULE.finding(
            part.name_span,
            f"`{local}` is declared as a {part.kind}, but reads as a {' or a '.join(meant)}",
            label=f"the letter {letters} stands for another kind",
            why="on the board one reads the label, not the list",
            help=f"mend the kind, or use a label such as `{KINDS[part.kind].letters[0]}{local[len(letters) :] or 1}`",
            subjects=named(evidence, *uses[part.name_span]),
        )


RULE = Rule("label-kind-clash", Severity.WARNING, "design", check)
