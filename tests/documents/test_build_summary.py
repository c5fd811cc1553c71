"""The figures of a box and what is printed of them, beside hand calculation."""

from __future__ import annotations

from dataclasses import replace
from math import pi, sqrt

import pytest

from documents.designs import EXAMPLES, TWO_WAY, compiled, example, one
from shuntwise.diagnostics.diagnostic import NotChecked
from shuntwise.diagnostics.terminal import cell_width
from shuntwise.documents.mark import design_mark
from shuntwise.documents.measured import Measured, measure
from shuntwise.documents.summary import WIDTH, build_summary
from shuntwise.network.network import Network
from shuntwise.response.solve import Solver


def figures(text: str) -> Measured:
    return measure(Solver(one(text).lowered))


def test_first_order_figures_by_hand() -> None:
    """L and C for 8 ohm at 2 kHz: both -3.01 dB there, equal; -6 dB where 1 + x^2 = 10^0.6; slopes are
    -20 lg 2 x^2/(1 + x^2) dB per octave; the input is 8 ohm at every frequency (constant-resistance pair)."""
    coil, capacitor = 8 / (2 * pi * 2000), 1 / (2 * pi * 2000 * 8)
    found = figures(TWO_WAY.replace("0.5 mH", f"{coil * 1e3:.12f} mH").replace("5 uF", f"{capacitor * 1e6:.12f} uF"))
    (crossing,) = found.crossings
    assert crossing.first == ("woofer",) and crossing.second == ("tweeter",)
    assert crossing.freq_hz == pytest.approx(2000, rel=1e-6)
    assert crossing.level_db == pytest.approx(-3.0103, abs=1e-4)
    assert found.least[0].ohm == pytest.approx(8, rel=1e-6)
    woofer, tweeter = found.drivers
    x = sqrt(10**0.6 * (1 + 0.01**2) - 1)  # the highest level is that at 20 Hz, a hundredth of the corner
    assert woofer.within_6_db.high_hz == pytest.approx(2000 * x, rel=1e-6) and woofer.within_6_db.low_hz is None
    assert woofer.high_slope == pytest.approx(-6.0206 * (2 * x) ** 2 / (1 + (2 * x) ** 2), abs=1e-3)
    assert tweeter.within_3_db.low_hz == pytest.approx(1985, rel=0.01) and tweeter.low_slope == pytest.approx(
        6.0206 * (2 * x) ** 2 / (1 + (2 * x) ** 2), abs=0.01)  # fmt: skip


def test_shares_by_hand() -> None:
    """A resistor alone before a resistive driver: 1 V over 2 + 8 ohm is 0.1 A, 0.2 V, 20 mW; heat goes as U^2."""
    design = one("""\
amplifier 50 W into 8 ohm
driver woofer 8 ohm
resistor R1 2 ohm
leg woofer {
  input+ -- R1 -- woofer+
  woofer- -- return
}
""")
    found = measure(Solver(design.lowered))
    share = next(share for share in found.shares if share.label == "R1")
    assert (share.volt, share.ampere, share.watt) == pytest.approx((0.2, 0.1, 0.02))
    text = build_summary(design.design, found)
    assert "amplifier: 50 W into 8 ohm, which is 20 V r.m.s." in text
    line = next(line for line in text.splitlines() if line.startswith("  R1"))
    assert line.split()[:9] == ["R1", "2", "ohm", "0.2", "0.1", "0.02", "4", "2", "8"]
    assert "a steady sine held at the frequency" in " ".join(text.split()).replace("that of ", "")


def test_drivers_fed_alike_cross_once() -> None:
    (crossing,) = measure(Solver(example("09").lowered)).crossings
    assert crossing.first == ("woofer1", "woofer2") and crossing.second == ("tweeter",)


def test_a_crossing_below_a_third_driver_is_not_told() -> None:
    """In a three-way the woofer meets the tweeter far below the mid."""
    found = measure(Solver(example("04").lowered)).crossings
    assert [(c.first, c.second) for c in found] == [(("woofer",), ("mid",)), (("mid",), ("tweeter",))]


def test_drivers_that_run_together_do_not_cross() -> None:
    straight = TWO_WAY.replace("-- L1 --", "--").replace("-- C1 --", "--")
    assert figures(straight.split("coil")[0]).crossings == ()


def test_a_driver_that_is_not_fed() -> None:
    text = TWO_WAY + "omit C1\nresistor R1 8 ohm\n"
    design = one(text.replace("tweeter- -- return", "tweeter+ -- R1 -- return\n  tweeter- -- return"))
    text = build_summary(design.design, measure(Solver(design.lowered)))
    assert "  tweeter  not fed\n" in text and "  none in the band\n" in text
    assert "amplifier: not stated" in text


def test_a_load_below_the_amplifier_s_least_is_said() -> None:
    """Two bare 4 ohm drivers in parallel are 2 ohm."""
    text = TWO_WAY.replace("8 ohm", "4 ohm").replace("-- L1 --", "--").replace("-- C1 --", "--").split("coil")[0]
    design = one("amplifier 100 W into 4 ohm { least 3 ohm }\n" + text)
    text = build_summary(design.design, measure(Solver(design.lowered)))
    assert "input: least 2 ohm at" in text and "That is below the 3 ohm that the amplifier may drive." in text


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_has_a_summary_that_fits(path) -> None:
    for compilation in compiled(path.read_text(encoding="utf-8")):
        assert isinstance(compilation.lowered, Network)
        text = build_summary(compilation.design, measure(Solver(compilation.lowered)), mark="0badcafe", waived=2)
        assert all(cell_width(line) <= WIDTH and line == line.rstrip() for line in text.splitlines())
        for label in (*compilation.design.drivers, *(p.label for p in compilation.circuit.fitted_parts if p.value)):
            assert f"\n  {label}" in text
        assert "design mark: 0badcafe" in text and "Findings: no findings; 2 allowed by the design" in text
        assert "Local codes, licensed practice" in text and "nan" not in text and "inf" not in text


def test_findings_that_could_not_run_are_counted_and_titles_cannot_act() -> None:
    design = one('design "\x1b[2J"\n' + TWO_WAY)
    found = measure(Solver(design.lowered))
    text = build_summary(design.design, found, not_checked=[NotChecked("load-too-low", "an amplifier")])
    assert "Findings: no findings; 1 check could not run" in text and "\x1b" not in text


def test_the_summary_follows_the_given_figures() -> None:
    """It works nothing out itself: other figures, other text."""
    design = one(TWO_WAY)
    found = measure(Solver(design.lowered))
    assert "Crossings\n  none in the band" in build_summary(design.design, replace(found, crossings=()))


def test_design_mark_tells_texts_apart() -> None:
    """Not how they are cut into files without their names, nor by line ends."""
    marks = {design_mark(["ab", "c"]), design_mark(["a", "bc"]), design_mark(["abc"]), design_mark([])}
    assert len(marks) == 4 and all(len(mark) == 8 for mark in marks)
    assert design_mark(["a\r\nb"]) == design_mark(["a\nb"])
    # SHA-256 of "3\nabc", by the command `printf '3\nabc' | sha256sum`.
    assert design_mark(["abc"]) == MARK_OF_ABC


MARK_OF_ABC = "b00c078e"
