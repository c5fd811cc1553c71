"""The impedance of each driver model, by its exact law (LANGUAGE.md, "driver")."""

from __future__ import annotations

import cmath
import math
from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from lowering.laying import Law, resistor
from lowering.meaning import FlatDriver
from lowering.reading import Unreadable

FITTED = ("semi_k", "r_factor")  # models that the product must stand in for


def is_fitted(driver: FlatDriver) -> bool:
    """Whether no finite circuit of R, L and C has this law."""
    return driver.measured is not None or any(key in driver.attributes for key in FITTED)


def exact_law(driver: FlatDriver, files: Callable[[str], str]) -> Law:
    if driver.measured is not None:
        return measured(files(driver.measured))
    has = driver.attributes
    if "re" not in has:
        if has or driver.nominal is None:
            raise Unreadable(f"{driver.name} has no resistance")
        return resistor(driver.nominal)

    def law(w: NDArray[np.float64]) -> NDArray[np.complex128]:
        return has["re"] + _voice_coil(has, w) + _resonance(has, w)

    return law


ONE_MOTION = 0.99999
"""How the two voice coils of a driver share the motion."""


def two_coils(driver: FlatDriver) -> tuple[Law, Law, Law]:
    """What each of two coils has, the other open, and the impedance between them.

    One coil alone has twice the stated Qes, with that Z. The second feels it through a coil coupled with Les:
    k^2 Z and what leaks, and k Z between the two.
    """
    has, k = dict(driver.attributes), driver.attributes.get("k", 0.9)
    if "qes" in has or "qts" in has:
        qms, qes = _q(has)
        has = {key: value for key, value in has.items() if key != "qts"} | {"qms": qms, "qes": 2 * qes}
    les = has["les"] if "les" in has else has["re"] / (2 * math.pi * has["fs"] * has["qes"]) if "fs" in has else 0.0
    ohm = has.get("re", driver.nominal or 0.0)

    def first(w: NDArray[np.float64]) -> NDArray[np.complex128]:
        return ohm + _voice_coil(has, w) + _resonance(has, w)

    def second(w: NDArray[np.float64]) -> NDArray[np.complex128]:
        leaks = (1 - ONE_MOTION**2) * (1j * w * les - _resonance(has, w))
        return first(w) + leaks

    def between(w: NDArray[np.float64]) -> NDArray[np.complex128]:
        return k * _voice_coil(has, w) + ONE_MOTION * _resonance(has, w)

    return first, second, between


def _voice_coil(has: dict[str, float], w: NDArray[np.float64]) -> NDArray[np.complex128]:
    if "semi_k" in has:
        return has["semi_k"] * (1j * w) ** has["semi_n"]
    if "r_factor" in has:
        return has["r_factor"] * w ** has["r_exponent"] + 1j * has["x_factor"] * w ** has["x_exponent"]
    return 1j * w * has.get("le", 0.0)


def _resonance(has: dict[str, float], w: NDArray[np.float64]) -> NDArray[np.complex128]:
    if "les" in has:
        return _in_box(has, 1 / has["res"] + 1j * w * has["ces"] + 1 / (1j * w * has["les"]), has["les"], w)
    if "fs" not in has:
        return np.zeros(w.shape, dtype=complex)
    qms, qes = _q(has)
    re, ws = has["re"], 2 * math.pi * has["fs"]
    res, ces, les = re * qms / qes, qes / (ws * re), re / (ws * qes)
    return _in_box(has, 1 / res + 1j * w * ces + 1 / (1j * w * les), les, w)


def _in_box(
    has: dict[str, float], admittance: NDArray[np.complex128], les: float, w: NDArray[np.float64]
) -> NDArray[np.complex128]:
    if "alpha" in has:
        box = 1j * w * les / has["alpha"]
        if "fb" in has:
            wb, lb = 2 * math.pi * has["fb"], les / has["alpha"]
            box = box + 1 / (1j * w / (wb * wb * lb)) + wb * lb / has.get("ql", 7.0)
        admittance = admittance + 1 / box
    return 1 / admittance


def _q(has: dict[str, float]) -> tuple[float, float]:
    """Mechanical and electrical Q from two of the three: 1/qts = 1/qms + 1/qes."""
    if "qts" not in has:
        return has["qms"], has["qes"]
    if "qms" in has:
        return has["qms"], 1 / (1 / has["qts"] - 1 / has["qms"])
    return 1 / (1 / has["qts"] - 1 / has["qes"]), has["qes"]


def measured(text: str) -> Law:
    """A table of frequency, magnitude and phase in degrees, good at its own frequencies only."""
    rows = {}
    for line in text.splitlines():
        cells = line.split("#")[0].replace(",", " ").split()
        try:
            hertz, ohm, degrees = map(float, cells)
        except ValueError:
            continue  # the line of names
        rows[hertz] = cmath.rect(ohm, math.radians(degrees))

    def law(w: NDArray[np.float64]) -> NDArray[np.complex128]:
        known = np.array(list(rows))
        nearest = np.abs(known[None, :] - w[:, None] / (2 * math.pi)).argmin(axis=1)
        found = known[nearest]
        if not np.allclose(found, w / (2 * math.pi), rtol=1e-9):
            raise Unreadable("a table says nothing between its rows")
        return np.array([rows[hertz] for hertz in found])

    return law
