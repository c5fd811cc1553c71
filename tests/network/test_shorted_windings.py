"""A winding whose ends are joined still bears on the coils that are coupled with it.

The closed form is that of the reflected impedance: a winding of L2 and R2 that is shorted adds (w M)^2 / (R2 + j w L2)
to the impedance j w L1 of the winding that it is coupled with (F. E. Terman, Radio Engineers' Handbook, 1943, section
3; the place is from memory). A lossless one leaves L1 (1 - k^2).
"""

from __future__ import annotations

import numpy as np
import pytest

from engines.installed import EACH_ENGINE
from rules.compiling import families_for, findings_of
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.engines.crosscheck import crosscheck
from shuntwise.engines.engine import Engine
from shuntwise.graph.connect import connect
from shuntwise.model.resolve import resolve
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.pipeline import read
from shuntwise.response.solve import solve
from shuntwise.source import Source

FREQ_HZ = np.geomspace(20, 20e3, 31)
S = 2j * np.pi * FREQ_HZ


def lowered(text: str) -> Network:
    collected, _ = read(Source("box.shunt", text))
    design, _ = resolve(collected)
    network = lower(connect(design)[0])
    assert isinstance(network, Network)
    return network


def box(shorted: str, resistance: str = "", k: str = "0.9") -> str:
    return f"""
driver woofer 8 ohm
coil L1 2 mH
coil L2 1 mH {resistance}
coupling L1 and L2 {k}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer- -- return
  {shorted}
}}
"""


SHORTS = ("return -- L2 -- return", "woofer+ -- L2 -- woofer+", "loose -- L2 -- loose", "input+ -- L2 -- input+")


@pytest.mark.parametrize("shorted", SHORTS)
@pytest.mark.parametrize(("resistance", "r2"), [("", 0.0), ("{ dcr 0.5 ohm }", 0.5)])
@pytest.mark.parametrize("k", ["0.9", "-0.4", "1"])
def test_shorted_coil_is_seen_by_the_coil_beside_it(shorted: str, resistance: str, r2: float, k: str) -> None:
    mutual = float(k) * np.sqrt(2e-3 * 1e-3)
    impedance = S * 2e-3 - (S * mutual) ** 2 / (r2 + S * 1e-3) + 8
    response = solve(lowered(box(shorted, resistance, k)), FREQ_HZ)
    assert np.abs(response.driver_voltage("woofer") - 8 / impedance).max() < 1e-11
    assert np.abs(response.impedance("input") / impedance - 1).max() < 1e-11


def test_figures_of_a_shorted_coil_at_10_khz() -> None:
    """|8 / (8 + j w 0.38 mH)| = -9.960 dB, and 25.18 ohm: L1 (1 - 0.81) is left of 2 mH."""
    response = solve(lowered(box(SHORTS[0])), [10e3])
    assert 20 * np.log10(np.abs(response.driver_voltage("woofer"))) == pytest.approx(-9.9596, abs=1e-3)
    assert np.abs(response.impedance("input")) == pytest.approx(25.181, abs=1e-3)


@pytest.mark.parametrize("joint", ["T1.tap -- T1.end", "T1.start -- T1.tap"])
def test_tapped_coil_with_its_tap_joined_to_an_end(joint: str) -> None:
    """Of sections La, Lb one is shorted: La (1 - k^2) or Lb (1 - k^2) is left, in series with its copper."""
    text = f"""
driver woofer 8 ohm
tapped coil T1 2 mH {{ tap 0.5 mH, dcr 0.4 ohm, tap_dcr 0.1 ohm, k 0.95 }}
leg woofer {{
  input+ -- T1 -- woofer+
  woofer- -- return
  {joint}
}}
"""
    first, k = 0.5e-3, 0.95
    second = (-k * np.sqrt(first) + np.sqrt(2e-3 - first * (1 - k * k))) ** 2
    one, other = (first, 0.1), (second, 0.3)
    (l1, r1), (l2, r2) = (one, other) if "end" in joint else (other, one)
    impedance = 8 + r1 + S * l1 - (S * k) ** 2 * l1 * l2 / (r2 + S * l2)
    response = solve(lowered(text), FREQ_HZ)
    assert np.abs(response.driver_voltage("woofer") - 8 / impedance).max() < 1e-11


FAR = """
driver woofer 8 ohm
driver mid 8 ohm
driver tweeter 4 ohm
coil L1 2 mH
coil L2 1 mH
coil L3 0.5 mH
coil L4 0.6 mH
coupling L1 and L2 0.6
coupling L3 and L4 -0.5
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg mid {
  mid- -- L2 -- one
  one -- L3 -- mid+
}
leg tweeter {
  tweeter- -- L4 -- tweeter+
}
"""


def test_pieces_that_only_a_field_reaches_are_solved() -> None:
    """From coil to coil over three pieces without a joint between them, against a dense loop analysis."""
    m12, m34 = 0.6 * np.sqrt(2e-3 * 1e-3), -0.5 * np.sqrt(0.5e-3 * 0.6e-3)
    response = solve(lowered(FAR), FREQ_HZ)
    for number, s in enumerate(S):
        loops = np.array([[8 + s * 2e-3, s * m12, 0], [s * m12, 8 + s * 1.5e-3, s * m34], [0, s * m34, 4 + s * 0.6e-3]])
        currents = np.linalg.solve(loops, [1, 0, 0])
        found = [response.driver_voltage(name)[number] for name in ("woofer", "mid", "tweeter")]
        assert np.abs(found - currents * np.array([8, 8, 4])).max() < 1e-11


def test_windings_that_are_all_shorted_carry_nothing() -> None:
    """Also with |k| = 1, where nothing would fix their currents."""
    text = """
driver woofer 8 ohm
coil L1 2 mH
tapped coil T1 2 mH { tap 0.5 mH, k 1 }
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
  return -- T1 -- return
  T1.tap -- return
}
"""
    response = solve(lowered(text), FREQ_HZ)
    assert np.abs(response.impedance("input") - (8 + S * 2e-3)).max() < 1e-11


@EACH_ENGINE
@pytest.mark.parametrize("text", [*(box(short, "{ dcr 0.5 ohm }") for short in SHORTS), box(SHORTS[0]), FAR])
def test_simulators_agree_on_shorted_windings(engine: Engine, text: str) -> None:
    found = crosscheck(lowered(text), Sweep(20, 20e3, 10), engine)
    assert found.passed, found.worst


def test_message_tells_what_a_shorted_winding_does() -> None:
    """It is no part that does nothing, and it can be accepted where it is meant."""

    def of_shorts(text: str) -> list[Diagnostic]:
        found = findings_of(Source("box.shunt", text), families_for("wiring"))
        return [finding for finding in found if finding.name in ("does-nothing", "winding-shorted")]

    (finding,) = of_shorts(box(SHORTS[0]))
    assert (finding.name, finding.subjects) == ("winding-shorted", ("L2",))
    assert "`L1`" in finding.why
    (alone,) = of_shorts(box(SHORTS[0]).replace("coupling L1 and L2 0.9", ""))
    assert (alone.name, alone.subjects) == ("does-nothing", ("L2",))
    assert not of_shorts(box(SHORTS[0]) + 'allow winding-shorted on L2 because "it damps L1"')
