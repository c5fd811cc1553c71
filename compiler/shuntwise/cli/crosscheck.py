"""`shuntwise crosscheck`: run a SPICE simulator on the emitted netlist and compare every number."""

from __future__ import annotations

import argparse
import json
from collections.abc import Sequence
from dataclasses import asdict, replace
from typing import TYPE_CHECKING

from shuntwise.cli.main import CLEAN, FINDINGS, Refused
from shuntwise.cli.reading import compile_file, read_sweep, require_network
from shuntwise.cli.solving import solving
from shuntwise.diagnostics.terminal import visible
from shuntwise.network.network import Network

if TYPE_CHECKING:
    from shuntwise.engines.crosscheck import CrossCheck


def run(options: argparse.Namespace) -> int:
    if options.bound is not None and not (options.because or "").strip():
        raise Refused("another bound needs its reason", "write it as --bound 1e-6 --because '...'")
    sweep = read_sweep(options)
    compilation = compile_file(options)
    if not require_network(compilation):
        return FINDINGS
    assert isinstance(compilation.lowered, Network)
    from shuntwise.engines.crosscheck import ENGINES, crosscheck
    from shuntwise.engines.engine import EngineFailed, EngineMissing

    try:
        with solving(compilation):
            result = crosscheck(compilation.lowered, sweep, ENGINES[options.engine], options.bound)
    except EngineMissing as missing:
        raise Refused(
            f"{missing.program} is not installed", f"on Debian and its kin: apt-get install {missing.debian_package}"
        ) from None
    except EngineFailed as failed:
        raise Refused(f"{options.engine} did not run the netlist: {failed.reason}", failed.excerpt) from None
    if options.because:
        result = replace(result, bound_reason=options.because)
    if options.json:
        print(json.dumps({**asdict(result), "worst": asdict(result.worst), "passed": result.passed}, indent=1))
    else:
        fed = {driver.name for driver in compilation.lowered.drivers}
        print(_in_words(result, [name for name in compilation.design.drivers if name not in fed]))
    return CLEAN if result.passed else FINDINGS


def _in_words(result: CrossCheck, silent: Sequence[str]) -> str:
    """`silent` are drivers through which no current can flow."""
    lines = [f"{result.engine} and the built-in solver at {result.points} frequencies:"]
    for quantity, what in (("node", "node voltages"), ("driver", "driver voltages"), ("impedance", "input impedance")):
        worst = result.worst_of(quantity)  # type: ignore[arg-type]
        if worst is not None:
            lines.append(f"  {what:16} differ by {worst.relative:.1e} at most ({worst.name}, {worst.freq_hz:.6g} Hz)")
    if silent:
        lines.append(f"  nothing to compare at {', '.join(silent)}, which no input feeds")
    worst = result.worst
    reason = f" ({result.bound_reason})" if result.bound_reason else ""
    if result.passed:
        lines.append(f"they agree: {worst.relative:.1e} is within {result.bound:.0e} of the source voltage{reason}")
    else:
        lines.append(
            f"they DISAGREE: {worst.name} differs by {worst.relative:.1e} at {worst.freq_hz:.6g} Hz, "
            f"beyond {result.bound:.0e} of the source voltage{reason}"
        )
    return "\n".join(visible(line) for line in lines)
