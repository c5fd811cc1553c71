"""The folder where the user stands may be a stranger's: nothing in it is read but what the user names."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from ast import literal_eval
from pathlib import Path

import pytest

from engines.installed import needs
from shuntwise.cli.main import main
from shuntwise.engines.gnucap import GNUCAP
from shuntwise.engines.ngspice import NGSPICE

ROOT = Path(__file__).parents[2]
EXAMPLE = ROOT / "examples" / "07-market-horn.shunt"

WATCHED = """
import os, sys
here = os.getcwd()
opened = []
def watch(event, arguments):
    if event == "open" and isinstance(arguments[0], (str, bytes)):
        path = os.path.abspath(os.fsdecode(arguments[0]))
        if path.startswith(here + os.sep) and os.getcwd() == here:
            opened.append(os.path.relpath(path, here))
sys.addaudithook(watch)
from shuntwise.cli.main import main
for words in sys.argv[1:]:
    status = main(words.split())
    print("status", status)
print("opened", sorted({name.split(os.sep)[0] for name in opened}))
"""


def run(folder: Path, *words: str, code: str = WATCHED, **environment: str) -> subprocess.CompletedProcess[str]:
    shutil.copy(EXAMPLE, folder / "box.shunt")
    return subprocess.run(
        [sys.executable, "-c", code, *words],
        capture_output=True,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT / "compiler"), **environment},
        cwd=folder,
        timeout=120,
        check=False,
    )


@pytest.mark.parametrize("kind", ["escapes", "broken", "no text", "pipe"])
def test_settings_of_the_plot_library_are_not_read(kind: str, tmp_path: Path) -> None:
    settings = tmp_path / "matplotlibrc"
    if kind == "pipe":
        os.mkfifo(settings)
    else:
        content = {
            "escapes": b"\x1b[31mred\x07: 1\n",
            "broken": b"backend: nonsense\nfigure.dpi: x\n",
            "no text": b"\xff",
        }
        settings.write_bytes(content[kind])
    code = (
        "from shuntwise.documents.plot_page import load_matplotlib; load_matplotlib();"
        "import matplotlib; print(matplotlib.rcParams['lines.linewidth'])"
    )
    done = run(tmp_path, code=code, MATPLOTLIBRC=str(settings), MPLCONFIGDIR=str(tmp_path / "m"))
    assert (done.stdout, done.stderr) == ("1.5\n", "")


def test_environment_is_left_as_it_was(tmp_path: Path) -> None:
    code = (
        "import os; before = dict(os.environ), os.getcwd();"
        "from shuntwise.documents.plot_page import load_matplotlib; load_matplotlib();"
        "print((dict(os.environ), os.getcwd()) == before)"
    )
    assert run(tmp_path, code=code).stdout == "True\n"
    assert run(tmp_path, code=code, MATPLOTLIBRC="elsewhere").stdout == "True\n"


@pytest.mark.parametrize(
    "commands",
    [
        ("check", "read", "response", "netlist", "build -o out", "spread --builds 50", "bench"),
        pytest.param(("crosscheck",), marks=needs(NGSPICE)),
        pytest.param(("crosscheck --engine gnucap",), marks=needs(GNUCAP)),
    ],
)
def test_nothing_but_the_design_is_opened(commands: tuple[str, ...], tmp_path: Path) -> None:
    """Files of settings of every library and simulator lie about; a folder that is written is opened to be synced."""
    for name in ("matplotlibrc", ".spiceinit", "spice.rc", "gnucaprc", ".gnucaprc", "logging.yml", "numpy.cfg"):
        (tmp_path / name).write_text("shell touch ran\nnonsense\n")
    (tmp_path / "matplotlibrc").write_text("lines.linewidth: 9\nfont.size: 30\nname: \x1b[31mred\x07\n")
    done = run(tmp_path, *(f"{command} box.shunt" for command in commands))
    assert done.stdout.count("status 0\n") == len(commands), done.stdout + done.stderr
    opened = literal_eval(done.stdout.rpartition("opened ")[2])
    assert "box.shunt" in opened
    assert [name for name in opened if name not in ("box.shunt", "out") and not name.startswith(".shuntwise-")] == []
    assert not (tmp_path / "ran").exists() and "\x1b" not in done.stdout
    if "build -o out" in commands:  # the plots are the same as where no settings lie about
        assert main(["build", "-o", str(tmp_path / "plain"), str(tmp_path / "box.shunt")]) == 0
        drawn = [(tmp_path / folder / "response.svg").read_bytes() for folder in ("out", "plain")]
        assert drawn[0] == drawn[1]
