"""Collected -> Design: names resolved, values typed, networks put in, one variant chosen.

In: the entries of all files. Out: a `Design` and the findings. It goes on after an error with what is
sound: a part whose value was refused keeps its place in the wiring, a walk with an unknown station
keeps the others. Refuses to know what is joined to what.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings
from shuntwise.model.changes import Changes
from shuntwise.model.components import read_amplifier, read_driver, read_instruments, read_part
from shuntwise.model.connectors import read_connectors
from shuntwise.model.coupling import kept_couplings, read_couplings
from shuntwise.model.declarations import Declarations, declare, fits, positions_of
from shuntwise.model.design import (
    Choice,
    Design,
    Driver,
    Leg,
    NodeStop,
    Part,
    Quantity,
    Terminals,
    VariantName,
    all_stops,
)
from shuntwise.model.evaluate import Scope
from shuntwise.model.include import Collected
from shuntwise.model.intent import read_expectations, read_limits, read_waivers
from shuntwise.model.repeated import together
from shuntwise.model.uses import Uses
from shuntwise.model.variants import at_ends, in_force, split
from shuntwise.model.voice_coils import coils, wired
from shuntwise.model.wiring import RETURN_WORDS, Place, Wiring, resolve_walks
from shuntwise.syntax import tree as t

if TYPE_CHECKING:
    from shuntwise.model.boards import Board, Layout

AT_KNOB_ENDS = ("impedance", "polarity")
"""What is expected of these holds wherever an attenuator stands; of the rest, where the text says that it stands."""


@dataclass(frozen=True)
class Catalogue:
    """What the checks offer: names that may be waived, and the limits that may be set."""

    waivable: Collection[str] = ()
    limits: Mapping[str, u.Dimension] = field(default_factory=dict)


def resolve(
    collected: Collected,
    *,
    variant: str | None = None,
    settings: Sequence[t.Set] = (),
    catalogue: Catalogue = Catalogue(),
) -> tuple[Design, tuple[Diagnostic, ...]]:
    """One design, or one variant of it with `settings` (tried values) laid over it.

    What `variant` may be is told by `variants.is_known` of the design itself; what is unknown in it is passed over.
    """
    only, moved = split(variant)
    d, diagnostics = declare(collected.entries, only, moved, settings)
    changes, doubtful = Changes(d.sets, d.fittings), _doubtful(collected, d)
    scope = Scope(
        changes.lets({name: let.value for name, let in d.lets.items()}),
        diagnostics,
        parts=(*d.parts, *d.drivers),
        doubtful=doubtful,
    )
    for let in d.lets.values():  # so that a fault in a value that nothing uses is found too
        scope.look_up(let.name)
    terminals, reserved = read_terminals(d)
    connectors, unplugged = read_connectors(d.connectors, terminals, doubtful)
    declared = [read_driver(entry, scope, changes, collected.attached) for entry in d.drivers.values()]
    drivers = {coil.name: coil for driver in declared for coil in coils(driver, scope)}
    amplifier = read_amplifier(d.amplifier, scope, changes) if d.amplifier else None
    instruments = read_instruments(d.bench, scope, changes)
    parts = {label: read_part(entry, label, scope, changes) for label, entry in d.parts.items()}
    own, impossible = read_couplings(d.couplings, "", scope, parts, d.uses, doubtful)
    uses = Uses(d.networks, changes, diagnostics, parts, doubtful, own)
    for use in d.uses.values():
        uses.put_in(use, "", scope)
    doubtful = uses.doubtful
    ends = {label: end for label, end in moved.items() if label not in d.choices}
    parts |= at_ends(parts, ends)
    legs, walks, unknown = read_legs(d, drivers, doubtful)
    wirings = (*uses.wirings, resolve_walks(walks, _place(d, terminals, drivers, uses)))
    declared_drivers, drivers = drivers, wired(drivers, {stop.node for wiring in wirings for stop in _nodes(wiring)})
    legs = tuple(_without(leg, declared_drivers.keys() - drivers.keys()) for leg in legs)
    node_spans = {node: tuple(spans) for wiring in wirings for node, spans in wiring.node_spans.items()}
    couplings, lost = kept_couplings(uses.couplings, parts, doubtful)
    values = (*parts, *drivers, *d.lets, *uses.parameters, *d.choices, "amplifier", "bench")
    diagnostics += [
        *reserved,
        *unplugged,
        *impossible,
        *unknown,
        *(finding for wiring in wirings for finding in wiring.diagnostics),
        *_unknown_testpoints(d, node_spans, doubtful),
        *changes.unused(values, (*parts, *uses.instances), doubtful),
        *lost,
    ]
    boards, layouts = _boards(d, collected, terminals, declared_drivers, parts, scope)
    subjects = {*parts, *drivers, *node_spans, *uses.instances, *(pair.name for pair in terminals), *d.connectors}
    subjects |= {*boards, *(layout.name for layout in layouts)}
    inputs = [pair.name for pair in terminals if pair.fed]
    design = Design(
        source=collected.source,
        title=d.title.title.value if d.title else None,
        amplifier=amplifier,
        terminals=terminals,
        drivers=drivers,
        parts=parts,
        couplings=couplings,
        legs=legs,
        walks=tuple(walk for wiring in wirings for walk in wiring.walks),
        testpoints={name: entry.node.span for name, entry in d.testpoints.items()},
        node_spans=node_spans,
        expectations=tuple(
            line
            for line in read_expectations(d.expects, drivers, inputs, doubtful, scope)
            if not ends or line.quantity in AT_KNOB_ENDS
        ),
        waivers=(),
        limits=read_limits(d.limits.values(), dict(catalogue.limits), scope),
        variants=tuple(
            VariantName(name, entry.title.value if entry.title else None, entry.name.span)
            for name, entry in d.variants.items()
        ),
        variant=variant,
        instances=uses.instances,
        network_of=uses.network_of,
        instance_spans=uses.instance_spans,
        values=_plain({**{name: scope.known.get(name) for name in d.lets}, **uses.arguments}),
        doubtful=doubtful,
        meant=frozenset().union(*(wiring.meant for wiring in wirings)),
        lost_wiring=d.stray_walks or bool(collected.lost) or any(wiring.lost for wiring in wirings),
        unread=isinstance(doubtful, AnyName),
        choices=_choices(d),
        connectors=connectors,
        knob_ends=ends,
        boards=boards,
        layouts=layouts,
        instruments=instruments,
    )
    waivers = read_waivers(d.allows, subjects, catalogue.waivable, doubtful, design, scope)
    here = in_force(design)
    holding = tuple(w for w in waivers if not w.variants or any(here.issuperset(v.split("+")) for v in w.variants))
    return replace(design, waivers=holding), together(diagnostics)


def _boards(
    d: Declarations,
    collected: Collected,
    terminals: Sequence[Terminals],
    drivers: Collection[str],
    parts: Mapping[str, Part],
    scope: Scope,
) -> tuple[Mapping[str, Board], tuple[Layout, ...]]:
    """The boards and layouts; most texts have none, and load nothing of them."""
    if not d.boards and not d.layouts:
        return {}, ()
    from shuntwise.model.board_text import read_boards
    from shuntwise.model.layout_text import Known, Layer, read_layouts

    boards = read_boards(d.boards, collected.lost, scope)
    kinds, owners = {label: part.kind for label, part in parts.items()}, (*(pair.name for pair in terminals), *drivers)
    known = Known(kinds, owners, d.boards, collected.lost)
    return boards, read_layouts([Layer(entry, number) for number, entry in d.layouts], boards, known, scope)


def _choices(d: Declarations) -> tuple[Choice, ...]:
    """The choices that can be made, each in its position."""
    return tuple(
        Choice(
            name,
            entry.title.value if entry.title else None,
            tuple(
                VariantName(position.name.text, position.title.value if position.title else None, position.name.span)
                for position in positions_of(entry).values()
            ),
            d.chosen[name],
            frozenset(target.text for position in positions_of(entry).values() for target in fits(position)),
            entry.name.span,
        )
        for name, entry in d.choices.items()
        if name in d.chosen
    )


def _plain(values: Mapping[str, Quantity | None]) -> dict[str, Quantity]:
    """Those that are written as one number, in the text of the design or of what it includes."""
    written = {name: value for name, value in values.items() if value is not None}
    return {name: value for name, value in written.items() if re.fullmatch(r"[\d.]+ ?[^\W\d_]*", value.text)}


class AnyName(frozenset[str]):
    """All names there are: what a file that could not be read may have declared."""

    def __contains__(self, name: object) -> bool:
        return True

    def __or__(self, other: object) -> AnyName:
        return self


def _doubtful(collected: Collected, declarations: Declarations) -> frozenset[str]:
    """The words in lost text: nothing is said of what bears such a name."""
    if any(lost.whole_file for lost in collected.lost):
        return AnyName()
    return frozenset(declarations.stray_words).union(*(lost.words for lost in collected.lost))


def read_terminals(declarations: Declarations) -> tuple[tuple[Terminals, ...], list[Diagnostic]]:
    """Declared inputs and posts; where no input is declared there is one, called `input`."""
    said: list[Diagnostic] = []
    declared = tuple(Terminals(name, entry.fed, entry.span) for name, entry in declarations.terminals.items())
    for pair in declared:
        if pair.name in RETURN_WORDS and pair.span is not None:
            said.append(
                findings.error(
                    "reserved-name",
                    pair.span,
                    f"`{pair.name}` cannot name an input",
                    help="it is the word for the input's minus: choose another name",
                )
            )
    if any(pair.fed for pair in declared):
        return declared, said
    return (Terminals("input", True, None), *declared), said


def read_legs(
    declarations: Declarations, drivers: Mapping[str, Driver], doubtful: Collection[str]
) -> tuple[tuple[Leg, ...], list[tuple[t.Walk, int | None]], list[Diagnostic]]:
    """The legs, their walks with the number of the leg, and findings on drivers that there are not."""
    legs: list[Leg] = []
    walks: list[tuple[t.Walk, int | None]] = []
    said: list[Diagnostic] = []
    of: dict[str, list[str]] = {}  # the coils of each driver
    for driver in drivers.values():
        of.setdefault(driver.coil_of or driver.name, []).append(driver.name)
    for index, leg in enumerate(declarations.legs):
        said += [
            findings.unknown_name(word.text, word.span, of, "no driver of this name")
            for word in leg.drivers
            if word.text not in of and word.text not in doubtful
        ]
        fed = [(name, word.span) for word in leg.drivers for name in of.get(word.text, (word.text,))]
        legs.append(Leg(tuple(name for name, _ in fed), leg.span, tuple(span for _, span in fed)))
        walks += [(walk, index) for walk in leg.entries if isinstance(walk, t.Walk)]
    return tuple(legs), walks, said


def _without(leg: Leg, open_coils: Collection[str]) -> Leg:
    """The leg without voice coils that are left open."""
    kept = [(name, span) for name, span in zip(leg.drivers, leg.name_spans, strict=True) if name not in open_coils]
    return replace(leg, drivers=tuple(name for name, _ in kept), name_spans=tuple(span for _, span in kept))


def _nodes(wiring: Wiring) -> Iterator[NodeStop]:
    for walk in wiring.walks:
        yield from (stop for stop in all_stops(walk.stops) if isinstance(stop, NodeStop))


def _place(d: Declarations, terminals: Sequence[Terminals], drivers: Collection[str], uses: Uses) -> Place:
    """What the walks of the legs may go to and through."""
    return Place(
        paired={**{pair.name: "input" for pair in terminals}, **dict.fromkeys(drivers, "driver")},
        through=uses.through(d.parts, d.uses),
        named_terminals=uses.named_terminals(d.parts, d.uses),
        returns=tuple(pair.name for pair in terminals if pair.fed),
        doubtful=uses.doubtful | uses.refused(d.uses),
    )


def _unknown_testpoints(
    d: Declarations, node_spans: Collection[str], doubtful: Collection[str]
) -> Iterator[Diagnostic]:
    for name, testpoint in d.testpoints.items():
        if name not in node_spans and name not in doubtful:
            yield findings.unknown_name(name, testpoint.node.span, node_spans, "no node of this name")
