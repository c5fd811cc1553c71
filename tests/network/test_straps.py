"""Metal between the parts: the same as resistors that are written into the text at these places."""

from __future__ import annotations

import numpy as np
import pytest

from shuntwise.board.metal import Metal, Point, Strap
from shuntwise.network.straps import laid_out
from shuntwise.response.solve import Solver
from tolerance.designs import sound

TEXT = """
driver woofer 8 ohm {{ re 6 ohm, le 0.4 mH, fs 60 Hz, qms 4, qes 0.4 }}
driver tweeter 8 ohm {{ re 6 ohm }}
amplifier 100 W into 8 ohm {{ source 0.1 ohm }}
coil L1 0.8 mH {{ dcr 0.3 ohm }}
capacitor C1 6 uF {{ esr 0.2 ohm }}
capacitor C2 5 uF
tapped coil T1 2 mH {{ tap 0.5 mH, dcr 0.4 ohm }}
{resistors}
leg woofer {{
  input+ -- {a} L1 -- {b} woofer+
  woofer+ -- C1 -- {c} return
  woofer- -- {d} return
}}
leg tweeter {{
  input+ -- C2 -- hp -- {e} T1 -- return
  T1.tap -- tweeter+
  tweeter- -- return
}}
"""
FREQ_HZ = np.geomspace(20.0, 20e3, 31)
OHM = {"a": 0.05, "b": 0.12, "c": 0.07, "d": 0.3, "e": 0.4}
ENDS = {
    "a": (("L1", "start"), "input+"),
    "b": (("L1", "end"), "woofer+"),
    "c": (("C1", "end"), "return"),
    "d": (("woofer", "-"), "return"),
    "e": (("T1", "start"), "hp"),
}


def metal(*letters: str) -> Metal:
    points = {letter: Point(net, f"{net}, {letter}") for letter, (_, net) in ENDS.items()}
    straps = tuple(
        Strap(f"strap {letter}", Point(ENDS[letter][1], ENDS[letter][1]), points[letter], OHM[letter], "board")
        for letter in letters
    )
    return Metal({ENDS[letter][0]: points[letter] for letter in letters}, straps)


@pytest.mark.parametrize("letters", [*OHM, "abcde"])
def test_a_strap_is_a_resistor_at_its_place(letters: str) -> None:
    nothing = dict.fromkeys(OHM, "") | {"resistors": ""}
    written = {letter: f"R{letter} --" for letter in letters}
    declared = "\n".join(f"resistor R{letter} {OHM[letter]} ohm" for letter in letters)
    expected = Solver(sound(TEXT.format(**nothing | written | {"resistors": declared}))[1]).solve(FREQ_HZ)
    network = laid_out(sound(TEXT.format(**nothing))[1], metal(*letters))
    found = Solver(network).solve(FREQ_HZ)
    plain = Solver(sound(TEXT.format(**nothing))[1]).solve(FREQ_HZ)
    for driver in ("woofer", "tweeter"):
        assert found.driver_voltage(driver) == pytest.approx(expected.driver_voltage(driver), rel=1e-10)
    assert np.abs(found.driver_voltage("woofer") / plain.driver_voltage("woofer") - 1).max() > 1e-4 or letters == "e"


def test_without_metal_nothing_changes_and_dead_metal_is_left_out() -> None:
    network = sound(TEXT.format(**dict.fromkeys(OHM, ""), resistors=""))[1]
    dead = Strap("strap", Point("nowhere", "nowhere"), Point("nowhere", "far"), 1.0, "board")
    assert laid_out(network, Metal({}, (dead,))) == network
