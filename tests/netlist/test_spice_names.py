"""Names and notes: safe, unique and readable, whatever the author wrote."""

import re

import pytest

from shuntwise.netlist.names import CLASH_WORDS, LONGEST_NAME, NameTable, note


@pytest.mark.parametrize(
    ("author", "spice"),
    [
        ("woofer+", "woofer_plus"),
        ("woofer-", "woofer_minus"),
        ("between R1 and C2", "between_r1_and_c2"),
        ("Z1.plus", "z1_plus"),
        ("L-pad", "l_pad"),
        ("3", "n3"),
        ("µ", "u"),
        ("10 µF", "n10_uf"),
        ("8 Ω tap", "n8_ohm_tap"),
        ("Höhe", "hohe"),
        ("Größe", "grosse"),
        ("łódź", "lodz"),
        ("α", "alpha"),
        ("中", "u4e2d"),
        ("", "n"),
        ("../../etc", "etc"),
    ],
)
def test_node_name_is_readable(author: str, spice: str) -> None:
    assert NameTable().node(author) == spice


@pytest.mark.parametrize(
    ("kind", "author", "spice"),
    [
        ("L", "L1", "l1"),
        ("R", "L1.dcr", "r_l1_dcr"),
        ("R", "R1", "r1"),
        ("R", "Z1.R", "r_z1_r"),
        ("C", "C", "c_c"),
        ("K", "L1~L2", "k_l1_l2"),
        ("V", "input", "v_input"),
        ("R", "", "r_x"),
    ],
)
def test_element_name_starts_with_its_kind(kind: str, author: str, spice: str) -> None:
    assert NameTable().element(kind, author) == spice


def test_names_equal_but_for_case_stay_apart() -> None:
    names = NameTable()
    assert [names.node(a) for a in ("Out", "out", "OUT", "out+", "out plus")] == [
        "out", "out_2", "out_3", "out_plus", "out_plus_2",
    ]  # fmt: skip


def test_node_and_element_never_share_a_name() -> None:
    """gnucap prints the element's voltage for `vm(r1)` if there is an element r1."""
    names = NameTable()
    assert names.element("R", "R1") == "r1"
    assert names.node("r1") == "r1_2"


def test_clash_words_are_never_given_out() -> None:
    names = NameTable()
    given = {names.node(word.upper()) for word in CLASH_WORDS}
    assert len(given) == len(CLASH_WORDS)
    assert not given & CLASH_WORDS


def test_every_name_keeps_the_charset_and_the_length() -> None:
    names = NameTable()
    authors = ["x" * 500, "x" * 501, "X" * 502, "\n.control", "{}=,;'\"()", "007", "a\0b", "\u2028"]
    authors += ["é" * 300, "0"]
    authors += [chr(code) for code in range(0x20, 0x3000, 7)]
    given = [names.node(a, prefix) for a in authors for prefix in ("", "z_", "z1_")]
    given += [names.element(kind, a) for a in authors for kind in "RLCKVIE"]
    assert len(set(given)) == len(given)
    assert all(re.fullmatch(r"[a-z][a-z0-9_]*", name) and len(name) <= LONGEST_NAME for name in given)


def test_names_are_the_same_in_every_run() -> None:
    authors = ["woofer+", "Woofer+", "µ", "μ", "between R1 and C2"] * 2
    first, second = NameTable(), NameTable()
    assert [first.node(a) for a in authors] == [second.node(a) for a in authors]


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Quay Street wedge", "Quay Street wedge"),
        ("two\nlines", "two?lines"),
        ("ends in \\ \\\\ ", "ends in"),
        ("8 Ω, 6.8 µF", "8 ohm, 6.8 uF"),
        ("\x1b[31mred", "?[31mred"),
        ("x" * 1000, "x" * 120),
        ("x" * 119 + "\\y", "x" * 119),
    ],
)
def test_note_is_one_short_printable_line(text: str, expected: str) -> None:
    assert note(text) == expected
