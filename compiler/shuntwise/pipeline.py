"""The arrow diagram as code: text -> tree -> design -> circuit -> network, with the checks beside it.

text --parse--> SyntaxTree --include--> Collected --resolve--> Design --connect--> Circuit --lower--> Network
                                                      |           (per variant)       |
                                                      +------------> checks <---------+
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from shuntwise.checks.evidence import Evidence
from shuntwise.checks.folding import with_cause
from shuntwise.checks.idle_waivers import idle_waivers
from shuntwise.checks.registry import CATALOGUE, RANK, RULES
from shuntwise.checks.run import Checked, run
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked, Severity
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.model.design import Design, Waiver
from shuntwise.model.include import Collected, Loader, include, nothing_to_include
from shuntwise.model.resolve import resolve, variant_names
from shuntwise.network.lower import Unlowered, lower
from shuntwise.network.network import Network
from shuntwise.source import Source
from shuntwise.syntax.parser import parse
from shuntwise.syntax.tree import Set


@dataclass(frozen=True)
class Compilation:
    """One design, or one variant of it, all the way.

    `texts` are those of the design and of what it includes; `lowered` says what is lacking where no network
    came out.
    """

    texts: tuple[str, ...]
    design: Design
    circuit: Circuit
    lowered: Network | Unlowered
    findings: tuple[Diagnostic, ...]
    waived: tuple[tuple[Diagnostic, Waiver], ...]
    not_checked: tuple[NotChecked, ...]

    @property
    def failed(self) -> bool:
        return any(finding.severity is Severity.ERROR for finding in self.findings)


def read(source: Source, load: Loader = nothing_to_include, key: str = "") -> tuple[Collected, tuple[Diagnostic, ...]]:
    """Parse a text and what it includes."""
    tree, form = parse(source)
    collected, found = include(tree, load, key)
    return collected, (*form, *found)


def compile_variant(
    collected: Collected,
    said: Sequence[Diagnostic] = (),
    *,
    variant: str | None = None,
    settings: Sequence[Set] = (),
) -> Compilation:
    """Take one variant (None: the design itself) through all passes and checks."""
    design, resolved = resolve(collected, variant=variant, settings=settings, catalogue=CATALOGUE)
    circuit, connected = connect(design)
    lowered = lower(circuit)
    evidence = Evidence(design, circuit, lowered)
    checked = with_cause(RULES.values(), evidence, run(RULES.values(), evidence))
    findings = (*said, *resolved, *connected, *checked.findings, *idle_waivers(design, checked))
    texts = tuple(source.text for source in collected.sources)
    return Compilation(texts, design, circuit, lowered, in_order(findings), checked.waived, checked.not_checked)


def compile_all(collected: Collected, said: Sequence[Diagnostic] = ()) -> tuple[Compilation, ...]:
    """The design and each of its variants. A finding that the design itself has is not repeated for a variant."""
    base = compile_variant(collected, said)
    known = {_identity(finding) for finding in base.findings}
    unchecked = set(base.not_checked)
    results = [base]
    for name in variant_names(collected):
        result = compile_variant(collected, variant=name)
        own = tuple(replace(f, variant=name) for f in result.findings if _identity(f) not in known)
        not_checked = tuple(entry for entry in result.not_checked if entry not in unchecked)
        known |= {_identity(finding) for finding in own}
        results.append(replace(result, findings=own, not_checked=not_checked))
    return tuple(results)


def in_order(findings: Sequence[Diagnostic]) -> tuple[Diagnostic, ...]:
    """Causes before what follows from them, then by file and place, each once."""
    unique = {_identity(finding): finding for finding in reversed(findings)}

    def place(finding: Diagnostic) -> tuple[int, str, int, int, str]:
        span = finding.span
        return RANK[finding.name], span.source.name, span.start, span.end, finding.name

    return tuple(sorted(unique.values(), key=place))


def _identity(finding: Diagnostic) -> tuple[str, str, int, int, str]:
    return (finding.name, finding.span.source.name, finding.span.start, finding.span.end, finding.headline)


__all__ = ["Checked", "Compilation", "compile_all", "compile_variant", "in_order", "read"]
