"""Exact sensitivities against central differences, against the adjoint network, and by their own laws."""

import numpy as np
import pytest

from property.random_networks import random_network
from response.circuits import check_circuits, network
from shuntwise.network.network import Network
from shuntwise.response.pivoted import PivotedPoints
from shuntwise.response.sensitivity import impedance_sensitivity, voltage_sensitivity, voltage_slopes
from shuntwise.response.solve import SingularNetwork, Solver, solve

FREQ_HZ = np.geomspace(50, 15e3, 9)
STEP = 1e-5


def with_driver(name: str, plus: str, minus: str) -> Network:
    circuit = check_circuits()[name]
    drivers = network("", [f"d {plus} {minus}"]).drivers
    return Network(circuit.elements, circuit.couplings, circuit.feeds, drivers, circuit.branches)


@pytest.mark.parametrize(
    "circuit",
    [
        with_driver("N1", "w", "0"),
        with_driver("N2", "w", "0"),
        with_driver("N4", "a", "c"),
        with_driver("N5", "w", "m"),
        with_driver("N6", "b", "0"),
    ],
    ids=["N1", "N2", "N4", "N5", "N6"],
)
def test_sensitivities_are_the_limit_of_differences(circuit: Network) -> None:
    """A central difference of step h is off by h^2 and by rounding over h: 1e-8 at h = 1e-5 or so."""
    solver = Solver(circuit)
    response = solver.solve(FREQ_HZ)
    volt, ohm = voltage_sensitivity(response, "d"), impedance_sensitivity(response, "V1")
    nominal = {e.name: e.value for e in circuit.elements}
    for name, value in [*nominal.items(), *((c.name, c.k) for c in circuit.couplings)]:
        step = value * STEP
        low, high = (solver.solve(FREQ_HZ, values={name: value + sign * step}) for sign in (-1, 1))
        per = 2 * STEP if name in nominal else 2 * step
        difference = (high.driver_voltage("d") - low.driver_voltage("d")) / per
        assert np.abs(volt[name] - difference).max() < 1e-8 * max(1, np.abs(difference).max())
        difference = (high.impedance("V1") - low.impedance("V1")) / per
        assert np.abs(ohm[name] - difference).max() < 1e-7 * max(1, np.abs(difference).max())


def test_sensitivities_obey_impedance_and_frequency_scaling() -> None:
    """Scaling every impedance changes no voltage; scaling every reactance is a change of frequency.

    So the sum of p dV/dp over R and L, less that over C, is zero; and over L and C it is omega dV/domega
    (A. G. J. Holt, M. R. Lee, Proc. IEE 1971, invariants of network sensitivities; citation from memory).
    """
    circuit = with_driver("N2", "w", "0")
    response = solve(circuit, FREQ_HZ)
    volt = voltage_sensitivity(response, "d")
    kinds = {e.name: e.kind for e in circuit.elements}
    sums = {kind: sum(volt[name] for name in kinds if kinds[name] == kind) for kind in "RLC"}
    assert np.abs(sums["R"] + sums["L"] - sums["C"]).max() < 1e-13
    by_omega = voltage_slopes(response, "w", "0")[1]
    assert np.abs(sums["L"] + sums["C"] - 2 * np.pi * FREQ_HZ * by_omega).max() < 1e-13


@pytest.mark.parametrize("seed", range(6000, 6060))
def test_two_adjoints_agree_on_random_networks(seed: int) -> None:
    """The compiled steps run backwards, and the adjoint network by dense pivoting, share no arithmetic."""
    circuit = random_network(seed)
    driver, feed = circuit.drivers[0], circuit.feeds[0].name
    try:
        response = solve(circuit, FREQ_HZ)
        impedance = response.impedance(feed)
    except SingularNetwork:
        return
    careful = PivotedPoints(circuit, response.points.parameters, FREQ_HZ)
    volt, ohm = voltage_sensitivity(response, driver.name), impedance_sensitivity(response, feed)
    drive = [1.0] * len(circuit.feeds)
    slopes, by_omega = careful.voltage_slopes(driver.plus, driver.minus, drive)
    y_slopes, _ = careful.admittance_slopes(feed)
    for i, e in enumerate(circuit.elements):
        for found, wanted in ((volt, slopes[i] * e.value), (ohm, -y_slopes[i] * e.value * impedance**2)):
            assert np.abs(found[e.name] - wanted).max() < 1e-8 * max(1.0, float(np.abs(wanted).max()))
    for i, c in enumerate(circuit.couplings, len(circuit.elements)):
        assert np.abs(volt[c.name] - slopes[i]).max() < 1e-8 * max(1.0, float(np.abs(slopes[i]).max()))
    omega = 2 * np.pi * FREQ_HZ
    mine = voltage_slopes(response, driver.plus, driver.minus)[1]
    assert np.abs((mine - by_omega) * omega).max() < 1e-8 * max(1.0, float(np.abs(by_omega * omega).max()))


def test_sensitivities_at_flagged_points_come_from_the_adjoint_network() -> None:
    """|k| = 1 without resistance: V = k sqrt(L2/L1), so p dV/dp is -V/2 and V/2, and none of the load."""
    lines = ["V1 in 0", "L1 in 0 2e-3", "L2 out 0 0.5e-3", "K1 L1 L2 1", "R out 0 8", "C out 0 1e-6"]
    circuit = network(lines, ["d out 0"])
    response = solve(circuit, FREQ_HZ)
    assert response.fallback_points == FREQ_HZ.size
    found = voltage_sensitivity(response, "d")
    for name, exact in (("L1", -0.25), ("L2", 0.25), ("R", 0.0), ("C", 0.0)):
        assert np.abs(found[name] - exact).max() < 1e-12


def test_builds_have_no_sensitivities() -> None:
    response = solve(with_driver("N1", "w", "0"), FREQ_HZ, values={"R2": [6.0, 8.0]})
    with pytest.raises(ValueError, match="build"):
        voltage_sensitivity(response, "d")
    with pytest.raises(KeyError):
        voltage_sensitivity(solve(with_driver("N1", "w", "0"), FREQ_HZ), "nobody")
