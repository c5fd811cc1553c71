"""What a builder asks, on networks where the answer is known in closed form."""

import math

import numpy as np
import pytest

from response.circuits import check_circuits, network
from shuntwise.figures.figure import Slope
from shuntwise.figures.nominal import Nominal
from shuntwise.response import measures
from shuntwise.response.sensitivity import group_delay
from shuntwise.response.solve import Solver, solve

R, F = 8.0, 2000.0
OMEGA = 2 * math.pi * F


def butterworth_2() -> Solver:
    """Second-order Butterworth two-way at 2 kHz: L = R sqrt(2)/omega, C = 1/(R omega sqrt(2))."""
    henry, farad = R * math.sqrt(2) / OMEGA, 1 / (R * OMEGA * math.sqrt(2))
    lines = ["V1 in 0", f"L1 in w {henry!r}", f"C1 w 0 {farad!r}", f"C2 in t {farad!r}", f"L2 t 0 {henry!r}"]
    return Solver(network([*lines, f"Rw w 0 {R}", f"Rt t 0 {R}"], ["woofer w 0", "tweeter t 0"]))


def test_grid_holds_both_ends_and_steps_evenly() -> None:
    freq = measures.grid(20, 20e3, 100)
    assert (freq[0], freq[-1], freq.size) == (20, 20e3, 301)
    assert np.allclose(np.diff(np.log(freq)), np.log(10) / 100)
    for bad in ((0, 10), (10, 10), (20, 10), (1, np.inf)):
        with pytest.raises(ValueError, match="band"):
            measures.grid(*bad)


def test_drivers_cross_where_the_alignment_says() -> None:
    """Both sections of a Butterworth pair are at 1/sqrt(2) at f."""
    (crossing,) = measures.crossings(butterworth_2(), "woofer", "tweeter", 20, 20e3)
    assert crossing == pytest.approx(F, rel=1e-9)
    assert measures.level_db(butterworth_2(), "woofer", crossing) == pytest.approx(-10 * np.log10(2), abs=1e-8)
    assert measures.crossings(butterworth_2(), "woofer", "tweeter", 20, 1e3) == ()
    assert measures.crossings(butterworth_2(), "woofer", "woofer", 1e3, 3e3) == ()  # neither passes the other
    # A grid point that happens to be the crossing itself.
    (crossing,) = measures.crossings(butterworth_2(), "woofer", "tweeter", F / 2, F * 2)
    assert crossing == pytest.approx(F, rel=1e-9)


def test_corners_of_a_butterworth_section() -> None:
    """|H|^2 = 1/(1 + x^4): -3 dB below the level given, and -6 dB, at x = (10^(dB/10) - 1)^(1/4)."""
    solver = butterworth_2()
    for below in (3.0, 6.0):
        x = (10 ** (below / 10) - 1) ** 0.25
        (corner,) = measures.corners(solver, "woofer", below, 100, 20e3, reference_db=0.0)
        assert corner == pytest.approx(F * x, rel=1e-8)
        (corner,) = measures.corners(solver, "tweeter", below, 100, 20e3, reference_db=0.0)
        assert corner == pytest.approx(F / x, rel=1e-8)


def test_slopes_of_a_butterworth_section() -> None:
    """Far above f 12 dB/octave; anywhere -20 lg 2 (2 x^4/(1 + x^4))."""
    solver = butterworth_2()
    assert Slope(("woofer",), 10e3, 20e3).nominal(Nominal(solver)) == pytest.approx(
        -10 * np.log10((1 + 10.0**4) / (1 + 5.0**4)), abs=1e-9
    )
    for x in (0.3, 1.0, 4.0):
        exact = -20 * np.log10(2) * 2 * x**4 / (1 + x**4)
        assert measures.local_slope_db_per_octave(solver, "woofer", F * x) == pytest.approx(exact, abs=1e-9)


def test_least_impedance_of_a_series_resonance() -> None:
    """R + s L + 1/(s C) is least, and R, at resonance."""
    solver = Solver(network(["V1 in 0", "R1 in a 3.3", "L1 a b 1e-3", "C1 b 0 10e-6"]))
    least = measures.least_impedance(solver, "V1", 20, 20e3)
    assert least.ohm == pytest.approx(3.3, rel=1e-12)
    assert least.freq_hz == pytest.approx(1 / (2 * np.pi * 1e-4), rel=1e-6)
    at_the_end = measures.least_impedance(solver, "V1", 5e3, 20e3)
    assert at_the_end.freq_hz == pytest.approx(5e3, rel=1e-7)


def test_bare_series_resonances_are_found_beside_other_legs() -> None:
    """f = 1 / (2 pi sqrt(L C)) of each lossless shunt (any textbook); a trap of L and C side by side is none."""
    lines = ["V1 in 0", "L1 in a 1e-3", "C1 a 0 10e-6", "L2 in b 0.2e-3", "C2 b 0 4.7e-6", "R3 in 0 8"]
    wanted = [1 / (2 * math.pi * math.sqrt(lc)) for lc in (1e-3 * 10e-6, 0.2e-3 * 4.7e-6)]
    freq_hz = measures.grid(20, 20e3, 160)
    found = measures.bare_resonances(Solver(network(lines)), "V1", freq_hz, {})
    assert found == pytest.approx(wanted, rel=1e-9)
    damped = [*lines[:2], "C1 a x 10e-6", "Rx x 0 1e-3", *lines[3:]]
    assert measures.bare_resonances(Solver(network(damped)), "V1", freq_hz, {}) == pytest.approx(wanted[1:], rel=1e-9)
    trap = ["V1 in 0", "L1 in a 1e-3", "C1 in a 10e-6", "R1 a 0 8"]
    assert measures.bare_resonances(Solver(network(trap)), "V1", freq_hz, {}) == ()
    lossless_trap = ["V1 in 0", "L1 in a 1e-3", "C1 in a 10e-6", "L2 a 0 1e-3"]
    above = 1 / (2 * math.pi * math.sqrt(0.5e-3 * 10e-6))
    found = measures.bare_resonances(Solver(network(lossless_trap)), "V1", freq_hz, {"L2": [1e-3]})
    assert found == pytest.approx([above], rel=1e-9)


def test_level_and_peak() -> None:
    """The parallel resonance of L and C behind R: at its peak the whole source voltage."""
    solver = Solver(network(["V1 in 0", "R1 in a 100", "L1 a 0 1e-3", "C1 a 0 10e-6"], ["d a 0"]))
    freq_hz, level = measures.greatest_level(solver, "d", 100, 20e3)
    assert level == pytest.approx(0, abs=1e-10) and freq_hz == pytest.approx(1 / (2 * np.pi * 1e-4), rel=1e-5)
    x = 2 * np.pi * 5000.0
    exact = 1 / (1 + 100 * (1 / (1j * x * 1e-3) + 1j * x * 10e-6))
    assert measures.level_db(solver, "d", 5000.0) == pytest.approx(20 * np.log10(abs(exact)), abs=1e-12)


def test_group_delay_of_a_first_order_section() -> None:
    """tau/(1 + (omega tau)^2) for R-C; the same as a central difference of the phase, which is good to 1e-8."""
    lines = ["V1 in 0", "R1 in a 8", "C1 a 0 20e-6"]
    freq = np.geomspace(20, 20e3, 30)
    delay = group_delay(solve(network(lines, ["d a 0"]), freq), "d")
    tau, omega = 160e-6, 2 * np.pi * freq
    assert np.allclose(delay, tau / (1 + (omega * tau) ** 2), rtol=1e-13, atol=0)


def test_group_delay_agrees_with_a_difference() -> None:
    """On the coupled check circuit, where no closed form is at hand."""
    circuit = check_circuits()["N2"]
    circuit = type(circuit)(circuit.elements, circuit.couplings, circuit.feeds, network("", ["d w 0"]).drivers)
    freq, step = np.geomspace(50, 15e3, 20), 1e-5
    delay = group_delay(solve(circuit, freq), "d")
    before, after = (solve(circuit, freq * (1 + sign * step)).driver_voltage("d") for sign in (-1, 1))
    difference = -np.angle(after / before) / (2 * step * 2 * np.pi * freq)
    assert np.allclose(delay, difference, rtol=1e-7, atol=1e-12)
