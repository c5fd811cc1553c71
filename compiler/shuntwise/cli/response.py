"""`shuntwise response`: what reaches each driver, and the impedance, over frequency."""

from __future__ import annotations

import argparse
from pathlib import Path

from shuntwise.cli.main import FINDINGS, Refused
from shuntwise.cli.output import as_json, put, put_file
from shuntwise.cli.reading import name_of_box, open_design, read_sweep, require_network, status
from shuntwise.cli.solving import solving
from shuntwise.documents.page import Printing


def run(options: argparse.Namespace) -> int:
    sweep = read_sweep(options)
    form = _form_of_plot(options)
    work = open_design(options)
    compilation = work.compilation(options.variant, options.settings)
    if not require_network(compilation):
        return FINDINGS
    from shuntwise.documents.table import as_csv, as_plain, as_text

    with solving(compilation):
        below, printing = tuple(dict.fromkeys(options.below)), Printing(box=name_of_box(options))
        material = work.material(sweep, options.variant, options.settings, below, printing)
        columns = material.columns
        plot = getattr(material.level_plot, form) if form else b""

    if options.json:
        fits = [fit.plain for fit in material.fits]
        told = as_plain(material.response, material.network)
        text = as_json({"variant": options.variant, **told, "fits": fits}) + "\n"
    else:
        text = as_csv(columns) if options.csv else as_text(columns)
    if form:
        put_file(plot, options.plot)
    put(text, options.output)
    return status(compilation)


def _form_of_plot(options: argparse.Namespace) -> str:
    """`svg`, `png`, or empty if no plot is asked for."""
    if options.plot is None:
        if options.below:
            raise Refused(
                f"--{options.below[0].replace(' ', '-')} is drawn, and there is no plot to draw it into",
                "name one, such as --plot levels.svg; the table has phase and group delay anyway",
            )
        return ""
    form = Path(options.plot).suffix.lower().removeprefix(".")
    if form not in ("svg", "png"):
        raise Refused(f"no plot is written as `{options.plot}`", "end its name in .svg or .png")
    if options.output is not None and Path(options.output).resolve() == Path(options.plot).resolve():
        raise Refused("the table and the plot cannot be one file", "give each a name of its own")
    return form
