"""What the layouts of a circuit tell the catalogue of faults: neighbours, wires and cuts.

In: a circuit. Out: `Neighbours`, None where no layout makes the circuit. Names are the text's: `jumper from rail_west 5
to rail_east 1`, `cut from 185:82 mm to 185:116 mm`; of several boards a hole has its layout's name before it.

A design without layouts loads nothing of boards.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import TYPE_CHECKING

from shuntwise.bench.catalogue import Neighbours
from shuntwise.board.judging import Judgement, judged
from shuntwise.graph.circuit import Circuit, point_of

if TYPE_CHECKING:
    from shuntwise.board.forgotten import ForgottenCut, ForgottenWire
    from shuntwise.board.islands import Key


def neighbours_of(circuit: Circuit) -> Neighbours | None:
    """Which nets lie close together on the boards, and what their wires and cuts do."""
    judgement = judged(circuit)
    if judgement is None or not judgement.sound:
        return None
    from shuntwise.board.clearance import near
    from shuntwise.board.forgotten import cuts, wires

    # A net that only links lie on, left out, has no point that a part could tell.
    point = {net.name: net.attachments[0].point for net in circuit.nets.values() if net.attachments}
    close = {one.nets for one in near(judgement)} | set(_tags(circuit))
    return Neighbours(
        tuple((point[one], point[other]) for one, other in sorted(close) if {one, other} <= point.keys()),
        tuple((wire_name(judgement, one), tuple(point_of(*lead) for lead in one.leads)) for one in wires(judgement)),
        tuple(
            (cut_name(judgement, one), (point[one.nets[0]], point[one.nets[1]]))
            for one in cuts(judgement)
            if {*one.nets} <= point.keys()
        ),
    )


def _tags(circuit: Circuit) -> Iterator[tuple[str, str]]:
    """The nets of the two tags of each driver, input and posts, which lie beside each other off the boards."""
    for owner in (*(pair.name for pair in circuit.design.terminals), *circuit.design.drivers):
        plus, minus = sorted(circuit.pad(owner, sign) for sign in "+-")
        if plus != minus:
            yield plus, minus


def key_name(judgement: Judgement, key: Key) -> str:
    """A hole, tag or pad, with its board's name where there are several."""
    layout, hole = key
    return hole if not layout or len(judgement.layouts) == 1 else f"{layout}.{hole}"


def wire_name(judgement: Judgement, wire: ForgottenWire) -> str:
    """`jumper from north 1 to south 2`, `joint at lower 2 of the bus from lower 1 to lower 3`."""
    first, last = (key_name(judgement, wire.run.keys[end]) for end in (0, -1))
    word = "wire" if wire.run.kind == "lead out" else wire.run.kind
    whole = f"{word} from {first} to {last}"
    return whole if wire.joint is None else f"joint at {key_name(judgement, wire.joint)} of the {whole}"


def cut_name(judgement: Judgement, cut: ForgottenCut) -> str:
    """`cut from 185:82 mm to 185:116 mm`."""
    from shuntwise.board.writing import point_text

    on = f" on {cut.layout}" if len(judgement.layouts) > 1 else ""
    return f"cut from {point_text(cut.cut.start)} to {point_text(cut.cut.end)}{on}"
