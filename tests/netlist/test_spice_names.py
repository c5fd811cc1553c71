"""Names and notes: safe, unique and readable, whatever the author wrote."""

import re

import pytest

from shuntwise.netlist.names import CLASH_WORDS, LONGEST_NAME, LONGEST_NODE, NameTable, note


@pytest.mark.parametrize(
    ("author", "spice"),
    [
        ("woofer+", "woofer_p"),
        ("woofer-", "woofer_m"),
        ("between R1 and C2", "r1_c2"),
        ("between Z1.C and Z1.R", "z1_c_z1_r"),
        ("inside L1", "inside_l1"),
        ("inside tweeter.re", "in_twetr_re"),
        ("inside woofer2.re", "in_wofr2_re"),
        ("posts of the amplifier of input", "pst_amp_inp"),
        ("left_top_tweeter_1+", "l_tp_tw_1_p"),
        ("left_top_tweeter_2+", "l_tp_tw_2_p"),
        ("Hochtonhorn_oben-", "hchtn_obn_m"),
        ("U1.Z2.A3.R4", "u1_z2_a3_r4"),
        ("U1.Z2.A3.R4.C5", "u1z2a3r4c5"),
        ("Z1.plus", "z1_plus"),
        ("L-pad", "l_pad"),
        ("3", "n_3"),
        ("µ", "u"),
        ("10 µF", "n_10_uf"),
        ("8 Ω tap", "n_8_ohm_tap"),
        ("in", "n_in"),
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
    given = NameTable().nodes(("Out", "out", "OUT", "out+", "out_p"))
    assert list(given) == ["Out", "out", "OUT", "out+", "out_p"]
    assert (given["out"], given["out_p"]) == ("out", "out_p")  # as the author has them, though they do not come first
    assert all(re.fullmatch(r"out_(p_)?[a-z2-7]{3}", given[a]) for a in ("Out", "OUT", "out+"))
    assert len(set(given.values())) == 5


def test_a_node_more_renames_no_other() -> None:
    """Wherever it comes, and whether or not its name clashes with that of one of the others."""
    before = ["woofer+", "left_top_tweeter_1+", "Out", "out", "inside L1", "x" * 60]
    given = NameTable().nodes(before)
    for more in ("hp", "lower_top_tweeter_1+", "OUT", "x" * 61, "in"):
        assert NameTable().nodes([*before, more]).items() >= given.items()
    for more in ("hp", "woofer_p2", "out_2", "y" * 61, "in"):
        assert NameTable().nodes([more, *before]).items() >= given.items()


def test_thousands_of_alike_names_stay_apart_and_short() -> None:
    names = NameTable()
    given = [names.node("x" * (at + 60), "z_") for at in range(3000)]
    assert len(set(given)) == 3000 and max(map(len, given)) <= LONGEST_NODE


def test_nodes_of_a_subcircuit_leave_room_for_its_name() -> None:
    names = NameTable()
    given = [
        names.node(author, before=3) for author in ("inside tweeter.re", "between Z1.C and Z1.R", "x" * 40, "X" * 40)
    ]
    assert given[:3] == ["in_tw_re", "z1cz1r", "xxxxxxxx"]
    assert all(len(name) <= LONGEST_NODE - 3 for name in given) and len(set(given)) == 4


def test_node_and_element_never_share_a_name() -> None:
    """gnucap prints the element's voltage for `vm(r1)` if there is an element r1."""
    names = NameTable()
    assert names.element("R", "R1") == "r1"
    assert re.fullmatch(r"r1_[a-z2-7]{3}", names.node("r1"))


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
    assert all(len(name) <= LONGEST_NODE for name in given)
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
