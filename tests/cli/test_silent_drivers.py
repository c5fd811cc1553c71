"""Commands on designs in which a driver gets nothing: no fault, no agreement on nothing, no noise told as a level."""

from __future__ import annotations

from pathlib import Path

import pytest

from engines.installed import needs
from shuntwise.cli.main import main
from shuntwise.engines.ngspice import NGSPICE

ACCEPTED = """
driver woofer 8 ohm
tapped coil T1 2 mH { tap 0.5 mH, dcr 0.3 ohm }
capacitor C1 10 uF
leg woofer {
  a -- T1 -- woofer+
  a -- C1 -- woofer+
  woofer- -- return
}
allow no-way-back because "on the bench the leg is fed by hand"
allow driver-unfed because "the same"
allow terminal-unused because "the tap is for later"
"""

BALANCED = """
driver woofer 8 ohm
resistor R1 1 ohm
resistor R2 2 ohm
resistor R3 3 ohm
resistor R4 6 ohm
leg woofer {
  input+ -- R1 -- woofer+
  input+ -- R2 -- woofer-
  woofer+ -- R3 -- return
  woofer- -- R4 -- return
}
"""


def run(tmp_path: Path, text: str, *words: str) -> int:
    path = tmp_path / "box.shunt"
    path.write_text(text)
    return main([words[0], str(path), *words[1:]])


@needs(NGSPICE)
def test_crosscheck_where_nothing_is_fed_says_so(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(tmp_path, ACCEPTED, "crosscheck") == 2
    captured = capsys.readouterr()
    assert "no current can flow in at `input`" in captured.err and "agree" not in captured.out


@needs(NGSPICE)
def test_crosscheck_names_the_driver_that_it_cannot_compare(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    text = ACCEPTED + "driver tweeter 8 ohm\nleg tweeter {\n  input+ -- tweeter+\n  tweeter- -- return\n}\n"
    text += 'allow leg-unfiltered because "bench"\nallow bare-tweeter because "bench"\n'
    assert run(tmp_path, text, "crosscheck") == 0
    assert "nothing to compare at woofer, which no input feeds" in capsys.readouterr().out


@pytest.mark.parametrize("form", [(), ("--csv",)])
def test_rounding_is_not_told_as_a_level(
    tmp_path: Path, form: tuple[str, ...], capsys: pytest.CaptureFixture[str]
) -> None:
    """A bridge of 1:3 and 2:6 gives its middle no voltage at all (any textbook on the bridge of Wheatstone)."""
    assert run(tmp_path, BALANCED, "response", *form) == 0
    rows = capsys.readouterr().out.splitlines()[3:]
    levels = [row.split(",")[1] if form else row.split()[1] for row in rows]
    assert levels and set(levels) == ({""} if form else {"-"})
