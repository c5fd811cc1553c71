"""The grammar itself: no conflicts, no collisions, and tables that are made from it and from nothing else."""

from __future__ import annotations

import logging
import re

import pytest
from lark import Lark, logger
from lark.lexer import TerminalDef

from grammar.outline import outline
from shuntwise.house import tables
from shuntwise.source import Source
from shuntwise.syntax import signs, words
from shuntwise.syntax.box_tables import BOX
from shuntwise.syntax.parser import parse
from shuntwise.syntax.situation import BLOCK_HEADS
from shuntwise.syntax.tables import PART_KINDS

GRAMMAR = tables.GRAMMAR.read_text(encoding="utf-8")


@pytest.mark.parametrize("start", [tables.DESIGN, tables.BOX])
def test_grammar_has_one_conflict_and_no_colliding_terminals(start: str, caplog: pytest.LogCaptureFixture) -> None:
    """Only one text can be read in two ways: `{ a -3 }` is a key with its value, and no difference.

    The library reports its conflicts to a log (and, where interegular is installed, colliding terminals too).
    """
    logger.addHandler(caplog.handler)
    try:
        with caplog.at_level(logging.DEBUG, logger=logger.name):
            Lark(GRAMMAR, start=start, parser="lalr", lexer="contextual", debug=True)
    finally:
        logger.removeHandler(caplog.handler)
    assert {line for line in caplog.messages if line.strip() and not line.startswith("Unused ")} <= {
        "Shift/Reduce conflict for terminal MINUS: (resolving as shift)",
        " * <atom : NAME>",
    }
    (entry,) = parse(Source("a.shunt", "use n as N1 { a -3 }\n"))[0].entries
    assert outline((entry,)) == ["use n as N1 { a (-3) }"]


@pytest.fixture(scope="module")
def terminals() -> dict[str, TerminalDef]:
    """By name. No look for collisions, which takes seconds and which the first test has had."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("lark.lexer.has_interegular", False)
        return {terminal.name: terminal for terminal in Lark(GRAMMAR, parser="lalr").terminals}


def test_words_of_statements_are_those_of_the_grammar(terminals: dict[str, TerminalDef]) -> None:
    """Every word that begins a statement is in the list from which the nearest one is offered, and no other."""
    keywords = {str(t.pattern.value) for t in terminals.values() if t.pattern.type == "str" and t.name.isalpha()}
    spelled = {word for word in keywords if word.isalpha()}
    spelled |= {
        name.lower() for name in ("CHOICE", "POSITION", "CONNECTOR", "BOARD", "LAYOUT", "BENCH") if name in terminals
    }  # only before a name
    kinds = {kind for kind in PART_KINDS if terminals["KIND"].pattern.value.find(kind.split()[0]) >= 0}
    assert kinds == set(PART_KINDS)
    assert spelled | {word for kind in PART_KINDS for word in kind.split()} == words.KEYWORDS | words.BOARD_WORDS
    offered = {*words.STATEMENTS, "driver woofer", "driver mid", "driver tweeter"}
    assert offered >= set(words.SAID_FOR.values())
    assert not set(words.SAID_FOR) & words.KEYWORDS


def test_signs_that_are_offered_are_those_of_the_grammar(terminals: dict[str, TerminalDef]) -> None:
    """A sign or word that a mend puts in has the grammar's name for it."""
    for sign, name in signs.TERMINALS.items():
        pattern = terminals[name].pattern
        assert pattern.value == sign if pattern.type == "str" else sign == "--"


def test_heads_of_attribute_lists_are_statements() -> None:
    """The parser tells a list of attributes from a body of statements by the word before it."""
    lines = {line.split()[0] for line in (*words.BOARD_LINES, *words.LAYOUT_LINES)}
    assert {*words.STATEMENTS, *words.BOX_STATEMENTS} | lines >= BLOCK_HEADS
    assert all(kind in BLOCK_HEADS for kind in PART_KINDS)


def test_words_of_a_box_are_those_of_its_tables() -> None:
    """Every word of a box's own file is in the lists that slips are held against, and no other."""
    spelled = {re.sub(r"\(.*", "", pattern) for pattern in BOX.terminals.values()}
    assert {word for word in spelled if word.isalpha()} == words.BOX_KEYWORDS
