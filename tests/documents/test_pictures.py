"""The pictures that the README shows are those that the program draws of the showcase.

`SHUNTWISE_RECORD=1` writes them anew.
"""

from __future__ import annotations

import os
import re
from functools import cache
from pathlib import Path

import pytest

from shuntwise.documents.catalogue import render
from shuntwise.documents.material import Material
from shuntwise.workspace import Workspace

ROOT = Path(__file__).parents[2]
PICTURES = ROOT / "examples" / "pictures"


@cache
def showcase() -> Material:
    return Workspace(str(ROOT / "examples" / "13-harbour-stage.shunt")).material()


@pytest.mark.parametrize("name", ["schematic", "response"])
def test_the_picture_is_what_is_drawn(name: str) -> None:
    file, drawn = PICTURES / f"harbour-stage-{name}.svg", render(f"{name}.svg", showcase())
    if os.environ.get("SHUNTWISE_RECORD") == "1":
        file.write_text(drawn, encoding="utf-8")
    kept = file.read_text(encoding="utf-8")
    if name == "schematic":
        assert kept == drawn
    else:  # the plotting library's own strokes may differ with its version
        said, said_now = (re.findall(r"<(title|desc)>(.*?)</", text) for text in (kept, drawn))
        assert said == said_now and "457 Hz" in str(said)


def test_the_readme_shows_them() -> None:
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    shown = re.findall(r"!\[([^\]]+)\]\((examples/pictures/[\w.-]+)\)", text)
    assert {path for _, path in shown} == {f"examples/pictures/{file.name}" for file in PICTURES.iterdir()}
    assert all(len(words) > 20 for words, _ in shown)  # what it shows, for who does not see it
