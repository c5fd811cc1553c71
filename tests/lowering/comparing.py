"""The product and the second lowering side by side, on one text that lies in a folder.

A driver that the product must stand in for (semi-inductance, Wright's formula, a measured table) is compared twice.
Alone, the product's impedance is held against the exact law: the error that its report states must be the
error that is found. In the circuit the second lowering takes that impedance over, so that the rest of the circuit
is compared as sharply as with any other driver, and no error of a fit hides an error of the wiring.
"""

from __future__ import annotations

import tempfile
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from lowering import drivers, reference
from shuntwise import api
from shuntwise.pipeline import compile_variant
from shuntwise.settings import read_settings
from shuntwise.workspace import Workspace

BOUND = 1e-9  # relative to the largest driver voltage, or impedance, at that frequency
FIT_BOUND = 1e-7  # between the error that a fit reports and the one found: both are small differences
MEANINGLESS = ("same-label-twice", "circular-value")  # errors that leave nothing to hold against the reference
LEAST_VOLTAGE = 1e-5  # where no driver gets more for 1 V at the input, rounding is all there is to compare
FREQ_HZ = np.geomspace(12.0, 35e3, 13)


@dataclass
class Outcome:
    """`refused` says why the product gave no solution; `wrong` lists what the two sides see differently."""

    refused: str = ""
    deviation: float = 0.0
    fit_deviation: float = 0.0
    wrong: list[str] = field(default_factory=list)

    def note(self, where: str, deviation: float, ours: object, theirs: object) -> None:
        self.deviation = max(self.deviation, deviation)
        if not deviation <= BOUND:
            self.wrong.append(f"{where}: second lowering {ours}, product {theirs}, deviation {deviation:.2g}")


def compare(path: Path, variant: str | None = None, settings: Sequence[str] = ()) -> Outcome:
    """Hold the two against each other; a text that the second lowering cannot read raises its own exceptions."""
    outcome = Outcome()

    def files(name: str) -> str:
        return (path.parent / name).read_text("utf-8")

    read = Workspace(str(path))
    compilation = compile_variant(
        read.collected, read.said, variant=variant, settings=read_settings(settings), causes=False, on_boards=False
    )
    errors = [f"{f.name}: {f.headline}" for f in compilation.findings if f.severity.name == "ERROR"]
    if any(finding.name in MEANINGLESS for finding in compilation.findings):
        outcome.refused = "; ".join(errors)
        return outcome
    try:
        response = api.solve(compilation, FREQ_HZ)
    except api.NoNetwork as fault:
        outcome.refused = "; ".join([str(fault), *errors])
        return outcome
    except Exception as fault:  # the documented ones have their own message; any other one is told by its type
        outcome.refused = "; ".join([f"{type(fault).__name__}: {fault}", *errors])
        if type(fault).__name__ != "SingularNetwork":
            outcome.wrong.append(outcome.refused)
        return outcome

    meaning = reference.meaning_of(files, path.name, variant, settings)
    for driver in meaning.drivers.values():
        if drivers.is_fitted(driver):
            _compare_fit(outcome, driver, files)
    circuit = reference.circuit_of(
        meaning, files, lambda d: _law_alone(d, files) if drivers.is_fitted(d) else drivers.exact_law(d, files)
    )
    solution = reference.solve(circuit, FREQ_HZ)
    _compare_drivers(outcome, solution, response)
    _compare_impedance(outcome, solution, response)
    return outcome


def _compare_drivers(outcome: Outcome, solution: reference.Solution, response: object) -> None:
    theirs = {}
    for name in solution.drivers:
        try:
            theirs[name] = response.driver_voltage(name)  # type: ignore[attr-defined]
        except KeyError:
            theirs[name] = np.zeros(len(FREQ_HZ), dtype=complex)  # no way in
    largest = np.max([abs(v) for v in (*theirs.values(), *solution.drivers.values())], axis=0).clip(LEAST_VOLTAGE)
    for name, ours in solution.drivers.items():
        # A driver without a way in has exactly none in the product; the dense solution leaves its rounding there.
        _note_worst(outcome, name, ours, theirs[name], largest if theirs[name].any() else largest.clip(1.0))


def _compare_impedance(outcome: Outcome, solution: reference.Solution, response: object) -> None:
    for name, ours in solution.impedance.items():
        try:
            their = response.impedance(name)  # type: ignore[attr-defined]
        except Exception:  # no current can flow in
            their = np.full(ours.shape, np.inf, dtype=complex)
        open_ours, open_theirs = ~(abs(ours) < 1e14), ~(abs(their) < 1e14)
        if (open_ours != open_theirs).any():
            outcome.wrong.append(f"impedance of {name}: second lowering {ours}, product {their}")
        elif not open_ours.any():
            _note_worst(outcome, f"impedance of {name}", ours, their, np.maximum(abs(ours), abs(their)))


def _note_worst(
    outcome: Outcome,
    where: str,
    ours: NDArray[np.complex128],
    theirs: NDArray[np.complex128],
    scale: NDArray[np.float64],
) -> None:
    deviation = abs(ours - theirs) / scale
    worst = int(np.argmax(np.nan_to_num(deviation, nan=np.inf)))
    outcome.note(f"{where} at {FREQ_HZ[worst]:.4g} Hz", float(deviation[worst]), ours[worst], theirs[worst])


# --- drivers that the product must stand in for


def _alone(driver: reference.FlatDriver, table: str) -> str:
    """A design of nothing but this driver, its values written out."""
    if driver.measured is not None:
        attributes = [f"re {driver.attributes['re']!r} ohm"] if "re" in driver.attributes else []
        attributes.append(f'measured "{table}"')
    else:
        units = {"re": "ohm", "le": "H", "fs": "Hz", "fb": "Hz"}
        attributes = [f"{key} {value!r} {units.get(key, '')}" for key, value in driver.attributes.items()]
    nominal = "" if driver.nominal is None else f"{driver.nominal!r} ohm"
    return (
        f"driver alone {nominal} {{ role woofer, {', '.join(attributes)} }}\n"
        "leg alone {\n  input+ -- alone+\n  alone- -- return\n}\n"
    )


@lru_cache(maxsize=4096)
def _compiled_alone(text: str, name: str, table: str) -> api.Compilation:
    with tempfile.TemporaryDirectory() as folder:
        Path(folder, "alone.shunt").write_text(text, "utf-8")
        Path(folder, name).write_text(table, "utf-8")
        return api.load(str(Path(folder, "alone.shunt")))


def _product_alone(driver: reference.FlatDriver, files: reference.Files) -> api.Compilation:
    # Under its own name, so that the product fits it once: two fits of one table differ by what rounding makes of it.
    name = "none.txt" if driver.measured is None else Path(driver.measured).name
    table = files(driver.measured) if driver.measured is not None else ""
    return _compiled_alone(_alone(driver, name), name, table)


def _law_alone(driver: reference.FlatDriver, files: reference.Files) -> reference.Law:
    compilation = _product_alone(driver, files)
    return lambda w: api.solve(compilation, w / (2 * np.pi)).impedance("input")


def _compare_fit(outcome: Outcome, driver: reference.FlatDriver, files: reference.Files) -> None:
    """The error that the product reports must be the one that the exact law shows, within the promised bound."""
    compilation = _product_alone(driver, files)
    (report,) = api.network(compilation).fits
    freq_hz = np.array(report.freq_hz)
    product = api.solve(compilation, freq_hz).impedance("input")
    exact = drivers.exact_law(driver, files)(2 * np.pi * freq_hz)
    error = abs(product) / abs(exact) - 1
    degrees = np.degrees(np.angle(product / exact))
    deviation = max(
        abs(error - np.array(report.magnitude_error)).max(),
        np.radians(abs(degrees - np.array(report.phase_error_deg))).max(),
    )
    outcome.fit_deviation = max(outcome.fit_deviation, float(deviation))
    if not deviation <= FIT_BOUND:
        outcome.wrong.append(f"{driver.name}: the fit's stated error is off by {deviation:.2g}")
    told = any(f.name == "fit-poor" for f in compilation.findings)
    bound = 0.01 if "semi_k" in driver.attributes else 0.025
    if max(abs(error).max(), abs(degrees).max() / 100) > bound and not told:
        outcome.wrong.append(f"{driver.name}: the fit is off by {abs(error).max():.2%}, and nothing says so")
