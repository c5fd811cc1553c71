"""Statements to the parts, drivers and walks of one design or one of its variants (LANGUAGE.md, "Reuse").

Used networks are written out here: every part has its full path, ("P1", "Rs"), and every walk says in which
network it stands.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from pathlib import PurePosixPath

import numpy as np

from lowering.quantities import (
    AMPERE,
    DECIBEL,
    FARAD,
    HENRY,
    HERTZ,
    OHM,
    PLAIN,
    Kind,
    Names,
    Quantity,
    evaluate,
    no_names,
    number,
)
from lowering.reading import (
    Amplifier,
    Choice,
    Coupling,
    Driver,
    Expr,
    Fitting,
    Include,
    Items,
    Leg,
    Let,
    Network,
    Part,
    Path,
    Posts,
    Set,
    Statement,
    Unreadable,
    Use,
    Variant,
    Walk,
    Wire,
    read,
    read_setting,
)

# The values behind the names, and the attributes that a current feels.
VALUES: dict[str, Kind] = {
    "coil": HENRY,
    "tapped coil": HENRY,
    "capacitor": FARAD,
    "resistor": OHM,
    "lamp": OHM,
    "fuse": AMPERE,
    "protector": AMPERE,
    "attenuator": OHM,
}
ATTRIBUTES: dict[str, dict[str, Kind]] = {
    "coil": {"dcr": OHM},
    "tapped coil": {"dcr": OHM, "tap": HENRY, "tap_dcr": OHM, "k": PLAIN},
    "capacitor": {"esr": OHM},
    "resistor": {},
    "lamp": {},
    "fuse": {"cold": OHM},
    "protector": {"cold": OHM},
    "attenuator": {"loss": DECIBEL, "least": DECIBEL, "most": DECIBEL},
    "link": {},
}
DRIVER_ATTRIBUTES: dict[str, Kind] = {
    "re": OHM,
    "le": HENRY,
    "res": OHM,
    "les": HENRY,
    "ces": FARAD,
    "fs": HERTZ,
    "fb": HERTZ,
    **dict.fromkeys(("qms", "qes", "qts", "alpha", "ql", "semi_k", "semi_n", "coils", "k"), PLAIN),
    **dict.fromkeys(("r_factor", "r_exponent", "x_factor", "x_exponent"), PLAIN),
}

METRE: Kind = (0, 0, 0, 1, 0, 0, 0)
AMPLIFIER_ATTRIBUTES: dict[str, Kind] = {
    "source": OHM,
    "conductor": OHM,
    "cable": METRE,
    "section": (0, 0, 0, 2, 0, 0, 0),
}


@dataclass
class FlatPart:
    kind: str
    path: Path
    value: float | None
    attributes: dict[str, float]
    fitted: bool


@dataclass
class FlatDriver:
    name: str
    nominal: float | None
    attributes: dict[str, float]
    measured: str | None  # path of the table, among the files of the design


@dataclass
class Meaning:
    """One design or variant, written out. Walks and couplings are told with the network they stand in."""

    parts: dict[Path, FlatPart] = field(default_factory=dict)
    drivers: dict[str, FlatDriver] = field(default_factory=dict)
    inputs: list[str] = field(default_factory=list)
    posts: list[str] = field(default_factory=list)
    ports: dict[Path, list[str]] = field(default_factory=dict)  # of each used network
    walks: list[tuple[Path, Walk]] = field(default_factory=list)
    couplings: list[tuple[Path, Path, float]] = field(default_factory=list)
    source: float = 0.0  # inside each amplifier
    cable: float = 0.0  # there and back


def understand(
    files: Callable[[str], str], library: Callable[[str], str], main: str, variant: str | None, settings: Iterable[str]
) -> Meaning:
    """Read `main` through `files` and write out one variant (None: the design itself) with the settings in force."""
    statements = list(_included(files, main, library))
    networks = {s.name: s for s in statements if isinstance(s, Network)}
    choices = [s for s in statements if isinstance(s, Choice)]
    picked = (variant or "").split("+")
    layers = [[s for s in statements if not isinstance(s, Network | Variant | Choice)]]
    layers.append(next((s.body for s in statements if isinstance(s, Variant) and s.name in picked), []))
    layers += [_position(choice, picked, layers[:2], settings) for choice in choices]
    declared: list[Statement] = []
    values: dict[Path, Expr] = {}
    fittings: list[dict[Path, bool]] = []
    for layer in layers:  # what a layer restates sets aside what was said of it before
        restated = {key for s in layer if (key := _key(s)) is not None}
        names = {key[1] for key in restated if key[0] in ("name", "let")} if layer is not layers[0] else set()
        declared = layer if layer is layers[0] else [s for s in declared if _key(s) not in restated] + layer
        values = {p: v for p, v in values.items() if p[0] not in names}
        values |= {s.path: s.value for s in layer if isinstance(s, Set)}
        fittings = [{p: fit for p, fit in level.items() if p[0] not in names} for level in fittings]
        fittings.insert(0, {p: s.fitted for s in layer if isinstance(s, Fitting) for p in s.paths})
    values |= {s.path: s.value for s in map(read_setting, settings)}
    values = {p: v for p, v in values.items() if p not in [(choice.name,) for choice in choices]}
    written = _Writer(networks, _Changes(values, fittings)).design(declared)
    for part in written.parts.values():  # an attenuator at an end of its range
        for end, otherwise in (("least", 0.0), ("most", 40.0)):
            if part.kind == "attenuator" and f"{'.'.join(part.path)}.{end}" in picked:
                part.attributes["loss"] = part.attributes.get(end, otherwise)
    return written


def _position(
    choice: Choice, picked: list[str], layers: list[list[Statement]], settings: Iterable[str]
) -> list[Statement]:
    """What holds in the position that a choice stands in, links that only others fit being left out first."""
    said = [s.value for layer in layers for s in layer if isinstance(s, Set) and s.path == (choice.name,)]
    said += [s.value for s in map(read_setting, settings) if s.path == (choice.name,)]
    names = [said[-1][1]] if said else list(choice.positions)[:1]
    names += [name for name in choice.positions if f"{choice.name}.{name}" in picked]
    chosen = choice.positions[names[-1]]
    fitted = {
        p: None
        for body in choice.positions.values()
        for s in body
        if isinstance(s, Fitting) and s.fitted
        for p in s.paths
    }
    own = {p for s in chosen if isinstance(s, Fitting) and s.fitted for p in s.paths}
    return [Fitting(False, [p for p in fitted if p not in own]), *chosen]


def _included(files: Callable[[str], str], path: str, library: Callable[[str], str]) -> Iterable[Statement]:
    folder = PurePosixPath(path).parent
    for statement in read(files(path)):
        if isinstance(statement, Include):
            if statement.library:
                yield from read(library(statement.path))
            else:
                yield from _included(files, str(folder / statement.path), library)
        else:
            for inner in [statement, *(statement.body if isinstance(statement, Variant) else [])]:
                if isinstance(inner, Driver):
                    inner.folder = str(folder)
            yield statement


def _key(statement: Statement) -> tuple[str, object] | None:
    """What makes two statements of the same name, so that the variant's takes the other's place."""
    if isinstance(statement, Part | Driver | Use | Posts):
        return ("name", statement.name)
    if isinstance(statement, Amplifier):
        return ("amplifier", None)
    if isinstance(statement, Let):
        return ("let", statement.name)
    if isinstance(statement, Leg):
        return ("leg", statement.drivers)
    if isinstance(statement, Coupling):
        return ("coupling", frozenset((statement.one, statement.other)))
    return None


@dataclass
class _Changes:
    """What `set`, `omit` and `fit` say, the variant's before what stands outside it."""

    values: dict[Path, Expr]
    fittings: list[dict[Path, bool]]

    def fitted(self, part: Path) -> bool:
        for level in self.fittings:
            for length in range(len(part), 0, -1):  # what names the part more closely wins
                if part[:length] in level:
                    return level[part[:length]]
        return True


class _Writer:
    def __init__(self, networks: dict[str, Network], changes: _Changes) -> None:
        self.networks = networks
        self.changes = changes
        self.meaning = Meaning()
        self.top: Names = no_names

    def design(self, statements: list[Statement]) -> Meaning:
        self.top = self.lets(statements, (), {})
        meaning = self.meaning
        for statement in statements:
            if isinstance(statement, Amplifier):
                self.amplifier(statement)
            elif isinstance(statement, Driver):
                driver = self.driver(statement)
                names = [driver.name]
                if driver.attributes.get("coils") == 2:
                    names = [f"{driver.name}.a", f"{driver.name}.b"]
                meaning.drivers |= {name: replace(driver, name=name) for name in names}
            elif isinstance(statement, Posts):
                (meaning.inputs if statement.fed else meaning.posts).append(statement.name)
        if not meaning.inputs:
            meaning.inputs.append("input")
        self.write(statements, (), self.top)
        return meaning

    def amplifier(self, statement: Amplifier) -> None:
        said = self.attributes(("amplifier",), statement.items, AMPLIFIER_ATTRIBUTES, self.top)
        self.meaning.source = said.get("source", 0.0)
        if "conductor" in said:
            self.meaning.cable = 2 * said["conductor"]
        elif "cable" in said:
            aluminium = "copper" in statement.items.keyed
            self.meaning.cable = 2 * said["cable"] / said["section"] * (2.74e-8 if aluminium else 1.7241e-8)

    def lets(self, statements: list[Statement], where: Path, parameters: dict[str, Quantity]) -> Names:
        """The names of one level: its own `let` and, in a network, the parameters. The design's can be `set`."""
        said = {s.name: s.value for s in statements if isinstance(s, Let)}
        known = dict(parameters)

        def names(name: str) -> Quantity | None:
            if name not in known and name in said:
                expr = said[name]
                if not where and (name,) in self.changes.values:
                    expr = self.changes.values[(name,)]
                known[name] = evaluate(expr, names)
            return known.get(name)

        return names

    def write(self, statements: list[Statement], where: Path, names: Names) -> None:
        """Write out the parts, walks, couplings and used networks of one level."""
        for statement in statements:
            if isinstance(statement, Part):
                self.part(statement, where, names)
            elif isinstance(statement, Use):
                self.use(statement, where, names)
            elif isinstance(statement, Leg):
                self.meaning.walks += [(where, walk) for walk in statement.walks]
            elif isinstance(statement, Wire):
                self.meaning.walks.append((where, statement.walk))
            elif isinstance(statement, Coupling):
                factor = number(statement.factor, PLAIN, names)
                self.meaning.couplings.append((where + statement.one, where + statement.other, factor))

    def value(self, path: Path, said: Expr | None, kind: Kind, names: Names) -> float | None:
        """A value as it was said, or as `set` changed it: that one is worked out with the design's names."""
        if path in self.changes.values:
            return number(self.changes.values[path], kind, self.top)
        return None if said is None else number(said, kind, names)

    def attributes(self, path: Path, items: Items, kinds: dict[str, Kind], names: Names) -> dict[str, float]:
        found = {}
        for key, kind in kinds.items():
            said = items.keyed.get(key)
            value = self.value((*path, key), said if isinstance(said, tuple) else None, kind, names)
            if value is not None:
                found[key] = value
        return found

    def part(self, part: Part, where: Path, names: Names) -> None:
        path = (*where, part.name)
        value = None if part.kind == "link" else self.value(path, part.value, VALUES[part.kind], names)
        kinds = dict(ATTRIBUTES[part.kind])
        tap = self.tap(path, part, names) if "tap" in kinds else None
        if tap is not None:
            kinds["tap"] = tap
        attributes = self.attributes(path, part.items, kinds, names)
        if tap in (PLAIN, DECIBEL) and value is not None:
            share = attributes["tap"] if tap == PLAIN else 10 ** (attributes["tap"] / 20)
            turns, k = np.array([share, 1 - share]), attributes.get("k", 0.98)
            reluctance = turns @ np.array([[1, k], [k, 1]]) @ turns
            attributes["tap"] = value * share * share / float(reluctance)
        self.meaning.parts[path] = FlatPart(part.kind, path, value, attributes, self.changes.fitted(path))

    def tap(self, path: Path, part: Part, names: Names) -> Kind | None:
        """In what a tap is told: an inductance, a share of the turns, or a level."""
        said = self.changes.values.get((*path, "tap"), part.items.keyed.get("tap"))
        own = self.top if (*path, "tap") in self.changes.values else names
        return evaluate(said, own, HENRY).kind if isinstance(said, tuple) else None

    def driver(self, driver: Driver) -> FlatDriver:
        path = (driver.name,)
        measured = driver.items.keyed.get("measured")
        return FlatDriver(
            driver.name,
            self.value(path, driver.nominal, OHM, self.top),
            self.attributes(path, driver.items, DRIVER_ATTRIBUTES, self.top),
            str(PurePosixPath(driver.folder) / measured) if isinstance(measured, str) else None,
        )

    def use(self, use: Use, where: Path, names: Names) -> None:
        path = (*where, use.name)
        if use.network not in self.networks:
            raise Unreadable(f"no network is called {use.network}")
        network = self.networks[use.network]
        inside = {s.name for s in network.body if isinstance(s, Part | Use)}
        parameters = {}
        for parameter, default in network.parameters.items():
            given = use.items.keyed.get(parameter)
            setting = self.changes.values.get((*path, parameter))
            if setting is not None and parameter not in inside:  # where both have that name: the part
                parameters[parameter] = evaluate(setting, self.top)
            elif given is not None:
                assert isinstance(given, tuple)
                parameters[parameter] = evaluate(given, names)
            elif default is not None:
                parameters[parameter] = evaluate(default)
            else:
                raise Unreadable(f"{use.name} lacks {parameter}")
        self.meaning.ports[path] = network.ports
        self.write(network.body, path, self.lets(network.body, path, parameters))
