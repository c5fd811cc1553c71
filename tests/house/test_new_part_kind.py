"""A new part kind by the recipe of DEVELOPERS.md, and by nothing else, through every pass.

A copy of the compiler gets four kinds that it does not have: windings of two terminals, one of them to be taken for a
coil, two windings of four, and a part of three terminals without a field. The recipe's steps are the only edits; then
the commands are run on designs with such parts. Their figures are held against closed forms, or against designs that
say the same with the kinds that the language has.
"""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest

ROOT = Path(__file__).parents[2]

ROWS = """
REACTOR = PartKind(
    "reactor",
    _attribute("inductance", u.HENRY, 1e-6, 1, "inductance"),
    bare=(TOLERANCE,),
    keyed=(_attribute("loss", u.OHM, 1e-4, 1e3, "resistance of its wire", "{} of wire"),),
    words={"potted": "potted"},
    example="Y1 0.5 mH",
    letters=("Y", "RX"),
    for_no_node=("Y",),
    block="Y",
    inductive=True,
    toleranced=("inductance", "loss"),
    spoken=("{noun} of {value:alone}",),
    asked={"tolerance": "5 %", "loss": "loss 0.3 ohm"},
)
RING_COIL = PartKind(
    "ring coil",
    _attribute("inductance", u.HENRY, 1e-6, 1, "inductance"),
    bare=(TOLERANCE,),
    example="L1 0.5 mH",
    letters=("L",),
    block="L",
    inductive=True,
)
TRANSFORMER = PartKind(
    "matching transformer",
    _attribute("inductance", u.HENRY, 1e-6, 10, "inductance of the fed winding"),
    bare=(TOLERANCE,),
    keyed=(_attribute("ratio", u.PLAIN, 0.01, 100, "turns of the other winding to one of the fed one", "ratio {}"),),
    example="X1 8 mH { ratio 0.5 }",
    letters=("X",),
    block="X",
    terminals=("start", "end", "out", "back"),
    sections={"fed": ("start", "end"), "other": ("out", "back")},
    inductive=True,
)
POT = PartKind(
    "potentiometer",
    _attribute("resistance", u.OHM, 1e-3, 1e6, "resistance of the track"),
    bare=(TOLERANCE,),
    keyed=(_attribute("turned", u.PLAIN, 0.01, 0.99, "share of the track before the wiper"),),
    example="P1 16 ohm { turned 0.5 }",
    letters=("P",),
    block="P",
    terminals=("start", "end", "wiper"),
    sections={"upper": ("start", "wiper"), "lower": ("wiper", "end")},
)
"""

MODELS = """
def _reactor(part: Part) -> PartModel:
    loss = Ideal("R", "loss", part.get("loss"), copper=True)
    return PartModel({"": (Ideal("L", "inductance", _value(part)), loss)})


def _ring_coil(part: Part) -> PartModel:
    return PartModel({"": (Ideal("L", "inductance", _value(part)),)})


def _transformer(part: Part) -> PartModel:
    fed, other = _value(part), _value(part) * part.get("ratio", 1.0) ** 2
    sections = {"fed": (Ideal("L", "inductance", fed),), "other": (Ideal("L", "inductance", other),)}
    return PartModel(sections, (("fed", "other", 0.95),))


def _pot(part: Part) -> PartModel:
    upper = _value(part) * part.get("turned", 0.5)
    sections = {"upper": upper, "lower": _value(part) - upper}
    return PartModel({name: (Ideal("R", "resistance", ohm),) for name, ohm in sections.items()})

"""

NEW = {
    "reactor": ("REACTOR", "_reactor"),
    "ring coil": ("RING_COIL", "_ring_coil"),
    "matching transformer": ("TRANSFORMER", "_transformer"),
    "potentiometer": ("POT", "_pot"),
}


def edit(path: Path, *pairs: tuple[str, str]) -> None:
    text = path.read_text(encoding="utf-8")
    for old, new in pairs:
        assert text.count(old) == 1, (path, old)
        text = text.replace(old, new)
    path.write_text(text, encoding="utf-8")


def environment(root: Path) -> dict[str, str]:
    return {**os.environ, "PYTHONPATH": str(root / "compiler"), "PYTHONDONTWRITEBYTECODE": "1"}


def run(root: Path, *arguments: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *arguments], capture_output=True, text=True, check=False, cwd=root, env=environment(root)
    )


ANSWERING = """
import contextlib, io, json, sys
from shuntwise.cli.main import main
for line in sys.stdin:
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        status = main(json.loads(line))
    print(json.dumps([status, out.getvalue(), err.getvalue()]), flush=True)
"""


class House:
    """A compiler to which the recipe was applied: one process, which answers one command after the other."""

    def __init__(self, root: Path) -> None:
        self.root = root
        self.process = subprocess.Popen(
            [sys.executable, "-c", ANSWERING],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            cwd=root,
            env=environment(root),
        )

    def run(self, command: str, text: str, *options: str) -> subprocess.CompletedProcess[str]:
        (self.root / "design.shunt").write_text(text, encoding="utf-8")
        asked, answers = self.process.stdin, self.process.stdout
        assert asked is not None and answers is not None
        asked.write(json.dumps([command, "design.shunt", *options]) + "\n")
        asked.flush()
        status, out, err = json.loads(answers.readline())
        return subprocess.CompletedProcess([command, *options], status, out, err)

    def close(self) -> None:
        with self.process:
            assert self.process.stdin is not None
            self.process.stdin.close()


def copied(root: Path) -> Path:
    for folder in ("compiler", "grammar"):
        shutil.copytree(ROOT / folder, root / folder, ignore=shutil.ignore_patterns("__pycache__"))
    return root


def add_rows(root: Path) -> None:
    names = ", ".join(name for name, _ in NEW.values())
    edit(
        root / "compiler/shuntwise/model/kinds.py",
        ("\nKINDS: dict", f"{ROWS}\nKINDS: dict"),
        ("    for kind in (\n", f"    for kind in (\n        {names},\n"),
    )


def make_tables(root: Path) -> None:
    """`python -m shuntwise.house.tables`, without a look for terminals that collide, which takes seconds."""
    code = (
        "import runpy, sys; sys.modules['interegular'] = None;"
        "runpy.run_module('shuntwise.house.tables', run_name='__main__')"
    )
    made = run(root, "-c", code)
    assert (made.returncode, made.stderr) == (0, "")


@pytest.fixture(scope="module")
def house(tmp_path_factory: pytest.TempPathFactory) -> Iterator[House]:
    root = copied(tmp_path_factory.mktemp("house"))
    add_rows(root)
    rows = "".join(f'    "{word}": {build},\n' for word, (_, build) in NEW.items())
    table = "PART_MODELS: dict[str, Callable[[Part], PartModel]] = {\n"
    edit(root / "compiler/shuntwise/network/part_model.py", (table, MODELS + "\n" + table + rows))
    make_tables(root)
    answering = House(root)
    yield answering
    answering.close()


def shuntwise(house: House, command: str, text: str, *options: str) -> str:
    """The output of a command on a design, which it must take without a complaint that is worth a status."""
    done = house.run(command, text, *options)
    assert done.returncode == 0, done.stdout + done.stderr
    assert "Traceback" not in done.stderr
    return done.stdout


REST = """
design "New parts"
amplifier 60 W into 8 ohm { least 4 ohm }
driver woofer 8 ohm { 100 W }
driver tweeter 8 ohm { 60 W }
capacitor C1 6.8 uF { 5 %, 250 V, film }
"""
WOOFER = """
leg woofer {
  input+ -- Y1 -- woofer+
  woofer- -- return
}
"""
REACTOR = REST + WOOFER + "reactor Y1 0.82 mH { potted, loss 0.3 ohm, 5 % }\n"
COIL = (REST + WOOFER + "coil Y1 0.82 mH { air core, dcr 0.3 ohm, 5 % }\n").replace("Y1", "L1")
TWEETER = """
leg tweeter {
  input+ -- C1 -- tweeter+
  tweeter- -- return
}
"""
TIED = """
leg tweeter {
  input+ -- C1 -- X1 -- return
  X1.out -- tweeter+
  X1.back -- return
  tweeter- -- return
}
"""
APART = """
leg tweeter {
  input+ -- C1 -- X1 -- return
  X1.out -- tweeter+
  X1.back -- tweeter-
}
"""
TRANSFORMER = "matching transformer X1 8 mH { ratio 0.5, 5 % }\n"
POT = """
potentiometer P1 16 ohm { turned 0.25, 10 % }
leg tweeter {
  input+ -- C1 -- P1 -- return
  P1.wiper -- tweeter+
  tweeter- -- return
}
"""
PAD = """
resistor R1 4 ohm { 10 % }
resistor R2 12 ohm { 10 % }
leg tweeter {
  input+ -- C1 -- R1 -- tweeter+
  tweeter+ -- R2 -- tweeter-
  tweeter- -- return
}
"""


def figures(house: House, text: str) -> dict[tuple[str, str], np.ndarray]:
    """What the response says of each driver and input, (F,) each, by owner and quantity."""
    told = json.loads(shuntwise(house, "response", text, "--json"))
    owners = (*told["drivers"], *told["inputs"])
    found = {(one["name"], key): np.array(one[key], float) for one in owners for key in one if key != "name"}
    return {("", "frequency"): np.array(told["freq_hz"]), **found}


def assert_same(house: House, text: str, other: str) -> None:
    one, two = figures(house, text), figures(house, other)
    assert one.keys() == two.keys()
    for column, values in one.items():
        assert np.allclose(values, two[column], rtol=1e-9, atol=1e-9), column


class TestTwoTerminals:
    def test_it_is_checked(self, house: House) -> None:
        """Its label, and what its row asks for."""
        sound = shuntwise(house, "check", REACTOR + TWEETER)
        assert not any(name in sound for name in ("label-kind-clash", "rating-missing", "tolerance-missing"))
        bare = shuntwise(house, "check", (REACTOR + TWEETER).replace("loss 0.3 ohm, 5 %", ""))
        assert "= loss: `Y1`" in bare
        assert "= tolerance: `Y1`" in bare
        wrong = shuntwise(house, "check", (REACTOR + TWEETER).replace("Y1", "R1"))
        assert "label-kind-clash" in wrong
        assert "Y1" in wrong

    def test_its_response_is_that_of_the_same_elements(self, house: House) -> None:
        assert_same(house, REACTOR + TWEETER, COIL + TWEETER)

    def test_its_netlist_has_its_elements(self, house: House) -> None:
        lines = shuntwise(house, "netlist", REACTOR + TWEETER).splitlines()
        assert "l_y1 input_p inside_y1 0.00082" in lines
        assert "r_y1_loss inside_y1 woofer_p 0.3" in lines

    def test_it_is_read_aloud(self, house: House) -> None:
        said = shuntwise(house, "read", REACTOR + TWEETER)
        assert "Y1, a potted reactor of 0.82 millihenry with 5 percent tolerance and 0.3 ohm of wire" in said
        assert "one reactor and one capacitor" in said

    def test_its_tolerance_moves_what_its_row_says(self, house: House) -> None:
        """Both elements, unlike a coil's, of which the copper is kept as stated: the level near DC moves as well."""
        level = "expect level of woofer 0 dB at 20 Hz within 3 dB\n"
        said = [
            json.loads(shuntwise(house, "spread", text + TWEETER + level, "--json", "--builds", "50"))
            for text in (REACTOR, COIL)
        ]
        assert [part["label"] for part in said[0]["parts"]] == ["C1", "Y1"]
        moved = [
            max(abs(part["effect"]) for f in one["figures"] if "20 Hz" in f["name"] for part in f["parts"])
            for one in said
        ]
        # 0.3 ohm +-5 % before 8 ohm: 20 log10(8.315 / 8.3) = 0.0157 dB
        assert moved[0] == pytest.approx(0.0157, rel=0.05)
        assert moved[1] < 0.001

    def test_what_is_left_out_is_asked_for_by_its_example(self, house: House) -> None:
        for text, wanted in (("reactor\n", "`reactor Y1 0.5 mH`"), ("reactor Y2\n", "`reactor Y2 0.5 mH`")):
            done = house.run("check", text)
            assert wanted in done.stdout + done.stderr

    def test_a_slip_in_its_label_makes_no_node(self, house: House) -> None:
        text = (REACTOR + TWEETER).replace("input+ -- Y1 --", "input+ -- Y2 --")
        done = house.run("check", text)
        assert "unknown-name" in done.stdout + done.stderr

    def test_a_slip_in_its_word_is_mended(self, house: House) -> None:
        done = house.run("check", (REACTOR + TWEETER).replace("reactor", "raector"))
        assert "reactor" in done.stdout + done.stderr


class TestLetterOfAnother:
    """A kind with the letter of coils in a block is a coil where the structure of a leg is recognised."""

    LADDER = """
ring  coil L1 0.33 mH
ring coil L2 0.82 mH
capacitor C2 10 uF { 5 %, 250 V, film }
leg woofer {
  input+ -- L1 -- middle -- L2 -- woofer+
  middle -- C2 -- return
  woofer- -- return
}
"""

    def test_it_ends_a_band_and_may_be_in_the_wrong_place(self, house: House) -> None:
        said = house.run("check", REST + self.LADDER + TWEETER).stdout
        assert "[leg-unfiltered]" not in said
        assert "in every usual filter the ring coils grow smaller towards the driver" in said

    def test_it_couples(self, house: House) -> None:
        """`coupling` may name a winding that is the only one of its part."""
        coupled = REST + WOOFER.replace("Y1", "L1 -- L2") + TWEETER + "coupling L1 and L2 0.5\n"
        text = coupled + "ring coil L1 0.5 mH\nring coil L2 0.5 mH\n"
        assert_same(house, text, text.replace("ring coil", "coil"))


class TestFourTerminals:
    def test_its_response_is_that_of_two_coupled_windings(self, house: House) -> None:
        """The loaded winding puts (w M)^2 / (R + j w L2) in series with the fed one, and M^2 = k^2 L1 L2.

        C. K. Alexander, M. N. O. Sadiku, Fundamentals of electric circuits, chapter 13 (reflected impedance).
        """
        found = figures(house, REACTOR + TRANSFORMER + TIED)
        s = 2j * np.pi * found["", "frequency"]
        fed, other, ohm, farad = 8e-3, 2e-3, 8.0, 6.8e-6
        m = 0.95 * np.sqrt(fed * other)
        ampere = 1 / (1 / (s * farad) + s * fed - (s * m) ** 2 / (ohm + s * other))
        volt = s * m * ampere * ohm / (ohm + s * other)
        level = found["tweeter", "level_db"]
        assert np.allclose(level, 20 * np.log10(np.abs(volt)), rtol=0, atol=1e-6)
        assert np.allclose(
            np.exp(1j * np.radians(found["tweeter", "phase_deg"])), volt / np.abs(volt), rtol=0, atol=1e-6
        )

    def test_a_winding_that_hangs_on_nothing_is_no_mistake(self, house: House) -> None:
        """The field reaches it: no island, no way back missing; and the results are those of the tied one."""
        assert_same(house, REACTOR + TRANSFORMER + APART, REACTOR + TRANSFORMER + TIED)

    def test_it_goes_through_every_command(self, house: House) -> None:
        text = REACTOR + TRANSFORMER + APART
        assert "k_x1_k" in shuntwise(house, "netlist", text)
        assert "X1, an 8 millihenry matching transformer with 5 percent tolerance and ratio 0.5" in shuntwise(
            house, "read", text
        )
        shuntwise(house, "check", text)
        shuntwise(house, "spread", text, "--builds", "50")

    @pytest.mark.parametrize(
        ("wiring", "finding"),
        [
            (APART.replace("X1.out -- tweeter+", "X1.out -- X1.back"), "winding-shorted"),
            (APART.replace("X1.back -- tweeter-", "tweeter- -- return"), "half-fitted"),
            (APART.replace("-- X1 --", "-- X1 -- C1.wrong --"), "pad-on-part"),
            (TWEETER.replace("C1", "C1 -- X1"), "terminal-unused"),
        ],
    )
    def test_its_mistakes_are_found(self, house: House, wiring: str, finding: str) -> None:
        done = house.run("check", REACTOR + TRANSFORMER + wiring)
        assert finding in done.stdout + done.stderr
        assert "Traceback" not in done.stderr


class TestThreeTerminals:
    def test_sections_without_a_field_are_two_resistors(self, house: House) -> None:
        assert_same(house, REACTOR + POT, REACTOR + PAD)

    def test_it_goes_through_every_command(self, house: House) -> None:
        text = REACTOR + POT
        assert "P1, a 16 ohm potentiometer" in shuntwise(house, "read", text)
        for command in ("check", "netlist"):
            shuntwise(house, command, text)
        shuntwise(house, "spread", text, "--builds", "50")


def test_a_kind_without_a_model_is_refused(tmp_path: Path) -> None:
    """The row alone does not make a resistor of it."""
    root = copied(tmp_path)
    add_rows(root)
    make_tables(root)
    (root / "design.shunt").write_text(REACTOR + TWEETER, encoding="utf-8")
    done = run(root, "-m", "shuntwise", "netlist", "design.shunt")
    assert done.returncode != 0
    assert "PART_MODELS does not say what the part kind `reactor` is made of" in done.stderr
