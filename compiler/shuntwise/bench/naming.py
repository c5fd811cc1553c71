"""Faults in words: what they are called, how large they are, and all that is told of a suspect.

In: a `Rig`, the instruments, the boards, `Fault`s. Out: titles, and `Suspected`. No two faults of a circuit have one
title. Refuses to know how likely a fault is.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

from shuntwise.bench.catalogue import DRIED_ESR
from shuntwise.bench.effects import Effects
from shuntwise.bench.faults import Fault
from shuntwise.bench.places import Places
from shuntwise.bench.proofs import Proofs
from shuntwise.bench.rig import Rig
from shuntwise.bench.verdict import Suspected
from shuntwise.board.judging import Judgement
from shuntwise.diagnostics.wording import listed, percent
from shuntwise.graph.spoken import spoken_lead, spoken_net, spoken_owner
from shuntwise.model.box import Instruments
from shuntwise.model.kinds import KINDS
from shuntwise.units import AMPERE, HERTZ, OHM, VOLT, write

MOST_SAME = 4
"""Of more faults that are the same to the bench the rest is only counted."""


class Telling:
    """What is told of the faults of one circuit; without `boards` those of the circuit's layouts, if it has any."""

    def __init__(self, rig: Rig, instruments: Instruments | None = None, boards: Judgement | None = None) -> None:
        self.rig, self.circuit, self.design = rig, rig.circuit, rig.circuit.design
        self.bench = instruments or Instruments()
        self._boards = boards

    @cached_property
    def places(self) -> Places:
        return Places(self.circuit, self._boards)

    @cached_property
    def effects(self) -> Effects:
        return Effects(self.rig)

    @cached_property
    def proofs(self) -> Proofs:
        return Proofs(self.rig, self.bench)

    def suspected(self, faults: Sequence[Fault], size: float, share: float) -> Suspected:
        """All of the first fault, of this size; the others are what no reading tells from it, the likelier first.

        A size that this fault cannot have was that of another one among them: the nearest is taken, and none told.
        """
        fault = faults[0]
        low, high = fault.size
        nearest = min(max(size, low), high)
        same = [self.title(other) for other in faults[1:]]
        rest = len(same) - MOST_SAME
        return Suspected(
            fault,
            self.title(fault),
            share,
            tuple(same if rest <= 1 else [*same[:MOST_SAME], f"{rest} more"]),
            self.places.of(fault),
            self.proofs.of(fault),
            self.effects.of(fault, nearest),
            self.size(fault, size) if nearest == size else "",
        )

    # --- titles

    def title(self, fault: Fault) -> str:
        """A fault as a builder says it: `C1 is open`, `the plus wire of the woofer is off`."""
        points, names = fault.points, [spoken_owner(owner) for owner in fault.owners]
        first = names[0] if names else ""
        small = fault.size[0] < 1
        match fault.family:
            case "open":
                return f"{spoken_lead(points[0])} is off" if points else f"{first} is open"
            case "short":
                return f"{first} is shorted" if self.is_two_ended(fault.owners[0]) else self.shorted(points)
            case "value" | "drift":
                little = "a little " if fault.family == "drift" else ""
                return f"{first} {self.sized(fault.owners[0], little, small)}"
            case "dried":
                return f"{first} has dried out"
            case "turns":
                return f"{first} has shorted turns"
            case "core":
                return f"the core of {first} is another one"
            case "exchanged":
                return f"{listed(names)} are exchanged"
            case "doubled":
                return f"two {first} lie side by side"
            case "moved":
                return f"{spoken_lead(points[0])} lies on {self.net(fault.to)} instead of {self.net(points[0])}"
            case "joint" if self.is_two_ended(fault.owners[0]):
                return f"a bad joint at {first}"
            case "joint":
                return f"a bad joint at {spoken_lead(points[0])}"
            case "bridge":
                return f"{self.net(points[0])} is bridged to {self.net(points[1])}"
            case "jumper":
                return f"the {fault.owners[0]} is forgotten"
            case "cut":
                return f"the {fault.owners[0]} is not made: {self.net(points[0])} stays joined to {self.net(points[1])}"
            case "link":
                return f"the link {first} is {'left out' if self.design.parts[fault.owners[0]].fitted else 'fitted'}"
            case "reversed":
                return f"the two wires of {first} are exchanged"
            case "outputs":
                return f"the wires of {names[0]} and those of {names[1]} are exchanged"
            case "driver":
                return f"{first} is of another size, with {'fewer' if small else 'more'} ohm"
            case "dummies":
                return f"the dummies are not {write(self.bench.dummy_ohm, OHM)}, but {'less' if small else 'more'}"
            case "series":
                ohm = write(self.bench.series_ohm, OHM)
                return f"{'less' if small else 'more'} than {ohm} lies between generator and box"
            case "source":
                return (
                    f"the generator does not give {write(self.bench.source_v, VOLT)}, but {'less' if small else 'more'}"
                )
            case "meter":
                return "the meter reads too little at high frequencies"
            case "scatter":
                return "the parts are further from their values than their tolerances say"

    def net(self, point: str) -> str:
        return spoken_net(self.circuit, point)

    def is_two_ended(self, owner: str) -> bool:
        part = self.design.parts.get(owner)
        return part is not None and KINDS[part.kind].two_ended

    def shorted(self, points: Sequence[str]) -> str:
        return f"{listed([spoken_lead(point) for point in points])} are shorted"

    def sized(self, label: str, little: str, small: bool) -> str:
        """`is too small`; of what is not told by its ohm, `has too much resistance`."""
        value = self.design.parts[label].value
        if value is not None and value.dimension == AMPERE:
            return f"has {little}too {'little' if small else 'much'} resistance"
        return f"is {little}too {'small' if small else 'large'}"

    # --- sizes

    def size(self, fault: Fault, size: float) -> str:
        """How large a fault most likely is; empty for one that has no size."""
        bench = self.bench
        match fault.family:
            case "joint":
                return f"about {write(size, OHM, 1)}"
            case "value" | "drift" | "core":
                return self.of_part(fault.owners[0], size)
            case "dried":
                return f"{self.of_part(fault.owners[0], size)}, with about {DRIED_ESR:g} times its series resistance"
            case "turns":
                return f"about {percent(round(size, 1))} of its inductance lost at high frequencies"
            case "driver":
                nominal = self.design.drivers[fault.owners[0]].nominal
                return _about(size, nominal.value, OHM) if nominal is not None else f"about {size:.1g} times its ohm"
            case "dummies":
                return _about(size, bench.dummy_ohm, OHM)
            case "series":
                return _about(size, bench.series_ohm, OHM)
            case "source":
                return _about(size, bench.source_v, VOLT)
            case "meter":
                return f"reads {percent(1 - size)} too little at {write(bench.meter_top_hz, HERTZ)}"
            case "scatter":
                return f"about {size:.2g} times as far"
            case _:
                return ""

    def of_part(self, label: str, size: float) -> str:
        value = self.design.parts[label].value
        if value is None or value.dimension == AMPERE:
            return f"about {size:.2g} times its resistance"
        return _about(size, value.value, value.dimension)


def _about(size: float, value: float, dimension: tuple[float, ...]) -> str:
    return f"about {size:.2g} of {write(value, dimension)}: near {write(size * value, dimension, 2)}"
