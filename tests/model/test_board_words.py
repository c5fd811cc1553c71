"""The words of boards and layouts stay names wherever they are no words of the language."""

from __future__ import annotations

import pytest

from grammar.outline import outline
from shuntwise.source import Source
from shuntwise.syntax.parser import parse
from shuntwise.syntax.words import BOARD_WORDS

WORDS = sorted({*BOARD_WORDS, "board", "layout", "upright", "sleeved"})


@pytest.mark.parametrize("word", WORDS)
def test_word_names_a_node_a_part_a_pad_and_a_parameter(word: str) -> None:
    lines = [
        f"coil {word} 1 mH {{ dcr 0.3 ohm }}",
        f"let {word} = 3 ohm",
        f"testpoint {word}",
        f"use pad as {word} {{ {word} 4 dB, rated 3 W, {word} 5 dB }}",
        f"leg {word} {{ {word} -- L1 -- a ; {word} -- C1 -- b ; {word}+ -- {word} -- {word}- }}",
        f"network n (a, {word}) given {word} {{ {word} -- L1 -- a ; {word} -- C1 -- a }}",
        f"omit {word}",
    ]
    tree, said = parse(Source("a.shunt", "\n".join(line.replace(" ; ", "\n") for line in lines) + "\n"))
    assert [finding.headline for finding in said] == []
    assert outline(tree.entries) == lines
