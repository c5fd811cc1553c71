"""What a circuit says, in the form in which a sheet is read; and random circuits to draw."""

from __future__ import annotations

from collections import Counter
from functools import cache
from pathlib import Path
from random import Random

from documents.designs import ROOT
from schematic.reading import Read
from shuntwise.graph.circuit import Circuit
from shuntwise.graph.connect import connect
from shuntwise.loading import read_design
from shuntwise.model.design import Design, Part, Quantity
from shuntwise.model.resolve import resolve
from shuntwise.model.variants import to_check
from shuntwise.pipeline import read as read_text
from shuntwise.source import Source

CORES = {
    "iron core": "iron-cored coil",
    "ferrite core": "ferrite-cored coil",
    "polar electrolytic": "polarised capacitor",
}


EXAMPLES = sorted((ROOT / "examples").rglob("*.shunt"))


@cache
def circuits(path: Path) -> tuple[Circuit, ...]:
    """Of the design of a file and of its variants, not lowered: what a driver is made of is of no account here."""
    collected, _ = read_design(str(path))
    variants = (None, *to_check(resolve(collected)[0]))
    return tuple(connect(resolve(collected, variant=variant)[0])[0] for variant in variants)


def example(stem: str) -> tuple[Circuit, ...]:
    return circuits(ROOT / "examples" / f"{stem}.shunt")


def circuit_of(text: str) -> Circuit:
    return connect(resolve(read_text(Source("random.shunt", text), _nothing)[0])[0])[0]


def _nothing(*_: object) -> object:
    raise AssertionError("nothing is included")


def kind(part: Part) -> str:
    if part.kind == "link":
        return "fitted link" if part.fitted else "open link"
    return CORES.get(part.construction or "", part.kind)


def wanted(circuit: Circuit, itself: Circuit | None = None) -> Read:
    """By the nets of the circuit. Links that are left out are attached to them, too. Marked is what is otherwise in
    the design itself, if the circuit is one of a variant.
    """
    design = circuit.design
    coupled = {label for c in design.couplings for label in (c.first, c.second)}
    kinds = dict.fromkeys(design.drivers, "driver")
    kinds |= {part.label: kind(part) for part in design.parts.values() if part.fitted or part.kind == "link"}
    polar = {label for label, k in kinds.items() if k in ("driver", "tapped coil", "attenuator", "polarised capacitor")}
    nets: Counter[frozenset[tuple[tuple[str, str], int]]] = Counter()
    for net in circuit.nets.values():
        counts: Counter[tuple[str, str]] = Counter()
        for attached in net.attachments:
            if attached.kind in ("feed", "posts"):
                counts[attached.point, "post"] = 1
            else:
                way = attached.terminal if attached.owner in polar | coupled else ""
                counts[attached.owner, way] += 1
        for part in design.parts.values():
            if part.kind == "link" and not part.fitted:
                counts[part.label, ""] += sum(f"{part.label}.{end}" in net.points for end in ("start", "end"))
        counts = +counts
        if counts:
            nets[frozenset(counts.items())] += 1
    before = stated(itself.design) if itself is not None else stated(design)
    return Read(kinds, nets, frozenset(k for k, said in stated(design).items() if k in kinds and said != before.get(k)))


def stated(design: Design) -> dict[str, object]:
    """What the text says of each part and driver, and where it wires it, if in a leg of its own."""

    def plain(*quantities: Quantity | None) -> list[float | None]:
        return [quantity.value if quantity else None for quantity in quantities]

    said: dict[str, object] = {
        label: (kind(part), part.fitted, part.construction, plain(part.value, *part.quantities.values()))
        for label, part in design.parts.items()
    }
    for name, driver in design.drivers.items():
        legs = [leg.span for leg in design.legs if name in leg.drivers]
        own = driver.stated or driver.quantities
        said[name] = (plain(driver.nominal, *own.values()), [*own], driver.role, driver.measured, legs)
    return said


def without_links(found: Read, circuit: Circuit) -> Read:
    """What a sheet says, with its fitted links made wire."""
    fitted = {part.label for part in circuit.design.parts.values() if part.kind == "link" and part.fitted}
    nets = [dict(net) for net in found.nets.elements()]
    for label in fitted:
        ends = [net for net in nets if (label, "") in net]
        nets = [net for net in nets if (label, "") not in net]
        merged: Counter[tuple[str, str]] = Counter()
        for net in ends:
            merged.update(net)
        assert merged[label, ""] == 2
        del merged[label, ""]
        nets.append({key: 1 if key[1] == "post" else count for key, count in merged.items()})
    return Read(found.kinds, Counter(frozenset(net.items()) for net in nets if net), found.marked)


PARTS = (
    ("coil", "L", "1 mH"),
    ("coil", "L", "2 mH { iron core }"),
    ("coil", "L", "2 mH { ferrite core }"),
    ("capacitor", "C", "5 uF"),
    ("capacitor", "C", "50 uF { polar electrolytic }"),
    ("resistor", "R", "4 ohm"),
    ("lamp", "B", "5 ohm"),
    ("fuse", "F", "2 A"),
    ("protector", "PT", "1 A"),
    ("link", "K", ""),
)


class Random_(Random):
    """A text of a random circuit."""

    def design(self, edges: list[tuple[str, str]], drivers: int, long_names: bool = False) -> str:
        lines: list[str] = []
        walks: list[str] = []
        coils: list[str] = []
        tail = "_" + "x" * 99 if long_names else ""
        self.shuffle(edges)
        for number, (a, b) in enumerate(edges):
            if number < drivers:
                name = f"driver_{number}{tail}"
                lines.append(f"driver {name} 8 ohm {{ role woofer }}")
                walks += self.sample([f"  {a} -- {name}+", f"  {name}- -- {b}"], 2)
                continue
            word, letter, rest = self.choice(PARTS)
            label = f"{letter}{number}{tail}"
            lines.append(f"{word} {label} {rest}")
            if word == "link" and self.random() < 0.5:
                lines.append(f"omit {label}")
            if word == "coil":
                coils.append(label)
            walks.append(f"  {a} -- {label} -- {b}")
        if len(coils) > 1 and self.random() < 0.5:
            lines.append(f"coupling {coils[0]} and {coils[1]} 10 %")
        legs = " and ".join(f"driver_{n}{tail}" for n in range(drivers))
        return "\n".join([*lines, f"leg {legs} {{", *walks, "}"]) + "\n"

    def three_terminals(self, nodes: list[str]) -> tuple[list[str], list[str]]:
        """A tapped coil and an attenuator somewhere: statements and walks."""
        lines, walks = [], []
        if self.random() < 0.5:
            a, b, c = (self.choice(nodes) for _ in range(3))
            lines.append("tapped coil T90 1 mH { tap 0.3 mH }")
            walks += [f"  {a} -- T90 -- {b}", f"  T90.tap -- {c}"]
        if self.random() < 0.5:
            a, b, c = (self.choice(nodes) for _ in range(3))
            lines.append("attenuator A90 8 ohm { loss 3 dB, most 12 dB }")
            walks += [f"  {a} -- A90 -- {b}", f"  A90.common -- {c}"]
        return lines, walks

    def series_parallel(self) -> str:
        """Edges between the posts, each made two in a row or two side by side, again and again."""
        edges = [("input+", "input-")]
        for number in range(self.randint(2, 40)):
            a, b = edges.pop(self.randrange(len(edges)))
            if self.random() < 0.55:
                edges += [(a, f"node_{number}"), (f"node_{number}", b)]
            else:
                edges += [(a, b), (a, b)]
        return self.design(edges, self.randint(1, min(4, len(edges))))

    def any_graph(self) -> str:
        """Nodes joined anyhow: bridges, loose ends, loops, pieces that hang at nothing, several posts."""
        nodes = ["input+", "input-", *(f"node_{n}" for n in range(self.randint(1, 12)))]
        edges = [(self.choice(nodes), self.choice(nodes)) for _ in range(self.randint(2, 30))]
        text = self.design(edges, self.randint(1, min(4, len(edges))), long_names=self.random() < 0.1)
        lines, walks = self.three_terminals(nodes)
        if self.random() < 0.3:
            lines.append("posts high")
            walks.append(f"  high+ -- {self.choice(nodes)}")
            if self.random() < 0.5:
                walks.append(f"  high- -- {self.choice(nodes)}")
        if self.random() < 0.3:
            lines.append(f"testpoint {self.choice(nodes[2:])}")
        return "\n".join(lines) + "\n" + text[:-2] + "\n".join(walks) + "\n}\n"

    def networks(self) -> str:
        """Uses of two random networks, one in another among them, and other parts, at a few nodes."""
        lines = [
            "network inner (into, out) {",
            "  resistor R1 4 ohm",
            "  capacitor C1 5 uF",
            "  into -- R1 -- C1 -- out",
        ]
        ports = {name: ["into", "out", "back"][: self.randint(2, 3)] for name in ("one", "two")}
        for name, own in ports.items():
            nodes = [*own, "mid_a", "mid_b"]
            lines += ["}", f"network {name} ({', '.join(own)}) {{"]
            for number in range(self.randint(1, 5)):
                word, letter, rest = self.choice(PARTS[:7])
                lines += [f"  {word} {letter}{number} {rest}", self.walk(nodes, f"{letter}{number}")]
            if self.random() < 0.4:
                lines += ["  use inner as Z1", self.walk(nodes, "Z1")]
        lines.append("}")
        nodes = ["input+", "input-", *(f"node_{n}" for n in range(self.randint(1, 5)))]
        walks = [f"  {self.choice(nodes)} -- woofer+", f"  woofer- -- {self.choice(nodes)}"]
        for number in range(self.randint(1, 4)):
            name = self.choice(["one", "two"])
            lines.append(f"use {name} as X{number}")
            walks.append(self.walk(nodes, f"X{number}"))
            walks += [f"  X{number}.back -- {self.choice(nodes)}"] if "back" in ports[name] else []
        for number in range(self.randint(0, 6)):
            lines.append(f"resistor R{number} 3 ohm")
            walks.append(self.walk(nodes, f"R{number}"))
        return "\n".join([*lines, "driver woofer 8 ohm", "leg woofer {", *walks, "}"]) + "\n"

    def walk(self, nodes: list[str], label: str) -> str:
        a, b = self.sample(nodes, 2)
        return f"  {a} -- {label} -- {b}"
