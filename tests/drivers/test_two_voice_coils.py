"""A driver of two voice coils: in series, side by side, one left open; both simulators on each."""

from __future__ import annotations

import math

import numpy as np
import pytest

from drivers.designs import network_of
from engines.installed import EACH_ENGINE
from shuntwise.api import solve
from shuntwise.engines.crosscheck import crosscheck
from shuntwise.engines.engine import Engine
from shuntwise.network.sweep import Sweep
from shuntwise.stress.stress import Lacking
from shuntwise.workspace import Workspace

SUB = (
    "driver sub 4 ohm {{ role woofer, {coils}re {re} ohm, le {le} mH, fs 38 Hz, qms 5.2, qes {qes}, alpha 1, 400 W }}\n"
)
TWO = SUB.format(coils="coils 2, k 0.8, ", re=3.2, le=0.8, qes=0.44)
WIRED = {
    "series": "input+ -- sub.a+\nsub.a- -- sub.b+\nsub.b- -- return",
    "parallel": "input+ -- sub.a+ -- sub.b+\nsub.a- -- return\nsub.b- -- return",
    "one": "input+ -- sub.b+\nsub.b- -- return",
}
SAME_AS = {  # one coil with the same copper and motor: R, L = Le (1 + k) of two alike, and Qes, by Small's definitions
    "series": SUB.format(coils="", re=6.4, le=2 * 0.8 * 1.8, qes=0.44),
    "parallel": SUB.format(coils="", re=1.6, le=0.8 * 1.8 / 2, qes=0.44),
    "one": SUB.format(coils="", re=3.2, le=0.8, qes=0.88),
}
FREQ_HZ = [10.0, 25.0, 38.0, 56.4, 120.0, 1000.0, 8000.0]


def design(driver: str, walks: str) -> Workspace:
    return Workspace.of_text(f"{driver}leg sub {{\n{walks}\n}}\n")


@pytest.mark.parametrize("way", WIRED)
def test_two_coils_are_one_driver(way: str) -> None:
    """What leaks between the motional coils is 1e-5 of Lces, seen beside the voice coil's inductance: 1e-4 of that."""
    whole = design(SAME_AS[way], "input+ -- sub+\nsub- -- return").compilation()
    ours, theirs = (solve(made, FREQ_HZ).impedance("input") for made in (design(TWO, WIRED[way]).compilation(), whole))
    assert np.abs(ours / theirs - 1).max() < (1e-12 if way == "one" else 1.5e-4)


@pytest.mark.parametrize("way", WIRED)
@EACH_ENGINE
def test_both_simulators_agree(engine: Engine, way: str) -> None:
    check = crosscheck(network_of(design(TWO, WIRED[way]).compilation()), Sweep(20, 20000, 10), engine)
    assert check.passed, check.worst


def test_an_open_coil_is_no_finding_and_a_forgotten_driver_is_one() -> None:
    names = {way: [f.name for f in design(TWO, walks).compilation().findings] for way, walks in WIRED.items()}
    assert all("part-not-wired" not in found and "driver-one-lead" not in found for found in names.values())
    assert "part-not-wired" in [f.name for f in design(TWO, "input+ -- other -- return").compilation().findings]
    half = design(TWO, "input+ -- sub.a+ -- sub.b+\nsub.a- -- return").compilation()
    assert "driver-one-lead" in [f.name for f in half.findings]


def test_each_coil_has_half_the_power() -> None:
    drivers = design(TWO, WIRED["series"]).compilation().design.drivers
    assert [(name, driver.noise_w) for name, driver in drivers.items()] == [("sub.a", 200.0), ("sub.b", 200.0)]


def test_total_q_of_one_coil() -> None:
    text = TWO.replace("qes 0.44", f"qts {1 / (1 / 5.2 + 1 / 0.44):.15g}")
    one = design(text, WIRED["one"]).compilation().design.drivers["sub.b"]
    assert one.quantities["qts"].value == pytest.approx(1 / (1 / 5.2 + 1 / 0.88))
    assert math.isclose(one.quantities["qms"].value, 5.2)


@pytest.mark.parametrize(
    ("attributes", "words"),
    [
        ("coils 2, re 3.2 ohm, semi_k 0.01, semi_n 0.7", "two voice coils, which are told by re and le"),
        ("coils 1.5, re 3.2 ohm", "cannot have 1.5 voice coils"),
        ("k 0.9, re 3.2 ohm", "one voice coil, which couples with none"),
    ],
)
def test_what_two_coils_cannot_be(attributes: str, words: str) -> None:
    text = f"driver sub 4 ohm {{ role woofer, {attributes} }}\n"
    found = design(text, WIRED["series"] if "coils 2" in attributes else "input+ -- sub+\nsub- -- return").compilation()
    assert any(words in finding.headline for finding in found.findings)


def test_a_coil_of_a_driver_that_has_one() -> None:
    text = "driver sub 4 ohm { role woofer }\n"
    found = design(text, WIRED["series"]).compilation().findings
    assert [f.help for f in found if f.name == "unknown-name"] == ["write `coils 2` at the driver `sub`, or `sub+`"]
    found = design(text.replace("role", "coils 3, role"), WIRED["series"]).compilation().findings
    assert [f.name for f in found if f.severity.name == "ERROR"] == ["value-unclear"]


def test_a_pad_without_its_coil_is_told() -> None:
    found = design(TWO, "input+ -- sub+\nsub- -- return").compilation().findings
    told = [finding.help for finding in found if finding.name == "unknown-name"]
    assert told == ["write `sub.a+` or `sub.b+`"]


@pytest.mark.parametrize("way", ["series", "parallel"])
def test_two_coils_that_are_fed_alike_take_alike(way: str) -> None:
    work = design("amplifier 100 W into 8 ohm { least 1 ohm }\n" + TWO, WIRED[way])
    stress = work.material().stress
    assert not isinstance(stress, Lacking)
    assert stress.sine_heat_w("sub.a") == pytest.approx(stress.sine_heat_w("sub.b"), rel=1e-3)
    assert stress.bears("sub.a").heat_w == pytest.approx(stress.bears("sub.b").heat_w, rel=1e-3)


def test_a_coil_that_is_driven_by_the_other_takes_no_less_than_nothing(recwarn: pytest.WarningsRecorder) -> None:
    """One coil at the amplifier, the other on a resistor, which it feeds: its copper is warmed by 0.32 of that."""
    walks = "input+ -- sub.a+\nsub.a- -- return\nsub.b+ -- R1 -- sub.b-\nsub.b- -- return"
    work = design("amplifier 100 W into 8 ohm { least 1 ohm }\nresistor R1 10 ohm { 50 W }\n" + TWO, walks)
    stress = work.material().stress
    assert not isinstance(stress, Lacking)
    assert stress.bears("sub.b").heat_w == pytest.approx(0.32 * stress.bears("R1").heat_w, rel=1e-3)
    assert work.material().shares and not recwarn.list
