"""The automaton against the parser library on the same grammar, and what it may read.

The library (lark, LALR(1)) reads the grammar anew; tokens, trees and places must be the same.
"""

from __future__ import annotations

import os
import pickle
import re
import subprocess
import sys
from functools import cache
from pathlib import Path
from random import Random

import pytest
from lark import Token as LarkToken
from lark import Tree
from lark.exceptions import UnexpectedCharacters, UnexpectedInput
from lark.exceptions import UnexpectedToken as LarkUnexpectedToken

from property.any_text import WORDS
from shuntwise.house import tables
from shuntwise.syntax.automaton import Automaton, Node, Tables, Token, UnexpectedCharacter, UnexpectedToken
from shuntwise.syntax.box_tables import BOX
from shuntwise.syntax.tables import DESIGN

ROOT = Path(__file__).parents[2]


@pytest.fixture(autouse=True)
def without_collisions(monkeypatch: pytest.MonkeyPatch) -> None:
    """The library looks for terminals that collide, which takes seconds: once is enough, in test_grammar.py."""
    monkeypatch.setattr("lark.lexer.has_interegular", False)


LIBRARY = cache(tables.parser)
TEXTS = [path.read_text(encoding="utf-8") for path in sorted((ROOT / "examples").rglob("*.shunt"))]
TEXTS += re.findall(r"```shunt[^\n]*\n(.*?)```", (ROOT / "grammar" / "LANGUAGE.md").read_text(encoding="utf-8"), re.S)


def test_tables_are_made_from_the_grammar_as_it_stands() -> None:
    assert tables.GRAMMAR.read_text(encoding="utf-8") == tables.grammar()
    assert tables.TABLES.read_text(encoding="utf-8") == tables.tables()
    assert tables.BOX_TABLES.read_text(encoding="utf-8") == tables.box_tables()


def ours(node: Node | Token) -> object:
    if isinstance(node, Token):
        return node.type, str(node), node.start_pos, node.end_pos
    return node.data, node.start, node.end, [ours(child) for child in node.children]


def theirs(node: Tree | LarkToken) -> object:
    if isinstance(node, LarkToken):
        return node.type, str(node), node.start_pos, node.end_pos
    place = (None, None) if node.meta.empty else (node.meta.start_pos, node.meta.end_pos)
    return str(node.data), *place, [theirs(child) for child in node.children]


def read(text: str, of: Tables = DESIGN) -> object:
    """The tree, or what was not expected and where."""
    automaton, at = Automaton(of), 0
    try:
        while (token := automaton.next_token(text, at)) is not None:
            at = token.end_pos
            automaton.feed(token)
        return ours(automaton.finish())
    except UnexpectedToken as error:
        return error.token.type, error.token.start_pos if error.token.type != "$END" else None
    except UnexpectedCharacter as error:
        return "", error.at


def read_by_the_library(text: str, start: str = tables.DESIGN) -> object:
    try:
        return theirs(LIBRARY(start).parse(text))
    except LarkUnexpectedToken as error:
        return error.token.type, error.token.start_pos if error.token.type != "$END" else None
    except UnexpectedInput as error:
        assert isinstance(error, UnexpectedCharacters)
        return "", error.pos_in_stream


@pytest.mark.parametrize("number", range(len(TEXTS)))
def test_texts_of_the_project_are_read_as_by_the_library(number: int) -> None:
    assert read(TEXTS[number]) == read_by_the_library(TEXTS[number])


@pytest.mark.parametrize("seed", range(20))
def test_any_words_are_read_as_by_the_library(seed: int) -> None:
    """Words in any order, and texts of the project with pieces moved: the same tree, or the same place of trouble."""
    random = Random(seed)
    for _ in range(40):
        text = random.choice(TEXTS)
        at = random.randrange(len(text) + 1)
        moved = text[:at] + random.choice(WORDS) + text[at + random.choice((0, 0, 1, 3)) :]
        jumbled = " ".join(random.choices(WORDS, k=random.randint(1, 25)))
        for candidate in (moved, jumbled):
            assert read(candidate) == read_by_the_library(candidate), candidate


BOX_TEXT = """# a box
box 7 of "a.shunt"
variant soft+level.low
bench { source 2 V, meter 2 % }
measured P1.Rs 4R7 { 1 % }
note "one"
reading resistance input+ to woofer+, drivers off: open
reading volts at sub.a, sub off, into high, 3 kHz: 0 mV
sweep "a.txt", drivers on, into low
beside "b.box"
rework "two"
"""
BOX_WORDS = (*re.findall(r'"[^"]*"|\w[\w.+-]*|[^\w\s]|\n', BOX_TEXT), "2,5", "boxes", "noted", "(", "*")


@pytest.mark.parametrize("seed", range(4))
def test_a_box_is_read_as_by_the_library(seed: int) -> None:
    """The library knows the words of designs there, too, so it may call what stands in the wrong place otherwise."""
    random = Random(seed)
    for _ in range(40):
        at = random.randrange(len(BOX_TEXT) + 1)
        moved = BOX_TEXT[:at] + random.choice(BOX_WORDS) + BOX_TEXT[at + random.choice((0, 0, 1, 3)) :]
        jumbled = " ".join(random.choices(BOX_WORDS, k=random.randint(1, 25)))
        for candidate in (BOX_TEXT, moved, jumbled):
            own, library = read(candidate, BOX), read_by_the_library(candidate, tables.BOX)
            assert own == library or (isinstance(own, tuple) and isinstance(library, tuple) and own[1] == library[1])


@pytest.mark.parametrize("where", ["absolute", "relative"])
def test_nothing_is_read_from_a_cache(where: str, tmp_path: Path) -> None:
    """A pickle planted where tables might be kept is never opened, and nothing is left behind."""
    planted = tmp_path / "shuntwise" / "grammar-tables.bin"
    planted.parent.mkdir()

    class Runs:
        def __reduce__(self) -> tuple[object, tuple[str]]:
            return os.mkdir, (str(tmp_path / "ran"),)

    planted.write_bytes(pickle.dumps(Runs()))
    design = tmp_path / "box.shunt"
    design.write_text(TEXTS[0], encoding="utf-8")
    before = sorted(tmp_path.rglob("*"))
    code = "import sys; from shuntwise.cli.main import main; status = main(['check', 'box.shunt']);"
    code += "print(sorted({'lark'} & set(sys.modules)), status)"
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "compiler"), "PYTHONDONTWRITEBYTECODE": "1"}
    environment["XDG_CACHE_HOME"] = str(tmp_path) if where == "absolute" else "."
    run = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, env=environment, cwd=tmp_path, check=False
    )
    assert run.stdout.splitlines()[-1] == "[] 0", run.stdout + run.stderr
    assert sorted(tmp_path.rglob("*")) == before
