"""`set`, `omit` and `fit`: changes laid over what is declared.

In: those statements, from the design, its variant and the command line. Out: values, attributes and fitting as
changed, and findings on what names nothing. A `set` is written outside any network, so its own names are the
design's.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings
from shuntwise.model.design import Quantity
from shuntwise.model.evaluate import Scope
from shuntwise.model.items import Attributes
from shuntwise.model.kinds import Attribute, Kind
from shuntwise.syntax import tree as t


class Changes:
    """`sets` by target as written, `fittings` likewise. It remembers which have found what they name."""

    def __init__(self, sets: Mapping[str, t.Set], fittings: Mapping[str, tuple[bool, t.Path]]) -> None:
        self.sets, self.fittings = sets, fittings
        self.used: set[str] = set()
        self.used_fittings: set[str] = set()

    def lets(self, lets: Mapping[str, t.Expr]) -> dict[str, t.Expr]:
        """The values named by `let`, as changed."""
        changed = {name: entry.value for name, entry in self.sets.items() if name in lets}
        self.used |= changed.keys()
        return {**lets, **changed}

    def value(self, label: str, written: t.Expr | None, attribute: Attribute, scope: Scope) -> Quantity | None:
        """The value behind a name, as written or as changed; None where there is none or it is refused."""
        entry = self.sets.get(label)
        if entry is not None:
            self.used.add(label)
            return scope.design_scope.typed(entry.value, attribute, label)
        return scope.typed(written, attribute, label) if written is not None else None

    def lay_over(self, attributes: Attributes, label: str, kind: Kind, scope: Scope) -> None:
        """Change the attributes of one thing in place."""
        known = kind.attributes
        for target, entry in self.sets.items():
            owner, _, name = target.rpartition(".")
            if owner != label:
                continue
            self.used.add(target)
            if name not in known:
                word = entry.target.words[-1]
                scope.say(findings.unknown_word(name, word.span, known, f"on `{label}`"))
                continue
            quantity = scope.design_scope.typed(entry.value, known[name], label)
            if quantity is not None:
                attributes.quantities[name] = quantity

    def of_parameter(self, target: str) -> t.Set | None:
        """The change of a used network's parameter, if there is one."""
        entry = self.sets.get(target)
        if entry is not None:
            self.used.add(target)
        return entry

    def fitted(self, label: str) -> bool:
        """Is the part fitted? It is, unless said otherwise of it, or else of the used network that holds it."""
        said: bool | None = None
        name = label
        while name:
            fitting = self.fittings.get(name)
            if fitting is not None:
                self.used_fittings.add(name)
                said = fitting[0] if said is None else said
            name = name.rpartition(".")[0]
        return said is not False

    def unused(
        self, values: Collection[str], parts: Collection[str], doubtful: Collection[str]
    ) -> Iterator[Diagnostic]:
        """Findings on changes that name nothing; to be asked when everything has been read."""
        for target, entry in self.sets.items():
            owner = target.rpartition(".")[0]
            if target not in self.used and target not in doubtful and owner not in doubtful:
                yield findings.unknown_name(target, entry.target.span, values, "nothing with a value of this name")
        for target, (_, path) in self.fittings.items():
            if target not in self.used_fittings and target not in doubtful:
                yield findings.unknown_name(target, path.span, parts, "no part of this name")
