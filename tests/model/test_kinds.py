"""The table of part kinds, and what stands beside it: they say the same, and a row that cannot be right is refused."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from rules.compiling import findings_of
from shuntwise import units as u
from shuntwise.diagnostics.diagnostic import Severity
from shuntwise.model.kinds import BODY, CAPACITOR, COIL, KINDS, TAPPED_COIL, PartKind
from shuntwise.network.part_model import PART_MODELS, part_model
from shuntwise.source import Source
from shuntwise.syntax.tables import PART_KINDS
from shuntwise.syntax.words import KIND_OF_LETTER
from tolerance.designs import sound

ALL = pytest.mark.parametrize("kind", KINDS.values(), ids=lambda kind: kind.word)


def test_every_kind_that_is_no_wire_has_a_model_and_no_other() -> None:
    assert PART_MODELS.keys() == {kind.word for kind in KINDS.values() if not kind.wire}


def test_the_parser_knows_the_kinds_as_they_are_in_the_table() -> None:
    assert {word: kind.example for word, kind in KINDS.items()} == PART_KINDS
    assert all(letter in KINDS[kind].letters for letter, kind in KIND_OF_LETTER.items())


def test_a_block_letter_is_shared_by_kinds_of_one_section_only() -> None:
    """The value of a part with several sections is not that of each section."""
    letters = [kind.block for kind in KINDS.values()]
    assert all(letters.count(kind.block) == 1 for kind in KINDS.values() if len(kind.sections) > 1)


@ALL
def test_its_example_is_sound(kind: PartKind) -> None:
    """As it is typed after the word, and with everything that the checks ask for."""
    head, _, items = kind.example.partition(" {")
    items = ", ".join(filter(None, (items.rstrip(" }"), *kind.asked.values())))
    for text in (f"{kind.word} {kind.example}\n", f"{kind.word} {head} {{ {items} }}\n"):
        found = findings_of(Source("a.shunt", text), ("language", "documents"))
        assert [finding.name for finding in found if finding.severity is Severity.ERROR] == [], text


@ALL
def test_the_reference_describes_it(kind: PartKind) -> None:
    reference = (Path(__file__).parents[2] / "grammar" / "LANGUAGE.md").read_text(encoding="utf-8")
    assert f"\n| `{kind.word} {kind.example.partition(' {')[0]}`" in reference


@ALL
def test_its_row_names_what_there_is(kind: PartKind) -> None:
    attributes = {attribute.name for attribute in (*kind.bare, *kind.keyed, *BODY)}
    assert attributes >= set(kind.asked)
    assert kind.wire or kind.block


@pytest.mark.parametrize("kind", [kind for kind in KINDS.values() if not kind.wire], ids=lambda kind: kind.word)
def test_its_tolerance_moves_elements_of_its_model(kind: PartKind) -> None:
    text = f"driver woofer 8 ohm\n{kind.word} {kind.example}\nleg woofer {{\n  input+ -- {kind.example.split()[0]} -- "
    design, _ = sound(text + "woofer+\n  woofer- -- return\n}\n")
    (part,) = design.parts.values()
    model = part_model(part)
    assert {link.quantity for row in model.sections.values() for link in row} >= set(kind.varying)


class TestRowsThatCannotBeRight:
    def test_a_terminal_without_a_section(self) -> None:
        with pytest.raises(ValueError, match="do not use its terminals"):
            replace(COIL, terminals=("start", "end", "tap"))

    def test_a_section_to_an_unknown_terminal(self) -> None:
        with pytest.raises(ValueError, match="do not use its terminals"):
            replace(COIL, sections={"": ("start", "middle")})

    def test_a_walk_that_goes_through_nothing(self) -> None:
        with pytest.raises(ValueError, match="goes through none"):
            replace(COIL, terminals=("a", "b", "c", "d"), sections={"one": ("a", "c"), "two": ("b", "d")})

    def test_sections_without_names(self) -> None:
        with pytest.raises(ValueError, match="need names"):
            replace(COIL, sections={"only": ("start", "end")})

    def test_the_letter_of_the_driver(self) -> None:
        with pytest.raises(ValueError, match="is the driver's"):
            replace(CAPACITOR, block="D")


def test_the_terminals_of_one_winding_are_told_together() -> None:
    assert TAPPED_COIL.windings == (frozenset(("start", "tap", "end")),)
    two = replace(TAPPED_COIL, terminals=("a", "b", "c", "d"), sections={"one": ("a", "b"), "two": ("c", "d")})
    assert set(two.windings) == {frozenset("ab"), frozenset("cd")}


def test_every_value_is_in_a_unit_that_the_language_has() -> None:
    assert all(kind.value is None or kind.value.dimension in u.SYMBOLS for kind in KINDS.values())
