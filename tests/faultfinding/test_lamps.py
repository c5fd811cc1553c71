"""Lamps on the bench: the judge's filament against physics, and the bench's against the judge's boards by ngspice."""

from __future__ import annotations

from dataclasses import replace
from math import log
from random import Random

import numpy as np
import pytest

from engines.installed import needs
from faultfinding.benches import bench_of, circuit_of
from faultfinding.boards import NONE, Plan
from faultfinding.decks import true_values
from faultfinding.lamps import MOST_GAS, Lamp
from shuntwise.bench.solving import solved
from shuntwise.bench.states import stacked
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.model.box import DRIVERS_OFF, DUMMIES_ON, Reading
from shuntwise.network.filament import RESISTANCE_EXPONENT, filament_of

NAME = "11-fairground-lamp"


@pytest.mark.parametrize("gas", [0.0, 0.1, MOST_GAS])
def test_a_filament_has_what_it_is_rated_at_and_what_it_is_cold(gas: float) -> None:
    lamp = Lamp(58.0, 24.0, gas)
    assert lamp.ohm(5.0, 24.0) == pytest.approx(58.0)
    assert lamp.ohm(5.0, 0.0) == pytest.approx(5.0)
    ohms = [lamp.ohm(5.0, volts) for volts in (0.1, 0.5, 2.0, 8.0, 24.0)]
    assert ohms == sorted(ohms)
    with pytest.raises(ValueError, match="gas"):
        Lamp(58.0, 24.0, 0.9)


def test_a_hot_filament_goes_with_a_power_of_the_volts() -> None:
    """P = V^2/R goes with T^4 and R with T^1.2, so R with V to the power of 2.4/5.2 = 0.46; gas makes it steeper."""
    vacuum, gas = Lamp(58.0, 24.0), Lamp(58.0, 24.0, MOST_GAS)
    exponent = log(vacuum.ohm(5.0, 24.0) / vacuum.ohm(5.0, 12.0)) / log(2)
    assert exponent == pytest.approx(2.4 / 5.2, abs=0.002)
    assert pytest.approx(exponent, abs=0.02) == RESISTANCE_EXPONENT
    assert gas.ohm(5.0, 1.0) < 0.75 * vacuum.ohm(5.0, 1.0)


def test_what_a_lamp_states_tells_its_filament() -> None:
    part = circuit_of(NAME).design.parts["B1"]
    filament = filament_of(part)
    assert (filament.cold, filament.hot, filament.rated_v) == (5.0, 58.0, 24.0)
    assert filament.glowing(24.0) == pytest.approx(58.0)


@needs(NGSPICE)
def test_lamps_read_between_what_gas_and_a_vacuum_make_of_them() -> None:
    bench, plan = bench_of(NAME), Plan(circuit_of(NAME))
    readings = [
        Reading("volts", f"{name}+", f"{name}-", loads, freq_hz, "input")
        for loads, names in ((DUMMIES_ON, ("input", "tweeter")), (DRIVERS_OFF, ("input",)))
        for name in names
        for freq_hz in (1000.0, 2000.0, 6000.0)
    ]
    ohm = [Reading("resistance", "input+", "B1.end", DRIVERS_OFF)]
    sound = stacked(bench.rig, [[]])

    def ours(warmth: float) -> np.ndarray:
        states = replace(sound, warmth=np.full_like(sound.warmth, warmth))
        return solved(bench.rig, states, bench.instruments, readings + ohm).values[0]

    cold, vacuum = ours(0.0), ours(1.0)
    boards = []
    for gas in (0.0, 0.05, 0.2, MOST_GAS):
        board = plan.board(Random(0), NONE, bench.instruments.dummy_ohm)
        board.lamps = {"B1": replace(board.lamps["B1"], gas=gas)}
        boards.append((board, readings + ohm))
    theirs = np.array(true_values(plan, boards, bench.instruments))
    assert theirs[0, :-1] == pytest.approx(vacuum[:-1], rel=0.03)  # another law
    assert np.abs(vacuum - cold)[:-1].max() > 0.2
    low, high = np.minimum(cold, vacuum) * 0.97, np.maximum(cold, vacuum) * 1.03
    assert ((theirs[:, :-1] >= low[:-1]) & (theirs[:, :-1] <= high[:-1])).all()
    assert theirs[:, -1] == pytest.approx(5.0, abs=0.05) and cold[-1] == vacuum[-1] == pytest.approx(5.0, abs=0.01)


def test_what_a_lamp_varies_by_moves_the_readings_as_differences_say() -> None:
    """But for what a lamp gains again by the volts that it takes more, which the derivative leaves out."""
    bench = bench_of(NAME)
    readings = [Reading("volts", "tweeter+", "tweeter-", DUMMIES_ON, freq_hz, "input") for freq_hz in (1e3, 2e3, 6e3)]
    sound = stacked(bench.rig, [[]])
    moves = solved(bench.rig, sound, bench.instruments, readings, moves=True).moves
    above, below = (
        solved(bench.rig, replace(sound, warmth=sound.warmth * by), bench.instruments, readings).values[0]
        for by in (1.01, 0.99)
    )
    (number,) = (n for n, variation in enumerate(bench.rig.variations) if variation.way == "warmth")
    assert moves is not None and moves[0, :, number] == pytest.approx((above - below) / 0.02, rel=0.3)
