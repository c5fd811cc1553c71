"""Lowered drivers, solved as networks, against the closed forms of the literature."""

from __future__ import annotations

import csv
from collections import defaultdict
from pathlib import Path

import numpy as np
import pytest

from drivers.designs import error_of, free_air, network_of, one_driver, vented_box
from shuntwise.response.solve import solve

REFERENCE = Path(__file__).parents[1] / "reference"

# The parameters of 08_driver_parameters.toml (two invented drivers), as the language says them.
DRIVER_A = "re 5.8 ohm, fs 42 Hz, qms 4.2, qes 0.46"
DRIVER_B = "re 3.4 ohm, fs 780 Hz, qms 2.6, qes 1.4"
COILS = {
    ("A", "le"): "le 0.55 mH",
    ("A", "leach"): "semi_k 0.0155, semi_n 0.69",
    ("A", "wright"): "r_factor 0.0039, r_exponent 0.74, x_factor 0.0180, x_exponent 0.66",
    ("B", "le"): "le 0.05 mH",
    ("B", "leach"): "semi_k 0.0031, semi_n 0.72",
    ("B", "wright"): "r_factor 0.0009, r_exponent 0.75, x_factor 0.0036, x_exponent 0.69",
}


def reference() -> dict[tuple[str, str], dict[float, complex]]:
    """By driver and voice-coil model: ohm by frequency in hertz, from 20 Hz, where the fits begin.

    Source: 08_driver_impedance.csv, recomputed from the formulas of Small 1972, Leach 2002 and Wright 1990.
    """
    words = {"Re + s Le": "le", "Re + K (j w)^n (Leach 2002)": "leach"}
    found: dict[tuple[str, str], dict[float, complex]] = defaultdict(dict)
    with (REFERENCE / "08_driver_impedance.csv").open(encoding="utf-8", newline="") as file:
        rows = csv.reader(file)
        next(rows)
        for driver, coil, freq, real, imaginary, *_ in rows:
            if float(freq) >= 20:
                key = driver.split()[1], words.get(coil, "wright")
                found[key][float(freq)] = complex(float(real), float(imaginary))
    return found


def solved(attributes: str, freq_hz: np.ndarray) -> np.ndarray:
    return solve(network_of(one_driver(attributes)), freq_hz).impedance("input")


@pytest.mark.parametrize(
    ("driver", "coil", "most_percent", "most_degree"),
    [
        ("A", "le", 1e-8, 1e-8),  # the same elements as the formula: what remains is the 12 printed digits
        ("B", "le", 1e-8, 1e-8),
        ("A", "leach", 1.0, 1.0),
        ("B", "leach", 1.0, 1.0),
        ("B", "wright", 1.0, 1.0),
        # The two powers of driver A are not those of any passive part: see the test below.
        ("A", "wright", 2.0, 2.0),
    ],
)
def test_lowered_driver_has_the_impedance_of_its_formula(
    driver: str, coil: str, most_percent: float, most_degree: float
) -> None:
    points = reference()[driver, coil]
    freq_hz = np.array(list(points))
    assert len(freq_hz) >= 10
    parameters = DRIVER_A if driver == "A" else DRIVER_B
    percent, degree = error_of(solved(f"{parameters}, {COILS[driver, coil]}", freq_hz), np.array(list(points.values())))
    assert percent < most_percent
    assert degree < most_degree


def test_nothing_passive_behind_re_has_wrights_impedance_of_driver_a_within_one_percent() -> None:
    """Wright's formula need not be that of a passive part, so its fit cannot be asked to be perfect.

    Every passive impedance is a series inductance and positive resonances of any width at any frequency (the
    integral form of a positive-real function, W. Cauer, 1932, from memory). A linear programme over a fine
    grid of these finds the smallest error that anything passive in series with Re can have.
    """
    from scipy.optimize import linprog

    freq_hz = np.geomspace(20, 20000, 60)
    s = 2j * np.pi * freq_hz
    coil = 0.0039 * abs(s) ** 0.74 + 1j * 0.018 * abs(s) ** 0.66
    whole = 5.8 + free_air(s, 5.8, 42, 4.2, 0.46) + coil
    centres = 2 * np.pi * np.geomspace(0.5, 1e6, 80)
    columns = [s] + [s / (s + corner) for corner in centres]
    columns += [1 / (1 + q * (s / c + c / s)) for q in (0.35, 0.5, 1.0, 2.0) for c in centres]
    relative = np.array(columns).T / whole[:, None]
    # Magnitude errors count in percent, phase errors in degrees.
    rows = np.concatenate([100 * relative.real, np.degrees(relative.imag)])
    wanted = np.concatenate([100 * (coil / whole).real, np.degrees((coil / whole).imag)])
    scale = np.linalg.norm(rows, axis=0)
    ones = -np.ones((len(wanted), 1))
    found = linprog(
        [*np.zeros(len(scale)), 1],
        np.block([[rows / scale, ones], [-rows / scale, ones]]),
        np.concatenate([wanted, -wanted]),
        method="highs",
    )
    assert found.status == 0
    assert 1.2 < found.fun < 1.5


def test_sealed_box_raises_the_resonance() -> None:
    """fc = fs sqrt(1 + alpha) and Qmc = Qms sqrt(1 + alpha): R. H. Small, Closed-box loudspeaker systems, part 1,
    J. Audio Eng. Soc. 20(10), 1972 (from memory). The driver with the raised values in free air is the same."""
    freq_hz = np.geomspace(10, 2000, 301)
    root = np.sqrt(1 + 0.8)
    boxed = solved(f"{DRIVER_A}, alpha 0.8", freq_hz)
    closed = 5.8 + free_air(2j * np.pi * freq_hz, 5.8, 42 * root, 4.2 * root, 0.46 * root)
    assert np.abs(boxed / closed - 1).max() < 1e-12


@pytest.mark.parametrize(
    ("re", "fs", "qms", "qes", "alpha", "fb", "ql"),
    [
        (5.8, 42.0, 4.2, 0.46, 1.1, 45.0, 7.0),
        (3.2, 60.0, 8.0, 0.3, 3.0, 70.0, 20.0),
        (6.1, 30.0, 6.0, 0.35, 2.5, 25.0, 3.0),
    ],
)
def test_vented_box_is_smalls(re: float, fs: float, qms: float, qes: float, alpha: float, fb: float, ql: float) -> None:
    """The elements give Small's fourth-order function to rounding, with a dip at fb between two peaks."""
    freq_hz = np.geomspace(5, 2000, 2001)
    box = f"re {re} ohm, fs {fs} Hz, qms {qms}, qes {qes}, alpha {alpha}, fb {fb} Hz, ql {ql}"
    found = solved(box, freq_hz)
    closed = re + vented_box(2j * np.pi * freq_hz, re, fs, qms, qes, alpha, fb, ql)
    assert np.abs(found / closed - 1).max() < 1e-10
    size = np.abs(found)
    tops = [at for at in range(1, len(size) - 1) if size[at - 1] < size[at] > size[at + 1]]
    assert len(tops) == 2
    assert freq_hz[tops[0]] < fb < freq_hz[tops[1]]
    # Small 1973, part 4: the peaks and the tuning satisfy fs fb = fl fh for a lossless box (from memory).
    if ql > 10:
        assert freq_hz[tops[0]] * freq_hz[tops[1]] == pytest.approx(fs * fb, rel=0.02)


def test_leakage_q_is_seven_where_none_is_given() -> None:
    """The value that Small takes for a typical box (1973, part 1; from memory)."""
    freq_hz = np.geomspace(10, 500, 50)
    box = f"{DRIVER_A}, alpha 1.1, fb 45 Hz"
    assert np.array_equal(solved(box, freq_hz), solved(f"{box}, ql 7", freq_hz))


def test_total_q_stands_for_either_part() -> None:
    """1/Qts = 1/Qms + 1/Qes (Small 1972): the driver's impedance is the same by whichever two are given."""
    freq_hz = np.geomspace(10, 500, 50)
    qts = 1 / (1 / 4.2 + 1 / 0.46)
    whole = solved(DRIVER_A, freq_hz)
    for given in (f"qms 4.2, qts {qts!r}", f"qes 0.46, qts {qts!r}"):
        assert solved(f"re 5.8 ohm, fs 42 Hz, {given}", freq_hz) == pytest.approx(whole, rel=1e-9)
