"""The figures of a box and what is printed of them, beside hand calculation."""

from __future__ import annotations

from dataclasses import replace
from math import log2, log10, pi, sqrt

import pytest

from documents.designs import EXAMPLES, TWO_WAY, checked, example, one
from shuntwise.diagnostics.diagnostic import NotChecked
from shuntwise.diagnostics.terminal import cell_width
from shuntwise.documents.aligned import WIDTH
from shuntwise.documents.mark import design_mark
from shuntwise.documents.summary import build_summary
from shuntwise.figures.nominal import Nominal
from shuntwise.figures.usual import Usual, usual
from shuntwise.network.network import Network
from shuntwise.pipeline import Compilation
from shuntwise.response.measures import grid
from shuntwise.response.solve import Solver
from shuntwise.stress.shares import Share, shares


def measure(made: Compilation) -> tuple[Usual, tuple[Share, ...]]:
    """The figures of a design and what its parts bear for 1 V."""
    solver = Solver(made.lowered)
    return usual(Nominal(solver), made.design.drivers), shares(solver.solve(grid(20, 20e3)))


def figures(text: str) -> Usual:
    return measure(one(text))[0]


def test_first_order_figures_by_hand() -> None:
    """L and C for 8 ohm at 2 kHz: both -3.01 dB there, equal; -6 dB where 1 + x^2 = 10^0.6; slopes are
    -10 lg((1 + b^2)/(1 + a^2)) from a to b; the level that most of a band has is within 0.1 dB of 0; the input is
    8 ohm at every frequency (constant-resistance pair)."""
    coil, capacitor = 8 / (2 * pi * 2000), 1 / (2 * pi * 2000 * 8)
    found = figures(TWO_WAY.replace("0.5 mH", f"{coil * 1e3:.12f} mH").replace("5 uF", f"{capacitor * 1e6:.12f} uF"))
    (crossing,) = found.crossings
    assert crossing.first == ("woofer",) and crossing.second == ("tweeter",)
    assert crossing.freq_hz == pytest.approx(2000, rel=1e-6)
    assert [level.value for level in crossing.levels] == pytest.approx([-3.0103] * 2, abs=1e-4)
    assert found.least[0].impedance.value == pytest.approx(8, rel=1e-6)
    woofer, tweeter = found.drivers
    three, six = woofer.corners
    x = sqrt(10**0.6 - 1)
    assert three.ends is not None and three.ends.value == pytest.approx(2000 * sqrt(10**0.3 - 1), rel=0.02)
    assert six.ends is not None and six.ends.value == pytest.approx(2000 * x, rel=0.02) and six.begins is None
    (slope,) = woofer.slopes
    low, high = slope.figure.from_hz / 2000, slope.figure.to_hz / 2000
    assert (low, high) == pytest.approx((2 * six.ends.value / 2000, 4 * six.ends.value / 2000), rel=5e-3)
    octaves = log2(high / low)
    assert slope.value == pytest.approx(-10 * log10((1 + high**2) / (1 + low**2)) / octaves, abs=1e-6)
    assert tweeter.corners[1].begins is not None
    assert tweeter.corners[1].begins.value == pytest.approx(2000 / x, rel=0.02)
    (slope,) = tweeter.slopes
    assert slope.figure.from_hz == pytest.approx(500 / x, rel=0.02) and 5.5 < slope.value < 6.0206


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
    found, borne = measure(design)
    share = next(share for share in borne if share.label == "R1")
    assert (share.volt, share.ampere, share.watt) == pytest.approx((0.2, 0.1, 0.02))
    text = build_summary(design.design, found, borne)
    assert "amplifier: 50 W into 8 ohm, which is 20 V r.m.s." in text
    line = next(line for line in text.splitlines() if line.startswith("  R1"))
    assert line.split() == ["R1", "2", "ohm", "0.2", "0.1", "0.02", "20", "Hz"]
    assert "a steady sine held at the frequency" in " ".join(text.split()).replace("that of ", "")


def test_drivers_fed_alike_cross_once() -> None:
    (crossing,) = measure(example("09"))[0].crossings
    assert crossing.first == ("woofer1", "woofer2") and crossing.second == ("tweeter",)


def test_a_crossing_below_a_third_driver_is_not_told() -> None:
    """In a three-way the woofer meets the tweeter far below the mid."""
    found = measure(example("04"))[0].crossings
    assert [(c.first, c.second) for c in found] == [(("woofer",), ("mid",)), (("mid",), ("tweeter",))]


def test_drivers_that_run_together_do_not_cross() -> None:
    straight = TWO_WAY.replace("-- L1 --", "--").replace("-- C1 --", "--")
    assert figures(straight.split("coil")[0]).crossings == ()


def test_a_driver_that_is_not_fed() -> None:
    text = TWO_WAY + "omit C1\nresistor R1 8 ohm\n"
    design = one(text.replace("tweeter- -- return", "tweeter+ -- R1 -- return\n  tweeter- -- return"))
    text = build_summary(design.design, *measure(design))
    assert "  tweeter  not fed\n" in text and "  none in the band\n" in text
    assert "amplifier: not stated" in text


def test_a_load_below_the_amplifier_s_least_is_said() -> None:
    """Two bare 4 ohm drivers in parallel are 2 ohm."""
    text = TWO_WAY.replace("8 ohm", "4 ohm").replace("-- L1 --", "--").replace("-- C1 --", "--").split("coil")[0]
    design = one("amplifier 100 W into 4 ohm { least 3 ohm }\n" + text)
    text = build_summary(design.design, *measure(design))
    assert "input: least 2 ohm at" in text and "That is below the 3 ohm that the amplifier may drive." in text


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_has_a_summary_that_fits(path) -> None:
    for compilation in checked(path):
        assert isinstance(compilation.lowered, Network)
        text = build_summary(compilation.design, *measure(compilation), mark="0badcafe", waived=compilation.waived)
        assert all(cell_width(line) <= WIDTH and line == line.rstrip() for line in text.splitlines())
        for label in (*compilation.design.drivers, *(p.label for p in compilation.circuit.fitted_parts if p.value)):
            assert f"\n  {label}" in text
        assert "design mark: 0badcafe" in text and "Findings: no findings" in text
        assert all(waiver.reason[:40] in " ".join(text.split()) for _, waiver in compilation.waived)
        assert "Local codes, licensed practice" in text and "nan" not in text and "inf" not in text


def test_findings_that_could_not_run_are_counted_and_titles_cannot_act() -> None:
    design = one('design "\x1b[2J"\n' + TWO_WAY)
    found = measure(design)
    text = build_summary(design.design, *found, not_checked=[NotChecked("load-too-low", "an amplifier")])
    assert "Findings: no findings; 1 check could not run" in text and "\x1b" not in text


def test_the_summary_follows_the_given_figures() -> None:
    """It works nothing out itself: other figures, other text."""
    design = one(TWO_WAY)
    found, borne = measure(design)
    text = build_summary(design.design, replace(found, crossings=()), borne)
    assert "Crossings\n  none in the band" in text


def test_design_mark_tells_texts_apart() -> None:
    """Not how they are cut into files without their names, nor by line ends."""
    marks = {design_mark(["ab", "c"]), design_mark(["a", "bc"]), design_mark(["abc"]), design_mark([])}
    assert len(marks) == 4 and all(len(mark) == 8 for mark in marks)
    assert design_mark(["a\r\nb"]) == design_mark(["a\nb"])
    # SHA-256 of "3\nabc", by the command `printf '3\nabc' | sha256sum`.
    assert design_mark(["abc"]) == MARK_OF_ABC


MARK_OF_ABC = "b00c078e"


def test_documents_say_what_levels_and_impedances_are_told_of() -> None:
    """An ideal amplifier, one with a resistance, one with a cable, one with both."""
    from documents.designs import TWO_WAY
    from shuntwise.documents.reference import is_ideal, of_impedance, of_levels

    said = {}
    for more in ("", "source 0.1 ohm", "conductor 0.1 ohm", "source 0.1 ohm, conductor 0.1 ohm"):
        amplifier = one(f"amplifier 100 W into 8 ohm {{ {more} }}\n" + without_amplifier(TWO_WAY)).design.amplifier
        said[more] = is_ideal(amplifier), of_levels(amplifier), of_impedance(amplifier)
    assert list(said.values()) == [
        (True, "at the input", "at the input"),
        (False, "of the amplifier's open-circuit voltage", "at the amplifier's posts"),
        (False, "at the amplifier's posts", "at the amplifier's posts, cable included"),
        (False, "of the amplifier's open-circuit voltage", "at the amplifier's posts, cable included"),
    ]


def without_amplifier(text: str) -> str:
    return "\n".join(line for line in text.splitlines() if not line.startswith("amplifier")) + "\n"
