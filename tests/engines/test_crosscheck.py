"""The comparison passes where solver and simulator agree, and says where they do not."""

import dataclasses

import numpy as np
import pytest

from engines.installed import EACH_ENGINE, needs
from netlist.closed_form import networks
from shuntwise.engines import crosscheck as module
from shuntwise.engines.crosscheck import ENGINES, crosscheck
from shuntwise.engines.engine import Engine
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.network.network import DriverPort
from shuntwise.network.sweep import Sweep
from shuntwise.response.solve import solve

SWEEP = Sweep(20.0, 20000.0, 10)


@EACH_ENGINE
@pytest.mark.parametrize("name", [f"N{number}" for number in range(1, 7)])
def test_solver_and_engine_agree_on_the_closed_form_networks(engine: Engine, name: str) -> None:
    """Far within the bound: what remains is rounding of some 16 digits."""
    network = networks()[name]
    check = crosscheck(network, SWEEP, engine)
    assert check.passed
    assert check.worst.relative < 1e-11
    assert (check.engine, check.bound, check.points >= 31) == (engine.program, 1e-9, True)
    compared = {(d.quantity, d.name) for d in check.deviations}
    assert compared == (
        {("node", node) for node in network.nodes}
        | {("driver", driver.name) for driver in network.drivers}
        | {("impedance", feed.name) for feed in network.feeds}
    )


@needs(NGSPICE)
def test_value_off_by_a_hundred_millionth_is_found(monkeypatch: pytest.MonkeyPatch) -> None:
    """A solver that reads one coil of N1 as 1e-8 too large fails, and the place is at that coil."""
    network = networks()["N1"]
    coil = network.element["L2"]
    wrong = dataclasses.replace(coil, value=coil.value * (1 + 1e-8))
    elements = tuple(wrong if element is coil else element for element in network.elements)
    other = dataclasses.replace(network, elements=elements)
    monkeypatch.setattr(module, "solve", lambda _, freq_hz: solve(other, freq_hz))
    check = crosscheck(network, SWEEP, NGSPICE)
    assert not check.passed
    assert 1e-9 < check.worst.relative < 1e-8
    assert check.worst.name in {coil.plus, coil.minus, "woofer"}
    assert 1000.0 < check.worst.freq_hz < 5000.0
    assert crosscheck(network, SWEEP, NGSPICE, bound=1e-7).passed
    assert check.worst_of("impedance").relative < check.worst.relative


@needs(NGSPICE)
def test_solver_that_gives_no_number_never_passes(monkeypatch: pytest.MonkeyPatch) -> None:
    class Broken:
        def __init__(self, freq_hz: np.ndarray) -> None:
            self.nothing = np.full(len(freq_hz), np.nan + 0j)

        def voltage(self, _: str) -> np.ndarray:
            return self.nothing

        driver_voltage = impedance = voltage

    monkeypatch.setattr(module, "solve", lambda _, freq_hz: Broken(freq_hz))
    check = crosscheck(networks()["N1"], SWEEP, NGSPICE, bound=1e300)
    assert not check.passed
    assert check.worst.relative == np.inf


@needs(NGSPICE)
def test_driver_with_both_pads_on_one_node_is_left_out() -> None:
    network = dataclasses.replace(networks()["N1"], drivers=(DriverPort("shorted", "w", "w"),))
    check = crosscheck(network, SWEEP, NGSPICE)
    assert check.passed
    assert check.worst_of("driver") is None


def test_engines_are_found_by_program_name() -> None:
    assert {name: engine.program for name, engine in ENGINES.items()} == {
        "ngspice": "ngspice",
        "gnucap": "gnucap",
    }
