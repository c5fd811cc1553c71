"""`shuntwise build`: the main job. Check, and lay every document of the design into one folder."""

from __future__ import annotations

import argparse
from dataclasses import asdict, replace
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from shuntwise.cli.main import FINDINGS, Refused
from shuntwise.cli.output import as_json, put_folder, screen
from shuntwise.cli.progress import progress
from shuntwise.cli.reading import name_of_box, open_design, read_sweep, require_network, status
from shuntwise.cli.solving import solving
from shuntwise.diagnostics.terminal import visible
from shuntwise.documents.page import Printing
from shuntwise.files import safe_stem

if TYPE_CHECKING:
    from shuntwise.documents.material import Material


MOST_BOARDS = 1_000_000


def run(options: argparse.Namespace) -> int:
    sweep, printing = read_sweep(options), _printing(options)
    work = open_design(options)
    printing = replace(printing, box=name_of_box(options))
    compilation = work.compilation(options.variant, options.settings)
    if not require_network(compilation):
        return FINDINGS
    from shuntwise.documents.catalogue import DOCUMENTS
    from shuntwise.figures.usual import plain

    material = work.material(sweep, options.variant, options.settings, tuple(dict.fromkeys(options.below)), printing)
    with solving(compilation), progress("solving and drawing"):
        files = {document.file_name(material): document.content(material) for document in DOCUMENTS}
    folder = Path(options.output or _folder_beside(options))
    put_folder(files, folder)
    with screen(f"the files are in {folder}"):
        if options.json:
            told = {
                **plain(material.figures),
                "fits": [fit.plain for fit in material.fits],
                "shares": [asdict(share) for share in material.shares],
                "limits": limits(material),
            }
            print(as_json({"folder": str(folder), "files": sorted(files), "mark": material.mark, **told}))
        else:
            print(files["summary.txt"].decode())
            print(visible(f"written to {folder}: {', '.join(sorted(files))}"))
    return status(compilation)


def _printing(options: argparse.Namespace) -> Printing:
    if not 1 <= options.boards <= MOST_BOARDS:
        raise Refused(f"--boards is not from 1 to {MOST_BOARDS}", "for example --boards 4")
    try:
        day = date.fromisoformat(options.date).isoformat() if options.date else ""
    except ValueError:
        raise Refused(f"`{options.date}` is no date", "year, month and day, such as 2026-11-30") from None
    if options.bench and options.box:
        raise Refused("--bench is of the design, not of one box", "`shuntwise bench DESIGN BOX -o FOLDER` prints that")
    return Printing(options.paper, options.boards, day, options.ratings, bench=options.bench)


def limits(material: Material) -> list[dict[str, object]] | None:
    """What the verdicts on ratings use, by part and driver; None where there is no sound amplifier."""
    from shuntwise.documents.margins import margins_of
    from shuntwise.stress.stress import Lacking

    stress = material.stress
    return None if isinstance(stress, Lacking) else [asdict(one) for one in margins_of(material.design, stress)]


def _folder_beside(options: argparse.Namespace) -> str:
    """In the folder where the user stands: the design's name, its variant, the box, and what it is."""
    variant = f"-{options.variant}" if options.variant else ""
    box = f"-box-{safe_stem(name)}" if (name := name_of_box(options)) else ""
    return f"{Path(options.file).stem}{variant}{box}-out"
