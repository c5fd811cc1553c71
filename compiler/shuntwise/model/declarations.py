"""Collected entries -> Declarations: each name once, each statement where it belongs, one variant laid over.

In: the entries of all files. Out: what is declared, before any value is worked out. A statement in a
variant, or in the position of a choice, replaces the one of the same name outside it, with what changed that; `set`,
`omit` and `fit` change a part of one.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, TypeVar

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings
from shuntwise.model.findings import same_label_twice
from shuntwise.source import Span
from shuntwise.syntax import tree as t
from shuntwise.syntax.words import SAID_FOR, STATEMENTS, nearest

_WORD = re.compile(r"[^\W\d]\w*")
_IN_NETWORK = (t.Let, t.PartDecl, t.CouplingDecl, t.Use, t.Walk)
_Single = TypeVar("_Single", t.DesignTitle, t.AmplifierDecl, t.BenchDecl)
_Owner = TypeVar("_Owner", t.TerminalsDecl, t.DriverDecl, t.PartDecl, t.Use)
_Spanned = TypeVar("_Spanned", t.NetworkDecl, t.Let, t.Variant, t.Choice, t.ConnectorDecl, t.Testpoint, t.Set, t.Limit,
                   t.BoardDecl)  # fmt: skip
_NOT_IN_VARIANT = (t.DesignTitle, t.NetworkDecl, t.Variant, t.Choice, t.Position, t.Include, t.Walk, t.BoardDecl)


@dataclass
class Declarations:
    """What is declared, by name. Mutable while it is being filled, and handed on as it is."""

    title: t.DesignTitle | None = None
    amplifier: t.AmplifierDecl | None = None
    bench: t.BenchDecl | None = None
    terminals: dict[str, t.TerminalsDecl] = field(default_factory=dict)
    drivers: dict[str, t.DriverDecl] = field(default_factory=dict)
    parts: dict[str, t.PartDecl] = field(default_factory=dict)
    uses: dict[str, t.Use] = field(default_factory=dict)
    networks: dict[str, t.NetworkDecl] = field(default_factory=dict)
    lets: dict[str, t.Let] = field(default_factory=dict)
    variants: dict[str, t.Variant] = field(default_factory=dict)
    choices: dict[str, t.Choice] = field(default_factory=dict)
    connectors: dict[str, t.ConnectorDecl] = field(default_factory=dict)
    chosen: dict[str, str] = field(default_factory=dict)
    couplings: list[t.CouplingDecl] = field(default_factory=list)
    legs: list[t.Leg] = field(default_factory=list)
    walks: list[t.Walk] = field(default_factory=list)
    testpoints: dict[str, t.Testpoint] = field(default_factory=dict)
    sets: dict[str, t.Set] = field(default_factory=dict)
    fittings: dict[str, tuple[bool, t.Path]] = field(default_factory=dict)
    expects: list[t.Expect] = field(default_factory=list)
    allows: list[t.Allow] = field(default_factory=list)
    limits: dict[str, t.Limit] = field(default_factory=dict)
    boards: dict[str, t.BoardDecl] = field(default_factory=dict)
    layouts: list[tuple[int, t.LayoutDecl]] = field(default_factory=list)
    """Each with the number of what lies below it: 0 outside of variants and positions."""
    stray_walks: bool = False
    stray_words: set[str] = field(default_factory=set)

    def owner(self, name: str) -> t.TerminalsDecl | t.DriverDecl | t.PartDecl | t.Use | None:
        """What a walk may name: one name space for inputs, drivers, parts and used networks."""
        return self.terminals.get(name) or self.drivers.get(name) or self.parts.get(name) or self.uses.get(name)


def declare(
    entries: Iterable[t.Entry], variant: str | None, positions: Mapping[str, str], settings: Sequence[t.Set]
) -> tuple[Declarations, list[Diagnostic]]:
    """Gather declarations and lay `variant`, the positions of all choices and then `settings` (tried values) over them.

    `positions` are the choices whose position is named; another stands where a `set` says, else in its first.
    """
    filling = _Filling()
    filling.top(entries)
    if variant is not None and variant in filling.d.variants:
        filling.overlay(filling.d.variants[variant].entries, "in a variant")
    filling.keep_choices_apart()
    changes = {entry.target.text: entry for entry in settings}
    filling.d.sets |= changes
    for choice in filling.d.choices.values():
        filling.choose(choice, positions.get(choice.name.text))
    filling.d.sets |= {target: entry for target, entry in changes.items() if target not in filling.d.choices}
    return filling.d, filling.diagnostics


def positions_of(choice: t.Choice) -> dict[str, t.Position]:
    """The positions by name, in the order in which they are written."""
    found: dict[str, t.Position] = {}
    for entry in choice.entries:
        if isinstance(entry, t.Position):
            found.setdefault(entry.name.text, entry)
    return found


def fits(position: t.Position) -> list[t.Path]:
    """What a position fits."""
    return [
        target
        for entry in position.entries
        if isinstance(entry, t.Fitting) and entry.fitted
        for target in entry.targets
    ]


def declare_network(network: t.NetworkDecl) -> tuple[Declarations, list[Diagnostic]]:
    """The declarations inside one network."""
    filling = _Filling()
    filling.inside_network(network)
    return filling.d, filling.diagnostics


class _Filling:
    def __init__(self) -> None:
        self.d = Declarations()
        self.diagnostics: list[Diagnostic] = []
        self.replacing = False
        self.fresh: set[tuple[str, str]] = set()
        self.own_expects: list[t.Expect] = []
        self.layers = 0
        self.laid: dict[tuple[int, str], t.LayoutDecl] = {}

    def top(self, entries: Iterable[t.Entry]) -> None:
        for entry in entries:
            if isinstance(entry, t.Walk):
                self.stray_walk(entry)
            else:
                self.take(entry)

    def overlay(self, entries: Sequence[t.Entry], where: str) -> None:
        """Lay the statements of a variant or a position over what is declared outside it.

        What it restates it states whole: what `set`, `omit` and `fit` changed of it outside is set aside, as is
        what they fitted of a used network that it fits or leaves out itself.
        """
        self.replacing, self.fresh, self.own_expects = True, set(), []
        self.layers += 1
        restated = {name for entry in entries if (name := _restates(entry)) is not None}
        fitted = {target.text for entry in entries if isinstance(entry, t.Fitting) for target in entry.targets}
        _set_aside(self.d.sets, restated)
        _set_aside(self.d.fittings, restated | fitted)
        for entry in entries:
            if isinstance(entry, _NOT_IN_VARIANT):
                self.misplaced(entry, where)
            else:
                self.take(entry)
        self.replacing = False

    def keep_choices_apart(self) -> None:
        """A choice has no name that `set` or a variant's name could mean as well."""
        for name, choice in self.d.choices.items():
            variant, value, owner = self.d.variants.get(name), self.d.lets.get(name), self.d.owner(name)
            span = variant.span if variant is not None else value.span if value is not None else None
            span = owner.name.span if owner is not None else span
            if span is not None:
                self.say(same_label_twice(name, choice.name.span, span, "choice"))

    def choose(self, choice: t.Choice, wanted: str | None) -> None:
        """Put a choice into one position: what it says holds, and what only other positions fit is left out."""
        name, positions = choice.name.text, positions_of(choice)
        said = self.d.sets.pop(name, None)
        if wanted is None and said is not None:
            wanted = said.value.ident.text if isinstance(said.value, t.Name) else ""
            if wanted not in positions:
                self.say(findings.unknown_name(said.value.span.text, said.value.span, positions,
                                               f"no position of `{name}`"))  # fmt: skip
        position = positions.get(wanted or "") or next(iter(positions.values()), None)
        if position is None:
            return
        self.d.chosen[name] = position.name.text
        kept = {target.text for target in fits(position)}
        others = [target for other in positions.values() for target in fits(other) if target.text not in kept]
        _set_aside(self.d.fittings, {target.text for target in others})
        self.d.fittings |= {target.text: (False, target) for target in others}
        others_set = [e for e in position.entries if isinstance(e, t.Set) and e.target.text in self.d.choices]
        for entry in others_set:
            self.misplaced(entry, "in a position", "a position moves no other choice: do it in a variant")
        self.overlay([entry for entry in position.entries if entry not in others_set], "in a position")

    def inside_network(self, network: t.NetworkDecl) -> None:
        for entry in network.entries:
            if isinstance(entry, t.Walk):
                self.d.walks.append(entry)
            elif isinstance(entry, _IN_NETWORK):
                self.take(entry)
            else:
                self.misplaced(
                    entry,
                    "in a network",
                    "a network holds parts, values, walks and other networks; it is "
                    "joined to the rest through its ports alone",
                )

    # --- one entry

    def take(self, entry: t.Entry) -> None:
        d = self.d
        match entry:
            case t.DesignTitle():
                d.title = self.single(d.title, entry, "design", entry.title.span)
            case t.AmplifierDecl():
                d.amplifier = self.single(d.amplifier, entry, "amplifier", entry.span)
            case t.BenchDecl():
                d.bench = self.single(d.bench, entry, "bench", entry.span)
            case t.TerminalsDecl():
                self.named(d.terminals, entry, "input" if entry.fed else "pair of posts")
            case t.ConnectorDecl():
                self.keyed(d.connectors, entry.name, entry, "connector")
            case t.DriverDecl():
                self.named(d.drivers, entry, "driver")
            case t.PartDecl():
                self.named(d.parts, entry, entry.kind.text)
            case t.Use():
                self.named(d.uses, entry, "network")
            case t.NetworkDecl():
                self.keyed(d.networks, entry.name, entry, "network")
            case t.Let():
                self.keyed(d.lets, entry.name, entry, "value")
            case t.Variant():
                self.keyed(d.variants, entry.name, entry, "variant")
            case t.Choice():
                self.choice(entry)
            case t.Position():
                self.misplaced(entry, "here", "a position stands in a `choice NAME { ... }`")
            case t.CouplingDecl():
                self.coupling(entry)
            case t.Leg():
                self.leg(entry)
            case t.Testpoint():
                self.keyed(d.testpoints, entry.node, entry, "test point")
            case t.Set():
                ident = t.Ident(entry.target.text, entry.target.span)
                self.keyed(d.sets, ident, entry, "value")
            case t.Fitting():
                for target in entry.targets:
                    d.fittings[target.text] = (entry.fitted, target)
            case t.Expect():
                self.expect(entry)
            case t.Allow():
                d.allows.append(entry)
            case t.Limit():
                self.keyed(d.limits, entry.finding, entry, "limit")
            case t.BoardDecl():
                self.keyed(d.boards, entry.name, entry, "board")
            case t.LayoutDecl():
                self.layout(entry)
            case _:
                self.misplaced(entry, "here")

    def single(self, old: _Single | None, new: _Single, what: str, span: Span) -> _Single:
        if old is not None and not self.replacing:
            self.say(same_label_twice(what, span, old.span, "statement"))
            return old
        return new

    def keyed(self, table: dict[str, _Spanned], ident: t.Ident, entry: _Spanned, what: str) -> None:
        """Add under a name; twice is a finding, except that a variant replaces what stands outside it."""
        old = table.get(ident.text)
        mark = (what, ident.text)
        if old is not None and (not self.replacing or mark in self.fresh):
            self.say(same_label_twice(ident.text, ident.span, old.span, what))
            return
        if self.replacing:
            self.fresh.add(mark)
        table[ident.text] = entry

    def named(self, table: dict[str, _Owner], entry: _Owner, what: str) -> None:
        """Add what a walk may name. A variant may turn one kind into another, such as a resistor into a link."""
        word = entry.name.text
        old = self.d.owner(word)
        mark = ("owner", word)
        if old is not None and (not self.replacing or mark in self.fresh):
            self.say(same_label_twice(word, entry.name.span, old.name.span, what))
            return
        if self.replacing:
            self.fresh.add(mark)
            others: tuple[dict[str, Any], ...] = (self.d.terminals, self.d.drivers, self.d.parts, self.d.uses)
            for other in others:
                if other is not table:
                    other.pop(word, None)
        table[word] = entry

    def choice(self, entry: t.Choice) -> None:
        self.keyed(self.d.choices, entry.name, entry, "choice")
        seen: dict[str, t.Position] = {}
        for inner in entry.entries:
            if not isinstance(inner, t.Position):
                self.misplaced(inner, "in a choice", "a choice holds its positions: `position soft { fit K2 }`")
            elif (old := seen.setdefault(inner.name.text, inner)) is not inner:
                self.say(same_label_twice(inner.name.text, inner.name.span, old.name.span, "position"))
        if len(seen) < 2:
            self.say(findings.lone_position(entry.name, len(seen)))

    def coupling(self, entry: t.CouplingDecl) -> None:
        pair = {entry.first.text, entry.second.text}
        for index, old in enumerate(self.d.couplings):
            if {old.first.text, old.second.text} == pair:
                if self.replacing:
                    self.d.couplings[index] = entry
                else:
                    word = f"{entry.first.text} and {entry.second.text}"
                    self.say(same_label_twice(word, entry.span, old.span, "coupling"))
                return
        self.d.couplings.append(entry)

    def leg(self, entry: t.Leg) -> None:
        if self.replacing:
            names = {driver.text for driver in entry.drivers}
            self.d.legs[:] = [leg for leg in self.d.legs if {driver.text for driver in leg.drivers} != names]
        walks = []
        for inner in entry.entries:
            if isinstance(inner, t.Walk):
                walks.append(inner)
            else:
                self.misplaced(inner, "in a leg", "a leg holds walks only; declare parts and values outside it")
        self.d.legs.append(t.Leg(entry.drivers, tuple(walks), entry.span))

    def layout(self, entry: t.LayoutDecl) -> None:
        """One of a name outside of variants, and one more in each."""
        first = self.laid.setdefault((self.layers, entry.name.text), entry)
        if first is not entry:
            self.say(same_label_twice(entry.name.text, entry.name.span, first.name.span, "layout"))
            return
        self.d.layouts.append((self.layers, entry))

    def expect(self, entry: t.Expect) -> None:
        if self.replacing:
            self.d.expects[:] = [
                old for old in self.d.expects if old in self.own_expects or _about(old) != _about(entry)
            ]
            self.own_expects.append(entry)
        self.d.expects.append(entry)

    # --- what stands in the wrong place

    def stray_walk(self, walk: t.Walk) -> None:
        self.d.stray_walks = True
        self.d.stray_words.update(_WORD.findall(walk.span.text))
        if len(walk.stations) == 1 and isinstance(walk.stations[0], t.Path):
            word = walk.stations[0].words[0]
            close = SAID_FOR.get(word.text.casefold()) or nearest(word.text, STATEMENTS)
            self.say(
                findings.error(
                    "unknown-statement",
                    walk.span,
                    f"no statement begins with `{word.text}`",
                    label="not a word that a line can begin with",
                    help=f"write `{close}`" if close else "remove it, or write a whole statement",
                    fixes=(findings.replace(word.span, close),) if close else (),
                )
            )
            return
        self.say(
            findings.error(
                "walk-outside-leg",
                walk.span,
                "this walk belongs to no leg",
                label="wiring stands in a leg",
                why="what a leg is for is what makes most checks possible",
                help="put it into `leg NAME { ... }` of the driver that it serves",
            )
        )

    def misplaced(self, entry: t.Entry, where: str, help_text: str = "move it out") -> None:
        self.d.stray_words.update(_WORD.findall(entry.span.text))  # what it would have declared is no news
        line = Span(entry.span.source, entry.span.start, _line_end(entry.span))
        self.say(
            findings.error(
                "misplaced-statement",
                line,
                f"this statement cannot stand {where}",
                label="out of place",
                help=help_text,
            )
        )

    def say(self, finding: Diagnostic) -> None:
        self.diagnostics.append(finding)


def _set_aside(changes: dict[str, Any], names: Collection[str]) -> None:
    """Take out the changes of these names, and of what these names contain."""
    for target in tuple(changes):
        words = target.split(".")
        if any(".".join(words[:count]) in names for count in range(1, len(words) + 1)):
            del changes[target]


def _restates(entry: t.Entry) -> str | None:
    """The name whose value, attributes or fitting this statement says anew."""
    if isinstance(entry, t.AmplifierDecl):
        return "amplifier"
    if isinstance(entry, t.BenchDecl):
        return "bench"
    return entry.name.text if isinstance(entry, t.PartDecl | t.DriverDecl | t.Use | t.Let) else None


def _about(entry: t.Expect) -> tuple[str, ...]:
    """What an expectation is about: a variant's replaces those outside it that are about the same."""
    return (entry.quantity.text, *(subject.text for subject in entry.subjects))


def _line_end(span: Span) -> int:
    """The end of the first line of a span."""
    at = span.source.text.find("\n", span.start, span.end)
    return at if at >= 0 else span.end
