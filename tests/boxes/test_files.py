"""Boxes as files: what a stranger's may reach, what is told of one that is none, and two who write at once."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from boxes.texts import WEDGE
from shuntwise import files
from shuntwise.cli.main import Refused, main
from shuntwise.cli.output import put_new_box, put_reading
from shuntwise.documents import catalogue
from shuntwise.documents.binder import front
from shuntwise.documents.page import Printing
from shuntwise.files import OutputRefused, append_to, create_file
from shuntwise.loading import Unreadable, read_box
from shuntwise.model.box import Reading, Taken
from shuntwise.workspace import Workspace

HEAD = 'box 7 of "a.shunt"\n'
EXAMPLES = Path(__file__).parents[2] / "examples"


@pytest.fixture
def shed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder with a design in it, and something beside it that is nobody's business."""
    (tmp_path / "secret.txt").write_text("20 8 0\n" * 30 + "PRIVATE\n")
    (tmp_path / "secret.box").write_text(HEAD)
    (tmp_path / "secret.shunt").write_text(WEDGE)
    inside = tmp_path / "shed"
    inside.mkdir()
    (inside / "a.shunt").write_text(WEDGE)
    monkeypatch.chdir(inside)
    return inside


def names(path: Path) -> list[str]:
    return [finding.name for finding in read_box(str(path)).findings]


@pytest.mark.parametrize(
    ("line", "name"),
    [
        ('box 7 of "{}secret.shunt"', "box-design-missing"),
        (HEAD + 'sweep "{}secret.txt", drivers on', "sweep-not-read"),
        (HEAD + 'beside "{}secret.box"', "sister-box-unfit"),
    ],
)
def test_nothing_outside_its_folder_is_read(
    line: str, name: str, shed: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (shed / "link").symlink_to(shed.parent)
    box = shed / "left.box"
    for way in ("../", f"{shed.parent}/", "link/", "x/../../", "..\\"):
        box.write_text(line.format(way) + "\n")
        assert names(box) == [name], way
        assert main(["check", "left.box"]) == 1
        assert "PRIVATE" not in "".join(capsys.readouterr())


def test_a_box_may_use_its_workshop_and_folders_below(shed: Path) -> None:
    (shed / "boxes").mkdir()
    (shed / "left.box").write_text(HEAD)
    (shed / "boxes" / "right.box").write_text('box 8 of "../a.shunt"\nbeside "../left.box"\n')
    assert names(shed / "boxes" / "right.box") == ["box-design-missing"]
    (shed / "shuntwise.workshop").touch()
    found = read_box("boxes/right.box")
    assert found.findings == () and found.box is not None and found.box.yardstick is not None
    assert found.of is not None and found.of.key == str(shed / "a.shunt")


def test_a_box_named_by_a_link_reads_what_stands_beside_the_file(shed: Path, tmp_path: Path) -> None:
    """Its folder is that of the file, whatever stands beside the link."""
    (shed / "left.box").write_text(HEAD)
    other = tmp_path / "other"
    other.mkdir()
    (other / "a.shunt").write_text("driver x 8 ohm\n")
    (other / "link.box").symlink_to(shed / "left.box")
    found = read_box(str(other / "link.box"))
    assert found.of is not None and found.of.key == str(shed / "a.shunt")


def test_boxes_that_name_themselves_and_each_other(shed: Path) -> None:
    (shed / "left.box").write_text(HEAD + 'beside "left.box"\n')
    assert names(shed / "left.box") == ["sister-box-unfit"]
    (shed / "left.box").write_text(HEAD + 'beside "right.box"\n')
    (shed / "right.box").write_text(HEAD + 'beside "left.box"\n')
    assert names(shed / "left.box") == [] == names(shed / "right.box")


def test_of_another_design_is_a_finding(shed: Path) -> None:
    (shed / "b.shunt").write_text(WEDGE)
    (shed / "left.box").write_text(HEAD)
    assert [f.name for f in read_box("left.box", of="b.shunt").findings] == ["box-design-other"]
    assert read_box("left.box", of="a.shunt").findings == ()
    assert main(["response", "b.shunt", "--box", "left.box"]) == 1


@pytest.mark.parametrize(
    ("content", "status"),
    [
        (b"\x7fELF\x00\x01\x02" * 40, 2),
        (b"box 7 of \xff\xfe", 2),
        (b"reading volts at woofer, dummies on, 1 kHz: 1 V\n" * 220_000, 2),
        (b"reading volts at woofer, dummies on, 1 kHz: 1 V\n" * 800, 1),
        (HEAD.encode() + b"reading (" * 20_000, 1),
        (HEAD.encode() + b"bench { " * 5_000, 1),
        (HEAD.encode() + b"reading resistance at woofer, drivers on: " + b"(" * 3_000 + b"1 ohm\n", 1),
        (HEAD.encode() + b"measured L1 " + b"9" * 50_000 + b" mH\n", 1),
        (b"", 1),
        (b"\n\n# nothing\n", 1),
        (HEAD.encode() + b'note "<script>alert(1)</script> \x1b[2J"\nreading volts at \x1b, dummies on: 1 V\n', 1),
    ],
)  # fmt: skip
def test_no_content_brings_a_traceback(
    content: bytes, status: int, shed: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (shed / "left.box").write_bytes(content)
    assert main(["check", "left.box"]) == status
    out = "".join(capsys.readouterr())
    assert "Traceback" not in out and "fault in shuntwise" not in out and "\x1b" not in out
    assert out.strip()
    assert main(["response", "a.shunt", "--box", "left.box"]) == status


def test_a_box_that_is_not_there(shed: Path) -> None:
    assert main(["check", "none.box"]) == 2
    assert main(["netlist", "a.shunt", "--box", "none.box"]) == 2
    with pytest.raises(Unreadable):
        read_box(str(shed))


def test_check_tells_of_boxes_in_folders_and_mends_them(shed: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (shed / "left.box").write_text("box HS-7 of a.shunt\nreading volts at Woofer, dummies on, 1 kHz: 0,2 V\n")
    assert main(["check", "left.box", "--fix"]) == 0
    assert "1 box checked, nothing found" in capsys.readouterr().out
    assert (shed / "left.box").read_text() == (
        'box "HS-7" of "a.shunt"\nreading volts at woofer, dummies on, 1 kHz: 0.2 V\n'
    )
    main(["check", ".", "--json"])
    told = json.loads(capsys.readouterr().out)["diagnostics"]
    assert not [finding for finding in told if finding["severity"] == "error"]
    (shed / "left.box").write_text("box 7 of\n")
    assert main(["check", "left.box", "--json"]) == 1
    assert [finding["name"] for finding in json.loads(capsys.readouterr().out)["diagnostics"]] == ["syntax-error"]
    assert main(["check", "left.box", "--variant", "soft"]) == 2


@pytest.mark.parametrize("path", sorted(EXAMPLES.rglob("*.box")), ids=lambda path: path.stem)
def test_boxes_among_the_examples_are_sound(path: Path) -> None:
    found = read_box(str(path))
    assert found.findings == () and found.box is not None


# --- commands with a box


def test_a_box_gives_commands_its_variant_and_parts(
    shed: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    note = 'note "for Quentin of the Ferry"\n'
    (shed / "left.box").write_text('box "HS-7" of "a.shunt"\nvariant soft\n' + note + "measured C1 5.5 uF { 2 % }\n")
    main(["netlist", "a.shunt", "--box", "left.box"])
    ours = capsys.readouterr().out
    main(["netlist", "a.shunt", "--variant", "soft", "--set", "C1=5.5uF"])
    tried = capsys.readouterr().out

    def elements(text: str) -> list[str]:
        return [line for line in text.splitlines() if not line.startswith("*")]

    assert elements(ours) == elements(tried) and "5.5e-06" in ours
    assert "box HS-7" in ours
    main(["spread", "a.shunt", "--box", "left.box", "--builds", "2", "--json"])
    parts = {part["label"]: part["tolerance"] for part in json.loads(capsys.readouterr().out)["parts"]}
    assert parts["C1"] == pytest.approx(0.02) and parts["L1"] == pytest.approx(0.05)
    assert main(["response", "a.shunt", "--box", "left.box", "--variant", "P1.x"]) == 2
    few = [one for one in catalogue.DOCUMENTS if one.name.endswith((".txt", ".cir", "parts.csv"))]
    monkeypatch.setattr(catalogue, "DOCUMENTS", few)  # the others take seconds
    main(["build", "a.shunt", "--box", "left.box"])
    capsys.readouterr()
    (folder,) = (path for path in shed.iterdir() if path.is_dir())
    assert folder.name == "a-soft-box-HS-7-out"
    assert not any(b"Quentin" in path.read_bytes() for path in folder.iterdir())
    assert "\nbox HS-7\nvariant soft\n" in (folder / "summary.txt").read_text()
    assert main(["check", "a.shunt", "--box", "left.box"]) in (0, 1)
    assert "off-series" not in capsys.readouterr().out


def test_every_page_of_a_binder_bears_the_box(shed: Path) -> None:
    work = Workspace("a.shunt")
    itself, of_box = work.material(), work.material(variant="soft", printing=Printing(box="HS-7"))
    assert front(of_box).variant == "box HS-7, soft" and front(itself).variant == ""
    assert front(of_box).mark != front(work.material(variant="soft")).mark


def test_a_value_that_is_typed_goes_over_a_measured_one(shed: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (shed / "left.box").write_text(HEAD + "measured C1 5.5 uF\n")
    main(["netlist", "a.shunt", "--box", "left.box", "--set", "C1=4.5uF"])
    assert "4.5e-06" in capsys.readouterr().out


# --- writing

WRITER = """
import sys
from shuntwise.cli.output import put_reading
from shuntwise.model.box import Reading, Taken
for n in range(200):
    reading = Reading("volts", "woofer+", "woofer-", "dummies on", float(1000 * int(sys.argv[1]) + n), "input")
    put_reading(Taken(reading, 0.5), 1, "left.box")
"""


def test_two_who_write_at_once_lose_no_line(shed: Path) -> None:
    box = shed / "left.box"
    put_new_box("7", "a.shunt", "left.box")
    environment = {**os.environ, "PYTHONPATH": str(Path(files.__file__).parents[1])}
    writers = [subprocess.Popen([sys.executable, "-c", WRITER, str(one)], env=environment) for one in (1, 2)]
    assert [writer.wait() for writer in writers] == [0, 0]
    found = read_box(str(box))
    assert found.findings == () and found.box is not None
    wanted = {1000.0 * one + n for one in (1, 2) for n in range(200)}
    assert {taken.reading.freq_hz for taken in found.box.taken} == wanted
    assert len(box.read_text().splitlines()) == 401


def test_a_file_that_is_put_in_its_place_meanwhile_gets_the_line(shed: Path) -> None:
    """An editor saves by renaming: the line belongs into the new file."""
    box, saves = shed / "left.box", ["one\ntwo\n"]
    box.write_text("one\n")

    def addition(text: str) -> str:
        if saves:
            (shed / "fresh").write_text(saves.pop())
            (shed / "fresh").replace(box)
        return "three\n"

    append_to(box, addition)
    assert box.read_text() == "one\ntwo\nthree\n"


def test_a_full_disk_leaves_what_was_there(shed: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    box = shed / "left.box"
    box.write_text(HEAD)
    real = os.write
    monkeypatch.setattr(os, "write", lambda handle, content: real(handle, content[:5]))
    with pytest.raises(OutputRefused, match="no space"):
        append_to(box, lambda text: "reading\n")
    assert box.read_text() == HEAD


def test_what_cannot_be_written_to_is_refused(shed: Path) -> None:
    taken = Taken(Reading("resistance", "input+", "woofer+", "drivers off"), 0.5)
    (shed / "link.box").symlink_to(shed / "a.shunt")
    (shed / "binary.box").write_bytes(b"\xff\x00")
    (shed / "large.box").write_text("#" * files.LARGEST_SOURCE_BYTES)
    for name in ("link.box", "binary.box", "large.box", "none.box", "."):
        with pytest.raises(Refused):
            put_reading(taken, 1, name)
    assert (shed / "a.shunt").read_text() == WEDGE


def test_a_new_box_names_its_design_and_takes_no_one_s_place(shed: Path) -> None:
    (shed / "boxes").mkdir()
    put_new_box("HS 7", "a.shunt", "left.box", "soft")
    assert (shed / "left.box").read_text() == 'box "HS 7" of "a.shunt"\nvariant soft\n'
    assert names(shed / "left.box") == []
    for path, design in (("left.box", "a.shunt"), ("boxes/left.box", "a.shunt"), ("right.box", "../secret.shunt")):
        with pytest.raises(Refused):
            put_new_box("8", design, path)
    with pytest.raises(Refused):
        put_new_box('7" of "b', "a.shunt", "right.box")
    assert sorted(path.name for path in shed.iterdir()) == ["a.shunt", "boxes", "left.box"]
    with pytest.raises(OutputRefused, match="is there already"):
        create_file(shed / "left.box", b"")
