"""The table of ratings: worked by hand on a box of resistances, and one with the findings on every example."""

from __future__ import annotations

from pathlib import Path

import pytest

from documents.designs import EXAMPLES, checked, one
from shuntwise.diagnostics.terminal import cell_width
from shuntwise.documents.aligned import WIDTH, as_text
from shuntwise.documents.margins import margins, margins_of, wires_of
from shuntwise.network.network import Network
from shuntwise.response.solve import Solver
from shuntwise.stress.stress import Lacking, Stress, work_out

JUDGES = ("driver-overdriven", "resistor-hot", "cap-volts-low", "coil-saturates", "fuse-opens-in-use", "lamp-rating")
STRANGERS = sorted((Path(__file__).parents[1] / "strangers").glob("*.shunt"))

BY_HAND = """
amplifier 100 W into 8 ohm { programme sine }
driver woofer 8 ohm { re 6 ohm, 50 W }
resistor R1 2 ohm { 10 W }
fuse F1 7 A { quick acting, cold 0.0001 ohm, 250 V }
leg woofer {
  input+ -- F1 -- R1 -- woofer+
  woofer- -- return
}
"""


def stress_of(text: str) -> Stress:
    made = one(text)
    assert isinstance(made.lowered, Network)
    stress = work_out(made.design, Solver(made.lowered))
    assert isinstance(stress, Stress)
    return stress


def test_by_hand() -> None:
    """28.28 V on 2 + 6 ohm, the voice coil cold or at 7.86 ohm: 3.54 A or 2.87 A.

    The resistor dissipates 25 W cold and is rated for 10 W. The voice coil sees 21.2 V cold and 22.5 V hot: 63.5 W in
    8 ohm.
    """
    stress = stress_of(BY_HAND)
    found = {one.owner: one for one in margins_of(stress.design, stress)}
    assert found["R1"].programme_w == pytest.approx(25, rel=1e-4) and found["R1"].margin == pytest.approx(0.4, rel=1e-4)
    assert found["R1"].bearing.peak_a == pytest.approx(5, rel=1e-4) and found["R1"].sine_w == pytest.approx(
        25, rel=1e-4
    )
    hot_v = 800**0.5 * 7.86 / 9.86
    assert found["woofer"].programme_w == pytest.approx(hot_v**2 / 8, rel=1e-3)
    assert found["woofer"].margin == pytest.approx(50 / (hot_v**2 / 8), rel=1e-3)
    in_hot_air = 1 - 0.001 * (40 - 23)  # what a fuse carries falls by 0.1 % a kelvin (common practice, no source)
    assert found["F1"].margin == pytest.approx(in_hot_air * 7 / 800**0.5 * 8, rel=1e-4)


@pytest.mark.parametrize("path", [*EXAMPLES, *STRANGERS], ids=lambda path: path.stem)
def test_a_margin_below_one_is_a_finding(path: Path) -> None:
    """What is compared is what the checks compare."""
    for compilation in checked(path):
        assert isinstance(compilation.lowered, Network)
        stress = work_out(compilation.design, Solver(compilation.lowered))
        if isinstance(stress, Lacking):
            continue
        told = {
            subject
            for finding in (*compilation.findings, *(finding for finding, _ in compilation.waived))
            if finding.name in JUDGES
            for subject in finding.subjects
        }
        for one_margin in margins_of(compilation.design, stress):
            assert one_margin.margin is None or one_margin.margin >= 1 or one_margin.owner in told
        lines = as_text(margins(compilation.design, compilation.circuit, stress)).splitlines()
        assert all(cell_width(line) <= WIDTH for line in lines)


def test_the_load_with_a_driver_off_stands_with_its_frequency() -> None:
    """Nothing is left of one woofer behind a resistor."""
    text = BY_HAND.replace("woofer- -- return", "woofer- -- return\n  input+ -- R2 -- return")
    made = one(text := text + "resistor R2 4 ohm { 500 W }\n")
    lines = as_text(margins(made.design, made.circuit, stress_of(text))).splitlines()
    assert "  woofer off: least 4 ohm at 20 Hz" in lines


def test_without_an_amplifier_one_line_says_what_is_lacking() -> None:
    made = one(BY_HAND.replace("amplifier 100 W into 8 ohm { programme sine }", ""))
    assert isinstance(made.lowered, Network)
    (line,) = as_text(margins(made.design, made.circuit, work_out(made.design, Solver(made.lowered)))).splitlines()
    assert "an `amplifier` with its power and load" in line


def test_hook_up_wire() -> None:
    """2 m of 1 mm copper are 2 x 1.7241e-8 / (pi/4 x 1e-6) = 43.9 mohm; 100 W in 8 ohm are 3.54 A."""
    text = """
amplifier 100 W into 8 ohm { programme sine }
input low
posts high
driver woofer 8 ohm { re 8 ohm }
link K1 { wire 1 mm, length 2 m }
link K2 { wire 1 mm }
leg woofer {
  low+ -- K1 -- high+
  low- -- K2 -- high-
  high+ -- woofer+
  woofer- -- high-
}
"""
    made = one(text)
    (wire,) = wires_of(made.circuit, stress_of(text))
    assert wire.label == "K1" and wire.ampere == pytest.approx(3.536, rel=1e-3)
    assert (wire.volt, wire.watt) == pytest.approx((3.536 * 0.0439, 3.536**2 * 0.0439), rel=1e-3)
    lines = as_text(margins(made.design, made.circuit, stress_of(text))).splitlines()
    assert any(line.split()[:5] == ["K1", "2", "m", "of", "1"] for line in lines)
