"""Impedance tables for random texts: one driver's formula, written in each form that a table may have."""

from __future__ import annotations

import cmath
import math

HERTZ = [round(10 * 10 ** (at / 25), 2) for at in range(91)]  # 10 Hz to 40 kHz


def impedance(hertz: float, re: float = 5.9, fs: float = 61.0) -> complex:
    """A voice coil of half an inductance, and one resonance."""
    w = 2 * math.pi * hertz
    ws, qms, qes = 2 * math.pi * fs, 4.5, 0.48
    motion = 1 / (qes / (re * qms) + 1j * w * qes / (ws * re) + ws * qes / (1j * w * re))
    return re + 0.012 * (1j * w) ** 0.68 + motion


def _plain() -> str:
    rows = [(f, impedance(f)) for f in HERTZ]
    return "# invented data\n" + "\n".join(f"{f} {abs(z):.8g} {math.degrees(cmath.phase(z)):.8g}" for f, z in rows)


def _named() -> str:
    rows = [(f, impedance(f, 6.3, 820.0)) for f in HERTZ]
    return "frequency (Hz), magnitude (ohm), phase (degree)\n" + "\n".join(
        f"{f}, {abs(z):.8g}, {math.degrees(cmath.phase(z)):.8g}" for f, z in rows
    )


TABLES = {"plain-table.txt": _plain() + "\n", "named-table.csv": _named() + "\n"}
