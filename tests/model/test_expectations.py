"""`expect` lines that cannot be understood: refused with a remedy, and never a fault of the program."""

from __future__ import annotations

import pytest

from shuntwise.api import load_text

BOX = """
driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 0.47 mH
capacitor C1 6.8 uF
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
"""


@pytest.mark.parametrize("within", ["10", "0.1", "1"])
@pytest.mark.parametrize("line", ["crossing of woofer and tweeter at 2.4 kHz", "corner of tweeter at 2.4 kHz"])
def test_window_without_its_percent_sign_is_refused(line: str, within: str) -> None:
    """`within 10` would be a window of 1,000 %, which nothing can miss."""
    (finding,) = [f for f in load_text(f"{BOX}expect {line} within {within}\n").findings if f.name == "unit-missing"]
    assert finding.span.text == within and f"`{within} %`" in finding.help


def test_window_of_more_than_the_whole_is_refused() -> None:
    found = load_text(f"{BOX}expect corner of tweeter at 2.4 kHz within 5 * 2\n").findings
    assert [f.name for f in found if f.name == "value-absurd"] == ["value-absurd"]


def test_window_may_come_from_a_value() -> None:
    compilation = load_text(f"{BOX}let fair = 10 %\nexpect corner of tweeter at 2.4 kHz within fair\n")
    assert compilation.design.expectations[0].clauses["within"].value == 0.1


@pytest.mark.parametrize(
    "line",
    [
        "expect impedance above 4 ohm from 20 Hz to top",
        "expect impedance above 4 ohm from top to 20 kHz",
        "expect level of tweeter -3 dB at top within 1 dB",
        "expect crossing of woofer and tweeter at top within 10 %",
        "expect slope of woofer -6 dB/octave from 5 kHz to top within 1 dB/octave",
    ],
)
def test_value_that_was_lost_with_its_line_ends_nothing(line: str) -> None:
    """The line that tells `top` is broken; that is said, and the expectation waits."""
    found = load_text(f"{BOX}let top\n{line}\n")
    assert found.design.expectations == ()
    assert [f.name for f in found.findings if f.severity.name == "ERROR"] == ["syntax-error"]
