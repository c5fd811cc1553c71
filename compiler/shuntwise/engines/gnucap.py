"""Runs a netlist on gnucap.

In: a `Netlist`. Out: an `EngineResult`. It refuses to know what the circuit is, and to trust an exit code:
gnucap ends with 0 whatever happens and says what went wrong among its results.

gnucap has no result file, so print lines for the real and imaginary part of every node take the place of
the netlist's own, in full digits; gnucap obeys the last one before an analysis.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from shuntwise.engines.engine import CIRCUIT_FILE, Engine, EngineFailed, EngineResult, collect, run_program
from shuntwise.netlist.spice import Netlist

_COMPLAINT = re.compile(r"\^ \?|open circuit|singular|convergence|\bnan\b|\binf\b", re.IGNORECASE)
_SUFFIX = {"f": "e-15", "p": "e-12", "n": "e-9", "u": "e-6", "m": "e-3"}
_SUFFIX |= {"K": "e3", "Meg": "e6", "G": "e9", "T": "e12"}
_NUMBER = re.compile(rf"(-?\d+\.?\d*)([eE][-+]?\d+|{'|'.join(_SUFFIX)})?")
_HEADING = "#Freq"
_PROBES_TO_A_ROW = 6
_NODES_TO_A_TABLE = 200

LARGEST_COUPLING = 0.99999
"""gnucap divides by 1 - k^2. Measured on random networks against a pivoted solution: off by 5e-12 of the
source voltage for 1 - |k| = 1e-2, 7e-10 for 1e-6, 1e-7 for 1e-8, and by anything, at times without a
word, for |k| = 1."""


def run(netlist: Netlist, *, timeout_s: float = 60.0) -> EngineResult:
    """The netlist's circuit by gnucap.

    Raises EngineMissing if it is not installed, EngineFailed on any doubt about the result.
    """
    for line in netlist.text.splitlines():
        if line.startswith("k") and abs(float(line.split()[3])) > LARGEST_COUPLING:
            raise EngineFailed("gnucap", "cannot solve coils coupled beyond |k| = 0.99999; ngspice can", line)
    ground = netlist.node_names["0"]
    wanted = (*netlist.node_names.values(), *netlist.driver_nodes.values(), *netlist.impedance_nodes.values())
    nodes = [node for node in dict.fromkeys(wanted) if node != ground]
    text = _with_tables(netlist.text, nodes)
    ran = run_program("gnucap", "gnucap", ["-b", CIRCUIT_FILE], text, timeout_s=timeout_s)
    # The title is echoed: it is the author's, and may hold any word that is looked for.
    lines = [line for line in ran.stdout.splitlines() if not line.startswith("* shuntwise:")]
    said = "\n".join(line for line in lines if not line.startswith(_HEADING)) + ran.stderr
    complaint = _COMPLAINT.search(said)
    if complaint or ran.exit_code:
        at = complaint.start() if complaint else 0
        raise EngineFailed("gnucap", "complained about the netlist", said[max(0, at - 200) : at + 200])
    starts = [at for at, line in enumerate(lines) if line.startswith(_HEADING)]
    parts = list(_tables(nodes))
    if len(starts) != len(parts):
        raise EngineFailed("gnucap", f"printed {len(starts)} tables of {len(parts)}", said)
    columns: dict[str, NDArray[np.complex128]] = {}
    for part, start, end in zip(parts, starts, [*starts[1:], len(lines)], strict=True):
        table = _table(lines[start + 1 : end], 1 + 2 * len(part))
        columns |= {node: table[:, 1 + 2 * at] + 1j * table[:, 2 + 2 * at] for at, node in enumerate(part)}
    if len({len(column) for column in columns.values()}) != 1:
        raise EngineFailed("gnucap", "printed tables of different lengths")
    return collect("gnucap", netlist, np.ascontiguousarray(table[:, 0]), columns.__getitem__)


def _tables(nodes: list[str]) -> Iterator[list[str]]:
    """The nodes that one table holds: gnucap breaks a row of more than some 800 columns."""
    for start in range(0, len(nodes), _NODES_TO_A_TABLE):
        yield nodes[start : start + _NODES_TO_A_TABLE]


def _with_tables(text: str, nodes: list[str]) -> str:
    """The text with print lines for `nodes`, each before an analysis of its own."""
    before, _, after = text.rpartition("\n.ac ")
    rows = [before, ".options numdgt=17"]
    for part in _tables(nodes):
        for start in range(0, len(part), _PROBES_TO_A_ROW):
            probes = " ".join(f"vr({node}) vi({node})" for node in part[start : start + _PROBES_TO_A_ROW])
            rows.append(f"{'+' if start else '.print ac'} {probes}")
        rows.append(".ac " + after.partition("\n")[0])
    return "\n".join(rows) + "\n.end\n"


def _table(lines: list[str], width: int) -> NDArray[np.float64]:
    """The numbers of a printed table: `width` to a row, with SPICE's suffixes (`628.3u`, `9.5Meg`)."""
    rows = []
    for line in lines:
        numbers = [_NUMBER.fullmatch(word) for word in line.split()]
        if len(numbers) != width or None in numbers:
            raise EngineFailed("gnucap", "the table has a row that is not numbers", line)
        rows.append([float(n[1] + _SUFFIX.get(n[2], n[2] or "")) for n in numbers if n])
    return np.array(rows, dtype=np.float64).reshape(-1, width)


_BOUND_REASON = "rounding alone, since coils coupled beyond |k| = 0.99999 are refused"
GNUCAP = Engine("gnucap", "gnucap", 1e-9, _BOUND_REASON, run)
