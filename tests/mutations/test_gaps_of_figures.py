"""Facts of figures, stress and builds that one changed line would break, each against a closed form."""

from __future__ import annotations

import numpy as np
import pytest

from rules.test_ratings import evidence_of
from shuntwise.api import load_text
from shuntwise.api import network as network_of
from shuntwise.figures.builds import crossings_of_builds, vertex_ohm
from shuntwise.figures.expected import proofs
from shuntwise.figures.figure import Level, search_hz
from shuntwise.figures.nominal import Nominal
from shuntwise.response.solve import Solver
from shuntwise.tolerance.grid import POINTS, grid


@pytest.mark.parametrize(("near_hz", "wanted"), [(10.0, (5.0, 20e3)), (1000.0, (20.0, 20e3)), (15e3, (20.0, 30e3))])
def test_a_crossing_is_looked_for_an_octave_beyond_where_it_should_be(
    near_hz: float, wanted: tuple[float, float]
) -> None:
    assert search_hz(near_hz) == pytest.approx(wanted)


def test_a_grid_has_its_points_and_each_point_asked_for_once() -> None:
    asked = [Level(("woofer",), freq) for freq in (20.0, 1234.5, 1234.5, 20e3)]
    found = grid(asked)
    assert len(grid([])) == POINTS and len(found) == POINTS + 1
    assert 1234.5 in found
    assert (np.diff(found) / found[1:] > 1e-6).all()


@pytest.mark.parametrize("crossing_hz", [105.0, 115.0, 300.0, 900.0, 990.0])
def test_the_points_around_a_crossing_are_those_about_it(crossing_hz: float) -> None:
    """A difference in dB that is a cubic of log frequency is met exactly by four points; by a fifth degree, nearly."""
    freq_hz = np.geomspace(100.0, 1000.0, 12)
    x = np.log(freq_hz / crossing_hz)
    decibel = 30 * x + 8 * x**3 + 4 * x**5
    square = (10 ** (decibel / 10))[:, None]
    found = crossings_of_builds(freq_hz, square, np.ones_like(square), 300.0)
    assert found == pytest.approx([crossing_hz], rel=1e-3)


@pytest.mark.parametrize(("vertex", "ohm"), [(8.9, 5.0), (8.4, 5.0), (0.6, 5.0), (4.3, 5.0)])
def test_a_vertex_is_found_beside_the_ends_of_the_band_as_well(vertex: float, ohm: float) -> None:
    """An impedance that is a parabola of log frequency: its vertex is exact between any two points."""
    ln = np.arange(11.0)
    impedance = ohm + 0.3 * (ln - vertex) ** 2
    square = (impedance**-2)[:, None]
    assert vertex_ohm(ln, square, square.argmax(axis=0)) == pytest.approx([ohm], rel=1e-9)


@pytest.mark.parametrize(("most", "met"), [("30 ohm", False), ("80 ohm", True)])
def test_impedance_below_is_the_greatest(most: str, met: bool) -> None:
    """At its resonance the driver has re (1 + qms/qes) = 6 x 9 = 54 ohm, and 6 ohm far from it."""
    made = load_text(
        "driver woofer 8 ohm { re 6 ohm, fs 60 Hz, qms 4, qes 0.5 }\nleg woofer {\n  input+ -- woofer+\n"
        f"  woofer- -- return\n}}\nexpect impedance below {most}\n"
    )
    ((wanted,),) = (proof.wanted for proof in proofs(made.design, ("input",)))
    ohm = wanted.figure.nominal(Nominal(Solver(network_of(made))))
    assert ohm == pytest.approx(54, rel=1e-4)
    assert bool(wanted.met(ohm)) == met


def test_only_the_coil_that_rings_is_told() -> None:
    """With the woofer off C1 and L1 short the input at 1.6 kHz; the coil before the tweeter carries what it drives."""
    evidence = evidence_of(
        "amplifier 100 W into 8 ohm { programme sine }\ndriver woofer 8 ohm\ndriver tweeter 8 ohm\n"
        "coil L1 1 mH\ncapacitor C1 10 uF\ncoil L2 1 uH\nleg woofer {\n  input+ -- L1 -- woofer+\n"
        "  woofer+ -- C1 -- return\n  woofer- -- return\n}\nleg tweeter {\n  input+ -- L2 -- tweeter+\n"
        "  tweeter- -- return\n}\n"
    )
    bare = evidence.stress.bare["woofer"]
    assert bare.freq_hz == pytest.approx(1 / (2 * np.pi * np.sqrt(1e-3 * 10e-6)), rel=1e-4)
    assert bare.coils == ("L1",)
