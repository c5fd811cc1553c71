"""The automaton's tree turned into a `SyntaxTree`'s nodes.

In: a tree with positions. Out: frozen nodes of `syntax.tree`. Refuses to know what names mean.
Each method bears the name of the grammar rule that it reads.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property
from typing import TYPE_CHECKING, Any

from shuntwise.diagnostics.diagnostic import Diagnostic, Severity
from shuntwise.source import Source, Span
from shuntwise.syntax import automaton
from shuntwise.syntax import tree as t
from shuntwise.syntax.automaton import Token

if TYPE_CHECKING:
    from shuntwise.syntax.build_board import BoardBuilder

DEEPEST = 100
"""Nesting beyond this is refused, so that no file can exhaust the stack of a later pass."""

_OPERATORS = {"add": "+", "subtract": "-", "multiply": "*", "divide": "/", "raise_to": "^"}
Node = Any  # a node or a token, as the grammar has it at each place


class Builder:
    """Builds entries of one source; `diagnostics` collects what had to be refused."""

    def __init__(self, source: Source) -> None:
        self.source, self.length = source, len(source.text)
        self.diagnostics: list[Diagnostic] = []
        self.whole = self.refused = Span(source, 0, 0)

    # --- helpers

    def span(self, node: Node) -> Span:
        # The reader puts a line end behind the text, and closes there what was left open.
        if isinstance(node, Token):
            return Span(self.source, node.start_pos, min(node.end_pos, self.length))
        return Span(self.source, node.start, min(node.end, self.length))

    def ident(self, token: Node) -> t.Ident:
        return t.Ident(str(token), self.span(token))

    def text(self, token: Node) -> t.Text:
        return t.Text(str(token)[1:-1], self.span(token))

    def entry(self, node: Node, depth: int = 0) -> t.Entry:
        self.whole = self.span(node)
        build: Callable[[Node, int], t.Entry] = getattr(self, node.data)
        return build(node, depth)

    def too_deep(self, node: Node) -> t.LostExpr:
        span = self.span(node)
        if self.refused.start <= span.start < self.refused.end:
            return t.LostExpr(span)  # once for each statement
        self.refused = self.whole
        self.diagnostics.append(
            Diagnostic(
                "nested-too-deep",
                Severity.ERROR,
                f"this is nested more than {DEEPEST} levels deep",
                Span(self.source, span.start, min(span.end, span.start + 40)),
                why="no circuit needs it, and a file must not be able to exhaust the compiler",
                help="split it with `let`, or wire it in several walks",
            )
        )
        return t.LostExpr(span)

    # --- values

    def expr(self, node: Node, depth: int = 0) -> t.Expr:
        if depth > DEEPEST:
            return self.too_deep(node)
        span, children = self.span(node), node.children
        match str(node.data):
            case "number":
                unit = self.ident(children[1]) if len(children) > 1 else None
                return t.Number(str(children[0]), unit, span)
            case "code":
                return t.Code(str(children[0]), span)
            case "name":
                return t.Name(self.ident(children[0]), span)
            case "group_expr":
                return self.expr(children[0], depth + 1)
            case "negate":
                return t.Negate(self.expr(children[0], depth + 1), span)
            case operator:
                left, right = (self.expr(child, depth + 1) for child in children)
                return t.Binary(_OPERATORS[operator], left, right, span)

    def items(self, block: Node | None) -> tuple[t.Item, ...]:
        return tuple(self.item(node) for node in block.children) if block is not None else ()

    def item(self, node: Node) -> t.Item:
        span, children = self.span(node), node.children
        match str(node.data):
            case "bare":
                return t.Item(None, self.expr(children[0]), span)
            case "keyed":
                return t.Item(self.ident(children[0]), self.expr(children[1]), span)
            case _:
                return t.Item(self.ident(children[0]), self.text(children[1]), span)

    def optional(self, children: list[Node]) -> tuple[t.Expr | None, tuple[t.Item, ...]]:
        """The value and the block that may follow a name."""
        value, block = None, None
        for child in children:
            if child.data == "block":
                block = child
            else:
                value = self.expr(child)
        return value, self.items(block)

    # --- declarations

    def design(self, node: Node, depth: int) -> t.Entry:
        return t.DesignTitle(self.text(node.children[0]), self.span(node))

    def amplifier(self, node: Node, depth: int) -> t.Entry:
        power, load, *rest = node.children
        items = self.items(rest[0] if rest else None)
        return t.AmplifierDecl(self.expr(power), self.expr(load), items, self.span(node))

    def input(self, node: Node, depth: int) -> t.Entry:
        return t.TerminalsDecl(True, self.ident(node.children[0]), self.span(node))

    def posts(self, node: Node, depth: int) -> t.Entry:
        return t.TerminalsDecl(False, self.ident(node.children[0]), self.span(node))

    def connector(self, node: Node, depth: int) -> t.Entry:
        name, *title, last = node.children[1:]
        through = self.ident(last) if isinstance(last, Token) else None
        pins = tuple(self.pin(pin) for pin in last.children) if through is None else ()
        return t.ConnectorDecl(self.ident(name), self.text(title[0]) if title else None, pins, through, self.span(node))

    def pin(self, node: Node) -> t.PinDecl:
        name, *pad = node.children
        return t.PinDecl(self.ident(name), self.pad(pad[0]) if pad else None, self.span(node))

    def pad(self, token: Node) -> t.Pad:
        span = self.span(token)
        owner = t.Ident(str(token)[:-1], Span(self.source, span.start, span.end - 1))
        return t.Pad(owner, str(token)[-1], span)

    def driver(self, node: Node, depth: int) -> t.Entry:
        value, items = self.optional(node.children[1:])
        return t.DriverDecl(self.ident(node.children[0]), value, items, self.span(node))

    def part(self, node: Node, depth: int) -> t.Entry:
        kind, name, *rest = node.children
        value, items = self.optional(rest)
        word = t.Ident(" ".join(str(kind).split()), self.span(kind))
        return t.PartDecl(word, self.ident(name), value, items, self.span(node))

    def coupling(self, node: Node, depth: int) -> t.Entry:
        first, second, value = node.children
        return t.CouplingDecl(self.path(first), self.path(second), self.expr(value), self.span(node))

    def testpoint(self, node: Node, depth: int) -> t.Entry:
        return t.Testpoint(self.ident(node.children[0]), self.span(node))

    def bench(self, node: Node, depth: int) -> t.BenchDecl:
        return t.BenchDecl(self.items(node.children[-1]), self.span(node))

    def let(self, node: Node, depth: int) -> t.Entry:
        name, value = node.children
        return t.Let(self.ident(name), self.expr(value), self.span(node))

    # --- wiring

    def path(self, node: Node) -> t.Path:
        return t.Path(tuple(self.ident(word) for word in node.children), self.span(node))

    def stations(self, children: list[Node], depth: int) -> tuple[t.Station, ...]:
        return tuple(self.station(child, depth) for child in children if not isinstance(child, Token))

    def station(self, node: Node, depth: int) -> t.Station:
        span = self.span(node)
        match str(node.data):
            case "pad":
                return self.pad(node.children[0])
            case "path":
                return self.path(node)
            case _:
                if depth > DEEPEST:
                    self.too_deep(node)
                    return t.Group((), span)
                chains = [child for child in node.children if not isinstance(child, Token)]
                return t.Group(tuple(self.chain(chain, depth + 1) for chain in chains), span)

    def chain(self, node: Node, depth: int) -> t.Chain:
        return t.Chain(self.stations(node.children, depth), self.span(node))

    def walk(self, node: Node, depth: int) -> t.Entry:
        return t.Walk(self.stations(node.children, 0), self.span(node))

    def body(self, node: Node, depth: int) -> tuple[t.Entry, ...]:
        return tuple(self.entry(child, depth + 1) for child in node.children if isinstance(child, automaton.Node))

    def leg(self, node: Node, depth: int) -> t.Entry:
        *drivers, body = node.children
        names = tuple(self.ident(name) for name in drivers)
        return t.Leg(names, self.body(body, depth), self.span(node))

    # --- reuse

    def network(self, node: Node, depth: int) -> t.Entry:
        name, *ports, body = node.children
        params: tuple[t.Param, ...] = ()
        if isinstance(ports[-1], automaton.Node):
            params = tuple(self.param(param) for param in ports.pop().children)
        idents = tuple(self.ident(port) for port in ports)
        return t.NetworkDecl(self.ident(name), idents, params, self.body(body, depth), self.span(node))

    def param(self, node: Node) -> t.Param:
        name, *default = node.children
        return t.Param(self.ident(name), self.expr(default[0]) if default else None, self.span(node))

    def use(self, node: Node, depth: int) -> t.Entry:
        network, name, *block = node.children
        items = self.items(block[0] if block else None)
        return t.Use(self.ident(network), self.ident(name), items, self.span(node))

    def include(self, node: Node, depth: int) -> t.Entry:
        return t.Include(self.text(node.children[0]), len(node.children) > 1, self.span(node))

    def variant(self, node: Node, depth: int) -> t.Entry:
        return t.Variant(*self.titled(node, node.children, depth))

    def choice(self, node: Node, depth: int) -> t.Entry:
        return t.Choice(*self.titled(node, node.children[1:], depth))

    def position(self, node: Node, depth: int) -> t.Entry:
        return t.Position(*self.titled(node, node.children[1:], depth))

    def titled(
        self, node: Node, children: list[Node], depth: int
    ) -> tuple[t.Ident, t.Text | None, tuple[t.Entry, ...], Span]:
        """What has a name, perhaps a title, and holds statements."""
        name, *title, body = children
        text = self.text(title[0]) if title else None
        return self.ident(name), text, self.body(body, depth), self.span(node)

    def set(self, node: Node, depth: int) -> t.Entry:
        target, value = node.children
        return t.Set(self.path(target), self.expr(value), self.span(node))

    def omit(self, node: Node, depth: int) -> t.Entry:
        return t.Fitting(False, tuple(self.path(child) for child in node.children), self.span(node))

    def fit(self, node: Node, depth: int) -> t.Entry:
        return t.Fitting(True, tuple(self.path(child) for child in node.children), self.span(node))

    # --- boards

    def board(self, node: Node, depth: int) -> t.Entry:
        return self.boards.board(node)

    def layout(self, node: Node, depth: int) -> t.Entry:
        return self.boards.layout(node)

    @cached_property
    def boards(self) -> BoardBuilder:
        from shuntwise.syntax.build_board import BoardBuilder  # most texts have no board

        return BoardBuilder(self)

    # --- intent

    def expect(self, node: Node, depth: int) -> t.Entry:
        quantity, *rest = node.children
        subjects = tuple(self.path(child) for child in rest if child.data == "path")
        clauses = tuple(self.clause(child) for child in rest if child.data != "path")
        return t.Expect(self.ident(quantity), subjects, clauses, self.span(node))

    def clause(self, node: Node) -> t.Clause:
        word = "from" if node.data == "from_to" else str(node.data)
        values = tuple(self.expr(child) for child in node.children if isinstance(child, automaton.Node))
        return t.Clause(word, values, self.span(node))

    def allow(self, node: Node, depth: int) -> t.Entry:
        finding, *where, reason = node.children
        path = next((self.path(child) for child in where if child.data == "path"), None)
        variants = tuple(
            t.Ident("+".join(self.path(one).text for one in name.children), self.span(name))
            for child in where
            if child.data == "in_variants"
            for name in child.children
        )
        return t.Allow(self.ident(finding), path, variants, self.text(reason), self.span(node))

    def limit(self, node: Node, depth: int) -> t.Entry:
        finding, value = node.children
        return t.Limit(self.ident(finding), self.expr(value), self.span(node))
