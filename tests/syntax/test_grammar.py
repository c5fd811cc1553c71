"""The grammar itself: no conflicts, no collisions, and no tables read from where others can write."""

from __future__ import annotations

import logging
import os
import stat
from pathlib import Path

import pytest
from lark import Lark, logger

from grammar.outline import outline
from shuntwise.source import Source
from shuntwise.syntax import parser, signs, words
from shuntwise.syntax.parser import grammar_path, parse
from shuntwise.syntax.situation import BLOCK_HEADS

GRAMMAR = grammar_path().read_text(encoding="utf-8")


def test_grammar_has_one_conflict_and_no_colliding_terminals(caplog: pytest.LogCaptureFixture) -> None:
    """Only one text can be read in two ways: `{ a -3 }` is a key with its value, and no difference.

    The library reports its conflicts to a log (and, where interegular is installed, colliding terminals too).
    """
    logger.addHandler(caplog.handler)
    try:
        with caplog.at_level(logging.DEBUG, logger=logger.name):
            Lark(GRAMMAR, parser="lalr", lexer="contextual", debug=True)
    finally:
        logger.removeHandler(caplog.handler)
    assert {line for line in caplog.messages if line.strip()} <= {
        "Shift/Reduce conflict for terminal MINUS: (resolving as shift)",
        " * <atom : NAME>",
    }
    (entry,) = parse(Source("a.shunt", "use n as N1 { a -3 }\n"))[0].entries
    assert outline((entry,)) == ["use n as N1 { a (-3) }"]


TERMINALS = {terminal.name: terminal for terminal in Lark(GRAMMAR, parser="lalr").terminals}


def test_words_of_statements_are_those_of_the_grammar() -> None:
    """Every word that begins a statement is in the list from which the nearest one is offered, and no other."""
    keywords = {str(t.pattern.value) for t in TERMINALS.values() if t.pattern.type == "str" and t.name.isalpha()}
    spelled = {word for word in keywords if word.isalpha()}
    kinds = {kind for kind in words.KINDS if TERMINALS["KIND"].pattern.value.find(kind.split()[0]) >= 0}
    assert kinds == set(words.KINDS)
    assert spelled | {word for kind in words.KINDS for word in kind.split()} == set(words.KEYWORDS)
    offered = {*words.STATEMENTS, "driver woofer", "driver mid", "driver tweeter"}
    assert offered >= set(words.SAID_FOR.values())
    assert not set(words.SAID_FOR) & words.KEYWORDS


def test_signs_that_are_offered_are_those_of_the_grammar() -> None:
    """A sign or word that a mend puts in has the grammar's name for it."""
    for sign, name in signs.TERMINALS.items():
        pattern = TERMINALS[name].pattern
        assert pattern.value == sign if pattern.type == "str" else sign == "--"


def test_heads_of_attribute_lists_are_statements() -> None:
    """The parser tells a list of attributes from a body of statements by the word before it."""
    assert set(words.STATEMENTS) >= BLOCK_HEADS
    assert all(kind in BLOCK_HEADS for kind in words.KINDS)


# --- the cache of the parser's tables


@pytest.mark.skipif(not hasattr(os, "getuid"), reason="the system has no owners of files")
def test_tables_are_never_read_from_a_shared_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The library unpickles what it finds: a folder that others can write to is not used."""
    shared = tmp_path / "shuntwise"
    shared.mkdir()
    for mode in (0o777, 0o775, 0o757):
        shared.chmod(mode)
        monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
        assert parser._table_cache() is False


def test_tables_are_kept_in_a_folder_of_the_users_own(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The folder is made with rights for its owner alone, and the path is never the library's own default."""
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "made"))
    kept = parser._table_cache()
    assert isinstance(kept, str)
    assert Path(kept).parent == tmp_path / "made" / "shuntwise"
    assert not stat.S_IMODE(Path(kept).parent.stat().st_mode) & 0o077


def test_tables_are_made_anew_where_no_folder_can_be_had(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file in the place of the folder, a link to elsewhere's owner or no home: the parser works without a cache."""
    (tmp_path / "shuntwise").write_text("in the way")
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    assert parser._table_cache() is False
