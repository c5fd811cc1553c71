"""Open ends and dead pieces -> faults: what one missing wire or walk leaves open is one fault.

In: the open ends, the clusters of dead edges, the labels that stand in no walk. Out: the ends that are told
of, and what they explain. Refuses to know how an end came to be open.

A missing wire parts what hangs on the return from what hangs on the input: it leaves a fragment on each side,
of which one or both show as an open end. So, within one leg,

1. two open ends on opposite sides are one fault, told at one of them;
2. an open end explains a dead piece on the other side that has no open end of its own;
3. what stands in no walk explains fragments cut off from the input: its missing walk led to them;
4. an input's own pad is told of only if no fragment on the other side lacks just such a wire.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from shuntwise.checks.faults.open_end import OpenEnd
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.currents import DeadPiece
from shuntwise.graph.topology import pair_links, reached
from shuntwise.syntax.words import nearest

Side = Literal["hot", "return", "free"]
_CUT_OFF = ("return", "free")

MOST_PAIRS = 10_000
"""Fragments are not paired in a text with more possible pairs than this: it is broken beyond such finesse."""


@dataclass(frozen=True)
class Fragment:
    """A dead piece that a missing wire left: on which side it hangs, and its open end if it has one."""

    cluster: int
    side: Side
    legs: frozenset[int]
    end: OpenEnd | None


@dataclass(frozen=True)
class Told:
    """`ends` are told of. `nets` are explained by them, and the pads of `inputs`."""

    ends: tuple[OpenEnd, ...]
    nets: frozenset[str]
    inputs: frozenset[str]


def pair(
    circuit: Circuit,
    clusters: Sequence[DeadPiece],
    ends: Sequence[OpenEnd],
    explained: Collection[str],
    unwired: Collection[str],
) -> Told:
    """Which of the ends are told of. `explained` are nets of which all has been said."""
    pairing = _Pairing(circuit, clusters)
    fragments = pairing.fragments(ends, explained)
    silent = pairing.silent(fragments, len(unwired))
    told = tuple(
        replace(end, partner=pairing.partner.get(end.net))
        for end in ends
        if end.net not in silent and not _is_feed(end)
    )
    nets = {end.net for end in ends}
    for fragment in fragments:
        if fragment.end is None and f"cluster {fragment.cluster}" in silent:
            nets |= clusters[fragment.cluster].nets
    pads, inputs = pairing.pads([end for end in ends if _is_feed(end)], fragments, silent, bool(unwired))
    return Told((*told, *pads), frozenset(nets), inputs)


def _is_feed(end: OpenEnd) -> bool:
    return end.attachment is not None and end.attachment.kind == "feed"


class _Pairing:
    def __init__(self, circuit: Circuit, clusters: Sequence[DeadPiece]) -> None:
        self.circuit, self.clusters = circuit, clusters
        self.returns = {circuit.pad(feed.name, "-") for feed in circuit.design.feeds}
        self.partner: dict[str, OpenEnd] = {}

    # --- fragments

    def fragments(self, ends: Sequence[OpenEnd], explained: Collection[str]) -> list[Fragment]:
        at = {net: number for number, cluster in enumerate(self.clusters) for net in cluster.nets}
        found, with_end = [], set[int]()
        for end in ends:
            if end.net in at and (end.attachment is None or end.attachment.kind in ("part", "driver")):
                with_end.add(at[end.net])
                side = self.side(at[end.net])
                if side is not None:
                    found.append(Fragment(at[end.net], side, self.legs(_names(end)), end))
        for number, cluster in enumerate(self.clusters):
            side = self.side(number)
            if number not in with_end and side is not None and cluster.nets.isdisjoint(explained):
                names = [name for edge in cluster.edges for name in _walked_as(edge.owner)]
                found.append(Fragment(number, side, self.legs(names), None))
        return found

    def side(self, number: int) -> Side | None:
        contacts = self.clusters[number].contacts
        if not contacts:
            return "free"
        if contacts <= self.returns:
            return "return"
        return None if contacts & self.returns else "hot"

    def legs(self, names: Collection[str]) -> frozenset[int]:
        return frozenset[int]().union(*(self.circuit.leg_of.get(name, frozenset()) for name in names))

    # --- pairs

    def silent(self, fragments: Sequence[Fragment], unwired: int) -> set[str]:
        """Nets of ends, and numbers of clusters, that another finding explains."""
        silent: set[str] = set()
        missing_walks = unwired + 1 if unwired else 0
        cut_off = [fragment for fragment in fragments if fragment.side in _CUT_OFF]
        others = [fragment for fragment in fragments if fragment.side != "return"]
        if len(cut_off) * len(others) > MOST_PAIRS:
            return silent
        paired: set[str] = set()
        # Ends with ends first, then ends with pieces that have none.
        for both in (True, False):
            for first in cut_off:
                fitting = [other for other in others if self.fit(first, other, both) and _key(other) not in paired]
                if not fitting or _key(first) in paired:
                    continue
                best = min(fitting, key=lambda other: (not _alike(first.end, other.end), others.index(other)))
                paired |= {_key(first), _key(best)}
                if missing_walks > 1:  # the missing walk led from the one to the other
                    missing_walks -= 2
                    silent |= {_key(first), _key(best)}
                else:
                    silent.add(self.quiet_one(first, best))
        for fragment in cut_off:
            within = unwired and self.in_network(fragment)  # the missing walk may lead through a used network
            if (within or missing_walks) and _key(fragment) not in paired:
                missing_walks -= not within
                silent.add(_key(fragment))
        return silent

    def in_network(self, fragment: Fragment) -> bool:
        return any("." in edge.owner for edge in self.clusters[fragment.cluster].edges)

    def fit(self, first: Fragment, other: Fragment, both: bool) -> bool:
        """May one missing wire have led from the one to the other?"""
        if first.cluster == other.cluster or first.side == other.side:
            return False
        ends = (first.end is not None) + (other.end is not None)
        same_leg = not first.legs or not other.legs or bool(first.legs & other.legs)
        return same_leg and ends == (2 if both else 1)

    def quiet_one(self, first: Fragment, other: Fragment) -> str:
        """Of two fragments of one fault, the one that is not told of."""
        if first.end is None or other.end is None:
            return _key(first if first.end is None else other)
        told, quiet = sorted((first.end, other.end), key=self.telling)
        self.partner[told.net] = quiet
        return quiet.net

    def telling(self, end: OpenEnd) -> tuple[int, int, str]:
        """Names that do not meet say most, then parts, then drivers; of two alike the later in the text."""
        rank = ("loose-node", "half-fitted", "driver-one-lead", "terminal-unused").index(end.kind)
        spans = (span for name in _names(end) for span in self.circuit.spans.get(name, ()))
        return rank, -max((span.start for span in spans), default=0), end.net

    # --- inputs

    def pads(
        self, ends: Sequence[OpenEnd], fragments: Sequence[Fragment], silent: set[str], unwired: bool
    ) -> tuple[tuple[OpenEnd, ...], frozenset[str]]:
        """The open pads of inputs that are told of, and the inputs of which nothing more need be said."""
        open_pads = [end.point for end in ends]
        told, inputs = [], set[str]()
        for end in ends:
            assert end.attachment is not None
            owner, sign = end.attachment.owner, end.attachment.terminal
            whole = f"{owner}+" in open_pads and f"{owner}-" in open_pads
            if unwired and (sign == "+" or whole):
                inputs.add(owner)  # the missing walk began there
                continue
            lacking = self.lacking(end, fragments)
            if lacking is None or (lacking.end is None and whole):
                told.append(end)
                inputs.add(owner)
            elif lacking.end is not None or _key(lacking) in silent:
                inputs.add(owner)
        return tuple(told), frozenset(inputs)

    def lacking(self, pad: OpenEnd, fragments: Sequence[Fragment]) -> Fragment | None:
        """A fragment that lacks the wire to this pad of an input."""
        assert pad.attachment is not None
        wanted = "hot" if pad.attachment.terminal == "-" else "return"
        component = reached(pair_links((edge.plus, edge.minus) for edge in self.circuit.edges.values()), pad.net)
        for fragment in sorted(fragments, key=lambda fragment: fragment.end is None):
            cluster = self.clusters[fragment.cluster]
            if fragment.end is None and not any(edge.kind == "driver" for edge in cluster.edges):
                continue
            if fragment.side == "free" or (fragment.side == wanted and cluster.edges[0].plus in component):
                return fragment
        return None


def _key(fragment: Fragment) -> str:
    return fragment.end.net if fragment.end is not None else f"cluster {fragment.cluster}"


def _names(end: OpenEnd) -> tuple[str, ...]:
    """What stands in walks where this end is."""
    return end.name, *(_walked_as(end.attachment.owner) if end.attachment else ())


def _walked_as(owner: str) -> tuple[str, ...]:
    return owner, f"{owner}+", f"{owner}-"


def _alike(a: OpenEnd | None, b: OpenEnd | None) -> bool:
    return bool(a and b and a.name and b.name and nearest(a.name, (b.name,)))
