"""What people type before they know the language is answered by what to write instead.

The ways of writing are common practice, no source.
"""

from __future__ import annotations

import pytest

from shuntwise.api import load_text
from shuntwise.diagnostics.diagnostic import Confidence, Diagnostic
from shuntwise.diagnostics.fixes import apply_fixes
from shuntwise.loading import LIBRARY as FOLDER
from shuntwise.syntax.words import LIBRARY, LIBRARY_BOARDS

BOX = """\
driver woofer 8 ohm { re 5.9 ohm, le 0.4 mH, fs 61 Hz, qms 4.5, qes 0.48 }
coil L1 0.82 mH { dcr 0.28 ohm, 5 % }
capacitor C1 12 uF { 5 %, 250 V, film }
resistor R1 5.6 ohm { 5 %, 20 W }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- R1 -- zobel -- C1 -- woofer-
  woofer- -- return
}
"""
COIL, CAPACITOR, RESISTOR = "coil L1 0.82 mH {", "capacitor C1 12 uF { 5 %,", "resistor R1 5.6 ohm {"
WALK, ZOBEL, BACK = "input+ -- L1 -- woofer+", "woofer+ -- R1 -- zobel -- C1 -- woofer-", "woofer- -- return"
LINE = "driver woofer"
"""In front of it a line more is put."""


def told(was: str, typed: str) -> tuple[str, list[Diagnostic]]:
    """The slipped text and what is said of it that is not said of the sound one."""
    assert BOX.count(was) == 1
    text = BOX.replace(was, f"{typed}\n{was}" if was == LINE else typed)
    known = {finding.headline for finding in load_text(BOX).findings}
    return text, [finding for finding in load_text(text).findings if finding.headline not in known]


def remedy(finding: Diagnostic) -> str:
    return finding.help + " ".join(edit.text for fix in finding.fixes for edit in fix.edits)


WORDS = [
    # parts by other names
    (LINE, "cap C9 6.8 uF", "capacitor"),
    (LINE, "inductor L9 1 mH", "coil"),
    (LINE, "electrolytic C9 10 uF", "capacitor"),
    (LINE, "NPE C9 10 uF", "capacitor"),
    (LINE, "bipolar C9 10 uF", "capacitor"),
    (LINE, "autotransformer T9 4 mH { tap 1 mH }", "tapped coil"),
    (LINE, "PTC F9 1 A", "protector"),
    (LINE, "lpad P9 { loss 4 dB }", 'include "lpad" from library'),
    (LINE, "use pad as P9 { loss 4 dB }", 'include "lpad" from library'),
    (LINE, "use lpad as P9 { loss 4 dB }", 'include "lpad" from library'),
    (LINE, "knob A1 8 ohm { loss 3 dB }", "attenuator"),
    (LINE, "potentiometer A1 8 ohm { loss 3 dB }", "attenuator"),
    # attributes
    (CAPACITOR, "capacitor C1 12 uF { NPE, 5 %,", "non-polar electrolytic"),
    (CAPACITOR, "capacitor C1 12 uF { bipolar, 5 %,", "bipolar electrolytic"),
    (COIL, "coil L1 0.82 mH { iron,", "iron core"),
    (COIL, "coil L1 0.82 mH { AWG 1.2 mm,", "wire"),
    (CAPACITOR, "capacitor C1 12 uF { 5,", "`5 %`"),
    ("5 %, 250 V", "5 %, 250", "`250 V`"),
    ("5 %, 20 W", "5 %, 20", "`20 W`"),
    # values in walks
    (WALK, "input+ -- 10uF -- woofer+", "`capacitor C1 10uF`"),
    (WALK, "input+ -- 0.82 mH -- woofer+", "`coil L1 0.82 mH`"),
    (ZOBEL, "woofer+ -- 5R6 -- zobel -- C1 -- woofer-", "`resistor R1 5R6`"),
    (ZOBEL, "woofer+ -- (R1 | 5.6 ohm) -- zobel -- C1 -- woofer-", "`resistor R1 5.6 ohm`"),
    (ZOBEL, "woofer+ -- 8 -- zobel -- C1 -- woofer-", "declare the part"),
    (WALK, "input+ -- L1 0.82 mH -- woofer+", "the label alone in the walk: `-- L1 --`"),
    (WALK, "input+ -- L1 (0.82 mH) -- woofer+", "`-- L1 --`"),
    (ZOBEL, "woofer+ -- R1 5R6 -- zobel -- C1 -- woofer-", "`-- R1 --`"),
    (ZOBEL, "woofer+ -- R1=5.6 ohm -- zobel -- C1 -- woofer-", "`-- R1 --`"),
    (ZOBEL, "woofer+ -- R1 -- zobel -- C1 12 uF -- woofer-", "`-- C1 --`"),
    # pads
    (WALK, "input -- L1 -- woofer+", "input+"),
    (WALK, "in+ -- L1 -- woofer+", "input+"),
    (WALK, "IN+ -- L1 -- woofer+", "input+"),
    (WALK, "Input+ -- L1 -- woofer+", "input+"),
    (WALK, "amp+ -- L1 -- woofer+", "input+"),
    (WALK, "in -- L1 -- woofer+", "input+"),
    (WALK, "input+ -- L1 -- woofer", "woofer+"),
    (ZOBEL, "woofer -- R1 -- zobel -- C1 -- woofer-", "woofer+"),
    (BACK, "woofer -- return", "woofer-"),
    (BACK, "woofer- -- input", "return"),
    (BACK, "woofer- -- in-", "input-"),
    # units
    (RESISTOR, "resistor R1 5R6 ohm {", "`5R6` alone"),
    (RESISTOR, "resistor R1 5.6R {", "ohm"),
    (RESISTOR, "resistor R1 5.6 Ohms {", "ohms"),
    (RESISTOR, "resistor R1 0.0056 k {", "`0.0056 kohm`"),
    (CAPACITOR, "capacitor C1 12.0u { 5 %,", "`12.0 uF`"),
    (CAPACITOR, "capacitor C1 12 MFD { 5 %,", "uF"),
    (CAPACITOR, "capacitor C1 12 MF { 5 %,", "uF"),
    (CAPACITOR, "capacitor C1 12 mF { 5 %,", "`12 uF`"),
    (CAPACITOR, "capacitor C1 4u7 F { 5 %,", "`4u7` alone"),
    (CAPACITOR, "capacitor C1 4u7 uF { 5 %,", "`4u7` alone"),
    (CAPACITOR, "capacitor C1 uF6.8 { 5 %,", "6.8 uF"),
    (CAPACITOR, "capacitor C1 uF 12 { 5 %,", "12 uF"),
    (CAPACITOR, "capacitor C1 uF12 { 5 %,", "12 uF"),
    (COIL, "coil L1 0,82 mH {", "0.82"),
    (COIL, "coil L1 0.82 m {", "0.82 mH"),
    (COIL, "coil L1 mH0.82 {", "0.82 mH"),
    ("dcr 0.28 ohm", "dcr 0R28 ohm", "`0R28` alone"),
    ("dcr 0.28 ohm", "dcr 0,28 ohm", "0.28"),
    ("fs 61 Hz", "fs 0.061 k", "`0.061 kHz`"),
    ("fs 61 Hz", "fs 0k061", "`61 Hz`"),
    (LINE, "expect corner of woofer at 1.25 k within 10 %", "`1.25 kHz`"),
    (LINE, "expect corner of woofer at 1k25 within 10 %", "`1.25 kHz`"),
    (LINE, "expect level of woofer -3 dB at 20k within 1 dB", "`20 kHz`"),
    (LINE, "let corner = 1.25 k", "`1.25 kohm` or `1.25 kHz`"),
]


@pytest.mark.parametrize(("was", "typed", "words"), WORDS, ids=[typed for _, typed, _ in WORDS])
def test_what_people_type_first_is_told_the_right_way(was: str, typed: str, words: str) -> None:
    text, findings = told(was, typed)
    line = text[: text.index(typed)].count("\n") + 1
    assert any(words in remedy(finding) for finding in findings if finding.span.line == line)


ALONE = [row for row in WORDS if row[0] not in (LINE, COIL, CAPACITOR, RESISTOR)]


@pytest.mark.parametrize(("was", "typed", "words"), ALONE, ids=[typed for _, typed, _ in ALONE])
def test_a_slip_of_form_in_walks_and_attributes_is_one_message(was: str, typed: str, words: str) -> None:
    """Neither the part that the value stood for, nor the driver whose pad it was, is said to lack a wire."""
    _, findings = told(was, typed)
    assert len([f for f in findings if words in remedy(f)]) == len(
        [f for f in findings if f.severity.value != "advice"]
    )


@pytest.mark.parametrize(
    "typed",
    ["5R6", "5.6 ohms", "5.6 Ω", "5.6Ω", "5.6 \u2126", "0.0056 kohm"],
)
def test_ohms_are_written_in_all_these_ways(typed: str) -> None:
    assert told(RESISTOR, f"resistor R1 {typed} {{")[1] == []


@pytest.mark.parametrize("typed", ["12u0", "12 \u00b5F", "12 \u03bcF", "12uF", "0.012 mF"])
def test_microfarads_are_written_in_all_these_ways(typed: str) -> None:
    assert told(CAPACITOR, f"capacitor C1 {typed} {{ 5 %,")[1] == []


@pytest.mark.parametrize(
    ("was", "typed", "right"),
    [
        (WALK, "in+ -- L1 -- woofer+", WALK),
        (BACK, "woofer- -- IN-", "woofer- -- input-"),
        (RESISTOR, "resistor R1 5R6 ohm {", "resistor R1 5R6 {"),
        (CAPACITOR, "capacitor C1 12 MFD { 5 %,", CAPACITOR),
        (CAPACITOR, "capacitor C1 uF12.0 { 5 %,", "capacitor C1 12.0 uF { 5 %,"),
        (COIL, "coil L1 0,82 mH {", COIL),
        ("fs 61 Hz", "fs 0.061 k", "fs 0.061 kHz"),
    ],
)
def test_what_is_certain_is_mended_safely(was: str, typed: str, right: str) -> None:
    text, findings = told(was, typed)
    mended, _, _ = apply_fixes({findings[0].span.source: text}, findings, Confidence.SAFE)
    assert list(mended.values()) == [BOX.replace(was, right)]


def test_a_node_may_be_called_like_the_input() -> None:
    """In the middle of a walk, or where several walks meet and the input is named as well."""
    for walk in ("input+ -- L1 -- in -- woofer+", "input+ -- in\n  in -- L1 -- woofer+"):
        assert "unknown-name" not in {
            f.name for f in told(WALK, walk)[1] if "in" in f.subjects and "node" not in f.label
        }


def test_the_words_for_the_library_are_its_files() -> None:
    assert sorted((*LIBRARY, *LIBRARY_BOARDS)) == sorted(path.stem for path in FOLDER.glob("*.shunt"))
