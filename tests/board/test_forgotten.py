"""What comes of a forgotten wire or cut, against the comparison of the layout without it, which other tests judge."""

from __future__ import annotations

from dataclasses import replace

import pytest

from board.designs import EXAMPLES, laid_out
from shuntwise.board.compare import Comparison, Open, Short, compare
from shuntwise.board.forgotten import cuts, wires
from shuntwise.board.islands import islands
from shuntwise.board.judging import Judgement
from shuntwise.board.wires import key_of
from shuntwise.model.boards import Layout


def judgement(number: str) -> Judgement:
    path = next(path for path in EXAMPLES if path.name.startswith(number))
    return Judgement(laid_out(path).circuit)


def compared(judged: Judgement, layout: Layout) -> Comparison:
    return compare(judged.circuit, (layout,), islands((layout,)))


@pytest.mark.parametrize("number", ["04", "07", "11"])
def test_a_forgotten_jumper_opens_its_net(number: str) -> None:
    judged = judgement(number)
    (layout,) = judged.layouts
    found = [one for one in wires(judged) if one.joint is None]
    jumpers = [wire for wire in layout.wires if wire.kind == "jumper"]
    assert [one.run.kind for one in found].count("jumper") == len(jumpers) > 0
    for one in found:
        ends = {one.run.keys[0], one.run.keys[-1]}
        left = tuple(wire for wire in layout.wires if {key_of(wire.first), key_of(wire.second)} != ends)
        (opened,) = compared(judged, replace(layout, wires=left)).wiring
        assert isinstance(opened, Open)
        assert set(one.leads) in [set(group) for group in opened.groups]
        assert not {("input", "+"), ("input", "-")} & set(one.leads)


def test_a_joint_of_a_bus_takes_what_hangs_on_its_tag() -> None:
    """By hand: woofer- alone is on lower 2, and the jumper to the rest of the return begins on lower 3."""
    found = {one.joint[1]: set(one.leads) for one in wires(judgement("04")) if one.joint is not None}
    assert found["lower 2"] == {("woofer", "-")}
    assert found["lower 11"] == {("tweeter", "-")}
    assert {("mid", "+"), ("C1", "end"), ("L4", "end")} < found["lower 3"]


@pytest.mark.parametrize("number", ["07", "11"])
def test_a_cut_that_is_not_made_shorts_its_nets(number: str) -> None:
    judged = judgement(number)
    (layout,) = judged.layouts
    found = list(cuts(judged))
    assert len(found) == len(layout.cuts) > 0
    for one in found:
        left = tuple(cut for cut in layout.cuts if cut is not one.cut)
        (short,) = compared(judged, replace(layout, cuts=left)).wiring
        assert isinstance(short, Short)
        assert sorted(short.nets) == sorted(one.nets)
