"""Ratings: what is found at which number, and what must not be found.

Sources: the derating line of IEC 60115-1 with an example worked out by hand; the Brooks coil of H. B. Brooks, Bureau
of Standards J. Research 7, 1931 (`06_brooks.csv`); the multiples that ratings are chosen by are common practice, no
source.
"""

from __future__ import annotations

import csv
import math
from pathlib import Path

import pytest

from rules.compiling import OWN_NAME, findings_of, loader
from shuntwise.checks.evidence import Evidence
from shuntwise.checks.ratings.coil_wire_hot import brooks_gram, copper_gram
from shuntwise.checks.ratings.resistor_hot import NO_POWER_C, warmest_air_c
from shuntwise.checks.registry import RULES
from shuntwise.checks.run import run
from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.graph.connect import connect
from shuntwise.model.kinds import RESISTOR
from shuntwise.model.resolve import resolve
from shuntwise.network.lower import lower
from shuntwise.pipeline import read
from shuntwise.source import Source
from shuntwise.stress.copper import BROOKS_H_PER_M

TESTS = Path(__file__).parents[1]
EXAMPLES = sorted((TESTS.parent / "examples").glob("*.shunt"))
FAMILIES = ("ratings", "load", "documents")


def found_in(text: str) -> list[tuple[str, str]]:
    """Severity and name of each finding."""
    return [(str(f.severity), f.name) for f in findings_of(Source(OWN_NAME, text), FAMILIES)]


def evidence_of(text: str) -> Evidence:
    source = Source(OWN_NAME, text)
    design, _ = resolve(read(source, loader(source, ()), OWN_NAME)[0])
    circuit, _ = connect(design)
    return Evidence(design, circuit, lower(circuit))


def found_at(name: str, text: str) -> list[Diagnostic]:
    return [f for f in findings_of(Source(OWN_NAME, text), FAMILIES) if f.name == name]


BOX = """
amplifier {amplifier}
driver woofer 8 ohm {{ re 5.8 ohm, le 0.72 mH, fs 58 Hz, qms 5.2, qes 0.41, {woofer} }}
driver tweeter 8 ohm {{ re 6.1 ohm, le 0.06 mH, fs 900 Hz, qms 2.6, qes 1.4, {tweeter} }}
coil L1 0.56 mH {{ {L1} }}
resistor R1 6.8 ohm {{ 5 %, {R1}, wirewound }}
capacitor C1 22 uF {{ {C1} }}
capacitor C2 5.6 uF {{ {C2} }}
coil L2 0.56 mH {{ dcr 0.35 ohm, 5 %, air core }}
leg woofer {{
  input+ -- L1 -- woofer+
  woofer+ -- R1 -- C1 -- return
  woofer- -- return
}}
leg tweeter {{
  input+ -- C2 -- tweeter+
  tweeter+ -- L2 -- tweeter-
  tweeter- -- return
}}
{more}
"""
USUAL = {
    "amplifier": "100 W into 8 ohm { least 4 ohm }",
    "woofer": "200 W",
    "tweeter": "50 W",
    "L1": "dcr 0.2 ohm, 5 %, air core",
    "R1": "25 W",
    "C1": "film, 10 %, 160 V",
    "C2": "film, 5 %, 250 V",
    "more": "",
}


def box(**changes: str) -> str:
    """A sound box with a Zobel, some of its data replaced. Its R1 takes 8.95 W, its C1 1.15 A."""
    return BOX.format(**{**USUAL, **changes})


def test_sound_box_is_left_alone() -> None:
    assert found_in(box()) == []


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_examples_have_no_finding(path: Path) -> None:
    found = findings_of(Source(path.name, path.read_text(encoding="utf-8")), FAMILIES)
    assert [(f.name, f.headline) for f in found] == []


def test_without_an_amplifier_each_check_says_once_what_it_lacks() -> None:
    checked = run(RULES.values(), evidence_of(box().replace("amplifier 100 W into 8 ohm { least 4 ohm }", "")))
    lacking = [entry for entry in checked.not_checked if "amplifier" in entry.lacks]
    names = [entry.name for entry in lacking]
    assert len(names) == len(set(names))
    assert {"resistor-hot", "cap-volts-low", "load-too-low", "rating-missing", "driver-overdriven"} <= set(names)
    assert all(isinstance(entry, NotChecked) for entry in lacking)


# --- resistors


@pytest.mark.parametrize(
    ("construction", "no_power_c"),
    [("wirewound", 275), ("metal oxide", 235), ("metal film", 155), ("carbon film", 155), (None, 155)],
)
def test_derating_of_a_resistor(construction: str | None, no_power_c: float) -> None:
    """A straight line from 70 C (IEC 60115-1, second-hand) to where no power is left, by construction (from memory)."""
    assert warmest_air_c(1.0, construction) == 70
    assert warmest_air_c(0.5, construction) == pytest.approx((70 + no_power_c) / 2)
    assert warmest_air_c(0.0, construction) == no_power_c


def test_every_construction_of_a_resistor_has_its_temperature() -> None:
    assert set(NO_POWER_C) == set(RESISTOR.words.values())


@pytest.mark.parametrize(
    ("rating", "severity"), [("8 W", ["error"]), ("10 W", ["warning"]), ("17 W", ["warning"]), ("18 W", [])]
)
def test_resistor_over_its_rating_and_under_its_margin(rating: str, severity: list[str]) -> None:
    """8.95 W: above 8 W, and less than half of 17 W."""
    assert found_in(box(R1=rating)) == [(s, "resistor-hot") for s in severity]


def test_closed_box_asks_for_three_times() -> None:
    assert found_in(box(more="limit resistor-hot 3")) == [("warning", "resistor-hot")]


def test_programme_and_crest_factor_are_chosen_at_the_amplifier() -> None:
    """A quarter of the heat at twice the crest factor. Less with pink noise, which has more power in the bass."""

    def heat_w(items: str) -> float:
        return evidence_of(box(amplifier=f"100 W into 8 ohm {{ {items} }}")).stress.bears("R1").heat_w

    usual = heat_w("least 4 ohm")
    assert heat_w("crest 2, programme simulated") == usual
    assert heat_w("crest 4") == pytest.approx(usual / 4)
    assert heat_w("programme pink") < usual < heat_w("programme sine")


def test_unknown_programme_is_refused_by_name() -> None:
    assert found_in(box(amplifier="100 W into 8 ohm { least 4 ohm, programme pnik }")) == [("error", "unknown-word")]


def test_heat_of_a_part_in_a_used_network_points_at_its_use() -> None:
    text = box(more='include "lpad" from library\nuse lpad as P1 { loss 6 dB, rated 1 W }').replace(
        "input+ -- C2 -- tweeter+\n  tweeter+ -- L2 -- tweeter-",
        "input+ -- C2 -- hp -- P1 -- tweeter+\n  hp -- L2 -- return\n  P1.back -- return",
    )
    findings = found_at("resistor-hot", text)
    assert {f.span.text for f in findings} == {"P1"}
    assert {f.subjects for f in findings} == {("P1.Rs", "P1"), ("P1.Rp", "P1")}
    waived = text + '\nallow resistor-hot on P1 because "the pads are bolted to the panel"'
    assert found_at("resistor-hot", waived) == []


def test_cold_copper_draws_more_and_hot_copper_wastes_more() -> None:
    """The worse of the two counts: current from the cold case, the coil's heat from the hot one."""
    stress = evidence_of(box()).stress
    current, heat = abs(stress.working.current("L1")), stress.working.dissipation("L1")
    cold_a, hot_a = stress.signal.programme(current)
    cold_w, hot_w = stress.signal.heat(heat)
    assert stress.bears("L1").programme_a == pytest.approx(cold_a) and cold_a > hot_a
    assert stress.bears("L1").heat_w == pytest.approx(hot_w) and hot_w > cold_w


# --- capacitors


@pytest.mark.parametrize(
    ("rating", "found"),
    [("40 V", ["error"]), ("50 V", ["error"]), ("56 V", ["advice"]), ("59 V", ["advice"]), ("61 V", [])],
)
def test_capacitor_volts(rating: str, found: list[str]) -> None:
    """100 W into 8 ohm are 40 V peak; C2 gets 52 V with all drivers on. Practice asks for 1.5 times 40 V in film."""
    findings = found_at("cap-volts-low", box(C2=f"film, 5 %, {rating}"))
    assert [str(f.severity) for f in findings] == found


def test_electrolytics_need_twice_the_peak() -> None:
    assert found_in(box(C1="non-polar electrolytic, 10 %, 63 V")) == [("advice", "cap-volts-low")]
    assert found_in(box(C1="non-polar electrolytic, 10 %, 100 V")) == []
    assert found_in(box(C1="film, 10 %, 63 V")) == []


def test_alternating_rating_counts_as_well() -> None:
    """29 V r.m.s. at C1 with the full sine of 28.3 V."""
    assert found_in(box(C1="film, 10 %, 160 V, ac 25 V")) == [("error", "cap-volts-low")]
    assert found_in(box(C1="film, 10 %, 160 V, ac 63 V")) == []


def test_capacitor_that_is_safe_only_with_its_driver() -> None:
    """C2 peaks at 106 V with the tweeter off, by ringing with L2; C1 is damped by its resistor."""
    findings = found_at("cap-volts-unplugged", box(C1="film, 10 %, 100 V", C2="film, 5 %, 100 V"))
    assert [f.subjects for f in findings] == [("C2", "tweeter")]
    assert found_at("cap-volts-unplugged", box(C2="film, 5 %, 160 V")) == []
    assert found_at("cap-volts-unplugged", box(C2="film, 5 %, 160 V", more="limit cap-volts-unplugged 2"))


def test_capacitor_current_against_its_rating() -> None:
    assert found_in(box(C1="film, 10 %, 160 V, 1 A")) == [("warning", "cap-current")]
    assert found_in(box(C1="film, 10 %, 160 V, 1.2 A")) == []


def test_heat_in_an_electrolytic_is_judged_without_a_rating() -> None:
    """tan(delta) 0.1 at C1: 1.15 A mostly around 700 Hz, where 22 uF have about 1 ohm of loss; 6.6 times at 500 W."""
    big = {"woofer": "500 W", "tweeter": "200 W", "R1": "100 W", "C2": "film, 5 %, 630 V", "L1": "dcr 0.1 ohm, 5 %"}
    amplifier = "500 W into 8 ohm { least 4 ohm }"
    assert not found_at("cap-current", box(C1="non-polar electrolytic, 10 %, 100 V"))
    assert found_at("cap-current", box(**big, amplifier=amplifier, C1="non-polar electrolytic, 10 %, 250 V"))
    assert not found_at("cap-current", box(**big, amplifier=amplifier, C1="film, 10 %, 250 V"))
    assert found_at("cap-current", box(C1="non-polar electrolytic, 10 %, 100 V", more="limit cap-current 0.5 W"))


def test_polarised_capacitors_alone_and_back_to_back() -> None:
    pair = box(C1="polar electrolytic, 10 %, 160 V", more="capacitor C3 22 uF { polar electrolytic, 10 %, 160 V }")
    assert ("error", "polar-cap") in found_in(box(C1="polar electrolytic, 10 %, 160 V"))
    joined = pair.replace("R1 -- C1 --", "R1 -- C1 -- C3 --")
    assert [str(f.severity) for f in found_at("polar-cap", joined)] == ["advice"]


def test_electrolytic_matters_in_series_with_the_tweeter_only() -> None:
    text = box(C1="non-polar electrolytic, 10 %, 160 V", C2="non-polar electrolytic, 10 %, 250 V")
    findings = found_at("electrolytic-series-tweeter", text)
    assert [(f.subjects, str(f.severity)) for f in findings] == [(("C2",), "advice")]
    strong = text.replace("100 W into", "600 W into")
    assert [str(f.severity) for f in found_at("electrolytic-series-tweeter", strong)] == ["warning"]


def test_film_beside_an_electrolytic_may_be_rated_otherwise() -> None:
    more = "capacitor C3 0.1 uF { film, 5 %, 400 V }"
    text = box(C2="non-polar electrolytic, 5 %, 250 V", more=more).replace("-- C2 --", "-- (C2 | C3) --")
    text = text.replace("amplifier ", "# amplifier ")
    assert not found_at("parallel-caps-mixed", text)
    assert found_at("parallel-caps-mixed", text.replace("non-polar electrolytic, 5 %", "film, 5 %"))


def test_a_stated_amplifier_tells_whether_the_weaker_rating_is_enough() -> None:
    """100 W into 8 ohm are 40 V at the peak: 100 V is enough beside 250 V, 35 V is not, and its own rating says so."""
    for volts, said in ((100, []), (35, [("error", "cap-volts-low")])):
        text = box(C2="film, 5 %, 250 V", more=f"capacitor C3 0.47 uF {{ film, 5 %, {volts} V }}")
        found = found_in(text.replace("-- C2 --", "-- (C2 | C3) --"))
        assert [f for f in found if f[1] in ("parallel-caps-mixed", "cap-volts-low")] == said


# --- coils


def test_peak_current_fills_a_core() -> None:
    """L1 carries 7.9 A at the peak of the sine; its average with the programme is 2.9 A."""
    assert found_in(box(L1="dcr 0.1 ohm, 5 %, ferrite core, 7 A")) == [("error", "coil-saturates")]
    assert found_in(box(L1="dcr 0.1 ohm, 5 %, ferrite core, 9 A")) == []
    assert found_in(box(L1="dcr 0.1 ohm, 5 %, air core, 7 A")) == []


def test_cored_coil_without_a_current_is_asked_for_it_once() -> None:
    assert found_in(box(L1="dcr 0.1 ohm, 5 %, ferrite core")) == [("warning", "rating-missing")]


def test_mass_of_copper() -> None:
    """1.0 mm wire of 0.42 ohm is 135 g (worked out by hand from density and resistivity)."""
    coil = evidence_of(box(L1="dcr 0.42 ohm, 5 %, air core, wire 1 mm")).design.parts["L1"]
    assert copper_gram(coil) == pytest.approx(135, abs=1)


def test_brooks_coil_needs_the_copper_of_its_section() -> None:
    """Side 15 mm, 200 turns: 1.529 mH (`06_brooks.csv`); 0.6 of the section is copper, a mean turn is 2 pi 22.5 mm."""
    with (TESTS / "reference" / "06_brooks.csv").open(encoding="utf-8") as file:
        rows = {row[0]: float(row[1]) for row in list(csv.reader(file))[1:]}
    henry = rows["example: c = 15.0 mm, N = 200"]
    assert henry == pytest.approx(BROOKS_H_PER_M * 0.0225 * 200**2, rel=1e-4)
    turn_m, section_m2 = 2 * 3.141592653589793 * 0.0225, 0.6 * 0.015**2
    ohm = 1e-6 / 58 * 200 * turn_m / (section_m2 / 200)
    assert brooks_gram(henry, ohm) == pytest.approx(8.96e6 * section_m2 * turn_m, rel=1e-4)


@pytest.mark.parametrize(
    ("coil", "found"),
    [
        ("dcr 0.2 ohm, 5 %, air core, wire 0.8 mm", True),  # 1.7 W in 26 g
        ("dcr 0.2 ohm, 5 %, air core, wire 1.2 mm", False),
        ("dcr 0.2 ohm, 5 %, air core, mass 35 g", True),
        ("dcr 0.2 ohm, 5 %, air core", False),  # the best shape needs 260 g
    ],
)
def test_wire_of_a_coil(coil: str, found: bool) -> None:
    assert bool(found_at("coil-wire-hot", box(L1=coil))) is found


def test_cored_coil_without_its_wire_cannot_be_checked_for_heat() -> None:
    checked = run(RULES.values(), evidence_of(box(L1="dcr 0.1 ohm, 5 %, ferrite core, 20 A")))
    assert [entry.subjects for entry in checked.not_checked if entry.name == "coil-wire-hot"] == [("L1",)]


@pytest.mark.parametrize(
    ("dcr", "found"), [("0.4 ohm", []), ("0.42 ohm", ["warning"]), ("0.79 ohm", ["warning"]), ("0.82 ohm", ["error"])]
)
def test_coil_takes_its_share_of_the_woofer(dcr: str, found: list[str]) -> None:
    """5 % of 8 ohm is 0.4 ohm, 10 % is 0.8 ohm (common practice, no source)."""
    findings = found_at("coil-dcr-share", box(L1=f"dcr {dcr}, 5 %, air core"))
    assert [str(f.severity) for f in findings] == found


def test_shares_of_coils_in_a_row_and_of_woofers_side_by_side() -> None:
    """0.15 + 0.1 ohm before two 8 ohm woofers in parallel are 6.25 % of 4 ohm."""
    text = """
driver woofer1 8 ohm { re 6 ohm }
driver woofer2 8 ohm { re 6 ohm }
coil L1 0.5 mH { dcr 0.15 ohm }
coil L2 0.5 mH { dcr 0.1 ohm }
leg woofer1 and woofer2 {
  input+ -- L1 -- L2 -- pair
  pair -- woofer1+
  pair -- woofer2+
  woofer1- -- return
  woofer2- -- return
}
"""
    (finding,) = found_at("coil-dcr-share", text)
    assert finding.subjects == ("L1", "L2")
    # The same current flows in coils and woofers together, so their powers share as their ohms do.
    assert "6.2 %" in finding.headline or "6.3 %" in finding.headline


# --- links, drivers, lamps


LINKED = """
amplifier 100 W into 8 ohm {{ least 4 ohm }}
input low
posts high
link K1 {{ wire {wire} }}
link K2
driver tweeter 8 ohm {{ re 8 ohm, 50 W }}
resistor R1 8 ohm {{ 5 %, 150 W }}
leg tweeter {{
  low+ -- K1 -- high+
  low- -- K2 -- high-
  high+ -- tweeter+
  tweeter- -- high-
  low+ -- R1 -- low-
}}
"""


def test_link_carries_what_lies_beyond_it() -> None:
    """20 V r.m.s. of programme into 8 ohm are 2.5 A: 6 A/mm2 in a wire of 0.73 mm. The resistor is on the near side."""
    assert found_at("hookup-too-thin", LINKED.format(wire="0.74 mm")) == []
    (finding,) = found_at("hookup-too-thin", LINKED.format(wire="0.7 mm"))
    assert "2.5 A" in finding.headline


def test_driver_gets_more_than_its_rating() -> None:
    """The woofer gets 18.1 V r.m.s.: 41 W in 8 ohm."""
    assert found_in(box(woofer="40 W")) == [("warning", "driver-overdriven")]
    assert found_in(box(woofer="42 W")) == []
    assert found_in(box(woofer="42 W", more="limit driver-overdriven 80 %")) == [("warning", "driver-overdriven")]


@pytest.mark.parametrize(
    ("lamp", "found"),
    [
        ("5 ohm { hot 58 ohm, 24 V, 10 W }", []),
        ("5 ohm { hot 30 ohm, 24 V, 10 W }", ["hot 30 ohm"]),
        ("5 ohm { hot 14 ohm, 6 V, 2.5 W }", ["6 V"]),
        ("5 ohm { 6 V, 2.5 W }", ["6 V"]),
        ("0.2 ohm { hot 2.3 ohm, 48 V, 1000 W }", ["48 V"]),  # it stays dark
    ],
)
def test_lamp(lamp: str, found: list[str]) -> None:
    """24 V and 10 W make 58 ohm. A lamp for 6 V in front of the tweeter gets about 7 V when it glows."""
    text = box(more=f"lamp B1 {lamp}").replace("input+ -- C2", "input+ -- B1 -- C2")
    assert [f"{f.span.text}" for f in found_at("lamp-rating", text)] == [part.removeprefix("hot ") for part in found]


# --- fuses and protectors


def guarded(part: str, watt: float = 50) -> str:
    """28.3 V r.m.s. on 8 ohm, all sine: 3.54 A."""
    return (
        "amplifier 100 W into 8 ohm { programme sine, least 4 ohm }\n"
        f"driver woofer 8 ohm {{ re 8 ohm, {watt} W }}\n{part}\n"
        "leg woofer {\n  input+ -- F1 -- woofer+\n  woofer- -- return\n}\n"
    )


@pytest.mark.parametrize(
    ("part", "found"),
    [
        ("fuse F1 3.6 A { quick acting, cold 0.001 ohm, 250 V }", []),  # 3.6 A x (1 - 17 K x 0.1 %/K) is 3.54 A
        ("fuse F1 3.59 A { quick acting, cold 0.001 ohm, 250 V }", ["3.59 A"]),
        ("protector F1 4.27 A { trip 9 A, cold 0.001 ohm, tripped 60 ohm, 60 V }", []),  # x (1 - 17 K x 1 %/K)
        ("protector F1 4.25 A { trip 9 A, cold 0.001 ohm, tripped 60 ohm, 60 V }", ["4.25 A"]),
        ("protector F1 4.25 A { trip 9 A, cold 0.001 ohm, tripped 60 ohm, 60 V, derating 0.9 % }", []),
        # (3.535 A)^2 x 10 ms is 0.125 A2s, three tenths of 0.417 A2s
        ("fuse F1 6 A { quick acting, cold 0.001 ohm, 250 V, i2t 0.42 A2s }", []),
        ("fuse F1 6 A { quick acting, cold 0.001 ohm, 250 V, i2t 0.41 A2s }", ["0.41 A2s"]),
    ],
)
def test_a_fuse_carries_the_programme(part: str, found: list[str]) -> None:
    assert [f.span.text for f in found_at("fuse-opens-in-use", guarded(part))] == found


@pytest.mark.parametrize(
    ("part", "late"),
    [
        # 50 W in 8 ohm are 2.5 A. Open at 2.75 x the rated current (IEC 60127-2, from memory), 2.3 % more at 0 C;
        # four times the power for 2 s, twice for 10 s.
        ("fuse F1 1.77 A { quick acting, cold 0.001 ohm, 250 V }", False),
        ("fuse F1 1.79 A { quick acting, cold 0.001 ohm, 250 V }", True),
        ("fuse F1 1.25 A { time lag, cold 0.001 ohm, 250 V }", False),
        ("fuse F1 1.26 A { time lag, cold 0.001 ohm, 250 V }", True),
        # 1.23 times as much at 0 C, and twice the power for a minute: 2.874 A
        ("protector F1 1 A { trip 2.87 A, cold 0.001 ohm, tripped 60 ohm, 60 V }", False),
        ("protector F1 1 A { trip 2.88 A, cold 0.001 ohm, tripped 60 ohm, 60 V }", True),
    ],
)
def test_a_fuse_opens_before_the_driver_burns(part: str, late: bool) -> None:
    assert [f.name for f in found_at("fuse-opens-late", guarded(part))] == ["fuse-opens-late"] * late
    assert found_at("fuse-opens-late", guarded(part, watt=101)) == [], "the amplifier has no more than the driver bears"


def test_what_is_lacking_to_judge_a_fuse_is_said() -> None:
    evidence = evidence_of(guarded("fuse F1 2 A { cold 0.05 ohm, 250 V }"))
    checked = run([RULES["fuse-opens-late"]], evidence)
    assert [entry.lacks for entry in checked.not_checked] == ["whether it is `quick acting` or has a `time lag`"]
    evidence = evidence_of(guarded("protector F1 2 A { cold 0.05 ohm, 250 V }"))
    checked = run([RULES["fuse-opens-late"]], evidence)
    assert [entry.lacks for entry in checked.not_checked] == ["the current at which it trips"]


def test_a_fuse_breaks_the_amplifier_s_voltage() -> None:
    """28.3 V r.m.s. lie across it once it has opened."""
    for volts, found in ((28, ["28 V"]), (29, [])):
        text = guarded(f"protector F1 5 A {{ trip 9 A, cold 0.03 ohm, tripped 60 ohm, {volts} V }}")
        assert [f.span.text for f in found_at("fuse-volts-low", text)] == found


@pytest.mark.parametrize(("part", "ohm"), [("fuse F1 2 A", 0.05), ("protector F1 2 A", 0.125)])
def test_a_fuse_without_a_resistance_has_that_of_a_usual_drop(part: str, ohm: float) -> None:
    network = evidence_of(guarded(part)).network
    assert [e.value for e in network.elements if e.part == "F1"] == [pytest.approx(ohm)]


def test_a_hundred_equal_coils_share_the_blame() -> None:
    """A resistance that many coils share alike is still told (none of them takes a hundredth of it alone)."""
    from shuntwise.api import load_text

    lines = ["amplifier 100 W into 8 ohm", "driver woofer 8 ohm { re 6 ohm, 100 W }"]
    lines += [f"coil L{i} 0.01 mH {{ dcr 0.02 ohm, 5 %, air core }}" for i in range(150)]
    walk = " -- ".join(f"L{i}" for i in range(150))
    lines += ["leg woofer {", f"  input+ -- {walk} -- woofer+", "  woofer- -- return", "}"]
    names = [finding.name for finding in load_text("\n".join(lines)).findings]
    assert names.count("coil-dcr-share") == 1


# --- excursion

STIFF = """
amplifier 50 W into 8 ohm { least 4 ohm, programme sine }
driver mid 8 ohm { re 6 ohm, fs 1 kHz, qms 3, qes 0.35, 200 W, xmax 4 mm, MOTOR }
leg mid {
  input+ -- mid+
  mid- -- return
}
"""
BL = (2 * math.pi * 1000 * 0.009 * 6 / 0.35) ** 0.5


@pytest.mark.parametrize("motor", ["mms 9 g", f"bl {BL:.12g} Tm"])
def test_far_below_resonance_the_spring_holds_the_cone(motor: str) -> None:
    """x = Bl V / (Re K) with the stiffness K = (2 pi fs)^2 Mms: L. L. Beranek, Acoustics, 1954, chapter 7, from memory.
    At 20 Hz the resonance at 1 kHz is 0.04 % away in x, and the motional impedance less than a thousandth of Re."""
    evidence = evidence_of(STIFF.replace("MOTOR", motor))
    moves = evidence.stress.excursion(evidence.design.drivers["mid"])
    assert moves is not None
    stiffness = (2 * math.pi * 1000) ** 2 * 0.009
    assert moves.peak_m == pytest.approx(math.sqrt(2) * 20 * BL / (6 * stiffness), rel=2e-3)
    assert moves.middle_hz == pytest.approx(20, rel=0.02)


def test_excursion_needs_its_data_and_counts_the_box() -> None:
    evidence = evidence_of(STIFF.replace("xmax 4 mm, MOTOR", "xmax 4 mm"))
    assert evidence.stress.excursion(evidence.design.drivers["mid"]) is None
    free, boxed = (
        evidence_of(STIFF.replace("MOTOR", f"mms 9 g{more}")).stress for more in ("", ", alpha 2")
    )  # a box of this size makes the spring three times as stiff
    found = [stress.excursion(stress.design.drivers["mid"]) for stress in (free, boxed)]
    assert found[0] is not None and found[1] is not None
    assert found[0].peak_m / found[1].peak_m == pytest.approx(3, rel=2e-3)


def test_excursion_is_found_once_of_two_voice_coils_and_its_limit_moves() -> None:
    text = STIFF.replace("driver mid 8 ohm {", "driver mid 8 ohm { coils 2,").replace("MOTOR", "mms 2 g")
    text = text.replace("fs 1 kHz", "fs 100 Hz").replace(
        "input+ -- mid+\n  mid- -- return", "input+ -- mid.a+ -- mid.b+\n  mid.a- -- return\n  mid.b- -- return"
    )
    assert len(found_at("excursion-high", text)) == 1
    assert found_at("excursion-high", text + "limit excursion-high 100\n") == []
