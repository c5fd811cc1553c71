"""Circuit -> the circuit read aloud, for proof-reading against a schematic.

In: a circuit, sound or not. Out: plain sentences, one to a line, in the order of the author's walks. Whoever
listens with a pencil marks each part as it is named and counts the marks at the end. It says what a
schematic shows: values, construction, DC resistance, wires, pads. Tolerances, ratings and notes belong to
the parts list. It refuses to judge the circuit, or to find another order than the author's.

Words are those of the trade; "after" is avoided, since it flips when one reads from the driver.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from string import Formatter

from shuntwise.diagnostics.terminal import visible
from shuntwise.diagnostics.wording import listed
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design, NodeStop, ParallelStop, Part, PartStop, Quantity, Stop, Walk
from shuntwise.model.kinds import KINDS, ROLES
from shuntwise.network.network import FitReport
from shuntwise.structure.reach import turned_round
from shuntwise.units import write

_RETURN_WORDS = ("return", "ground")
_PADS = {"+": "plus", "-": "minus"}
_PREFIXES = {"p": "pico", "n": "nano", "u": "micro", "m": "milli", "": "", "k": "kilo", "M": "mega"}
_UNITS = {"H": "henry", "F": "farad", "ohm": "ohm", "V": "volt", "A": "ampere", "W": "watt"}
_SPOKEN = {prefix + unit: _PREFIXES[prefix] + word for unit, word in _UNITS.items() for prefix in _PREFIXES}
_SPOKEN |= {"kohm": "kilohm", "Mohm": "megohm"}
_FEW = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")


def read_aloud(circuit: Circuit, networks: Mapping[str, str] | None = None, fits: Sequence[FitReport] = ()) -> str:
    """The whole circuit in words; it ends with a line end.

    `networks` gives the name of the network behind each use of one (`{"P1": "lpad"}`); without it the use is
    called by its own name alone. `fits` say how near fitted drivers come to what they stand for.
    """
    return "\n\n".join("\n".join(lines) for lines in paragraphs(circuit, networks, fits)) + "\n"


def paragraphs(
    circuit: Circuit, networks: Mapping[str, str] | None = None, fits: Sequence[FitReport] = ()
) -> list[list[str]]:
    """The same by paragraphs, of sentences that are safe to print."""
    reader = _Reader(circuit, networks or {})
    told = [
        reader.opening(),
        reader.drivers(),
        [fit.sentence for fit in fits],
        *reader.legs(),
        *reader.insides(),
        reader.couplings(),
        reader.testpoints(),
        reader.left_over(),
        reader.count(),
    ]
    return [[visible_lines(line) for line in lines] for lines in told if lines]


def visible_lines(text: str) -> str:
    """Our own line ends kept, everything that could steer a terminal made visible."""
    return "\n".join(visible(line) for line in text.split("\n"))


# --- words


def amount(quantity: Quantity) -> str:
    """A value as spoken before a noun: `0.82 millihenry`, `8 ohm`; six digits if they are exact, else four."""
    exact = abs(float(f"{quantity.value:.6g}") - quantity.value) <= 1e-9 * abs(quantity.value)
    number, _, unit = write(quantity.value, quantity.dimension, 6 if exact else 4).partition(" ")
    return f"{number} {_SPOKEN.get(unit, unit)}".rstrip()


def amounts(quantity: Quantity) -> str:
    """The same standing alone: `8 ohms`, `120 watts`."""
    text = amount(quantity)
    plural = text.endswith(("ohm", "watt", "volt", "ampere")) and not text.startswith("1 ")
    return text + "s" * plural


@dataclass(frozen=True)
class _Spoken:
    """A quantity in the ways in which a kind may have it read aloud.

    `{value}` before a noun, `{value:alone}`, or `{:share}` in percent.
    """

    quantity: Quantity

    def __format__(self, way: str) -> str:
        if way == "share":
            return f"{100 * self.quantity.value:.4g} percent"
        return amounts(self.quantity) if way == "alone" else amount(self.quantity)


def with_article(text: str) -> str:
    """`a 0.82 ...`, `an 8.2 ...`, `an 18 ...`, `an lpad`, as the number or the spelled letter is spoken."""
    whole = re.split(r"[ .]", text, maxsplit=1)[0]
    vowel = whole.startswith("8") or whole in ("11", "18") or re.match(r"[aeiou]|[hlmnrx][^aeiouy]", text)
    return f"{'an' if vowel else 'a'} {text}"


def capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def plural(count: int, noun: str) -> str:
    """`one coil`, `two coils`, `13 coils`."""
    number = _FEW[count] if count < len(_FEW) else str(count)
    return f"{number} {noun}{'s' * (count != 1)}"


def described(part: Part) -> str:
    """What a part is: `a 0.82 millihenry air-core coil with 0.28 ohm DC resistance`."""
    kind = KINDS[part.kind]
    stated: dict[str, object] = {name: _Spoken(quantity) for name, quantity in part.quantities.items()}
    if part.value is not None:
        stated["value"] = _Spoken(part.value)
    stated["noun"] = f"{(part.construction or '').replace(' core', '-core')} {part.kind}".strip()
    forms = (*kind.spoken, "{noun}")
    said = next(form for form in forms if {name for _, name, *_ in Formatter().parse(form) if name} <= {*stated})
    text = with_article(said.format_map(stated))
    text += " whose value could not be read" if part.value is None and kind.value is not None else ""
    told = [attribute for name, attribute in kind.attributes.items() if attribute.spoken and name in part.quantities]
    bare = [attribute for attribute in told if attribute.spoken.startswith("rated")]
    details = [one.spoken.format(_Spoken(part.quantities[one.name])) for one in told if one not in bare]
    ratings = [amounts(part.quantities[one.name]) for one in bare]
    text += f" with {listed(details)}" if details else ""
    text += f"{',' * bool(details)} rated for {listed(ratings)}" if ratings else ""
    if kind.wire:
        return text + (", fitted" if part.fitted else ", left out")
    return text + ("" if part.fitted else ", not fitted")


class _Reader:
    def __init__(self, circuit: Circuit, networks: Mapping[str, str]) -> None:
        self.circuit, self.networks = circuit, networks
        self.design: Design = circuit.design
        self.reversed = turned_round(circuit)
        self.walked = set(_owners(self.design.walks))

    # --- what stands before the wiring

    def opening(self) -> list[str]:
        design = self.design
        lines = [f"{design.title or 'A design without a title'}."]
        if design.variant is not None:
            title = next((v.title for v in design.variants if v.name == design.variant), None)
            lines.append(f"This is the variant {design.variant}" + (f": {title}." if title else "."))
        elif design.variants:
            lines.append(f"This is the design itself. It has {plural(len(design.variants), 'variant')}.")
            lines += [f"Variant {v.name}" + (f": {v.title}." if v.title else ".") for v in design.variants]
        lines += self.amplifier()
        for pair in design.terminals:
            what = "" if pair.name == "input" else "an input, " if pair.fed else "a pair of posts, "
            fed = "fed by an amplifier" if pair.fed else "fed by no amplifier of its own"
            lines.append(f"{capital(pair.name)} is {what}{fed}: {pair.name} plus and {pair.name} minus.")
        if len(design.feeds) == 1:
            lines.append(f"Return means {design.feeds[0].name} minus.")
        return lines

    def amplifier(self) -> list[str]:
        amplifier = self.design.amplifier
        if amplifier is None:
            return ["No amplifier is stated."]
        text = "The amplifier"
        if amplifier.power is not None and amplifier.load is not None:
            text += f" gives {amounts(amplifier.power)} into {amounts(amplifier.load)}"
        least, source, cable = *map(amplifier.quantities.get, ("least", "source")), amplifier.cable
        more = [] if least is None else [f"may drive no less than {amounts(least)}"]
        more += [] if source is None else [f"has {amounts(source)} of output resistance"]
        more += [] if cable is None else [f"reaches the box through {cable.words}"]
        more += ["is bridged"] if amplifier.bridged else []
        text += (" and " if more and " gives " in text else " ") + listed(more)
        return [text.rstrip() + "."] if text.strip() != "The amplifier" else ["No sound amplifier is stated."]

    def drivers(self) -> list[str]:
        lines = []
        for driver in self.design.drivers.values():
            if driver.nominal is not None:
                impedance = f"nominal {amounts(driver.nominal)}"
            elif "re" in driver.quantities:
                impedance = f"DC resistance {amounts(driver.quantities['re'])}"
            else:
                impedance = "impedance not stated"
            said = {"power"} if driver.nominal is not None else {"power", "re"}
            data = [f"{name} {amounts(value)}" for name, value in driver.quantities.items() if name not in said]
            if "power" in driver.quantities:
                kind = "programme power" if driver.programme_rated else "noise power"
                data.append(f"rated for {amounts(driver.quantities['power'])} of {kind}")
            if driver.measured is not None:
                data.append(f"its impedance measured at {len(driver.measured.freq_hz)} frequencies")
            lines.append(f"{capital(driver.name)}: {', '.join([impedance, *data])}.")
        return [f"{capital(plural(len(lines), 'driver'))}.", *lines] if lines else ["No driver is declared."]

    # --- the wiring

    def legs(self) -> Iterator[list[str]]:
        told: set[str] = set()
        for index, leg in enumerate(self.design.legs):
            one = len(leg.drivers) == 1
            heading = (
                f"The {leg.drivers[0]} leg."
                if one and leg.drivers[0] in ROLES
                else (f"The leg of {listed(leg.drivers)}.")
            )
            walks = [walk for walk in self.design.walks if walk.leg == index]
            lines = [heading, *(self.walk(walk) for walk in walks)]
            if not walks:
                lines.append("Nothing is wired here.")
            touched = {stop.node[:-1] for walk in walks for stop in walk.stops if isinstance(stop, NodeStop)}
            for driver in self.design.drivers:
                if driver in self.reversed & touched - told:
                    whose = f"The {driver}" if driver in ROLES else capital(driver)
                    lines.append(f"{whose} is turned round: its minus is the fed end.")
                    told.add(driver)
            yield lines

    def insides(self) -> Iterator[list[str]]:
        """The walks inside each used network, under the network's own names."""
        inside: dict[str, list[Walk]] = {instance: [] for instance in self.design.instances}
        for walk in self.design.walks:
            if walk.leg is None:
                inside[self._instance_of(walk)].append(walk)
        for instance, walks in inside.items():
            yield [f"Inside {self._network(instance)}.", *(self.walk(walk, f"{instance}.") for walk in walks)]

    def _instance_of(self, walk: Walk) -> str:
        names = [*_owners([walk]), *(stop.node for stop in walk.stops if isinstance(stop, NodeStop))]
        holders = [label for label in self.design.instances if all(name.startswith(f"{label}.") for name in names)]
        return max(holders, key=len)

    def _network(self, instance: str) -> str:
        kind = self.networks.get(instance)
        return f"the network {instance}" + (f", {with_article(kind)}" if kind else "")

    def walk(self, walk: Walk, prefix: str = "") -> str:
        """One walk as one sentence: from the first point, through parts, to the next named point, and on."""
        steps: list[str] = []
        through: list[str] = []
        for stop in walk.stops[1:]:
            if not isinstance(stop, NodeStop):
                through.append(self.passage(stop, prefix))
                continue
            way = f"through {', then '.join(through)}," if through else "straight"
            steps.append(f"{way} to {self.point(stop, prefix)}")
            through = []
        if through:
            steps.append(f"through {', then '.join(through)}, and there it ends")
        first = walk.stops[0]
        if not isinstance(first, NodeStop):
            start = f"Beginning with {self.passage(first, prefix)},"
        elif steps[0].startswith("straight"):
            start = f"{capital(self.point(first, prefix))} goes"
        else:
            start = f"From {self.point(first, prefix)},"
        return f"{start} {'; on '.join(steps)}."

    def passage(self, stop: Stop, prefix: str) -> str:
        match stop:
            case PartStop():
                return self.part(stop, prefix)
            case ParallelStop():
                return self.parallel(stop, prefix)
            case _:
                return "something that could not be read"

    def part(self, stop: PartStop, prefix: str) -> str:
        if stop.owner in self.design.parts:
            return f"{stop.owner.removeprefix(prefix)}, {described(self.design.parts[stop.owner])}"
        return f"{self._network(stop.owner)}, in at its port {stop.into} and out at its port {stop.out_of}"

    def parallel(self, stop: ParallelStop, prefix: str) -> str:
        chains = [", then ".join(self.link(inner, prefix) for inner in chain) for chain in stop.chains]
        count = _FEW[len(chains)] if len(chains) < len(_FEW) else str(len(chains))
        return f"{count} in parallel: {'; '.join(chains[:-1])}; and {chains[-1]}; these {count} joined again"

    def link(self, stop: Stop, prefix: str) -> str:
        match stop:
            case NodeStop():
                return f"by way of {self.point(stop, prefix)}"
            case ParallelStop():
                return f"a group of {self.parallel(stop, prefix)}"
            case _:
                return self.passage(stop, prefix)

    def point(self, stop: NodeStop, prefix: str) -> str:
        """A named point as spoken: `return`, `woofer plus`, `the tap of T1`, `the node hp`."""
        node = stop.node
        feeds = self.design.feeds
        if stop.span.text in _RETURN_WORDS or (len(feeds) == 1 and node == "input-"):
            return "return"
        if node[-1:] in _PADS:
            return f"{node[:-1]} {_PADS[node[-1]]}"
        owner, _, terminal = node.rpartition(".")
        whose = f" of {owner.removeprefix(prefix)}" if owner and prefix != f"{owner}." else ""
        if node in self.design.instances.get(owner, ()):
            return f"the port {terminal}{whose}"
        return f"the {terminal}{whose}" if whose else f"the node {terminal}"

    # --- what stands beside the wiring

    def couplings(self) -> list[str]:
        lines = []
        for coupling in self.design.couplings:
            by = "by an amount that could not be read"
            if coupling.k is not None:
                sign = "minus " if coupling.k.value < 0 else ""
                by = f"by {sign}{abs(coupling.k.value) * 100:.4g} percent"
            lines.append(f"{coupling.first} and {coupling.second} are coupled {by}.")
        return lines

    def testpoints(self) -> list[str]:
        points = list(self.design.testpoints)
        return [f"{capital(plural(len(points), 'test point'))}: {listed(points)}."] if points else []

    def left_over(self) -> list[str]:
        """What is declared and in no walk: said, so that nothing of the circuit goes unread."""
        lines = [
            f"In no walk: {part.label}, {described(part)}."
            for part in self.design.parts.values()
            if part.label not in self.walked
        ]
        owners = (*(pair.name for pair in self.design.terminals), *self.design.drivers)
        spans = self.circuit.spans
        bare = [f"{owner} {_PADS[sign]}" for owner in owners for sign in "+-" if owner + sign not in spans]
        return lines + ([f"Nothing is wired to {listed(bare)}."] if bare else [])

    def count(self) -> list[str]:
        parts = self.design.parts.values()
        counts = Counter(part.kind for part in parts)
        if not counts:
            return ["There are no parts."]
        kinds = [plural(counts[kind], kind) for kind in KINDS if counts[kind]]
        text = f"That makes {plural(len(parts), 'part')}: {listed(kinds)}."
        absent = sum(not part.fitted for part in parts)
        return [text + (f" Not fitted: {plural(absent, 'part')}." if absent else "")]


def _owners(walks: Iterable[Walk]) -> Iterator[str]:
    """Every part and used network that the walks go through."""
    for walk in walks:
        yield from _through(walk.stops)


def _through(stops: Iterable[Stop]) -> Iterator[str]:
    for stop in stops:
        if isinstance(stop, PartStop):
            yield stop.owner
        elif isinstance(stop, ParallelStop):
            for chain in stop.chains:
                yield from _through(chain)
