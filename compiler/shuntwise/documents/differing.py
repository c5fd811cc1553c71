"""What is otherwise here than in the design itself, in words: `L1 2.7 mH (2.2 mH)`, `K1 left out (fitted)`.

In: differences. Out: a text for each, what the other design has in brackets. It refuses to look for any.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import PurePath

from shuntwise.model.design import Quantity
from shuntwise.model.differences import Difference, Told
from shuntwise.units import PLAIN, write

DIFFERS = "differs from the design itself (in brackets what that has)"


def differing(differences: Iterable[Difference]) -> tuple[str, ...]:
    """One text each, in their order."""
    return tuple(map(_told, differences))


def _told(one: Difference) -> str:
    if one.what == "wiring":
        return f"{one.subject} wired {one.here}"
    named = one.of in ("coupling", "posts") or one.what in ("", "presence", "kind", "construction", "position")
    kind = f"{one.of} " if one.of in ("choice", "coupling", "posts") else ""
    subject = f"{kind}{one.subject}" if named else f"{one.subject}.{one.what}"
    return f"{subject} {_side(one, one.here)} ({_side(one, one.there)})"


def _side(one: Difference, told: Told) -> str:
    if told is None:
        return "none" if one.of == "coupling" or one.what == "measured" else "not stated"
    if isinstance(told, Quantity):
        share = told.dimension == PLAIN and (one.of == "coupling" or one.what == "tolerance")
        return f"{100 * told.value:.4g} %" if share else write(told.value, told.dimension)
    return PurePath(told).name if one.what == "measured" else told
