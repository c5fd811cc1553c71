"""The arrow diagram as code: text -> tree -> design -> circuit -> network, with the checks beside it.

text --parse--> SyntaxTree --include--> Collected --resolve--> Design --connect--> Circuit --lower--> Network
                                                      |           (per variant)       |
                                                      +------------> checks <---------+
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace

from shuntwise.board.judging import judged
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.folding import with_cause
from shuntwise.checks.idle_waivers import idle_waivers
from shuntwise.checks.registry import AT_KNOB_ENDS, CATALOGUE, CAUSES, OF_WHOLE_DESIGNS, RANK, RULES
from shuntwise.checks.run import Checked, run
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked, Severity
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.model.design import Design, Waiver
from shuntwise.model.include import Collected, Loader, include, nothing_to_include
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check
from shuntwise.network.lower import Unlowered, lower
from shuntwise.network.network import Network
from shuntwise.network.straps import laid_out
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
    causes: bool = True,
    needed: Collection[Waiver] = (),
    on_boards: bool = True,
) -> Compilation:
    """Take one variant (None: the design itself) through all passes and checks.

    Without `on_boards` layouts are passed over, and parts joined by wires without resistance. Without `causes` no slip
    is looked for that would explain what is found. With an attenuator at an end of its range only what it does to heat
    and load is told. Nothing is said of waivers that are `needed` elsewhere.
    """
    design, resolved = resolve(collected, variant=variant, settings=settings, catalogue=CATALOGUE)
    circuit, connected = connect(design)
    lowered = lower(circuit)
    boards = judged(circuit) if on_boards else None
    if boards is not None and isinstance(lowered, Network) and boards.metal is not None:
        lowered = laid_out(lowered, boards.metal)

    def restated(name: str, value: str) -> Circuit | None:
        """The circuit with one named value otherwise."""
        tree, wrong = parse(Source("trial", f"set {name} = {value}\n"))
        tried = [entry for entry in tree.entries if isinstance(entry, Set)]
        if wrong or len(tried) != 1:
            return None
        other, _ = resolve(collected, variant=variant, settings=(*settings, *tried), catalogue=CATALOGUE)
        return connect(other)[0]

    evidence = Evidence(design, circuit, lowered, restated=restated, boards=boards)
    checked = run(RULES.values(), evidence)
    if design.knob_ends:
        kept = tuple(finding for finding in checked.findings if finding.name in AT_KNOB_ENDS)
        checked = replace(checked, findings=kept)
    elif causes:
        checked = with_cause(RULES.values(), CAUSES, evidence, checked)
    idle = () if design.knob_ends else idle_waivers(design, checked, needed)
    findings = (*said, *resolved, *connected, *checked.findings, *idle)
    texts = tuple(source.text for source in collected.sources)
    return Compilation(texts, design, circuit, lowered, in_order(findings), checked.waived, checked.not_checked)


def compile_include(collected: Collected, said: Sequence[Diagnostic] = ()) -> Compilation:
    """A file that designs include, by itself: its text, values and parts, nothing that only a whole design has.

    A name that is not declared in it may stand in the design, so unknown names are left unchecked.
    """
    design, resolved = resolve(collected, catalogue=CATALOGUE)
    circuit, _ = connect(design)
    evidence = Evidence(design, circuit, lower(circuit))
    rules = [rule for rule in RULES.values() if rule.needs == "design" and rule.name not in OF_WHOLE_DESIGNS]
    checked = run(rules, evidence)
    findings = [finding for finding in (*said, *resolved, *checked.findings) if finding.name != "unknown-name"]
    texts, told = tuple(source.text for source in collected.sources), in_order(findings)
    return Compilation(texts, design, circuit, evidence.lowered, told, checked.waived, checked.not_checked)


def compile_all(
    collected: Collected, said: Sequence[Diagnostic] = (), *, causes: bool = True
) -> tuple[Compilation, ...]:
    """The design and all that can be had of it: variants, positions of choices, ends of attenuators.

    What is told of the design itself is not told of a variant again, though its figures may be others, unless it is
    graver there.
    """
    base = compile_variant(collected, said, causes=causes)
    known = {_told(finding) for finding in base.findings}
    unchecked, needed = set(base.not_checked), [waiver for _, waiver in base.waived]
    results = [base]
    for name in to_check(base.design):
        result = compile_variant(collected, variant=name, causes=causes, needed=needed)
        fresh = [finding for finding in result.findings if _told(finding) not in known]
        own = tuple(replace(finding, variant=name) for finding in _under(base.findings, fresh))
        not_checked = tuple(entry for entry in result.not_checked if entry not in unchecked)
        known |= {_told(finding) for finding in own}
        results.append(replace(result, findings=own, not_checked=not_checked))
    return tuple(results)


def in_order(findings: Sequence[Diagnostic]) -> tuple[Diagnostic, ...]:
    """Causes before what follows from them, then by file and place, each once."""
    unique = {_identity(finding): finding for finding in reversed(findings)}

    def place(finding: Diagnostic) -> tuple[int, str, int, int, str]:
        span = finding.span
        return RANK[finding.name], span.source.name, span.start, span.end, finding.name

    return tuple(sorted(unique.values(), key=place))


def _under(told: Sequence[Diagnostic], fresh: Sequence[Diagnostic]) -> tuple[Diagnostic, ...]:
    """What a variant adds, told under a finding of the design itself where that names the part that is the cause."""
    causes = {finding.cause for finding in fresh}
    under: dict[str, str] = {}
    for head in fresh:
        base = next((f for f in told if f.cause is None and f.subjects == head.subjects), None)
        if head.name in causes and base is not None and base.severity is not Severity.ADVICE:
            under[head.name] = base.name
    return tuple(replace(finding, cause=under.get(finding.cause or finding.name, finding.cause)) for finding in fresh)


def _told(finding: Diagnostic) -> tuple[str, Severity, str, int, int, tuple[str, ...]]:
    """What a finding says, figures apart."""
    span = finding.span
    return finding.name, finding.severity, span.source.name, span.start, span.end, finding.subjects


def _identity(finding: Diagnostic) -> tuple[str, str, int, int, str]:
    return (finding.name, finding.span.source.name, finding.span.start, finding.span.end, finding.headline)


__all__ = ["Checked", "Compilation", "compile_all", "compile_variant", "in_order", "read"]
