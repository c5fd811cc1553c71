"""The automaton's tree of a `board` or a `layout` turned into nodes of `syntax.board_tree`.

In: a node of the automaton, what reads its words. Out: frozen nodes. Loaded at the first board of a text.
Each method bears the name of the grammar rule that it reads.
"""

from __future__ import annotations

import re
from typing import Any, Protocol

from shuntwise.source import Source, Span
from shuntwise.syntax import board_tree as b
from shuntwise.syntax import tree as t
from shuntwise.syntax.automaton import Node, Token

_NUMBER = re.compile(r"[^ \t\u00a0:]+")


class Words(Protocol):
    """What reads the words, values and lists that all statements are made of."""

    source: Source

    def span(self, node: Any) -> Span: ...
    def ident(self, token: Any) -> t.Ident: ...
    def text(self, token: Any) -> t.Text: ...
    def expr(self, node: Any) -> t.Expr: ...
    def items(self, block: Any) -> tuple[t.Item, ...]: ...
    def path(self, node: Any) -> t.Path: ...
    def pad(self, token: Any) -> t.Pad: ...


class BoardBuilder:
    def __init__(self, builder: Words) -> None:
        self.builder, self.span = builder, builder.span

    def board(self, node: Node) -> t.BoardDecl:
        _, name, *rest = node.children
        title = self.builder.text(rest.pop(0)) if rest and isinstance(rest[0], Token) else None
        return t.BoardDecl(self.ident(name), title, tuple(self.line(child) for child in rest), self.span(node))

    def layout(self, node: Node) -> t.LayoutDecl:
        _, *rest = node.children
        names = [self.ident(child) for child in rest if isinstance(child, Token)]
        lines = tuple(self.line(child) for child in rest if isinstance(child, Node))
        return t.LayoutDecl(names[0], names[1] if len(names) > 1 else None, lines, self.span(node))

    def line(self, node: Any) -> Any:
        return getattr(self, node.data)(node)

    # --- helpers

    def ident(self, token: Any) -> t.Ident:
        return self.builder.ident(token)

    def expr(self, node: Any) -> t.Expr:
        return self.builder.expr(node)

    def points(self, node: Node) -> tuple[b.Point, ...]:
        return tuple(self.point(child) for child in node.children if isinstance(child, Node) and child.data == "point")

    def items(self, node: Node) -> tuple[t.Item, ...]:
        """The list in braces that may end a statement."""
        last = node.children[-1]
        return self.builder.items(last if isinstance(last, Node) and last.data == "block" else None)

    def point(self, node: Any) -> b.Point:
        token = node.children[0]
        colon = token.index(":")
        numbers = []
        for match in (_NUMBER.search(token, 0, colon), _NUMBER.search(token, colon + 1)):
            assert match is not None  # the grammar's pattern has one on each side
            start, end = (token.start_pos + at for at in match.span())
            numbers.append(t.Ident(match[0], Span(self.builder.source, start, end)))
        across, up = numbers
        return b.Point(across, up, self.ident(node.children[1]), self.span(node))

    def side(self, node: Any) -> t.Ident:
        return self.ident(node.children[0])

    # --- the board

    def outline(self, node: Node) -> b.BoardLine:
        return b.Outline(self.point(node.children[0]), self.span(node))

    def thickness(self, node: Node) -> b.BoardLine:
        return b.Thickness(self.expr(node.children[0]), self.span(node))

    def copper(self, node: Node) -> b.BoardLine:
        *thickness, side = node.children
        return b.Copper(self.expr(thickness[0]) if thickness else None, self.side(side), self.span(node))

    def seen(self, node: Node) -> b.BoardLine:
        return b.Seen(self.side(node.children[-1]), self.span(node))

    def corner(self, node: Node) -> b.BoardLine:
        at, cut = node.children
        return b.CornerDecl(self.point(at), self.expr(cut), self.span(node))

    def area(self, node: Node) -> b.BoardLine:
        return b.AreaDecl(self.ident(node.children[0]), self.points(node), self.span(node))

    def track(self, node: Node) -> b.BoardLine:
        return b.TrackDecl(self.expr(node.children[0]), self.points(node), self.items(node), self.span(node))

    def holes(self, node: Node) -> b.BoardLine:
        name, count, diameter, *_ = node.children
        points = self.points(node)
        return b.HolesDecl(
            self.ident(name), self.ident(count), self.expr(diameter), points, self.items(node), self.span(node)
        )

    def hole(self, node: Node) -> b.BoardLine:
        name, diameter, *_ = node.children
        points = self.points(node)
        return b.HolesDecl(self.ident(name), None, self.expr(diameter), points, self.items(node), self.span(node))

    def tags(self, node: Node) -> b.BoardLine:
        name, count, *_ = node.children
        points = self.points(node)
        return b.HolesDecl(self.ident(name), self.ident(count), None, points, self.items(node), self.span(node))

    def tag(self, node: Node) -> b.BoardLine:
        name = self.ident(node.children[0])
        return b.HolesDecl(name, None, None, self.points(node), self.items(node), self.span(node))

    def fixing(self, node: Node) -> b.BoardLine:
        diameter, at, *_ = node.children
        return b.FixingDecl(self.expr(diameter), self.point(at), self.items(node), self.span(node))

    # --- the layout

    def spot(self, node: Any) -> b.SpotRef:
        path, *number = node.children
        return b.SpotRef(self.builder.path(path), self.ident(number[0]) if number else None, self.span(node))

    def pad_spot(self, node: Any) -> b.SpotRef:
        return b.SpotRef(self.builder.pad(node.children[0]), None, self.span(node))

    def cut(self, node: Node) -> b.LayoutLine:
        start, end = self.points(node)
        return b.CutDecl(start, end, self.items(node), self.span(node))

    def drill(self, node: Node) -> b.LayoutLine:
        name, diameter, at, *_ = node.children
        area = next((self.ident(child.children[0]) for child in _nodes(node) if child.data == "in_area"), None)
        return b.DrillDecl(
            self.ident(name), self.expr(diameter), self.point(at), area, self.items(node), self.span(node)
        )

    def jumper(self, node: Node) -> b.LayoutLine:
        return self.wire("jumper", node)

    def bus(self, node: Node) -> b.LayoutLine:
        return self.wire("bus", node)

    def lead_out(self, node: Node) -> b.LayoutLine:
        return self.wire("lead out", node)

    def wire(self, kind: str, node: Node) -> b.LayoutLine:
        first, second = (self.line(child) for child in node.children if _is(child, "spot") or _is(child, "pad_spot"))
        return b.WireDecl(kind, first, second, self.items(node), self.span(node))

    def place(self, node: Node) -> b.LayoutLine:
        path, *rest = node.children
        at = next(iter(self.points(node)), None)
        side = next((self.side(child) for child in rest if _is(child, "side")), None)
        how = tuple(self.line(one) for child in rest if _is(child, "placing") for one in _nodes(child))
        return b.PlaceDecl(self.builder.path(path), at, side, how, self.span(node))

    def axis(self, node: Node) -> b.How:
        return b.AxisOf(self.expr(node.children[0]), self.span(node))

    def lead(self, node: Node) -> b.How:
        terminal, spot = node.children
        return b.LeadInto(self.ident(terminal), (self.line(spot),), self.span(node))

    def leads(self, node: Node) -> b.How:
        return b.LeadInto(None, tuple(self.line(spot) for spot in _nodes(node)), self.span(node))

    def tie(self, node: Node) -> b.How:
        first, second = self.points(node)
        return b.TieDecl(self.expr(node.children[0]), first, second, self.span(node))

    def raised(self, node: Node) -> b.How:
        return b.Raised(self.expr(node.children[0]), self.span(node))

    def note(self, node: Node) -> b.How:
        key, text = node.children
        return b.Note(self.ident(key), self.builder.text(text), self.span(node))

    def depth(self, node: Node) -> b.LayoutLine:
        return b.Depth(self.expr(node.children[0]), self.span(node))


def _is(child: object, rule: str) -> bool:
    return isinstance(child, Node) and child.data == rule


def _nodes(node: Any) -> list[Node]:
    return [child for child in node.children if isinstance(child, Node)]
