"""A lead at the wrong node, a branch at the wrong driver, parts in a row that belong side by side: found by solving.

The box is worked by hand: Butterworth sections of 8 ohm at 2.25 kHz (0.8 mH, 6.25 uF) cross where both are 3 dB down;
the woofer's coil is compensated by 8 ohm and le / re^2 = 6.25 uF in a row.
"""

from __future__ import annotations

import pytest

from shuntwise.api import load_text
from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.graph.connect import connect
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.pipeline import Compilation
from shuntwise.suspects.rewiring import rewirings
from shuntwise.suspects.search import demands

BOX = """amplifier 100 W into 8 ohm { least 4 ohm }
driver woofer 8 ohm { re 8 ohm, le 0.4 mH, 200 W }
driver tweeter 8 ohm { re 8 ohm, 200 W }
coil L1 0.8 mH { 5 %, air core }
capacitor C1 6.25 uF { 5 %, 250 V, film }
resistor R1 8 ohm { 5 %, 50 W, wirewound }
capacitor C3 6.25 uF { 5 %, 250 V, film }
capacitor C2 6.25 uF { 5 %, 250 V, film }
coil L2 0.8 mH { 5 %, air core }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer+ -- R1 -- C3 -- woofer-
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- hp -- tweeter-
  hp -- L2 -- return
  tweeter+ -- return
}
expect crossing of woofer and tweeter at 2.25 kHz within 5 %
expect level of woofer -3 dB at 2.25 kHz within 0.5 dB
expect level of tweeter -3 dB at 2.25 kHz within 0.5 dB
expect slope of tweeter 12 dB/octave from 100 Hz to 400 Hz within 1 dB/octave
expect slope of woofer -12 dB/octave from 8 kHz to 16 kHz within 1 dB/octave
expect polarity of woofer and tweeter opposite
"""


def made(was: str, typed: str) -> Compilation:
    assert BOX.count(was) == 1
    return load_text(BOX.replace(was, typed))


def first(compilation: Compilation) -> Diagnostic:
    return next(finding for finding in compilation.findings if finding.cause is None)


def test_the_box_is_sound() -> None:
    assert not [f for f in load_text(BOX).findings if f.name in ("slip-explains", "expectation-unmet")]


@pytest.mark.parametrize(
    ("was", "typed", "part", "said"),
    [
        ("  woofer+ -- C1 -- return", "  input+ -- C1 -- return", "C1", "write `woofer+` instead of `input+`"),
        ("  hp -- L2 -- return", "  input+ -- L2 -- return", "L2", "write `hp` instead of `input+`"),
        ("  hp -- L2 -- return", "  hp -- L2 -- woofer+", "L2", "write `return` instead of `woofer+`"),
        ("woofer+ -- R1 -- C3 -- woofer-", "tweeter+ -- R1 -- C3 -- tweeter-", "R1", "`woofer+` and `woofer-` instead"),
        ("-- R1 -- C3 --", "-- (R1 | C3) --", "R1", "put `R1` and `C3` in a row"),
        ("input+ -- L1 -- woofer+", "input+ -- C2 -- woofer+", "", ""),
    ],
)
def test_the_lead_at_the_wrong_place_is_named_first(was: str, typed: str, part: str, said: str) -> None:
    if not part:  # the capacitor stands twice: that is a finding on the text, and nothing is solved
        assert first(made(was, typed)).name == "walked-twice"
        return
    finding = first(made(was, typed))
    assert finding.name == "slip-explains"
    assert part in finding.subjects
    assert said in finding.headline


def test_what_the_rules_say_of_the_circuit_is_told_under_it() -> None:
    """The capacitor on the amplifier's side is an error by itself; put right, nothing of it is left."""
    compilation = made("  woofer+ -- C1 -- return", "  input+ -- C1 -- return")
    assert "shunt-before-coil" in {f.name for f in compilation.findings if f.cause}
    apart = {f.name for f in compilation.findings if f.cause is None and f.severity != "advice"}
    assert apart == {"slip-explains", "rating-missing"}


def test_a_fix_is_offered_at_the_station() -> None:
    finding = first(made("  hp -- L2 -- return", "  hp -- L2 -- woofer+"))
    ((edit,),) = (fix.edits for fix in finding.fixes)
    assert (edit.span.text, edit.text) == ("woofer+", "return")


def test_two_slips_are_not_one() -> None:
    text = BOX.replace("coil L1 0.8 mH", "coil L1 0.08 mH").replace("coil L2 0.8 mH", "coil L2 8 mH")
    assert "slip-explains" not in {f.name for f in load_text(text).findings}


def test_every_change_is_a_circuit_of_its_own_walks() -> None:
    """What a change gives is what connecting its walks gives, so that the wiring checks see it as any other."""
    compilation = load_text(BOX)
    changes = list(rewirings(compilation.circuit))
    assert len(changes) > 50
    for change in changes:
        again, said = connect(change.circuit.design)
        assert (again.nets.keys(), said) == (change.circuit.nets.keys(), ())
        assert change.circuit.design.walks != compilation.design.walks


def test_the_sound_box_is_the_only_one_that_does_all() -> None:
    """Of all changes of the sound box hardly any still does all that is asked for: the search can tell them apart."""
    compilation = load_text(BOX)
    asked = demands(compilation.design)
    lowered = [(change, lower(change.circuit)) for change in rewirings(compilation.circuit)]
    alike = [
        change for change, network in lowered if isinstance(network, Network) and asked.met(change.circuit, network)
    ]
    assert len(alike) < len(lowered) / 10


NAMED = """amplifier 60 W into 8 ohm { least 4 ohm }
let corner = 2.25 kHz
let load = 8 ohm
driver woofer 8 ohm { re 8 ohm, 100 W }
driver tweeter 8 ohm { re 8 ohm, 100 W }
coil L1 load / (2 * pi * corner) { 5 %, air core }
capacitor C1 1 / (2 * pi * corner * load) { 5 %, 250 V, film }
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
expect crossing of woofer and tweeter at 2.25 kHz within 5 %
expect level of tweeter -3 dB at 2.25 kHz within 0.5 dB
expect level of woofer -3 dB at 2.25 kHz within 0.5 dB
"""


@pytest.mark.parametrize(
    ("was", "typed", "name", "line"),
    [("2.25 kHz\nlet", "2.25 Hz\nlet", "corner", 2), ("load = 8 ohm", "load = 80 ohm", "load", 3)],
)
def test_a_named_value_is_named_not_what_is_worked_out_from_it(was: str, typed: str, name: str, line: int) -> None:
    finding = first(load_text(NAMED.replace(was, typed)))
    assert (finding.name, finding.subjects, finding.span.line) == ("slip-explains", (name,), line)


def test_a_variant_that_shows_the_slip_tells_it_under_the_design() -> None:
    """What the design itself is told of a part is not told of the variant again."""
    text = NAMED.replace("2.25 kHz\nlet", "22.5 kHz\nlet")
    text += 'variant loud "more of it" {\n  set load = 7.9 ohm\n}\n'
    compilation = load_text(text)
    assert first(compilation).subjects == ("corner",)
