"""Choices, attenuators and what is checked of them; taps and motional impedances told in other words."""

from __future__ import annotations

import math
from pathlib import Path

import numpy as np
import pytest

from shuntwise.cli.main import main
from shuntwise.model.variants import is_known, to_check
from shuntwise.pipeline import Compilation
from shuntwise.workspace import Workspace

EXAMPLE = Path(__file__).parents[2] / "examples" / "16-village-hall.shunt"

BOX = """
driver tweeter 8 ohm
capacitor C1 4.7 uF
resistor R1 1 ohm
resistor R2 2.2 ohm
link K1
link K2
link K3
leg tweeter {
  input+ -- C1 -- choice
  choice -- (K1 | K2 -- R1 | K3 -- R2) -- position
  position -- tweeter+
  tweeter- -- return
}
"""
CHOICE = """
choice level {
  position flat { fit K1 }
  position soft "1 dB down" { fit K2 }
  position softer { fit K3 }
}
variant choir "for the choir" { set level = softer }
"""
BARE = BOX.replace("-- C1 --", "-- K4 --").replace("capacitor C1 4.7 uF", "link K4")


def compiled(text: str, variant: str | None = None, settings: tuple[str, ...] = ()) -> Compilation:
    return Workspace.of_text(text).compilation(variant, settings)


def fitted(made: Compilation) -> list[str]:
    return [label for label, part in made.design.parts.items() if label.startswith("K") and part.fitted]


@pytest.mark.parametrize(
    ("variant", "settings", "links"),
    [
        (None, (), ["K1"]),
        ("level.soft", (), ["K2"]),
        ("choir", (), ["K3"]),
        ("choir+level.flat", (), ["K1"]),
        (None, ("level=soft",), ["K2"]),
        ("choir", ("level=soft",), ["K2"]),
        ("level.softer", ("level=soft",), ["K3"]),
    ],
)
def test_one_position_holds(variant: str | None, settings: tuple[str, ...], links: list[str]) -> None:
    """Nodes may still be called as the words of a choice are, even where a walk begins."""
    assert fitted(compiled(BOX + CHOICE, variant, settings)) == links


def test_what_hangs_at_a_link_of_another_position_is_no_loose_end() -> None:
    assert [f.name for f in compiled(BOX + CHOICE).findings if f.severity.name == "ERROR"] == []
    without = [f.name for f in compiled(BOX + "omit K2 and K3\n").findings if f.severity.name == "ERROR"]
    assert without == ["half-fitted", "half-fitted"]


def test_all_that_is_checked_has_a_name() -> None:
    design = Workspace(str(EXAMPLE)).compilation().design
    moved = ["reach.stage", "A1.least", "A1.most"]
    assert to_check(design) == (*moved, "band", "band+reach.hall", *(f"band+{name}" for name in moved))
    assert all(is_known(design, name) for name in to_check(design))
    for wrong in (
        "",
        "reach",
        "reach.none",
        "band+band",
        "reach.hall+reach.stage",
        "A1.least+A1.most",
        "A1",
        "A1.loss",
    ):
        assert not is_known(design, wrong)


def test_a_name_that_stands_for_nothing_is_refused(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["netlist", str(EXAMPLE), "--variant", "reach.stag"]) == 2
    assert "a similar one exists: reach.stage" in capsys.readouterr().err


def test_each_position_and_end_is_checked() -> None:
    """A pad that stands the flat position is too weak at the end of the knob, and is told of there."""
    text = EXAMPLE.read_text(encoding="utf-8").replace("most 12 dB, 5 %, 50 W", "most 12 dB, 5 %, 9 W")
    told = [(f.variant, f.name) for made in Workspace.of_text(text).compilations for f in made.findings]
    assert ("A1.most", "resistor-hot") in told and (None, "resistor-hot") not in told


def test_at_the_ends_of_a_knob_levels_are_not_asked_for() -> None:
    more = "expect level of horn -3 dB at 7 kHz within 1.5 dB\n"
    work = Workspace.of_text(EXAMPLE.read_text(encoding="utf-8") + more)
    asked = {made.design.variant: [e.quantity for e in made.design.expectations] for made in work.compilations}
    assert asked[None] == ["polarity", "impedance", "level"]
    assert asked["A1.most"] == ["polarity", "impedance"]


def test_an_unknown_position_is_told() -> None:
    found = [f for f in compiled(BOX + CHOICE + "set level = sofft\n").findings if f.name == "unknown-name"]
    assert [f.help for f in found] == ["a similar name exists: `soft`"]


# --- allow in


def test_a_waiver_holds_in_the_variants_that_it_names() -> None:
    line = 'allow bare-tweeter on tweeter in level.soft because "a trial"\n'
    text = BARE + CHOICE + line
    by_variant = {made.design.variant: made for made in Workspace.of_text(text).compilations}
    assert [f.name for f in by_variant[None].findings].count("bare-tweeter") == 1
    assert [waiver.variants for _, waiver in by_variant["level.soft"].waived] == [("level.soft",)]
    idle = compiled(BOX + CHOICE + line, "level.soft").findings
    assert [f.name for f in idle if f.name == "idle-allow"] == ["idle-allow"]
    assert not [f for f in compiled(BOX + CHOICE + line).findings if f.name == "idle-allow"]


def test_a_waiver_that_the_design_needs_is_idle_in_no_variant() -> None:
    text = BARE + "capacitor C1 4.7 uF\n" + CHOICE
    text = text.replace("set level = softer", "leg tweeter {\n input+ -- C1 -- tweeter+\n tweeter- -- return\n}")
    text += 'allow bare-tweeter on tweeter because "a trial"\n'
    told = [f for made in Workspace.of_text(text).compilations for f in made.findings]
    assert [f.name for f in told if f.name == "idle-allow"] == []


def test_a_waiver_for_a_variant_in_one_position() -> None:
    text = BARE + CHOICE + 'allow bare-tweeter on tweeter in choir+level.soft because "a trial"\n'
    work = Workspace.of_text(text)
    waived = {name: len(work.compilation(name).waived) for name in ("choir+level.soft", "level.soft", "choir")}
    assert waived == {"choir+level.soft": 1, "level.soft": 0, "choir": 0}


@pytest.mark.parametrize(
    ("more", "name", "words"),
    [
        ("let level = 8 ohm\n", "same-label-twice", "`level`"),
        ("variant level { omit C1 }\n", "same-label-twice", "`level`"),
        ("resistor level 8 ohm\n", "same-label-twice", "`level`"),
        ("resistor ground 8 ohm\n", "reserved-name", "`ground` cannot name a part"),
        ("choice none { }\n", "lone-position", "no position"),
        ("choice b { position x { set level = soft }\n position y { omit R1 } }\n", "misplaced-statement", "position"),
        ('allow bare-tweeter in level because "x"\n', "unknown-name", "`level`"),
    ],
)
def test_names_and_places_that_cannot_be(more: str, name: str, words: str) -> None:
    found = [finding for finding in compiled(BOX + CHOICE + more).findings if finding.name == name]
    assert found and words in found[0].headline


def test_a_waiver_at_the_end_of_a_knob() -> None:
    """A pad too weak at its end is accepted there, and the line is idle nowhere."""
    text = EXAMPLE.read_text(encoding="utf-8").replace("most 12 dB, 5 %, 50 W", "most 12 dB, 5 %, 9 W")
    text += 'allow resistor-hot on A1 in A1.most because "the knob is stopped before"\n'
    told = [(f.variant, f.name) for made in Workspace.of_text(text).compilations for f in made.findings]
    assert (None, "unknown-name") not in told and ("A1.most", "resistor-hot") not in told
    assert [name for _, name in told if name in ("idle-allow", "unknown-name")] == []


def test_a_waiver_for_a_variant_that_there_is_not() -> None:
    line = 'allow bare-tweeter in level.sft because "a trial"\n'
    found = [f for f in compiled(BOX + CHOICE + line).findings if f.name == "unknown-name"]
    assert [f.span.text for f in found] == ["level.sft"]


# --- attenuators, taps, motional impedances


@pytest.mark.parametrize(("end", "loss_db"), [("least", 0.01), ("most", 12.0), (None, 3.0)])
def test_an_attenuator_takes_its_loss_and_keeps_its_load(end: str | None, loss_db: float) -> None:
    """An L-pad by Ohm's law: with its load of 8 ohm it takes as much current as the load alone (derived)."""
    text = "driver tweeter 8 ohm\nattenuator A1 8 ohm { loss 3 dB, most 12 dB }\nleg tweeter {\n"
    text += "input+ -- A1 -- tweeter+\nA1.common -- return\ntweeter- -- return\n}\n"
    from shuntwise.api import solve

    response = solve(compiled(text, f"A1.{end}" if end else None), [1000.0])
    assert 20 * np.log10(abs(response.driver_voltage("tweeter"))) == pytest.approx(-loss_db, abs=1e-9)
    assert abs(response.impedance("input")) == pytest.approx(8.0, rel=1e-9)


@pytest.mark.parametrize("k", [1.0, 0.98, 0.7])
@pytest.mark.parametrize(("tap", "share"), [("50 %", 0.5), ("-6 dB", 10 ** (-6 / 20)), ("70 %", 0.7)])
def test_a_tap_by_turns_makes_the_whole_winding(tap: str, share: float, k: float) -> None:
    """La : Lb as the squares of the turns, and the whole is that of two coupled coils in series, aiding: Terman, Radio
    Engineers' Handbook, 1943, section 2 (from memory). With k = 1 the tap has the square of the share."""
    text = f"driver woofer 8 ohm\ntapped coil T1 1.2 mH {{ tap {tap}, k {k} }}\n"
    found = compiled(text).design.parts["T1"].quantities["tap"].value
    other = found * ((1 - share) / share) ** 2
    assert found + other + 2 * k * math.sqrt(found * other) == pytest.approx(1.2e-3, rel=1e-12)
    if k == 1:
        assert found == pytest.approx(share**2 * 1.2e-3, rel=1e-12)


def test_a_tap_may_be_set_by_its_level() -> None:
    text = "driver woofer 8 ohm\ntapped coil T1 1.2 mH { tap 0.3 mH, k 1 }\n"
    assert compiled(text, None, ("T1.tap=-6 dB",)).design.parts["T1"].quantities["tap"].value == pytest.approx(
        1.2e-3 * 10 ** (-6 / 10)
    )


def test_a_motional_impedance_is_the_one_that_is_solved() -> None:
    """The elements of the network are the three that were stated; fs and Q as in Small, 1972 (1/(2 pi sqrt(L C)))."""
    text = "driver woofer 8 ohm { re 5.7 ohm, res 62 ohm, les 27 mH, ces 290 uF }\n"
    text += "leg woofer {\ninput+ -- woofer+\nwoofer- -- return\n}\n"
    made = compiled(text)
    from shuntwise.network.network import Network

    assert isinstance(made.lowered, Network)
    values = {element.quantity: element.value for element in made.lowered.elements}
    assert [values[key] for key in ("res", "lces", "cmes")] == pytest.approx([62, 27e-3, 290e-6], rel=1e-12)
    assert made.design.drivers["woofer"].quantities["fs"].value == pytest.approx(
        1 / (2 * math.pi * math.sqrt(27e-3 * 290e-6))
    )


@pytest.mark.parametrize(
    ("attributes", "name"),
    [
        ("re 5.7 ohm, res 62 ohm, les 27 mH", "driver-model-incomplete"),
        ("res 62 ohm, les 27 mH, ces 290 uF", "driver-model-incomplete"),
        ("re 5.7 ohm, fs 60 Hz, res 62 ohm, les 27 mH, ces 290 uF", "driver-model-twice"),
    ],
)
def test_half_a_motional_impedance(attributes: str, name: str) -> None:
    text = f"driver woofer 8 ohm {{ {attributes} }}\nleg woofer {{\ninput+ -- woofer+\nwoofer- -- return\n}}\n"
    assert name in [finding.name for finding in compiled(text).findings]
