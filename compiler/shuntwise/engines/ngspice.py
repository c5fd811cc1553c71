"""Runs a netlist on ngspice.

In: a `Netlist`. Out: an `EngineResult`. It refuses to know what the circuit is, and to trust an exit code:
ngspice ends with 0 after refusing half of a circuit.

The binary raw file is read, which holds every number in full; what `.print` writes has ten.
"""

from __future__ import annotations

import re

import numpy as np
from numpy.typing import NDArray

from shuntwise.engines.engine import CIRCUIT_FILE, Engine, EngineFailed, EngineResult, collect, run_program
from shuntwise.netlist.spice import Netlist

_RAW_FILE = "result.raw"
_COMPLAINT = re.compile(r"not positive definite|warning|error|singular", re.IGNORECASE)


def run(netlist: Netlist, *, timeout_s: float = 60.0) -> EngineResult:
    """The netlist's circuit by ngspice. `-n` keeps ngspice from running a start file of the working folder.

    Raises EngineMissing if it is not installed, EngineFailed on any doubt about the result.
    """
    ran = run_program(
        "ngspice",
        "ngspice",
        ["-b", "-n", "-r", _RAW_FILE, CIRCUIT_FILE],
        netlist.text,
        timeout_s=timeout_s,
        result_file=_RAW_FILE,
    )
    if ran.exit_code:
        raise EngineFailed("ngspice", f"ended with code {ran.exit_code}", ran.stderr)
    if _COMPLAINT.search(ran.stderr):
        raise EngineFailed("ngspice", "complained about the netlist", ran.stderr)
    if ran.result is None:
        raise EngineFailed("ngspice", "wrote no result", ran.stderr)
    columns = read_raw(ran.result)

    def column(node: str) -> NDArray[np.complex128]:
        try:
            return columns[f"v({node})"]
        except KeyError:
            raise EngineFailed("ngspice", f"the result lacks v({node})") from None

    # The imaginary part of the frequency column is memory that ngspice never wrote.
    frequency = columns.get("frequency")
    if frequency is None:
        raise EngineFailed("ngspice", "the result has no frequencies")
    return collect("ngspice", netlist, np.ascontiguousarray(frequency.real), column)


def read_raw(content: bytes) -> dict[str, NDArray[np.complex128]]:
    """The columns of a binary raw file with one complex plot, by lower-case name; raises EngineFailed.

    The format is an ASCII header up to a line `Binary:`, then complex doubles in native byte order, point
    by point (ngspice manual, chapter "Output file format", as found in files of ngspice 39).
    """
    header, found, body = content.partition(b"Binary:\n")
    fields = header.decode("ascii", "replace")
    counts = [re.search(rf"^No\. {what}:\s*(\d+)", fields, re.MULTILINE) for what in ("Variables", "Points")]
    if not found or counts[0] is None or counts[1] is None or "complex" not in fields:
        raise EngineFailed("ngspice", "the raw file is not a binary one of complex values")
    rows = [row.split() for row in fields.partition("Variables:\n")[2].splitlines() if row.strip()]
    if not rows or any(len(row) < 2 for row in rows):
        raise EngineFailed("ngspice", "the raw file names no variables")
    names = [row[1].lower() for row in rows]
    # Compared as text: the numbers may have any length.
    variables, points = len(names), len(body) // (16 * len(names))
    told = tuple(count[1].lstrip("0") or "0" for count in counts if count)
    if told != (str(variables), str(points)) or len(body) % (16 * variables):
        raise EngineFailed("ngspice", "the raw file is cut short")
    table = np.frombuffer(body, dtype=np.complex128).reshape(points, variables)
    return dict(zip(names, np.ascontiguousarray(table.T), strict=True))


NGSPICE = Engine("ngspice", "ngspice", 1e-9, "rounding alone: ngspice keeps double precision throughout", run)
