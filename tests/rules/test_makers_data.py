"""What the maker of a driver states: what it is for, its lowest corner and slope, noise or programme power."""

from __future__ import annotations

import numpy as np
import pytest

from shuntwise.api import load_text
from shuntwise.response.solve import Solver


def second_order(corner_hz: float, lowest: str) -> str:
    """A tweeter of 8 ohm behind a Butterworth filter of second order: C = 1/(2 pi f R sqrt2), L = R sqrt2/(2 pi f)."""
    omega = 2 * np.pi * corner_hz
    farad, henry = 1 / (omega * 8 * 2**0.5), 8 * 2**0.5 / omega
    return (
        f"driver tweeter 8 ohm {{ re 8 ohm, {lowest} }}\n"
        f"capacitor C1 {1e6 * farad!r} uF\ncoil L1 {1e3 * henry!r} mH\n"
        "leg tweeter {\n  input+ -- C1 -- tweeter+\n  tweeter+ -- L1 -- return\n  tweeter- -- return\n}\n"
    )


@pytest.mark.parametrize(
    ("lowest", "found"),
    [
        ("lowest 2 kHz", []),
        ("lowest 2.1 kHz", ["2.1 kHz"]),
        # Butterworth, second order: 10 lg(1 + 2^4) = 12.3 dB an octave below its corner
        ("lowest 2 kHz, slope 12 dB/octave", []),
        ("lowest 2 kHz, slope 13 dB/octave", []),
        ("lowest 2 kHz, slope 18 dB/octave", ["18 dB/octave"]),
        ("lowest 1 kHz, slope 24 dB/octave", []),  # 10 lg(1 + 4^4) = 24.1 dB
    ],
)
def test_what_the_maker_allows(lowest: str, found: list[str]) -> None:
    told = [f for f in load_text(second_order(2000, lowest)).findings if f.name == "below-lowest-corner"]
    assert [f.span.text for f in told] == found


def test_the_maker_s_corner_stands_for_the_resonance() -> None:
    for more, found in (("fs 1.6 kHz", True), ("fs 1.6 kHz, lowest 1.9 kHz", False)):
        names = [f.name for f in load_text(second_order(2000, f"{more}, qms 2, qes 1")).findings]
        assert ("tweeter-too-low" in names) is found


BOX = """
amplifier 100 W into 8 ohm {{ programme sine }}
driver {driver}
leg {name} {{
  input+ -- {name}+
  {name}- -- return
}}
"""


@pytest.mark.parametrize(
    ("power", "found"),
    [("99 W", True), ("101 W, noise power", False), ("150 W, programme power", True),
     ("201 W, programme power", False), ("199 W, programme power", True)],
)  # fmt: skip
def test_programme_power_counts_half(power: str, found: bool) -> None:
    """A steady 28.3 V are 100 W in 8 ohm."""
    text = BOX.format(driver=f"woofer 8 ohm {{ re 8 ohm, {power} }}", name="woofer")
    assert ("driver-overdriven" in [f.name for f in load_text(text).findings]) is found


def test_a_full_range_driver_is_one_by_its_name_or_its_role() -> None:
    for driver, name in (("full_range 8 ohm { re 6 ohm }", "full_range"), ("cone 8 ohm { role full_range }", "cone")):
        compilation = load_text(BOX.format(driver=driver, name=name))
        assert compilation.design.drivers[name].role == "full_range"
        assert not {"role-missing", "leg-unfiltered", "bare-tweeter"} & {f.name for f in compilation.findings}


def test_a_full_range_driver_stands_between_woofer_and_tweeter() -> None:
    """A woofer below it and a tweeter above: two crossings, in this order."""
    text = """
driver woofer 8 ohm { re 6 ohm }
driver full_range 8 ohm { re 6 ohm }
driver tweeter 8 ohm { re 6 ohm }
coil L1 6.8 mH
capacitor C1 68 uF
coil L2 0.22 mH
capacitor C2 3.3 uF
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg full_range {
  input+ -- C1 -- L2 -- full_range+
  full_range- -- return
}
leg tweeter {
  input+ -- C2 -- tweeter+
  tweeter- -- return
}
expect crossing of woofer and full_range at 250 Hz within 40 %
expect crossing of full_range and tweeter at 5.5 kHz within 40 %
"""
    compilation = load_text(text)
    assert [f for f in compilation.findings if f.severity.value == "error"] == []
    from shuntwise.figures.nominal import Nominal
    from shuntwise.figures.usual import usual

    figures = usual(Nominal(Solver(compilation.lowered)), compilation.design.drivers)
    assert [(*c.first, *c.second) for c in figures.crossings] == [("woofer", "full_range"), ("full_range", "tweeter")]
