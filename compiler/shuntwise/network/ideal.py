"""One ideal element of a part or driver, before it has a place: what `part_model` and `driver_model` give to `lower`.

In and out: nothing (plain values). Refuses to know nodes and names.
"""

from __future__ import annotations

from typing import NamedTuple

from shuntwise.network.network import ElementKind


class Ideal(NamedTuple):
    """One ideal element: its kind, the quantity that it stands for, its value in SI units; whether it is copper."""

    kind: ElementKind
    quantity: str
    value: float
    copper: bool = False


Stage = tuple[tuple[Ideal, ...], ...]
"""Chains of ideal elements side by side between two nodes."""
