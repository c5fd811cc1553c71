"""Text to statements: a recursive descent through grammar/LANGUAGE.md, without the compiler's own parser.

Only sound texts are read; what the reference calls a mistake of form ends in `Unreadable`.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

# An expression is a nested tuple: ("number", 0.82, "mH"), ("code", "4R7J"), ("name", "corner"),
# ("-", x) for a minus sign, and ("+", x, y) and so on for the five operators.
Expr = tuple[Any, ...]
Path = tuple[str, ...]
# A station is ("pad", "woofer", "+"), ("path", ("T1", "tap")) or ("group", [branch, ...]), a branch being a walk.
Station = tuple[Any, ...]
Walk = list[Station]

PART_KINDS = ("coil", "tapped coil", "capacitor", "resistor", "lamp", "fuse", "protector", "attenuator", "link")
SKIPPED = ("design", "testpoint", "expect", "allow", "limit", "connector", "board", "layout")  # they move no current

NAME = re.compile(r"non-polar(?!\w)|[^\W\d]\w*")
PAD = re.compile(r"([^\W\d]\w*(?:\.[^\W\d]\w*)?)(\+|-(?!-))")
NUMBER = re.compile(r"(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+(?!\w))?")
CODE = re.compile(r"\d+(?:[RKMGLkmunpµμ]\d+[BCDGJKM]?|R\d+F|[RLkKMGmunpµμ])(?!\w)")
STRING = re.compile(r'"([^"\r\n]*)"')
BLANKS = re.compile(r"(?:[ \t\f\u00a0]|#[^\n]*)+")


class Unreadable(Exception):
    """The text is not of the form that the reference asks for."""


@dataclass
class Items:
    """The entries in braces: those with a key (an expression or a text); bare ones only matter to ratings."""

    keyed: dict[str, Expr | str]


@dataclass
class Part:
    kind: str
    name: str
    value: Expr | None
    items: Items


@dataclass
class Driver:
    name: str
    nominal: Expr | None
    items: Items
    folder: str = ""  # where its measured table is looked for


@dataclass
class Posts:
    name: str
    fed: bool  # `input` is fed by an amplifier, `posts` is not


@dataclass
class Coupling:
    one: Path
    other: Path
    factor: Expr


@dataclass
class Let:
    name: str
    value: Expr


@dataclass
class Use:
    network: str
    name: str
    items: Items


@dataclass
class Amplifier:
    items: Items


@dataclass
class Network:
    name: str
    ports: list[str]
    parameters: dict[str, Expr | None]
    body: list[Statement]


@dataclass
class Leg:
    drivers: frozenset[str]
    walks: list[Walk]


@dataclass
class Wire:
    """A walk by itself, as it stands in a network."""

    walk: Walk


@dataclass
class Set:
    path: Path
    value: Expr


@dataclass
class Fitting:
    """`omit` or `fit`."""

    fitted: bool
    paths: list[Path]


@dataclass
class Variant:
    name: str
    body: list[Statement]


@dataclass
class Choice:
    """Its positions by name."""

    name: str
    positions: dict[str, list[Statement]]


@dataclass
class Include:
    path: str
    library: bool


Statement = (
    Part
    | Driver
    | Amplifier
    | Posts
    | Coupling
    | Let
    | Use
    | Network
    | Leg
    | Wire
    | Set
    | Fitting
    | Variant
    | Choice
    | Include
)


def read(text: str) -> list[Statement]:
    """All statements of one file, in their order."""
    reader = _Reader(text.removeprefix("\ufeff").replace("\r\n", "\n"))
    statements = reader.statements(closing=None)
    return statements


def read_setting(text: str) -> Set:
    """One setting of the command line, such as `L1.dcr=0.3ohm`."""
    reader = _Reader("set " + text)
    statement = reader.statement()
    assert isinstance(statement, Set)
    return statement


class _Reader:
    def __init__(self, text: str) -> None:
        self.text = text
        self.at = 0

    # --- characters

    def blanks(self) -> None:
        if found := BLANKS.match(self.text, self.at):
            self.at = found.end()

    def lines(self) -> None:
        """Pass over blanks, comments and line ends."""
        while True:
            self.blanks()
            if not self.text.startswith("\n", self.at):
                return
            self.at += 1

    def sees(self, literal: str) -> bool:
        self.blanks()
        return self.text.startswith(literal, self.at)

    def take(self, literal: str) -> bool:
        if self.sees(literal):
            self.at += len(literal)
            return True
        return False

    def need(self, literal: str) -> None:
        if not self.take(literal):
            raise self.fault(f"{literal!r} is wanted")

    def match(self, pattern: re.Pattern[str]) -> re.Match[str] | None:
        self.blanks()
        if found := pattern.match(self.text, self.at):
            self.at = found.end()
        return found

    def looks_like(self, pattern: re.Pattern[str]) -> bool:
        self.blanks()
        return pattern.match(self.text, self.at) is not None

    def word(self, word: str) -> bool:
        """Take this very word, if it is the next."""
        self.blanks()
        found = NAME.match(self.text, self.at)
        if found and found.group() == word:
            self.at = found.end()
            return True
        return False

    def name(self) -> str:
        if found := self.match(NAME):
            return found.group()
        raise self.fault("a name is wanted")

    def path(self) -> Path:
        names = [self.name()]
        while self.take("."):
            names.append(self.name())
        return tuple(names)

    def paths(self) -> list[Path]:
        paths = [self.path()]
        while self.word("and"):
            paths.append(self.path())
        return paths

    def string(self) -> str:
        if found := self.match(STRING):
            return found.group(1)
        raise self.fault("a text in quotes is wanted")

    def fault(self, what: str) -> Unreadable:
        line = self.text.count("\n", 0, self.at) + 1
        return Unreadable(f"line {line}: {what}, not {self.text[self.at : self.at + 20]!r}")

    # --- statements

    def statements(self, closing: str | None) -> list[Statement]:
        """Statements up to the closing brace, or to the end of the text."""
        found: list[Statement] = []
        while True:
            self.lines()
            if closing and self.take(closing):
                return found
            if self.at == len(self.text):
                if closing:
                    raise self.fault("a closing brace is wanted")
                return found
            statement = self.statement()
            if statement is not None:
                found.append(statement)
            if not (self.take(",") or self.sees("\n") or self.at == len(self.text) or (closing and self.sees(closing))):
                raise self.fault("the end of the line is wanted")

    def statement(self) -> Statement | None:
        if self.looks_like(PAD) or self.sees("("):
            return Wire(self.walk())
        before = self.at
        word = self.name()
        if word == "tapped":
            if not self.word("coil"):
                raise self.fault("`coil` is wanted")
            word = "tapped coil"
        if word in PART_KINDS:
            name = self.name()
            value = None if word == "link" or self.ends_here() else self.expr()
            return Part(word, name, value, self.items())
        if word in SKIPPED:
            return self.skip()
        if word == "amplifier":
            self.expr()
            if not self.word("into"):
                raise self.fault("`into` is wanted")
            self.expr()
            return Amplifier(self.items())
        if word == "driver":
            name = self.name()
            nominal = None if self.ends_here() else self.expr()
            return Driver(name, nominal, self.items())
        if word in ("input", "posts"):
            return Posts(self.name(), fed=word == "input")
        if word == "coupling":
            one = self.path()
            if not self.word("and"):
                raise self.fault("`and` is wanted")
            return Coupling(one, self.path(), self.expr())
        if word == "let":
            name = self.name()
            self.need("=")
            return Let(name, self.expr())
        if word == "network":
            return self.network()
        if word == "use":
            network = self.name()
            if not self.word("as"):
                raise self.fault("`as` is wanted")
            return Use(network, self.name(), self.items())
        if word == "leg":
            drivers = frozenset(path[0] for path in self.paths())
            self.need("{")
            walks = [wire.walk for wire in self.statements("}") if isinstance(wire, Wire)]
            return Leg(drivers, walks)
        if word == "set":
            path = self.path()
            self.need("=")
            return Set(path, self.expr())
        if word in ("omit", "fit"):
            return Fitting(word == "fit", self.paths())
        if word == "variant":
            name = self.name()
            if self.sees('"'):
                self.string()
            self.need("{")
            return Variant(name, self.statements("}"))
        if word == "choice" and self.looks_like(NAME):
            return self.choice()
        if word == "include":
            path_text = self.string()
            library = self.word("from")
            if library and not self.word("library"):
                raise self.fault("`library` is wanted")
            return Include(path_text, library)
        self.at = before
        return Wire(self.walk())

    def choice(self) -> Choice:
        choice = Choice(self.name(), {})
        if self.sees('"'):
            self.string()
        self.need("{")
        self.lines()
        while not self.take("}"):
            if not self.word("position"):
                raise self.fault("`position` is wanted")
            name = self.name()
            if self.sees('"'):
                self.string()
            self.need("{")
            choice.positions[name] = self.statements("}")
            self.lines()
        return choice

    def ends_here(self) -> bool:
        return self.sees("{") or self.sees("\n") or self.at == len(self.text) or self.sees("}") or self.sees(",")

    def skip(self) -> None:
        """Pass over a statement that the circuit does not depend on."""
        depth = 0
        while self.at < len(self.text):
            self.blanks()
            if self.match(STRING):
                continue
            character = self.text[self.at : self.at + 1]
            if depth == 0 and character in ("\n", "}", ""):
                return
            depth += (character == "{") - (character == "}")
            self.at += 1

    def network(self) -> Network:
        name = self.name()
        self.need("(")
        ports = [self.name()]
        while self.take(","):
            ports.append(self.name())
        self.need(")")
        parameters: dict[str, Expr | None] = {}
        if self.word("given"):
            while True:
                parameter = self.name()
                parameters[parameter] = self.expr() if self.take("=") else None
                if not self.take(","):
                    break
        self.need("{")
        return Network(name, ports, parameters, self.statements("}"))

    def items(self) -> Items:
        keyed: dict[str, Expr | str] = {}
        if not self.take("{"):
            return Items(keyed)
        while True:
            self.lines()
            if self.take("}"):
                return Items(keyed)
            before = self.at
            if found := self.match(NAME):
                key = found.group()
                if self.sees('"'):
                    keyed[key] = self.string()
                elif self.looks_like(NAME) or self.looks_like(NUMBER) or self.sees("(") or self.sees("-"):
                    keyed[key] = self.expr()
                else:
                    self.at = before
                    self.expr()
            else:
                self.expr()
            if not (self.take(",") or self.sees("\n") or self.sees("}")):
                raise self.fault("a comma, a line end or a closing brace is wanted")

    # --- walks

    def walk(self) -> Walk:
        stations = [self.station()]
        while self.take("--"):
            self.lines()
            stations.append(self.station())
        return stations

    def station(self) -> Station:
        if self.take("("):
            branches = []
            while True:
                self.lines()
                branches.append(self.walk())
                self.lines()
                if self.take(")"):
                    return ("group", branches)
                self.need("|")
        if found := self.match(PAD):
            return ("pad", found.group(1), found.group(2))
        return ("path", self.path())

    # --- values

    def expr(self) -> Expr:
        left = self.product()
        while True:
            if self.take("+"):
                left = ("+", left, self.product())
            elif self.take("-"):
                left = ("-", left, self.product())
            else:
                return left

    def product(self) -> Expr:
        left = self.power()
        while True:
            if self.take("*"):
                left = ("*", left, self.power())
            elif self.take("/"):
                left = ("/", left, self.power())
            else:
                return left

    def power(self) -> Expr:
        base = self.unary()
        return ("^", base, self.power()) if self.take("^") else base

    def unary(self) -> Expr:
        return ("-", self.unary()) if self.take("-") else self.atom()

    def atom(self) -> Expr:
        if self.take("("):
            inner = self.expr()
            self.need(")")
            return inner
        if found := self.match(CODE):
            return ("code", found.group())
        if found := self.match(NUMBER):
            number = float(found.group())
            if self.take("%"):
                return ("number", number, "%")
            unit = self.match(NAME)
            return ("number", number, unit.group() if unit else None)
        return ("name", self.name())
