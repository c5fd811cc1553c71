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
    material = work.material(sweep, options.variant, options.settings)
    if options.subcircuit:
        from shuntwise.netlist.subcircuits import subcircuits

        notes = [f"design mark {material.mark}"]
        put(subcircuits(material.network, design_title=material.title, notes=notes), options.output)
    else:
        from shuntwise.documents.catalogue import render

        put(render("netlist.cir", material), options.output)
    return status(compilation)
