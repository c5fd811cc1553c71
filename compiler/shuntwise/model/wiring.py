"""Walks -> stops: every station of a walk looked up.

In: the walks as written and what is declared. Out: resolved `Walk`s and the nodes that the author named.
A node needs no declaration, so a slip in a part's name must not quietly become a node: see `_is_slip`.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic
from shuntwise.diagnostics.wording import quoted
from shuntwise.model import findings
from shuntwise.model.design import NodeStop, ParallelStop, PartStop, Stop, UnknownStop, Walk
from shuntwise.model.kinds import KINDS
from shuntwise.source import Span
from shuntwise.syntax import tree as t
from shuntwise.syntax.words import nearest

RETURN_WORDS = ("return", "ground")
_NEAR_RETURN = frozenset(("gnd", "earth", "common", "com", "minus", "ret", "neutral", "returns", "grnd"))
_NEAR_INPUT = frozenset(("in", "inp", "amp", "amplifier", "input"))
_LABEL = re.compile(r"([^\W\d]+)\d+[a-z]?")
_PART_LETTERS = "|".join(letters for kind in KINDS.values() for letters in kind.for_no_node)
_PART_LIKE = re.compile(rf"(?:{_PART_LETTERS})\d+[a-z]?", re.IGNORECASE)


@dataclass(frozen=True)
class Place:
    """What a walk may name, within one scope.

    `paired` are things with a plus and a minus pad (inputs, posts, drivers). `through` maps a part or a
    used network to its terminals in order. `named_terminals` are those whose terminals may be wired by name.
    `ports` are a network's own. `prefix` stands before every local name.
    """

    paired: Mapping[str, str]
    through: Mapping[str, tuple[str, ...]]
    named_terminals: frozenset[str]
    ports: tuple[str, ...] = ()
    prefix: str = ""
    returns: tuple[str, ...] = ()
    doubtful: frozenset[str] = frozenset()


@dataclass
class Wiring:
    """What came of the walks of one scope. `meant` are names that a refused station may have stood for."""

    walks: list[Walk] = field(default_factory=list)
    node_spans: dict[str, list[Span]] = field(default_factory=dict)
    diagnostics: list[Diagnostic] = field(default_factory=list)
    meant: set[str] = field(default_factory=set)
    lost: bool = False


def resolve_walks(walks: Sequence[tuple[t.Walk, int | None]], place: Place) -> Wiring:
    """Look up the stations of all walks of one scope; the integer is the walk's leg."""
    resolving = _Resolving(place, Counter(name for walk, _ in walks for name in _written(walk.stations)))
    for walk, leg in walks:
        resolving.walk(walk, leg)
    return resolving.out


def _written(stations: Sequence[t.Station]) -> Iterator[str]:
    """All stations as they are written, pads with their sign."""
    for station in stations:
        if isinstance(station, t.Group):
            for chain in station.chains:
                yield from _written(chain.stations)
        else:
            yield station.text


def _named(stations: Sequence[t.Station]) -> Iterator[str]:
    """All that stations name, without pads' signs and terminals."""
    for station in stations:
        if isinstance(station, t.Group):
            for chain in station.chains:
                yield from _named(chain.stations)
        else:
            yield station.owner.text if isinstance(station, t.Pad) else station.words[0].text


def might_be(word: str, names: Iterable[str]) -> Iterator[str]:
    """The names that a slip may have turned into `word`: near ones, and labels with the same letters."""
    label = _LABEL.fullmatch(word)
    for name in names:
        other = _LABEL.fullmatch(name)
        if (label and other and label[1].casefold() == other[1].casefold()) or nearest(word, (name,)):
            yield name


class _Resolving:
    def __init__(self, place: Place, counts: Counter[str]) -> None:
        self.place, self.counts = place, counts
        self.out = Wiring()
        self.told: set[str] = set()

    def walk(self, walk: t.Walk, leg: int | None) -> None:
        if len(walk.stations) < 2:
            self.refuse(
                findings.error(
                    "walk-too-short",
                    walk.span,
                    "a walk joins at least two things",
                    label="stands alone",
                    help="go on with `-- ...`",
                ),
                *_named(walk.stations),
            )
            return
        self.out.walks.append(Walk(self.stops(walk.stations), leg, walk.span))

    def stops(self, stations: Sequence[t.Station]) -> tuple[Stop, ...]:
        stops: list[Stop] = []
        for index, station in enumerate(stations):
            neighbours = [stations[i] for i in (index - 1, index + 1) if 0 <= i < len(stations)]
            match station:
                case t.Pad():
                    stops.append(self.pad(station))
                case t.Path():
                    stops.append(self.path(station, neighbours))
                case t.Group():
                    stops.append(self.group(station))
        return tuple(stops)

    def group(self, group: t.Group) -> Stop:
        if not group.chains:
            return self.unknown(group.span)
        chains = tuple(self.stops(chain.stations) for chain in group.chains)
        for chain, written in zip(chains, group.chains, strict=True):
            for stop in (chain[0], chain[-1]):
                if isinstance(stop, NodeStop):
                    self.refuse(
                        findings.error(
                            "node-ends-group",
                            written.span,
                            "a branch of a group begins and ends with a part",
                            label="this end is a node",
                            help="the group's two ends are where the walk enters and leaves it; name nodes outside",
                        ),
                        *_named([group]),
                    )
                    return UnknownStop(group.span)
        if len(chains) == 1:
            self.out.diagnostics.append(
                findings.error(
                    "lone-branch",
                    group.span,
                    "this group has one branch only",
                    label="parallel to nothing",
                    help="write `(A | B)`, or leave the brackets out",
                )
            )
        return ParallelStop(chains, group.span)

    def pad(self, pad: t.Pad) -> Stop:
        owner = pad.owner.text
        if owner in self.place.paired:
            return NodeStop(self.place.prefix + pad.text, pad.span)
        if owner in self.place.doubtful:
            return self.unknown(pad.span)
        if owner in RETURN_WORDS:
            fix = findings.replace(pad.span, owner, Confidence.NEEDS_REVIEW)
            self.refuse(
                findings.error(
                    "unknown-name",
                    pad.span,
                    f"`{owner}` has no pads of its own",
                    label="one node",
                    help=f"write `{owner}`",
                    fixes=(fix,),
                )
            )
        elif owner in self.place.through:
            self.refuse(
                findings.error(
                    "pad-on-part",
                    pad.span,
                    f"`{owner}` has no pad `{pad.sign}`",
                    label="only inputs, posts and drivers have plus and minus pads",
                    help=f"walk through it: `... -- {owner} -- ...`",
                    subjects=(owner,),
                ),
                owner,
            )
        elif self.place.prefix:
            self.refuse(
                findings.error(
                    "unknown-name",
                    pad.span,
                    f"`{pad.text}` cannot be reached from inside a network",
                    label="only the network's own ports and parts can",
                    help="give the network a port for it",
                )
            )
        elif self._near_input(owner):
            meant = self.place.returns[0]
            self.out.diagnostics.append(self.no_input(owner, pad.span, meant + pad.sign, Confidence.SAFE))
            return NodeStop(meant + pad.sign, pad.span)
        elif (whole := owner.rpartition(".")[0]) in self.place.paired:
            self.refuse(
                findings.error(
                    "unknown-name",
                    pad.span,
                    f"`{whole}` has one voice coil, and no coil `{owner.rpartition('.')[2]}`",
                    label="no such pad",
                    help=f"write `coils 2` at the driver `{whole}`, or `{whole}{pad.sign}`",
                    subjects=(whole,),
                ),
                whole,
            )
        elif coils := [f"{name}{pad.sign}" for name in self.place.paired if name.startswith(f"{owner}.")]:
            self.refuse(
                findings.error(
                    "unknown-name",
                    pad.span,
                    f"`{owner}` has two voice coils, each with its own pads",
                    label="of which coil",
                    help=f"write {' or '.join(f'`{coil}`' for coil in coils)}",
                    subjects=(owner,),
                ),
                *(coil[:-1] for coil in coils),
            )
        else:
            self.refuse(
                findings.unknown_name(
                    owner, pad.owner.span, self.place.paired, "no input, posts or driver of this name"
                ),
                *might_be(owner, self.place.paired),
            )
        return UnknownStop(pad.span)

    def path(self, path: t.Path, neighbours: Sequence[t.Station]) -> Stop:
        place, name, span = self.place, path.text, path.span
        if len(path.words) > 1:
            return self.terminal(path)
        if name in place.ports:
            return NodeStop(place.prefix + name, span)
        if name in place.through:
            terminals = place.through[name]
            return PartStop(place.prefix + name, terminals[0], terminals[1], span)
        if name in RETURN_WORDS and not place.prefix:
            return self.at_return(name, span)
        if name in place.paired:
            self.refuse(
                findings.error(
                    "pad-sign-missing",
                    span,
                    f"`{name}` has two pads",
                    label="which one",
                    why="polarity is wired on purpose, so each pad is named",
                    help=f"write `{name}+` or `{self.minus(name)}`",
                    fixes=(findings.replace(span, self.likely_pad(name, neighbours)),),
                    subjects=(name,),
                ),
                name,
            )
            return UnknownStop(span)
        if len(neighbours) < 2 and not place.prefix and self._near_input(name) and self._is_no_node(name):
            meant = self.likely_pad(place.returns[0], neighbours)
            self.refuse(self.no_input(name, span, meant, Confidence.NEEDS_REVIEW), place.returns[0])
            return UnknownStop(span)
        if not (name[0].isalpha() or name[0] == "_"):  # a value, as the finding on it has said
            self.out.meant.update(place.prefix + part for part in place.through if part not in self.counts)
            return self.unknown(span)
        if name in place.doubtful:
            return self.unknown(span)
        if name.casefold() in _NEAR_RETURN and not place.prefix:
            fix = findings.replace(span, "return", Confidence.SAFE)
            self.out.diagnostics.append(
                findings.error(
                    "unknown-name",
                    span,
                    f"nothing is called `{name}`",
                    label="no node of this name",
                    help="the input's minus is called `return`",
                    fixes=(fix,),
                    subjects=(name,),
                )
            )
            return self.at_return(name, span)
        if self._is_slip(name, neighbours):
            known = (*place.through, *(f"{owner}+" for owner in place.paired), *place.ports, *self.out.node_spans)
            found = findings.unknown_name(
                name,
                span,
                known,
                "no part, driver or node of this name",
                why="a part that is nowhere declared cannot be placed in the circuit",
            )
            if name in self.told and not found.fixes:
                return self.unknown(span)
            self.told.add(name)
            self.refuse(
                _taken_for_part(found, name) if _PART_LIKE.fullmatch(name) else found,
                *might_be(name, (*place.through, *place.paired)),
            )
            return UnknownStop(span)
        node = place.prefix + name
        self.out.node_spans.setdefault(node, []).append(span)
        return NodeStop(node, span)

    def minus(self, name: str) -> str:
        """The minus pad of an input or a driver, as one writes it."""
        return RETURN_WORDS[0] if self.place.returns == (name,) else f"{name}-"

    def likely_pad(self, name: str, neighbours: Sequence[t.Station]) -> str:
        """The pad that is likelier meant: the minus beside another minus."""
        beside = any(
            station.sign == "-" if isinstance(station, t.Pad) else station.text in RETURN_WORDS
            for station in neighbours
            if not isinstance(station, t.Group)
        )
        return self.minus(name) if beside else f"{name}+"

    def no_input(self, typed: str, span: Span, meant: str, confidence: Confidence) -> Diagnostic:
        """`in+` where there is an input by another name."""
        name = self.place.returns[0]
        return findings.error(
            "unknown-name",
            span,
            f"nothing is called `{typed}`",
            label="no input, posts or driver of this name",
            help=f"the input's plus is called `{name}+`, its minus `{self.minus(name)}`",
            fixes=(findings.replace(span, meant, confidence),),
            subjects=(typed,),
        )

    def _near_input(self, word: str) -> bool:
        """Does this word mean the input, of which there is one, by another name?"""
        return word.casefold() in _NEAR_INPUT and len(self.place.returns) == 1

    def _is_no_node(self, name: str) -> bool:
        """Is the end of a walk that is called like the input none of a node's ends, but the input itself?"""
        return self.counts[name] == 1 or not self.counts[f"{self.place.returns[0]}+"]

    def terminal(self, path: t.Path) -> Stop:
        """`T1.tap` or `Z1.load`: a terminal wired by name."""
        owner = ".".join(word.text for word in path.words[:-1])
        terminal = path.words[-1]
        if owner in self.place.through and owner in self.place.named_terminals:
            terminals = self.place.through[owner]
            if terminal.text in terminals:
                return NodeStop(self.place.prefix + path.text, path.span)
            said = findings.unknown_name(terminal.text, terminal.span, terminals, f"no terminal of `{owner}`")
            if not said.fixes:
                said = replace(said, help=f"its terminals are {quoted(terminals)}")
            self.refuse(said, owner)
            return UnknownStop(path.span)
        if owner in self.place.doubtful:
            return self.unknown(path.span)
        if owner in self.place.through:
            self.refuse(
                findings.error(
                    "pad-on-part",
                    path.span,
                    f"`{owner}` has two ends only, which a walk goes through",
                    help=f"walk through it: `... -- {owner} -- ...`",
                    subjects=(owner,),
                ),
                owner,
            )
            return UnknownStop(path.span)
        self.refuse(
            findings.unknown_name(
                owner, path.span, self.place.named_terminals, "no network or tapped coil of this name"
            ),
            *might_be(owner, self.place.named_terminals),
        )
        return UnknownStop(path.span)

    def at_return(self, name: str, span: Span) -> Stop:
        returns = self.place.returns
        if len(returns) == 1:
            return NodeStop(returns[0] + "-", span)
        choices = " or ".join(f"`{owner}-`" for owner in returns)
        self.refuse(
            findings.error(
                "return-unclear",
                span,
                f"`{name}` could be {choices}" if returns else f"no input is declared that `{name}` could belong to",
                label="one node of several",
                why="with two amplifiers the returns are not the same wire",
                help=f"write {choices}" if returns else "declare an `input`",
            ),
            *returns,
        )
        return UnknownStop(span)

    def _is_slip(self, name: str, neighbours: Sequence[t.Station]) -> bool:
        """Is this surely a mistyped name, and no node?

        A name in the form of a part label is. So is one that stands only once, in the middle of a walk,
        when a declared name is close to it or when it would join two nodes by a bare wire.
        """
        if _PART_LIKE.fullmatch(name):
            return True
        if self.counts[name] > 1 or len(neighbours) < 2:
            close = nearest(name, (*self.place.through, *self.place.paired)) if self.counts[name] == 1 else None
            return close is not None and close.casefold() == name.casefold()
        if nearest(name, (*self.place.through, *self.place.paired)) is not None:
            return True
        return all(self._is_node(neighbour) for neighbour in neighbours)

    def _is_node(self, station: t.Station) -> bool:
        return isinstance(station, t.Pad) or (isinstance(station, t.Path) and station.text not in self.place.through)

    def unknown(self, span: Span) -> UnknownStop:
        self.out.lost = True
        return UnknownStop(span)

    def refuse(self, finding: Diagnostic, *meant: str) -> None:
        """Make a finding on a station that has to be left out; `meant` are local names that it may stand for."""
        self.out.lost = True
        self.out.diagnostics.append(finding)
        self.out.meant.update(self.place.prefix + name for name in meant)


def _taken_for_part(found: Diagnostic, name: str) -> Diagnostic:
    """The same finding on a name that has the form of a part's label: a node may have been meant."""
    return replace(
        found,
        label="taken for a part, which is nowhere declared",
        why="a name that is a part's letter and a number is a part's label, and never a node",
        help=f"{found.help}; if a node is meant, give it a name of another form, such as `node_{name}`",
    )
