"""The syntax tree: what the author wrote, statement by statement, before any name is looked up.

In: nothing (plain values). Every node keeps its `Span`. Nothing here knows what a woofer is, or whether
a name exists.
"""

from __future__ import annotations

from dataclasses import dataclass

from shuntwise.source import Source, Span


@dataclass(frozen=True, eq=False)
class Ident:
    """A single word."""

    text: str
    span: Span


@dataclass(frozen=True, eq=False)
class Path:
    """Words joined by dots: `L1`, `Z1.R`, `T1.tap`."""

    words: tuple[Ident, ...]
    span: Span

    @property
    def text(self) -> str:
        return ".".join(word.text for word in self.words)


@dataclass(frozen=True, eq=False)
class Text:
    """A quoted text; `value` is without the quotes."""

    value: str
    span: Span


# --- values and arithmetic


@dataclass(frozen=True, eq=False)
class Number:
    """A number as typed (`0.82`, or `0,82` with a decimal comma) and its unit word, if there is one."""

    number: str
    unit: Ident | None
    span: Span


@dataclass(frozen=True, eq=False)
class Code:
    """A value in the letter-and-digit code of IEC 60062: `4R7`, `6u8`, `1m0K`."""

    text: str
    span: Span


@dataclass(frozen=True, eq=False)
class Name:
    """A name used as a value."""

    ident: Ident
    span: Span


@dataclass(frozen=True, eq=False)
class Negate:
    operand: Expr
    span: Span


@dataclass(frozen=True, eq=False)
class Binary:
    """`operator` is one of + - * / ^."""

    operator: str
    left: Expr
    right: Expr
    span: Span


@dataclass(frozen=True, eq=False)
class LostExpr:
    """An expression that could not be taken in; the finding has been made."""

    span: Span


Expr = Number | Code | Name | Negate | Binary | LostExpr


# --- items in braces


@dataclass(frozen=True, eq=False)
class Item:
    """One attribute: `5 %`, `dcr 0.28 ohm`, `air core`, `note "..."`."""

    key: Ident | None
    value: Expr | Text
    span: Span


# --- wiring


@dataclass(frozen=True, eq=False)
class Pad:
    """`woofer+`: a named thing and the sign of its pad."""

    owner: Ident
    sign: str
    span: Span

    @property
    def text(self) -> str:
        return self.owner.text + self.sign


@dataclass(frozen=True, eq=False)
class Chain:
    """Stations in series."""

    stations: tuple[Station, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Group:
    """Chains in parallel, written `(A | B)`."""

    chains: tuple[Chain, ...]
    span: Span


Station = Pad | Path | Group


# --- statements


@dataclass(frozen=True, eq=False)
class DesignTitle:
    title: Text
    span: Span


@dataclass(frozen=True, eq=False)
class AmplifierDecl:
    power: Expr
    load: Expr
    items: tuple[Item, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class TerminalsDecl:
    """`input NAME` (an amplifier feeds it) or `posts NAME` (a pair of posts that none feeds)."""

    fed: bool
    name: Ident
    span: Span


@dataclass(frozen=True, eq=False)
class DriverDecl:
    name: Ident
    value: Expr | None
    items: tuple[Item, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class PartDecl:
    kind: Ident
    name: Ident
    value: Expr | None
    items: tuple[Item, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class CouplingDecl:
    first: Path
    second: Path
    value: Expr
    span: Span


@dataclass(frozen=True, eq=False)
class Testpoint:
    node: Ident
    span: Span


@dataclass(frozen=True, eq=False)
class Let:
    name: Ident
    value: Expr
    span: Span


@dataclass(frozen=True, eq=False)
class Walk:
    stations: tuple[Station, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Leg:
    drivers: tuple[Ident, ...]
    entries: tuple[Entry, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Param:
    name: Ident
    default: Expr | None
    span: Span


@dataclass(frozen=True, eq=False)
class NetworkDecl:
    name: Ident
    ports: tuple[Ident, ...]
    params: tuple[Param, ...]
    entries: tuple[Entry, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Use:
    network: Ident
    name: Ident
    items: tuple[Item, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Include:
    path: Text
    library: bool
    span: Span


@dataclass(frozen=True, eq=False)
class Variant:
    name: Ident
    title: Text | None
    entries: tuple[Entry, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Set:
    target: Path
    value: Expr
    span: Span


@dataclass(frozen=True, eq=False)
class Fitting:
    """`fit A and B` or `omit A and B`."""

    fitted: bool
    targets: tuple[Path, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Clause:
    """One clause of an expectation: `word` is at, within, above, below, from or is."""

    word: str
    values: tuple[Expr, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Expect:
    quantity: Ident
    subjects: tuple[Path, ...]
    clauses: tuple[Clause, ...]
    span: Span


@dataclass(frozen=True, eq=False)
class Allow:
    finding: Ident
    target: Path | None
    reason: Text
    span: Span


@dataclass(frozen=True, eq=False)
class Limit:
    finding: Ident
    value: Expr
    span: Span


@dataclass(frozen=True, eq=False)
class Lost:
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
    | Set
    | Fitting
    | Expect
    | Allow
    | Limit
)


@dataclass(frozen=True, eq=False)
class SyntaxTree:
    source: Source
    entries: tuple[Entry, ...]
    lost: tuple[Lost, ...] = ()
