"""Designs of every earlier version of the language say what they said, once safe fixes have put in new words."""

from __future__ import annotations

import json
import re
import shutil
from functools import cache
from pathlib import Path
from typing import Any

import pytest

from earlier.meaning import meanings
from shuntwise import LANGUAGE
from shuntwise.cli.main import main
from shuntwise.syntax.words import RENAMED

ROOT = Path(__file__).parents[2]
HERE = Path(__file__).parent
DESIGNS = sorted(HERE.rglob("*.shunt"))


@cache
def recorded(folder: Path) -> dict[str, Any]:
    found: dict[str, Any] = json.loads((folder / "meaning.json").read_text(encoding="utf-8"))
    return found


def assert_says(now: Any, then: Any, where: str) -> None:
    """All that was said then is said now; what later versions have added may stand beside it."""
    if isinstance(then, dict):
        assert isinstance(now, dict), where
        for key, value in then.items():
            said = now.get(RENAMED.get(key, key), "gone")
            if key == "dimension":  # without the bases of units that came later
                said, rest = said[: len(value)], said[len(value) :]
                assert not any(rest), where
            assert_says(said, value, f"{where}.{key}")
    elif isinstance(then, list):
        assert isinstance(now, list) and len(now) == len(then), where
        for number, (inner, value) in enumerate(zip(now, then, strict=True)):
            assert_says(inner, value, f"{where}[{number}]")
    else:
        assert now == then, where


@pytest.mark.parametrize("path", DESIGNS, ids=lambda path: path.stem)
def test_earlier_design_says_what_it_said(path: Path, tmp_path: Path) -> None:
    folder = next(parent for parent in path.parents if parent.parent == HERE)
    shutil.copytree(path.parent, tmp_path, dirs_exist_ok=True)
    copy = tmp_path / path.name
    old = [word for word in RENAMED if re.search(rf"\b{word}\b", copy.read_text(encoding="utf-8"))]
    if old:
        main(["check", "--fix", str(copy)])
    text = copy.read_text(encoding="utf-8")
    assert not [word for word in old if re.search(rf"\b{word}\b", text)]
    # Through JSON, as what is recorded went.
    assert_says(json.loads(json.dumps(meanings(copy))), recorded(folder)[path.stem], path.stem)


def test_every_word_that_went_is_in_an_earlier_design() -> None:
    texts = "".join(path.read_text(encoding="utf-8") for path in DESIGNS)
    assert [word for word in RENAMED if word not in texts] == []


def test_the_version_has_its_place_in_the_log_and_the_earlier_ones_their_designs() -> None:
    log = (ROOT / "grammar" / "CHANGES.md").read_text(encoding="utf-8")
    versions = [int(number) for number in re.findall(r"^## Version (\d+)$", log, re.MULTILINE)]
    assert versions == list(range(LANGUAGE, 0, -1))
    assert all((HERE / f"language-{number}" / "meaning.json").is_file() for number in range(1, LANGUAGE))


def test_a_changed_meaning_is_seen() -> None:
    then = recorded(HERE / "language-1")["01-balcony-fill"]
    now = json.loads(json.dumps(then))
    now[""]["parts"]["L1"]["value"]["value"] *= 1.001
    with pytest.raises(AssertionError, match=r"parts\.L1\.value"):
        assert_says(now, then, "01")
