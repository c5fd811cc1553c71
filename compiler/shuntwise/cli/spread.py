"""`shuntwise spread`: how builds differ within the tolerances of their parts."""

from __future__ import annotations

import argparse
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import asdict
from pathlib import Path
from typing import TYPE_CHECKING, Any

from shuntwise.cli.main import FINDINGS, Refused
from shuntwise.cli.output import as_json, put_folder, screen
from shuntwise.cli.progress import PATIENCE_S
from shuntwise.cli.reading import compile_file, name_of_box, require_network, status
from shuntwise.cli.solving import solving
from shuntwise.diagnostics.terminal import visible
from shuntwise.workspace import of_box

if TYPE_CHECKING:
    from shuntwise.tolerance.spread import Envelope, FigureSpread, Spread, Yield


def run(options: argparse.Namespace) -> int:
    if options.seed < 0:
        raise Refused("a seed is a whole number from 0", "for example --seed 7")
    compilation = compile_file(options)
    if not require_network(compilation):
        return FINDINGS
    from shuntwise.documents.mark import design_mark
    from shuntwise.documents.tolerance_text import spread_report
    from shuntwise.tolerance.spread import MOST_BUILDS, NothingVaries, spread

    if not 1 <= options.builds <= MOST_BUILDS:
        raise Refused(f"the number of builds goes from 1 to {MOST_BUILDS}", "10000 show the shape of every band")
    design = compilation.design
    mark = design_mark([*compilation.texts, options.variant or "", *options.settings, *of_box(name_of_box(options))])
    try:
        with solving(compilation) as solver, _progress() as progress:
            result = spread(
                design,
                solver.network,
                builds=options.builds,
                seed=options.seed,
                distribution=options.distribution,
                progress=progress,
            )
    except NothingVaries:
        raise Refused("no part states a tolerance", "write it among a part's attributes, such as { 5 % }") from None
    report = spread_report(result, design, mark=mark, box=name_of_box(options))
    written = _write(options.output, result, design, report, mark) if options.output else ""
    with screen(f"the files are in {options.output}" if written else "send it to a file, or make room where it goes"):
        print(as_json(_plain(result, mark)) if options.json else report + written, end="\n" if options.json else "")
    return status(compilation)


def _write(folder: str, result: Spread, design: Any, report: str, mark: str) -> str:
    """Everything into a folder; returns what to say of it."""
    from shuntwise.documents.table import as_csv
    from shuntwise.documents.tolerance_plot import impedance_spread_plot, level_spread_plot
    from shuntwise.documents.tolerance_text import band_columns

    levels, impedance = level_spread_plot(result, design, mark=mark), impedance_spread_plot(result, design, mark=mark)
    files = {
        "spread.txt": report.encode(),
        "spread.csv": as_csv(band_columns(result)).encode(),
        "spread-levels.svg": levels.svg,
        "spread-levels.png": levels.png,
        "spread-impedance.svg": impedance.svg,
        "spread-impedance.png": impedance.png,
    }
    put_folder(files, Path(folder))
    return "\n" + visible(f"written to {folder}: {', '.join(sorted(files))}") + "\n"


@contextmanager
def _progress() -> Iterator[Callable[[float], None] | None]:
    """Shows a share on a terminal's standard error once the work has taken a while, and wipes it at the end."""
    if not sys.stderr.isatty():
        yield None
        return
    start = shown = time.monotonic()

    def show(share: float) -> None:
        nonlocal shown
        now = time.monotonic()
        if now - start > PATIENCE_S and now - shown > PATIENCE_S / 5:
            shown = now
            print(f"\r{share:4.0%} of the builds solved", end="", file=sys.stderr, flush=True)

    try:
        yield show
    finally:
        if shown > start:
            print("\r" + " " * 30 + "\r", end="", file=sys.stderr, flush=True)


def _plain(result: Spread, mark: str) -> dict[str, Any]:
    """The result as plain values."""
    from shuntwise.tolerance.spread import PERCENT

    return {
        "mark": mark,
        "builds": result.builds,
        "seed": result.seed,
        "distribution": result.distribution,
        "parts": [{"label": part.label, "tolerance": part.tolerance} for part in result.varying.parts],
        "exact": list(result.varying.exact),
        "percent": list(PERCENT),
        "met": result.met,
        "yields": [_plain_yield(one, result.builds) for one in result.yields],
        "corners": {"solved": result.corners, "all": result.all_corners},
        "figures": [_plain_figure(one) for one in result.figures],
        "freq_hz": result.freq_hz.tolist(),
        "levels_db": [_plain_band(band) for band in result.levels],
        "impedances_ohm": [_plain_band(band) for band in result.impedances],
    }


def _plain_yield(one: Yield, builds: int) -> dict[str, Any]:
    from shuntwise.tolerance.confidence import interval

    text = " ".join(one.expectation.span.text.split())
    return {"expectation": text, "share": one.share, "interval": interval(one.share, builds)}


def _plain_figure(one: FigureSpread) -> dict[str, Any]:
    from shuntwise.units import SYMBOLS

    figure = one.figure
    return {
        "name": figure.name,
        "unit": SYMBOLS[figure.dimension],
        "stated": one.nominal,
        "percentiles": one.percentiles,
        "worst": one.worst,
        "missing": one.missing,
        "first_order_deviation": one.deviation,
        "parts": [asdict(influence) for influence in one.influences],
    }


def _plain_band(band: Envelope) -> dict[str, Any]:
    return {
        "owner": band.owner,
        "stated": band.nominal.tolist(),
        "percentiles": band.percentiles.tolist(),
        "worst": band.worst.tolist(),
    }
