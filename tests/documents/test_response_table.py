"""The response table: its numbers are the solver's and the textbook's, and no name can do harm in it."""

from __future__ import annotations

import csv
import io
import json
from math import atan, degrees, log10, pi, sqrt
from pathlib import Path

import numpy as np
import pytest

from documents.designs import TWO_WAY, example, one
from shuntwise.cli.main import main
from shuntwise.documents.table import as_csv, as_text, response_rows
from shuntwise.network.network import GROUND, DriverPort, Element, Feed, Network
from shuntwise.response.sensitivity import group_delay
from shuntwise.response.solve import Solver

FREQ = np.array([20.0, 1000.0, 2546.479089470325, 20000.0])


def rows(network: Network, freq_hz: object = FREQ):
    return response_rows(Solver(network).solve(freq_hz), network)


def test_first_order_two_way_by_hand() -> None:
    """L = 0.5 mH and C = 5 uF at 8 ohm: both corners are near 8/(2 pi L) and 1/(2 pi 8 C); series R-L and R-C."""
    columns = rows(one(TWO_WAY).lowered)
    by_name = {(column.owner, column.quantity): column.values for column in columns}
    for i, freq in enumerate(FREQ):
        lag = 2 * pi * freq * 0.5e-3 / 8
        lead = 1 / (2 * pi * freq * 5e-6 * 8)
        assert by_name["woofer", "level"][i] == pytest.approx(-20 * log10(sqrt(1 + lag**2)), abs=1e-9)
        assert by_name["woofer", "phase"][i] == pytest.approx(-degrees(atan(lag)), abs=1e-9)
        assert by_name["tweeter", "phase"][i] == pytest.approx(degrees(atan(lead)), abs=1e-9)
        # Group delay of a first-order low-pass: tau / (1 + (omega tau)^2) with tau = L/R, in ms.
        assert by_name["woofer", "group delay"][i] == pytest.approx(0.0625 / (1 + lag**2), rel=1e-9)
        both = 1 / (1 / complex(8, 8 * lag) + 1 / complex(8, -8 * lead))
        assert by_name["input", "impedance"][i] == pytest.approx(abs(both), rel=1e-9)
        assert by_name["input", "phase"][i] == pytest.approx(np.degrees(np.angle(both)), abs=1e-9)


def test_csv_parses_back_to_the_solver_s_numbers() -> None:
    network = example("12").lowered
    freq = np.geomspace(20, 20000, 31)
    response = Solver(network).solve(freq)
    text = as_csv(response_rows(response, network))
    assert text.endswith("\r\n") and text.count("\r\n") == text.count("\n") == 32
    table = list(csv.DictReader(io.StringIO(text, newline="")))
    for name, values in {
        "frequency (Hz)": freq,
        "mid level (dB)": 20 * np.log10(np.abs(response.driver_voltage("mid"))),
        "mid phase (deg)": np.degrees(np.angle(response.driver_voltage("mid"))),
        "tweeter group delay (ms)": 1e3 * group_delay(response, "tweeter"),
        "input impedance (ohm)": np.abs(response.impedance("input")),
    }.items():
        assert [float(row[name]) for row in table] == pytest.approx(values, rel=1e-8)


def test_text_table_is_aligned_and_has_units() -> None:
    assert (
        as_text(rows(one(TWO_WAY).lowered))
        == """\
            woofer                       tweeter                      input
frequency    level  phase  group delay    level  phase  group delay   impedance  phase
       Hz       dB    deg           ms       dB    deg           ms         ohm    deg
     20.0     0.00   -0.4        0.062   -45.97   89.7        0.040        8.00    0.2
   1000.0    -0.62  -21.4        0.054   -12.26   75.9        0.038        8.59    6.4
   2546.5    -3.01  -45.0        0.031    -5.37   57.4        0.028       10.10    3.3
  20000.0   -17.97  -82.7        0.001    -0.17   11.3        0.002        8.16   -3.9
"""
    )


def test_hostile_names_are_neutralised() -> None:
    """Names made by a program rather than by the language: formulas, quotes, escapes, line ends."""
    names = ['=HYPERLINK("x")', "+1", "-1", "@SUM(A1)", "\ttab", "a,b\r\nc", "\x1b[2J"]
    elements = tuple(Element(f"R{i}", "R", "n", GROUND, 8.0, f"R{i}") for i in range(len(names)))
    network = Network(
        elements, feeds=(Feed("in", "n"),), drivers=tuple(DriverPort(name, "n", GROUND) for name in names)
    )
    columns = rows(network)
    parsed = list(csv.reader(io.StringIO(as_csv(columns), newline="")))
    assert len(parsed) == 1 + len(FREQ) and {len(row) for row in parsed} == {len(columns)}
    assert not any(cell[:1] in "=+-@\t\r" for cell in parsed[0])
    assert parsed[0][1] == '\'=HYPERLINK("x") level (dB)'
    assert "\x1b" not in as_csv(columns) + as_text(columns)
    assert len(as_text(columns).splitlines()) == 3 + len(FREQ)


def test_no_voltage_and_no_current_leave_cells_empty() -> None:
    """A driver that nothing feeds has no level; an input into nothing has no impedance."""
    elements = (Element("R1", "R", "x", GROUND, 8.0, "R1"), Element("R2", "R", "x", "y", 1.0, "R2"))
    network = Network(elements, feeds=(Feed("in", "a"),), drivers=(DriverPort("woofer", "x", GROUND),))
    columns = rows(network)
    assert np.isnan(columns[1].values).all() and np.isnan(columns[4].values).all()
    assert as_csv(columns).splitlines()[1] == "20,,,,,"
    assert as_text(columns).splitlines()[3].split() == ["20.0", "-", "-", "-", "-", "-"]


def test_json_has_complex_values_beside_levels_and_degrees(capsys: pytest.CaptureFixture[str]) -> None:
    """One object a driver and one an input; each says the same in both ways."""
    path = str(Path(__file__).parents[2] / "examples" / "02-rehearsal-wedge.shunt")
    assert main(["response", path, "--json", "--per-decade", "5"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert [entry["name"] for entry in told["drivers"]] == ["woofer", "tweeter"]
    assert [entry["name"] for entry in told["inputs"]] == ["input"]
    for told_of, size in (*((d, "level_db") for d in told["drivers"]), (told["inputs"][0], "ohm")):
        value = np.array(told_of["real"]) + 1j * np.array(told_of["imag"])
        magnitude = np.abs(value) if size == "ohm" else 20 * np.log10(np.abs(value))
        assert np.allclose(magnitude, told_of[size], rtol=1e-9) and len(value) == len(told["freq_hz"])
        assert np.allclose(np.degrees(np.angle(value)), told_of["phase_deg"])
