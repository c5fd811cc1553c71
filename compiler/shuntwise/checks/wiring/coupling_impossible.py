"""Coupling that no coils can have.

What it finds: couplings between three or more coils that contradict one another: a current could be found for
which the coils' field energy would be negative. Coupling of a coil with itself, or with a part that is no
coil, counts as well.

Why it matters: a circuit with such a coupling makes power out of nothing, and every result is nonsense. One
of the factors was measured or typed wrongly; often a sign is missing.

Bad:
    driver woofer 8 ohm
    coil L1 0.82 mH
    coil L2 0.82 mH
    coil L3 0.82 mH
    coupling L1 and L2 90 %
    coupling L2 and L3 90 %
    coupling L1 and L3 -90 %
    ^^^^^^^^^^^^^^^^^^^^^^^^
    leg woofer {
      input+ -- L1 -- L2 -- L3 -- woofer+
      woofer- -- return
    }

Good:
    driver woofer 8 ohm
    coil L1 0.82 mH
    coil L2 0.82 mH
    coil L3 0.82 mH
    coupling L1 and L2 3 %
    coupling L2 and L3 3 %
    coupling L1 and L3 -1 %
    leg woofer {
      input+ -- L1 -- L2 -- L3 -- woofer+
      woofer- -- return
    }

When to ignore it: never.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Diagnostic, Label, Rule, Severity
from shuntwise.model.design import Coupling

ROUNDING = 1e-9
"""Least eigenvalue that is taken for zero: coils that share all their flux are just possible."""


def check(evidence: Evidence) -> Iterator[Diagnostic]:
    for couplings in _groups(evidence.design.couplings):
        if len(couplings) < 3 or any(coupling.k is None for coupling in couplings):
            continue  # with fewer, factors from -1 to 1 never contradict one another
        import numpy as np

        labels = sorted({label for coupling in couplings for label in (coupling.first, coupling.second)})
        matrix = np.eye(len(labels))
        for coupling in couplings:
            assert coupling.k is not None
            row, column = labels.index(coupling.first), labels.index(coupling.second)
            matrix[row, column] = matrix[column, row] = coupling.k.value
        if np.linalg.eigvalsh(matrix)[0] < -ROUNDING:
            *others, last = sorted(couplings, key=lambda coupling: coupling.span.start)
            yield RULE.finding(
                last.span,
                f"no coils can be coupled like this: {', '.join(f'`{label}`' for label in labels)}",
                label="contradicts the other couplings",
                why="the circuit would make power out of nothing",
                help="measure the factors again; look at the signs first",
                places=[Label(coupling.span, "one of the others") for coupling in others],
                subjects=labels,
            )


def _groups(couplings: tuple[Coupling, ...]) -> list[list[Coupling]]:
    """Couplings in groups that have coils in common."""
    groups: list[tuple[set[str], list[Coupling]]] = []
    for coupling in couplings:
        labels, members = {coupling.first, coupling.second}, [coupling]
        apart = []
        for other in groups:
            if labels & other[0]:
                labels |= other[0]
                members = [*other[1], *members]
            else:
                apart.append(other)
        groups = [*apart, (labels, members)]
    return [members for _, members in groups]


RULE = Rule("coupling-impossible", Severity.ERROR, "design", check)
