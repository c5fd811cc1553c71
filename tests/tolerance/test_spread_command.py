"""`shuntwise spread`: what it prints and writes, and how it refuses; its report and plots."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path

import pytest

from shuntwise.cli import spread as command
from shuntwise.cli.main import main
from shuntwise.documents.tolerance_text import share, spread_report
from shuntwise.tolerance.spread import spread
from tolerance.designs import FIRST_ORDER, SHOWCASE, sound

FEW = ["--builds", "300"]


@pytest.fixture
def first_order(tmp_path: Path) -> str:
    path = tmp_path / "first.shunt"
    path.write_text(FIRST_ORDER + "expect crossing of woofer and tweeter at 3.18 kHz within 3 %\n")
    return str(path)


def test_report_says_what_varies_and_what_comes_out(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["spread", str(SHOWCASE), *FEW]) == 0
    out = capsys.readouterr().out
    assert "300 builds, seed 1." in out and "5 %: C1, C2" in out
    assert "the drivers' models" in " ".join(out.split()), "what is kept is said"
    assert "expect crossing of woofer and mid at" in out and "all of these" in out
    assert "Which part matters most" in out and "L1 5" in out
    assert max(map(len, out.splitlines())) <= 100


def test_report_is_the_same_for_the_same_seed(first_order: str, capsys: pytest.CaptureFixture[str]) -> None:
    outputs = []
    for seed in ("5", "5", "6"):
        assert main(["spread", first_order, *FEW, "--seed", seed]) == 0
        outputs.append(capsys.readouterr().out)
    assert outputs[0] == outputs[1] != outputs[2]


def test_normal_builds_lie_closer(first_order: str, capsys: pytest.CaptureFixture[str]) -> None:
    shares = []
    for distribution in ("uniform", "normal"):
        assert main(["spread", first_order, *FEW, "--distribution", distribution, "--json"]) == 0
        shares.append(json.loads(capsys.readouterr().out)["met"])
    assert shares[0] < 0.7 and shares[1] > 0.85


def test_json_holds_everything(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["spread", str(SHOWCASE), *FEW, "--json", "--variant", "hall"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["builds"] == 300 and found["percent"] == [0, 5, 25, 50, 75, 95, 100]
    assert {band["owner"] for band in found["levels_db"]} == {"woofer", "mid", "tweeter"}
    assert all(len(row) == len(found["freq_hz"]) for band in found["levels_db"] for row in band["percentiles"])
    assert 0 <= found["met"] <= min(one["share"] for one in found["yields"])
    for figure in found["figures"]:
        assert sum(part["share"] for part in figure["parts"]) == pytest.approx(1)


def test_tried_values_change_the_result(first_order: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["spread", first_order, *FEW, "--set", "C1.tolerance=1%", "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["met"] == 1


def test_folder_is_written_whole_and_the_same_again(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    folder = tmp_path / "out"
    assert main(["spread", str(SHOWCASE), *FEW, "-o", str(folder)]) == 0
    assert "written to" in capsys.readouterr().out
    first = {path.name: path.read_bytes() for path in folder.iterdir()}
    assert {"spread.txt", "spread.csv", "spread-levels.svg", "spread-levels.png"} <= set(first)
    rows = list(csv.reader(first["spread.csv"].decode().splitlines()))
    assert rows[0][:3] == ["frequency (Hz)", "woofer level as stated (dB)", "woofer level least of builds (dB)"]
    assert len({len(row) for row in rows}) == 1 and len(rows) > 200
    stated, least, *between, greatest = (float(cell) for cell in rows[80][1:9])
    assert least <= min(stated, *between) <= max(stated, *between) <= greatest
    assert first["spread-levels.svg"].startswith(b"<?xml") and b"5 to 95 per cent" in first["spread-levels.svg"]
    assert main(["spread", str(SHOWCASE), *FEW, "-o", str(folder)]) == 0
    assert {path.name: path.read_bytes() for path in folder.iterdir()} == first


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["--builds", "0"], "goes from 1 to 100000"),
        (["--builds", "1000000"], "goes from 1 to 100000"),
        (["--seed", "-1"], "a seed is a whole number from 0"),
        (["--variant", "none"], "no variant"),
    ],
)
def test_wrong_usage(first_order: str, arguments: list[str], words: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["spread", first_order, *arguments]) == 2
    assert words in capsys.readouterr().err


def test_a_design_without_tolerances(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = tmp_path / "exact.shunt"
    path.write_text(FIRST_ORDER.replace(" { 10 % }", ""))
    assert main(["spread", str(path)]) == 2
    assert "no part states a tolerance" in capsys.readouterr().err


class Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


def test_progress_is_shown_on_a_terminal_and_wiped(first_order: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(command, "PATIENCE_S", -1.0)
    terminal = Terminal()
    monkeypatch.setattr("sys.stderr", terminal)
    assert main(["spread", first_order, *FEW]) == 0
    assert "100% of the builds solved" in terminal.getvalue()
    assert terminal.getvalue().endswith("\r")


def test_no_progress_into_a_file(
    first_order: str, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(command, "PATIENCE_S", -1.0)
    assert main(["spread", first_order, *FEW]) == 0
    assert "of the builds" not in capsys.readouterr().err


def test_a_hundred_per_cent_means_all() -> None:
    assert [share(part) for part in (1, 0.99999, 0.5, 0)] == ["100 %", "99.9 %", "50.0 %", "0.0 %"]


def test_nothing_in_a_title_steers_the_terminal() -> None:
    design, network = sound('design "a\x1b[31mb"\n' + FIRST_ORDER)
    assert "\x1b" not in spread_report(spread(design, network, builds=5), design)
