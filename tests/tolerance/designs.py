"""Designs for the tests of tolerances."""

from __future__ import annotations

from pathlib import Path

from shuntwise.api import load_text, network
from shuntwise.model.design import Design
from shuntwise.network.network import Network

ROOT = Path(__file__).parents[2]
SHOWCASE = ROOT / "examples" / "13-harbour-stage.shunt"

FIRST_ORDER = """\
driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 0.5 mH
capacitor C1 5 uF { 10 % }
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
"""
"""Both drivers are 8 ohm resistances. At the crossing (w L/R)^2 (w R C)^2 = 1, so it lies at 1 / (2 pi sqrt(L C)):
3183.0988618 Hz. Only C1 varies."""

TAPPED = """\
driver woofer 8 ohm { re 6 ohm, le 0.4 mH, fs 60 Hz, qms 4, qes 0.5 }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH, fs 900 Hz, qms 2.2, qes 1.4 }
tapped coil T1 1.2 mH { tap 0.3 mH, dcr 0.4 ohm, 7 % }
coil L2 0.4 mH { dcr 0.3 ohm, 5 % }
capacitor C1 12 uF { 5 %, esr 0.05 ohm }
capacitor C2 5.6 uF
resistor R1 2.2 ohm { 10 % }
coil L3 0.2 mH { dcr 0.15 ohm, 4 % }
coupling L2 and L3 3 %
leg woofer {
  input+ -- T1 -- L3 -- woofer+
  T1.tap -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- R1 -- tweeter+
  tweeter+ -- L2 -- tweeter-
  tweeter- -- return
}
"""


def sound(text: str) -> tuple[Design, Network]:
    """A design given as text, and its network."""
    compilation = load_text(text)
    return compilation.design, network(compilation)
