"""The shape of the house: imports point down, start-up is light, the top level holds what it should."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "examples").glob("*.shunt"))


def python(code: str, *arguments: str) -> subprocess.CompletedProcess[str]:
    environment = {**os.environ, "PYTHONPATH": str(ROOT / "compiler")}
    return subprocess.run(
        [sys.executable, "-c", code, *arguments], capture_output=True, text=True, env=environment, check=False, cwd=ROOT
    )


def test_import_contract_is_kept() -> None:
    """Every import obeys the layers of pyproject.toml, and every module has its place in them."""
    code = "import sys; from importlinter.cli import lint_imports; sys.exit(lint_imports())"
    run = python(code)
    assert run.returncode == 0, run.stdout + run.stderr


def test_check_starts_without_heavy_libraries() -> None:
    """`check` of an example loads neither the plotting library, nor PySpice, scipy, masked arrays, cryptography, nor
    what writes PDFs and reads fonts; nor does `build` load the last two before it has something to write."""
    code = (
        "import sys; from shuntwise.cli.main import main; status = main(['check', sys.argv[1]]);"
        "heavy = {'PySpice', 'matplotlib', 'scipy', 'pandas', 'numpy.ma', '_hashlib'} & set(sys.modules);"
        "import shuntwise.cli.build, shuntwise.documents.catalogue, shuntwise.documents.binder;"
        "print(sorted(heavy | {'reportlab', 'fontTools', 'PIL'} & set(sys.modules)), status)"
    )
    run = python(code, str(EXAMPLES[0]))
    assert run.stdout.splitlines()[-1] == "[] 0", run.stdout + run.stderr


def test_help_starts_without_any_library() -> None:
    """Building the command line needs the standard library only."""
    code = (
        "import sys; from shuntwise.cli.main import parser; parser();"
        "print({'lark', 'networkx', 'numpy'} & set(sys.modules))"
    )
    run = python(code)
    assert run.stdout.strip() == "set()", run.stdout + run.stderr


def test_top_level_holds_what_it_should() -> None:
    tracked = subprocess.run(
        ["git", "ls-tree", "--name-only", "HEAD"], cwd=ROOT, capture_output=True, text=True, check=False
    )
    if tracked.returncode:
        pytest.skip("not a git checkout")
    allowed = {"README.md", "DEVELOPERS.md", "pyproject.toml", "grammar", "compiler", "tests", "examples"}
    assert {name for name in tracked.stdout.split() if not name.startswith(".")} <= allowed


def test_modules_are_small_enough_to_hold_in_the_head() -> None:
    """A module beyond 600 lines must say why in its opening comment."""
    long = [path for path in (ROOT / "compiler").rglob("*.py") if len(path.read_text().splitlines()) > 600]
    assert [path.name for path in long if "long because" not in path.read_text()[:2000]] == []
