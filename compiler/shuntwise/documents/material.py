"""What documents are made from: one compiled design, solved once for all of them, and only if one asks for it.

In: the values of the passes. Out: the same, and what is worked out from them. Refuses to know any document.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cached_property
from typing import TYPE_CHECKING, Any

from shuntwise.diagnostics.diagnostic import Diagnostic, NotChecked
from shuntwise.documents.page import USUAL, Printing
from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Design, Waiver
from shuntwise.model.differences import Difference, differences
from shuntwise.network.lower import Unlowered
from shuntwise.network.network import FitReport, Network
from shuntwise.network.sweep import Sweep

if TYPE_CHECKING:
    from shuntwise.bench.bench import Bench
    from shuntwise.documents.plot_page import Drawing
    from shuntwise.documents.plots import Below
    from shuntwise.documents.table import Column
    from shuntwise.figures.nominal import Nominal
    from shuntwise.figures.usual import Usual
    from shuntwise.response.solve import Response, Solver
    from shuntwise.stress.shares import Share
    from shuntwise.stress.stress import Lacking, Stress
    from shuntwise.tolerance.spread import Spread

BUILDS = 1000
"""Of which a binder shows how they differ: a tenth of a second. `spread` solves more."""


@dataclass(frozen=True)
class Material:
    """`stem` names a design without a title; `mark` tells from which texts it was made; `waived` are the findings
    that the design allows, each with its `allow` line, `below` is what the plot of levels has below them, `printing`
    how documents are wanted, and `itself` is the design without its variant and without tried values. `made` keeps what
    several documents share.

    What is solved raises SingularNetwork; only where there is a network.
    """

    design: Design
    circuit: Circuit
    lowered: Network | Unlowered
    sweep: Sweep
    stem: str
    mark: str
    findings: tuple[Diagnostic, ...] = ()
    not_checked: tuple[NotChecked, ...] = ()
    waived: tuple[tuple[Diagnostic, Waiver], ...] = ()
    below: tuple[Below, ...] = ()
    printing: Printing = USUAL
    itself: Design | None = None
    made: dict[object, Any] = field(default_factory=dict, repr=False, compare=False)

    @property
    def title(self) -> str:
        return self.design.title or self.stem

    @property
    def network(self) -> Network:
        assert isinstance(self.lowered, Network)
        return self.lowered

    @property
    def fits(self) -> tuple[FitReport, ...]:
        """How near fitted drivers come to their tables and formulas; none without a network."""
        return self.lowered.fits if isinstance(self.lowered, Network) else ()

    @cached_property
    def differences(self) -> tuple[Difference, ...]:
        """What is otherwise than in the design itself."""
        return differences(self.design, self.itself) if self.itself is not None else ()

    @cached_property
    def solver(self) -> Solver:
        from shuntwise.response.solve import Solver

        return Solver(self.network)

    @cached_property
    def response(self) -> Response:
        """The network solved at the frequencies of the sweep."""
        from shuntwise.response.measures import grid

        sweep = self.sweep
        return self.solver.solve(grid(sweep.freq_from_hz, sweep.freq_to_hz, sweep.points_per_decade))

    @cached_property
    def drawn(self) -> Response:
        """The network solved so finely that lines through the points show every top and bottom."""
        from shuntwise.response.measures import POINTS_PER_DECADE, grid
        from shuntwise.response.peaks import sweep_to_draw
        from shuntwise.response.solve import beside_resonances

        sweep = self.sweep
        points = grid(sweep.freq_from_hz, sweep.freq_to_hz, max(sweep.points_per_decade, POINTS_PER_DECADE))
        return beside_resonances(self.solver.solve, sweep_to_draw(self.solver, points))

    @cached_property
    def columns(self) -> tuple[Column, ...]:
        """The table of what reaches each driver, and of the impedance."""
        from shuntwise.documents.table import response_rows

        return tuple(response_rows(self.response, self.network))

    @cached_property
    def nominal(self) -> Nominal:
        """The figures of the network with the values that are stated."""
        from shuntwise.figures.nominal import Nominal

        return Nominal(self.solver)

    @cached_property
    def figures(self) -> Usual:
        """The figures that every builder asks for, in the band of the sweep."""
        from shuntwise.figures.usual import usual

        return usual(self.nominal, self.design.drivers, self.sweep.freq_from_hz, self.sweep.freq_to_hz)

    @cached_property
    def shares(self) -> tuple[Share, ...]:
        """What each part bears for 1 V, the worst in the band of the sweep."""
        from shuntwise.response.measures import grid
        from shuntwise.stress.shares import shares

        return shares(self.solver.solve(grid(self.sweep.freq_from_hz, self.sweep.freq_to_hz)))

    @cached_property
    def stress(self) -> Stress | Lacking:
        """What the verdicts on ratings are made from; that needs an amplifier."""
        from shuntwise.stress.stress import work_out

        return work_out(self.design, self.solver)

    @cached_property
    def spread(self) -> Spread | None:
        """How builds differ; None where no part that carries current states a tolerance."""
        from shuntwise.tolerance.spread import NothingVaries, spread

        try:
            return spread(self.design, self.network, builds=BUILDS, circuit=self.nominal)
        except NothingVaries:
            return None

    @cached_property
    def spread_plot(self) -> Drawing | None:
        """How far builds lie from what is stated, of a design with a spread."""
        from shuntwise.documents.tolerance_plot import deviation_plot

        return deviation_plot(self.spread, self.design, mark=self.mark) if self.spread is not None else None

    @cached_property
    def bench(self) -> Bench:
        """What boards of the circuit read on the bench: a second or more of work."""
        from shuntwise.bench.bench import Bench

        return Bench(self.circuit, self.design.instruments)

    @cached_property
    def level_plot(self) -> Drawing:
        from shuntwise.documents.plots import response_plot

        return response_plot(self.drawn, self.design, self.figures, mark=self.mark, below=self.below)

    @cached_property
    def impedance_plot(self) -> Drawing:
        from shuntwise.documents.plots import impedance_plot

        return impedance_plot(self.drawn, self.design, self.figures, mark=self.mark)
