"""Fitted elements: near enough, passive, reported truly, and worked out once."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest

from drivers.designs import (
    compile_text,
    error_of,
    free_air,
    names,
    network_of,
    one_driver,
    table_text,
    vented_box,
)
from engines.installed import EACH_ENGINE
from shuntwise.engines.crosscheck import crosscheck
from shuntwise.engines.engine import Engine
from shuntwise.network import fit as fitting
from shuntwise.network.driver_model import driver_model
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.response.solve import solve

ROOT = Path(__file__).parents[2]
BETWEEN_HZ = np.geomspace(20, 20000, 701)
"""Points that no fit was made at."""

S = 2j * np.pi * BETWEEN_HZ


def passive(network: Network) -> bool:
    return all(np.isfinite(element.value) and element.value > 0 for element in network.elements)


@pytest.mark.parametrize("ratio", [0.03, 0.3, 3.0, 30.0])
@pytest.mark.parametrize("n", [0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99, 1.0])
def test_semi_inductance_is_met_within_one_percent_and_one_degree(n: float, ratio: float) -> None:
    """K (j w)^n (Leach 2002) for every sensible n, from a coil that is `ratio` of Re at 20 kHz."""
    k = 5.8 * ratio / (2 * np.pi * 20000) ** n
    compilation = one_driver(f"re 5.8 ohm, semi_k {k!r}, semi_n {n}")
    network = network_of(compilation)
    percent, degree = error_of(solve(network, BETWEEN_HZ).impedance("input"), 5.8 + k * S**n)
    assert (percent < 1.0, degree < 1.0, names(compilation)) == (True, True, [])
    assert passive(network)
    assert network.fits[0].sections <= fitting.MOST_SECTIONS


@pytest.mark.parametrize(("xr", "xi"), [(0.6, 0.6), (0.7, 0.7), (0.8, 0.8), (0.75, 0.71), (0.85, 0.81), (0.62, 0.65)])
def test_wrights_formula_is_met_where_it_is_nearly_that_of_a_passive_part(xr: float, xi: float) -> None:
    """Resistance and reactance in the proportion of a passive part, tan(n pi/2), at 2 kHz; exponents close."""
    omega, angle, size = 2 * np.pi * 2000, np.pi / 4 * (xr + xi), 5.8
    kr, ki = float(size * np.cos(angle) / omega**xr), float(size * np.sin(angle) / omega**xi)
    compilation = one_driver(f"re 5.8 ohm, r_factor {kr!r}, r_exponent {xr}, x_factor {ki!r}, x_exponent {xi}")
    network = network_of(compilation)
    wanted = 5.8 + kr * np.abs(S) ** xr + 1j * ki * np.abs(S) ** xi
    percent, degree = error_of(solve(network, BETWEEN_HZ).impedance("input"), wanted)
    assert (percent < 1.0, degree < 1.0, names(compilation)) == (True, True, [])
    assert passive(network)


def test_dc_resistance_of_a_formula_stays_what_it_is() -> None:
    """An ohmmeter sees Re: all sections are shorts at DC."""
    network = network_of(one_driver("re 5.8 ohm, semi_k 0.05, semi_n 0.5"))
    assert network.element["woofer.re"].value == 5.8
    assert abs(solve(network, [1e-6]).impedance("input")[0]) == pytest.approx(5.8, rel=1e-4)


TABLES = {
    "woofer": 5.8 + 0.0155 * S**0.69 + free_air(S, 5.8, 42, 4.2, 0.46),
    "vented": 5.8 + 0.0155 * S**0.69 + vented_box(S, 5.8, 42, 4.2, 0.46, 1.1, 45, 7),
    "vented, sharp": 3.2 + 0.03 * S**0.55 + vented_box(S, 3.2, 60, 8, 0.3, 3, 70, 20),
    "vented, low": 5.8 + 0.0155 * S**0.69 + vented_box(S, 5.8, 30, 6, 0.35, 2.5, 32, 12),
    "tweeter": 3.4 + 0.0031 * S**0.72 + free_air(S, 3.4, 780, 2.6, 1.4),
    "horn": 6 + 0.002 * S**0.75 + sum(free_air(S, 6, *shape) for shape in ((450, 3, 1.2), (1100, 3, 3), (2100, 4, 8))),
    "plain": 5.8 + 0.00055 * S + free_air(S, 5.8, 42, 4.2, 0.46),
}


@pytest.mark.parametrize("points", [120, 400])
@pytest.mark.parametrize("name", TABLES)
def test_clean_table_is_met_within_one_percent_and_one_degree(name: str, points: int) -> None:
    at = np.linspace(0, len(BETWEEN_HZ) - 1, points).round().astype(int)
    text = table_text(BETWEEN_HZ[at], TABLES[name][at])
    compilation = one_driver('measured "t.txt"', {"t.txt": text}, f"{np.abs(TABLES[name]).min():.3g} ohm")
    network = network_of(compilation)
    percent, degree = error_of(solve(network, BETWEEN_HZ).impedance("input"), TABLES[name])
    assert (percent < 1.0, degree < 1.0, names(compilation)) == (True, True, [])
    assert passive(network)


def test_given_dc_resistance_is_kept_with_a_table() -> None:
    text = table_text(BETWEEN_HZ, TABLES["vented"])
    network = network_of(one_driver('re 5.8 ohm, measured "t.txt"', {"t.txt": text}))
    assert network.element["woofer.re"].value == 5.8
    percent, degree = error_of(solve(network, BETWEEN_HZ).impedance("input"), TABLES["vented"])
    assert percent < 1.0
    assert degree < 1.0


def test_report_says_what_the_solver_finds() -> None:
    """Its errors are those of the solved network at its frequencies, to rounding, and its worst are theirs."""
    compilation = one_driver("re 5.8 ohm, semi_k 0.0155, semi_n 0.69, fs 42 Hz, qms 4.2, qes 0.46")
    network = network_of(compilation)
    (report,) = network.fits
    assert (report.driver, report.band_hz, report.resonances) == ("woofer", pytest.approx((20, 20000)), 0)
    s = 2j * np.pi * np.array(report.freq_hz)
    ratio = solve(network, report.freq_hz).impedance("input") / (
        5.8 + 0.0155 * s**0.69 + free_air(s, 5.8, 42, 4.2, 0.46)
    )
    assert np.abs(ratio) - 1 == pytest.approx(np.array(report.magnitude_error), abs=1e-10)
    assert np.degrees(np.angle(ratio)) == pytest.approx(np.array(report.phase_error_deg), abs=1e-8)
    assert report.worst_magnitude[0] == np.abs(report.magnitude_error).max()
    assert report.worst_phase[0] == np.abs(report.phase_error_deg).max()
    assert report.worst_magnitude[1] in report.freq_hz


def test_band_of_the_report_is_that_of_the_table() -> None:
    inside = (BETWEEN_HZ > 100) & (BETWEEN_HZ < 15000)
    text = table_text(BETWEEN_HZ[inside], TABLES["tweeter"][inside])
    (report,) = network_of(one_driver('measured "t.txt"', {"t.txt": text}, "4 ohm")).fits
    assert report.band_hz == pytest.approx((BETWEEN_HZ[inside][0], BETWEEN_HZ[inside][-1]))


def test_plain_drivers_have_no_report() -> None:
    assert network_of(one_driver("re 5.8 ohm, le 0.5 mH, fs 42 Hz, qms 4.2, qes 0.46")).fits == ()


@pytest.mark.parametrize("seed", range(3))
def test_noisy_table_is_smoothed_and_reported(seed: int) -> None:
    """Noise of 3 % in each part: `fit-poor` names the scatter, and the elements lie nearer to the truth than
    the points do."""
    noise = np.random.default_rng(seed).normal(size=(2, len(S)))
    noisy = TABLES["woofer"] * (1 + 0.03 * (noise[0] + 1j * noise[1]))
    compilation = one_driver('measured "t.txt"', {"t.txt": table_text(BETWEEN_HZ, noisy)})
    assert names(compilation) == ["fit-poor"]
    finding = compilation.findings[0]
    assert "the points scatter by about 3" in finding.help or "the points scatter by about 2.9" in finding.help
    network = network_of(compilation)
    assert passive(network)
    assert (
        error_of(solve(network, BETWEEN_HZ).impedance("input"), TABLES["woofer"])[0]
        < 5
        < error_of(noisy, TABLES["woofer"])[0]
    )


def test_slight_noise_is_no_finding() -> None:
    noise = np.random.default_rng(7).normal(size=(2, len(S)))
    slight = TABLES["vented"] * (1 + 0.002 * (noise[0] + 1j * noise[1]))
    assert names(one_driver('measured "t.txt"', {"t.txt": table_text(BETWEEN_HZ, slight)})) == []


def test_table_of_noise_alone_is_never_a_wild_fit() -> None:
    """Whatever is measured, all elements are positive and the impedance stays among the points."""
    random = np.random.default_rng(11)
    ohm = random.uniform(2, 60, len(S)) * np.exp(1j * random.uniform(-1.5, 1.5, len(S)))
    compilation = one_driver('measured "t.txt"', {"t.txt": table_text(BETWEEN_HZ, ohm)})
    assert "fit-poor" in names(compilation)
    network = network_of(compilation)
    assert passive(network)
    found = np.abs(solve(network, BETWEEN_HZ).impedance("input"))
    assert found.max() < 200


def test_limit_moves_the_bound_and_allow_waives_it() -> None:
    coil = "re 5.8 ohm, r_factor 0.0039, r_exponent 0.74, x_factor 0.0180, x_exponent 0.66"
    body = f"driver woofer 8 ohm {{ {coil} }}\nleg woofer {{\n  input+ -- woofer+\n  woofer- -- return\n}}\n"
    assert names(compile_text(body)[0]) == []
    assert names(compile_text(body + "limit fit-poor 1 %\n")[0]) == ["fit-poor"]
    waived = body + 'limit fit-poor 1 %\nallow fit-poor on woofer because "a trial"\n'
    assert names(compile_text(waived)[0]) == []


def test_variants_do_not_fit_again(monkeypatch: pytest.MonkeyPatch) -> None:
    """A driver of the same content gives the same elements, worked out once in a process."""
    calls = []
    real = fitting.fit
    monkeypatch.setattr(fitting, "fit", lambda *a, **k: calls.append(1) or real(*a, **k))
    text = (
        "driver woofer 8 ohm { re 5.81 ohm, semi_k 0.0123, semi_n 0.71 }\ncoil L1 1 mH\n"
        "leg woofer {\n  input+ -- L1 -- woofer+\n  woofer- -- return\n}\n"
        'variant small "less coil" {\n  set L1 = 0.5 mH\n}\nvariant none {\n  set L1 = 0.2 mH\n}\n'
    )
    assert len(compile_text(text)) == 3
    assert len(calls) == 1


def test_no_elements_without_an_impedance() -> None:
    """The model of a driver that has none is the caller's mistake."""
    driver = one_driver("200 W", nominal="").design.drivers["woofer"]
    with pytest.raises(ValueError, match="the impedance of `woofer`"):
        driver_model(driver)


@EACH_ENGINE
@pytest.mark.parametrize(
    "attributes",
    [
        "re 5.8 ohm, semi_k 0.0155, semi_n 0.69, fs 42 Hz, qms 4.2, qes 0.46, alpha 1.1, fb 45 Hz",
        "re 5.8 ohm, r_factor 0.0039, r_exponent 0.74, x_factor 0.0180, x_exponent 0.66, fs 42 Hz, qms 4.2, qes 0.46",
        'measured "t.txt"',
    ],
)
def test_solver_and_engine_agree_on_fitted_drivers(engine: Engine, attributes: str) -> None:
    """Both are given the same ordinary elements, so they agree to rounding (the engine's own bound)."""
    compilation = one_driver(attributes, {"t.txt": table_text(BETWEEN_HZ, TABLES["vented"])})
    check = crosscheck(network_of(compilation), Sweep(20, 20000, 20), engine)
    assert check.passed, check.worst


def test_plain_drivers_need_no_numerical_search() -> None:
    """scipy takes half a second to load: only a driver that must be fitted loads it."""
    code = (
        "import sys; from drivers.designs import one_driver; "
        "loaded = lambda: 'scipy' in sys.modules; "
        "one_driver('re 5.8 ohm, le 0.5 mH, fs 42 Hz, qms 4.2, qes 0.46, alpha 1.1, fb 45 Hz'); before = loaded(); "
        "one_driver('re 5.8 ohm, semi_k 0.0155, semi_n 0.69'); print(before, loaded())"
    )
    environment = {**os.environ, "PYTHONPATH": os.pathsep.join([str(ROOT / "compiler"), str(ROOT / "tests")])}
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, env=environment, check=False)
    assert run.stdout.split() == ["False", "True"], run.stderr
