"""`coupling` statements -> couplings of two coils that there are.

In: entries, the parts by label. Out: couplings, each pair once, and findings. Refuses to know what a coil is wired to.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings, kinds
from shuntwise.model.design import Coupling, Part
from shuntwise.model.evaluate import Scope
from shuntwise.syntax import tree as t


def read_couplings(
    entries: Sequence[t.CouplingDecl],
    prefix: str,
    scope: Scope,
    parts: Mapping[str, Part],
    uses: Collection[str],
    doubtful: Collection[str],
) -> tuple[list[Coupling], list[Diagnostic]]:
    """The couplings that are stated in the design, or in a network under the name `prefix`.

    A coil inside a network that is used there is looked up once all are put in.
    """
    read: list[Coupling] = []
    said: list[Diagnostic] = []
    for entry in entries:
        k = scope.typed(entry.value, kinds.COUPLING, "coupling")
        labels = []
        for path in (entry.first, entry.second):
            label = prefix + path.text
            part = parts.get(label)
            if part is None:
                if path.words[0].text in uses:
                    labels.append(label)
                elif path.text not in doubtful:
                    coils = [name for name, part in parts.items() if kinds.KINDS[part.kind].couples]
                    said.append(findings.unknown_name(path.text, path.span, coils, "no coil of this name"))
            elif not kinds.KINDS[part.kind].couples:
                said.append(
                    findings.error(
                        "coupling-impossible",
                        path.span,
                        f"`{path.text}` is a {part.kind}, not a coil",
                        label="only coils couple",
                        help="name two coils",
                        subjects=(label,),
                    )
                )
            else:
                labels.append(label)
        if len(labels) == 2 and labels[0] == labels[1]:
            said.append(
                findings.error(
                    "coupling-impossible",
                    entry.span,
                    f"`{labels[0]}` is coupled with itself",
                    help="name two coils",
                    subjects=(labels[0],),
                )
            )
        elif len(labels) == 2:
            read.append(Coupling(labels[0], labels[1], k, entry.span))
    return read, said


def kept_couplings(
    couplings: Sequence[Coupling], parts: Mapping[str, Part], doubtful: Collection[str]
) -> tuple[tuple[Coupling, ...], list[Diagnostic]]:
    """Those whose coils there are, each pair once: one may be stated inside a network and outside it."""
    kept: list[Coupling] = []
    said: list[Diagnostic] = []
    for coupling in couplings:
        old = next((c for c in kept if {c.first, c.second} == {coupling.first, coupling.second}), None)
        if old is not None:
            word = f"{coupling.first} and {coupling.second}"
            said.append(findings.same_label_twice(word, coupling.span, old.span, "coupling"))
            continue
        lacking = [label for label in (coupling.first, coupling.second) if label not in parts]
        said += [
            findings.unknown_name(label, coupling.span, parts, "no coil of this name")
            for label in lacking
            if label not in doubtful
        ]
        if not lacking:
            kept.append(coupling)
    return tuple(kept), said
