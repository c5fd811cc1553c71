"""`shuntwise netlist`: write a SPICE netlist that open simulators run unchanged."""

from __future__ import annotations

import argparse

from shuntwise.cli.main import FINDINGS
from shuntwise.cli.output import put
from shuntwise.cli.reading import name_of_box, open_design, read_sweep, require_network, status
from shuntwise.documents.page import Printing
from shuntwise.workspace import of_box


def run(options: argparse.Namespace) -> int:
    sweep = read_sweep(options)
    work = open_design(options)
    compilation = work.compilation(options.variant, options.settings)
    if not require_network(compilation):
        return FINDINGS
    box = name_of_box(options)
    material = work.material(sweep, options.variant, options.settings, printing=Printing(box=box))
    if options.subcircuit:
        from shuntwise.netlist.subcircuits import subcircuits

        notes = [*of_box(box), f"design mark {material.mark}"]
        put(subcircuits(material.network, design_title=material.title, notes=notes), options.output)
    else:
        from shuntwise.documents.catalogue import render

        put(render("netlist.cir", material), options.output)
    return status(compilation)
