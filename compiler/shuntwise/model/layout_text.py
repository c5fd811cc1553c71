"""`layout` statements -> layouts: variants laid over, every name of a hole, part and pad looked up.

In: the declarations, the boards, what the design has. Out: `Layout`s in the order of the text, and findings in the
scope. A statement that is refused is left out and its layout kept. Refuses to know what is joined to what.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal, TypeVar

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import board_sizes as sizes
from shuntwise.model import findings
from shuntwise.model.board_shapes import CLOSE, collisions, inside
from shuntwise.model.board_text import is_lost, on_board, whole
from shuntwise.model.boards import Board, Cut, Hole, Layout, Lead, Place, Point, Side, Spot, Tie, Wire
from shuntwise.model.evaluate import Scope
from shuntwise.model.kinds import KINDS, TEXTS, Attribute
from shuntwise.source import Span
from shuntwise.syntax import board_tree as b
from shuntwise.syntax import tree as t

MOST_LAYOUTS = 20
"""A design is one box; more layouts than this are a mistake or mischief, and so are more statements in one."""
MOST_STATEMENTS = 2000

_Line = TypeVar("_Line", b.CutDecl, b.DrillDecl, b.WireDecl, b.PlaceDecl, b.Depth)


@dataclass(frozen=True)
class Layer:
    """A `layout` statement, and how many layers lie below it: 0 outside of variants, more in them."""

    entry: t.LayoutDecl
    number: int


@dataclass(frozen=True)
class Known:
    """What a layout may name: the kinds of the parts by label, the owners of pads, the rows that a board declares
    (some may have been refused), and what was lost."""

    kinds: Mapping[str, str]
    owners: Collection[str]
    declared: Mapping[str, t.BoardDecl]
    lost: Sequence[t.Lost]


def read_layouts(
    layers: Sequence[Layer], boards: Mapping[str, Board], known: Known, scope: Scope
) -> tuple[Layout, ...]:
    """The layouts, each with the statements of its layers."""
    laid = _lay(layers, scope)
    readings: dict[str, _Reading] = {}
    for number, (name, one) in enumerate(laid.items()):
        if number == MOST_LAYOUTS:
            scope.say(findings.too_much_on_board(one.name.span, f"more than {MOST_LAYOUTS} layouts are declared"))
            break
        board = boards.get(one.board.text)
        if board is not None:
            readings[name] = _Reading(one, board, known, scope, readings)
        elif one.board.text not in known.declared and one.board.text not in scope.doubtful:
            scope.say(findings.unknown_board(one.board, known.declared))
    for reading in readings.values():  # what is drilled may be named in another layout
        reading.drill()
    return tuple(reading.read() for reading in readings.values())


# --- layers


@dataclass
class _Laid:
    """The statements of one layout, each with the number of its layer."""

    name: t.Ident
    board: t.Ident
    span: Span
    spans: list[Span] = field(default_factory=list)
    lines: list[tuple[int, b.LayoutLine]] = field(default_factory=list)
    overfull: bool = False


def _lay(layers: Sequence[Layer], scope: Scope) -> dict[str, _Laid]:
    laid: dict[str, _Laid] = {}
    placed: dict[str, tuple[int, Span, _Laid]] = {}
    for layer in layers:
        entry = layer.entry
        one = laid.setdefault(entry.name.text, _Laid(entry.name, entry.board, entry.span))
        if one.board.text != entry.board.text:
            scope.say(findings.layout_on_two_boards(entry.name.text, entry.board.span, one.board))
            continue
        one.spans.append(entry.span)
        own: dict[tuple[str, str], Span] = {}
        for line in entry.lines:
            if len(one.lines) >= MOST_STATEMENTS:
                scope.say(findings.too_much_on_board(line.span, f"more than {MOST_STATEMENTS} statements are in "
                                                                f"the layout `{one.name.text}`"))  # fmt: skip
                one.overfull = True
                break
            key = _about(line)
            if key is None:
                one.lines.append((layer.number, line))
                continue
            first = own.setdefault(key, line.span)
            if first is not line.span and key[0] != "lead out":
                twice = findings.told_twice("`depth`", one.name.text, line.span, first)
                if key[0] != "depth":
                    twice = findings.same_label_twice(key[1], _name_of(line), first, key[0])
                scope.say(twice)
                continue
            if isinstance(line, b.PlaceDecl):
                old = placed.get(key[1])
                if old is not None and old[0] == layer.number:
                    scope.say(findings.same_label_twice(key[1], line.label.span, old[1], "place"))
                    continue
                if old is not None:
                    _take_out(old[2], key, layer.number)
                placed[key[1]] = (layer.number, line.span, one)
            elif layer.number:
                _take_out(one, key, layer.number)
            one.lines.append((layer.number, line))
    return laid


def _take_out(laid: _Laid, key: tuple[str, str], layer: int) -> None:
    """What lies below and is about the same."""
    laid.lines[:] = [(number, line) for number, line in laid.lines if number == layer or _about(line) != key]


def _about(line: b.LayoutLine) -> tuple[str, str] | None:
    """What a statement is about, where there is but one of the kind; None where there may be any number."""
    match line:
        case b.PlaceDecl():
            return "place", line.label.text
        case b.DrillDecl():
            return "drill", line.name.text
        case b.Depth():
            return "depth", "depth"
        case b.WireDecl(kind="lead out", second=second):
            return "lead out", second.place.text
    return None


def _name_of(line: b.LayoutLine) -> Span:
    match line:
        case b.PlaceDecl():
            return line.label.span
        case b.DrillDecl():
            return line.name.span
    return line.span


# --- one layout


@dataclass
class _Reading:
    laid: _Laid
    board: Board
    known: Known
    scope: Scope
    others: Mapping[str, _Reading]
    holes: dict[str, Hole] = field(default_factory=dict)
    rows: dict[str, int] = field(default_factory=dict)
    drilled: list[Hole] = field(default_factory=list)
    cuts: list[Cut] = field(default_factory=list)
    wires: list[Wire] = field(default_factory=list)
    places: list[Place] = field(default_factory=list)
    depth: float | None = None
    refused: bool = False

    def __post_init__(self) -> None:
        self.holes = self.board.hole
        for hole in self.board.holes:
            self.rows[hole.row] = self.rows.get(hole.row, 0) + 1
        self.refused = (
            self.board.refused or self.laid.overfull or any(is_lost(span, self.known.lost) for span in self.laid.spans)
        )

    def lines(self, kind: type[_Line]) -> Iterable[_Line]:
        return (line for _, line in self.laid.lines if isinstance(line, kind))

    def drill(self) -> None:
        for line in self.lines(b.DrillDecl):
            name = line.name.text
            diameter = self.size(line.diameter, sizes.HOLE, name)
            sizes.sizes(line.items, sizes.DRILLED, self.scope, name)
            found = self.points(line.at)
            old = self.holes.get(name) or next((hole for hole in self.board.holes if hole.row == name), None)
            if old is not None:
                self.refuse(findings.same_label_twice(name, line.name.span, old.span, "hole"))
            elif found is not None and diameter is not None:
                area = self.area(line, found[0])
                hole = Hole(name, name, found[0], diameter, line.span, area=area, drilled=True)
                self.holes[name] = hole
                self.drilled.append(hole)
        circles = [(hole.at, hole.diameter) for hole in self.holes.values()]
        names = list(self.holes)
        for later, earlier in collisions(circles, known=len(self.board.holes)):
            one, other = self.holes[names[later]], self.holes[names[earlier]]
            self.refuse(findings.holes_collide(one.name, one.span, other.name, other.span))

    def area(self, line: b.DrillDecl, at: Point) -> str | None:
        if line.area is None:
            return None
        areas = {area.name: area for area in self.board.areas}
        area = areas.get(line.area.text)
        if area is None:
            if not self.in_doubt(line.area.text):
                self.scope.say(findings.unknown_name(line.area.text, line.area.span, areas,
                                                     "no area of this name on the board"))  # fmt: skip
        elif inside(at, area.corners):
            return area.name
        else:
            self.scope.say(findings.hole_outside_area(line.name.text, line.at.span, area.name, area.span))
        self.refused = True
        return None

    def read(self) -> Layout:
        for _, line in self.laid.lines:
            match line:
                case b.CutDecl():
                    self.cut(line)
                case b.WireDecl():
                    self.wire(line)
                case b.PlaceDecl():
                    self.place(line)
                case b.Depth():
                    self.depth = self.size(line.value, sizes.DEPTH, self.laid.name.text)
        return Layout(
            name=self.laid.name.text,
            board=self.board,
            cuts=tuple(self.cuts),
            drilled=tuple(self.drilled),
            wires=tuple(self.wires),
            places=tuple(self.places),
            depth=self.depth,
            span=self.laid.span,
            name_span=self.laid.name.span,
            refused=self.refused,
        )

    # --- helpers

    def refuse(self, finding: Diagnostic) -> None:
        self.scope.say(finding)
        self.refused = True

    def size(self, expr: t.Expr, attribute: Attribute, subject: str) -> float | None:
        found = sizes.size(expr, attribute, self.scope, subject)
        self.refused |= found is None
        return found

    def points(self, *written: b.Point) -> tuple[Point, ...] | None:
        found = sizes.points(written, self.scope)
        board = self.board
        for at, one in zip(found or (), written, strict=False):
            if not on_board(at, board.width, board.height, board.corners):
                self.scope.say(findings.outside_board(one.span, board.name, (board.width, board.height)))
                found = None
                break
        self.refused |= found is None
        return found

    def in_doubt(self, name: str) -> bool:
        """Is it declared on the board or here, and was refused, or does it stand in lost text?"""
        declared = self.known.declared[self.board.name]
        return (
            name in self.scope.doubtful
            or any(line.name.text == name for line in declared.lines if isinstance(line, b.HolesDecl | b.AreaDecl))
            or any(line.name.text == name for line in self.lines(b.DrillDecl))
        )

    # --- statements

    def cut(self, line: b.CutDecl) -> None:
        width = sizes.sizes(line.items, sizes.CUT, self.scope, "cut")[0].get("width", 1.0)
        found = self.points(line.start, line.end)
        if found is None:
            return
        start, end = found
        if max(abs(start[0] - end[0]), abs(start[1] - end[1])) < CLOSE:
            self.refuse(findings.shape_impossible(line.span, "this cut begins and ends at the same point",
                                                  "write where it ends"))  # fmt: skip
            return
        self.cuts.append(Cut(start, end, width, line.span))

    def wire(self, line: b.WireDecl) -> None:
        lengths, words = sizes.sizes(line.items, sizes.WIRE, self.scope, line.kind)
        first, second = self.spot(line.first), self.spot(line.second)
        if first is None or second is None:
            return
        wrong = self.wrong_ends(line, first, second)
        if wrong is not None:
            self.refuse(findings.lead_unclear(line.span, *wrong))
            return
        kind: Literal["jumper", "bus", "lead out"]
        kind = "lead out" if line.kind == "lead out" else "bus" if line.kind == "bus" else "jumper"
        wire, length = lengths.get("wire", 0.0), lengths.get("length", 0.0)
        self.wires.append(Wire(kind, first, second, wire, length, "sleeved" in words, line.span))

    def wrong_ends(self, line: b.WireDecl, first: Spot, second: Spot) -> tuple[str, str] | None:
        """What is wrong with where a wire ends, and the remedy."""
        if (first.layout, first.hole) == (second.layout, second.hole):
            return "this wire begins and ends at the same spot", "name another spot for one of its ends"
        holes = (first.layout is not None, second.layout is not None)
        if line.kind == "lead out":
            if holes != (True, False):
                return "a wire leads out from a hole or tag to a pad", "write it so: `lead out north 3 to input+`"
        elif not all(holes):
            word = "jumper" if line.kind == "jumper" else "bus wire"
            return f"a {word} ends in holes or tags, not at a pad", "a wire to a pad is `lead out north 3 to input+`"
        elif line.kind == "bus" and (first.layout != second.layout or self.row_of(first) != self.row_of(second)):
            return "a bus wire goes along one row", "name two holes or tags of one row; other wires are a `jumper`"
        return None

    def row_of(self, spot: Spot) -> str:
        assert spot.layout is not None
        return self.others[spot.layout].holes[spot.hole].row

    def place(self, line: b.PlaceDecl) -> None:
        label = line.label.text
        kind = self.known.kinds.get(label)
        if kind is None:
            self.refused = True
            if label not in self.scope.doubtful and line.label.words[0].text not in self.scope.doubtful:
                self.scope.say(findings.unknown_name(label, line.label.span, self.known.kinds, "no part of this name"))
            return
        placing = _Placing(self, line, KINDS[kind].terminals, kind)
        for how in line.how:
            placing.take(how)
        at = self.points(line.at) if line.at is not None else None
        if line.at is not None and at is None:
            return
        side: Side = "solder" if line.side is not None and line.side.text == "solder" else "parts"
        self.places.append(
            Place(
                label,
                at[0] if at is not None else None,
                side,
                placing.axis,
                placing.raised or 0.0,
                tuple(placing.leads),
                tuple(placing.ties),
                tuple(placing.notes),
                line.span,
                line.label.span,
            )
        )

    # --- spots

    def spot(self, written: b.SpotRef) -> Spot | None:
        found = self.pad(written.place, written.span) if isinstance(written.place, t.Pad) else self.hole_at(written)
        self.refused |= found is None
        return found

    def pad(self, pad: t.Pad, span: Span) -> Spot | None:
        if pad.owner.text in self.known.owners:
            return Spot(None, pad.text, span)
        if pad.owner.text not in self.scope.doubtful:
            self.scope.say(findings.unknown_name(pad.owner.text, pad.owner.span, self.known.owners,
                                                 "no driver, input or posts of this name"))  # fmt: skip
        return None

    def hole_at(self, written: b.SpotRef) -> Spot | None:
        assert isinstance(written.place, t.Path)
        *layout, word = written.place.words
        where: _Reading | None = self
        if layout:
            name = ".".join(one.text for one in layout)
            where = self.others.get(name)
            if where is None:
                if name not in self.scope.doubtful:
                    self.scope.say(findings.unknown_name(name, layout[0].span, self.others, "no layout of this name"))
                return None
        assert where is not None
        number = whole(written.number, self.scope) if written.number is not None else None
        if written.number is not None and number is None:
            return None
        hole = f"{word.text} {number}" if number is not None else word.text
        if hole in where.holes:
            return Spot(where.laid.name.text, hole, written.span)
        count = where.rows.get(word.text)
        if count is not None and hole != word.text and word.text not in where.holes:
            self.scope.say(findings.unknown_name(hole, written.span, (f"{word.text} {count}",),
                                                 f"the row has {count}, from 1 to {count}"))  # fmt: skip
        elif count is not None:
            single = word.text in where.holes
            self.scope.say(
                findings.lead_unclear(
                    written.span,
                    f"`{word.text}` is a single one" if single else f"`{word.text}` is a row of {count}",
                    f"write `{word.text}` alone" if single else f"say which: `{word.text} 1` to `{word.text} {count}`",
                )
            )
        elif word.text in self.known.owners:
            self.scope.say(findings.lead_unclear(written.span, f"`{word.text}` has two pads",
                                                 f"write `{word.text}+` or `{word.text}-`"))  # fmt: skip
        elif not where.in_doubt(word.text):
            rows = (*where.rows, *(drilled.name for drilled in where.drilled))
            self.scope.say(findings.unknown_name(word.text, word.span, rows, "no hole, tag or row of this name"))
        return None


@dataclass
class _Placing:
    """How one part is placed, so far."""

    layout: _Reading
    line: b.PlaceDecl
    terminals: tuple[str, ...]
    kind: str
    axis: float | Literal["upright"] | None = None
    raised: float | None = None
    leads: list[Lead] = field(default_factory=list)
    ties: list[Tie] = field(default_factory=list)
    notes: list[str] = field(default_factory=list)
    once: dict[str, Span] = field(default_factory=dict)

    def take(self, how: b.How) -> None:
        match how:
            case b.AxisOf():
                if self.is_first("axis", how.span):
                    self.turn(how.value)
            case b.Raised():
                if self.is_first("raised", how.span):
                    self.raised = self.layout.size(how.value, sizes.RAISED, self.line.label.text)
            case b.LeadInto(terminal=None):
                self.undirected(how)
            case b.LeadInto():
                self.lead(how)
            case b.TieDecl():
                self.tie(how)
            case b.Note():
                if how.key.text in TEXTS:
                    self.notes.append(how.text.value)
                else:
                    self.layout.refuse(findings.unknown_word(how.key.text, how.key.span, TEXTS,
                                                             "before a text in quotes"))  # fmt: skip

    def is_first(self, word: str, span: Span) -> bool:
        first = self.once.setdefault(word, span)
        if first is not span:
            label = self.line.label.text
            self.layout.refuse(findings.told_twice(f"`{word}`", label, span, first))
        return first is span

    def turn(self, value: t.Expr) -> None:
        if isinstance(value, t.Name) and value.ident.text == "upright":
            self.axis = "upright"
            return
        if isinstance(value, t.Name) and value.ident.text not in self.layout.scope.lets:
            self.layout.refuse(findings.unknown_word(value.ident.text, value.span, ("upright",),
                                                     "as the direction of an axis"))  # fmt: skip
            return
        turned = self.layout.scope.typed(value, sizes.AXIS, self.line.label.text)
        self.axis = turned.value if turned is not None else None
        self.layout.refused |= turned is None

    def undirected(self, how: b.LeadInto) -> None:
        if not self.is_first("leads", how.span):
            return
        told = len(self.terminals)
        wrong: tuple[str, str] | None = None
        if len(how.spots) != 2 and is_lost(self.line.span, self.layout.known.lost):
            return  # the other one may be what was lost
        if told != 2:
            wrong = (f"a {self.kind} has {told} leads that must be told apart", self.example())
        elif len(how.spots) != 2:
            wrong = (f"`{self.line.label.text}` has two leads", "name two spots: `leads into north 1 and north 2`")
        elif self.leads:
            wrong = ("its leads are told twice", "write `leads into ...`, or each lead by its name")
        if wrong is not None:
            self.layout.refuse(findings.lead_unclear(how.span, *wrong))
            return
        for written in how.spots:
            spot = self.layout.spot(written)
            if spot is not None:
                self.leads.append(Lead(None, spot, written.span))

    def lead(self, how: b.LeadInto) -> None:
        assert how.terminal is not None
        word = how.terminal.text
        if word not in self.terminals:
            self.layout.refuse(findings.unknown_word(word, how.terminal.span, (*self.terminals, "leads"),
                                                     f"as a lead of a {self.kind}"))  # fmt: skip
            return
        if "leads" in self.once:
            self.layout.refuse(findings.lead_unclear(how.span, "its leads are told twice",
                                                     "write `leads into ...`, or each lead by its name"))  # fmt: skip
            return
        if not self.is_first(word, how.span):
            return
        spot = self.layout.spot(how.spots[0])
        if spot is not None:
            self.leads.append(Lead(word, spot, how.span))

    def tie(self, how: b.TieDecl) -> None:
        width = self.layout.size(how.width, sizes.TIE, self.line.label.text)
        found = self.layout.points(how.first, how.second)
        if width is not None and found is not None:
            self.ties.append(Tie(width, found[0], found[1], how.span))

    def example(self) -> str:
        return "write each by its name: " + ", ".join(f"`{terminal} into ...`" for terminal in self.terminals)
