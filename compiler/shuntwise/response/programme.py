"""How the power of a programme signal is spread over frequency.

In: a programme's name and the frequencies of a sweep. Out: the share of the power that each stands for. It refuses to
know how loud the programme is played.

`simulated` is the simulated programme signal of IEC 60268-1:1985, clause 7: pink noise shaped by the passive
network of its Figure 2, which stands for speech and music of all kinds (Table II gives the same in third-octave
levels). `pink` is pink noise, as much power in every octave. `sine` is no noise but a steady tone, at whatever
frequency is worst: it has no shares.
"""

from __future__ import annotations

import numpy as np

from shuntwise.response.tape import Complex, Real

STEADY = "sine"
DEFAULT = "simulated"
PROGRAMMES = (DEFAULT, "pink", STEADY)


def power_shares(programme: str, freq_hz: Real) -> Real:
    """The share of the power at each frequency, (F,), summing to 1. Raises ValueError for an unknown programme."""
    if programme == "simulated":
        shape = np.abs(shaping_network(freq_hz)) ** 2
    elif programme == "pink":
        shape = np.ones_like(freq_hz)
    else:
        raise ValueError(f"no noise is called {programme!r}")
    power = shape * np.gradient(np.log(freq_hz))  # pink noise has as much power in every step of log frequency
    return np.asarray(power / power.sum())


def shaping_network(freq_hz: Real) -> Complex:
    """Output over e.m.f. of the network of IEC 60268-1:1985, Figure 2, (F,).

    430 ohm (the source's included) and 2.2 uF in series; 3.3 kohm and 91 nF across; 330 ohm and 2.2 uF in series;
    3.3 kohm and 68 nF across; 0.47 uF in series; 10 kohm across, the load's included.
    """
    s = 2j * np.pi * freq_hz
    ladder = (
        (430 + 1 / (s * 2.2e-6), 1 / 3300 + s * 91e-9),
        (330 + 1 / (s * 2.2e-6), 1 / 3300 + s * 68e-9),
        (1 / (s * 0.47e-6), 1 / 10e3 + 0 * s),
    )
    gain, admittance = np.ones_like(s), np.zeros_like(s)
    for series, shunt in reversed(ladder):  # from the output back to the source, by voltage division
        admittance = admittance + shunt
        gain = gain / (1 + series * admittance)
        admittance = 1 / (series + 1 / admittance)
    return gain
