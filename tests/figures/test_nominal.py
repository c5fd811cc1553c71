"""Bands, their edges and the lattice, against closed forms and a plain scan of 30,000 points."""

from __future__ import annotations

import numpy as np
import pytest

from response.circuits import network
from shuntwise.figures.band import REFERENCE_HZ
from shuntwise.figures.nominal import Nominal
from shuntwise.response.measures import lattice
from shuntwise.response.solve import Solver

HIGH_PASS = ["V1 in 0", "C1 in d 10e-6", "R1 d 0 8"]
PEAK = ["V1 in 0", "L1 in d 1e-3", "C1 d 0 10e-6", "R1 d 0 40"]
TRAP = ["V1 in 0", "R2 in d 2", "R1 d 0 8", "L1 d e 1e-3", "C1 e 0 10e-6"]
BAND_PASS = ["V1 in 0", "C1 in b 40e-6", "L1 b d 0.3e-3", "R1 d 0 8"]


def circuit(lines: list[str]) -> Nominal:
    return Nominal(Solver(network(lines, ["w d 0"])))


def test_the_edge_of_a_first_order_high_pass() -> None:
    """1 + (f_c/f)^2 = 10^(dB/10) under the band's own level, f_c = 1/(2 pi R C)."""
    one = circuit(HIGH_PASS)
    corner = 1 / (2 * np.pi * 8 * 10e-6)
    for below in (3.0, 6.0):
        begins, ends, dips = one.edges("w", below)
        share = 10 ** ((below - one.band("w").reference_db) / 10) - 1
        assert begins == pytest.approx(corner / np.sqrt(share), rel=1e-8)
        assert ends is None and not dips


@pytest.mark.parametrize("lines", [HIGH_PASS, PEAK, TRAP, BAND_PASS], ids=["high-pass", "peak", "trap", "band"])
@pytest.mark.parametrize("below", [1.0, 3.0, 6.0, 9.0])
def test_edges_are_those_of_a_plain_scan(lines: list[str], below: float) -> None:
    """From the band's first point inwards to where the level is above the mark, then outwards to where it is not."""
    one = circuit(lines)
    freq = np.geomspace(20, 20e3, 30_001)
    level = 20 * np.log10(np.abs(one.solver.solve(freq).driver_voltage("w")))
    band, above = one.band("w"), level > one.band("w").reference_db - below
    first = int(np.searchsorted(freq, band.from_hz * (1 - 1e-9)))
    last = int(np.searchsorted(freq, band.to_hz * (1 + 1e-9))) - 1
    while not above[first]:
        first += 1
    while first >= 0 and above[first]:
        first -= 1
    while not above[last]:
        last -= 1
    while last < freq.size and above[last]:
        last += 1
    begins, ends, dips = one.edges("w", below)
    assert (begins is None) == (first < 0) and (ends is None) == (last == freq.size)
    assert begins is None or begins == pytest.approx(freq[first], rel=5e-4)
    assert ends is None or ends == pytest.approx(freq[last], rel=5e-4)
    assert dips == (not above[first + 1 : last].all())


def test_the_lattice_does_not_move_with_its_ends() -> None:
    """So what is seen in a band is seen in every wider one."""
    whole, part = lattice(20.0, 20e3), lattice(333.0, 4000.0)
    assert whole.size == 601 and whole[0] == 20.0 and whole[-1] == 20e3
    assert part[0] == 333.0 and part[-1] == 4000.0
    assert part[1:-1] == pytest.approx(whole[(whole > 333) & (whole < 4000)], rel=1e-12)
    assert whole[::5] == pytest.approx(np.array(REFERENCE_HZ), rel=1e-12)
    assert lattice(10.0, 40e3)[1:-1] == pytest.approx(20 * 10 ** (np.arange(-60, 661) / 200), rel=1e-12)
