"""Circuit -> the circuit read aloud, for proof-reading against a schematic.

In: a circuit, sound or not. Out: plain sentences, one to a line, in the order of the author's walks. Whoever
listens with a pencil marks each part as it is named and counts the marks at the end. It says what a
schematic shows: values, tolerances, ratings, construction, resistances, pads. Bodies, prices and notes belong to
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
from shuntwise.documents.pins import sentences
from shuntwise.graph.circuit import Circuit, point_of
from shuntwise.graph.spoken import PADS, spoken_point
from shuntwise.model.design import Design, NodeStop, ParallelStop, Part, PartStop, Quantity, Stop, Walk, all_stops
from shuntwise.model.kinds import KINDS, ROLES
from shuntwise.network.network import FitReport
from shuntwise.structure.reach import turned_round
from shuntwise.units import write

_RETURN_WORDS = ("return", "ground")
_PREFIXES = {"p": "pico", "n": "nano", "u": "micro", "m": "milli", "": "", "k": "kilo", "M": "mega"}
_UNITS = {"H": "henry", "F": "farad", "ohm": "ohm", "V": "volt", "A": "ampere", "W": "watt", "m": "metre"}
_SPOKEN = {prefix + unit: _PREFIXES[prefix] + word for unit, word in _UNITS.items() for prefix in _PREFIXES}
_SPOKEN |= {"kohm": "kilohm", "Mohm": "megohm"}
_RATED = "rated for "
_OF_ONE_COIL = ("re", "le", "k")
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
        sentences(circuit),
        reader.drivers(),
        [fit.sentence for fit in fits],
        *reader.legs(),
        *reader.insides(),
        reader.terminals(),
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


def whole(quantity: Quantity) -> str:
    """A value as it was stated: with six digits if they are exact, else, being worked out, with four."""
    exact = abs(float(f"{quantity.value:.6g}") - quantity.value) <= 1e-9 * abs(quantity.value)
    return write(quantity.value, quantity.dimension, 6 if exact else 4)


def amount(quantity: Quantity) -> str:
    """A value as spoken before a noun: `0.82 millihenry`, `8 ohm`."""
    number, _, unit = whole(quantity).partition(" ")
    return f"{number} {_SPOKEN.get(unit, unit)}".rstrip()


def amounts(quantity: Quantity) -> str:
    """The same standing alone: `8 ohms`, `120 watts`, `0.04 ohm`."""
    text = amount(quantity)
    plural = text.endswith(("ohm", "watt", "volt", "ampere", "metre")) and float(text.partition(" ")[0]) > 1
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
    vowel = whole.startswith("8") or whole in ("11", "18") or re.match(r"(?i)[aeiou]|[hlmnrx](?![aeiouy])", text)
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
    made = re.sub(r" (core|acting|lag)$", r"-\1", part.construction or "")
    stated["noun"] = f"{made} {part.kind}".strip()
    forms = (*kind.spoken, "{noun}")
    said = next(form for form in forms if {name for _, name, *_ in Formatter().parse(form) if name} <= {*stated})
    text = with_article(said.format_map(stated))
    text += " whose value could not be read" if part.value is None and kind.value is not None else ""
    named_in_form = {name for _, name, *_ in Formatter().parse(said)}
    told = [
        (one.spoken.startswith(_RATED), one.spoken.removeprefix(_RATED).format(_Spoken(part.quantities[name])))
        for name, one in kind.attributes.items()
        if one.spoken and name in part.quantities and name not in named_in_form
    ]
    details, ratings = ([words for rated, words in told if rated is wanted] for wanted in (False, True))
    pause = "," if " and " in text or text.endswith("read") else ""
    text += f"{pause} with {listed(details)}" if details else ""
    text += f", {_RATED}{listed(ratings)}" if ratings else ""
    if kind.wire:
        return text + (", fitted" if part.fitted else ", left out")
    return text + ("" if part.fitted else ", not fitted")


class _Reader:
    def __init__(self, circuit: Circuit, networks: Mapping[str, str]) -> None:
        self.circuit, self.networks = circuit, networks
        self.design: Design = circuit.design
        self.reversed = turned_round(circuit)
        self.walked = set(_owners(self.design.walks))
        self.beside = self._beside()

    # --- what stands before the wiring

    def opening(self) -> list[str]:
        design = self.design
        lines = [f"{design.title or 'A design without a title'}."]
        if design.variant is not None:
            title = design.variant_title
            lines.append(f"This is the variant {design.variant}" + (f": {title}." if title else "."))
        elif design.variants:
            lines.append(f"This is the design itself. It has {plural(len(design.variants), 'variant')}.")
            lines += [f"Variant {v.name}" + (f": {v.title}." if v.title else ".") for v in design.variants]
        lines += self.choices()
        lines += self.amplifier()
        for pair in design.terminals:
            what = "" if pair.name == "input" else "an input, " if pair.fed else "a pair of posts, "
            fed = "fed by an amplifier" if pair.fed else "fed by no amplifier of its own"
            lines.append(f"{capital(pair.name)} is {what}{fed}: {pair.name} plus and {pair.name} minus.")
        if len(design.feeds) == 1:
            lines.append(f"Return means {design.feeds[0].name} minus.")
        return lines

    def choices(self) -> Iterator[str]:
        for choice in self.design.choices:
            told = {p.name: p.name + (f" ({p.title})" if p.title else "") for p in choice.positions}
            here = told.pop(choice.chosen)
            title = f", {choice.title}," if choice.title else ""
            others = listed([*told.values()], "or")
            yield f"The choice {choice.name}{title} stands at {here}" + (
                f"; it may stand at {others}." if told else "."
            )

    def amplifier(self) -> list[str]:
        amplifier = self.design.amplifier
        if amplifier is None:
            return ["No amplifier is stated."]
        told = []
        if amplifier.power is not None and amplifier.load is not None:
            told.append(f"gives {amounts(amplifier.power)} into {amounts(amplifier.load)}")
        least, source, cable = *map(amplifier.quantities.get, ("least", "source")), amplifier.cable
        told += [] if least is None else [f"may drive no less than {amounts(least)}"]
        told += [] if source is None else [f"has {amounts(source)} of output resistance"]
        told += [] if cable is None else [f"reaches the box through {cable.words}"]
        told += ["is bridged"] if amplifier.bridged else []
        return [f"The amplifier {listed(told)}."] if told else ["No sound amplifier is stated."]

    def drivers(self) -> list[str]:
        lines, told = [], set()
        for driver in self.design.drivers.values():
            whole = driver.coil_of or driver.name
            if whole in told:
                continue
            told.add(whole)
            if driver.nominal is not None:
                impedance = f"nominal {amounts(driver.nominal)}"
            elif "re" in driver.quantities:
                impedance = f"DC resistance {amounts(driver.quantities['re'])}"
            else:
                impedance = "impedance not stated"
            said = {"power", "coils"} if driver.nominal is not None else {"power", "coils", "re"}
            of_one = [
                name for name in driver.stated if name not in said and (not driver.coil_of or name in _OF_ONE_COIL)
            ]
            data = [f"{name} {amounts(driver.stated[name])}" for name in of_one]
            whole_data = [f"{n} {amounts(v)}" for n, v in driver.stated.items() if n not in said and n not in of_one]
            if whole_data:
                data[-1:] = [f"{data[-1] if data else impedance}; as a whole {whole_data[0]}"]
                data += whole_data[1:]
            if "power" in driver.stated:
                kind = "programme power" if driver.programme_rated else "noise power"
                data.append(f"rated for {amounts(driver.stated['power'])} of {kind}")
            if driver.measured is not None:
                data.append(f"its impedance measured at {len(driver.measured.freq_hz)} frequencies")
            plain = driver.role is None or driver.name.startswith(driver.role)
            role = "" if plain else f", {with_article(driver.spoken_role)}"
            if driver.coil_of is not None:
                wired = [other.name for other in self.design.drivers.values() if other.coil_of == driver.coil_of]
                role += f", of two voice coils{'' if len(wired) > 1 else f', only {wired[0]} wired'}, of each"
            lines.append(f"{capital(whole)}{role}: {', '.join([impedance, *data])}.")
        return [f"{capital(plural(len(lines), 'driver'))}.", *lines] if lines else ["No driver is declared."]

    def wholes(self, names: Iterable[str]) -> list[str]:
        """Drivers by name, those of two coils once."""
        known = self.design.drivers
        return list(dict.fromkeys(known[name].coil_of or name if name in known else name for name in names))

    # --- the wiring

    def legs(self) -> Iterator[list[str]]:
        told: set[str] = set()
        for index, leg in enumerate(self.design.legs):
            one = len(leg.drivers) == 1
            heading = (
                f"The {leg.drivers[0]} leg."
                if one and leg.drivers[0] in ROLES
                else (f"The leg of {listed(self.wholes(leg.drivers))}.")
            )
            walks = [walk for walk in self.design.walks if walk.leg == index]
            lines = [heading, *self.sentences(walks)]
            if not walks:
                lines.append(f"Nothing{self.readable(self.design.lost_wiring)} is wired here.")
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
                inside.get(_scope(walk), []).append(walk)
        for instance, walks in inside.items():
            yield [f"Inside {self._network(instance)}.", *self.sentences(walks, f"{instance}.")]

    def _network(self, instance: str) -> str:
        kind = self.networks.get(instance)
        return f"the network {instance}" + (f", {with_article(kind)}" if kind else "")

    def sentences(self, walks: Iterable[Walk], prefix: str = "") -> Iterator[str]:
        """The walks; a part that no walk goes through is told of before the first that names an end of it."""
        for walk in walks:
            for stop in all_stops(walk.stops):
                label = stop.node.rpartition(".")[0] if isinstance(stop, NodeStop) else ""
                if label in self.design.parts and label not in self.walked:
                    self.walked.add(label)
                    what = described(self.design.parts[label])
                    yield f"{label.removeprefix(prefix)}, {what}, has its ends wired one by one."
            yield self.walk(walk, prefix)

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
            part = self.design.parts[stop.owner]
            ends = f", in at its {stop.into} and out at its {stop.out_of}" if _has_terminals(part) else ""
            return f"{stop.owner.removeprefix(prefix)}, {described(part)}{ends}"
        return f"{self._network(stop.owner)}, in at its port {stop.into} and out at its port {stop.out_of}"

    def parallel(self, stop: ParallelStop, prefix: str) -> str:
        chains = [", then ".join(self.link(inner, prefix) for inner in chain) for chain in stop.chains]
        if len(chains) == 1:
            return f"{chains[0]}, which is parallel to nothing"
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
        if node.endswith("-") and (stop.span.text in _RETURN_WORDS or (len(feeds) == 1 and node == "input-")):
            return "return"
        return spoken_point(self.design, node, prefix)

    # --- what stands beside the wiring

    def terminals(self) -> list[str]:
        """Where each end of a part with more than two goes; those that go nowhere are left over."""
        lines = []
        for part in filter(_has_terminals, self.design.parts.values()):
            ends = {terminal: self.beside.get(point_of(part.label, terminal), ()) for terminal in _terminals(part)}
            spoken = {terminal: dict.fromkeys(map(self.neighbour, beside)) for terminal, beside in ends.items()}
            told = [f"its {terminal} to {listed(list(others))}" for terminal, others in spoken.items() if others]
            if told:
                lines.append(f"{part.label}: {'; '.join(told).replace(' to ', ' goes to ', 1)}.")
        return lines

    def _beside(self) -> dict[str, list[Stop]]:
        """What walks have beside each point that they name or go through; of a port, outside its network."""
        found: dict[str, list[Stop]] = {}
        for walk in self.design.walks:
            own_ports = self.design.instances.get(_scope(walk), ()) if walk.leg is None else ()
            for before, stop, behind in _in_between(walk.stops):
                match stop:
                    case NodeStop() if stop.node not in own_ports:
                        sides = ((stop.node, before), (stop.node, behind))
                    case PartStop():
                        sides = ((point_of(stop.owner, stop.into), before), (point_of(stop.owner, stop.out_of), behind))
                    case _:
                        continue
                for point, other in sides:
                    found.setdefault(point, []).extend([] if other is None else [other])
        return found

    def neighbour(self, stop: Stop) -> str:
        """A stop as what an end goes to, under its whole name."""
        match stop:
            case NodeStop():
                return self.point(stop, "")
            case PartStop():
                return stop.owner if stop.owner in self.design.parts else self._network(stop.owner)
            case ParallelStop():
                return f"the group of {listed(list(_through((stop,))))}"
            case _:
                return "something that could not be read"

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
        """What is declared and in no walk: said, so that nothing of the circuit goes unread.

        Of what may stand in lost text, or be meant by a station that is nothing, only that no walk to be read has it.
        """
        design = self.design
        reached = {label for label, ports in design.instances.items() if not self.beside.keys().isdisjoint(ports)}
        lines = [
            f"In no walk{self.readable(self.perhaps(label))}: {self._network(label)}."
            for label in design.instances
            if label not in reached and ("." not in label or label.rpartition(".")[0] in reached)
        ]
        lines += [
            f"In no walk{self.readable(self.perhaps(part.label))}: {part.label}, {described(part)}."
            for part in design.parts.values()
            if part.label not in self.walked
        ]
        owners = (*(pair.name for pair in design.terminals), *design.drivers)
        bare = {owner + sign: f"{owner} {PADS[sign]}" for owner in owners for sign in "+-"}
        ports = {port: label for label, ports in design.instances.items() if label in reached for port in ports}
        bare |= {port: f"the port {port.rpartition('.')[2]} of {label}" for port, label in ports.items()}
        bare |= {
            point_of(part.label, terminal): f"the {terminal} of {part.label}"
            for part in filter(_has_terminals, design.parts.values())
            if part.label in self.walked
            for terminal in _terminals(part)
        }
        open_ends = [point for point in bare if point not in self.beside]
        for lost in (False, True):
            told = [bare[point] for point in open_ends if (self.circuit.net_of[point] in self.circuit.doubtful) is lost]
            lines += [f"Nothing{self.readable(lost)} is wired to {listed(told)}."] if told else []
        return lines

    def perhaps(self, label: str) -> bool:
        """May this part or network stand in lost text, or where a walk has a station that is nothing?"""
        return label.rpartition(".")[2] in self.design.doubtful or label in self.design.meant

    def readable(self, lost: bool) -> str:
        return " that could be read" if lost else ""

    def count(self) -> list[str]:
        parts = self.design.parts.values()
        counts = Counter(part.kind for part in parts)
        if not counts:
            return ["There are no parts."]
        kinds = [plural(counts[kind], kind) for kind in KINDS if counts[kind]]
        text = f"That makes {plural(len(parts), 'part')}: {listed(kinds)}."
        absent = sum(not part.fitted for part in parts)
        return [text + (f" Not fitted: {plural(absent, 'part')}." if absent else "")]


def _has_terminals(part: Part) -> bool:
    """Has it more than the two ends that a walk goes through?"""
    return len(KINDS[part.kind].terminals) > 2


def _terminals(part: Part) -> Iterable[str]:
    """The terminals of a part in the order in which its sections follow each other: start, tap, end."""
    return dict.fromkeys(terminal for ends in KINDS[part.kind].sections.values() for terminal in ends)


def _scope(walk: Walk) -> str:
    """The used network that a walk stands in: what its names have before what is written. Empty if none can be read."""
    for stop in all_stops(walk.stops):
        name = stop.node if isinstance(stop, NodeStop) else stop.owner if isinstance(stop, PartStop) else ""
        if name:
            return ".".join(name.split(".")[: -1 - stop.span.text.count(".")])
    return ""


def _in_between(
    stops: Sequence[Stop], before: Stop | None = None, behind: Stop | None = None
) -> Iterator[tuple[Stop | None, Stop, Stop | None]]:
    """All stops, those of groups included, each between its neighbours; a group's are those of its chains' ends."""
    for index, stop in enumerate(stops):
        last = stops[index - 1] if index else before
        following = stops[index + 1] if index + 1 < len(stops) else behind
        if isinstance(stop, ParallelStop):
            for chain in stop.chains:
                yield from _in_between(chain, last, following)
        else:
            yield last, stop, following


def _owners(walks: Iterable[Walk]) -> Iterator[str]:
    """Every part and used network that the walks go through."""
    return (owner for walk in walks for owner in _through(walk.stops))


def _through(stops: Iterable[Stop]) -> Iterator[str]:
    return (stop.owner for stop in all_stops(stops) if isinstance(stop, PartStop))
