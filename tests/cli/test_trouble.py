"""Files and screens that make trouble: fixes go where they were read, one bad file hides no other, no false words."""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from pathlib import Path

import jsonschema
import pytest

from shuntwise import loading, workspace
from shuntwise.cli.main import main

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "examples" / "07-market-horn.shunt"
SOUND = "driver woofer 8 ohm\nleg woofer {\n  input+ -- L1 -- woofer+\n  woofer- -- return\n}\n"
COMMA = "coil L1 0,82 mH\n"
POINT = "coil L1 0.82 mH\n"


# --- fixes


def test_fixes_go_to_the_file_that_was_read_and_leave_the_link(tmp_path: Path) -> None:
    """The design is a link; what it includes stands at the real place, and a namesake beside the link."""
    real, desk = tmp_path / "real", tmp_path / "desk"
    (real / "parts").mkdir(parents=True)
    (desk / "parts").mkdir(parents=True)
    (real / "box.shunt").write_text('include "parts/coils.shunt"\n' + SOUND)
    (real / "parts" / "coils.shunt").write_text(COMMA)
    (desk / "parts" / "coils.shunt").write_text("my own notes\n")
    (desk / "box.shunt").symlink_to(real / "box.shunt")
    main(["check", "--fix", str(desk / "box.shunt")])
    assert (real / "parts" / "coils.shunt").read_text() == POINT
    assert (desk / "parts" / "coils.shunt").read_text() == "my own notes\n"
    assert (desk / "box.shunt").is_symlink()


def test_design_behind_a_link_is_fixed_itself(tmp_path: Path) -> None:
    (tmp_path / "real.shunt").write_text(COMMA + SOUND)
    (tmp_path / "real.shunt").chmod(0o640)
    (tmp_path / "link.shunt").symlink_to("real.shunt")
    main(["check", "--fix", str(tmp_path / "link.shunt")])
    assert (tmp_path / "real.shunt").read_text() == POINT + SOUND
    assert (tmp_path / "link.shunt").is_symlink()
    assert (tmp_path / "real.shunt").stat().st_mode & 0o777 == 0o640


def test_folder_called_library_is_the_users_own(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    Path("library").mkdir()
    Path("library/box.shunt").write_text(COMMA + SOUND)
    assert main(["check", "--fix", "library/box.shunt"]) == 0
    assert Path("library/box.shunt").read_text() == POINT + SOUND


def test_shipped_library_is_never_changed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    shipped = tmp_path / "shipped"
    shipped.mkdir()
    (shipped / "coils.shunt").write_text(COMMA)
    monkeypatch.setattr(loading, "LIBRARY", shipped)
    design = tmp_path / "box.shunt"
    design.write_text('include "coils" from library\n' + SOUND.replace("8 ohm", "8 Ohm"))
    main(["check", "--fix", str(design)])
    assert (shipped / "coils.shunt").read_text() == COMMA
    assert "8 ohm" in design.read_text()


def test_file_that_changed_since_it_was_read_is_left_alone(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Nor is any other file of the design written: all are looked at first."""
    design, coils = tmp_path / "box.shunt", tmp_path / "coils.shunt"
    design.write_text('include "coils.shunt"\n' + SOUND.replace("8 ohm", "8 Ohm"))
    coils.write_text(COMMA)
    compiled = workspace.compile_all

    def meanwhile(*arguments: object, **options: bool) -> object:
        coils.write_text("coil L1 0,47 mH\n")
        return compiled(*arguments, **options)  # type: ignore[arg-type]

    monkeypatch.setattr(workspace, "compile_all", meanwhile)
    assert main(["check", "--fix", str(design)]) == 2
    assert coils.read_text() == "coil L1 0,47 mH\n" and "8 Ohm" in design.read_text()
    captured = capsys.readouterr()
    assert "no longer as it was read" in captured.err and "[decimal-comma]" in captured.out


@pytest.mark.parametrize("trouble", ["hard link", "read-only", "gone"])
def test_file_that_cannot_be_exchanged_is_told_of(
    trouble: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    design = tmp_path / "box.shunt"
    design.write_text(COMMA + SOUND)
    if trouble == "hard link":
        (tmp_path / "other").hardlink_to(design)
    elif trouble == "read-only":
        design.chmod(0o444)
        monkeypatch.setattr(os, "access", lambda *_: False)  # root may write to anything
    else:
        compiled = workspace.compile_all
        monkeypatch.setattr(
            workspace, "compile_all", lambda *a, **k: (design.unlink(missing_ok=True), compiled(*a, **k))[1]
        )
    assert main(["check", "--fix", str(design)]) == 2
    captured = capsys.readouterr()
    assert {"hard link": "second name", "read-only": "read-only", "gone": "not changed"}[trouble] in captured.err
    assert "[decimal-comma]" in captured.out
    assert trouble == "gone" or design.read_text() == COMMA + SOUND


def test_include_of_two_designs_is_fixed_once(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "coils.shunt").write_text(COMMA)
    for name in ("a", "b"):
        (tmp_path / f"{name}.shunt").write_text('include "coils.shunt"\n' + SOUND)
    main(["check", "--fix", str(tmp_path / "a.shunt"), str(tmp_path / "b.shunt")])
    assert (tmp_path / "coils.shunt").read_text() == POINT
    assert capsys.readouterr().err.count("fixed:") == 1


# --- one bad file among others


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "a.shunt").write_bytes(b"coil L1 \xff mH\n")
    (tmp_path / "b.shunt").write_text("driver woofer 8 ohm\nleg woofer {\n  input+ -- woofer+\n}\n")
    (tmp_path / "c.shunt").write_text("driver woofer 8 ohm\n")
    return tmp_path


def test_file_that_cannot_be_read_hides_no_other(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(folder)]) == 2
    captured = capsys.readouterr()
    assert "a.shunt" in captured.err and "not UTF-8" in captured.err
    assert "[driver-one-lead]" in captured.out and "1 not checked" in captured.out


def test_missing_file_and_empty_folder_hide_no_other(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (folder / "empty").mkdir()
    assert main(["check", str(folder / "none.shunt"), str(folder / "empty"), str(folder / "b.shunt")]) == 2
    captured = capsys.readouterr()
    assert "none.shunt" in captured.err and "holds no design" in captured.err and "[driver-one-lead]" in captured.out


def test_machines_are_told_of_unread_files(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(folder), "--json"]) == 2
    answer = json.loads(capsys.readouterr().out)
    assert [entry["file"] for entry in answer["unread"]] == [str(folder / "a.shunt")] and answer["diagnostics"]
    main(["check", str(folder), "--annotations"])
    assert f"::error file={folder}/a.shunt,title=not read::" in capsys.readouterr().out
    main(["check", str(folder), "--sarif"])
    log = json.loads(capsys.readouterr().out)
    schema = json.loads((ROOT / "tests" / "reference" / "sarif-schema-2.1.0.json").read_text())
    jsonschema.validate(log, schema)
    (invocation,) = log["runs"][0]["invocations"]
    assert invocation["executionSuccessful"] is False
    assert "a.shunt" in invocation["toolExecutionNotifications"][0]["message"]["text"]


def test_fault_of_ours_in_one_file_hides_no_other(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    compiled = workspace.compile_all

    def broken(collected, said, **options):  # type: ignore[no-untyped-def]
        if collected.source.name.endswith("c.shunt"):
            raise KeyError("to")
        return compiled(collected, said)

    monkeypatch.setattr(workspace, "compile_all", broken)
    assert main(["check", str(folder)]) == 3
    captured = capsys.readouterr()
    assert "a fault in shuntwise itself: KeyError" in captured.err and "[driver-one-lead]" in captured.out


# --- screens


def run(command_line: str, **environment: str) -> subprocess.CompletedProcess[bytes]:
    shell = f'exec "$0" -c "from shuntwise.cli.main import main; import sys; sys.exit(main())" {command_line}'
    return subprocess.run(
        ["bash", "-c", shell, sys.executable],
        capture_output=True,
        env={**os.environ, "PYTHONPATH": str(ROOT / "compiler"), **environment},
        check=False,
    )


@pytest.mark.parametrize("where", [">&-", pytest.param("> /dev/full", marks=pytest.mark.skipif(
    not Path("/dev/full").exists(), reason="the system has no such device"))])  # fmt: skip
def test_screen_that_takes_nothing_is_told_truly(where: str, tmp_path: Path) -> None:
    checked = run(f"check {EXAMPLE} {where}")
    assert checked.returncode == 2 and b"the output cannot be written" in checked.stderr
    if where != ">&-":
        return  # to draw takes seconds, and once is enough
    built = run(f"build {EXAMPLE} -o {tmp_path / 'out'} {where}")
    assert built.returncode == 2 and f"the files are in {tmp_path / 'out'}".encode() in built.stderr
    assert (tmp_path / "out" / "netlist.cir").is_file() and b"nothing was written" not in built.stderr


def test_nothing_to_say_needs_no_screen(tmp_path: Path) -> None:
    written = run(f"netlist {EXAMPLE} -o {tmp_path / 'n.cir'} >&-")
    assert written.returncode == 0 and not written.stderr


def test_reader_that_leaves_early_is_no_fault() -> None:
    done = run(f"check {EXAMPLE} {EXAMPLE} --json | head -c 1; exit ${{PIPESTATUS[0]}}".replace("exec ", ""))
    assert b"fault" not in done.stderr and b"Exception" not in done.stderr


@pytest.mark.parametrize("encoding", ["ascii", "latin-1", "cp437", "cp1252"])
def test_terminal_that_lacks_letters_gets_plain_ones(
    encoding: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    design = tmp_path / "box.shunt"
    design.write_text('design "Ωmega → Жук"\nresistor R1 3.3 Ω { 5 % 20 W }\n', encoding="utf-8")
    for words in ("check {}", "read {}", "check {} --nonsense Ω", "explain Ω{}"):
        out, err = (io.TextIOWrapper(io.BytesIO(), encoding=encoding) for _ in range(2))
        monkeypatch.setattr(sys, "stdout", out)
        monkeypatch.setattr(sys, "stderr", err)
        try:
            status = main(words.format(design).split())
        except SystemExit as ended:
            status = ended.code
        out.flush()
        err.flush()
        shown, told = (stream.buffer.getvalue().decode(encoding) for stream in (out, err))
        assert status in (0, 1, 2) and (shown or told)
        if words == "check {}":  # cp437 has the letter
            assert f"resistor R1 3.3 {'Ω' if encoding == 'cp437' else 'ohm'}" in shown


@pytest.mark.parametrize("words", ["check {}.shunt", "read {}.shunt", "netlist {}", f"netlist {EXAMPLE} -o {{}}",
                                   f"build {EXAMPLE} -o {{}}", "check inc.shunt"])  # fmt: skip
def test_path_of_300_letters_is_refused(
    words: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    long = "a" * 300
    Path("inc.shunt").write_text(f'include "{long}.shunt"\ndriver woofer 8 ohm\n')
    status = main(words.format(long).split())
    captured = capsys.readouterr()
    assert status == (1 if "inc" in words else 2)
    assert "file name too long" in captured.out + captured.err
