"""Many builds at once: values as arrays give what one solve for each build gives, flagged points included."""

import numpy as np
import pytest

from response.circuits import check_circuits, network
from shuntwise.network.network import DriverPort, Network
from shuntwise.response import tape
from shuntwise.response.solve import Solver, solve

FREQ_HZ = np.geomspace(50, 15e3, 40)


def with_driver(circuit: Network, *nodes: str) -> Network:
    return Network(
        circuit.elements,
        circuit.couplings,
        circuit.feeds,
        tuple(DriverPort(n, n, "0") for n in nodes),
        circuit.branches,
    )


@pytest.mark.parametrize("name", ["N1", "N2", "N4", "N6"])
def test_builds_equal_separate_solves(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """Every node, current and impedance, with builds split over several chunks of which the last is short."""
    monkeypatch.setattr(tape, "CHUNK_POINTS", 3 * FREQ_HZ.size)
    circuit = check_circuits()[name]
    rng = np.random.default_rng(3)
    varied = [e.name for e in circuit.elements[::2]] + [c.name for c in circuit.couplings]
    nominal = {e.name: e.value for e in circuit.elements} | {c.name: c.k for c in circuit.couplings}
    values = {n: nominal[n] * rng.uniform(0.9, 1.1, 7) for n in varied}
    together = solve(circuit, FREQ_HZ, values=values)
    for build in range(7):
        alone = solve(circuit, FREQ_HZ, values={n: float(v[build]) for n, v in values.items()})
        for node in circuit.nodes:
            assert np.abs(together.voltage(node)[build] - alone.voltage(node)).max() < 1e-14
        for branch in circuit.branches:
            assert np.abs(together.current(branch.label)[build] - alone.current(branch.label)).max() < 1e-13
            assert np.allclose(together.dissipation(branch.label)[build], alone.dissipation(branch.label), rtol=1e-11)
        assert np.allclose(together.impedance("V1")[build], alone.impedance("V1"), rtol=1e-12, atol=0)
    assert together.residual < 1e-12


def test_stream_gives_the_same_as_solve(monkeypatch: pytest.MonkeyPatch) -> None:
    """A few builds at a time, in order, covering all."""
    monkeypatch.setattr(tape, "CHUNK_POINTS", 4 * FREQ_HZ.size)
    circuit = with_driver(check_circuits()["N2"], "w", "3")
    values = {"L1": np.linspace(1e-3, 1.5e-3, 10), "C2": np.linspace(5e-6, 8e-6, 10)}
    whole = solve(circuit, FREQ_HZ, values=values)
    seen = 0
    for builds in Solver(circuit).stream(FREQ_HZ, values, admittances=True):
        assert builds.part.start == seen
        seen = builds.part.stop
        for name in ("w", "3"):
            assert np.array_equal(builds.driver_voltage[name], whole.driver_voltage(name)[builds.part])
        assert np.allclose(builds.input_admittance["V1"], whole.admittance("V1")[builds.part], rtol=1e-13, atol=0)
    assert seen == 10


def test_flagged_points_are_pivoted_build_by_build() -> None:
    """Of five builds with a lossless trap one resonates at a point of the sweep."""
    circuit = network(["V1 in 0", "L1 in out 1e-3", "C1 in out 1e-3", "R1 out 0 8"], ["load out 0"])
    freq_hz = np.array([100.0, 1000 / (2 * np.pi), 200.0])
    values = {"C1": np.array([0.8e-3, 0.9e-3, 1e-3, 1.1e-3, 1.2e-3])}
    together = solve(circuit, freq_hz, values=values)
    assert together.fallback_points == 1
    assert abs(together.driver_voltage("load")[2, 1]) < 1e-14
    for builds in Solver(circuit).stream(freq_hz, values):
        assert np.array_equal(builds.driver_voltage["load"], together.driver_voltage("load")[builds.part])


def test_one_value_changed_is_one_solve() -> None:
    """A number for a value gives (F,) arrays, not (1, F)."""
    response = solve(check_circuits()["N1"], FREQ_HZ, values={"R2": 6.0})
    assert response.voltage("w").shape == (FREQ_HZ.size,)
