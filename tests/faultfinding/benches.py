"""Benches for the tests, each worked out once, and a board in words."""

from __future__ import annotations

from functools import cache

import numpy as np

from documents.designs import ROOT
from shuntwise.api import load_text
from shuntwise.bench.bench import Bench
from shuntwise.bench.faults import Fault
from shuntwise.bench.solving import BEYOND_OHM
from shuntwise.bench.windows import Boards
from shuntwise.graph.circuit import Circuit
from shuntwise.model.box import OPEN, Reading, Taken
from shuntwise.workspace import Workspace

TWO_WAY = """design "Quarry hut"
driver woofer 8 ohm { re 5.8 ohm, le 0.5 mH, fs 55 Hz, qms 4, qes 0.5, 200 W }
driver tweeter 8 ohm { re 6.1 ohm, le 0.05 mH, fs 900 Hz, qms 2, qes 1.2, 60 W }
coil L1 1 mH { dcr 0.3 ohm, 5 % }
capacitor C1 10 uF { esr 0.05 ohm, 5 % }
capacitor C2 5.6 uF { esr 0.04 ohm, 5 % }
coil L2 0.56 mH { dcr 0.35 ohm, 5 % }
resistor R1 3.9 ohm { 5 % }
resistor R2 8.2 ohm { 5 % }
leg woofer {
  input+ -- L1 -- woofer+
  woofer+ -- C1 -- return
  woofer- -- return
}
leg tweeter {
  input+ -- C2 -- hp -- R1 -- tweeter+
  hp -- L2 -- return
  tweeter+ -- R2 -- return
  tweeter- -- return
}
"""


@cache
def circuit_of(name: str) -> Circuit:
    """The circuit of an example, or of TWO_WAY."""
    if name == "two-way":
        return load_text(TWO_WAY).circuit
    return Workspace(str(ROOT / f"examples/{name}.shunt"), on_boards=False).compilation().circuit


@cache
def bench_of(name: str) -> Bench:
    """Its bench with the usual instruments."""
    return Bench(circuit_of(name))


def row_of(bench: Bench, fault: Fault, size: float = 1.0) -> int:
    """The hypothesis of a fault whose size is nearest."""
    (number,) = (n for n, known in enumerate(bench.faults) if known == fault)
    rows = np.nonzero(bench.dictionary.fault_of == number)[0]
    return int(rows[np.abs(np.log(bench.dictionary.size_of[rows] / size)).argmin()])


def board(bench: Bench, row: int, seed: int, readings: tuple[Reading, ...] = ()) -> tuple[Taken, ...]:
    """What the meters show on one board with the fault of a row: the readings of the sheet, or others."""
    chosen = readings or tuple(line.reading for line in bench.sheet.lines)
    shown = Boards(bench.dictionary, np.array([row]), seed).shown(chosen)[0]
    return tuple(
        Taken(reading, OPEN if reading.quantity == "resistance" and value >= BEYOND_OHM else float(value))
        for reading, value in zip(chosen, shown, strict=True)
    )
