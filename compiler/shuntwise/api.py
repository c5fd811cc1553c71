"""The passes for people who script: load, check, netlist, solve.

    from shuntwise.api import load, netlist, solve
    wedge = load("wedge.shunt", settings=["L1=0.75mH"])
    for finding in wedge.findings: print(finding.name, finding.headline)
    response = solve(wedge, [200.0, 2000.0])
    abs(response.driver_voltage("tweeter"))

Every value is frozen and documented where it is declared: `Compilation`, `Diagnostic`, `Design`,
`Circuit`, `Network`, `Response`.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from shuntwise.loading import Unreadable
from shuntwise.network.lower import Unlowered
from shuntwise.network.network import Network
from shuntwise.network.sweep import Sweep
from shuntwise.pipeline import Compilation
from shuntwise.settings import SettingUnclear
from shuntwise.workspace import Workspace

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import ArrayLike, NDArray

    from shuntwise.response.solve import Response


class NoNetwork(Exception):
    """The design has faults that leave nothing to solve; the message says what is lacking."""


def load(path: str, *, variant: str | None = None, settings: Sequence[str] = ()) -> Compilation:
    """Compile a design file, or one variant of it, with tried values such as "L1=0.75mH".

    Raises Unreadable for a file that gives no text, KeyError for an unknown variant, SettingUnclear for a
    setting that cannot be read. Mistakes in the design are no exceptions: see `Compilation.findings`.
    """
    return Workspace(path).compilation(variant, settings)


def load_text(text: str, name: str = "design", *, settings: Sequence[str] = ()) -> Compilation:
    """Compile a design given as a text that includes no files."""
    return Workspace.of_text(text, name).compilation(None, settings)


def check(path: str) -> tuple[Compilation, ...]:
    """Compile a design file and each of its variants, the design itself first."""
    return Workspace(path).compilations


def network(compilation: Compilation) -> Network:
    """The ideal elements of a compiled design. Raises NoNetwork."""
    if isinstance(compilation.lowered, Unlowered):
        raise NoNetwork(f"there is nothing to solve without {compilation.lowered.lacks}")
    return compilation.lowered


def netlist(compilation: Compilation, sweep: Sweep | None = None) -> str:
    """The SPICE netlist as text. Raises NoNetwork."""
    from shuntwise.netlist.spice import emit

    title = compilation.design.title or compilation.design.source.name
    return emit(network(compilation), sweep or Sweep(), design_title=title).text


def solve(compilation: Compilation, freq_hz: ArrayLike | NDArray[np.float64]) -> Response:
    """Solve at the frequencies `freq_hz` (F,) in Hz, each above zero. Raises NoNetwork and SingularNetwork."""
    import numpy as np

    from shuntwise.response.solve import Solver

    return Solver(network(compilation)).solve(np.asarray(freq_hz, dtype=float))


__all__ = [
    "Compilation",
    "NoNetwork",
    "SettingUnclear",
    "Sweep",
    "Unreadable",
    "Workspace",
    "check",
    "load",
    "load_text",
    "netlist",
    "network",
    "solve",
]
