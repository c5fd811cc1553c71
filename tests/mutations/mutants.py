"""Single-line mutations of a module: each is one that a test should notice.

In: the text of a module. Out: mutants, in the order of the text. Docstrings, annotations, messages and imports are left
alone: what they say is not what the code does.
"""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import dataclass

COMPARED = {
    ast.Lt: (ast.LtE, ast.Gt),
    ast.LtE: (ast.Lt, ast.Gt),
    ast.Gt: (ast.GtE, ast.Lt),
    ast.GtE: (ast.Gt, ast.Lt),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
    ast.Is: (ast.IsNot,),
    ast.IsNot: (ast.Is,),
    ast.In: (ast.NotIn,),
    ast.NotIn: (ast.In,),
}
ARITHMETIC = {ast.Add: ast.Sub, ast.Sub: ast.Add, ast.Mult: ast.Div, ast.Div: ast.Mult, ast.Pow: ast.Mult}
PAIRS = (("min", "max"), ("argmin", "argmax"), ("minimum", "maximum"))
EXCHANGED = {a: b for pair in PAIRS for a, b in (pair, pair[::-1])}
SCALE = 1.5
SILENT = (ast.JoinedStr, ast.Import, ast.ImportFrom, ast.Raise, ast.Assert)
"""What says something, and does nothing that a test should notice."""


@dataclass(frozen=True)
class Mutant:
    """Line `line` (from 1) of a module, before and after."""

    line: int
    before: str
    after: str


def mutants(text: str) -> list[Mutant]:
    lines = text.splitlines()
    found: dict[Mutant, None] = {}
    for node, changed in _changes(ast.parse(text)):
        if node.lineno != node.end_lineno:
            continue
        line = lines[node.lineno - 1]
        raw = line.encode()
        after = (raw[: node.col_offset] + f"({ast.unparse(changed)})".encode() + raw[node.end_col_offset :]).decode()
        if isinstance(changed, ast.Constant):
            after = (raw[: node.col_offset] + ast.unparse(changed).encode() + raw[node.end_col_offset :]).decode()
        found[Mutant(node.lineno, line, after)] = None
    return list(found)


def _changes(tree: ast.Module) -> Iterator[tuple[ast.expr, ast.expr]]:
    for node in _code(tree):
        match node:
            case ast.Compare(left=left, ops=[op], comparators=[right]):
                for other in COMPARED.get(type(op), ()):
                    yield node, ast.Compare(left, [other()], [right])
            case ast.BinOp(left=left, op=op, right=right) if type(op) in ARITHMETIC:
                yield node, ast.BinOp(left, ARITHMETIC[type(op)](), right)
            case ast.BoolOp(op=op, values=values):
                yield node, ast.BoolOp(ast.Or() if isinstance(op, ast.And) else ast.And(), values)
            case ast.UnaryOp(op=ast.Not() | ast.USub(), operand=operand):
                yield node, operand
            case ast.Call(func=ast.Name(id="abs") | ast.Attribute(attr="abs"), args=[argument], keywords=[]):
                yield node, argument
            case ast.Call(func=ast.Name(id=name)) if name in EXCHANGED:
                yield node, ast.Call(ast.Name(EXCHANGED[name]), node.args, node.keywords)
            case ast.Call(func=ast.Attribute(value=value, attr=name)) if name in EXCHANGED:
                yield node, ast.Call(ast.Attribute(value, EXCHANGED[name]), node.args, node.keywords)
            case ast.Constant(value=bool(value)):
                yield node, ast.Constant(not value)
            case ast.Constant(value=int(value)):
                yield node, ast.Constant(value + 1)
            case ast.Constant(value=float(value)):
                yield node, ast.Constant(value * SCALE if value else 1.0)


def _code(node: ast.AST) -> Iterator[ast.AST]:
    """All nodes that do something."""
    for field, value in ast.iter_fields(node):
        if field in ("annotation", "returns", "decorator_list", "type_params"):
            continue
        for child in value if isinstance(value, list) else [value]:
            if not isinstance(child, ast.AST) or isinstance(child, SILENT):
                continue
            if isinstance(child, ast.If) and isinstance(child.test, ast.Name) and child.test.id == "TYPE_CHECKING":
                continue
            yield child
            yield from _code(child)
