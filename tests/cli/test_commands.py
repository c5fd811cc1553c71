"""The commands as a user runs them: what they print and write, and their exit status."""

from __future__ import annotations

import csv
import importlib
import json
import re
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

from engines.installed import needs
from shuntwise.api import load
from shuntwise.cli.main import COMMANDS, main, parser
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.network.network import Network

ROOT = Path(__file__).parents[2]
EXAMPLE = str(ROOT / "examples" / "07-market-horn.shunt")
VARIANTS = str(ROOT / "examples" / "11-fairground-lamp.shunt")


@pytest.fixture
def broken(tmp_path: Path) -> Path:
    path = tmp_path / "broken.shunt"
    path.write_text(
        "driver woofer 8 ohm\ncoil L1 0,82 mH\nleg woofer {\n  input+ -> L1 -- woofer+\n  woofer- -- gnd\n}\n"
    )
    return path


def test_every_command_has_help(capsys: pytest.CaptureFixture[str]) -> None:
    for command in COMMANDS:
        with pytest.raises(SystemExit) as done:
            main([command, "--help"])
        assert done.value.code == 0
        assert "Example:" in capsys.readouterr().out


def test_check_of_a_clean_example(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", EXAMPLE]) == 0
    assert capsys.readouterr().out == "1 design checked, nothing found; 1 finding waived\n"


def test_check_of_a_folder_takes_all_designs(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for folder in (tmp_path, tmp_path / "one", tmp_path / "one" / "deeper"):
        folder.mkdir(exist_ok=True)
        shutil.copy(EXAMPLE, folder)
    assert main(["check", str(tmp_path)]) == 0
    assert "3 designs checked, nothing found" in capsys.readouterr().out


def test_check_of_a_broken_design(broken: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(broken)]) == 1
    out = capsys.readouterr().out
    assert "[decimal-comma]" in out and "broken.shunt:2:9" in out
    assert "\x1b" not in out, "colour belongs on a terminal only"


def test_check_fix_mends_what_is_certain(broken: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["check", str(broken), "--fix"])
    text = broken.read_text()
    assert "0.82 mH" in text and "input+ -- L1" in text and "woofer- -- return" in text
    out = capsys.readouterr()
    assert "decimal-comma" not in out.out and out.err.count("fixed:") == 3


def test_check_forms_for_machines(broken: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(broken), "--json"]) == 1
    names = {finding["name"] for finding in json.loads(capsys.readouterr().out)["diagnostics"]}
    assert "decimal-comma" in names
    assert main(["check", str(broken), "--sarif"]) == 1
    assert json.loads(capsys.readouterr().out)["version"] == "2.1.0"
    assert main(["check", str(broken), "--annotations"]) == 1
    assert capsys.readouterr().out.startswith("::error file=")


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["check", "no-such-file.shunt"], "no such file"),
        (["check", EXAMPLE, "--variant", "hott"], "no variant"),
        (["check", EXAMPLE, "--set", "L1"], "cannot be understood"),
        (["check", EXAMPLE, "--set", "L1=1mH\ncoil L9 1 mH"], "cannot be understood"),
        (["response", EXAMPLE, "--from", "2kHz", "--to", "200"], "higher"),
        (["response", EXAMPLE, "--from", "loud"], "no frequency"),
        (["explain", "loose-nod"], "loose-node"),
        (["crosscheck", EXAMPLE, "--bound", "1e-6"], "needs its reason"),
        (["netlist", EXAMPLE, "-o", "/no/such/folder/x.cir"], "no/such/folder"),
    ],
)
def test_wrong_usage_is_told_with_status_2(
    arguments: list[str], words: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(arguments) == 2
    assert words in capsys.readouterr().err


def test_unknown_command_is_told_with_status_2() -> None:
    with pytest.raises(SystemExit) as done:
        main(["biuld", EXAMPLE])
    assert done.value.code == 2


def test_a_fault_of_ours_shows_no_traceback(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.delenv("SHUNTWISE_TRACEBACK", raising=False)
    monkeypatch.setattr("shuntwise.cli.check.run", lambda options: 1 / 0)
    assert main(["check", EXAMPLE]) == 3
    err = capsys.readouterr().err
    assert "a fault in shuntwise itself" in err and "Traceback" not in err


def test_netlist_goes_to_the_screen_or_a_file(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["netlist", EXAMPLE]) == 0
    text = capsys.readouterr().out
    assert text.startswith("* shuntwise: Market-square horn box\n") and text.endswith(".end\n")
    assert main(["netlist", EXAMPLE, "-o", str(tmp_path / "x.cir")]) == 0
    assert (tmp_path / "x.cir").read_text() == text


@pytest.mark.parametrize("name", COMMANDS)
def test_a_command_has_a_module_options_and_a_row(name: str) -> None:
    """The three steps by which a command is added; completion scripts are made from the parser."""
    assert callable(importlib.import_module(f"shuntwise.cli.{name}").run)
    assert f"| `shuntwise {name}" in (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
    with pytest.raises(SystemExit) as ended:
        parser().parse_args([name, "--help"])
    assert ended.value.code == 0


def test_variants_and_tried_values_change_the_netlist(capsys: pytest.CaptureFixture[str]) -> None:
    main(["netlist", VARIANTS])
    cold = capsys.readouterr().out
    main(["netlist", VARIANTS, "--variant", "glowing"])
    hot = capsys.readouterr().out
    main(["netlist", VARIANTS, "--set", "B1=58ohm"])
    tried = capsys.readouterr().out
    cold, hot, tried = (re.sub(r"design mark \w+", "", text) for text in (cold, hot, tried))
    assert cold != hot and hot == tried


def test_response_as_csv_and_json(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["response", EXAMPLE, "--csv", "--per-decade", "3"]) == 0
    rows = list(csv.reader(capsys.readouterr().out.splitlines()))
    assert len({len(row) for row in rows}) == 1 and len(rows) > 9
    assert main(["response", EXAMPLE, "--json", "--per-decade", "3"]) == 0
    assert json.loads(capsys.readouterr().out)


def test_build_writes_a_folder_whole(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = tmp_path / "out"
    assert main(["build", EXAMPLE, "-o", str(folder)]) == 0
    names = {path.name for path in folder.iterdir()}
    assert {"netlist.cir", "response.csv", "response.svg", "response.png", "impedance.svg", "impedance.png"} <= names
    out = capsys.readouterr().out
    assert "Market-square horn box" in out and "Impedance" in out
    first = {path.name: path.read_bytes() for path in folder.iterdir()}
    assert main(["build", EXAMPLE, "-o", str(folder)]) == 0
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == first


def test_phase_and_group_delay_are_drawn_on_request(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    levels = tmp_path / "levels.svg"
    few = ["--per-decade", "3"]
    assert main(["response", EXAMPLE, *few, "--plot", str(levels), "--phase", "--group-delay", "--phase"]) == 0
    assert "Levels, phase, group delay of woofer, tweeter" in levels.read_text(encoding="utf-8")
    assert "group delay" in capsys.readouterr().out, "the table is printed all the same"
    assert main(["build", EXAMPLE, "--group-delay", "-o", str(tmp_path / "out")]) == 0
    assert "Levels, group delay of" in (tmp_path / "out" / "response.svg").read_text(encoding="utf-8")


@pytest.mark.parametrize(("words", "said"), [
    (["--phase"], "no plot to draw it into"),
    (["--plot", "levels.pdf"], "no plot is written as `levels.pdf`"),
    (["--plot", "one.svg", "-o", "./one.svg"], "cannot be one file"),
])  # fmt: skip
def test_a_plot_without_a_place_is_refused(words: list[str], said: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["response", EXAMPLE, *words]) == 2
    assert said in capsys.readouterr().err


def test_build_of_a_broken_design_writes_nothing(broken: Path, tmp_path: Path) -> None:
    assert main(["build", str(broken), "-o", str(tmp_path / "out")]) == 1
    assert not (tmp_path / "out").exists()


@needs(NGSPICE)
def test_crosscheck_agrees(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["crosscheck", EXAMPLE]) == 0
    assert "they agree" in capsys.readouterr().out
    assert main(["crosscheck", EXAMPLE, "--bound", "1e-30", "--because", "to see it fail"]) == 1
    assert "DISAGREE" in capsys.readouterr().out


def test_crosscheck_without_the_simulator(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    monkeypatch.setenv("PATH", "")
    assert main(["crosscheck", EXAMPLE]) == 2
    assert "apt-get install ngspice" in capsys.readouterr().err


def test_read_explain_and_completion(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["read", EXAMPLE]) == 0
    assert "L1" in capsys.readouterr().out
    assert main(["explain", "loose-node"]) == 0
    assert "Why it matters" in capsys.readouterr().out
    assert main(["explain"]) == 0
    assert "unit-missing" in capsys.readouterr().out
    assert main(["completion", "bash"]) == 0
    assert "shuntwise" in capsys.readouterr().out


def test_a_closed_pipe_is_no_fault() -> None:
    command = f"PYTHONPATH={ROOT / 'compiler'} {sys.executable} -m shuntwise netlist {EXAMPLE} | head -1"
    run = subprocess.run(["bash", "-c", f"set -o pipefail; {command}"], capture_output=True, text=True, check=False)
    assert "Traceback" not in run.stderr and "fault" not in run.stderr


FITTED = """
driver woofer 8 ohm { re 5.8 ohm, semi_k 0.0155, semi_n 0.69, fs 55 Hz, qms 4.4, qes 0.44 }
coil L1 0.82 mH
leg woofer {
  input+ -- L1 -- woofer+
  woofer- -- return
}
"""


def test_the_error_of_a_fit_is_told_wherever_figures_are(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """One figure, of one owner: in the summary, in `read`, and in JSON."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "box.shunt").write_text(FITTED, encoding="utf-8")
    lowered = load("box.shunt").lowered
    assert isinstance(lowered, Network)
    (fit,) = lowered.fits
    error, at_hz = fit.worst_magnitude
    assert f"by up to {100 * error:.2g} %" in fit.sentence
    main(["read", "box.shunt"])
    assert fit.sentence in capsys.readouterr().out.splitlines()
    main(["build", "box.shunt", "-o", "out"])
    assert fit.sentence in capsys.readouterr().out.replace("\n   ", "")
    assert fit.sentence in (tmp_path / "out" / "read-back.txt").read_text(encoding="utf-8")
    for command in (["build", "box.shunt", "-o", "out"], ["response", "box.shunt"]):
        main([*command, "--json"])
        (told,) = json.loads(capsys.readouterr().out)["fits"]
        assert (told["driver"], told["magnitude_error"], told["magnitude_hz"]) == ("woofer", error, at_hz)


def test_a_file_that_another_includes_is_no_design_of_a_folder(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Bounds of a workshop hold no driver; they are looked at with the design, and alone where they are named."""
    (tmp_path / "bounds.shunt").write_text("limit load-too-low 0.9\n", encoding="utf-8")
    design = Path(EXAMPLE).read_text(encoding="utf-8")
    (tmp_path / "box.shunt").write_text('include "bounds.shunt"\n' + design, encoding="utf-8")
    assert main(["check", str(tmp_path)]) == 0
    assert "1 design checked, nothing found" in capsys.readouterr().out
    main(["check", str(tmp_path / "bounds.shunt")])
    assert "[no-driver]" in capsys.readouterr().out


def test_a_file_is_checked_with_a_broken_design_or_alone_if_that_cannot_be_read(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (tmp_path / "bounds.shunt").write_text("limit load-too-low 0.9\n", encoding="utf-8")
    broken = 'include "bounds.shunt"\ndriver woofer 8 ohm\nleg woofer {\n  input+ -- L1 -- woofer+\n'
    (tmp_path / "box.shunt").write_text(broken, encoding="utf-8")
    assert main(["check", str(tmp_path)]) == 1
    assert "[no-driver]" not in capsys.readouterr().out
    (tmp_path / "box.shunt").write_bytes(b"\xff\xfe")
    assert main(["check", str(tmp_path)]) == 2
    assert "[no-driver]" in capsys.readouterr().out


def test_files_that_include_each_other_are_all_checked(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for one, other in (("a", "b"), ("b", "a")):
        (tmp_path / f"{one}.shunt").write_text(f'include "{other}.shunt"\n', encoding="utf-8")
    assert main(["check", str(tmp_path)]) == 1
    assert "include-loop" in capsys.readouterr().out
