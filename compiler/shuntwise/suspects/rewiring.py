"""Walks as they would stand had one thing in them been typed otherwise.

In: a `Circuit`. Out: changes of its walks: a node for another, two leads or two parts exchanged, a branch at the pads
of another driver, parts in a row that stood side by side, and the reverse. Each is connected anew, so that it is a
circuit like any other. Refuses to know whether that is better.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from functools import partial
from itertools import chain, combinations

from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.graph.connect import connect
from shuntwise.model.design import NodeStop, ParallelStop, Part, PartStop, Stop, Walk, all_stops
from shuntwise.model.kinds import KINDS
from shuntwise.structure.reach import turned_round
from shuntwise.suspects.change import Change

MOST_TRADED = 24
"""With more parts than this, pairs of them are not exchanged, nor is a node tried for another: their number grows with
the square."""

ELSEWHERE, ARRANGED, SAME_KIND, OTHER_KIND = 0.1, 0.2, 0.2, 0.4
"""How much better than a slipped value, as a share of a window, it must explain things that a lead is at another node,
that parts stand in a row, that two parts of one kind or of two kinds are exchanged: common practice, no source."""

LONGEST_ROW = 3
"""So many parts at most are tried in a row where they stand side by side, and the reverse: a trap has three."""


def rewirings(circuit: Circuit) -> Iterator[Change]:
    """All changes of one thing in the walks, each circuit that they make once."""
    seen = {_joined_points(circuit)}
    sorts = [_turned(circuit)]
    if len(circuit.fitted_parts) <= MOST_TRADED:
        sorts += [_exchanged(circuit), _joined(circuit), _elsewhere(circuit), _arranged(circuit)]
    for change in chain.from_iterable(sorts):
        joined = _joined_points(change.circuit)
        if joined not in seen:
            seen.add(joined)
            yield change


def _changed(circuit: Circuit, walks: Iterable[Walk], change: Change) -> Iterator[Change]:
    """The change with its circuit, where the walks can be connected."""
    design, walks = circuit.design, tuple(walks)
    touched = {stop.node for walk in walks for stop in all_stops(walk.stops) if isinstance(stop, NodeStop)}
    nodes = {node: spans for node, spans in design.node_spans.items() if node in touched}
    other, refused = connect(replace(design, walks=walks, node_spans=nodes))
    if not refused:
        yield replace(change, circuit=other)


def _joined_points(circuit: Circuit) -> frozenset[frozenset[str]]:
    """What is joined to what, whatever the nets are called."""
    return frozenset(frozenset(end.point for end in net.attachments) for net in circuit.nets.values())


def _mapped(walks: Iterable[Walk], other: Callable[[Stop], Stop]) -> tuple[Walk, ...]:
    """The walks with every stop replaced by what `other` makes of it."""

    def mapped(stop: Stop) -> Stop:
        if isinstance(stop, ParallelStop):
            return replace(stop, chains=tuple(tuple(mapped(inner) for inner in chain) for chain in stop.chains))
        return other(stop)

    return tuple(replace(walk, stops=tuple(mapped(stop) for stop in walk.stops)) for walk in walks)


def _renamed(walks: Iterable[Walk], names: dict[str, str]) -> tuple[Walk, ...]:
    """The walks with other nodes for some."""
    return _mapped(
        walks, lambda stop: replace(stop, node=names.get(stop.node, stop.node)) if isinstance(stop, NodeStop) else stop
    )


def _with(walks: tuple[Walk, ...], number: int, stops: Iterable[Stop]) -> tuple[Walk, ...]:
    """The walks, one of them with other stops."""
    return (*walks[:number], replace(walks[number], stops=tuple(stops)), *walks[number + 1 :])


# --- two things in each other's place


def _turned(circuit: Circuit) -> Iterator[Change]:
    """Two leads of one driver, or of a part of which the terminals are wired by name, exchanged."""
    design = circuit.design
    turned = turned_round(circuit)
    for name, driver in design.drivers.items():
        # A woofer is seldom the one that is wired the other way round on purpose: common practice, no source.
        unlikely = 0.1 * (driver.role == "woofer") + 0.1 * (name not in turned)
        change = Change("turned", (name,), circuit, f"exchange the leads of `{name}`", unlikely)
        walks = _renamed(design.walks, {f"{name}+": f"{name}-", f"{name}-": f"{name}+"})
        yield from _changed(circuit, walks, change)
    for part in circuit.fitted_parts:
        terminals = KINDS[part.kind].terminals
        for one, other in combinations(terminals, 2) if len(terminals) > 2 else ():
            points = point_of(part.label, one), point_of(part.label, other)
            change = Change("turned", (part.label,), circuit, f"exchange {one} and {other} of `{part.label}`", 0.1)
            yield from _changed(circuit, _renamed(design.walks, dict(zip(points, points[::-1], strict=True))), change)


def _exchanged(circuit: Circuit) -> Iterator[Change]:
    """Two parts that walks go through in each other's place."""
    design = circuit.design
    walked = {stop.owner for walk in design.walks for stop in all_stops(walk.stops) if isinstance(stop, PartStop)}
    simple = [part for part in circuit.fitted_parts if part.label in walked and len(KINDS[part.kind].terminals) == 2]
    for one, other in combinations(simple, 2):
        if _between(circuit, one) != _between(circuit, other):
            labels = one.label, other.label
            title = f"exchange `{one.label}` and `{other.label}`"
            change = Change("exchanged", labels, circuit, title, SAME_KIND if one.kind == other.kind else OTHER_KIND)
            yield from _changed(circuit, _mapped(design.walks, partial(_traded, one=one, other=other)), change)


def _between(circuit: Circuit, part: Part) -> frozenset[str]:
    return frozenset(circuit.net_of[point_of(part.label, end)] for end in KINDS[part.kind].ends)


def _traded(stop: Stop, *, one: Part, other: Part) -> Stop:
    """A station of one of two parts as one of the other, gone through the same way."""
    if not isinstance(stop, PartStop) or stop.owner not in (one.label, other.label):
        return stop
    was, new = (one, other) if stop.owner == one.label else (other, one)
    ends = dict(zip(KINDS[was.kind].ends, KINDS[new.kind].ends, strict=True))
    return replace(stop, owner=new.label, into=ends[stop.into], out_of=ends[stop.out_of])


# --- another node


def _joined(circuit: Circuit) -> Iterator[Change]:
    """A pad or terminal that is alone joined to a node by a walk of its own."""
    design = circuit.design
    nodes = tuple(_nodes(circuit))
    for net in circuit.nets.values():
        if len(net.attachments) == 1 and net.attachments[0].point in nodes:
            (alone,) = net.attachments
            owner = design.drivers.get(alone.owner) or design.parts.get(alone.owner)
            if owner is not None:
                for node in nodes:
                    stops = NodeStop(alone.point, owner.name_span), NodeStop(node, owner.name_span)
                    title = f"write `{alone.point} -- {_word(circuit, node)}`"
                    change = Change("elsewhere", (alone.owner,), circuit, title, ELSEWHERE / 2)
                    yield from _changed(circuit, (*design.walks, Walk(stops, None, owner.name_span)), change)


def _elsewhere(circuit: Circuit) -> Iterator[Change]:
    """One node of a walk another one; or the two pads at which a branch begins and ends those of another driver."""
    nodes = tuple(_nodes(circuit))
    pads = [{circuit.pad(name, sign) for sign in "+-"} for name in circuit.design.drivers]
    shorted = {net for pair in pads if len(pair) == 1 for net in pair}  # there one node may be two that were meant
    for number, walk in enumerate(circuit.design.walks):
        for place, stop in enumerate(walk.stops):
            net = circuit.net_of[stop.node] if isinstance(stop, NodeStop) else ""
            for node in nodes if net else ():
                if circuit.net_of[node] != net or net in shorted:
                    yield from _at(circuit, number, place, node)
        yield from _at_other_pads(circuit, number)


def _at(circuit: Circuit, number: int, place: int, node: str) -> Iterator[Change]:
    """A walk that touches `node` at one place, where it touches another. It is about what stands beside that place."""
    walks = circuit.design.walks
    stops = walks[number].stops
    was = stops[place]
    assert isinstance(was, NodeStop)
    new = replace(was, node=node)
    beside = (*stops[max(place - 1, 0) : place], *stops[place + 1 : place + 2])
    owners = _owners(circuit, beside) or _owners(circuit, (was, new))
    if owners and node != was.node:
        word = _word(circuit, node)
        title = f"write `{word}` instead of `{_word(circuit, was.node)}`"
        change = Change("elsewhere", owners, circuit, title, ELSEWHERE, span=was.span, text=word)
        yield from _changed(circuit, _with(walks, number, (*stops[:place], new, *stops[place + 1 :])), change)


def _at_other_pads(circuit: Circuit, number: int) -> Iterator[Change]:
    """A walk through parts from one pad of a driver (or input) to its other one, at the pads of another."""
    design = circuit.design
    walk = design.walks[number]
    touched = {stop.node for stop in walk.stops if isinstance(stop, NodeStop)}
    parts = _owners(circuit, [stop for stop in walk.stops if not isinstance(stop, NodeStop)])
    drivers, inputs = tuple(design.drivers), tuple(pair.name for pair in design.terminals)
    for owner, others in (*((name, drivers) for name in drivers), *((name, inputs) for name in inputs)):
        for other in others if parts and {f"{owner}+", f"{owner}-"} <= touched else ():
            (moved,) = _renamed([walk], {owner + sign: other + sign for sign in "+-"})
            title = f"write `{other}+` and `{other}-` instead of `{owner}+` and `{owner}-`"
            change = Change("elsewhere", parts, circuit, title, ELSEWHERE / 2, span=walk.span)
            yield from _changed(circuit, _with(design.walks, number, moved.stops), change)


def _nodes(circuit: Circuit) -> Iterator[str]:
    """What a walk may have been meant to touch: every pad, every terminal that is wired by name, other nets by name."""
    for net in circuit.nets.values():
        of_pads = [
            attachment.point
            for attachment in net.attachments
            if attachment.kind != "part" or len(KINDS[circuit.design.parts[attachment.owner].kind].terminals) > 2
        ]
        yield from dict.fromkeys((*net.nodes[:1], *of_pads))


def _word(circuit: Circuit, node: str) -> str:
    """How a node is written: the minus of the only input is the return."""
    net = circuit.net_of[node]
    return net if net == "return" and node == f"{circuit.design.feeds[0].name}-" else node


def _owners(circuit: Circuit, stops: Iterable[Stop]) -> tuple[str, ...]:
    """The parts, used networks and drivers that some stops are of."""
    design = circuit.design
    found: list[str] = []
    for stop in all_stops(stops):
        if isinstance(stop, PartStop):
            found.append(stop.owner)
        elif isinstance(stop, NodeStop):
            owner = stop.node[:-1] if stop.node[-1] in "+-" else stop.node.partition(".")[0]
            if owner in design.drivers or owner in design.parts or owner in design.instances:
                found.append(owner)
    return tuple(dict.fromkeys(found))


# --- another arrangement


def _arranged(circuit: Circuit) -> Iterator[Change]:
    """Parts in a row that stand side by side, and the reverse."""
    for number, walk in enumerate(circuit.design.walks):
        for stops, parts, said in (*_rowed(walk.stops), *_grouped(walk.stops)):
            owners = tuple(part.owner for part in parts)
            title = f"put {' and '.join(f'`{owner}`' for owner in owners)} {said}"
            span = parts[0].span.to(parts[-1].span)
            change = Change("arranged", owners, circuit, title, ARRANGED, span=span)
            yield from _changed(circuit, _with(circuit.design.walks, number, stops), change)


Arranged = tuple[tuple[Stop, ...], tuple[PartStop, ...], str]


def _rowed(stops: Sequence[Stop]) -> Iterator[Arranged]:
    """Some single parts of a group in a row."""
    for place, group in enumerate(stops):
        if not isinstance(group, ParallelStop):
            continue
        single = [chain for chain in group.chains if len(chain) == 1 and isinstance(chain[0], PartStop)]
        for count in range(2, LONGEST_ROW + 1):
            for some in combinations(single, count):
                row = tuple(chain[0] for chain in some)
                rest = tuple(chain for chain in group.chains if chain not in some)
                instead = (replace(group, chains=(*rest, row)),) if rest else row
                parts = tuple(stop for stop in row if isinstance(stop, PartStop))
                yield (*stops[:place], *instead, *stops[place + 1 :]), parts, "in a row"


def _grouped(stops: Sequence[Stop]) -> Iterator[Arranged]:
    """Some neighbours of a row side by side."""
    for count in range(2, LONGEST_ROW + 1):
        for first in range(len(stops) - count + 1):
            some = stops[first : first + count]
            parts = tuple(stop for stop in some if isinstance(stop, PartStop))
            if len(parts) == count:
                group = ParallelStop(tuple((part,) for part in parts), parts[0].span.to(parts[-1].span))
                yield (*stops[:first], group, *stops[first + count :]), parts, "side by side"
