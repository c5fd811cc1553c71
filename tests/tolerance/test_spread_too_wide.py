"""The finding `spread-too-wide`: when it speaks, and that its number is that of random pairs."""

from __future__ import annotations

import numpy as np
import pytest

from shuntwise.api import load_text, network
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.values.spread_too_wide import RULE, _strays
from shuntwise.figures.curves import solve_curves, square_to_db
from shuntwise.response.solve import Solver
from shuntwise.tolerance.draws import draw, element_values, varying

TWO_WAY = """\
driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
driver tweeter 8 ohm { re 6.2 ohm, le 0.05 mH }
coil L1 0.56 mH { TOL }
capacitor C1 4.7 uF { TOL }
coil L2 0.5 mH { dcr 0.3 ohm, TOL }
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter-
  tweeter- -- L2 -- tweeter+
  tweeter+ -- return
}
"""


def names(text: str) -> list[str]:
    return [finding.name for finding in load_text(text).findings]


def test_it_is_silent_unless_the_design_declares_a_match() -> None:
    assert RULE.name not in names(TWO_WAY.replace("TOL", "20 %"))
    assert RULE.name in names(TWO_WAY.replace("TOL", "20 %") + "limit spread-too-wide 0.5 dB\n")


def test_tighter_parts_or_a_wider_limit_satisfy_it() -> None:
    wide = TWO_WAY.replace("TOL", "5 %")
    assert RULE.name in names(wide + "limit spread-too-wide 0.5 dB\n")
    assert RULE.name not in names(wide + "limit spread-too-wide 2 dB\n")
    assert RULE.name not in names(TWO_WAY.replace("TOL", "1 %") + "limit spread-too-wide 0.5 dB\n")


def test_it_names_the_part_that_matters_most_and_can_be_allowed_on_it() -> None:
    text = TWO_WAY.replace("4.7 uF { TOL }", "4.7 uF { 20 % }").replace("TOL", "2 %") + "limit spread-too-wide 0.5 dB\n"
    (finding,) = (finding for finding in load_text(text).findings if finding.name == RULE.name)
    assert "C1" in finding.subjects and "`C1` first" in finding.help
    assert finding.span.text.startswith("limit spread-too-wide")
    assert RULE.name not in names(text + 'allow spread-too-wide on C1 because "sorted into pairs"\n')


def test_it_says_what_it_lacks() -> None:
    compilation = load_text(TWO_WAY.replace(" { TOL }", "").replace(", TOL", "") + "limit spread-too-wide 0.5 dB\n")
    assert [entry.lacks for entry in compilation.not_checked if entry.name == RULE.name] == [
        "parts that state their tolerance"
    ]


@pytest.mark.parametrize("tolerance", ["2 %", "5 %", "10 %"])
def test_one_pair_in_twenty_differs_by_more(tolerance: str) -> None:
    """20,000 random pairs at the place that each stray names: 3 to 7 % differ by more than it says.

    Not exactly 5 %: a sum of three uniform contributions is not quite normal.
    """
    compilation = load_text(TWO_WAY.replace("TOL", tolerance))
    circuit = network(compilation)
    parts = varying(compilation.design, circuit).parts
    values = element_values(circuit, parts, draw(parts, 40_000, 1))
    strays = list(_strays(Evidence(compilation.design, compilation.circuit, circuit), parts))
    assert len(strays) == 3, "two levels and a crossing"
    for stray in strays:
        curves = solve_curves(Solver(circuit), values, np.array([stray.freq_hz]))
        levels = [square_to_db(curves.voltage_square[name])[0] for name in stray.drivers]
        level = levels[0] - levels[1] if len(levels) == 2 else levels[0]
        assert 0.03 < np.mean(np.abs(level[::2] - level[1::2]) > stray.decibel) < 0.07
