"""`shuntwise netlist`: write a SPICE netlist that open simulators run unchanged."""

from __future__ import annotations

import argparse

from shuntwise.cli.main import FINDINGS
from shuntwise.cli.output import put
from shuntwise.cli.reading import open_design, read_sweep, require_network, status


def run(options: argparse.Namespace) -> int:
    sweep = read_sweep(options)
    work = open_design(options)
    compilation = work.compilation(options.variant, options.settings)
    if not require_network(compilation):
        return FINDINGS
    from shuntwise.documents.catalogue import render

    put(render("netlist.cir", work.material(sweep, options.variant, options.settings)), options.output)
    return status(compilation)
