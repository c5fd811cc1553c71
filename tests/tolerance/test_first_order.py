"""First-order effects of parts, exact, against differences of whole solves here and in ngspice."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from engines.installed import needs
from shuntwise.api import load, load_text, network
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.figures.curves import solve_curves
from shuntwise.figures.figure import Corner, Crossing, Figure, Impedance, Level, Slope
from shuntwise.figures.nominal import Nominal
from shuntwise.netlist.spice import emit
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.response.solve import Solver
from shuntwise.tolerance.draws import VaryingPart, element_values, varying
from shuntwise.tolerance.first_order import figure_effects, impedance_effects, level_effects
from shuntwise.tolerance.grid import grid
from tolerance.designs import SHOWCASE, TAPPED, sound

STEP = 1e-3
"""Of the tolerance: the error of a central difference is about its square, 1e-6 times the third derivative."""


def changed(circuit: Network, part: VaryingPart, offset: float) -> Network:
    """The network with one part off by a share of its tolerance."""
    elements = (
        replace(e, value=e.value * (1 + part.tolerance * offset)) if e.name in part.elements else e
        for e in circuit.elements
    )
    return replace(circuit, elements=tuple(elements))


@pytest.mark.parametrize("which", ["showcase", "tapped"])
def test_effects_are_central_differences_of_the_whole_path(which: str) -> None:
    """Levels and impedance, every part, by separate solves of networks with that one part changed."""
    compilation = load(str(SHOWCASE)) if which == "showcase" else load_text(TAPPED)
    design, circuit = compilation.design, network(compilation)
    freq = np.geomspace(30, 15e3, 25)
    solver, parts = Solver(circuit), varying(design, circuit).parts
    levels = {d.name: level_effects(solver, parts, d.name, freq) for d in circuit.drivers}
    ohms = impedance_effects(solver, parts, "input", freq)
    for i, part in enumerate(parts):
        up, down = (Solver(changed(circuit, part, sign * STEP)).solve(freq) for sign in (1, -1))
        for name, effects in levels.items():
            difference = 20 * np.log10(np.abs(up.driver_voltage(name) / down.driver_voltage(name))) / (2 * STEP)
            assert np.abs(difference - effects[i]).max() < 1e-6
        difference = (np.abs(up.impedance("input")) - np.abs(down.impedance("input"))) / (2 * STEP)
        assert np.abs(difference - ohms[i]).max() < 1e-6 * np.abs(ohms).max()


@needs(NGSPICE)
def test_effects_are_differences_of_ngspice_runs() -> None:
    """Each part of the tapped design up and down in two ngspice runs of the emitted netlist."""
    design, circuit = sound(TAPPED)
    parts, sweep = varying(design, circuit).parts, Sweep(50, 15e3, 5)
    for i, part in enumerate(parts):
        up, down = (NGSPICE.run(emit(changed(circuit, part, sign * 0.01), sweep, design_title="")) for sign in (1, -1))
        for driver in circuit.drivers:
            effects = level_effects(Solver(circuit), parts, driver.name, up.freq_hz)[i]
            ratio = np.abs(up.driver_voltages[driver.name] / down.driver_voltages[driver.name])
            # The step is 1e-2 of the tolerance, so the difference is good to about 1e-4 of a tolerance's square.
            assert np.abs(20 * np.log10(ratio) / 0.02 - effects).max() < 2e-5
        ohms = impedance_effects(Solver(circuit), parts, "input", up.freq_hz)[i]
        difference = (np.abs(up.impedances["input"]) - np.abs(down.impedances["input"])) / 0.02
        assert np.abs(difference - ohms).max() < 1e-4


FIGURES: tuple[Figure, ...] = (
    Level(("mid",), 1000.0),
    Slope(("tweeter",), 400.0, 1200.0),
    Crossing(("woofer", "mid"), 450.0),
    Crossing(("mid", "tweeter"), 3000.0, -8.0),
    Corner(("woofer",), 400.0, 3.0),
    Corner(("mid",), 4000.0, 6.0),
    Impedance(("input",), 20.0, 20e3),
    Impedance(("input",), 1000.0, 20e3, greatest=True),
)


@pytest.mark.parametrize("figure", FIGURES, ids=lambda figure: figure.name)
def test_effects_on_figures_are_central_differences(figure: Figure) -> None:
    """Against the figure itself at both ends of a twentieth of each tolerance: 1 % of the greatest effect.

    The grid bends a figure a little, and single precision leaves 1e-7 of it, hence the wide step and bound.
    """
    circuit = network(load(str(SHOWCASE)))
    solver, parts = Solver(circuit), varying(load(str(SHOWCASE)).design, circuit).parts
    freq = grid([figure])
    effects = figure_effects(solver, parts, figure.terms(Nominal(solver)))
    ends = np.concatenate((np.eye(len(parts)), -np.eye(len(parts))), axis=1) / 20
    values = figure.of(solve_curves(solver, element_values(circuit, parts, ends), freq))
    difference = (values[: len(parts)] - values[len(parts) :]) * 10
    assert np.abs(difference - effects).max() < 0.01 * np.abs(effects).max()
