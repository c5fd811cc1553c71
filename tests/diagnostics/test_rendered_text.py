"""Whole messages as a person reads them, and that no file can talk to the terminal."""

from __future__ import annotations

from dataclasses import replace

import pytest

from shuntwise.api import load_text
from shuntwise.diagnostics.diagnostic import (
    Confidence,
    Diagnostic,
    Edit,
    Fix,
    Label,
    NotChecked,
    Severity,
)
from shuntwise.diagnostics.terminal import visible
from shuntwise.diagnostics.text import render_text, summary
from shuntwise.source import Source, Span

DESIGN = Source(
    "quay-wedge.shunt",
    'design "Quay Street wedge"\n'
    "driver tweeter { nominal 8 ohm }\n"
    "\n"
    "leg tweeter {\n"
    "\tinput+ -- C2 -- tweter+\n"
    "\ttweeter- -- return\n"
    "}\n",
)


def span(piece: str, source: Source = DESIGN) -> Span:
    start = source.text.index(piece)
    return Span(source, start, start + len(piece))


UNKNOWN = Diagnostic(
    name="unknown-node",
    severity=Severity.ERROR,
    headline="`C2` is wired to `tweter`, which nothing declares",
    span=span("tweter+"),
    label="no such node or driver in this design",
    why="a part with an unknown end cannot be placed in the circuit, so `C2` is left out of every later check",
    help="a node with a similar name exists: `tweeter`",
    places=(Label(span("tweeter"), "declared here"),),
    fixes=(Fix("write `tweeter`", (Edit(span("tweter"), "tweeter"),)),),
    subjects=("C2",),
)

UNUSED = Diagnostic("lonely-name", Severity.WARNING, "`hp` is used once", span("C2"), variant="budget")


def test_whole_message_at_full_width() -> None:
    not_checked = NotChecked("hot-resistor", "the power rating of `R1` and `R2`", ("R1", "R2"))
    assert (
        render_text([UNKNOWN, UNUSED], [not_checked])
        == """\
error: `C2` is wired to `tweter`, which nothing declares  [unknown-node]
  quay-wedge.shunt:5:18
  |
5 |     input+ -- C2 -- tweter+
  |                     ^^^^^^^ no such node or driver in this design
  quay-wedge.shunt:2:8
  |
2 | driver tweeter { nominal 8 ohm }
  |        ------- declared here
  = why: a part with an unknown end cannot be placed in the circuit, so `C2` is left out of every
         later check
  = help: a node with a similar name exists: `tweeter`
  = fix: write `tweeter` (needs review)
5 -     input+ -- C2 -- tweter+
5 +     input+ -- C2 -- tweeter+

warning: `hp` is used once  [lonely-name]
  quay-wedge.shunt:5:12
  |
5 |     input+ -- C2 -- tweter+
  |               ^^
  = in variant: `budget`

not checked: the power rating of `R1` and `R2`  [hot-resistor]
  = about: `R1`, `R2`

1 error, 1 warning; 1 check could not run
"""
    )


def test_whole_message_in_a_narrow_window() -> None:
    assert (
        render_text([UNKNOWN], width=46)
        == """\
error: `C2` is wired to `tweter`, which
       nothing declares  [unknown-node]
  quay-wedge.shunt:5:18
  |
5 |     input+ -- C2 -- tweter+
  |                     ^^^^^^^
  | no such node or driver in this design
  quay-wedge.shunt:2:8
  |
2 | driver tweeter { nominal 8 ohm }
  |        ------- declared here
  = why: a part with an unknown end cannot be
         placed in the circuit, so `C2` is
         left out of every later check
  = help: a node with a similar name exists:
          `tweeter`
  = fix: write `tweeter` (needs review)
5 -     input+ -- C2 -- tweter+
5 +     input+ -- C2 -- tweeter+

1 error
"""
    )


def test_colour_changes_nothing_but_colour() -> None:
    plain, coloured = render_text([UNKNOWN]), render_text([UNKNOWN], colour=True)
    assert "\x1b" not in plain
    assert coloured.startswith("\x1b[1;31merror:\x1b[0m \x1b[1m`C2` is wired")
    stripped = coloured
    for code in ("0", "1", "2", "31", "32", "34", "36", "1;31", "1;33", "1;35", "1;36"):
        stripped = stripped.replace(f"\x1b[{code}m", "")
    assert stripped == plain


def test_fix_of_several_places_shows_each_line_once() -> None:
    edits = (Edit(span("return"), "input-"), Edit(span("input+"), "in+"), Edit(span("tweter"), "tweeter"))
    shown = render_text([replace(UNUSED, variant=None, fixes=(Fix("rewire", edits, Confidence.SAFE),))])
    assert shown.splitlines()[5:-2] == [
        "  = fix: rewire (safe)",
        "5 -     input+ -- C2 -- tweter+",
        "5 +     in+ -- C2 -- tweeter+",
        "6 -     tweeter- -- return",
        "6 +     tweeter- -- input-",
    ]


def test_fix_that_removes_or_inserts_lines_shows_them() -> None:
    removal = Fix("drop the line", (Edit(span("\ttweeter- -- return\n"), ""),), Confidence.SHOW_ONLY)
    insertion = Fix("wire it", (Edit(Span(DESIGN, *[DESIGN.text.index("}\n", 60)] * 2), "\tC2 -- x\n"),))
    shown = render_text([replace(UNUSED, variant=None, fixes=(removal, insertion))])
    assert shown.splitlines()[5:-2] == [
        "  = fix: drop the line (show only)",
        "6 -     tweeter- -- return",
        "7 - }",
        "6 + }",
        "  = fix: wire it (needs review)",
        "7 - }",
        "7 +     C2 -- x",
        "8 + }",
    ]


def test_fix_in_two_files_names_them() -> None:
    other = Source("parts/pad.shunt", "pad\n")
    edits = (Edit(span("C2"), "C3"), Edit(span("pad", other), "pads"))
    shown = render_text([replace(UNUSED, variant=None, fixes=(Fix("rename", edits),))])
    assert shown.splitlines()[6:-2] == [
        "    quay-wedge.shunt",
        "5 -     input+ -- C2 -- tweter+",
        "5 +     input+ -- C3 -- tweter+",
        "    parts/pad.shunt",
        "1 - pad",
        "1 + pads",
    ]


def test_fix_whose_edits_clash_is_named_without_a_preview() -> None:
    edits = (Edit(span("tweter+"), "a"), Edit(span("tweter"), "b"))
    shown = render_text([replace(UNUSED, variant=None, fixes=(Fix("muddle", edits),))])
    assert shown.splitlines()[5:-2] == ["  = fix: muddle (needs review)"]


@pytest.mark.parametrize(
    ("severities", "not_checked", "expected"),
    [
        ("", 0, "no findings"),
        ("", 2, "no findings; 2 checks could not run"),
        ("e", 0, "1 error"),
        ("ww", 0, "2 warnings"),
        ("aew", 0, "1 error, 1 warning, 1 piece of advice"),
        ("eeaa", 1, "2 errors, 2 pieces of advice; 1 check could not run"),
    ],
)
def test_summary_counts(severities: str, not_checked: int, expected: str) -> None:
    kinds = {"e": Severity.ERROR, "w": Severity.WARNING, "a": Severity.ADVICE}
    diagnostics = [replace(UNUSED, severity=kinds[letter]) for letter in severities]
    entries = [NotChecked("x", "y")] * not_checked
    assert summary(diagnostics, entries) == expected
    assert render_text(diagnostics, entries).endswith(expected + "\n")


# What a terminal or a reader can be deceived with: control sequences of seven and eight bits (ECMA-48), line
# and page controls, bidi controls (Unicode Standard Annex 9), invisible characters.
HOSTILE = [
    "\x1b[2J",
    "\x1b]0;title\x07",
    "\x9b31m",
    "\x90q\x9c",
    "\b\b\b",
    "\r",
    "\n",
    "\x0b\x0c\x85\u2028\u2029",
    "\x00\x7f",
    "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\u061c\u200e\u200f",
    "\u200b\u200c\u200d\u2060\ufeff\u00ad\u034f\u3164\ufe0f\U000e0041",
    "\ud800\udcff",
    "\ue000\U0010ffff",
    "\u00a0\u3000",
]


@pytest.mark.parametrize("hostile", HOSTILE, ids=ascii)
@pytest.mark.parametrize("colour", [False, True])
def test_nothing_in_a_file_reaches_the_terminal(hostile: str, colour: bool) -> None:
    """In the excerpt, in every text that may quote the file, in its name, and in the preview of a fix."""
    source = Source(f"a{hostile}.shunt", f"x {hostile} y")
    whole = Span(source, 0, len(source.text))
    finding = Diagnostic(
        name=f"n{hostile}",
        severity=Severity.ERROR,
        headline=f"h{hostile}",
        span=whole,
        label=f"l{hostile}",
        why=f"w{hostile}",
        help=f"p{hostile}",
        places=(Label(whole, f"s{hostile}"),),
        fixes=(Fix(f"f{hostile}", (Edit(Span(source, 0, 1), f"z{hostile}"),)),),
        variant=f"v{hostile}",
    )
    entry = NotChecked(f"n{hostile}", f"c{hostile}", (f"u{hostile}",))
    shown = render_text([finding], [entry], colour=colour)
    for code in ("0", "1", "2", "31", "32", "34", "36", "1;31", "1;35") if colour else ():
        shown = shown.replace(f"\x1b[{code}m", "")
    assert all(line.isprintable() for line in shown.split("\n"))
    assert not set(hostile) & set(shown) - {"\n"} - set("[]0;title2J31mq")
    shown.encode("utf-8")
    clean = render_text([replace(finding, span=Span(source, 0, 1))], [entry])
    assert f"[n{visible(hostile)}]" in clean.replace("\n       ", "")


def test_pile_of_combining_marks_is_cut_down() -> None:
    shown = visible("a" + "\u0301" * 6)
    assert shown == "a" + "\u0301" * 4 + "<U+0301>" * 2


def test_combining_mark_at_the_start_does_not_touch_the_frame() -> None:
    assert visible("\u0301a") == "<U+0301>a"


def lacking(name: str, owner: str, *missing: str, severity: Severity = Severity.WARNING) -> Diagnostic:
    span = Span(Source("box.shunt", "coil"), 0, 1)
    return Diagnostic(name, severity, f"`{owner}` does not say it", span, subjects=(owner,), missing=missing)


def test_what_is_not_stated_is_one_list() -> None:
    """Twelve findings on missing data hide the one that matters; each thing is told once, with all that lack it."""
    listed = [
        lacking("rating-missing", "L1", "DC resistance"),
        lacking("rating-missing", "C1", "rated volts"),
        lacking("rating-missing", "L2", "DC resistance"),
        lacking("tolerance-missing", "L1", "tolerance", severity=Severity.ADVICE),
    ]
    shown = render_text(listed)
    assert shown.startswith("warning: what is not stated is not judged  [rating-missing, tolerance-missing]\n")
    assert "= DC resistance: `L1`, `L2`\n  = rated volts: `C1`\n  = tolerance: `L1`\n" in shown
    assert shown.endswith("3 warnings, 1 piece of advice\n")
    assert "does not say it" not in shown


def test_a_single_thing_that_is_not_stated_is_told_in_full() -> None:
    assert "`L1` does not say it" in render_text([lacking("rating-missing", "L1", "DC resistance")])


def test_what_could_not_run_is_one_line_if_its_names_are_not_asked_for() -> None:
    entries = [NotChecked("a", "the `wire`"), NotChecked("b", "an amplifier"), NotChecked("c", "an amplifier")]
    assert "not checked: for want of the `wire` (1); an amplifier (2)  [3 checks]\n" in render_text(
        [], entries, unrun=False
    )
    assert "not checked: the `wire`  [a]\n" in render_text([], entries)


HOBBY = """amplifier 50 W into 8 ohm
driver woofer 8 ohm
driver tweeter 8 ohm
coil L1 0.5 mH
capacitor C1 10 uF
capacitor C2 4.7 uF
coil L2 0.3 mH
resistor R1 3.3 ohm
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- woofer-
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- hp -- R1 -- tweeter-
  hp -- L2 -- return
  tweeter+ -- return
}
"""


def test_a_note_of_nominal_drivers_fits_a_screen() -> None:
    """No resistances, no ratings, no tolerances: what is wrong, what is missing and what that leaves open."""
    made = load_text(HOBBY)
    shown = render_text(made.findings, made.not_checked, unrun=False)
    assert len(shown.splitlines()) <= 45
    assert shown.count("what is not stated is not judged") == shown.count("not checked:") == 1
