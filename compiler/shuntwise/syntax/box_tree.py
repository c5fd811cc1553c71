"""The statements of a box's own file, as they were written, before any name is looked up.

In: nothing (plain values). Every node keeps its `Span`.
"""

from __future__ import annotations

from typing import NamedTuple

from shuntwise.source import Source, Span
from shuntwise.syntax import tree as t


class BoxHead(NamedTuple):
    """`box 7 of "harbour-stage.shunt"`."""

    name: t.Ident
    design: t.Text
    span: Span


class InVariant(NamedTuple):
    """`variant touring+level.soft`; the name is as `--variant` takes it."""

    name: t.Ident
    span: Span


class Measured(NamedTuple):
    """`measured C2 38.1 uF { 1 % }`."""

    label: t.Path
    value: t.Expr
    items: tuple[t.Item, ...]
    span: Span


class Loads(NamedTuple):
    """`drivers off`, `woofer off`: of what, and the word behind it."""

    of: t.Path
    word: t.Ident
    span: Span


class ReadingDecl(NamedTuple):
    """`minus` is None where both pads of `plus` are meant (`at woofer`); `place` is the text of both."""

    quantity: t.Ident
    plus: t.Pad | t.Path
    minus: t.Pad | t.Path | None
    place: Span
    loads: Loads
    into: t.Path | None
    frequency: t.Expr | None
    value: t.Expr
    span: Span


class SweepDecl(NamedTuple):
    path: t.Text
    loads: Loads
    into: t.Path | None
    span: Span


class Beside(NamedTuple):
    path: t.Text
    span: Span


class Rework(NamedTuple):
    what: t.Text
    span: Span


class Remark(NamedTuple):
    text: t.Text
    span: Span


BoxLine = BoxHead | InVariant | t.BenchDecl | Measured | ReadingDecl | SweepDecl | Beside | Rework | Remark


class BoxTree(NamedTuple):
    source: Source
    lines: tuple[BoxLine, ...]
    lost: tuple[t.Lost, ...] = ()
