"""One thing in a design put otherwise, and what is said of it.

In: nothing but values. Out: `Change`, which the modules beside this make and the search judges.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from shuntwise.graph.circuit import Circuit
from shuntwise.model.design import Quantity
from shuntwise.source import Span

Manner = Literal["value", "exchanged", "turned", "elsewhere", "arranged"]


@dataclass(frozen=True)
class Change:
    """A circuit in which one thing is otherwise: a value, two owners in each other's place, the leads of one, the node
    that a walk touches, or parts in a row that stood side by side.

    `owners` are the parts or drivers that it is about; `title` says what is to be done. `unlikely` is how much better
    than another this change must explain things, as a share of a window. `quantity` is what is written where it is a
    value, `span` the station where it is a node; `text` what would be written instead.
    """

    manner: Manner
    owners: tuple[str, ...]
    circuit: Circuit
    title: str
    unlikely: float = 0.0
    quantity: Quantity | None = None
    span: Span | None = None
    text: str = ""
