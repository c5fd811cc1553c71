"""Design -> Circuit: walks turned into nets.

In: a resolved design. Out: a `Circuit` and findings on parts that two walks go through. Points that
walks join are united; what an unknown station would have joined is marked doubtful, so that no check
complains of its absence. Refuses to judge the result: that is what checks are for.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import replace
from functools import cached_property

from shuntwise.diagnostics.diagnostic import Diagnostic, Edit, Fix, Label, Severity
from shuntwise.graph.circuit import Attachment, Circuit, Edge, Net, OwnerKind, Wire, point_of
from shuntwise.graph.topology import DisjointSets
from shuntwise.model.design import Design, NodeStop, ParallelStop, Part, PartStop, Stop, all_stops
from shuntwise.model.kinds import KINDS
from shuntwise.model.wiring import RETURN_WORDS, might_be
from shuntwise.source import Span


def connect(design: Design) -> tuple[Circuit, tuple[Diagnostic, ...]]:
    """Unite what the walks join, and hang parts, drivers and inputs between the nets."""
    joining = _Joining(design)
    for walk in design.walks:
        joining.chain(walk.stops, walk.leg)
    joining.links()
    return joining.circuit(), tuple(joining.with_meant(finding) for finding in joining.diagnostics)


class _Joining:
    def __init__(self, design: Design) -> None:
        self.design = design
        self.diagnostics: list[Diagnostic] = []
        self.points: DisjointSets[str] = DisjointSets()
        self.wires: list[Wire] = []
        self.groups: list[frozenset[str]] = []
        self.walked: dict[str, Span] = {}
        self.spans: dict[str, list[Span]] = defaultdict(list)
        self.legs: dict[str, set[int]] = defaultdict(set)
        self.in_doubt: set[str] = set()
        self.repeated: set[str] = set()
        self.attachments: dict[str, Attachment] = {}
        self.group_count = 0
        self.ports = {port for ports in design.instances.values() for port in ports}
        self.attach_all()

    def attach_all(self) -> None:
        design = self.design
        for pair in design.terminals:
            for sign in "+-":
                self.attach(Attachment(pair.name, sign, "feed" if pair.fed else "posts"))
        for driver in design.drivers:
            for sign in "+-":
                self.attach(Attachment(driver, sign, "driver"))
        for part in design.parts.values():
            for terminal in KINDS[part.kind].terminals:
                self.attach(Attachment(part.label, terminal, "part"))
        for ports in design.instances.values():
            for port in ports:
                self.points.add(port)

    def attach(self, attachment: Attachment) -> None:
        self.attachments[attachment.point] = attachment
        self.points.add(attachment.point)

    # --- walks

    def chain(self, stops: Sequence[Stop], leg: int | None) -> tuple[str | None, str | None]:
        """Join the stops in order; return the points at which the chain begins and ends (None: unknown)."""
        before: str | None = None
        first: str | None = None
        for index, stop in enumerate(stops):
            into, out_of = self.stop(stop, leg)
            if index == 0:
                first = into
            elif before is not None and into is not None:
                self.join(before, into, stops[index - 1].span.to(stop.span))
            else:  # one side is unknown: the other side may be joined to anything
                for point in (before, into):
                    self.doubt(point)
            before = out_of
        return first, before

    def stop(self, stop: Stop, leg: int | None) -> tuple[str | None, str | None]:
        match stop:
            case NodeStop():
                self.note(stop.node, stop.span, leg)
                return stop.node, stop.node
            case PartStop():
                return self.part(stop, leg)
            case ParallelStop():
                return self.parallel(stop, leg)
            case _:
                return None, None

    def part(self, stop: PartStop, leg: int | None) -> tuple[str | None, str | None]:
        first = self.walked.get(stop.owner)
        if first is not None:
            self.repeated.add(stop.owner)
            self.diagnostics.append(
                Diagnostic(
                    "walked-twice",
                    Severity.ERROR,
                    f"two walks go through `{stop.owner}`",
                    stop.span,
                    label="here again",
                    places=(Label(first, "first here"),),
                    why="a part has two ends and sits in one place",
                    help="name the node where the walks meet, or declare a second part",
                    subjects=(stop.owner,),
                )
            )
            return None, None
        self.walked[stop.owner] = stop.span
        self.note(stop.owner, stop.span, leg)
        return point_of(stop.owner, stop.into), point_of(stop.owner, stop.out_of)

    def with_meant(self, twice: Diagnostic) -> Diagnostic:
        """What a part was perhaps named instead of, where only one stands in no walk."""
        if len(self.unwalked) != 1:
            return twice
        (other,) = self.unwalked
        return replace(
            twice,
            help=f"`{other}` stands in no walk: if it belongs at one of the two places, write `{other}` there",
            fixes=tuple(
                Fix(f"write `{other}` at the {place} place", (Edit(span, other),))
                for place, span in (("second", twice.span), ("first", twice.places[0].span))
            ),
            subjects=(*twice.subjects, other),
        )

    @cached_property
    def unwalked(self) -> tuple[str, ...]:
        """The parts of the design's own that walks go neither through nor to, where one is walked through twice."""
        own = [part for part in self.design.parts.values() if part.fitted and "." not in part.label]
        return tuple(part.label for part in own if self.repeated and not self.spans_of(part))

    def spans_of(self, part: Part) -> list[Span]:
        names = (part.label, *(point_of(part.label, terminal) for terminal in KINDS[part.kind].terminals))
        return [span for name in names for span in self.spans.get(name, ())]

    def parallel(self, stop: ParallelStop, leg: int | None) -> tuple[str | None, str | None]:
        self.group_count += 1
        ends = (f"({self.group_count}", f"{self.group_count})")
        for chain in stop.chains:
            for end, point in zip(ends, self.chain(chain, leg), strict=True):
                if point is None:
                    self.doubt(end)
                else:
                    self.join(end, point, stop.span)
        self.groups.append(frozenset(inner.owner for inner in all_stops((stop,)) if isinstance(inner, PartStop)))
        return ends

    def doubt(self, point: str | None) -> None:
        """This point may be joined to anything; it is known from now on, though nothing may reach it."""
        if point is not None:
            self.points.add(point)
            self.in_doubt.add(point)

    def note(self, owner: str, span: Span, leg: int | None) -> None:
        self.spans[owner].append(span)
        if leg is not None:
            self.legs[owner].add(leg)

    def join(self, a: str, b: str, span: Span, link: str | None = None) -> None:
        self.points.union(a, b)
        self.wires.append(Wire(a, b, span, link))

    def links(self) -> None:
        for part in self.design.parts.values():
            kind = KINDS[part.kind]
            if kind.wire and part.fitted and part.label in self.walked:
                first, second = (point_of(part.label, terminal) for terminal in kind.ends)
                self.join(first, second, self.walked[part.label], part.label)

    # --- nets

    def circuit(self) -> Circuit:
        design = self.design
        nets: dict[str, Net] = {}
        net_of: dict[str, str] = {}
        for points in self.points.sets():
            net = self.net(sorted(points), nets)
            nets[net.name] = net
            net_of.update(dict.fromkeys(points, net.name))
        # What stood in lost text may be joined to anything as well.
        doubtful = self.in_doubt | {point for point in net_of if _owner(point, self.attachments) in design.doubtful}
        if not design.doubtful.isdisjoint(RETURN_WORDS):
            doubtful |= {f"{feed.name}-" for feed in design.feeds}
        # A refused station may have been a pad of the driver that it names.
        doubtful |= {f"{driver}{sign}" for driver in design.drivers if driver in design.meant for sign in "+-"}
        return Circuit(
            design=design,
            nets=nets,
            net_of=net_of,
            edges=self.edges(net_of),
            wires=tuple(self.wires),
            groups=tuple(self.groups),
            spans={owner: tuple(spans) for owner, spans in self.spans.items()},
            leg_of={owner: frozenset(legs) for owner, legs in self.legs.items()},
            doubtful=frozenset(net_of[point] for point in doubtful),
            meant=design.meant.union(self.unwalked, *(tuple(might_be(label, design.parts)) for label in self.repeated)),
        )

    def net(self, points: list[str], taken: dict[str, Net]) -> Net:
        attachments = tuple(
            self.attachments[point] for point in points if point in self.attachments and self.fitted(point)
        )
        nodes = tuple(point for point in points if point in self.design.node_spans)
        spans = tuple(span for point in points for span in self.spans.get(point, ()))
        name = base = self.net_name(points, nodes, attachments)
        number = 2
        while name in taken:
            name, number = f"{base} ({number})", number + 1
        return Net(name, nodes, attachments, frozenset(points), spans)

    def fitted(self, point: str) -> bool:
        """Parts left out are attached to nothing, and links are wire."""
        attachment = self.attachments[point]
        part = self.design.parts.get(attachment.owner) if attachment.kind == "part" else None
        return part is None or (part.fitted and not KINDS[part.kind].wire)

    def net_name(self, points: list[str], nodes: tuple[str, ...], attachments: tuple[Attachment, ...]) -> str:
        """The name a builder would use: return, input plus, the author's own, a pad, or the two parts beside it."""
        feeds = [pair.name for pair in self.design.feeds]
        for feed in feeds:
            if f"{feed}-" in points:
                return "return" if len(feeds) == 1 else f"{feed}-"
        for feed in feeds:
            if f"{feed}+" in points:
                return f"{feed}+"
        pads = [attachment.point for attachment in attachments if attachment.kind in ("driver", "posts")]
        ports = [point for point in points if point in self.ports]
        for names in (nodes, pads, ports):
            if names:
                return names[0]
        owners = list(dict.fromkeys(attachment.owner for attachment in attachments))
        if len(owners) >= 2:
            return f"between {owners[0]} and {owners[1]}"
        return f"one end of {owners[0]}" if owners else f"the point {points[0]}"

    def edges(self, net_of: dict[str, str]) -> dict[str, Edge]:
        edges: dict[str, Edge] = {}

        def add(owner: str, kind: OwnerKind, terminals: tuple[str, str], section: str = "") -> None:
            key = f"{owner}.{section}" if section else owner
            plus, minus = (net_of[point_of(owner, terminal)] for terminal in terminals)
            edges[key] = Edge(key, owner, kind, plus, minus, terminals, section)

        for pair in self.design.feeds:
            add(pair.name, "feed", ("+", "-"))
        for name in self.design.drivers:
            add(name, "driver", ("+", "-"))
        for part in self.design.parts.values():
            kind = KINDS[part.kind]
            if part.fitted and not kind.wire:
                for section, terminals in kind.sections.items():
                    add(part.label, "part", terminals, section)
        return edges


def _owner(point: str, attachments: dict[str, Attachment]) -> str:
    attachment = attachments.get(point)
    return attachment.owner if attachment is not None else point
