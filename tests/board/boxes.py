"""Random circuits, laid out on rows of holes, and an independent judge of what is electrically the same.

A row is one area of copper; a cut across it parts it. `islands` and `Bench` know no other geometry, so that thousands
of layouts can be judged. The judge is graph isomorphism of the general-purpose graph library.
"""

from __future__ import annotations

import random
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

import networkx as nx

from shuntwise.board.cutting import TrialCut
from shuntwise.board.islands import Islands
from shuntwise.board.wires import Key
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.model.boards import Area, Board, Cut, Hole, Layout, Lead, Place, Point, Spot, Wire
from shuntwise.model.kinds import KINDS
from shuntwise.model.resolve import resolve
from shuntwise.pipeline import read
from shuntwise.source import Source, Span

NOWHERE = Span(Source("layout", ""), 0, 0)
PITCH, ROW = 6.0, 12.0


def circuit_of(text: str) -> Circuit:
    collected, said = read(Source("box.shunt", text))
    assert not said, said
    circuit, told = connect(resolve(collected)[0])
    assert not told, told
    return circuit


# --- random circuits


def random_text(rng: random.Random, legs: int) -> str:
    """Ladders with rows, parts side by side, a trap now and then, like parts, coupled coils, an attenuator, a tap."""
    head: list[str] = []
    walks: list[str] = []
    count: dict[str, int] = defaultdict(int)
    coils: list[str] = []

    def part(kind: str) -> str:
        letter = {"coil": "L", "capacitor": "C", "resistor": "R"}[kind]
        count[letter] += 1
        value = rng.choice(
            {"coil": ["0.33 mH", "1.2 mH"], "capacitor": ["6.8 uF", "12 uF"], "resistor": ["3.3 ohm", "8.2 ohm"]}[kind]
        )
        head.append(f"{kind} {letter}{count[letter]} {value}")
        if kind == "coil":
            coils.append(f"L{count[letter]}")
        return f"{letter}{count[letter]}"

    def some(most: int = 2) -> str:
        kinds = [rng.choice(["coil", "capacitor", "resistor"]) for _ in range(rng.randint(1, most))]
        return " -- ".join(part(kind) for kind in kinds)

    for leg, driver in enumerate(("woofer", "tweeter", "mid")[:legs]):
        head.append(f"driver {driver} 8 ohm")
        lines = []
        here = "input+"
        hot, cold = rng.choice((("+", "-"), ("-", "+")))
        for section in range(rng.randint(1, 2)):
            there = f"n{leg}{section}"
            lines.append(f"  {here} -- {some()} -- {there}")
            if rng.random() < 0.8:
                lines.append(f"  {there} -- {some()} -- return")
            here = there
        if rng.random() < 0.3:
            head.append(f"attenuator A{leg + 1} 8 ohm {{ loss 3 dB }}")
            lines.append(f"  {here} -- A{leg + 1} -- {driver}{hot}")
            lines.append(f"  A{leg + 1}.common -- return")
        elif rng.random() < 0.3:
            head.append(f"tapped coil T{leg + 1} 1.2 mH {{ tap 0.3 mH }}")
            lines.append(f"  {here} -- T{leg + 1} -- return")
            lines.append(f"  T{leg + 1}.tap -- {driver}{hot}")
        elif rng.random() < 0.3:
            head.append(f"link K{leg + 1}")
            lines.append(f"  {here} -- K{leg + 1} -- {some(1)} -- {driver}{hot}")
        else:
            lines.append(f"  {here} -- {some()} -- {driver}{hot}")
        lines.append(f"  {driver}{cold} -- return")
        walks.append(f"leg {driver} {{\n" + "\n".join(lines) + "\n}")
    if len(coils) > 1 and rng.random() < 0.4:
        head.append(f"coupling {coils[0]} and {coils[1]} 3 %")
    return "\n".join((*head, *walks)) + "\n"


# --- layouts


def board(rows: Sequence[int]) -> Board:
    holes = tuple(
        Hole(f"r{row} {n + 1}", f"r{row}", (PITCH * (n + 1), ROW * (row + 1)), 1.3, NOWHERE)
        for row, count in enumerate(rows)
        for n in range(count)
    )
    areas = tuple(
        Area(f"r{row}", ((x, y), (z, y), (z, y + 7), (x, y + 7)), NOWHERE)
        for row, count in enumerate(rows)
        for x, z, y in ((PITCH / 2, PITCH * (count + 1.5), ROW * (row + 1) - 3.5),)
        if count
    )
    width, height = PITCH * (max(rows) + 2), ROW * (len(rows) + 1)
    return Board("rows", None, width, height, 2.0, 0.035, "solder", "parts", (), areas, (), holes, (), NOWHERE, NOWHERE)


def islands(layouts: Sequence[Layout]) -> Islands:
    """Rows, parted by cuts across them; a drilled hole is in the row at its height."""
    of: dict[Key, int] = {}
    numbers: dict[tuple[str, float, int], int] = {}
    for layout in layouts:
        for hole in layout.holes:
            x, y = hole.at
            sides = sum(cut.start[0] < x for cut in layout.cuts if cut.start[1] < y < cut.end[1])
            of[layout.name, hole.name] = numbers.setdefault((layout.name, y, sides), len(numbers))
    return Islands(of, frozenset(), ())


class Bench:
    """What can be cut and drilled on some layouts."""

    def __init__(self, layouts: Sequence[Layout]) -> None:
        self.layouts = {layout.name: layout for layout in layouts}
        self.islands = islands(layouts)

    def cuts(self, island: int) -> Iterator[TrialCut]:
        keys = self.islands.keys(island)
        name = keys[0][0]
        at = {hole.name: hole.at for hole in self.layouts[name].holes}
        ordered = sorted(keys, key=lambda key: at[key[1]])
        for n in range(1, len(ordered)):
            (x, y), (z, _) = at[ordered[n - 1][1]], at[ordered[n][1]]
            if z - x > 1:
                cut = across((x + z) / 2, y)
                words = f"between {ordered[n - 1][1]} and {ordered[n][1]}"
                yield TrialCut(name, cut, words, (frozenset(ordered[:n]), frozenset(ordered[n:])))

    def spot(self, layout: str, island: int, diameter: float) -> Point | None:
        at = [hole.at for hole in self.layouts[layout].holes if self.islands.of[layout, hole.name] == island]
        x, y = max(at)
        return (x + PITCH / 3, y)


def across(x: float, y: float) -> Cut:
    return Cut((x, y - ROW / 3), (x, y + ROW / 3), 1.0, NOWHERE)


def spot(key: Key) -> Spot:
    return Spot(key[0] or None, key[1], NOWHERE)


def wire(kind: str, first: Key, second: Key) -> Wire:
    return Wire(kind, spot(first), spot(second), 0.0, 0.0, False, NOWHERE)  # type: ignore[arg-type]


def laid_out(circuit: Circuit, rng: random.Random, *, tight: bool = False) -> Layout:
    """A right layout: each net a row, or two rows and a jumper, or a piece of a row that is cut.

    Leads of two-terminal parts that no coupling names are told apart at random only.
    """
    design = circuit.design
    nets = {net: [] for net in nets_without_links(circuit).values()}  # type: ignore[var-annotated]
    for point, net in nets_without_links(circuit).items():
        owner, terminal = (point[:-1], point[-1]) if point[-1] in "+-" else point.rsplit(".", 1)
        nets[net].append((owner, terminal))
    pieces: list[tuple[int, list[tuple[str, str]], int | None]] = []  # holes wanted, leads, joined to piece
    for leads in nets.values():
        rng.shuffle(leads)
        if len(leads) > 3 and rng.random() < 0.4:
            half = len(leads) // 2
            pieces += [(half + 2, leads[:half], None), (len(leads) - half + 2, leads[half:], len(pieces))]
        else:
            pieces.append((len(leads) + 2, leads, None))
    rows: list[list[int]] = []
    order = list(range(len(pieces)))
    rng.shuffle(order)
    for n in order:
        if rows and len(rows[-1]) == 1 and rng.random() < 0.35:
            rows[-1].append(n)
        else:
            rows.append([n])
    rows += [[], []]
    counts = [sum(pieces[n][0] for n in row) or 4 for row in rows]
    keys: dict[int, list[Key]] = {}
    cuts = []
    for row, within in enumerate(rows):
        start = 0
        for place, n in enumerate(within):
            keys[n] = [("rows", f"r{row} {start + k + 1}") for k in range(pieces[n][0])]
            start += pieces[n][0]
            if place + 1 < len(within):
                cuts.append(across(PITCH * (start + 0.5), ROW * (row + 1)))
    of: dict[tuple[str, str], Key] = {}
    wires = []
    for n, (_, _, joined) in enumerate(pieces):
        free = keys[n]
        rng.shuffle(free)
        if joined is not None:
            wires.append(wire("jumper", keys[joined].pop(), free.pop()))
    for n, (_, leads, _) in enumerate(pieces):
        for lead in leads:
            key = keys[n].pop()
            if lead[1] in "+-":
                wires.append(wire("lead out", key, ("", lead[0] + lead[1])))
            else:
                of[lead] = key
    coupled = {label for c in design.couplings for label in (c.first, c.second)}
    places = []
    for label, part in design.parts.items():
        terminals = list(KINDS[part.kind].terminals)
        told = len(terminals) > 2 or label in coupled or rng.random() < 0.3
        if not told:
            rng.shuffle(terminals)
        leads = tuple(Lead(t if told else None, spot(of[label, t]), NOWHERE) for t in terminals)
        places.append(Place(label, None, "parts", 0.0, 0.0, leads, (), (), NOWHERE, NOWHERE))
    return Layout("rows", board(counts), tuple(cuts), (), tuple(wires), tuple(places), None, NOWHERE, NOWHERE)


def nets_without_links(circuit: Circuit) -> dict[str, str]:
    """Every end with its net, links taken out: connected components of the walks' bare joints."""
    graph = nx.Graph()
    graph.add_nodes_from(circuit.net_of)
    graph.add_edges_from((w.first, w.second) for w in circuit.wires if w.link is None)
    found = {}
    ends = {f"{pair.name}{sign}" for pair in circuit.design.terminals for sign in "+-"}
    ends |= {f"{driver}{sign}" for driver in circuit.design.drivers for sign in "+-"}
    ends |= {f"{p.label}.{t}" for p in circuit.design.parts.values() for t in KINDS[p.kind].terminals}
    for component in nx.connected_components(graph):
        for point in component & ends:
            found[point] = min(component)
    return dict(sorted(found.items()))


# --- the judge


def joined_on(layout: Layout) -> dict[str, object]:
    """Every end with the piece of metal that it is on."""
    graph = nx.Graph()
    for key, island in islands([layout]).of.items():
        graph.add_edge(key, island)
    for w in layout.wires:
        graph.add_edge((w.first.layout or "", w.first.hole), (w.second.layout or "", w.second.hole))
    piece = {node: n for n, component in enumerate(nx.connected_components(graph)) for node in component}
    found: dict[str, object] = {node[1]: n for node, n in piece.items() if isinstance(node, tuple) and not node[0]}
    for place in layout.places:
        terminals = iter(("start", "end"))
        for lead in place.leads:
            terminal = lead.terminal or next(terminals)
            key = (lead.spot.layout or "", lead.spot.hole)
            found[f"{place.label}.{terminal}"] = piece.get(key, key)
    return found


def sort_of(circuit: Circuit, label: str) -> str:
    """The words that declare a part, its label left out; a link and a coupled coil are like no other."""
    part = circuit.design.parts[label]
    if part.kind == "link" or any(label in (c.first, c.second) for c in circuit.design.couplings):
        return label
    return part.span.text.replace(label, "", 1)


def graph_of(circuit: Circuit, net_of: dict[str, object]) -> nx.Graph:
    """Nets and parts as nodes with colours; a row of parts is one node, which knows its parts but not their order."""
    design = circuit.design
    coupled = {label for c in design.couplings for label in (c.first, c.second)}
    multi = nx.MultiGraph()
    held = set()
    graph = nx.Graph()
    for point, net in net_of.items():
        graph.add_node(("net", net), colour="net")
        if point[-1] in "+-":
            held.add(net)
            graph.add_node(("pad", point), colour=point)
            graph.add_edge(("pad", point), ("net", net))
    for label, part in design.parts.items():
        ends = [net_of.get(f"{label}.{t}", f"{label}.{t}") for t in KINDS[part.kind].terminals]
        if len(ends) == 2:
            sort = sort_of(circuit, label)
            forth, back = (f"{sort}>", f"{sort}<") if label in coupled else (sort, sort)
            multi.add_edge(ends[0], ends[1], at=ends[0], row=[(forth, back)])
        else:
            held.update(ends)
            graph.add_node(("part", label), colour=sort_of(circuit, label))
            for terminal, net in zip(KINDS[part.kind].terminals, ends, strict=True):
                graph.add_node(("end", label, terminal), colour=terminal)
                graph.add_edge(("part", label), ("end", label, terminal))
                graph.add_edge(("end", label, terminal), ("net", net))
    for net in list(multi):
        found = list(multi.edges(net, keys=True, data=True)) if net not in held else []
        if len(found) == 2 and all(a != b for a, b, _, _ in found):
            (_, a, _, one), (_, b, _, other) = found
            inward = one["row"] if one["at"] == a else [(y, x) for x, y in one["row"]]
            outward = other["row"] if other["at"] == net else [(y, x) for x, y in other["row"]]
            multi.remove_node(net)
            graph.remove_node(("net", net))
            multi.add_edge(a, b, at=a, row=[*inward, *outward])
    for n, (a, b, data) in enumerate(multi.edges(data=True)):
        forth, back = (sorted(pair[side] for pair in data["row"]) for side in (0, 1))
        graph.add_node(("row", n), colour=str(sorted((forth, back))))
        first, second = (a, b) if data["at"] == a else (b, a)
        for side, (net, seen) in enumerate(((first, forth), (second, back))):
            graph.add_node(("end", n, side), colour=str(seen))
            graph.add_edge(("row", n), ("end", n, side))
            graph.add_node(("net", net), colour="net")
            graph.add_edge(("end", n, side), ("net", net))
    return graph


def electrically_same(circuit: Circuit, layout: Layout) -> bool:
    wanted = graph_of(circuit, dict(nets_without_links(circuit)))
    has = joined_on(layout)
    for pad in [
        f"{o}{s}" for o in (*(p.name for p in circuit.design.terminals), *circuit.design.drivers) for s in "+-"
    ]:
        has.setdefault(pad, ("", pad))
    made = graph_of(circuit, has)
    return bool(nx.is_isomorphic(wanted, made, node_match=lambda a, b: a["colour"] == b["colour"]))


# --- mistakes


@dataclass(frozen=True)
class Slip:
    """A layout with one mistake, and how many steps undo it."""

    kind: str
    layout: Layout
    steps: int = 1


def slips(layout: Layout, rng: random.Random) -> Iterator[Slip]:
    """One of each kind, at random."""
    busy = {lead.spot.hole for place in layout.places for lead in place.leads}
    busy |= {end.hole for w in layout.wires for end in (w.first, w.second)}
    free = [hole.name for hole in layout.holes if hole.name not in busy]
    ends = [(n, k) for n, place in enumerate(layout.places) for k in range(len(place.leads))]
    outs = [n for n, w in enumerate(layout.wires) if w.kind == "lead out"]
    jumpers = [n for n, w in enumerate(layout.wires) if w.kind == "jumper"]

    def to(layout: Layout, end: tuple[int, int], hole: str) -> Layout:
        place = layout.places[end[0]]
        leads = list(place.leads)
        leads[end[1]] = replace(leads[end[1]], spot=spot(("rows", hole)))
        return with_place(layout, end[0], replace(place, leads=tuple(leads)))

    def rewired(n: int, **ends: Spot) -> Layout:
        wires = list(layout.wires)
        wires[n] = replace(wires[n], **ends)
        return replace(layout, wires=tuple(wires))

    def without(n: int) -> Layout:
        return replace(layout, wires=(*layout.wires[:n], *layout.wires[n + 1 :]))

    end = rng.choice(ends)
    yield Slip("lead in another hole", to(layout, end, rng.choice(free)))
    hole = layout.places[end[0]].leads[end[1]].spot.hole
    row, number = hole.split()
    beside = [f"{row} {int(number) + d}" for d in (-1, 1)] + [
        f"r{int(row[1:]) + d} {number}" for d in (-1, 1)
    ]  # the neighbouring holes
    near = [name for name in beside if name in free]
    if near:
        yield Slip("lead in a neighbouring hole", to(layout, end, rng.choice(near)))
    one, other = rng.sample(ends, 2)
    holes = [layout.places[n].leads[k].spot.hole for n, k in (one, other)]
    yield Slip("two leads exchanged", to(to(layout, one, holes[1]), other, holes[0]))
    if len(layout.places) > 1:
        a, b = rng.sample(range(len(layout.places)), 2)
        if len(layout.places[a].leads) == len(layout.places[b].leads) == 2:
            p, q = layout.places[a], layout.places[b]
            both = [
                replace(one, leads=tuple(replace(x, spot=y.spot) for x, y in zip(one.leads, other.leads, strict=True)))
                for one, other in ((p, q), (q, p))
            ]
            yield Slip("two parts exchanged", with_place(with_place(layout, a, both[0]), b, both[1]))
    pads = defaultdict(list)
    for n in outs:
        pads[layout.wires[n].second.hole[:-1]].append(n)
    pairs = [pair for pair in pads.values() if len(pair) == 2]
    for a, b in rng.sample(pairs, min(1, len(pairs))):
        wires = list(layout.wires)
        wires[a], wires[b] = replace(wires[a], second=wires[b].second), replace(wires[b], second=wires[a].second)
        yield Slip("leads out exchanged", replace(layout, wires=tuple(wires)))
    n = rng.choice(outs)
    yield Slip("lead out in another hole", rewired(n, first=spot(("rows", rng.choice(free)))))
    yield Slip("lead out to another pad", rewired(n, second=layout.wires[rng.choice(outs)].second))
    yield Slip("lead out forgotten", without(n))
    for n in jumpers[:1]:
        yield Slip("jumper forgotten", without(n))
        yield Slip(
            "jumper in another hole", rewired(n, **{rng.choice(("first", "second")): spot(("rows", rng.choice(free)))})
        )
    a, b = (("rows", name) for name in rng.sample(free, 2))
    yield Slip("a jumper too many", replace(layout, wires=(*layout.wires, wire("jumper", a, b))))
    if layout.cuts:
        n = rng.randrange(len(layout.cuts))
        yield Slip("cut forgotten", replace(layout, cuts=(*layout.cuts[:n], *layout.cuts[n + 1 :])))


def with_place(layout: Layout, n: int, place: Place) -> Layout:
    return replace(layout, places=(*layout.places[:n], place, *layout.places[n + 1 :]))
