"""What a rule is, and what it may look at.

A rule is one module: its docstring is its page (see `checks.page`), `RULE` says the rest. `check` is a
pure function of the `Evidence`. A finding that an earlier pass makes has a module too, without `check`,
so that every finding has its page.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING, Literal, TypeAlias

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic, Fix, Label, NotChecked, Severity
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Amplifier, Design, Driver
from shuntwise.network.lower import Unlowered
from shuntwise.network.network import Network
from shuntwise.source import Span
from shuntwise.units import Dimension

if TYPE_CHECKING:
    from shuntwise.checks.faults.account import Faults
    from shuntwise.checks.stress import Stress
    from shuntwise.checks.structure import Structure
    from shuntwise.response.solve import Response, Solver

Needs = Literal["text", "design", "circuit", "faultless", "structure", "network", "sound", "settled", "stress"]
"""The value that must exist before a rule can run: the text alone, or what a pass has made of it.

`faultless` is a circuit that was read whole and of whose wiring no error was found, `structure` one of which every
driver is fed as well: what each part is there for can then be told.
`sound` is a network of whose circuit no error was found: the numbers of a mistake are not judged as well.
`settled` is such a network of whose circuit no warning stands either: what would be their consequence waits.
`stress` is such a network solved at the stated amplifier.
"""

Check: TypeAlias = "Callable[[Evidence], Iterable[Diagnostic | NotChecked]]"
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
class Lacking:
    """What keeps a value from being worked out, in words that complete "not checked: ...", and about what."""

    lacks: str
    subjects: tuple[str, ...] = ()


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

    @cached_property
    def sweep(self) -> Response:
        """The network solved from 20 Hz to 20 kHz, 40 points a decade, once for all rules."""
        import numpy as np

        return self.solver.solve(np.geomspace(20, 20e3, 121))

    @property
    def wiring_read(self) -> bool:
        """Could every word of the wiring be read? If not, any net may be joined to any other."""
        return not (self.design.lost_wiring or self.design.unread or self.circuit.doubtful)

    @property
    def traceable(self) -> bool:
        """Is the circuit of a size that a structure can be recognised in?"""
        from shuntwise.checks.structure import MOST_PARTS

        return len(self.circuit.edges) <= MOST_PARTS

    @cached_property
    def structure(self) -> Structure:
        """How each driver is fed; only for rules that need a structure."""
        from shuntwise.checks.structure import recognise

        return recognise(self.circuit)

    @cached_property
    def at_amplifier(self) -> Stress | Lacking:
        """What the parts bear at the stated amplifier, or what is lacking to know it."""
        from shuntwise.checks.stress import work_out

        return work_out(self)

    @property
    def stress(self) -> Stress:
        """What the parts bear; only for rules that need it."""
        from shuntwise.checks.stress import Stress

        assert isinstance(self.at_amplifier, Stress)
        return self.at_amplifier

    @cached_property
    def faults(self) -> Faults:
        """What is wrong with the wiring, each fault given to one rule."""
        from shuntwise.checks.faults.account import account

        return account(self.circuit)

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

    def place(self, name: str) -> Span:
        """Where something is best pointed at: in the wiring, else where it is declared.

        `name` is that of a part, driver, input, used network, node or pad.
        """
        for known in (self.circuit.spans, self.design.node_spans):
            if known.get(name):
                return known[name][0]
        owner = name.rstrip("+-")
        for pad in (f"{owner}+", f"{owner}-"):
            if self.circuit.spans.get(pad):
                return self.circuit.spans[pad][0]
        return self.declared(owner)

    def declared(self, owner: str) -> Span:
        """Where a part, driver, input or network is declared; for the implied input where wiring begins."""
        design = self.design
        if owner in design.parts:
            return design.parts[owner].name_span
        if owner in design.drivers:
            return design.drivers[owner].name_span
        if owner in design.instance_spans:
            return design.instance_spans[owner]
        for pair in design.terminals:
            if pair.name == owner and pair.span is not None:
                return pair.span
        return design.walks[0].stops[0].span if design.walks else Span(design.source, 0, 0)


__all__ = [
    "Bound",
    "Confidence",
    "Diagnostic",
    "Evidence",
    "Fix",
    "Label",
    "Lacking",
    "NotChecked",
    "Rule",
    "Severity",
    "Span",
]
