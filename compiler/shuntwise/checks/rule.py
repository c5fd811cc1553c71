"""What a rule is.

A rule is one module: its docstring is its page (see `checks.page`), `RULE` says the rest. `check` is a
pure function of the `Evidence`. A finding that an earlier pass makes has a module too, without `check`,
so that every finding has its page.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Literal, TypeAlias

from shuntwise.checks.evidence import Evidence
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Fix, Label, NotChecked, Severity
from shuntwise.source import Span
from shuntwise.units import Dimension

Needs = Literal[
    "text", "design", "circuit", "faultless", "structure", "network", "sound", "settled", "stress", "layout"
]
"""The value that must exist before a rule can run: the text alone, or what a pass has made of it.

`faultless` is a circuit that was read whole and of whose wiring no error was found, `structure` one whose drivers are
fed: what each part is there for can then be told.
`sound` is a network of which the numbers of a leg with an error are not judged as well; `settled` one of which those of
a leg with a warning are not either: what would be their consequence waits. Where a mistake stands in no one leg, that
is all of it (`concern.py`).
`stress` is such a network solved at the stated amplifier. `layout` is a circuit without errors, and layouts that were
read whole and whose copper is known, so that boards can be held against it; where nothing is laid out the rule has
nothing to say.
"""

Check: TypeAlias = Callable[[Evidence], Iterable[Diagnostic | NotChecked]]
"""What a rule's `check` is."""


@dataclass(frozen=True)
class Bound:
    """A number that a rule compares with, which a design may set by `limit NAME value`."""

    default: float
    dimension: Dimension


@dataclass(frozen=True)
class Rule:
    """`check` is None for findings that an earlier pass makes while it reads the text.

    `is_cause` marks a rule that solves, but whose errors are mistakes of the circuit: as with a rule that needs
    only the circuit, what follows from them is not told as well.
    """

    name: str
    severity: Severity
    needs: Needs
    check: Check | None = None
    bound: Bound | None = None
    is_cause: bool = False

    @property
    def of_circuit(self) -> bool:
        """Do its errors and warnings keep rules on numbers from telling what follows from them?"""
        return self.needs in ("circuit", "faultless", "structure") or self.is_cause

    def finding(
        self,
        span: Span,
        headline: str,
        *,
        severity: Severity | None = None,
        label: str = "",
        why: str = "",
        help: str = "",
        places: Iterable[Label] = (),
        fixes: Iterable[Fix] = (),
        subjects: Iterable[str] = (),
        missing: Iterable[str] = (),
    ) -> Diagnostic:
        """A finding of this rule, of its usual severity unless said otherwise."""
        return Diagnostic(
            self.name,
            severity or self.severity,
            headline,
            span,
            label,
            why,
            help,
            tuple(places),
            tuple(fixes),
            tuple(subjects),
            missing=tuple(missing),
        )

    def limit(self, evidence: Evidence) -> float:
        """The rule's number, as the design sets it or by default."""
        assert self.bound is not None
        return evidence.limit(self.name, self.bound.default)

    def not_checked(self, lacks: str, *subjects: str) -> NotChecked:
        return NotChecked(self.name, lacks, subjects)


__all__ = [
    "Bound",
    "Confidence",
    "Diagnostic",
    "Fix",
    "Label",
    "NotChecked",
    "Rule",
    "Severity",
    "Span",
]
