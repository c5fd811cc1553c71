"""What the engines bring back is the closed form, and every way of failing has its type and its words."""

import os
import re
import time
from pathlib import Path
from random import Random

import numpy as np
import pytest

from engines.installed import EACH_ENGINE, needs
from netlist.closed_form import SERIES_RESISTOR, networks, node_voltages
from shuntwise.engines import gnucap, ngspice
from shuntwise.engines.engine import Engine, EngineFailed, EngineMissing, run_program
from shuntwise.engines.gnucap import GNUCAP
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.netlist.spice import Netlist, emit
from shuntwise.network.network import GROUND, Coupling, DriverPort, Element, Feed, Network
from shuntwise.network.sweep import Sweep

CLOSED_FORM = 1e-13
"""The reference has 15 digits of voltages near 1 V; the engines lose a digit or two of 16 to rounding."""


def divider(k: float = 0.0) -> Netlist:
    """Two coils in series from the input to ground, coupled by `k`."""
    elements = (
        Element("R1", "R", "a", "b", 1.0, "R1"),
        Element("L1", "L", "b", "c", 1e-3, "L1"),
        Element("L2", "L", "c", GROUND, 1e-3, "L2"),
    )
    couplings = (Coupling("K1", "L1", "L2", k),)
    network = Network(elements, couplings, (Feed("input", "a"),), (DriverPort("woofer", "b", GROUND),))
    return emit(network, Sweep(100.0, 1000.0, 2), design_title="divider")


@EACH_ENGINE
@pytest.mark.parametrize("name", [f"N{number}" for number in range(1, 7)])
def test_every_node_and_driver_of_the_closed_form_networks(engine: Engine, name: str) -> None:
    """Source: `reference/10_node_voltages.csv`, solved symbolically in exact rationals with lcapy 1.26."""
    network = networks()[name]
    for freq_hz, expected in node_voltages()[name].items():
        found = engine.run(emit(network, Sweep(freq_hz, 10 * freq_hz, 1), design_title=network.title))
        assert found.freq_hz[0] == freq_hz
        assert set(found.voltages) == set(network.nodes)
        for node, voltage in found.voltages.items():
            assert abs(voltage[0] - expected[node]) < CLOSED_FORM
        for driver in network.drivers:
            difference = expected[driver.plus] - expected[driver.minus]
            assert abs(found.driver_voltages[driver.name][0] - difference) < 2 * CLOSED_FORM


@EACH_ENGINE
@pytest.mark.parametrize("name", SERIES_RESISTOR)
def test_impedance_of_the_closed_form_networks(engine: Engine, name: str) -> None:
    """Z = R / (1 - V2/V1) from the two closed-form voltages at the resistor that carries the input current.

    The difference of two voltages near 1 V leaves 12 digits or fewer.
    """
    network = networks()[name]
    first, second, ohm = SERIES_RESISTOR[name]
    for freq_hz, expected in node_voltages()[name].items():
        found = engine.run(emit(network, Sweep(freq_hz, 10 * freq_hz, 1), design_title=network.title))
        impedance = ohm * expected[first] / (expected[first] - expected[second])
        assert found.impedances["input"][0] == pytest.approx(impedance, rel=1e-10)


@EACH_ENGINE
def test_sweep_spans_what_was_asked_for(engine: Engine) -> None:
    netlist = divider()
    freq_hz = engine.run(netlist).freq_hz
    assert freq_hz[0] == 100.0
    assert freq_hz[-1] >= 1000.0 * (1 - 1e-12)
    assert len(freq_hz) in (3, 4)


@EACH_ENGINE
def test_long_ladder_comes_back_whole(engine: Engine) -> None:
    """600 resistors of 1 ohm in a row divide the input evenly: more nodes than a row of gnucap's can hold."""
    nodes = ["in", *(f"n{at}" for at in range(1, 600)), GROUND]
    elements = tuple(Element(f"R{at}", "R", nodes[at], nodes[at + 1], 1.0, "row") for at in range(600))
    found = engine.run(emit(Network(elements, feeds=(Feed("input", "in"),)), Sweep(20.0, 20e3, 10), design_title="row"))
    for at, node in enumerate(nodes[:-1]):
        assert np.allclose(found.voltages[node], 1 - at / 600, rtol=0, atol=1e-12)
    assert np.allclose(found.impedances["input"], 600, rtol=1e-12)


@needs(NGSPICE)
def test_environment_cannot_change_the_result_format(monkeypatch: pytest.MonkeyPatch) -> None:
    """ngspice writes raw files as text if SPICE_ASCIIRAWFILE is set."""
    monkeypatch.setenv("SPICE_ASCIIRAWFILE", "1")
    assert len(NGSPICE.run(divider()).freq_hz) == 3


@needs(NGSPICE)
def test_ngspice_refuses_an_impossible_coupling() -> None:
    """|k| > 1: ngspice says so, exits with code 0 and writes results all the same."""
    with pytest.raises(EngineFailed, match="not positive definite"):
        NGSPICE.run(divider(1.5))


@pytest.mark.parametrize("k", [1.0, -1.0, 0.999999])
def test_gnucap_is_not_trusted_with_perfect_coupling(k: float) -> None:
    with pytest.raises(EngineFailed, match="cannot solve coils coupled"):
        GNUCAP.run(divider(k))


@pytest.mark.parametrize("engine", [NGSPICE, GNUCAP], ids=lambda engine: engine.program)
def test_missing_program_names_its_package(engine: Engine, monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(EngineMissing, match=f"apt install {engine.debian_package}") as missing:
        engine.run(divider())
    assert (missing.value.program, missing.value.debian_package) == (engine.program, engine.debian_package)


def pretend(program: str, script: str, folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Put a shell script of the program's name first on the search path."""
    path = folder / program
    path.write_text(f"#!/bin/sh\n{script}\n", encoding="ascii")
    path.chmod(0o755)
    monkeypatch.setenv("PATH", f"{folder}{os.pathsep}{os.environ['PATH']}")


def raw_file(points: int, variables: tuple[str, ...], rows: np.ndarray) -> bytes:
    listed = "".join(f"\t{at}\t{name}\tvoltage\n" for at, name in enumerate(variables))
    header = f"Title: t\nFlags: complex\nNo. Variables: {len(variables)}\nNo. Points: {points}\n"
    return (header + f"Variables:\n{listed}Binary:\n").encode() + rows.astype(np.complex128).tobytes()


COLUMNS = ("frequency", "v(a)", "v(b)", "v(c)", "v(z_input)")
GOOD = np.outer([100.0, 1000.0], np.ones(5)) + 0j


@pytest.mark.parametrize(
    ("script", "raw", "words"),
    [
        ("echo nothing to say >&2; exit 1", None, "ended with code 1\nnothing to say"),
        ("kill -SEGV $$", None, "ended with code -11"),
        ("exit 0", None, "wrote no result"),
        ("echo 'Warning: singular matrix' >&2", raw_file(2, COLUMNS, GOOD), "complained"),
        ("exit 0", raw_file(3, COLUMNS, GOOD), "cut short"),
        ("exit 0", raw_file(2, COLUMNS[:-1], GOOD[:, :-1]), r"lacks v\(z_input\)"),
        ("exit 0", raw_file(1, COLUMNS, GOOD[:1]), "sweep was cut short: 1 points"),
        ("exit 0", raw_file(0, COLUMNS, GOOD[:0]), "sweep was cut short: 0 points"),
        ("exit 0", raw_file(2, COLUMNS, GOOD[::-1]), "cut short"),
        ("exit 0", raw_file(3, COLUMNS, GOOD[[0, 0, 1]]), "do not rise"),
        ("exit 0", raw_file(2, COLUMNS, GOOD * [[1, 1, np.nan, 1, 1]]), "`b` is not a number"),
        ("exit 0", raw_file(2, ("time", *COLUMNS[1:]), GOOD), "no frequencies"),
        ("exit 0", b"Title: t\nFlags: real\nBinary:\n", "not a binary one"),
        ("exit 0", b"\xff\xfe", "not a binary one"),
        ("exit 0", raw_file(2, COLUMNS, GOOD).replace(b"\t1\tv(a)\tvoltage", b"\t1"), "names no variables"),
        ("exit 0", raw_file(2, COLUMNS, GOOD).replace(b"Points: 2", b"Points: " + b"9" * 5000), "cut short"),
        ("exit 0", raw_file(2, COLUMNS, GOOD).replace(b"Variables: 5", b"Variables: 0"), "cut short"),
        ("exit 0", b"Flags: complex\nNo. Variables: 0\nNo. Points: 0\nVariables:\nBinary:\n", "names no variables"),
        ("exit 0", raw_file(2, COLUMNS, GOOD * [[np.nan, 1, 1, 1, 1]]), "cut short|do not rise"),
        ("exit 0", raw_file(3, COLUMNS, np.vstack([GOOD[0], GOOD[0] * np.nan, GOOD[1]])), "do not rise"),
        ("exit 0", raw_file(2, COLUMNS, GOOD)[:-3], "cut short"),
    ],
)
def test_ngspice_gone_wrong_is_a_typed_failure(
    script: str, raw: bytes | None, words: str, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    if raw is not None:
        (tmp_path / "raw").write_bytes(raw)
        script = f"cp '{tmp_path}/raw' result.raw; {script}"
    pretend("ngspice", script, tmp_path, monkeypatch)
    with pytest.raises(EngineFailed, match=words):
        ngspice.run(divider())


HEADING = "echo '* shuntwise: NaN ^ ? open circuit'; echo '#Freq vr(a) vi(a)'"


@pytest.mark.parametrize(
    ("script", "words"),
    [
        ("echo 'r9 a b : no such device'", "printed 0 tables of 1"),
        (f"{HEADING}; echo '.options noopac'; echo ' ^ ? what is this?'", "complained"),
        (f"{HEADING}; echo ' 100. NaN 0. 0. 0. 0. 0. 0. 0.'", "complained"),
        (f"{HEADING}; echo 'open circuit: internal node 3'", "complained"),
        (f"{HEADING}; echo ' 100. 1. 0. 1.'", "not numbers"),
        (f"{HEADING}; echo ' 100. 1. 0. 1. 0. 1. 0. 1. word'", "not numbers"),
        (f"{HEADING}; echo ' 100. 1. 0. 1. 0. 1. 0. 1. 0.'", "sweep was cut short: 1 points"),
        (HEADING, "sweep was cut short: 0 points"),
        (f"{HEADING}; exit 3", "complained"),
    ],
)
def test_gnucap_gone_wrong_is_a_typed_failure(
    script: str, words: str, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """The title may hold any of the words that are looked for in what gnucap prints."""
    pretend("gnucap", script, tmp_path, monkeypatch)
    with pytest.raises(EngineFailed, match=words):
        gnucap.run(divider())


def test_gnucap_table_is_read_with_its_suffixes(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    rows = ["100. 1. -628.3u 5.2m 1.5n -2.f 3.p 12. 0.", "1.K 9.5Meg 1.G 2.T 1.E-18 -1.5e+3 0.25K 8. 0."]
    pretend("gnucap", "; ".join([HEADING, *(f"echo ' {row}'" for row in rows)]), tmp_path, monkeypatch)
    found = gnucap.run(divider())
    assert found.freq_hz.tolist() == [100.0, 1000.0]
    assert found.voltages["a"].tolist() == [1 - 628.3e-6j, 9.5e6 + 1e9j]
    assert found.voltages["b"].tolist() == [5.2e-3 + 1.5e-9j, 2e12 + 1e-18j]
    assert found.voltages["c"].tolist() == [-2e-15 + 3e-12j, -1500 + 250j]
    assert found.driver_voltages["woofer"].tolist() == found.voltages["b"].tolist()
    assert found.impedances["input"].tolist() == [12, 8]


@pytest.mark.parametrize(("program", "run"), [("ngspice", ngspice.run), ("gnucap", gnucap.run)])
@pytest.mark.parametrize("script", ["exec sleep 60", "sleep 60", "sleep 60 & exit 0"])
def test_program_that_hangs_is_stopped(
    program: str, run, script: str, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    """Itself, by a child that it waits for, and by one that it leaves behind."""
    pretend(program, script, tmp_path, monkeypatch)
    begin = time.monotonic()
    with pytest.raises(EngineFailed, match=re.escape("no answer within 0.2 s")):
        run(divider(), timeout_s=0.2)
    assert time.monotonic() - begin < 30


def test_any_raw_file_is_read_or_a_typed_failure() -> None:
    """A sound file with some bytes changed, cut or doubled."""
    random, whole = Random(1), raw_file(2, COLUMNS, GOOD)
    for _ in range(2000):
        at, upto = sorted(random.choices(range(len(whole)), k=2))
        spoilt = whole[:at] + random.choice((b"", random.randbytes(3), whole[at:upto] * 2, b"\n\n")) + whole[upto:]
        try:
            ngspice.read_raw(spoilt)
        except EngineFailed:
            continue


def test_result_beyond_all_bounds_is_not_read(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    pretend("ngspice", "truncate -s 2G result.raw", tmp_path, monkeypatch)
    with pytest.raises(EngineFailed, match="more than 1024 MiB"):
        ngspice.run(divider())


def test_failure_excerpt_holds_no_control_characters(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    pretend("ngspice", r"printf 'Error: \033[31mred\007\n' >&2; exit 1", tmp_path, monkeypatch)
    with pytest.raises(EngineFailed) as failed:
        ngspice.run(divider())
    assert failed.value.excerpt == "Error: ?[31mred?"


def test_program_runs_in_a_folder_of_its_own(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """It holds the circuit alone, and is gone afterwards."""
    pretend("ngspice", "pwd; ls -A; cat", tmp_path, monkeypatch)
    ran = run_program("ngspice", "ngspice", [], "* text\n", timeout_s=10)
    folder, *listing = ran.stdout.split()
    assert listing == ["circuit.cir"]
    assert not Path(folder).exists()
