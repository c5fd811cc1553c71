"""What rules may look at: one design in all its forms, each worked out when the first rule asks for it, and once.

In: what the passes have made. Out: values, and where things stand in the text. It knows no rule: only the names under
which a design may set the numbers that several rules share.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import TYPE_CHECKING

from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Amplifier, Design, Driver
from shuntwise.network.lower import Unlowered
from shuntwise.network.network import Network
from shuntwise.source import Span

if TYPE_CHECKING:
    from shuntwise.board.judging import Judgement
    from shuntwise.checks.faults.account import Faults
    from shuntwise.figures.nominal import Nominal
    from shuntwise.response.solve import Response, Solver
    from shuntwise.stress.stress import Lacking, Stress
    from shuntwise.structure.blocks import Block
    from shuntwise.structure.crossovers import Misgrouped
    from shuntwise.structure.ladders import Ladder, Shunt, Structure
    from shuntwise.structure.slips import Slip
    from shuntwise.structure.traps import OffTune
    from shuntwise.suspects.search import Demands, Suspect


@dataclass(frozen=True)
class Evidence:
    """All that rules may look at: one design (or one variant of it) in all its forms.

    `explained` are the suspects once all rules have been run with them, that which explains most first. `restated`
    gives the circuit with one named value put otherwise. `boards` are the layouts held against the circuit; None where
    nothing is laid out, or layouts are passed over.
    """

    design: Design
    circuit: Circuit
    lowered: Network | Unlowered
    explained: tuple[Suspect, ...] = ()
    restated: Callable[[str, str], Circuit | None] | None = None
    boards: Judgement | None = None

    @property
    def network(self) -> Network:
        """The ideal elements; only for rules that need a network."""
        assert isinstance(self.lowered, Network)
        return self.lowered

    @cached_property
    def solver(self) -> Solver:
        """The network compiled for solving, once for all rules."""
        from shuntwise.response.solve import Solver

        return Solver(self.network)

    @cached_property
    def figures(self) -> Nominal:
        """The circuit's crossings, corners, levels and impedances, as everything else that tells them has them."""
        from shuntwise.figures.nominal import Nominal

        return Nominal(self.solver)

    @property
    def sweep(self) -> Response:
        """The network solved from 20 Hz to 20 kHz, 40 points a decade, once for all rules."""
        return self.figures.sweep

    @property
    def wiring_read(self) -> bool:
        """Could every word of the wiring be read? If not, any net may be joined to any other."""
        return not (self.design.lost_wiring or self.design.unread or self.circuit.doubtful)

    @property
    def traceable(self) -> bool:
        """Is the circuit of a size that a structure can be recognised in?"""
        from shuntwise.structure.ladders import MOST_PARTS

        return len(self.circuit.edges) <= MOST_PARTS

    @cached_property
    def structure(self) -> Structure:
        """How each driver is fed; only for rules that need a structure."""
        from shuntwise.structure.ladders import recognise

        return recognise(self.circuit)

    # --- patterns of which a design may set the numbers, under the name of the rule that they belong to

    @cached_property
    def slips(self) -> Mapping[str, Slip]:
        """The parts of which the value looks off by a power of ten: what comes of them is no second finding."""
        from shuntwise.structure.slips import FAR_OFF, slips

        found = slips(self.circuit, self.structure, self.limit("decimal-slip", FAR_OFF))
        if not found or not isinstance(self.lowered, Network) or not self.demands.figures or not self.asked_met:
            return found
        # What is asked for comes out, and would not with the usual value: then this one is meant.
        as_well = {owner for suspect in self.suspected_values for owner in suspect.change.owners}
        return {label: slip for label, slip in found.items() if label in as_well}

    def makes_zobel(self, ladder: Ladder, shunt: Shunt) -> bool:
        """Is a capacitor across a driver one that a Zobel lacks its resistor for?"""
        from shuntwise.structure.filters import ZOBEL_SIZE, is_zobel_capacitor

        if any(group.ladder.together is ladder.together for group in self.misgrouped):
            return False  # it fits the filter
        size = self.limit("zobel-without-r", ZOBEL_SIZE)
        return is_zobel_capacitor(self.design, ladder, shunt, self.slips, size)

    @cached_property
    def neighbours(self) -> tuple[tuple[Ladder, Ladder], ...]:
        """Pairs of drivers that follow one another from low to high."""
        from shuntwise.structure.crossovers import neighbours

        return neighbours(self.design, self.structure)

    @cached_property
    def misgrouped(self) -> tuple[Misgrouped, ...]:
        """Drivers that are joined otherwise than their filter fits."""
        from shuntwise.structure.crossovers import misgrouped

        found = [misgrouped(self.design, lower, upper) for lower, upper in self.neighbours]
        return tuple(group for group in found if group is not None)

    def strayed_zobel(self, ladder: Ladder, shunt: Shunt) -> Ladder | None:
        """The other driver that a row across this one belongs to, by its values."""
        from shuntwise.structure.zobels import FITTING, belongs_to

        return belongs_to(self.design, self.structure, ladder, shunt, self.limit("zobel-off", FITTING))

    @cached_property
    def zobels_side_by_side(self) -> Mapping[str, tuple[str, str]]:
        """By driver, a Zobel's resistor and capacitor that lie side by side across it instead of in a row."""
        from shuntwise.structure.zobels import FITTING, side_by_side

        found = {
            name: side_by_side(self.design, ladder, self.limit("zobel-off", FITTING))
            for name, ladder in self.structure.ladders.items()
        }
        return {name: parts for name, parts in found.items() if parts is not None}

    def off_tune(self, row: Block, driver: str) -> OffTune | None:
        """The part that takes a row across a driver off the resonance that it is made for."""
        from shuntwise.structure.traps import OFF_TUNE, off_tune

        return off_tune(self.design, row, self.design.drivers[driver], self.limit("trap-off-tune", OFF_TUNE))

    def orders(self, lower: Ladder, upper: Ladder) -> tuple[int, int]:
        """The orders of the two filters at a crossover: the lower's low-pass and the upper's high-pass."""
        from shuntwise.structure.filters import ZOBEL_SIZE, orders

        return orders(self.design, lower, upper, self.slips, self.limit("zobel-without-r", ZOBEL_SIZE))

    def inside_out(self, ladder: Ladder) -> tuple[float, float] | None:
        """The corners (Hz) of high-pass and low-pass, if the first lies above the second."""
        from shuntwise.structure.filters import inside_out

        return inside_out(self.design, ladder, self.slips)

    def reversed_tapers(self, ladder: Ladder) -> tuple[tuple[str, str, tuple[float, float]], ...]:
        """Pairs in the path, nearer to the amplifier first, in the wrong order of size; with their values (H or F)."""
        from shuntwise.structure.filters import TAPER, reversed_tapers

        return tuple(reversed_tapers(self.design, ladder, self.limit("taper-reversed", TAPER)))

    @cached_property
    def demands(self) -> Demands:
        """What the design asks for, as far as solving shows it."""
        from shuntwise.suspects.search import demands

        return demands(self.design)

    @cached_property
    def asked_met(self) -> bool:
        """Does all that the design asks for come out, loads apart?"""
        return self.demands.met(self.circuit, self.network)

    @cached_property
    def suspected_values(self) -> tuple[Suspect, ...]:
        """Single values, each of which otherwise would let all come out; the likeliest first."""
        from shuntwise.suspects.search import explain
        from shuntwise.suspects.valuations import value_changes

        return explain(self.circuit, self.network, self.demands, value_changes(self.circuit))

    @cached_property
    def suspected_names(self) -> tuple[Suspect, ...]:
        """As `suspected_values`, of values that have names."""
        from shuntwise.suspects.search import explain
        from shuntwise.suspects.valuations import named_value_changes

        if self.restated is None:
            return ()
        changes = named_value_changes(self.design, self.restated)
        return explain(self.circuit, self.network, self.demands, changes)

    @cached_property
    def suspected_wirings(self) -> tuple[Suspect, ...]:
        """Single changes of the walks, each of which would let all come out; the likeliest first."""
        from shuntwise.suspects.rewiring import rewirings
        from shuntwise.suspects.search import explain

        return explain(self.circuit, self.network, self.demands, rewirings(self.circuit))

    @property
    def stated_polarities(self) -> frozenset[str]:
        """The drivers of which an `expect` line states the polarity."""
        expectations = self.design.expectations
        return frozenset(name for e in expectations if e.quantity == "polarity" for name in e.subjects)

    @property
    def missed_polarities(self) -> frozenset[str]:
        """The drivers that are not the way round that an `expect` line states; only where a structure exists."""
        stated = [e for e in self.design.expectations if e.quantity == "polarity"]
        return frozenset(name for e in stated if self.structure.polarity(e.subjects) != e.word for name in e.subjects)

    @cached_property
    def at_amplifier(self) -> Stress | Lacking:
        """What the parts bear at the stated amplifier, or what is lacking to know it."""
        from shuntwise.stress.stress import work_out

        return work_out(self.design, self.solver)

    @property
    def stress(self) -> Stress:
        """What the parts bear; only for rules that need it."""
        from shuntwise.stress.stress import Stress

        assert isinstance(self.at_amplifier, Stress)
        return self.at_amplifier

    @cached_property
    def faults(self) -> Faults:
        """What is wrong with the wiring, each fault given to one rule."""
        from shuntwise.checks.faults.account import account

        return account(self.circuit)

    @property
    def amplifier(self) -> Amplifier | None:
        return self.design.amplifier

    def limit(self, name: str, default: float) -> float:
        """The number called `name`, as the design sets it, else `default`."""
        setting = self.design.limits.get(name)
        return setting.quantity.value if setting is not None else default

    def drivers(self, role: str | None = None) -> tuple[Driver, ...]:
        """The drivers, or those of one role."""
        return tuple(driver for driver in self.design.drivers.values() if role is None or driver.role == role)

    def place(self, name: str) -> Span:
        """Where something is best pointed at: in the wiring, else where it is declared.

        `name` is that of a part, driver, input, used network, node or pad.
        """
        for known in (self.circuit.spans, self.design.node_spans):
            if known.get(name):
                return known[name][0]
        owner = name.rstrip("+-")
        for pad in (f"{owner}+", f"{owner}-"):
            if self.circuit.spans.get(pad):
                return self.circuit.spans[pad][0]
        return self.declared(owner)

    def declared(self, owner: str) -> Span:
        """Where a part, driver, input or network is declared; for the implied input where wiring begins."""
        design = self.design
        if owner in design.parts:
            return design.parts[owner].name_span
        if owner in design.drivers:
            return design.drivers[owner].name_span
        if owner in design.instance_spans:
            return design.instance_spans[owner]
        for pair in design.terminals:
            if pair.name == owner and pair.span is not None:
                return pair.span
        return design.walks[0].stops[0].span if design.walks else Span(design.source, 0, 0)
