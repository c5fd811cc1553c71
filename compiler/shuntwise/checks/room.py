"""What the rules on the room that parts take have in common.

In: the evidence. Out: the bodies on each board, and words for a finding. Decides nothing.
"""

from __future__ import annotations

from collections.abc import Iterator

from shuntwise.board.bodies import Body, bodies
from shuntwise.board.steps import ExchangeParts
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.rule import Severity
from shuntwise.diagnostics.wording import quoted
from shuntwise.model.boards import Layout


def placed(evidence: Evidence) -> Iterator[tuple[Layout, tuple[Body, ...]]]:
    """Every layout with the bodies on it that are known or can be assumed, but for parts in each other's place."""
    judgement = evidence.boards
    if judgement is None:
        return
    mistakes = judgement.repair.mistakes if judgement.comparison.wiring else ()
    steps = [step for mistake in mistakes for step in mistake.steps]
    exchanged = {label for step in steps if isinstance(step, ExchangeParts) for label in step.labels}
    parts = {label: part for label, part in evidence.design.parts.items() if label not in exchanged}
    for layout in judgement.layouts:
        yield layout, bodies(parts, layout)


def severity(*found: Body) -> Severity:
    """What is assumed is no more than a warning."""
    return Severity.WARNING if any(body.assumed for body in found) else Severity.ERROR


def advice(way: str, *found: Body) -> str:
    """The help: the usual one, and whose size is not stated."""
    guessed = [body.place.label for body in found if body.assumed]
    if not guessed:
        return way
    return f"{way}; the size of {quoted(guessed)} is assumed: state `length` and `diameter`, or `width` and `height`"
