"""Coils that share a field: transformers, taps, groups of three and more, and coils that lead nowhere."""

import numpy as np
import pytest

from response.circuits import network
from shuntwise.response.pivoted import PivotedPoints
from shuntwise.response.solve import SingularNetwork, solve

FREQ_HZ = np.geomspace(10, 40e3, 30)
S = 2j * np.pi * FREQ_HZ


def two_windings(k: float, r1: float, r2: float, load: float) -> np.ndarray:
    """The load voltage by the closed form: z1 z2 - (sM)^2 with L1 L2 - M^2 = L1 L2 (1 - k^2)."""
    l1, l2 = 2e-3, 0.5e-3
    mutual = k * np.sqrt(l1 * l2)
    z1, z2 = r1, r2 + load
    determinant = z1 * z2 + S * (l1 * z2 + l2 * z1) + S**2 * l1 * l2 * (1 - k * k)
    return np.asarray(S * mutual * load / determinant)


@pytest.mark.parametrize("k", [0.02, -0.3, 0.9, 0.9999999, 1.0, -1.0])
@pytest.mark.parametrize(("r1", "r2"), [(0.4, 0.2), (1e-3, 1e-3), (0.4, None), (None, None)])
def test_transformer_follows_its_closed_form(k: float, r1: float | None, r2: float | None) -> None:
    """With and without winding resistance, up to |k| = 1; without any the plan leaves the points to the pivoted way."""
    lines = ["V1 in 0", "L1 a 0 2e-3", "L2 b 0 0.5e-3", f"K1 L1 L2 {k!r}", "Rl out 0 8"]
    lines.append("Rshort in a 1e-9" if r1 is None else f"R1 in a {r1!r}")
    lines.append("Rlink b out 1e-9" if r2 is None else f"R2 b out {r2!r}")
    response = solve(network(lines), FREQ_HZ)
    exact = two_windings(k, r1 or 1e-9, r2 or 1e-9, 8)
    assert np.abs(response.voltage("out") - exact).max() < 1e-12


@pytest.mark.parametrize("k", [1.0, -1.0])
def test_ideal_unity_coupling_is_the_turns_ratio(k: float) -> None:
    """|k| = 1 without resistance, fed straight: V2/V1 = k sqrt(L2/L1) (any textbook on transformers)."""
    lines = ["V1 in 0", "L1 in 0 2e-3", "L2 out 0 0.5e-3", f"K1 L1 L2 {k}", "R out 0 8"]
    response = solve(network(lines), FREQ_HZ)
    assert np.abs(response.voltage("out") - k * 0.5).max() < 1e-12
    assert response.fallback_points == 0  # the load is in series with its winding and gives it resistance
    response = solve(network([*lines, "C out 0 1e-6"]), FREQ_HZ)
    assert np.abs(response.voltage("out") - k * 0.5).max() < 1e-12
    assert response.fallback_points == FREQ_HZ.size


def test_coupled_coils_in_series_add_twice_their_mutual_inductance() -> None:
    """L = L1 + L2 + 2 M in series aiding, - 2 M opposing (F. E. Terman, Radio Engineers' Handbook, 1943)."""
    for ends, sign in (("m out", 1), ("out m", -1)):
        lines = ["V1 in 0", "L1 in m 1e-3", f"L2 {ends} 0.4e-3", "K1 L1 L2 0.5", "R out 0 8"]
        total = 1.4e-3 + sign * 2 * 0.5 * np.sqrt(1e-3 * 0.4e-3)
        response = solve(network(lines), FREQ_HZ)
        assert np.abs(response.voltage("out") - 8 / (8 + S * total)).max() < 1e-12


def test_autotransformer_with_an_open_tap_section() -> None:
    """The unused section of a tapped coil carries nothing, and its end shows the turns ratio."""
    lines = ["V1 in 0", "R1 in tap 0.5", "L1 tap 0 1e-3", "L2 end tap 1e-3", "R2 end x 0.2", "K1 L1 L2 0.98"]
    response = solve(network(lines), FREQ_HZ)
    coil = S * 1e-3 / (0.5 + S * 1e-3)
    assert np.abs(response.voltage("tap") - coil).max() < 1e-13
    assert np.abs(response.voltage("x") - 1.98 * coil).max() < 1e-12
    assert not response.element_current("L2").any()
    assert response.residual < 1e-12


def test_three_coupled_coils_agree_with_the_pivoted_way() -> None:
    """A group of three with resistance, compared with dense modified nodal analysis."""
    lines = ["V1 in 0", "L1 in a 1e-3", "R1 a w 0.3", "Rw w 0 8", "C2 in b 10e-6", "L2 b c 0.5e-3", "R2 c 0 0.2"]
    lines += ["L3 b d 0.2e-3", "R3 d t 0.1", "Rt t 0 8", "K12 L1 L2 0.3", "K13 L1 L3 -0.2", "K23 L2 L3 0.5"]
    circuit = network(lines)
    response = solve(circuit, FREQ_HZ)
    careful = PivotedPoints(circuit, response.points.parameters, FREQ_HZ)
    for node in circuit.nodes:
        assert np.abs(response.voltage(node) - careful.node_voltage(node, [1.0])).max() < 1e-12
    for name in circuit.element:
        assert np.abs(response.element_current(name) - careful.element_current(name, [1.0])).max() < 1e-12
    assert response.fallback_points == 0
    assert response.residual < 1e-11


def test_secondary_without_a_path_to_ground_is_named() -> None:
    """Nothing fixes the voltage of an island that only a field reaches."""
    lines = ["V1 in 0", "R1 in a 1", "L1 a 0 1e-3", "L2 b c 1e-3", "R2 b c 8", "K1 L1 L2 0.9"]
    with pytest.raises(SingularNetwork) as caught:
        solve(network(lines, ["d b c"]), [1000.0]).voltage("b")
    assert caught.value.nodes and set(caught.value.nodes) <= {"b", "c"}
    assert caught.value.freq_hz == 1000.0
    with pytest.raises(SingularNetwork) as caught:
        solve(network([*lines, "C2 b c 1e-6"], ["d b c"]), [1000.0]).voltage("b")
    assert set(caught.value.nodes) == {"b", "c"}


def test_loose_coil_held_nowhere_is_named() -> None:
    """A coil with both ends in the air."""
    with pytest.raises(SingularNetwork) as caught:
        solve(network(["V1 in 0", "R1 in a 1", "L1 a 0 1e-3", "L2 b c 1e-3", "K1 L1 L2 0.9"]), [1000.0])
    assert set(caught.value.nodes) == {"b", "c"}
