"""What parts bear, against standards, closed formulas and ngspice.

Sources: IEC 60268-1:1985, clause 7, Table II and Figure 2 (`08_iec60268_1_programme_signal.csv`, which says how each
column was come by); the attenuator formulas of handbooks (`04_l_pad.csv`); the voltage of an amplifier of a rated
power, U = sqrt(P R); everything else from series and parallel arithmetic, or from ngspice.
"""

from __future__ import annotations

import csv
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from engines.installed import needs
from rules.compiling import LIBRARY
from shuntwise.engines import ngspice
from shuntwise.engines.ngspice import NGSPICE
from shuntwise.graph.connect import connect
from shuntwise.model.include import Loaded, Loader, NotLoaded
from shuntwise.model.kinds import PROGRAMMES
from shuntwise.model.resolve import resolve
from shuntwise.netlist.spice import emit
from shuntwise.network.lower import lower
from shuntwise.network.network import GROUND, Branch, DriverPort, Element, Feed, Network
from shuntwise.network.sweep import Sweep
from shuntwise.pipeline import read
from shuntwise.response import programme as programmes
from shuntwise.response.cases import greatest, opened, shorted, solve_cases, sweep
from shuntwise.response.programme import power_shares, shaping_network
from shuntwise.response.signal import amplifier_signal
from shuntwise.response.solve import Solver
from shuntwise.source import Source

TESTS = Path(__file__).parents[1]
EXAMPLES = TESTS.parent / "examples"


def table(name: str) -> list[list[float]]:
    with (TESTS / "reference" / name).open(encoding="utf-8") as file:
        return [[float(cell) for cell in row] for row in list(csv.reader(file))[1:]]


PROGRAMME = np.array(table("08_iec60268_1_programme_signal.csv")).T
NOMINAL_HZ, LEVEL_DB, TOLERANCE_DB, REAL, IMAGINARY = PROGRAMME[:5]
IDEAL_BAND_DB = PROGRAMME[7]


# --- the simulated programme signal


def test_shaping_network_is_that_of_figure_2() -> None:
    """To the 12 digits of the table, which was worked out apart from this code."""
    assert shaping_network(NOMINAL_HZ) == pytest.approx(REAL + 1j * IMAGINARY, rel=1e-11)


def test_shaping_network_as_a_circuit_gives_the_same() -> None:
    """Figure 2 of IEC 60268-1 is a ladder with known answers: a check of the whole solver."""
    elements = (
        Element("r1", "R", "source", "a", 430, "r1"),
        Element("c1", "C", "a", "b", 2.2e-6, "c1"),
        Element("r2", "R", "b", GROUND, 3300, "r2"),
        Element("c2", "C", "b", GROUND, 91e-9, "c2"),
        Element("r3", "R", "b", "c", 330, "r3"),
        Element("c3", "C", "c", "d", 2.2e-6, "c3"),
        Element("r4", "R", "d", GROUND, 3300, "r4"),
        Element("c4", "C", "d", GROUND, 68e-9, "c4"),
        Element("c5", "C", "d", "out", 0.47e-6, "c5"),
        Element("r5", "R", "out", GROUND, 10e3, "r5"),
    )
    response = Solver(Network(elements, feeds=(Feed("source", "source"),))).solve(NOMINAL_HZ)
    assert response.voltage("out") == pytest.approx(REAL + 1j * IMAGINARY, rel=1e-11)


def third_octave_bands() -> tuple[np.ndarray, np.ndarray]:
    """The power of the simulated programme in each band (dB over an arbitrary level), and of all of it."""
    exact_hz = 10 ** (np.arange(13, 44) / 10)  # 20 Hz to 20 kHz: bands of a tenth of a decade, as IEC 61260 has them
    edges = np.concatenate([exact_hz * 10**-0.05, [exact_hz[-1] * 10**0.05]])
    freq_hz = np.geomspace(edges[0], edges[-1], 31 * 200 + 1)
    middle = np.sqrt(freq_hz[1:] * freq_hz[:-1])
    shares = power_shares("simulated", middle)
    bands = shares.reshape(31, 200).sum(axis=1)
    return 10 * np.log10(bands), np.log10(bands.sum())


def test_simulated_programme_has_the_levels_of_table_ii() -> None:
    """Within the standard's own tolerance, and within 0.01 dB of what its network gives with ideal filters."""
    bands_db, _ = third_octave_bands()
    offset = np.median(bands_db - IDEAL_BAND_DB)
    assert bands_db - offset == pytest.approx(IDEAL_BAND_DB, abs=0.01)
    assert (np.abs(bands_db - offset - LEVEL_DB) <= TOLERANCE_DB).all()


def test_whole_programme_lies_12_and_a_half_db_above_one_band() -> None:
    """IEC 60268-1:1985, clause 7, note: about 12.5 dB above the 0 dB level of a band; the sum of Table II is 12.5576.

    The network of Figure 2 strays from Table II by up to 0.3 dB in the flat bands.
    """
    bands_db, _ = third_octave_bands()
    zero_db = np.median(bands_db - IDEAL_BAND_DB)
    assert 10 * np.log10((10 ** (LEVEL_DB / 10)).sum()) == pytest.approx(12.5576, abs=1e-3)
    assert -zero_db == pytest.approx(12.5576, abs=0.3)


def test_pink_noise_has_as_much_power_in_every_octave() -> None:
    freq_hz = sweep()
    shares = power_shares("pink", freq_hz)
    octaves = [shares[(freq_hz >= low) & (freq_hz < 2 * low)].sum() for low in (40, 320, 2560)]
    assert octaves == pytest.approx([octaves[0]] * 3, rel=0.03)
    assert shares.sum() == pytest.approx(1, abs=1e-12)


def test_every_programme_of_the_language_is_known() -> None:
    assert programmes.PROGRAMMES == PROGRAMMES
    with pytest.raises(ValueError, match="no noise"):
        power_shares("polka", sweep())


# --- amplifiers


@pytest.mark.parametrize(
    ("power_w", "load_ohm", "peak_v"), [(100, 8, 40), (300, 8, 69), (500, 8, 89), (1000, 4, 89), (1200, 8, 139)]
)
def test_peak_voltage_of_an_amplifier(power_w: float, load_ohm: float, peak_v: float) -> None:
    """sqrt(2 P R), rounded to a volt: the figures that capacitors are chosen by."""
    signal = amplifier_signal(power_w, load_ohm, "simulated", 2, sweep())
    assert round(signal.peak_v) == peak_v
    assert signal.programme_v == pytest.approx(signal.peak_v / 2)


def test_clipped_programme_gives_half_the_rated_power() -> None:
    """Crest factor 2 (IEC 60268-7:2010, 8.3.2): half the power of the sine of the same peak, in a resistor."""
    signal = amplifier_signal(100, 8, "simulated", 2, sweep())
    assert float(signal.heat(np.full((1, sweep().size), 1 / 8))[0]) == pytest.approx(50)
    assert float(amplifier_signal(100, 8, "pink", 4, sweep()).heat(np.full(sweep().size, 1 / 8))) == pytest.approx(12.5)


def test_steady_sine_is_taken_at_its_worst_frequency() -> None:
    signal = amplifier_signal(100, 8, "sine", 2, sweep())
    curve = np.zeros((2, sweep().size))
    curve[:, 200] = 1 / 8
    assert signal.heat(curve) == pytest.approx([100, 100])


# --- parts


@pytest.mark.parametrize("row", table("04_l_pad.csv"), ids=lambda row: f"{row[0]:g} dB")
def test_power_shares_of_an_l_pad(row: list[float]) -> None:
    """What the two resistors and the load take, whatever the programme, since all are resistors."""
    _, load, series, shunt, _, _, *shares = row
    elements = (
        Element("Rs", "R", "in", "out", series, "Rs"),
        Element("Rp", "R", "out", GROUND, shunt, "Rp"),
        Element("load", "R", "out", GROUND, load, "load"),
    )
    branches = tuple(Branch(e.part, e.plus, e.minus, e.name, (e.name,)) for e in elements)
    network = Network(elements, feeds=(Feed("in", "in"),), branches=branches)
    freq_hz = sweep()
    response = solve_cases(Solver(network), [{}], freq_hz)
    for name in ("simulated", "pink", "sine"):
        signal = amplifier_signal(100, 8, name, 2, freq_hz)
        heat = [float(signal.heat(response.dissipation(branch.label))[0]) for branch in branches]
        assert heat == pytest.approx([share * signal.programme_v**2 / 8 for share in shares], rel=1e-9)


def low_pass(load_ohm: float = 8) -> Network:
    """1.0 mH of 0.25 ohm, 10 uF and a woofer that is a resistor."""
    elements = (
        Element("L1", "L", "in", "inside L1", 1e-3, "L1"),
        Element("L1.dcr", "R", "inside L1", "w", 0.25, "L1"),
        Element("C1", "C", "w", GROUND, 10e-6, "C1"),
        Element("woofer.nominal", "R", "w", GROUND, load_ohm, "woofer"),
    )
    branches = (
        Branch("L1", "in", "w", "L1", ("L1", "L1.dcr")),
        Branch("C1", "w", GROUND, "C1", ("C1",)),
        Branch("woofer", "w", GROUND, "woofer.nominal", ("woofer.nominal",)),
    )
    return Network(elements, (), (Feed("in", "in"),), (DriverPort("woofer", "w", GROUND),), branches)


def test_low_pass_without_its_woofer() -> None:
    """A bare series resonance: 0.27 ohm at 1.6 kHz and 36 times the input on the capacitor, by X = w L - 1/(w C).

    At its very top, found between the points of the sweep, it is the coil's resistance and sqrt(L/C)/R = 40 times.
    """
    network = low_pass()
    case = opened(network, network.branches[2])
    at_1600 = solve_cases(Solver(network), [case], np.array([1600.0]))
    assert 1 / abs(at_1600.admittance("in")[0, 0]) == pytest.approx(0.272, abs=0.001)
    assert abs(at_1600.branch_voltage("C1")[0, 0]) == pytest.approx(36.6, abs=0.1)
    response = solve_cases(Solver(network), [{}, case], sweep())
    assert 1 / greatest(np.abs(response.admittance("in")), sweep())[1] == pytest.approx(0.25, rel=1e-3)
    assert greatest(np.abs(response.branch_voltage("C1")), sweep())[1] == pytest.approx(40, rel=5e-3)


@pytest.mark.parametrize(("q", "accuracy"), [(2, 1e-3), (10, 1e-3), (40, 0.01), (100, 0.05)])
def test_peak_is_found_between_the_points(q: float, accuracy: float) -> None:
    """|H|^2 = 1/((1 - x^2)^2 + x^2/Q^2): its greatest value is Q/sqrt(1 - 1/(4 Q^2)).

    The points are 1.5 % apart and a peak of Q 100 is 1 % wide; the points alone would miss it by a factor of 1.8.
    """
    freq_hz = sweep()
    for centre in np.geomspace(900, 930, 7):
        x = freq_hz / centre
        curve = ((1 - x**2) ** 2 + (x / q) ** 2) ** -0.5
        assert float(greatest(curve, freq_hz)) == pytest.approx(q / np.sqrt(1 - 1 / (4 * q**2)), rel=accuracy)


def test_curve_without_a_peak_keeps_its_greatest_point() -> None:
    falling = np.array([[3.0, 2.0, 1.0, 0.5], [1.0, 1.0, 1.0, 1.0], [0.0, 0.0, 0.0, 0.0]])
    assert greatest(falling, np.array([1.0, 2.0, 4.0, 8.0])).tolist() == [3.0, 1.0, 0.0]


# --- against ngspice


def load(path: str, source: Source, library: bool) -> Loaded | NotLoaded:
    file = LIBRARY / f"{path}.shunt"
    return Loaded(Source(file.name, file.read_text(encoding="utf-8")), path)


def network_of(example: str) -> Network:
    loader: Loader = load
    path = EXAMPLES / example
    collected, _ = read(Source(path.name, path.read_text(encoding="utf-8")), loader)
    lowered = lower(connect(resolve(collected)[0])[0])
    assert isinstance(lowered, Network)
    return lowered


def without(network: Network, branch: Branch) -> Network:
    """The network with a part's elements taken out, and couplings to them."""
    gone = set(branch.elements)
    return replace(
        network,
        elements=tuple(e for e in network.elements if e.name not in gone),
        couplings=tuple(c for c in network.couplings if not gone & {c.first, c.second}),
        branches=tuple(b for b in network.branches if b is not branch),
    )


def bridged(network: Network, branch: Branch) -> Network:
    """The network with a part's two nodes made one."""
    terminals = {GROUND, *(feed.node for feed in network.feeds)}
    gone, kept = (branch.plus, branch.minus) if branch.plus not in terminals else (branch.minus, branch.plus)

    def node(name: str) -> str:
        return kept if name == gone else name

    bare = without(network, branch)
    elements = tuple(replace(e, plus=node(e.plus), minus=node(e.minus)) for e in bare.elements)
    drivers = tuple(replace(d, plus=node(d.plus), minus=node(d.minus)) for d in bare.drivers)
    return replace(bare, elements=tuple(e for e in elements if e.plus != e.minus), drivers=drivers, branches=())


def compare_with_ngspice(network: Network, changed: Network, case: dict[str, float], label: str) -> None:
    """DriverPort voltages and impedance of the changed network by ngspice, and of the case by the solver.

    To 1e-6, because an open part is still 1e12 ohm here, and a shorted one 1e-9 ohm.
    """
    result = ngspice.run(emit(changed, Sweep(20, 20000, 40), design_title=label))
    response = solve_cases(Solver(network), [case], result.freq_hz, parts=False)
    for feed in network.feeds:
        assert 1 / response.admittance(feed.name)[0] == pytest.approx(result.impedances[feed.name], rel=1e-6), label
    for name, voltage in result.driver_voltages.items():
        assert response.driver_voltage(name)[0] == pytest.approx(voltage, rel=1e-6, abs=1e-6), label


@needs(NGSPICE)
@pytest.mark.parametrize("example", ["07-market-horn.shunt", "09-scout-double-ten.shunt", "12-ferry-deck.shunt"])
def test_every_driver_unplugged_as_ngspice_has_it(example: str) -> None:
    network = network_of(example)
    drivers = {driver.name for driver in network.drivers}
    for branch in network.branches:
        if branch.label in drivers:
            compare_with_ngspice(network, without(network, branch), dict(opened(network, branch)), branch.label)


@needs(NGSPICE)
def test_every_part_open_and_shorted_as_ngspice_has_it() -> None:
    network = network_of("07-market-horn.shunt")
    drivers = {driver.name for driver in network.drivers}
    for branch in network.branches:
        if branch.label not in drivers:
            compare_with_ngspice(network, without(network, branch), dict(opened(network, branch)), branch.label)
            compare_with_ngspice(network, bridged(network, branch), dict(shorted(network, branch)), branch.label)


@needs(NGSPICE)
def test_open_coil_with_a_coupling_as_ngspice_has_it() -> None:
    """The other coil of the pair must not see a shorted one."""
    network = network_of("13-harbour-stage.shunt")
    assert network.couplings
    for branch in network.branches:
        if branch.label in ("L1", "L2"):
            compare_with_ngspice(network, without(network, branch), dict(opened(network, branch)), branch.label)


@needs(NGSPICE)
@pytest.mark.parametrize("example", ["07-market-horn.shunt", "12-ferry-deck.shunt"])
def test_volts_and_heat_of_every_part_as_ngspice_has_them(example: str) -> None:
    """From ngspice's node voltages: the greatest voltage over each part, and V^2/R in each resistor."""
    network = network_of(example)
    result = ngspice.run(emit(network, Sweep(20, 20000, 100), design_title=example))
    response = solve_cases(Solver(network), [{}], result.freq_hz)
    signal = amplifier_signal(100, 8, "simulated", 2, result.freq_hz)
    nodes = {GROUND: np.zeros_like(result.freq_hz), **result.voltages}
    for branch in network.branches:
        volts = np.abs(nodes[branch.plus] - nodes[branch.minus])
        here = np.abs(response.branch_voltage(branch.label)[0])
        assert float(signal.sine(here)) == pytest.approx(float(signal.sine(volts)), rel=1e-9), branch.label
        if len(branch.elements) == 1 and network.element[branch.through].kind == "R":
            heat = float(signal.heat(volts**2 / network.element[branch.through].value))
            assert float(signal.heat(response.dissipation(branch.label)[0])) == pytest.approx(heat, rel=1e-9)
