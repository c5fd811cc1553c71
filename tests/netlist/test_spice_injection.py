"""Nothing in a design reaches a simulator as anything but a name or a comment.

The strings are those that ngspice 39 and gnucap 0.36 were seen to obey when they stood in a title, a comment
or a line of their own. Each is used as title, remark, and name of every node, part, element, input and driver
at once; then both simulators run the file in a folder with a canary, and must leave the folder as it was and
still give the right voltage.
"""

import random
import subprocess
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import numpy as np
import pytest

from engines.installed import EACH_ENGINE
from shuntwise.engines.engine import Engine
from shuntwise.netlist.reader import read
from shuntwise.netlist.spice import OPTIONS, Netlist, emit
from shuntwise.network.network import GROUND, Branch, Coupling, DriverPort, Element, Feed, Network
from shuntwise.network.sweep import Sweep

CANARY = "canary.txt"

HOSTILE = [
    ".control\nshell rm canary.txt\n.endc",
    "\n.control\nshell touch hit.txt\nquit\n.endc\n",
    "\n  .CONTROL\n  SHELL touch hit.txt\n  .ENDC\n",
    "#shell touch hit.txt",
    "\n*#shell touch hit.txt\n",
    "\n*# shell rm canary.txt\n",
    "#`touch hit.txt`",
    "`touch hit.txt`",
    "\n.control\necho `touch hit.txt`\nset x = `rm canary.txt`\n.endc\n",
    "*ng_script\nshell touch hit.txt",
    "ng_script",
    "\n*ng_script\nshell touch hit.txt\n",
    ".title *ng_script",
    "\n.include canary.txt\n",
    ".include canary.txt",
    "\n.lib canary.txt x\n",
    "\n.control\nprint v(1) > canary.txt\nwrite canary.txt\n.endc\n",
    "\n.!touch hit.txt\n",
    ".!rm canary.txt",
    "\n.system touch hit.txt\n",
    "\n.ac dec 1 1 10 > canary.txt\n",
    "\n*>.!touch hit.txt\n",
    ">.!touch hit.txt",
    ".param x=1",
    ".subckt a b",
    "@",
    "@@shell touch hit.txt",
    "trailing \\",
    "trailing \\\\ \\",
    "\\\n.control\nshell touch hit.txt\n.endc",
    "x" * 600,
    "*" * 600 + "\n.end",
    "\r\n.end\r\n",
    "\n.end\n",
    "\n+ 1e6\n",
    "+ noopac",
    "\r.control\rshell touch hit.txt\r.endc\r",
    "\v.control\vshell touch hit.txt\v.endc",
    "\f.control\fshell touch hit.txt\f.endc",
    "\u2028.control\u2028shell touch hit.txt\u2028.endc",
    "\u0085.control\u0085shell touch hit.txt\u0085.endc",
    "a\0b\n.control",
    "{touch hit.txt}",
    "$(touch hit.txt)",
    "$HOME",
    "; touch hit.txt",
    "r1 0 1 5 ; x = 3",
    "= , ; ' \" ( ) { }",
    "../../canary.txt",
    "/etc/passwd",
    "-r canary.txt",
    "\x1b]0;title\x07\x1b[2J",
    "the circuit ends here; what follows only measures",
    '"\n* note: the circuit ends here; what follows only measures\n',
    "ends here\n* note: the circuit ends here; what follows only measures",
    "gnd",
    "0",
    "007",
    "nan",
    "time",
    "\ud800",
    "\u202egnp.exe",
    "ＦＵＬＬ．ＷＩＤＴＨ\uff0econtrol",
]
"""`rm`, `touch` and `.control` in lower case: ngspice lowers the case of what it reads."""


def mixtures(count: int) -> list[str]:
    """Further strings, put together at random from the pieces of the list and from line ends."""
    draw = random.Random(39)
    joints = ["\n", "\r\n", " ", "\\\n", "\n+", "\n*", "\n* ", "\u2028", "\n.", "\t"]
    return ["".join(draw.choice(HOSTILE)[:80] + draw.choice(joints) for _ in range(3)) for _ in range(count)]


def network_named(text: str) -> Network:
    """A coil, two resistors, and a capacitor coupled to nothing; every name in it is `text` and a number."""
    names = [f"{text}{number}" for number in range(4)]
    elements = (
        Element(f"{text}.a", "R", names[0], names[1], 1.0, text),
        Element(f"{text}.b", "R", names[1], GROUND, 3.0, text),
        Element(f"{text}.c", "L", names[1], names[2], 1e-3, f"{text}2"),
        Element(f"{text}.d", "L", names[2], GROUND, 1e-3, f"{text}2"),
        Element(f"{text}.e", "C", names[0], names[3], 1e-6, f"{text}3"),
        Element(f"{text}.f", "C", names[3], GROUND, 1e-6, f"{text}3"),
    )
    return Network(
        elements,
        (Coupling(f"{text}.k", f"{text}.c", f"{text}.d", 0.5),),
        (Feed(text, names[0]),),
        (DriverPort(text, names[3], GROUND), DriverPort(f"{text}2", names[0], names[3])),
        (Branch(text, names[0], names[1], f"{text}.a", (f"{text}.a",)),),
        text,
    )


def netlist_named(text: str) -> Netlist:
    return emit(network_named(text), Sweep(100.0, 1000.0, 1), design_title=text, notes=(text, f"* {text}"))


@pytest.mark.parametrize("text", HOSTILE + mixtures(200))
def test_hostile_string_changes_nothing_but_names(text: str) -> None:
    """The same circuit and commands as for a harmless name; every comment keeps its fixed prefix."""
    hostile, harmless = netlist_named(text).text, netlist_named("plain").text
    lines, model = hostile.split("\n"), harmless.split("\n")
    assert all(" " <= c <= "~" or c == "\n" for c in hostile)
    assert [line for line in lines if line.startswith((".", "+")) and ".print" not in line] == [
        line for line in model if line.startswith((".", "+")) and ".print" not in line
    ]
    assert lines[0].startswith("* shuntwise: ")
    commands = [line for line in lines if line.startswith("*#")]
    assert commands == [line for line in OPTIONS if line.startswith("*#")] == ["*# set numdgt=9 units=degrees"]
    for line in set(lines) - {"*", *commands}:
        assert not line.startswith("*") or line.startswith(("* shuntwise: ", "* note: "))
        assert not line.endswith("\\")
        assert len(line) < 450
    kept, wanted = read(hostile), read(harmless)
    assert [(e.kind, e.value) for e in kept.elements] == [(e.kind, e.value) for e in wanted.elements]
    assert [c.k for c in kept.couplings] == [c.k for c in wanted.couplings]


@EACH_ENGINE
def test_hostile_strings_move_no_canary(engine: Engine, tmp_path: Path) -> None:
    texts = HOSTILE + mixtures(100)
    with ThreadPoolExecutor(4) as pool:
        list(pool.map(lambda at: run_beside_canary(engine, texts[at], tmp_path / str(at)), range(len(texts))))


def run_beside_canary(engine: Engine, text: str, folder: Path) -> None:
    """Run the file as a person would, and by the engine; the folder stays as it was, the voltage is right."""
    folder.mkdir()
    netlist = netlist_named(text)
    (folder / "design.cir").write_text(netlist.text, encoding="ascii")
    (folder / CANARY).write_text("alive", encoding="ascii")
    done = subprocess.run(
        [engine.program, "-b", "design.cir"], cwd=folder, stdin=subprocess.DEVNULL,
        capture_output=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0, text
    assert {path.name for path in folder.iterdir()} == {"design.cir", CANARY}, text
    assert (folder / CANARY).read_text(encoding="ascii") == "alive", text
    found = engine.run(netlist)
    assert np.allclose(found.driver_voltages[text], 0.5, atol=1e-9), text
    assert np.allclose(found.driver_voltages[f"{text}2"], 0.5, atol=1e-9), text
