"""What an outside simulator gives back, and how one is run.

In: an emitted netlist. Out: an `EngineResult`, or a typed failure. It refuses to know either simulator's
language: the modules beside it do. Each runs as a process of its own, in a private folder, so a crash of
the simulator is a failed run and not the end of ours.
"""

from __future__ import annotations

import os
import shutil
import signal
import subprocess
import tempfile
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from shuntwise.netlist.spice import Netlist

CIRCUIT_FILE = "circuit.cir"
_EXCERPT = 600

LARGEST_RESULT_BYTES = 1 << 30
"""A result beyond this is none of a crossover's: some 20,000 frequencies at 3,000 nodes."""


@dataclass(frozen=True, eq=False)
class EngineResult:
    """Phasors at the frequencies that the engine chose, all of shape (points,).

    `voltages` in volt by the author's node name, without ground; `driver_voltages` by driver and
    `impedances` in ohm by input, both as the netlist measures them.
    """

    freq_hz: NDArray[np.float64]
    voltages: Mapping[str, NDArray[np.complex128]]
    driver_voltages: Mapping[str, NDArray[np.complex128]]
    impedances: Mapping[str, NDArray[np.complex128]]


@dataclass(frozen=True)
class Engine:
    """A simulator: its program, the Debian package that brings it, and how a netlist is run on it.

    `bound` is the largest deviation from an exact solution, relative to the source voltage, that is still the
    engine's own rounding, and `bound_reason` says why it is not smaller.
    """

    program: str
    debian_package: str
    bound: float
    bound_reason: str
    run: Callable[[Netlist], EngineResult]


class EngineMissing(Exception):
    """The program is not installed."""

    def __init__(self, program: str, debian_package: str) -> None:
        super().__init__(
            f"`{program}` is not installed or not on the search path; on Debian or Ubuntu: apt install {debian_package}"
        )
        self.program = program
        self.debian_package = debian_package


class EngineFailed(Exception):
    """The program ran and gave no result to trust. `excerpt` is from what it said, in printable ASCII."""

    def __init__(self, program: str, reason: str, excerpt: str = "") -> None:
        excerpt = "".join(c if " " <= c <= "~" or c == "\n" else "?" for c in excerpt.strip()[-_EXCERPT:])
        super().__init__(f"{program}: {reason}" + (f"\n{excerpt}" if excerpt else ""))
        self.program = program
        self.reason = reason
        self.excerpt = excerpt


@dataclass(frozen=True)
class Ran:
    """What a program left behind: exit code, what it said, and its result file, if it wrote one."""

    exit_code: int
    stdout: str
    stderr: str
    result: bytes | None


def run_program(
    program: str,
    debian_package: str,
    arguments: list[str],
    text: str,
    *,
    timeout_s: float,
    result_file: str | None = None,
) -> Ran:
    """Run `program` on `text` in a new folder that is gone afterwards; raise EngineMissing or EngineFailed.

    The environment is bare, because variables can make ngspice write text instead of binary results.
    """
    path = shutil.which(program)
    if path is None:
        raise EngineMissing(program, debian_package)
    with tempfile.TemporaryDirectory(prefix="shuntwise-") as folder:
        Path(folder, CIRCUIT_FILE).write_text(text, encoding="ascii", newline="\n")
        environment = {"PATH": os.environ.get("PATH", ""), "HOME": folder, "LC_ALL": "C"}
        try:
            started = subprocess.Popen(
                [path, *arguments],
                cwd=folder,
                env=environment,
                stdin=subprocess.DEVNULL,
                stdout=subprocess.PIPE,
                stderr=subprocess.PIPE,
                start_new_session=True,
            )
        except OSError as error:
            raise EngineFailed(program, f"could not be started: {error.strerror}") from None
        with started:
            try:
                stdout, stderr = started.communicate(timeout=timeout_s)
            except subprocess.TimeoutExpired:
                raise EngineFailed(program, f"no answer within {timeout_s:g} s") from None
            finally:
                _stop(started)
        wrote = Path(folder, result_file) if result_file else None
        result = None
        if wrote is not None and wrote.is_file() and not wrote.is_symlink():
            if wrote.stat().st_size > LARGEST_RESULT_BYTES:
                raise EngineFailed(program, f"wrote a result of more than {LARGEST_RESULT_BYTES >> 20} MiB")
            result = wrote.read_bytes()
    return Ran(started.returncode, stdout.decode("utf-8", "replace"), stderr.decode("utf-8", "replace"), result)


def _stop(started: subprocess.Popen[bytes]) -> None:
    """End a program and whatever it has started, so that nobody waits for its children."""
    if hasattr(os, "killpg"):
        with suppress(ProcessLookupError, PermissionError):
            os.killpg(started.pid, signal.SIGKILL)
    elif started.poll() is None:
        started.kill()


def collect(
    program: str,
    netlist: Netlist,
    freq_hz: NDArray[np.float64],
    column: Callable[[str], NDArray[np.complex128]],
) -> EngineResult:
    """The result from the columns of an engine, found by the text's node names; raises EngineFailed.

    A sweep that is cut short, goes back, or holds what is not a number is a failure: simulators have
    been seen to end with exit code 0 in each of these states.
    """
    sweep = netlist.sweep
    last_step = 10 ** (1 / sweep.points_per_decade)
    first, last = (freq_hz[0], freq_hz[-1]) if len(freq_hz) else (np.inf, 0.0)
    if first > sweep.freq_from_hz * 1.000001 or last * last_step < sweep.freq_to_hz:
        raise EngineFailed(program, f"the sweep was cut short: {len(freq_hz)} points")
    if not np.isfinite(freq_hz).all() or (np.diff(freq_hz) <= 0).any():
        raise EngineFailed(program, "the frequencies do not rise")
    ground = netlist.node_names["0"]
    result = EngineResult(
        freq_hz,
        {author: column(spice) for author, spice in netlist.node_names.items() if spice != ground},
        {driver: column(spice) for driver, spice in netlist.driver_nodes.items()},
        {feed: column(spice) for feed, spice in netlist.impedance_nodes.items()},
    )
    for quantity in (result.voltages, result.driver_voltages, result.impedances):
        for name, values in quantity.items():
            if not np.isfinite(values).all():
                raise EngineFailed(program, f"`{name}` is not a number at some frequency")
    return result
