"""Readings of the bench against the project's other solver, hand calculations and differences."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from faultfinding.benches import bench_of, circuit_of
from shuntwise.bench.rig import rig_of
from shuntwise.bench.solving import BEYOND_OHM, solved
from shuntwise.bench.states import stacked, varied
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON, Instruments, Reading
from shuntwise.network.lower import lower
from shuntwise.network.network import Network
from shuntwise.response.solve import solve

FREQS_HZ = [40.0, 200.0, 1000.0, 6000.0]


def read(name: str, bench: Instruments, *readings: Reading) -> list[float]:
    rig = rig_of(circuit_of(name))
    return solved(rig, stacked(rig, [[]]), bench, readings).values[0].tolist()


def test_with_drivers_on_the_voltages_are_those_of_the_response() -> None:
    circuit = circuit_of("two-way")
    network = lower(circuit)
    assert isinstance(network, Network)
    response = solve(network, FREQS_HZ)
    stiff = Instruments(source_v=1.0, series_ohm=1e-6)
    for driver in ("woofer", "tweeter"):
        wanted = [Reading("volts", f"{driver}+", f"{driver}-", DRIVERS_ON, f, "input") for f in FREQS_HZ]
        # The voltmeters' megohms and the contact to the ground are all that differs.
        assert read("two-way", stiff, *wanted) == pytest.approx(np.abs(response.driver_voltage(driver)), rel=3e-5)
    wanted = [Reading("impedance", "input+", "input-", DRIVERS_ON, f, "input") for f in FREQS_HZ]
    assert read("two-way", Instruments(), *wanted) == pytest.approx(np.abs(response.impedance("input")), rel=3e-5)


def test_two_voice_coils_and_coupled_coils_are_those_of_the_response() -> None:
    for name in ("17-cinema-sub", "13-harbour-stage"):
        circuit = circuit_of(name)
        network = lower(circuit)
        assert isinstance(network, Network)
        rig = rig_of(circuit)
        # Capacitors without stated losses have some on the bench: take them out again.
        stated = {element.part for element in network.elements if element.quantity == "esr"}
        unstated = [branch.value_in == "E" and branch.owner not in stated for branch in rig.branches]
        states = stacked(rig, [[]])
        states = replace(states, ohm=np.where(unstated, 0.0, states.ohm))
        response = solve(network, FREQS_HZ)
        stiff = Instruments(source_v=1.0, series_ohm=1e-6)
        for driver in rig.drivers:
            wanted = [Reading("volts", f"{driver}+", f"{driver}-", DRIVERS_ON, f, "input") for f in FREQS_HZ]
            found = solved(rig, states, stiff, wanted).values[0]
            at_posts = response.driver_voltage(driver) / response.voltage("input+")  # the bench has no cable
            # Of two coils on one former the network lets a hundred-thousandth of the motion leak.
            assert found == pytest.approx(np.abs(at_posts), rel=3e-4)


def test_resistances_are_those_of_a_hand_calculation() -> None:
    def ohm(plus: str, minus: str, loads: str = DRIVERS_OFF) -> float:
        return read("two-way", Instruments(), Reading("resistance", plus, minus, loads))[0]

    assert ohm("input+", "woofer+") == pytest.approx(0.3, rel=1e-4)
    assert ohm("tweeter+", "tweeter-") == pytest.approx(1 / (1 / 8.2 + 1 / (3.9 + 0.35)), rel=1e-4)
    assert ohm("input+", "input-", DRIVERS_ON) == pytest.approx(0.3 + 5.8, rel=1e-4)
    assert ohm("input+", "tweeter+") == BEYOND_OHM
    assert ohm("woofer-", "tweeter-") == 0


def test_volts_behind_the_series_resistor_are_those_of_a_divider() -> None:
    """At 1 Hz the coil is its copper, and the capacitors are open."""
    reading = Reading("volts", "woofer+", "woofer-", DUMMIES_ON, 1.0, "input")
    assert read("two-way", Instruments(), reading)[0] == pytest.approx(2 * 8 / (10 + 0.3 + 8), rel=1e-4)


@pytest.mark.parametrize("name", ["two-way", "17-cinema-sub", "13-harbour-stage", "16-village-hall"])
def test_derivatives_are_those_of_differences(name: str) -> None:
    rig, bench = rig_of(circuit_of(name)), Instruments()
    fed = rig.inputs[0]
    readings = [Reading("resistance", f"{fed}+", f"{driver}+", DRIVERS_OFF) for driver in rig.drivers]
    readings += [
        Reading("volts", f"{driver}+", f"{driver}-", loads, freq, fed)
        for driver in rig.drivers
        for freq in FREQS_HZ
        for loads in (DRIVERS_ON, DUMMIES_ON)
    ]
    readings += [Reading("impedance", f"{fed}+", f"{fed}-", f"{rig.drivers[0]} off", f, fed) for f in FREQS_HZ]
    sound = stacked(rig, [[]])
    moves = solved(rig, sound, bench, readings, moves=True).moves
    assert moves is not None

    class Only(np.random.Generator):
        """Draws nothing but one offset, of one variation."""

        def __init__(self, number: int, offset: float) -> None:
            super().__init__(np.random.PCG64(0))
            self.number, self.offset, self.drawn = number, offset, -1

        def uniform(self, *_: object) -> object:
            self.drawn += 1
            return np.array([self.offset if self.drawn == self.number else 0.0])

    for number, variation in enumerate(rig.variations):
        offset = 1e-4 / variation.spread
        above, below = (
            solved(rig, varied(rig, sound, Only(number, sign * offset)), bench, readings).values[0] for sign in (1, -1)
        )
        difference = (above - below) / 2e-4
        assert moves[0, :, number] == pytest.approx(difference, rel=1e-4, abs=1e-6), variation


def test_a_node_that_hangs_in_the_air_reads_nothing() -> None:
    bench = bench_of("two-way")
    (opened,) = (n for n, f in enumerate(bench.faults) if f.family == "open" and f.points == ("tweeter+",))
    row = int(np.nonzero(bench.dictionary.fault_of == opened)[0][0])
    reading = Reading("volts", "tweeter+", "tweeter-", DUMMIES_ON, 3000.0, "input")
    states = bench.dictionary.states.part(slice(row, row + 1))
    assert solved(bench.rig, states, bench.instruments, [reading]).values[0, 0] < 1e-4
