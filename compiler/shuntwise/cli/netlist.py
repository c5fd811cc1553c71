"""`shuntwise netlist`: write a SPICE netlist that open simulators run unchanged."""

from __future__ import annotations

import argparse

from shuntwise.cli.main import FINDINGS
from shuntwise.cli.output import put
from shuntwise.cli.reading import compile_file, read_sweep, require_network, status
from shuntwise.network.network import Network


def run(options: argparse.Namespace) -> int:
    sweep = read_sweep(options)
    compilation = compile_file(options)
    if not require_network(compilation):
        return FINDINGS
    assert isinstance(compilation.lowered, Network)
    from shuntwise.netlist.spice import emit

    title = compilation.design.title or options.file
    put(emit(compilation.lowered, sweep, design_title=title).text, options.output)
    return status(compilation)
