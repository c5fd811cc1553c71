"""Designs with one driver, compiled with data files from memory; tables made from formulas."""

from __future__ import annotations

from collections.abc import Callable, Mapping

import numpy as np
from numpy.typing import NDArray

from shuntwise.model.include import Loaded, NotLoaded
from shuntwise.network.network import Network
from shuntwise.pipeline import Compilation, compile_all, read
from shuntwise.source import Source

Complex = NDArray[np.complex128]


def loader(files: Mapping[str, str]) -> Callable[[str, Source, bool], Loaded | NotLoaded]:
    """Finds the given texts and nothing else."""
    sources = {name: Source(name, text) for name, text in files.items()}

    def load(path: str, source: Source, library: bool) -> Loaded | NotLoaded:
        if library or path not in sources:
            return NotLoaded("there is no such file", "check the name")
        return Loaded(sources[path], path)

    return load


def compile_text(text: str, files: Mapping[str, str] | None = None) -> tuple[Compilation, ...]:
    collected, said = read(Source("design.shunt", text), loader(files or {}))
    return compile_all(collected, said)


def one_driver(attributes: str, files: Mapping[str, str] | None = None, nominal: str = "8 ohm") -> Compilation:
    """A woofer with these attributes, straight at the input."""
    text = f"driver woofer {nominal} {{ {attributes} }}\nleg woofer {{\n  input+ -- woofer+\n  woofer- -- return\n}}\n"
    return compile_text(text, files)[0]


def network_of(compilation: Compilation) -> Network:
    assert isinstance(compilation.lowered, Network), compilation.findings
    return compilation.lowered


def names(compilation: Compilation) -> list[str]:
    return [finding.name for finding in compilation.findings]


def free_air(s: Complex, re: float, fs: float, qms: float, qes: float) -> Complex:
    """Motional impedance in free air, as in 08_driver_parameters.toml: Res (p/Qms)/(1 + p/Qms + p^2)."""
    p = s / (2 * np.pi * fs)
    return re * qms / qes * (p / qms) / (1 + p / qms + p * p)


def vented_box(s: Complex, re: float, fs: float, qms: float, qes: float, alpha: float, fb: float, ql: float) -> Complex:
    """Motional impedance in a vented box with leakage losses, as one rational function.

    R. H. Small, Vented-box loudspeaker systems, part 1: small-signal analysis, J. Audio Eng. Soc. 21(5), 1973:
    Res (s Ts/Qms) (s^2 Tb^2 + s Tb/Ql + 1) / D(s), D of fourth order. The citation is from memory; the
    coefficients are those of Newton's law for cone, air in the box, air in the vent and leak.
    """
    ts, tb = 1 / (2 * np.pi * fs), 1 / (2 * np.pi * fb)
    below = (
        s**4 * tb**2 * ts**2
        + s**3 * (tb**2 * ts / qms + tb * ts**2 / ql)
        + s**2 * ((alpha + 1) * tb**2 + tb * ts / (ql * qms) + ts**2)
        + s * (tb / ql + ts / qms)
        + 1
    )
    return re * qms / qes * (s * ts / qms) * (s**2 * tb**2 + s * tb / ql + 1) / below


def table_text(freq_hz: NDArray[np.float64], ohm: Complex, digits: int = 9) -> str:
    """A table as the language reads it without a line of names."""
    rows = zip(freq_hz, np.abs(ohm), np.degrees(np.angle(ohm)), strict=True)
    return "".join(f"{f:.{digits}g} {m:.{digits}g} {p:.{digits}g}\n" for f, m, p in rows)


def error_of(found: Complex, wanted: Complex) -> tuple[float, float]:
    """The worst magnitude error in percent and the worst phase error in degrees."""
    ratio = found / wanted
    return float(100 * np.abs(np.abs(ratio) - 1).max()), float(np.abs(np.degrees(np.angle(ratio))).max())
