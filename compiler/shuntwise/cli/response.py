"""`shuntwise response`: what reaches each driver, and the impedance, over frequency."""

from __future__ import annotations

import argparse

from shuntwise.cli.main import FINDINGS
from shuntwise.cli.output import as_json, put
from shuntwise.cli.reading import compile_file, read_sweep, require_network, status
from shuntwise.cli.solving import solving


def run(options: argparse.Namespace) -> int:
    sweep = read_sweep(options)
    compilation = compile_file(options)
    if not require_network(compilation):
        return FINDINGS
    from shuntwise.documents.table import Column, as_csv, as_text, response_rows
    from shuntwise.response.measures import grid

    with solving(compilation) as solver:
        freq_hz = grid(sweep.freq_from_hz, sweep.freq_to_hz, sweep.points_per_decade)
        columns = response_rows(solver.solve(freq_hz), solver.network)

    def plain(column: Column) -> dict[str, object]:
        values = column.values.tolist()
        return {"owner": column.owner, "quantity": column.quantity, "unit": column.unit, "values": values}

    if options.json:
        text = as_json({"variant": options.variant, "columns": list(map(plain, columns))}) + "\n"
    else:
        text = as_csv(columns) if options.csv else as_text(columns)
    put(text, options.output)
    return status(compilation)
