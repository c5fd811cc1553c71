"""The emitted text: what it says, that it reads back, and what both simulators print of it."""

import dataclasses
import re
import subprocess
from pathlib import Path

import numpy as np
import pytest

from engines.installed import EACH_ENGINE, needs
from netlist.closed_form import networks, node_voltages
from property.random_networks import random_network
from shuntwise.api import load_text
from shuntwise.engines.engine import Engine
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.netlist.names import CLASH_WORDS
from shuntwise.netlist.reader import NotEmittedHere, read
from shuntwise.netlist.spice import emit
from shuntwise.network.network import GROUND, Branch, Coupling, DriverPort, Element, Feed, Network
from shuntwise.network.sweep import Sweep

SWEEP = Sweep(20.0, 20000.0, 2)

WEDGE = Network(
    elements=(
        Element("L1", "L", "input+", "L1.inner", 0.00082, "L1"),
        Element("L1.dcr", "R", "L1.inner", "woofer+", 0.28, "L1"),
        Element("C1", "C", "woofer+", GROUND, 1.2e-05, "C1"),
        Element("woofer.Re", "R", "woofer+", "between", 8.0, "woofer"),
        Element("L2", "L", "between", GROUND, 0.0003, "L2"),
    ),
    couplings=(Coupling("L1~L2", "L1", "L2", 0.1),),
    feeds=(Feed("input", "input+"),),
    drivers=(DriverPort("woofer", "woofer+", "between"),),
    branches=(Branch("L1", "input+", "woofer+", "L1", ("L1", "L1.dcr")),),
)

WEDGE_TEXT = """\
* shuntwise: Quay Street wedge
* note: remark: variant: none
* note: node input_p is "input+"
* note: node l1_inner is "L1.inner"
* note: node woofer_p is "woofer+"
*
* note: input "input", 1 V between "input+" and return
v_input input_p 0 dc 0 ac 1.0
*
* note: part "L1"
* note: from "input+" to "woofer+"
l1 input_p l1_inner 0.00082
r_l1_dcr l1_inner woofer_p 0.28
*
* note: part "C1"
c1 woofer_p 0 1.2e-05
*
* note: part "woofer"
* note: from "woofer+" to "between"
r_woofer_re woofer_p between 8.0
*
* note: part "L2"
l2 between 0 0.0003
*
* note: coils that share their field; the first node of each is its dotted end
k_l1_l2 l1 l2 0.1
*
* note: the circuit ends here; what follows only measures
*
* note: the voltage at d_woofer is that across driver "woofer"
e_woofer d_woofer 0 woofer_p between 1.0
*
* note: 1 A is driven into the input of this copy, other inputs are shorted: the voltage
* note: at z_input is the impedance of input "input" in ohm
i_z_input 0 z_input dc 0 ac 1.0
l_z_l1 z_input z_l1_inner 0.00082
r_z_l1_dcr z_l1_inner z_woofer_p 0.28
c_z_c1 z_woofer_p 0 1.2e-05
r_z_woofer_re z_woofer_p z_between 8.0
l_z_l2 z_between 0 0.0003
k_z_l1_l2 l_z_l1 l_z_l2 0.1
*
* note: the next line is a command to ngspice: decimals and phases of what `.print` writes
*# set numdgt=9 units=degrees
.options short=1e-15 numdgt=9
* note: the next row belongs to the options in ngspice (do without a direct-current solution, which
* note: capacitors in series and loops of coils do not have), and to this comment in gnucap
+ noopac
*
* note: vm is a magnitude, vp a phase in degrees
* note: driver "woofer": voltage at d_woofer
* note: input "input": impedance in ohm as voltage at z_input
.print ac vm(d_woofer) vp(d_woofer) vm(z_input) vp(z_input)
.ac dec 2 20.0 20000.0
.end
"""


def test_text_of_a_small_network() -> None:
    netlist = emit(WEDGE, SWEEP, design_title="Quay Street wedge", notes=("variant: none",))
    assert netlist.text == WEDGE_TEXT
    assert netlist.author_nodes["woofer_p"] == "woofer+"
    assert netlist.author_elements["r_l1_dcr"] == "L1.dcr"
    assert netlist.coupling_names == {"L1~L2": "k_l1_l2"}
    assert netlist.feed_names == {"input": "v_input"}


def test_text_is_the_same_in_every_run() -> None:
    assert emit(WEDGE, SWEEP, design_title="w") == emit(WEDGE, SWEEP, design_title="w")


def test_text_is_lower_case_and_short_lined_outside_comments() -> None:
    for seed in range(50):
        for line in emit(random_network(seed), SWEEP, design_title="T").text.splitlines():
            assert line.startswith("*") or (line == line.lower() and len(line) < 300)


def test_reading_back_gives_the_same_network() -> None:
    """Elements, couplings and feeds come back, values to the last bit, names by the netlist's own mapping."""
    for seed in range(200):
        network = random_network(seed)
        netlist = emit(network, SWEEP, design_title="T")
        found = read(netlist.text)
        node, element = netlist.node_names, netlist.element_names
        assert found.elements == tuple(
            Element(element[e.name], e.kind, node[e.plus], node[e.minus], e.value, element[e.name])
            for e in network.elements
        )
        assert found.couplings == tuple(
            Coupling(netlist.coupling_names[c.name], element[c.first], element[c.second], c.k)
            for c in network.couplings
        )
        assert found.feeds == tuple(Feed(netlist.feed_names[f.name], node[f.node]) for f in network.feeds)


@pytest.mark.parametrize(
    "line",
    ["r1 a 0 1k", "r1 a 0 nan", ".include x", "x1 a 0 f", "v1 a 0 1", "r1 a 0 1 tc=2", "d1 a 0 d", "r1 a 0"],
)
def test_reader_refuses_what_is_never_emitted(line: str) -> None:
    with pytest.raises(NotEmittedHere) as refused:
        read(f"* shuntwise: t\n{line}\n")
    assert refused.value.line == 2


def test_values_keep_every_bit() -> None:
    values = (5e-324, 1.7976931348623157e308, 0.1 + 0.2, 1e-05, 4.7e-06, 8.0)
    elements = tuple(Element(f"R{i}", "R", "a", GROUND, value, "R") for i, value in enumerate(values))
    found = read(emit(Network(elements, feeds=(Feed("input", "a"),)), SWEEP, design_title="").text)
    assert tuple(e.value for e in found.elements) == values


def test_numpy_value_is_written_as_a_plain_number() -> None:
    element = Element("R1", "R", "a", GROUND, np.float64(3.3), "R1")
    text = emit(Network((element,), feeds=(Feed("input", "a"),)), SWEEP, design_title="").text
    assert "\nr1 a 0 3.3\n" in text


def run_unchanged(engine: Engine, text: str, folder: Path) -> str:
    """Run a file just as a person would: what the program prints, which must hold no complaint."""
    (folder / "design.cir").write_text(text, encoding="ascii")
    done = subprocess.run(
        [engine.program, "-b", "design.cir"], cwd=folder, stdin=subprocess.DEVNULL,
        capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0
    complaint = r"warning|error|singular|not positive|\^ \?|open circuit"
    assert not re.search(complaint, done.stdout + done.stderr, re.IGNORECASE)
    return done.stdout


def printed(engine: Engine, stdout: str) -> dict[str, list[float]]:
    """The columns that a simulator printed, by heading: what stands under it more than once comes more than once."""
    suffix = {"f": 1e-15, "p": 1e-12, "n": 1e-9, "u": 1e-6, "m": 1e-3, "K": 1e3, "Meg": 1e6, "": 1.0}
    columns: dict[str, list[float]] = {}
    headings: list[str] = []
    for line in stdout.splitlines():
        words = line.split()
        if words and words[0] in ("Index", "#Freq"):
            headings = words[1:] if words[0] == "Index" else ["frequency", *words[1:]]
            columns = {heading: [] for heading in headings} | columns
        elif headings and words and words[0][0].isdigit():
            numbers = words[1:] if engine is NGSPICE else words
            for heading, number in zip(headings, numbers, strict=True):
                value, unit = re.fullmatch(r"([-+.\deE]*\d\.?)([a-zA-Z]*)", number).groups()
                columns[heading].append(float(value) * suffix[unit])
    return columns


@EACH_ENGINE
@pytest.mark.parametrize("name", [f"N{number}" for number in range(1, 7)])
def test_file_alone_prints_drivers_and_impedance(engine: Engine, name: str, tmp_path: Path) -> None:
    """Both simulators run the file unchanged and print what lcapy solved, to the nine digits that they print.

    Source: `reference/10_node_voltages.csv`, solved symbolically with lcapy 1.26.
    """
    network = networks()[name]
    for freq_hz, expected in node_voltages()[name].items():
        netlist = emit(network, Sweep(freq_hz, 10 * freq_hz, 1), design_title=network.title)
        columns = printed(engine, run_unchanged(engine, netlist.text, tmp_path))
        assert columns["frequency"][0] == pytest.approx(freq_hz)
        for driver in network.drivers:
            node = netlist.driver_nodes[driver.name]
            size, phase = columns[f"vm({node})"][0], columns[f"vp({node})"][0]
            wanted = expected[driver.plus] - expected[driver.minus]
            assert abs(size * np.exp(1j * np.radians(phase)) - wanted) < 2e-8 * abs(wanted)
        assert f"vm({netlist.impedance_nodes['input']})" in columns


@EACH_ENGINE
def test_impedance_printed_for_each_of_two_inputs(engine: Engine, tmp_path: Path) -> None:
    """Two inputs with a resistor between them, by hand: each sees its own load beside that resistor, 4 and 8
    beside 12 ohm."""
    resistor = (("R1", "a", GROUND, 4.0), ("R2", "b", GROUND, 8.0), ("R3", "a", "b", 12.0))
    elements = tuple(Element(label, "R", plus, minus, ohm, label) for label, plus, minus, ohm in resistor)
    network = Network(elements, feeds=(Feed("low", "a"), Feed("high", "b")))
    columns = printed(engine, run_unchanged(engine, emit(network, SWEEP, design_title="t").text, tmp_path))
    assert columns["vm(z_low)"] == pytest.approx([3.0] * 7, rel=1e-9)
    assert columns["vm(z_high)"] == pytest.approx([4.8] * 7, rel=1e-9)


@EACH_ENGINE
def test_capacitor_only_nodes_and_coil_loops_run_without_a_word(engine: Engine, tmp_path: Path) -> None:
    """No direct-current solution exists here: `noopac` spares ngspice looking for it, unseen by gnucap."""
    elements = (
        Element("C1", "C", "a", "m", 1e-5, "C1"),
        Element("C2", "C", "m", GROUND, 1e-5, "C2"),
        Element("L1", "L", "a", GROUND, 1e-3, "L1"),
        Element("L2", "L", "a", "b", 1e-3, "L2"),
        Element("L3", "L", "a", "b", 2e-3, "L3"),
        Element("R1", "R", "b", GROUND, 8.0, "R1"),
    )
    network = Network(elements, feeds=(Feed("input", "a"),), drivers=(DriverPort("half", "m", GROUND),))
    columns = printed(engine, run_unchanged(engine, emit(network, SWEEP, design_title="t").text, tmp_path))
    assert columns["vm(m)"] == pytest.approx([0.5] * 7, rel=1e-6)


@EACH_ENGINE
def test_clash_words_as_node_names_are_printed(engine: Engine, tmp_path: Path) -> None:
    """A pad called `all`, `gnd` or `and` prints its own voltage: 0.75 V of a divider, each from its node."""
    words = [*sorted(CLASH_WORDS), "e", "pi", "i", "db", "mag", "ac", "r1"]
    elements = [Element(f"T{w}", "R", "top", w, 1.0, "t") for w in words]
    elements += [Element(f"B{w}", "R", w, GROUND, 3.0, "b") for w in words]
    drivers = tuple(DriverPort(f"at {w}", w, GROUND) for w in words)
    network = Network(tuple(elements), feeds=(Feed("input", "top"),), drivers=drivers)
    netlist = emit(network, SWEEP, design_title="t")
    columns = printed(engine, run_unchanged(engine, netlist.text, tmp_path))
    for driver in drivers:
        node = netlist.driver_nodes[driver.name]
        assert columns[f"vm({node})"] == pytest.approx([0.75] * 7, rel=1e-6), driver.plus


HARD_TO_TELL_APART = [
    "upper_left_tweeter_of_the_array_1", "upper_left_tweeter_of_the_array_2", "upper_left_tweeter_of_the_array_11",
    "Upper_left_tweeter_of_the_array_1", "upperlefttweeterofthearraya", "upperlefttweeterofthearrayb",
    "Höhenlautsprecher_links", "Höhenlautsprecher_rechts", "Höhenlautsprecher_Rechts", "高音左", "高音右", "высокий",
    "high", "HIGH", "in", "z_input",
]  # fmt: skip


@EACH_ENGINE
def test_every_column_has_a_heading_of_its_own(engine: Engine, tmp_path: Path) -> None:
    """Each driver hangs, inside a used network, on a divider of its own; its column has its voltage and no other's.

    At 1 V: driver N has 1 / (2 + N / 7) V, by hand, to nine digits.
    """
    text = "network divider (top, middle, foot) given up {\nresistor Ru up\nresistor Rd 8 ohm\n"
    text += "top -- Ru -- middle\nmiddle -- Rd -- foot\n}\n"
    wanted = {}
    for at, name in enumerate(HARD_TO_TELL_APART):
        far, near = ("+", "-") if at % 2 else ("-", "+")  # every other one has its plus on return: a meter reads it
        text += f"driver {name} 8 ohm {{ re 8 ohm, role tweeter }}\n"
        text += f"use divider as D{at}_{name} {{ up {4 + at / 7 * 4} ohm }}\n"
        text += f"leg {name} {{\ninput+ -- D{at}_{name} -- {name}{near}\n{name}{far} -- return\n"
        text += f"D{at}_{name}.foot -- return\n}}\n"
        wanted[name] = 1 / (2 + at / 7)
    design = load_text(text)
    assert isinstance(design.lowered, Network), [finding.headline for finding in design.findings]
    netlist = emit(design.lowered, SWEEP, design_title="t")
    columns = printed(engine, run_unchanged(engine, netlist.text, tmp_path))
    assert len(columns) == 1 + 2 * (len(wanted) + 1)
    for name, volt in wanted.items():
        assert columns[f"vm({netlist.driver_nodes[name]})"] == pytest.approx([volt] * 7, rel=5e-9), name
        phase = 180.0 if netlist.driver_nodes[name].startswith("d_") else 0.0
        assert np.abs(columns[f"vp({netlist.driver_nodes[name]})"]) == pytest.approx([phase] * 7, abs=1e-9), name


def test_driver_with_both_pads_on_one_node_has_no_column() -> None:
    network = dataclasses.replace(WEDGE, drivers=(DriverPort("shorted", "between", "between"),))
    netlist = emit(network, SWEEP, design_title="t")
    assert netlist.driver_nodes == {}
    assert '* note: driver "shorted": no voltage: both pads are on one node\n' in netlist.text


@needs(NGSPICE)
def test_a_drivers_meter_loads_nothing() -> None:
    """The node voltages with and without a meter across the load are the same to the last bits."""
    with_meter = NGSPICE.run(emit(WEDGE, SWEEP, design_title="t"))
    without = NGSPICE.run(emit(dataclasses.replace(WEDGE, drivers=()), SWEEP, design_title="t"))
    for node, voltage in without.voltages.items():
        assert with_meter.voltages[node] == pytest.approx(voltage, rel=1e-13)


@pytest.mark.parametrize(
    "ends",
    [(0.0, 9.0), (9.0, 9.0), (1.0, float("inf")), (float("nan"), 9.0), (-1.0, 9.0), (1.0, float("nan"))],
)
def test_sweep_that_goes_nowhere_is_refused(ends: tuple[float, float]) -> None:
    with pytest.raises(ValueError, match="a sweep"):
        Sweep(*ends, 10)
