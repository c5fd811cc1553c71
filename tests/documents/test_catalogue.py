"""Documents are a list: what stands in it is built, named by its file, and no two have one name."""

from __future__ import annotations

from pathlib import Path

import pytest

from documents.designs import TWO_WAY
from shuntwise.cli.main import main
from shuntwise.documents import catalogue
from shuntwise.documents.catalogue import DOCUMENTS, Document, render
from shuntwise.documents.material import Material
from shuntwise.network.sweep import Sweep
from shuntwise.workspace import Workspace

README = Path(__file__).parents[2] / "README.md"


def test_a_document_that_is_added_is_built(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """By the recipe alone: a function of the material, and a row."""

    def count(material: Material) -> str:
        crossing = material.figures.crossings[0].freq_hz
        return f"{material.title}: {len(material.network.elements)} elements, {crossing:.0f} Hz\n"

    monkeypatch.setattr(catalogue, "DOCUMENTS", (*DOCUMENTS, Document("count.txt", "network", count)))
    (tmp_path / "box.shunt").write_text(TWO_WAY, encoding="utf-8")
    assert main(["build", str(tmp_path / "box.shunt"), "-o", str(tmp_path / "out")]) == 0
    assert "elements" in (tmp_path / "out" / "count.txt").read_text(encoding="utf-8")
    assert {file.name for file in (tmp_path / "out").iterdir()} >= {
        document.name.replace("*", "box") for document in DOCUMENTS
    }


def test_names_are_unique_and_told_to_the_user() -> None:
    names = [document.name for document in DOCUMENTS]
    assert len({*names}) == len(names)
    text = README.read_text(encoding="utf-8")
    assert [name for name in names if name not in text] == []


def test_what_needs_no_network_is_made_without_one() -> None:
    material = Workspace.of_text("driver woofer 8 ohm\nleg woofer {\n  input+ -- woofer+\n}\n").material()
    for document in DOCUMENTS:
        if document.needs == "circuit":
            assert document.content(material)


def test_a_document_is_the_same_alone_and_in_the_folder(tmp_path: Path) -> None:
    (tmp_path / "box.shunt").write_text(TWO_WAY, encoding="utf-8")
    assert main(["build", str(tmp_path / "box.shunt"), "-o", str(tmp_path / "out")]) == 0
    material = Workspace(str(tmp_path / "box.shunt")).material(Sweep(20.0, 20e3, 100))
    for name in ("netlist.cir", "read-back.txt", "response.csv", "summary.txt"):
        assert (tmp_path / "out" / name).read_bytes() == render(name, material).encode()


def test_no_text_document_holds_what_could_act_on_a_terminal() -> None:
    """Whatever a title or a note holds: escapes, marks that turn the direction of writing, bells."""
    hostile = "bad \x1b[31m \u202e \x07 title"
    text = f'design "{hostile}"\n' + TWO_WAY.replace('design "', '# "', 1)
    material = Workspace.of_text(text).material()
    assert "\x1b" in material.title
    for document in DOCUMENTS:
        if document.name.endswith((".txt", ".cir", ".csv")):
            content = document.content(material)
            said = content if isinstance(content, str) else content.decode("utf-8")
            assert not set("\x1b\u202e\x07") & set(said), document.name
