"""The parts list: what is bought for a board and for a batch of them, equal parts together.

In: a design. Out: lines of the list, as blocks of a page and as CSV. Parts that differ in value, rating, construction
or price stand apart; bodies, masses and notes do not part them. It refuses to know dealers and currencies.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from shuntwise.diagnostics.wording import listed
from shuntwise.documents.page import Group, Heading, Listing, Paragraph, Table
from shuntwise.documents.read_aloud import described, whole
from shuntwise.documents.table import cell
from shuntwise.model.design import Design, Part, Quantity
from shuntwise.model.kinds import BODY, KINDS


@dataclass(frozen=True)
class Line:
    """Equal parts. `more` is what is stated beside value, tolerance and ratings; `price` is that of one, if stated."""

    labels: tuple[str, ...]
    what: str
    value: str
    tolerance: str
    ratings: str
    more: str
    price: float | None
    notes: tuple[str, ...]


def parts_list(design: Design) -> tuple[Line, ...]:
    """By kind, then by value: the parts that are fitted, and those that a position of a choice fits."""
    groups: dict[tuple[object, ...], list[Part]] = {}
    for part in bought(design):
        groups.setdefault(_alike(part), []).append(part)
    order = list(KINDS)
    ranked = sorted(groups.values(), key=lambda parts: (order.index(parts[0].kind), _number(parts[0].value)))
    return tuple(map(_line, ranked))


def bought(design: Design) -> list[Part]:
    contacts = {label for choice in design.choices for label in choice.contacts}
    return [part for part in design.parts.values() if part.fitted or part.label in contacts]


def _alike(part: Part) -> tuple[object, ...]:
    stated = {name: _number(quantity) for name, quantity in _bought_by(part).items()}
    return part.kind, part.construction, _number(part.value), tuple(sorted(stated.items()))


def _bought_by(part: Part) -> Mapping[str, Quantity]:
    """What a part is told apart by: all that is stated but its body; of a link its length is what it is."""
    body = {attribute.name for attribute in BODY} - {"price"} - ({"length"} if KINDS[part.kind].wire else set())
    return {name: quantity for name, quantity in part.quantities.items() if name not in body}


def _number(quantity: Quantity | None) -> float:
    return 0.0 if quantity is None else float(f"{quantity.value:.9g}")


def _line(parts: Sequence[Part]) -> Line:
    part = parts[0]
    kind, stated = KINDS[part.kind], _bought_by(part)
    rated = [attribute.name for attribute in kind.bare if attribute.name != "tolerance"]
    others = [name for name in stated if name not in (*rated, "tolerance", "price")]
    price = stated.get("price")
    return Line(
        tuple(one.label for one in parts),
        f"{part.construction or ''} {part.kind}".strip(),
        "" if part.value is None else whole(part.value),
        f"{100 * stated['tolerance'].value:.3g} %" if "tolerance" in stated else "",
        ", ".join(whole(stated[name]) for name in rated if name in stated),
        ", ".join(f"{name.replace('_', ' ')} {whole(stated[name])}" for name in others),
        None if price is None else price.value,
        tuple(note for one in parts for note in one.notes),
    )


# --- on pages


def pages(design: Design, boards: int = 1) -> tuple[Group, ...]:
    """The list with its totals, what is left out, and the notes on parts."""
    lines = parts_list(design)
    if not lines:
        return ((Paragraph("There are no parts."),),)
    priced, batch = any(line.price is not None for line in lines), boards > 1
    heads = ("Parts", "a board", *([f"{boards} boards"] * batch), "what", "value", "tolerance", "ratings", "more",
             *(["price of one", "of all"] * priced))  # fmt: skip
    rows = []
    for line in lines:
        prices = [_money(line.price), _money(_together(line, boards))] * priced
        told = (line.what, line.value, line.tolerance, line.ratings, line.more)
        rows.append((listed_labels(line), *_counts(len(line.labels), boards), *told, *prices))
    count = sum(len(line.labels) for line in lines)
    sums = [_together(line, boards) for line in lines]
    total = sum(amount for amount in sums if amount is not None)
    rows.append(("Together", *_counts(count, boards), "", "", "", "", "", *(["", _money(total)] * priced)))
    before = 2 + batch
    table = Table(heads, tuple(rows), frozenset({0, *range(before, before + 5)}))
    return ((table, *_unpriced(lines, priced)), _left_out(design), _notes(design))


def _unpriced(lines: Sequence[Line], priced: bool) -> Group:
    without = [label for line in lines if line.price is None for label in line.labels]
    return (Paragraph(f"Without a price, and not in the sum: {listed(without)}."),) if priced and without else ()


def _left_out(design: Design) -> Group:
    here = {part.label for part in bought(design)}
    entries = tuple(f"{part.label}: {described(part)}" for part in design.parts.values() if part.label not in here)
    return (Heading("Left out here"), Listing(entries)) if entries else ()


def _notes(design: Design) -> Group:
    entries = tuple(f"{part.label}: {note}" for part in bought(design) for note in part.notes)
    return (Heading("Notes"), Listing(entries)) if entries else ()


def listed_labels(line: Line) -> str:
    return ", ".join(line.labels)


def _counts(count: int, boards: int) -> list[str]:
    return [str(count), *([str(count * boards)] if boards > 1 else [])]


def _together(line: Line, boards: int) -> float | None:
    return None if line.price is None else line.price * len(line.labels) * boards


def _money(amount: float | None) -> str:
    return "" if amount is None else f"{amount:.2f}"


# --- as CSV


def as_csv(design: Design, boards: int = 1) -> str:
    """The list in the form of RFC 4180, no cell a formula: one record to each line, without totals."""
    heads = ("parts", "per board", "boards", "together", "what", "value", "tolerance", "ratings", "more",
             "price of one", "price together", "notes")  # fmt: skip
    records: list[Iterable[str]] = [heads]
    for line in parts_list(design):
        count = len(line.labels)
        records.append(
            (listed_labels(line), str(count), str(boards), str(count * boards), line.what, line.value, line.tolerance,
             line.ratings, line.more, _money(line.price), _money(_together(line, boards)), "; ".join(line.notes))
        )  # fmt: skip
    return "".join(",".join(map(cell, record)) + "\r\n" for record in records)
