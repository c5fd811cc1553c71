"""The mutator changes what the code does, one line at a time, and nothing else."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

import shuntwise
from mutations.mutants import mutants
from mutations.run import SOURCES, TESTS, accepted

TEXT = '''"""A docstring with 3 < 4."""
LIMIT = 0.5
def f(a: int = 2) -> int:
    """1 + 1"""
    if a < 3 and not a:
        return abs(a) - max(a, 1)
    raise ValueError(f"{a + 1} is over 7")
'''


def test_every_kind_of_change_is_made() -> None:
    after = {mutant.after.strip() for mutant in mutants(TEXT)}
    assert after >= {
        "LIMIT = 0.75",
        "def f(a: int = 3) -> int:",
        "if (a <= 3) and not a:",
        "if (a > 3) and not a:",
        "if (a < 3 or not a):",
        "if a < 3 and (a):",
        "return (abs(a) + max(a, 1))",
        "return (a) - max(a, 1)",
        "return abs(a) - (min(a, 1))",
        "return abs(a) - max(a, 2)",
    }
    assert not any("docstring" in text or "over" in text or "1 + 1" in text for text in after)


@pytest.mark.parametrize("folder", TESTS)
def test_every_mutant_is_python_and_differs(folder: str) -> None:
    for path in (Path(shuntwise.__file__).parent / folder).glob("*.py"):
        text = path.read_text(encoding="utf-8")
        lines = text.splitlines()
        for mutant in mutants(text)[::13]:
            changed = [*lines]
            changed[mutant.line - 1] = mutant.after
            assert changed != lines
            ast.parse("\n".join(changed))


def test_folders_and_tests_are_there() -> None:
    root = Path(__file__).parents[1]
    assert all((SOURCES / folder).is_dir() for folder in TESTS)
    assert all((root / name).exists() for names in TESTS.values() for name in names)


def test_accepted_ones_can_be_made() -> None:
    for file, before, after in accepted():
        made = mutants((SOURCES / file).read_text(encoding="utf-8"))
        assert any((m.before.strip(), m.after.strip()) == (before, after) for m in made), before
