"""Any text at all gives a tree or findings, never a traceback, and the work it costs is bounded by its size.

`SHUNTWISE_LONG=1 pytest tests/property/test_any_text.py` runs a campaign of some hours' worth of examples
instead of the sample of every run.
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from types import FrameType

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from property.any_text import (
    EXAMPLES,
    characters,
    glued,
    judge_all,
    judge_form,
    mutated_examples,
    sentences,
)
from shuntwise.files import read_source
from shuntwise.source import Source
from shuntwise.syntax.parser import parse

TIMES = 100 if os.environ.get("SHUNTWISE_LONG") else 1


def examples(count: int) -> settings:
    """That many examples, without a clock: another process must not make a test fail."""
    return settings(
        max_examples=count * TIMES, deadline=None, suppress_health_check=[HealthCheck.too_slow], derandomize=TIMES == 1
    )


@examples(250)
@given(characters | sentences | glued)
def test_any_characters_give_a_tree_or_findings(text: str) -> None:
    """Words of the language in any order, and anything at all between them."""
    judge_form(text)


@examples(90)
@given(mutated_examples())
def test_mutated_example_gives_a_tree_or_findings(text: str) -> None:
    """A sound design with a few slips, where most of the text still means something."""
    judge_form(text)


@examples(60)
@given(sentences | glued)
def test_any_characters_pass_through_all_checks(text: str) -> None:
    """What is left of a text goes through every later pass as well."""
    judge_all(text)


@examples(40)
@given(mutated_examples())
def test_mutated_example_passes_through_all_checks(text: str) -> None:
    """Half-broken designs reach the circuit, the solver and every rule."""
    judge_all(text)


@examples(150)
@given(st.binary(max_size=200))
@example(b"\xff\xfec\x00")
@example(b'\xef\xbb\xbfdesign "box"\n')
@example(b"\x00")
def test_any_bytes_give_a_text_or_a_reason(content: bytes) -> None:
    """A file of any bytes is read or refused with a reason; what is read gives a tree or findings."""
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "any.shunt"
        path.write_bytes(content)
        source = read_source(path, "any.shunt")
    if isinstance(source, Source):
        judge_form(source.text)
    else:
        assert source.reason


# --- work

HOSTILE: dict[str, Callable[[int], str]] = {
    "sound design": lambda n: EXAMPLES[3] * (n // 40),
    "open round brackets in a walk": lambda n: "leg a {\n x -- " + "(" * n,
    "open round brackets in a value": lambda n: "let a = " + "(" * n,
    "nested round brackets": lambda n: "let a = " + "(" * n + "1" + ")" * n,
    "nested groups": lambda n: "leg a {\nx -- " + "(" * n + "L1 | C1" + ")" * n + " -- y\n}\n",
    "a long sum": lambda n: "let a = " + "+".join(["1"] * n),
    "many minus signs": lambda n: "let a = " + "-" * n + "1",
    "open braces": lambda n: "leg a {" * n,
    "open braces on lines": lambda n: "leg a {\n" * n,
    "open lists": lambda n: "driver a {\n" * n,
    "open variants": lambda n: "variant a {\n set a = 3\n" * n,
    "closing braces": lambda n: "}\n" * n,
    "open groups on lines": lambda n: "leg a {\n" + "x -- ( $\n" * n,
    "errors": lambda n: "coil $ 3\n" * n,
    "errors on one line": lambda n: "coil L1 3 mH { " + "dcr $ ohm, " * n + "}",
    "missing commas on one line": lambda n: "coil L1 3 mH { " + "dcr 1 ohm " * n + "}",
    "misspelt words": lambda n: "capacitro C1 3 uF\n" * n,
    "wrong arrows on one line": lambda n: "leg a {\n" + " -> ".join(f"x{i}" for i in range(n)) + "\n}\n",
    "single dashes on one line": lambda n: "leg a {\n" + "-".join(f"x{i}" for i in range(n)) + "\n}\n",
    "open quotes": lambda n: 'design "\n' * n,
    "statements on one line": lambda n: "coil L1 3 mH " * n,
    "legs without braces": lambda n: "leg a\n x -- y\n" * n,
    "lists without an open brace": lambda n: "driver a\n re 3 ohm\n}\n" * n,
    "carriage returns": lambda n: "coil L1 3 mH\r" * n,
    "invisible characters": lambda n: "\u200b" * n,
    "digits": lambda n: "let a = " + "1" * n,
    "blanks": lambda n: " " * n + "x",
}
"""Texts made to be slow, by size."""

SIZES = {
    "open round brackets in a walk": 10_000,
    "open round brackets in a value": 10_000,
    "nested round brackets": 10_000,
    "nested groups": 10_000,
    "open braces": 10_000,
    "errors": 5000,
}
"""Where a thousand would not show a stack that overflows, or a list of findings that nobody expected."""


@pytest.mark.parametrize("name", HOSTILE)
def test_twice_the_text_is_twice_the_work(name: str) -> None:
    """The calls made for a text of twice the size are at most a little more than twice as many."""
    parse(Source("warm.shunt", "a -- b\n"))
    once, twice = work(HOSTILE[name](250)), work(HOSTILE[name](500))
    assert twice <= 2.3 * once + 2000


@pytest.mark.parametrize("name", HOSTILE)
def test_large_hostile_text_is_read_to_its_end(name: str) -> None:
    """No number of anything is a reason to stop, to recurse too deep or to forget a place."""
    judge_form(HOSTILE[name](10_000 if TIMES > 1 else SIZES.get(name, 1000)))


def work(text: str) -> int:
    """How many calls the parser and all below it make for a text: a clock that no other process disturbs."""
    calls = 0

    def count(frame: FrameType, event: str, argument: object) -> None:
        nonlocal calls
        calls += event in ("call", "c_call")

    before = sys.getprofile()
    sys.setprofile(count)
    try:
        parse(Source("hostile.shunt", text))
    finally:
        sys.setprofile(before)
    return calls
