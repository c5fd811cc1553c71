"""Whether a measured impedance can be that of a driver at all.

In: an `ImpedanceTable` and where its rows stand. Out: a finding if it cannot, else None. Two things are looked
at, both true of every passive part: the real part is not negative, and the phase goes with the slope of the
magnitude (H. W. Bode, Network Analysis and Feedback Amplifier Design, 1945, chapter 14: a slope of 6 dB per
octave goes with 90 degrees). Refuses to know what the table is for.
"""

from __future__ import annotations

import cmath
import math
from collections.abc import Sequence

from shuntwise.diagnostics.diagnostic import Diagnostic
from shuntwise.model import findings
from shuntwise.model.design import ImpedanceTable
from shuntwise.source import Span

_SLACK = 0.02
"""A real part down to this share of the magnitude below zero is taken for noise."""

_STEEP_DEG = 5.0
"""Where the slope foretells less phase than this on the whole, it says nothing about signs."""

_WHY = "an impedance that no passive part can have would make a network that gives power of itself"


def unphysical(table: ImpedanceTable, rows: Sequence[Span]) -> Diagnostic | None:
    """The first reason why the table is not that of a passive driver; `rows` are the places of its points."""
    return _negative(table, rows) or _against_the_slope(table, rows)


def _negative(table: ImpedanceTable, rows: Sequence[Span]) -> Diagnostic | None:
    worst = min(range(len(rows)), key=lambda at: table.ohm[at].real / abs(table.ohm[at]))
    ohm = table.ohm[worst]
    if ohm.real >= -_SLACK * abs(ohm):
        return None
    below = sum(1 for value in table.ohm if value.real < -_SLACK * abs(value))
    return findings.error(
        "measured-not-physical",
        rows[worst],
        f"a resistance below zero was measured at {below} of {len(rows)} points",
        label=f"{ohm.real:.3g} ohm at {table.freq_hz[worst]:.4g} Hz",
        why=_WHY,
        help="look at the phase: the two leads of one channel may be exchanged, or a delay was not taken out",
    )


def _against_the_slope(table: ImpedanceTable, rows: Sequence[Span]) -> Diagnostic | None:
    """Compare the measured phase with the one that the slope foretells, over the whole table."""
    pairs = list(_foretold(table))
    foretold = math.sqrt(sum(expected**2 for expected, _ in pairs) / len(pairs)) if pairs else 0.0
    if foretold < _STEEP_DEG:
        return None
    together = sum(expected * measured for expected, measured in pairs)
    measured = math.sqrt(sum(phase**2 for _, phase in pairs) / len(pairs))
    if measured < 0.1 * foretold:
        headline = "the phase is far too small for the slope of the magnitude"
        help_text = "if it is in radians, name the columns: `frequency (Hz), magnitude (ohm), phase (radian)`"
    elif together < -0.3 * measured * foretold * len(pairs):
        headline = "the phase has the opposite sign of what the slope of the magnitude asks for"
        help_text = "turn the sign of the phase: where the magnitude rises with frequency the phase is above zero"
    else:
        return None
    label = f"phases of {measured:.2g} degrees (r.m.s.), where the slope asks for about {foretold:.2g}"
    return findings.error("measured-not-physical", rows[0], headline, label=label, why=_WHY, help=help_text)


def _foretold(table: ImpedanceTable) -> list[tuple[float, float]]:
    """(phase that the slope foretells, measured phase) in degrees, at points a third of an octave apart."""
    pairs = []
    chosen: list[int] = []
    for at, freq in enumerate(table.freq_hz):
        if not chosen or freq >= 1.26 * table.freq_hz[chosen[-1]]:
            chosen.append(at)
    for before, at, after in zip(chosen, chosen[1:], chosen[2:], strict=False):
        rise = math.log(abs(table.ohm[after]) / abs(table.ohm[before]))
        slope = rise / math.log(table.freq_hz[after] / table.freq_hz[before])
        pairs.append((90 * slope, math.degrees(cmath.phase(table.ohm[at]))))
    return pairs
