"""An invented workshop as its builder uses it: three designs in different folders that share bounds, drivers, networks
and a table. `quayside` beside this file is copied, so that all of it belongs to whoever runs the tests.
"""

from __future__ import annotations

import json
import shutil
from pathlib import Path

import pytest

from shuntwise.cli.main import main
from shuntwise.cli.reading import design_files
from shuntwise.workshop import MARK
from shuntwise.workspace import Workspace

HARBOUR = "jobs/harbour/box.shunt"
CHAPEL = "jobs/chapel/fill.shunt"
WEDGE = "jobs/ferry/deck/wedge.shunt"


@pytest.fixture
def quay(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The workshop, in which the builder stands."""
    folder = tmp_path / "quayside"
    shutil.copytree(Path(__file__).parent / "quayside", folder)
    monkeypatch.chdir(folder)
    return folder


def named(design: str) -> list[str]:
    """The names of all files that a design reads."""
    return [source.name for source in Workspace(design).files]


def bounds(work: Workspace) -> dict[str, float]:
    return {name: limit.quantity.value for name, limit in work.compilation().design.limits.items()}


def test_designs_share_what_lies_in_other_folders(quay: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """And a file that any of them includes is checked with it, wherever below it lies.

    The chapel's is only read, since the fit of its table takes longer than all else here.
    """
    assert list(design_files(["."])) == [CHAPEL, WEDGE, HARBOUR]
    assert list(design_files(["jobs"])) == [CHAPEL, WEDGE, HARBOUR]
    assert main(["check", "jobs/harbour", "jobs/ferry"]) == 0
    assert capsys.readouterr().out == "2 designs checked, nothing found\n"
    assert named(HARBOUR) == [
        HARBOUR,
        "shared/limits.shunt",
        "shared/pads.shunt",
        "drivers/ten-inch.shunt",
        "drivers/horn.shunt",
    ]
    assert (named(CHAPEL)[-1], Workspace(CHAPEL).said) == ("drivers/ten-inch-impedance.txt", ())
    assert bounds(Workspace(WEDGE)) == {"load-too-low": 0.9}


def test_files_are_named_as_seen_from_where_one_stands(quay: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def limits(design: str) -> str:
        return next(name for name in named(design) if name.endswith("limits.shunt"))

    assert limits("./" + HARBOUR) == "shared/limits.shunt"
    assert limits(str(quay / HARBOUR)) == str(quay / "shared/limits.shunt")
    monkeypatch.chdir(quay / "jobs" / "ferry" / "deck")
    assert named("wedge.shunt") == [
        "wedge.shunt",
        "../../../shared/limits.shunt",
        "../parts.shunt",
        "../../../drivers/horn.shunt",
    ]
    assert limits("../../harbour/box.shunt") == "../../../shared/limits.shunt"
    (quay / "desk").symlink_to("jobs/harbour")
    monkeypatch.chdir(quay)
    assert limits("desk/box.shunt") == "shared/limits.shunt"  # not `desk/../../shared/limits.shunt`


def test_a_circuit_is_read_the_same_from_any_folder(
    quay: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    read = []
    for folder, design in ((quay, WEDGE), (quay.parent, f"quayside/{WEDGE}"), ((quay / WEDGE).parent, "wedge.shunt")):
        monkeypatch.chdir(folder)
        assert main(["read", design]) == 0
        read.append(capsys.readouterr().out)
    assert len(set(read)) == 1 and "Ferry deck" in read[0]


def test_a_shared_file_is_checked_by_itself(quay: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """One that includes from another folder, too."""
    for shared in ("shared/limits.shunt", "shared/pads.shunt", "jobs/ferry/parts.shunt"):
        assert main(["check", "--as-include", shared]) == 0
        assert capsys.readouterr().out == "1 include checked, nothing found\n"


def test_a_finding_and_a_fix_in_a_shared_file(quay: Path, capsys: pytest.CaptureFixture[str]) -> None:
    horn = quay / "drivers" / "horn.shunt"
    sound = horn.read_text(encoding="utf-8")
    horn.write_text(sound.replace("0.05 mH", "0,05 mH"), encoding="utf-8")
    assert main(["check", "jobs/ferry", "--json"]) == 1
    (finding,) = json.loads(capsys.readouterr().out)["diagnostics"]
    assert (finding["name"], finding["place"]["file"]) == ("decimal-comma", "drivers/horn.shunt")
    assert main(["check", "jobs/ferry", "--fix"]) == 0
    assert "fixed: drivers/horn.shunt:" in capsys.readouterr().err
    assert horn.read_text(encoding="utf-8") == sound


def test_texts_that_are_not_saved_stand_for_shared_files(quay: Path) -> None:
    work = Workspace(WEDGE, {"shared/limits.shunt": "limit load-too-low 0.8\n"})
    assert bounds(work) == {"load-too-low": 0.8}
    work.edit("drivers/horn.shunt", "driver tweeter 8 Ohm\n")
    assert "unknown-unit" in {finding.name for finding in work.compilation().findings}
    work.edit(MARK, "limit load-too-low 0.7\n")
    assert "misplaced-statement" in {finding.name for finding in work.compilation().findings}


def test_a_mark_that_comes_and_goes_is_seen(quay: Path) -> None:
    """So is what is wrong with it, though no text of the design has changed."""

    def told() -> list[str]:
        work.read_again()
        return [f"{finding.headline}: {finding.help}" for finding in work.compilation().findings if finding.help]

    work = Workspace(WEDGE)
    assert told() == []
    Path(MARK).rename("elsewhere")
    unmarked = told()
    assert len(unmarked) == 2 and unmarked[0].endswith(f"make that a workshop with an empty file `{MARK}`")
    Path(MARK).symlink_to("elsewhere")
    assert all("is a symbolic link" in line for line in told())
    Path("elsewhere").replace(MARK)
    assert told() == []


@pytest.mark.parametrize(
    ("content", "place", "headline"),
    [
        (b"", "", ""),
        (b"\n  # ours\r\n\t\n", "", ""),
        (b"\xef\xbb\xbf# ours\n", "", ""),
        (b"# ours\n\n  limit load-too-low 0.5  \n", "limit load-too-low 0.5", "holds more than comments"),
        (b"include \x1b[31m", "include \x1b[31m", "holds more than comments"),
        (b"\xff", "", "is not UTF-8: byte 0 (line 1) is 0xFF"),
        (b"#" * 2_000_000, "", "is too large: 2000000 bytes, where a design may have 1048576"),
    ],
    ids=["empty", "comments", "byte order mark", "limit", "escape code", "bytes", "huge"],
)
def test_nothing_but_comments_stands_in_a_mark(
    quay: Path, content: bytes, place: str, headline: str, capsys: pytest.CaptureFixture[str]
) -> None:
    """Who writes a bound into it would wait in vain for it to hold; the workshop is one all the same."""
    Path(MARK).write_bytes(content)
    found = [finding for finding in Workspace(WEDGE).compilation().findings if finding.name == "misplaced-statement"]
    assert [(f.span.source.name, f.span.text, f.headline) for f in found] == (
        [(MARK, place, f"the mark of the workshop {headline}")] if headline else []
    )
    assert main(["check", WEDGE]) == bool(headline)
    assert "\x1b" not in capsys.readouterr().out


def test_what_is_said_without_a_mark(quay: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Word for word, of includes and of a table, each told once since one mark remedies all."""
    Path(MARK).unlink()
    assert main(["check", CHAPEL]) == 1
    told = capsys.readouterr().out
    remedy = (
        "  = help: copy the file into the folder of the design; or, if all in the folder that holds both is\n"
        f"          your own, make that a workshop with an empty file `{MARK}`\n"
    )
    assert told.startswith(
        "error: `../../shared/limits.shunt` is not included: the path leads out of the folder of the design\n"
        "       [include-not-read]\n"
        f"  {CHAPEL}:6:9\n"
        "  |\n"
        '6 | include "../../shared/limits.shunt"\n'
        "  |         ^^^^^^^^^^^^^^^^^^^^^^^^^^^ named here\n"
        f"  {CHAPEL}:7:9\n"
        "  |\n"
        '7 | include "../../drivers/horn.shunt"\n'
        "  |         -------------------------- nor is this\n"
        f"{remedy}\n"
        "error: the table `../../drivers/ten-inch-impedance.txt` is not read: the path leads out of the\n"
        "       folder of the design  [measured-not-read]\n"
    )
    assert told.count(remedy) == 2 and "\n2 errors;" in told


def test_files_that_are_missing_are_told_one_by_one(quay: Path) -> None:
    """Each is a mistake of its own."""
    for name in ("drivers/horn.shunt", "shared/pads.shunt"):
        Path(name).unlink()
    assert [finding.span.text for finding in Workspace(HARBOUR).said] == [
        '"../../shared/pads.shunt"',
        '"../../drivers/horn.shunt"',
    ]


def test_a_strangers_design_in_a_workshop_of_its_own(quay: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Unpacked inside the workshop, it reaches nothing of it, and what it asks for is not shown."""
    (quay / "notes.txt").write_text("coil SECRET 1 mH\n", encoding="utf-8")
    folder = quay / "unpacked"
    folder.mkdir()
    (folder / MARK).touch()
    (folder / "box.shunt").write_text('include "../notes.txt"\ndriver woofer 8 ohm { measured "../notes.txt" }\n')
    assert main(["check", "unpacked"]) == 1
    told = capsys.readouterr().out
    assert told.count("the path leads out of the workshop") == 2 and "SECRET" not in told
