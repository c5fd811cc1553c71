"""How to be sure of a fault: what is taken off, what is then measured, and what must be read.

In: a `Rig`, the instruments, a `Fault`. Out: one sentence or two, without a full stop. What joints and wires must read
is common practice, no source. Refuses to know where things are, and how likely the fault is.
"""

from __future__ import annotations

from shuntwise.bench.faults import Fault
from shuntwise.bench.rig import Rig
from shuntwise.bench.solving import BEYOND_OHM, solved
from shuntwise.bench.states import stacked
from shuntwise.diagnostics.wording import listed, percent
from shuntwise.graph.spoken import spoken_lead, spoken_net, spoken_owner
from shuntwise.model.box import DRIVERS_OFF, Instruments, Reading
from shuntwise.model.design import Part
from shuntwise.model.kinds import KINDS
from shuntwise.units import AMPERE, HENRY, HERTZ, OHM, VOLT, write

UNSEEN_OHM = 0.5
"""The leads of an ohmmeter hide as much: common practice, no source."""

SAFE = "amplifier off, capacitors discharged"

JOINT = (
    "tug at it, solder it anew, and measure it: four-wire milliohms, or 1 A and the millivolts from the lead to the"
    " copper, under 2 milliohm, suspect from 10"
)


class Proofs:
    """The proofs of faults of one circuit."""

    def __init__(self, rig: Rig, instruments: Instruments) -> None:
        self.rig, self.circuit, self.bench = rig, rig.circuit, instruments
        self.design = rig.circuit.design

    def of(self, fault: Fault) -> str:
        text = self._setup(fault) if fault.of_setup else self._board(fault)
        return text if fault.of_setup and fault.family != "driver" else f"{SAFE}: {text}"

    def _board(self, fault: Fault) -> str:
        owners, points, part = fault.owners, fault.points, self.design.parts.get((*fault.owners, "")[0])
        match fault.family:
            case "open" if part is None or points:
                return f"tug at {spoken_lead(points[0])} at both its ends, and measure from end to end: under 0.5 ohm"
            case "open" if part is not None:
                return f"{self.lifted(part, 'and not open')}; if it is right, solder both its joints anew"
            case "short" if part is not None and KINDS[part.kind].two_ended:
                return f"look for solder or a bent lead across it; then {self.lifted(part, 'and not a short')}"
            case "short":
                return f"look for solder or a bent lead between its terminals; then take {owners[0]} out and measure it"
            case "value" | "drift" if part is not None:
                return f"read what is printed on {part.label}, then {self.lifted(part)}"
            case "dried" if part is not None:
                return (
                    f"{self.lifted(part)}, and its series resistance with an ESR meter: a few tenths of an ohm at the"
                    " most; look for a swollen or leaking can"
                )
            case "turns" if part is not None:
                value = write(part.value.value, HENRY) if part.value is not None else "its value"
                return (
                    f"look for burnt enamel, and for a clamp or a tie of metal around {part.label}; then lift one end"
                    f" and measure it at 100 Hz and at 1 kHz: {value} at both (its direct resistance tells nothing)"
                )
            case "core" if part is not None:
                made = part.construction or "core"
                return f"look whether {part.label} has its {made}, whole and seated; then {self.lifted(part)}"
            case "exchanged" | "doubled":
                parts = [self.design.parts[owner] for owner in owners]
                if fault.family == "doubled":
                    return f"count the parts there: one {owners[0]} alone; then {self.lifted(parts[0])}"
                must = listed([f"{one.label} {self.expected(one)}" for one in parts])
                return f"read what is printed on both, then lift one end of each and measure: {must}"
            case "moved":
                own, wrong = self.net(points[0]), self.net(fault.to)
                return (
                    f"follow {spoken_lead(points[0])}: it must go to {own}, and not to {wrong}; from its end to {own}"
                    " the ohmmeter reads next to nothing"
                )
            case "joint" if part is not None and not KINDS[part.kind].two_ended:
                return f"{JOINT} ({spoken_lead(points[0])})"
            case "joint" if part is not None:
                return f"both joints of {part.label}, one as likely as the other: {JOINT}"
            case "joint":
                return f"the joint and the plug or tag of {spoken_lead(points[0])}: {JOINT}"
            case "bridge":
                return f"look with a glass, {self.measured(*points)}"
            case "jumper" if owners[0].startswith("joint "):
                return f"see that the {owners[0]} is soldered, and measure across it: under 0.1 ohm"
            case "jumper":
                return f"see that the {owners[0]} is there and soldered, and measure along it: under 0.1 ohm"
            case "cut":
                return f"look with a glass along all of it, {self.measured(*points)}"
            case "link":
                fitted = self.design.parts[owners[0]].fitted
                return f"look: {owners[0]} must be {'fitted and soldered at both ends' if fitted else 'left out'}"
            case "reversed":
                return self.reversed(owners[0])
            case "outputs":
                ways = [f"that of {spoken_owner(name)} to {self.reached(name)}" for name in owners]
                return f"follow the plus wires from the tags: {listed(ways)}"
        raise ValueError(fault.family)

    def _setup(self, fault: Fault) -> str:
        bench = self.bench
        match fault.family:
            case "driver":
                name = fault.owners[0]
                driver = self.design.drivers[name]
                ohm = driver.quantities.get("re")
                must = f": {write(ohm.value, OHM, 2)} within a tenth" if ohm is not None else ""
                return f"read its label, take one wire off, and measure from tag to tag{must}"
            case "dummies":
                return f"measure each dummy alone, the leads of the meter zeroed: {write(bench.dummy_ohm, OHM)}"
            case "series":
                return (
                    f"measure the series resistor alone, the leads of the meter zeroed:"
                    f" {write(bench.series_ohm, OHM)}; then put it across the"
                    f" generator: it must still show {write(bench.source_v, VOLT)}, where one with 50 ohm of its own,"
                    " as many have, falls to a sixth: such a one needs a small amplifier behind it"
                )
            case "source":
                return f"measure the generator with nothing on it: {write(bench.source_v, VOLT)} r.m.s."
            case "scatter":
                return "measure some parts before they are soldered in, or with one end lifted, and state what they are"
            case _:
                top = write(bench.meter_top_hz, HERTZ)
                return (
                    "put two equal resistors of 1 kohm in a row on the generator and measure one of them: half of the"
                    f" generator's {write(bench.source_v, VOLT)}, at 100 Hz and at {top} alike"
                )

    # --- phrases

    def net(self, point: str) -> str:
        return spoken_net(self.circuit, point)

    def lifted(self, part: Part, but: str = "") -> str:
        """Lift one end and measure: what must be read."""
        if not KINDS[part.kind].two_ended:
            return f"take {part.label} out and measure it: {self.expected(part)}"
        return f"lift one end of {part.label} and measure it: {self.expected(part)}" + (f", {but}" if but else "")

    def expected(self, part: Part) -> str:
        """What a part must measure by itself."""
        if part.value is None:
            return "what is printed on it"
        value = part.value
        if value.dimension == AMPERE:
            return f"{write(part.get('cold'), OHM)} cold" if part.get("cold") else "next to nothing"
        text = write(value.value, value.dimension)
        tolerance = part.get("tolerance")
        if tolerance:
            text += f" within {percent(tolerance)}"
        if value.dimension == HENRY and part.get("dcr"):
            text += f" and {write(part.get('dcr'), OHM)} of direct resistance"
        return text

    def reached(self, name: str) -> str:
        """What the plus wire of a driver must come to, by the first part there."""
        ends = [end for end in self.circuit.nets[self.circuit.pad(name, "+")].attachments if end.owner != name]
        return spoken_lead(ends[0].point) if ends else self.net(f"{name}+")

    def measured(self, one: str, other: str) -> str:
        """What an ohmmeter reads between two points of a sound board, drivers off, that are not to be joined."""
        reading = Reading("resistance", one, other, DRIVERS_OFF)
        ohm = float(solved(self.rig, stacked(self.rig, [[]]), self.bench, [reading]).values[0, 0])
        between = f"from {self.net(one)} to {self.net(other)}, drivers off"
        if ohm < UNSEEN_OHM:
            return f"an ohmmeter cannot tell: {write(ohm, OHM, 2)} is right {between}"
        must = "open" if ohm >= BEYOND_OHM else write(ohm, OHM, 2)
        return f"then measure {between}: it must read {must}, not next to nothing"

    def reversed(self, name: str) -> str:
        """A driver whose two wires are exchanged."""
        who = spoken_owner(name)
        marks = f"look at the marks at the tags of {who}: the plus wire goes to the marked one"
        if self.design.drivers[name].role == "woofer":
            return (
                f"{marks}; if it does, it may be reversed inside: a battery of 1.5 V across its tags, its wires off,"
                " for less than a second, plus to plus, moves the cone out"
            )
        return f"{marks}; never put a battery on it, but exchange its wires and listen to quiet noise near its crossing"
