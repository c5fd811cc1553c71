"""An amplifier's output resistance and its cable: levels re its open-circuit voltage, its load seen from its posts.

By Thevenin's theorem (L. Thevenin, 1883, from memory) a box of input impedance Z behind R gets Z / (R + Z) of what it
gets without, and its own impedance is what it was.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from engines.installed import needs
from shuntwise.api import load, load_text
from shuntwise.engines.crosscheck import crosscheck
from shuntwise.engines.gnucap import GNUCAP
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.network.network import Element, Feed, Network
from shuntwise.network.sweep import Sweep
from shuntwise.response.failures import CaseCurves
from shuntwise.response.sensitivity import impedance_sensitivity, voltage_sensitivity
from shuntwise.response.solve import Solver

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "examples").glob("*.shunt"))
FREQ_HZ = np.geomspace(20, 20e3, 41)
OHM = 0.7


def network_of(path: Path) -> Network:
    """With an amplifier's own resistance taken for a part of the box."""
    network = load(str(path)).lowered
    assert isinstance(network, Network)
    return replace(network, feeds=tuple(Feed(feed.name, feed.node) for feed in network.feeds))


def behind(network: Network, ohm: float = OHM) -> Network:
    """The same behind amplifiers with a resistance."""
    sources = tuple(Element(f"{f.name}.ahead", "R", f"inside {f.name}", f.node, ohm, f.name) for f in network.feeds)
    feeds = tuple(Feed(f.name, f"inside {f.name}", f"{f.name}.ahead") for f in network.feeds)
    return replace(network, elements=(*network.elements, *sources), feeds=feeds)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_a_box_behind_a_resistance(path: Path) -> None:
    network = network_of(path)
    plain, loaded = Solver(network).solve(FREQ_HZ), Solver(behind(network)).solve(FREQ_HZ)
    for feed in network.feeds if len(network.feeds) == 1 else ():
        siemens = plain.admittance(feed.name)
        assert loaded.admittance(feed.name) == pytest.approx(siemens, rel=1e-9)
        for driver in network.drivers:
            wanted = plain.driver_voltage(driver.name) / (1 + OHM * siemens)
            assert loaded.driver_voltage(driver.name) == pytest.approx(wanted, rel=1e-9, abs=1e-14)
    assert loaded.residual < 1e-9


@pytest.mark.parametrize("path", EXAMPLES[:4], ids=lambda path: path.stem)
def test_builds_failures_and_slopes_see_the_load_from_the_posts(path: Path) -> None:
    network = network_of(path)
    plain, loaded = Solver(network), Solver(behind(network))
    (feed,) = (feed.name for feed in network.feeds)
    first = network.elements[0]
    values = {first.name: first.value * np.array([0.9, 1.0, 1.1])}
    for one, other in zip(plain.stream(FREQ_HZ, values, admittances=True),
                          loaded.stream(FREQ_HZ, values, admittances=True), strict=True):  # fmt: skip
        assert other.input_admittance[feed] == pytest.approx(one.input_admittance[feed], rel=1e-9)
    cases = [{first.name: first.value * 3}, {first.name: first.value / 3}]
    curves = [CaseCurves(solver, cases, FREQ_HZ).admittance(feed) for solver in (plain, loaded)]
    assert curves[1] == pytest.approx(curves[0], rel=1e-8)
    slopes = [impedance_sensitivity(solver.solve(FREQ_HZ), feed) for solver in (plain, loaded)]
    for name in slopes[0]:
        assert slopes[1][name] == pytest.approx(slopes[0][name], rel=1e-8, abs=1e-9)


def test_the_slope_of_a_level_behind_a_resistance_is_that_of_a_small_change() -> None:
    network = behind(network_of(EXAMPLES[0]))
    first, driver = network.elements[0], network.drivers[0].name
    step = 1e-5
    up, down = (
        Solver(network).solve(FREQ_HZ, values={first.name: first.value * (1 + sign * step)}).driver_voltage(driver)
        for sign in (1, -1)
    )
    slope = voltage_sensitivity(Solver(network).solve(FREQ_HZ), driver)[first.name]
    assert slope == pytest.approx((up - down) / (2 * step), rel=1e-5, abs=1e-9)


TWO_AMPLIFIERS = """
amplifier 100 W into 8 ohm { source 0.4 ohm, cable 15 m, section 1.5 mm2, copper clad }
input low
input high
driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
driver tweeter 8 ohm { re 6 ohm, le 0.05 mH }
coil L1 0.82 mH
capacitor C1 6.8 uF
resistor R1 47 ohm
leg woofer {
  low+ -- L1 -- woofer+
  woofer- -- low-
}
leg tweeter {
  high+ -- C1 -- tweeter+
  tweeter- -- high-
}
leg woofer and tweeter {
  woofer+ -- R1 -- tweeter+
}
"""


@pytest.mark.parametrize("engine", [pytest.param(NGSPICE, marks=needs(NGSPICE)),
                                    pytest.param(GNUCAP, marks=needs(GNUCAP))])  # fmt: skip
def test_simulators_agree_on_two_amplifiers_with_resistances_and_cables(engine) -> None:  # type: ignore[no-untyped-def]
    network = load_text(TWO_AMPLIFIERS).lowered
    assert isinstance(network, Network) and len(network.feeds) == 2
    assert crosscheck(network, Sweep(), engine).passed


@pytest.mark.parametrize(
    ("cable", "ohm"),
    [
        # 2 x length x resistivity / section: 1.7241e-8 ohm m of copper (IEC 60028, second-hand)
        ("cable 10 m, section 2.5 mm2", 2 * 10 * 1.7241e-8 / 2.5e-6),
        ("cable 10 m, section 2.5 mm², copper clad", 2 * 10 * 2.74e-8 / 2.5e-6),
        ("conductor 70 mohm", 0.14),
        ("cable 10 m, conductor 70 mohm", 0.14),
    ],
)
def test_a_cable_has_two_conductors(cable: str, ohm: float) -> None:
    text = TWO_AMPLIFIERS.replace("cable 15 m, section 1.5 mm2, copper clad", cable)
    network = load_text(text).lowered
    assert isinstance(network, Network)
    assert {e.name: e.value for e in network.elements if e.quantity == "cable"} == {
        "low.cable": pytest.approx(ohm), "high.cable": pytest.approx(ohm)}  # fmt: skip


@pytest.mark.parametrize(
    ("cable", "place"),
    [("cable 10 m", "10 m"), ("section 1.5 mm2", "1.5 mm2"), ("copper clad", "copper clad"),
     ("cable 10 m, section 1.5 mm2, conductor 0.1 ohm", "0.1 ohm")],
)  # fmt: skip
def test_half_a_cable_is_told(cable: str, place: str) -> None:
    text = TWO_AMPLIFIERS.replace("cable 15 m, section 1.5 mm2, copper clad", cable)
    (told,) = [f for f in load_text(text).findings if "a cable is told by" in f.headline]
    assert told.span.text == place


def test_expected_impedance_and_level_behind_a_cable() -> None:
    """8 ohm behind 0.46 ohm of cable: 8.46 ohm; and 20 lg(8 / 8.96) = -0.98 dB with 0.5 ohm inside the amplifier."""
    text = """
amplifier 100 W into 8 ohm { source 0.5 ohm, cable 20 m, section 1.5 mm2 }
driver woofer 8 ohm { re 8 ohm }
leg woofer {
  input+ -- woofer+
  woofer- -- return
}
expect impedance above 8.45 ohm below 8.47 ohm
expect level of woofer -0.984 dB at 1 kHz within 0.001 dB
"""
    assert [f for f in load_text(text).findings if f.severity.value == "error"] == []
