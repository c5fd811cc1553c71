"""What the bench takes a fault to be, against ngspice: its decks make every fault from the table of faults alone."""

from __future__ import annotations

from random import Random

import numpy as np
import pytest

from engines.installed import needs
from faultfinding.benches import bench_of, circuit_of
from faultfinding.boards import NONE, Plan, spoil
from faultfinding.decks import true_values
from shuntwise.bench.catalogue import cells, edit
from shuntwise.bench.solving import BEYOND_OHM, solved
from shuntwise.bench.states import stacked
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.model.box import DRIVERS_OFF, DRIVERS_ON, DUMMIES_ON, Reading


@needs(NGSPICE)
@pytest.mark.parametrize("name", ["two-way", "10-museum-loop", "16-village-hall", "17-cinema-sub"])
def test_every_fault_reads_as_ngspice_has_it(name: str) -> None:
    """Both make the board from the same row of the table, each in its own way."""
    bench, plan = bench_of(name), Plan(circuit_of(name))
    fed = bench.rig.inputs[0]
    ends = [(f"{driver}+", f"{driver}-") for driver in bench.rig.drivers]
    readings = [
        Reading("volts", plus, minus, loads, freq_hz, fed)
        for loads, pairs in ((DUMMIES_ON, [(f"{fed}+", f"{fed}-"), *ends]), (DRIVERS_ON, ends))
        for plus, minus in pairs
        for freq_hz in (150.0, 2000.0, 6000.0)
    ]
    readings += [Reading("resistance", f"{fed}+", plus, DRIVERS_OFF) for plus, _ in ends]
    resistance = np.array([reading.quantity == "resistance" for reading in readings])
    faults = [fault for fault in bench.faults if fault.family not in ("scatter", "meter")]
    boards, edits = [], []
    for fault in faults:
        size = cells(fault)[0]
        board = plan.board(Random(0), NONE, bench.instruments.dummy_ohm)
        spoil(board, plan, fault, size, Random(1), NONE)
        boards.append((board, readings))
        edits.append([edit(bench.rig, fault, size)])
    ours = solved(bench.rig, stacked(bench.rig, edits), bench.instruments, readings).values
    theirs = np.minimum(true_values(plan, boards, bench.instruments), np.where(resistance, BEYOND_OHM, np.inf))
    # The decks have wires of 0.02 ohm: with 200 mA at a short two of them make 8 mV.
    slack = np.where(resistance, 0.05, 9e-3)
    for fault, one, other in zip(faults, ours, theirs, strict=True):
        share = 0.5 if fault.family == "turns" else 0.02  # the corner of a shorted turn is drawn at random there
        assert (np.abs(one - other) < slack + share * other).all(), (fault, one, other)
