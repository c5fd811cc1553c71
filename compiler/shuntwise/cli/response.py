"""`shuntwise response`: what reaches each driver, and the impedance, over frequency."""

from __future__ import annotations

import argparse

from shuntwise.cli.main import FINDINGS
from shuntwise.cli.output import as_json, put
from shuntwise.cli.reading import open_design, read_sweep, require_network, status
from shuntwise.cli.solving import solving


def run(options: argparse.Namespace) -> int:
    sweep = read_sweep(options)
    work = open_design(options)
    compilation = work.compilation(options.variant, options.settings)
    if not require_network(compilation):
        return FINDINGS
    from shuntwise.documents.table import as_csv, as_plain, as_text

    with solving(compilation):
        material = work.material(sweep, options.variant, options.settings)
        columns = material.columns

    if options.json:
        fits = [fit.plain for fit in material.fits]
        told = as_plain(material.response, material.network)
        text = as_json({"variant": options.variant, **told, "fits": fits}) + "\n"
    else:
        text = as_csv(columns) if options.csv else as_text(columns)
    put(text, options.output)
    return status(compilation)
