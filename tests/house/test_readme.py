"""Every snippet of the README works as it stands."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from shuntwise.api import load_text

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")


def blocks(language: str) -> list[str]:
    return re.findall(rf"```{language}\n(.*?)```", README, re.DOTALL)


@pytest.mark.parametrize("text", blocks("shunt"))
def test_designs_in_the_readme_check_clean(text: str) -> None:
    assert load_text(text).findings == ()


@pytest.mark.parametrize("code", blocks("python"))
def test_python_in_the_readme_runs(
    code: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(ROOT)
    exec(compile(code, "README.md", "exec"), {})
    assert capsys.readouterr().out


def test_readme_opens_with_the_job() -> None:
    first = README.split("\n\n")[1]
    assert "crossovers by hand" in first and "SPICE netlist" in first


def test_both_command_lines_name_files_that_exist() -> None:
    first, second = (block.strip() for block in blocks("sh"))
    assert (ROOT / re.search(r"build (\S+\.shunt)", first)[1]).is_file()  # type: ignore[index]
    assert (ROOT / second.split()[1]).is_file()
    assert "tests/run.sh" in (ROOT / ".ci" / "run").read_text()
