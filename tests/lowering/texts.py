"""Random texts, rich in what is rare: seeded, credible in their values, each with one variant and some settings.

A text is a folder of files. `Text.features` names what stands in it, so that a run can count what it has covered.
"""

from __future__ import annotations

import math
import random
from dataclasses import dataclass, field
from pathlib import Path as FilePath

from lowering import tables

NODES = [
    "hp",
    "middle",
    "knee",
    "north",
    "south",
    "nah",
    "höhe",
    "tief",
    "spalte",
    "upper",
    "lower",
    "turn",
    "ridge",
    "gate",
    "yard",
    "lane",
]
OHMS = ("ohm", "ohms", "Ω", "\u2126")
MICRO = ("u", "µ", "μ")
LIBRARY = {
    "lpad": "loss {loss} dB, rated 40 W",
    "zobel": "re {ohm} ohm, le {mh} mH, rated 25 W, voltage 160 V",
    "notch": "centre {khz} kHz, inductance {mh} mH, damping {ohm} ohm, dcr 0.1 ohm, rated 40 W, voltage 250 V",
    "trap": "centre {khz} kHz, inductance {mh} mH, damping {ohm} ohm, dcr 0.1 ohm, rated 40 W, voltage 250 V",
}
LIBRARY_PARTS = {
    "lpad": {"Rs": "resistor", "Rp": "resistor"},
    "zobel": {"R": "resistor", "C": "capacitor"},
    "notch": {"L": "coil", "C": "capacitor", "R": "resistor"},
    "trap": {"L": "coil", "C": "capacitor", "R": "resistor"},
}
LIBRARY_PARAMETERS = {
    "lpad": {"loss": "decibel"},
    "zobel": {"re": "resistor", "le": "coil"},
    "notch": {"centre": "frequency", "inductance": "coil", "damping": "resistor"},
    "trap": {"centre": "frequency", "inductance": "coil", "damping": "resistor"},
}
LABELS = {"coil": "L", "tapped coil": "T", "capacitor": "C", "resistor": "R", "lamp": "B", "fuse": "F",
          "protector": "F", "attenuator": "A", "link": "K"}  # fmt: skip


@dataclass
class Text:
    files: dict[str, str]
    variant: str | None
    settings: list[str]
    features: set[str]
    main: str = "design.shunt"

    def write(self, folder: FilePath) -> FilePath:
        """Lay the files into a folder; gives the path of the design."""
        for name, text in self.files.items():
            path = folder / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, "utf-8")
        return folder / self.main


@dataclass
class Scope:
    """A level that parts are declared at: the design, or a network under construction."""

    depth: int = 0
    lines: list[str] = field(default_factory=list)  # declarations
    walks: list[str] = field(default_factory=list)
    parts: dict[str, str] = field(default_factory=dict)  # label to kind
    uses: dict[str, str] = field(default_factory=dict)  # name to network
    names: dict[str, str] = field(default_factory=dict)  # of values, to their kind
    nodes: list[str] = field(default_factory=list)
    counts: dict[str, int] = field(default_factory=dict)
    couplings: list[str] = field(default_factory=list)


@dataclass
class Made:
    """A network that may be used: its ports, parameters with their kinds, and the scope of its body."""

    ports: list[str]
    parameters: dict[str, str]
    defaults: set[str]
    scope: Scope


def make(seed: int) -> Text:
    return _Maker(random.Random(seed)).text()


class _Maker:
    def __init__(self, rng: random.Random) -> None:
        self.rng = rng
        self.features: set[str] = set()
        self.files: dict[str, str] = {}
        self.networks: dict[str, Made] = {}
        self.network_texts: list[str] = []
        self.includes: list[str] = []
        self.top = Scope()
        self.drivers: dict[str, str] = {}  # name to its text
        self.legs: dict[str, list[str]] = {}  # "woofer and tweeter" to walks
        self.box: list[str] = []
        self.returns: list[str] = []
        self.links_out: list[str] = []
        self.choice = ""

    def chance(self, share: float) -> bool:
        return self.rng.random() < share

    def note(self, feature: str) -> None:
        self.features.add(feature)

    # --- values

    def magnitude(self, kind: str) -> float:
        low, high = {
            "coil": (0.12e-3, 4e-3),
            "tapped coil": (0.6e-3, 4e-3),
            "capacitor": (1.5e-6, 80e-6),
            "resistor": (1.2, 40.0),
            "lamp": (2.0, 9.0),
            "fuse": (0.5, 6.0),
            "protector": (0.3, 3.0),
            "attenuator": (4.0, 16.0),
            "frequency": (300.0, 6e3),
            "decibel": (1.0, 9.0),
        }[kind]
        return float(f"{math.exp(self.rng.uniform(math.log(low), math.log(high))):.3g}")

    def plain(self, kind: str, value: float) -> str:
        """A number and its unit, in one of the ways that they may be written."""
        if kind == "frequency":
            unit, factor = self.rng.choice([("Hz", 1.0), ("kHz", 1e3)])
        elif kind == "decibel":
            unit, factor = "dB", 1.0
        elif kind in ("resistor", "lamp", "attenuator"):
            unit, factor = self.rng.choice([(self.rng.choice(OHMS), 1.0), ("mohm", 1e-3), ("kΩ", 1e3), ("ohm", 1.0)])
        elif kind in ("fuse", "protector"):
            unit, factor = self.rng.choice([("A", 1.0), ("mA", 1e-3)])
        elif kind == "capacitor":
            unit, factor = self.rng.choice(
                [(self.rng.choice(MICRO) + "F", 1e-6), ("nF", 1e-9), ("mF", 1e-3), ("F", 1.0)]
            )
        else:
            unit, factor = self.rng.choice([("mH", 1e-3), (self.rng.choice(MICRO) + "H", 1e-6), ("H", 1.0)])
        if any(ord(letter) > 127 for letter in unit):
            self.note("omega and mu signs")
        digits = f"{value / factor:.6g}"
        return digits + self.rng.choice(["", " "]) + unit if "e" not in digits else f"{digits} {unit}"

    def code(self, kind: str, value: float) -> str | None:
        """The value as printed on a part, if it has such a code."""
        if kind in ("fuse", "protector"):
            return None
        letters = {
            "resistor": [("R", 1.0)],
            "lamp": [("R", 1.0)],
            "attenuator": [("R", 1.0)],
            "capacitor": [("u", 1e-6), ("µ", 1e-6), ("n", 1e-9)],
            "coil": [("m", 1e-3), ("u", 1e-6)],
            "tapped coil": [("m", 1e-3)],
        }[kind]
        letter, factor = self.rng.choice(letters)
        digits = f"{value / factor:.3f}".rstrip("0")
        before, _, behind = digits.partition(".")
        if before == "0" and letter != "n" and self.chance(0.5):
            self.note("code that begins with its letter")
            before = ""
        tolerance = self.rng.choice(["", "", "J", "K"]) if behind else ""
        self.note("code")
        if not before and not behind:
            return None
        return f"{before}{letter}{behind}{tolerance}"

    def value(self, kind: str, scope: Scope) -> str:
        """An expression of the wanted kind: plain, a code, arithmetic or names."""
        value = self.magnitude(kind)
        plain = lambda share: self.plain(kind, float(f"{value * share:.6g}"))  # noqa: E731
        known = [name for name, of in scope.names.items() if of == kind]
        style = self.rng.random()
        if style < 0.4:
            return plain(1.0)
        if style < 0.55 and kind not in ("frequency", "decibel"):
            return self.code(kind, value) or plain(1.0)
        if style < 0.75 and known:
            self.note("let or parameter in a value")
            name = self.rng.choice(known)
            return self.rng.choice([name, f"{name} * 1.1", f"1.2*{name}", f"({name} + {plain(0.2)}) / 1.3"])
        if style < 0.85:
            self.note("arithmetic")
            return self.rng.choice(
                [
                    f"{plain(0.4)} + {plain(0.6)}",
                    f"{plain(1.5)} - {plain(0.5)}",
                    f"2 * {plain(0.5)}",
                    f"{plain(0.5)} * 2^(1 - 0)",
                    f"{plain(3)} / (1 + 2)",
                    f"-(-{plain(1.0)})",
                    f"{plain(0.25)} * (-2)^2",
                ]
            )
        corners = [name for name, of in scope.names.items() if of == "frequency"]
        loads = [name for name, of in scope.names.items() if of == "resistor"]
        if corners and loads and kind in ("coil", "capacitor"):
            self.note("corner formula")
            corner, load = self.rng.choice(corners), self.rng.choice(loads)
            if kind == "coil":
                return f"{load} / (2 * pi * {corner})"
            return f"1 / (2*pi*{corner}*{load})"
        if kind == "resistor" and self.chance(0.5):
            self.note("root of a ratio")
            return f"({plain(1.0).split()[0] if False else '0.8 mH'} / {self.rng.choice(['12 uF', '33 uF'])})^0.5"
        if kind == "resistor":
            self.note("code in arithmetic")
            return f"{self.rng.choice(['4R7', '10R', '0R82', '3R3J'])} * {self.rng.choice(['1.5', '2', '3'])}"
        return plain(1.0)

    def let(self, scope: Scope, name: str, kind: str) -> None:
        text = self.value(kind, scope)
        if (
            text[0].isdigit()
            and any(letter in text for letter in "unmµRK")
            and text.isalnum()
            and not text.endswith(("H", "F", "m", "s", "z"))
        ):
            text = self.plain(kind, self.magnitude(kind))  # a bare code says too little here
        if not text[0].isdigit() and text[1:2].isdigit():
            text = self.plain(kind, self.magnitude(kind))
        scope.lines.append(f"let {name} = {text}")
        scope.names[name] = kind

    # --- parts

    def label(self, scope: Scope, kind: str) -> str:
        scope.counts[kind] = scope.counts.get(kind, 0) + 1
        label = f"{LABELS[kind]}{scope.counts[kind]}"
        scope.parts[label] = kind
        return label

    def part(self, scope: Scope, kind: str) -> str:
        label = self.label(scope, kind)
        scope.lines.append(self.declaration(scope, kind, label))
        return label

    def declaration(self, scope: Scope, kind: str, label: str) -> str:
        if kind == "link":
            self.note("link")
            return f"link {label}" + self.rng.choice(["", " { wire 1 mm }"])
        value = self.value(kind, scope)
        items: list[str] = []
        if kind == "coil" and self.chance(0.6):
            items.append(f"dcr {self.rng.choice(['0.28 ohm', '350 mohm', '0R15', '0.1 Ω + 0.05 ohm'])}")
        if kind == "tapped coil":
            value = self.plain(kind, whole := self.magnitude(kind))
            k = self.rng.choice([None, 0.98, 0.9, 0.5, 0.995, 0.75])
            in_henry = "tap " + self.plain("coil", float(f"{whole * self.rng.uniform(0.08, 0.6):.3g}"))
            items.append(tap := self.rng.choice([in_henry, in_henry, "tap 40 %", "tap 100 % * 0.6", "tap -6 dB"]))
            self.note("tap in henry" if tap == in_henry else "tap by share or level")
            if k is not None:
                items.append(f"k {k}")
            if self.chance(0.7):
                items.append("dcr 0.4 ohm")
                if self.chance(0.5):
                    items.append("tap_dcr 0.13 ohm")
                    self.note("tap_dcr")
            self.note("tapped coil")
        if kind == "capacitor" and self.chance(0.3):
            items.append("esr " + self.rng.choice(["0.05 ohm", "80 mΩ"]))
            self.note("esr")
        if kind in ("fuse", "protector") and self.chance(0.5):
            items.append("cold " + self.rng.choice(["0.2 ohm", "90 mΩ"]))
            self.note("cold")
        if kind == "attenuator":
            items += [f"loss {self.rng.choice(['3 dB', '0 dB', '6.5 dB'])}", *self.rng.choice([[], ["most 20 dB"]])]
            self.note("attenuator")
        if kind == "lamp":
            items.append("hot 58 ohm")
            self.note("lamp")
        extra = {"coil": "air core", "capacitor": "film", "resistor": "wirewound"}.get(kind)
        if extra and self.chance(0.3):
            items.append(extra)
        if self.chance(0.3):
            items.append('note "from the old box, {5 %}"')
        self.rng.shuffle(items)
        return f"{kind} {label} {value}" + self.braces(items)

    def braces(self, items: list[str]) -> str:
        if not items:
            return ""
        if self.chance(0.2):
            self.note("braces over lines")
            return " {  # one to a line\n  " + self.rng.choice([",\n  ", "\n  "]).join(items) + "\n}"
        return " { " + ", ".join(items) + " }"

    # --- wiring

    def node(self, scope: Scope) -> str:
        base = NODES[len(scope.nodes) % len(NODES)]
        name = base if len(scope.nodes) < len(NODES) else f"{base}_{'x' * (len(scope.nodes) // len(NODES))}"
        scope.nodes.append(name)
        return name

    def simple(self, scope: Scope) -> str:
        kind = self.rng.choices(["coil", "capacitor", "resistor", "lamp", "link"], [9, 9, 9, 2, 1])[0]
        return self.part(scope, kind)

    def series(self, scope: Scope) -> str:
        """A part in the signal's way, which lets some current through."""
        return self.part(
            scope,
            self.rng.choices(["coil", "capacitor", "resistor", "lamp", "fuse", "protector"], [5, 5, 3, 1, 0.5, 0.5])[0],
        )

    def element(self, scope: Scope, ground: str) -> str:
        """One station of a walk, or several in a row; what hangs on it is wired to `ground`."""
        style = self.rng.random()
        if style < 0.5:
            return self.series(scope)
        if style < 0.68:
            return self.group(scope, ground)
        if style < 0.82 and self.networks:
            return self.used(scope, ground)
        if style < 0.94:
            return self.tapped(scope, ground)
        if style < 0.97:
            attenuator = self.part(scope, "attenuator")
            scope.walks.append(f"{attenuator}.common -- {ground}")
            return attenuator
        self.note("link in a walk")
        return self.part(scope, "link")

    def group(self, scope: Scope, ground: str, depth: int = 0) -> str:
        self.note("group" if depth == 0 else "nested group")
        branches = []
        for _ in range(self.rng.randint(2, 3)):
            stations = [self.simple(scope)]
            if self.chance(0.25) and depth < 2:
                stations += [self.group(scope, ground, depth + 1), self.simple(scope)]
            elif self.chance(0.3):
                stations.append(self.simple(scope))
            if len(stations) > 1 and self.chance(0.2):
                node = self.node(scope)
                stations.insert(1, node)
                scope.walks.append(f"{node} -- {self.part(scope, 'resistor')} -- {ground}")
                self.note("node in a group")
            if self.networks and self.chance(0.1):
                stations[-1] = self.used(scope, ground)
                self.note("network in a group")
            branches.append(" -- ".join(stations))
        if self.chance(0.2):
            self.note("group over lines")
            return "(\n    " + "\n    | ".join(branches) + "\n  )"
        return "(" + " | ".join(branches) + ")"

    def tapped(self, scope: Scope, ground: str) -> str:
        """A tapped coil as stations of a walk, with its tap wired somewhere."""
        coil = self.part(scope, "tapped coil")
        load = f"{self.part(scope, 'resistor')} -- {ground}"
        node = self.node(scope)
        style = self.rng.choice(
            ["walked", "reversed", "stepdown", "tap-end", "start-tap", "upper", "lower", "tap-ground", "tap-out", "cap"]
        )
        self.note(f"tapped coil, {style}")
        add = scope.walks.append
        if style == "walked":
            add(f"{coil}.tap -- {load}")
            return f"{coil} -- {node}" if self.join_node(scope, node, load) else coil
        if style == "reversed":  # in at the end, out at the start
            add(f"{coil}.start -- {node} -- {load}")
            add(f"{coil}.tap -- {self.part(scope, 'capacitor')} -- {ground}")
            return f"{coil}.end\n  {node}"
        if style == "stepdown":
            add(f"{coil}.start -- {ground}")
            add(f"{coil}.tap -- {node} -- {load}")
            return f"{coil}.end\n  {node}"
        if style == "tap-end":
            add(f"{coil}.tap -- {coil}.end -- {load}")
            return coil
        if style == "start-tap":
            add(f"{coil}.start -- {coil}.tap")
            add(f"{coil}.end -- {load}")
            return coil
        if style == "upper":  # the start is left open
            add(f"{coil}.end -- {node} -- {load}")
            return f"{coil}.tap\n  {node}"
        if style == "lower":  # the end is left open
            add(f"{coil}.tap -- {node} -- {load}")
            return f"{coil}.start\n  {node}"
        if style == "tap-ground":
            add(f"{coil}.tap -- {ground}")
            add(f"{coil}.end -- {load}")
            return coil
        if style == "tap-out":  # what follows hangs on the tap, the end on a capacitor
            add(f"{coil}.end -- {self.part(scope, 'capacitor')} -- {ground}")
            add(f"{coil}.tap -- {node} -- {load}")
            return f"{coil}.start\n  {node}"
        add(f"{coil}.tap -- {self.part(scope, 'capacitor')} -- {coil}.end -- {load}")
        return coil

    def join_node(self, scope: Scope, node: str, load: str) -> bool:
        scope.walks.append(f"{node} -- {load.replace('--', '--  # to the foot' + chr(10) + '   ')}")
        self.note("walk over lines")
        return True

    def used(self, scope: Scope, ground: str) -> str:
        """A used network as a station; its further ports go to the ground."""
        name = self.rng.choice(list(self.networks))
        use = self.use(scope, name)
        made = self.networks[name]
        for port in made.ports[2:]:
            scope.walks.append(f"{use}.{port} -- {ground}")
            self.note("port by name")
        if name in ("zobel", "trap"):
            scope.walks.append(f"{use}.{made.ports[1]} -- {self.part(scope, 'resistor')} -- {ground}")
        return use

    def use(self, scope: Scope, network: str) -> str:
        scope.counts["use"] = scope.counts.get("use", 0) + 1
        name = f"{'PZN'[scope.counts['use'] % 3]}{scope.counts['use']}"
        scope.uses[name] = network
        scope.lines.append(self.use_line(scope, network, name))
        if scope.depth:
            self.note("network in a network")
        return name

    def use_line(self, scope: Scope, network: str, name: str) -> str:
        if network in LIBRARY:
            self.note("library network")
            values = {
                "loss": self.rng.choice([2, 3.5, 6]),
                "ohm": self.rng.choice([4.7, 6.2, 8]),
                "mh": self.rng.choice([0.33, 0.47, 0.8]),
                "khz": self.rng.choice([1.2, 2.5]),
            }
            return f"use {network} as {name} {{ {LIBRARY[network].format(**values)} }}"
        made = self.networks[network]
        items = [
            f"{parameter} {self.value(kind, scope)}"
            for parameter, kind in made.parameters.items()
            if parameter not in made.defaults or self.chance(0.5)
        ]
        # In an entry a code such as R47 would read as a name of a value, so it is written with its nought.
        return f"use {network} as {name}" + self.braces([self.spelled(item) for item in items])

    def spelled(self, item: str) -> str:
        """An entry whose value is no code that needs a kind to be told by: those are for parts."""
        key, _, value = item.partition(" ")
        known = {"rs": "resistor", "ls": "coil", "cs": "capacitor", "fq": "frequency"}
        bare = value.strip()
        if (
            any(letter.isdigit() for letter in bare)
            and bare.isalnum()
            and not bare.endswith(("H", "F", "m", "Hz", "s", "Ω", "\u2126"))
        ):
            kind = known[key.rstrip("0123456789_xy")]
            return f"{key} {self.plain(kind, self.magnitude(kind))}"
        return item

    # --- networks

    def network(self, at: int) -> None:
        name = f"cell_{'abcdef'[at]}"
        scope = Scope(depth=1)
        ports = ["into", "out", "foot"][: self.rng.randint(2, 3)]
        parameters: dict[str, str] = {}
        defaults: set[str] = set()
        heads = []
        for key, kind in (("rs", "resistor"), ("ls", "coil"), ("cs", "capacitor"), ("fq", "frequency")):
            if self.chance(0.5):
                parameters[key] = kind
                scope.names[key] = kind
                if self.chance(0.4):
                    defaults.add(key)
                    heads.append(f"{key} = {self.plain(kind, self.magnitude(kind))}")
                    self.note("default of a parameter")
                else:
                    heads.append(key)
        if self.chance(0.5):
            self.let(scope, "own", self.rng.choice(["resistor", "coil", "capacitor"]))
            self.note("let in a network")
        ground = ports[2] if len(ports) > 2 else ports[1]
        stations = [ports[0], self.element(scope, ground)]
        if self.chance(0.5):
            node = self.node(scope)
            stations += [node, self.series(scope)]
            scope.walks.append(f"{node} -- {self.simple(scope)} -- {ground}")
            self.note("node of a network")
        stations.append(ports[1])
        scope.walks += self.walk(stations)
        if len(ports) > 2:
            scope.walks.append(f"{ports[1]} -- {self.series(scope)} -- {ports[2]}")
        self.couplings(scope, "coupling in a network")
        self.networks[name] = Made(ports, parameters, defaults, scope)
        given = f" given {', '.join(heads)}" if heads else ""
        body = self.body([*scope.lines, *scope.couplings, *scope.walks])
        self.network_texts.append(f"network {name} ({', '.join(ports)}){given} {{\n{body}\n}}")
        self.note("network")

    def body(self, lines: list[str]) -> str:
        self.rng.shuffle(lines)
        return "\n".join("  " + line for line in lines)

    def couplings(self, scope: Scope, feature: str) -> None:
        """Signed factors among up to three coils: below 0.49 each, so that the matrix stays positive definite."""
        coils = [label for label, kind in scope.parts.items() if kind == "coil"]
        if scope.depth == 0:
            for use, network in scope.uses.items():
                coils += [
                    f"{use}.{label}" for label in self.parts_of(network) if self.parts_of(network)[label] == "coil"
                ]
        if len(coils) < 2 or not self.chance(0.6):
            return
        chosen = self.rng.sample(coils, min(len(coils), self.rng.choice([2, 3, 3])))
        for at, one in enumerate(chosen):
            for other in chosen[at + 1 :]:
                factor = self.rng.choice([-1, 1]) * self.rng.choice([0.03, 0.2, 0.45])
                said = self.rng.choice([f"{factor:g}", f"{factor * 100:g} %"])
                scope.couplings.append(f"coupling {one} and {other} {said}")
                self.note("three coils coupled" if len(chosen) == 3 else feature)
                if "." in one + other:
                    self.note("coupling into a network")

    def parts_of(self, network: str) -> dict[str, str]:
        return LIBRARY_PARTS[network] if network in LIBRARY else self.networks[network].scope.parts

    # --- drivers

    def driver_items(self, name: str) -> str:
        """The attributes of a driver, in one of all models."""
        rng = self.rng
        model = rng.choice(
            [
                "nominal",
                "re",
                "voice",
                "lumped",
                "lumped",
                "lumped",
                "qts",
                "sealed",
                "vented",
                "semi",
                "wright",
                "measured",
            ]
        )
        self.note(f"driver, {model}")
        nominal = rng.choice([" 8 ohm", " 4 ohm", " 16 Ω"])
        items = [] if name.startswith(("woofer", "mid", "tweeter")) else ["role mid"]
        if model == "nominal":
            return nominal + self.braces(items)
        re = rng.choice([3.1, 5.9, 6.3])
        items.append(rng.choice([f"re {re} ohm", f"re {re}Ω"]))
        if model == "measured":
            table = rng.choice(list(tables.TABLES))
            self.files[table] = tables.TABLES[table]
            self.note(f"table, {table}")
            return nominal + self.braces([*items, f'measured "{table}"'])
        if model in ("semi", "wright"):
            items += (
                [f"semi_k {rng.choice([0.0021, 0.0138])}", f"semi_n {rng.choice([0.7, 0.65])}"]
                if model == "semi"
                else ["r_factor 0.0055", f"r_exponent {rng.choice([0.7, 0.69])}", "x_factor 0.012", "x_exponent 0.69"]
            )
        elif model != "re":
            items.append(f"le {rng.choice(['0.4 mH', '50uH', '0.12 mH + 0.03 mH'])}")
        if model == "lumped" and self.chance(0.3):
            items += ["res 55 ohm", "les 32 mH", "ces 213 uF"]
            self.note("motional impedance")
        elif model not in ("re", "voice"):
            items += [f"fs {rng.choice(['61 Hz', '0.82 kHz', '48Hz'])}"]
            q = ["qms 4.5", "qes 0.48", "qts 0.43373493975903615"[:16]]
            q = rng.choice([["qms 4.5", "qts 0.42"], ["qes 0.48", "qts 0.42"]]) if model == "qts" else q[:2]
            items += q
        if model == "sealed" or (model in ("semi", "wright") and self.chance(0.3)):
            items.append("alpha 1.8")
        if model == "vented" or (model == "semi" and "alpha 1.8" not in items and self.chance(0.3)):
            items += ["alpha 1.3", "fb 47 Hz"]
            if self.chance(0.5):
                items.append("ql 9")
                self.note("ql given")
        rng.shuffle(items)
        if self.chance(0.3):
            items.append("200 W")
        return nominal + self.braces(items)

    # --- legs

    def walk(self, stations: list[str]) -> list[str]:
        """A row of stations as one walk, or as more where a station breaks it with a line end."""
        return [piece.strip() for piece in self.breaks(" -- ".join(stations))]

    def breaks(self, text: str) -> list[str]:
        """Cut where an element said "the walk ends here and goes on at this node"."""
        pieces, depth, start = [], 0, 0
        for at, letter in enumerate(text):
            depth += (letter == "(") - (letter == ")")
            if letter == "\n" and depth == 0 and not text[:at].rstrip().endswith(("--", ")", "foot")):
                pieces.append(text[start:at])
                start = at
        return [*pieces, text[start:]]

    def leg(self, driver: str, source: str, ground: str) -> list[str]:
        """A chain of elements from the source to the driver, shunts at its nodes, and something across the driver."""
        scope = self.top
        before = len(scope.walks)
        plus, minus = (f"{driver}+", f"{driver}-")
        if self.chance(0.35):
            plus, minus = minus, plus
            self.note("minus-fed driver")
        stations = [source, self.element(scope, ground)]
        for _ in range(self.rng.randint(0, 2)):
            if self.chance(0.7):
                node = self.node(scope)
                stations.append(node)
                scope.walks.append(
                    f"{node} -- {' -- '.join(self.series(scope) for _ in range(self.rng.randint(1, 2)))} -- {ground}"
                )
            stations.append(self.element(scope, ground))
        walks = self.walk([*stations, plus])
        if self.chance(0.5):
            walks += self.walk([plus, self.element(scope, minus), minus])
        walks.append(
            f"{minus} -- {ground}" if self.chance(0.8) else f"{minus} -- {self.part(scope, 'resistor')} -- {ground}"
        )
        walks += scope.walks[before:]
        del scope.walks[before:]
        return walks

    def pair(self, first: str, second: str, source: str, ground: str) -> list[str]:
        """Two drivers in series, or across each other, with parts across each."""
        scope = self.top
        before = len(scope.walks)
        middle = self.node(scope)
        if self.chance(0.5):
            self.note("drivers in series")
            ends = [self.rng.choice([("+", "-"), ("-", "+")]) for _ in range(2)]
            walks = [f"{source} -- {first}{ends[0][0]}", f"{first}{ends[0][1]} -- {middle} -- {second}{ends[1][0]}"]
            walks.append(f"{second}{ends[1][1]} -- {ground}")
            walks += self.walk([source, self.element(scope, ground), middle])
            walks += self.walk([middle, self.element(scope, ground), ground])
        else:
            self.note("drivers across each other")
            walks = self.walk([source, self.element(scope, ground), middle, f"{first}+"])
            walks += [f"{second}{self.rng.choice(['+', '-'])} -- {first}-", f"{first}- -- {ground}"]
            walks.append(
                f"{second}{'-' if walks[-2].startswith(second + '+') else '+'} -- {self.series(scope)} -- {middle}"
            )
        walks += scope.walks[before:]
        del scope.walks[before:]
        return walks

    def rarities(self, source: str, ground: str) -> None:
        """What is odd and yet allowed: shorted windings, a driver fed by a field alone, parts that hang on nothing."""
        scope = self.top
        coils = [label for label, kind in scope.parts.items() if kind == "coil"]
        walks = next(iter(self.legs.values()))
        if coils and self.chance(0.3):
            self.note("shorted winding, coupled")
            shorted, node = self.part(scope, "coil"), self.rng.choice([ground, source])
            walks.append(f"{node} -- {shorted} -- {node}")
            scope.couplings.append(
                f"coupling {self.rng.choice(coils)} and {shorted} {self.rng.choice([0.5, -0.4, 0.9])}"
            )
        elif coils and self.chance(0.25):
            self.note("driver fed by a field")
            name, secondary, node = "fernfeld", self.part(scope, "coil"), self.node(scope)
            self.drivers[name] = self.driver_items(name)
            self.legs[name] = [
                f"{node} -- {secondary} -- {name}+",
                f"{name}- -- {self.part(scope, 'resistor')} -- {node}",
            ]
            scope.couplings.append(f"coupling {secondary} and {self.rng.choice(coils)} {self.rng.choice([0.5, -0.7])}")
        elif self.chance(0.1):
            self.note("island")
            one, other = self.node(scope), self.node(scope)
            walks.append(f"{one} -- {self.part(scope, 'coil')} -- {other}")
            walks.append(f"{one} -- {self.part(scope, 'resistor')} -- {other}")
            if self.chance(0.5):
                self.drivers["insel"] = self.driver_items("insel")
                self.legs["insel"] = [f"{one} -- insel+", f"insel- -- {other}"]
                self.note("driver on an island")
        elif coils and self.chance(0.2):
            self.note("couplings at a design")
        if not scope.couplings:
            self.couplings(scope, "coupling")

    # --- the whole

    def text(self) -> Text:
        rng = self.rng
        for name, kind in (("corner", "frequency"), ("load", "resistor"), ("big", "coil"), ("pot", "capacitor")):
            if self.chance(0.6):
                self.let(self.top, name, kind)
        for name in rng.sample(list(LIBRARY), rng.choice([0, 0, 1, 2])):
            self.includes.append(f'include "{name}" from library')
            ports = {"lpad": ["source", "load", "back"], "notch": ["into", "out"]}.get(name, ["plus", "minus"])
            self.networks[name] = Made(ports, LIBRARY_PARAMETERS[name], set(), Scope())
        for at in range(rng.choice([0, 1, 1, 2])):
            self.network(at)

        feeds = self.feeds()
        names = ["woofer", "tweeter", rng.choice(["mid", "mid_left", "hochton"])][: rng.randint(1, 3)]
        for name in names:
            self.drivers[name] = self.driver_items(name)
        waiting = list(names)
        if len(waiting) > 1 and self.chance(0.25):
            first, second = waiting.pop(), waiting.pop()
            self.legs[f"{first} and {second}"] = self.pair(first, second, *feeds[0])
        for at, name in enumerate(waiting):
            self.legs[name] = self.leg(name, *feeds[at % len(feeds)])
        self.rarities(*feeds[0])
        if self.links_out:
            self.legs.setdefault(" and ".join(sorted(self.drivers)), []).extend(self.links_out)

        outside = self.changes("outside")
        variant, inside = None, []
        if self.chance(0.6):
            variant = "other"
            inside = self.variant()
        variant = self.choose(variant)
        settings = self.settings()
        return self.assemble(outside, variant, inside, settings)

    def choose(self, variant: str | None) -> str | None:
        """Perhaps a choice, of which a position is taken by its name, or the first one holds."""
        parts = [label for label, kind in self.top.parts.items() if kind != "tapped coil"]
        if len(parts) < 3 or not self.chance(0.4):
            return variant
        first, second, third = self.rng.sample(parts, 3)
        changed = [path for path, _, _ in self.changeable()]
        lines = [f"position {name} {{ fit {part} }}" for name, part in (("lo", first), ("mid", second))]
        path, kind, what = next(entry for entry in self.changeable() if entry[0] == self.rng.choice(changed[:1]))
        lines.append(f'position hi "loud" {{\n    set {path} = {self.changed(kind)}\n    omit {third}\n  }}')
        self.choice = 'choice level "how loud" {\n  ' + "\n  ".join(lines) + "\n}"
        self.note(f"choice with a set of a {what}")
        taken = self.rng.choice([None, "level.lo", "level.mid", "level.hi"])
        return "+".join(name for name in (variant, taken) if name) or None

    def amplifier(self) -> str:
        more = []
        if self.chance(0.3):
            more.append(f", source {self.rng.choice(['0.05 ohm', '300 mohm'])}")
        if self.chance(0.3):
            self.note("cable")
            more.append(self.rng.choice([", conductor 90 mohm", ", cable 12 m, section 2.5 mm2"]))
        return f"amplifier 100 W into 8 ohm {{ least 2 ohm{''.join(more)} }}"

    def feeds(self) -> list[tuple[str, str]]:
        """The pairs of posts that legs start from and return to."""
        style = self.rng.random()
        if style < 0.6:
            return [("input+", ground) for ground in self.rng.sample(["return", "ground", "input-"], 1)]
        if style < 0.68:
            self.box.append("input main")
            self.note("one input by its name")
            return [("main+", self.rng.choice(["return", "main-"]))]
        if style < 0.84:
            self.note("posts and links")
            self.box += ["input low", "posts high"]
            self.top.lines += ["link K1", "link K2"]
            self.top.parts |= {"K1": "link", "K2": "link"}
            self.top.counts["link"] = 2
            self.links_out = ["low+ -- K1 -- high+", "low- -- K2 -- high-"]
            return [("low+", "low-"), ("high+", "high-")]
        self.note("two inputs")
        self.box += ["input low", "input high"]
        return [("low+", "low-"), ("high+", self.rng.choice(["high-", "low-"]))]

    def changeable(self) -> list[tuple[str, str, str]]:
        """What `set` may change: its path, a kind for the value, and what it is."""
        found = []
        for label, kind in self.top.parts.items():
            if kind != "link":
                found.append((label, kind, "part"))
            if kind in ("coil", "capacitor"):
                found.append((f"{label}.{'dcr' if kind == 'coil' else 'esr'}", "small", "attribute"))
        for use, network in self.top.uses.items():
            found += [(f"{use}.{p}", k, "part of a network") for p, k in self.parts_of(network).items() if k != "link"]
            made = self.networks[network]
            found += [(f"{use}.{p}", k, "parameter") for p, k in made.parameters.items()]
            for inner, deeper in made.scope.uses.items():
                parts = self.parts_of(deeper).items()
                found += [(f"{use}.{inner}.{p}", k, "part of a network in a network") for p, k in parts if k != "link"]
        found += [(name, kind, "let") for name, kind in self.top.names.items()]
        for driver, text in self.drivers.items():
            found += [(f"{driver}.re", "voice", "driver")] if "re " in text and "measured" not in text else []
            if "le " in text:
                found.append((f"{driver}.le", "coil", "driver"))
        return [entry for entry in found if entry[1] != "tapped coil"]

    def changes(self, where: str, share: float = 0.35, avoid: frozenset[str] = frozenset()) -> list[str]:
        """Some `set`, `omit` and `fit`, each thing changed once."""
        rng, lines = self.rng, []
        if self.chance(share):
            for path, kind, what in rng.sample(options := self.changeable(), min(len(options), rng.randint(1, 3))):
                lines.append(f"set {path} = {self.changed(kind)}")
                self.note(f"set of a {what}, {where}")
        if self.chance(share):
            paths = list(self.top.parts) + list(self.top.uses)
            for use, network in self.top.uses.items():
                paths += [f"{use}.{part}" for part in self.parts_of(network)]
                paths += [f"{use}.{inner}" for inner in self.networks[network].scope.uses]
            # A network and a part of it are the interesting pair: what names the part more closely wins.
            chosen = rng.sample(paths, min(len(paths), rng.randint(1, 2)))
            if self.top.uses and self.chance(0.5):
                use = rng.choice(list(self.top.uses))
                parts = list(self.parts_of(self.top.uses[use]))
                chosen += [use, *(f"{use}.{part}" for part in rng.sample(parts, min(1, len(parts))))]
                self.note(f"omit or fit of a network and of a part of it, {where}")
            out = [path for path in dict.fromkeys(chosen) if path not in avoid]
            fit = [path for path in out if self.chance(0.4)]
            omit = [path for path in out if path not in fit]
            for word, those in (("omit", omit), ("fit", fit)):
                if those:
                    lines.append(f"{word} {' and '.join(those)}")
                    self.note(f"{word}, {where}")
        return lines

    def changed(self, kind: str) -> str:
        if kind == "small":
            return self.rng.choice(["0.3 ohm", "120 mohm"])
        if kind == "voice":
            return self.rng.choice(["5.2 ohm", "6.8 Ω"])
        corner = [name for name, of in self.top.names.items() if of == kind]
        if corner and self.chance(0.3):
            return f"{self.rng.choice(corner)} * 1.05"
        return self.plain(kind, self.magnitude(kind))

    def variant(self) -> list[str]:
        """Statements of a variant: what it restates, and its own changes."""
        rng, lines = self.rng, []
        self.note("variant")
        for label, kind in list(self.top.parts.items()):
            if self.chance(0.12):
                lines.append(self.declaration(self.top, kind, label))
                self.note("variant restates a part")
        for use, network in self.top.uses.items():
            if self.chance(0.3):
                lines.append(self.use_line(self.top, network, use))
                self.note("variant restates a use")
        for name, kind in self.top.names.items():
            if self.chance(0.2):
                lines.append(f"let {name} = {self.plain(kind, self.magnitude(kind))}")
                self.note("variant restates a let")
        for driver in self.drivers:
            if self.chance(0.25):
                lines.append(f"driver {driver}{self.driver_items(driver)}")
                self.note("variant restates a driver")
        for leg, walks in self.legs.items():
            if self.chance(0.25) and " and " not in leg:
                turned = self.turn(leg, walks)
                names = leg
                lines.append(f"leg {names} {{\n" + "\n".join(f"    {walk}" for walk in turned) + "\n  }")
                self.note("variant restates a leg")
        if self.links_out and self.chance(0.5):
            lines += ["input high", "omit K1 and K2"]
            self.note("variant with a second amplifier")
            return lines + self.changes("in a variant", 0.5, frozenset({"K1", "K2"}))
        rng.shuffle(lines)
        return lines + self.changes("in a variant", 0.6)

    @staticmethod
    def turn(driver: str, walks: list[str]) -> list[str]:
        """The same leg with its driver turned round."""
        mark = "\0"
        return [
            walk.replace(f"{driver}+", mark).replace(f"{driver}- ", f"{driver}+ ").replace(mark, f"{driver}-")
            if not walk.endswith(f"{driver}-")
            else walk[: -len(driver) - 1].replace(f"{driver}+", f"{driver}-") + f"{driver}+"
            for walk in walks
        ]

    def settings(self) -> list[str]:
        if not self.chance(0.3):
            return []
        self.note("settings of the command line")
        path, kind, _ = self.rng.choice(self.changeable())
        return [f"{path}={self.changed(kind)}"]

    def assemble(self, outside: list[str], variant: str | None, inside: list[str], settings: list[str]) -> Text:
        """All statements in any order, some of them in an included file, with comments and line ends of both kinds."""
        rng = self.rng
        statements = [*self.top.lines, *self.top.couplings, *outside, *self.box]
        statements += [f"driver {name}{text}" for name, text in self.drivers.items()]
        statements += [
            f"leg {leg} {{\n" + "\n".join(f"  {walk}" for walk in walks) + "\n}" for leg, walks in self.legs.items()
        ]
        statements += [self.choice] if self.choice else []
        if variant and variant.startswith("other"):
            statements.append('variant other "another box" {\n' + "\n".join(f"  {s}" for s in inside) + "\n}")
        networks = list(self.network_texts)
        includes = list(self.includes)
        if networks and self.chance(0.3):
            self.note("include of a file")
            moved = [networks.pop(rng.randrange(len(networks)))]
            if self.chance(0.5):
                moved += [s for s in self.top.lines if s.startswith(("let ", "coil "))][:2]
                statements = [s for s in statements if s not in moved]
            self.files["cells/small.shunt"] = "\n".join(moved) + "\n"
            if self.chance(0.3):
                self.files["cells/all.shunt"] = 'include "small.shunt"\n'
                includes.append('include "cells/all.shunt"')
                self.note("include in an included file")
            else:
                includes.append('include "cells/small.shunt"')
        statements += [*networks, *includes]
        rng.shuffle(statements)
        pieces = ["# made by a seed", 'design "A box"', self.amplifier()]
        for statement in statements:
            pieces.append(statement)
            if self.chance(0.1):
                pieces.append(rng.choice(["", "# and then", "   "]))
        text = "\n".join(pieces) + rng.choice(["\n", ""])
        if self.chance(0.1):
            self.note("lines that end with CR LF")
            text = text.replace("\n", "\r\n")
        files = {"design.shunt": text, **self.files}
        return Text(files, variant, settings, self.features)
