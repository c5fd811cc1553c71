"""One slip that explains what does not come out: what is found, what is told under it, and what is not.

The second-order box is worked by hand: Butterworth sections of 8 ohm at 2.25 kHz cross where both are 3 dB down.
"""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from shuntwise.api import load_text
from shuntwise.cli.main import main
from shuntwise.diagnostics.text import render_text
from shuntwise.pipeline import Compilation

BOX = """amplifier 100 W into 8 ohm {{ least 4 ohm }}
driver woofer 8 ohm {{ re 8 ohm, 200 W }}
driver tweeter 8 ohm {{ re {re}, 200 W }}
coil L1 {l1} {{ 5 %, air core }}
capacitor C1 {c1} {{ 5 %, 250 V, film }}
capacitor C2 {c2} {{ 5 %, 250 V, film }}
coil L2 {l2} {{ 5 %, air core }}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}}
leg tweeter {{
  input+ -- C2 -- tweeter{hot}
  tweeter{hot} -- L2 -- tweeter{cold}
  tweeter{cold} -- return
}}
expect crossing of woofer and tweeter at 2.25 kHz within 5 %
expect level of woofer -3 dB at 2.25 kHz within 1 dB
expect level of tweeter -3 dB at 2.25 kHz within 1 dB
expect slope of tweeter 12 dB/octave from 100 Hz to 400 Hz within 1 dB/octave
expect polarity of woofer and tweeter opposite
"""
SOUND = {"re": "8 ohm", "l1": "0.8 mH", "c1": "6.25 uF", "c2": "6.25 uF", "l2": "0.8 mH", "hot": "-", "cold": "+"}


def box(**slips: str) -> Compilation:
    return load_text(BOX.format(**(SOUND | slips)))


def test_nothing_is_suspected_where_all_comes_out() -> None:
    assert not [f for f in box().findings if f.name in ("slip-explains", "expectation-unmet")]


@pytest.mark.parametrize(
    ("slips", "owners", "text"),
    [
        ({"l1": "8 mH"}, ("L1",), "0.8 mH"),
        ({"c1": "0.625 uF"}, ("C1",), "6.25 uF"),
        ({"c2": "62.5 uF"}, ("C2",), "6.25 uF"),
        ({"l2": "0.08 mH"}, ("L2",), "0.8 mH"),
        ({"c2": "6.25 mF"}, ("C2",), "6.25 uF"),
        ({"re": "80 ohm"}, ("tweeter",), "8 ohm"),
        ({"hot": "+", "cold": "-"}, ("tweeter",), ""),
    ],
)
def test_the_part_that_slipped_is_named_first(slips: dict[str, str], owners: tuple[str, ...], text: str) -> None:
    first = next(finding for finding in box(**slips).findings if finding.cause is None)
    assert (first.name, first.subjects) == ("slip-explains", owners)
    assert f"where {text} would" in first.headline if text else "leads" in first.headline


def test_what_follows_is_told_under_it_and_counts_as_before() -> None:
    made = box(l1="8 mH")
    follows = [f for f in made.findings if f.cause == "slip-explains"]
    assert "expectation-unmet" in {f.name for f in follows}
    assert made.failed
    shown = render_text(made.findings)
    assert "= also: " in shown
    assert "error: " not in shown.replace("= also", "").split("not checked")[0]


def test_a_finding_that_stays_is_told_in_full() -> None:
    """A capacitor of too few volts in the other leg has nothing to do with the coil."""
    text = BOX.format(**(SOUND | {"l1": "8 mH"})).replace("C2 6.25 uF { 5 %, 250 V", "C2 6.25 uF { 5 %, 10 V")
    (volts,) = (f for f in load_text(text).findings if f.name == "cap-volts-low")
    assert volts.cause is None
    assert "C2" in volts.subjects


def test_waiving_the_cause_unfolds_what_follows() -> None:
    text = BOX.format(**(SOUND | {"l1": "8 mH"})) + 'allow slip-explains on L1 "it is a subwoofer\'s"\n'
    made = load_text(text)
    assert "slip-explains" not in {f.name for f in made.findings}
    assert "expectation-unmet" in {f.name for f in made.findings}
    assert {f.cause for f in made.findings} == {None}


def test_two_slips_are_not_explained_by_one() -> None:
    made = box(l1="8 mH", c2="0.0625 uF")
    assert "slip-explains" not in {f.name for f in made.findings}


def test_json_names_the_cause(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "box.shunt"
    file.write_text(BOX.format(**(SOUND | {"c1": "0.625 uF"})), encoding="utf-8")
    assert main(["check", "--json", str(file)]) == 1
    told = json.loads(capsys.readouterr().out)["diagnostics"]
    assert told[0]["name"] == "slip-explains" and told[0]["cause"] is None
    assert "slip-explains" in {one["cause"] for one in told if one["name"] == "expectation-unmet"}


USED = """driver tweeter 8 ohm { re 8 ohm }
network drop (into, out) given ohms {
  resistor R ohms
  into -- R -- out
}
use drop as P1 { ohms 80 ohm }
capacitor C1 47 uF
leg tweeter {
  input+ -- C1 -- P1.into
  P1.out -- tweeter+
  tweeter- -- return
}
expect level of tweeter -6 dB at 10 kHz within 1 dB
"""


def test_a_part_of_a_used_network_is_pointed_at_where_it_is_used() -> None:
    """8 ohm in front of 8 ohm halve the voltage. The network's own text may serve many uses."""
    told = [f for f in load_text(USED).findings if f.name == "slip-explains"]
    assert [(f.subjects, f.span.line, f.fixes) for f in told] == [(("P1.ohms", "P1"), 6, told[0].fixes)]
    assert told[0].headline == "`P1.ohms` looks slipped: 80 ohm, where 8 ohm would do all that is asked for"
