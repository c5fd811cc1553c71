"""The language reference: every block on the page is compiled, and nothing of the language is left out.

A block marked `shunt` is a whole design and checks clean. One marked `shunt fragment` is a piece of one: it is
taken through the passes that read form, names and values, and only names that it lacks are forgiven. One
marked `shunt wrong` gives findings.
"""

from __future__ import annotations

import re

import pytest

from grammar.samples import PAGE, judge
from rules.compiling import findings_of_box
from shuntwise.api import load_text
from shuntwise.checks.registry import CATALOGUE
from shuntwise.loading import loader
from shuntwise.model import board_sizes as sizes
from shuntwise.model import kinds
from shuntwise.model.include import include
from shuntwise.model.intent import FORMS
from shuntwise.model.resolve import resolve
from shuntwise.source import Source
from shuntwise.syntax.parser import parse
from shuntwise.syntax.words import BOARD_WORDS, BOX_KEYWORDS, STATEMENTS
from shuntwise.units import TOLERANCE_LETTERS, UNITS

REFERENCE = PAGE.with_name("LANGUAGE.md")
TEXT = REFERENCE.read_text(encoding="utf-8")


def blocks(mark: str) -> list[str]:
    return re.findall(rf"^```{mark}\n(.*?)^```", TEXT, re.DOTALL | re.MULTILINE)


@pytest.mark.parametrize("text", blocks("shunt"))
def test_whole_design_checks_without_errors(text: str) -> None:
    """What a reader may copy as a whole is sound."""
    assert not load_text(text).failed


@pytest.mark.parametrize("text", blocks("shunt fragment"))
def test_fragment_reads_without_findings(text: str) -> None:
    """A piece of a design has no fault but the names that stand elsewhere."""
    tree, form = parse(Source("fragment.shunt", text))
    collected, found = include(tree, loader(REFERENCE, str(REFERENCE)))
    said = [*form, *found]
    for variant in (None, *(entry.name.text for entry in collected.entries if type(entry).__name__ == "Variant")):
        said += resolve(collected, variant=variant, catalogue=CATALOGUE)[1]
    assert [finding.headline for finding in said if finding.name != "unknown-name"] == []


@pytest.mark.parametrize("text", blocks("shunt wrong"))
def test_wrong_block_gives_findings(text: str) -> None:
    """What the page calls wrong is found wrong, on every line that could be."""
    _, findings = judge(text)
    assert len({finding.span.line for finding in findings}) >= 2


def test_boxes_are_of_the_design_that_the_page_begins_with() -> None:
    """A box may be copied with the design; what is called wrong is found wrong on every line but the first."""
    wedge = Source("wedge.shunt", blocks("shunt")[0])
    for text in blocks("box"):
        assert findings_of_box(Source("left.box", text), (wedge,)) == ()
    for text in blocks("box wrong"):
        found = findings_of_box(Source("left.box", text), (wedge,))
        assert {finding.span.line for finding in found} == set(range(2, len(text.splitlines()) + 1))


def test_every_block_has_a_mark() -> None:
    """No block goes unchecked."""
    marks = {"shunt", "shunt fragment", "shunt wrong", "box", "box wrong"}
    assert set(re.findall(r"^```(.+)$", TEXT, re.MULTILINE)) == marks


def words_in_code() -> set[str]:
    """All words of the page that stand in code: in a block or between backticks."""
    blocks_of_code = re.findall(r"^```.+?\n(.*?)^```", TEXT, re.DOTALL | re.MULTILINE)
    inline = re.findall(r"`([^`\n]+)`", re.sub(r"^```.*?^```", "", TEXT, flags=re.DOTALL | re.MULTILINE))
    return set(re.findall(r"[\w-]+|[%Ω]", " ".join([*blocks_of_code, *inline])))


def test_every_word_of_the_language_is_on_the_page() -> None:
    """Statements, attributes, constructions, expectations, units and tolerance letters."""
    known = {word for statement in STATEMENTS for word in statement.split()} | BOX_KEYWORDS
    known |= {"resistance", "volts", "impedance", "open", *["drivers", "off", "drivers", "on", "dummies", "on"]}
    known |= {*BOARD_WORDS, "upright"}
    for line in (sizes.RING, sizes.KEEP, sizes.CUT, sizes.WIRE):
        known |= {*line.attributes, *line.words}
    for kind in (*kinds.KINDS.values(), kinds.DRIVER, kinds.AMPLIFIER, kinds.BENCH):
        known |= {attribute.name for attribute in (*kind.keyed, *kinds.BODY)}
        known |= {word for phrase in kind.words for word in phrase.split()} | set(kind.files)
    known |= {*kinds.TEXTS, *kinds.ROLES, *kinds.PROGRAMMES, "role", "programme", "pi", "octave"}
    for quantity, form in FORMS.items():
        known |= {quantity, *form.words, *(clause for clause in form.clauses if clause != "is")}
    assert known - words_in_code() == set()


def test_every_unit_is_on_the_page() -> None:
    """But for the signs that look like others: `µ` and `μ` are told once for all units."""
    shown = set(re.findall(r"[\w%]+", TEXT))
    listed = {word for word in UNITS if "µ" not in word and "μ" not in word and "\u2126" not in word}
    spelled_out = {"kohms", "mohms", "Mohms", "octaves"}
    assert listed - shown - spelled_out == set()
    assert "µ" in TEXT and "μ" in TEXT and "U+2126" in TEXT
    for letter, share in TOLERANCE_LETTERS.items():
        assert f"`{letter}` {share * 100:g} %" in " ".join(TEXT.split())
