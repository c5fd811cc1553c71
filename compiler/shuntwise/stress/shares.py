"""What each part bears for 1 V at every input, whatever amplifier there will be.

In: a solved response. Out: the greatest voltage, current and heat over its frequencies. Refuses to judge them.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from shuntwise.response.cases import greatest
from shuntwise.response.solve import Response
from shuntwise.response.tape import Real


@dataclass(frozen=True)
class Share:
    """What a part (or a driver, or a section of a tapped coil) bears for 1 V r.m.s. at every input.

    Each is the greatest over the band, V and A r.m.s., W; `hottest_hz` is where the heat is greatest, None if
    there is none.
    """

    label: str
    volt: float
    ampere: float
    watt: float
    hottest_hz: float | None


def taken(response: Response, label: str) -> Real:
    """The power (W for 1 V) that a branch takes up: its heat; one of two voice coils what goes in at its pads.

    What these two move stands in one of them alone. One that is driven by the other gives power back; then it is the
    heat of its copper.
    """
    network = response.network
    owner = {element.name: element.part for element in network.elements}
    copper = network.branch[label].through
    through = owner[copper]
    fields = [{owner[c.first], owner[c.second]} for c in network.couplings]
    if not any(through in field and len(field) > 1 and field <= {d.name for d in network.drivers} for field in fields):
        return response.dissipation(label)
    against = np.conj(response.current(label))
    at_pads, in_copper = response.branch_voltage(label) * against, response.element_voltage(copper) * against
    return np.maximum(np.real(at_pads), np.real(in_copper))


def shares(response: Response) -> tuple[Share, ...]:
    """One for each branch of the network."""
    with np.errstate(divide="ignore", invalid="ignore"):
        return tuple(_share(response, branch.label) for branch in response.network.branches)


def _share(response: Response, label: str) -> Share:
    heat = taken(response, label)
    curves = (np.abs(response.branch_voltage(label)), np.abs(response.current(label)), np.sqrt(heat))
    volt, ampere, root_watt = (float(greatest(curve, response.freq_hz)) for curve in curves)
    watt = root_watt**2
    return Share(label, volt, ampere, watt, float(response.freq_hz[heat.argmax()]) if watt > 0 else None)
