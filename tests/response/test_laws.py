"""Laws of linear passive networks, on hundreds of random ones: Kirchhoff, power, reciprocity, scaling, two inputs."""

from dataclasses import replace

import numpy as np
import pytest

from property.random_networks import random_network
from response.circuits import network
from shuntwise.network.network import GROUND, Element, Feed, Network
from shuntwise.response.pivoted import PivotedPoints
from shuntwise.response.solve import Response, SingularNetwork, solve

FREQ_HZ = np.geomspace(20, 20e3, 7)
SEEDS = range(5000, 5200)


def solved(circuit: Network) -> Response | None:
    """The response, or None of a network that has no single one."""
    try:
        response = solve(circuit, FREQ_HZ)
        for feed in circuit.feeds:
            response.impedance(feed.name)
    except SingularNetwork:
        return None
    return response


def largest(response: Response) -> float:
    return max(1.0, *(float(np.abs(response.voltage(node)).max()) for node in response.network.nodes))


@pytest.mark.parametrize("seed", SEEDS)
def test_random_network_obeys_the_laws(seed: int) -> None:
    """Kirchhoff at every node; power in equals heat; all impedances and admittances scaled alike change no voltage."""
    circuit = random_network(seed)
    response = solved(circuit)
    if response is None:
        return
    scale = largest(response)
    # Currents may be a thousandfold of what the nodes' voltages suggest, in lossless loops.
    flow = max(1.0, *(float(np.abs(response.element_current(e.name)).max()) for e in circuit.elements))
    sums = {node: np.zeros(FREQ_HZ.size, complex) for node in (GROUND, *circuit.nodes)}
    for e in circuit.elements:
        sums[e.plus] += response.element_current(e.name)
        sums[e.minus] -= response.element_current(e.name)
        gap = response.element_voltage(e.name) - response.voltage(e.plus) + response.voltage(e.minus)
        assert np.abs(gap).max() < 1e-10 * scale
    fed = {feed.node for feed in circuit.feeds}
    for node in circuit.nodes:
        if node not in fed:
            assert np.abs(sums[node]).max() < 1e-10 * flow

    power_in = sum(sums[node] for node in fed).real  # every feed stands at 1 V
    heat = sum(response.dissipation(branch.label) for branch in circuit.branches)
    assert np.abs(power_in - heat).max() < 1e-9 * scale * flow

    by = {"R": 3.0, "L": 3.0, "C": 1 / 3.0}
    thrice = replace(circuit, elements=tuple(replace(e, value=e.value * by[e.kind]) for e in circuit.elements))
    other = solved(thrice)
    assert other is not None
    for node in circuit.nodes:
        assert np.abs(response.voltage(node) - other.voltage(node)).max() < 1e-9 * scale
    for feed in circuit.feeds:
        assert np.allclose(other.impedance(feed.name), 3 * response.impedance(feed.name), rtol=1e-9, atol=0)


@pytest.mark.parametrize("seed", range(5200, 5300))
def test_random_network_agrees_with_the_pivoted_way(seed: int) -> None:
    """Every node, element current and admittance, from two methods that share no arithmetic."""
    circuit = random_network(seed)
    response = solved(circuit)
    if response is None:
        return
    careful = PivotedPoints(circuit, response.points.parameters, FREQ_HZ)
    drive = [1.0] * len(circuit.feeds)
    scale = largest(response)
    for node in circuit.nodes:
        assert np.abs(response.voltage(node) - careful.node_voltage(node, drive)).max() < 1e-10 * scale
    for element in circuit.elements:
        found, wanted = response.element_current(element.name), careful.element_current(element.name, drive)
        assert np.abs(found - wanted).max() < 1e-10 * max(1.0, float(np.abs(wanted).max()))
    for driver in circuit.drivers:
        wanted = careful.node_voltage(driver.plus, drive) - careful.node_voltage(driver.minus, drive)
        assert np.abs(response.driver_voltage(driver.name) - wanted).max() < 1e-10 * scale
    for feed in circuit.feeds:
        wanted = careful.input_admittance(feed.name)
        assert np.allclose(response.admittance(feed.name), wanted, rtol=1e-9, atol=1e-12)


@pytest.mark.parametrize("seed", range(5300, 5400))
def test_random_network_is_reciprocal(seed: int) -> None:
    """The current at one input for 1 V at another is the same the other way round (Rayleigh, Theory of Sound).

    Each input is fed through 1 ohm, so the short-circuit current of the one at rest is the voltage of its inner end.
    """
    circuit = random_network(seed)
    inner = [node for node in circuit.nodes if node not in {f.node for f in circuit.feeds}][:2]
    if len(inner) < 2:
        return
    transfers = []
    for live, rest in (inner, inner[::-1]):
        ends = (Element("Rlive", "R", "live", live, 1.0, "live"), Element("Rrest", "R", rest, GROUND, 1.0, "rest"))
        held = tuple(Element(f"Rheld{i}", "R", f.node, GROUND, 2.0, "held") for i, f in enumerate(circuit.feeds))
        response = solved(replace(circuit, elements=circuit.elements + ends + held, feeds=(Feed("V", "live"),)))
        if response is None:
            return
        # The resistor at the driven end stays part of the network when that end is at rest.
        transfers.append(response.voltage(rest))
    one, other = transfers
    assert np.abs(one - other).max() < 1e-9 * max(1.0, float(np.abs(one).max()))


def test_two_inputs_add_up_and_rest_as_shorts() -> None:
    """Bi-amp: voltages are those with both at 1 V, an input impedance is that with the other amplifier at 0 V."""
    lines = ["V1 a 0", "V2 b 0", "R1 a m 2", "R2 b m 3", "R3 m 0 6"]
    response = solve(network(lines), [100.0])
    assert response.voltage("m")[0] == pytest.approx((1 / 2 + 1 / 3) / (1 / 2 + 1 / 3 + 1 / 6), abs=1e-15)
    assert response.impedance("V1")[0] == pytest.approx(2 + 3 * 6 / (3 + 6), abs=1e-14)
    assert response.impedance("V2")[0] == pytest.approx(3 + 2 * 6 / (2 + 6), abs=1e-14)


def test_dissipation_of_a_part_counts_its_resistances_only() -> None:
    """|I|^2 R for 1 V r.m.s."""
    response = solve(network(["V1 in 0", "R1 in a 3", "L1 a b 1e-3", "R2 b 0 5"]), [1000.0])
    squared = 1 / (64 + (2 * np.pi) ** 2)
    assert response.dissipation("R1")[0] == pytest.approx(3 * squared, rel=1e-14)
    assert response.dissipation("L1")[0] == 0
