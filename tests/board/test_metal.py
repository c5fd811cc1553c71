"""Resistances of tracks: against hand calculation, the field of the copper, and a circuit simulator."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from math import dist

import numpy as np
import pytest
from scipy import sparse
from scipy.sparse.linalg import spsolve

from board.designs import EXAMPLES, laid_out
from board.layouts import cut, hole, layout, rectangle, track
from engines.installed import needs
from shuntwise.board.copper import copper_of
from shuntwise.board.judging import Judgement
from shuntwise.board.metal import strip_ohm
from shuntwise.board.strips import strips
from shuntwise.board.touching import touching
from shuntwise.engines.crosscheck import crosscheck
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.model.boards import Layout
from shuntwise.network import straps
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep

CELL = 0.125


def test_a_strip_of_copper() -> None:
    """rho l / (w t), any handbook; and 0.49 mohm for a square of 35 um, as makers of boards state (from memory)."""
    by_hand = 1.7241e-8 * 0.1 / (4e-3 * 70e-6)
    assert strip_ohm(100, 4, 0.07) == pytest.approx(by_hand, rel=1e-12)
    assert strip_ohm(100, 4, 0.07) == pytest.approx(100 / 4 * 0.49e-3 / 2, rel=0.01)


def squares(made: Layout, names: Iterable[str]) -> Mapping[frozenset[str], float]:
    """Lengths over widths between bits, those in a row not put together."""
    copper = copper_of(made)
    wanted = [one for one in made.holes if one.name in names]
    found = strips(copper, touching(copper, made.holes), wanted)
    return {frozenset(strip.ends): strip.length / strip.width for strip in found.strips}


def between(made: Layout, one: str, other: str) -> float:
    """Squares from hole to hole through all strips, by nodal analysis."""
    copper = copper_of(made)
    wanted = [each for each in made.holes if each.name in (one, other)]
    found = strips(copper, touching(copper, made.holes), wanted)
    bits = sorted({end for strip in found.strips for end in strip.ends})
    matrix = np.zeros((len(bits), len(bits)))
    for strip in found.strips:
        a, b = (bits.index(end) for end in strip.ends)
        matrix[[a, b], [a, b]] += strip.width / strip.length
        matrix[[a, b], [b, a]] -= strip.width / strip.length
    current = np.zeros(len(bits))
    current[bits.index(found.bit[one])], current[bits.index(found.bit[other])] = 1.0, -1.0
    volts = np.linalg.lstsq(matrix, current, rcond=None)[0]
    return float(volts @ current)


def test_a_track_is_met_along_its_axis() -> None:
    """By hand: an area up to 20, a hole at 50, a ring of 6 at 80; the end at 100 leads nowhere."""
    ring = hole("b", 80, 10, ring=6.0)
    made = layout(rectangle("west", 0, 5, 20, 15), track(2, (10, 10), (100, 10)), hole("a", 50, 10), ring)
    assert squares(made, "ab") == pytest.approx(
        {frozenset(("the area west", "a")): 15.0, frozenset(("a", "b")): 13.5}, rel=1e-6
    )


def test_a_cut_parts_a_track_or_leaves_a_neck() -> None:
    """By hand: a cut 1 mm wide through three quarters of a track of 4 mm leaves a neck of 1 mm."""
    ends = [hole("a", 10, 10), hole("b", 50, 10)]
    whole = layout(track(4, (10, 10), (50, 10)), *ends)
    assert between(whole, "a", "b") == pytest.approx(10)
    neck = layout(*whole.board.tracks, *ends, cuts=[cut((30, 12), (30, 9), 1.0)])
    assert between(neck, "a", "b") == pytest.approx(39 / 4 + 1, rel=0.02)
    parted = layout(*whole.board.tracks, *ends, cuts=[cut((30, 13), (30, 7), 1.0)])
    assert squares(parted, "ab") == {}


def test_a_thicket_of_tracks_is_one_potential() -> None:
    """A stranger's file: 150 tracks that all cross each other cost no time, and make no network of 11,000 joints."""
    thicket = [track(0.2, (10 + n / 2, 5), (90 - n / 2, 75)) for n in range(150)]
    assert squares(layout(*thicket, hole("a", 10, 5), hole("b", 90, 75)), "ab") == {}


def test_tracks_that_branch_cross_and_turn_against_the_field() -> None:
    """The potential equation on a grid, where current comes and goes by rings: no strip is assumed there.

    A corner is half a square where the strips count one (F. E. Terman, Radio Engineers' Handbook, from memory: 0.56).
    """
    made = layout(
        track(3, (10, 10), (60, 10), (60, 40)),
        track(2, (30, 10), (30, 40), (90, 40)),
        track(2, (45, 5), (45, 45)),
        hole("a", 10, 10, ring=6.0),
        hole("b", 90, 40, ring=6.0),
    )
    assert between(made, "a", "b") == pytest.approx(_field(made, "a", "b"), rel=0.04)


def _field(made: Layout, one: str, other: str) -> float:
    """Squares from ring to ring: five-point differences on cells of CELL mm, a ring being one node."""
    across, up = (np.arange(CELL / 2, size, CELL) for size in (made.board.width, made.board.height))
    x, y = np.meshgrid(across, up, indexing="ij")
    copper = np.zeros_like(x, dtype=bool)
    for strip in made.board.tracks:
        for (x0, y0), (x1, y1) in zip(strip.points, strip.points[1:], strict=False):
            part = ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / dist((x0, y0), (x1, y1)) ** 2
            part = np.clip(part, 0, 1)
            copper |= np.hypot(x - x0 - part * (x1 - x0), y - y0 - part * (y1 - y0)) <= strip.width / 2
    number = np.where(copper, 0, -1)
    for at, name in ((1, one), (2, other)):
        ring = made.board.hole[name]
        number[np.hypot(x - ring.at[0], y - ring.at[1]) <= ring.ring / 2] = at
    free = number == 0
    number[free] = np.arange(3, 3 + np.count_nonzero(free))
    ends = []
    for a, b in ((number[1:], number[:-1]), (number[:, 1:], number[:, :-1])):
        both = (a >= 0) & (b >= 0) & (a != b)
        ends.append(np.stack((a[both], b[both])))
    a, b = np.concatenate(ends, axis=1) - 1
    size = int(number.max())
    ones = np.ones(len(a))
    links = sparse.coo_matrix((ones, (a, b)), shape=(size, size))
    links = (links + links.T).tocsr()
    matrix = sparse.diags(np.asarray(links.sum(axis=1)).ravel()) - links
    current = np.zeros(size - 1)
    current[0] = 1.0
    return float(spsolve(matrix.tocsr()[[0, *range(2, size)]][:, [0, *range(2, size)]], current)[0])


@needs(NGSPICE)
def test_a_board_with_tracks_in_a_simulator() -> None:
    """The harbour stage on its board: tracks, areas and wires."""
    (harbour,) = (path for path in EXAMPLES if path.stem.startswith("13"))
    laid = laid_out(harbour)
    metal = Judgement(laid.circuit).metal
    network = lower(laid.circuit)
    assert metal is not None and isinstance(network, Network)
    tracks = {strap.name: strap.ohm for strap in metal.straps if ": track " in strap.name}
    # By hand: feed 3 at 120 mm, feed 7 at 320 mm of a track of 6 mm, 70 um.
    assert tracks["trestle: track feed 3 to feed 7"] == pytest.approx(1.7241e-8 * 0.2 / (6e-3 * 70e-6), rel=1e-9)
    check = crosscheck(straps.laid_out(network, metal), Sweep(20.0, 20000.0, 3), NGSPICE)
    assert check.passed


def test_parts_left_over_do_not_hide_the_wires() -> None:
    """The village hall in its usual position: a part that lies on the board is not fitted."""
    (hall,) = (path for path in EXAMPLES if path.stem.startswith("16"))
    metal = Judgement(laid_out(hall).circuit).metal
    assert metal is not None and any("lead out" in strap.name for strap in metal.straps)
