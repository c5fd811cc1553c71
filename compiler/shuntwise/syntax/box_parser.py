"""Source -> BoxTree: a box's own file, read as designs are (`parser.py`) by tables of its own.

In: a `Source`. Out: a `BoxTree` and the findings on its form. Refuses to know what the words mean.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.source import Source
from shuntwise.syntax import box_tree as b
from shuntwise.syntax import tree as t
from shuntwise.syntax.box_tables import BOX
from shuntwise.syntax.build import Builder
from shuntwise.syntax.parser import Form, nodes_of, uncollected
from shuntwise.syntax.situation import Complaint, Situation
from shuntwise.syntax.words import BOX_KEYWORDS, BOX_STATEMENTS


def parse_box(source: Source) -> tuple[b.BoxTree, tuple[Diagnostic, ...]]:
    """Read a whole file of a box. Parsing never fails; what cannot be read is left out."""
    with uncollected():
        return _tree(source)


def _tree(source: Source) -> tuple[b.BoxTree, tuple[Diagnostic, ...]]:
    nodes, lost, said = nodes_of(source, _FORM)
    builder = _BoxBuilder(source)
    lines = tuple(builder.line(node) for node in nodes)
    return b.BoxTree(source, lines, lost), (*said, *builder.diagnostics)


def _complain(situation: Situation) -> Complaint:
    from shuntwise.syntax.complaints import complain_of_box  # most texts have no slip

    return complain_of_box(situation)


_FORM = Form(BOX, BOX_STATEMENTS, BOX_KEYWORDS, _complain)

Node = Any  # a node or a token, as the grammar has it at each place


class _BoxBuilder(Builder):
    """Each method bears the name of the grammar rule that it reads."""

    def line(self, node: Node) -> b.BoxLine:
        self.whole = self.span(node)
        build: Callable[[Node], b.BoxLine] = getattr(self, f"line_{node.data}")
        return build(node)

    def line_box(self, node: Node) -> b.BoxLine:
        _, name, design = node.children
        (word,) = name.children
        text = self.text(word).value if word.type == "STRING" else str(word)
        return b.BoxHead(t.Ident(text, self.span(word)), self.text(design), self.span(node))

    def line_in_variant(self, node: Node) -> b.BoxLine:
        name = node.children[-1]
        text = "+".join(self.path(one).text for one in name.children)
        return b.InVariant(t.Ident(text, self.span(name)), self.span(node))

    def line_bench(self, node: Node) -> b.BoxLine:
        return self.bench(node, 0)

    def line_measured(self, node: Node) -> b.BoxLine:
        _, label, value, *block = node.children
        items = self.items(block[0] if block else None)
        return b.Measured(self.path(label), self.expr(value), items, self.span(node))

    def line_reading(self, node: Node) -> b.BoxLine:
        _, quantity, between, loads, *rest = node.children
        into = self.into(rest.pop(0)) if rest[0].data == "into" else None
        *frequency, value = rest
        plus, *minus = (self.reading_point(point) for point in between.children)
        return b.ReadingDecl(
            self.ident(quantity),
            plus,
            minus[0] if minus else None,
            self.span(between),
            self.loads(loads),
            into,
            self.expr(frequency[0]) if frequency else None,
            self.expr(value),
            self.span(node),
        )

    def line_sweep(self, node: Node) -> b.BoxLine:
        _, path, loads, *into = node.children
        return b.SweepDecl(self.text(path), self.loads(loads), self.into(into[0]) if into else None, self.span(node))

    def line_beside(self, node: Node) -> b.BoxLine:
        return b.Beside(self.text(node.children[-1]), self.span(node))

    def line_rework(self, node: Node) -> b.BoxLine:
        return b.Rework(self.text(node.children[-1]), self.span(node))

    def line_remark(self, node: Node) -> b.BoxLine:
        return b.Remark(self.text(node.children[-1]), self.span(node))

    # --- pieces of a line

    def reading_point(self, node: Node) -> t.Pad | t.Path:
        return self.pad(node.children[0]) if node.data == "pad" else self.path(node)

    def loads(self, node: Node) -> b.Loads:
        of, word = node.children
        return b.Loads(self.path(of), self.ident(word), self.span(node))

    def into(self, node: Node) -> t.Path:
        return self.path(node.children[-1])
