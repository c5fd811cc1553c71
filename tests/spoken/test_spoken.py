"""The spoken circuits, with plain loads and lossless parts, equal series and parallel arithmetic.

The examples' text, with every attribute but the value taken away, is compiled and solved; beside it stands the
same circuit worked out by nothing but series, parallel and divider formulas, sharing no code with the compiler.
The rounded figures (least input impedance, points 6 dB down) come from a builder's notes, where small losses were
left in: common practice, no source; they hold within 6 %.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from shuntwise.api import Compilation, load_text, network
from shuntwise.response.solve import Solver

EXAMPLES = Path(__file__).parents[2] / "examples"
FREQ_HZ = np.geomspace(20, 20_000, 1501)
S = 2j * np.pi * FREQ_HZ
Array = NDArray[np.complex128]
Worked = tuple[Array, dict[str, Array]]
R = 8.0 + 0 * S


def coil(milli_h: float) -> Array:
    return S * milli_h * 1e-3


def cap(micro_f: float) -> Array:
    return 1 / (S * micro_f * 1e-6)


def par(*branches: Array | float) -> Array:
    return 1 / sum(1 / (branch + 0 * S) for branch in branches)


def divider(series: Array, shunt: Array) -> Array:
    return shunt / (series + shunt)


def second(series: Array, shunt: Array, load: Array = R) -> tuple[Array, Array]:
    """Series part, then shunt part across the load: impedance and load voltage."""
    loaded = par(shunt, load)
    return series + loaded, divider(series, loaded)


def third(first: Array, shunt: Array, last: Array) -> tuple[Array, Array]:
    """Series, shunt, series, then the load of 8 ohm."""
    loaded = par(shunt, last + R)
    return first + loaded, divider(first, loaded) * divider(last, R)


def c01() -> Worked:
    woofer, tweeter = coil(0.47) + R, cap(6.8) + R
    return par(woofer, tweeter), {"woofer": R / woofer, "tweeter": R / tweeter}


def c02() -> Worked:
    (low, woofer), (high, tweeter) = second(coil(0.82), cap(6.8)), second(cap(6.8), coil(0.82))
    return par(low, high), {"woofer": woofer, "tweeter": -tweeter}


def c03() -> Worked:
    (low, woofer), (high, tweeter) = third(coil(0.75), cap(10), coil(0.27)), third(cap(5.6), coil(0.39), cap(15))
    return par(low, high), {"woofer": woofer, "tweeter": tweeter}


def c04() -> Worked:
    (low, woofer), (high, tweeter) = second(coil(3.3), cap(27)), second(cap(3.3), coil(0.47))
    inner, mid = second(coil(0.47), cap(3.3))
    band, into = second(cap(27), coil(3.3), inner)
    return par(low, band, high), {"woofer": woofer, "mid": -into * mid, "tweeter": tweeter}


def c05() -> Worked:
    top, bottom = par(coil(0.47), R), par(cap(6.8), R)
    return top + bottom, {"tweeter": divider(bottom, top), "woofer": divider(top, bottom)}


def c06() -> Worked:
    low, woofer = second(coil(0.56), 6.8 + cap(22))
    high, tweeter = second(cap(5.6), coil(0.56))
    return par(low, high), {"woofer": woofer, "tweeter": tweeter}


def c07() -> Worked:
    low, woofer = second(coil(1.0), cap(10))
    pad = 3.9 + par(8.2, R)
    high, hp = second(cap(5.6), coil(0.56), pad)
    return par(low, high), {"woofer": woofer, "tweeter": hp * par(8.2, R) / pad}


def c08() -> Worked:
    low, woofer = second(coil(0.68) + par(coil(0.33), cap(2.2), 15), cap(4.7))
    high, tweeter = second(cap(4.7), coil(0.47))
    return par(low, high), {"woofer": woofer, "tweeter": tweeter}


def c09() -> Worked:
    low, woofer = second(coil(0.56), cap(15), R / 2)
    high, tweeter = second(cap(5.6), coil(0.56))
    return par(low, high), {"woofer1": woofer, "woofer2": woofer, "tweeter": tweeter}


def c11() -> Worked:
    low, woofer = second(coil(1.0), cap(10))
    pad = 3.9 + par(8.2, R)
    high, hp = second(5.0 + cap(5.6), coil(0.56), pad)
    return par(low, high), {"woofer": woofer, "tweeter": hp * par(8.2, R) / pad}


CASES: list[tuple[str, Callable[[], Worked], float, dict[str, list[float]]]] = [
    # example, the circuit worked out, least input ohm, -6 dB points by driver in Hz
    ("01", c01, 8.0, {"woofer": [4800], "tweeter": [1600]}),
    ("02", c02, 7.6, {"woofer": [2900], "tweeter": [1600]}),
    ("03", c03, 7.0, {"woofer": [3200], "tweeter": [2100]}),
    ("04", c04, 6.1, {"woofer": [720], "mid": [450, 5200], "tweeter": [3200]}),
    ("05", c05, 8.0, {"woofer": [5000], "tweeter": [1600]}),
    ("06", c06, 5.2, {"woofer": [2200], "tweeter": [2100]}),
    ("07", c07, 7.5, {"woofer": [2300], "tweeter": [2100]}),
    ("08", c08, 6.5, {"woofer": [2400], "tweeter": [2500]}),
    ("09", c09, 4.2, {"woofer1": [2200], "woofer2": [2200], "tweeter": [2100]}),
    ("10", c02, 7.6, {"woofer": [2900], "tweeter": [1600]}),
    ("11", c11, 7.5, {"woofer": [2300]}),
]


def ideal(number: str) -> Compilation:
    """The example with ideal parts: attributes in braces dropped, drivers as their nominal resistance."""
    (path,) = EXAMPLES.glob(f"{number}-*.shunt")
    text = path.read_text(encoding="utf-8")
    text = re.sub(r"^((?:driver|coil|capacitor|resistor|lamp) [^{\n]*?) \{[^}]*\}", r"\1", text, flags=re.M)
    text = re.sub(r"^(?:expect|allow|limit).*\n|^variant.*?^\}\n", "", text, flags=re.M | re.S)
    return load_text(text)


@pytest.mark.parametrize(("number", "worked", "least_ohm", "points"), CASES, ids=[case[0] for case in CASES])
def test_spoken_circuit(
    number: str, worked: Callable[[], Worked], least_ohm: float, points: dict[str, list[float]]
) -> None:
    compiled = network(ideal(number))
    response = Solver(compiled).solve(FREQ_HZ)
    impedance, volts = worked()
    # Rounding: some twenty operations on each side.
    np.testing.assert_allclose(response.impedance(compiled.feeds[0].name), impedance, rtol=1e-12)
    for driver, volt in volts.items():
        np.testing.assert_allclose(response.driver_voltage(driver), volt, rtol=1e-11, atol=1e-15)
    assert np.abs(impedance).min() == pytest.approx(least_ohm, rel=0.06)
    for driver, expected_hz in points.items():
        level_db = 20 * np.log10(np.abs(volts[driver]))
        passed = np.flatnonzero(np.diff(np.sign(level_db - level_db.max() + 6)))
        assert FREQ_HZ[passed] == pytest.approx(expected_hz, rel=0.06)


def test_series_pair_of_the_double_ten() -> None:
    """Two 4 ohm woofers in a row behave as one of 8 ohm, each with half the voltage."""
    (path,) = EXAMPLES.glob("09-*.shunt")
    text = path.read_text(encoding="utf-8")
    swap = re.sub(r"driver (woofer[12]) 8 ohm \{[^}]*\}", r"driver \1 4 ohm", text)
    swap = re.sub(r"^((?:driver tweeter|coil|capacitor) [^{\n]*?) \{[^}]*\}", r"\1", swap, flags=re.M)
    swap = swap[: swap.index("\nvariant") + 1].replace("L1 0.56 mH", "L1 1.0 mH").replace("C1 15 uF", "C1 8.2 uF")
    swap = re.sub(r"^expect.*\n", "", swap, flags=re.M)
    a = swap.index("leg woofer1")
    b = swap.index("leg tweeter")
    leg = (
        "leg woofer1 and woofer2 {\n  input+ -- L1 -- woofer1+\n  woofer1- -- woofer2+\n"
        "  woofer2- -- return\n  woofer1+ -- C1 -- return\n}\n"
    )
    response = Solver(network(load_text(swap[:a] + leg + swap[b:]))).solve(FREQ_HZ)
    low, woofer = second(coil(1.0), cap(8.2))
    high, _ = second(cap(5.6), coil(0.56))
    np.testing.assert_allclose(response.driver_voltage("woofer1"), woofer / 2, rtol=1e-12)
    np.testing.assert_allclose(response.impedance("input"), par(low, high), rtol=1e-12)
