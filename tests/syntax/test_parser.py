"""Text to tree: every statement is understood, every node knows its place, and nothing around a slip is lost."""

from __future__ import annotations

from collections.abc import Callable, Iterator

import pytest

from grammar.outline import outline
from shuntwise.source import Source, Span
from shuntwise.syntax import tree as t
from shuntwise.syntax.parser import parse

EVERY_STATEMENT = """\
design "Ferry deck"
amplifier 250 W into 8 ohm { least 4 ohm, bridged }
input low
posts high
driver woofer 8 ohm { re 5.6 ohm, note "ten inch" }
tapped coil T1 1.2 mH { tap 0.3 mH }
link K1
coupling L1 and Z1.L 3 %
testpoint hp
let w = ((2 * pi) * 2.4 kHz)
network pad (source, load) given loss, rated = 20 W { resistor R 3 ohm ; source -- R -- load }
use pad as P1 { loss 4 dB }
include "notch" from library
leg woofer and tweeter { input+ -- (L2 -- R2 | C1) -- woofer+ ; woofer- -- return }
variant hot "the lamp hot" { set L1.dcr = 0.3 ohm ; omit K1 and K2 ; fit K3 }
expect crossing of woofer and tweeter at 2.4 kHz within 10 %
expect impedance above 4 ohm from 20 Hz to 20 kHz
expect level of tweeter (-6 dB) at 10 kHz
expect polarity of tweeter reversed
allow loose-node on hp because "for the meter"
limit spread-too-wide 3 dB
board strip "Strip" { outline 100:40 mm ; thickness 1.6 mm ; copper on solder side ; seen from solder side }
board plate { copper 0.07 mm on parts side ; corner 100:40 mm cut 5 mm ; fixing 4 mm at .5:-4.25 cm { keep 8 mm } }
board plate { area n from 1:2 mm to 3:4 mm ; area s from 1:1 mm to 2:2 mm to 3:1 mm ; track w from 1:1 mm to 2:2 mm }
board plate { holes n 5 of 1 mm from 1:1 mm to 2:2 mm { ring 4 mm } ; hole lug of 2 mm at 5:5 mm { ring 4 mm } }
board plate { tags up 3 from 1:1 mm to 2:2 mm ; tag earth at 3:3 mm }
layout on plate as low { cut from 1:1 mm to 2:2 mm { width 2 mm } ; drill h1 1 mm at 1:1 mm in n ; depth 60 mm }
layout on plate { jumper n 1 -- low.n 2 { wire 1 mm, sleeved, length 4 cm } ; bus n 1 to n 3 ; lead out h1 to low+ }
layout on plate { place L1 at 1:1 mm on solder side { axis upright, start into n 1, end into low.up 1, raised 8 mm } }
layout on plate { place P1.R off board { leads into h1 and low+, note "a" } ; place C1 at 1:1 mm ; place C2 off board }
layout on plate { place C1 at 1:1 mm { axis 90 deg, tie 4 mm from 1:1 mm to 2:2 mm } }
"""


def parsed(text: str) -> t.SyntaxTree:
    tree, findings = parse(Source("a.shunt", text))
    assert not findings
    assert not tree.lost
    return tree


def test_every_statement_is_understood() -> None:
    """Each form of each statement comes back from its nodes as it was written."""
    text = EVERY_STATEMENT.replace(" ; ", ", ")
    assert outline(parsed(text).entries) == EVERY_STATEMENT.splitlines()


# --- places


def nodes(node: object) -> Iterator[tuple[tuple[object, ...], Span]]:
    """All nodes of a tree (named tuples with a span) and their spans."""
    if not isinstance(node, tuple):
        return
    if isinstance(span := getattr(node, "span", None), Span):
        yield node, span
    for child in node:
        yield from nodes(child)


UNIFORM = """\
design "Größe"
coil µL1 0.82 mH { dcr 0.28 ohm, 5 % }
leg woofer {
  input+ -- (µL1 | C1) -- woofer+
  woofer- -- return
}
"""


@pytest.mark.parametrize(
    "change",
    [lambda text: text, lambda text: text.replace("\n", "\r\n"), lambda text: text.replace("  ", "\t"),
     lambda text: "\n\n# ein Kommentar: ü \U0001f50a\n" + text, lambda text: text.removesuffix("\n"),
     lambda text: text.replace(" ", "\u00a0"), lambda text: text.replace(" ", "  ").replace("\n", "   # so\n")],
    ids=["plain", "CR LF", "tabs", "comments", "no last line end", "no-break blanks", "wide"],
)  # fmt: skip
def test_place_of_every_node_is_exact(change: Callable[[str], str]) -> None:
    """Whatever the blanks and line ends, a word's span covers the word, and a node's covers its children."""
    text = change(UNIFORM)
    tree = parsed(text)
    words = [(node, span) for node, span in nodes(tree.entries) if isinstance(node, t.Ident)]
    assert len(words) == 13
    for node, span in words:
        assert isinstance(node, t.Ident)
        assert span.text == node.text
        assert text[: span.start].count("\n") + 1 == span.line
        assert span.column == span.start - (text.rfind("\n", 0, span.start) + 1) + 1
    for node, span in nodes(tree.entries):
        for _, inner in nodes(tuple(node)):
            assert span.start <= inner.start
            assert inner.end <= span.end


def test_span_of_statement_begins_and_ends_with_it() -> None:
    """A statement's span holds neither the blanks nor the comment around it."""
    tree = parsed("  coil L1 0.82 mH   # the big one\n\tleg woofer {\r\n a -- b }  \n")
    assert [entry.span.text for entry in tree.entries] == ["coil L1 0.82 mH", "leg woofer {\r\n a -- b }"]


def test_value_and_pad_have_their_own_places() -> None:
    """`0.82 mH` is one node, its unit another, and a pad's owner is without the sign."""
    tree = parsed("coil L1 0.82 mH\nleg a { L1 -- woofer+ }\n")
    coil, leg = tree.entries
    assert isinstance(coil, t.PartDecl) and isinstance(coil.value, t.Number) and coil.value.unit
    assert (coil.value.span.text, coil.value.unit.span.text, coil.kind.span.text) == ("0.82 mH", "mH", "coil")
    assert isinstance(leg, t.Leg) and isinstance(leg.entries[0], t.Walk)
    pad = leg.entries[0].stations[1]
    assert isinstance(pad, t.Pad)
    assert (pad.span.text, pad.owner.span.text, pad.sign) == ("woofer+", "woofer", "+")


# --- layout


@pytest.mark.parametrize("text", ["", "\n", "   ", "# only\n# comments", "\r\n\r\n", "\t# x", "\n\n\n# x\n\n"])
def test_text_without_statements_is_an_empty_tree(text: str) -> None:
    """An empty file, and a file of comments, is a design of which nothing is said."""
    assert parsed(text).entries == ()


def test_walk_goes_on_behind_an_arrow_at_the_line_end() -> None:
    """A `--` at the end of a line joins it to the next, comments between them or not."""
    tree = parsed("leg a {\n  input+ -- L1 --  # the big coil\n\n    # and then\n    woofer+\n}\n")
    assert outline(tree.entries) == ["leg a { input+ -- L1 -- woofer+ }"]


def test_list_may_have_commas_line_ends_or_both() -> None:
    """One attribute to a line, several on one, and a comma behind the last."""
    tree = parsed("coil L1 1 mH {\n  dcr 0.3 ohm, 5 %,\n  air core\n}\ncoil L2 1 mH { 5 %, }\ncoil L3 1 mH { }\n")
    first = "coil L1 1 mH { dcr 0.3 ohm, 5 %, air core }"
    assert outline(tree.entries) == [first, "coil L2 1 mH { 5 % }", "coil L3 1 mH"]


def test_words_of_the_language_may_be_names_where_only_names_stand() -> None:
    """`set` and `lamp` are good names for a node or a part; only a line cannot begin with them."""
    tree = parsed("coil lamp 1 mH\nleg a { input+ -- set -- lamp -- return }\n")
    assert outline(tree.entries) == ["coil lamp 1 mH", "leg a { input+ -- set -- lamp -- return }"]


def test_arithmetic_binds_as_in_algebra() -> None:
    """Powers before products before sums, and from left to right among equals."""
    tree = parsed("let a = 1 + 2 * 3 ^ 2 - 4 / 2 / 2\nlet b = -2 ^ 2\n")
    assert outline(tree.entries) == ["let a = ((1 + (2 * (3 ^ 2))) - ((4 / 2) / 2))", "let b = ((-2) ^ 2)"]


# --- slips (grammar/malformed.md has the messages)


def test_words_of_a_lost_statement_are_remembered() -> None:
    """What stood in a lost statement may be declared there: later passes must not miss it."""
    tree, findings = parse(Source("a.shunt", "coil L1 1 mH { dcr $ ohm }\nlet x = (L9 + \nleg a { L1 $ C1 }\n"))
    assert len(findings) == 3
    assert [sorted(lost.words) for lost in tree.lost] == [["dcr", "ohm"], ["L9", "x"], ["C1", "L1"]]
    assert [lost.span.text.strip() for lost in tree.lost] == ["dcr $ ohm", "let x = (L9 +", "L1 $ C1"]


def test_slip_costs_one_statement_or_one_attribute() -> None:
    """What stands before, behind and around a slip is in the tree."""
    text = "coil L1 1 mH { 5 %, dcr $ ohm, air core }\nlet x = (\nleg a {\n p -- q\n r $ s\n t -- u\n}\nlink K1\n"
    tree, findings = parse(Source("a.shunt", text))
    assert len(findings) == 3
    assert outline(tree.entries) == ["coil L1 1 mH { 5 %, air core }", "leg a { p -- q ; t -- u }", "link K1"]


def test_statement_that_was_read_on_keeps_its_place_in_the_text() -> None:
    """A misspelt word has the span of what was written and the text of what was meant."""
    tree, _ = parse(Source("a.shunt", "capacitro C1 6.8 uF\n"))
    part = tree.entries[0]
    assert isinstance(part, t.PartDecl)
    assert (part.kind.text, part.kind.span.text, part.span.text) == ("capacitor", "capacitro", "capacitro C1 6.8 uF")


def test_sound_text_is_not_judged_by_its_look() -> None:
    """Statements of a variant may stand at the margin, or on the lines of a leg: they are no forgotten braces."""
    text = "variant v {\n  set L1 = 1 mH\nset L2 = 1 mH\nlet f = 3\n}\nleg a {\n  b -- c\ncoil L1 1 mH\n}\n"
    assert len(parsed(text).entries) == 2


def test_line_of_slips_is_not_all_told() -> None:
    """Beyond twenty slips on a line nothing more is said of it, and the next line is read as ever."""
    _, findings = parse(Source("a.shunt", "a ; " * 50 + "\ncoil = 3\n"))
    assert 1 <= len([f for f in findings if f.span.line == 1]) <= 21
    assert [f.span.line for f in findings][-1] == 2
