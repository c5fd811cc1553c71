"""What a fault does to the sound and to the amplifier, worked out on the box as it plays: drivers on, a stiff source.

In: a `Rig` and a fault. Out: at most three sentences, the dangerous first. Levels are voltages at the drivers' tags,
against those of the box as stated. Refuses to know how likely a fault is.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from shuntwise.bench.catalogue import edit
from shuntwise.bench.faults import Fault
from shuntwise.bench.rig import Real, Rig
from shuntwise.bench.solving import DIRECT_HZ, solved
from shuntwise.bench.states import States, stacked
from shuntwise.diagnostics.wording import listed
from shuntwise.figures.band import IN_BAND_DB
from shuntwise.graph.spoken import spoken_owner
from shuntwise.model.box import DRIVERS_ON, Instruments, Reading
from shuntwise.structure.reach import potentials, way_round
from shuntwise.units import HERTZ, OHM, write

FREQ_HZ = np.geomspace(20.0, 20e3, 40)

AMPLIFIER = Instruments(source_v=1.0, series_ohm=1e-3)
"""What drives the box: so stiff that levels are those of the box alone."""

HEARD_DB = 1.0
"""Less is not told."""

SILENT_DB, FAINT_DB = 60.0, 20.0
"""A driver that is so much quieter in all of its band is silent, or all but silent: common practice, no source."""

DESTROYED_DB = 6.0
"""A tweeter or a mid that is so much louder below its band is in danger: common practice, no source."""

DIRECT_SHARE = 0.02
"""A driver that gets more of the amplifier's direct current is told, if it gets less than half of it on a sound box."""

LOWER = 0.7
"""Where an amplifier does not state its least load, one that is so much lower than on a sound box is told."""

PLAINLY = 0.95
"""An impedance is lower than what is allowed, and than on a sound box, if it is under this share of both."""

MOST = 3


@dataclass(frozen=True, eq=False)
class _Played:
    """One box: volts at the drivers (D, F) for 1 V at each input by itself, the share of direct current (D,), and the
    ohm at the inputs (I, F).
    """

    volts: Real
    direct: Real
    ohm: Real


class Effects:
    """The effects of faults on one circuit."""

    def __init__(self, rig: Rig) -> None:
        self.rig = rig
        self.design = rig.circuit.design
        amplifier = self.design.amplifier
        least = amplifier.quantities.get("least") if amplifier is not None else None
        self.least_ohm = least.value if least is not None else None

    def of(self, fault: Fault, size: float = 1.0) -> tuple[str, ...]:
        """The effects of a fault of this size; none of a fault of the instruments, which the box does not have."""
        if fault.of_setup and fault.family != "driver":
            return ()
        states = stacked(self.rig, [[edit(self.rig, fault, size)]])
        played = self._played(states)
        told = [*self._load(played), *self._direct(played), *self._levels(played), *self._turned(states, played)]
        told.sort(key=lambda one: -one[0])
        return tuple(words for _, words in told[:MOST]) or (f"changes no level by {HEARD_DB:g} dB or more",)

    @cached_property
    def sound(self) -> _Played:
        return self._played(stacked(self.rig, [[]]))

    @cached_property
    def usual_ways(self) -> dict[str, bool | None]:
        return self._ways(stacked(self.rig, [[]]))

    def _played(self, states: States) -> _Played:
        rig = self.rig
        pairs = [(f"{name}+", f"{name}-") for name in rig.drivers]
        freq_hz = [DIRECT_HZ, *FREQ_HZ.tolist()]
        volts = [
            Reading("volts", plus, minus, DRIVERS_ON, freq, fed)
            for fed in rig.inputs
            for plus, minus in ((f"{fed}+", f"{fed}-"), *pairs)
            for freq in freq_hz
        ]
        ohm = [
            Reading("impedance", f"{fed}+", f"{fed}-", DRIVERS_ON, freq, fed)
            for fed in rig.inputs
            for freq in FREQ_HZ.tolist()
        ]
        with np.errstate(invalid="ignore"):  # of a dead short the phase is nothing
            values = solved(rig, states, AMPLIFIER, [*volts, *ohm]).values[0]
        seen = values[: len(volts)].reshape(len(rig.inputs), 1 + len(pairs), len(freq_hz))
        return _Played(
            np.sqrt((seen[:, 1:, 1:] ** 2).sum(axis=0)),
            (seen[:, 1:, 0] / np.maximum(seen[:, :1, 0], 1e-9)).max(axis=0, initial=0.0),
            values[len(volts) :].reshape(len(rig.inputs), -1),
        )

    def _ways(self, states: States) -> dict[str, bool | None]:
        """Which drivers are turned round, by where every point lies; a bridge turns none."""
        circuit, rig = self.rig.circuit, self.rig
        at = {point: int(states.node_of[0, number]) for point, number in rig.number.items()}
        net_of = {point: rig.nodes[node] if node < len(rig.nodes) else f"({node}" for point, node in at.items()}
        edges = {
            key: replace(edge, plus=net_of[edge.points[0]], minus=net_of[edge.points[1]])
            for key, edge in circuit.edges.items()
        }
        wired = replace(circuit, net_of=net_of, edges=edges)
        potential = potentials(wired)
        return {name: way_round(wired, potential, name) for name in rig.drivers}

    # --- what is told, each with how grave it is

    def _load(self, played: _Played) -> Iterator[tuple[float, str]]:
        for number, fed in enumerate(self.rig.inputs):
            ohm, usual = played.ohm[number], self.sound.ohm[number]
            at = int(ohm.argmin())
            of = "the amplifier" if len(self.rig.inputs) == 1 else f"the amplifier of {fed}"
            where = "all frequencies" if ohm.max() < 2 * ohm[at] else write(float(FREQ_HZ[at]), HERTZ, 2)
            meets = f"{of} meets {write(float(ohm[at]), OHM, 2)} at {where}"
            if self.least_ohm is not None:
                if ohm[at] < PLAINLY * min(self.least_ohm, usual.min()):
                    yield (
                        100 + self.least_ohm / max(ohm[at], 0.01),
                        f"{meets}: less than the {write(self.least_ohm, OHM, 2)} that it may drive",
                    )
            elif ohm[at] < LOWER * usual.min():
                yield 100.0, f"{meets}, a sound box is never under {write(float(usual.min()), OHM, 2)}"

    def _direct(self, played: _Played) -> Iterator[tuple[float, str]]:
        for number, name in enumerate(self.rig.drivers):
            if played.direct[number] > DIRECT_SHARE > 2 * self.sound.direct[number]:
                burns = self._role(name) == "tweeter"
                yield (
                    200.0 if burns else 90.0,
                    f"direct current of the amplifier reaches {spoken_owner(name)}"
                    + (": its voice coil may burn" if burns else ""),
                )

    def _levels(self, played: _Played) -> Iterator[tuple[float, str]]:
        silent: dict[str, list[str]] = {"silent": [], "all but silent": []}
        for number, name in enumerate(self.rig.drivers):
            level, usual = (20 * np.log10(np.maximum(of.volts[number], 1e-9)) for of in (played, self.sound))
            change = level - usual
            floor = usual.max() - IN_BAND_DB
            own = usual > floor
            if (change[own] < -FAINT_DB).all():
                silent["silent" if (change[own] < -SILENT_DB).all() else "all but silent"].append(spoken_owner(name))
                continue
            below = np.arange(change.size) < own.argmax()
            louder = below & (change >= DESTROYED_DB) & (level > floor)
            if louder.any() and self._role(name) in ("tweeter", "mid"):
                grave = 150.0 if self._role(name) == "tweeter" else 80.0
                until = write(float(FREQ_HZ[min(int(np.nonzero(louder)[0].max()) + 1, FREQ_HZ.size - 1)]), HERTZ, 2)
                how = _by(change[louder])
                yield grave, f"{spoken_owner(name)} is {how} louder below {until}: it may be destroyed"
            heard = np.where((own | (level > floor)) & ~louder, change, 0.0)
            if abs(heard[np.abs(heard).argmax()]) >= HEARD_DB:
                yield (
                    min(float(np.abs(heard).max()), 50.0),
                    f"{spoken_owner(name)} is {_span(heard, own | (level > floor))}",
                )
        for how, names in silent.items():
            if names:
                yield 70.0, f"{listed(names)} {'are' if len(names) > 1 else 'is'} {how}"

    def _turned(self, states: States, played: _Played) -> Iterator[tuple[float, str]]:
        """Drivers that are turned round otherwise than as stated, and are heard."""
        loud = played.volts.max(axis=1) > self.sound.volts.max(axis=1) * 10 ** (-FAINT_DB / 20)
        now = self._ways(states)
        turned = [
            name
            for name, heard in zip(self.rig.drivers, loud.tolist(), strict=True)
            if heard and {now[name], self.usual_ways[name]} == {True, False}
        ]
        if turned:
            words = listed([spoken_owner(name) for name in turned])
            are = "are" if len(turned) > 1 else "is"
            if len(turned) < len(self.rig.drivers):
                yield 60.0, f"{words} {are} turned round against the rest: most likely a dip where they cross"
            else:
                yield 60.0, f"{words} {are} turned round against other boxes: beside them the bass is thin"

    def _role(self, name: str) -> str | None:
        return self.design.drivers[name].role


def _span(change: Real, heard: Real) -> str:
    """`up to 12 dB quieter from 2 kHz up`: the run about the greatest change, of the frequencies that are heard."""
    at = int(np.abs(change).argmax())
    sign = np.sign(change[at])
    first = last = at
    while first > 0 and sign * change[first - 1] >= HEARD_DB:
        first -= 1
    while last + 1 < change.size and sign * change[last + 1] >= HEARD_DB:
        last += 1
    how = f"{_by(np.abs(change[first : last + 1]))} {'louder' if sign > 0 else 'quieter'}"
    inside = np.nonzero(heard)[0]
    low, high = (write(float(FREQ_HZ[n]), HERTZ, 2) for n in (first, last))
    begins, ends = first <= inside.min(), last >= inside.max()
    if begins and ends:
        return how
    if first == last:
        return f"{how} about {low}"
    return f"{how} {f'below {high}' if begins else f'from {low} up' if ends else f'from {low} to {high}'}"


def _by(change_db: Real) -> str:
    """How much some changes are: `2 dB`, `up to 12 dB`, `more than 60 dB`."""
    most = float(change_db.max())
    if most > SILENT_DB:
        return f"more than {SILENT_DB:.0f} dB"
    return f"{'up to ' if most - change_db.min() > 1 else ''}{most:.2g} dB"
