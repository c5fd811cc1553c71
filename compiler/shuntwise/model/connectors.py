"""Connectors on the box: pins and the pads that they are wired to.

In: the declarations, the pairs of posts that there are. Out: `Connector`s, those that link through with the pins of the
other; findings on what names nothing. Refuses to know what a pin should carry.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings
from shuntwise.model.design import Connector, Pin, Terminals
from shuntwise.syntax import tree as t


def read_connectors(
    declared: Mapping[str, t.ConnectorDecl], terminals: Sequence[Terminals], doubtful: Collection[str]
) -> tuple[tuple[Connector, ...], list[Diagnostic]]:
    """The connectors in the order in which they are written; one through an unknown other is left out."""
    said: list[Diagnostic] = []
    posts = [pair.name for pair in terminals]
    found: dict[str, Connector] = {}
    for name, entry in declared.items():
        pins = tuple(_pins(entry, posts, doubtful, said))
        through = entry.through.text if entry.through is not None else None
        title, refused = entry.title.value if entry.title else None, len(pins) < len(entry.pins)
        found[name] = Connector(name, title, pins, through, entry.name.span, refused)
    for name, entry in declared.items():
        if entry.through is None:
            continue
        other = found.get(entry.through.text)
        if other is None or other.through is not None:
            own = [known for known, connector in found.items() if connector.through is None]
            if entry.through.text not in doubtful:
                said.append(findings.unknown_name(entry.through.text, entry.through.span, own,
                                                  "no connector of this name with pins of its own"))  # fmt: skip
            del found[name]
        else:
            found[name] = Connector(name, found[name].title, other.pins, other.name, entry.name.span)
    return tuple(found.values()), said


def _pins(
    entry: t.ConnectorDecl, posts: Collection[str], doubtful: Collection[str], said: list[Diagnostic]
) -> Iterator[Pin]:
    for pin in entry.pins:
        pad = pin.pad
        if pad is not None and pad.owner.text not in posts:
            if pad.owner.text not in doubtful:
                said.append(findings.unknown_name(pad.owner.text, pad.owner.span, posts, "no input or posts"))
            continue
        yield Pin(pin.name.text, pad.text if pad is not None else None, pin.span)
