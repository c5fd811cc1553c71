"""Subcircuits in somebody's larger deck: both simulators get from them what the solver gets from the network."""

from __future__ import annotations

import re
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from engines.installed import needs
from shuntwise.api import load, load_text
from shuntwise.cli.main import main
from shuntwise.engines.engine import Engine
from shuntwise.engines.gnucap import GNUCAP
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.netlist.spice import OPTIONS, Netlist
from shuntwise.netlist.subcircuits import subcircuits
from shuntwise.network.network import GROUND, Feed, Network
from shuntwise.network.sweep import Sweep
from shuntwise.response.solve import Solver

EXAMPLES = sorted((Path(__file__).parents[2] / "examples").glob("*.shunt"))
SWEEP = Sweep(20.0, 20e3, 10)


def without_amplifier(network: Network) -> Network:
    """The box itself, fed at its own pads."""
    amplifier = {e.name: e for e in network.elements if e.quantity in ("source", "cable")}
    pads = {feed.name: feed.node for feed in network.feeds}
    for feed in network.feeds:
        while inner := next((e for e in amplifier.values() if e.part == feed.name and e.plus == pads[feed.name]), None):
            pads[feed.name] = inner.minus
    elements = tuple(e for e in network.elements if e.name not in amplifier)
    branches = tuple(b for b in network.branches if b.through not in amplifier)
    feeds = tuple(Feed(name, node) for name, node in pads.items())
    return replace(network, elements=elements, branches=branches, feeds=feeds)


def deck(network: Network, text: str) -> Netlist:
    """A larger simulation: the example of use that stands in the comments, a source at every input, a sweep."""
    uses = [line[2:] for line in text.splitlines() if re.match(r"\* x\d", line)]
    pins = re.search(r"^\.subckt crossover (.*)$", text, re.MULTILINE)
    assert pins is not None
    ground = next(match[1] for line in text.splitlines() if (match := re.search(r"against (\w+)$", line)))
    wired = [re.sub(rf"\b{ground}\b", "0", use) for use in uses]
    fed = re.findall(r'^\* note: input ".*" is pin (\w+) against', text, re.MULTILINE)
    sources = [f"v{at} {pin} 0 dc 0 ac 1.0" for at, pin in enumerate(fed)]
    names = {pin: pin for pin in pins[1].split() if pin != ground} | {"0": "0"}
    probes = " ".join(f"vm({name})" for name in names if name != "0")
    lines = [text.rstrip("\n"), *sources, *wired, *OPTIONS, f".print ac {probes}"]
    lines += [f".ac dec {SWEEP.points_per_decade} {SWEEP.freq_from_hz!r} {SWEEP.freq_to_hz!r}", ".end", ""]
    return Netlist("\n".join(lines), SWEEP, names, {}, {}, {}, {}, {})


ENGINES = [pytest.param(engine, marks=needs(engine), id=engine.program) for engine in (NGSPICE, GNUCAP)]


@pytest.mark.parametrize("engine", ENGINES)
@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_a_larger_deck_gets_the_same(path: Path, engine: Engine) -> None:
    network = load(str(path)).lowered
    assert isinstance(network, Network)
    text = subcircuits(network, design_title="box")
    headings_are_whole(text)
    found = engine.run(deck(network, text))
    solved = Solver(without_amplifier(network)).solve(found.freq_hz)
    said = re.findall(r'^\* note: driver "(.*)" is \w+, between (\w+) and (\w+)$', text, re.MULTILINE)
    assert [name for name, *_ in said] == [driver.name for driver in network.drivers]
    for name, plus, minus in said:
        volts = [found.voltages.get(pin, np.zeros(len(found.freq_hz), complex)) for pin in (plus, minus)]
        assert np.allclose(volts[0] - volts[1], solved.driver_voltage(name), rtol=0, atol=1e-8)


def headings_are_whole(text: str) -> None:
    """ngspice cuts a heading at 15 characters: `vm(x1.NODE)`, and `vm(PIN)`, as pins become nodes of the deck."""
    pins: list[str] = []
    for words in map(str.split, text.splitlines()):
        if words[0] == ".subckt":
            pins = words[2:]
            assert all(len(f"vm({pin})") <= 15 for pin in pins)
        elif words[0][0] in "rlc":
            assert all(node in pins or len(f"vm(x1.{node})") <= 15 for node in words[1:3])


def test_hostile_names_stay_names() -> None:
    text = """
design "x\\n.control shell touch ran"
driver woofer_Ω 8 ohm { role woofer }
coil L1 1 mH
leg woofer_Ω {
  input+ -- L1 -- subckt -- woofer_Ω+
  woofer_Ω- -- return
}
"""
    network = load_text(text).lowered
    assert isinstance(network, Network)
    made = subcircuits(network, design_title="x\n.control\nshell touch ran")
    assert '* note: node plus is "woofer_ohm+"' in made.splitlines()
    assert all(line.startswith(("*", ".subckt ", ".ends ", "r", "l", "c", "k")) for line in made.splitlines())
    assert re.fullmatch(r"[\x20-\x7e\n]*", made) and GROUND not in re.findall(r"\.subckt .*", made)[0].split()


def test_the_command_writes_them(tmp_path: Path) -> None:
    file = tmp_path / "box.cir"
    assert main(["netlist", str(EXAMPLES[0]), "--subcircuit", "-o", str(file)]) == 0
    text = file.read_text(encoding="utf-8")
    assert text.count(".subckt ") == text.count(".ends ") == 3 and ".ac" not in text
    title, *first = text.splitlines()[:3]
    assert title.startswith("* shuntwise: ") and re.search(r"larger simulation.*\.include.*example", " ".join(first))
