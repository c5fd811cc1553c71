"""A syntax tree as a few lines of text, for tests to compare: each statement as it was understood."""

from __future__ import annotations

from collections.abc import Sequence

from shuntwise.syntax import board_tree as b
from shuntwise.syntax import box_tree as x
from shuntwise.syntax import tree as t


def outline(entries: tuple[t.Entry, ...]) -> list[str]:
    """Each statement spelled anew from its nodes, not from the text that it came from."""
    return [statement(entry) for entry in entries]


def statement(entry: t.Entry) -> str:
    match entry:
        case t.DesignTitle():
            return f'design "{entry.title.value}"'
        case t.AmplifierDecl():
            return f"amplifier {expr(entry.power)} into {expr(entry.load)}" + items(entry.items)
        case t.TerminalsDecl():
            return f"{'input' if entry.fed else 'posts'} {entry.name.text}"
        case t.ConnectorDecl():
            title = f' "{entry.title.value}"' if entry.title else ""
            pins = ", ".join(f"{pin.name.text} {pin.pad.text if pin.pad else 'unused'}" for pin in entry.pins)
            rest = f"through {entry.through.text}" if entry.through else f"{{ {pins} }}"
            return f"connector {entry.name.text}{title} {rest}"
        case t.DriverDecl():
            return f"driver {entry.name.text}" + value(entry.value) + items(entry.items)
        case t.PartDecl():
            return f"{entry.kind.text} {entry.name.text}" + value(entry.value) + items(entry.items)
        case t.CouplingDecl():
            return f"coupling {entry.first.text} and {entry.second.text} {expr(entry.value)}"
        case t.Testpoint():
            return f"testpoint {entry.node.text}"
        case t.BenchDecl():
            return "bench" + items(entry.items)
        case t.Let():
            return f"let {entry.name.text} = {expr(entry.value)}"
        case t.Walk():
            return stations(entry.stations)
        case t.Leg():
            return "leg " + " and ".join(driver.text for driver in entry.drivers) + body(entry.entries)
        case t.NetworkDecl():
            params = ", ".join(p.name.text + (f" = {expr(p.default)}" if p.default else "") for p in entry.params)
            ports = ", ".join(port.text for port in entry.ports)
            return f"network {entry.name.text} ({ports})" + (f" given {params}" if params else "") + body(entry.entries)
        case t.Use():
            return f"use {entry.network.text} as {entry.name.text}" + items(entry.items)
        case t.Include():
            return f'include "{entry.path.value}"' + (" from library" if entry.library else "")
        case t.Variant() | t.Choice() | t.Position():
            title = f' "{entry.title.value}"' if entry.title else ""
            return f"{type(entry).__name__.lower()} {entry.name.text}{title}" + body(entry.entries)
        case t.Set():
            return f"set {entry.target.text} = {expr(entry.value)}"
        case t.Fitting():
            return ("fit " if entry.fitted else "omit ") + " and ".join(target.text for target in entry.targets)
        case t.Expect():
            of = " of " + " and ".join(path.text for path in entry.subjects) if entry.subjects else ""
            return f"expect {entry.quantity.text}{of}" + "".join(clause(c) for c in entry.clauses)
        case t.Allow():
            on = f" on {entry.target.text}" if entry.target else ""
            only = " in " + " and ".join(path.text for path in entry.variants) if entry.variants else ""
            return f'allow {entry.finding.text}{on}{only} because "{entry.reason.value}"'
        case t.Limit():
            return f"limit {entry.finding.text} {expr(entry.value)}"
        case t.BoardDecl():
            title = f' "{entry.title.value}"' if entry.title else ""
            return f"board {entry.name.text}{title}" + lines(entry.lines)
        case t.LayoutDecl():
            alias = f" as {entry.alias.text}" if entry.alias else ""
            return f"layout on {entry.board.text}{alias}" + lines(entry.lines)


def box_outline(entries: Sequence[x.BoxLine]) -> list[str]:
    """Each line of a box's own file."""
    return [box_line(entry) for entry in entries]


def box_line(entry: x.BoxLine) -> str:
    match entry:
        case x.BoxHead():
            return f'box {entry.name.text} of "{entry.design.value}"'
        case x.InVariant():
            return f"variant {entry.name.text}"
        case t.BenchDecl():
            return statement(entry)
        case x.Measured():
            return f"measured {entry.label.text} {expr(entry.value)}" + items(entry.items)
        case x.ReadingDecl():
            where = f"at {entry.plus.text}" if entry.minus is None else f"{entry.plus.text} to {entry.minus.text}"
            frequency = f", {expr(entry.frequency)}" if entry.frequency else ""
            more = set_up(entry.loads, entry.into) + frequency
            return f"reading {entry.quantity.text} {where}, {more}: {expr(entry.value)}"
        case x.SweepDecl():
            return f'sweep "{entry.path.value}", {set_up(entry.loads, entry.into)}'
        case x.Beside():
            return f'beside "{entry.path.value}"'
        case x.Rework():
            return f'rework "{entry.what.value}"'
        case x.Remark():
            return f'note "{entry.text.value}"'


def set_up(loads: x.Loads, into: t.Path | None) -> str:
    return f"{loads.of.text} {loads.word.text}" + (f", into {into.text}" if into else "")


def lines(entries: Sequence[b.BoardLine | b.LayoutLine]) -> str:
    return " { " + " ; ".join(line(entry) for entry in entries) + " }"


def line(entry: b.BoardLine | b.LayoutLine) -> str:
    """A line of a board or a layout."""
    match entry:
        case b.Outline():
            return f"outline {point(entry.size)}"
        case b.Thickness():
            return f"thickness {expr(entry.value)}"
        case b.Copper():
            return f"copper{value(entry.thickness)} on {entry.side.text} side"
        case b.Seen():
            return f"seen from {entry.side.text} side"
        case b.CornerDecl():
            return f"corner {point(entry.at)} cut {expr(entry.cut)}"
        case b.AreaDecl():
            return f"area {entry.name.text} from {points(entry.corners)}"
        case b.TrackDecl():
            return f"track {expr(entry.width)} from {points(entry.points)}" + items(entry.items)
        case b.HolesDecl():
            word = ("tag" if entry.diameter is None else "hole") + ("s" if entry.number else "")
            number = f" {entry.number.text}" if entry.number else ""
            of = f" of {expr(entry.diameter)}" if entry.diameter is not None else ""
            where = f"from {points(entry.points)}" if entry.number else f"at {points(entry.points)}"
            return f"{word} {entry.name.text}{number}{of} {where}" + items(entry.items)
        case b.FixingDecl():
            return f"fixing {expr(entry.diameter)} at {point(entry.at)}" + items(entry.items)
        case b.CutDecl():
            return f"cut from {point(entry.start)} to {point(entry.end)}" + items(entry.items)
        case b.DrillDecl():
            area = f" in {entry.area.text}" if entry.area else ""
            return f"drill {entry.name.text} {expr(entry.diameter)} at {point(entry.at)}{area}" + items(entry.items)
        case b.WireDecl():
            joint = "--" if entry.kind == "jumper" else "to"
            return f"{entry.kind} {spot(entry.first)} {joint} {spot(entry.second)}" + items(entry.items)
        case b.PlaceDecl():
            where = f"at {point(entry.at)}" if entry.at is not None else "off board"
            side = f" on {entry.side.text} side" if entry.side else ""
            inner = " { " + ", ".join(how(one) for one in entry.how) + " }" if entry.how else ""
            return f"place {entry.label.text} {where}{side}{inner}"
        case b.Depth():
            return f"depth {expr(entry.value)}"


def how(entry: b.How) -> str:
    match entry:
        case b.AxisOf():
            return f"axis {expr(entry.value)}"
        case b.LeadInto():
            word = entry.terminal.text if entry.terminal else "leads"
            return f"{word} into " + " and ".join(spot(one) for one in entry.spots)
        case b.TieDecl():
            return f"tie {expr(entry.width)} from {point(entry.first)} to {point(entry.second)}"
        case b.Raised():
            return f"raised {expr(entry.value)}"
        case b.Note():
            return f'{entry.key.text} "{entry.text.value}"'


def spot(entry: b.SpotRef) -> str:
    return entry.place.text + (f" {entry.number.text}" if entry.number else "")


def point(entry: b.Point) -> str:
    return f"{entry.across.text}:{entry.up.text} {entry.unit.text}"


def points(entries: Sequence[b.Point]) -> str:
    return " to ".join(point(entry) for entry in entries)


def clause(entry: t.Clause) -> str:
    word = "" if entry.word == "is" else f" {entry.word}"
    return word + " " + " to ".join(expr(v) for v in entry.values)


def value(entry: t.Expr | None) -> str:
    return f" {expr(entry)}" if entry else ""


def items(entries: tuple[t.Item, ...]) -> str:
    return " { " + ", ".join(item(entry) for entry in entries) + " }" if entries else ""


def item(entry: t.Item) -> str:
    key = f"{entry.key.text} " if entry.key else ""
    return key + (f'"{entry.value.value}"' if isinstance(entry.value, t.Text) else expr(entry.value))


def body(entries: tuple[t.Entry, ...]) -> str:
    return " { " + " ; ".join(statement(entry) for entry in entries) + " }"


def stations(entries: tuple[t.Station, ...]) -> str:
    return " -- ".join(station(entry) for entry in entries)


def station(entry: t.Station) -> str:
    if isinstance(entry, t.Group):
        return "(" + " | ".join(stations(chain.stations) for chain in entry.chains) + ")"
    return entry.text


def expr(entry: t.Expr) -> str:
    match entry:
        case t.Number():
            return entry.number + (f" {entry.unit.text}" if entry.unit else "")
        case t.Code():
            return entry.text
        case t.Name():
            return entry.ident.text
        case t.Negate():
            return f"(-{expr(entry.operand)})"
        case t.Binary():
            return f"({expr(entry.left)} {entry.operator} {expr(entry.right)})"
        case t.LostExpr():
            return "(lost)"
