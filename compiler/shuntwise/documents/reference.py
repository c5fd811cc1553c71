"""What levels and impedances are told of: the input's posts, or an amplifier with a resistance and a cable.

In: the design's amplifier. Out: words for every document. It refuses to work out anything.
"""

from __future__ import annotations

from shuntwise.model.design import Amplifier


def of_levels(amplifier: Amplifier | None) -> str:
    """What 1 V stands for, behind "for 1 V"."""
    if amplifier is not None and "source" in amplifier.quantities:
        return "of the amplifier's open-circuit voltage"
    return "at the amplifier's posts" if amplifier is not None and amplifier.cable else "at the input"


def of_impedance(amplifier: Amplifier | None) -> str:
    """Where an impedance is seen, behind "impedance"."""
    if amplifier is not None and amplifier.cable:
        return "at the amplifier's posts, cable included"
    return "at the amplifier's posts" if amplifier is not None and "source" in amplifier.quantities else "at the input"


def is_ideal(amplifier: Amplifier | None) -> bool:
    """Is the amplifier at the input itself, without a resistance?"""
    return amplifier is None or not (amplifier.cable or "source" in amplifier.quantities)
