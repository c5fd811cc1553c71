"""A compiled design solved for the commands that show numbers."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from shuntwise.cli.main import Refused
from shuntwise.network.network import Network
from shuntwise.pipeline import Compilation

if TYPE_CHECKING:
    from shuntwise.response.solve import Solver


@contextmanager
def solving(compilation: Compilation) -> Iterator[Solver]:
    """The design's solver; a frequency at which the circuit has no single solution ends the command."""
    from shuntwise.response.pivoted import SingularNetwork
    from shuntwise.response.solve import Solver

    assert isinstance(compilation.lowered, Network)
    fed = {feed.node: feed.name for feed in compilation.lowered.feeds}
    try:
        yield Solver(compilation.lowered)
    except SingularNetwork as singular:
        if len(singular.nodes) == 1 and singular.nodes[0] in fed:
            name = fed[singular.nodes[0]]
            raise Refused(
                f"no current can flow in at `{name}`, so its impedance has no bound",
                f"wire `{name}+` and `{name}-`, or take the input out",
            ) from None
        around = ", ".join(f"`{node}`" for node in singular.nodes[:4])
        raise Refused(
            f"the circuit has no single solution at {singular.freq_hz:.6g} Hz, around {around}",
            "a coil and a capacitor without resistance resonate there: give the coil its dcr, or ask for others",
        ) from None
