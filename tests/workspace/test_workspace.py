"""One design as one works on it: everything is worked out once, and again only where a text has changed."""

from __future__ import annotations

from pathlib import Path

import pytest

from shuntwise import workspace as module
from shuntwise.loading import Unreadable
from shuntwise.network.sweep import Sweep
from shuntwise.settings import SettingUnclear
from shuntwise.workspace import Workspace

COILS = "coil L1 0.5 mH { dcr 0.2 ohm, 5 % }\n"
BOX = """include "coils.shunt"
driver woofer 8 ohm { re 6 ohm, le 0.4 mH }
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
variant thick "a larger coil" {
  set L1 = 1 mH
}
"""


@pytest.fixture
def box(tmp_path: Path) -> Path:
    (tmp_path / "coils.shunt").write_text(COILS, encoding="utf-8")
    (tmp_path / "box.shunt").write_text(BOX, encoding="utf-8")
    return tmp_path / "box.shunt"


@pytest.fixture
def compiled(monkeypatch: pytest.MonkeyPatch) -> list[str | None]:
    """The variants that were compiled, one after another."""
    made: list[str | None] = []
    real = module.compile_variant

    def counted(*arguments: object, **named: object) -> object:
        made.append(named["variant"])  # type: ignore[arg-type]
        return real(*arguments, **named)  # type: ignore[arg-type]

    monkeypatch.setattr(module, "compile_variant", counted)
    return made


def test_each_compilation_is_made_once(box: Path, compiled: list[str | None]) -> None:
    work = Workspace(str(box))
    assert work.compilation() is work.compilation(None, ())
    assert work.compilation("thick") is work.compilation("thick")
    assert work.compilation(None, ["L1=2mH"]) is not work.compilation()
    assert compiled == [None, "thick", None]
    assert work.variants == ("thick",)
    assert [one.design.variant for one in work.compilations] == [None, "thick"]
    assert work.compilations is work.compilations


def test_values_are_those_of_the_variant_and_of_what_is_tried(box: Path) -> None:
    work = Workspace(str(box))

    def coil(variant: str | None = None, settings: tuple[str, ...] = ()) -> float:
        value = work.compilation(variant, settings).design.parts["L1"].value
        assert value is not None
        return value.value

    assert (coil(), coil("thick"), coil("thick", ("L1=2mH",))) == pytest.approx((0.5e-3, 1e-3, 2e-3))


def test_a_changed_text_and_nothing_else_is_compiled_anew(box: Path, compiled: list[str | None]) -> None:
    work = Workspace(str(box))
    first, material = work.compilation(), work.material()
    assert material.response is work.material().response
    assert work.material(Sweep(100.0, 1e3, 6)) is not material
    work.read_again()
    assert work.compilation() is first and work.material() is material
    (box.parent / "coils.shunt").write_text(COILS.replace("0.5", "0.7"), encoding="utf-8")
    work.read_again()
    assert work.compilation() is not first
    value = work.compilation().design.parts["L1"].value
    assert value is not None and value.value == pytest.approx(0.7e-3)
    assert compiled == [None, None]


def test_another_reason_why_a_file_is_not_read_is_seen(box: Path) -> None:
    """No text has changed then."""
    coils = box.parent / "coils.shunt"
    coils.unlink()
    work = Workspace(str(box))
    first = work.compilation()
    work.read_again()
    assert work.compilation() is first and "no such file" in first.findings[0].headline
    coils.mkdir()
    work.read_again()
    assert "is a folder" in work.compilation().findings[0].headline


def test_texts_that_are_not_saved_stand_for_their_files(box: Path) -> None:
    """Those of the design and those of what it includes; what is on the disk stays as it is."""
    coils = str(box.parent / "coils.shunt")
    work = Workspace(str(box), {coils: COILS.replace("0.5", "0.9")})
    value = work.compilation().design.parts["L1"].value
    assert value is not None and value.value == pytest.approx(0.9e-3)
    work.edit(str(box), BOX.replace("input+ -- L1", "input+ -- L2"))
    assert {finding.name for finding in work.compilation().findings} >= {"unknown-name"}
    work.edit(str(box), None)
    work.edit(coils, None)
    value = work.compilation().design.parts["L1"].value
    assert value is not None and value.value == pytest.approx(0.5e-3)
    assert box.read_text(encoding="utf-8") == BOX
    assert [Path(source.name).name for source in work.files] == ["box.shunt", "coils.shunt"]


def test_what_cannot_be_had_is_refused(box: Path) -> None:
    with pytest.raises(Unreadable):
        Workspace(str(box.parent / "nowhere.shunt"))
    work = Workspace(str(box))
    with pytest.raises(KeyError):
        work.compilation("thin")
    with pytest.raises(SettingUnclear):
        work.compilation(None, ["L1"])


def test_a_text_alone() -> None:
    work = Workspace.of_text(BOX.replace('include "coils.shunt"\n', COILS), "pasted")
    assert work.compilation().design.source.name == "pasted"
    assert work.material().columns
