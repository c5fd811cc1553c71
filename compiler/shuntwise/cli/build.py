"""`shuntwise build`: the main job. Check, netlist, response table, plots, read-back and summary in one folder."""

from __future__ import annotations

import argparse
from dataclasses import asdict
from pathlib import Path

from shuntwise.cli.main import FINDINGS, Refused
from shuntwise.cli.output import as_json, screen
from shuntwise.cli.reading import compile_file, read_sweep, require_network, status
from shuntwise.cli.solving import solving
from shuntwise.diagnostics.terminal import visible
from shuntwise.files import OutputRefused, write_folder
from shuntwise.network.network import Network


def run(options: argparse.Namespace) -> int:
    sweep = read_sweep(options)
    compilation = compile_file(options)
    if not require_network(compilation):
        return FINDINGS
    from shuntwise.documents.mark import design_mark
    from shuntwise.documents.plots import impedance_plot, response_plot
    from shuntwise.documents.read_aloud import read_aloud
    from shuntwise.documents.summary import build_summary
    from shuntwise.documents.table import as_csv, response_rows
    from shuntwise.figures.nominal import Nominal
    from shuntwise.figures.usual import plain, usual
    from shuntwise.netlist.spice import emit
    from shuntwise.response.measures import grid
    from shuntwise.stress.shares import shares

    design, lowered = compilation.design, compilation.lowered
    assert isinstance(lowered, Network)
    mark = design_mark([*compilation.texts, options.variant or "", *options.settings])
    with solving(compilation) as solver:
        response = solver.solve(grid(sweep.freq_from_hz, sweep.freq_to_hz, sweep.points_per_decade))
        figures = usual(Nominal(solver), design.drivers, sweep.freq_from_hz, sweep.freq_to_hz)
        borne = shares(solver.solve(grid(sweep.freq_from_hz, sweep.freq_to_hz)))
        levels = response_plot(response, design, figures, mark=mark)
        impedance = impedance_plot(response, design, figures, mark=mark)
        table = as_csv(response_rows(response, lowered))
    summary = build_summary(
        design,
        figures,
        borne,
        findings=compilation.findings,
        not_checked=compilation.not_checked,
        waived=len(compilation.waived),
        mark=mark,
    )
    title = design.title or Path(options.file).stem
    files = {
        "netlist.cir": emit(lowered, sweep, design_title=title, notes=[f"design mark {mark}"]).text.encode(),
        "response.csv": table.encode(),
        "response.svg": levels.svg,
        "response.png": levels.png,
        "impedance.svg": impedance.svg,
        "impedance.png": impedance.png,
        "read-back.txt": read_aloud(compilation.circuit, design.network_of).encode(),
        "summary.txt": summary.encode(),
    }
    folder = Path(options.output or _folder_beside(options))
    try:
        write_folder(folder, files)
    except OutputRefused as refusal:
        raise Refused(str(refusal), refusal.help) from None
    with screen(f"the files are in {folder}"):
        if options.json:
            told = {**plain(figures), "shares": [asdict(share) for share in borne]}
            print(as_json({"folder": str(folder), "files": sorted(files), "mark": mark, **told}))
        else:
            print(summary)
            print(visible(f"written to {folder}: {', '.join(sorted(files))}"))
    return status(compilation)


def _folder_beside(options: argparse.Namespace) -> str:
    """In the folder where the user stands: the design's name, its variant, and what it is."""
    variant = f"-{options.variant}" if options.variant else ""
    return f"{Path(options.file).stem}{variant}-out"
