"""The syntax tree: what the author wrote, statement by statement, before any name is looked up.

In: nothing (plain values). Every node keeps its `Span`. Nothing here knows what a woofer is, or whether
a name exists.
"""

from __future__ import annotations

from typing import Any, NamedTuple

from shuntwise.source import Source, Span


class Ident(NamedTuple):
    """A single word."""

    text: str
    span: Span


class Path(NamedTuple):
    """Words joined by dots: `L1`, `Z1.R`, `T1.tap`."""

    words: tuple[Ident, ...]
    span: Span

    @property
    def text(self) -> str:
        return ".".join(word.text for word in self.words)


class Text(NamedTuple):
    """A quoted text; `value` is without the quotes."""

    value: str
    span: Span


# --- values and arithmetic


class Number(NamedTuple):
    """A number as typed (`0.82`, or `0,82` with a decimal comma) and its unit word, if there is one."""

    number: str
    unit: Ident | None
    span: Span


class Code(NamedTuple):
    """A value in the letter-and-digit code of IEC 60062: `4R7`, `6u8`, `1m0K`."""

    text: str
    span: Span


class Name(NamedTuple):
    """A name used as a value."""

    ident: Ident
    span: Span


class Negate(NamedTuple):
    operand: Expr
    span: Span


class Binary(NamedTuple):
    """`operator` is one of + - * / ^."""

    operator: str
    left: Expr
    right: Expr
    span: Span


class LostExpr(NamedTuple):
    """An expression that could not be taken in; the finding has been made."""

    span: Span


Expr = Number | Code | Name | Negate | Binary | LostExpr


# --- items in braces


class Item(NamedTuple):
    """One attribute: `5 %`, `dcr 0.28 ohm`, `air core`, `note "..."`."""

    key: Ident | None
    value: Expr | Text
    span: Span


# --- wiring


class Pad(NamedTuple):
    """`woofer+`, `sub.a+`: a named thing, or one coil of a driver, and the sign of its pad."""

    owner: Ident
    sign: str
    span: Span

    @property
    def text(self) -> str:
        return self.owner.text + self.sign


class Chain(NamedTuple):
    """Stations in series."""

    stations: tuple[Station, ...]
    span: Span


class Group(NamedTuple):
    """Chains in parallel, written `(A | B)`."""

    chains: tuple[Chain, ...]
    span: Span


Station = Pad | Path | Group


# --- statements


class DesignTitle(NamedTuple):
    title: Text
    span: Span


class AmplifierDecl(NamedTuple):
    power: Expr
    load: Expr
    items: tuple[Item, ...]
    span: Span


class TerminalsDecl(NamedTuple):
    """`input NAME` (an amplifier feeds it) or `posts NAME` (a pair of posts that none feeds)."""

    fed: bool
    name: Ident
    span: Span


class PinDecl(NamedTuple):
    """A pin of a connector, and the pad that it is wired to, if any."""

    name: Ident
    pad: Pad | None
    span: Span


class ConnectorDecl(NamedTuple):
    """`through` names the connector of which this one has all pins."""

    name: Ident
    title: Text | None
    pins: tuple[PinDecl, ...]
    through: Ident | None
    span: Span


class DriverDecl(NamedTuple):
    name: Ident
    value: Expr | None
    items: tuple[Item, ...]
    span: Span


class PartDecl(NamedTuple):
    kind: Ident
    name: Ident
    value: Expr | None
    items: tuple[Item, ...]
    span: Span


class CouplingDecl(NamedTuple):
    first: Path
    second: Path
    value: Expr
    span: Span


class Testpoint(NamedTuple):
    node: Ident
    span: Span


class BenchDecl(NamedTuple):
    """`bench { source 2 V, ... }`: what stands on the bench."""

    items: tuple[Item, ...]
    span: Span


class Let(NamedTuple):
    name: Ident
    value: Expr
    span: Span


class Walk(NamedTuple):
    stations: tuple[Station, ...]
    span: Span


class Leg(NamedTuple):
    drivers: tuple[Ident, ...]
    entries: tuple[Entry, ...]
    span: Span


class Param(NamedTuple):
    name: Ident
    default: Expr | None
    span: Span


class NetworkDecl(NamedTuple):
    name: Ident
    ports: tuple[Ident, ...]
    params: tuple[Param, ...]
    entries: tuple[Entry, ...]
    span: Span


class Use(NamedTuple):
    network: Ident
    name: Ident
    items: tuple[Item, ...]
    span: Span


class Include(NamedTuple):
    path: Text
    library: bool
    span: Span


class Variant(NamedTuple):
    name: Ident
    title: Text | None
    entries: tuple[Entry, ...]
    span: Span


class Choice(NamedTuple):
    """`entries` are its positions, and what does not belong there."""

    name: Ident
    title: Text | None
    entries: tuple[Entry, ...]
    span: Span


class Position(NamedTuple):
    """One position of a choice, with what holds in it."""

    name: Ident
    title: Text | None
    entries: tuple[Entry, ...]
    span: Span


class Set(NamedTuple):
    target: Path
    value: Expr
    span: Span


class Fitting(NamedTuple):
    """`fit A and B` or `omit A and B`."""

    fitted: bool
    targets: tuple[Path, ...]
    span: Span


class Clause(NamedTuple):
    """One clause of an expectation: `word` is at, within, above, below, from or is."""

    word: str
    values: tuple[Expr, ...]
    span: Span


class Expect(NamedTuple):
    quantity: Ident
    subjects: tuple[Path, ...]
    clauses: tuple[Clause, ...]
    span: Span


class Allow(NamedTuple):
    finding: Ident
    target: Path | None
    variants: tuple[Ident, ...]
    reason: Text
    span: Span


class Limit(NamedTuple):
    finding: Ident
    value: Expr
    span: Span


class BoardDecl(NamedTuple):
    """Its lines are each a `BoardLine` of `syntax.board_tree`, which stands on this module."""

    name: Ident
    title: Text | None
    lines: tuple[Any, ...]
    span: Span


class LayoutDecl(NamedTuple):
    """`layout on gusset as low { ... }`; without an alias it is called as its board.

    Its lines are each a `LayoutLine` of `syntax.board_tree`.
    """

    board: Ident
    alias: Ident | None
    lines: tuple[Any, ...]
    span: Span

    @property
    def name(self) -> Ident:
        return self.alias or self.board


class Lost(NamedTuple):
    """Text that could not be parsed. `words` are the names in it: nothing is said of their absence.

    `whole_file` is true for a file that could not be read: it may have held any name.
    """

    words: frozenset[str]
    span: Span
    whole_file: bool = False


Entry = (
    DesignTitle
    | AmplifierDecl
    | TerminalsDecl
    | ConnectorDecl
    | DriverDecl
    | PartDecl
    | CouplingDecl
    | Testpoint
    | Let
    | Walk
    | Leg
    | NetworkDecl
    | Use
    | Include
    | Variant
    | Choice
    | Position
    | Set
    | Fitting
    | Expect
    | Allow
    | Limit
    | BoardDecl
    | LayoutDecl
    | BenchDecl
)


class SyntaxTree(NamedTuple):
    source: Source
    entries: tuple[Entry, ...]
    lost: tuple[Lost, ...] = ()
