"""What a rule is, and what it may look at.

A rule is one module: its docstring is its page (see `checks.page`), `RULE` says the rest. `check` is a
pure function of the `Evidence`. A finding that an earlier pass makes has a module too, without `check`,
so that every finding has its page.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Literal

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Fix, Label, NotChecked, Severity
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Amplifier, Design, Driver
from shuntwise.network.lower import Unlowered
from shuntwise.network.network import Network
from shuntwise.source import Span
from shuntwise.units import Dimension

if TYPE_CHECKING:
    from shuntwise.response.solve import Solver

Needs = Literal["text", "design", "circuit", "network"]
"""The value that must exist before a rule can run: the text alone, or what a pass has made of it."""


@dataclass(frozen=True)
class Bound:
    """A number that a rule compares with, which a design may set by `limit NAME value`."""

    default: float
    dimension: Dimension


@dataclass(frozen=True)
class Rule:
    """`check` is None for findings that an earlier pass makes while it reads the text."""

    name: str
    severity: Severity
    needs: Needs
    check: Callable[[Evidence], Iterable[Diagnostic | NotChecked]] | None = None
    bound: Bound | None = None

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
        )

    def not_checked(self, lacks: str, *subjects: str) -> NotChecked:
        return NotChecked(self.name, lacks, subjects)


@dataclass(frozen=True)
class Evidence:
    """All that rules may look at: one design (or one variant of it) in all its forms."""

    design: Design
    circuit: Circuit
    lowered: Network | Unlowered

    @property
    def network(self) -> Network:
        """The ideal elements; only for rules that need a network."""
        assert isinstance(self.lowered, Network)
        return self.lowered

    @cached_property
    def solver(self) -> Solver:
        """The network compiled for solving, once for all rules."""
        from shuntwise.response.solve import Solver

        return Solver(self.network)

    @property
    def amplifier(self) -> Amplifier | None:
        return self.design.amplifier

    def bound(self, rule: Rule) -> float:
        """The rule's number, as the design sets it or by default."""
        assert rule.bound is not None
        setting = self.design.limits.get(rule.name)
        return setting.quantity.value if setting is not None else rule.bound.default

    def drivers(self, role: str | None = None) -> tuple[Driver, ...]:
        """The drivers, or those of one role."""
        return tuple(driver for driver in self.design.drivers.values() if role is None or driver.role == role)

    def place(self, owner: str) -> Span:
        """Where a part, driver, input or node is best pointed at: in the wiring, else where it is declared."""
        spans = self.circuit.spans.get(owner) or self.design.node_spans.get(owner)
        if spans:
            return spans[0]
        return self.declared(owner)

    def declared(self, owner: str) -> Span:
        """Where a part, driver or input is declared; the title's place for the implied input."""
        design = self.design
        if owner in design.parts:
            return design.parts[owner].name_span
        if owner in design.drivers:
            return design.drivers[owner].name_span
        for pair in design.terminals:
            if pair.name == owner and pair.span is not None:
                return pair.span
        return Span(design.source, 0, 0)


__all__ = [
    "Bound",
    "Confidence",
    "Diagnostic",
    "Evidence",
    "Fix",
    "Label",
    "NotChecked",
    "Rule",
    "Severity",
    "Span",
]
